// What the whole body shows: fever, and the signs of sepsis and shock as the age has them. Source: red flags page, sections 6 and 22; the limits
// and where they come from stand in limits.hpp.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace limbledger::interpret {

using model::Side;

namespace {

[[nodiscard]] Clue fever_from(const Answers& answers, std::int64_t tenths) {
  return led_by(either({answers.yes("history.fever"), answers.warm_at_least(tenths)}), {answers.warmest_at_least(tenths)});
}

// A child's own limits; those of the oldest that the age allows, and an adult's where nobody knows it.
[[nodiscard]] ChildSigns signs_of_age(const Answers& answers) {
  for (const ChildSigns& one : child_signs) {
    if (answers.aged(0, one.to) == Tri::yes) {
      return one;
    }
  }
  return {adult_signs_from, breaths_over + 1, breaths_fast_from, pulse_sepsis_over + 1, pulse_racing_from};
}

[[nodiscard]] std::int64_t pressure_too_low(const Answers& answers) {
  for (std::int64_t age = 0; age < systolic_adult_from; ++age) {
    if (answers.aged(0, age) == Tri::yes) {
      return systolic_child_under + 2 * age;
    }
  }
  return systolic_under;
}

// By age, or where nobody knows it by what the child is brought for, or that it does not move about yet: an infant's pulse is no grown person's.
[[nodiscard]] bool of_child(const Answers& answers) {
  constexpr std::int64_t highest_age = 200;
  const Tri young = answers.aged(0, adult_signs_from - 1);
  if (young != Tri::undetermined || answers.aged(0, highest_age) == Tri::yes) {
    return young == Tri::yes;
  }
  const std::string& why = answers.view().exam().complaint.text;
  return why == "infant_hip" || why == "limping_child" || why == "child_alignment" || perhaps_newborn(answers);
}

}  // namespace

Clue pressure_fails(const Answers& answers) {
  const bool lower = of_child(answers) || answers.yes("body.pregnancy").is_yes();
  return answers.pressure_below("general.blood_pressure_systolic", lower ? pressure_too_low(answers) : systolic_failing_under);
}

namespace {

[[nodiscard]] Clue mind_changed(const Answers& answers) {
  return answers.chosen("general.consciousness", Side::midline, {"mind_new_confusion", "mind_voice", "mind_pain", "mind_none"});
}

[[nodiscard]] Clue breathes_fast(const Answers& answers) { return answers.count_at_least("general.respiratory_rate", signs_of_age(answers).breaths_high); }

[[nodiscard]] Clue lacks_oxygen(const Answers& answers) { return answers.count_below("general.oxygen_saturation", saturation_under); }

[[nodiscard]] Clue heart_races(const Answers& answers) { return answers.count_at_least("general.pulse_rate", signs_of_age(answers).pulse_high); }

[[nodiscard]] Clue heart_slow(const Answers& answers) {
  return of_child(answers) ? answers.count_below("general.pulse_rate", pulse_child_under) : Clue{};
}

// Crawls, pulls up, walks, or takes steps.
[[nodiscard]] bool moves_as_older(const Answers& answers) {
  return answers.chosen("history.moves_about", Side::midline, {"moves_crawls", "moves_cruises", "moves_walks"}).is_yes() ||
         answers.chosen("history.walks_usually", Side::midline, {"walks_alone", "walks_indoors", "walks_with_aid"}).is_yes() ||
         answers.count_at_least("gait.steps_now", 1).is_yes();
}

constexpr ItemKey foot_colour = "vessel.foot_colour";

// Mottled or dusky, of either foot.
[[nodiscard]] Clue skin_of_sepsis(const Answers& answers) {
  const auto of = [&](Side side) { return answers.chosen(foot_colour, side, {"colour_mottled", "colour_dusky"}); };
  return led_by(Clue{}, {of(Side::left), of(Side::right)});
}

// Both feet cold and blue over pulses that are full: of the weather.
[[nodiscard]] bool feet_of_winter(const Answers& answers) {
  constexpr std::array feet{Side::left, Side::right};
  return std::all_of(feet.begin(), feet.end(), [&](Side side) {
    return answers.chosen(foot_colour, side, {"colour_blue"}).is_yes() && answers.yes("vessel.foot_cold", side).is_yes() &&
           answers.graded(dorsal_pulse, side, {"2", "3"}).is_yes() && answers.graded(tibial_pulse, side, {"2", "3"}).is_yes();
  });
}

// Answered and measured: feels well, and neither hot nor cold now. A painkiller of the last hours makes it no answer.
[[nodiscard]] bool well_and_as_warm_as_usual(const Answers& answers) {
  return answers.yes("history.unwell").is_no() && answers.warm_at_least(fever_tenths).is_no() && !answers.colder_than(temperature_low_tenths).is_yes() &&
         !answers.yes("history.painkiller_last_6h").is_yes();
}

}  // namespace

