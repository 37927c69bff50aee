// Five findings of a torn meniscus, counted (LOWERY2006): catching or locking, pain when pressed straight, pain on full bending, McMurray
// by pain or click, a tender joint line. From one specialist clinic, 635 knees: supporting text. Few excludes nothing, and with a torn
// cruciate ligament or a worn knee many say less. Not tried in a knee that is locked, broken, out of joint or hot.
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view lowery_rule = "rule.lowery";
inline constexpr std::string_view lowery_edition = "lowery/2006";

// No or yes of each of the five.
[[nodiscard]] SheetAnswer decide_lowery(std::span<const std::uint8_t> classes);
[[nodiscard]] std::vector<JudgedRule> run_lowery(const View& view);

}  // namespace limbledger::interpret
