#include "core/wire/json_text.hpp"

#include <algorithm>

namespace limbledger::wire {

namespace {

// More digits than this, or an exponent, may be a number that no double holds.
constexpr std::size_t plain_number_max = 15;

// How long the character at `at` is, or 0 where no well-formed one stands (RFC 3629, section 4: no overlong form, no
// surrogate, nothing over U+10FFFF).
[[nodiscard]] std::size_t utf8_length(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
  const unsigned lead = byte(at);
  if (lead < 0x80) {
    return 1;
  }
  if (lead < 0xC2 || lead > 0xF4) {
    return 0;
  }
  const std::size_t length = lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
  const unsigned lowest = lead == 0xE0 ? 0xA0U : lead == 0xF0 ? 0x90U : 0x80U;
  const unsigned highest = lead == 0xED ? 0x9FU : lead == 0xF4 ? 0x8FU : 0xBFU;
  if (byte(at + 1) < lowest || byte(at + 1) > highest) {
    return 0;
  }
  for (std::size_t i = at + 2; i < at + length; ++i) {
    if (byte(i) < 0x80 || byte(i) > 0xBF) {
      return 0;
    }
  }
  return length;
}

}  // namespace

std::size_t number_end(std::string_view text, std::size_t at) {
  const auto digits = [&](std::size_t from) {
    while (from < text.size() && is_digit(text[from])) {
      ++from;
    }
    return from;
  };
  const std::size_t begin = at;
  std::size_t from = at + (at < text.size() && text[at] == '-' ? 1 : 0);
  std::size_t end = digits(from);
  if (end == from || (text[from] == '0' && end > from + 1)) {
    return begin;
  }
  if (end < text.size() && text[end] == '.') {
    from = end + 1;
    end = digits(from);
    if (end == from) {
      return begin;
    }
  }
  if (end < text.size() && (text[end] == 'e' || text[end] == 'E')) {
    from = end + 1 + (end + 1 < text.size() && (text[end + 1] == '+' || text[end + 1] == '-') ? 1 : 0);
    end = digits(from);
    if (end == from) {
      return begin;
    }
  }
  const bool ends = end == text.size() || std::string_view(" \t\r\n,]}:").find(text[end]) != std::string_view::npos;
  return ends ? end : begin;
}

bool is_plain_number(std::string_view token) {
  const auto is_exponent = [](char c) { return c == 'e' || c == 'E'; };
  return token.size() <= plain_number_max && std::none_of(token.begin(), token.end(), is_exponent) && !token.empty() && number_end(token, 0) == token.size();
}

std::string plain_numbers(std::string_view text, std::optional<std::size_t>& broken) {
  std::string out(text);
  bool in_text = false;
  for (std::size_t i = 0; i < out.size(); ++i) {
    if (in_text && out[i] == '\\') {
      ++i;  // whatever is escaped ends no text
    } else if (in_text) {
      in_text = out[i] != '"';
    } else if (out[i] == '"') {
      in_text = true;
    } else if (out[i] == '-' || is_digit(out[i])) {
      const std::size_t end = number_end(text, i);
      if (end == i) {
        broken = i;  // looked at no further: what follows may be a million digits more
        return out;
      }
      std::fill(out.begin() + static_cast<std::ptrdiff_t>(i), out.begin() + static_cast<std::ptrdiff_t>(end), ' ');
      out[i] = '0';
      i = end - 1;
    }
  }
  return out;
}

std::optional<std::size_t> byte_of_broken_utf8(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = utf8_length(text, at);
    if (length == 0) {
      return at;
    }
    at += length;
  }
  return std::nullopt;
}

}  // namespace limbledger::wire
