// Knees apart (bowed) and ankles apart (knock-kneed) of the person: set beside what was measured at the nearest age, where a row
// speaks of that age, with its source and span; else that none does (S03). Shown, never judged: populations differ, and how far two
// readings differ is not known. Millimetres. Figures: HESHMATIPOUR2014 (8 to 11 years), NIGERIA_TFA2013 (9, 15 and 29 months).
#pragma once

#include "core/interpret/measure/lines.hpp"

#include <vector>

namespace limbledger::interpret {

[[nodiscard]] std::vector<Judged> judge_apart(const View& view, const std::vector<Reading>& amounts);
// Both apart at once: one of the two was measured with the other held apart.
[[nodiscard]] std::vector<Contradiction> apart_contradictions(const std::vector<Reading>& amounts);

}  // namespace limbledger::interpret
