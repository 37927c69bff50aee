// Four stances of 10 s, each harder than the one before (steadi_4stage/2017: CDC_4STAGE): feet side by side, instep beside the big toe, heel
// to toe, one leg; stopped at the first that is not held. Positive where the third is held for less than 10.0 s or was not reached.
// Failing the fourth alone is named and decides nothing. For people of 65 and over (our convention: the other tests of the sheet say so).
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view four_stances_rule = "rule.four_stances";
inline constexpr std::string_view four_stances_edition = "steadi_4stage/2017";

// Classes: age under 18, 18 to 64, 65 or more; third stance held, less than 10 s or not reached. The first two decide through the third.
[[nodiscard]] SheetAnswer decide_four_stances(std::span<const std::uint8_t> classes);
[[nodiscard]] std::vector<JudgedRule> run_four_stances(const View& view);

}  // namespace limbledger::interpret
