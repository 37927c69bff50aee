// From findings to the Ottawa knee rule. The rule itself is checked elsewhere over all its inputs; here it is what counts as an
// answer. Sources: decision rules page (STIELL1995), the hard cases named in each test.
#include "core/interpret/rules/knee/ottawa_knee.hpp"

#include "tests/unit/interpret/support.hpp"
#include "tests/unit/invented/edition.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using namespace limbledger::interpret_test;
using interpret::Outcome;

namespace {

Bench bench() {
  Bench made(invented_edition());
  made.nothing_found();
  return made;
}

}  // namespace

TEST_CASE("a knee with all criteria answered no is negative and asks for nothing") {
  const auto rule = bench().rule();
  CHECK(rule.outcome == Outcome::negative);
  CHECK(rule.settle.empty());
  CHECK(rule.flags.empty());
  CHECK(rule.edition.text == "okr/1995");
}

TEST_CASE("an empty slot is never no: each of the inputs left out leaves the rule open and is the one that settles it") {
  const std::pair<const char*, const char*> left_out[] = {{"knee.fibular_head_tender", "fib"},
                                                          {"knee.bone_tender_elsewhere", ""},
                                                          {"knee.patella_tender", "pat"},
                                                          {"knee.flexion_active", "flex"},
                                                          {"history.knee_rule_exclusions", "excl"}};
  for (const auto& pair : left_out) {
    Bench made = bench();
    made.drop(pair.first);
    CAPTURE(pair.first);
    CHECK(settle_of(made.rule()) == pair.second);
    CHECK((made.rule().outcome == Outcome::undetermined) == (std::string(pair.second) != ""));
  }
}

TEST_CASE("four steps at either time are enough, so one missing answer about walking cannot matter (worked examples 7 and 9)") {
  Bench made = bench();
  made.drop("history.steps_at_once");
  CHECK(made.rule().outcome == Outcome::negative);
  made = bench();
  made.drop("gait.steps_now");
  CHECK(made.rule().outcome == Outcome::negative);
}

TEST_CASE("HC-038: nothing positive, not at once, steps now empty: cannot say yet, and names the one missing item") {
  Bench made = bench();
  made.find("history.steps_at_once").value = model::Answer{model::AnswerWord::no};
  made.drop("gait.steps_now");
  const auto rule = made.rule();
  CHECK(rule.outcome == Outcome::undetermined);
  REQUIRE(rule.settle.size() == 1);
  CHECK(rule.settle[0].item->text == "gait.steps_now");
  CHECK(rule.settle[0].side == Side::midline);
}

TEST_CASE("what settles names its answers: below 90 gives positive, 90 or more gives negative") {
  Bench made = bench();
  made.drop("knee.flexion_active");
  const auto rule = made.rule();
  REQUIRE(rule.settle.size() == 1);
  CHECK(rule.settle[0].item->text == "knee.flexion_active");
  CHECK(rule.settle[0].side == Side::left);
  REQUIRE(rule.settle[0].answers.size() == 2);
  CHECK(rule.settle[0].answers[0].if_.text == "below 90");
  CHECK(rule.settle[0].answers[0].gives == Outcome::positive);
  CHECK(rule.settle[0].answers[1].if_.text == "90 or more");
  CHECK(rule.settle[0].answers[1].gives == Outcome::negative);
}

TEST_CASE("no reason why something was not done reads as no") {
  for (int reason = 0; reason <= static_cast<int>(model::WhyNot::other); ++reason) {
    Bench made = bench();
    made.find("knee.fibular_head_tender").value = model::NotDone{static_cast<model::WhyNot>(reason), std::nullopt};
    CHECK(made.rule().outcome == Outcome::undetermined);
    CHECK(settle_of(made.rule()) == "fib");
  }
}

TEST_CASE("a group entry and a kiosk answer settle nothing") {
  Bench made = bench();
  made.find("knee.fibular_head_tender").origin = model::Origin::bulk_expected;
  CHECK(settle_of(made.rule()) == "fib");
  CHECK(state_of(made.rule(), "fib") == "group_entry");
  made = bench();
  made.find("knee.patella_tender").origin = model::Origin::self_reported;
  CHECK(state_of(made.rule(), "pat") == "self_reported");
  CHECK(made.rule().outcome == Outcome::undetermined);
}

TEST_CASE("HC-024: who could not walk before is not reliable, neither cannot nor can") {
  Bench made = bench();
  made.drop("history.steps_at_once");
  made.find("gait.steps_now").value = model::NotDone{model::WhyNot::baseline_unable, std::nullopt};
  CHECK(made.rule().outcome == Outcome::undetermined);
  CHECK(state_of(made.rule(), "steps") == "not_reliable");
  made.yes("knee.fibular_head_tender", Side::left);
  made.exam.findings->erase(made.exam.findings->begin());
  CHECK(made.rule().outcome == Outcome::positive);
}