Clue fever(const Answers& answers) {
  return answers.once(Known::fever, Side::midline, [&]() -> Clue { return fever_from(answers, fever_tenths); });
}

Clue unless_drug_hides(const Answers& answers, Clue fever) {
  const Clue drug = fever.is_no() ? answers.yes("history.painkiller_last_6h") : Clue{};
  return drug.is_yes() ? left_open(std::move(fever), drug) : fever;
}

Clue fever_of_child(const Answers& answers) {
  return answers.once(Known::fever_of_child, Side::midline, [&]() -> Clue { return fever_from(answers, fever_child_tenths); });
}

Clue pulse_raised(const Answers& answers) { return answers.count_at_least("general.pulse_rate", signs_of_age(answers).pulse_raised); }

Clue pulse_of_clot(const Answers& answers) {
  if (answers.aged(0, adult_signs_from - 1) == Tri::yes) {
    return heart_races(answers);
  }
  const Clue fast = answers.count_at_least("general.pulse_rate", pulse_clot_over + 1);
  if (!answers.yes("body.pregnancy").is_yes()) {
    return fast;
  }
  const Clue little = answers.count_below("general.oxygen_saturation", saturation_pregnant_under);
  return led_by(answers.count_at_least("general.pulse_rate", pulse_racing_from), {little.is_yes() ? every({fast, little}) : Clue{}});
}

Clue breaths_raised(const Answers& answers) { return answers.count_at_least("general.respiratory_rate", signs_of_age(answers).breaths_raised); }

Clue pressure_low(const Answers& answers) { return answers.pressure_below("general.blood_pressure_systolic", pressure_too_low(answers)); }

Clue breathes_badly(const Answers& answers) { return unasked(led_by(breathes_fast(answers), {lacks_oxygen(answers)})); }

bool signs_recorded(const Answers& answers) {
  constexpr std::array<ItemKey, 8> signs{"general.temperature",       "general.pulse_rate",    "general.respiratory_rate", "general.oxygen_saturation",
                                         "general.blood_pressure_systolic", "general.consciousness", "general.pallor",           "general.child_at_play"};
  const View& view = answers.view();
  const auto recorded = [&](const ItemKey& one) {
    const model::Item* item = view.edition().item_of(one);
    return item != nullptr && !view.of(*item).empty();
  };
  constexpr ItemKey refill = "vessel.capillary_refill_slow";
  return std::any_of(signs.begin(), signs.end(), recorded) ||
         (recorded(refill) && (answers.yes(refill, Side::left).is_yes() || answers.yes(refill, Side::right).is_yes())) ||
         (recorded(foot_colour) && skin_of_sepsis(answers).is_yes());
}

Clue body_fails(const Answers& answers) {
  return answers.once(Known::body_fails, Side::midline, [&]() -> Clue {
    return unasked(led_by(pressure_fails(answers), {mind_changed(answers), breathes_badly(answers), heart_races(answers), heart_slow(answers)}));
  });
}

