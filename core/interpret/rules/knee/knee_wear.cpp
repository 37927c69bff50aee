#include "core/interpret/rules/knee/knee_wear.hpp"

#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/params.hpp"
#include "core/interpret/rules/sheet_places.hpp"

#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::int64_t lacks_extension_at = -100;  // CONVENTION: 10 degrees short of straight counts as less motion

[[nodiscard]] RuleSheet worn_knee(std::string_view rule, std::string_view edition, Side side) {
  RuleSheet sheet;
  sheet.rule = rule;
  sheet.edition = edition;
  sheet.side = side;
  return sheet;
}

void add_years(const View& view, RuleSheet& sheet, std::int64_t from, std::vector<std::string_view> classes) {
  add_number(sheet, "age", "age", {}, Side::midline, age_at_exam(view), std::array<std::int64_t, 2>{18, from}, std::move(classes));
}

void add_stiff(const View& view, RuleSheet& sheet, std::int64_t from, std::vector<std::string_view> classes) {
  const MeasuredAt stiff = measure_at(view, "history.morning_stiffness_minutes", Side::midline, sheet.findings);
  add_number(sheet, "stiff_morning", "stiff in the morning, minutes", "history.morning_stiffness_minutes", Side::midline, stiff,
             std::array<std::int64_t, 1>{from}, std::move(classes));
}

// Bends less than 110 degrees, or lacks 10 of straight (both our convention); no where both were measured and neither holds.
void add_less_motion(const View& view, RuleSheet& sheet, Side side) {
  const MeasuredAt bent = measure_any(view, {"knee.flexion_passive", "knee.flexion_active"}, side, sheet.findings);
  const MeasuredAt straight = measure_at(view, "knee.extension_passive", side, sheet.findings);
  const Tri bends_less = !bent.between ? Tri::undetermined : tri(bent.between->low < flexion_restricted);
  const Tri lacks = !straight.between || (straight.between->low <= lacks_extension_at) != (straight.between->high <= lacks_extension_at)
                        ? Tri::undetermined
                        : tri(straight.between->low <= lacks_extension_at);
  const Tri less = or_(bends_less, lacks);
  const bool bend_open = bends_less == Tri::undetermined;
  const std::string& open = bend_open ? bent.state : straight.state;
  add_known(sheet, "motion_less", "bends under 110 or lacks 10 of straight", less, less == Tri::undetermined ? open : "known",
            bend_open ? "knee.flexion_passive" : "knee.extension_passive", side);
}

[[nodiscard]] JudgedRule judge_worn_knee(const View& view, RuleSheet& sheet, SheetAnswer (*decide)(std::span<const std::uint8_t>)) {
  const std::string_view gate = body_gate(view, "knee", sheet.side);
  JudgedRule judged = judge_sheet(
      view, sheet, [gate, decide](std::span<const std::uint8_t> in) { return gate.empty() ? decide(in) : SheetAnswer{Outcome::not_applicable, {}, gate}; });
  if (judged.result.outcome != Outcome::not_applicable && view.says_yes("knee.look_skin_hot_red", sheet.side)) {
    judged.result.flags.push_back({"warm_joint"});
  }
  return judged;
}

[[nodiscard]] JudgedRule judge_acr_list(const View& view, Side side) {
  RuleSheet sheet = worn_knee(acr_knee_rule, acr_knee_edition, side);
  add_years(view, sheet, 51, {"under 18", "18 to 50", "over 50"});
  add_answer(view, sheet, "pain_most_days", "hurts on most days of the last month", "history.pain_most_days", side);
  add_stiff(view, sheet, 30, {"under 30", "30 or more"});
  add_answer(view, sheet, "crepitus", "crepitus", "knee.crepitus", side);
  add_answer(view, sheet, "bone_tender", "bone of the knee tender", "knee.bone_tender_elsewhere", side);
  add_answer(view, sheet, "kneecap_tender", "kneecap tender", "knee.patella_tender", side);
  add_answer(view, sheet, "bone_enlarged", "bone of the knee thickened", "knee.bony_enlargement", side);
  add_answer(view, sheet, "joint_warm", "knee warm", "knee.look_skin_hot_red", side);
  sheet.formula = "pain and three of: over 50, stiff under 30 minutes, crepitus, tender bone, thickened bone, no warmth";
  sheet.rows.push_back({{"table.acr_knee/1986.limits"}, {"ALTMAN1986"}, model::Status::memory, Params().figure("over_years", 50'000).figure("stiff_min", 30'000).raw()});
  return judge_worn_knee(view, sheet, &decide_acr_knee);
}

