// The Ottawa midfoot rule, foot series (omr/1993, STIELL1993): which injured feet need a film. Positive where there is pain in the
// midfoot zone and any of: bony tenderness at the base of the fifth metatarsal; at the navicular; four steps neither at once nor
// now. The cuboid of 1992 is no part of it. Midfoot only: not toes, forefoot or heel. It and the ankle rule do not depend on each
// other: both can be positive.
#pragma once

#include "core/interpret/rules/ankle/series.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view ottawa_midfoot_rule = "rule.ottawa_midfoot";
inline constexpr std::string_view ottawa_midfoot_edition = "omr/1993";

[[nodiscard]] const Series& ottawa_midfoot_series();
[[nodiscard]] std::vector<JudgedRule> run_ottawa_midfoot(const View& view);

}  // namespace limbledger::interpret