Clue body_fails_twice(const Answers& answers) {
  Clue out;
  const auto found = [&](std::initializer_list<Clue> signs) {
    int many = 0;
    for (const Clue& one : signs) {
      many += one.is_yes() ? 1 : 0;
      out.because.add(one.is_yes() ? one.because : FindingTrail{});
    }
    return many;
  };
  const Clue asleep = answers.chosen("general.consciousness", Side::midline, {"mind_pain", "mind_none"});
  const Clue oxygen = lacks_oxygen(answers);
  const Clue breaths = breathes_fast(answers);
  const int grave = found({pressure_fails(answers), mind_changed(answers), heart_slow(answers)});
  // Of one organ, and two signs of it only with breath that is short and something that old lungs and thin air do not make: they have little
  // oxygen and short breath for years. Less than known lungs need counts too, but of who said to be well. Fear alone has fast breath and pulse.
  // Our own rules.
  const bool lungs = found({oxygen, breaths}) > 0;
  const Clue beside = led_by(answers.yes("history.unwell"), {answers.warm_at_least(fever_wound_tenths), answers.colder_than(temperature_low_tenths),
                                                             answers.count_at_least("general.pulse_rate", pulse_counts_over + 1)});
  const bool more = lungs && ((oxygen.is_yes() && breaths.is_yes()) || of_child(answers) || found({beside}) > 0 ||
                              answers.count_below("general.oxygen_saturation", well_and_as_warm_as_usual(answers) ? saturation_alone_under : saturation_old_lungs).is_yes());
  const bool short_breath = more && found({answers.yes("history.breathless")}) > 0;
  const int all = grave + (short_breath ? 2 : (lungs ? 1 : 0)) + found({heart_races(answers)});
  out.value = asleep.is_yes() || (all >= 2 && (grave > 0 || oxygen.is_yes() || short_breath)) ? Tri::yes : Tri::undetermined;
  return out.is_yes() ? out : Clue{};
}

// Of who is well and neither hot nor cold, one sign may be what fear, old lungs, training or sleep makes: then it takes one that none of them
// makes, or two (our own rule).
Clue body_fails_by_illness(const Answers& answers) {
  if (!body_fails(answers).is_yes() || !well_and_as_warm_as_usual(answers)) {
    return body_fails(answers);
  }
  const Clue plain = of_child(answers) ? answers.count_below("general.oxygen_saturation", saturation_child_under)
                                       : led_by(answers.count_at_least("general.respiratory_rate", breaths_not_of_old_lungs),
                                                {answers.count_below("general.oxygen_saturation", saturation_old_lungs), heart_races(answers), answers.chosen("general.consciousness", Side::midline, {"mind_voice"})});
  Clue out = led_by(body_fails_twice(answers), {pressure_fails(answers), fails_alone(answers), plain});
  return out.is_yes() ? out : Clue{};
}

Clue told_fever_is_past(const Answers& answers) {
  return well_and_as_warm_as_usual(answers) ? led_by(answers.yes("history.fever"), {answers.warmest_at_least(fever_tenths)}) : Clue{};
}

Clue fails_alone(const Answers& answers) {
  const bool child = of_child(answers);
  // Who answers to voice only may be a small child asleep (NICE_NG51 asks there how it wakes); of anybody else it is a changed mind.
  const bool may_sleep = answers.aged(0, cold_child_under_years - 1) == Tri::yes || perhaps_newborn(answers);
  const auto pulse = [&](std::int64_t from) { return answers.count_at_least("general.pulse_rate", from); };
  const auto breaths = [&](std::int64_t from) { return answers.count_at_least("general.respiratory_rate", from); };
  const std::int64_t systolic = child ? pressure_too_low(answers) - systolic_child_alone_less : systolic_alone_under;
  return unasked(led_by(answers.pressure_below("general.blood_pressure_systolic", systolic),
                        {pulse(child ? pulse_child_alone_from : pulse_alone_from), answers.count_below("general.pulse_rate", pulse_alone_under),
                         breaths(child ? breaths_child_alone_from : breaths_alone_from), answers.count_below("general.respiratory_rate", breaths_alone_under),
                         answers.count_below("general.oxygen_saturation", saturation_alone_under), answers.colder_than(cold_alone_under_tenths),
                         answers.warm_at_least(hot_alone_from_tenths),
                         answers.chosen("general.consciousness", Side::midline, {"mind_new_confusion", "mind_pain", "mind_none"}),
                         may_sleep ? Clue{} : answers.chosen("general.consciousness", Side::midline, {"mind_voice"})}));
}

Clue too_cold(const Answers& answers) {
  const bool small = answers.aged(0, cold_child_under_years - 1) == Tri::yes || perhaps_newborn(answers);
  return unasked(answers.colder_than(small ? temperature_low_tenths : chilled_under_tenths));
}

