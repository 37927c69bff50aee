// From findings to the Pittsburgh knee rule, and what is said where the two knee rules differ. The rule itself is checked elsewhere
// over all its inputs. Sources: decision rules page, section 2 (SEABERG1994, SEABERG1998); clinical safety, C7 and S08.
#include "core/interpret/rules/knee/pittsburgh_knee.hpp"

#include "tests/unit/interpret/support.hpp"
#include "tests/unit/invented/edition.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using namespace limbledger::interpret_test;
using interpret::Outcome;

namespace {

interpret::RuleResult pittsburgh(const Bench& bench) {
  for (const auto& rule : bench.assess().rules) {
    if (rule.rule.text == interpret::pittsburgh_knee_rule && rule.side == Side::left) {
      return rule;
    }
  }
  return {};
}

Bench fell(int born) {
  Bench made(invented_edition());
  made.nothing_found();
  made.born(born, 1, 1);
  made.yes("history.fall_or_blow", Side::midline);
  return made;
}

}  // namespace

TEST_CASE("pkr: after a fall, 51 years is enough and 50 is not (worked examples 1 and 2)") {
  CHECK(pittsburgh(fell(1975)).outcome == Outcome::positive);
  CHECK(pittsburgh(fell(1976)).outcome == Outcome::negative);
}

TEST_CASE("pkr: who fell and was not asked how is open only where it matters (worked examples 7 and 8)") {
  Bench walks = fell(1996);
  walks.drop("history.fall_or_blow");
  CHECK(pittsburgh(walks).outcome == Outcome::negative);
  walks.find("gait.steps_now").value = model::CountValue{{2}};
  CHECK(pittsburgh(walks).outcome == Outcome::undetermined);
  CHECK(settle_of(pittsburgh(walks)) == "blunt");
  CHECK(state_of(pittsburgh(walks), "blunt") == "not_asked");
}

TEST_CASE("pkr: a fall as the mechanism counts, a twist says nothing of a fall, and two answers that differ leave it open") {
  Bench made = fell(1970);
  made.drop("history.fall_or_blow");
  made.add("history.mechanism", Side::midline, model::Choice{{"twist"}});
  CHECK(pittsburgh(made).outcome == Outcome::undetermined);
  made.find("history.mechanism").value = model::Choice{{"fall"}};
  CHECK(pittsburgh(made).outcome == Outcome::positive);
  made.no("history.fall_or_blow", Side::midline);
  CHECK(pittsburgh(made).outcome == Outcome::undetermined);
  CHECK(state_of(pittsburgh(made), "blunt") == "examiners_disagree");
}

TEST_CASE("pkr: what a kiosk or a group entry says of the fall settles nothing") {
  Bench made = fell(1970);
  made.find("history.fall_or_blow").origin = model::Origin::self_reported;
  CHECK(pittsburgh(made).outcome == Outcome::undetermined);
  CHECK(state_of(pittsburgh(made), "blunt") == "self_reported");
}

TEST_CASE("pkr: a twist and no four steps is negative by the letter and contradicted, never a bare negative (worked example 5)") {
  Bench made = fell(1956);
  made.find("history.fall_or_blow").value = model::Answer{model::AnswerWord::no};
  made.find("gait.steps_now").value = model::CountValue{{0}};
  const auto rule = pittsburgh(made);
  CHECK(rule.outcome == Outcome::negative);
  CHECK(flagged(rule, "contradicted"));
}

TEST_CASE("pkr: tender bone, which this rule does not look at, contradicts its negative") {
  Bench made = fell(1996);
  made.find("knee.fibular_head_tender").value = model::Answer{model::AnswerWord::yes};
  CHECK(flagged(pittsburgh(made), "contradicted"));
}

TEST_CASE("pkr: a replaced knee had an operation, for which the rule was not made") {
  Bench made = fell(1970);
  made.yes("body.knee_replaced", Side::left);
  CHECK(pittsburgh(made).outcome == Outcome::not_applicable);
  CHECK(pittsburgh(made).gate->text == "implant");
}

TEST_CASE("C7: where one knee rule advises a film and the other does not, both are shown and both say so") {
  Bench made = fell(1956);  // 70: the Ottawa rule is met by age
  made.find("history.fall_or_blow").value = model::Answer{model::AnswerWord::no};
  CHECK(made.rule().outcome == Outcome::positive);
  CHECK(pittsburgh(made).outcome == Outcome::negative);
  CHECK(flagged(made.rule(), "rules_disagree"));
  CHECK(flagged(pittsburgh(made), "rules_disagree"));
}

TEST_CASE("the Pittsburgh rule explains itself line by line") {
  const auto working = fell(1970).explain("rule.pittsburgh_knee:left");
  REQUIRE(working.lines.size() == 4);
  CHECK(working.lines[0].text == "a fall or a blow: met");
  CHECK(working.lines[1].text == "age 56, under 12 or over 50: met");
  CHECK(working.rows.front().source.text == "SEABERG1994");
}