TEST_CASE("flexion reached is the lowest of active and passive; exactly 90 is able") {
  Bench made = bench();
  made.find("knee.flexion_active") = made.angle("knee.flexion_active", Side::left, 900);
  made.exam.findings->pop_back();
  CHECK(made.rule().outcome == Outcome::negative);
  made.angle("knee.flexion_passive", Side::left, 899);
  CHECK(made.rule().outcome == Outcome::positive);
}

TEST_CASE("HC-013: a bound counts only as far as it reaches; words and an unresolved text not at all") {
  Bench made = bench();
  auto& value = std::get<model::Angle>(made.find("knee.flexion_active").value);
  value.bound = model::Bound::at_least;
  CHECK(made.rule().outcome == Outcome::negative);  // more than 120 is more than 90
  value.deg = value.toward_deg = model::Degrees{600};
  CHECK(settle_of(made.rule()) == "flex");  // more than 60 may be either
  value.bound = model::Bound::at_most;
  CHECK(made.rule().outcome == Outcome::positive);  // at most 60
  value.bound.reset();
  value.reads = model::Reads::full;
  CHECK(settle_of(made.rule()) == "flex");
  value.reads = model::Reads::unresolved;
  CHECK(state_of(made.rule(), "flex") == "unresolved");
}

TEST_CASE("HC-036: a test that could not be done because the knee blocks meets the flexion criterion, unless flexion was measured") {
  Bench made = bench();
  made.not_done("knee.mcmurray", Side::left, model::WhyNot::blocked);
  CHECK(made.rule().outcome == Outcome::negative);
  made.drop("knee.flexion_active");
  CHECK(made.rule().outcome == Outcome::positive);
  made.find("knee.mcmurray").value = model::NotDone{model::WhyNot::declined, std::nullopt};
  CHECK(made.rule().outcome == Outcome::undetermined);
}

TEST_CASE("two examiners who disagree, or a conflict, leave the input unknown only where the answer would differ") {
  Bench made = bench();
  made.yes("knee.fibular_head_tender", Side::left);
  CHECK(made.rule().outcome == Outcome::undetermined);
  CHECK(state_of(made.rule(), "fib") == "examiners_disagree");
  for (auto& finding : *made.exam.findings) {
    finding.standing = finding.item.text == "knee.fibular_head_tender" ? model::Standing::in_conflict : model::Standing::current;
  }
  CHECK(state_of(made.rule(), "fib") == "in_conflict");
  made.angle("knee.flexion_passive", Side::left, 600);
  CHECK(made.rule().outcome == Outcome::positive);
}

TEST_CASE("two readings of one motion in conflict, one of them below 90, leave flexion unknown; both above leave it known") {
  Bench made = bench();
  made.find("knee.flexion_active").standing = model::Standing::in_conflict;
  made.angle("knee.flexion_active", Side::left, 850).standing = model::Standing::in_conflict;
  CHECK(settle_of(made.rule()) == "flex");
  CHECK(state_of(made.rule(), "flex") == "in_conflict");
  std::get<model::Angle>(made.exam.findings->back().value).toward_deg = model::Degrees{950};
  CHECK(made.rule().outcome == Outcome::negative);
}

TEST_CASE("replaced and withdrawn findings are not seen") {
  Bench made = bench();
  made.yes("knee.fibular_head_tender", Side::left).standing = model::Standing::withdrawn;
  made.yes("knee.fibular_head_tender", Side::left).standing = model::Standing::replaced;
  CHECK(made.rule().outcome == Outcome::negative);
}

TEST_CASE("HC-039: on the fifty-fifth birthday the age criterion is met; injured the day before it is not") {
  Bench made = bench();
  made.born(1971, 11, 24);
  made.exam.injured_on = day(2026, 11, 24);
  CHECK(made.rule().outcome == Outcome::positive);
  made.exam.injured_on = day(2026, 11, 23);  // age is that of the day of the injury
  CHECK(made.rule().outcome == Outcome::negative);
}

TEST_CASE("HC-040: only the year of birth is known, 54 or 55: open, and age settles it; any criterion makes it positive") {
  Bench made = bench();
  made.person->birth->date = model::PartialDate{1971, 0, 0};
  CHECK(settle_of(made.rule()) == "age");
  CHECK(state_of(made.rule(), "age") == "known_in_part");
  made.find("knee.fibular_head_tender").value = model::Answer{model::AnswerWord::yes};
  CHECK(made.rule().outcome == Outcome::positive);
  CHECK(made.rule().settle.empty());
}

