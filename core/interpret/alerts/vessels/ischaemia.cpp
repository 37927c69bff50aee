// The foot that blood does not reach: the pressure at the ankle, and a limb without flow.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"
#include "core/interpret/alerts/vessels/one_pulse.hpp"
#include "core/interpret/measure/blood.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace limbledger::interpret {

using model::Side;

namespace {

// Of this artery the highest that was measured in mmHg; no signal counts as 0 (decision rules page, section 7). None where nobody measured.
[[nodiscard]] std::optional<std::int64_t> highest_pressure(const View& view, std::string_view item, Side on) {
  std::optional<std::int64_t> found;
  for (const model::Finding* finding : view.at(item, on)) {
    const auto* pressure = std::get_if<model::Pressure>(&finding->value);
    if (pressure != nullptr && settles(*finding)) {
      const std::int64_t read = pressure->mm_hg && !pressure->signal ? pressure->mm_hg->steps : 0;
      found = std::max(found.value_or(0), read);
    }
  }
  return found;
}

// Whether this pressure is below 0.90 of the higher arm.
[[nodiscard]] Tri low_for_arm(const View& view, const std::optional<std::int64_t>& ankle) {
  const std::int64_t arm = std::max(highest_pressure(view, "vessel.pressure_arm", Side::left).value_or(0), highest_pressure(view, "vessel.pressure_arm", Side::right).value_or(0));
  return !ankle || arm == 0 ? Tri::undetermined : tri(*ankle * 100 < arm * abi_hundredths);
}

}  // namespace

Tri ankle_pressure_low(const View& view, Side side) { return low_for_arm(view, highest_pressure(view, "vessel.pressure_posterior_tibial", side)); }

void name_lost_pulse(Raised& raised, const Clue& dorsal, const Clue& tibial) {
  if (!dorsal.is_yes() && !tibial.is_yes()) {
    return;
  }
  raised.what = dorsal.is_yes() && tibial.is_yes() ? "no_pulse" : (dorsal.is_yes() ? "no_pulse_dorsal" : "no_pulse_tibial");
  if (raised.clue.is_yes()) {
    raised.tells_of = lost_pulse;
    raised.clue.because.add(dorsal.is_yes() ? dorsal.because : FindingTrail{});
    raised.clue.because.add(tibial.is_yes() ? tibial.because : FindingTrail{});
  }
}

