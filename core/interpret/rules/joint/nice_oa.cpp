#include "core/interpret/rules/joint/nice_oa.hpp"

#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/params.hpp"
#include "core/interpret/rules/sheet_places.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;

[[nodiscard]] Said says_hip_hot(const model::Finding& finding) { return says_one_of(finding, {"hip_hot_red"}); }

[[nodiscard]] JudgedRule judge_nice_oa(const View& view, Side side, bool of_hip) {
  RuleSheet sheet;
  sheet.rule = nice_oa_rule;
  sheet.edition = nice_oa_edition;
  sheet.side = side;
  add_number(sheet, "age", "age", {}, Side::midline, age_at_exam(view), std::array<std::int64_t, 2>{18, 45}, {"under 18", "18 to 44", "45 or more"});
  add_answer(view, sheet, "pain_with_use", "hurts with use", "history.pain_with_use", side);
  const MeasuredAt stiff = measure_at(view, "history.morning_stiffness_minutes", Side::midline, sheet.findings);
  add_number(sheet, "stiff_morning", "stiff in the morning, minutes", "history.morning_stiffness_minutes", Side::midline, stiff, std::array<std::int64_t, 1>{31},
             {"30 or less", "over 30"});
  const Tri hurt = injured(Answers(view)).value;
  const Findings told = view.at("history.mechanism", Side::midline);
  sheet.findings.insert(sheet.findings.end(), told.begin(), told.end());
  add_known(sheet, "hurt_before", "hurt lately", hurt, hurt == Tri::undetermined ? (told.empty() ? "not_asked" : "unsure") : "known", "history.mechanism", Side::midline);
  add_answer(view, sheet, "worse_fast", "getting worse fast", "history.rapid_worsening", Side::midline);
  if (of_hip) {
    // No hand feels the heat of a hip: only skin that was seen hot or red over it counts; looked at and not told, it stays open.
    const Told hot = tell(view, "hip.look_skin", side, &says_hip_hot, sheet.findings);
    const bool looked = !view.at("hip.look_skin", side).empty();
    add_known(sheet, "joint_hot", "hot or red", looked ? hot.value : Tri::no, !looked || hot.value == Tri::no ? "not_available" : hot.state, "hip.look_skin", side);
  } else {
    add_answer(view, sheet, "joint_hot", "hot or red", "knee.look_skin_hot_red", side);
  }
  add_joined(view, sheet, "infection_or_growth", "infection or growth suspected", SheetJoin::parts,
             {{"history.fever"}, {"history.weight_loss"}, {"history.cancer_known"}}, Side::midline);
  sheet.formula = "45 or more, pain with use and stiff 30 minutes or less; unusual where any of the others";
  sheet.rows.push_back({{"table.nice_oa/NG226.limits"}, {"NICE_NG226"}, model::Status::read, Params().figure("from_years", 45'000).figure("stiff_min", 30'000).raw()});
  const std::string_view gate = body_gate(view, of_hip ? "hip" : "knee", side);
  return judge_sheet(view, sheet, [gate](std::span<const std::uint8_t> in) {
    if (!gate.empty() || in[0] == 0) {
      return SheetAnswer{Outcome::not_applicable, {}, gate.empty() ? std::string_view("age") : gate};
    }
    std::array<std::uint8_t, 7> of_adults{};
    std::copy(in.begin(), in.end(), of_adults.begin());
    --of_adults[0];
    return decide_nice_oa(of_adults);
  });
}

}  // namespace

SheetAnswer decide_nice_oa(std::span<const std::uint8_t> classes) {
  if (classes[0] == 0 || classes[1] != sheet_yes || classes[2] == 1) {
    return {Outcome::negative, "not_met"};
  }
  const bool unusual = classes[3] == sheet_yes || classes[4] == sheet_yes || classes[5] == sheet_yes || classes[6] == sheet_yes;
  return {Outcome::positive, unusual ? std::string_view("met_but_unusual") : std::string_view("met")};
}

std::vector<JudgedRule> run_nice_oa(const View& view) {
  std::vector<JudgedRule> judged;
  const bool stiff = any_recorded(view, Side::midline, {"history.morning_stiffness_minutes"});
  for (const Side side : {Side::left, Side::right}) {
    const bool of_hip = complains_at(view, side, {"hip_groin"}, {"site_groin"});
    const bool of_knee = !of_hip && complains_at(view, side, {"chronic_knee"}, {"site_knee"});
    const bool begun = any_recorded(view, side, {"history.pain_with_use"}) || (stiff && view.exam().side == side);
    if (begun && (of_hip || of_knee)) {
      judged.push_back(judge_nice_oa(view, side, of_hip));
    }
  }
  return judged;
}

}  // namespace limbledger::interpret
