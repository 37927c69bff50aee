// Digits <-> whole counts of a step, exactly: no number on the wire passes through a double. `per_unit` is how many steps
// make one unit (1, 10, 1000). Exponents are read; extra decimals are refused (value.step), so is anything past the limits.
#pragma once

#include "core/wire/text.hpp"

#include <cstdint>
#include <string>
#include <string_view>

namespace limbledger::wire {

// Empty on success, else "value.step" or "value.out_of_range". `token` is a valid JSON number.
[[nodiscard]] TextProblem read_number(std::string_view token, std::int32_t per_unit, std::int64_t& steps);
// Fewest decimals, no exponent, no minus zero.
[[nodiscard]] std::string write_number(std::int64_t steps, std::int32_t per_unit);
// Divides and rounds half away from zero; the one function that rounds what is published.
[[nodiscard]] std::int64_t round_divide(std::int64_t numerator, std::int64_t denominator);

}  // namespace limbledger::wire
