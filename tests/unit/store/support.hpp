// A folder of its own for a test that needs a disk, gone with all it holds at the end; and the store's layout before this one.
#pragma once

#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <string>

namespace limbledger::store::test {

// As the layout before this one had them: the newest heads among what is small.
constexpr const char* as_version_2 =
    "INSERT INTO small SELECT 1, CAST(c.replica || e.hash AS BLOB), e.body FROM entries e JOIN chains c ON c.chain=e.chain WHERE e.seq=9223372036854775807;"
    "DELETE FROM entries WHERE seq=9223372036854775807; PRAGMA user_version=2";

// And the first layout: an index of all entries in the place of runs besides. Run after as_version_2.
constexpr const char* as_version_1 =
    "DROP TABLE runs; CREATE INDEX entries_kid ON entries(substr(header, 17)) WHERE substr(header, 17) <> x'00000000000000000000000000000000';"
    "PRAGMA user_version=1";

class Folder {
 public:
  Folder() {
    std::string name = (std::filesystem::temp_directory_path() / "limbledger-test-XXXXXX").string();
    REQUIRE(mkdtemp(name.data()) != nullptr);
    path_ = name;
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  ~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  [[nodiscard]] std::string file(const std::string& name) const { return (path_ / name).string(); }

 private:
  std::filesystem::path path_;
};

}  // namespace limbledger::store::test
