#include "core/interpret/rules/ankle/ottawa_ankle.hpp"
#include "core/interpret/rules/ankle/ottawa_midfoot.hpp"
#include "core/interpret/rules/knee/ottawa_knee.hpp"
#include "core/interpret/rules/knee/pittsburgh_knee.hpp"
#include "core/interpret/rules/rule.hpp"

#include <array>

namespace limbledger::interpret {

std::span<const Rule> all_rules() {
  static constexpr std::array rules{
      Rule{ottawa_knee_rule, ottawa_knee_edition, &run_ottawa_knee},
      Rule{pittsburgh_knee_rule, pittsburgh_knee_edition, &run_pittsburgh_knee},
      Rule{ottawa_ankle_rule, ottawa_ankle_edition, &run_ottawa_ankle},
      Rule{ottawa_midfoot_rule, ottawa_midfoot_edition, &run_ottawa_midfoot},
  };
  return rules;
}

}  // namespace limbledger::interpret
