// What the rules of an injured knee share beside what all rules of injured people do: exclusions, a knee that is replaced or not
// there, and which knees were injured. Internal to the rules; no blank ever reads as no.
#pragma once

#include "core/interpret/rules/injury.hpp"

#include <array>
#include <string_view>

namespace limbledger::interpret {

inline constexpr std::int64_t days_max = 7;
// Bone of the knee, the thigh, the shin and the fibula that neither rule counts.
inline constexpr std::array<std::string_view, 14> beside_the_knee{
    "knee.tibial_tubercle_tender", "knee.adductor_tubercle_tender", "knee.gerdy_tubercle_tender", "knee.femoral_condyle_lateral_tender", "leg.fibular_neck_tender",
    "leg.fibular_shaft_tender",    "leg.fibula_squeeze",            "leg.tibial_crest_tender",    "leg.tibial_border_tender",            "leg.tibial_spot_tender",
    "leg.shin_squeeze",            "leg.shin_fork_pain",            "leg.shin_percussion_pain",   "leg.thigh_shaft_tender"};

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
