// Alerts, danger signs and questions on the page. Wording: clinical safety, part A (flags; class now) and requirements 2, 16 and 18.
// The assessments are made by hand here: the page prints them, whoever judged.
#include "core/report/page.hpp"
#include "core/report/text.hpp"

#include "tests/unit/interpret/support.hpp"
#include "tests/unit/report/has.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using report_test::has;
using namespace limbledger::interpret_test;

namespace {

struct Raised {
  Bench made{*reference::built_in_edition()};
  interpret::Assessment assessment;

  Raised() {
    made.yes("knee.look_skin_hot_red", Side::left);
    made.yes("history.unexplained_bruises", Side::midline);
    assessment = made.assess();
    assessment.alerts.clear();
    assessment.questions.clear();
    assessment.questions_more = {0};
    assessment.flags.clear();
  }
  interpret::Alert& alert(const std::string& name, const std::string& because, interpret::Audience audience = interpret::Audience::clinician) {
    interpret::Alert one;
    one.alert = {"alert." + name};
    one.side = Side::left;
    one.urgency = interpret::Urgency::same_day;
    one.because = {*made.find(because).finding};
    one.message = {"msg.page.joint"};  // any message that has a variable
    one.audience = audience;
    assessment.alerts.push_back(std::move(one));
    return assessment.alerts.back();
  }
  void flag(const std::string& name, std::optional<Side> side, interpret::FlagAnswer answer, const std::string& rests_on = {}) {
    assessment.flags.push_back({{name}, side, answer, {}});
    if (!rests_on.empty()) {
      assessment.flags.back().findings.push_back(*made.find(rests_on).finding);
    }
  }

  [[nodiscard]] std::string page(report::ProtectedNote note = report::ProtectedNote::mentioned) const {
    report::PageNames names;
    names.protected_note = note;
    std::string out;
    for (const char c : report::exam_page(made.exam, made.person, assessment, *report::built_in_words(), *made.edition, names)) {
      if ((c != '\n' && c != ' ') || out.empty() || out.back() != ' ') {
        out += c == '\n' ? ' ' : c;
      }
    }
    return out;
  }
};

}  // namespace

TEST_CASE("an alert stands after the plan with what it rests on, its side in capitals, and what was done") {
  Raised raised;
  raised.alert("joint_infection", "knee.look_skin_hot_red");
  raised.alert("joint_infection_again", "knee.look_skin_hot_red").state = interpret::AlertState::withdrawn_by_correction;
  const std::string page = raised.page();
  CHECK(has(page, "{$joint}: {$sides}. Rests on: Skin hot or red, LEFT: yes. A call or other action: not recorded; the plan holds nothing beside it."));
  CHECK(has(page, "Raised, withdrawn by correction or by what was told later."));
  CHECK(page.find(" Plan ") < page.find("Alerts, and what was done"));
  CHECK(page.find("Alerts, and what was done") < page.find("What the findings support"));
}

TEST_CASE("danger signs: what was answered no and what was not asked are named apart, sides in words, and silence is never a no") {
  Raised raised;
  CHECK(has(raised.page(), "This edition asks for no danger signs by itself"));
  raised.flag("flag.first_sign", Side::left, interpret::FlagAnswer::asked_no, "knee.look_skin_hot_red");
  raised.flag("flag.first_sign", Side::right, interpret::FlagAnswer::asked_no, "knee.look_skin_hot_red");
  raised.flag("flag.fourth_sign", Side::left, interpret::FlagAnswer::asked_no);  // rests on nothing
  raised.flag("flag.second_sign", Side::left, interpret::FlagAnswer::not_asked);
  raised.flag("flag.third_sign", std::nullopt, interpret::FlagAnswer::cannot_answer);
  const std::string page = raised.page();
  // A no that rests on what speaks for the danger alone is nobody's answer against it.
  CHECK(!has(page, "though something speaks for it"));
  CHECK(has(page, "Asked or looked at, answered no (signs of): first sign RIGHT (Skin hot or red, LEFT: yes). "
                  "Not asked, or not all of it (signs of): first sign LEFT (for it: Skin hot or red: yes; nothing recorded speaks against it); fourth sign LEFT; second sign LEFT. Asked, cannot be answered (signs of): third sign."));
  CHECK(!has(page, "This edition asks for no danger signs"));
}

