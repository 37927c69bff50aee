#include "core/service/methods/exam/told.hpp"

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

}  // namespace limbledger::service
