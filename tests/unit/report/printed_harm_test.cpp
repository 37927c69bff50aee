// What a clinician who read printed exams cold could have acted on to somebody's harm, each once as a test. Meanwhile of a replaced
// knee and of a limping child: red flags page, sections 7, 13 and 15. Wording: clinical safety, part A.
#include "tests/unit/report/printed.hpp"

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

std::string danger_of(const service::ExamDocument& one) { return section(page_of(one), "Alerts, and what was done"); }

service::ExamDocument hot_replaced_knee() {
  service::ExamDocument fall = document("fall");
  add(fall, "body.knee_replaced", model::Side::right, model::Answer{model::AnswerWord::yes});
  drop(fall, "knee.look_skin_hot_red");
  add(fall, "knee.look_skin_hot_red", model::Side::right, model::Answer{model::AnswerWord::yes});
  return fall;
}

}  // namespace

TEST_CASE("no message calls the knock of the kneecap by a word that is also a needle's") {
  const report::Words& words = *report::built_in_words();
  for (const std::string& name : words.names()) {
    const std::string text = words.say(name);
    CAPTURE(text);
    for (const std::string word : {" tap ", " tap.", " tap,", " tap:", " tap;", " taps", "tap of"}) {
      CHECK(!has(text, word));
    }
  }
  CHECK(has(words.say("msg.effusion.tense"), "pressing on the kneecap shows nothing more in such a knee"));
}

TEST_CASE("a replaced hot knee gets no needle here, whichever alert stands beside it") {
  service::ExamDocument knee = hot_replaced_knee();
  add(knee, "history.blood_thinners", model::Side::midline, model::Answer{model::AnswerWord::yes});
  add(knee, "history.swelling_onset", model::Side::right, model::Choice{{"within_2h"}});
  const std::string alerts = danger_of(knee);
  CHECK(has(alerts, "Same day, to the surgeon: replaced RIGHT knee"));
  CHECK(has(alerts, "no needle into this joint here; the surgeon who takes it over decides about fluid and antibiotic"));
  CHECK(has(alerts, "who takes blood thinners or bleeds more than others"));
  CHECK(!has(alerts, "the examiner's own decision"));
  CHECK(!has(alerts, "joint fluid and blood culture before an antibiotic"));
}

TEST_CASE("a replaced knee of a person who is ill: the needle waits, the antibiotic does not") {
  service::ExamDocument knee = hot_replaced_knee();
  add(knee, "history.unwell", model::Side::midline, model::Answer{model::AnswerWord::yes});
  add(knee, "history.fever", model::Side::midline, model::Answer{model::AnswerWord::yes});
  const std::string alerts = danger_of(knee);
  CHECK(has(alerts, "Call now: infected RIGHT knee and the person is ill"));
  CHECK(has(alerts, "decides about fluid; antibiotic by the local sepsis protocol, without waiting"));
}

TEST_CASE("a limping child is off the leg before anything else, and the film is named") {
  service::ExamDocument child = document("child");
  drop(child, "gait.pattern");
  const std::string alerts = danger_of(child);
  CHECK(has(alerts, "TO DO until seen, asked for by the program (by whom, and if told: not recorded but where said): no weight on the leg (carried or wheeled), no forced movement of the hip; film of both hips, two views; temperature"));
  CHECK(!has(alerts, "sign that does not wait"));
}

TEST_CASE("an answered no prints what it rests on") {
  service::ExamDocument stiff = document("stiff");
  for (model::Finding& finding : stiff.findings) {
    if (finding.item.text == "history.night_pain") {
      finding.value = model::Answer{model::AnswerWord::no};
    }
  }
  const std::string signs = section(page_of(stiff), "Danger signs asked after");
  CHECK(has(signs, "a locked knee RIGHT ("));
  const std::string stands = signs.substr(signs.find("Asked or looked at, answered no"), signs.find("Not asked, or not all") - signs.find("Asked or looked at, answered no"));
  CHECK(has(stands, ": no)"));
  CHECK(!has(stands, "(Weeks since it began: 160)"));  // how long ago is no answer about a sign
  CHECK(!has(stands, " RIGHT;"));
}

