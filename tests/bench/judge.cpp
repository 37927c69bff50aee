// Judging a whole exam of both limbs, 200 findings, as one pure call (exam in, assessment out; nothing read or written), against the
// fastest look at the same exam's text: simdjson's On-Demand walk over every name and value. Beside it: what is allocated, how the
// time grows with the findings, and what finding.record judges of it at one finding: the alerts of its answer and, where the item may
// be withheld, what withholds it. Everything is as expected, so that all of it is judged; beside it the same exam with no power and no
// pulse, an emergency, of which no next step is looked for: its alerts are held to the same share of its own, shorter assessment.
#include "core/interpret/assess.hpp"
#include "core/interpret/judged.hpp"
#include "core/wire/read.hpp"
#include "core/wire/write.hpp"
#include "tests/bench/bench.hpp"
#include "tests/bench/expected.hpp"
#include "tests/bench/walk.hpp"

#include <cstdlib>
#include <new>

namespace {

std::size_t allocated_bytes = 0;

}  // namespace

[[gnu::noinline]] void* operator new(std::size_t size) {
  allocated_bytes += size;
  void* at = std::malloc(size == 0 ? 1 : size);
  if (at == nullptr) {
    throw std::bad_alloc();
  }
  return at;
}
[[gnu::noinline]] void operator delete(void* at) noexcept { std::free(at); }
[[gnu::noinline]] void operator delete(void* at, std::size_t) noexcept { std::free(at); }

namespace limbledger::bench {

namespace {

constexpr int rounds = 25;
constexpr int calls_a_round = 40;
constexpr int walks_a_round = 200;
constexpr std::size_t whole = 200;
constexpr double at_most = 20;
constexpr double aim = 15;
constexpr std::size_t bytes_at_most = 1 << 20;
constexpr double alerts_at_most = 0.1;
constexpr double growth_at_most = 2.6;  // twice the findings, with room for noise

// Of every second item: half as many findings, and as many of each kind among them.
[[nodiscard]] model::Exam half_of(const model::Exam& exam) {
  model::Exam half = exam;
  half.findings.emplace();
  std::size_t nth = 0;
  for (std::size_t i = 0; i < exam.findings->size(); ++i) {
    if (i > 0 && !((*exam.findings)[i].item == (*exam.findings)[i - 1].item)) {
      ++nth;
    }
    if (nth % 2 == 0) {
      half.findings->push_back((*exam.findings)[i]);
    }
  }
  return half;
}

struct Judging {
  const reference::Edition& edition = *reference::built_in_edition();
  std::optional<model::Person> person;
  interpret::AssessAsk ask;
  std::size_t said = 0;

