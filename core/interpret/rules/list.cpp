#include "core/interpret/rules/ankle/ottawa_ankle.hpp"
#include "core/interpret/rules/ankle/ottawa_midfoot.hpp"
#include "core/interpret/rules/body/hypermobility.hpp"
#include "core/interpret/rules/foot/foot_category.hpp"
#include "core/interpret/rules/foot/foot_posture.hpp"
#include "core/interpret/rules/foot/nice_ng19.hpp"
#include "core/interpret/rules/foot/protective_sensation.hpp"
#include "core/interpret/rules/function/chair_stand.hpp"
#include "core/interpret/rules/function/five_stands.hpp"
#include "core/interpret/rules/function/four_stances.hpp"
#include "core/interpret/rules/function/heel_rise_sides.hpp"
#include "core/interpret/rules/function/up_and_go.hpp"
#include "core/interpret/rules/knee/ottawa_knee.hpp"
#include "core/interpret/rules/knee/pittsburgh_knee.hpp"
#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/vessel/ankle_brachial.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

std::span<const Rule> all_rules() {
  static constexpr std::array rules{
      Rule{ottawa_knee_rule, ottawa_knee_edition, &run_ottawa_knee, "concern.knee_fracture"},
      Rule{pittsburgh_knee_rule, pittsburgh_knee_edition, &run_pittsburgh_knee, "concern.knee_fracture"},
      Rule{ottawa_ankle_rule, ottawa_ankle_edition, &run_ottawa_ankle, "concern.ankle_fracture"},
      Rule{ottawa_midfoot_rule, ottawa_midfoot_edition, &run_ottawa_midfoot, "concern.foot_fracture"},
      Rule{protective_sensation_rule, protective_sensation_edition, &run_protective_sensation},
      Rule{ankle_brachial_rule, ankle_brachial_edition, &run_ankle_brachial, {}, true},
      Rule{foot_category_rule, foot_category_edition, &run_foot_category, {}, false, question_of_feet},
      Rule{nice_feet_rule, nice_feet_edition, &run_nice_feet, {}, false, question_of_feet},
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

namespace {

[[nodiscard]] const Rule* rule_named(const model::RuleId& rule) {
  const auto rules = all_rules();
  const auto found = std::find_if(rules.begin(), rules.end(), [&](const Rule& one) { return one.rule == rule.text; });
  return found == rules.end() ? nullptr : &*found;
}

}  // namespace

std::string_view film_for(const model::RuleId& rule) {
  const Rule* known = rule_named(rule);
  return known == nullptr ? std::string_view() : known->film_for;
}

bool decides(const model::RuleId& rule) {
  const Rule* known = rule_named(rule);
  return known != nullptr && (known->refers || !known->film_for.empty());
}

std::vector<JudgedRule> run_rule(const model::RuleId& rule, const View& view) {
  const Rule* known = rule_named(rule);
  return known == nullptr ? std::vector<JudgedRule>{} : known->run(view);
}

std::string_view question_of(const model::RuleId& rule) {
  const Rule* known = rule_named(rule);
  return known == nullptr ? std::string_view() : (known->question.empty() ? known->film_for : known->question);
}

}  // namespace limbledger::interpret
