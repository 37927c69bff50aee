// Points for a clot in a leg vein, as WELLS2003 (two levels: 2 or more, or fewer) and, beside it, WELLS1997 (three levels, without an
// earlier clot; a calf MORE than 3 cm thicker; more than 3 days in bed or 4 weeks since the operation). One point each, two off where
// another cause is at least as likely. The calf counts as measured: both girths 10 cm below the tubercle of the shin, in mm. Not made
// for anybody under 18, nor in pregnancy. Runs on a leg where something points to a clot.
#pragma once

#include "core/interpret/rules/grouped.hpp"
#include "core/interpret/rules/rule.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view wells_rule = "rule.wells_dvt";
inline constexpr std::string_view wells_edition = "wells_dvt/2003-2level";
inline constexpr std::string_view wells_1997_rule = "rule.wells_dvt_1997";
inline constexpr std::string_view wells_1997_edition = "wells_dvt/1997-3level";

// Classes: age (under 18, 18 or more), pregnant; then no or yes: cancer, leg still, bed or operation, vein tender, whole leg swollen,
// calf (under 30 mm, 30, over 30), pitting, new veins, clot before, other cause.
inline constexpr std::size_t wells_inputs = 12;
[[nodiscard]] SheetCompleted wells_2003(std::span<const Classes> may_be);
[[nodiscard]] SheetCompleted wells_1997(std::span<const Classes> may_be);

[[nodiscard]] std::vector<JudgedRule> run_wells(const View& view);
[[nodiscard]] std::vector<JudgedRule> run_wells_1997(const View& view);

// The points alone, whoever it is: two or more, fewer, or open.
[[nodiscard]] Tri wells_two_or_more(const View& view, model::Side side);
// The calf of this side against the other, in mm; nothing where either was not measured.
[[nodiscard]] std::optional<Between> calf_difference(const View& view, model::Side side, std::vector<const model::Finding*>& findings);
// A calf or leg that swells, a vein that is tender and not explained away, or an examiner who suspects one.
[[nodiscard]] bool clot_in_question(const View& view, model::Side side);

}  // namespace limbledger::interpret
