#include "core/interpret/rules/hip/hip_wear.hpp"

#include "core/interpret/params.hpp"
#include "core/interpret/rules/sheet_places.hpp"

#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::string_view turned_seated = "hip.internal_rotation_passive_seated";
constexpr std::string_view turned_supine = "hip.internal_rotation_passive_supine";
constexpr std::string_view turned_prone = "hip.internal_rotation_passive_prone";

[[nodiscard]] MeasuredAt turned_inward(const View& view, Side side, RuleSheet& sheet) {
  return measure_any(view, {turned_seated, turned_supine, turned_prone}, side, sheet.findings);
}

// Pain that was noted with the motion itself.
[[nodiscard]] Said says_hurt(const model::Finding& finding) {
  if (!finding.pain || !finding.pain->score) {
    return {std::nullopt, "not_asked"};
  }
  return {static_cast<std::uint8_t>(finding.pain->score->steps > 0 ? 2 : 1), "known"};
}

void add_sedimentation(const View& view, RuleSheet& sheet) {
  const MeasuredAt measured = measure_at(view, "general.lab_esr", Side::midline, sheet.findings);
  const Findings all = view.at("general.lab_esr", Side::midline);
  const bool taken = std::any_of(all.begin(), all.end(), [](const auto* finding) { return std::holds_alternative<model::CountValue>(finding->value); });
  SheetInput input{"sedimentation", "sedimentation rate", {"not done", "45 or less", "over 45"}, "general.lab_esr", Side::midline, 1, "known", {}};
  if (taken) {
    input.may_be = static_cast<Classes>(classes_of(measured.between, std::array<std::int64_t, 1>{46}) << 1U);
    input.state = measured.state;
    input.reading = measured.reading;
  }
  sheet.inputs.push_back(std::move(input));
}

