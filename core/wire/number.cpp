#include "core/wire/number.hpp"

#include "core/wire/json_text.hpp"

#include <algorithm>

namespace limbledger::wire {

namespace {

constexpr std::int64_t steps_max = 9'007'199'254'740'991;  // what a JavaScript number holds exactly
constexpr int exponent_max = 400;                          // beyond this no number in use is meant

[[nodiscard]] int decimals_of(std::int32_t per_unit) {
  int decimals = 0;
  for (std::int32_t rest = per_unit; rest > 1; rest /= 10) {
    ++decimals;
  }
  return decimals;
}

}  // namespace

TextProblem read_number(std::string_view token, std::int32_t per_unit, std::int64_t& steps) {
  const bool negative = !token.empty() && token.front() == '-';
  if (negative) {
    token.remove_prefix(1);
  }
  std::string digits;
  int exponent = decimals_of(per_unit);
  std::size_t at = 0;
  for (; at < token.size() && is_digit(token[at]); ++at) {
    digits.push_back(token[at]);
  }
  if (at < token.size() && token[at] == '.') {
    for (++at; at < token.size() && is_digit(token[at]); ++at) {
      digits.push_back(token[at]);
      --exponent;
    }
  }
  if (at < token.size() && (token[at] == 'e' || token[at] == 'E')) {
    ++at;
    const bool down = at < token.size() && token[at] == '-';
    if (at < token.size() && !is_digit(token[at])) {
      ++at;
    }
    int written = 0;
    for (; at < token.size() && is_digit(token[at]); ++at) {
      written = std::min(written * 10 + (token[at] - '0'), 100'000);
    }
    exponent += down ? -written : written;
  }
  digits.erase(0, std::min(digits.find_first_not_of('0'), digits.size()));
  while (exponent < 0 && !digits.empty() && digits.back() == '0') {
    digits.pop_back();
    ++exponent;
  }
  if (digits.empty()) {
    steps = 0;
    return {};
  }
  if (exponent < 0) {
    return "value.step";
  }
  if (exponent > exponent_max || digits.size() + static_cast<std::size_t>(exponent) > 16) {
    return "value.out_of_range";
  }
  digits.append(static_cast<std::size_t>(exponent), '0');
  std::int64_t value = 0;
  for (const char c : digits) {
    value = value * 10 + (c - '0');
  }
  if (value > steps_max) {
    return "value.out_of_range";
  }
  steps = negative ? -value : value;
  return {};
}

std::string write_number(std::int64_t steps, std::int32_t per_unit) {
  const bool negative = steps < 0;
  auto rest = negative ? std::uint64_t{0} - static_cast<std::uint64_t>(steps) : static_cast<std::uint64_t>(steps);
  const auto unit = static_cast<std::uint64_t>(per_unit);
  std::string text = (negative ? "-" : "") + std::to_string(rest / unit);
  rest %= unit;
  if (rest != 0) {
    std::string decimals = std::to_string(rest);
    decimals.insert(0, static_cast<std::size_t>(decimals_of(per_unit)) - decimals.size(), '0');
    decimals.erase(decimals.find_last_not_of('0') + 1);
    text += "." + decimals;
  }
  return text;
}

std::int64_t round_divide(std::int64_t numerator, std::int64_t denominator) {
  const bool negative = (numerator < 0) != (denominator < 0);
  const auto magnitude = [](std::int64_t v) { return v < 0 ? std::uint64_t{0} - static_cast<std::uint64_t>(v) : static_cast<std::uint64_t>(v); };
  const std::uint64_t n = magnitude(numerator);
  const std::uint64_t d = magnitude(denominator);
  const auto quotient = static_cast<std::int64_t>((n + d / 2) / d);
  return negative ? -quotient : quotient;
}

}  // namespace limbledger::wire
