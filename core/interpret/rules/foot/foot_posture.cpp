#include "core/interpret/rules/foot/foot_posture.hpp"

#include "core/interpret/body.hpp"
#include "core/interpret/params.hpp"
#include "core/interpret/rules/foot/feet_heard.hpp"
#include "core/interpret/rules/grouped.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;

struct PostureItem {
  std::string_view input;
  std::string_view said;
  std::string_view item;
};
constexpr std::array<PostureItem, 6> posture_items{{{"talar_head", "talar head", "foot.posture_talar_head"},
                                                    {"malleolar_curves", "curves at the lateral malleolus", "foot.posture_malleolar_curves"},
                                                    {"heel", "heel seen from behind", "foot.posture_heel"},
                                                    {"talonavicular", "bulge at the talonavicular joint", "foot.posture_talonavicular"},
                                                    {"arch", "inner arch", "foot.posture_arch"},
                                                    {"forefoot", "forefoot on the hindfoot", "foot.posture_forefoot"}}};
constexpr std::array<std::string_view, 5> posture_grades{"-2", "-1", "0", "+1", "+2"};
constexpr Classes any_grade = 31;

struct PostureBand {
  std::string_view band;
  std::int64_t low;
  std::int64_t high;
};
constexpr std::array<PostureBand, 5> posture_bands{
    {{"highly_supinated", -12, -5}, {"supinated", -4, -1}, {"neutral", 0, 5}, {"pronated", 6, 9}, {"highly_pronated", 10, 12}}};

[[nodiscard]] Said says_posture(const model::Finding& finding) {
  const auto* grade = std::get_if<model::Grade>(&finding.value);
  const auto found = grade == nullptr ? posture_grades.end() : std::find(posture_grades.begin(), posture_grades.end(), grade->grade.text);
  if (found == posture_grades.end()) {
    return {std::nullopt, "unsure"};
  }
  if (finding.position && finding.position->text != "standing") {
    return {std::nullopt, "not_standing"};
  }
  if (badly_examined(finding)) {
    return {std::nullopt, "not_reliable"};
  }
  return {static_cast<std::uint8_t>(1U << static_cast<unsigned>(found - posture_grades.begin())), "known"};
}

[[nodiscard]] std::vector<WorkingRow> posture_rows() {
  std::vector<WorkingRow> rows;
  for (std::size_t n = 0; n < posture_bands.size(); ++n) {
    rows.push_back({{"table.fpi6.total." + std::to_string(n + 1)},
                    {"FPI_BANDS"},
                    model::Status::read,
                    Params().exact("low", posture_bands[n].low * 1000).exact("high", posture_bands[n].high * 1000).raw()});
  }
  return rows;
}

[[nodiscard]] JudgedRule judge_posture(const View& view, Side side) {
  RuleSheet sheet{foot_posture_rule, foot_posture_edition, side, {}, true, "six items of -2 to +2 added; the band holds the sum", posture_rows(), {}};
  SheetGroups groups;
  for (const PostureItem& one : posture_items) {
    const Heard heard = hear(view.at(one.item, side), static_cast<std::uint8_t>(any_grade), &says_posture);
    sheet.findings.insert(sheet.findings.end(), heard.findings.begin(), heard.findings.end());
    sheet.inputs.push_back({one.input, one.said, {"minus 2", "minus 1", "0", "plus 1", "plus 2"}, one.item, side, heard.bits ? Classes{*heard.bits} : any_grade,
                            std::string(heard.state), {}});
    groups.add(0, {-2, -1, 0, 1, 2});
  }
  const std::string_view gate = foot_is_gone(view, side) ? "no_limb" : (view.bodies().cannot("stand") ? "cannot_stand" : "");
  if (!gate.empty()) {
    return judge_groups(view, sheet, groups, [&](std::span<const std::int64_t>) { return SheetAnswer{Outcome::not_applicable, {}, gate}; });
  }
  JudgedRule judged = judge_groups(view, sheet, groups, &decide_foot_posture);
  const auto& points = judged.result.points;
  if (points && points->low.steps >= 6 && points->high.steps <= 7) {
    judged.result.flags.push_back({"usual_in_adults"});
  }
  return judged;
}

}  // namespace

SheetAnswer decide_foot_posture(std::span<const std::int64_t> sums) {
  const auto band = std::find_if(posture_bands.begin(), posture_bands.end(), [&](const PostureBand& one) { return sums[0] <= one.high; });
  return {Outcome::negative, band->band, {}, sums[0]};
}

std::vector<JudgedRule> run_foot_posture(const View& view) {
  std::vector<JudgedRule> judged;
  for (const Side side : both_feet) {
    if (std::any_of(posture_items.begin(), posture_items.end(), [&](const PostureItem& one) { return !view.at(one.item, side).empty(); })) {
      judged.push_back(judge_posture(view, side));
    }
  }
  return judged;
}

}  // namespace limbledger::interpret
