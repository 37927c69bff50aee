// Torn cords and blocks: the extensor of the knee, the heel cord, the knee that does not straighten.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

namespace limbledger::interpret {

using model::Side;
using model::WhyNot;

// Not lifting the straight leg after an injury is enough, until pain or effusion is shown to be the cause.
Raised extensor_rupture(const Answers& answers, Side side) {
  const Clue raise = answers.positive("knee.straight_leg_raise_active", side);
  const Clue fails = led_by(raise, {answers.stopped("knee.straight_leg_raise_active", side, {WhyNot::unable})});
  const Clue gap = either({answers.yes("knee.quadriceps_gap", side), answers.yes("knee.patellar_tendon_gap", side),
                           answers.chosen("knee.look_patella_height", side, {"high", "low"})});
  Raised raised;
  raised.clue = every({circumstance(hurt_as_told(answers)), fails});
  if (gap.is_yes() && !raised.clue.is_no()) {
    raised.clue.because.add(gap.because);
  }
  raised.what = gap.is_yes() ? "gap" : "raised";
  return raised;
}

// One sign is enough after a kick to the heel cord or an injury. The squeeze is asked for; one that moves the foot less settles
// nothing. Walking and a heel rise are no answer: they do not leave a tear out.
Raised achilles_rupture(const Answers& answers, Side side) {
  const Clue squeeze = answers.hear_as("ankle.calf_squeeze", side, [](const model::Finding& finding) -> Said {
    const auto* grade = std::get_if<model::Grade>(&finding.value);
    if (grade == nullptr || (grade->grade.text != "absent" && grade->grade.text != "full")) {
      return {std::nullopt, "unsure"};
    }
    return {static_cast<std::uint8_t>(grade->grade.text == "absent" ? 2 : 1), "known"};
  });
  const Clue sign = led_by(squeeze, {answers.positive("ankle.matles", side), answers.yes("ankle.achilles_gap", side)});
  const Clue kick = answers.yes("history.kick_to_heel_cord", side);
  const Clue hurt = circumstance(hurt_lately(answers));
  Raised raised;
  raised.clue = every({hurt.is_yes() ? hurt : either({kick, hurt}), sign});
  if (kick.is_yes()) {
    raised.clue.because.add(kick.because);
  }
  return raised;
}

// A sudden block: after an injury, or sticking lately; less extension than the other side by more than the error of a difference.
Raised locked_knee(const Answers& answers, Side side) {
  const Clue lately = bare_no(negate(answers.count_at_least("history.weeks_since_onset", lately_weeks + 1)));
  const Clue sudden = either({circumstance(injured(answers)), every({answers.yes("history.locking", side), lately})});
  const Clue block = extension_lacking(answers, side);
  Raised raised;
  raised.clue = every({sudden, block});
  if (raised.clue.value == Tri::undetermined && !block.is_yes() && !answers.yes("history.locking", side).is_yes()) {
    raised.clue.because.clear();  // that something is recent points to no block
  }
  const FindingTrail lacking = extension_short(answers, side);
  if (raised.clue.is_no() && !lacking.empty()) {
    raised.clue = Clue{};
    raised.clue.open = lacking;
  }
  raised.urgency = answers.child() == Tri::no ? AlertClass::two_weeks : AlertClass::same_day;
  return raised;
}

}  // namespace limbledger::interpret
