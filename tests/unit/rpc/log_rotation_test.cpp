// The program's log takes turns: it never holds more than three files of about 1 MiB, whatever is written.
#include "rpc/program/folder.hpp"
#include "rpc/program/logging.hpp"
#include "tests/unit/rpc/scratch.hpp"

#include <doctest/doctest.h>

#include <sys/stat.h>

#include <filesystem>

namespace limbledger::rpc {

TEST_CASE("the log is kept in three files of 1 MiB at most, each the owner's alone, and the newest line is in the first") {
  const Scratch scratch;
  constexpr std::uintmax_t mib = std::uintmax_t{1} << 20U;
  const mode_t before = ::umask(077);  // as the program sets it
  {
    Log log(scratch.path("log/limbledger.log"));
    const std::string method(400, 'm');
    for (int line = 0; line < 12'000; ++line) {  // some 5 MiB
      log.call_failed(method, "method.unknown", "");
    }
    log.stopped("the last line");
  }
  ::umask(before);
  std::size_t files = 0;
  for (const auto& file : std::filesystem::directory_iterator(scratch.path("log"))) {
    ++files;
    CHECK(file.file_size() <= mib);
    struct stat state {};
    REQUIRE(::stat(file.path().c_str(), &state) == 0);
    CHECK((state.st_mode & 0777) == 0600);
  }
  CHECK(files == 3);
  const auto newest = read_file(scratch.path("log/limbledger.log"), mib);
  REQUIRE(newest.has_value());
  CHECK(newest->find("the last line") != std::string::npos);
}

}  // namespace limbledger::rpc
