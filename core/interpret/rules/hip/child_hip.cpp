#include "core/interpret/rules/hip/child_hip.hpp"

#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/params.hpp"
#include "core/interpret/rules/sheet_places.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::int64_t fever_over_tenths = fever_child_tenths + 1;  // over 38.5
constexpr std::int64_t esr_from = 40;
constexpr std::int64_t white_cells_from = 12'001;
constexpr std::int64_t crp_over = 21;
constexpr std::array<std::string_view, 6> count_names{"count_0", "count_1", "count_2", "count_3", "count_4", "count_5"};
constexpr std::string_view warmest = "general.temperature_highest_7_days";

// The highest now or in the last seven days; a temperature of today alone says no only where a fever was denied.
void add_fever(const View& view, RuleSheet& sheet) {
  const MeasuredAt now = measure_at(view, "general.temperature", Side::midline, sheet.findings);
  const MeasuredAt week = measure_at(view, warmest, Side::midline, sheet.findings);
  const Told told = tell(view, "history.fever", Side::midline, &says_answer, sheet.findings);
  const auto over = [](const MeasuredAt& one) { return one.between && one.between->low >= fever_over_tenths; };
  const auto below = [](const MeasuredAt& one) { return one.between && one.between->high < fever_over_tenths; };
  const bool none = (below(week) && (!now.between || below(now))) || (below(now) && !week.between && told.value == Tri::no);
  SheetInput input{"fever_over", "highest temperature", {"no", "yes"}, warmest, Side::midline, no_or_yes, week.state, {}};
  if (over(now) || over(week) || none) {
    const bool by_week = week.between && (!now.between || week.between->high >= now.between->high);
    input.may_be = none ? 1 : 2;
    input.state = "known";
    input.reading = by_week ? week.reading : now.reading;
  }
  sheet.inputs.push_back(std::move(input));
}

[[nodiscard]] Said says_no_weight(const model::Finding& finding) {
  const std::vector<model::ChoiceId> named = choices_of(finding);
  if (named.empty() || named.front().text == "bears_never_walked") {
    return {std::nullopt, "not_reliable"};
  }
  return says_one_of(finding, {"bears_not"});
}

// Not a step; one and more is some weight.
[[nodiscard]] Said says_no_step(const model::Finding& finding) {
  const auto* count = std::get_if<model::CountValue>(&finding.value);
  return count == nullptr ? Said{std::nullopt, "unsure"} : Said{static_cast<std::uint8_t>(count->count.steps == 0 ? 2 : 1), "known"};
}

struct ChildCount {
  std::string_view rule;
  std::string_view edition;
  std::string_view source;
  bool blood = false;  // sedimentation, white cells and fever
  bool crp = false;
};

[[nodiscard]] bool of_a_sore_hip(const View& view, Side side) {
  const bool limps_here = complaint_among(view, {"limping_child"}) && side_complained_of(view, side);
  const bool hurts_here = under_age(view, child_under) == Tri::yes && complains_at(view, side, {"hip_groin"}, {"site_groin", "site_thigh_front"});
  return (limps_here || hurts_here) && (view.exam().side == side || view.has_side(side));
}

