// The page outside the knee: what is out of the ordinary comes from the catalogue, and silence is said as silence. Three examinations
// of an independent reader; wording: clinical safety, part A. The others hold the loader to its own rule.
#include "core/report/ordinary.hpp"
#include "core/report/sheet.hpp"
#include "tests/unit/reference/planted.hpp"
#include "tests/unit/report/printed.hpp"

using namespace limbledger;
using namespace limbledger::report_test;
using model::AnswerWord;
using model::Side;

namespace {

constexpr const char* summary = "Found out of the ordinary";

service::ExamDocument bare(const std::string& complaint) {
  service::ExamDocument one = document("fall");
  one.findings.clear();
  one.exam.complaint = {complaint};
  one.exam.impression.reset();
  one.exam.plan.reset();
  one.exam.signed_.reset();
  one.exam.state.reset();
  return one;
}
void answer(service::ExamDocument& one, const std::string& item, Side side, AnswerWord word) { add(one, item, side, model::Answer{word}); }
void choose(service::ExamDocument& one, const std::string& item, Side side, const std::string& word) { add(one, item, side, model::Choice{{word}}); }

}  // namespace

TEST_CASE("an ankle with tender bones, a gap in the heel cord and a deformity is not called ordinary, and its silence is no answer") {
  service::ExamDocument one = bare("ankle_injury");
  answer(one, "ankle.lateral_malleolus_tender", Side::right, AnswerWord::yes);
  answer(one, "ankle.achilles_gap", Side::right, AnswerWord::yes);
  answer(one, "ankle.look_deformity", Side::right, AnswerWord::yes);
  answer(one, "ankle.movement", Side::left, AnswerWord::yes);
  const std::string page = page_of(one);
  const std::string found = section(page, summary);
  for (const char* item : {"ankle.lateral_malleolus_tender", "ankle.achilles_gap", "ankle.look_deformity"}) {
    CHECK_MESSAGE(has(found, report::item_label(*report::built_in_words(), *reference::built_in_edition(), {item}) + ": "), item);
  }
  CHECK(has(found, "LEFT: nothing out of the ordinary among what was examined"));
  const std::string flat = on_one_line(page);
  CHECK(!has(flat, "a locked knee"));
  CHECK(!has(flat, "a kneecap out of place"));
}

TEST_CASE("a hip after a fall, the leg short and turned out: named, and the hip is said to have no rule here") {
  service::ExamDocument one = bare("hip_after_fall");
  choose(one, "hip.leg_attitude", Side::left, "attitude_short_turned_out");
  const std::string page = page_of(one);
  CHECK(has(section(page, summary), report::item_label(*report::built_in_words(), *reference::built_in_edition(), {"hip.leg_attitude"})));
  CHECK(!has(section(page, summary), "nothing out of the ordinary"));
  CHECK(has(section(page, "Rules"), "This edition has no decision rule for the hip: silence here is no answer."));
  CHECK(!has(on_one_line(page), "No further test by hand would change"));
  CHECK(!has(on_one_line(page), "No rule has anything to go on"));
}

TEST_CASE("an infant that does not move a leg and lay by the breech; an angle that nothing compares is named and not summed up") {
  service::ExamDocument one = bare("infant_hip");
  answer(one, "hip.leg_not_moved", Side::left, AnswerWord::yes);
  choose(one, "history.birth_presentation", Side::midline, "birth_breech");
  model::Angle abduction;
  abduction.toward_deg = model::Degrees{400};
  add(one, "hip.abduction_passive", Side::left, abduction);
  model::Length girth;
  girth.mm = model::Millimetres{400};
  add(one, "leg.thigh_girth_10cm", Side::right, girth);
  const std::string found = section(page_of(one), summary);
  CHECK(has(found, report::item_label(*report::built_in_words(), *reference::built_in_edition(), {"hip.leg_not_moved"}) + ": "));
  CHECK(has(found, report::item_label(*report::built_in_words(), *reference::built_in_edition(), {"history.birth_presentation"})));
  CHECK(has(found, "RIGHT: measured or described (whether ordinary is not said here): Thigh girth, 10 cm above the kneecap"));
}

TEST_CASE("each choice of the real edition says what is ordinary, but what is told") {
  for (const model::Item& item : reference::built_in_edition()->items()) {
    const bool chooses = item.value == model::ValueKind::choice || item.value == model::ValueKind::choices;
    CHECK_MESSAGE((!chooses || item.region.text == "history" || item.ordinary), item.item.text);
  }
}

TEST_CASE("the loader refuses an ordinary word that the item or the scale does not have") {
  const auto items = &InventedTexts::items;
  for (const Planted& one : std::vector<Planted>{
           {items, R"("value":"answer",)", R"("value":"answer","ordinary":["perhaps"],)", "params.unknown_word", "/items/15/ordinary/0"},
           {items, R"("value":"answer",)", R"("value":"answer","ordinary":["no","no"],)", "json.duplicate_member", "/items/15/ordinary/1"},
           {items, R"("value":"answer",)", R"("value":"answer","ordinary":[],)", "params.missing", "/items/15/ordinary"},
           {items, R"("value":"angle",)", R"("value":"angle","ordinary":["no"],)", "item.not_applicable", "/items/0/ordinary"},
           {&InventedTexts::scales, R"("takes_mm":true,)", R"("takes_mm":true,"ordinary":["9"],)", "params.unknown_word", "/scales/0/ordinary/0"},
           {&InventedTexts::alerts, R"("stop":["knee.squat"])", R"("stop":["knee.squat"],"sign":["knee.unlisted"])", "item.unknown", "/alerts/0/sign/0"}}) {
    check_planted(one);
  }
}

TEST_CASE("what the person as a whole has does not stand under a side, and each sheet of paper has its day and its number") {
  report::Sheet sheet;
  sheet.examined = "examined 2026-01-02";
  report::SheetSection section{"Findings", {}};
  section.lines.push_back({report::LineKind::region, "General", {}, {}, {}});
  section.lines.push_back({report::LineKind::item, "Temperature", {}, {}, {"37"}});
  sheet.sections.push_back(section);
  const std::string html = report::sheet_html(sheet, *report::built_in_words());
  CHECK(has(html, "THE PERSON AS A WHOLE</th>"));
  CHECK(!has(html, ">RIGHT<"));
  CHECK(has(html.substr(html.find("<tfoot>"), html.find("</tfoot>") - html.find("<tfoot>")), "examined 2026-01-02"));
  CHECK(has(html, "counter(page)"));
}
