#include "core/interpret/judged.hpp"

#include "core/interpret/rules/disagree.hpp"
#include "core/interpret/rules/rule.hpp"

#include <algorithm>
#include <string_view>
#include <utility>

namespace limbledger::interpret {

namespace {

template <class Wanted>
[[nodiscard]] std::vector<JudgedRule> run_those(const View& view, const Wanted& wanted) {
  std::vector<JudgedRule> rules;
  for (const Rule& rule : all_rules()) {
    if (!wanted(rule)) {
      continue;
    }
    for (JudgedRule& judged : rule.run(view)) {
      rules.push_back(std::move(judged));
    }
  }
  mark_disagreement(rules);
  mark_beside_contradicted(rules);
  return rules;
}

// What no rule of a break is asked beside.
[[nodiscard]] bool comes_before_rules(std::string_view alert) {
  return alert == "alert.open_fx" || alert == "alert.knee_disloc_vasc" || alert == "alert.dislocation" || alert == "alert.ankle_disloc";
}

[[nodiscard]] bool is_withheld_by(const model::Item* item, std::string_view concern) {
  const auto& by = item->withheld_by;
  return by && std::any_of(by->begin(), by->end(), [&](const model::ConcernId& one) { return one.text == concern; });
}

}  // namespace

std::vector<JudgedRule> run_rules(const View& view) {
  return run_those(view, [](const Rule&) { return true; });
}

// Rules on one question are set against each other, and all of one film are run together.
Withholders withholders_of(const View& view, std::span<const model::Item* const> items) {
  const auto theirs = [&](std::string_view concern) {
    return std::any_of(items.begin(), items.end(), [&](const model::Item* item) { return is_withheld_by(item, concern); });
  };
  const auto of_film = [&](const Rule& rule) { return theirs(rule.film_for.empty() ? rule.question : rule.film_for); };
  const auto known = all_rules();
  const bool by_rules = std::any_of(known.begin(), known.end(), of_film) && rules_may_hold(view);
  const auto stops_one = [&](const reference::AlertRow& row) {
    return std::any_of(row.stop.begin(), row.stop.end(), [&](const model::ItemId& stopped) {
      return std::any_of(items.begin(), items.end(), [&](const model::Item* item) { return item->item == stopped; });
    });
  };
  const auto opens_theirs = [&](const reference::AlertRow& row) {
    return std::any_of(row.opens.begin(), row.opens.end(), [&](const model::ConcernId& concern) { return theirs(concern.text); });
  };
  Withholders out;
  out.flags = judge_flags(view, [&](const reference::AlertRow& row) { return (by_rules && comes_before_rules(row.alert.text)) || opens_theirs(row) || stops_one(row); });
  std::vector<JudgedRule> rules;
  if (by_rules) {
    rules = run_those(view, of_film);
    set_aside(out.flags, rules);
  }
  out.concerns = open_concerns(view, out.flags, rules);
  return out;
}

void set_aside(const std::vector<JudgedFlag>& flags, std::vector<JudgedRule>& rules) {
  const auto comes_first = [](const JudgedFlag& flag) {
    return flag.raised.clue.is_yes() && comes_before_rules(flag.row->alert.text);
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
