// One reading against another: the two sides, or this exam and the last one that has the same motion. A difference is real if it
// exceeds the larger of the methods' minimal detectable changes and, between sides, 10 degrees. Another position is another
// quantity and is not compared; another method is named. Thousandths of a degree. Source: contract, section 7.
#pragma once

#include "core/interpret/motion/reading.hpp"
#include "core/interpret/statement.hpp"

#include <span>

namespace limbledger::interpret {

inline constexpr std::int64_t side_difference_least = 10'000;

// For the side of the complaint; for both sides where none is named.
[[nodiscard]] std::vector<Judged> judge_sides(const View& view, const std::vector<Reading>& readings);
[[nodiscard]] std::vector<Judged> judge_past(const View& view, const std::vector<Reading>& readings, std::span<const model::Exam> earlier);
// The earlier exams that stand, the latest first.
[[nodiscard]] std::vector<const model::Exam*> exams_before(const View& view, std::span<const model::Exam> earlier);
// An active motion that goes further than the passive one by more than the methods' error.
[[nodiscard]] std::vector<Contradiction> motion_contradictions(const View& view, const std::vector<Reading>& readings);

}  // namespace limbledger::interpret
