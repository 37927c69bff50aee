#include "core/reference/facts.hpp"

#include <algorithm>

namespace limbledger::reference {

Mode mode_of(const model::Item& item) {
  const std::string& name = item.item.text;
  if (name.find("_active") != std::string::npos) {
    return Mode::active;
  }
  return name.find("_passive") != std::string::npos ? Mode::passive : Mode::unspecified;
}

bool speaks_of(const NormRow& row, const model::Item& item) {
  // A row of another position is of another quantity.
  const bool done_so = !row.position || !item.positions || std::find(item.positions->begin(), item.positions->end(), *row.position) != item.positions->end();
  if (row.items) {
    return done_so && std::find(row.items->begin(), row.items->end(), item.item) != row.items->end();
  }
  const bool same_motion = row.family == item.family && item.value == model::ValueKind::angle && (!item.toward || row.toward == item.toward);
  // A row that does not say how the motion was made is asked only where no row does.
  return done_so && same_motion && !row.described.value_or(false) && (row.mode == mode_of(item) || row.mode == Mode::unspecified);
}

std::vector<std::vector<const NormRow*>> norms_by_item(const std::vector<NormRow>& norms, const std::vector<model::Item>& items) {
  std::vector<std::vector<const NormRow*>> by_item(items.size());
  for (const NormRow& row : norms) {
    if (!row.preferred || row.described.value_or(false) || row.confidence == Sureness::low) {
      continue;
    }
    for (std::size_t i = 0; i < items.size(); ++i) {
      if (speaks_of(row, items[i])) {
        by_item[i].push_back(&row);
      }
    }
  }
  return by_item;
}

std::vector<std::vector<const ErrorRow*>> errors_by_item(const std::vector<ErrorRow>& errors, const std::vector<model::Item>& items) {
  const auto rank = [](const ErrorRow& row) { return row.item ? 0 : (row.region ? 1 : 2); };
  std::vector<std::vector<const ErrorRow*>> by_item(items.size());
  for (std::size_t i = 0; i < items.size(); ++i) {
    const model::Item& item = items[i];
    for (const ErrorRow& row : errors) {
      const bool unit = item.unit && item.unit->text == (row.unit ? row.unit->text : "deg");
      if (unit && row.mdc95 && !row.described.value_or(false) && (!row.item || *row.item == item.item) && (!row.region || *row.region == item.region)) {
        by_item[i].push_back(&row);
      }
    }
    std::sort(by_item[i].begin(), by_item[i].end(), [&](const ErrorRow* a, const ErrorRow* b) {
      return rank(*a) != rank(*b) ? rank(*a) < rank(*b) : a->row < b->row;
    });
  }
  return by_item;
}

}  // namespace limbledger::reference
