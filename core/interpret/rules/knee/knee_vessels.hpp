// Vessels of a knee that was, or may have been, out of joint (kd_abi/2004: MILLS2004, BOYCE2015): a hard sign or no pulse at the foot is
// an emergency; a weaker pulse, or an ankle pressure below 0.90 of the arm's, is imaged now; else it is watched. The ratio is exact, not
// the rounded number. Of ankle and arm the higher that was measured counts. Nothing that was not looked at reads as good.
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view knee_vessels_rule = "rule.knee_vessels";
inline constexpr std::string_view knee_vessels_edition = "kd_abi/2004";

// Hard sign (no, yes); pulse (felt, weaker, none); pressure (0.90 or more, below 0.90).
[[nodiscard]] SheetAnswer decide_knee_vessels(std::span<const std::uint8_t> classes);
// Ankle pressure below 0.90 of the arm's, exactly.
[[nodiscard]] Tri knee_pressure_low(const std::optional<Between>& ankle, const std::optional<Between>& arm);

struct KneeVessels {
  Tri hard = Tri::undetermined;
  Classes pulse = 7;
  Tri pressure_low = Tri::undetermined;
};
[[nodiscard]] KneeVessels hear_knee_vessels(const View& view, model::Side side);
[[nodiscard]] std::vector<JudgedRule> run_knee_vessels(const View& view);

}  // namespace limbledger::interpret
