// What a person can do against what the joint allows when it is moved: the same motion, the same position, the same bend of the
// joint beside it. Of straightening the knee it is called a lag. Thousandths of a degree toward the item's own direction.
#pragma once

#include "core/interpret/motion/compare.hpp"
#include "core/interpret/statement.hpp"

#include <vector>

namespace limbledger::interpret {

// Nothing where one of the two is missing, in a fused joint, and where the active one goes further: that is asked about.
void judge_active(const View& view, const Reading* active, const Reading* passive, std::vector<Judged>& all);
// Every active motion that has a passive one of the same name; straightening and bending the knee on the back are told with the knee.
[[nodiscard]] std::vector<Judged> judge_active_motions(const View& view, const std::vector<Reading>& readings);

}  // namespace limbledger::interpret
