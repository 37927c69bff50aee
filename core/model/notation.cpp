#include "core/model/notation.hpp"

#include "core/model/entered.hpp"

#include <array>
#include <cstdlib>

namespace limbledger::model {

namespace {

constexpr std::int64_t steps_per_degree = DegreeUnit::per_unit;
constexpr std::int64_t triple_number_max = 360;

[[nodiscard]] wire::Fault triple_fault(std::string_view why) { return {"value.neutral_zero", "", std::string(why)}; }

[[nodiscard]] bool whole_number(std::string_view token, std::int64_t& value) {
  if (token.empty() || token.size() > 3) {
    return false;
  }
  value = 0;
  for (const char c : token) {
    if (c < '0' || c > '9') {
      return false;
    }
    value = value * 10 + (c - '0');
  }
  return value <= triple_number_max;
}

}  // namespace

Result<NeutralZero> read_neutral_zero(std::string_view text) {
  const std::string plain = plain_signs(text);
  std::array<std::int64_t, 3> numbers{};
  std::size_t at = 0;
  std::string_view rest = plain;
  for (;;) {
    const std::size_t dash = rest.find('-');
    const std::string_view token = trimmed(rest.substr(0, dash));
    if (at == numbers.size() || !whole_number(token, numbers[at])) {
      return triple_fault("three whole numbers of degrees, such as 0-20-110");
    }
    ++at;
    if (dash == std::string_view::npos) {
      break;
    }
    rest.remove_prefix(dash + 1);
  }
  if (at != numbers.size()) {
    return triple_fault("three whole numbers of degrees, such as 0-20-110");
  }
  const auto [a, b, c] = numbers;
  std::int64_t first = a;
  std::int64_t second = c;
  // The zero stands in the middle when the joint passes through neutral, else at the end that is not reached.
  if (b != 0) {
    if (a == 0) {
      first = -b;
    } else if (c == 0) {
      second = -b;
    } else {
      return triple_fault("one of the three numbers is zero");
    }
  }
  if (first + second < 0) {
    return triple_fault("motion that ends where it began, or further");
  }
  return NeutralZero{{first * steps_per_degree}, {second * steps_per_degree}};
}

std::string write_neutral_zero(const NeutralZero& ends) {
  const auto number = [](std::int64_t steps) { return wire::write_number(std::abs(steps), DegreeUnit::per_unit); };
  if (ends.first.steps < 0) {
    return "0-" + number(ends.first.steps) + "-" + number(ends.second.steps);
  }
  if (ends.second.steps < 0) {
    return number(ends.first.steps) + "-" + number(ends.second.steps) + "-0";
  }
  return number(ends.first.steps) + "-0-" + number(ends.second.steps);
}

std::optional<TripleOrder> read_order(const Word& order) {
  constexpr std::string_view middle = "_zero_";
  const std::size_t at = order.text.find(middle);
  if (at == std::string::npos || at == 0 || at + middle.size() == order.text.size()) {
    return std::nullopt;
  }
  return TripleOrder{Word{order.text.substr(0, at)}, Word{order.text.substr(at + middle.size())}};
}

}  // namespace limbledger::model
