// What only the store on disk can get wrong: who else holds it, a full disk, a foreign or damaged file.
#include "core/store/sqlite.hpp"
#include "tests/unit/ledger/support.hpp"
#include "tests/unit/store/support.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>

#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace limbledger;
using namespace limbledger::ledger::test;
using limbledger::store::Flush;
using limbledger::store::SqliteOptions;
using limbledger::store::SqliteStore;
using limbledger::store::test::as_version_1;
using limbledger::store::test::as_version_2;
using limbledger::store::test::Folder;

namespace {

std::string opening(const std::string& path, const SqliteOptions& options = {}) {
  const auto opened = SqliteStore::open(path, options);
  return opened ? "opened" : code_of(opened.error());
}

SqliteOptions fresh() { return {.clinic = Writer().origin.clinic}; }

void run_sql(const std::string& path, const char* sql) {
  sqlite3* handle = nullptr;
  REQUIRE(sqlite3_open(path.c_str(), &handle) == SQLITE_OK);
  CHECK(sqlite3_exec(handle, sql, nullptr, nullptr, nullptr) == SQLITE_OK);
  sqlite3_close(handle);
}

std::int64_t number_of(const std::string& path, const char* sql) {
  sqlite3* handle = nullptr;
  REQUIRE(sqlite3_open(path.c_str(), &handle) == SQLITE_OK);
  std::int64_t number = -1;
  const auto take = [](void* to, int, char** values, char**) {
    *static_cast<std::int64_t*>(to) = std::stoll(values[0]);
    return 0;
  };
  CHECK(sqlite3_exec(handle, sql, take, &number, nullptr) == SQLITE_OK);
  sqlite3_close(handle);
  return number;
}

}  // namespace

TEST_CASE("a ledger is made only when a clinic is given, and belongs to that clinic") {
  const Folder folder;
  const std::string path = folder.file("ledger");
  CHECK(opening(path) == "ledger.none");
  CHECK(opening(path, fresh()) == "opened");
  CHECK(opening(path) == "opened");
  CHECK((*SqliteStore::open(path, {}))->clinic() == Writer().origin.clinic);
  CHECK(opening(path, {.clinic = model::ClinicId{filled<16>(1)}}) == "entry.store");
  CHECK(opening(folder.file("no-such-folder/ledger"), fresh()) == "ledger.read_only");
}

TEST_CASE("HC-093: an empty file is no ledger, and a file of something else is refused") {
  const Folder folder;
  const std::string path = folder.file("ledger");
  { const std::ofstream touch(path); }
  CHECK(opening(path) == "ledger.missing");
  run_sql(path, "CREATE TABLE notes(text)");
  CHECK(opening(path) == "entry.store");
  CHECK(opening(path, fresh()) == "entry.store");
  const std::string text = folder.file("text");
  { std::ofstream(text) << std::string(8192, 'x'); }
  CHECK(opening(text) == "entry.store");
}

TEST_CASE("a file of a newer layout is refused and left as it is") {
  const Folder folder;
  const std::string path = folder.file("ledger");
  CHECK(opening(path, fresh()) == "opened");
  run_sql(path, "PRAGMA user_version=4");
  CHECK(opening(path) == "format.newer");
}

namespace {

ledger::ObjectKey key_of(std::uint8_t number) {
  return {secret_of(number), ledger::object_of(Writer().origin.clinic, ledger::ObjectType::exam, model::RequestId{filled<16>(number)}, 0)};
}

// Entries of two keys in turns, as two exams that are recorded side by side.
struct TwoKeys {
  Writer writer;
  ledger::ObjectKey first_key;
  TwoKeys() : first_key(writer.key) {
    writer.introduce();
    add(writer.key, 5);
  }
  void add(const ledger::ObjectKey& key, int count) {
    writer.key = key;
    for (int i = 0; i < count; ++i) {
      writer.write("invented");
    }
  }
  [[nodiscard]] std::size_t under(const ledger::ObjectKey& key) const {
    return static_cast<std::size_t>(std::count_if(writer.rows.begin(), writer.rows.end(), [&](const ledger::Row& row) {
      return std::equal(key.kid().bytes.begin(), key.kid().bytes.end(), row.header.begin() + 16);
    }));
  }
  void keep(SqliteStore& store) const {
    const ledger::Head head = writer.head();
    REQUIRE(store.append(writer.rows, {&head, 1}, {}).has_value());
  }
};

std::size_t read_under(SqliteStore& store, const ledger::ObjectKey& key) { return store.read_kid(key.kid())->size(); }

// A file as an earlier version of the program left it.
void take_back_to(int version, const std::string& path) {
  run_sql(path, as_version_2);
  if (version == 1) {
    run_sql(path, as_version_1);
  }
}

}  // namespace

