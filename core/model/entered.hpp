// What a person wrote for a measurement: ">120", "-10", "87.5 cm", "full". Nothing is guessed: a number keeps its digits, its
// sign as written and its unit; a decimal comma is not a number here (it would be read as thousands elsewhere).
// Dashes and minus signs of all kinds count as one. Units: what the list below says, and no others.
#pragma once

#include "core/model/value.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace limbledger::model {

// Typographic dashes, minus signs and comparison signs as the plain characters.
[[nodiscard]] std::string plain_signs(std::string_view text);
[[nodiscard]] std::string_view trimmed(std::string_view text);

struct EnteredNumber {
  std::optional<Bound> bound;  // from a comparison sign before the number
  std::string token;           // a JSON number: sign and digits as written, without a plus
  bool signed_ = false;        // a plus or a minus was written
  std::string unit;            // what follows the number, trimmed
};

// Nothing when the text is not a number with or without something behind it.
[[nodiscard]] std::optional<EnteredNumber> read_entered_number(std::string_view text);
// "full", "same", "equal to other side": what the words say; nothing when they have no agreed meaning.
[[nodiscard]] std::optional<Reads> read_entered_words(std::string_view text);

// A written unit: the number is read in 1/`per_unit` of it, and each of these is `times` steps of the quantity.
struct WrittenUnit {
  std::string_view text;
  std::int32_t per_unit = 1;
  std::int64_t times = 1;
};

[[nodiscard]] const WrittenUnit* find_unit(std::span<const WrittenUnit> units, std::string_view text);

}  // namespace limbledger::model