TEST_CASE("an alert for a person's protection leaves one line without its name, its count, its reason or its flag") {
  Raised raised;
  raised.alert("first_harm", "history.unexplained_bruises", interpret::Audience::protected_);
  raised.alert("second_harm", "history.unexplained_bruises", interpret::Audience::protected_);
  raised.flag("flag.first_harm", std::nullopt, interpret::FlagAnswer::raised);
  const std::string page = raised.page();
  CHECK(has(page, "Alerts, and what was done ------------------------- - See protected note: the examiner alone opens it, and whoever may know asks the examiner in private. This page stays at the clinic; what the person carries says nothing of it. No other alert for now or today raised by what was recorded."));
  const std::string to_a_viewer = raised.page(report::ProtectedNote::absent);
  CHECK(!has(to_a_viewer, "rotected"));
  CHECK(has(to_a_viewer, "No alert for now or today stands on this copy."));
  for (const std::string& told : {page, to_a_viewer}) {
    CHECK(!has(told, "harm"));
    CHECK(!has(told, "{$joint}"));
    CHECK(!has(told, "Bruises"));
  }
  const std::string asked = raised.page(report::ProtectedNote::shown);
  CHECK(has(asked, "Rests on: Bruises that nothing explains: yes"));
  CHECK(has(asked, "Raised (signs of): first harm."));
}

TEST_CASE("what is not yet asked is a question, three at most, and the rest a count") {
  Raised raised;
  raised.assessment.questions.push_back({{"alert.joint_infection"}, Side::left, {1}, {}, {"msg.page.untested"}});
  raised.assessment.questions_more = {2};
  CHECK(has(raised.page(), "Still to be asked or looked at, LEFT: Not tested on real people. Further questions that are not yet asked: 2."));
}

TEST_CASE("a sign that was found is not printed as answered no, though something else asked with it is a no") {
  Raised raised;
  raised.made.yes("history.swelling_noticed", Side::left);
  raised.flag("flag.joint_over_2_weeks", Side::left, interpret::FlagAnswer::asked_no, "knee.look_skin_hot_red");
  const std::string page = raised.page();
  CHECK(!has(page, "Asked or looked at, answered no (signs of): a joint swollen for weeks"));
  CHECK(has(page, "The sign itself was found; something else asked with it speaks against (signs of): a joint swollen for weeks"));
}

TEST_CASE("whether somebody was asked alone is not printed where others may read it") {
  Raised raised;
  interpret::Contradiction one;
  one.contradiction = {"contradiction.sensitive_through_family:midline"};
  one.message = {"msg.contradiction.sensitive_through_family"};
  raised.assessment.contradictions = {one};
  CHECK(!has(raised.page(), "asked alone"));
  CHECK(!has(raised.page(report::ProtectedNote::absent), "asked alone"));
  CHECK(has(raised.page(report::ProtectedNote::shown), "asked alone"));
}

TEST_CASE("where nothing was raised the plan's first line names a sign of the whole body that is out, or that it is asked after; where something was it does not") {
  const std::string calm = "How soon: not recorded. Nothing was raised that asks for a day.";
  const auto unsettled = [](interpret::FlagAnswer answer) {
    Raised raised;
    model::Temperature warmth;
    warmth.cel = model::Celsius{365};
    model::Pressure pressure;
    pressure.mm_hg = model::MillimetresOfMercury{88};
    raised.made.add("general.temperature", Side::midline, warmth);
    raised.made.add("general.blood_pressure_systolic", Side::midline, pressure);
    raised.flag("alert.acutely_ill", std::nullopt, answer, "general.blood_pressure_systolic");
    raised.assessment.flags.back().findings.push_back(*raised.made.find("general.temperature").finding);
    return raised;
  };
  Raised open = unsettled(interpret::FlagAnswer::cannot_answer);
  const std::string named = " Measured, and no answer yet to an illness of the whole body: Blood pressure, upper: 88 mmHg.";
  CHECK(has(open.page(), calm + named));
  open.assessment.flags.back().findings = {*open.made.find("general.temperature").finding};
  CHECK(has(open.page(), calm + " Measured, and no answer yet to an illness of the whole body: Temperature: 36.5 \u00b0C."));
  open.alert("hip_fx_old", "knee.look_skin_hot_red");
  CHECK(!has(open.page(), "Measured, and no answer yet"));
  CHECK(has(unsettled(interpret::FlagAnswer::asked_no).page(), calm));
  CHECK(!has(unsettled(interpret::FlagAnswer::asked_no).page(), "no answer yet"));

  Raised asked = unsettled(interpret::FlagAnswer::not_asked);
  CHECK(!has(asked.page(), "Not settled"));
  interpret::Question question;
  question.question = {"alert.acutely_ill"};
  question.rank.steps = 1;
  question.message = {"msg.question.acutely_ill"};
  asked.assessment.questions.push_back(question);
  CHECK(has(asked.page(), calm + " Not settled: an illness of the whole body; its question stands under \"Alerts, and what was done\"."));
}
