// Clot, cauda equina, tumour: as clinical safety C3 mends them, so that they do not fire on ordinary people.
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
  open.ask.add(answers.yes("history.other_cause_as_likely", side).ask);
  open.ask.add(answers.yes("history.examiner_suspects_clot").ask);
  // The score is not made for who is younger, so it says no nothing.
  open.value = answers.aged(0, wells_from - 1) == Tri::yes ? Tri::undetermined : wells_two_or_more(answers.view(), side);
  return open;
}

// Pregnant, or a birth in the last weeks. Not asked of a man, nor below 12 or above 55 years (our convention, as in the rules).
[[nodiscard]] Clue pregnant(const Answers& answers) {
  const Clue told = led_by(answers.yes("body.pregnancy"), {answers.yes("history.childbirth_recent")});
  const auto& person = answers.view().person();
  const bool cannot_be = (person && person->sex == model::Sex::male) || answers.aged(0, 11) == Tri::yes || answers.aged(56, 200) == Tri::yes;
  return cannot_be && !told.is_yes() ? fact(Tri::no) : told;
}

}  // namespace

Raised leg_clot(const Answers& answers, Side side) {
  const Clue suspects = answers.yes("history.examiner_suspects_clot");
  // A tender calf that does not swell is explained by a recorded injury, or by the examiner, who suspects no clot.
  const Clue tender = every({answers.yes("leg.calf_tender_vein", side), circumstance(negate(injured(answers))), fact(not_(tri(suspects.is_no())))});
  const Clue fuller = calf_measured_fuller(answers, side);
  const Clue entry = either({led_by(answers.yes("leg.calf_swelling", side), {fuller}), whole_leg_swollen(answers, side), unasked(tender), suspects});
  const Clue fast = answers.count_at_least("general.pulse_rate", pulse_clot_over + 1);
  // Signs that were counted stand beside what is told: who says no, or cannot say, may still lack breath (our own rule).
  const Clue chest = led_by(answers.yes("history.breathless"), {fast, breathes_badly(answers), body_fails(answers)});
  const Clue wells = entry.is_no() ? Clue{} : wells_clue(answers, side, fuller);
  const Clue bears = bare_no(pregnant(answers));
  const Clue tested = answers.chosen("general.lab_d_dimer", Side::midline, {"lab_positive"});
  const bool negative = answers.chosen("general.lab_d_dimer", Side::midline, {"lab_negative"}).is_yes();
  Raised raised;
  raised.clue = every({entry, either({suspects, wells, bears, chest})});
  if (raised.clue.value == Tri::undetermined && !entry.is_yes()) {
    raised.clue.because.clear();
    raised.clue.ask = entry.ask;
  }
  const Clue seen = unasked(answers.chosen("general.scan_leg_veins", side, {"scan_clot_seen"}));
  if (seen.is_yes() && chest.is_yes() && !raised.clue.is_yes()) {
    raised.clue = every({seen, chest});
  }
  if (raised.clue.is_yes() && chest.is_yes()) {
    raised.urgency = AlertClass::now;
    raised.interrupts = true;
    raised.what = "chest";
  } else if (seen.is_yes()) {
    raised.clue = seen;
    raised.what = "seen";
  } else if (raised.clue.is_yes()) {
    raised.what = wells.is_yes() && !bears.is_yes() ? "points" : "raised";
  } else if (entry.is_yes() && wells.is_no() && bears.is_no() && chest.is_no() && !suspects.is_no()) {
    // Fewer than two points: the blood test decides, at a lower tier, and a positive one is scanned the same day.
    if (negative) {
      raised.clue = negate(answers.chosen("general.lab_d_dimer", Side::midline, {"lab_negative"}));
    } else {
      raised.clue = tested.is_yes() ? every({entry, tested}) : fact(Tri::yes);
      raised.clue.because.add(entry.because);
      raised.urgency = tested.is_yes() ? AlertClass::same_day : AlertClass::two_weeks;
      raised.what = tested.is_yes() ? "d_dimer" : "raised";
    }
  }
  // A clot of the leg that stands leaves the one of the lung to be asked after.
  if (raised.clue.is_yes() && raised.urgency == AlertClass::same_day && chest.value == Tri::undetermined) {
    raised.graver = chest;
  }
  return raised;
}

