// How often the feet of one person are looked at (iwgdf_risk/2019, table unchanged in 2023: IWGDF2019, IWGDF2023). 0: neither loss of
// protective sensation nor narrowed arteries; 1: one of them; 2: both, or one with deformity; 3: one of them with an earlier ulcer,
// an amputation or end-stage kidney disease. An open ulcer is no category. Of the person: either foot is enough for a yes, and no
// foot that is there may be left out for a no. By its letter a history without either loss stays 0: that is flagged.
#pragma once

#include "core/interpret/rules/completions.hpp"
#include "core/interpret/rules/rule.hpp"
#include "core/interpret/tri.hpp"

#include <array>
#include <cstdint>

namespace limbledger::interpret {

inline constexpr std::string_view foot_category_rule = "rule.foot_category";
inline constexpr std::string_view foot_category_edition = "iwgdf_risk/2019";

enum class FeetInput : std::uint8_t { ulcer_now, lops, pad, deform, hx_ulcer, hx_amp, esrd };
inline constexpr std::size_t feet_input_count = 7;
enum class FootCategory : std::uint8_t { zero, one, two, three, active, undetermined };

using FootHistory = std::array<Tri, feet_input_count>;

[[nodiscard]] Completed<feet_input_count, FootCategory> foot_category(const FootHistory& in);
// Once a person: with diabetes or a numb foot, as soon as anything of the foot was examined.
[[nodiscard]] std::vector<JudgedRule> run_foot_category(const View& view);

}  // namespace limbledger::interpret