TEST_CASE("HC-041: about fifty, give or take five, touches 55 and leaves the age open") {
  Bench made = bench();
  made.person->birth = model::Birth{std::nullopt, model::AgeYears{50}, model::AgeYears{5}, day(2026, 11, 24)};
  CHECK(settle_of(made.rule()) == "age");
}

TEST_CASE("HC-042 and HC-044: an old injury and a child of four are not for this rule, which is not negative") {
  Bench made = bench();
  made.exam.injured_on = day(2026, 11, 2);
  CHECK(made.rule().outcome == Outcome::not_applicable);
  CHECK(made.rule().gate->text == "days");
  made = bench();
  made.born(2022, 6, 1);
  CHECK(made.rule().outcome == Outcome::not_applicable);
  CHECK(made.rule().gate->text == "age");
  CHECK(flagged(made.rule(), "one_study_from_2_years"));
  made.born(2016, 6, 1);
  CHECK(made.rule().outcome == Outcome::negative);
  CHECK(flagged(made.rule(), "paediatric_extension"));
}

TEST_CASE("a date of injury known to the month may lie within the seven days or before them") {
  Bench made = bench();
  made.exam.injured_on = model::PartialDate{2026, 11, 0};
  CHECK(settle_of(made.rule()) == "days");
  made.exam.examined_at = at_noon(2026, 11, 5);
  CHECK(made.rule().outcome == Outcome::negative);
  made.exam.injured_on = model::PartialDate{2026, 9, 0};
  CHECK(made.rule().outcome == Outcome::not_applicable);
  made.exam.injured_on = day(2026, 12, 24);
  CHECK(state_of(made.rule(), "days") == "after_the_examination");
}

TEST_CASE("HC-046: answers that are not reliable close the rule; unsure leaves it open") {
  Bench made = bench();
  made.no("general.answers_reliable", Side::midline);
  CHECK(made.rule().outcome == Outcome::not_applicable);
  CHECK(made.rule().gate->text == "answers_reliable");
  made.find("general.answers_reliable").value = model::Answer{model::AnswerWord::unsure};
  CHECK(settle_of(made.rule()) == "excl");
}

TEST_CASE("HC-025 and HC-026: in pregnancy a positive stands with a flag, a would-be negative is not applicable; not asked is not no") {
  Bench made = bench();
  made.person->sex = model::Sex::female;
  CHECK(settle_of(made.rule()) == "pregnant");
  CHECK(flagged(made.rule(), "pregnancy_not_asked"));
  made.yes("body.pregnancy", Side::midline);
  CHECK(made.rule().outcome == Outcome::not_applicable);
  CHECK(made.rule().gate->text == "pregnancy");
  made.angle("knee.flexion_passive", Side::left, 600);
  CHECK(made.rule().outcome == Outcome::positive);
  CHECK(flagged(made.rule(), "outside_derivation"));
  made.find("body.pregnancy").value = model::Answer{model::AnswerWord::no};
  made.drop("knee.flexion_passive");
  CHECK(made.rule().outcome == Outcome::negative);
  CHECK(!flagged(made.rule(), "pregnancy_not_asked"));
}

TEST_CASE("C7: a negative by the letter while the person cannot walk now, or other bone is tender, is contradicted") {
  Bench made = bench();
  made.find("gait.steps_now").value = model::CountValue{{0}};
  CHECK(made.rule().outcome == Outcome::negative);
  CHECK(flagged(made.rule(), "contradicted"));
  made = bench();
  made.find("knee.bone_tender_elsewhere").value = model::Answer{model::AnswerWord::yes};
  CHECK(made.rule().outcome == Outcome::negative);
  CHECK(flagged(made.rule(), "contradicted"));
  made = bench();
  const Side side = made.find("knee.patella_tender").side;
  made.add("knee.tibial_tubercle_tender", side, model::Answer{model::AnswerWord::yes});
  CHECK(flagged(made.rule(), "contradicted"));
  made = bench();
  made.add("history.film_result", side, model::Choices{{{"knee_fracture_seen"}}});
  CHECK(flagged(made.rule(), "contradicted"));
}

TEST_CASE("HC-045: with both knees injured, not walking counts for both and says so; nothing else crosses sides") {
  Bench made = bench();
  made.find("history.steps_at_once").value = model::Answer{model::AnswerWord::no};
  made.find("gait.steps_now").value = model::CountValue{{0}};
  made.yes("knee.fibular_head_tender", Side::right);
  REQUIRE(made.assess().rules.size() == 4);  // two rules, two knees
  for (const Side side : {Side::left, Side::right}) {
    const auto rule = made.rule(side);
    CHECK(rule.outcome == Outcome::positive);
    CHECK(flagged(rule, "side_not_assignable"));
  }
  CHECK(state_of(made.rule(Side::right), "pat") == "not_asked");
  CHECK(state_of(made.rule(Side::left), "fib") == "known");
}

