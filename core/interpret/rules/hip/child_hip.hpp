// Signs of an infected hip in a child, counted: KOCHER1999 (fever over 38.5, no weight on the leg, sedimentation 40 or more, white cells
// over 12.0 x 10^9 in a litre), CAIRD2006 (the same and a CRP over 20 mg in a litre) and SINGHAL2011 (no weight, CRP over 20). Counts
// alone: their published figures did not hold elsewhere (LUHMANN2004, UZOIGWE2013) and are never printed. No count lowers the same-day
// referral. Under 16 years (our convention); not where one of the published exclusions is present.
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view kocher_rule = "rule.kocher";
inline constexpr std::string_view kocher_edition = "kocher/1999";
inline constexpr std::string_view caird_rule = "rule.caird";
inline constexpr std::string_view caird_edition = "caird/2006";
inline constexpr std::string_view singhal_rule = "rule.singhal";
inline constexpr std::string_view singhal_edition = "singhal/2011";

// Age (under 16, 16 or more), exclusions; then no or yes of each sign that the count has.
[[nodiscard]] SheetAnswer decide_child_hip(std::span<const std::uint8_t> classes);
[[nodiscard]] SheetAnswer decide_singhal(std::span<const std::uint8_t> classes);
[[nodiscard]] std::vector<JudgedRule> run_kocher(const View& view);
[[nodiscard]] std::vector<JudgedRule> run_caird(const View& view);
[[nodiscard]] std::vector<JudgedRule> run_singhal(const View& view);

}  // namespace limbledger::interpret
