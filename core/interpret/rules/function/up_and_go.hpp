// Stand up, walk 3 m, turn, come back and sit (steadi_tug/2017: CDC_TUG). 12.0 s and more is a sign that falls threaten; unable to finish
// is one too. Another cut is 13.5 s (BARRY2014); neither is good enough alone, so both are shown. For people of 65 and over.
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view up_and_go_rule = "rule.up_and_go";
inline constexpr std::string_view up_and_go_edition = "steadi_tug/2017";

// Classes: age under 18, 18 to 64, 65 or more; time under 12.0 s, 12.0 s or more, unable.
[[nodiscard]] SheetAnswer decide_up_and_go(std::span<const std::uint8_t> classes);
[[nodiscard]] std::vector<JudgedRule> run_up_and_go(const View& view);

}  // namespace limbledger::interpret
