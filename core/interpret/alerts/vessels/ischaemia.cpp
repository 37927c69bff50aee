// The limb that blood does not reach: a sign, a symptom and how long, and what is asked where they are not enough.
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"
#include "core/interpret/alerts/vessels/foot_blood.hpp"

#include <algorithm>
#include <initializer_list>
#include <string_view>

namespace limbledger::interpret {

using model::Side;

namespace {

[[nodiscard]] Clue perfusion_sign(const FootBlood& foot) {
  const Clue refill = foot.felt_both.is_yes() && !foot.of_one_side ? fact(Tri::no) : unasked(foot.feet.here[2]);
  const Clue lost_by_injury = foot.has_blood ? Clue{} : every({circumstance(foot.hurt), foot.others_felt});
  const bool cold_as_other = foot.has_blood && foot.feet.here[0].is_yes();
  return led_by(either({cold_as_other ? Clue{} : foot.feet.here[0], every({foot.dorsal, foot.tibial}), lost_by_injury, refill}),
                {foot.sudden, foot.answers.chosen("vessel.foot_colour", foot.side, {"colour_pale", "colour_mottled"}), foot.unheard, foot.cut_off,
                 poor_flow(foot.answers, foot.side, foot.poor, foot.fails)});
}

// Both pulses of the foot full, or it is as cold as the other one: blood reaches it. Told to have turned so suddenly, or without flow by
// another sign, it is not called so.
[[nodiscard]] bool blood_reaches(const FootBlood& foot) {
  const bool alike = cold_alike(foot.answers, foot.side, foot.feet);
  return (alike || pulses_full(foot.answers, foot.side)) && !foot.of_one_side && !foot.sudden.is_yes() && !foot.cut_off.is_yes() && !foot.unheard.is_yes();
}

[[nodiscard]] Clue feels_less(const FootBlood& foot, std::initializer_list<std::string_view> levels) {
  return led_by(foot.answers.yes("nerve.sensation_foot_reduced", foot.side), {foot.answers.chosen("nerve.sensation_loss_level", foot.side, levels)});
}

// Of a foot that blood reaches: cold, pale, blue or tingling it is winter's foot, hurt or not, until it feels less, fails, hurts beyond the hurt
// or, not hurt, at rest (C2: "pulseless or cold limb" may not interrupt an ordinary day; our own rule).
[[nodiscard]] Clue symptom_of_winter(const FootBlood& foot) {
  const Answers& answers = foot.answers;
  const bool long_numb = answers.yes("body.feeling_lost", foot.side).is_yes() || answers.yes("body.paralysis", foot.side).is_yes();
  return led_by(either({long_numb ? fact(Tri::no) : feels_less(foot, {"loss_beyond_toes", "loss_whole_foot_or_more"}), foot.fails}),
                {answers.yes("history.pain_out_of_proportion", foot.side), answers.yes("history.both_legs_weak"), foot.hurt.is_yes() ? Clue{} : foot.told_rest_pain});
}

[[nodiscard]] bool is_found(const Clue& one) { return one.is_yes(); }
[[nodiscard]] bool two_signs(const Feet& feet) { return std::count_if(feet.here.begin(), feet.here.end(), &is_found) >= 2; }

// Two of cold, of an ill colour and slow to fill, and the other foot is not known to have any of them: who cannot tell of pain is not asked for a symptom
// (clinical safety, C13; our own rule).
[[nodiscard]] bool two_signs_of_one_side(const Feet& feet) { return two_signs(feet) && std::none_of(feet.there.begin(), feet.there.end(), &is_found); }

[[nodiscard]] Clue feeling_untold(const FootBlood& foot) {
  return foot.answers.stopped("nerve.sensation_foot_reduced", foot.side, {model::WhyNot::not_reliable, model::WhyNot::cannot_answer});
}

// Told to have turned cold, pale or numb suddenly it needs no other symptom where neither pulse is felt, or it has two of those signs (our own rule: the
// question holds the symptom, and is of this foot).
[[nodiscard]] Clue symptom_of_no_blood(const FootBlood& foot, const Clue& perfusion) {
  const Answers& answers = foot.answers;
  const Side side = foot.side;
  const bool of_both = lacks_like_the_other(answers, foot.feet, foot.one_lost) && !led_by(foot.sudden, {foot.cut_off, foot.poor, foot.unheard}).is_yes();
  Clue symptom = led_by(either({of_both ? Clue{} : circumstance(foot.hurt), answers.yes("nerve.sensation_foot_reduced", side), answers.yes("nerve.foot_drop", side),
                                answers.no("ankle.movement", side), answers.yes("history.pain_out_of_proportion", side)}),
                        {foot.rest_pain, answers.yes("history.numb_or_tingling", side), numb_foot(answers, side), foot.fails, answers.yes("history.both_legs_weak"),
                         answers.chosen("nerve.sensation_loss_level", side, {"loss_toes_only", "loss_beyond_toes", "loss_whole_foot_or_more"}), perfusion.is_no() ? Clue{} : newly_numb(answers, side),
                         foot.toes, foot.sudden.is_yes() && (two_signs(foot.feet) || (foot.dorsal.is_yes() && foot.tibial.is_yes())) ? foot.sudden : Clue{},
                         two_signs_of_one_side(foot.feet) ? led_by(cannot_tell_of_pain(answers, side), {feeling_untold(foot)}) : Clue{}});
  // Both lost within this exam, or the one and no signal: that is new by itself, and waits neither for an injury nor for pain or numbness ("pulse newly
  // absent": red flags page, section 5).
  if (foot.gone.is_yes() && ((foot.dorsal_gone.is_yes() && foot.tibial_gone.is_yes()) || foot.unheard.is_yes() || (foot.above_gone.is_yes() && !foot.feet.here[0].is_no()))) {
    symptom = led_by(symptom, {foot.gone});
  }
  // Neither pulse, and the other foot has blood: no signal, or who cannot tell what is felt, is enough (clinical safety, C13).
  if (foot.dorsal.is_yes() && foot.tibial.is_yes() && foot.others_felt.is_yes()) {
    symptom = led_by(symptom, {foot.unheard, feeling_untold(foot), cannot_tell_of_pain(answers, side)});
  }
  return symptom;
}

// Knee, thigh, shin, ankle or foot out of shape beside lost pulses is of today, whatever the day that was told.
[[nodiscard]] Clue bent_beside_lost(const FootBlood& foot) {
  const Clue bent = foot.poor.is_yes() ? led_by(foot.answers.any_yes({"knee.look_deformity"}, foot.side), {foot_deformed(foot.answers, foot.side)}) : Clue{};
  return bent.is_yes() ? out_of_shape(foot.answers, foot.side, bent) : Clue{};
}

// With one pulse that nobody could look for, feeling or movement that is lost says the same as both (convention).
[[nodiscard]] bool other_unlooked(const FootBlood& foot) {
  return (foot.dorsal.is_yes() && foot.tibial.value == Tri::undetermined) || (foot.tibial.is_yes() && foot.dorsal.value == Tri::undetermined);
}

[[nodiscard]] Clue wide_behind_knee(const FootBlood& foot) {
  return foot.answers.any_yes({"knee.popliteal_swelling_beats", "vessel.pulse_popliteal_broad"}, foot.side);
}

// What happened these days, a plaster that is on, a vessel wide behind the knee, a foot that fails, or one numb without a pulse are of
// today, whatever the weeks of the complaint and an old pain at rest say (our own rule). Both pulses of the foot felt end that.
[[nodiscard]] Clue of_today(const FootBlood& foot, const Clue& shape) {
  const Answers& answers = foot.answers;
  const View& view = answers.view();
  const Clue plaster = answers.chosen("body.cast", foot.side, {"cast_hip", "cast_thigh", "cast_knee", "cast_shin", "cast_ankle", "cast_foot"});
  const bool told_undated = complains_of_something_recent(view) && !view.exam().injured_on && hurt_as_told(answers).is_yes();
  const Clue happened = told_undated ? hurt_as_told(answers) : every({hurt_lately(answers), of_short_history(answers)});
  const bool poor_of_now = foot.poor.is_yes() && !over_two_weeks(answers).is_yes();
  const Clue numb = foot.none_below.is_yes() || other_unlooked(foot) || poor_of_now ? newly_numb(answers, foot.side) : Clue{};
  const Clue acute = foot.felt_both.is_yes() ? Clue{} : led_by(Clue{}, {foot.fails, numb, plaster, wide_behind_knee(foot), happened, shape});
  return foot.gone.is_yes() ? led_by(acute, {foot.gone}) : acute;
}

// Within two weeks, or of today. A cold foot without both pulses waits for no day: how long the complaint has lasted is not how long the foot has
// been so. Only pain of the foot at rest that is known to last for weeks is another trouble. Said not to have come suddenly, and nothing
// of today beside it: a foot that lacks blood for long, until a symptom says otherwise; when it began is what the page asks for first.
struct HowLong {
  bool stands = false;  // it waits for no symptom either
  Clue lately;
};

[[nodiscard]] HowLong how_long(const FootBlood& foot, const Clue& shape) {
  const Answers& answers = foot.answers;
  const Clue acute = of_today(foot, shape);
  HowLong long_so;
  long_so.stands = foot.gross && !(foot.sudden.is_no() && !acute.is_yes() && !foot.hurt.is_yes());
  const bool failing = answers.yes("nerve.sensation_foot_reduced", foot.side).is_yes() || answers.no("ankle.movement", foot.side).is_yes();
  const bool today = long_so.stands || (other_unlooked(foot) && failing && answers.yes("vessel.foot_cold", foot.side).is_yes());
  const Clue by_weeks = today ? fact(not_(tri(foot.long_pain))) : of_short_history(answers);
  long_so.lately = foot.sudden.is_yes() ? led_by(foot.sudden, {of_short_history(answers), acute})
                                        : led_by(by_weeks, {acute, acute.is_yes() ? of_short_history(answers) : Clue{}});
  return long_so;
}

// Dead tissue, or pain at rest, beside a pulse that is lost is urgent at any age: over two weeks it is alert.clti. Younger, or of an age
// that nobody told, the more urgent of the two neighbours has it (our own rule; the pages have a gate of two weeks between them).
[[nodiscard]] Clue dead_or_sore_without_flow(const FootBlood& foot) {
  const Answers& answers = foot.answers;
  const Clue dead = dead_tissue(answers, foot.side);
  const auto known_long = [&] { return foot.long_pain || answers.yes("history.foot_ulcer_over_2_weeks", foot.side).is_yes() || over_two_weeks(answers).is_yes(); };
  if ((!dead.is_yes() && !foot.rest_pain.is_yes()) || known_long()) {
    return {};
  }
  const Clue no_flow = led_by(dead.is_yes() ? pulses_lost(answers, foot.side) : every({foot.dorsal, foot.tibial}), {foot.cut_off});
  return no_flow.is_yes() ? every({no_flow, dead.is_yes() ? dead : foot.rest_pain}) : Clue{};
}

// What is no no, though the rule by its letter says one: whether the foot moves, or what would make it one of now, is asked.
void keep_open(const FootBlood& foot, const Clue& perfusion, bool reached, const Clue& lately, Clue& clue) {
  // Weeks alone answer nothing of a foot that is cold or without its pulses (our own rule).
  if (clue.is_no() && lately.is_no() && perfusion.is_yes() && !foot.felt_both.is_yes() && !foot.fails.is_no()) {
    clue = every({perfusion, foot.fails});
  }
  // As cold as the other with poor pulses.
  if (clue.is_no() && reached && !lately.is_no() && !pulses_full(foot.answers, foot.side)) {
    clue = left_open(clue, perfusion);
    clue.because.add(perfusion.because);
    clue.ask = foot.sudden.ask;
    clue.ask.add(foot.answers.yes("history.pain_out_of_proportion", foot.side).ask);
  }
}

// What a question about it rests on, where no sign was found.
void name_grounds_of_question(const FootBlood& foot, const Clue& perfusion, Clue& clue) {
  clue.because = perfusion.because;
  // One foot blue or dusky while nobody felt its pulses: a side that was seen so is asked after, whatever leg is complained of (C8).
  const bool unfelt = foot.dorsal.value == Tri::undetermined && foot.tibial.value == Tri::undetermined;
  const auto blue = [&](Side on) { return unfelt ? foot.answers.chosen("vessel.foot_colour", on, {"colour_blue", "colour_dusky"}) : Clue{}; };
  clue.because.add(blue(other_side(foot.side)).is_yes() ? FindingTrail{} : blue(foot.side).because);
  // A vessel that is wide behind the knee can close: the pages give it no class, so the foot is asked after.
  clue.because.add(wide_behind_knee(foot).because);
}

// One pulse that is lost, and nothing else that speaks: an artery that the Doppler hears ends it, and the pulse stays named; until then that is
// asked before anything else.
void listen_first(const FootBlood& foot, Raised& raised) {
  if (foot.has_blood) {
    const Clue heard = foot.answers.yes(doppler_heard, foot.side);
    if (heard.is_yes()) {
      raised.clue = fact(Tri::no);
      raised.clue.against = heard.because;
      raised.clue.against.add(foot.feet.here[0].against);
      raised.clue = left_open(raised.clue, foot.lost == LostAlone::dorsal ? foot.dorsal : foot.tibial);
    } else {
      raised.asks = asks_for_doppler(foot.answers, foot.side, foot.lost, raised.clue);
      raised.ask_first = !raised.asks.empty();
    }
  }
  if (!raised.asks.empty()) {
    return;
  }
  // One that was lost within this exam is no no either, hurt or not.
  const auto between = [&](const ItemKey& item) { return gone_between(foot.answers, item.name(), foot.side); };
  const Clue back = foot.gone.is_yes() ? foot.dorsal_gone : between(dorsal_pulse);
  if (!foot.gone.is_yes() && !back.is_yes() && !between(tibial_pulse).is_yes()) {
    return;
  }
  if (!asks_for_doppler(foot.answers, foot.side, back.is_yes() ? LostAlone::dorsal : LostAlone::tibial, raised.clue).empty()) {
    raised.asks = "pulse_gone";
    raised.ask_first = true;
  }
}

// In which words it is told: the pulse, how far the foot has failed, or that it is a stump; each with its grounds.
void name_what(const FootBlood& foot, Raised& raised) {
  const View& view = foot.answers.view();
  name_lost_pulse(raised, foot.dorsal, foot.tibial);
  if (!raised.clue.is_yes()) {
    return;
  }
  if (const std::string_view grade = ischaemia_grade(foot.answers, foot.side); !grade.empty()) {
    raised.what = grade;  // the pulse that was not felt stands among the grounds
    raised.tells_of = grade == "grade_2b" || grade == "grade_3" ? itself : raised.tells_of;  // a foot that fails is more than a pulse that is lost
    for (const std::string_view item : {"ankle.movement", "nerve.sensation_loss_level", "nerve.foot_drop", "nerve.power_ankle_dorsiflexion",
                                        "nerve.power_ankle_plantarflexion", "vessel.doppler_arterial_audible", "vessel.doppler_venous_audible"}) {
      raised.clue.because.add(FindingTrail::of(view.trails().findings, view.at(item, foot.side)));
    }
  }
  if (const Clue taken = foot_taken_off(foot.answers, foot.side); taken.is_yes()) {
    raised.what = "stump";
    raised.tells_of = itself;
    raised.clue.because.add(taken.because);
  }
}

}  // namespace

// A perfusion sign and a symptom, within two weeks. Pain and tingling cannot be required where feeling is reduced: that is itself
// the symptom, and one sign is enough. Source: red flags page, section 5; clinical safety, C13.
Raised limb_ischaemia(const Answers& answers, Side side) {
  FootBlood foot = blood_of_foot(answers, side);
  const Clue perfusion = perfusion_sign(foot);
  if (!perfusion.is_no()) {
    look_closer(foot);
  }
  const bool reached = perfusion.is_yes() && blood_reaches(foot);
  const Clue symptom = reached ? symptom_of_winter(foot) : symptom_of_no_blood(foot, perfusion);
  const Clue shape = bent_beside_lost(foot);
  const auto [stands, lately] = how_long(foot, shape);
  Raised raised;
  raised.urgency = AlertClass::now;
  raised.interrupts = true;
  raised.tells_of = itself;
  raised.clue = every({perfusion, stands ? fact(Tri::yes) : led_by(symptom, {shape}), lately});
  keep_open(foot, perfusion, reached, lately, raised.clue);
  if (!raised.clue.is_yes()) {
    const Clue without_flow = dead_or_sore_without_flow(foot);
    raised.clue = without_flow.is_yes() ? without_flow : raised.clue;
  }
  if (raised.clue.value == Tri::undetermined && !perfusion.is_yes()) {
    name_grounds_of_question(foot, perfusion, raised.clue);
  }
  if (!raised.clue.is_yes()) {
    listen_first(foot, raised);
  }
  name_what(foot, raised);
  return raised;
}

}  // namespace limbledger::interpret