TEST_CASE("a file of an earlier layout is brought up to date when it is opened for writing, and gives what it gave") {
  for (const int version : {1, 2}) {
    CAPTURE(version);
    const Folder folder;
    const std::string path = folder.file("ledger");
    TwoKeys two;
    const ledger::ObjectKey other = key_of(77);
    for (int turn = 0; turn < 4; ++turn) {
      two.add(other, 3);
      two.add(two.first_key, 2);
    }
    two.keep(**SqliteStore::open(path, {.clinic = two.writer.origin.clinic}));
    take_back_to(version, path);
    {
      const auto reader = SqliteStore::open(path, {.read_only = true});
      REQUIRE(reader.has_value());
      CHECK(read_under(**reader, two.first_key) == two.under(two.first_key));
      CHECK(read_under(**reader, other) == two.under(other));
      CHECK((*reader)->heads()->newest == std::vector{two.writer.head()});
    }
    static_cast<void>(SqliteStore::open(path, {}));
    CHECK(number_of(path, "PRAGMA user_version") == 3);
    const auto store = SqliteStore::open(path, {});
    REQUIRE(store.has_value());
    CHECK((*store)->check_lists(false)->empty());
    CHECK(read_under(**store, two.first_key) == two.under(two.first_key));
    CHECK(read_under(**store, other) == two.under(other));
    CHECK((*store)->heads()->newest == std::vector{two.writer.head()});
    two.add(other, 2);
    two.keep(**store);
    CHECK(read_under(**store, other) == two.under(other));
    CHECK((*store)->heads()->newest == std::vector{two.writer.head()});
    CHECK((*store)->check_lists(false)->empty());
  }
}

TEST_CASE("a file of the first layout that has no room for more is read and written on as it was") {
  const Folder folder;
  const std::string path = folder.file("ledger");
  TwoKeys two;
  two.keep(**SqliteStore::open(path, {.clinic = two.writer.origin.clinic}));
  take_back_to(1, path);
  static_cast<void>(SqliteStore::open(path, {.page_count_max = 1}));
  CHECK(number_of(path, "PRAGMA user_version") == 1);
  const auto store = SqliteStore::open(path, {.page_count_max = 1});
  REQUIRE(store.has_value());
  CHECK(read_under(**store, two.first_key) == two.under(two.first_key));
  two.add(two.first_key, 1);
  two.keep(**store);
  CHECK(read_under(**store, two.first_key) == two.under(two.first_key));
  CHECK((*store)->heads()->newest == std::vector{two.writer.head()});
  CHECK((*store)->check_lists(false)->empty());
}

TEST_CASE("what goes on under one key is listed once, also after opening again, and an entry left out of the lists is told") {
  const Folder folder;
  const std::string path = folder.file("ledger");
  TwoKeys two;
  two.keep(**SqliteStore::open(path, {.clinic = two.writer.origin.clinic}));
  two.add(two.first_key, 3);
  two.keep(**SqliteStore::open(path, {}));
  two.add(key_of(77), 1);
  two.add(two.first_key, 2);
  two.keep(**SqliteStore::open(path, {}));
  CHECK(number_of(path, "SELECT count(*) FROM runs") == 3);
  CHECK(number_of(path, "SELECT count(*) FROM runs WHERE last IS NULL") == 1);
  {
    const auto store = SqliteStore::open(path, {});
    CHECK(read_under(**store, two.first_key) == two.under(two.first_key));
    CHECK((*store)->check_lists(false)->empty());
  }
  run_sql(path, "UPDATE runs SET last=last-1 WHERE last > first");
  const auto store = SqliteStore::open(path, {});
  const auto lists = (*store)->check_lists(false);
  REQUIRE(lists->size() == 1);
  CHECK(lists->front().list == "entries_by_key");
  CHECK(lists->front().left_out == 1);
  CHECK(!lists->front().mended);
  CHECK(read_under(**store, two.first_key) != two.under(two.first_key));
  // Made anew from the entries, and written on as before.
  const auto mended = (*store)->check_lists(true);
  REQUIRE(mended->size() == 1);
  CHECK(mended->front().mended);
  CHECK((*store)->check_lists(false)->empty());
  CHECK(read_under(**store, two.first_key) == two.under(two.first_key));
  two.add(two.first_key, 2);
  two.add(key_of(77), 1);
  two.keep(**store);
  CHECK(read_under(**store, two.first_key) == two.under(two.first_key));
  CHECK((*store)->check_lists(false)->empty());
}

