#include "core/model/entered.hpp"

#include <array>
#include <utility>

namespace limbledger::model {

namespace {

[[nodiscard]] bool is_digit(char c) { return c >= '0' && c <= '9'; }

constexpr std::array<std::pair<std::string_view, std::string_view>, 10> signs{{{"\u2010", "-"},
                                                                               {"\u2011", "-"},
                                                                               {"\u2012", "-"},
                                                                               {"\u2013", "-"},
                                                                               {"\u2014", "-"},
                                                                               {"\u2212", "-"},
                                                                               {"\u2264", "<"},
                                                                               {"\u2265", ">"},
                                                                               {"<=", "<"},
                                                                               {">=", ">"}}};

constexpr std::array same_as_other{std::string_view("same"),
                                   std::string_view("equal"),
                                   std::string_view("same as other side"),
                                   std::string_view("same as the other side"),
                                   std::string_view("equal to other side"),
                                   std::string_view("equal to the other side")};

}  // namespace

std::string plain_signs(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    std::size_t taken = 1;
    std::string_view as = text.substr(0, 1);
    for (const auto& [from, to] : signs) {
      if (text.starts_with(from)) {
        taken = from.size();
        as = to;
        break;
      }
    }
    out += as;
    text.remove_prefix(taken);
  }
  return out;
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) {
    text.remove_prefix(1);
  }
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) {
    text.remove_suffix(1);
  }
  return text;
}

std::optional<EnteredNumber> read_entered_number(std::string_view text) {
  const std::string plain = plain_signs(text);
  std::string_view rest = trimmed(plain);
  EnteredNumber entered;
  if (!rest.empty() && (rest.front() == '>' || rest.front() == '<')) {
    entered.bound = rest.front() == '>' ? Bound::at_least : Bound::at_most;
    rest = trimmed(rest.substr(1));
  }
  if (!rest.empty() && (rest.front() == '+' || rest.front() == '-')) {
    entered.signed_ = true;
    if (rest.front() == '-') {
      entered.token.push_back('-');
    }
    rest = trimmed(rest.substr(1));
  }
  std::size_t digits = 0;
  while (digits < rest.size() && is_digit(rest[digits])) {
    ++digits;
  }
  if (digits == 0) {
    return std::nullopt;
  }
  if (digits + 1 < rest.size() && rest[digits] == '.' && is_digit(rest[digits + 1])) {
    for (++digits; digits < rest.size() && is_digit(rest[digits]);) {
      ++digits;
    }
  }
  entered.token += rest.substr(0, digits);
  rest.remove_prefix(digits);
  // Digits, points, commas and dashes behind a number make it something else: 33,3 or 1.2.3 or a triple.
  if (!rest.empty() && rest.find_first_of("0123456789.,-+<>") != std::string_view::npos) {
    return std::nullopt;
  }
  entered.unit = std::string(trimmed(rest));
  return entered;
}

std::optional<Reads> read_entered_words(std::string_view text) {
  std::string lower;
  for (const char c : trimmed(text)) {
    lower.push_back(c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c);
  }
  if (lower == "full") {
    return Reads::full;
  }
  for (const std::string_view words : same_as_other) {
    if (lower == words) {
      return Reads::same_as_other_side;
    }
  }
  return std::nullopt;
}

const WrittenUnit* find_unit(std::span<const WrittenUnit> units, std::string_view text) {
  for (const WrittenUnit& unit : units) {
    if (unit.text == text) {
      return &unit;
    }
  }
  return nullptr;
}

}  // namespace limbledger::model
