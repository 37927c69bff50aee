// What a knee's motion says beyond norm, other side and last time: active against passive (a lag of extension), a fixed flexion,
// a knee that goes beyond straight, a lack of extension against the other side, the ratio of a capsular pattern.
// Degrees toward extension: 0 is straight, less is short of straight. Thousandths. Conventions stand in the facts' own page.
#pragma once

#include "core/interpret/motion/compare.hpp"
#include "core/interpret/statement.hpp"
#include "core/interpret/tri.hpp"

namespace limbledger::interpret {

// A lack of extension against the other side, beyond the error of a difference; passive where both sides have it, else active.
struct ExtensionDeficit {
  Tri beyond_error = Tri::undetermined;
  const Reading* reading = nullptr;
  const Reading* other = nullptr;
  Difference difference;
};
[[nodiscard]] ExtensionDeficit extension_deficit(const View& view, const std::vector<Reading>& readings, model::Side side);

// For both knees, the left first; where a knee has nothing to say, no statement. Joints fused are compared with nothing.
[[nodiscard]] std::vector<Judged> judge_knee_motion(const View& view, const std::vector<Reading>& readings);

}  // namespace limbledger::interpret
