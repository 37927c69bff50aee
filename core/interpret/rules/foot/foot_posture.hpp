// How one foot stands: six items of -2 to +2, added (fpi6/2005: bands FPI_BANDS, items FPI_ITEMS, REDMOND2006). -12 to -5 highly supinated,
// -4 to -1 supinated, 0 to +5 neutral, +6 to +9 pronated, +10 to +12 highly pronated. A band is a name and no finding against anybody:
// it advises nothing, so its outcome is negative whatever the band. Standing on both legs alone; a missing item leaves a range.
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view foot_posture_rule = "rule.foot_posture";
inline constexpr std::string_view foot_posture_edition = "fpi6/2005";

// One sum: the six items.
[[nodiscard]] SheetAnswer decide_foot_posture(std::span<const std::int64_t> sums);
// Once for each foot of which an item was recorded.
[[nodiscard]] std::vector<JudgedRule> run_foot_posture(const View& view);

}  // namespace limbledger::interpret
