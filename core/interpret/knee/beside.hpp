// What stands beside the knee complained of: the hip above it, whose pain is felt at the knee, and the other knee, where what was
// found may have been entered under the wrong side. Neither settles anything. Both are our convention.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/interpret/view.hpp"

#include <optional>
#include <vector>

namespace limbledger::interpret {

// For a complaint of the knee: after a jump or a fall that took the walking, that heels and back bore it too; a hip of that side that hurts when it is turned, or turns inward little or less than the other.
[[nodiscard]] std::vector<Judged> judge_beside(const View& view);
// At least two signs of the part complained of (the knee where none is named) on the other side, each answered no on the side
// complained of, and none there.
[[nodiscard]] std::optional<Contradiction> signs_on_the_other_knee(const View& view);

}  // namespace limbledger::interpret
