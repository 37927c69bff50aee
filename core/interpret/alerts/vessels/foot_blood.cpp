#include "core/interpret/alerts/vessels/foot_blood.hpp"

#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"
#include "core/interpret/measure/blood.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace limbledger::interpret {

using model::Side;

namespace {

constexpr std::array<ItemKey, 3> touched_below{"nerve.touch_first_web", "nerve.touch_foot_dorsum", "nerve.touch_sole"};

// Of this artery the highest that was measured in mmHg; no signal counts as 0 (decision rules page, section 7). None where nobody measured.
[[nodiscard]] std::optional<std::int64_t> highest_pressure(const View& view, const ItemKey& item, Side on) {
  std::optional<std::int64_t> found;
  for (const model::Finding* finding : view.named(item, on)) {
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

// What has no flow below it: both pulses of the foot, or the one at the groin or behind the knee, or an artery that the Doppler does not hear, while none of
// the foot is felt (page: "or no Doppler signal"; our own rule). That one is no sign of a cut-off foot by itself: behind a knee a pulse is often not found.
[[nodiscard]] Clue flow_gone(const Answers& answers, Side side, const Clue& dorsal, const Clue& tibial, const Clue& unheard) {
  const bool felt = dorsal.is_no() || tibial.is_no();
  const auto above = [&](const ItemKey& item) { return felt ? Clue{} : unasked(pulse_absent(answers, item, side)); };
  return led_by(every({dorsal, tibial}), {above("vessel.pulse_femoral"), above("vessel.pulse_popliteal"), felt ? Clue{} : unheard});
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

}  // namespace

// Both pulses of the foot full, felt with a full hand.
bool pulses_full(const Answers& answers, Side side) {
  const auto full = [&](const ItemKey& item) {
    const Clue felt = answers.graded(item, side, {"2", "3"});
    return felt.is_yes() && !felt.because.any([](const model::Finding* one) { return one->quality && !one->quality->empty(); });
  };
  return full(dorsal_pulse) && full(tibial_pulse);
}

namespace {

// Colour that comes back at the great toe later than it should, by the time that was measured.
[[nodiscard]] Clue comes_back_late(const Answers& answers, Side side) {
  if (answers.view().named("vessel.capillary_refill_great_toe", side).empty()) {
    return {};
  }
  const std::int64_t limit = refill_limit(answers.view());
  return answers.hear_as("vessel.capillary_refill_great_toe", side, [limit](const model::Finding& finding) -> Said {
    const auto* time = std::get_if<model::Duration>(&finding.value);
    return time == nullptr || !time->s ? Said{std::nullopt, "unsure"} : Said{static_cast<std::uint8_t>(time->s->steps * 1000 / model::Seconds::wire_rule.per_unit > limit ? 2 : 1), "known"};
  });
}

// Later than it should, while that of the other foot comes back in time: both times are the ground.
[[nodiscard]] Clue later_than_other(const Answers& answers, Side side) {
  Clue late = comes_back_late(answers, side);
  const Clue other = late.is_yes() ? comes_back_late(answers, other_side(side)) : Clue{};
  if (!other.is_no()) {
    return {};
  }
  late.because.add(other.against);
  return late;
}

[[nodiscard]] std::array<Clue, 3> cold_ill_coloured_slow(const Answers& answers, Side side) {
  return {answers.yes("vessel.foot_cold", side), answers.chosen("vessel.foot_colour", side, {"colour_pale", "colour_mottled", "colour_blue", "colour_dusky"}),
          led_by(answers.yes("vessel.capillary_refill_slow", side), {later_than_other(answers, side)})};
}

// Toes that are not lifted or bent; of a leg that is weak for long they tell nothing new.
[[nodiscard]] Clue toes_fail(const Answers& answers, Side side) {
  if (answers.yes("body.paralysis", side).is_yes() || answers.yes("body.spastic_tone", side).is_yes() || answers.no("history.foot_drop_new", side).is_yes()) {
    return {};
  }
  static constexpr std::array<ItemKey, 3> moves_toes{"nerve.power_great_toe_extension", "nerve.power_toes_extension", "nerve.power_toes_flexion"};
  return led_by(Clue{}, {answers.any_graded(moves_toes, side, {"0", "1", "2", "3"}), answers.no("foot.toes_extension_active", side), answers.no("foot.toes_flexion_active", side),
                         answers.stopped("foot.toes_extension_active", side, {model::WhyNot::unable})});
}

// As the check of the nerves below an injury has them (red flags page, section 0).
[[nodiscard]] Clue touch_felt_less(const Answers& answers, Side side) {
  return answers.any_chosen(touched_below, side, {"felt_less", "not_felt"});
}

[[nodiscard]] bool without_blood_by_look(const std::array<Clue, 3>& foot) {
  return std::all_of(foot.begin(), foot.end(), [](const Clue& one) { return one.is_yes(); });
}

// Cold, of an ill colour and slow to fill, and the other foot is not: pulses that are noted do not outweigh three signs of one side (our own
// rule). Of a foot that nobody looked at nothing is known, and it takes a no there.
[[nodiscard]] bool alone_without_blood(const Feet& feet) {
  return without_blood_by_look(feet.here) && std::any_of(feet.there.begin(), feet.there.end(), [](const Clue& one) { return one.is_no(); });
}

}  // namespace

// Both feet cold, and each pulse of this one felt and not known to be weaker than in the other, or lost in the other as well while this foot's other
// pulse is full: winter's feet, until something says otherwise, or this one is of an ill colour and slow to fill as well while the other is not (our
// own rule, after clinical safety C2). A pulse that is lost in this foot alone never makes it so.
bool cold_alike(const Answers& answers, Side side, const Feet& feet) {
  const bool by_look = without_blood_by_look(feet.here);
  if ((by_look && !without_blood_by_look(feet.there)) || !feet.here[0].is_yes() || !feet.there[0].is_yes()) {
    return false;
  }
  int felt = 0, full = 0;
  for (const ItemKey& item : {dorsal_pulse, tibial_pulse}) {
    const Clue felt_here = answers.graded(item, side, {"1", "2", "3"}), felt_there = answers.graded(item, other_side(side), {"1", "2", "3"});
    const Clue full_here = answers.graded(item, side, {"2", "3"});
    const bool weaker = full_here.is_no() && answers.graded(item, other_side(side), {"2", "3"}).is_yes();
    if (weaker || (!felt_here.is_yes() && !felt_there.is_no())) {
      return false;
    }
    felt += felt_here.is_yes() ? 1 : 0;
    full += full_here.is_yes() ? 1 : 0;
  }
  return felt == 2 || (full > 0 && !by_look);
}

// Slow to fill like the other one, or of a pale person cold like it, with no sign that the other has not and no pulse lost: of the whole body or of
// the weather, and an injury beside it is no symptom of this foot (red flags page, section 5: one sign and one symptom; our own rule).
bool lacks_like_the_other(const Answers& answers, const Feet& feet, bool pulse_lost) {
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
Clue poor_flow(const Answers& answers, Side side, const Clue& poor, const Clue& fails) {
  const Clue blue = answers.chosen("vessel.foot_colour", side, {"colour_blue", "colour_dusky"});
  if (!poor.is_yes() && !blue.is_yes()) {
    return {};
  }
  // Touch that is gone at one place of the foot counts beside that colour; felt pulses answer it as they do cold (our own rule).
  const Clue untouched = answers.any_chosen(touched_below, side, {"not_felt"});
  const Clue nerve = led_by(fails, {answers.yes("nerve.sensation_foot_reduced", side), answers.chosen("nerve.sensation_loss_level", side, {"loss_beyond_toes", "loss_whole_foot_or_more"})});
  return led_by(every({poor, nerve}), {every({blue, led_by(poor, {nerve, untouched})})});
}

namespace {

// A pulse that is felt, an artery that is heard.
[[nodiscard]] bool flows(const model::Finding& finding) {
  const auto* grade = std::get_if<model::Grade>(&finding.value);
  const auto* heard = std::get_if<model::Answer>(&finding.value);
  return (grade != nullptr && grade->grade.text != "0") || (heard != nullptr && heard->answer == model::AnswerWord::yes);
}

// Not felt, not heard, or looked for and not to be felt any more.
[[nodiscard]] bool flows_no_more(const model::Finding& finding) {
  const auto* grade = std::get_if<model::Grade>(&finding.value);
  const auto* heard = std::get_if<model::Answer>(&finding.value);
  const auto* not_done = std::get_if<model::NotDone>(&finding.value);
  return (grade != nullptr && grade->grade.text == "0") || (heard != nullptr && heard->answer == model::AnswerWord::no) ||
         (not_done != nullptr && not_done->reason == model::WhyNot::not_palpable);
}

// It was felt or heard before at this exam, by whoever it was, and is gone: "pulse newly absent" (red flags page, section 5). One that is known to have been
// felt later has come back. Of two that differ each is judged alone (after/told_apart.hpp), so the other is looked for in the exam.
void add_if_felt_before(const Answers& answers, const model::Finding& now, Clue& gone) {
  const std::vector<model::Finding>& all = *answers.view().exam().findings;
  const auto flowed = [&](const model::Finding& one) {
    const model::Standing standing = one.standing.value_or(model::Standing::current);
    const bool stands = standing == model::Standing::current || standing == model::Standing::in_conflict;
    return stands && one.item == now.item && one.side == now.side && flows(one) && settles(one);
  };
  const auto is_later = [&](const model::Finding& one) { return one.examined_at && now.examined_at && *now.examined_at < *one.examined_at; };
  if (std::any_of(all.begin(), all.end(), [&](const model::Finding& one) { return flowed(one) && is_later(one); })) {
    return;
  }
  for (const model::Finding& before : all) {
    if (flowed(before)) {
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

// Felt, and not to be felt any more: no value says it, and both stand in the exam. A reading and a later one that could not be had are no two that differ.
[[nodiscard]] Clue felt_no_more(const Answers& answers, const ItemKey& item, Side side) {
  Clue gone;
  const View& view = answers.view();
  if (!view.may_hold_two() || !view.exam().findings) {
    return gone;
  }
  for (const model::Finding& now : *view.exam().findings) {
    const bool here = now.item.text == item.name() && now.side == side && now.standing.value_or(model::Standing::current) == model::Standing::current;
    if (here && std::holds_alternative<model::NotDone>(now.value) && flows_no_more(now)) {
      add_if_felt_before(answers, now, gone);
    }
  }
  return gone;
}

}  // namespace

// The same of two readings that stand beside each other, where neither was chosen.
Clue gone_between(const Answers& answers, std::string_view item, Side side) {
  Clue gone;
  if (answers.view().may_hold_two() && answers.view().exam().findings) {
    for (const model::Finding* now : answers.view().at(item, side)) {
      if (flows_no_more(*now) && settles(*now)) {
        add_if_felt_before(answers, *now, gone);
      }
    }
  }
  return gone;
}

namespace {

// What was measured shows no flow: an artery of which the Doppler gives no signal ("or no Doppler signal": red flags page, section 5), a pressure below 0.90
// of the higher arm (decision rules page, section 7; of an artery that was not measured nothing is known), or colour that comes back late.
[[nodiscard]] bool measured_without_flow(const Answers& answers, Side side) {
  const View& view = answers.view();
  const auto dorsal = highest_pressure(view, "vessel.pressure_dorsalis_pedis", side);
  const auto tibial = highest_pressure(view, "vessel.pressure_posterior_tibial", side);
  const auto ankle = std::max(dorsal, tibial);  // none is less than any
  const bool silent = dorsal == 0 || tibial == 0;
  return silent || comes_back_late(answers, side).is_yes() || low_for_arm(view, ankle) == Tri::yes;
}

// One pulse lost after an injury is no lack of blood where the foot was found warm, feels and moves, nothing else speaks for one, and no knee was out of
// joint, or perhaps so (red flags page, section 5: a sign and a symptom; section 3). What nobody looked at, or who cannot tell of it, leaves the injury as
// the symptom. Of the pulse behind the ankle no page says that healthy people lack it: there the colour has to come back in time as well (our own rules).
[[nodiscard]] bool has_blood_beside(const Answers& answers, Side side, LostAlone lost, const Feet& feet, const Clue& fails) {
  const bool moves = answers.no("ankle.movement", side).is_no() || answers.count_at_least("gait.steps_now", 1).is_yes();
  const bool warm = feet.here[0].is_no() || (feet.here[0].is_yes() && feet.there[0].is_yes());  // or as cold as the other
  if (!warm || !answers.yes("nerve.sensation_foot_reduced", side).is_no() || !moves || cannot_tell_of_pain(answers, side).is_yes() ||
      (lost == LostAlone::tibial && !feet.here[2].is_no()) || measured_without_flow(answers, side)) {
    return false;
  }
  const bool second = led_by(fails, {feet.here[1], feet.here[2], touch_felt_less(answers, side), toes_fail(answers, side), answers.any_yes({"history.pain_out_of_proportion", "history.numb_or_tingling", "history.rest_pain_foot",
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
  return led_by(answers.yes("nerve.sensation_foot_reduced", side),
                {answers.chosen("nerve.sensation_loss_level", side, {"loss_beyond_toes", "loss_whole_foot_or_more"}), touch_felt_less(answers, side)});
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

namespace {

// Severe pain, of whatever part, that no injury explains, beside a foot that lacks blood: blood that is cut off hurts where the muscle is (page: "pain at
// rest"). Where no side is complained of it is of the one that lacks blood. Of two feet that are known to lack it alike, by pulses or by cold, it is of
// another trouble unless it came suddenly; a foot that nobody looked at, or that was taken off, bars nothing (our own rules).
[[nodiscard]] Clue pain_of_one_side(const FootBlood& foot) {
  const auto& complaint = foot.answers.view().exam().side;
  const bool of_this_side = !complaint || *complaint == Side::midline || *complaint == foot.side;
  // Who says that the foot does not hurt at rest and did not turn so suddenly has that pain of something else.
  if (!of_this_side || foot.hurt.is_yes() || (foot.told_rest_pain.is_no() && foot.sudden.is_no())) {
    return {};
  }
  const Side other = other_side(foot.side);
  const bool alike = foot.feet.there[0].is_yes() || foot.answers.no(doppler_heard, other).is_yes() || (pulse_absent(foot.answers, dorsal_pulse, other).is_yes() && pulse_absent(foot.answers, tibial_pulse, other).is_yes());
  return alike ? foot.answers.yes("history.pain_severe_sudden") : severe_pain_told(foot.answers);
}

}  // namespace

FootBlood blood_of_foot(const Answers& answers, Side side) {
  FootBlood foot{answers, side, pulse_absent(answers, dorsal_pulse, side), pulse_absent(answers, tibial_pulse, side)};
  foot.one_lost = foot.dorsal.is_yes() || foot.tibial.is_yes();
  foot.felt_both = every({negate(foot.dorsal), negate(foot.tibial)});
  foot.unheard = answers.no(doppler_heard, side);
  foot.none_below = flow_gone(answers, side, foot.dorsal, foot.tibial, foot.unheard);
  foot.gross = foot.none_below.is_yes() && answers.yes("vessel.foot_cold", side).is_yes();
  foot.hurt = foot.gross ? hurt_lately(answers) : hurt_as_told(answers);
  const auto felt_there = [&](const ItemKey& item) { return bare_no(unasked(answers.graded(item, other_side(side), {"1", "2", "3"}))); };
  foot.others_felt = either({every({foot.dorsal, felt_there(dorsal_pulse)}), every({foot.tibial, felt_there(tibial_pulse)})});
  foot.feet = {cold_ill_coloured_slow(answers, side), cold_ill_coloured_slow(answers, other_side(side))};
  foot.of_one_side = alone_without_blood(foot.feet);
  foot.sudden = answers.yes("history.cold_pale_sudden", side);
  foot.fails = foot_fails(answers, side);
  foot.poor = one_gone_one_poor(answers, side);
  foot.cut_off = pulse_above_lost(answers, side);
  foot.dorsal_gone = foot.dorsal.is_yes() ? newly_absent(answers, foot.dorsal) : felt_no_more(answers, dorsal_pulse, side);
  foot.tibial_gone = foot.tibial.is_yes() ? newly_absent(answers, foot.tibial) : felt_no_more(answers, tibial_pulse, side);
  const Clue silent = foot.unheard.is_yes() ? newly_absent(answers, foot.unheard) : Clue{};
  const bool felt = foot.dorsal.is_no() || foot.tibial.is_no();
  if (answers.view().may_hold_two() && !felt) {
    const auto lost_now = [&](const ItemKey& item) {
      const Clue absent = unasked(pulse_absent(answers, item, side));
      return absent.is_yes() ? newly_absent(answers, absent) : felt_no_more(answers, item, side);
    };
    foot.above_gone = led_by(Clue{}, {lost_now("vessel.pulse_popliteal"), lost_now("vessel.pulse_femoral")});
  }
  foot.gone = led_by(foot.dorsal_gone, {foot.tibial_gone, silent, foot.above_gone});
  foot.cut_off = foot.gone.is_yes() ? led_by(foot.cut_off, {foot.gone}) : foot.cut_off;
  if (foot.one_lost && foot.others_felt.is_yes() && foot.hurt.is_yes() && !foot.gone.is_yes()) {
    foot.lost = pulse_lost_alone(answers, side);
    foot.has_blood = foot.lost != LostAlone::none && has_blood_beside(answers, side, foot.lost, foot.feet, foot.fails);
  }
  // Pain at rest for longer than that is another trouble.
  foot.long_pain = answers.yes("history.rest_pain_over_2_weeks", side).is_yes();
  foot.told_rest_pain = foot.long_pain ? fact(Tri::no) : answers.yes("history.rest_pain_foot", side);
  foot.rest_pain = foot.told_rest_pain;
  return foot;
}

void look_closer(FootBlood& foot) {
  foot.rest_pain = foot.long_pain ? fact(Tri::no) : led_by(foot.told_rest_pain, {pain_of_one_side(foot)});
  foot.toes = toes_fail(foot.answers, foot.side);
}

}  // namespace limbledger::interpret
