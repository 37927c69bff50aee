// Sitting down and standing up five times (sts5/bohannon2006: BOHANNON2006): worse than average over 11.4 s at 60 to 69 years, 12.6 at 70 to
// 79, 14.8 at 80 to 89; from 18 to 59 over 12.39 s, the upper limit of healthy adults (KLUKOWSKA2021; up to which age it holds is our
// reading of "younger adults"). Whoever cannot do five has no time: unable. No figures under 18 and from 90 on.
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view five_stands_rule = "rule.five_stands";
inline constexpr std::string_view five_stands_edition = "sts5/bohannon2006";

// Classes: age under 18, 18 to 59, 60 to 69, 70 to 79, 80 to 89, 90 or more; time up to 11.4, to 12.3, to 12.6, to 14.8, above, unable.
[[nodiscard]] SheetAnswer decide_five_stands(std::span<const std::uint8_t> classes);
[[nodiscard]] std::vector<JudgedRule> run_five_stands(const View& view);

}  // namespace limbledger::interpret
