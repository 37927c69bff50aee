#include "core/interpret/rules/ankle/ottawa_ankle.hpp"

namespace limbledger::interpret {

namespace {

// The whole fibula and the heel are felt as well; no part of the rule.
constexpr std::array<std::string_view, 4> beside_the_malleoli{"leg.fibular_neck_tender", "leg.fibular_shaft_tender", "leg.fibula_squeeze",
                                                              "foot.calcaneal_squeeze"};

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
