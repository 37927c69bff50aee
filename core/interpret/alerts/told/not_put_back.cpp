// What an injury of more than six weeks ago left out of place, and nobody put back. Source: red flags page, sections 2, 3 and 18, which have no limit
// of time; that it is the same day for a hip and a referral for the rest, and that it ends at half a year, is our own rule.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

namespace limbledger::interpret {

using model::Side;

namespace {

// A hip that is held bent and turned; legs that are stiff or weak for long lie so anyway.
[[nodiscard]] Clue hip_held(const Answers& answers, Side side) {
  const Clue held = answers.chosen("hip.leg_attitude", side, {"attitude_bent_turned_in", "attitude_bent_turned_out"});
  const bool anyway = held.is_yes() && led_by(answers.yes("body.spastic_tone", side), {answers.yes("body.paralysis", side)}).is_yes();
  return anyway || dislocated_hip(answers, side).clue.is_yes() ? Clue{} : held;
}

// Out of shape, and no line of now or of the same day that says so.
[[nodiscard]] Clue out_of_place(const Answers& answers, Side side) {
  const auto unless = [&](const Clue& sign, Raised (*graver)(const Answers&, Side)) {
    return sign.is_yes() && !graver(answers, side).clue.is_yes() ? sign : Clue{};
  };
  return led_by(Clue{}, {unless(answers.any_yes({"knee.look_deformity"}, side), &dislocated_knee),
                         unless(answers.any_yes({"ankle.look_deformity", "foot.look_deformity"}, side), &dislocated_ankle),
                         unless(answers.any_yes({"leg.look_deformity"}, side), &broken_bone),
                         unless(answers.chosen("knee.look_patella_height", side, {"laterally_displaced"}), &dislocated_kneecap)});
}

// The squeeze moves nothing; a fused ankle or a paralysed leg does not anyway.
[[nodiscard]] Clue cord_torn(const Answers& answers, Side side) {
  const Clue squeeze = answers.graded("ankle.calf_squeeze", side, {"absent"});
  const bool anyway = squeeze.is_yes() && led_by(answers.yes("body.ankle_fused", side), {answers.yes("body.paralysis", side)}).is_yes();
  return !squeeze.is_yes() || anyway || achilles_rupture(answers, side).clue.is_yes() ? Clue{} : squeeze;
}

}  // namespace

// Said where it was found, and asked after nowhere: what would make it one of now is asked by the danger of that part.
Raised not_put_back(const Answers& answers, Side side) {
  Raised raised;
  const Clue long_ago = injury_long_ago(answers);
  const Clue lately = injury_left_alone(answers);
  const Clue hip = long_ago.is_yes() ? hip_held(answers, side) : Clue{};
  const Clue part = lately.is_yes() ? out_of_place(answers, side) : Clue{};
  const Clue cord = lately.is_yes() ? cord_torn(answers, side) : Clue{};
  const Clue left = led_by(Clue{}, {hip, part, cord});
  raised.applies = tri(left.is_yes());
  if (!left.is_yes()) {
    return raised;
  }
  const Clue carries_not = hip.is_yes() ? cannot_walk(answers) : Clue{};
  raised.clue = led_by(every({left, long_ago}), {carries_not});
  raised.urgency = hip.is_yes() && (lately.is_yes() || carries_not.is_yes()) ? AlertClass::same_day : AlertClass::two_weeks;
  raised.refer = hip.is_yes() ? "hip" : (part.is_yes() ? "" : "cord");
  return raised;
}

}  // namespace limbledger::interpret
