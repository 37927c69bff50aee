// Torn cords and blocks: the extensor of the knee, the heel cord, the knee that does not straighten.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

#include <algorithm>

namespace limbledger::interpret {

using model::Side;
using model::WhyNot;

namespace {

[[nodiscard]] bool recorded_of_body(const Answers& answers, Side side, std::initializer_list<ItemKey> items) {
  return std::any_of(items.begin(), items.end(), [&](const ItemKey& item) { return answers.yes(item, side).is_yes(); });
}

}  // namespace

// Not lifting the straight leg after an injury is enough, until pain or effusion is shown to be the cause; a fall these days is one in any
// complaint. Two more are our own rule, after the page's "gap" and its word of ill kidneys and steroids (EXT_MECH): a leg not lifted beside a
// gap that is felt needs no injury, as such a cord gives way by itself; and a gap that is felt waits for nobody to lift the leg, where pain or
// a doubtful lift settles nothing. A kneecap out of height is a sign after an injury alone (the page's words). A leg paralysed or spastic for
// long is not lifted anyway: there the gap is what counts. A gap of more than six weeks is past the days in which it is sewn, and is referred.
Raised extensor_rupture(const Answers& answers, Side side) {
  const Clue raise = answers.positive("knee.straight_leg_raise_active", side);
  // Not straightened against gravity with the leg hanging is the same sign (page, section 19).
  const Clue fails = led_by(raise, {answers.stopped("knee.straight_leg_raise_active", side, {WhyNot::unable}), answers.positive("knee.extension_from_90_active", side)});
  const Clue felt = either({answers.yes("knee.quadriceps_gap", side), answers.yes("knee.patellar_tendon_gap", side)});
  const Clue gap = either({felt, answers.chosen("knee.look_patella_height", side, {"high", "low"})});
  const Clue hurt = circumstance(fails.is_yes() ? led_by(hurt_as_told(answers), {answers.yes("history.fall_recent")}) : hurt_as_told(answers));
  const bool lift_unsettled = fails.value == Tri::undetermined && raise.ask.empty();
  const bool by_itself = fails.is_yes() && !hurt.is_yes();
  const bool weak_for_long = fails.is_yes() && recorded_of_body(answers, side, {"body.paralysis", "body.spastic_tone"});
  const bool of_old = !hurt.is_yes() && felt.is_yes() && answers.count_at_least("history.weeks_since_onset", lately_weeks + 1).is_yes();
  Raised raised;
  if (lift_unsettled && felt.is_yes()) {
    raised.clue = led_by(felt, {hurt});
    raised.what = "gap_felt";
  } else {
    raised.clue = every({by_itself ? either({hurt, felt}) : hurt, fails});
    raised.what = gap.is_yes() ? (by_itself ? "gap_alone" : "gap") : "raised";
  }
  if (weak_for_long && !felt.is_yes() && raised.clue.is_yes()) {
    raised.clue = every({felt, hurt, fails});
  }
  raised.urgency = of_old ? AlertClass::two_weeks : AlertClass::same_day;
  if (raised.clue.is_no() && raise.is_no() && felt.is_yes()) {
    raised.clue = left_open(raised.clue, felt);  // part of a cord still lifts
  } else if (gap.is_yes() && !raised.clue.is_no()) {
    raised.clue.because.add(gap.because);
  }
  // A lift that pain stopped settles nothing: the gap, and how high the kneecap stands, can still be felt and seen (page, section 18).
  if (raised.clue.value == Tri::undetermined && lift_unsettled && hurt.is_yes() && raised.clue.ask.empty()) {
    raised.clue.ask = gap.ask;
  }
  return raised;
}

// One sign is enough after a kick to the heel cord, a sudden pain or an injury; a squeeze that moves nothing is enough by itself
// (MAFFULLI1998: 93 in 100 whole cords move), unless the ankle is fused or contracted, the leg paralysed or spastic, or the
// trouble is known to be old. A sign without such a start is never a no. The squeeze is asked for; one that moves the foot less settles nothing. Walking and a heel rise are no answer: they do not
// leave a tear out.
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
  const Clue onset = answers.chosen("history.onset", Side::midline, {"onset_sudden"});
  // A medicine that weakens the cord (page) stands for the start beside the squeeze. None of these points to a heel by itself.
  const Clue medicine = squeeze.is_yes() ? led_by(answers.yes("history.quinolones"), {answers.yes("history.steroids")}) : Clue{};
  const Clue sudden = circumstance(led_by(onset, {answers.yes("history.pain_severe_sudden"), medicine}));
  const bool lone = squeeze.is_yes() && !answers.count_at_least("history.weeks_since_onset", lately_weeks + 1).is_yes() && !injured(answers).is_no() &&
                    !recorded_of_body(answers, side, {"body.ankle_fused", "body.paralysis", "body.spastic_tone"}) &&
                    !answers.chosen("body.contracture", side, {"contracture_ankle"}).is_yes();
  Raised raised;
  const Clue start = hurt.is_yes() ? hurt : led_by(either({kick, hurt}), {sudden});
  raised.clue = led_by(every({start, sign}), {lone ? squeeze : Clue{}});
  if (raised.clue.is_no() && sign.is_yes()) {
    raised.clue = left_open(raised.clue, sign);
    raised.clue.ask = onset.ask;
  }
  // A squeeze that was not let, or moved the foot less, settles nothing: the other signs can still be looked for (page, section 19).
  if (raised.clue.value == Tri::undetermined && start.is_yes() && squeeze.ask.empty() && raised.clue.ask.empty()) {
    raised.clue.ask = answers.positive("ankle.matles", side).ask;
    raised.clue.ask.add(answers.yes("ankle.achilles_gap", side).ask);
  }
  if (kick.is_yes()) {
    raised.clue.because.add(kick.because);
  }
  return raised;
}

// A sudden block: after an injury, or sticking lately; less extension than the other side by more than the error of a difference.
Raised locked_knee(const Answers& answers, Side side) {
  // The page's six weeks are those in which it is mended best, no gate: a child's knee that sticks, and one that sticks since an injury of the
  // last half year, are blocked whatever the weeks; a knee that nobody hurt and that lacks some motion for years is worn (page: examples).
  const bool whatever_weeks = answers.child() == Tri::yes || injury_left_alone(answers).is_yes();
  const Clue lately = whatever_weeks ? fact(Tri::yes) : bare_no(negate(answers.count_at_least("history.weeks_since_onset", lately_weeks + 1)));
  const Clue sudden = either({circumstance(injured(answers)), every({answers.yes("history.locking", side), lately})});
  const Clue block = led_by(extension_lacking(answers, side), {answers.stopped("knee.extension_passive", side, {WhyNot::blocked}), answers.stopped("knee.extension_active", side, {WhyNot::blocked})});
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
