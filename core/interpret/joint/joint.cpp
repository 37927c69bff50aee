#include "core/interpret/joint/joint.hpp"

#include "core/interpret/joint/active.hpp"
#include "core/interpret/joint/capsular.hpp"
#include "core/interpret/joint/neutral.hpp"
#include "core/interpret/joint/pairs.hpp"

namespace limbledger::interpret {

std::vector<Judged> judge_joint_motion(const View& view, const std::vector<Reading>& readings) {
  std::vector<Judged> all;
  for (auto& part : {judge_active_motions(view, readings), judge_neutral(view, readings), judge_calf_gap(view, readings), judge_unlike(view, readings),
                     judge_patterns(view, readings)}) {
    all.insert(all.end(), part.begin(), part.end());
  }
  return all;
}

}  // namespace limbledger::interpret