// Both legs sore is no sign. Feeling or power lost on both sides counts with back pain; a bladder that changed counts with pain of the
// back, below the knee or of both legs, with cancer, a dropped foot or numbness. What changed in sex, and weakness of both legs or by the day, count where they were
// answered: they are not asked after here, and asked in private alone.
Raised cauda_equina(const Answers& answers, Side) {
  const auto both = [&](const ItemKey& item) { return unasked(every({answers.yes(item, Side::left), answers.yes(item, Side::right)})); };
  const Clue drop = unasked(either({answers.yes("nerve.foot_drop", Side::left), answers.yes("nerve.foot_drop", Side::right)}));
  const Clue back = answers.yes("history.back_pain");
  const auto felt_less = [&](Side side) { return answers.chosen("nerve.saddle_touch", side, {"felt_less", "not_felt"}); };
  const Clue saddle = led_by(answers.yes("history.saddle_numbness"), {felt_less(Side::left), felt_less(Side::right)});
  // What stays in the bladder after voiding tells of it as well.
  const Clue retained = answers.count_at_least("general.bladder_after_ml", bladder_left_ml);
  const Clue changed = led_by(answers.yes("history.bladder_bowel_change"), {retained});
  const Clue leg_pain = unasked(either({answers.yes("history.pain_below_knee", Side::left), answers.yes("history.pain_below_knee", Side::right),
                                        answers.yes("history.leg_pain_both")}));
  const Clue bladder = every({changed, either({back, leg_pain, unasked(answers.yes("history.cancer_known")), drop, saddle})});
  const Clue two_sided = every({unasked(back), either({both("nerve.sensation_foot_reduced"), both("nerve.foot_drop")})});
  Raised raised;
  const Clue root_pain = led_by(back, {answers.yes("history.pain_below_knee", Side::left), answers.yes("history.pain_below_knee", Side::right),
                                        answers.yes("history.cancer_known"), saddle, drop});
  const Clue weak = either({answers.yes("history.both_legs_weak"), answers.yes("history.weakness_getting_worse")});
  const Clue told_more = every({root_pain, either({weak, answers.yes("history.sexual_function_change")})});
  // Pain down both legs from the back, and new.
  const Clue both_legs = unasked(every({answers.yes("history.leg_pain_both"), root_pain, of_short_history(answers)}));
  raised.clue = led_by(either({saddle, bladder, two_sided}), {told_more, both_legs});
  // Pain down both legs from the back, and nobody said since when: that is asked, and the rest is no no.
  if (const Clue legs = answers.yes("history.leg_pain_both"); !raised.clue.is_yes() && legs.is_yes() && root_pain.is_yes() && both_legs.value == Tri::undetermined) {
    raised.clue = left_open(raised.clue, legs);
    raised.clue.because.add(legs.because);
    raised.clue.ask.add(answers.count_at_least("history.weeks_since_onset", short_history_weeks + 1).ask);
  }
  // Weakness of both legs without any pain is not on the page as a sign alone; what would make it one is asked.
  const bool told = changed.is_yes() || (weak.is_yes() && !root_pain.is_yes());
  if (raised.clue.value == Tri::undetermined && !back.is_yes() && !told) {
    raised.clue.because.clear();
  } else if (raised.clue.value == Tri::undetermined && weak.is_yes()) {
    raised.clue.because.add(weak.because);
  } else if (raised.clue.is_no() && weak.is_yes()) {
    raised.clue = left_open(raised.clue, weak);
  }
  raised.urgency = AlertClass::now;
  raised.interrupts = true;
  return raised;
}

// Cannot be lifted, and newly; an old one is known. The back and the front compartment are looked at.
Raised new_foot_drop(const Answers& answers, Side side) {
  const Clue drops = led_by(answers.yes("nerve.foot_drop", side), {answers.graded("nerve.power_ankle_dorsiflexion", side, {"0", "1", "2"}),
                                                                   answers.chosen("gait.foot_strike", side, {"strike_slap"})});
  const Clue recent = answers.yes("history.foot_drop_new", side);
  Raised raised;
  raised.clue = led_by(every({drops, recent}), {recent});
  return raised;
}

