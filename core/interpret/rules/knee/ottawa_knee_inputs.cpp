#include "core/interpret/rules/knee/ottawa_knee_inputs.hpp"

#include <algorithm>

namespace limbledger::interpret {

using model::Side;

namespace {

[[nodiscard]] std::optional<Between> age_of(const View& view, std::string& state) {
  std::optional<model::AgeInterval> age;
  if (view.exam().injured_on && view.exam().injured_on->first_day() <= view.examined_on().last_day()) {
    age = view.age_on_day(*view.exam().injured_on);
  }
  if (!age) {
    age = view.age_on_exam();  // also where the injury is recorded before the birth: one of the two is wrong, the person is here
  }
  state = age ? (age->low == age->high ? "known" : "known_in_part") : "not_asked";
  return age ? std::optional(Between{age->low, age->high}) : std::nullopt;
}

[[nodiscard]] std::optional<Between> days_of(const View& view, std::string& state) {
  const auto& injured = view.exam().injured_on;
  state = "not_asked";
  if (!injured) {
    return std::nullopt;
  }
  const Between days{view.examined_on().first_day() - injured->last_day(), view.examined_on().last_day() - injured->first_day()};
  if (days.high < 0) {
    state = "after_the_examination";
    return std::nullopt;
  }
  const bool exact = days.low == days.high;
  state = exact ? "known" : "known_in_part";
  return Between{std::max<std::int64_t>(days.low, 0), days.high};
}

// Four steps as an answer or as a number of steps.
[[nodiscard]] Said says_four_steps(const model::Finding& finding) {
  if (const auto* count = std::get_if<model::CountValue>(&finding.value)) {
    return {static_cast<std::uint8_t>(count->count.steps >= steps_needed ? 2 : 1), "known"};
  }
  return says_answer(finding);
}

[[nodiscard]] bool is_pregnancy(const model::ChoiceId& choice) { return choice.text == "pregnancy"; }
[[nodiscard]] bool is_none(const model::ChoiceId& choice) { return choice.text == "none_of_these" || choice.text == "none"; }

// Pregnancy is an exclusion of its own kind and is not counted here.
[[nodiscard]] Said says_excluded(const model::Finding& finding) {
  std::vector<model::ChoiceId> named;
  if (const auto* choices = std::get_if<model::Choices>(&finding.value)) {
    named = choices->choices;
  } else if (const auto* choice = std::get_if<model::Choice>(&finding.value)) {
    named = {choice->choice};
  } else {
    return says_answer(finding);
  }
  const bool any = std::any_of(named.begin(), named.end(), [](const auto& c) { return !is_none(c) && !is_pregnancy(c); });
  return {static_cast<std::uint8_t>(any ? 2 : 1), "known"};
}

[[nodiscard]] bool names_pregnancy(const model::Finding& finding) {
  if (const auto* choices = std::get_if<model::Choices>(&finding.value)) {
    return std::any_of(choices->choices.begin(), choices->choices.end(), is_pregnancy);
  }
  const auto* choice = std::get_if<model::Choice>(&finding.value);
  return choice != nullptr && is_pregnancy(choice->choice);
}

// Flexion that one finding allows, in tenths of a degree. "Full" and "as the other side" are words and give no number.
[[nodiscard]] std::optional<Between> flexion_of(const model::Finding& finding, std::string& state) {
  constexpr Between any{-36000, 36000};
  const auto* angle = std::get_if<model::Angle>(&finding.value);
  if (angle == nullptr || angle->reads || !(angle->toward_deg || angle->deg)) {
    state = "unresolved";
    return std::nullopt;
  }
  const std::int64_t reached = angle->toward_deg ? angle->toward_deg->steps : angle->deg->steps;
  Between between{reached, reached};
  if (angle->bound) {
    (*angle->bound == model::Bound::at_least ? between.high : between.low) = *angle->bound == model::Bound::at_least ? any.high : any.low;
  }
  state = "known";
  return between;
}

// The lowest of active and passive recorded. Readings of one motion that differ span what they span.
void hear_flexion(const View& view, Side side, OttawaHeard& inputs) {
  std::string& state = inputs.states[at(OttawaInput::flex)];
  state = "not_asked";
  std::optional<Between> lowest;
  bool conflict = false;
  bool open = false;
  bool blocked = false;
  for (const std::string_view item : {"knee.flexion_active", "knee.flexion_passive", "knee.mcmurray"}) {
    std::optional<Between> motion;
    for (const model::Finding* finding : view.at(item, side)) {
      const bool in_conflict = finding->standing && *finding->standing == model::Standing::in_conflict;
      const bool mcmurray = item == "knee.mcmurray";
      std::string why(unsettled_by(*finding));
      if (const auto* not_done = std::get_if<model::NotDone>(&finding->value)) {
        blocked = blocked || (why.empty() && not_done->reason == model::WhyNot::blocked);
        why = why.empty() ? std::string(state_of(not_done->reason)) : why;
      }
      if (mcmurray) {
        if (blocked) {
          inputs.findings.push_back(finding);
        }
        continue;
      }
      inputs.findings.push_back(finding);
      const std::optional<Between> read = why.empty() ? flexion_of(*finding, why) : std::nullopt;
      conflict = conflict || in_conflict;
      // Another examiner's "could not" beside a reading leaves the motion open.
      const bool beside = unsettled_by(*finding).empty() && view.at(item, side).size() > 1;
      open = open || (!read && (in_conflict || beside));
      if (!read) {
        state = lowest || motion ? state : why;
        continue;
      }
      inputs.flexions.emplace_back(finding,
                                   model::Degrees{std::get<model::Angle>(finding->value).toward_deg.value_or(model::Degrees{read->low}).steps});
      motion = motion ? Between{std::min(motion->low, read->low), std::max(motion->high, read->high)} : *read;
    }
    if (motion) {
      lowest = lowest ? Between{std::min(lowest->low, motion->low), std::min(lowest->high, motion->high)} : *motion;
    }
  }
  if (lowest && !open) {
    inputs.knee.flex = lowest;
    const bool decided = lowest->high < flexion_needed || lowest->low >= flexion_needed;
    state = decided ? "known" : (conflict ? "in_conflict" : "not_precise_enough");
  } else if (lowest) {
    state = "in_conflict";
  } else if (blocked) {
    // A joint that blocks before the test's starting position does not reach 90 degrees.
    inputs.knee.flex = Between{0, flexion_needed - 1};
    state = "known";
  }
}

// Whether the knee is not there to examine: one item says no limb, and none of this side was examined.
[[nodiscard]] bool has_no_knee(const View& view, Side side) {
  bool said = false;
  for (const model::Finding* finding : view.findings()) {
    if (finding->side != side || !finding->item.text.starts_with("knee.")) {
      continue;
    }
    const auto* not_done = std::get_if<model::NotDone>(&finding->value);
    if (not_done == nullptr) {
      return false;
    }
    said = said || (not_done->reason == model::WhyNot::no_limb && settles(*finding));
  }
  return said;
}

[[nodiscard]] bool is_replaced(const View& view, Side side) {
  if (view.says_yes("body.knee_replaced", side)) {
    return true;
  }
  const auto& all = view.findings();
  return std::any_of(all.begin(), all.end(), [&](const model::Finding* finding) {
    const auto* not_done = std::get_if<model::NotDone>(&finding->value);
    return not_done != nullptr && not_done->reason == model::WhyNot::implant && finding->side == side && finding->item.text.starts_with("knee.");
  });
}

}  // namespace

OttawaHeard hear_ottawa(const View& view, Side side) {
  OttawaHeard inputs;
  inputs.no_limb = has_no_knee(view, side);
  inputs.replaced = is_replaced(view, side);
  const auto replaced = view.at("body.knee_replaced", side);
  inputs.findings.insert(inputs.findings.end(), replaced.begin(), replaced.end());
  inputs.knee.age = age_of(view, inputs.states[at(OttawaInput::age)]);
  inputs.knee.days = days_of(view, inputs.states[at(OttawaInput::days)]);
  const auto both_of = [&](std::string_view item) {
    std::vector<const model::Finding*> found = view.at(item, side);
    const std::vector<const model::Finding*> midline = view.at(item, Side::midline);
    found.insert(found.end(), midline.begin(), midline.end());
    return found;
  };
  const auto take = [&](OttawaInput input, const Says& says) {
    Heard heard = hear(both_of(ottawa_items[at(input)]), no_or_yes, says);
    inputs.states[at(input)] = heard.state;
    inputs.findings.insert(inputs.findings.end(), heard.findings.begin(), heard.findings.end());
    return heard.as_tri();
  };
  inputs.knee.fib = take(OttawaInput::fib, &says_answer);
  inputs.knee.pat = take(OttawaInput::pat, &says_answer);
  inputs.knee.other = take(OttawaInput::other, &says_answer);
  hear_flexion(view, side, inputs);
  inputs.knee.imm = take(OttawaInput::imm, &says_four_steps);
  const auto& spoke = view.exam().who_spoke;
  if (inputs.knee.imm != Tri::undetermined && spoke && spoke->reliable && *spoke->reliable == model::Reliable::no) {
    inputs.knee.imm = Tri::undetermined;
    inputs.states[at(OttawaInput::imm)] = "not_reliable";
  }
  const Tri now = take(OttawaInput::steps, &says_four_steps);
  if (now != Tri::undetermined) {
    inputs.knee.steps = now == Tri::yes ? Between{steps_needed, steps_needed} : Between{0, steps_needed - 1};
  }
  inputs.knee.excl = take(OttawaInput::excl, &says_excluded);

  const Heard reliable = hear(both_of("general.answers_reliable"), no_or_yes, &says_answer);
  inputs.findings.insert(inputs.findings.end(), reliable.findings.begin(), reliable.findings.end());
  if (!reliable.findings.empty() && reliable.as_tri() != Tri::yes) {
    inputs.unreliable = reliable.as_tri() == Tri::no;
    inputs.knee.excl = or_(inputs.knee.excl, not_(reliable.as_tri()));
    inputs.states[at(OttawaInput::excl)] = inputs.unreliable ? "known" : "not_reliable";
  }

  const Heard pregnant = hear(both_of("body.pregnancy"), no_or_yes, &says_answer);
  inputs.findings.insert(inputs.findings.end(), pregnant.findings.begin(), pregnant.findings.end());
  const auto exclusions = both_of(ottawa_items[at(OttawaInput::excl)]);
  const bool named = std::any_of(exclusions.begin(), exclusions.end(), [](const auto* f) { return settles(*f) && names_pregnancy(*f); });
  inputs.pregnancy_recorded = !pregnant.findings.empty() || named;
  const bool male = view.person() && view.person()->sex == model::Sex::male;
  inputs.could_be_pregnant = !male && (!inputs.knee.age || (inputs.knee.age->high >= 12 && inputs.knee.age->low <= 55));
  // From 12 to 55 years (our convention) not asked is never read as not pregnant.
  const Tri unasked = inputs.could_be_pregnant ? Tri::undetermined : Tri::no;
  inputs.knee.pregnant = named ? Tri::yes : (pregnant.findings.empty() ? unasked : pregnant.as_tri());
  inputs.states[at(OttawaInput::pregnant)] = named ? "known" : pregnant.state;
  return inputs;
}

std::vector<Side> injured_knees(const View& view) {
  std::vector<Side> sides;
  const auto& complaint = view.exam().side;
  const bool sided = complaint && *complaint != Side::midline;
  bool any_input = view.exam().complaint.text == "acute_knee" || view.exam().injured_on.has_value();
  for (const model::Finding* finding : view.findings()) {
    any_input = any_input || (std::find(ottawa_items.begin() + 2, ottawa_items.begin() + 5, finding->item.text) != ottawa_items.begin() + 5) ||
                finding->item.text == "history.steps_at_once" || finding->item.text == "gait.steps_now";
  }
  if (!any_input) {
    return sides;
  }
  for (const Side side : {Side::left, Side::right}) {
    bool tender = false;
    for (const OttawaInput input : {OttawaInput::fib, OttawaInput::pat, OttawaInput::other}) {
      tender = tender || view.says_yes(ottawa_items[at(input)], side);
    }
    const auto& all = view.findings();
    const bool examined = std::any_of(all.begin(), all.end(), [&](const auto* f) { return f->side == side && f->item.text.starts_with("knee."); });
    if (tender || (sided ? *complaint == side : examined)) {
      sides.push_back(side);
    }
  }
  return sides;
}

}  // namespace limbledger::interpret