[[nodiscard]] JudgedRule judge_acr_tree(const View& view, Side side) {
  RuleSheet sheet = worn_knee(acr_knee_tree_rule, acr_knee_tree_edition, side);
  add_years(view, sheet, 38, {"under 18", "18 to 37", "38 or more"});
  add_answer(view, sheet, "pain_most_days", "hurts on most days of the last month", "history.pain_most_days", side);
  add_stiff(view, sheet, 31, {"30 or less", "over 30"});
  add_answer(view, sheet, "crepitus", "crepitus", "knee.crepitus", side);
  add_answer(view, sheet, "bone_enlarged", "bone of the knee thickened", "knee.bony_enlargement", side);
  sheet.formula = "pain and (crepitus, 38 or more and stiff 30 minutes or less; or thickened bone)";
  sheet.rows.push_back({{"table.acr_knee/1986.tree"}, {"ALTMAN1987"}, model::Status::memory, Params().figure("from_years", 38'000).figure("stiff_min", 30'000).raw()});
  return judge_worn_knee(view, sheet, &decide_acr_knee_tree);
}

[[nodiscard]] JudgedRule judge_eular(const View& view, Side side) {
  RuleSheet sheet = worn_knee(eular_knee_rule, eular_knee_edition, side);
  add_years(view, sheet, 41, {"under 18", "18 to 40", "over 40"});
  add_answer(view, sheet, "pain_with_use", "hurts with use", "history.pain_with_use", side);
  add_stiff(view, sheet, 31, {"30 or less", "over 30"});
  add_answer(view, sheet, "function_less", "does less because of it", "history.function_reduced", Side::midline);
  add_answer(view, sheet, "crepitus", "crepitus", "knee.crepitus", side);
  add_less_motion(view, sheet, side);
  add_answer(view, sheet, "bone_enlarged", "bone of the knee thickened", "knee.bony_enlargement", side);
  sheet.formula = "over 40, pain with use, stiff 30 minutes or less, does less, and one of crepitus, less motion, thickened bone";
  sheet.rows.push_back({{"table.eular_knee/2010.limits"}, {"ZHANG2010"}, model::Status::memory, Params().figure("over_years", 40'000).figure("stiff_min", 30'000).raw()});
  return judge_worn_knee(view, sheet, &decide_eular_knee);
}

// Where the question that the set begins with was asked of a knee.
template <class Judge>
[[nodiscard]] std::vector<JudgedRule> run_worn_knee(const View& view, std::string_view asked, const Judge& judge) {
  std::vector<JudgedRule> judged;
  for (const Side side : {Side::left, Side::right}) {
    if (any_recorded(view, side, {asked}) && complains_at(view, side, {"chronic_knee"}, {"site_knee"})) {
      judged.push_back(judge(view, side));
    }
  }
  return judged;
}

[[nodiscard]] SheetAnswer met_if(bool met) { return met ? SheetAnswer{Outcome::positive, "met"} : SheetAnswer{Outcome::negative, "not_met"}; }

}  // namespace

SheetAnswer decide_acr_knee(std::span<const std::uint8_t> classes) {
  if (classes[0] == 0) {
    return {Outcome::not_applicable, {}, "age"};
  }
  const bool tender = classes[4] == sheet_yes || classes[5] == sheet_yes;
  const int held = (classes[0] == 2 ? 1 : 0) + (classes[2] == 0 ? 1 : 0) + classes[3] + (tender ? 1 : 0) + classes[6] + (classes[7] == sheet_no ? 1 : 0);
  return met_if(classes[1] == sheet_yes && held >= 3);
}

SheetAnswer decide_acr_knee_tree(std::span<const std::uint8_t> classes) {
  if (classes[0] == 0) {
    return {Outcome::not_applicable, {}, "age"};
  }
  const bool grates = classes[3] == sheet_yes && classes[0] == 2 && classes[2] == 0;
  return met_if(classes[1] == sheet_yes && (grates || classes[4] == sheet_yes));
}

SheetAnswer decide_eular_knee(std::span<const std::uint8_t> classes) {
  if (classes[0] == 0) {
    return {Outcome::not_applicable, {}, "age"};
  }
  const bool symptoms = classes[1] == sheet_yes && classes[2] == 0 && classes[3] == sheet_yes;
  return met_if(classes[0] == 2 && symptoms && (classes[4] == sheet_yes || classes[5] == sheet_yes || classes[6] == sheet_yes));
}

std::vector<JudgedRule> run_acr_knee(const View& view) { return run_worn_knee(view, "history.pain_most_days", &judge_acr_list); }
std::vector<JudgedRule> run_acr_knee_tree(const View& view) { return run_worn_knee(view, "history.pain_most_days", &judge_acr_tree); }
std::vector<JudgedRule> run_eular_knee(const View& view) { return run_worn_knee(view, "history.pain_with_use", &judge_eular); }

}  // namespace limbledger::interpret
