// The form of each complaint (form.describe, params in, answer out) against the same call that is refused for want of a complaint
// that there is: everything but the form itself. In turns; each turn is the middle of many calls. The slowest complaint but the
// free examination decides. What an exam adds (its findings, its concerns) is shown beside it.
#include "core/reference/edition.hpp"
#include "core/service/call.hpp"
#include "core/store/memory.hpp"
#include "tests/bench/bench.hpp"

namespace limbledger::bench {

namespace {

constexpr int rounds = 15;
constexpr int calls_a_round = 40;
// Measured 1 to 2.2 times, 5.3 for the whole limb, whose answer is long.
constexpr double at_most = 8;
constexpr double aim = 5;

struct Asked {
  service::Context context;
  std::string text;

  [[nodiscard]] std::size_t call(std::string_view method) {
    const auto document = need(wire::parse(text), "params");
    const auto said = service::call(service::methods(), context, method, document, &document.root());
    return said ? said->size() : 1;
  }
};

[[nodiscard]] double middle(Asked& asked, std::size_t& bytes) {
  std::vector<double> times;
  for (int i = 0; i < calls_a_round; ++i) {
    times.push_back(seconds([&] { bytes = asked.call("form.describe"); }));
  }
  return median(std::move(times));
}

int run() {
  BenchWorld world;
  store::MemoryStore store;
  service::NewLedger wanted;
  wanted.examiner_label = "Invented";
  wanted.passphrase = "nine invented words in a row";
  wanted.argon_passes = ledger::slot_cost_low.t;
  wanted.argon_kib = ledger::slot_cost_low.m_kib;
  service::MadeLedger made = need(service::make_ledger(store, world, wanted), "make the ledger");
  const auto desk = need(service::Desk::open(store, world, *reference::built_in_edition(), std::move(made.keyring)), "desk");
  service::Context context;
  context.desk = desk.get();
  context.edition = &desk->edition();
  context.caller.scope = service::Scope::examiner;
  Asked empty{context, R"({"complaint":"nothing"})"};
  double worst = 0;
  for (const model::Sequence& sequence : desk->edition().sequences()) {
    Asked whole{context, R"({"complaint":")" + sequence.complaint.text + "\"}"};
    // Not kept: the form is laid out and written each time.
    Asked brief{context, R"({"complaint":")" + sequence.complaint.text + R"(","minutes":240})"};
    std::size_t bytes = 0;
    std::size_t none = 0;
    std::vector<double> ours;
    std::vector<double> anew;
    std::vector<double> floors;
    for (int round = 0; round < rounds; ++round) {
      ours.push_back(middle(whole, bytes));
      anew.push_back(middle(brief, bytes));
      floors.push_back(middle(empty, none));
    }
    const double ratio = median(ours) / median(floors);
    std::printf("%-20s %7zu bytes: %.1f us, laid out anew %.1f us, empty call %.2f us: %.2f x\n", sequence.complaint.text.c_str(), bytes, median(ours) * 1e6,
                median(anew) * 1e6, median(floors) * 1e6, ratio);
    if (sequence.complaint.text != "free") {
      worst = std::max(worst, ratio);
    }
  }
  return judge("the form of a complaint against an empty call", worst, at_most, aim);
}

}  // namespace

}  // namespace limbledger::bench

int main() { return limbledger::bench::run(); }
