// The Ottawa ankle rule, ankle series (oar/1993, STIELL1993): which injured ankles need a film. Positive where there is pain in the
// malleolar zone and any of: bony tenderness at the posterior edge of the last 6 cm, or the tip, of the lateral malleolus; the same
// of the medial malleolus; four steps neither at once nor now. The age of 55 of 1992 is no part of it.
#pragma once

#include "core/interpret/rules/ankle/series.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view ottawa_ankle_rule = "rule.ottawa_ankle";
inline constexpr std::string_view ottawa_ankle_edition = "oar/1993";

[[nodiscard]] const Series& ottawa_ankle_series();
[[nodiscard]] std::vector<JudgedRule> run_ottawa_ankle(const View& view);

}  // namespace limbledger::interpret
