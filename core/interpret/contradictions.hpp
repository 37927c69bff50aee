// Findings that do not fit together. Each is a question to the examiner; nothing is settled or exchanged here, and neither of two
// that contradict counts for less because of it. Which pairs are asked about is our convention.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/interpret/view.hpp"

namespace limbledger::interpret {

[[nodiscard]] std::vector<Contradiction> finding_contradictions(const View& view);

}  // namespace limbledger::interpret
