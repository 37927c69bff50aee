// A clot of the leg, and of the lung beside it: as clinical safety C3 mends it, so that it does not fire on ordinary people.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"
#include "core/interpret/rules/vessel/wells.hpp"

namespace limbledger::interpret {

using model::Side;

namespace {

[[nodiscard]] Clue whole_leg_swollen(const Answers& answers, Side side) {
  const Clue spread = answers.chosen("knee.look_swelling_spread", side, {"whole_limb"});
  const Clue looked = answers.yes("vessel.whole_leg_swollen", side);
  return unasked(looked.value == Tri::undetermined ? led_by(spread, {looked}) : led_by(looked, {spread}));
}

// A calf that was measured thicker than the other.
[[nodiscard]] Clue calf_measured_fuller(const Answers& answers, Side side) {
  std::vector<const model::Finding*> girths;
  const auto difference = calf_difference(answers.view(), side, girths);
  Clue clue;
  if (difference && difference->low >= calf_fuller_mm) {
    clue.value = Tri::yes;
    clue.because = FindingTrail::of(answers.view().trails().findings, girths);
  }
  return clue;
}

// Whom the score is not made for by age (NICE_QS201).
[[nodiscard]] bool too_young_for_points(const Answers& answers) { return answers.aged(0, wells_from - 1) == Tri::yes; }

// The points of 2003 as the rule has them (wells.hpp): two or more, fewer, or open. What is not recorded is never read as no. An earlier
// clot, a leg paralysed or in plaster and the girths count when they are there, and are not asked for.
[[nodiscard]] Clue wells_clue(const Answers& answers, Side side, const Clue& fuller) {
  Clue open;
  const auto point = [&](const Clue& clue) {
    open.because.add(clue.because);
    open.ask.add(clue.ask);
  };
  point(answers.yes("history.cancer_active"));
  point(answers.yes("history.immobile_or_surgery_recent"));
  point(unasked(answers.yes("history.leg_paralysed_or_plaster", side)));
  point(unasked(answers.yes("history.clot_before")));
  point(answers.yes("leg.calf_tender_vein", side));
  point(whole_leg_swollen(answers, side));
  point(fuller);
  point(answers.yes("vessel.oedema_more_this_side", side));
  point(answers.yes("vessel.veins_collateral", side));
  const Clue other_cause = answers.yes("history.other_cause_as_likely", side);
  open.ask.add(other_cause.ask);
  open.ask.add(answers.yes("history.examiner_suspects_clot").ask);
  open.value = wells_two_or_more(answers.view(), side);
  // The score is not made for who is younger, so few points say nothing: a leg that swells, and that nothing else explains, is scanned (red flags
  // page, section 10: "undetermined -> raised"; C3; that the other cause decides is our own rule).
  if (open.value != Tri::yes && too_young_for_points(answers)) {
    open.value = other_cause.is_no() ? Tri::yes : Tri::undetermined;
    open.open.add(other_cause.because);
  }
  return open;
}

// Calf pain that was complained of or located, and that no recorded injury explains (C3).
[[nodiscard]] Clue calf_hurts(const Answers& answers, Side side) {
  const auto& exam = answers.view().exam();
  if (injured(answers).is_yes()) {
    return {};
  }
  const bool complained = exam.complaint.text == "calf_pain" && (!exam.side || *exam.side == Side::midline || *exam.side == side);
  return led_by(complained ? fact(Tri::yes) : Clue{}, {answers.chosen("history.pain_site", side, {"site_calf", "site_whole_limb"})});
}

// What stands for a swollen leg beside a positive blood test: pain, or water in this leg alone or more (red flags page, section 10: "swelling or
// pain"; decision rules page, section 24: "unilateral new oedema").
[[nodiscard]] Clue hurts_or_pits(const Answers& answers, Side side) {
  const Clue pits_here = every({answers.graded("vessel.oedema_pitting", side, {"1+", "2+", "3+", "4+"}), answers.graded("vessel.oedema_pitting", other_side(side), {"0"})});
  return unasked(led_by(calf_hurts(answers, side), {answers.yes("vessel.oedema_more_this_side", side), pits_here}));
}

// Swollen for weeks, not painful, explained as well by another cause and not suspected: it is not new (red flags page, section 10: "unilateral new leg
// swelling"; from how many weeks on is our own rule). No is never said.
[[nodiscard]] Clue long_explained(const Answers& answers, Side side) {
  if (answers.yes("leg.calf_tender_vein", side).is_yes() || calf_hurts(answers, side).is_yes()) {
    return {};
  }
  const Clue long_so = every({answers.count_at_least("history.weeks_since_onset", lately_weeks + 1), answers.yes("history.other_cause_as_likely", side),
                              answers.no("history.examiner_suspects_clot")});
  return long_so.is_yes() ? long_so : Clue{};
}

// One that was found beside the tender vein, a swollen calf or leg apart, which point to a clot by themselves.
[[nodiscard]] Clue another_point(const Answers& answers, Side side) {
  return led_by(Clue{}, {answers.yes("history.cancer_active"), answers.yes("history.immobile_or_surgery_recent"), answers.yes("history.leg_paralysed_or_plaster", side),
                         answers.chosen("body.cast", side, {"cast_hip", "cast_thigh", "cast_knee", "cast_shin", "cast_ankle", "cast_foot"}),
                         answers.yes("history.clot_before"), answers.yes("vessel.oedema_more_this_side", side), answers.yes("vessel.veins_collateral", side)});
}

// Pregnant, or a birth in the last weeks. Not asked of a man, nor below 12 or above 55 years (our convention, as in the rules).
[[nodiscard]] Clue pregnant(const Answers& answers) {
  const Clue told = led_by(answers.yes("body.pregnancy"), {answers.yes("history.childbirth_recent")});
  const auto& person = answers.view().person();
  const bool cannot_be = (person && person->sex == model::Sex::male) || answers.aged(0, 11) == Tri::yes || answers.aged(56, 200) == Tri::yes;
  return cannot_be && !told.is_yes() ? fact(Tri::no) : told;
}

// Both legs swollen, and nothing that points to one of them: one line of no side, as two of them say no more (the page's leg is one).
[[nodiscard]] bool swollen_alike(const Answers& answers, Side side) {
  const auto swells = [&](Side one) { return answers.any_yes({"leg.calf_swelling"}, one).is_yes() || whole_leg_swollen(answers, one).is_yes(); };
  const auto points = [&](Side one) {
    return answers.any_yes({"leg.calf_tender_vein", "vessel.oedema_more_this_side", "vessel.veins_collateral", "history.leg_paralysed_or_plaster"}, one).is_yes() ||
           answers.chosen("body.cast", one, {"cast_hip", "cast_thigh", "cast_knee", "cast_shin", "cast_ankle", "cast_foot"}).is_yes() ||
           answers.chosen("vessel.foot_colour", one, {"colour_blue", "colour_dusky"}).is_yes() || calf_measured_fuller(answers, one).is_yes();
  };
  return swells(side) && swells(other_side(side)) && !points(side) && !points(other_side(side));
}

// Oxygen a little low, and no other sign that was counted, is of old lungs where the leg has been swollen for weeks: it is asked whether the
// breath is short (our own rule, by the limit that NICE_NG51 has for known lung disease).
[[nodiscard]] Clue counted_of_chest(const Answers& answers) {
  const Clue counted = led_by(pulse_of_clot(answers), {breathes_badly(answers), body_fails(answers)});
  const bool long_swollen = counted.is_yes() && answers.count_at_least("history.weeks_since_onset", lately_weeks + 1).is_yes();
  if (!long_swollen || answers.count_below("general.oxygen_saturation", saturation_old_lungs).is_yes()) {
    return counted;
  }
  return counted.because.any([](const model::Finding* one) { return one->item.text != "general.oxygen_saturation"; }) ? counted : Clue{};
}

// Swollen, tender over a vein or painful in the calf, as far as it is recorded.
[[nodiscard]] bool points_to_clot(const Answers& answers, Side side) {
  return led_by(answers.yes("leg.calf_swelling", side), {calf_measured_fuller(answers, side), whole_leg_swollen(answers, side), answers.yes("leg.calf_tender_vein", side),
                                                         answers.yes("vessel.oedema_more_this_side", side), calf_hurts(answers, side)}).is_yes();
}

// Nothing but whether another cause is as likely keeps the points open: with either answer they are known.
[[nodiscard]] bool only_cause_is_open(const Answers& answers, Side side) {
  const View& view = answers.view();
  const Clue cause = answers.yes("history.other_cause_as_likely", side);
  if (cause.value != Tri::undetermined || cause.ask.empty()) {
    return false;
  }
  model::Finding told;
  told.item = {"history.other_cause_as_likely"};
  told.side = side;
  told.value = model::Answer{model::AnswerWord::yes};
  const bool known_if_so = wells_two_or_more(View(view, told), side) != Tri::undetermined;
  told.value = model::Answer{model::AnswerWord::no};
  return known_if_so && wells_two_or_more(View(view, told), side) != Tri::undetermined;
}

}  // namespace

Raised leg_clot(const Answers& answers, Side side) {
  const Clue suspects = answers.yes("history.examiner_suspects_clot");
  const Clue fuller = calf_measured_fuller(answers, side);
  const Clue vein = answers.yes("leg.calf_tender_vein", side);
  // A tender calf that does not swell is explained by a recorded injury. With another point found there are two, for which the rule says scan
  // (WELLS2003): a broken ankle does not explain the vein of a leg that lay in plaster. That no clot is suspected explains no leg that alone is
  // tender (red flags page: "unilateral"); two calves sore alike it does (S01).
  const Clue another = vein.is_yes() ? another_point(answers, side) : Clue{};
  const bool sore_alike = vein.is_yes() && suspects.is_no() && answers.yes("leg.calf_tender_vein", other_side(side)).is_yes();
  const Clue tender = another.is_yes() ? every({vein, another}) : every({vein, circumstance(negate(injured(answers))), fact(!sore_alike)});
  const Clue whole = whole_leg_swollen(answers, side);
  const Clue entry = either({led_by(answers.yes("leg.calf_swelling", side), {fuller}), whole, unasked(tender), suspects});
  // Signs that were counted stand beside what is told: who says no, or cannot say, may still lack breath (our own rule).
  const Clue chest = led_by(answers.yes("history.breathless"), {counted_of_chest(answers)});
  const Clue bears = bare_no(pregnant(answers));
  // The points are counted where they can decide: a leg that points to a clot, or where nothing else is left but them.
  const bool counts = entry.is_yes() || (!entry.is_no() && suspects.is_no() && bears.is_no() && chest.is_no());
  const Clue wells = counts ? wells_clue(answers, side, fuller) : Clue{};
  // Swollen as a whole and blue: the veins are closed so far that the leg itself is in danger; no score is waited for (our own rule).
  const Clue blue = whole.is_yes() ? answers.chosen("vessel.foot_colour", side, {"colour_blue", "colour_dusky"}) : Clue{};
  const bool found = entry.is_yes() || vein.is_yes();
  const Clue tested = answers.tried("general.lab_d_dimer", Side::midline, [](const model::Finding& finding) {
    const auto* result = std::get_if<model::Choice>(&finding.value);
    return result != nullptr && result->choice.text == "lab_positive" ? Tri::yes : Tri::undetermined;
  });
  const Clue beside = tested.is_yes() && !found ? hurts_or_pits(answers, side) : Clue{};
  const bool scanned = (found || beside.is_yes()) && answers.chosen("general.scan_leg_veins", side, {"scan_no_clot_seen"}).is_yes();
  Raised raised;
  raised.clue = every({entry, led_by(either({suspects, wells, bears, chest}), {blue})});
  if (raised.clue.value == Tri::undetermined && !entry.is_yes()) {
    raised.clue.because.clear();
    raised.clue.ask = entry.ask;
  }
  const Clue seen = unasked(answers.chosen("general.scan_leg_veins", side, {"scan_clot_seen"}));
  if (seen.is_yes() && chest.is_yes() && !raised.clue.is_yes()) {
    raised.clue = every({seen, chest});
  }
  const bool to_scan = tested.is_yes() && (found || beside.is_yes()) && !scanned;
  if (to_scan && !raised.clue.is_yes()) {
    // A positive blood test is scanned the same day, whatever the points and whoever suspects what.
    raised.clue = every({beside.is_yes() ? beside : (vein.is_yes() ? led_by(entry, {vein}) : entry), tested, chest.is_yes() ? chest : fact(Tri::yes)});
    raised.what = "d_dimer";
  }
  if (raised.clue.is_yes() && chest.is_yes()) {
    raised.urgency = AlertClass::now;
    raised.interrupts = true;
    raised.what = "chest";
  } else if (seen.is_yes()) {
    raised.clue = seen;
    raised.what = "seen";
  } else if (raised.clue.is_yes() && raised.what != "d_dimer") {
    raised.what = wells.is_yes() && !bears.is_yes() && !too_young_for_points(answers) ? "points" : "raised";
  } else if (const bool open_chest = chest.value == Tri::undetermined; !raised.clue.is_yes() && entry.is_yes() && wells.is_no() && bears.is_no() && (chest.is_no() || (open_chest && !scanned))) {
    // Fewer than two points: the blood test of the day decides whether it is scanned. One that is negative, a scan that shows none, or a leg long so
    // asks for another cause.
    const Clue none = scanned ? answers.chosen("general.scan_leg_veins", side, {"scan_no_clot_seen"})
                              : led_by(answers.chosen("general.lab_d_dimer", Side::midline, {"lab_negative"}), {long_explained(answers, side)});
    // Whether the breath is short is asked beside it: with a no this stands, and a yes is graver.
    if (!open_chest || !none.is_yes()) {
      raised.clue = none.is_yes() ? negate(none) : fact(Tri::yes);
      raised.clue.because.add(none.is_yes() ? FindingTrail{} : entry.because);
      raised.what = "under_two";
    }
  }
  // With either answer the leg is looked at the same day, and it waits for none (decision rules page, section 0: "if all completions agree").
  const bool looked_for = scanned || answers.chosen("general.lab_d_dimer", Side::midline, {"lab_negative"}).is_yes() || long_explained(answers, side).is_yes();
  if (raised.clue.value == Tri::undetermined && entry.is_yes() && wells.value == Tri::undetermined && bears.is_no() && chest.is_no() && !looked_for && !too_young_for_points(answers) &&
      only_cause_is_open(answers, side)) {
    raised.clue = fact(Tri::yes);
    raised.clue.because = entry.because;
    raised.what = "raised";
  }
  // Suspected alone: of a leg that nobody found swollen or tender that is not said (clinical safety, C10: no side in words that is not its own).
  // Where no side is complained of it is one line of both legs, and what either shows is said.
  const auto& of_side = answers.view().exam().side;
  const bool shows = points_to_clot(answers, side) || ((!of_side || *of_side == Side::midline) && points_to_clot(answers, other_side(side)));
  if (raised.clue.is_yes() && suspects.is_yes() && !shows && (raised.what == "raised" || raised.what == "points" || raised.what == "chest")) {
    raised.what = raised.what == "chest" ? "suspected_chest" : "suspected";
  }
  // Beside a swollen leg, a tender vein or a positive blood test no answer is a no: what explains it, and what was found, are both named.
  if ((found || tested.is_yes()) && raised.clue.is_no()) {
    raised.clue = left_open(raised.clue, found ? led_by(vein, {entry}) : tested);
  }
  // A clot of the leg that stands leaves the one of the lung to be asked after.
  if (raised.clue.is_yes() && raised.urgency == AlertClass::same_day && chest.value == Tri::undetermined) {
    raised.graver = chest;
  }
  if (raised.clue.is_yes() && !seen.is_yes() && swollen_alike(answers, side)) {
    raised.of_no_side = true;
    raised.what = raised.what == "chest" ? "both_chest" : (raised.what == "under_two" ? "both_under_two" : "both");
    for (const Side one : {side, other_side(side)}) {
      raised.clue.because.add(led_by(whole_leg_swollen(answers, one), {answers.any_yes({"leg.calf_swelling"}, one)}).because);
    }
  }
  return raised;
}

}  // namespace limbledger::interpret
