// What next, as a page says it to somebody who was not there: which day holds and whose it is, what is only not recorded, what of a list
// is done by the record, which gap keeps a page silent, and what is not tried again. The right sentences of invented people's pages
// (exams/*.json); a logic test of our own rules. Source: clinical safety, requirements 8, 11, 16 and 18.
#include "core/report/letter/letter.hpp"
#include "core/report/letter/letter_parts.hpp"
#include "tests/unit/report/has.hpp"
#include "tests/unit/report/printer.hpp"

#include <algorithm>

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

std::string told_under(const Printer& printer, const std::string& title) {
  return section(report::exam_page(printer.exam, printer.person, printer.assessment, *report::built_in_words(), *reference::built_in_edition(), printer.names), title);
}

std::string posted_letter(const Printer& printer, int shortened = 0) {
  report::LetterAsk ask;
  ask.question = "What next?";
  ask.urgency = model::LetterUrgency::same_day;
  return on_one_line(report::sheet_text(report::letter_of_length(printer.view(), ask, shortened), *report::built_in_words()));
}

constexpr const char* under_alerts = "Alerts, and what was done";

}  // namespace

TEST_CASE("of two days the sooner holds, with whose the later one is; that nobody was called is said of no alert") {
  const Printer sole("sole");
  CHECK(has(told_under(sole, "Plan"), "THE SOONER HOLDS: 2026-11-24. The examiner's plan names a later day (referral, RIGHT, by 2026-11-25); a reason, if one was written, stands in the plan's own words."));
  CHECK(has(posted_letter(sole), "THE SOONER HOLDS: 2026-11-24."));
  CHECK(has(posted_letter(sole), "LATER than what was found and the examiner's letter ask for: 2026-11-24 holds"));
  CHECK(!has(posted_letter(sole), "before this goes"));
  CHECK(has(told_under(sole, under_alerts), "A call or other action: not recorded; whether the plan answers it: ask the examiner."));
  CHECK(has(posted_letter(sole), "Where no DONE stands, a call or other action is not recorded."));
  Printer called("clot");
  REQUIRE(called.assessment.alerts.size() == 1);
  model::AlertHandled done;
  done.alert = called.assessment.alerts.front().alert;
  done.action = wire::Remark{"scan room called"};
  called.assessment.alerts.front().handled = done;
  called.assessment.alerts.front().state = interpret::AlertState::handled;
  CHECK(!has(posted_letter(called), "Where no DONE stands"));
}

TEST_CASE("a film that neither a referral nor a review follows has no reader by the record, and the page says so; a review or a referral is who follows it") {
  Printer fall("fall");
  const std::string says = "who reads it and what follows: not recorded";
  CHECK(has(told_under(fall, "Plan"), says));
  CHECK(has(posted_letter(fall), says));
  CHECK(has(told_under(fall, "Plan"), "Not recorded as planned: referral, review here."));
  model::PlanItem review;
  review.kind = model::PlanKind::review;
  review.text = wire::Remark{"with the film"};
  fall.exam.plan->push_back(review);
  CHECK(!has(told_under(fall, "Plan"), says));
  fall.exam.plan->back().became = model::Became::declined;
  CHECK(has(told_under(fall, "Plan"), says));
}

TEST_CASE("what is asked for until seen stands with what of it the record holds: a film of the plan, a splint that was given, what was measured; a film that no plan names says that too") {
  CHECK(has(told_under(Printer("fall"), under_alerts), "splint with the knee straight (recorded: splint, RIGHT: given); film from the side (recorded: film, RIGHT: arranged); look at the other knee too"));
  CHECK(has(told_under(Printer("hip"), under_alerts), "a pillow as a splint (recorded: splint, LEFT: given); vessel and nerve to be looked at (recorded: Feeling in the foot reduced: no; "));
  CHECK(has(told_under(Printer("sole"), under_alerts), "temperature, pulse, breathing and sugar (recorded: Temperature: 37.2"));
  CHECK(has(told_under(Printer("lock"), under_alerts), "film for a loose body (by whom: not recorded)"));
  // The words of this referral name the films: that none is ordered would be untrue.
  CHECK(has(told_under(Printer("child"), under_alerts), "film of both hips, two views; nothing by mouth"));
  // One girth is no comparison, and a splint that was declined holds nothing.
  Printer clot("clot");
  std::vector<model::Finding>& all = *clot.exam.findings;
  all.erase(std::remove_if(all.begin(), all.end(), [](const model::Finding& one) { return one.item.text == "leg.calf_girth_10cm" && one.side == model::Side::right; }), all.end());
  CHECK(has(told_under(clot, under_alerts), "but where said): measure both calves 10 cm below the tubercle; no massage"));
  Printer fall("fall");
  for (model::PlanItem& item : *fall.exam.plan) {
    item.became = model::Became::declined;
  }
  CHECK(has(told_under(fall, under_alerts), "splint with the knee straight; film"));
}

