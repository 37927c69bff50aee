// One pulse of a foot that is not felt, and the other is full.
#pragma once

#include "core/interpret/alerts/answers.hpp"

#include <cstdint>
#include <string_view>

namespace limbledger::interpret {

// Which of the two is lost while the other is full. Some healthy people lack the one on the back of the foot (2 to 3 in 100 or more: decision rules
// page, section 24, from memory); of the one behind the ankle that is not said.
enum class LostAlone : std::uint8_t { none, dorsal, tibial };
[[nodiscard]] LostAlone pulse_lost_alone(const Answers& answers, model::Side side);
// That it is lost is no danger by itself: the artery is listened for, first of what the danger asks (the same, example 11). The question, or none where a
// Doppler was used.
[[nodiscard]] std::string_view asks_for_doppler(const Answers& answers, model::Side side, LostAlone lost, Clue& clue);

}  // namespace limbledger::interpret
