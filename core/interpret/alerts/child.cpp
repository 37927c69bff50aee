// Children: the slipped hip behind a painful knee, the limp that nothing explains, Perthes disease, and protection.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

namespace limbledger::interpret {

using model::Side;

Raised hip_slip(const Answers& answers, Side side) {
  const Clue lost = hip_rotation_lost(answers, side);
  const Clue rolls = answers.positive("hip.log_roll", side);
  const Clue gait = answers.chosen("gait.pattern", side, {"turned_out"});
  Raised raised;
  raised.applies = answers.aged(slip_from, slip_to);
  raised.clue = led_by(lost, {gait});
  if (raised.clue.value == Tri::undetermined && rolls.is_yes()) {
    raised.clue.because.add(rolls.because);
  }
  raised.what = lost.is_yes() ? "raised" : "turned_out";
  if (raised.clue.is_yes() && cannot_walk(answers).is_yes()) {
    raised.urgency = AlertClass::now;
    raised.interrupts = true;
    raised.what = lost.is_yes() ? "unstable" : "unstable_turned_out";
  }
  return raised;
}

Raised limping_child(const Answers& answers, Side) {
  const auto both = [&](auto&& of) { return either({of(Side::left), of(Side::right)}); };
  const Clue pain = both([&](Side side) { return severe_pain_on_passive(answers, side); });
  const Clue bone = both([&](Side side) { return bone_tender(answers, side); });
  const Clue sign = either({fever(answers, fever_child_tenths), answers.yes("history.unwell"), cannot_stand(answers), answers.yes("history.night_pain"),
                            answers.yes("history.weight_loss"), over_two_weeks(answers), unasked(bone), unasked(pain)});
  Raised raised;
  raised.applies = answers.child();
  raised.clue = every({circumstance(negate(injured(answers))), limps(answers), sign});
  if (raised.clue.value == Tri::undetermined && !limps(answers).is_yes()) {
    raised.clue.because.clear();
  }
  // What is worst to miss is named first while either hip leaves it open.
  const auto slip_open = [&](Side side) {
    const Raised slip = hip_slip(answers, side);
    return slip.applies != Tri::no && slip.clue.value == Tri::undetermined;
  };
  raised.what = raised.clue.is_yes() && (slip_open(Side::left) || slip_open(Side::right)) ? "slip_open" : "raised";
  return raised;
}

Raised perthes(const Answers& answers, Side side) {
  Raised raised;
  raised.applies = answers.aged(perthes_from, perthes_to);
  const Clue lost = hip_rotation_lost(answers, side);
  // A fever or legs that do not carry name another danger; they say nothing about this one.
  raised.clue = every({bare_no(over_two_weeks(answers)), lost, bare_no(negate(fever(answers, fever_child_tenths))), bare_no(negate(cannot_walk(answers)))});
  raised.urgency = AlertClass::two_weeks;
  if (!lost.is_yes()) {
    raised.clue.because.clear();
  }
  return raised;
}

// Who cannot walk yet does not break or bruise by walking. Pointers only; nobody states a cause. Under one year stands for not yet
// walking (convention).
Raised inflicted_injury(const Answers& answers, Side) {
  const auto hurt_at = [&](Side side) {
    return either({bone_tender(answers, side), answers.yes("knee.look_deformity", side), answers.yes("knee.bruising", side),
                   answers.chosen("history.film_result", side, {"knee_fracture_seen", "shaft_fracture_seen", "hip_fracture_seen"}),
                   answers.chosen("knee.look_swelling_spread", side, {"whole_limb"})});
  };
  const Clue hurt = unasked(either({hurt_at(Side::left), hurt_at(Side::right)}));
  Raised raised;
  raised.applies = answers.aged(0, 17);
  raised.clue = either({unasked(answers.yes("history.unexplained_bruises")), every({fact(answers.aged(0, 0)), hurt})});
  if (!raised.clue.is_yes()) {
    raised.clue.because.clear();
  }
  return raised;
}

}  // namespace limbledger::interpret
