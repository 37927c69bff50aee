// The person who is ill as a whole, whatever part is complained of: the page of an examiner of legs says nothing quiet over it.
// Source: clinical safety, C2 (sepsis interrupts); NICE_NG51 for who is at high risk.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

namespace limbledger::interpret {

using model::Side;

// One sign of failing beside fever, cold or feeling ill; two by themselves, since sepsis has no fever in many and shock none at all (our own
// rule); heat in the first three months. One sign alone is asked about, and no answer makes it a no.
Raised acutely_ill(const Answers& answers, Side) {
  const Clue fails = body_fails(answers);
  const Clue hot_newborn = perhaps_newborn(answers) ? fever(answers) : Clue{};
  Raised raised;
  raised.applies = tri(fails.is_yes() || hot_newborn.is_yes());
  if (raised.applies == Tri::no) {
    return raised;
  }
  const Clue infection = led_by(either({fever(answers), unasked(answers.colder_than(temperature_low_tenths)), answers.yes("history.unwell")}),
                                {foot_hot(answers, Side::left), foot_hot(answers, Side::right)});
  const Clue septic = every({fails, infection});
  const Clue twice = body_fails_twice(answers);
  raised.clue = left_open(led_by(septic, {twice, hot_newborn}), fails);
  raised.urgency = AlertClass::now;
  raised.interrupts = true;
  raised.what = septic.is_yes() ? "raised" : (twice.is_yes() ? "failing" : "newborn");
  return raised;
}

}  // namespace limbledger::interpret
