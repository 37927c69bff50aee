// The parts of the program that touch the machine: folder, lock, passphrase, clock, log, command line.
#include "rpc/program/network/discovery.hpp"
#include "rpc/program/network/pages.hpp"
#include "rpc/program/folder.hpp"
#include "rpc/program/lock_file.hpp"
#include "rpc/program/logging.hpp"
#include "rpc/program/options.hpp"
#include "rpc/program/passphrase.hpp"
#include "rpc/program/problem.hpp"
#include "rpc/program/world.hpp"
#include "tests/unit/rpc/holds.hpp"
#include "tests/unit/rpc/scratch.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <functional>
#include <iostream>
#include <sstream>

namespace limbledger::rpc {

namespace {

// The exit code and the text of a Problem, or -1 where there was none.
struct Said {
  int code = -1;
  std::string text;
};

Said said(const std::function<void()>& action) {
  try {
    action();
  } catch (const Problem& problem) {
    return {static_cast<int>(problem.code()), problem.what()};
  }
  return {};
}

int pipe_with(std::string_view text) {
  std::array<int, 2> ends{};
  REQUIRE(::pipe(ends.data()) == 0);
  REQUIRE(::write(ends[1], text.data(), text.size()) == static_cast<ssize_t>(text.size()));
  ::close(ends[1]);
  return ends[0];
}

mode_t mode_of(const std::string& path) {
  struct stat state {};
  REQUIRE(::stat(path.c_str(), &state) == 0);
  return state.st_mode & 0777;
}

std::optional<Options> options_of(std::vector<const char*> words, int& code) {
  words.insert(words.begin(), "limbledger");
  std::ostringstream out;
  std::ostringstream err;
  auto* old_out = std::cout.rdbuf(out.rdbuf());
  auto* old_err = std::cerr.rdbuf(err.rdbuf());
  auto options = read_options(static_cast<int>(words.size()), words.data(), code);
  std::cout.rdbuf(old_out);
  std::cerr.rdbuf(old_err);
  return options;
}

}  // namespace

TEST_CASE("a held lock is refused with the holder's number and what to do") {
  const Scratch scratch;
  const LockFile first(scratch.path("lock"));
  const Said second = said([&] { const LockFile again(scratch.path("lock")); });
  CHECK(second.code == 4);
  CHECK(holds(second.text, "ledger.in_use"));
  CHECK(holds(second.text, "process " + std::to_string(::getpid())));
}

TEST_CASE("HC-112: the lock of a process that was killed blocks nobody") {
  const Scratch scratch;
  std::array<int, 2> ends{};
  REQUIRE(::pipe(ends.data()) == 0);
  const pid_t child = ::fork();
  if (child == 0) {
    const LockFile held(scratch.path("lock"));
    const char one = '1';
    static_cast<void>(!::write(ends[1], &one, 1));
    ::pause();
    ::_exit(0);
  }
  char one = 0;
  REQUIRE(::read(ends[0], &one, 1) == 1);
  CHECK(said([&] { const LockFile again(scratch.path("lock")); }).code == 4);
  ::kill(child, SIGKILL);
  ::waitpid(child, nullptr, 0);
  CHECK(read_file(scratch.path("lock"), 100)->find(std::to_string(child)) == 0);  // the name of the dead holder is still there
  CHECK(said([&] { const LockFile again(scratch.path("lock")); }).code == -1);
  ::close(ends[0]);
  ::close(ends[1]);
}

TEST_CASE("a new folder is the owner's alone, and one that holds something is not touched") {
  const Scratch scratch;
  CHECK(make_folder(scratch.path("a/b/c")).path == scratch.path("a/b/c"));
  CHECK(mode_of(scratch.path("a/b/c")) == 0700);
  CHECK(said([&] { static_cast<void>(make_folder(scratch.path("a/b/c"))); }).code == -1);
  write_file(scratch.path("a/b/c/x"), "x");
  const Said full = said([&] { static_cast<void>(make_folder(scratch.path("a/b/c"))); });
  CHECK(full.code == 2);
  CHECK(holds(full.text, "not empty"));
  CHECK(said([&] { static_cast<void>(make_folder(scratch.path("a/b/c/x"))); }).code == 2);
}

TEST_CASE("a folder without a ledger is named, with the command that makes one") {
  const Scratch scratch;
  const Said none = said([&] { static_cast<void>(find_folder(scratch.path())); });
  CHECK(none.code == 2);
  CHECK(holds(none.text, "limbledger new " + scratch.path()));
}

TEST_CASE("a file is replaced whole, for the owner alone, and one over the limit is not read") {
  const Scratch scratch;
  write_file(scratch.path("f"), "first");
  write_file(scratch.path("f"), "second");
  CHECK(read_file(scratch.path("f"), 6) == "second");
  CHECK_FALSE(read_file(scratch.path("f"), 5).has_value());
  CHECK_FALSE(read_file(scratch.path("none"), 5).has_value());
  CHECK(mode_of(scratch.path("f")) == 0600);
  CHECK(said([&] { write_file(scratch.path("no/such/folder"), "x"); }).code == 4);
}

TEST_CASE("sidecar.json is the owner's alone, replaces what a crash left, and goes with the program") {
  const Scratch scratch;
  write_file(scratch.path("sidecar.json"), "left by a crash");
  {
    const SidecarFile file({scratch.path()});
    CHECK_FALSE(read_file(scratch.path("sidecar.json"), 1000).has_value());
    Sidecar sidecar = sidecar_at(40211);
    sidecar.tokens = {{{"examiner"}, {"invented"}, {1795515300000}}};
    file.write(sidecar);
    // Contract, section 11.
    CHECK(read_file(scratch.path("sidecar.json"), 1000) ==
          R"({"protocol":1,"pid":)" + std::to_string(::getpid()) +
              R"(,"http":"http://127.0.0.1:40211/rpc","websocket":"ws://127.0.0.1:40211/rpc","tokens":[{"scope":"examiner","token":"invented","expires_at":"2026-11-24T10:15:00.000Z"}]})"
              "\n");
    CHECK(mode_of(scratch.path("sidecar.json")) == 0600);
  }
  CHECK(std::filesystem::is_empty(scratch.path()));
}

TEST_CASE("the pages are the plain files of a folder, by their address; what cannot be served is named") {
  const Scratch scratch;
  const std::string folder = scratch.path("pages");
  namespace fs = std::filesystem;
  fs::create_directories(folder + "/words");
  fs::create_directories(folder + "/.hidden");
  std::vector<std::string> left_out;
  std::vector<std::string> remarks;
  const auto refused = [&] {
    try {
      static_cast<void>(read_pages(folder, left_out, remarks));
    } catch (const Problem& problem) {
      return std::string(problem.what());
    }
    return std::string();
  };
  CHECK(refused().find("holds no index.html") != std::string::npos);
  write_file(folder + "/index.html", "<!doctype html>");
  write_file(folder + "/form.js", "let x;");
  write_file(folder + "/words/en.ftl", "a = b\n");
  write_file(folder + "/.hidden/secret.txt", "x");
  write_file(folder + "/.secret.txt", "x");
  write_file(scratch.path("outside.txt"), "x");
  fs::create_symlink(scratch.path("outside.txt"), folder + "/inside.txt");
  fs::create_directory_symlink(scratch.path(), folder + "/all");
  const Pages pages = read_pages(folder, left_out, remarks);
  CHECK(left_out.empty());
  CHECK(pages.size() == 4);
  CHECK(pages.at("/").text == "<!doctype html>");
  CHECK(pages.at("/index.html").type == "text/html; charset=utf-8");
  CHECK(pages.at("/form.js").text == "let x;");
  CHECK(pages.at("/words/en.ftl").text == "a = b\n");
  write_file(folder + "/keyring", "x");
  write_file(folder + "/a b.js", "x");
  CHECK(read_pages(folder, left_out, remarks).size() == 4);
  std::sort(left_out.begin(), left_out.end());
  REQUIRE(left_out.size() == 2);
  CHECK(left_out[0].find("a b.js (the name is no plain address") != std::string::npos);
  CHECK(left_out[1].find("keyring (no file of this kind is served)") != std::string::npos);
  CHECK(remarks.empty());
}

// Content Security Policy 3, sections 6.7.3 and 8.2: default-src 'self' keeps a script or a handler of the page itself from running; a data
// block of HTML (type application/json) is no script, and style-src lets styles of the page through.
TEST_CASE("a page with a script in itself, which a browser will not run, is named when pages are read") {
  const std::vector<std::pair<std::string, bool>> cases{
      {"<script src=\"form.js\"></script><link rel=\"stylesheet\" href=\"form.css\"><p>onset = today</p>", false},
      {"<script type=\"application/json\" id=\"day\">{\"a\":\"<b onclick=>\"}</script>", false},
      {"<!-- <script>let x;</script> -->", false},
      {"<style>p { margin: 0 }</style><p style=\"margin:0\">x</p>", false},
      {"<script>let x;</script>", true},
      {"<SCRIPT type=\"module\">let x;</SCRIPT>", true},
      {"<button\n onclick='go()'>go</button>", true},
  };
  for (const auto& one : cases) {
    const std::string& html = one.first;
    CAPTURE(html);
    const Scratch scratch;
    const std::string folder = scratch.path("pages");
    std::filesystem::create_directories(folder);
    write_file(folder + "/index.html", "<!doctype html>" + html);
    write_file(folder + "/form.js", "let x;");
    std::vector<std::string> left_out;
    std::vector<std::string> remarks;
    CHECK(read_pages(folder, left_out, remarks).size() == 3);
    CHECK(remarks.size() == (one.second ? 1U : 0U));
    CHECK((remarks.empty() || remarks[0].find("/index.html holds a script in the page itself") != std::string::npos));
  }
}

// Content Security Policy 3, script-src 'self': a browser runs what comes from the address of the page.
TEST_CASE("a script that is loaded from elsewhere or is not in the folder is named when pages are read") {
  const std::vector<std::pair<std::string, std::string>> cases{
      {"<script src=\"form.js\"></script><script src='./form.js?v=2'></script><script type=module src=/form.js></script>", ""},
      {"<!-- <script src=\"late.js\"></script> --><img src=\"late.png\"><script src=\"/description.js\"></script>", ""},
      {"<base href=\"/parts/\"><script src=\"late.js\"></script>", ""},
      {"<script src=\"http://127.0.0.1:8470/form.js\"></script>", ""},
      {"<SCRIPT defer SRC=\"https://elsewhere.example/Form.js\"></SCRIPT>", "loads a script from elsewhere (https://elsewhere.example/Form.js)"},
      {"<script src=//elsewhere.example/form.js></script>", "loads a script from elsewhere (//elsewhere.example/form.js)"},
      {"<script src=\"late.js\"></script>", "names a script that is not served (late.js)"},
      {"<script src=\"Form.js\"></script>", "names a script that is not served (Form.js)"},
  };
  for (const auto& one : cases) {
    CAPTURE(one.first);
    const Scratch scratch;
    const std::string folder = scratch.path("pages");
    std::filesystem::create_directories(folder + "/parts");
    write_file(folder + "/index.html", "<!doctype html>");
    write_file(folder + "/form.js", "let x;");
    write_file(folder + "/parts/more.html", one.first + "<script src=\"../form.js\"></script>");
    write_file(folder + "/parts/form.js", "let x;");
    std::vector<std::string> left_out;
    std::vector<std::string> remarks;
    static_cast<void>(read_pages(folder, left_out, remarks));
    REQUIRE(remarks.size() == (one.second.empty() ? 0U : 1U));
    CHECK((remarks.empty() || remarks[0].find("/parts/more.html " + one.second) != std::string::npos));
  }
}

TEST_CASE("the measure of a flush leaves nothing behind") {
  const Scratch scratch;
  CHECK(flush_us({scratch.path()}) >= 0);
  CHECK(std::filesystem::is_empty(scratch.path()));
}

TEST_CASE("a passphrase is one line of a descriptor, without its end") {
  CHECK(read_passphrase(pipe_with("four words \xC3\xA9\r\nmore")) == "four words \xC3\xA9");
  CHECK(read_passphrase(pipe_with("no end")) == "no end");
  CHECK(said([] { static_cast<void>(read_passphrase(pipe_with("\n"))); }).code == 2);
  CHECK(said([] { static_cast<void>(read_passphrase(pipe_with(std::string(1025, 'x')))); }).code == 2);
  CHECK(said([] { static_cast<void>(read_passphrase(9999)); }).code == 2);
  CHECK(said([] { check_new_passphrase("eleven char"); }).code == 2);
  CHECK(said([] { check_new_passphrase("twelve chars"); }).code == -1);
}

TEST_CASE("time goes on, the boot is drawn once a start, and randomness differs") {
  MachineWorld world;
  const ledger::Reading first = world.now();
  const ledger::Reading second = world.now();
  CHECK(second.up_ms >= first.up_ms);
  CHECK(second.boot == first.boot);
  CHECK(MachineWorld().now().boot != first.boot);
  CHECK((first.clock == ledger::ClockQuality::unset) == (first.wall_ms < 1'793'491'200'000));
  CHECK(new_incident(world) != new_incident(world));
  CHECK(new_incident(world).size() == 16);
}

TEST_CASE("the log holds codes and names, and is the owner's alone") {
  const Scratch scratch;
  const mode_t before = ::umask(077);
  {
    Log log(scratch.path("log/limbledger.log"));
    log.started("stdio lines");
    log.call_failed("finding.record", "value.unusual", "");
    log.call_failed("", "method.unknown", "");
    log.call_failed("exam.sign", "internal.failure", "0123456789abcdef");
  }
  ::umask(before);
  const std::string text = read_file(scratch.path("log/limbledger.log"), 10000).value_or("");
  CHECK(holds(text, "Z info finding.record value.unusual\n"));
  CHECK(holds(text, "Z info - method.unknown\n"));
  CHECK(holds(text, "Z error exam.sign internal.failure incident 0123456789abcdef\n"));
  CHECK(mode_of(scratch.path("log/limbledger.log")) == 0600);
  CHECK(mode_of(scratch.path("log")) == 0700);
  CHECK(said([] { const Log nowhere("/proc/none/log"); }).code == 4);
}

TEST_CASE("the command line is read, and a wrong one ends with code 2") {
  int code = -1;
  const auto serve = options_of({"serve", "--ledger", "/x", "--stdio", "headers", "--scope", "viewer", "--passphrase-fd", "3"}, code);
  REQUIRE(serve.has_value());
  CHECK(serve->command == Command::serve);
  CHECK(serve->framing == Framing::headers);
  CHECK(serve->scope == service::Scope::viewer);
  CHECK(serve->passphrase_fd == 3);
  CHECK((serve->stdio && !serve->http_port));
  const auto network = options_of({"serve", "--http", "0", "--once"}, code);
  REQUIRE(network.has_value());
  CHECK((network->http_port == 0 && network->once && !network->stdio));
  const auto both = options_of({"serve", "--stdio", "lines", "--http", "0"}, code);
  REQUIRE(both.has_value());
  CHECK((both->stdio && both->http_port == 0));
  const auto made = options_of({"new", "/x", "--practice", "--examiner", "Amina"}, code);
  REQUIRE(made.has_value());
  CHECK((made->practice && !made->demonstration && made->examiner == "Amina"));
  CHECK(options_of({"assess", "-", "--json"}, code)->file == "-");
  for (const auto& said : std::vector<std::vector<const char*>>{{"verify", "/x"}, {"verify", "--ledger", "/x"}}) {
    const auto verified = options_of(said, code);
    REQUIRE(verified.has_value());
    CHECK((verified->command == Command::verify && verified->folder == "/x"));
  }
  const auto loops = options_of({"loops", "2026-12-24", "--ledger", "/x"}, code);
  REQUIRE(loops.has_value());
  CHECK((loops->command == Command::clinic_list && loops->list == ClinicList::loops && loops->day == "2026-12-24" && loops->folder == "/x"));
  CHECK(options_of({"conflicts"}, code)->list == ClinicList::conflicts);
  CHECK(options_of({"count", "2026-11"}, code)->list == ClinicList::count);
  CHECK(options_of({"count", "2026-11"}, code)->day == "2026-11");
  CHECK_FALSE(options_of({"count"}, code).has_value());
  CHECK(options_of({"count", "2026-11", "--report"}, code)->report);
  CHECK(options_of({"count", "2026-11", "--reported", "2"}, code)->reported == 2);
  CHECK_FALSE(options_of({"count", "2026-11", "--report", "--reported", "2"}, code).has_value());
  CHECK(options_of({"schemas", "/x"}, code)->command == Command::schemas);
  for (const auto& wrong : std::vector<std::vector<const char*>>{{},
                                                                  {"nonsense"},
                                                                  {"new"},
                                                                  {"new", "/x", "--demo", "--practice"},
                                                                  {"serve"},
                                                                  {"serve", "--stdio", "words"},
                                                                  {"serve", "--http", "65536"},
                                                                  {"serve", "--http", "x"},
                                                                  {"serve", "--stdio", "lines", "--once"},
                                                                  {"serve", "--stdio", "lines", "--scope", "sync"},
                                                                  {"serve", "--stdio", "lines", "--passphrase-fd", "0"},
                                                                  {"verify"},
                                                                  {"verify", "/x", "--ledger", "/y"},
                                                                  {"verify", "/x", "--passphrase-fd", "-1"}}) {
    code = -1;
    CHECK_FALSE(options_of(wrong, code).has_value());
    CHECK(code == 2);
  }
  for (const auto& help : std::vector<std::vector<const char*>>{{"--help"}, {"serve", "--help"}, {"--version"}}) {
    code = -1;
    CHECK_FALSE(options_of(help, code).has_value());
    CHECK(code == 0);
  }
}

TEST_CASE("a refusal of the core becomes plain words and the exit code that belongs to it") {
  const auto code_of = [](std::string_view code) { return static_cast<int>(problem_of(wire::Fault{code, ""}, "x").code()); };
  CHECK(code_of("entry.hash") == 1);
  CHECK(code_of("json.syntax") == 1);
  CHECK(code_of("ledger.none") == 2);
  CHECK(code_of("ledger.passphrase") == 3);
  CHECK(code_of("ledger.locked") == 3);
  CHECK(code_of("ledger.in_use") == 4);
  CHECK(code_of("ledger.read_only") == 4);
  CHECK(code_of("internal.memory") == 5);
  const Problem problem = problem_of(wire::Fault{"value.step", "/findings/0/value/deg", "steps of 0.1", "1.55"}, "exam.json");
  CHECK(std::string(problem.what()) ==
        "exam.json /findings/0/value/deg: more decimals than the unit has; expected: steps of 0.1; got: 1.55 (value.step)\n"
        "  what to do: round to the step");
}

}  // namespace limbledger::rpc
