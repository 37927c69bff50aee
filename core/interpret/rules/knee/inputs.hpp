// What the rules of an injured knee share beside what all rules of injured people do: exclusions, a knee that is replaced or not
// there, and which knees were injured. Internal to the rules; no blank ever reads as no.
#pragma once

#include "core/interpret/rules/injury.hpp"

namespace limbledger::interpret {

inline constexpr std::int64_t days_max = 7;

struct KneeHeard : InjuryHeard {
  bool replaced = false;    // this knee, so far as anybody said
  bool fused = false;       // likewise: that it does not bend is nothing new
  bool against_no = false;  // a film that shows a break, or bone tender where neither rule looks
  bool no_limb = false;     // the limb ends above, or every item of this knee that was tried says so
};
[[nodiscard]] KneeHeard hear_knee(const View& view, model::Side side);

// Which knees were injured: the side of the complaint, and any side with tender bone. Without a side, every knee examined; where the
// complaint is not the knee (a free visit), the side of the complaint only if its knee was examined: below the knee, only if bone was felt
// for that a rule asks after.
[[nodiscard]] std::vector<model::Side> injured_knees(const View& view);

}  // namespace limbledger::interpret
