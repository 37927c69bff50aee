// A day's work with a full ledger: 10,000 exams of 60 findings, made by the methods a form calls. Held to: the program, started
// on it, answers health.check while locked within 100 ms; after unlocking, Argon2id apart, the exams of one day are there within
// 1 s and any exam within 50 ms. Source of the figures: the plan of the ledger, section 4 ("at start the program is locked").
// LIMBLEDGER_LIFE_EXAMS makes another number of exams; LIMBLEDGER_PROGRAM names the program.
#include "core/reference/edition.hpp"
#include "core/service/call.hpp"
#include "core/wire/write.hpp"
#include "tests/bench/bench.hpp"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <csignal>

namespace limbledger::bench {

namespace {

constexpr std::size_t findings_an_exam = 60;
constexpr std::size_t exams_a_day = 40;
constexpr std::int64_t day_ms = std::int64_t{24} * 3600 * 1000;
constexpr std::int64_t first_day_ms = 1767225600000;  // 2026-01-01
constexpr int starts = 25;
constexpr int exams_read = 200;

class Clerk {
 public:
  explicit Clerk(service::Desk& desk) {
    context_.desk = &desk;
    context_.edition = &desk.edition();
  }
  std::string ask(const std::string& method, const std::string& params) {
    const auto document = need(wire::parse(params), "params");
    return need(service::call(service::methods(), context_, method, document, &document.root()), method.c_str());
  }
  std::string exam(std::size_t number, const std::string& findings) {
    const std::int64_t at = first_day_ms + static_cast<std::int64_t>(number / exams_a_day) * day_ms + static_cast<std::int64_t>(number % exams_a_day) * 600'000;
    const std::string opened = ask("exam.open", R"({"complaint":"free","setting":"outreach","side":"left","examined_at":)" + wire::write(model::Instant{at}) +
                                                    R"(,"request":")" + request_id(2 * number) + "\"}");
    const std::string id = between(opened, R"("exam":{"exam":")", "\"");
    ask("finding.record", R"({"exam":")" + id + R"(","findings":)" + findings + R"(,"seen":[")" +
                              between(opened.substr(opened.rfind("\"revision\":[\"")), "[\"", "\"") + R"("],"request":")" + request_id(2 * number + 1) + "\"}");
    return id;
  }

 private:
  service::Context context_;
};

