// What a fresh reader of printed exams could read the wrong way, each once as a test. Wording: clinical safety, part A and
// requirements 2, 4, 9, 17, 18, 20 and 21; urgency of a locked knee and the slipped epiphysis: red flags page, sections 13, 15, 20.
#include "tests/unit/report/printed.hpp"

#include <set>

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

const std::string alerts_title = "Alerts, and what was done";

std::string alerts_of(const service::ExamDocument& one) { return section(page_of(one), alerts_title); }

const report::Words& english() { return *report::built_in_words(); }

}  // namespace

TEST_CASE("a positive that means cannot is printed in words, also where an alert rests on it") {
  const std::string page = page_of(document("fall"));
  CHECK(has(section(page, "Findings"), "RIGHT positive (cannot lift the straight leg, or it sags)"));
  CHECK(has(section(page, alerts_title), "Straight leg raise, by the person, RIGHT: positive (cannot lift the straight leg, or it sags)"));
  CHECK(has(section(page_of(document("football")), "Findings"), "LEFT negative (lifts the straight leg)"));
}

TEST_CASE("every test of the catalogue, and every answer whose no is the bad end, has its two ends in words, and they differ") {
  std::set<std::string> without;
  for (const model::Item& item : reference::built_in_edition()->items()) {
    CAPTURE(item.item.text);
    CHECK(item.text.yes.has_value() == item.text.no.has_value());
    if (item.value == model::ValueKind::test) {
      REQUIRE(item.text.yes);
    }
    if (!item.text.yes) {
      without.insert(item.item.text);
      continue;
    }
    const std::string yes = english().say(item.text.yes->text);
    const std::string no = english().say(item.text.no->text);
    CHECK(english().has(item.text.yes->text));
    CHECK(english().has(item.text.no->text));
    CHECK(yes != no);
    for (const std::string word : {"positive", "negative"}) {
      CHECK(!has(yes + no, word));
    }
  }
  for (const std::string reversed : {"ankle.movement", "general.answers_reliable", "history.steps_at_once", "history.night_pain_relieved_by_turning",
                                     "general.concern_knee_fracture"}) {
    CHECK(without.count(reversed) == 0);
  }
}

TEST_CASE("a limping child whose hips were not both examined: the slipped epiphysis is named first in the line") {
  service::ExamDocument child = document("child");
  drop(child, "gait.pattern");
  const std::string alerts = alerts_of(child);
  CHECK(has(alerts, "- Same day: a slipped upper femoral epiphysis is not excluded, the hips were not both examined, in a child who limps"));
  CHECK(has(alerts, "Still to be asked or looked at, LEFT: A slipped upper femoral epiphysis? Behind a painful knee"));
}

TEST_CASE("a leg that turns out in walking is heard on the side it was recorded on") {
  const std::string alerts = alerts_of(document("child"));
  CHECK(has(alerts, "Same day: slipped upper femoral epiphysis of the LEFT hip until films show otherwise, the leg turns out at this age; no more walking."));
  CHECK(!has(alerts, "RIGHT hip"));
}

TEST_CASE("while the leg is to carry nothing, nobody is asked to walk: by the alert, and by a limit or a splint in the plan") {
  service::ExamDocument child = document("child");
  CHECK(!has(alerts_of(child), "Steps taken now"));  // the alert stops walking
  drop(child, "gait.pattern");
  CHECK(!has(alerts_of(child), "Steps taken now"));  // no alert does; the plan says: off the leg
  child.exam.plan.reset();
  CHECK(!has(alerts_of(child), "Steps taken now"));  // a limp that nothing explains does
}

TEST_CASE("a locked knee is of one urgency, and a referral says what is done until then") {
  const std::string alerts = alerts_of(document("lock"));
  CHECK(has(alerts, "Within two weeks, and sooner where it can be had: the RIGHT knee does not straighten"));
  CHECK(!has(alerts, "same-day"));
  CHECK(has(alerts, "Rests on: "));
  CHECK(has(alerts, "Knee extension, passive, RIGHT: 15° short of straight"));
  CHECK(has(alerts, "TO DO until seen, asked for by the program (by whom, and if told: not recorded but where said): nobody forces it straight; crutches; film for a loose body (by whom: not recorded)."));
}

