// The person who is ill as a whole, whatever part is complained of: the page of an examiner of legs says nothing quiet over it.
// Source: clinical safety, C2 (sepsis interrupts); NICE_NG51 for who is at high risk.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

#include <algorithm>

namespace limbledger::interpret {

using model::Side;

namespace {

// Hurt these days as somebody told, or blood runs: what fails there fails by bleeding until shown otherwise. With child and a sore belly it may
// bleed behind the womb, and with blood thinners after a sudden severe pain inside a muscle (from memory).
struct Bleeds {
  Clue any;     // of these, whatever the injury
  Clue likely;  // of a fall, a crash, a crush, or seen: one that bleeds inside more often than a twist
  Clue crash;   // of a crash or a crush, or blood that runs
  Clue untold;  // of any, or a complaint of something recent while nobody told what happened: it counts beside how the person looks
};

[[nodiscard]] Bleeds hurt_or_bleeds(const Answers& answers) {
  const auto runs = [&](Side side) { return answers.any_yes({"vessel.bleeding_active", "vessel.haematoma_expanding"}, side); };
  const Clue blood = led_by(Clue{}, {runs(Side::left), runs(Side::right)});
  const Clue hurt = circumstance(hurt_as_told(answers));
  const auto by = [&](std::initializer_list<std::string_view> mechanisms) {
    return every({hurt, unasked(answers.chosen("history.mechanism", Side::midline, mechanisms))});
  };
  const Clue belly = answers.yes("body.pregnancy").is_yes() ? answers.chosen("pelvis.abdomen_look", Side::midline, {"abdomen_tender", "abdomen_guarded"}) : Clue{};
  const Clue muscle = every({unasked(answers.yes("history.pain_severe_sudden")), answers.any_yes({"history.blood_thinners", "history.bleeding_disorder"}, Side::midline)});
  const Clue fell = unasked(answers.yes("history.fall_recent"));
  const Clue crushed = every({hurt, unasked(answers.yes("history.injury_severe_or_crush"))});
  Bleeds out;
  out.crash = led_by(blood, {by({"vehicle", "dashboard"}), crushed});
  out.likely = led_by(out.crash, {fell, by({"fall"}), belly});
  out.any = led_by(hurt, {out.likely, muscle});
  out.untold = led_by(out.any, {circumstance(hurt_lately(answers))});
  return out;
}

// Of whoever bleeds inside: three signs of which one is pulse or pressure, or one that is seen, and of the injuries that do it the lesser signs
// too. After a crash, or with blood running, pressure that is a danger alone needs no second sign, and who looks like it is not measured first
// (clinical safety, C11). Of who is well after a lesser injury, pain, cold and a faint do as much. Our own rules.
[[nodiscard]] bool bleeds_inside(const Answers& answers, const Bleeds& bleeds, const SignsTogether& together) {
  if (bleeds.crash.is_yes() && (together.seen_of_blood || together.looks_like_shock || pressure_fails(answers).is_yes())) {
    return true;
  }
  const bool by_numbers = together.of_blood && bleeds.any.is_yes() && (bleeds.likely.is_yes() || !(together.plain || together.by_breath));
  return by_numbers || (together.seen_of_blood && !together.holds && bleeds.untold.is_yes());
}

// Not yet of whoever bleeds inside, and asked about: after a crash with breath or looks beside the pulse, pale after any of these, and a pulse or
// a pressure of who takes blood thinners and fell.
[[nodiscard]] bool perhaps_bleeds_inside(const Answers& answers, const Bleeds& bleeds, const SignsTogether& together) {
  const bool thin = answers.any_yes({"history.blood_thinners", "history.bleeding_disorder"}, Side::midline).is_yes();
  return (bleeds.crash.is_yes() && together.breath_with_it) || (bleeds.untold.is_yes() && together.breath_with_it && answers.yes("general.pallor").is_yes()) ||
         (bleeds.likely.is_yes() && thin && together.of_blood_perhaps);
}

// What a clot comes from, as NICE_NG158 asks after it; a pregnancy or a birth is one (red flags page, section 10).
[[nodiscard]] Clue reason_for_clot(const Answers& answers) {
  return led_by(answers.any_yes({"history.immobile_or_surgery_recent", "history.clot_before", "history.cancer_active", "history.childbirth_recent"}, Side::midline),
                {answers.any_yes({"history.leg_paralysed_or_plaster"}, Side::left), answers.any_yes({"history.leg_paralysed_or_plaster"}, Side::right)});
}

// A clot of the lung waits for no swollen leg where breath is newly short, the pulse fast and a reason for a clot is told: three of what
// NICE_NG158 asks after. A pulse held down by a tablet may stay slow: breaths that are raised are the same day. That these are enough is our own rule.
struct LungClot {
  Clue now, same_day;
};

[[nodiscard]] LungClot lung_clot(const Answers& answers) {
  const Clue breathless = answers.yes("history.breathless");
  if (!breathless.is_yes()) {
    return {};
  }
  const Clue reason = reason_for_clot(answers);
  const Clue bears = answers.yes("body.pregnancy");
  LungClot out;
  out.now = led_by(unasked(every({breathless, pulse_of_clot(answers), reason})),
                   {bears.is_yes() ? unasked(every({breathless, reason.is_yes() ? answers.count_at_least("general.pulse_rate", pulse_clot_over + 1) : pulse_of_clot(answers), bears})) : Clue{}});
  out.same_day = unasked(every({breathless, reason, breaths_raised(answers)}));
  return out;
}

}  // namespace

// One sign of failing beside fever, cold or feeling ill; two by themselves, since sepsis has no fever in many and shock none at all; one so far
// out that it threatens life alone; several lesser ones together, how the person looks among them (our own rules); heat or cold in the first
// three months. One sign alone is asked about, and no answer makes it a no.
Raised acutely_ill(const Answers& answers, Side) {
  Raised raised;
  const bool newborn = perhaps_newborn(answers);
  const Clue unmeasured = breath_unmeasured(answers);
  if (!newborn && !signs_recorded(answers) && unmeasured.ask.empty()) {
    raised.applies = Tri::no;
    return raised;
  }
  const Clue fails = body_fails(answers);
  const Clue hot_newborn = newborn ? fever(answers) : Clue{};
  const Clue cold = too_cold(answers);
  const Clue cold_newborn = newborn && cold.is_yes() ? cold : Clue{};
  const Clue alone = fails_alone(answers);
  const SignsTogether together = signs_together(answers);
  const Bleeds bleeds = hurt_or_bleeds(answers);
  const bool may_bleed = together.seen_of_blood || together.of_blood || together.looks_like_shock || pressure_fails(answers).is_yes();
  const LungClot lung = lung_clot(answers);
  const bool breath_open = !unmeasured.ask.empty();
  Clue look_again = together.again;
  if (!together.clue.is_yes() && perhaps_bleeds_inside(answers, bleeds, together)) {
    look_again.because.add(together.clue.because);
    look_again.ask.add(to_look_at(answers, true));
  }
  const bool again = !look_again.because.empty();
  raised.applies = tri(lung.now.is_yes() || lung.same_day.is_yes() || fails.is_yes() || hot_newborn.is_yes() || cold.is_yes() || alone.is_yes() || together.clue.is_yes() ||
                       (bleeds.untold.is_yes() && may_bleed) || breath_open || again);
  if (raised.applies == Tri::no) {
    return raised;
  }
  const Clue past = told_fever_is_past(answers);
  const Clue heat = past.is_yes() ? left_open(negate(past), past) : fever(answers);
  const Clue hot_foot = body_fails_by_illness(answers).is_yes() ? led_by(Clue{}, {foot_hot(answers, Side::left), foot_hot(answers, Side::right)}) : Clue{};
  const Clue chill = unasked(answers.colder_than(temperature_low_tenths));
  const Clue infection = led_by(either({heat, chill, answers.yes("history.unwell")}), {hot_foot});
  const Clue septic = every({fails, infection});
  const Clue twice = body_fails_twice(answers);
  const auto failed = twice.because.written();  // one so far out counts as two, and is one
  const bool two_fail = std::any_of(failed.begin(), failed.end(), [&](const model::Finding* one) { return one->item != failed.front()->item; });
  const bool infected = heat.is_yes() || hot_foot.is_yes() || chill.is_yes();
  Clue shock;
  if (!infected && bleeds_inside(answers, bleeds, together)) {
    shock = fact(Tri::yes);
    shock.because = bleeds.untold.because;
    shock.quiet = bleeds.untold.quiet;
    shock.because.add(together.clue.because);
    shock.because.add(twice.because);
  }
  // Mottled on both feet says as much as feeling ill; a child's has its own words.
  const auto mottled = [&](Side side) { return together.pale ? Clue{} : answers.chosen("vessel.foot_colour", side, {"colour_mottled"}); };
  const Clue cold_and_ill = cold.is_yes() ? every({cold, led_by(answers.yes("history.unwell"), {every({mottled(Side::left), mottled(Side::right)})})}) : Clue{};
  // Cold after a fall: how long somebody lay (red flags page, section 12).
  const Clue cold_and_fell = cold.is_yes() && bleeds.likely.is_yes() ? every({cold, bleeds.likely}) : Clue{};
  raised.clue = led_by(septic, {twice, lung.now, lung.same_day, hot_newborn, cold_newborn, alone, shock, cold_and_ill, cold_and_fell, together.clue});
  raised.clue = left_open(!raised.clue.is_yes() && cold.is_yes() ? cold_and_ill : raised.clue, fails.is_yes() ? fails : cold);
  if (!raised.clue.is_yes() && (again || breath_open)) {
    if (!fails.is_yes() && !cold.is_yes()) {
      raised.clue = Clue{};
    }
    for (const Clue* one : std::initializer_list<const Clue*>{&look_again, &unmeasured}) {
      raised.clue.because.add(one->ask.empty() ? FindingTrail{} : one->because);
      raised.clue.open.add(one->because);
      raised.clue.ask.add(one->ask);
    }
    if (again) {
      raised.clue.ask.add(answers.yes("history.unwell").ask);
    }
  }
  if (raised.clue.value == Tri::undetermined && raised.clue.ask.empty() && !raised.clue.open.empty()) {
    raised.clue.open.add(fails.because);  // nothing is left to ask, and the sign that failed is named
  }
  const bool now = septic.is_yes() || twice.is_yes() || hot_newborn.is_yes() || cold_newborn.is_yes() || alone.is_yes() || shock.is_yes() || lung.now.is_yes() ||
                   cold_and_ill.is_yes() || (together.clue.is_yes() && together.now);
  const bool waits = raised.clue.is_yes() && !now;
  raised.urgency = waits ? AlertClass::same_day : AlertClass::now;
  raised.interrupts = !waits;
  // Pulse and pressure before all else, where only looks speak yet.
  raised.ask_first = together.unmeasured && raised.clue.value == Tri::undetermined;
  // Ill without heat or cold while the pressure fails: what bleeds inside is named before sepsis, with child what bleeds there.
  const bool no_heat = !infected && (septic.is_yes() || together.circulation) && (together.circulation || pressure_fails(answers).is_yes());
  const bool bears = no_heat && led_by(answers.yes("body.pregnancy"), {answers.yes("history.childbirth_recent")}).is_yes();
  raised.what = shock.is_yes()              ? "shock"
                : bears                     ? "shock_bears"
                : no_heat && septic.is_yes() ? (together.circulation && !together.pale ? "circulation" : "shock_ill")
                : septic.is_yes()           ? "raised"
                : hot_newborn.is_yes()      ? "newborn"
                : cold_newborn.is_yes()     ? "newborn_cold"
                : lung.now.is_yes()         ? "lung_clot"
                : twice.is_yes() && two_fail ? "failing"
                : alone.is_yes() || twice.is_yes() ? "alone"
                : cold_and_ill.is_yes()     ? "cold"
                : together.clue.is_yes() && together.now ? (together.circulation && !together.pale ? (infected ? "raised" : "circulation") : (together.pale ? "pale" : (together.mottled ? "mottled" : "several")))
                : lung.same_day.is_yes()    ? "lung_clot_same_day"
                : together.clue.is_yes()    ? (together.pale ? "pale_same_day" : (together.mottled ? "mottled_same_day" : "several_same_day"))
                : cold_and_fell.is_yes()    ? "cold_same_day"
                                            : "raised";
  return raised;
}

}  // namespace limbledger::interpret