TEST_CASE("the gap that keeps the bands back is named, with its side; what is carried over fills none, and the other side keeps nothing back") {
  const std::string lock = told_under(Printer("lock"), "What the findings support");
  CHECK(has(lock, "of the minimum set this is not recorded: Hip inward rotation, lying, hip straight (carried over from an earlier exam, not looked at today: fills no gap here), RIGHT."));
  CHECK(has(lock, "What is not examined on the other side keeps nothing back."));
  CHECK(!has(lock, "LEFT"));
  CHECK(has(told_under(Printer("lock"), "Not examined"), "of the minimum set, RIGHT: Hip inward rotation, lying, hip straight (carried over from an earlier exam, not looked at today: fills no gap here)"));
  CHECK(has(told_under(Printer("lock"), "Not examined"), "knee LEFT: only Knee flexion, active (by a group entry, which is no look at it); Knee extension, passive"));
  CHECK(has(told_under(Printer("football"), "What the findings support"), "The minimum set of the side complained of is recorded; what is not examined on the other side keeps no line back."));
}

TEST_CASE("what is asked for comes before what was not raised; of two days of a referral one leads, with whose it is") {
  const std::string lock = told_under(Printer("lock"), under_alerts);
  CHECK(lock.find("A REFERRAL is asked for, as said below with how soon") < lock.find("No alert for now or today"));
  CHECK(has(told_under(Printer("lock"), "Plan"), "How soon: BY 2026-12-01 AT THE LATEST, the day of the examiner's plan, which holds before the two weeks asked for."));
}

TEST_CASE("what was recorded and is not advised now is not to be done again; what a raised danger withholds is no gap without a reason") {
  CHECK(has(told_under(Printer("infant"), under_alerts), "Lift and lead outward (Ortolani) (recorded already; not again)"));
  CHECK(has(told_under(Printer("lock"), under_alerts), "McMurray test (recorded already; not again)"));
  CHECK(!has(told_under(Printer("fall"), under_alerts), "not again"));  // bent by herself is not bent by another hand
  const std::string child = told_under(Printer("child"), "Not examined");
  CHECK(has(child, "not advised now by what was raised: "));
  CHECK(child.find("Log roll of the leg, LEFT") > child.find("not advised now by what was raised: "));
  CHECK(has(posted_letter(Printer("child")), "Log roll of the leg, LEFT"));
  const std::string hip = told_under(Printer("hip"), under_alerts);
  CHECK(has(hip, "no trial of standing; the roll is not tried again, the hip never forced"));
  CHECK(!has(hip, "in one small roll"));
}

TEST_CASE("a value in the words of the other side says where that one is not recorded, in summary and letter as in the findings") {
  const Printer ankle("ankle");
  const std::string says = "yes (fuller than the other side), the other side is not recorded";
  CHECK(has(told_under(ankle, "Found out of the ordinary"), says));
  CHECK(has(posted_letter(ankle), says));
  CHECK(has(posted_letter(ankle, 3), says));
  // Recorded on both sides it is a comparison like any other.
  CHECK(!has(told_under(Printer("infant"), "Findings"), "moves the leg as the other), the other side is not recorded"));
}

TEST_CASE("a girth that is less than the other side's stands with it in the summary, and neither is a value without a figure") {
  const std::string stiff = told_under(Printer("stiff"), "Found out of the ordinary");
  CHECK(has(stiff, "Thigh girth, 10 cm above the kneecap 415 mm"));
  CHECK(has(stiff, "15 mm less than the other side (430 mm); over 10 mm is taught to be wasting"));
  CHECK(!has(stiff, "whether ordinary is not said here): Thigh girth"));
  CHECK(!has(told_under(Printer("clot"), "Found out of the ordinary"), "whether ordinary is not said here): Calf girth"));
}

TEST_CASE("how long, how it began, pulse rate and temperature stand in the letter with their values, at every length but the shortest") {
  const Printer clot("clot");
  for (int shortened = 0; shortened < report::letter_shortest; ++shortened) {
    const std::string letter = posted_letter(clot, shortened);
    CAPTURE(shortened);
    CHECK(has(letter, "Weeks since it began: 1"));
    CHECK(has(letter, "How it began: Slowly"));
    CHECK(has(letter, "Pulse rate, in a minute: 92"));
    CHECK(has(letter, "Temperature: 36.9"));
    CHECK(has(posted_letter(Printer("sole"), shortened), "Temperature: 37.2"));
  }
}

TEST_CASE("weeks of more than a year are told in years too") {
  CHECK(has(told_under(Printer("stiff"), "Findings"), "Weeks since it began: 160 (about 3 years)"));
  CHECK(has(told_under(Printer("child"), "Findings"), "Weeks since it began: 3 "));
}

TEST_CASE("a danger that is open names what is not recorded of it; a source stands behind its comparison and not alone") {
  CHECK(has(told_under(Printer("football"), "Danger signs asked after"), "a locked knee LEFT ("));
  CHECK(has(posted_letter(Printer("football")), "still open (signs of): a locked knee (not settled by: "));
  // A sign named without its answer reads as a yes: all three are noes.
  const std::string open = posted_letter(Printer("stiff"));
  CHECK(has(open, "an infected joint (not settled by: Fever, now or in the last seven days / Feels or looks unwell: no)"));
  CHECK(has(open, "a joint swollen for weeks (not settled by: Stiff in the morning, minutes: 15; Effusion, stroke test: grade 1+)"));
  const std::string stiff = told_under(Printer("stiff"), "Compared with");
  CHECK(!has(stiff, "against passive: FRITZ1998"));
  CHECK(has(stiff, "a description, no test; source FRITZ1998"));
}
