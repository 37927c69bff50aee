// exp, ln and the square root from + - * / alone, so that every processor and library gives the same digits; and the one
// function that turns a computed number into whole steps. Arguments: ln and root above 0; exp between -700 and 700.
#pragma once

#include <cstdint>

namespace limbledger::interpret {

[[nodiscard]] double own_exp(double x);
[[nodiscard]] double own_ln(double x);
[[nodiscard]] double own_root(double x);
// Half away from zero: 0.0745 with 1000 steps to the unit is 75.
[[nodiscard]] std::int64_t to_steps(double value, std::int64_t per_unit);

}  // namespace limbledger::interpret
