#include "core/interpret/rules/pelvis/sacroiliac.hpp"

#include "core/interpret/params.hpp"
#include "core/interpret/rules/sheet_inputs.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::array<std::string_view, 4> tests_of_side{"pelvis.distraction", "pelvis.compression", "pelvis.thigh_thrust", "pelvis.sacral_thrust"};
constexpr std::string_view over_the_edge = "pelvis.gaenslen";

[[nodiscard]] JudgedRule judge_laslett(const View& view, Side side) {
  RuleSheet sheet;
  sheet.rule = laslett_rule;
  sheet.edition = laslett_edition;
  sheet.side = side;
  sheet.counts = true;
  add_number(sheet, "age", "age", {}, Side::midline, age_at_exam(view), std::array<std::int64_t, 1>{18}, {"under 18", "18 or more"});
  const Told pregnant = tell_pregnancy(view, sheet.findings);
  add_known(sheet, "pregnant", "pregnant", pregnant.value, pregnant.state, "body.pregnancy", Side::midline);
  add_answer(view, sheet, "press_apart", "front spines pressed apart", tests_of_side[0], side, &says_test);
  add_answer(view, sheet, "press_together", "pelvis pressed together", tests_of_side[1], side, &says_test);
  add_answer(view, sheet, "thigh_thrust", "thigh thrust", tests_of_side[2], side, &says_test);
  add_answer(view, sheet, "press_sacrum", "sacrum pressed", tests_of_side[3], side, &says_test);
  add_answer(view, sheet, "edge_this_thigh", "this thigh over the edge", over_the_edge, side, &says_test);
  add_answer(view, sheet, "edge_other_thigh", "the other thigh over the edge", over_the_edge, other_side(side), &says_test);
  sheet.formula = "one for each of six; three or more, or none";
  sheet.rows.push_back({{"table.laslett/2005.people"}, {"LASLETT2005"}, model::Status::read, Params().figure("people", 48'000).raw()});
  std::vector<const model::Finding*> drawn;
  const Tri drawing_in = tell(view, "pelvis.lumbar_pain_centralises", Side::midline, &says_answer, drawn).value;
  sheet.findings.insert(sheet.findings.end(), drawn.begin(), drawn.end());
  JudgedRule judged = judge_sheet(view, sheet, [drawing_in](std::span<const std::uint8_t> in) {
    return drawing_in == Tri::yes ? SheetAnswer{Outcome::not_applicable, {}, "pain_draws_in"} : decide_laslett(in);
  });
  RuleResult& result = judged.result;
  if (result.outcome == Outcome::not_applicable) {
    return judged;
  }
  if (result.outcome == Outcome::positive && pregnant.value != Tri::no) {
    result.flags.push_back({pregnant.value == Tri::yes ? "outside_derivation" : "pregnancy_not_asked"});
  }
  const auto of_four = std::count_if(sheet.inputs.begin() + 2, sheet.inputs.begin() + 6, [](const SheetInput& input) { return input.may_be == 2; });
  if (result.outcome != Outcome::positive && of_four >= 2) {
    result.flags.push_back({"two_of_four"});
  }
  // Also where it was tried and nobody was sure, or two disagree: the count stands by its letter, and says what it does not know.
  if (drawing_in == Tri::undetermined) {
    result.flags.push_back({"drawing_in_not_asked"});
  }
  return judged;
}

}  // namespace

SheetAnswer decide_laslett(std::span<const std::uint8_t> classes) {
  if (classes[0] == 0) {
    return {Outcome::not_applicable, {}, "age"};
  }
  const auto tests = classes.subspan(2);
  const auto count = std::count(tests.begin(), tests.end(), sheet_yes);
  if (count >= 3) {
    return {Outcome::positive, "three_or_more", {}, count};
  }
  if (classes[1] == sheet_yes) {
    return {Outcome::not_applicable, {}, "pregnancy", count};
  }
  return count == 0 ? SheetAnswer{Outcome::negative, "none_of_set", {}, 0} : SheetAnswer{Outcome::undetermined, "one_or_two", {}, count};
}

std::vector<JudgedRule> run_laslett(const View& view) {
  std::vector<JudgedRule> judged;
  const bool of_the_back = complaint_among(view, {"posterior_hip", "back_leg", "whole_limb", "hip_groin", "lateral_hip", "free", "review"});
  for (const Side side : {Side::left, Side::right}) {
    // Beside any other complaint it is said wherever somebody tried it: a set that is not said is read as a set that is negative.
    const bool on_this_side = !of_the_back || side_complained_of(view, side);
    const bool tried = std::any_of(tests_of_side.begin(), tests_of_side.end(), [&](std::string_view item) { return any_recorded(view, side, {item}); });
    if (on_this_side && (tried || any_recorded(view, side, {over_the_edge}))) {
      judged.push_back(judge_laslett(view, side));
    }
  }
  return judged;
}

}  // namespace limbledger::interpret
