#include "core/interpret/rules/knee/meniscus.hpp"

#include "core/interpret/params.hpp"
#include "core/interpret/rules/sheet_inputs.hpp"

#include <algorithm>
#include <array>
#include <numeric>

namespace limbledger::interpret {

namespace {

using model::Side;

// A click alone counts; that there was none says nothing of pain.
[[nodiscard]] Said says_click(const model::Finding& finding) {
  const Said said = says_test(finding);
  return said.bits == std::uint8_t{2} ? said : Said{std::nullopt, "not_asked"};
}

// A looser front of the knee than the other's: then even five say less.
[[nodiscard]] bool front_is_loose(const View& view, Side side) {
  constexpr std::array<std::string_view, 4> tests{"knee.lachman", "knee.lachman_dropped_leg", "knee.anterior_drawer", "knee.pivot_shift"};
  return std::any_of(tests.begin(), tests.end(), [&](std::string_view item) {
    const Findings found = view.at(item, side);
    return std::any_of(found.begin(), found.end(), [](const model::Finding* finding) {
      const auto* grade = std::get_if<model::Grade>(&finding->value);
      return grade != nullptr && (grade->grade.text == "1" || grade->grade.text == "2" || grade->grade.text == "3");
    });
  });
}

[[nodiscard]] JudgedRule judge_meniscus(const View& view, Side side) {
  RuleSheet sheet;
  sheet.rule = lowery_rule;
  sheet.edition = lowery_edition;
  sheet.side = side;
  sheet.counts = true;
  add_answer(view, sheet, "locks", "catches or locks, as told", "history.locking", side);
  add_answer(view, sheet, "pain_straight", "pain when pressed straight", "knee.pain_forced_extension", side, &says_test);
  add_answer(view, sheet, "pain_full_bend", "pain on full bending", "knee.pain_full_flexion", side, &says_test);
  add_joined(view, sheet, "mcmurray_any", "McMurray by pain or click", SheetJoin::one_thing, {{"knee.mcmurray_pain", &says_test}, {"knee.mcmurray", &says_click}}, side);
  add_joined(view, sheet, "joint_line", "joint line tender", SheetJoin::parts, {{"knee.joint_line_medial_tender"}, {"knee.joint_line_lateral_tender"}}, side);
  sheet.formula = "one for each of five";
  sheet.rows.push_back({{"table.lowery/2006.people"}, {"LOWERY2006"}, model::Status::read, Params().figure("knees", 635'000).raw()});
  const std::string_view gate = body_gate(view, "knee", side);
  JudgedRule judged =
      judge_sheet(view, sheet, [gate](std::span<const std::uint8_t> in) { return gate.empty() ? decide_lowery(in) : SheetAnswer{Outcome::not_applicable, {}, gate}; });
  if (judged.result.outcome != Outcome::not_applicable && front_is_loose(view, side)) {
    judged.result.flags.push_back({"loose_in_front"});
  }
  return judged;
}

}  // namespace

SheetAnswer decide_lowery(std::span<const std::uint8_t> classes) {
  const std::int64_t count = std::accumulate(classes.begin(), classes.end(), std::int64_t{0});
  constexpr std::array<std::string_view, 3> names{"count_3", "count_4", "count_5"};
  if (count < 3) {
    return {Outcome::negative, "under_3", {}, count};
  }
  return {Outcome::positive, names[static_cast<std::size_t>(count - 3)], {}, count};
}

std::vector<JudgedRule> run_lowery(const View& view) {
  std::vector<JudgedRule> judged;
  const bool of_a_knee = complaint_among(view, {"acute_knee", "chronic_knee", "free", "whole_limb", "review"});
  for (const Side side : {Side::left, Side::right}) {
    // The two that nobody tries for another reason.
    if (of_a_knee && side_complained_of(view, side) && any_recorded(view, side, {"knee.pain_forced_extension", "knee.pain_full_flexion"})) {
      judged.push_back(judge_meniscus(view, side));
    }
  }
  return judged;
}

}  // namespace limbledger::interpret
