// The hip behind an older knee: a break that walking does not settle. Source: red flags page, hip fracture in an older person.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

namespace limbledger::interpret {

using model::Side;

namespace {

// Turned gently, and it hurts or is not let.
[[nodiscard]] Clue hurts_when_turned(const Answers& answers, Side side) {
  const auto turned = [&](std::string_view item) {
    return answers.tried(item, side, [](const model::Finding& finding) {
      const auto* not_done = std::get_if<model::NotDone>(&finding.value);
      if (not_done != nullptr) {
        return not_done->reason == model::WhyNot::pain ? Tri::yes : Tri::undetermined;
      }
      return tri(finding.pain && finding.pain->score && finding.pain->score->steps > 0);
    });
  };
  return led_by(turned("hip.internal_rotation_passive_seated"),
                {turned("hip.internal_rotation_passive_supine"), turned("hip.external_rotation_passive_seated"), turned("hip.log_roll")});
}

}  // namespace

// After an injury, or where nobody knows why the person stopped walking. Taking steps is no answer: undisplaced ones walk.
Raised hip_fracture_old(const Answers& answers, Side side) {
  const Clue turned = hurts_when_turned(answers, side);
  const Clue seen = answers.chosen("history.film_result", side, {"hip_fracture_seen"});
  const Clue rolls = answers.positive("hip.log_roll", side);
  const Clue sign = led_by(rolls, {turned, answers.chosen("gait.pattern", side, {"turned_out"}), seen});
  const Clue why = either({circumstance(hurt_lately(answers)), circumstance(cannot_walk(answers))});
  Raised raised;
  raised.applies = answers.aged(hip_fracture_from, 200);
  raised.clue = every({why, sign});
  if (raised.clue.value == Tri::undetermined && cannot_walk(answers).is_yes()) {
    raised.clue.because.add(cannot_walk(answers).because);
  }
  raised.what = seen.is_yes() ? "seen" : "raised";
  return raised;
}

}  // namespace limbledger::interpret
