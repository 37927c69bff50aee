// What lengths, girths, times and pitting say: one call for the assessment, as for motion.
#pragma once

#include "core/interpret/motion/reading.hpp"
#include "core/interpret/statement.hpp"

#include <span>
#include <vector>

namespace limbledger::interpret {

[[nodiscard]] std::vector<Judged> judge_measures(const View& view, const std::vector<Reading>& motions, std::span<const model::Exam> earlier);
[[nodiscard]] std::vector<Contradiction> measure_contradictions(const View& view);

}  // namespace limbledger::interpret