namespace {

// How the person looks: pale, slow to refill or mottled on both feet, or will not move. NICE_NG51 has pallor, refill and moving as lesser signs of
// a child, mottled as high at any age. One foot is the leg's, but of who is pale or still and not hurt while nobody looked at the other (clinical
// safety, C8). Blue feet count of a child; of a grown person they are cold, or so for years, and count beside another look, heat and a sign that
// was measured. Our own rules.
struct Looks {
  int many = 0;
  bool mottled = false, pale_or_still = false;
  Clue blue;  // of a grown person, and not counted yet
  AskTrail other_foot;  // one foot is so, and nobody looked at the other
};

[[nodiscard]] Looks looks_ill(const Answers& answers, bool child, FindingTrail& because) {
  const Clue pale = answers.yes("general.pallor");
  const Clue still = answers.chosen("general.child_at_play", Side::midline, {"play_will_not_move"});
  Looks out;
  out.pale_or_still = pale.is_yes() || still.is_yes();
  const bool one_speaks = out.pale_or_still && !hurt_lately(answers).is_yes();
  const auto of_feet = [&](auto&& of) {
    const Clue left = of(Side::left);
    const Clue right = of(Side::right);
    const Clue both = every({left, right});
    out.other_foot.add((left.is_yes() || right.is_yes()) && both.value == Tri::undetermined ? both.ask : AskTrail{});
    return one_speaks && both.value == Tri::undetermined ? led_by(Clue{}, {left, right}) : both;
  };
  const auto coloured = [&](std::initializer_list<std::string_view> colours) {
    return of_feet([&](Side side) { return answers.chosen("vessel.foot_colour", side, colours); });
  };
  const Clue refill = of_feet([&](Side side) { return answers.yes("vessel.capillary_refill_slow", side); });
  const Clue mottled = coloured({"colour_mottled"});
  const Clue blue = mottled.is_yes() ? Clue{} : coloured({"colour_mottled", "colour_blue", "colour_dusky"});
  out.mottled = mottled.is_yes();
  out.blue = child ? Clue{} : blue;
  for (const Clue& one : {pale, still, refill, mottled, child ? blue : Clue{}}) {
    out.many += one.is_yes() ? 1 : 0;
    because.add(one.is_yes() ? one.because : FindingTrail{});
  }
  return out;
}

}  // namespace

AskTrail to_look_at(const Answers& answers, bool of_blood) {
  AskTrail ask;
  ask.add(answers.chosen("general.consciousness", Side::midline, {"mind_voice"}).ask);
  ask.add(answers.yes("general.pallor").ask);
  ask.add(heart_races(answers).ask);
  ask.add(breathes_fast(answers).ask);
  if (of_blood) {
    ask.add(pressure_fails(answers).ask);
    ask.add(answers.yes("vessel.capillary_refill_slow", Side::left).ask);
    ask.add(answers.yes("vessel.capillary_refill_slow", Side::right).ask);
  }
  return ask;
}

