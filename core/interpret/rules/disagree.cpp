#include "core/interpret/rules/disagree.hpp"

#include "core/interpret/rules/rule.hpp"

#include <algorithm>

namespace limbledger::interpret {

void mark_disagreement(std::vector<JudgedRule>& rules) {
  for (JudgedRule& rule : rules) {
    const Outcome outcome = rule.result.outcome;
    const Outcome opposite = outcome == Outcome::negative ? Outcome::positive : Outcome::negative;
    const std::string_view question = question_of(rule.result.rule);
    const bool decided = !question.empty() && (outcome == Outcome::negative || outcome == Outcome::positive);
    const bool disagrees = decided && std::any_of(rules.begin(), rules.end(), [&](const JudgedRule& other) {
                             return question_of(other.result.rule) == question && other.result.side == rule.result.side && other.result.outcome == opposite;
                           });
    if (disagrees) {
      rule.result.flags.push_back({std::string(flag_rules_disagree)});
    }
  }
}

}  // namespace limbledger::interpret