TEST_CASE("the file says that it is a ledger and flushes every commit") {
  const Folder folder;
  const std::string path = folder.file("ledger");
  CHECK(opening(path, fresh()) == "opened");
  std::ifstream file(path, std::ios::binary);
  std::string head(100, '\0');
  file.read(head.data(), 100);
  // Source: sqlite.org/fileformat2.html, database header: offset 68 application id, 60 user version, 18 and 19 write-ahead log.
  CHECK(head.substr(68, 4) == "LIMB");
  CHECK(head.substr(60, 4) == std::string("\0\0\0\3", 4));
  CHECK(head.substr(18, 2) == "\2\2");
}

TEST_CASE("HC-112: a second process is told that the ledger is in use, and may come when the first has died") {
  const Folder folder;
  const std::string path = folder.file("ledger");
  CHECK(opening(path, fresh()) == "opened");
  int ready[2];
  REQUIRE(pipe(ready) == 0);
  const pid_t child = fork();
  if (child == 0) {
    const auto held = SqliteStore::open(path, {});
    const char told = held ? 'y' : 'n';
    static_cast<void>(write(ready[1], &told, 1));
    pause();
    _exit(0);
  }
  char told = 0;
  REQUIRE(read(ready[0], &told, 1) == 1);
  CHECK(told == 'y');
  CHECK(opening(path, {.busy_ms = 20}) == "ledger.in_use");
  CHECK(opening(path, {.read_only = true, .busy_ms = 20}) == "ledger.in_use");
  kill(child, SIGKILL);
  waitpid(child, nullptr, 0);
  CHECK(opening(path) == "opened");
  close(ready[0]);
  close(ready[1]);
}

TEST_CASE("HC-111: a full disk refuses the append whole, and reading goes on") {
  const Folder folder;
  SqliteOptions options = fresh();
  options.page_count_max = 24;
  const auto opened = SqliteStore::open(folder.file("ledger"), options);
  REQUIRE(opened.has_value());
  ledger::LogStore& store = **opened;
  Writer writer;
  writer.introduce();
  REQUIRE(store.append(writer.rows, std::vector<ledger::Head>{writer.head()}, {}).has_value());
  std::string refused;
  std::size_t stored = 1;
  for (int i = 0; i < 200 && refused.empty(); ++i) {
    const auto row = writer.write(std::string(500, 'x'));
    const auto done = store.append(std::vector<ledger::Row>{row}, std::vector<ledger::Head>{writer.head()}, {{"n", {1}}});
    refused = done ? "" : code_of(done.error());
    stored += done ? 1U : 0U;
  }
  CHECK(refused == "ledger.read_only");
  const auto rows = store.read(writer.origin.replica, 0, UINT64_MAX, 1000);
  REQUIRE(rows.has_value());
  CHECK(rows->size() == stored);
  CHECK(store.heads()->newest.front().seq == stored);
  CHECK((*opened)->check_lists(false)->empty());
}

TEST_CASE("a reader writes nothing") {
  const Folder folder;
  const std::string path = folder.file("ledger");
  Writer writer;
  writer.introduce();
  REQUIRE((*SqliteStore::open(path, fresh()))->append(writer.rows, std::vector<ledger::Head>{writer.head()}, {}).has_value());
  const auto reader = SqliteStore::open(path, {.read_only = true});
  REQUIRE(reader.has_value());
  CHECK((*reader)->read(writer.origin.replica, 0, 9, 9)->size() == 1);
  writer.write("x");
  CHECK(code_of((*reader)->append(writer.rows, {}, {}).error()) == "ledger.read_only");
}
