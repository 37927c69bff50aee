// Girths and the knee-to-wall distance against the other side and against an earlier exam. Girths are compared at one level and
// landmark alone (HC-009). Believed from 6 mm on at the calf (TUNC2007), from 10 mm elsewhere (a working figure from memory, which
// raises nothing); from 30 mm on the calf's side difference is an item of the clot rule (WELLS1997). The distance to the wall: 15 mm
// between sides (CHISHOLM2012; up to 30 in sound people, HOCH2011), 19 mm between visits (POWDEN2015).
#pragma once

#include "core/interpret/measure/lines.hpp"

#include <span>
#include <vector>

namespace limbledger::interpret {

[[nodiscard]] std::vector<Judged> judge_amount_sides(const View& view, const std::vector<Reading>& amounts);
[[nodiscard]] std::vector<Judged> judge_amount_past(const View& view, const std::vector<Reading>& amounts, std::span<const model::Exam> earlier);

}  // namespace limbledger::interpret
