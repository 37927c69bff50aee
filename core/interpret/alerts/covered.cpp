#include "core/interpret/alerts/covered.hpp"

#include "core/interpret/rules/rule.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

[[nodiscard]] bool asks_in(const reference::AlertRow& row, const model::Word& complaint) {
  return std::find(row.asked_in.begin(), row.asked_in.end(), complaint) != row.asked_in.end();
}

[[nodiscard]] const model::Word* part_of(const reference::Edition& edition, const model::Word& complaint) {
  const model::Sequence* sequence = edition.sequence(complaint);
  return sequence != nullptr && sequence->part ? &*sequence->part : nullptr;
}

}  // namespace

Covered covered(const reference::Edition& edition, const model::Word& complaint) {
  Covered here;
  if (const model::Word* part = part_of(edition, complaint)) {
    const auto rules = all_rules();
    here.rule = std::any_of(rules.begin(), rules.end(), [&](const Rule& one) { return one.rule.ends_with("_" + part->text); });
  }
  const auto alerts = edition.alerts();
  here.dangers = std::any_of(alerts.begin(), alerts.end(), [&](const reference::AlertRow& row) { return asks_in(row, complaint); });
  return here;
}

bool belongs_to(const reference::Edition& edition, const reference::AlertRow& row, const model::Word& complaint) {
  const model::Word* part = part_of(edition, complaint);
  if (!row.asked_in.empty() || part == nullptr) {
    return part == nullptr || asks_in(row, complaint);
  }
  const auto in_part = [&](const model::ItemId& item) { return item.text.starts_with(part->text + "."); };
  const std::vector<model::ItemId> sign = row.sign.value_or(std::vector<model::ItemId>{});
  return (row.stop.empty() && sign.empty()) || std::any_of(row.stop.begin(), row.stop.end(), in_part) || std::any_of(sign.begin(), sign.end(), in_part);
}

}  // namespace limbledger::interpret
