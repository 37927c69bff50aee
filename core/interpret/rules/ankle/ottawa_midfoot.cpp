#include "core/interpret/rules/ankle/ottawa_midfoot.hpp"

namespace limbledger::interpret {

namespace {

// Bone of the foot that the rule does not ask about, the line of its joints by whatever test, and the signs of a torn midfoot, any of which is
// filmed standing or treated as an injury (WYNTER2017).
constexpr std::array<std::string_view, 18> beside_the_midfoot{
    "foot.cuboid_tender", "foot.lisfranc_line_tender", "foot.lisfranc_tender_joints", "foot.piano_key", "foot.plantar_bruise", "foot.navicular_dorsum_tender",
    "foot.fifth_metatarsal_junction_tender", "foot.calcaneal_squeeze", "foot.metatarsal_first_tender", "foot.metatarsal_second_tender", "foot.metatarsal_third_tender",
    "foot.metatarsal_fourth_tender", "foot.metatarsal_fifth_tender", "foot.sesamoid_medial_tender", "foot.sesamoid_lateral_tender", "foot.toe_bones_tender",
    "foot.calcaneal_tubercle_tender", "foot.bone_fork_pain"};

}  // namespace

const Series& ottawa_midfoot_series() {
  static constexpr Series series{
      ottawa_midfoot_rule,
      ottawa_midfoot_edition,
      "foot",
      {"age", "days", "zone", "mt5", "nav", "imm", "steps", "excl", "pregnant"},
      {"", "", "foot.pain_midfoot_zone", "foot.fifth_metatarsal_base_tender", "foot.navicular_tender", "history.steps_at_once", "gait.steps_now",
       "history.ankle_rule_exclusions", "body.pregnancy"},
      {"pain in the midfoot zone", "base of the fifth metatarsal tender", "navicular tender"},
      "foot_fracture_seen",
      beside_the_midfoot,
  };
  return series;
}

std::vector<JudgedRule> run_ottawa_midfoot(const View& view) { return run_series(view, ottawa_midfoot_series()); }

}  // namespace limbledger::interpret
