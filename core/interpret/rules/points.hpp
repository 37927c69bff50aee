// A sheet whose decision is a sum of points behind a few gates: what complete_sheet gives, without walking every completion, so that
// a score of a dozen open inputs is worked out in microseconds. The gates come first in the sheet.
#pragma once

#include "core/interpret/rules/sheet.hpp"

#include <cstddef>
#include <cstdint>
#include <span>

namespace limbledger::interpret {

struct PointsDecision {
  std::size_t gates = 0;
  // By the classes of the gates: why the score is not made for them, or nothing.
  std::function<std::optional<SheetAnswer>(std::span<const std::uint8_t> gates)> gate;
  std::function<std::int64_t(std::size_t input, std::uint8_t one)> points;  // of one class of an input behind the gates
  std::function<SheetAnswer(std::int64_t points)> band;
};

// Sums from -16 to 47. The points are those behind the gates, whatever the gates say.
[[nodiscard]] SheetCompleted complete_points(std::span<const Classes> may_be, const PointsDecision& decision);
// The same decision of known classes, for complete_sheet.
[[nodiscard]] SheetAnswer decide_points(std::span<const std::uint8_t> classes, const PointsDecision& decision);

}  // namespace limbledger::interpret
