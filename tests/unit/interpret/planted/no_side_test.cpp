// Planted cases of an exam whose complaint has no side, as of a limping toddler, or of who fell and cannot tell: what was found is of the
// person as a whole. Sources: the red flags page, sections 0 (what could become yes is asked), 8, 10 and 12; that such a danger is one
// line of no side is our own rule. And of a question that nobody had the time for. All is invented; the day is 2026-11-24.
#include "tests/outside/knee_document.hpp"

using namespace limbledger;
using limbledger::tests::KneeVisit;
using limbledger::tests::visit_with;

namespace {

KneeVisit of_no_side(const std::string& complaint, const std::string& born, const std::string& lines, const std::string& side = "") {
  KneeVisit visit = visit_with(complaint, born, lines);
  visit.complained_of = side;
  return visit;
}

// The lines of a danger: its message, "!" where it interrupts, and its side.
std::string sides_told(const KneeVisit& visit, const std::string& name) {
  std::string told;
  for (const interpret::Alert& one : visit.assess().alerts) {
    if (one.alert.text == "alert." + name) {
      const std::string side = one.side ? (*one.side == model::Side::left ? " left" : " right") : " none";
      told += (told.empty() ? "" : ", ") + one.message.text.substr(one.message.text.rfind('.') + 1) + (one.interrupts ? "!" : "") + side;
    }
  }
  return told;
}

std::vector<model::Side> asked_of(const KneeVisit& visit, const std::string& name, const std::string& item) {
  std::vector<model::Side> sides;
  for (const interpret::Question& one : visit.assess().questions) {
    for (const interpret::Ask& ask : one.question.text == "alert." + name ? one.ask : std::vector<interpret::Ask>{}) {
      if (ask.item.text == item) {
        sides.push_back(ask.side);
      }
    }
  }
  return sides;
}

struct OfNoSide {
  std::string complaint;
  std::string born;
  std::string lines;
  std::string alert;
  std::string line;
};

}  // namespace

TEST_CASE("planted: a danger of the person as a whole is raised where no side of the complaint is named, once, in the same class") {
  const std::vector<OfNoSide> all{
      {"limping_child", "2023-05-01", "gait.limp midline answer:yes;history.fever midline answer:yes;history.unwell midline answer:yes;general.temperature midline cel:39.4;gait.steps_now midline count:0",
       "septic_child", "ill!"},
      {"limping_child", "2020-05-01", "gait.limp midline answer:yes;general.temperature midline cel:38.6", "septic_child", "raised"},
      {"hip_after_fall", "1942-05-01", "history.fall_recent midline answer:yes;gait.steps_now midline count:0", "hip_fx_old", "raised"},
      {"swollen_legs", "1960-05-01", "history.examiner_suspects_clot midline answer:yes;history.breathless midline answer:yes;general.oxygen_saturation midline count:85", "dvt", "suspected_chest!"}};
  for (const OfNoSide& one : all) {
    CAPTURE(one.alert);
    CAPTURE(one.lines);
    CHECK(sides_told(of_no_side(one.complaint, one.born, one.lines, "right"), one.alert) == one.line + " right");
    for (const char* side : {"", "midline"}) {
      CHECK(sides_told(of_no_side(one.complaint, one.born, one.lines, side), one.alert) == one.line + " none");
    }
    // An ordinary finding of one leg gives it no side; one on which the danger rests does.
    const KneeVisit beside = of_no_side(one.complaint, one.born, one.lines + ";knee.flexion_active left 120 goniometer_long");
    CHECK(sides_told(beside, one.alert) == one.line + " none");
  }
  const std::string limps = all[1].lines + ";hip.pain_passive_severe left answer:yes";
  CHECK(sides_told(of_no_side("limping_child", "2020-05-01", limps), "septic_child") == "raised left");
}

TEST_CASE("planted: where no side is named, the questions of the complaint are asked of both legs") {
  const KneeVisit plaster = of_no_side("after_plaster", "1980-01-01", "history.mechanism midline choice:twist");
  const std::vector<model::Side> both{model::Side::left, model::Side::right};
  CHECK(asked_of(plaster, "ali", "vessel.foot_cold") == both);
  CHECK(sides_told(plaster, "ali").empty());
  // An ordinary visit of no side stays quiet.
  CHECK(of_no_side("chronic_knee", "1960-01-01", "history.weeks_since_onset midline count:150;history.fever midline answer:no;history.unwell midline answer:no").assess().alerts.empty());
}

TEST_CASE("planted: what nobody had the time for is asked again, and what was declined is not") {
  const std::string hurt = "history.mechanism midline choice:twist;";
  const auto asks_for_pulse = [&](const std::string& reason) {
    return !asked_of(visit_with("ankle_injury", "1980-01-01", hurt + "vessel.pulse_dorsalis_pedis left not:" + reason, "2026-11-24"), "ali", "vessel.pulse_dorsalis_pedis").empty();
  };
  CHECK(asks_for_pulse("no_time"));
  CHECK_FALSE(asks_for_pulse("declined"));
}
