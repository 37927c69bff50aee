// The foot that feels little or lacks blood: a bone that collapses without pain, a wound and how ill it is, and blood that has been
// lacking for weeks. Any cause of a numb foot counts, not diabetes alone. Source: red flags page, sections 5, 21 and 22; clinical
// safety, C13.
#include "core/interpret/alerts/alerts.hpp"
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"
#include "core/interpret/alerts/vessels/one_pulse.hpp"

namespace limbledger::interpret {

using model::Side;

namespace {

[[nodiscard]] Clue reaches_deep(const Answers& answers, Side side) {
  return led_by(answers.chosen("skin.ulcer_depth", side, {"depth_tendon_or_capsule", "depth_bone"}), {answers.longer_than("skin.redness_margin", side, redness_mild_mm)});
}

[[nodiscard]] Clue reaches_bone(const Answers& answers, Side side) {
  return led_by(answers.yes("skin.ulcer_probe_to_bone", side), {answers.yes("skin.bone_visible", side)});
}

// Neither pulse is full, or the pressure at the ankle is low. One full pulse beside one that is not, or that nobody felt for, is no no.
[[nodiscard]] Clue poor_pulses(const Answers& answers, Side side) {
  const auto poor = [&](const ItemKey& item) { return answers.graded(item, side, {"0", "1"}); };
  Clue low = fact(ankle_pressure_low(answers.view(), side) == Tri::yes ? Tri::yes : Tri::undetermined);
  if (low.is_yes()) {
    const View& view = answers.view();
    low.because = FindingTrail::of(view.trails().findings, view.at("vessel.pressure_posterior_tibial", side));
    low.because.add(FindingTrail::of(view.trails().findings, view.at("vessel.pressure_arm", side)));
    low.because.add(FindingTrail::of(view.trails().findings, view.at("vessel.pressure_arm", other_side(side))));
  }
  const Clue dorsal = poor("vessel.pulse_dorsalis_pedis");
  const Clue tibial = poor("vessel.pulse_posterior_tibial");
  Clue both = every({dorsal, tibial});
  if (both.is_no() && !(dorsal.is_no() && tibial.is_no())) {
    both = left_open(both, dorsal.is_yes() ? dorsal : tibial);
    both.ask.add(dorsal.ask);
    both.ask.add(tibial.ask);
  }
  return led_by(both, {low});
}

// Both were tried and neither could be done, for whatever reason.
[[nodiscard]] Clue pulses_not_felt_for(const Answers& answers, Side side) {
  const auto undone = [&](const ItemKey& item) {
    return answers.tried(item, side, [](const model::Finding& finding) { return std::holds_alternative<model::NotDone>(finding.value) ? Tri::yes : Tri::no; });
  };
  return every({undone("vessel.pulse_dorsalis_pedis"), undone("vessel.pulse_posterior_tibial")});
}

// Which line a wound of such a foot gets, the gravest first; what says so stands among the grounds.
void grade_wound(const Answers& answers, Side side, Raised& raised) {
  const Clue infected = wound_infected(answers, side);
  const Clue general = whole_body_answers(answers);
  const Clue hot_body = led_by(answers.warm_at_least(fever_wound_tenths), {answers.yes("history.fever")});
  const Clue bone = reaches_bone(answers, side);
  const Clue deep = reaches_deep(answers, side);
  const Clue poor = poor_pulses(answers, side);
  const Clue margin = answers.longer_than("skin.redness_margin", side, redness_mild_mm);
  const auto is = [&](std::string_view what, std::initializer_list<Clue> grounds) {
    raised.what = what;
    for (const Clue& one : grounds) {
      raised.clue.because.add(one.is_yes() ? one.because : one.against);
    }
  };
  if (infected.is_yes() && general.is_yes()) {
    is("severe", {infected, general});
    raised.urgency = AlertClass::now;
    raised.interrupts = true;
  } else if (const Clue wet = answers.chosen("skin.gangrene", side, {"gangrene_wet"}); wet.is_yes()) {
    is("wet", {wet});
    raised.urgency = AlertClass::now;
    raised.interrupts = true;
  } else if (infected.is_yes() && hot_body.is_yes()) {
    is("fever", {infected, hot_body});
  } else if (bone.is_yes()) {
    is("bone", {bone});
  } else if (poor.is_yes()) {
    const Clue dead = dead_tissue(answers, side);
    const Clue open = led_by(answers.yes("skin.ulcer", side), {answers.chosen("skin.between_toes", side, {"cleft_ulcer"}),
                                                               answers.chosen("skin.deep_wound", side, {"wound_puncture", "wound_bite", "wound_body_left"})});
    is(dead.is_yes() && !open.is_yes() && !infected.is_yes() ? "dead_poor_flow" : "poor_flow", {poor});
  } else if (const Clue dry = dead_tissue(answers, side); dry.is_yes()) {
    is("dead", {dry});
  } else if (infected.is_yes() && deep.is_yes()) {
    is("moderate", {infected, deep});
  } else if (infected.is_yes()) {
    // Mild is skin and what lies under it: where nobody saw how deep it goes, the graver class is acted by.
    is(margin.is_no() ? (deep.is_no() ? "mild" : "depth_open") : "infected", {infected, margin, deep});
    raised.clue.because.add(deep.open);
  } else {
    raised.what = infected.is_no() ? "raised" : "not_looked";
  }
}

}  // namespace

namespace {

// What rubs under a plaster is neither felt nor seen: with a fever of who is ill it is looked for the same day (page, sections 0 and 22; our own rule).
[[nodiscard]] Clue ill_with_plaster(const Answers& answers, Side side) {
  const Clue plaster = answers.chosen("body.cast", side, {"cast_ankle", "cast_foot"});
  if (!plaster.is_yes() || told_fever_is_past(answers).is_yes()) {
    return {};
  }
  const Clue unfelt = led_by(Clue{}, {answers.yes("history.diabetes"), numb_foot(answers, side)});
  return unasked(every({plaster, unfelt, fever(answers), led_by(answers.yes("history.unwell"), {whole_body_answers(answers)})}));
}

}  // namespace

// A wound of a foot with diabetes or without feeling is raised whatever it looks like: nobody feels what goes on in it. Its signs say
// how soon.
Raised infected_foot(const Answers& answers, Side side) {
  const Clue wound = foot_wound(answers, side);
  Raised raised;
  raised.clue = every({wound, bare_no(either({answers.yes("history.diabetes"), numb_foot(answers, side)}))});
  if (raised.clue.is_yes()) {
    grade_wound(answers, side, raised);
    if (const Clue gone = foot_taken_off(answers, side); gone.is_yes()) {
      raised.what = raised.urgency == AlertClass::now ? "stump_now" : "stump";  // what is left is named, not a foot
      raised.clue.because.add(gone.because);
    }
  } else if (const Clue hidden = wound.value == Tri::undetermined ? ill_with_plaster(answers, side) : Clue{}; hidden.is_yes()) {
    raised.clue = hidden;
    raised.what = "under_plaster";
  } else if (raised.clue.value == Tri::undetermined) {
    const bool sore = answers.any_yes({"skin.ulcer", "skin.black_toe"}, side).is_yes() || answers.chosen("skin.gangrene", side, {"gangrene_dry", "gangrene_wet"}).is_yes();
    if (!sore) {
      raised.clue.because.clear();  // diabetes, or a scratch, points to no infected foot
      raised.clue.hinted = wound.hinted;
    }
  } else if (const Clue gone = foot_taken_off(answers, side); gone.is_yes()) {
    raised.clue = left_open(raised.clue, gone);  // whole skin of what is left is no answer about a foot
  }
  return raised;
}

// Hot in a foot whose nerves are ill: pain that is missing says nothing, nor does whole skin.
Raised collapsing_foot(const Answers& answers, Side side) {
  const Clue hot = foot_hot(answers, side);
  const Clue numb = numb_foot(answers, side);
  Raised raised;
  // Who does not walk yet wears no foot down, and no filament is asked of them (convention: under one year). A feeling known lost counts.
  if (answers.aged(0, 0) == Tri::yes && !numb.is_yes()) {
    raised.applies = Tri::no;
    return raised;
  }
  raised.clue = every({hot, bare_no(numb)});
  // A no to the hot foot, and its heat or redness seen at a sore: neither answers the other.
  if (const Clue signs = answers.several("skin.infection_signs", side, {"sign_redness", "sign_swelling", "sign_warmth"}, 1); signs.is_yes() && !raised.clue.against.empty()) {
    raised.clue = left_open(raised.clue, signs);
  }
  if (raised.clue.value == Tri::undetermined && !hot.is_yes()) {
    raised.clue.because.clear();
    raised.clue.hinted = hot.hinted;
  }
  const Clue wound = raised.clue.is_yes() ? foot_wound(answers, side) : Clue{};
  raised.what = wound.is_yes() ? "with_wound" : "raised";
  raised.clue.because.add(wound.is_yes() ? wound.because : FindingTrail{});
  return raised;
}

namespace {

// "Such pain", "this sore": how old it is is asked of what was recorded; else whether there is any. Of a foot hurt these days neither is.
[[nodiscard]] AskTrail asked_of_weeks(const Answers& answers, Side side, const AskTrail& asked) {
  const Clue pain = answers.yes("history.rest_pain_foot", side);
  const Clue sore = foot_wound(answers, side);
  const bool of_days = hurt_lately(answers).is_yes() && of_short_history(answers).is_yes();
  AskTrail out;
  for (const ToAsk& ask : asked.written()) {
    const bool of_pain = ask.item->item.text == "history.rest_pain_over_2_weeks";
    const bool of_sore = ask.item->item.text == "history.foot_ulcer_over_2_weeks";
    const Clue& there = of_pain ? pain : sore;
    if ((!of_pain && !of_sore) || there.is_yes()) {
      out.add({answers.view().trails().asks, ask});
    } else if (there.value == Tri::undetermined && !of_days) {
      out.add(of_pain ? pain.ask : answers.yes("skin.ulcer", side).ask);
    }
  }
  return out;
}

}  // namespace

// Pain at rest or a sore for more than two weeks in a foot that blood hardly reaches, whatever the cause. Dead tissue waits for no day:
// under two weeks, or of an age that nobody told, it stands here beside poor pulses and, with a pulse lost, in alert.ali (our own rule).
Raised lasting_ischaemia(const Answers& answers, Side side) {
  const Clue pain = answers.yes("history.rest_pain_over_2_weeks", side);
  const Clue sore = answers.yes("history.foot_ulcer_over_2_weeks", side);
  const Clue dead = unasked(dead_tissue(answers, side));
  const Clue rests_long = unasked(every({foot_hurts_at_rest(answers, side), over_two_weeks(answers)}));
  const auto lost = [&](const ItemKey& item) { return dead.is_yes() ? pulse_absent(answers, item, side) : Clue{}; };
  // Nobody could feel for either pulse: dead tissue says itself that blood is lacking (our own rule).
  const Clue unfelt = dead.is_yes() ? pulses_not_felt_for(answers, side) : Clue{};
  const Clue poor = led_by(poor_pulses(answers, side), {lost("vessel.pulse_dorsalis_pedis"), lost("vessel.pulse_posterior_tibial"), unfelt, pulse_above_lost(answers, side)});
  const Clue threatened = led_by(either({pain, sore}), {dead, rests_long});
  Raised raised;
  raised.clue = every({threatened, poor});
  const std::string& why = answers.view().exam().complaint.text;
  if (raised.clue.value == Tri::undetermined && (raised.clue.warm() || why == "diabetic_foot" || why == "wound_or_numb_foot")) {  // else nobody is asked
    raised.clue.ask = asked_of_weeks(answers, side, raised.clue.ask);
  }
  // Pulses felt after an injury of days are no answer about weeks that nobody asked after.
  const bool asked = pain.value != Tri::undetermined || sore.value != Tri::undetermined || dead.is_yes();
  if (raised.clue.is_no() && !asked && hurt_lately(answers).is_yes()) {
    raised.clue.against.clear();
  }
  // Of a leg that nobody hurt lately, or beside a foot that lacks it too.
  if (const LostAlone one = raised.clue.is_yes() || poor.is_no() ? LostAlone::none : pulse_lost_alone(answers, side); one != LostAlone::none) {
    const bool other_felt = answers.graded(one == LostAlone::dorsal ? dorsal_pulse : tibial_pulse, other_side(side), {"1", "2", "3"}).is_yes();
    const bool asked_after = other_felt ? !hurt_as_told(answers).is_yes() : of_interest(answers.view(), side);
    if (asked_after) {
      raised.clue.ask = asked_of_weeks(answers, side, raised.clue.ask);
      raised.asks = asks_for_doppler(answers, side, one, raised.clue);
    }
  }
  const bool long_dead = over_two_weeks(answers).is_yes();
  raised.what = pain.is_yes() ? "raised" : (sore.is_yes() ? "sore" : (dead.is_yes() ? (long_dead ? "dead" : "dead_early") : "raised"));
  if (raised.what.starts_with("dead") && unfelt.is_yes()) {
    raised.what = long_dead ? "dead_unfelt_long" : "dead_unfelt";
  }
  if (long_dead && raised.what.starts_with("dead") && raised.clue.is_yes()) {
    raised.clue.because.add(over_two_weeks(answers).because);
  }
  if (const Clue gone = raised.clue.is_yes() ? foot_taken_off(answers, side) : Clue{}; gone.is_yes()) {
    raised.what = "stump";
    raised.clue.because.add(gone.because);
  }
  return raised;
}

// Rutherford's classes, as far as what was recorded settles one; empty where it does not. Strength that was not looked at leaves it open.
std::string_view ischaemia_grade(const Answers& answers, Side side) {
  const Clue still_foot = answers.no("ankle.movement", side);
  const auto power = [&](std::initializer_list<std::string_view> grades) {
    return either({answers.graded("nerve.power_ankle_dorsiflexion", side, grades), answers.graded("nerve.power_ankle_plantarflexion", side, grades)});
  };
  const bool weak = still_foot.is_yes() || answers.yes("nerve.foot_drop", side).is_yes() || power({"0", "1", "2", "3", "4", "4-", "4+"}).is_yes();
  const bool strong = !weak && still_foot.is_no();
  const auto lost = [&](std::initializer_list<std::string_view> levels) { return answers.chosen("nerve.sensation_loss_level", side, levels).is_yes(); };
  const bool beyond = lost({"loss_beyond_toes", "loss_whole_foot_or_more"});
  const bool felt = lost({"loss_none"});
  const bool still = still_foot.is_yes() && answers.graded("nerve.power_ankle_dorsiflexion", side, {"0"}).is_yes() &&
                     answers.graded("nerve.power_ankle_plantarflexion", side, {"0"}).is_yes();
  if (still && lost({"loss_whole_foot_or_more"}) && answers.no("vessel.doppler_venous_audible", side).is_yes()) {
    return "grade_3";
  }
  if (beyond || weak) {
    return "grade_2b";
  }
  if (strong && lost({"loss_toes_only"})) {
    return "grade_2a";
  }
  if (strong && felt) {
    const Clue silent = answers.no("vessel.doppler_arterial_audible", side);
    return silent.is_no() ? "grade_1" : (silent.is_yes() ? "grade_2a" : "");
  }
  return "";
}

}  // namespace limbledger::interpret