namespace {

// What has no flow below it: both pulses of the foot, or the one at the groin or behind the knee while none of the foot is felt (our own
// rule). That one is no sign of a cut-off foot by itself: behind a knee a pulse is often not found.
[[nodiscard]] Clue flow_gone(const Answers& answers, Side side, const Clue& dorsal, const Clue& tibial) {
  const bool felt = dorsal.is_no() || tibial.is_no();
  const auto above = [&](const ItemKey& item) { return felt ? Clue{} : unasked(pulse_absent(answers, item, side)); };
  return led_by(every({dorsal, tibial}), {above("vessel.pulse_femoral"), above("vessel.pulse_popliteal")});
}

// The foot does not move, drops or has no power. What is known to be old says nothing of today: a paralysed leg, the power of a spastic one, an
// old drop.
[[nodiscard]] Clue foot_fails(const Answers& answers, Side side) {
  const bool paralysed = answers.yes("body.paralysis", side).is_yes();
  const bool old_weakness = paralysed || answers.yes("body.spastic_tone", side).is_yes();
  const bool old_drop = answers.no("history.foot_drop_new", side).is_yes();
  const Clue still = paralysed ? fact(Tri::no) : answers.no("ankle.movement", side);
  const Clue drop = old_weakness || old_drop ? Clue{}
                                             : led_by(answers.yes("nerve.foot_drop", side),
                                                      {answers.graded("nerve.power_ankle_dorsiflexion", side, {"0", "1", "2", "3"})});
  const Clue push = old_weakness ? Clue{} : answers.graded("nerve.power_ankle_plantarflexion", side, {"0", "1", "2", "3"});
  return led_by(still, {drop, push});
}

// Both pulses of the foot full, felt with a full hand.
[[nodiscard]] bool pulses_full(const Answers& answers, Side side) {
  const auto full = [&](const ItemKey& item) {
    const Clue felt = answers.graded(item, side, {"2", "3"});
    return felt.is_yes() && !felt.because.any([](const model::Finding* one) { return one->quality && !one->quality->empty(); });
  };
  return full(dorsal_pulse) && full(tibial_pulse);
}

// Cold, of an ill colour, slow to fill; here and on the other foot.
struct Feet {
  std::array<Clue, 3> here, there;
};

[[nodiscard]] std::array<Clue, 3> cold_ill_coloured_slow(const Answers& answers, Side side) {
  return {answers.yes("vessel.foot_cold", side), answers.chosen("vessel.foot_colour", side, {"colour_pale", "colour_mottled", "colour_blue", "colour_dusky"}),
          answers.yes("vessel.capillary_refill_slow", side)};
}

[[nodiscard]] bool without_blood_by_look(const std::array<Clue, 3>& foot) {
  return std::all_of(foot.begin(), foot.end(), [](const Clue& one) { return one.is_yes(); });
}

// Cold, of an ill colour and slow to fill, and the other foot is not: pulses that are noted do not outweigh three signs of one side (our own
// rule). Of a foot that nobody looked at nothing is known, and it takes a no there.
[[nodiscard]] bool alone_without_blood(const Feet& feet) {
  return without_blood_by_look(feet.here) && std::any_of(feet.there.begin(), feet.there.end(), [](const Clue& one) { return one.is_no(); });
}

// Both feet cold, and the pulses of this one felt, or one of them full, and none known to be weaker than in the other: winter's feet, until
// something says otherwise, or this one is of an ill colour and slow to fill as well while the other is not or a pulse is lost (our own rule, after
// clinical safety C2).
[[nodiscard]] bool cold_alike(const Answers& answers, Side side, const Feet& feet) {
  const bool by_look = without_blood_by_look(feet.here);
  if ((by_look && !without_blood_by_look(feet.there)) || !feet.here[0].is_yes() || !feet.there[0].is_yes()) {
    return false;
  }
  int felt = 0, full = 0, looked_for = 0;
  for (const ItemKey& item : {dorsal_pulse, tibial_pulse}) {
    const auto at_least = [&](Side on, bool of_full) {
      return of_full ? answers.graded(item, on, {"2", "3"}) : answers.graded(item, on, {"1", "2", "3"});
    };
    looked_for += at_least(side, false).value != Tri::undetermined ? 1 : 0;
    felt += at_least(side, false).is_yes() ? 1 : 0;
    full += at_least(side, true).is_yes() ? 1 : 0;
    if ((at_least(side, false).is_no() && at_least(other_side(side), false).is_yes()) || (at_least(side, true).is_no() && at_least(other_side(side), true).is_yes())) {
      return false;
    }
  }
  return looked_for == 2 && (felt == 2 || (full > 0 && !by_look));
}

// Slow to fill like the other one, or of a pale person cold like it, with no sign that the other has not and no pulse lost: of the whole body or of
// the weather, and an injury beside it is no symptom of this foot (red flags page, section 5: one sign and one symptom; our own rule).
[[nodiscard]] bool lacks_like_the_other(const Answers& answers, const Feet& feet, bool pulse_lost) {
  const auto& [here, there] = feet;
  const bool cold = here[0].is_yes();
  if (pulse_lost || (!cold && !here[2].is_yes())) {
    return false;
  }
  const bool more_here = (cold && !there[0].is_yes()) || (here[1].is_yes() && !there[1].is_yes()) || (here[2].is_yes() && !there[2].is_yes());
  return !more_here && (!cold || answers.yes("general.pallor").is_yes());
}

// Blue or dusky is no lack of blood by itself: it counts beside poor pulses, or where the foot feels less or fails (our own rule). So do poor
// pulses there, as one sign is enough where feeling is reduced (clinical safety, C13).
[[nodiscard]] Clue poor_flow(const Answers& answers, Side side, const Clue& poor, const Clue& fails) {
  const Clue blue = answers.chosen("vessel.foot_colour", side, {"colour_blue", "colour_dusky"});
  if (!poor.is_yes() && !blue.is_yes()) {
    return {};
  }
  const Clue nerve = led_by(fails, {answers.yes("nerve.sensation_foot_reduced", side),
                                    answers.chosen("nerve.sensation_loss_level", side, {"loss_beyond_toes", "loss_whole_foot_or_more"})});
  return led_by(every({poor, nerve}), {every({blue, led_by(poor, {nerve})})});
}

// It was felt before at this exam, by whoever it was, and is gone: "pulse newly absent" (red flags page, section 5). One that is known to have been
// felt later has come back. Of two that differ each is judged alone (after/told_apart.hpp), so the other is looked for in the exam.
void add_if_felt_before(const Answers& answers, const model::Finding& now, Clue& gone) {
  for (const model::Finding& before : *answers.view().exam().findings) {
    const auto* grade = std::get_if<model::Grade>(&before.value);
    const model::Standing standing = before.standing.value_or(model::Standing::current);
    const bool stands = standing == model::Standing::current || standing == model::Standing::in_conflict;
    const bool felt = stands && before.item == now.item && before.side == now.side && grade != nullptr && grade->grade.text != "0" && settles(before);
    if (felt && !(before.examined_at && now.examined_at && *now.examined_at < *before.examined_at)) {
      gone.value = Tri::yes;
      gone.because.add({answers.view().trails().findings, &now});
      gone.because.add({answers.view().trails().findings, &before});
    }
  }
}

[[nodiscard]] Clue newly_absent(const Answers& answers, const Clue& absent) {
  Clue gone;
  for (const model::Finding* now : answers.view().exam().findings ? absent.because.written() : std::vector<const model::Finding*>{}) {
    add_if_felt_before(answers, *now, gone);
  }
  return gone;
}

// The same of two readings that stand beside each other, where neither was chosen.
[[nodiscard]] Clue gone_between(const Answers& answers, std::string_view item, Side side) {
  Clue gone;
  if (answers.view().may_hold_two() && answers.view().exam().findings) {
    for (const model::Finding* now : answers.view().at(item, side)) {
      const auto* grade = std::get_if<model::Grade>(&now->value);
      if (grade != nullptr && grade->grade.text == "0" && settles(*now)) {
        add_if_felt_before(answers, *now, gone);
      }
    }
  }
  return gone;
}

// What was measured shows no flow: an artery of which the Doppler gives no signal ("or no Doppler signal": red flags page, section 5), a pressure below 0.90
// of the higher arm (decision rules page, section 7; of an artery that was not measured nothing is known), or colour that comes back late.
[[nodiscard]] bool measured_without_flow(const Answers& answers, Side side) {
  const View& view = answers.view();
  const auto dorsal = highest_pressure(view, "vessel.pressure_dorsalis_pedis", side);
  const auto tibial = highest_pressure(view, "vessel.pressure_posterior_tibial", side);
  const auto ankle = std::max(dorsal, tibial);  // none is less than any
  const bool silent = dorsal == 0 || tibial == 0;
  const std::int64_t limit = refill_limit(view);
  const Clue late = answers.hear_as("vessel.capillary_refill_great_toe", side, [limit](const model::Finding& finding) -> Said {
    const auto* time = std::get_if<model::Duration>(&finding.value);
    return time == nullptr || !time->s ? Said{std::nullopt, "unsure"} : Said{static_cast<std::uint8_t>(time->s->steps * 1000 / model::Seconds::wire_rule.per_unit > limit ? 2 : 1), "known"};
  });
  return silent || late.is_yes() || low_for_arm(view, ankle) == Tri::yes;
}

// One pulse lost after an injury is no lack of blood where the foot was found warm, feels and moves, nothing else speaks for one, and no knee was out of
// joint, or perhaps so (red flags page, section 5: a sign and a symptom; section 3). What nobody looked at, or who cannot tell of it, leaves the injury as
// the symptom. Of the pulse behind the ankle no page says that healthy people lack it: there the colour has to come back in time as well (our own rules).
[[nodiscard]] bool has_blood_beside(const Answers& answers, Side side, LostAlone lost, const Feet& feet, const Clue& fails) {
  const bool moves = answers.no("ankle.movement", side).is_no() || answers.count_at_least("gait.steps_now", 1).is_yes();
  if (!feet.here[0].is_no() || !answers.yes("nerve.sensation_foot_reduced", side).is_no() || !moves || cannot_tell_of_pain(answers, side).is_yes() ||
      (lost == LostAlone::tibial && !feet.here[2].is_no()) || measured_without_flow(answers, side)) {
    return false;
  }
  const auto felt_less = [&](const ItemKey& item) { return answers.chosen(item, side, {"felt_less", "not_felt"}); };
  const bool second = led_by(fails, {feet.here[1], feet.here[2], felt_less("nerve.touch_first_web"), felt_less("nerve.touch_foot_dorsum"), felt_less("nerve.touch_sole"),
                                     answers.graded("nerve.power_great_toe_extension", side, {"0", "1", "2", "3"}), answers.any_yes({"history.pain_out_of_proportion", "history.numb_or_tingling", "history.rest_pain_foot",
                                                                                  "history.cold_pale_sudden"}, side),
                                     answers.any_yes({"history.injury_severe_or_crush", "history.both_legs_weak"}, Side::midline), numb_foot(answers, side), foot_deformed(answers, side),
                                     answers.chosen("nerve.sensation_loss_level", side, {"loss_toes_only", "loss_beyond_toes", "loss_whole_foot_or_more"}),
                                     answers.chosen("body.cast", side, {"cast_hip", "cast_thigh", "cast_knee", "cast_shin", "cast_ankle", "cast_foot"}),
                                     answers.chosen("history.mechanism", Side::midline, {"hyperextension"})})
                          .is_yes();
  const bool knee_open = part_complained_of(answers) == "knee" && !answers.yes("history.knee_dislocated", side).is_no();
  if (second || knee_open) {
    return false;
  }
  const Clue out = dislocated_knee(answers, side).clue;
  return !out.is_yes() && !out.warm();
}

}  // namespace

