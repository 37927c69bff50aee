// Which motions of a joint are lost against the other side, beside what was called its capsular pattern. A description and never a
// test: no fixed order was found in worn hips and knees (KLASSBO2003, BIJL1998; rom page, conflict 20). Of the knee it is a ratio and
// is told in knee/extension. Losses count beyond the error of a difference.
#pragma once

#include "core/interpret/motion/compare.hpp"
#include "core/interpret/statement.hpp"

namespace limbledger::interpret {

[[nodiscard]] std::vector<Judged> judge_patterns(const View& view, const std::vector<Reading>& readings);

}  // namespace limbledger::interpret
