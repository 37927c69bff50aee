#include "core/interpret/rules/disagree.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

// Rules that answer the same question end in its joint: rule.ottawa_knee, rule.pittsburgh_knee. Ankle and midfoot are two questions.
[[nodiscard]] std::string_view joint_of(const JudgedRule& rule) {
  const std::string_view name = rule.result.rule.text;
  return name.substr(name.rfind('_') + 1);
}

}  // namespace

void mark_disagreement(std::vector<JudgedRule>& rules) {
  for (JudgedRule& rule : rules) {
    const Outcome outcome = rule.result.outcome;
    const Outcome opposite = outcome == Outcome::negative ? Outcome::positive : Outcome::negative;
    const bool decided = outcome == Outcome::negative || outcome == Outcome::positive;
    const bool disagrees = decided && std::any_of(rules.begin(), rules.end(), [&](const JudgedRule& other) {
                             return other.result.side == rule.result.side && joint_of(other) == joint_of(rule) && other.result.outcome == opposite;
                           });
    if (disagrees) {
      rule.result.flags.push_back({std::string(flag_rules_disagree)});
    }
  }
}

}  // namespace limbledger::interpret
