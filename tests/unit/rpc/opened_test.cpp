// A ledger as the program finds it: parts missing, a medium that takes no write, a demonstration whose passphrase is wrong.
#include "core/service/call.hpp"
#include "rpc/program/commands.hpp"
#include "rpc/program/opened.hpp"
#include "tests/unit/rpc/holds.hpp"
#include "tests/unit/rpc/scratch.hpp"

#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <functional>
#include <iostream>
#include <sstream>

namespace limbledger::rpc {

namespace {

namespace fs = std::filesystem;

// What the program prints goes nowhere while one of these lives.
class Silence {
 public:
  Silence() : out_(std::cout.rdbuf(kept_.rdbuf())), err_(std::cerr.rdbuf(kept_.rdbuf())) {}
  ~Silence() {
    std::cout.rdbuf(out_);
    std::cerr.rdbuf(err_);
  }
  Silence(const Silence&) = delete;
  Silence& operator=(const Silence&) = delete;

  [[nodiscard]] std::string text() const { return kept_.str(); }

 private:
  std::ostringstream kept_;
  std::streambuf* out_;
  std::streambuf* err_;
};

// Gives back what was printed.
std::string make_demonstration(const std::string& path) {
  const Silence silence;
  Options options;
  options.folder = path;
  options.demonstration = true;
  REQUIRE(make_new_ledger(options) == ExitCode::done);
  return silence.text();
}

std::string call(OpenedLedger& opened, std::string_view method, std::string_view params_json) {
  service::Context context;
  context.desk = &opened.desk();
  context.edition = &opened.desk().edition();
  const auto params = wire::parse(params_json);
  const auto result = service::call(service::methods(), context, method, *params, &params->root());
  return result ? *result : result.error().faults.front().code;
}

std::pair<int, std::string> ended_with(const std::function<void()>& action) {
  try {
    action();
  } catch (const Problem& problem) {
    return {static_cast<int>(problem.code()), problem.what()};
  }
  return {-1, {}};
}

std::pair<int, std::string> opening(const std::string& path) {
  return ended_with([&] { const OpenedLedger opened(path); });
}

constexpr std::string_view awa =
    R"({"request":"00000000-0000-4000-8000-000000000001","names":[{"text":"Awa"}],"sex":"female"})";

// What a reader who may write nothing there finds; bits of what went wrong, 0 for nothing. Runs in a process of its own.
int read_as_stranger(const std::string& path, bool holds_awa) {
  // The superuser may write whatever a file's mode says.
  if (::geteuid() == 0 && (::setresgid(65534, 65534, 65534) != 0 || ::setresuid(65534, 65534, 65534) != 0)) {
    return 1;
  }
  try {
    const Silence silence;
    Options options;
    options.folder = path;
    if (verify(options) != ExitCode::done) {
      return 2;
    }
    OpenedLedger opened(path);
    const bool unlocked = opened.unlock_if_told(std::nullopt);
    const bool state = holds(call(opened, "health.check", "{}"), R"("state":"read_only")");
    const bool found = holds(call(opened, "person.find", R"({"text":"Awa"})"), "Awa") == holds_awa;
    const std::string other = R"({"request":"00000000-0000-4000-8000-000000000002","names":[{"text":"Binta"}],"sex":"female"})";
    const bool refused = call(opened, "person.register", other) == "ledger.read_only";
    return (opened.read_only() ? 0 : 4) + (unlocked ? 0 : 8) + (state ? 0 : 16) + (found ? 0 : 32) + (refused ? 0 : 64);
  } catch (const Problem&) {
    return 3;
  }
}

int stranger(const std::string& path, bool holds_awa) {
  const pid_t child = ::fork();
  if (child == 0) {
    ::_exit(read_as_stranger(path, holds_awa));
  }
  int status = 0;
  ::waitpid(child, &status, 0);
  return WIFEXITED(status) ? WEXITSTATUS(status) : 255;
}

void freeze(const std::string& path) {
  for (const auto& entry : fs::recursive_directory_iterator(path)) {
    ::chmod(entry.path().c_str(), entry.is_directory() ? 0555 : 0444);
  }
  ::chmod(path.c_str(), 0555);
}

void thaw(const std::string& path) {
  ::chmod(path.c_str(), 0755);
}

}  // namespace

TEST_CASE("what is left of a ledger is never called none, and nothing is made over it") {
  const Scratch scratch;
  const std::string path = scratch.path("d");
  static_cast<void>(make_demonstration(path));
  const auto keyring = read_file(path + "/keyring", 1 << 20);
  fs::rename(path + "/ledger.sqlite", path + "/aside");
  const auto gone = opening(path);
  CHECK(gone.first == 1);
  CHECK(holds(gone.second, "ledger.missing"));
  CHECK(holds(gone.second, "what to do: bring ledger.sqlite back"));
  CHECK_FALSE(fs::exists(path + "/ledger.sqlite"));

  write_file(path + "/ledger.sqlite", "");
  write_file(path + "/ledger.sqlite-wal", "the newest entries");
  const auto empty = opening(path);
  CHECK(empty.first == 1);
  CHECK(holds(empty.second, "is empty"));
  CHECK(holds(empty.second, "keep ledger.sqlite-wal"));
  CHECK(read_file(path + "/ledger.sqlite-wal", 100) == "the newest entries");
  // The store itself says so too, and leaves what lies beside it.
  const auto store = store::SqliteStore::open(path + "/ledger.sqlite", {});
  REQUIRE_FALSE(store.has_value());
  CHECK(store.error().faults.front().code == "ledger.missing");
  CHECK(read_file(path + "/ledger.sqlite-wal", 100) == "the newest entries");
  Options again;
  again.folder = path;
  again.demonstration = true;
  CHECK(ended_with([&] { static_cast<void>(make_new_ledger(again)); }).first == 2);
  CHECK(read_file(path + "/keyring", 1 << 20) == keyring);

  fs::remove(path + "/ledger.sqlite-wal");
  fs::rename(path + "/aside", path + "/ledger.sqlite");
  fs::remove(path + "/keyring");
  const auto no_keys = opening(path);
  CHECK(no_keys.first == 1);
  CHECK(holds(no_keys.second, "keyring.missing"));
}

TEST_CASE("a ledger where nothing can be written is verified and read, also with what a crash left in its log") {
  const Scratch scratch;
  ::chmod(scratch.path().c_str(), 0755);
  const std::string path = scratch.path("d");
  static_cast<void>(make_demonstration(path));
  {
    OpenedLedger opened(path);
    REQUIRE(opened.unlock_if_told(std::nullopt));
    REQUIRE(holds(call(opened, "person.register", awa), "Awa"));
    // What a power cut leaves: the entries stand in the log beside the file only.
    fs::copy(path, scratch.path("crashed"), fs::copy_options::recursive);
  }
  REQUIRE(fs::exists(scratch.path("crashed/ledger.sqlite-wal")));
  REQUIRE_FALSE(fs::exists(path + "/ledger.sqlite-wal"));
  for (const std::string& one : {path, scratch.path("crashed")}) {
    const auto before = read_file(one + "/ledger.sqlite", 1 << 24);
    freeze(one);
    CHECK(stranger(one, true) == 0);
    thaw(one);
    CHECK(read_file(one + "/ledger.sqlite", 1 << 24) == before);
  }
  CHECK(fs::exists(scratch.path("crashed/ledger.sqlite-wal")));
}

TEST_CASE("an examiner added with the code that was printed is there after a restart, and not where its slot could not be written") {
  const Scratch scratch;
  const std::string path = scratch.path("d");
  const std::string printed = make_demonstration(path);
  const std::string code = printed.substr(printed.find("once:\n\n    ") + 11, 44);
  const std::string params = R"({"code":")" + code + R"(","examiner":"Second Invented","passphrase":"four words quite apart"})";
  const auto before = read_file(path + "/keyring", 1 << 20);
  {
    OpenedLedger opened(path);
    fs::rename(path + "/keyring", scratch.path("aside"));
    fs::create_directory(path + "/keyring");  // the file cannot be put in its place
    CHECK(call(opened, "examiner.add", params) == "ledger.read_only");
    fs::remove(path + "/keyring");
    fs::rename(scratch.path("aside"), path + "/keyring");
    CHECK(read_file(path + "/keyring", 1 << 20) == before);
    CHECK(holds(call(opened, "examiner.add", params), R"("examiner":)"));
  }
  OpenedLedger opened(path);
  CHECK(holds(call(opened, "ledger.unlock", R"({"examiner":"Second Invented","passphrase":"four words quite apart"})"), R"("opened_by":"passphrase")"));
  CHECK(holds(call(opened, "person.register", awa), "Awa"));
}

TEST_CASE("a demonstration whose kept passphrase is wrong starts locked") {
  const Scratch scratch;
  const std::string path = scratch.path("d");
  static_cast<void>(make_demonstration(path));
  for (const std::string wrong : {"some other invented words\n", ""}) {
    write_file(path + "/demo-passphrase", wrong);
    OpenedLedger opened(path);
    CHECK_FALSE(opened.unlock_if_told(std::nullopt));
    CHECK(holds(opened.why_locked(), "demo-passphrase"));
    CHECK(holds(call(opened, "health.check", "{}"), R"("state":"locked")"));
  }
}

TEST_CASE("the day, what is left open and what disagrees are printed from a ledger that nobody serves, and a wrong day is refused by name") {
  const Scratch scratch;
  const std::string path = scratch.path("clinic");
  make_demonstration(path);
  {
    OpenedLedger opened(path);
    REQUIRE(opened.unlock_if_told(std::nullopt));
    REQUIRE(holds(call(opened, "person.register", awa), "Awa"));
    const std::string exam = R"({"request":"00000000-0000-4000-8000-000000000002","complaint":"free","setting":"outreach","examined_at":"2026-11-20T10:00:00.000Z","offset_min":0})";
    REQUIRE(holds(call(opened, "exam.open", exam), "exam"));
  }
  Options options;
  options.folder = path;
  options.day = "2026-11-20";
  for (const auto& row : std::vector<std::pair<ClinicList, std::string>>{
           {ClinicList::day, "DAY LIST 2026-11-20"}, {ClinicList::loops, "LEFT OPEN, as of 2026-11-20"}, {ClinicList::conflicts, "TO BE SETTLED: 0"}}) {
    options.list = row.first;
    const Silence silence;
    CHECK(print_list(options) == ExitCode::done);
    CHECK(holds(silence.text(), row.second));
    CHECK(holds(silence.text(), "DEMONSTRATION"));
  }
  options.list = ClinicList::day;
  options.day = "yesterday";
  const auto ended = ended_with([&] {
    const Silence silence;
    static_cast<void>(print_list(options));
  });
  CHECK(holds(ended.second, "/day"));
  const OpenedLedger served(path);
  CHECK(ended_with([&] { static_cast<void>(print_list(options)); }).first == 4);
}

}  // namespace limbledger::rpc
