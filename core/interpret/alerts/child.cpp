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
  const Clue still = both([&](Side side) { return leg_not_moved(answers, side); });
  const Clue limping = answers.aged(0, 0) == Tri::yes ? led_by(still, {limps(answers)}) : led_by(limps(answers), {still});
  raised.clue = every({circumstance(negate(injured(answers))), limping, sign});
  if (raised.clue.value == Tri::undetermined && !limping.is_yes()) {
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
// walking (convention). What was told or seen of the story counts at any age: a partner and a dependent adult are protected as well.
Raised inflicted_injury(const Answers& answers, Side) {
  const auto hurt_at = [&](Side side) {
    return either({bone_tender(answers, side), answers.yes("knee.look_deformity", side), answers.yes("knee.bruising", side),
                   foot_deformed(answers, side), answers.yes("skin.bruises", side),
                   answers.chosen("history.film_result", side, {"knee_fracture_seen", "shaft_fracture_seen", "hip_fracture_seen"}),
                   answers.chosen("knee.look_swelling_spread", side, {"whole_limb"})});
  };
  const Clue hurt = unasked(either({hurt_at(Side::left), hurt_at(Side::right)}));
  const Clue story = answers.chosen("history.injury_story", Side::midline, {"story_none", "story_changes", "story_not_fitting", "story_beyond_child",
                                                                            "story_late", "story_told", "story_old_breaks"});
  const Clue marks = answers.chosen("skin.bruise_pattern", Side::midline, {"mark_shape_of_object", "mark_bite", "mark_burn_line", "mark_burn_object",
                                                                           "mark_soles_buttocks_ears", "mark_different_ages", "mark_child_not_moving"});
  const Clue told = unasked(either({story, marks, answers.yes("history.hurt_or_afraid"), answers.yes("history.neglect_concern")}));
  const Clue not_walking = led_by(fact(answers.aged(0, 0)), {answers.chosen("history.moves_about", Side::midline, {"moves_not_yet", "moves_rolls"})});
  const Tri young = answers.aged(0, 17);
  Raised raised;
  raised.applies = told.is_yes() ? Tri::yes : young;
  const Clue of_child = either({unasked(answers.yes("history.unexplained_bruises")), every({unasked(not_walking), hurt})});
  raised.clue = led_by(young == Tri::no ? fact(Tri::no) : of_child, {told});
  if (!raised.clue.is_yes()) {
    raised.clue.because.clear();
  }
  return raised;
}

}  // namespace limbledger::interpret
