// Laws that hold for every knee exam (knee_exams.hpp): order never matters; exchanging the sides exchanges the answer and nothing
// else; no band from a row that may not compute; turning a result from negative to positive never lowers its hypothesis; an
// undetermined rule is settled by exactly the inputs it names; unknown never yields more certainty. One pass over the exams, one
// whole assessment each for all of them. Sources: clinical safety, requirements 5 and 6; contract, section 7. Findings are invented.
#include "tests/simulation/knee_laws.hpp"
#include "core/wire/write.hpp"
#include "tests/simulation/knee_exams.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>

using namespace limbledger;
using namespace limbledger::interpret_test;
using interpret::Assessment;
using interpret::Outcome;
using knee_laws::Taken;

namespace {

const std::vector<std::string> all_but_steps{"alerts", "questions", "flags", "rules", "statements", "hypotheses", "missing", "contradictions"};

// The next step asks every answer again; it is left out where it is not what is looked at.
Assessment assess(const Bench& made, const std::vector<std::string>& only = all_but_steps) {
  interpret::AssessAsk ask = made.ask();
  ask.only = only;
  return interpret::assess(made.exam, made.person, made.earlier, *made.edition, ask);
}

template <class Part>
void add_parts(std::vector<std::string>& parts, const std::vector<Part>& list, bool exchanged) {
  for (const Part& one : list) {
    parts.push_back(exchanged ? exchange_words(wire::write(one)) : wire::write(one));
  }
}

// What would settle a rule of the whole person stands side by side: so each answer by itself, sorted.
void add_rules(std::vector<std::string>& parts, const Assessment& said, bool exchanged) {
  for (interpret::RuleResult rule : said.rules) {
    std::vector<std::string> settles;
    add_parts(settles, rule.settle, exchanged);
    std::sort(settles.begin(), settles.end());
    rule.settle.clear();
    std::string part = exchanged ? exchange_words(wire::write(rule)) : wire::write(rule);
    for (const std::string& settle : settles) {
      part += settle;
    }
    parts.push_back(std::move(part));
  }
}

// Which of two equal questions or steps comes first may rest on the side's name; what is said may not. So the parts, sorted.
std::vector<std::string> parts_of(const Assessment& said, bool exchanged) {
  std::vector<std::string> parts;
  add_parts(parts, said.alerts, exchanged);
  add_parts(parts, said.flags, exchanged);
  add_rules(parts, said, exchanged);
  add_parts(parts, said.statements, exchanged);
  add_parts(parts, said.hypotheses, exchanged);
  add_parts(parts, said.missing, exchanged);
  add_parts(parts, said.contradictions, exchanged);
  std::sort(parts.begin(), parts.end());
  return parts;
}

void order_never_matters(std::uint64_t seed, const Bench& made, const std::string& text) {
  Draw draw(seed + 77);
  Bench shuffled = made;
  auto& findings = *shuffled.exam.findings;
  for (std::size_t i = findings.size(); i > 1; --i) {
    std::swap(findings[i - 1], findings[draw.below(i)]);
  }
  const std::string other = wire::write(assess(shuffled));
  if (other != text) {
    REQUIRE(other == text);
  }
  if (seed % 50 == 0) {
    CHECK(wire::write(assess(shuffled, {"steps"})) == wire::write(assess(made, {"steps"})));
  }
}

void sides_exchange(const Bench& made, const Assessment& said) {
  Bench exchanged = made;
  for (auto& finding : *exchanged.exam.findings) {
    finding.side = finding.side == Side::left ? Side::right : (finding.side == Side::right ? Side::left : Side::midline);
  }
  exchanged.exam.side = *made.exam.side == Side::left ? Side::right : Side::left;
  const auto expected = parts_of(said, true);
  const auto got = parts_of(assess(exchanged), false);
  if (got != expected) {
    std::vector<std::string> missing;
    std::set_difference(expected.begin(), expected.end(), got.begin(), got.end(), std::back_inserter(missing));
    std::vector<std::string> extra;
    std::set_difference(got.begin(), got.end(), expected.begin(), expected.end(), std::back_inserter(extra));
    REQUIRE((extra.empty() ? std::string() : extra.front()) == (missing.empty() ? std::string() : missing.front()));
  }
}

}  // namespace

TEST_CASE("laws of a knee exam: order, sides, rows that may compute, positives, what settles a rule, unknown never more certain") {
  const knee_exams::Seeds seeds = knee_exams::seeds();
  std::uint64_t hypotheses = 0;
  std::uint64_t bands = 0;
  std::uint64_t turned = 0;
  std::uint64_t settled = 0;
  Taken taken;
  std::map<Outcome, std::uint64_t> outcomes;
  for (std::uint64_t seed = seeds.first; seed < seeds.first + seeds.count; ++seed) {
    CAPTURE(seed);
    Bench made = knee_exams::random_knee(seed);
    const Assessment said = assess(made);
    order_never_matters(seed, made, wire::write(said));
    sides_exchange(made, said);
    hypotheses += said.hypotheses.size();
    bands += knee_laws::bands_from_good_rows(made, said.hypotheses);
    turned += knee_laws::positive_never_lowers(made, said.hypotheses);
    for (const auto& rule : said.rules) {
      ++outcomes[rule.outcome];
    }
    settled += knee_laws::settled_by_what_is_named(made, said.rules);
    const Taken here = knee_laws::unknown_is_never_more_certain(made, said.rules);
    taken.away += here.away;
    taken.opened += here.opened;
  }
  // The exams are not empty: each law was met often.
  CHECK(hypotheses > 2 * seeds.count);
  CHECK(bands > seeds.count / 5);
  CHECK(turned > seeds.count);
  CHECK(settled > seeds.count);
  CHECK(taken.away > 2 * seeds.count);
  CHECK(taken.opened > seeds.count / 4);
  CHECK(outcomes[Outcome::negative] > seeds.count / 20);
  CHECK(outcomes[Outcome::positive] > seeds.count / 25);
  CHECK(outcomes[Outcome::undetermined] > seeds.count / 4);
}
