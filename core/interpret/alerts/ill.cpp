// The person who is ill as a whole, whatever part is complained of: the page of an examiner of legs says nothing quiet over it.
// Source: clinical safety, C2 (sepsis interrupts); NICE_NG51 for who is at high risk.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

namespace limbledger::interpret {

using model::Side;

namespace {

// Hurt these days as somebody told, or blood runs: what fails there fails by bleeding until shown otherwise.
[[nodiscard]] Clue hurt_or_bleeds(const Answers& answers) {
  const auto bleeds = [&](Side side) { return answers.any_yes({"vessel.bleeding_active", "vessel.haematoma_expanding"}, side); };
  return led_by(circumstance(hurt_as_told(answers)), {unasked(answers.yes("history.fall_recent")), bleeds(Side::left), bleeds(Side::right)});
}

// A clot of the lung waits for no swollen leg where breath is newly short, the pulse fast and a reason for a clot is told: three of what
// NICE_NG158 asks after. That these three are enough is our own rule.
[[nodiscard]] Clue lung_clot(const Answers& answers) {
  const Clue breathless = answers.yes("history.breathless");
  if (!breathless.is_yes()) {
    return {};
  }
  const Clue reason = led_by(answers.any_yes({"history.immobile_or_surgery_recent", "history.clot_before", "history.cancer_active", "history.childbirth_recent"}, Side::midline),
                             {answers.any_yes({"history.leg_paralysed_or_plaster"}, Side::left), answers.any_yes({"history.leg_paralysed_or_plaster"}, Side::right)});
  return unasked(every({breathless, pulse_of_clot(answers), reason}));
}

}  // namespace

// One sign of failing beside fever, cold or feeling ill; two by themselves, since sepsis has no fever in many and shock none at all; one so far
// out that it threatens life alone; several lesser ones together (our own rules); heat or cold in the first three months. One sign alone is
// asked about, and no answer makes it a no.
Raised acutely_ill(const Answers& answers, Side) {
  Raised raised;
  const bool newborn = perhaps_newborn(answers);
  if (!newborn && !signs_recorded(answers)) {
    raised.applies = Tri::no;
    return raised;
  }
  const Clue fails = body_fails(answers);
  const Clue hot_newborn = newborn ? fever(answers) : Clue{};
  const Clue cold = too_cold(answers);
  const Clue cold_newborn = newborn && cold.is_yes() ? cold : Clue{};
  const Clue alone = fails_alone(answers);
  const SignsTogether together = signs_together(answers);
  const Clue lung = lung_clot(answers);
  raised.applies = tri(lung.is_yes() || fails.is_yes() || hot_newborn.is_yes() || cold.is_yes() || alone.is_yes() || together.clue.is_yes());
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
  const Clue hurt = heat.is_yes() || hot_foot.is_yes() || chill.is_yes() || !together.of_blood ? Clue{} : hurt_or_bleeds(answers);
  const Clue shock = hurt.is_yes() ? every({hurt, led_by(together.clue, {twice})}) : Clue{};
  const Clue cold_and_ill = cold.is_yes() ? every({cold, answers.yes("history.unwell")}) : Clue{};
  raised.clue = led_by(septic, {twice, lung, hot_newborn, cold_newborn, alone, shock, cold_and_ill, together.clue});
  raised.clue = left_open(!raised.clue.is_yes() && cold.is_yes() ? cold_and_ill : raised.clue, fails.is_yes() ? fails : cold);
  if (raised.clue.value == Tri::undetermined && raised.clue.ask.empty() && !raised.clue.open.empty()) {
    raised.clue.open.add(fails.because);  // nothing is left to ask, and the sign that failed is named
  }
  const bool only_together = !septic.is_yes() && !twice.is_yes() && !hot_newborn.is_yes() && !cold_newborn.is_yes() && !alone.is_yes() && !shock.is_yes() && !lung.is_yes() && !cold_and_ill.is_yes();
  const bool waits = raised.clue.is_yes() && only_together && !together.now;
  raised.urgency = waits ? AlertClass::same_day : AlertClass::now;
  raised.interrupts = !waits;
  raised.what = shock.is_yes()           ? "shock"
                : septic.is_yes()        ? "raised"
                : hot_newborn.is_yes()   ? "newborn"
                : cold_newborn.is_yes()  ? "newborn_cold"
                : lung.is_yes()          ? "lung_clot"
                : twice.is_yes()         ? "failing"
                : alone.is_yes()         ? "alone"
                : cold_and_ill.is_yes()  ? "cold"
                : together.pale          ? (together.now ? "pale" : "pale_same_day")
                : together.clue.is_yes() ? (together.now ? "several" : "several_same_day")
                                         : "raised";
  return raised;
}

}  // namespace limbledger::interpret
