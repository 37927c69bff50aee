// An observation against its item: what is refused, what is asked back, and the observation as it will be recorded (the
// value summed from its readings, angles on the axis, an arc as its two ends). Limits, sides, scales and choices come from
// the item; nothing is clamped, guessed or defaulted. Source: contract, sections 3 to 5 and 8.
#pragma once

#include "core/model/item.hpp"
#include "core/wire/fault.hpp"

#include <functional>
#include <span>
#include <string>
#include <vector>

namespace limbledger::model {

// What the check needs to look up; both answer null for a name they do not know.
struct CatalogueView {
  std::function<const Item*(const ItemId&)> item;
  std::function<const Scale*(const ScaleId&)> scale;
  std::function<std::string(const ItemId&)> nearest_item;  // a known name near a misspelt one, or empty
};

struct Checked {
  std::vector<Observation> observations;  // one, or the two ends of an arc; empty when refused
  std::vector<wire::Fault> faults;        // refused or asked back; asked-back codes listed in `confirmed` are left out
};

// Paths start with `path`; `confirmed` holds codes such as "value.unusual" that a person has answered for.
[[nodiscard]] Checked check(const Observation& observation, const CatalogueView& catalogue, std::span<const std::string> confirmed, const std::string& path);

}  // namespace limbledger::model