LostAlone pulse_lost_alone(const Answers& answers, Side side) {
  const auto full = [&](const ItemKey& item) { return answers.graded(item, side, {"2", "3"}).is_yes(); };
  if (pulse_absent(answers, dorsal_pulse, side).is_yes()) {
    return full(tibial_pulse) ? LostAlone::dorsal : LostAlone::none;
  }
  return pulse_absent(answers, tibial_pulse, side).is_yes() && full(dorsal_pulse) ? LostAlone::tibial : LostAlone::none;
}

std::string_view asks_for_doppler(const Answers& answers, Side side, LostAlone lost, Clue& clue) {
  const Clue heard = answers.yes("vessel.doppler_arterial_audible", side);
  if (heard.value != Tri::undetermined) {
    return {};
  }
  const Clue pulse = pulse_absent(answers, lost == LostAlone::dorsal ? dorsal_pulse : tibial_pulse, side);
  AskTrail ask = heard.ask;
  ask.add(clue.ask);
  clue = clue.is_no() ? left_open(clue, pulse) : clue;
  clue.because.add(pulse.because);
  clue.ask = ask;
  return lost == LostAlone::dorsal ? "one_pulse" : "one_pulse_behind";
}

Clue newly_numb(const Answers& answers, Side side) {
  if (led_by(answers.yes("history.diabetes"), {answers.yes("history.leprosy"), answers.yes("body.feeling_lost", side)}).is_yes()) {
    return {};
  }
  return led_by(answers.yes("nerve.sensation_foot_reduced", side), {answers.chosen("nerve.sensation_loss_level", side, {"loss_beyond_toes", "loss_whole_foot_or_more"})});
}

