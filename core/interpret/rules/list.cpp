#include "core/interpret/rules/knee/ottawa_knee.hpp"
#include "core/interpret/rules/knee/pittsburgh_knee.hpp"
#include "core/interpret/rules/rule.hpp"

#include <array>

namespace limbledger::interpret {

std::span<const Rule> all_rules() {
  static constexpr std::array rules{
      Rule{ottawa_knee_rule, ottawa_knee_edition, &run_ottawa_knee},
      Rule{pittsburgh_knee_rule, pittsburgh_knee_edition, &run_pittsburgh_knee},
  };
  return rules;
}

}  // namespace limbledger::interpret
