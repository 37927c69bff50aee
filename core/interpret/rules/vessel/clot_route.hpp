// The route for a suspected clot in a leg vein (nice_dvt/NG158: NICE_NG158) as the next action, from the points of WELLS2003, a scan of
// the leg veins and a D-dimer. What can be had within four hours is not known here, so a band names both ways. Only where the points
// are settled, or where a scan or a D-dimer is recorded. A clot that was seen is treated whatever the points.
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view clot_route_rule = "rule.clot_route";
inline constexpr std::string_view clot_route_edition = "nice_dvt/NG158";

// Points (fewer than two, two or more), scan (not done, no clot seen, clot seen), D-dimer (negative, positive).
[[nodiscard]] SheetAnswer decide_clot_route(std::span<const std::uint8_t> classes);
[[nodiscard]] std::vector<JudgedRule> run_clot_route(const View& view);

}  // namespace limbledger::interpret
