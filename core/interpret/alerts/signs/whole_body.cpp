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

// By age, or where nobody knows it by what the child is brought for: an infant's pulse is no grown person's.
[[nodiscard]] bool of_child(const Answers& answers) {
  constexpr std::int64_t highest_age = 200;
  const Tri young = answers.aged(0, adult_signs_from - 1);
  const std::string& why = answers.view().exam().complaint.text;
  const bool brought = why == "infant_hip" || why == "limping_child" || why == "child_alignment";
  return young == Tri::yes || (young == Tri::undetermined && brought && answers.aged(0, highest_age) != Tri::yes);
}

// The pressure that is a danger by itself. In pregnancy 90 is what many have (our own rule).
[[nodiscard]] Clue pressure_fails(const Answers& answers) {
  const bool lower = of_child(answers) || answers.yes("body.pregnancy").is_yes();
  return answers.pressure_below("general.blood_pressure_systolic", lower ? pressure_too_low(answers) : systolic_failing_under);
}

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
  return answers.count_at_least("general.pulse_rate", answers.yes("body.pregnancy").is_yes() ? pulse_racing_from : pulse_clot_over + 1);
}

Clue breaths_raised(const Answers& answers) { return answers.count_at_least("general.respiratory_rate", signs_of_age(answers).breaths_raised); }

Clue pressure_low(const Answers& answers) { return answers.pressure_below("general.blood_pressure_systolic", pressure_too_low(answers)); }

Clue breathes_badly(const Answers& answers) { return unasked(led_by(breathes_fast(answers), {lacks_oxygen(answers)})); }

bool signs_recorded(const Answers& answers) {
  constexpr std::array<ItemKey, 8> signs{"general.temperature",       "general.pulse_rate",    "general.respiratory_rate", "general.oxygen_saturation",
                                         "general.blood_pressure_systolic", "general.consciousness", "general.pallor",           "general.child_at_play"};
  const View& view = answers.view();
  return std::any_of(signs.begin(), signs.end(), [&](const ItemKey& one) {
    const model::Item* item = view.edition().item_of(one);
    return item != nullptr && !view.of(*item).empty();
  });
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
  // Of one organ, and two signs of it only with breath that is short: old lungs, and thin air, have both for years. Fear alone has fast breath
  // and pulse. Our own rules.
  const bool lungs = found({oxygen, breaths}) > 0;
  const bool short_breath = lungs && found({answers.yes("history.breathless")}) > 0;
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

// A child that is pale, slow to refill or mottled on both feet, or will not move: one or more of NICE_NG51's lesser signs of a child.
[[nodiscard]] int looks_ill(const Answers& answers, FindingTrail& because) {
  const auto both = [&](auto&& of) { return every({of(Side::left), of(Side::right)}); };
  int many = 0;
  for (const Clue& one : {answers.yes("general.pallor"), answers.chosen("general.child_at_play", Side::midline, {"play_will_not_move"}),
                          both([&](Side side) { return answers.yes("vessel.capillary_refill_slow", side); }),
                          both([&](Side side) { return answers.chosen("vessel.foot_colour", side, {"colour_mottled", "colour_blue", "colour_dusky"}); })}) {
    many += one.is_yes() ? 1 : 0;
    because.add(one.is_yes() ? one.because : FindingTrail{});
  }
  return many;
}

}  // namespace

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
  const int pulse = graver_of(led_by(heart_races(answers), {heart_slow(answers)}),
                              child ? pulse_raised(answers) : answers.count_at_least("general.pulse_rate", pulse_counts_over + 1));
  const bool no_pressure_band = child || answers.yes("body.pregnancy").is_yes();
  const int pressure = graver_of(pressure_fails(answers), no_pressure_band ? Clue{} : answers.pressure_below("general.blood_pressure_systolic", systolic_low_to + 1));
  const int mind = add(mind_changed(answers), 2);
  const Clue oxygen = lacks_oxygen(answers);
  const int lungs = add(led_by(breaths_raised(answers), {oxygen}), 1);
  const int short_breath = lungs > 0 ? add(answers.yes("history.breathless"), 1) : 0;
  const int heat = add(led_by(answers.warm_at_least(fever_wound_tenths), {answers.colder_than(temperature_low_tenths), told_fever_is_past(answers).is_yes() ? Clue{} : answers.yes("history.fever")}), 1);
  const int unwell = add(answers.yes("history.unwell"), 1);
  const int looks = child ? looks_ill(answers, out.clue.because) : 0;
  const int measured = pulse + pressure + mind + lungs + short_breath + heat;
  const int all = measured + unwell + looks;
  const bool not_fear = pressure + mind + heat + unwell + looks > 0 || oxygen.is_yes() || heart_slow(answers).is_yes() || short_breath > 0;
  const bool grave = pressure + mind > 0 || oxygen.is_yes() || pulse == 2;
  // Feeling ill is what everybody with a fever feels: of a grown person it adds to breath and pressure alone, of a child to how it looks.
  const bool of_child_too = all >= 3 && looks > 0 && heat + unwell > 0;
  out.three = not_fear && (child ? of_child_too || (measured >= 3 && pressure + mind > 0) : measured >= 3);
  out.now = child ? (looks >= 2 && heat > 0) || (looks > 0 && all >= 5)
                  : grave && not_fear && (measured >= 4 || (measured >= 3 && unwell > 0 && lungs > 0 && pressure > 0));
  out.pale = looks > 0;
  out.of_blood = out.three && pulse + pressure > 0;
  out.clue.value = out.now || out.three ? Tri::yes : Tri::undetermined;
  if (!out.clue.is_yes()) {
    out.clue.because.clear();
  }
  return out;
}

Clue hot_body_answers(const Answers& answers) {
  const Clue heat = led_by(answers.warm_at_least(fever_wound_tenths), {answers.colder_than(temperature_low_tenths)});
  return led_by(body_fails_by_illness(answers), {heat.is_yes() ? every({heat, whole_body_answers(answers)}) : Clue{}});
}

// Nobody knows the age of an infant that is brought for its hip, or of one that does not move about yet, or rolls: it may be as young. Who crawls, pulls up, walks or took steps is not (our own rule).
bool perhaps_newborn(const Answers& answers) {
  const auto months = answers.view().age_months_on_exam();
  const bool of_age = months ? months->low < newborn_under_months
                             : answers.view().exam().complaint.text == "infant_hip" ||
                                   answers.chosen("history.moves_about", Side::midline, {"moves_not_yet", "moves_rolls"}).is_yes();
  return of_age && !((!months || months->high >= newborn_under_months) && moves_as_older(answers));
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
