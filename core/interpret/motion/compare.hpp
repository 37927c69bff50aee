// Two readings that may be compared: whether they can be, their difference with its open ends, and the change that is needed
// to believe it. Thousandths of a degree toward the item's own direction.
#pragma once

#include "core/interpret/motion/reading.hpp"

#include <string>
#include <string_view>

namespace limbledger::interpret {

enum class Comparable : std::uint8_t { yes, other_position, needs_instrument };

struct Difference {
  Comparable comparable = Comparable::yes;
  Precision precision;   // of both, where comparable
  std::int64_t low = 0;  // reading - other
  std::int64_t high = 0;
  std::int64_t needed = 0;  // the larger change of the two, or `least`
  bool methods_differ = false;

  [[nodiscard]] bool exact() const { return low == high; }
  [[nodiscard]] bool below() const { return comparable == Comparable::yes && high < -needed; }
  [[nodiscard]] bool above() const { return comparable == Comparable::yes && low > needed; }
};

[[nodiscard]] Difference difference_of(const reference::Edition& edition, const Reading& reading, const Reading& other, std::int64_t least);

// The reading of one item on one side, or null; only where it is a number.
[[nodiscard]] const Reading* number_at(const std::vector<Reading>& readings, std::string_view item, model::Side side);

// The motion without its mode. The same motion in another position (seated, face down) is another quantity.
[[nodiscard]] std::string motion_without_mode(const model::Item& item);

// Whether a distance from a fixed point exceeds 1.96 x error of one reading: 70 / 99 of the smallest change, without rounding.
[[nodiscard]] bool beyond_error(std::int64_t distance, std::int64_t mdc95);

}  // namespace limbledger::interpret
