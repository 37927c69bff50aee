// Laws that hold for every exam of the limb (exams.hpp): all complaints, all bodies, all ages, everything the catalogue names. Order never
// matters; exchanging the sides exchanges the answer and nothing else; a finding of another joint or side moves no hypothesis; a negative
// turned positive never lowers its hypothesis; no range holds certainty; an undetermined rule is settled by exactly what it names; what
// was raised without a finding stays when that finding comes, unless it completes an input of the alert or contradicts what stands in its
// own place; an alert that goes, by correction or by what came later, is shown as withdrawn; taking an answer away never makes a rule more certain. Rules, dangers and conditions are
// read from the program's lists.
// Sources: clinical safety, requirements 2, 4, 5 and 6; contract, section 7. Findings are invented.
#include "tests/simulation/limb/laws.hpp"

#include "core/interpret/alerts/red_flag.hpp"
#include "core/interpret/rules/rule.hpp"
#include "core/wire/write.hpp"
#include "tests/simulation/knee_exams.hpp"
#include "tests/simulation/knee_laws.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>

using namespace limbledger;
using namespace limbledger::limb_laws;
using interpret::Assessment;
using model::Side;

namespace {

Assessment assessed(const Bench& made, std::vector<std::string> only) {
  interpret::AssessAsk ask = made.ask();
  ask.only = std::move(only);
  ask.protected_ = true;
  return interpret::assess(made.exam, made.person, made.earlier, *made.edition, ask);
}

const std::vector<std::string> whole_limb{"alerts", "questions", "flags", "rules", "statements", "hypotheses", "missing", "contradictions"};

template <class Part>
void add_limb_parts(std::vector<std::string>& parts, const std::vector<Part>& list, bool exchanged) {
  for (const Part& one : list) {
    parts.push_back(exchanged ? interpret_test::exchange_words(wire::write(one)) : wire::write(one));
  }
}

// Which of two equals comes first may rest on the side's name; what is said may not. So the parts, sorted.
std::vector<std::string> limb_parts(const Assessment& said, bool exchanged) {
  std::vector<std::string> parts;
  add_limb_parts(parts, said.alerts, exchanged);
  add_limb_parts(parts, said.flags, exchanged);
  for (interpret::RuleResult rule : said.rules) {
    // A rule of the whole person, or one that hears both arms, names the sides in one order.
    std::vector<std::string> lists;
    add_limb_parts(lists, rule.settle, exchanged);
    add_limb_parts(lists, rule.inputs, exchanged);
    std::sort(lists.begin(), lists.end());
    rule.settle.clear();
    rule.inputs.clear();
    std::vector<std::string> one;
    add_limb_parts(one, std::vector<interpret::RuleResult>{rule}, exchanged);
    for (const std::string& listed : lists) {
      one.front() += listed;
    }
    parts.push_back(std::move(one.front()));
  }
  add_limb_parts(parts, said.statements, exchanged);
  add_limb_parts(parts, said.hypotheses, exchanged);
  add_limb_parts(parts, said.missing, exchanged);
  add_limb_parts(parts, said.contradictions, exchanged);
  std::sort(parts.begin(), parts.end());
  return parts;
}

void limb_order_never_matters(std::uint64_t seed, const Bench& made, const Assessment& said) {
  Draw draw(seed + 77);
  Bench shuffled = made;
  auto& findings = *shuffled.exam.findings;
  for (std::size_t i = findings.size(); i > 1; --i) {
    std::swap(findings[i - 1], findings[draw.below(i)]);
  }
  const std::string text = wire::write(said);
  const std::string other = wire::write(assessed(shuffled, whole_limb));
  if (other != text) {
    REQUIRE(other == text);
  }
  // The next step asks every answer again: dearer, and so more seldom.
  if (seed % 64 == 0) {
    CHECK(wire::write(assessed(shuffled, {"steps"})) == wire::write(assessed(made, {"steps"})));
  }
}

void limb_sides_exchange(const Bench& made, const Assessment& said) {
  const auto other = [](Side side) { return side == Side::left ? Side::right : (side == Side::right ? Side::left : Side::midline); };
  Bench exchanged = made;
  for (auto& finding : *exchanged.exam.findings) {
    finding.side = other(finding.side);
  }
  if (made.exam.side) {
    exchanged.exam.side = other(*made.exam.side);
  }
  const auto expected = limb_parts(said, true);
  const auto got = limb_parts(assessed(exchanged, whole_limb), false);
  if (got != expected) {
    std::vector<std::string> missing;
    std::set_difference(expected.begin(), expected.end(), got.begin(), got.end(), std::back_inserter(missing));
    std::vector<std::string> extra;
    std::set_difference(got.begin(), got.end(), expected.begin(), expected.end(), std::back_inserter(extra));
    CHECK((extra.empty() ? std::string() : extra.front()) == (missing.empty() ? std::string() : missing.front()));
  }
}

struct Count {
  std::uint64_t exams = 0;
  std::uint64_t ranges = 0;
  std::uint64_t bands = 0;
  std::uint64_t turned = 0;
  std::uint64_t settled = 0;
  knee_laws::Taken taken;
  Met met;
  std::set<std::string> complaints;
  std::set<std::string> rules;
  std::set<std::string> raised;
};

// Mostly a finding that an alert rests on.
std::size_t to_correct(const Bench& made, const Said& said, Draw& draw) {
  const auto& findings = *made.exam.findings;
  const auto& because = said.alerts[draw.below(said.alerts.size())].because;
  if (!because.empty() && !draw.one_in(4)) {
    const model::FindingId id = because[draw.below(because.size())];
    const auto at = std::find_if(findings.begin(), findings.end(), [&](const auto& one) { return one.finding == id; });
    if (at != findings.end()) {
      return static_cast<std::size_t>(at - findings.begin());
    }
  }
  return draw.below(findings.size());
}

void hold_laws(std::uint64_t seed, Count& count) {
  Bench made = limb_exams::random_limb(seed);
  Draw draw(seed + 9);
  ++count.exams;
  count.complaints.insert(made.exam.complaint.text);
  // The whole assessment in turns: dearer than all that follows.
  if (seed % 4 < 2) {
    const Assessment whole = assessed(made, whole_limb);
    seed % 4 == 0 ? limb_order_never_matters(seed, made, whole) : limb_sides_exchange(made, whole);
  }
  const Said said = said_of(made);
  count.ranges += never_certain(said);
  for (const auto& rule : said.rules) {
    count.rules.insert(rule.rule.text);
  }
  for (const auto& alert : said.alerts) {
    count.raised.insert(alert.alert.text);
  }
  auto& findings = *made.exam.findings;
  if (findings.empty()) {
    return;
  }
  const std::size_t at = draw.below(findings.size());
  Bench without = made;
  without.exam.findings->erase(without.exam.findings->begin() + static_cast<std::ptrdiff_t>(at));
  one_came(made, findings[at], without, said_of(without), said, count.met);
  if (!said.alerts.empty()) {
    Draw completing(seed + 13);
    one_completed(made, said, completing, count.met);
    one_corrected(made, said, to_correct(made, said, draw), draw, count.met);
  }
  count.bands += knee_laws::bands_from_good_rows(made, said.hypotheses);
  count.turned += knee_laws::positive_never_lowers(made, said.hypotheses);
  if (seed % 4 == 2) {
    count.settled += knee_laws::settled_by_what_is_named(made, said.rules);
  }
  if (seed % 4 == 3) {
    const knee_laws::Taken here = knee_laws::unknown_is_never_more_certain(made, said.rules);
    count.taken.away += here.away;
    count.taken.opened += here.opened;
  }
}

}  // namespace