// Sixty answers of either leg, taken from the catalogue.
std::string sixty_findings(const reference::Edition& edition) {
  std::string findings;
  std::size_t count = 0;
  for (const model::Item& item : edition.items()) {
    const bool sided = item.sides == std::vector{model::Side::left, model::Side::right};
    if (item.value != model::ValueKind::answer || !sided || item.withheld_by || item.protected_ || item.region.text == "general" || item.region.text == "body") {
      continue;
    }
    for (const char* side : {"left", "right"}) {
      findings += (findings.empty() ? "" : ",") + (R"({"item":")" + item.item.text) + R"(","side":")" + side + R"(","value":{"kind":"answer","answer":"no"}})";
      ++count;
    }
    if (count == findings_an_exam) {
      break;
    }
  }
  if (count != findings_an_exam) {
    std::fprintf(stderr, "only %zu findings\n", count);
    std::exit(1);
  }
  return "[" + findings + "]";
}

// From the start of the program to its answer, in seconds; it is locked.
double first_reply(const std::string& program, const std::string& folder) {
  std::array<int, 2> in{};
  std::array<int, 2> out{};
  if (::pipe2(in.data(), O_CLOEXEC) != 0 || ::pipe2(out.data(), O_CLOEXEC) != 0) {
    std::exit(1);
  }
  pid_t child = -1;
  std::string said;
  const double took = seconds([&] {
    child = ::fork();
    if (child == 0) {
      ::dup2(in[0], 0);
      ::dup2(out[1], 1);
      ::dup2(::open("/dev/null", O_WRONLY), 2);
      ::execl(program.c_str(), program.c_str(), "serve", "--ledger", folder.c_str(), "--stdio", "lines", nullptr);
      ::_exit(127);
    }
    const std::string call = "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"health.check\"}\n";
    static_cast<void>(!::write(in[1], call.data(), call.size()));
    ::close(out[1]);
    std::array<char, 8192> piece{};
    for (ssize_t got = 1; got > 0 && said.find('\n') == std::string::npos;) {
      got = ::read(out[0], piece.data(), piece.size());
      said.append(piece.data(), static_cast<std::size_t>(std::max<ssize_t>(got, 0)));
    }
  });
  ::close(in[0]);
  ::close(in[1]);
  ::close(out[0]);
  ::waitpid(child, nullptr, 0);
  if (said.find(R"("state":"locked")") == std::string::npos) {
    std::fprintf(stderr, "not locked: %s\n", said.c_str());
    std::exit(1);
  }
  return took;
}

int held_to(const char* what, double took, double at_most) {
  std::printf("%s: %.1f ms (at most %.0f ms)\n", what, took * 1e3, at_most * 1e3);
  return took <= at_most ? 0 : 1;
}

int run() {
  const char* wanted_exams = std::getenv("LIMBLEDGER_LIFE_EXAMS");
  const std::size_t exams = wanted_exams != nullptr ? std::strtoull(wanted_exams, nullptr, 10) : 10'000;
  const char* named = std::getenv("LIMBLEDGER_PROGRAM");
  const std::string program = named != nullptr ? named : "./limbledger";
  const Folder folder;
  std::vector<std::string> ids;
  service::NewLedger wanted;
  ledger::Bytes keyring;
  model::ClinicId clinic;
  {
    OnDisk disk(folder.path + "/ledger.sqlite", store::Flush::off);
    keyring = disk.keyring;
    wanted = disk.wanted;
    clinic = disk.store->clinic();
    const auto desk = need(service::Desk::open(*disk.store, disk.world, *reference::built_in_edition(), disk.keyring), "desk");
    static_cast<void>(need(desk->unlock("", wanted.passphrase), "unlock"));
    Clerk clerk(*desk);
    const std::string findings = sixty_findings(desk->edition());
    const double took = seconds([&] {
      for (std::size_t i = 0; i < exams; ++i) {
        ids.push_back(clerk.exam(i, findings));
      }
    });
    std::printf("%zu exams of %zu findings made in %.0f s\n", exams, findings_an_exam, took);
  }
  rpc::write_file(folder.path + "/keyring", {reinterpret_cast<const char*>(keyring.data()), keyring.size()});

  std::vector<double> first;
  for (int i = 0; i < starts; ++i) {
    first.push_back(first_reply(program, folder.path));
  }

  BenchWorld world;
  store::SqliteOptions options;
  options.clinic = clinic;
  const auto store = need(store::SqliteStore::open(folder.path + "/ledger.sqlite", options), "open the store");
  const auto desk = need(service::Desk::open(*store, world, *reference::built_in_edition(), keyring), "desk");
  const double argon = seconds([&] { static_cast<void>(service::spend_passphrase(wanted.argon_passes, wanted.argon_kib)); });
  const double unlocking = seconds([&] { static_cast<void>(need(desk->unlock("", wanted.passphrase), "unlock")); }) - argon;
  Clerk clerk(*desk);
  const std::int64_t day = first_day_ms + static_cast<std::int64_t>(exams / exams_a_day / 2) * day_ms;
  const std::string date = wire::write(model::date_of({day}, 0));
  std::string found;
  const double finding = seconds([&] {
    found = clerk.ask("exam.find", R"({"from":)" + date + R"(,"to":)" + date + R"(,"limit":100})");
  });
  std::size_t listed = 0;
  for (std::size_t at = found.find(R"({"exam":")"); at != std::string::npos; at = found.find(R"({"exam":")", at + 1)) {
    ++listed;
  }
  std::printf("unlocking without Argon2id %.0f ms, the day's %zu exams %.0f ms after it\n", unlocking * 1e3, listed, finding * 1e3);
  double slowest = 0;
  for (int i = 0; i < exams_read; ++i) {
    const std::string& id = ids[static_cast<std::size_t>(i) * 7919 % ids.size()];
    slowest = std::max(slowest, seconds([&] { clerk.ask("exam.read", R"({"exam":")" + id + "\"}"); }));
  }
  const int failed = held_to("the first reply of the program while locked", median(first), 0.1) + held_to("one day's exams after unlocking", unlocking + finding, 1.0) +
                     held_to("the slowest of 200 exams read", slowest, 0.05) + (listed == std::min(exams, exams_a_day) ? 0 : 1);
  std::printf("%d passed, %d failed\n", 4 - failed, failed);
  return failed == 0 ? 0 : 1;
}

}  // namespace

}  // namespace limbledger::bench

int main() { return limbledger::bench::run(); }
