#include "core/service/methods/exam/told.hpp"

#include "core/interpret/alerts/alerts.hpp"

#include <algorithm>

namespace limbledger::service {

bool is_told(const reference::Edition& edition, const model::Item& item) {
  if (item.protected_.value_or(false)) {
    return false;
  }
  const bool by_nobodys_hand = !item.instruments && !item.positions;
  if (item.region.text == "history" || (item.region.text == "function" && by_nobodys_hand)) {
    return true;
  }
  // A thermometer is read at home, too.
  if (item.item.text == "general.temperature") {
    return true;
  }
  const auto rows = edition.alerts();
  return std::any_of(rows.begin(), rows.end(), [&](const reference::AlertRow& row) {
    return std::find(row.tell_staff.begin(), row.tell_staff.end(), item.item) != row.tell_staff.end();
  });
}

bool is_answered_there(const model::Finding& finding) { return finding.origin == model::Origin::self_reported && !finding.entered_by; }

bool called_staff(const reference::Edition& edition, const model::Finding& finding) {
  return is_answered_there(finding) && interpret::calls_staff(edition, finding.item, finding.value);
}

std::vector<model::ItemId> staff_calls(const reference::Edition& edition, std::span<const model::Finding> history) {
  std::vector<model::ItemId> items;
  for (const model::Finding& finding : history) {
    if (called_staff(edition, finding) && std::find(items.begin(), items.end(), finding.item) == items.end()) {
      items.push_back(finding.item);
    }
  }
  return items;
}

}  // namespace limbledger::service
