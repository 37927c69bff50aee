// Signs of pressure in a compartment of the leg (acs/boast2014: BOAST_ACS), in the page's order. Pain beyond the hurt in a limb in danger,
// or where nobody asked whether it is, and both pains in any limb: positive. Stretch pain alone asks first whether the limb is in danger.
// Who cannot tell of pain is never negative in a limb in danger. Pulse, refill and feeling never lower it. Without one of the signs a
// limb in danger is looked at every hour. A pressure in the compartment counts where a number is given; no item of this edition records it.
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

#include <array>

namespace limbledger::interpret {

inline constexpr std::string_view compartment_rule = "rule.compartment_signs";
inline constexpr std::string_view compartment_edition = "acs/boast2014";

struct CompartmentIn {
  Tri in_danger = Tri::undetermined;
  Tri beyond = Tri::undetermined;   // pain out of proportion
  Tri stretch = Tri::undetermined;  // pain on stretch
  bool can_tell = true;
  Tri pressure_low = Tri::undetermined;  // diastolic less compartment below 30 mmHg; open: not measured
};
// In danger, beyond, stretch, cannot tell (no, yes), pressure (not measured, 30 or more, below 30): the classes each may be in.
[[nodiscard]] std::array<Classes, 5> compartment_classes(const CompartmentIn& in);
[[nodiscard]] SheetAnswer decide_compartment(std::span<const std::uint8_t> classes);
[[nodiscard]] std::vector<JudgedRule> run_compartment(const View& view);

}  // namespace limbledger::interpret
