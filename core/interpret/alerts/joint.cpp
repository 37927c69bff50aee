// Infection of joint and bone, a joint full of blood, a joint swollen for weeks. Fever is never required of an adult's joint, and
// its absence says nothing; a cause that was found does not close the question.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

namespace limbledger::interpret {

using model::Side;
using model::WhyNot;

namespace {

[[nodiscard]] Clue ill(const Answers& answers) {
  return every({answers.yes("history.unwell"), either({fever(answers, fever_tenths), answers.count_at_least("general.pulse_rate", pulse_sepsis_over + 1),
                                                       negate(answers.warm_at_least(temperature_low_tenths))})});
}

void make_now_if_ill(const Answers& answers, Raised& raised) {
  if (raised.clue.is_yes() && ill(answers).is_yes()) {
    raised.urgency = AlertClass::now;
    raised.interrupts = true;
    raised.what = "ill";
  }
}

}  // namespace

Raised infected_joint_adult(const Answers& answers, Side side) {
  const Clue hurt = injured(answers);
  const Clue lowered = either({answers.yes("history.immune_suppressed"), answers.yes("history.joint_injection_or_operation_recent")});
  // After an injury the joint is swollen anyway: something more must point to infection.
  const Clue beyond_injury = hurt.is_yes() ? either({fever(answers, fever_tenths), answers.yes("history.unwell"), lowered}) : fact(Tri::yes);
  const Clue of_own = every({either({hot(answers, side), swollen(answers, side)}), tender(answers, side), restricted(answers, side),
                             of_short_history(answers), beyond_injury});
  const Clue heat = either({hot(answers, side), every({either({swollen(answers, side), fever(answers, fever_tenths)}), of_short_history(answers)})});
  const Clue replaced = answers.yes("body.knee_replaced", side);
  const Clue of_metal = every({replaced, heat});
  Raised raised;
  raised.applies = not_(answers.child());
  raised.clue = either({of_own, replaced.is_yes() ? of_metal : circumstance(of_metal)});
  if (raised.clue.value == Tri::undetermined && !hot(answers, side).is_yes() && !swollen(answers, side).is_yes() && !replaced.is_yes()) {
    raised.clue.because.clear();  // a tender or stiff joint that is neither hot nor swollen points to much else
  }
  raised.what = replaced.is_yes() ? "replaced" : "raised";
  make_now_if_ill(answers, raised);
  return raised;
}

Raised infected_joint_child(const Answers& answers, Side side) {
  const Clue stopped = answers.stopped("knee.flexion_passive", side, {WhyNot::pain});
  // A child that does not limp may still not bear the knee to be moved: that is not answered until somebody moved it.
  // Under one year nobody limps: the leg that is not moved is asked for.
  const bool infant = answers.aged(0, 0) == Tri::yes;
  const Clue still = leg_not_moved(answers, side);
  const Clue sore = severe_pain_on_passive(answers, side);
  const Clue irritable = infant ? led_by(still, {limps(answers), stopped, cannot_walk(answers), sore})
                                : either({limps(answers), led_by(stopped, {cannot_walk(answers), sore, still})});
  const Clue feverish = fever(answers, fever_child_tenths);
  const Clue general = either({feverish, answers.yes("history.unwell")});
  const bool hurt = injured(answers).is_yes();
  const Clue severe = hurt ? general : either({general, cannot_stand(answers), unasked(severe_pain_on_passive(answers, side))});
  Raised raised;
  const bool still_infant = infant && still.is_yes();
  const auto months = answers.view().age_months_on_exam();
  const bool newborn = months && months->high < infant_joint_months;
  raised.applies = answers.child();
  const Clue joined = every({irritable, severe});
  raised.clue = still_infant ? led_by(joined, {still}) : joined;
  make_now_if_ill(answers, raised);
  if (raised.clue.is_yes() && still.is_yes() && raised.what != "ill") {
    raised.what = feverish.is_yes() ? "not_moved_fever" : "not_moved";
  }
  const bool same_day = still_infant && !newborn && !joined.is_yes();
  if (raised.clue.is_yes() && ((infant && !same_day) || (still.is_yes() && feverish.is_yes()))) {
    raised.urgency = AlertClass::now;
    raised.interrupts = true;
    raised.what = raised.what == "not_moved" ? "not_moved_now" : raised.what;
  }
  return raised;
}

Raised infected_bone(const Answers& answers, Side side) {
  const Clue bone = bone_tender(answers, side);
  const Clue no_injury = circumstance(negate(injured(answers)));
  const Clue feverish = fever(answers, fever_tenths);
  const Clue lowered = led_by(answers.yes("history.immune_suppressed"), {answers.yes("history.sickle_cell")});
  const Clue local = answers.chosen("knee.look_swelling_spread", side, {"local", "whole_limb"});
  // A tender growth plate of the shin counts with fever only: at that age it is common and harmless without.
  const Clue plate = every({answers.yes("knee.tibial_tubercle_tender", side), feverish});
  const Clue in_child = either({every({bone, either({feverish, cannot_stand(answers), hot(answers, side), local, lowered})}), plate});
  const Clue in_adult = every({bone, either({feverish, every({hot(answers, side), lowered})})});
  Raised raised;
  raised.clue = every({no_injury, answers.child() == Tri::no ? in_adult : in_child});
  if (raised.clue.value == Tri::undetermined && !bone.is_yes()) {
    raised.clue.because.clear();
  }
  return raised;
}

Raised bleeding_joint(const Answers& answers, Side side) {
  const Clue thin = either({answers.yes("history.blood_thinners"), answers.yes("history.bleeding_disorder")});
  Raised raised;
  raised.clue = every({answers.chosen("history.swelling_onset", side, {"within_2h", "within_24h"}), thin});
  if (raised.clue.value == Tri::undetermined && thin.is_yes() && !swollen(answers, side).is_yes()) {
    raised.clue.because.clear();
  }
  return raised;
}

// Tuberculosis, inflammatory and juvenile arthritis: a referral, and no steroid into the joint.
Raised joint_over_two_weeks(const Answers& answers, Side side) {
  const Clue sign = either({hot(answers, side), answers.count_at_least("history.morning_stiffness_minutes", stiffness_minutes + 1), fact(answers.child())});
  Raised raised;
  raised.clue = every({circumstance(negate(injured(answers))), swollen(answers, side), bare_no(over_two_weeks(answers)), sign});
  raised.urgency = AlertClass::two_weeks;
  if (raised.clue.value == Tri::undetermined && !swollen(answers, side).is_yes()) {
    raised.clue.because.clear();
  }
  return raised;
}

}  // namespace limbledger::interpret
