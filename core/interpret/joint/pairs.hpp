// Two readings that belong together and are two quantities: the ankle with the knee straight and bent, whose difference tells of the
// calf (HC-014), and one motion measured in one way on one side and in another on the other, which is not compared (HC-015).
#pragma once

#include "core/interpret/motion/compare.hpp"
#include "core/interpret/statement.hpp"

namespace limbledger::interpret {

[[nodiscard]] std::vector<Judged> judge_calf_gap(const View& view, const std::vector<Reading>& readings);
// For the side of the complaint; for both sides where none is named.
[[nodiscard]] std::vector<Judged> judge_unlike(const View& view, const std::vector<Reading>& readings);

}  // namespace limbledger::interpret
