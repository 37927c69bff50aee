#include "core/interpret/missing.hpp"

#include "core/interpret/body.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

// Of the minimum set at this age; where the age is not known, what a child would need is asked for too.
[[nodiscard]] bool needed(const View& view, const model::SequenceStep& step) {
  if (!step.minimum_under) {
    return step.minimum.value_or(false);
  }
  const auto age = view.age_on_exam();
  return !age || age->low < step.minimum_under->steps;
}

[[nodiscard]] bool filled(const View& view, const model::ItemId& item, model::Side side) {
  const Findings findings = view.at(item.text, side);
  return std::any_of(findings.begin(), findings.end(), [](const model::Finding* finding) { return !awaits_examiner(*finding); });
}

[[nodiscard]] bool has_record(const View& view, const model::Item& item, model::Side side) {
  const auto& instead = item.instead;
  return filled(view, item.item, side) ||
         (instead && std::any_of(instead->begin(), instead->end(), [&](const model::Instead& one) { return filled(view, one.item, side); }));
}

}  // namespace

bool awaits_examiner(const model::Finding& finding) {
  return finding.origin == model::Origin::carried_over || finding.origin == model::Origin::self_reported;
}

std::vector<MissingItem> missing_items(const View& view) {
  const model::Sequence* sequence = view.edition().sequence(view.exam().complaint);
  // Stopped for transfer: what was not done is no gap.
  return sequence == nullptr || view.exam().transfer ? std::vector<MissingItem>{} : missing_items(view, *sequence);
}

std::vector<MissingItem> missing_items(const View& view, const model::Sequence& sequence) {
  std::vector<MissingItem> missing;
  for (const model::SequenceStep& step : sequence.steps) {
    const model::Item* item = view.edition().item(step.item);
    if (item == nullptr || !needed(view, step)) {
      continue;
    }
    const bool midline = std::find(item->sides.begin(), item->sides.end(), model::Side::midline) != item->sides.end();
    // An item that can be said of the person as a whole needs no sides.
    const std::vector<model::Side> sides = midline ? std::vector{model::Side::midline} : item->sides;
    for (const model::Side side : sides) {
      const bool on_a_side = midline && (has_record(view, *item, model::Side::left) || has_record(view, *item, model::Side::right));
      // What this body does not have is no gap.
      const bool applies = view.bodies().not_applicable(*item, side) == nullptr;
      if (applies && !on_a_side && !has_record(view, *item, side)) {
        missing.push_back({item->item, side});
      }
    }
  }
  return missing;
}

}  // namespace limbledger::interpret