// Signs that NICE_NG51 has as moderate count one, those it has as high two; breath and oxygen are of one organ, and old lungs lack both, so they
// count once, and again with breath that is newly short. Fear alone has fast breath and pulse. How many make which class is our own rule.
SignsTogether signs_together(const Answers& answers) {
  SignsTogether out;
  const bool child = of_child(answers);
  const auto add = [&](const Clue& one, int worth) {
    out.clue.because.add(one.is_yes() ? one.because : FindingTrail{});
    return one.is_yes() ? worth : 0;
  };
  const auto graver_of = [&](const Clue& high, const Clue& moderate) { return high.is_yes() ? add(high, 2) : add(moderate, 1); };
  const bool pregnant = answers.yes("body.pregnancy").is_yes();
  const Clue racing = heart_races(answers);
  const int pulse = graver_of(led_by(racing, {heart_slow(answers)}), child ? pulse_raised(answers) : answers.count_at_least("general.pulse_rate", pulse_counts_over + 1));
  // What many have in pregnancy counts one there, and two from where it is a danger alone (our own rule).
  const Clue failing = pressure_fails(answers);
  const Clue band = child ? Clue{} : answers.pressure_below("general.blood_pressure_systolic", systolic_low_to + 1);
  const int pressure = pregnant && !child ? graver_of(answers.pressure_below("general.blood_pressure_systolic", systolic_alone_under), failing) : graver_of(failing, band);
  const Clue slow = child ? Clue{} : answers.count_below("general.pulse_rate", pulse_slow_under);
  const bool slow_and_low = slow.is_yes() && pressure > 0;
  add(slow_and_low ? slow : Clue{}, 1);
  const int mind = add(mind_changed(answers), 2);
  const Clue oxygen = lacks_oxygen(answers);
  const int lungs = add(led_by(breaths_raised(answers), {oxygen}), 1);
  const int short_breath = lungs > 0 ? add(answers.yes("history.breathless"), 1) : 0;
  const int heat = add(led_by(answers.warm_at_least(fever_wound_tenths), {answers.colder_than(temperature_low_tenths), told_fever_is_past(answers).is_yes() ? Clue{} : answers.yes("history.fever")}), 1);
  const Clue feels = answers.yes("history.unwell");
  const int unwell = add(feels, 1);
  Looks looks = looks_ill(answers, child, out.clue.because);
  const int signs = (pulse > 0 ? 1 : 0) + (pressure > 0 ? 1 : 0) + (mind > 0 ? 1 : 0) + lungs;
  // Beside nothing but the pulse of a fever, feet of the weather do not.
  if (looks.many > 0 && heat > 0 && signs > 0 && looks.blue.is_yes() && !(signs == 1 && pulse == 1 && feet_of_winter(answers))) {
    looks.many += add(looks.blue, 1);
    looks.mottled = true;
  }
  const int measured = pulse + pressure + mind + lungs + short_breath + heat;
  const int all = measured + unwell + looks.many;
  const bool not_fear = pressure + mind + heat + unwell + looks.many > 0 || oxygen.is_yes() || heart_slow(answers).is_yes() || short_breath > 0;
  const bool grave = pressure + mind > 0 || oxygen.is_yes() || pulse == 2;
  const bool fast_and_short = pulse > 0 && lungs > 0;
  out.plain = !child && pulse == 1 && pressure == 1 && lungs == 1 && !oxygen.is_yes() && mind + short_breath + heat + unwell + looks.many == 0;
  // Feeling ill is what everybody with a fever feels: of a grown person it adds to breath with pulse or pressure alone, of a child to how it looks.
  const bool of_child_too = all >= 3 && looks.many > 0 && heat + unwell > 0;
  const bool hot_and_looks = looks.many >= 2 && heat > 0;
  // Hot and ill in pregnancy or after a birth, as these fall ill sooner (from memory): one of pulse, breath and a pressure of 91 to 100 is the same
  // day, two are now. Our own rule.
  const bool bears = pregnant || answers.yes("history.childbirth_recent").is_yes();
  const int beside_heat = bears && heat > 0 ? (pulse > 0 ? 1 : 0) + lungs + (pressure > 0 ? 1 : add(band, 1)) : 0;
  const int bears_ill = unwell > 0 || (beside_heat >= 2 && feels.value == Tri::undetermined) ? beside_heat : 0;  // two, and nobody asked how she feels
  // Of the old sepsis is often cold and its pulse not fast (from memory): ill, and two of the red flags page's signs of toxicity (section 6) as they
  // stand there, are asked about, and beside a foot that is mottled or dusky, one of them and not hurt, are now. Our own rule.
  const bool old_and_ill = !child && unwell > 0 && answers.may_be_from(hip_fracture_from);
  const Clue skin = old_and_ill && !hurt_lately(answers).is_yes() ? skin_of_sepsis(answers) : Clue{};
  const bool toxic = old_and_ill && whole_body_answers(answers).is_yes();
  const bool toxic_skin = toxic && skin.is_yes();
  const bool toxic_without_heat = toxic && !answers.warm_at_least(fever_wound_tenths).is_yes();  // of a fever its pulse is asked from 101 on
  if (toxic_skin) {
    out.clue.because.add(skin.because);
    out.clue.because.add(whole_body_answers(answers).because);
  }
  out.three = not_fear && (child ? of_child_too || (measured >= 3 && pressure + mind > 0) || (heat > 0 && unwell > 0 && fast_and_short)
                                 : (measured >= 3 && !out.plain) || (unwell > 0 && fast_and_short) || hot_and_looks || bears_ill > 0);
  // A child mottled, pale or still, and ill, and one perhaps under three months by any look and feeling ill, or two; a grown person mottled and pale or slow to refill
  // beside fever, cold, feeling ill or a sign, or mottled and hot beside two signs: no fever is waited for. Pressure that is a danger alone beside a
  // pulse that answers, or does not. Our own rules.
  const bool well = feels.is_no() && heat == 0;
  const bool newborn = child && looks.many > 0 && !well && perhaps_newborn(answers);
  const bool looks_child = (looks.mottled && looks.pale_or_still && unwell > 0) || (newborn && looks.many + unwell >= 2);
  const bool three_looks = looks.many >= 3 && unwell > 0 && !hurt_lately(answers).is_yes();
  const bool mottled_grown = toxic_skin || (looks.mottled && looks.many >= 2 && heat + unwell > 0 && (heat + unwell >= 2 || signs > 0 || three_looks));
  // Pulse and pressure both out, and how the person looks: the blood does not reach the skin, whatever the cause and hurt or not. Pale alone, and
  // nobody asked whether the person feels ill, it takes a pulse that neither pain nor cold makes; of who says to be well two looks as well. Our own rule.
  const bool pulse_far = child ? pulse == 2 : answers.count_at_least("general.pulse_rate", pulse_of_pain_to + 1).is_yes();
  out.circulation = pulse > 0 && pressure > 0 && looks.many > 0 && (heat + unwell > 0 || (!well && (looks.many >= 2 || looks.mottled || pulse_far)) || (looks.many >= 2 && pulse_far));
  out.now = out.circulation || (child ? hot_and_looks || (looks.many > 0 && all >= 5) || looks_child
                                      : mottled_grown || (looks.mottled && heat > 0 && signs >= 2) ||
                                            (grave && not_fear && (measured >= 4 || (measured >= 3 && unwell > 0 && lungs > 0 && pressure > 0))) ||
                                            (pressure == 2 && (pulse > 0 || slow_and_low)) || bears_ill >= 2);
  out.pale = child && looks.many > 0;
  out.mottled = !child && (mottled_grown || hot_and_looks);
  out.of_blood = not_fear && measured >= 3 && pulse + pressure > 0;
  out.by_breath = measured - short_breath < 3;
  out.seen_of_blood = looks.many > 0 && pulse + pressure > 0 && looks.many + pulse + pressure + mind + lungs >= 3;
  out.of_blood_perhaps = pulse + pressure > 0;
  out.breath_with_it = out.of_blood_perhaps && (lungs > 0 || looks.many > 0);
  // Well, clear, breathing calmly and not mottled: pale and slow to refill with a pulse a little fast over a pressure that was taken and holds is
  // pain and cold; pale alone with a slow pulse of who is young is a faint. Our own rule.
  const bool pulse_known = racing.value != Tri::undetermined;
  const bool pressure_known = failing.value != Tri::undetermined;
  const bool faint = looks.many == 1 && pressure > 0 && answers.count_below("general.pulse_rate", pulse_of_faint_under).is_yes() && answers.aged(adult_signs_from, hip_fracture_from - 1) == Tri::yes;
  out.holds = well && mind + lungs == 0 && !looks.mottled && ((pressure_known && pressure == 0 && !pulse_far) || faint);
  // Nobody took pulse and pressure, and how the person looks asks for both: two looks, or one of who feels ill.
  const bool looks_open = newborn || skin.is_yes() || (looks.many > 0 && looks.many + unwell >= 2 && !well);
  out.unmeasured = looks_open && !pulse_known && !pressure_known;
  out.looks_like_shock = out.unmeasured && looks.many >= 2 && (unwell > 0 || mind > 0 || looks.many >= 3);
  out.clue.value = out.now || out.three ? Tri::yes : Tri::undetermined;
  // One sign that is high, or two that may be of pain, fear or old lungs, are asked about again.
  const bool two_of_blood = !child && pulse > 0 && pressure > 0;
  const bool low_or_racing = !child && (pressure == 2 || pulse == 2 || (pregnant && pressure > 0));
  const bool short_of_old = oxygen.is_yes() && short_breath > 0;
  const bool quiet_child = child && pulse == 2 && answers.chosen("general.child_at_play", Side::midline, {"play_quiet"}).is_yes();
  const bool by_looks = looks_open && (pulse + pressure > 0 || !pulse_known || !pressure_known);
  if (!out.clue.is_yes() && (two_of_blood || low_or_racing || slow_and_low || short_of_old || quiet_child || by_looks || toxic_without_heat || beside_heat > 0 || ((pulse > 0 || (!pulse_known && !child)) && heat > 0 && unwell > 0))) {
    out.again.because = out.clue.because;
    out.again.because.add(skin.because);
    out.again.ask = to_look_at(answers, two_of_blood || low_or_racing || slow_and_low || by_looks || toxic_without_heat);
    out.again.ask.add(looks.other_foot);
    out.again.ask.add(by_looks ? answers.warm_at_least(fever_wound_tenths).ask : AskTrail{});
  }
  return out;
}