  Judging() {
    person.emplace();
    person->birth = need(wire::read_text<model::Birth>(R"({"date":"1971-05-12"})"), "birth");
    person->sex = model::Sex::female;
    person->norm_sex = model::NormSex::female;
    ask.as_of = need(wire::read_text<model::PartialDate>("\"2026-11-24\""), "day");
  }
  void assess(const model::Exam& exam) { said += interpret::assess(exam, person, {}, edition, ask).statements.size(); }
  // What finding.record does before it answers (alerts_of in core/service/methods/exam/watch.cpp).
  void alerts(const model::Exam& exam) {
    const interpret::View view(exam, person, edition, ask.as_of);
    const std::vector<interpret::JudgedFlag> flags = interpret::judge_flags(view);
    said += flags.size() + interpret::raised_alerts(view, flags, {}).size();
  }
  // And what it does before it writes an item that may be withheld (withheld_faults, there).
  void withheld(const model::Exam& exam) {
    const interpret::View view(exam, person, edition, ask.as_of);
    said += interpret::watch(view).flags.size();
  }
};

template <class Work>
[[nodiscard]] double middle_of_round(int calls, const Work& work) {
  std::vector<double> times;
  for (int i = 0; i < calls; ++i) {
    times.push_back(seconds(work));
  }
  return median(std::move(times));
}

[[nodiscard]] bool held(const char* what, bool holds) {
  if (!holds) {
    std::printf("BAD: %s\n", what);
  }
  return holds;
}

int run() {
  Judging judging;
  const model::Exam exam = exam_of(whole, judging.edition);
  // The first items of the catalogue are answers, the later ones motions, which say more: growth is measured on one mix of them.
  const model::Exam twice = exam_of(whole * 2, judging.edition);
  const model::Exam half = half_of(twice);
  const std::string text = wire::write(exam);
  const simdjson::padded_string padded(text);
  Walk walk;
  std::size_t touched = 0;
  std::vector<double> ours;
  std::vector<double> double_size;
  std::vector<double> half_size;
  std::vector<double> alerts;
  std::vector<double> withheld;
  std::vector<double> floors;
  const model::Exam grave = exam_of(whole, judging.edition, Graded::first);
  std::vector<double> grave_whole;
  std::vector<double> grave_alerts;
  for (int round = 0; round < rounds; ++round) {
    ours.push_back(middle_of_round(calls_a_round, [&] { judging.assess(exam); }));
    double_size.push_back(middle_of_round(calls_a_round, [&] { judging.assess(twice); }));
    half_size.push_back(middle_of_round(calls_a_round, [&] { judging.assess(half); }));
    alerts.push_back(middle_of_round(calls_a_round, [&] { judging.alerts(exam); }));
    withheld.push_back(middle_of_round(calls_a_round, [&] { judging.withheld(exam); }));
    grave_whole.push_back(middle_of_round(calls_a_round, [&] { judging.assess(grave); }));
    grave_alerts.push_back(middle_of_round(calls_a_round, [&] { judging.alerts(grave); }));
    floors.push_back(middle_of_round(walks_a_round, [&] { touched += walk.over(padded); }));
  }
  const std::size_t before = allocated_bytes;
  judging.assess(exam);
  const std::size_t bytes = allocated_bytes - before;
  const double per_finding = static_cast<double>(twice.findings->size()) / static_cast<double>(half.findings->size());
  const double growth = median(double_size) / median(half_size) * 2 / per_finding;
  const double alerted = median(alerts) / median(ours);
  std::printf("%zu findings, %zu bytes of text: assessment %.1f us, walk %.2f us; %zu bytes allocated (medians of %d rounds, in turns)\n",
              exam.findings->size(), text.size(), median(ours) * 1e6, median(floors) * 1e6, bytes, rounds);
  std::printf("twice the findings (%zu to %zu of one mix): %.2f x the time (at most %.2f)\n", half.findings->size(), twice.findings->size(), growth, growth_at_most);
  std::printf("alerts after one finding: %.1f us, %.3f of an assessment (at most %.2f); before one that may be withheld: %.1f us more\n", median(alerts) * 1e6, alerted,
              alerts_at_most, median(withheld) * 1e6);
  const double grave_alerted = median(grave_alerts) / median(grave_whole);
  std::printf("an emergency: assessment %.1f us, alerts after one finding %.1f us, %.3f of it (at most %.2f)\n", median(grave_whole) * 1e6, median(grave_alerts) * 1e6, grave_alerted, alerts_at_most);
  const bool measured = held("nothing was measured", touched != 0 && judging.said != 0 && exam.findings->size() == whole);
  const bool small = held("bytes allocated", bytes <= bytes_at_most);
  const bool linear = held("growth with the findings", growth <= growth_at_most);
  const bool quick = held("alerts after one finding", alerted <= alerts_at_most);
  const bool quick_when_grave = held("alerts after one finding of an emergency", grave_alerted <= alerts_at_most);
  if (!measured || !small || !linear || !quick || !quick_when_grave) {
    std::printf("0 passed, 1 failed\n");
    return 1;
  }
  return judge("judging a whole exam against walking its text", median(ours) / median(floors), at_most, aim);
}

}  // namespace

}  // namespace limbledger::bench

int main() { return limbledger::bench::run(); }
