// The foot's colour after a press, and pitting. Colour: 4 s at the foot of a child older than 7 days (FLEMING2015). Of adults limits
// were printed for the finger alone (SCHRIGER1988: men 2 s, women 2.9 s, from 62 years 4.5 s, that age from memory); they are shown
// beside the toe and raise nothing by themselves. Colour that comes back in time leaves a poor supply and a tight compartment open. Pitting: its grade
// and depth (EDEMA_EBM; an edge belongs to the lower grade, our convention); on one leg alone it leads to the clot rule.
#pragma once

#include "core/interpret/measure/lines.hpp"

#include <cstdint>
#include <vector>

namespace limbledger::interpret {

[[nodiscard]] std::vector<Judged> judge_refill(const View& view, const std::vector<Reading>& amounts);
// The longest time, in thousandths of a second, that is not slow for whoever this may be; of who has no limit the longest of all.
[[nodiscard]] std::int64_t refill_limit(const View& view);
[[nodiscard]] std::vector<Judged> judge_pitting(const View& view);

}  // namespace limbledger::interpret
