#include "core/reference/catalogue/row.hpp"

#include <algorithm>

namespace limbledger::reference {

namespace {

constexpr std::size_t meanwhile_most = 3;  // at most three actions are read in a hurry

void check_alert(const CheckedRow& row, const AlertRow& alert, const Facts& facts) {
  row.need(alert.alert.text.starts_with("alert."), "value.disagrees", "/alert", "a name that starts with alert");
  row.need(!alert.meanwhile.empty() && alert.meanwhile.size() <= meanwhile_most, "value.out_of_range", "/meanwhile", "one to three things to do meanwhile");
  for (std::size_t i = 0; i < alert.stop.size(); ++i) {
    row.need(facts.item(alert.stop[i]) != nullptr, "item.unknown", "/stop" + wire::pointer_step(i), "an item of the list");
  }
  for (std::size_t i = 0; i < alert.tell_staff.size(); ++i) {
    const model::Item* item = facts.item(alert.tell_staff[i]);
    row.need(item != nullptr && item->value == model::ValueKind::answer, "item.unknown", "/tell_staff" + wire::pointer_step(i), "an item with an answer");
  }
  const auto sign = alert.sign.value_or(std::vector<model::ItemId>{});
  for (std::size_t i = 0; i < sign.size(); ++i) {
    row.need(facts.item(sign[i]) != nullptr, "item.unknown", "/sign" + wire::pointer_step(i), "an item of the list");
  }
  for (std::size_t i = 0; i < alert.opens.size(); ++i) {
    row.need(facts.has_concern(alert.opens[i]), "params.unknown_word", "/opens" + wire::pointer_step(i), "a concern of the list");
  }
  for (std::size_t i = 0; i < alert.asked_in.size(); ++i) {
    const bool known = std::any_of(facts.sequences.begin(), facts.sequences.end(),
                                   [&](const model::Sequence& one) { return one.complaint == alert.asked_in[i]; });
    row.need(known, "params.unknown_word", "/asked_in" + wire::pointer_step(i), "a complaint that has a sequence");
  }
  check_sources(row, alert.sources, facts);
}

}  // namespace

void check_alerts(const Facts& facts, Faults& faults) {
  check_once(facts.alerts, "alerts", "/alert", [](const AlertRow& one) -> const std::string& { return one.alert.text; }, faults);
  for (std::size_t i = 0; i < facts.alerts.size(); ++i) {
    check_alert({row_path("alerts", i), facts.alerts[i].alert.text, faults}, facts.alerts[i], facts);
  }
}

}  // namespace limbledger::reference
