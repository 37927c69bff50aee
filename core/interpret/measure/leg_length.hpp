// Leg length by tape (true, apparent) and by blocks. Over 5 mm a difference is possible, from 20 mm on it is likely to matter; one
// reading a leg weakens it; a hip or knee that does not come straight or to the middle makes it worthless; the tape names the wrong
// leg too often to settle which leg is shorter, so blocks are named. Blocks: spoken of from 10 mm, likely to matter from 20.
// Sources: decision rules page, section 24; rom page, conflict 16 (BADII2014, KNUTSON2005, BEATTIE1990, SABHARWAL2008); HC-007.
#pragma once

#include "core/interpret/measure/lines.hpp"

#include <vector>

namespace limbledger::interpret {

[[nodiscard]] std::vector<Judged> judge_leg_length(const View& view, const std::vector<Reading>& amounts, const std::vector<Reading>& motions);
// Tape and blocks that name different legs, each by more than its own limit.
[[nodiscard]] std::vector<Contradiction> leg_length_contradictions(const std::vector<Reading>& amounts);

}  // namespace limbledger::interpret
