#include "core/interpret/rules/disagree.hpp"

#include "core/interpret/rules/ankle/series.hpp"
#include "core/interpret/rules/rule.hpp"

#include <algorithm>
#include <string>

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

namespace {

[[nodiscard]] bool has_flag(const RuleResult& rule, std::string_view flag) {
  return std::any_of(rule.flags.begin(), rule.flags.end(), [&](const model::Word& one) { return one.text == flag; });
}

}  // namespace

void mark_beside_contradicted(std::vector<JudgedRule>& rules) {
  for (JudgedRule& rule : rules) {
    RuleResult& here = rule.result;
    const bool quiet = here.outcome == Outcome::negative && series_of(here.rule.text) != nullptr && !has_flag(here, "contradicted");
    const bool beside = quiet && std::any_of(rules.begin(), rules.end(), [&](const JudgedRule& other) {
                          return &other != &rule && other.result.side == here.side && series_of(other.result.rule.text) != nullptr && has_flag(other.result, "contradicted");
                        });
    if (beside) {
      here.flags.push_back({std::string(flag_beside_contradicted)});
    }
  }
}

}  // namespace limbledger::interpret
