// A worn hip: the tree of ALTMAN1991 (pain, and inward turn of 15 degrees or more that hurts, stiff for 60 minutes or less, over 50; or
// inward turn under 15 and a sedimentation rate of 45 or less, bending of 115 or less standing in only where no rate was taken), and the
// count of SUTLIVE2008 (five signs; one small study of people over 40, never tested again: supporting text). From 18 years.
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view acr_hip_rule = "rule.acr_hip_oa";
inline constexpr std::string_view acr_hip_edition = "acr_hip/1991-clinical";
inline constexpr std::string_view sutlive_rule = "rule.sutlive";
inline constexpr std::string_view sutlive_edition = "sutlive/2008";

// Pain; inward turn (under 15, 15 or more); it hurts; stiff (60 or less, over 60); age (under 18, 18 to 50, over 50); sedimentation (not
// done, 45 or less, over 45); bending (115 or less, over 115).
[[nodiscard]] SheetAnswer decide_acr_hip(std::span<const std::uint8_t> classes);
// Age (40 or under, over 40); squatting, bending, sweep, backward; inward turn (25 or less, over 25).
[[nodiscard]] SheetAnswer decide_sutlive(std::span<const std::uint8_t> classes);
[[nodiscard]] std::vector<JudgedRule> run_acr_hip(const View& view);
[[nodiscard]] std::vector<JudgedRule> run_sutlive(const View& view);

}  // namespace limbledger::interpret