TEST_CASE("no message of an alert or a referral holds two urgencies") {
  for (const std::string& name : english().names()) {
    if (!name.starts_with("msg-alert-") && !name.starts_with("msg-referral-")) {
      continue;
    }
    const std::string text = english().say(name);
    CAPTURE(text);
    int classes = 0;
    for (const std::string word : {"Call now", "ame day", "ame-day", "two weeks:", "two weeks at the latest:"}) {
      classes += has(text, word) ? 1 : 0;
    }
    CHECK(classes <= 1);
  }
}

TEST_CASE("an alert without an answer names what the plan above it holds, and is not said to have no action") {
  const std::string alerts = alerts_of(document("fall"));
  CHECK(has(alerts, "The plan above holds: film; splint. A call or other action: not recorded; whether the plan answers it: ask the examiner."));
  service::ExamDocument fall = document("fall");
  fall.exam.plan.reset();
  CHECK(has(alerts_of(fall), "A call or other action: not recorded; the plan holds nothing beside it."));
}

TEST_CASE("a plan that stands beside one alert is not printed again beside the next") {
  service::ExamDocument fall = document("fall");
  add(fall, "history.blood_thinners", model::Side::midline, model::Answer{model::AnswerWord::yes});
  add(fall, "history.swelling_onset", model::Side::right, model::Choice{{"within_2h"}});
  const std::string alerts = alerts_of(fall);
  CHECK(has(alerts, "The plan holds what stands above. A call or other action: not recorded; whether the plan answers this alert too: ask the examiner."));
  CHECK(alerts.find("The plan above holds: ") == alerts.rfind("The plan above holds: "));
}

TEST_CASE("a negative rule names what was checked, and what was not is not among all") {
  const std::string rules = section(page_of(document("football")), "Rules");
  CHECK(has(rules, "Film not required by the Ottawa knee rule (all items checked today: age, date of the injury, tenderness of the head of the fibula, "
                   "tenderness of the kneecap, tenderness of other bone of the knee, flexion, four steps at once after the injury, four steps now, what "
                   "the rule was not made for)."));
  CHECK(has(rules, "Film not required by the Pittsburgh knee rule by what was checked today (age, date of the injury, whether it was a fall or a blow, four "
                   "steps now, what the rule was not made for); not checked: earlier operation or break of this knee."));
  CHECK(!has(rules, "Pittsburgh knee rule (all items"));
}

TEST_CASE("a grade against the other knee says where nothing of that knee is recorded") {
  const std::string page = page_of(document("football"));
  const std::string found = section(page, "Findings");
  CHECK(has(found, "LEFT grade 0 (Up to 2 mm more than the other side), 1 mm, end feel firm, supine, the other side is not recorded"));
  CHECK(has(found, "LEFT grade 2 (6 to 10 mm more than the other side), 7 mm, end feel soft, supine Posterior"));
  const std::string compared = section(page, "Compared with");
  CHECK(has(compared, "not graded looser than the other knee, of which nothing is recorded: the examiner's own comparison"));
  CHECK(has(compared, "end feel soft, supine: looser than the other knee;"));
}

TEST_CASE("a Lachman that goes no further and ends softly is not said to go further") {
  service::ExamDocument football = document("football");
  for (model::Finding& finding : football.findings) {
    if (finding.item.text == "knee.lachman" && finding.side == model::Side::left) {
      auto& grade = std::get<model::Grade>(finding.value);
      grade.grade = {"0"};
      grade.mm.reset();
    }
  }
  const std::string compared = section(page_of(football), "Compared with");
  CHECK(has(compared, "counts as loose by how it ends, not by how far it goes;"));
  CHECK(!has(compared, "end feel soft, supine: looser than the other knee"));
}