TEST_CASE("laws of an exam of the whole limb: order, sides, what is unrelated, positives, what settles a rule, dangers, corrections") {
  const knee_exams::Seeds seeds = knee_exams::seeds();
  Count count;
  for (std::uint64_t seed = seeds.first; seed < seeds.first + seeds.count; ++seed) {
    CAPTURE(seed);
    hold_laws(seed, count);
  }
  MESSAGE(count.exams << " exams of " << count.complaints.size() << " complaints, " << count.rules.size() << " rules, " << count.raised.size()
                      << " dangers raised; met: unrelated " << count.met.unrelated << ", raised " << count.met.raised << ", answered "
                      << count.met.answered << ", open rules " << count.met.open_rules << ", withdrawn " << count.met.withdrawn << ", lowered " << count.met.lowered << ", ranges "
                      << count.ranges << ", bands " << count.bands << ", turned " << count.turned << ", settled " << count.settled << ", away "
                      << count.taken.away << ", opened " << count.taken.opened);
  // The exams are not empty: each law was met, and what the lists name was reached.
  const bool few = seeds.count < 1'000;
  CHECK((few || count.complaints.size() == limb_exams::facts().sequences().size()));
  for (const interpret::Rule& rule : interpret::all_rules()) {
    CAPTURE(rule.rule);
    CHECK((few || count.rules.count(std::string(rule.rule)) == 1));
  }
  CHECK((few || count.raised.size() * 2 > interpret::all_red_flags().size()));
  CHECK(count.met.unrelated > seeds.count / 2);
  CHECK(count.met.raised > seeds.count / 5);
  CHECK(count.met.answered > seeds.count / 10);
  CHECK(count.met.open_rules > seeds.count / 4);
  CHECK(count.met.withdrawn > seeds.count / 40);
  if (seeds.count >= 2'000) {  // met once in 500 exams: of fewer, none is no wonder
    CHECK(count.met.lowered > seeds.count / 1'000);
  }
  CHECK(count.ranges > seeds.count / 20);
  CHECK(count.bands > seeds.count / 20);
  CHECK(count.turned > seeds.count / 5);
  CHECK(count.settled > seeds.count / 2);
  CHECK(count.taken.away > seeds.count / 10);
}
