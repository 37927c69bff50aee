// What was answered of the blood of one foot: pulses, cold, colour and how fast it fills, beside the other foot; whether it fails, feels less or was
// lost within the exam. Sources: red flags page, section 5; decision rules page, sections 7 and 24; what is our own rule says so where it stands.
#pragma once

#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/vessels/one_pulse.hpp"

#include <array>

namespace limbledger::interpret {

inline constexpr ItemKey doppler_heard = "vessel.doppler_arterial_audible";

// Cold, of an ill colour, slow to fill; here and on the other foot.
struct Feet {
  std::array<Clue, 3> here, there;
};

// What was answered of this foot's blood, each worked out once.
struct FootBlood {
  const Answers& answers;
  model::Side side;
  Clue dorsal{}, tibial{};  // pulses that are not felt
  bool one_lost = false;
  Clue felt_both{};
  Clue none_below{};   // nothing flows below it
  bool gross = false;  // cold and without its pulses: nobody waits for the day it happened
  Clue hurt{};
  Clue others_felt{};  // a pulse that is lost here, and felt in the other foot
  Feet feet{};
  bool of_one_side = false;
  Clue sudden{};  // told to have turned cold or pale within two weeks: the sign and the time in one answer
  Clue unheard{};
  Clue fails{}, poor{};
  Clue dorsal_gone{}, tibial_gone{}, above_gone{}, gone{};  // felt or heard before at this exam
  Clue cut_off{};                             // no flow whatever the other pulses are: that of the groin, or one that was felt before
  bool has_blood = false;
  LostAlone lost = LostAlone::none;
  bool long_pain = false;
  Clue told_rest_pain{}, rest_pain{};  // told of the foot; and severe pain of the leg that stands for it
  Clue toes{};                         // that fail
};
[[nodiscard]] FootBlood blood_of_foot(const Answers& answers, model::Side side);
// Pain that stands for it, and toes that fail: of a foot that may lack blood.
void look_closer(FootBlood& foot);

[[nodiscard]] bool pulses_full(const Answers& answers, model::Side side);
[[nodiscard]] bool cold_alike(const Answers& answers, model::Side side, const Feet& feet);
[[nodiscard]] bool lacks_like_the_other(const Answers& answers, const Feet& feet, bool pulse_lost);
[[nodiscard]] Clue poor_flow(const Answers& answers, model::Side side, const Clue& poor, const Clue& fails);
[[nodiscard]] Clue gone_between(const Answers& answers, std::string_view item, model::Side side);

}  // namespace limbledger::interpret
