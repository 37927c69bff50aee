#include "core/interpret/rules/knee/ottawa_knee_inputs.hpp"

#include <algorithm>

namespace limbledger::interpret {

using model::Side;

namespace {

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

}  // namespace

OttawaHeard hear_ottawa(const View& view, Side side) {
  OttawaHeard inputs{hear_knee(view, side), {}, {}, {}};
  const auto take = [&](OttawaInput input, const Says& says) {
    const Told told = tell(view, ottawa_items[at(input)], side, says, inputs.findings);
    inputs.states[at(input)] = told.state;
    return told.value;
  };
  const auto keep = [&](OttawaInput input, const std::string& state) { inputs.states[at(input)] = state; };
  inputs.knee.age = inputs.age;
  keep(OttawaInput::age, inputs.age_state);
  inputs.knee.days = inputs.days;
  keep(OttawaInput::days, inputs.days_state);
  inputs.knee.fib = take(OttawaInput::fib, &says_answer);
  inputs.knee.pat = take(OttawaInput::pat, &says_answer);
  inputs.knee.other = take(OttawaInput::other, &says_answer);
  hear_flexion(view, side, inputs);
  inputs.knee.imm = take(OttawaInput::imm, &says_four_steps);
  if (inputs.knee.imm != Tri::undetermined && history_not_reliable(view)) {
    inputs.knee.imm = Tri::undetermined;
    keep(OttawaInput::imm, "not_reliable");
  }
  inputs.knee.steps = inputs.steps;
  keep(OttawaInput::steps, inputs.steps_state);
  inputs.knee.excl = inputs.excluded.value;
  keep(OttawaInput::excl, inputs.excluded.state);
  inputs.knee.pregnant = inputs.pregnant.value;
  keep(OttawaInput::pregnant, inputs.pregnant.state);
  return inputs;
}

}  // namespace limbledger::interpret
