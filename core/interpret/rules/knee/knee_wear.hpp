// A worn knee, by three published sets that are not interchangeable: the list of ALTMAN1986 (pain and three of six), its tree as the page
// restates it (ALTMAN1987; the tree itself from memory), and ZHANG2010 (over 40, three symptoms, one of three signs; how they are put
// together from memory). Made to sort people for studies, not to find the disease; a warm knee is looked at for infection first. From 18.
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view acr_knee_rule = "rule.acr_knee_oa";
inline constexpr std::string_view acr_knee_edition = "acr_knee/1986-clinical";
inline constexpr std::string_view acr_knee_tree_rule = "rule.acr_knee_tree_oa";
inline constexpr std::string_view acr_knee_tree_edition = "acr_knee/1986-tree";
inline constexpr std::string_view eular_knee_rule = "rule.eular_knee_oa";
inline constexpr std::string_view eular_knee_edition = "eular_knee/2010";

// Age (under 18, 18 to 50, over 50), pain, stiff (under 30, 30 or more), crepitus, other bone tender, kneecap tender, enlarged, warm.
[[nodiscard]] SheetAnswer decide_acr_knee(std::span<const std::uint8_t> classes);
// Age (under 18, 18 to 37, 38 or more), pain, stiff (30 or less, over 30), crepitus, enlarged.
[[nodiscard]] SheetAnswer decide_acr_knee_tree(std::span<const std::uint8_t> classes);
// Age (under 18, 18 to 40, over 40), pain with use, stiff (30 or less, over 30), does less, crepitus, less motion, enlarged.
[[nodiscard]] SheetAnswer decide_eular_knee(std::span<const std::uint8_t> classes);
[[nodiscard]] std::vector<JudgedRule> run_acr_knee(const View& view);
[[nodiscard]] std::vector<JudgedRule> run_acr_knee_tree(const View& view);
[[nodiscard]] std::vector<JudgedRule> run_eular_knee(const View& view);

}  // namespace limbledger::interpret
