// What the edition's own lists ask, found once by asking them: places where a rule, a hypothesis or a danger looks.
#pragma once

#include "tests/simulation/limb/exams.hpp"

namespace limbledger::limb_exams {

[[nodiscard]] const std::vector<Place>& asked_by_evidence();
// One list a danger.
[[nodiscard]] const std::vector<std::vector<Place>>& asked_by_dangers();

}  // namespace limbledger::limb_exams
