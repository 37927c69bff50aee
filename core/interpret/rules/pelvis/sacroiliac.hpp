// Six tests that load the sacroiliac joint, counted (LASLETT2005): three and more, none of the six, or one or two, which says neither.
// Any two of four of them is as good (the four are from memory), and shown beside. A count does not stand where the pain draws toward the
// middle with repeated bending, nor in pregnancy, where it was not tested: three and more are shown and say so. From 18 years.
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view laslett_rule = "rule.laslett";
inline constexpr std::string_view laslett_edition = "laslett/2005";

// Age (under 18, 18 or more), pregnant; then no or yes: apart, together, thigh thrust, sacrum, this thigh over the edge, the other.
[[nodiscard]] SheetAnswer decide_laslett(std::span<const std::uint8_t> classes);
[[nodiscard]] std::vector<JudgedRule> run_laslett(const View& view);

}  // namespace limbledger::interpret