// A bone that broke by almost nothing counts by itself. Pain at night counts when another position does not end it, or when it gets worse. Pain at night or weight lost alone is a question.
Raised tumour(const Answers& answers, Side) {
  const auto either_side = [&](auto&& of) { return either({of(Side::left), of(Side::right)}); };
  const Clue tender_bone = either_side([&](Side side) { return answers.yes("knee.bone_tender_elsewhere", side); });
  // Of the side complained of, and a yes of the other.
  const auto of_complaint = [&](auto&& of) {
    const auto& complaint = answers.view().exam().side;
    return complaint && *complaint != Side::midline ? led_by(of(*complaint), {of(other_side(*complaint))}) : either_side(of);
  };
  const Clue told = of_complaint([&](Side side) { return answers.yes("history.bone_pain_unexplained", side); });
  const Clue unexplained = unasked(told);
  // That it has an explanation is the examiner's answer, at whatever bone.
  const Clue bone = unasked(led_by(tender_bone.value == Tri::undetermined && told.is_no() ? told : tender_bone, {unexplained}));
  const Clue broke = unasked(either_side([&](Side side) { return answers.yes("history.fracture_minimal_force", side); }));
  const Clue at_knee = of_complaint([&](Side side) { return answers.chosen("knee.look_swelling_spread", side, {"local"}); });
  const Clue felt = of_complaint([&](Side side) { return answers.yes("skin.lump", side); });
  const Clue lump = unasked(at_knee.value == Tri::undetermined && felt.is_no() ? felt : at_knee);
  const Clue at_night = answers.yes("history.night_pain");
  const Clue night = every({at_night, either({answers.no("history.night_pain_relieved_by_turning"), answers.yes("history.night_pain_getting_worse")})});
  const Clue lost = answers.yes("history.weight_loss");
  const Clue cancer = answers.yes("history.cancer_known");
  const Clue known = unasked(cancer);
  const Clue weeks = answers.count_at_least("history.weeks_since_onset", lump_weeks);
  const Clue stays = bare_no(unasked(weeks));
  const Tri young = answers.aged(0, young_under - 1);
  // Larger than 5 cm, growing, deep, back again or with nodes; on the bone at this age.
  const Clue grows = unasked(either_side([&](Side side) {
    return led_by(answers.longer_than("skin.lump_size", side, lump_over_mm),
                  {answers.chosen("skin.lump_features", side, {"lump_grows", "lump_deep_or_fixed", "lump_came_back", "lump_with_nodes"}),
                   young == Tri::yes ? answers.chosen("skin.lump_features", side, {"lump_on_bone"}) : Clue{}});
  }));
  const Clue sweats = unasked(every({answers.yes("history.night_sweats"), bone}));
  Raised raised;
  raised.clue = led_by(either({night, every({lost, either({bone, night})}), every({known, either({bone, at_night})}),
                               every({fact(young), stays, either({bone, lump})})}),
                       {broke, every({fact(young), unexplained}), grows, sweats});
  if (raised.clue.value == Tri::undetermined && !at_night.is_yes() && !lost.is_yes() && !known.is_yes()) {
    raised.clue.because.clear();
  }
  // Pain at night is found, and nobody answered whether the pain of the bone is explained: that it eases by turning is no no.
  if (raised.clue.is_no() && !raised.clue.against.empty() && !at_night.is_no() && !told.is_no()) {
    raised.clue = left_open(raised.clue, at_night);
    raised.clue.ask = at_night.ask;
  }
  if (raised.clue.value == Tri::undetermined) {
    for (const Clue* open : {&told, &cancer}) {
      raised.would_settle.add(open->ask);
    }
    if (young != Tri::no) {
      raised.would_settle.add(weeks.ask);
      raised.would_settle.add(part_complained_of(answers) == "knee" ? at_knee.ask : felt.ask);
    }
  }
  raised.urgency = young == Tri::no ? AlertClass::two_weeks : AlertClass::same_day;
  if (broke.is_yes() && known.is_yes()) {
    raised.urgency = AlertClass::now;  // broken by almost nothing where a cancer is known
    raised.clue.because.add(broke.because);
    raised.clue.because.add(known.because);
    raised.what = "broke_cancer";
  } else if (const Clue worse = led_by(Clue{}, {cannot_walk(answers), lost, night, sweats}); broke.is_yes() && worse.is_yes() && !hurt_long_ago(answers)) {
    raised.urgency = AlertClass::now;  // it carries nobody any more, or an illness stands behind it: a bone that broke by itself
    raised.clue.because.add(broke.because);
    raised.clue.because.add(worse.because);
    raised.what = "broke_now";
  } else if (broke.is_yes()) {
    raised.what = "broke";
  } else if (grows.is_yes()) {
    raised.what = "lump";
    raised.refer = "lump";
    raised.clue.because.add(grows.because);
  }
  return raised;
}

}  // namespace limbledger::interpret