TEST_CASE("a line that cannot tell prints the span that decides, and extension in words instead of signs") {
  // 10 / 2.772 x 1.96 = 7.07 (BOONE1979 and SOUCIE2011 figures as the edition prints them).
  const std::string compared = section(page_of(document("football")), "Compared with");
  CHECK(has(compared, "LEFT passive 5° short of straight: cannot be told from the edge (12.1° short of straight to 2.1° beyond straight)"));
  CHECK(has(compared, "3.4° short of straight to 5.4° beyond straight in men 20 to 44 years (taught values); figures of "));
}

TEST_CASE("extension against the other side is said once") {
  const std::string compared = section(page_of(document("football")), "Compared with");
  CHECK(has(compared, "a lack of extension cannot be told from the other side (3° beyond straight; believed above 10)"));
  CHECK(!has(compared, "short of straight); cannot be told from the other side ("));
}

TEST_CASE("what may not be sent on says so before the name of the place; without a no it does not") {
  const std::string top = head(page_of(document("lock")));
  CHECK(top.find("THIS RECORD is not to be passed on (consent to send: withdrawn). Care and referral of the person go on.") < top.find("Examined "));
  CHECK(!has(page_of(document("football")), "THIS RECORD is not"));
  CHECK(has(head(page_of(document("fall"))), "THIS RECORD is not to be passed on until the person was asked."));
}

TEST_CASE("a knee that nobody hurt is not asked for the day of its injury") {
  const std::string page = page_of(document("child"));
  const std::string rules = section(page, "Rules");
  CHECK(has(rules, "Ottawa knee rule, LEFT (okr/1995): Rule not made for this person (no injury, by what was told; it was made for injured knees): use judgement."));
  CHECK(!has(page, "date of the injury"));
  CHECK(!has(page, "asked for by a rule"));
  service::ExamDocument fell = document("child");
  add(fell, "history.fall_or_blow", model::Side::midline, model::Answer{model::AnswerWord::yes});
  CHECK(has(section(page_of(fell), "Rules"), "needs date of the injury"));
}

TEST_CASE("what became of a plan item is said to be not recorded; people are named as the band was measured; a source stands once") {
  CHECK(has(section(page_of(document("football")), "Plan"), "by 2026-12-08; outcome not recorded yet"));
  CHECK(has(section(page_of(document("child")), "Compared with"), "in boys and men 9 to 19 years"));
  const std::string fall = section(page_of(document("fall")), "Compared with");
  CHECK(has(fall, "110 to 154 in people 25 to 39 years, people 40 to 59 years"));
  CHECK(has(fall, "figures of ROACH1991, "));
}

TEST_CASE("a page without an alert says so with how much was not asked, and names that below") {
  const std::string alerts = alerts_of(document("football"));
  CHECK(has(alerts, "No alert for now or today raised by what was recorded; danger signs not asked after, or not all of it: "));
  CHECK(has(alerts, " (named under \"Danger signs asked after\")."));
  CHECK(!has(alerts, "pressure in a compartment"));
  CHECK(has(section(page_of(document("football")), "Danger signs"), "pressure in a compartment"));
  CHECK(!has(alerts_of(document("fall")), "raised by what was recorded"));
}

TEST_CASE("further questions are named") {
  CHECK(has(alerts_of(document("lock")), "Further questions that are not yet asked: 1 (signs of: "));
}

TEST_CASE("the next step stands on the page with its reason, or why there is none") {
  CHECK(has(section(page_of(document("fall")), "Next step"), "Next: what the alerts and the questions above ask for; the plan above is the examiner's."));
  service::ExamDocument child = document("child");
  child.exam.plan.reset();
  drop(child, "gait.pattern");
  const std::string next = section(page_of(child), "Next step");
  CHECK(has(next, "What the alerts above ask for comes first. Of what can be asked or felt here, this would help most: "));
  CHECK(has(next, "because an answer changes what is said of: "));
  CHECK(has(next, "slipped upper femoral epiphysis"));
}
