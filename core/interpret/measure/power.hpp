// Power of a muscle that pain or the person's effort held back: a grade then is none of the muscle, and says so (decision rules page,
// section 24: pain-limited effort is no grade). A full grade was reached all the same and stands.
#pragma once

#include "core/interpret/measure/lines.hpp"

#include <vector>

namespace limbledger::interpret {

[[nodiscard]] std::vector<Judged> judge_held_back(const View& view);

}  // namespace limbledger::interpret
