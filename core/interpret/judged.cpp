#include "core/interpret/judged.hpp"

#include "core/interpret/rules/disagree.hpp"
#include "core/interpret/rules/rule.hpp"

namespace limbledger::interpret {

std::vector<JudgedRule> run_rules(const View& view) {
  std::vector<JudgedRule> rules;
  for (const Rule& rule : all_rules()) {
    for (JudgedRule& judged : rule.run(view)) {
      rules.push_back(std::move(judged));
    }
  }
  mark_disagreement(rules);
  return rules;
}

// The rules read nothing of the alerts, and the alerts nothing of the rules: a rule never lowers an alert.
Watched watch(const View& view, const AlertsAsk& ask) {
  Watched watched;
  watched.flags = judge_flags(view);
  watched.alerts = judge_alerts(view, watched.flags, ask);
  watched.rules = run_rules(view);
  watched.concerns = open_concerns(view, watched.flags, watched.rules);
  return watched;
}

}  // namespace limbledger::interpret