TEST_CASE("the sound knee measured for comparison is not judged by a rule for injuries") {
  Bench made = bench();
  made.angle("knee.flexion_active", Side::right, 1300);
  CHECK(made.assess().rules.size() == 2);
  made.exam.side.reset();
  CHECK(made.assess().rules.size() == 4);
}

TEST_CASE("HC-005: a fused or amputated limb gives reasons, not answers") {
  Bench made = bench();
  made.find("knee.flexion_active").value = model::NotDone{model::WhyNot::no_limb, std::nullopt};
  CHECK(state_of(made.rule(), "flex") == "unable_limb_absent");
  CHECK(made.rule().outcome == Outcome::undetermined);
}

TEST_CASE("a side that has no limb is not for the rule, which asks for nothing there") {
  Bench made(invented_edition());
  for (const char* item : {"knee.fibular_head_tender", "knee.patella_tender", "knee.bone_tender_elsewhere", "knee.flexion_active"}) {
    made.not_done(item, Side::left, model::WhyNot::no_limb);
  }
  const auto rule = made.rule();
  CHECK(rule.outcome == Outcome::not_applicable);
  REQUIRE(rule.gate.has_value());
  CHECK(rule.gate->text == "no_limb");
  CHECK(rule.settle.empty());
  made.drop("knee.patella_tender");
  made.no("knee.patella_tender", Side::left);  // somebody felt this knee
  CHECK(made.rule().outcome == Outcome::undetermined);
}

TEST_CASE("a replaced knee: what speaks for a film stands and says so, and nothing reads as a negative") {
  Bench made = bench();
  made.yes("body.knee_replaced", Side::left);
  CHECK(made.rule().outcome == Outcome::not_applicable);
  CHECK(made.rule().gate->text == "implant");
  CHECK(flagged(made.rule(), "replaced_joint"));
  made.drop("knee.patella_tender");
  REQUIRE(made.rule().settle.size() == 1);
  CHECK(made.rule().settle[0].answers[0].gives == Outcome::not_applicable);
  made.angle("knee.flexion_passive", Side::left, 600);
  CHECK(made.rule().outcome == Outcome::positive);
  CHECK(flagged(made.rule(), "replaced_joint"));
  Bench other = bench();
  other.yes("body.knee_replaced", Side::right);
  CHECK(other.rule().outcome == Outcome::negative);
  CHECK(other.rule().flags.empty());
}

TEST_CASE("a birth on the day of the examination with an injury the day before is no open question: the rule is not for it") {
  Bench made = bench();
  made.born(2026, 11, 24);
  CHECK(made.rule().outcome == Outcome::not_applicable);
  CHECK(made.rule().gate->text == "age");
}

TEST_CASE("the history of somebody who is not reliable does not say that the person walked") {
  Bench made = bench();
  made.find("gait.steps_now").value = model::CountValue{{2}};
  made.exam.who_spoke = model::WhoSpoke{{"son"}, model::Reliable::no};
  CHECK(settle_of(made.rule()) == "imm");
}

TEST_CASE("the working of the rule names what it used, its criteria and what would change it") {
  Bench made = bench();
  made.drop("knee.flexion_active");
  const auto working = made.explain("rule.ottawa_knee:left");
  CHECK(working.message.text == "msg.rule.ottawa_knee.undetermined");
  REQUIRE(working.changes_if.size() == 1);
  CHECK(working.changes_if[0].text == "msg.change.flex");
  REQUIRE(working.rows.size() == 1);
  CHECK(working.rows[0].source.text == "STIELL1995");
  CHECK(working.lines[0].text == "age 30, 55 or older: not met");
  CHECK(working.lines[3].text == "flexion not known, below 90: open");
  CHECK(made.explain("rule.ottawa_knee").statement.text == "rule.ottawa_knee:left");
}

TEST_CASE("on a free visit with a day of injury the knee rules speak of a knee that was examined, and of no other joint's side") {
  Bench free_visit(*reference::built_in_edition());
  free_visit.exam.complaint = {"free"};
  CHECK(free_visit.assess().rules.empty());  // an injury somewhere on the left: nobody looked at the knee
  free_visit.nothing_found();
  CHECK(free_visit.rule().outcome == Outcome::negative);
  free_visit.yes("knee.fibular_head_tender", Side::right);
  CHECK(free_visit.rule(Side::right).side == Side::right);
  Bench limping = free_visit;
  limping.exam.complaint = {"limping_child"};
  CHECK(limping.rule().rule.text == "rule.ottawa_knee");
}
