// What JSON's own text rules say of a piece of text, without reading the value. Source: RFC 8259, sections 2 and 6; RFC 3629, section 4.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace limbledger::wire {

[[nodiscard]] constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }
[[nodiscard]] constexpr bool is_space(char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; }

// Where the number at `at` ends, or `at` where there is none.
[[nodiscard]] std::size_t number_end(std::string_view text, std::size_t at);

// Whether it is a number that every double holds, by its length alone.
[[nodiscard]] bool is_plain_number(std::string_view token);

// Numbers are read from their digits, so one that no double holds is JSON all the same and is judged by its type. Each is
// put as 0 with spaces behind it, in a text of the same length. `broken`: the first that is no number at all, where it
// ends.
[[nodiscard]] std::string plain_numbers(std::string_view text, std::optional<std::size_t>& broken);

// The byte at which the first character begins that is none; nothing where all are.
[[nodiscard]] std::optional<std::size_t> byte_of_broken_utf8(std::string_view text);

}  // namespace limbledger::wire
