// Standing up from a chair in 30 s (steadi_chair30/2017: CDC_CHAIR): below average where the count is below the figure for sex and age, from
// 60 to 94 years; arms used counts as 0. Below average is a sign of weak legs and that falls threaten.
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

#include <array>

namespace limbledger::interpret {

inline constexpr std::string_view chair_stand_rule = "rule.chair_stand";
inline constexpr std::string_view chair_stand_edition = "steadi_chair30/2017";

inline constexpr std::size_t chair_ages = 7;  // 60 to 64, 65 to 69 ... 90 to 94
inline constexpr std::array<std::array<std::int64_t, chair_ages>, 2> chair_below{{{14, 12, 12, 11, 10, 8, 7}, {12, 11, 10, 10, 9, 8, 4}}};  // men, women
// Where any of them cuts: the classes of a count.
inline constexpr std::array<std::int64_t, 8> chair_limits{4, 7, 8, 9, 10, 11, 12, 14};

// Classes: sex male, female; age as above, then outside the table; count cut at chair_limits; arms no, yes.
[[nodiscard]] SheetAnswer decide_chair_stand(std::span<const std::int64_t> classes);
[[nodiscard]] std::vector<JudgedRule> run_chair_stand(const View& view);

}  // namespace limbledger::interpret
