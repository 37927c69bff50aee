// Less than 5.0 s on one leg with the eyes open, from 60 years on: an often-used cut for falls with injury, from memory (Vellas 1997), so
// it raises nothing and stands beside the comparison with the figure of the age, which draws no limit (core/interpret/motion). From which
// age it is said is our convention. Source: decision rules page, section 22.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/interpret/view.hpp"

#include <vector>

namespace limbledger::interpret {

[[nodiscard]] std::vector<Judged> judge_short_stance(const View& view);

}  // namespace limbledger::interpret
