#include "core/interpret/after/urgent_way.hpp"

#include "core/interpret/alerts/alerts.hpp"
#include "core/interpret/view.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

[[nodiscard]] std::string with_side(const std::string& name, const std::optional<model::Side>& side) {
  return side ? name + ":" + std::string(side_word(*side)) : name;
}

}  // namespace

std::optional<UrgentWay> urgent_way(const std::vector<Alert>& alerts, const std::optional<model::Place>& place, const reference::Edition& edition) {
  UrgentWay way;
  std::optional<std::int64_t> window;
  for (const Alert& alert : alerts) {
    const reference::AlertRow* row = edition.alert(alert.alert.text);
    if (alert.state != AlertState::raised || alert.urgency != Urgency::now || alert.audience == Audience::protected_ || row == nullptr) {
      continue;
    }
    way.alerts.push_back({statement_name(alert)});
    window = std::min(window.value_or(row->harm_minutes.steps), row->harm_minutes.steps);
  }
  if (!window) {
    return std::nullopt;
  }
  way.window_minutes.steps = *window;
  way.telephones = place ? place->telephones.value_or(std::vector<model::Telephone>{}) : std::vector<model::Telephone>{};
  way.travel = place ? place->travel.value_or(std::vector<model::Travel>{}) : std::vector<model::Travel>{};
  if (!way.travel.empty()) {
    // One that is too far is enough: the nearest may not be the one that can help.
    way.call_first = std::any_of(way.travel.begin(), way.travel.end(), [&](const model::Travel& one) { return one.minutes.steps > *window; });
  }
  return way;
}

std::string statement_name(const Alert& alert) { return with_side(alert.alert.text, alert.side); }
std::string statement_name(const Flag& flag) { return with_side(flag.flag.text, flag.side); }
std::string statement_name(const JudgedFlag& judged) { return with_side(judged.row->alert.text, judged.side); }
std::string statement_name(const RuleResult& rule) { return with_side(rule.rule.text, rule.side); }
std::string statement_name(const Hypothesis& hypothesis) { return with_side(hypothesis.hypothesis.text, hypothesis.side); }

bool holds_statement(const Assessment& assessment, const model::StatementId& name) {
  const auto named = [&](const auto& list) {
    return std::any_of(list.begin(), list.end(), [&](const auto& one) { return statement_name(one) == name.text; });
  };
  return named(assessment.alerts) || named(assessment.rules) || named(assessment.hypotheses) ||
         std::any_of(assessment.statements.begin(), assessment.statements.end(), [&](const Statement& one) { return one.statement == name; }) ||
         std::any_of(assessment.contradictions.begin(), assessment.contradictions.end(), [&](const Contradiction& one) { return one.contradiction == name; });
}

}  // namespace limbledger::interpret
