// What the whole body shows: fever, and the signs of sepsis and shock as the age has them. Source: red flags page, sections 6 and 22; the limits
// and where they come from stand in limits.hpp.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"

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

// The pressure that is a danger by itself.
[[nodiscard]] Clue pressure_fails(const Answers& answers) {
  const bool of_child = answers.aged(0, adult_signs_from - 1) == Tri::yes;
  return answers.pressure_below("general.blood_pressure_systolic", of_child ? pressure_too_low(answers) : systolic_failing_under);
}

[[nodiscard]] Clue mind_changed(const Answers& answers) {
  return answers.chosen("general.consciousness", Side::midline, {"mind_new_confusion", "mind_voice", "mind_pain", "mind_none"});
}

[[nodiscard]] Clue breathes_fast(const Answers& answers) { return answers.count_at_least("general.respiratory_rate", signs_of_age(answers).breaths_high); }

[[nodiscard]] Clue lacks_oxygen(const Answers& answers) { return answers.count_below("general.oxygen_saturation", saturation_under); }

[[nodiscard]] Clue heart_races(const Answers& answers) { return answers.count_at_least("general.pulse_rate", signs_of_age(answers).pulse_high); }

[[nodiscard]] Clue heart_slow(const Answers& answers) {
  return answers.aged(0, adult_signs_from - 1) == Tri::yes ? answers.count_below("general.pulse_rate", pulse_child_under) : Clue{};
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

Clue hot_body_answers(const Answers& answers) {
  const Clue heat = led_by(answers.warm_at_least(fever_wound_tenths), {answers.colder_than(temperature_low_tenths)});
  return led_by(body_fails(answers), {heat.is_yes() ? every({heat, whole_body_answers(answers)}) : Clue{}});
}

bool perhaps_newborn(const Answers& answers) {
  const auto months = answers.view().age_months_on_exam();
  return months && months->low < newborn_under_months;
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
  const Clue fails = body_fails(answers);
  out.because.add(fails.is_yes() ? fails.because : FindingTrail{});
  out.value = tri(signs >= 2 || fails.is_yes());
  return out;
}

}  // namespace

Clue whole_body_answers(const Answers& answers) {
  return answers.once(Known::whole_body, Side::midline, [&]() -> Clue { return signs_counted(answers); });
}

}  // namespace limbledger::interpret
