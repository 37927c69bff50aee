#include "core/interpret/judged.hpp"

#include "core/interpret/rules/disagree.hpp"
#include "core/interpret/rules/rule.hpp"

#include <algorithm>

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

void set_aside(const std::vector<JudgedFlag>& flags, std::vector<JudgedRule>& rules) {
  const auto comes_first = [](const JudgedFlag& flag) {
    const std::string& name = flag.row->alert.text;
    return flag.raised.clue.is_yes() && (name == "alert.open_fx" || name == "alert.knee_disloc_vasc" || name == "alert.dislocation" || name == "alert.ankle_disloc");
  };
  for (JudgedRule& rule : rules) {
    if (film_for(rule.result.rule).empty()) {
      continue;  // it reassures of no break
    }
    const bool first = std::any_of(flags.begin(), flags.end(), [&](const JudgedFlag& flag) { return comes_first(flag) && flag.side == rule.result.side; });
    if (first && (rule.result.outcome == Outcome::negative || rule.result.outcome == Outcome::undetermined)) {
      rule.result.outcome = Outcome::not_applicable;
      rule.result.gate = model::Word{"red_flag"};
      rule.result.settle.clear();
      rule.working.message = {"msg." + rule.result.rule.text + ".not_applicable"};
      rule.working.changes_if.clear();
    }
  }
}

// The rules read nothing of the alerts, and the alerts nothing of the rules: a rule never lowers an alert.
Watched watch(const View& view, const AlertsAsk& ask) {
  Watched watched;
  watched.flags = judge_flags(view);
  watched.alerts = judge_alerts(view, watched.flags, ask);
  watched.rules = run_rules(view);
  set_aside(watched.flags, watched.rules);
  watched.concerns = open_concerns(view, watched.flags, watched.rules);
  return watched;
}

}  // namespace limbledger::interpret