Clue one_gone_one_poor(const Answers& answers, Side side) {
  if (!pulse_absent(answers, dorsal_pulse, side).is_yes() && !pulse_absent(answers, tibial_pulse, side).is_yes()) {
    return {};
  }
  return every({answers.graded(dorsal_pulse, side, {"0", "1"}), answers.graded(tibial_pulse, side, {"0", "1"})});
}

Clue pulse_above_lost(const Answers& answers, Side side) {
  const Clue groin = unasked(pulse_absent(answers, "vessel.pulse_femoral", side));
  return foot_taken_off(answers, side).is_yes() ? led_by(groin, {pulse_absent(answers, "vessel.pulse_popliteal", side)}) : groin;
}

// A perfusion sign and a symptom, within two weeks. Pain and tingling cannot be required where feeling is reduced: that is itself
// the symptom, and one sign is enough.
Raised limb_ischaemia(const Answers& answers, Side side) {
  const Clue dorsal = pulse_absent(answers, dorsal_pulse, side);
  const Clue tibial = pulse_absent(answers, tibial_pulse, side);
  const Clue no_flow_below = flow_gone(answers, side, dorsal, tibial);
  // Cold and without its pulses: nobody waits for the day it happened.
  const bool gross = no_flow_below.is_yes() && answers.yes("vessel.foot_cold", side).is_yes();
  const Clue hurt = gross ? hurt_lately(answers) : hurt_as_told(answers);
  const auto felt_there = [&](const ItemKey& item) { return bare_no(unasked(answers.graded(item, other_side(side), {"1", "2", "3"}))); };
  const Clue others_felt = either({every({dorsal, felt_there(dorsal_pulse)}), every({tibial, felt_there(tibial_pulse)})});
  const Clue felt_both = every({negate(dorsal), negate(tibial)});
  const Feet feet{cold_ill_coloured_slow(answers, side), cold_ill_coloured_slow(answers, other_side(side))};
  const bool of_one_side = alone_without_blood(feet);
  const Clue refill = felt_both.is_yes() && !of_one_side ? fact(Tri::no) : unasked(feet.here[2]);
  // Told to have turned cold or pale within two weeks: the sign and the time in one answer.
  const Clue sudden = answers.yes("history.cold_pale_sudden", side);
  const Clue fails = foot_fails(answers, side);
  const Clue poor = one_gone_one_poor(answers, side);
  const bool one_lost = dorsal.is_yes() || tibial.is_yes();
  const Clue dorsal_gone = one_lost ? newly_absent(answers, dorsal) : Clue{};
  const Clue tibial_gone = one_lost ? newly_absent(answers, tibial) : Clue{};
  const Clue gone = one_lost ? led_by(dorsal_gone, {tibial_gone}) : Clue{};
  // No flow whatever the other pulses are: that of the groin, or one that was felt before.
  Clue cut_off = pulse_above_lost(answers, side);
  if (gone.is_yes()) {
    cut_off = led_by(cut_off, {gone});
  }
  const LostAlone lost = one_lost && others_felt.is_yes() && hurt.is_yes() && !gone.is_yes() ? pulse_lost_alone(answers, side) : LostAlone::none;
  const bool has_blood = lost != LostAlone::none && has_blood_beside(answers, side, lost, feet, fails);
  const Clue perfusion =
      led_by(either({feet.here[0], every({dorsal, tibial}), has_blood ? Clue{} : every({circumstance(hurt), others_felt}), refill}),
             {sudden, answers.chosen("vessel.foot_colour", side, {"colour_pale", "colour_mottled"}), answers.no("vessel.doppler_arterial_audible", side), cut_off,
              poor_flow(answers, side, poor, fails)});
  // Pain at rest for longer than that is another trouble.
  const bool long_pain = answers.yes("history.rest_pain_over_2_weeks", side).is_yes();
  const Clue rest_pain = long_pain ? fact(Tri::no) : foot_hurts_at_rest(answers, side);
  const bool of_both = lacks_like_the_other(answers, feet, one_lost) && !led_by(sudden, {cut_off, poor, answers.no("vessel.doppler_arterial_audible", side)}).is_yes();
  Clue symptom = led_by(either({of_both ? Clue{} : circumstance(hurt), answers.yes("nerve.sensation_foot_reduced", side), answers.yes("nerve.foot_drop", side),
                                answers.no("ankle.movement", side), answers.yes("history.pain_out_of_proportion", side)}),
                        {rest_pain, answers.yes("history.numb_or_tingling", side), numb_foot(answers, side), fails, answers.yes("history.both_legs_weak"),
                         answers.chosen("nerve.sensation_loss_level", side, {"loss_toes_only", "loss_beyond_toes", "loss_whole_foot_or_more"})});
  // Both lost within this exam, or the one and no signal: that is new by itself, and waits neither for an injury nor for pain or numbness ("pulse newly
  // absent": red flags page, section 5).
  if (gone.is_yes() && ((dorsal_gone.is_yes() && tibial_gone.is_yes()) || answers.no("vessel.doppler_arterial_audible", side).is_yes())) {
    symptom = led_by(symptom, {gone});
  }
  const bool alike = cold_alike(answers, side, feet);
  // Both pulses of the foot full, or it is as cold as the other one: blood reaches it, and cold, pale, blue or tingling it is winter's foot, hurt or not, until it feels less,
  // fails, hurts beyond the hurt or, not hurt, at rest (C2: "pulseless or cold limb" may not interrupt an ordinary day; our own rule). Told to
  // have turned so suddenly, or without flow by another sign, it keeps the page's symptoms.
  const bool reached = perfusion.is_yes() && (alike || pulses_full(answers, side)) && !of_one_side && !sudden.is_yes() && !cut_off.is_yes() && !answers.no("vessel.doppler_arterial_audible", side).is_yes();
  if (reached) {
    const bool long_numb = answers.yes("body.feeling_lost", side).is_yes() || answers.yes("body.paralysis", side).is_yes();
    const Clue feels_less = led_by(answers.yes("nerve.sensation_foot_reduced", side),
                                   {answers.chosen("nerve.sensation_loss_level", side, {"loss_beyond_toes", "loss_whole_foot_or_more"})});
    symptom = led_by(either({long_numb ? fact(Tri::no) : feels_less, fails}),
                     {answers.yes("history.pain_out_of_proportion", side), answers.yes("history.both_legs_weak"), hurt.is_yes() ? Clue{} : rest_pain});
  }
  // A cold foot without both pulses waits for no symptom, and for no day: how long the complaint has lasted is not how long the foot
  // has been so. Only pain of the foot at rest that is known to last for weeks is another trouble. With one pulse that nobody could
  // look for, feeling or movement that is lost says the same (convention).
  const bool unlooked = (dorsal.is_yes() && tibial.value == Tri::undetermined) || (tibial.is_yes() && dorsal.value == Tri::undetermined);
  const bool failing = answers.yes("nerve.sensation_foot_reduced", side).is_yes() || answers.no("ankle.movement", side).is_yes();
  // What happened these days, a plaster that is on, a vessel wide behind the knee, a foot that fails, or one numb without a pulse are of
  // today, whatever the weeks of the complaint and an old pain at rest say (our own rule). Both pulses of the foot felt end that.
  const Clue wide = answers.any_yes({"knee.popliteal_swelling_beats", "vessel.pulse_popliteal_broad"}, side);
  const Clue plaster = answers.chosen("body.cast", side, {"cast_hip", "cast_thigh", "cast_knee", "cast_shin", "cast_ankle", "cast_foot"});
  const View& view = answers.view();
  const bool told_undated = complains_of_something_recent(view) && !view.exam().injured_on && hurt_as_told(answers).is_yes();
  const Clue happened = told_undated ? hurt_as_told(answers) : every({hurt_lately(answers), of_short_history(answers)});
  const bool poor_of_now = poor.is_yes() && !over_two_weeks(answers).is_yes();
  const Clue numb = no_flow_below.is_yes() || unlooked || poor_of_now ? newly_numb(answers, side) : Clue{};
  // Knee, thigh, shin, ankle or foot out of shape beside lost pulses is of today as well, whatever the day that was told.
  const Clue bent = poor.is_yes() ? led_by(answers.any_yes({"knee.look_deformity"}, side), {foot_deformed(answers, side)}) : Clue{};
  const Clue shape = bent.is_yes() ? out_of_shape(answers, side, bent) : Clue{};
  Clue acute = felt_both.is_yes() ? Clue{} : led_by(Clue{}, {fails, numb, plaster, wide, happened, shape});
  if (gone.is_yes()) {
    acute = led_by(acute, {gone});
  }
  // Said not to have come suddenly, and nothing of today beside it: a foot that lacks blood for long, until a symptom says otherwise. What is
  // answered there is when it began, which the page asks for first (under two weeks).
  const bool stands = gross && !(sudden.is_no() && !acute.is_yes() && !hurt.is_yes());
  const bool today = stands || (unlooked && failing && answers.yes("vessel.foot_cold", side).is_yes());
  const Clue by_weeks = today ? fact(not_(tri(long_pain))) : of_short_history(answers);
  const Clue lately = sudden.is_yes() ? led_by(sudden, {of_short_history(answers), acute})
                                      : led_by(by_weeks, {acute, acute.is_yes() ? of_short_history(answers) : Clue{}});
  Raised raised;
  raised.clue = every({perfusion, stands ? fact(Tri::yes) : led_by(symptom, {shape}), lately});
  // Weeks alone answer nothing of a foot that is cold or without its pulses: whether it moves is asked (our own rule).
  if (raised.clue.is_no() && lately.is_no() && perfusion.is_yes() && !felt_both.is_yes() && !fails.is_no()) {
    raised.clue = every({perfusion, fails});
  }
  // As cold as the other with poor pulses is no no: what would make it one of now is asked.
  if (raised.clue.is_no() && reached && !lately.is_no() && !pulses_full(answers, side)) {
    raised.clue = left_open(raised.clue, perfusion);
    raised.clue.because.add(perfusion.because);
    raised.clue.ask = answers.yes("history.cold_pale_sudden", side).ask;
    raised.clue.ask.add(answers.yes("history.pain_out_of_proportion", side).ask);
  }
  // Dead tissue, or pain at rest, beside a pulse that is lost is urgent at any age: over two weeks it is alert.clti. Younger, or of an age
  // that nobody told, the more urgent of the two neighbours has it (our own rule; the pages have a gate of two weeks between them).
  const Clue dead = dead_tissue(answers, side);
  const auto known_long = [&] { return long_pain || answers.yes("history.foot_ulcer_over_2_weeks", side).is_yes() || over_two_weeks(answers).is_yes(); };
  if (!raised.clue.is_yes() && (dead.is_yes() || rest_pain.is_yes()) && !known_long()) {
    const Clue no_flow = led_by(dead.is_yes() ? pulses_lost(answers, side) : every({dorsal, tibial}), {cut_off});
    if (no_flow.is_yes()) {
      raised.clue = every({no_flow, dead.is_yes() ? dead : rest_pain});
    }
  }
  if (raised.clue.value == Tri::undetermined && !perfusion.is_yes()) {
    raised.clue.because = perfusion.because;
    // One foot blue or dusky while nobody felt its pulses: a side that was seen so is asked after, whatever leg is complained of (C8).
    const bool unfelt = dorsal.value == Tri::undetermined && tibial.value == Tri::undetermined;
    const auto blue = [&](Side on) { return unfelt ? answers.chosen("vessel.foot_colour", on, {"colour_blue", "colour_dusky"}) : Clue{}; };
    raised.clue.because.add(blue(other_side(side)).is_yes() ? FindingTrail{} : blue(side).because);
    // A vessel that is wide behind the knee can close: the pages give it no class, so the foot is asked after.
    raised.clue.because.add(wide.because);
  }
  // A Doppler that hears the artery ends it, and the pulse stays named; until then that is asked before anything else.
  if (has_blood && !raised.clue.is_yes()) {
    const Clue heard = answers.yes("vessel.doppler_arterial_audible", side);
    if (heard.is_yes()) {
      raised.clue = fact(Tri::no);
      raised.clue.against = heard.because;
      raised.clue.against.add(feet.here[0].against);
      raised.clue = left_open(raised.clue, lost == LostAlone::dorsal ? dorsal : tibial);
    } else {
      raised.asks = asks_for_doppler(answers, side, lost, raised.clue);
      raised.ask_first = !raised.asks.empty();
    }
  }
  // One that was lost within this exam and nothing else that speaks: no no, and a Doppler comes first, hurt or not.
  if (!raised.clue.is_yes() && raised.asks.empty() && led_by(gone, {gone_between(answers, "vessel.pulse_dorsalis_pedis", side), gone_between(answers, "vessel.pulse_posterior_tibial", side)}).is_yes()) {
    const Clue back = gone.is_yes() ? dorsal_gone : gone_between(answers, "vessel.pulse_dorsalis_pedis", side);
    if (!asks_for_doppler(answers, side, back.is_yes() ? LostAlone::dorsal : LostAlone::tibial, raised.clue).empty()) {
      raised.asks = "pulse_gone";
      raised.ask_first = true;
    }
  }
  raised.urgency = AlertClass::now;
  raised.interrupts = true;
  raised.tells_of = itself;
  name_lost_pulse(raised, dorsal, tibial);
  if (const std::string_view grade = raised.clue.is_yes() ? ischaemia_grade(answers, side) : ""; !grade.empty()) {
    raised.what = grade;  // the pulse that was not felt stands among the grounds
    raised.tells_of = grade == "grade_2b" || grade == "grade_3" ? itself : raised.tells_of;  // a foot that fails is more than a pulse that is lost
    for (const std::string_view item : {"ankle.movement", "nerve.sensation_loss_level", "nerve.foot_drop", "nerve.power_ankle_dorsiflexion",
                                        "nerve.power_ankle_plantarflexion", "vessel.doppler_arterial_audible", "vessel.doppler_venous_audible"}) {
      raised.clue.because.add(FindingTrail::of(view.trails().findings, view.at(item, side)));
    }
  }
  if (const Clue taken = raised.clue.is_yes() ? foot_taken_off(answers, side) : Clue{}; taken.is_yes()) {
    raised.what = "stump";
    raised.tells_of = itself;
    raised.clue.because.add(taken.because);
  }
  return raised;
}

}  // namespace limbledger::interpret
