// What could not be measured or held although it was tried: which conclusion is lost, and what would tell it in another way (HC-023).
// A landmark that is not felt, a limb that cannot be held, a reading beyond the instrument. Nothing is made up in their place.
#pragma once

#include "core/interpret/measure/lines.hpp"

#include <vector>

namespace limbledger::interpret {

[[nodiscard]] std::vector<Judged> judge_not_read(const View& view);

}  // namespace limbledger::interpret
