// What motion says beyond norm, other side and last time, at every joint: active against passive, short of the middle position, two
// ways of one motion, and what was called a capsular pattern. The knee's own (lag, fixed flexion, hyperextension, ratio) stand in knee/.
#pragma once

#include "core/interpret/motion/reading.hpp"
#include "core/interpret/statement.hpp"

namespace limbledger::interpret {

[[nodiscard]] std::vector<Judged> judge_joint_motion(const View& view, const std::vector<Reading>& readings);

}  // namespace limbledger::interpret