Clue breath_unmeasured(const Answers& answers) {
  const Clue breathless = answers.yes("history.breathless");
  Clue out;
  if (breathless.is_yes()) {
    out.because = breathless.because;
    out.ask = answers.count_at_least("general.pulse_rate", pulse_clot_over + 1).ask;
    out.ask.add(lacks_oxygen(answers).ask);
    out.ask.add(breathes_fast(answers).ask);
  }
  return out;
}

Clue hot_body_answers(const Answers& answers) {
  const Clue heat = led_by(answers.warm_at_least(fever_wound_tenths), {answers.colder_than(temperature_low_tenths)});
  return led_by(body_fails_by_illness(answers), {heat.is_yes() ? every({heat, whole_body_answers(answers)}) : Clue{}});
}

// Recorded, and no infant under three months has it: more than it weighs, a trouble or an illness older than it, what grown people are asked and say
// (our own rule; the weight is a convention).
bool no_infant(const Answers& answers) {
  const View& view = answers.view();
  const auto heavy = answers.tried("general.body_mass", Side::midline, [](const model::Finding& finding) {
    const auto* mass = std::get_if<model::Mass>(&finding.value);
    return tri(mass != nullptr && mass->kg && mass->kg->steps > newborn_mass_to);
  });
  const auto& spoke = view.exam().who_spoke;
  return heavy.is_yes() || (spoke && spoke->who.text.starts_with("self")) || answers.count_at_least("history.diabetes_years", 1).is_yes() ||
         answers.count_at_least("history.weeks_since_onset", newborn_under_weeks).is_yes() || answers.yes("body.pregnancy").is_yes() ||
         answers.any_yes({"history.childbirth_recent", "history.memory_poor", "history.frail", "history.gout_known"}, Side::midline).is_yes();
}

