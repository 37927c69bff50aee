// A reading against what was measured in healthy people of that age and sex, with the instrument's error:
// error = minimal detectable change / 2.772; below if reading + 1.96 x error is under the low limit; above likewise; within if
// both ends lie inside; else it cannot be told. Exact integer arithmetic in thousandths of a degree.
// Where the age or the sex is not known closely, every norm that may apply is asked and must agree.
#pragma once

#include "core/interpret/motion/choose.hpp"
#include "core/interpret/statement.hpp"

namespace limbledger::interpret {

[[nodiscard]] Verdict against_norm(std::int64_t reading_low, std::int64_t reading_high, std::int64_t mdc95, const Limits& limits);

// Motions, and the lengths, times and counts for which there are norms.
[[nodiscard]] std::vector<Judged> judge_norms(const View& view, const std::vector<Reading>& motions);

}  // namespace limbledger::interpret
