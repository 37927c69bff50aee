// A side that somebody named (the complaint, the impression, a plan item) and whatever was found out of the ordinary on the other side
// alone. Asked about, never settled: C10.
#pragma once

#include "core/interpret/alerts/alerts.hpp"
#include "core/interpret/statement.hpp"
#include "core/interpret/view.hpp"

#include <vector>

namespace limbledger::interpret {

// Beside a danger that stands on the other side (`flags`) an impression or a plan is asked about unless a sign found on the named side
// explains it. `complaint_asked`: that the signs of the other knee stand against the complaint is asked already.
[[nodiscard]] std::vector<Contradiction> named_side_contradictions(const View& view, const std::vector<JudgedFlag>& flags, bool complaint_asked);

}  // namespace limbledger::interpret
