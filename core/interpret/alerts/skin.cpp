// Infection that goes deep under the skin, and wounds that are small outside. Source: red flags page, section 6; clinical safety, C13.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

#include <array>
#include <utility>

namespace limbledger::interpret {

using model::Side;

namespace {

// The whole body answers: one sign is enough beside redness that spreads.
[[nodiscard]] Clue poisoned(const Answers& answers) {
  return either({led_by(answers.warm_at_least(fever_wound_tenths), {answers.colder_than(temperature_low_tenths)}),
                 pulse_raised(answers), unasked(breaths_raised(answers)), unasked(pressure_low(answers)),
                 unasked(answers.chosen("general.consciousness", Side::midline, {"mind_new_confusion", "mind_voice", "mind_pain", "mind_none"}))});
}

// What was not recorded of the last three leaves no would-be no open: they are not asked.
[[nodiscard]] Clue poisoned_as_far_as_asked(const Answers& answers) {
  const Clue all = poisoned(answers);
  const bool asked = answers.warm_at_least(fever_wound_tenths).is_no() && pulse_raised(answers).is_no();
  return all.value == Tri::undetermined && asked ? fact(Tri::no) : all;
}

[[nodiscard]] Clue infection_seen(const Answers& answers, Side side) {
  return answers.several("skin.infection_signs", side, {"sign_redness", "sign_swelling", "sign_pain", "sign_warmth", "sign_pus"}, 2);
}

[[nodiscard]] Clue wounded(const Answers& answers, Side side) {
  return led_by(foot_wound(answers, side), {answers.any_yes({"knee.look_open_wound", "skin.wound_over_bone", "skin.sinus_draining"}, side)});
}

// Infected skin or an infected wound of the leg, whoever has it. Pus from a wound counts by itself (convention).
[[nodiscard]] Clue infected_leg(const Answers& answers, Side side, const Clue& infected) {
  const Clue wound = wounded(answers, side);
  if (!wound.is_yes()) {
    return infected;
  }
  const Clue at_wound = led_by(wound_infected(answers, side), {answers.several("skin.infection_signs", side, {"sign_pus"}, 1)});
  Clue both = either({infected, at_wound});
  both.because.add(wound.because);
  return both;
}

// Hot, red and swollen, or red and warm: gout, a bone that collapses, or skin that is infected under a whole surface.
[[nodiscard]] Clue red_foot(const Answers& answers, Side side) {
  const Clue warm = answers.any_yes({"vessel.foot_warm"}, side);
  return led_by(answers.any_yes({"foot.hot_red_swollen"}, side), {warm.is_yes() ? every({warm, answers.chosen("vessel.foot_colour", side, {"colour_red"})}) : Clue{}});
}

// Nothing says that it goes deep, but with a fever an infected leg is seen the same day, and now once the whole body answers. A red foot counts
// as one while it is hot or the body fails: whatever else made it red, this is treated first (our own rule).
void raise_fevered(const Answers& answers, Side side, const Clue& infected, Raised& raised) {
  const Clue sore = infected_leg(answers, side, infected);
  const Clue red = red_foot(answers, side);
  const Clue heat = unless_drug_hides(answers, led_by(answers.warm_at_least(fever_wound_tenths), {answers.yes("history.fever")}));
  const Clue general = red.is_yes() && !sore.is_yes() ? hot_body_answers(answers) : whole_body_answers(answers);
  const Clue fevered = every({led_by(sore, {red}), led_by(heat, {general})});
  if (fevered.is_yes()) {
    raised.clue = fevered;
    raised.clue.because.add(general.is_yes() ? general.because : FindingTrail{});
    raised.hides = false;  // a sore of a foot with diabetes has a line of its own
    raised.what = sore.is_yes() ? (general.is_yes() ? "ill" : "fever") : (general.is_yes() ? "red_foot_ill" : "red_foot_fever");
    raised.interrupts = general.is_yes();
    raised.urgency = general.is_yes() ? AlertClass::now : AlertClass::same_day;
    return;
  }
  raised.clue = either({raised.clue, fevered});
  // A fever, a pain or a fresh wound alone points to much else.
  const bool numb_or_beyond = answers.any_yes({"skin.numb_patch", "skin.swelling_beyond_redness"}, side).is_yes();
  if (raised.clue.value == Tri::undetermined && !infected.is_yes() && !red.is_yes() && !numb_or_beyond &&
      !((heat.is_yes() || general.is_yes()) && wounded(answers, side).is_yes())) {
    raised.clue.because.clear();
  }
}

}  // namespace

// Dead, blistered or crackling skin counts by itself; numbness, swelling beyond the redness and pain beyond what is seen with an
// infected skin; fever, pulse and the like with redness that spreads. A count of blood values never lowers it.
Raised deep_infection(const Answers& answers, Side side) {
  const Clue spreads = answers.yes("skin.redness_spreading", side);
  const Clue infected = led_by(spreads, {infection_seen(answers, side)});
  const Clue gas = answers.yes("skin.gas_crackle", side);
  const Clue dusky = answers.yes("skin.dusky_or_blistered", side);
  const Clue wet = answers.chosen("skin.gangrene", side, {"gangrene_wet"});
  const Clue dead = led_by(dusky, {wet});
  const Clue numb = answers.yes("skin.numb_patch", side);
  const Clue beyond = answers.yes("skin.swelling_beyond_redness", side);
  const Clue pain = answers.yes("history.pain_out_of_proportion", side);
  const Clue ill = poisoned_as_far_as_asked(answers);
  Raised raised;
  const Clue local = every({infected, either({numb, beyond, pain, dead, gas})});
  // Dusky or blistered skin with its redness answered no is a blister until something else says otherwise: the page asks for infected skin.
  const bool mere_blister = dusky.is_yes() && infected.is_no() && !wet.is_yes() && !numb.is_yes() && !beyond.is_yes() && !pain.is_yes() && !ill.is_yes();
  raised.clue = led_by(either({local, every({spreads, ill})}), {gas, mere_blister ? Clue{} : dead});
  raised.urgency = AlertClass::now;
  raised.interrupts = true;
  if (!raised.clue.is_yes()) {
    raise_fevered(answers, side, infected, raised);
    if (mere_blister && raised.clue.is_no()) {
      raised.clue = left_open(raised.clue, dusky);
    }
    return raised;
  }
  const bool by_skin = infected.is_yes();
  const std::array<std::pair<bool, std::string_view>, 5> lines{{{gas.is_yes(), "gas"}, {dead.is_yes(), "dead"}, {by_skin && numb.is_yes(), "numb"},
                                                               {by_skin && pain.is_yes(), "pain"}, {by_skin && beyond.is_yes(), "swelling"}}};
  for (const auto& line : lines) {
    if (line.first) {
      raised.what = line.second;  // else: redness that spreads, and the person is ill
      break;
    }
  }
  return raised;
}

// A sting or a snake's bite is seen at once; what was left inside and what went in deep the same day.
Raised deep_wound(const Answers& answers, Side side) {
  const Clue wound = answers.chosen("skin.deep_wound", side, {"wound_puncture", "wound_bite", "wound_sting_or_snake", "wound_body_left"});
  const Clue venom = led_by(answers.chosen("skin.deep_wound", side, {"wound_sting_or_snake"}), {answers.chosen("history.compartment_causes", side, {"cause_snake"})});
  const Clue inside = answers.yes("skin.foreign_body", side);
  Raised raised;
  raised.clue = led_by(wound, {inside, venom});
  raised.what = "raised";
  if (venom.is_yes()) {
    raised.urgency = AlertClass::now;
    raised.what = "venom";
    raised.clue.because.add(venom.because);
  } else if (answers.chosen("skin.deep_wound", side, {"wound_bite"}).is_yes()) {
    raised.what = "bite";
  } else if (!answers.chosen("skin.deep_wound", side, {"wound_puncture"}).is_yes()) {
    raised.what = "inside";
  }
  return raised;
}

}  // namespace limbledger::interpret
