// Loss of protective sensation of one foot (lops/iwgdf: IWGDF_ADDENDUM, FORK_RESTATED, IWGDF2019). Lost if any of: one of three
// filament places has fewer than 2 of 3 right answers; the tuning fork has, at the great toe or at the ankle; at least 2 of the
// 6 toes of both feet do not feel a touch, one of them of this foot. One method is enough for a loss. Felt needs every place of
// a method that was begun, and the filament or the touch among them: a fork alone shows nothing that protects.
#pragma once

#include "core/interpret/rules/completions.hpp"
#include "core/interpret/rules/knee/inputs.hpp"
#include "core/interpret/rules/rule.hpp"

#include <array>
#include <cstdint>
#include <optional>

namespace limbledger::interpret {

inline constexpr std::string_view protective_sensation_rule = "rule.protective_sensation";
inline constexpr std::string_view protective_sensation_edition = "lops/iwgdf";

// Yes is lost. A method that was not begun says nothing, and no blank of a method that was begun reads as felt.
struct ProtectiveSensation {
  bool filament = false;
  bool touch = false;
  std::array<Tri, 3> site{Tri::undetermined, Tri::undetermined, Tri::undetermined};  // great toe, heads of the metatarsals 1 and 5
  Tri fork = Tri::no;                                                                // no where it was not begun
  std::array<Tri, 3> toe{Tri::undetermined, Tri::undetermined, Tri::undetermined};   // 1, 3, 5
  std::optional<Between> other;                                                      // toes of the other foot that do not feel
};

enum class SensationInput : std::uint8_t { filament, touch, site_toe, site_head_1, site_head_5, fork, toe_1, toe_3, toe_5, other };
inline constexpr std::size_t sensation_input_count = 10;

[[nodiscard]] Completed<sensation_input_count> protective_sensation(const ProtectiveSensation& in);
// Once for each foot on which any place was tried.
[[nodiscard]] std::vector<JudgedRule> run_protective_sensation(const View& view);

}  // namespace limbledger::interpret
