// What threatens the limb within hours: open break, dislocation, compartment, ischaemia.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

#include <algorithm>
#include <optional>

namespace limbledger::interpret {

using model::Side;

namespace {

constexpr std::string_view dorsal_pulse = "vessel.pulse_dorsalis_pedis";
constexpr std::string_view tibial_pulse = "vessel.pulse_posterior_tibial";

// One structure gives way by 6 mm or more, or at all with the knee straight (convention, after the bands of IKDC2000).
[[nodiscard]] Clue loose(const Answers& answers, Side side, std::initializer_list<std::string_view> items, std::string_view straight = {}) {
  Clue clue = straight.empty() ? Clue{} : answers.graded(straight, side, {"1", "2", "3"});
  for (const std::string_view item : items) {
    clue = led_by(answers.graded(item, side, {"2", "3"}), {clue});
    clue = unasked(clue);
  }
  return clue;
}

[[nodiscard]] Clue two_structures_loose(const Answers& answers, Side side) {
  const Clue front = loose(answers, side, {"knee.lachman", "knee.lachman_prone", "knee.lachman_dropped_leg", "knee.anterior_drawer"});
  const Clue back = led_by(loose(answers, side, {"knee.posterior_drawer"}), {answers.positive("knee.posterior_sag", side)});
  const Clue inner = loose(answers, side, {"knee.valgus_30"}, "knee.valgus_0");
  const Clue outer = loose(answers, side, {"knee.varus_30"}, "knee.varus_0");
  Clue out = either({every({front, back}), every({front, inner}), every({front, outer}), every({back, inner}), every({back, outer}), every({inner, outer})});
  if (out.value == Tri::undetermined) {
    out.because.clear();  // one loose ligament alone points to no dislocation, and nobody is asked to test the others
  }
  return unasked(out);
}

// Exactly, not rounded: ankle pressure below 0.90 of the higher arm pressure.
[[nodiscard]] Tri pressure_low(const View& view, Side side) {
  const auto highest = [&](std::string_view item, Side on) -> std::optional<std::int64_t> {
    std::optional<std::int64_t> found;
    for (const model::Finding* finding : view.at(item, on)) {
      const auto* pressure = std::get_if<model::Pressure>(&finding->value);
      if (pressure != nullptr && settles(*finding)) {
        const std::int64_t read = pressure->mm_hg && !pressure->signal ? pressure->mm_hg->steps : 0;
        found = std::max(found.value_or(0), read);
      }
    }
    return found;
  };
  const auto ankle = highest("vessel.pressure_posterior_tibial", side);
  const auto left = highest("vessel.pressure_arm", Side::left);
  const auto right = highest("vessel.pressure_arm", Side::right);
  const std::int64_t arm = std::max(left.value_or(0), right.value_or(0));
  if (!ankle || arm == 0) {
    return Tri::undetermined;
  }
  return tri(*ankle * 100 < arm * abi_hundredths);
}

[[nodiscard]] Clue weak_pulse(const Answers& answers, std::string_view item, Side side) {
  const Clue weak = answers.graded(item, side, {"0", "1"});
  const Clue other_weak = answers.graded(item, other_side(side), {"0", "1"});
  return pulse_absent(answers, item, side).is_yes() || !other_weak.is_yes() ? weak : fact(Tri::no);
}

}  // namespace

Raised open_fracture(const Answers& answers, Side side) {
  const Clue broken = either({answers.yes("knee.look_deformity", side), bone_tender(answers, side),
                              every({circumstance(hurt_lately(answers)), cannot_walk(answers)})});
  Raised raised;
  const Clue at_knee = every({answers.yes("knee.look_open_wound", side), broken});
  // Each says by itself what the two above say together: bone that is seen, but for an old ulcer's; a wound near a possible break.
  const Clue bone = every({answers.yes("skin.bone_visible", side), fact(not_(tri(injured(answers).is_no())))});
  const Clue near_break = answers.yes("skin.wound_over_bone", side);
  raised.clue = led_by(at_knee, {bone, near_break});
  if (!raised.clue.is_yes() && answers.yes("knee.look_open_wound", side).value != Tri::yes) {
    raised.clue.because.clear();  // tender bone alone points to no wound
  }
  raised.what = at_knee.is_yes() ? "raised" : (bone.is_yes() ? "bone_seen" : (near_break.is_yes() ? "near_break" : "raised"));
  raised.urgency = AlertClass::now;
  raised.interrupts = true;
  return raised;
}

Raised dislocated_kneecap(const Answers& answers, Side side) {
  const Clue hurt = circumstance(hurt_lately(answers));
  const Clue out_now = every({hurt, answers.chosen("knee.look_patella_height", side, {"laterally_displaced"})});
  const Clue went_back = every({hurt, answers.yes("history.patella_dislocated", side)});
  Raised raised;
  raised.clue = either({out_now, went_back});
  raised.interrupts = out_now.is_yes();
  raised.what = out_now.is_yes() ? "out_now" : "raised";
  return raised;
}

Raised dislocated_knee(const Answers& answers, Side side) {
  const Clue hurt = circumstance(hurt_lately(answers));
  const bool kneecap_out = answers.chosen("knee.look_patella_height", side, {"laterally_displaced"}).is_yes();
  const Clue deformed = kneecap_out ? fact(Tri::no) : every({hurt, answers.yes("knee.look_deformity", side)});
  const Clue went_back = every({hurt, answers.yes("history.knee_dislocated", side)});
  const Clue lax = every({hurt, two_structures_loose(answers, side)});
  const Clue marked = either({answers.yes("knee.bruising", side), answers.chosen("knee.look_swelling_spread", side, {"whole_knee", "whole_limb"}),
                              answers.graded("knee.effusion_stroke", side, {"2+", "3+"})});
  const Clue bent_back = answers.chosen("history.mechanism", Side::midline, {"hyperextension"});
  Raised raised;
  raised.clue = either({deformed, went_back, lax, every({hurt, circumstance(bent_back), bent_back.is_yes() ? marked : unasked(marked)})});
  if (!bent_back.is_yes() && raised.clue.value == Tri::undetermined) {
    raised.clue.because = either({deformed, went_back, lax}).because;  // a bruise alone points to no dislocation
  }
  // Only equal pulses and a pressure ratio of 0.90 or more leave time; what was not looked at leaves none.
  const bool pulses_good = weak_pulse(answers, dorsal_pulse, side).is_no() && weak_pulse(answers, tibial_pulse, side).is_no();
  const bool cold = answers.yes("vessel.foot_cold", side).is_yes();
  raised.urgency = pulses_good && !cold && pressure_low(answers.view(), side) == Tri::no ? AlertClass::same_day : AlertClass::now;
  raised.interrupts = raised.urgency == AlertClass::now;
  const bool no_pulse = pulse_absent(answers, dorsal_pulse, side).is_yes() || pulse_absent(answers, tibial_pulse, side).is_yes();
  raised.what = no_pulse ? "no_pulse" : (deformed.is_yes() ? "deformed" : (lax.is_yes() ? "loose" : "raised"));
  return raised;
}

// Pain beyond what the hurt explains, or pain on stretch, in a limb at risk; both together without. The pulse never lowers it.
// Stretch pain alone in a limb not at risk is not raised; where nobody asked, that question comes first (C3).
Raised compartment(const Answers& answers, Side side) {
  const Clue beyond = answers.yes("history.pain_out_of_proportion", side);
  const Clue stretch = answers.yes("knee.stretch_pain_calf", side);
  const Clue risk =
      led_by(answers.yes("history.injury_severe_or_crush"),
             {answers.chosen("history.film_result", side, {"knee_fracture_seen", "shaft_fracture_seen"}), answers.yes("history.blood_thinners"),
              answers.chosen("history.compartment_causes", side, {"cause_shin_broken", "cause_crush", "cause_long_lying", "cause_tight_cast",
                                                                  "cause_flow_back", "cause_operation", "cause_bleed"}),
              answers.yes("history.bleeding_disorder"), answers.yes("leg.tense_compartment", side)});
  const Clue hidden = negate(answers.yes("general.answers_reliable"));
  Raised raised;
  raised.urgency = AlertClass::now;
  raised.interrupts = true;
  const Clue both = every({beyond, stretch});
  if (both.is_yes()) {
    raised.clue = both;
  } else if (risk.is_yes()) {
    // Who cannot tell of pain is never a no.
    raised.clue = either({beyond, stretch, hidden.is_yes() ? unasked(Clue{}) : fact(Tri::no)});
    raised.clue.because.add(risk.because);
  } else if (beyond.is_yes()) {
    raised.clue = risk.is_no() ? both : beyond;
  } else if (stretch.is_yes()) {
    raised.clue = risk.is_no() ? both : every({stretch, risk});
    raised.ask_first = raised.clue.value == Tri::undetermined;
  } else {
    raised.clue = either({beyond, every({stretch, circumstance(risk)})});
  }
  return raised;
}

// A perfusion sign and a symptom, within two weeks. Pain and tingling cannot be required where feeling is reduced: that is itself
// the symptom, and one sign is enough.
Raised limb_ischaemia(const Answers& answers, Side side) {
  const Clue dorsal = pulse_absent(answers, dorsal_pulse, side);
  const Clue tibial = pulse_absent(answers, tibial_pulse, side);
  // Cold and without both pulses: nobody waits for the day it happened.
  const bool gross = dorsal.is_yes() && tibial.is_yes() && answers.yes("vessel.foot_cold", side).is_yes();
  const Clue hurt = gross ? hurt_lately(answers) : injured(answers);
  const Clue others_felt = either({every({dorsal, bare_no(negate(unasked(pulse_absent(answers, dorsal_pulse, other_side(side)))))}),
                                   every({tibial, bare_no(negate(unasked(pulse_absent(answers, tibial_pulse, other_side(side)))))})});
  const Clue felt_both = every({negate(dorsal), negate(tibial)});
  const Clue refill = felt_both.is_yes() ? fact(Tri::no) : unasked(answers.yes("vessel.capillary_refill_slow", side));
  const Clue perfusion = either({answers.yes("vessel.foot_cold", side), every({dorsal, tibial}), every({circumstance(hurt), others_felt}), refill});
  const Clue symptom = either({circumstance(hurt), answers.yes("nerve.sensation_foot_reduced", side), answers.yes("nerve.foot_drop", side),
                               negate(answers.yes("ankle.movement", side)), answers.yes("history.pain_out_of_proportion", side)});
  Raised raised;
  raised.clue = every({perfusion, symptom, of_short_history(answers)});
  if (raised.clue.value == Tri::undetermined && !perfusion.is_yes()) {
    raised.clue.because = perfusion.because;
  }
  raised.urgency = AlertClass::now;
  raised.interrupts = true;
  raised.what = dorsal.is_yes() || tibial.is_yes() ? "no_pulse" : "raised";
  return raised;
}

}  // namespace limbledger::interpret