bool brought_as_infant(const Answers& answers) {
  return answers.view().exam().complaint.text == "infant_hip" || answers.chosen("history.moves_about", Side::midline, {"moves_not_yet", "moves_rolls"}).is_yes() ||
         answers.chosen("history.walks_usually", Side::midline, {"walks_not_yet"}).is_yes();
}

// Nobody knows the age, or within three years, of an infant that is brought for its hip, or of one that does not move about yet, rolls, or is too young to walk: it
// may be as young. Who crawls, pulls up, walks or took steps is not, nor is of whom something is recorded that no infant has (our own rule).
bool perhaps_newborn(const Answers& answers) {
  const auto& months = answers.view().age_months_on_exam();
  if (months && (months->low >= newborn_under_months || months->high < newborn_under_months)) {
    return months->high < newborn_under_months;
  }
  const bool of_age = (months && months->high < 12 * tells_of_pain_from) || (brought_as_infant(answers) && !no_infant(answers));
  return of_age && !moves_as_older(answers);
}

namespace {

[[nodiscard]] Clue signs_counted(const Answers& answers) {
  Clue out = fact(Tri::no);
  int signs = 0;
  const Clue heat = led_by(answers.warm_at_least(fever_wound_tenths), {answers.colder_than(temperature_low_tenths)});
  const Clue white = led_by(answers.count_at_least("general.lab_white_cells", white_cells_over + 1),
                            {answers.count_below("general.lab_white_cells", white_cells_under)});
  for (const Clue& one : {heat, pulse_raised(answers), breaths_raised(answers), white}) {
    if (one.is_yes()) {
      ++signs;
      out.because.add(one.because);
    }
  }
  const Clue fails = body_fails_by_illness(answers);
  out.because.add(fails.is_yes() ? fails.because : FindingTrail{});
  out.value = tri(signs >= 2 || fails.is_yes());
  return out;
}

}  // namespace

Clue whole_body_answers(const Answers& answers) {
  return answers.once(Known::whole_body, Side::midline, [&]() -> Clue { return signs_counted(answers); });
}

}  // namespace limbledger::interpret
