// Heel rises on one leg against the other (heelrise/2017: HEBERT2017): a difference of more than 6 is beyond the error of the test, which was
// measured on a slope of 10 degrees; none on this leg while the other can: squeeze the calf, and a heel rise that succeeds leaves a torn
// heel cord not excluded (MAFFULLI1998). Slope and flat floor are never held against each other. The count printed for the age
// and sex stands beside each reading (core/interpret/motion) and is no part of this rule.
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view heel_rise_rule = "rule.heel_rise_sides";
inline constexpr std::string_view heel_rise_edition = "heelrise/2017";

// What two counts are to each other, seen from this leg.
enum class HeelRises : std::uint8_t { none_here, fewer_here, within_error, more_here, none_there, none_on_either };
[[nodiscard]] HeelRises compare_heel_rises(std::int64_t here, std::int64_t there);
// Bits of HeelRises that two counts may be, each known to lie between.
[[nodiscard]] Classes heel_rises_between(const Between& here, const Between& there);
[[nodiscard]] SheetAnswer decide_heel_rises(HeelRises rises);
// Each leg of which the other's or its own count was recorded: on the slope, else on the flat floor.
[[nodiscard]] std::vector<JudgedRule> run_heel_rises(const View& view);

}  // namespace limbledger::interpret
