// Whether there was an injury, how long ago, and since when the trouble lasts, as it was told.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"

#include <utility>

namespace limbledger::interpret {

using model::Side;

namespace {

constexpr std::int64_t days_a_week = 7;

// Days since the recorded injury, as far as they are known.
[[nodiscard]] Tri injured_within(const View& view, std::int64_t days) {
  const auto& injured_on = view.exam().injured_on;
  const auto& day = view.examined_on();
  if (!injured_on || !day) {
    return Tri::undetermined;
  }
  const std::int64_t least = day->first_day() - injured_on->last_day();
  const std::int64_t most = day->last_day() - injured_on->first_day();
  if (most < 0) {
    return Tri::undetermined;
  }
  return most <= days ? Tri::yes : (least > days ? Tri::no : Tri::undetermined);
}

// What happened, of whatever day.
[[nodiscard]] Clue told_of_injury(const Answers& answers) {
  const Clue mechanism = answers.hear_as("history.mechanism", Side::midline, [](const model::Finding& finding) -> Said {
    const auto* choice = std::get_if<model::Choice>(&finding.value);
    if (choice == nullptr || choice->choice.text == "not_known") {
      return {std::nullopt, "unsure"};
    }
    return {static_cast<std::uint8_t>(choice->choice.text == "no_injury" ? 1 : 2), "known"};
  });
  return led_by(mechanism, {answers.yes("history.fall_or_blow")});
}

[[nodiscard]] Clue of_old_trouble(const Answers& answers) { return answers.count_at_least("history.weeks_since_onset", lately_weeks + 1); }

}  // namespace

bool complains_of_something_recent(const View& view) {
  const std::string& why = view.exam().complaint.text;
  return why == "acute_knee" || why == "ankle_injury" || why == "hip_after_fall";
}

Clue injured(const Answers& answers) {
  return answers.once(Known::injured, Side::midline, [&]() -> Clue {
    const Tri lately = injured_within(answers.view(), lately_weeks * days_a_week);
    if (lately != Tri::undetermined) {
      return fact(lately);
    }
    const Clue happened = told_of_injury(answers);
    // Told without its day: old only where the trouble is.
    const Clue old = of_old_trouble(answers);
    return happened.is_yes() && old.is_yes() ? negate(old) : happened;
  });
}

bool hurt_anew(const Answers& answers) {
  return complains_of_something_recent(answers.view()) && of_old_trouble(answers).is_yes() &&
         injured_within(answers.view(), lately_weeks * days_a_week) == Tri::undetermined && told_of_injury(answers).is_yes();
}

Clue hurt_as_told(const Answers& answers) { return hurt_anew(answers) ? told_of_injury(answers) : injured(answers); }

Clue hurt_lately(const Answers& answers) {
  return answers.once(Known::hurt_lately, Side::midline, [&]() -> Clue {
    const Clue hurt = hurt_as_told(answers);
    // A complaint alone makes nothing lately that is known to have begun long ago.
    return hurt.value == Tri::undetermined && !of_old_trouble(answers).is_yes() && complains_of_something_recent(answers.view()) ? fact(Tri::yes) : hurt;
  });
}

// "No injury" beside a break or a joint out of place that is seen is a story that does not fit: the sign stands as if nobody had told how it came
// (red flags page, section 0: the cautious reading; our own rule). Of what is old it is an answer.
bool denied_beside(const Answers& answers) {
  return told_of_injury(answers).is_no() && injured_within(answers.view(), lately_weeks * days_a_week) == Tri::undetermined && !of_old_trouble(answers).is_yes();
}

Clue hurt_beside(const Answers& answers, const Clue& sign, bool a_wound) {
  const bool denied = !a_wound && sign.is_yes() && denied_beside(answers);
  const Clue lately = denied ? (complains_of_something_recent(answers.view()) ? fact(Tri::yes) : Clue{}) : hurt_lately(answers);
  if (!sign.is_yes()) {
    return circumstance(lately);
  }
  Clue hurt = led_by(lately, {answers.yes("history.fall_recent")});
  // The weeks are of the trouble: what was told may be of then or of today.
  if (hurt.is_no() && told_of_injury(answers).is_yes() && injured_within(answers.view(), lately_weeks * days_a_week) == Tri::undetermined) {
    hurt = answers.yes("history.fall_recent");
  }
  AskTrail ask = hurt.ask;
  Clue out = circumstance(hurt);
  out.ask = std::move(ask);
  return out;
}

Clue out_of_shape(const Answers& answers, Side side, const Clue& shape) {
  const Clue hurt = every({hurt_beside(answers, shape), shape});
  if (!shape.is_yes() || hurt.is_yes()) {
    return hurt;
  }
  const bool denied = told_of_injury(answers).is_no() && !denied_beside(answers) && !answers.yes("history.fall_recent").is_yes();
  const Clue lost = denied ? Clue{} : one_gone_one_poor(answers, side);
  return lost.is_yes() ? every({shape, lost}) : hurt;
}

Clue injury_long_ago(const Answers& answers) {
  if (!hurt_long_ago(answers)) {
    return {};
  }
  Clue out = fact(Tri::yes);
  for (const Clue& one : {told_of_injury(answers), of_old_trouble(answers)}) {
    out.because.add(one.is_yes() ? one.because : FindingTrail{});
  }
  return out;
}

Clue injury_left_alone(const Answers& answers) {
  const Tri dated = injured_within(answers.view(), left_alone_weeks * days_a_week);
  const bool lately = dated != Tri::undetermined ? dated == Tri::yes : answers.count_at_least("history.weeks_since_onset", left_alone_weeks + 1).is_no();
  return lately ? injury_long_ago(answers) : Clue{};
}

Clue of_short_history(const Answers& answers) {
  return answers.once(Known::of_short_history, Side::midline, [&]() -> Clue {
    const Tri injury = injured_within(answers.view(), short_history_weeks * days_a_week);
    if (injury == Tri::yes) {
      return fact(Tri::yes);
    }
    const Clue longer = answers.count_at_least("history.weeks_since_onset", short_history_weeks + 1);
    const Clue told = answers.yes("history.pain_over_2_weeks");
    Clue out = negate(longer.value != Tri::undetermined ? longer : told);
    if (out.value == Tri::undetermined) {
      out = negate(longer);
    }
    if (out.value == Tri::undetermined && complains_of_something_recent(answers.view())) {
      return fact(Tri::yes);
    }
    out.against.clear();  // that it began long ago is no answer about the sign
    return out;
  });
}

Clue over_two_weeks(const Answers& answers) {
  return answers.once(Known::over_two_weeks, Side::midline, [&]() -> Clue {
    return led_by(answers.count_at_least("history.weeks_since_onset", short_history_weeks + 1), {answers.yes("history.pain_over_2_weeks")});
  });
}

bool injured_weeks_ago(const Answers& answers) { return injured_within(answers.view(), short_history_weeks * days_a_week) == Tri::no; }

bool hurt_long_ago(const Answers& answers) {
  const Tri lately = injured_within(answers.view(), lately_weeks * days_a_week);
  if (lately != Tri::undetermined) {
    return lately == Tri::no;
  }
  if (hurt_anew(answers)) {
    return false;
  }
  const Clue told = led_by(answers.yes("history.fall_or_blow"), {negate(answers.chosen("history.mechanism", Side::midline, {"no_injury"}))});
  return told.is_yes() && injured(answers).is_no();
}

}  // namespace limbledger::interpret