[[nodiscard]] JudgedRule judge_acr_hip(const View& view, Side side) {
  RuleSheet sheet;
  sheet.rule = acr_hip_rule;
  sheet.edition = acr_hip_edition;
  sheet.side = side;
  add_answer(view, sheet, "pain_most_days", "hurts on most days of the last month", "history.pain_most_days", side);
  const MeasuredAt turned = turned_inward(view, side, sheet);
  add_number(sheet, "inward_turn", "inward turn", turned_seated, side, turned, std::array<std::int64_t, 1>{150}, {"under 15", "15 or more"});
  add_joined(view, sheet, "inward_pain", "pain on inward turn", SheetJoin::one_thing,
             {{"hip.internal_rotation_overpressure", &says_test}, {turned_seated, &says_hurt}, {turned_supine, &says_hurt}, {turned_prone, &says_hurt}}, side);
  const MeasuredAt stiff = measure_at(view, "history.morning_stiffness_minutes", Side::midline, sheet.findings);
  add_number(sheet, "stiff_morning", "stiff in the morning, minutes", "history.morning_stiffness_minutes", Side::midline, stiff, std::array<std::int64_t, 1>{61},
             {"60 or less", "over 60"});
  add_number(sheet, "age", "age", {}, Side::midline, age_at_exam(view), std::array<std::int64_t, 2>{18, 51}, {"under 18", "18 to 50", "over 50"});
  add_sedimentation(view, sheet);
  const MeasuredAt bent = measure_at(view, "hip.flexion_passive", side, sheet.findings);
  add_number(sheet, "hip_bend", "bending of the hip", "hip.flexion_passive", side, bent, std::array<std::int64_t, 1>{1151}, {"115 or less", "over 115"});
  sheet.formula = "pain and (inward turn 15 or more, painful, stiff 60 or less, over 50; or under 15 and rate 45 or less, or without one bending 115 or less)";
  sheet.rows.push_back({{"table.acr_hip/1991.limits"},
                        {"ALTMAN1991"},
                        model::Status::read,
                        Params().figure("inward_deg", 15'000).figure("stiff_min", 60'000).figure("over_years", 50'000).figure("esr", 45'000).figure("flexion_deg", 115'000).raw()});
  const std::string_view gate = body_gate(view, "hip", side);
  return judge_sheet(view, sheet, [gate](std::span<const std::uint8_t> in) { return gate.empty() ? decide_acr_hip(in) : SheetAnswer{Outcome::not_applicable, {}, gate}; });
}

[[nodiscard]] JudgedRule judge_sutlive(const View& view, Side side) {
  RuleSheet sheet;
  sheet.rule = sutlive_rule;
  sheet.edition = sutlive_edition;
  sheet.side = side;
  sheet.counts = true;
  add_number(sheet, "age", "age", {}, Side::midline, age_at_exam(view), std::array<std::int64_t, 1>{41}, {"40 or under", "over 40"});
  add_answer(view, sheet, "pain_squat", "squatting makes it worse, as told", "history.pain_squatting", side);
  add_answer(view, sheet, "pain_bend_outer", "outer hip pain on bending it", "hip.pain_flexion_active", side, &says_test);
  add_answer(view, sheet, "pain_sweep", "pain in groin or outer side on loading with the thigh led across", "hip.scour_adduction", side, &says_test);
  add_answer(view, sheet, "pain_backward", "hip pain on straightening it backward", "hip.pain_extension_active", side, &says_test);
  const MeasuredAt turned = turned_inward(view, side, sheet);
  add_number(sheet, "inward_turn_25", "inward turn", turned_seated, side, turned, std::array<std::int64_t, 1>{251}, {"25 or less", "over 25"});
  sheet.formula = "one for each sign; three or more";
  sheet.rows.push_back({{"table.sutlive/2008.limits"}, {"SUTLIVE2008"}, model::Status::read, Params().figure("inward_deg", 25'000).figure("people", 72'000).raw()});
  const std::string_view gate = body_gate(view, "hip", side);
  return judge_sheet(view, sheet, [gate](std::span<const std::uint8_t> in) { return gate.empty() ? decide_sutlive(in) : SheetAnswer{Outcome::not_applicable, {}, gate}; });
}

constexpr std::array<Side, 2> hips{Side::left, Side::right};

[[nodiscard]] bool hip_hurts(const View& view, Side side) {
  return complains_at(view, side, {"hip_groin", "lateral_hip", "posterior_hip"}, {"site_groin", "site_outer_hip", "site_buttock"});
}

}  // namespace

SheetAnswer decide_acr_hip(std::span<const std::uint8_t> classes) {
  if (classes[4] == 0) {
    return {Outcome::not_applicable, {}, "age"};
  }
  const bool turns = classes[1] == 1;
  const bool first = turns && classes[2] == sheet_yes && classes[3] == 0 && classes[4] == 2;
  // Where a rate was taken, bending does not stand in for it.
  const bool second = !turns && (classes[5] == 0 ? classes[6] == 0 : classes[5] == 1);
  return classes[0] == sheet_yes && (first || second) ? SheetAnswer{Outcome::positive, "met"} : SheetAnswer{Outcome::negative, "not_met"};
}

SheetAnswer decide_sutlive(std::span<const std::uint8_t> classes) {
  if (classes[0] == 0) {
    return {Outcome::not_applicable, {}, "age"};
  }
  const std::int64_t signs = std::int64_t{classes[1]} + classes[2] + classes[3] + classes[4] + (classes[5] == 0 ? 1 : 0);
  constexpr std::array<std::string_view, 3> names{"count_3", "count_4", "count_5"};
  if (signs < 3) {
    return {Outcome::negative, "under_3", {}, signs};
  }
  return {Outcome::positive, names[static_cast<std::size_t>(signs - 3)], {}, signs};
}

std::vector<JudgedRule> run_acr_hip(const View& view) {
  std::vector<JudgedRule> judged;
  for (const Side side : hips) {
    if (any_recorded(view, side, {"history.pain_most_days"}) && hip_hurts(view, side)) {
      judged.push_back(judge_acr_hip(view, side));
    }
  }
  return judged;
}

std::vector<JudgedRule> run_sutlive(const View& view) {
  std::vector<JudgedRule> judged;
  for (const Side side : hips) {
    if (any_recorded(view, side, {"hip.scour_adduction", "hip.pain_flexion_active", "hip.pain_extension_active"}) && hip_hurts(view, side)) {
      judged.push_back(judge_sutlive(view, side));
    }
  }
  return judged;
}

}  // namespace limbledger::interpret
