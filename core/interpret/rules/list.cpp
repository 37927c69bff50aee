#include "core/interpret/rules/ankle/ottawa_ankle.hpp"
#include "core/interpret/rules/ankle/ottawa_midfoot.hpp"
#include "core/interpret/rules/body/hypermobility.hpp"
#include "core/interpret/rules/foot/foot_category.hpp"
#include "core/interpret/rules/foot/foot_posture.hpp"
#include "core/interpret/rules/foot/nice_ng19.hpp"
#include "core/interpret/rules/foot/protective_sensation.hpp"
#include "core/interpret/rules/hip/child_hip.hpp"
#include "core/interpret/rules/hip/hip_wear.hpp"
#include "core/interpret/rules/joint/nice_oa.hpp"
#include "core/interpret/rules/knee/knee_vessels.hpp"
#include "core/interpret/rules/knee/knee_wear.hpp"
#include "core/interpret/rules/knee/meniscus.hpp"
#include "core/interpret/rules/function/chair_stand.hpp"
#include "core/interpret/rules/function/five_stands.hpp"
#include "core/interpret/rules/function/four_stances.hpp"
#include "core/interpret/rules/function/heel_rise_sides.hpp"
#include "core/interpret/rules/function/up_and_go.hpp"
#include "core/interpret/rules/knee/ottawa_knee.hpp"
#include "core/interpret/rules/knee/pittsburgh_knee.hpp"
#include "core/interpret/rules/leg/compartment.hpp"
#include "core/interpret/rules/pelvis/sacroiliac.hpp"
#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/vessel/ankle_brachial.hpp"
#include "core/interpret/rules/vessel/clot_route.hpp"
#include "core/interpret/rules/vessel/wells.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

namespace {

constexpr std::string_view worn_joint_question = "worn_joint";

[[nodiscard]] const Rule* rule_named(const model::RuleId& rule) {
  const auto rules = all_rules();
  const auto found = std::find_if(rules.begin(), rules.end(), [&](const Rule& one) { return one.rule == rule.text; });
  return found == rules.end() ? nullptr : &*found;
}

}  // namespace

std::span<const Rule> all_rules() {
  static constexpr std::array rules{
      Rule{ottawa_knee_rule, ottawa_knee_edition, &run_ottawa_knee, "concern.knee_fracture"},
      Rule{pittsburgh_knee_rule, pittsburgh_knee_edition, &run_pittsburgh_knee, "concern.knee_fracture"},
      Rule{ottawa_ankle_rule, ottawa_ankle_edition, &run_ottawa_ankle, "concern.ankle_fracture"},
      Rule{ottawa_midfoot_rule, ottawa_midfoot_edition, &run_ottawa_midfoot, "concern.foot_fracture"},
      Rule{protective_sensation_rule, protective_sensation_edition, &run_protective_sensation},
      Rule{ankle_brachial_rule, ankle_brachial_edition, &run_ankle_brachial, {}, {}, true},
      Rule{foot_category_rule, foot_category_edition, &run_foot_category, {}, question_of_feet},
      Rule{nice_feet_rule, nice_feet_edition, &run_nice_feet, {}, question_of_feet},
      Rule{compartment_rule, compartment_edition, &run_compartment, {}, {}, true},
      Rule{knee_vessels_rule, knee_vessels_edition, &run_knee_vessels, {}, {}, true},
      Rule{wells_rule, wells_edition, &run_wells, {}, {}, true},
      Rule{wells_1997_rule, wells_1997_edition, &run_wells_1997},
      Rule{clot_route_rule, clot_route_edition, &run_clot_route, {}, {}, true},
      Rule{kocher_rule, kocher_edition, &run_kocher},
      Rule{caird_rule, caird_edition, &run_caird},
      Rule{singhal_rule, singhal_edition, &run_singhal},
      Rule{nice_oa_rule, nice_oa_edition, &run_nice_oa, {}, worn_joint_question},
      Rule{acr_knee_rule, acr_knee_edition, &run_acr_knee, {}, worn_joint_question},
      Rule{acr_knee_tree_rule, acr_knee_tree_edition, &run_acr_knee_tree, {}, worn_joint_question},
      Rule{eular_knee_rule, eular_knee_edition, &run_eular_knee, {}, worn_joint_question},
      Rule{acr_hip_rule, acr_hip_edition, &run_acr_hip, {}, worn_joint_question},
      Rule{sutlive_rule, sutlive_edition, &run_sutlive},
      Rule{laslett_rule, laslett_edition, &run_laslett},
      Rule{lowery_rule, lowery_edition, &run_lowery},
      Rule{hypermobility_rule, hypermobility_edition, &run_hypermobility},
      Rule{foot_posture_rule, foot_posture_edition, &run_foot_posture},
      Rule{up_and_go_rule, up_and_go_edition, &run_up_and_go},
      Rule{chair_stand_rule, chair_stand_edition, &run_chair_stand},
      Rule{four_stances_rule, four_stances_edition, &run_four_stances},
      Rule{five_stands_rule, five_stands_edition, &run_five_stands},
      Rule{heel_rise_rule, heel_rise_edition, &run_heel_rises},
  };
  return rules;
}

std::string_view film_for(const model::RuleId& rule) {
  const Rule* known = rule_named(rule);
  return known == nullptr ? std::string_view() : known->film_for;
}

std::string_view question_of(const model::RuleId& rule) {
  const Rule* known = rule_named(rule);
  if (known == nullptr) {
    return {};
  }
  return known->film_for.empty() ? known->question : known->film_for;
}

bool decides(const model::RuleId& rule) {
  const Rule* known = rule_named(rule);
  return known != nullptr && (known->refers || !known->film_for.empty());
}

std::vector<JudgedRule> run_rule(const model::RuleId& rule, const View& view) {
  const Rule* known = rule_named(rule);
  return known == nullptr ? std::vector<JudgedRule>{} : known->run(view);
}

}  // namespace limbledger::interpret
