#include "core/reference/catalogue/row.hpp"

namespace limbledger::reference {

void check_decision_rules(const Facts& facts, Faults& faults) {
  check_once(facts.decision_rules, "decision_rules", "/rule", [](const RuleRow& one) -> const std::string& { return one.rule.text; }, faults);
  for (std::size_t i = 0; i < facts.decision_rules.size(); ++i) {
    const RuleRow& rule = facts.decision_rules[i];
    const CheckedRow row{row_path("decision_rules", i), rule.rule.text, faults};
    row.need(rule.rule.text.starts_with("rule."), "value.disagrees", "/rule", "a name that starts with rule");
    row.need(!rule.asks.empty(), "value.out_of_range", "/asks", "at least one input");
    for (std::size_t a = 0; a < rule.asks.size(); ++a) {
      for (std::size_t n = 0; n < rule.asks[a].items.size(); ++n) {
        row.need(facts.item(rule.asks[a].items[n]) != nullptr, "item.unknown", "/asks" + wire::pointer_step(a) + "/items" + wire::pointer_step(n),
                 "an item of the list");
      }
    }
    check_sources(row, rule.sources, facts);
  }
}

}  // namespace limbledger::reference
