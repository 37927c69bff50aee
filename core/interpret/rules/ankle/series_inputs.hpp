// What one exam says to the inputs of one of the two rules, why an input is not known, and which sides were injured. Internal to
// the rules.
#pragma once

#include "core/interpret/rules/ankle/series.hpp"

#include <string>

namespace limbledger::interpret {

struct FootHeard : InjuryHeard {
  FootInjury foot;
  std::array<std::string, foot_input_count> states;
  bool replaced = false;
  bool fused = false;
  bool no_limb = false;
  bool against_no = false;  // a film that shows a break, or bone tender where the rule does not look
};

[[nodiscard]] FootHeard hear_foot(const View& view, model::Side side, const Series& series);
// The side complained of for an injured ankle, and any side that hurts in the zone or whose bone is tender after an injury; on a
// free visit the side complained of only if one of the rule's own places was asked after there. A side alone names no joint.
[[nodiscard]] std::vector<model::Side> injured_feet(const View& view, const Series& series);

}  // namespace limbledger::interpret
