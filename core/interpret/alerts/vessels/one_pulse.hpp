// One pulse of a foot that is not felt, and the other is full.
#pragma once

#include "core/interpret/alerts/answers.hpp"

namespace limbledger::interpret {

// The pulse on the back of the foot is lost and the one behind its ankle is full. Some healthy people lack the first (2 to 3 in 100 or more: decision
// rules page, section 24, from memory).
[[nodiscard]] bool dorsal_pulse_lost_alone(const Answers& answers, model::Side side);
// That it is lost is no danger by itself: the artery is listened for, first of what the danger asks (the same, example 11). Whether a Doppler is still
// to be asked for.
[[nodiscard]] bool asks_for_doppler(const Answers& answers, model::Side side, Clue& clue);

}  // namespace limbledger::interpret
