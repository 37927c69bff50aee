#include "core/interpret/rules/ankle/ottawa_ankle.hpp"

namespace limbledger::interpret {

namespace {

// The whole fibula, the shin and the bones of the foot are felt as well; no part of the rule. Where the midfoot rule looks it speaks for itself.
constexpr std::array<std::string_view, 27> beside_the_malleoli{
    "knee.fibular_head_tender",  "leg.fibular_neck_tender",  "leg.fibular_shaft_tender",  "leg.fibula_squeeze",          "leg.tibial_crest_tender",
    "leg.tibial_border_tender",  "leg.tibial_spot_tender",   "leg.shin_squeeze",          "leg.shin_fork_pain",          "leg.shin_percussion_pain",
    "foot.calcaneal_squeeze",    "foot.navicular_dorsum_tender", "foot.fifth_metatarsal_junction_tender", "foot.cuboid_tender", "foot.lisfranc_line_tender",
    "foot.lisfranc_tender_joints", "foot.piano_key",         "foot.metatarsal_first_tender", "foot.metatarsal_second_tender", "foot.metatarsal_third_tender",
    "foot.metatarsal_fourth_tender", "foot.metatarsal_fifth_tender", "foot.sesamoid_medial_tender", "foot.sesamoid_lateral_tender", "foot.toe_bones_tender",
    "foot.calcaneal_tubercle_tender", "foot.bone_fork_pain"};

}  // namespace

const Series& ottawa_ankle_series() {
  static constexpr Series series{
      ottawa_ankle_rule,
      ottawa_ankle_edition,
      "ankle",
      {"age", "days", "zone", "lat", "med", "imm", "steps", "excl", "pregnant"},
      {"", "", "ankle.pain_malleolar_zone", "ankle.lateral_malleolus_tender", "ankle.medial_malleolus_tender", "history.steps_at_once",
       "gait.steps_now", "history.ankle_rule_exclusions", "body.pregnancy"},
      {"pain in the malleolar zone", "lateral malleolus tender", "medial malleolus tender"},
      "ankle_fracture_seen",
      beside_the_malleoli,
  };
  return series;
}

std::vector<JudgedRule> run_ottawa_ankle(const View& view) { return run_series(view, ottawa_ankle_series()); }

}  // namespace limbledger::interpret