TEST_CASE("no step does not say that nothing is to be done while an alert stands above") {
  service::ExamDocument stiff = document("stiff");
  stiff.exam.plan.reset();
  CHECK(!has(section(page_of(stiff), "Next step"), "what the alerts above ask for stands"));
  drop(stiff, "history.night_pain_relieved_by_turning");
  add(stiff, "history.night_pain_relieved_by_turning", model::Side::midline, model::Answer{model::AnswerWord::no});
  const std::string page = page_of(stiff);
  CHECK(has(section(page, "Alerts, and what was done"), "Within two weeks: bone pain that asks for a film, RIGHT"));
  CHECK(has(section(page, "Danger signs"), "Raised (signs of): bone pain or a lump that asks for a picture RIGHT."));
  const std::string next = section(page, "Next step");
  CHECK(has(next, "lerts above ask for"));
}

TEST_CASE("what the page says of plan, consent, company and of what was left out") {
  service::ExamDocument child = document("child");
  const std::string page = page_of(child);
  CHECK(has(section(page, "Plan"), "limit, LEFT, told: \u2068Off the leg, carried, until the hips are seen\u2069"));
  CHECK(has(head(page), "Capacity: not able to consent alone."));
  CHECK(has(section(page_of(document("football")), "Company"), "Chaperone: offered; whether one was present is not recorded."));
  drop(child, "ankle.movement");
  add(child, "ankle.movement", model::Side::right, model::Answer{model::AnswerWord::yes});
  const std::string out = section(page_of(child), "Not examined");
  CHECK(has(out, "ankle RIGHT: only Moves foot and toes"));
  CHECK(has(out, "Of knee, hip, ankle: a side that is not named above had three items or more recorded, not necessarily all."));
}

TEST_CASE("that the first weeks feel otherwise is said of the knee complained of alone") {
  service::ExamDocument football = document("football");
  for (model::Finding& finding : football.findings) {
    if (finding.item.text == "knee.lachman") {
      auto& grade = std::get<model::Grade>(finding.value);
      grade.grade = {"0"};
      grade.mm.reset();
      finding.end_feel = model::Word{"firm"};
    }
  }
  const std::string compared = section(page_of(football), "Compared with");
  const std::string first_weeks = "first two weeks";
  for (std::size_t at = compared.find(first_weeks); at != std::string::npos; at = compared.find(first_weeks, at + 1)) {
    const std::size_t line = compared.rfind(" - ", at);
    CHECK(has(compared.substr(line, at - line), ", LEFT,"));
  }
  CHECK(has(compared, first_weeks));
}

// NICE_NG12: bone pain or swelling of the young; a danger that is open names what would settle it.
TEST_CASE("planted: of a child's bone pain that stays open the page names what would settle it; all of it answered no, it is asked and answered") {
  service::ExamDocument child = document("child");
  const model::Value no = model::Answer{model::AnswerWord::no};
  const auto tell = [&](const std::string& item, model::Side side, model::Value value) {
    drop(child, item);
    add(child, item, side, std::move(value));
  };
  tell("history.night_pain", model::Side::midline, no);
  tell("history.weight_loss", model::Side::midline, no);
  for (const char* item : {"history.bone_pain_unexplained", "history.cancer_known", "history.weeks_since_onset", "knee.look_swelling_spread", "knee.bone_tender_elsewhere"}) {
    drop(child, item);
  }
  const std::string open = on_one_line(page_of(child));
  REQUIRE(has(open, "bone pain or a lump that asks for a picture (not recorded: "));
  const std::string named = open.substr(open.find("bone pain or a lump that asks for a picture (not recorded: "), 220);
  CHECK(has(named, "and more"));
  const model::Side side = *child.exam.side;
  tell("history.bone_pain_unexplained", side, no);
  tell("history.cancer_known", model::Side::midline, no);
  tell("history.weeks_since_onset", model::Side::midline, model::CountValue{{1}});
  const std::string answered = on_one_line(page_of(child));
  CHECK_FALSE(has(answered, "bone pain or a lump that asks for a picture (not recorded"));
}
