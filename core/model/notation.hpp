// Written forms of a measurement: the neutral-zero triple, a number with its unit, a bound, words such as "full".
// Angles here are on the axis of the joint plane (positive is flexion, dorsiflexion, abduction ...). Source: the motion
// sources page, "Neutral-zero notation", and contract section 3. Refused: a triple without a zero, a negative arc,
// anything but whole numbers; a number without its unit where the item does not fix one.
#pragma once

#include "core/model/item.hpp"
#include "core/wire/fault.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace limbledger::model {

// The two ends of a motion as signed angles toward their own direction: first + second is the arc.
struct NeutralZero {
  Degrees first;
  Degrees second;
};

// "0-20-110" -> first -20, second 110. Faults: value.neutral_zero.
[[nodiscard]] Result<NeutralZero> read_neutral_zero(std::string_view text);
[[nodiscard]] std::string write_neutral_zero(const NeutralZero& ends);

// "extension_zero_flexion" -> extension, flexion; nothing when the text is not of that form.
struct TripleOrder {
  Word first;
  Word second;
};
[[nodiscard]] std::optional<TripleOrder> read_order(const Word& order);

}  // namespace limbledger::model
