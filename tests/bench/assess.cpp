// Assessing a whole knee exam that stands in no ledger, as a client asks for it (the text of the params in, the text of the
// assessment out, nothing carried), against the fastest look at the same text that there is: simdjson's On-Demand walk that
// touches every name and value. In turns; each turn is the middle of many calls. The exam is the fullest of the invented ones.
#include "core/reference/edition.hpp"
#include "core/service/call.hpp"
#include "tests/bench/bench.hpp"
#include "tests/bench/walk.hpp"

#include <fstream>
#include <iterator>

namespace limbledger::bench {

namespace {

constexpr int rounds = 25;
constexpr int calls_a_round = 40;
constexpr int walks_a_round = 400;
// Measured 55 to 58 times, and about a third more.
constexpr double at_most = 50;
constexpr double aim = 40;

std::string params_text() {
  std::ifstream file(std::string(LIMBLEDGER_SOURCE_DIR) + "/tests/unit/report/exams/football.json");
  const std::string document{std::istreambuf_iterator<char>(file), {}};
  if (document.empty()) {
    std::fprintf(stderr, "the exam cannot be read\n");
    std::exit(1);
  }
  return "{\"document\":" + document + "}";
}

int run() {
  const std::string text = params_text();
  const simdjson::padded_string padded(text);
  service::Context context;
  context.edition = reference::built_in_edition();
  context.caller.scope = service::Scope::examiner;
  std::size_t touched = 0;
  std::size_t said = 0;
  Walk walk;
  std::vector<double> ours;
  std::vector<double> floors;
  for (int round = 0; round < rounds; ++round) {
    std::vector<double> times;
    for (int i = 0; i < calls_a_round; ++i) {
      times.push_back(seconds([&] {
        const auto document = need(wire::parse(text), "params");
        said = need(service::call(service::methods(), context, "document.assess", document, &document.root()), "document.assess").size();
      }));
    }
    ours.push_back(median(times));
    times.clear();
    for (int i = 0; i < walks_a_round; ++i) {
      times.push_back(seconds([&] { touched = walk.over(padded); }));
    }
    floors.push_back(median(times));
  }
  if (touched == 0 || said == 0) {
    std::fprintf(stderr, "nothing was walked or said\n");
    return 1;
  }
  std::printf("%zu bytes in, %zu out: assessment %.1f us, walk %.2f us (medians of %d rounds, in turns)\n", text.size(), said, median(ours) * 1e6,
              median(floors) * 1e6, rounds);
  return judge("assessing a whole knee exam against walking its text", median(ours) / median(floors), at_most, aim);
}

}  // namespace

}  // namespace limbledger::bench

int main() { return limbledger::bench::run(); }