[[nodiscard]] JudgedRule judge_child_hip(const View& view, Side side, const ChildCount& which) {
  RuleSheet sheet;
  sheet.rule = which.rule;
  sheet.edition = which.edition;
  sheet.side = side;
  sheet.counts = true;
  constexpr std::array<std::int64_t, 1> grown{child_under};
  add_number(sheet, "age", "age", {}, Side::midline, age_at_exam(view), grown, {"under 16", "16 or more"});
  add_answer(view, sheet, "excl", "one of the exclusions", "history.hip_count_exclusions", Side::midline, &says_any_named);
  if (which.blood) {
    add_fever(view, sheet);
  }
  add_joined(view, sheet, "no_weight", "no weight on this leg", SheetJoin::one_thing,
             {{"history.refuses_weight"}, {"history.weight_bearing", &says_no_weight}, {"gait.steps_now", &says_no_step}}, side);
  const auto lab = [&](std::string_view input, std::string_view said, std::string_view item, std::int64_t limit) {
    const std::array<std::int64_t, 1> limits{limit};
    const MeasuredAt measured = measure_at(view, item, Side::midline, sheet.findings);
    add_number(sheet, input, said, item, Side::midline, measured, limits, {"no", "yes"});
  };
  if (which.blood) {
    lab("esr_high", "sedimentation 40 or more", "general.lab_esr", esr_from);
    lab("white_cells_high", "white cells over 12000", "general.lab_white_cells", white_cells_from);
  }
  if (which.crp) {
    lab("crp_high", "CRP over 20", "general.lab_crp", crp_over);
  }
  sheet.formula = "one for each sign";
  sheet.rows.push_back({{"table." + std::string(which.edition) + ".limits"},
                        {std::string(which.source)},
                        model::Status::read,
                        which.blood ? Params().figure("over_cel", 38'500).figure("esr_from", 40'000).figure("white_cells_over", 12'000'000).raw()
                                    : Params().figure("crp_over", 20'000).raw()});
  JudgedRule judged = judge_sheet(view, sheet, which.blood ? &decide_child_hip : &decide_singhal);
  // What sends a child the same day whatever is counted.
  const auto warm = [&](std::string_view item) {
    std::vector<const model::Finding*> seen;
    const MeasuredAt measured = measure_at(view, item, Side::midline, seen);
    return measured.between && measured.between->high >= fever_child_tenths;
  };
  const bool weight = sheet.inputs[which.blood ? 3 : 2].may_be == 2;
  const bool sent = weight || warm(warmest) || warm("general.temperature") || view.says_yes("hip.pain_passive_severe", side) ||
                    view.says_yes("history.unwell", Side::midline);
  if (judged.result.outcome != Outcome::not_applicable && sent) {
    judged.result.flags.push_back({judged.result.outcome == Outcome::negative ? "contradicted" : "sent_whatever_the_count"});
  }
  return judged;
}

[[nodiscard]] std::vector<JudgedRule> run_child_hip(const View& view, const ChildCount& which) {
  std::vector<JudgedRule> judged;
  const bool crp = any_recorded(view, Side::midline, {"general.lab_crp"});
  const bool blood = any_recorded(view, Side::midline, {"general.lab_esr", "general.lab_white_cells"});
  for (const Side side : {Side::left, Side::right}) {
    // A count that nobody took blood for is of use where one of its signs is there.
    const bool begun = which.crp ? crp : blood || crp;
    if (!of_a_sore_hip(view, side)) {
      continue;
    }
    JudgedRule one = judge_child_hip(view, side, which);
    const bool sign = !which.crp && one.result.points && one.result.points->low.steps > 0;
    const bool excluded = !which.crp && one.result.gate && one.result.gate->text == "exclusions";
    if (begun || sign || excluded) {
      judged.push_back(std::move(one));
    }
  }
  return judged;
}

}  // namespace

SheetAnswer decide_child_hip(std::span<const std::uint8_t> classes) {
  if (classes[0] == 1) {
    return {Outcome::not_applicable, {}, "age"};
  }
  if (classes[1] == sheet_yes) {
    return {Outcome::not_applicable, {}, "exclusions"};
  }
  const auto signs = classes.subspan(2);
  const auto count = std::count(signs.begin(), signs.end(), sheet_yes);
  return {count > 0 ? Outcome::positive : Outcome::negative, count_names[static_cast<std::size_t>(count)], {}, count};
}

SheetAnswer decide_singhal(std::span<const std::uint8_t> classes) {
  SheetAnswer answer = decide_child_hip(classes);
  if (answer.outcome != Outcome::not_applicable) {
    constexpr std::array<std::string_view, 3> names{"neither", "one", "both"};
    answer.band = names[static_cast<std::size_t>(answer.points)];
  }
  return answer;
}

std::vector<JudgedRule> run_kocher(const View& view) { return run_child_hip(view, {kocher_rule, kocher_edition, "KOCHER1999", true, false}); }
std::vector<JudgedRule> run_caird(const View& view) { return run_child_hip(view, {caird_rule, caird_edition, "CAIRD2006", true, true}); }
std::vector<JudgedRule> run_singhal(const View& view) { return run_child_hip(view, {singhal_rule, singhal_edition, "SINGHAL2011", false, true}); }

}  // namespace limbledger::interpret
