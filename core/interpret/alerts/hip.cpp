// The hip behind an older knee: a break that walking does not settle; and a hip out of joint. Source: red flags page, hip fracture in an
// older person and dislocated joint.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

#include <algorithm>
#include <utility>
#include <vector>

namespace limbledger::interpret {

using model::Side;

namespace {

// Turned gently, and it hurts or is not let.
[[nodiscard]] Clue hurts_when_turned(const Answers& answers, Side side) {
  const auto turned = [&](const ItemKey& item) {
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

// A leg that is out of shape, or whose pelvis may be broken, is looked at and not rolled (exam sequence page, section 4).
[[nodiscard]] Clue roll_or_look(const Answers& answers, Side side, const Clue& roll) {
  const bool left_alone = roll.value == Tri::undetermined && !roll.ask.empty() &&
                          (answers.any_yes({"knee.look_deformity", "leg.look_deformity"}, side).is_yes() || answers.once(Known::pelvis_broken, Side::midline, [&] { return broken_pelvis(answers, Side::midline).clue; }).is_yes());
  if (!left_alone) {
    return roll;
  }
  Clue look;
  look.ask = answers.chosen("hip.leg_attitude", side, {"attitude_short_turned_out"}).ask;
  return look;
}

// Anything about the hip itself that speaks for a break. The roll is asked for; a roll that does not hurt answers nothing while
// another of these is there.
[[nodiscard]] Clue hip_sign(const Answers& answers, Side side, const Clue& seen) {
  constexpr ItemKey lift = "hip.straight_leg_lift";
  const Clue turns_out = led_by(answers.chosen("gait.pattern", side, {"turned_out"}),
                                {answers.chosen("hip.leg_attitude", side, {"attitude_short_turned_out", "attitude_turned_out"})});
  const Clue site = answers.chosen("history.pain_site", side,
                                   {"site_groin", "site_outer_hip", "site_thigh_front", "site_thigh_outer", "site_thigh_back"});
  return led_by(roll_or_look(answers, side, answers.positive("hip.log_roll", side)),
                {hurts_when_turned(answers, side), turns_out, site, seen, answers.positive(lift, side),
                 answers.stopped(lift, side, {model::WhyNot::pain, model::WhyNot::unable}), answers.positive("hip.heel_push", side),
                 answers.positive("hip.percussion_patellopubic", side), answers.yes("hip.pain_passive_severe", side)});
}

// Of who took no steps before: the hip hurts when it is moved, pushed or knocked, or the leg lies short and turned out. Old bones break in a
// bed or a chair without a fall, and no lost steps tell of it (our own rule); of an old trouble it is asked how it began.
[[nodiscard]] Clue shows_without_steps(const Answers& answers, Side side) {
  if (!took_no_steps_before(answers).is_yes() || answers.count_at_least("history.weeks_since_onset", lately_weeks + 1).is_yes()) {
    return {};
  }
  return led_by(Clue{}, {answers.positive("hip.log_roll", side), answers.stopped("hip.log_roll", side, {model::WhyNot::pain}),
                         hurts_badly_on(answers, side, {"hip.internal_rotation_passive_seated", "hip.internal_rotation_passive_supine"}),
                         answers.positive("hip.heel_push", side), answers.positive("hip.percussion_patellopubic", side), answers.yes("hip.pain_passive_severe", side),
                         answers.chosen("hip.leg_attitude", side, {"attitude_short_turned_out"})});
}

// An operation, a plaster or a leg taken off explains that nobody walks ("unexplained loss of walking": page), until walking is told to be lost.
// A plaster explains nothing of a hip that it does not hold and that hurts (our own rule).
[[nodiscard]] bool not_walking_is_explained(const Answers& answers, Side side, const Clue& of_hip) {
  const std::string_view why = answers.view().exam().complaint.text;
  if (why == "after_plaster") {
    return !of_hip.is_yes() || !answers.chosen("body.cast", side, {"cast_knee", "cast_shin", "cast_ankle", "cast_foot"}).is_yes() ||
           answers.chosen("body.cast", side, {"cast_hip", "cast_thigh"}).is_yes();
  }
  return why == "after_operation" || why == "after_amputation";
}

// A fall or a crash of these days; a blow alone is none, and nor is what is long past.
[[nodiscard]] bool fell(const Answers& answers) {
  const Clue recent = answers.yes("history.fall_recent");
  if (recent.value != Tri::undetermined) {
    return recent.is_yes();
  }
  const bool blow_alone = answers.chosen("history.mechanism", Side::midline, {"direct_blow"}).is_yes();
  const bool told = (answers.yes("history.fall_or_blow").is_yes() && !blow_alone) || answers.chosen("history.mechanism", Side::midline, {"fall", "vehicle", "dashboard"}).is_yes();
  return told && !hurt_long_ago(answers) && !answers.count_at_least("history.weeks_since_onset", lately_weeks + 1).is_yes();
}

// Who came for an ankle or a foot, told of no fall or crash, nor that nothing happened, and takes no steps: the ankle or foot explains it and the hip is asked after, unless
// the ankle was looked at and does not hurt there (our own rule, by the parts of the Ottawa rule). What is found tender elsewhere takes nothing
// back; steps that pain stopped are explained so whatever the history is, by a calf too. Who cannot speak for pain, or is frail, has the hip looked
// at first all the same (page: "cognitive impairment").
[[nodiscard]] bool explained_below(const Answers& answers, Side side) {
  const std::string_view part = part_complained_of(answers);
  const bool of_foot = part == "ankle" || part == "foot";
  if ((!of_foot && part != "leg") || fell(answers) || answers.yes("history.walking_lost").is_yes() || cannot_speak_for_pain(answers).is_yes()) {
    return false;
  }
  const bool not_there = answers.yes("ankle.pain_malleolar_zone", side).is_no() || answers.yes("ankle.lateral_malleolus_tender", side).is_no();
  if (part == "ankle" && not_there) {
    return false;
  }
  const bool by_pain = answers.stopped("gait.steps_now", Side::midline, {model::WhyNot::pain}).is_yes();
  return by_pain || (of_foot && !answers.chosen("history.mechanism", Side::midline, {"no_injury"}).is_yes());
}

// At an age at which a hip seldom breaks: the hip itself hurts when it is turned, pushed or lifted, or the leg lies turned out. Where it
// hurts is told of many bruises and counts for nothing here.
[[nodiscard]] Clue strong_hip_sign(const Answers& answers, Side side) {
  constexpr ItemKey lift = "hip.straight_leg_lift";
  return led_by(roll_or_look(answers, side, answers.positive("hip.log_roll", side)),
                {hurts_when_turned(answers, side), answers.positive("hip.heel_push", side), answers.positive("hip.percussion_patellopubic", side),
                 answers.stopped(lift, side, {model::WhyNot::pain, model::WhyNot::unable}),
                 answers.chosen("hip.leg_attitude", side, {"attitude_short_turned_out", "attitude_turned_out"})});
}

// A knee that is hurt is a reason of its own not to walk.
[[nodiscard]] bool complains_of_the_knee(const Answers& answers) {
  const std::string_view complaint = answers.view().exam().complaint.text;
  return complaint == "acute_knee" || complaint == "chronic_knee";
}

// A kneecap is knocked on where it was felt and does not hurt, and nothing of knee or thigh hurts, is open or hot (red flags page, 9: "stop
// percussion"; a broken one, our own rule).
[[nodiscard]] bool may_be_knocked(const Answers& answers, Side side) {
  const bool sore = answers.any_yes({"knee.patella_tender", "knee.patellar_pole_upper_tender", "knee.patellar_pole_lower_tender", "knee.patellar_facet_tender",
                                     "knee.patellar_margin_lateral_tender", "knee.patellar_margin_medial_tender", "knee.tibial_tubercle_tender", "knee.bone_tender_elsewhere", "knee.quadriceps_gap",
                                     "knee.patellar_tendon_gap", "knee.look_skin_hot_red", "knee.look_open_wound", "knee.look_deformity", "leg.look_deformity", "leg.thigh_shaft_tender"},
                                    side)
                        .is_yes();
  return !sore && answers.yes("knee.patella_tender", side).is_no();
}

// Beside a sore knee not walking asks for the hip, and one painless roll does not settle it. Elsewhere not walking is a sign itself; so it is after a
// fall, where walking is told to be lost, of who cannot speak for pain, or where the roll was asked for and not let: the page has no gate for a knee.
[[nodiscard]] Clue sign_or_not_walking(const Answers& answers, Side side, const Clue& sign) {
  const Clue walks_not = cannot_walk(answers);
  const bool hip_not_shown = sign.value == Tri::undetermined && sign.ask.empty() && !sign.open.empty();
  const bool of_knee = complains_of_the_knee(answers) && !fell(answers) && !answers.yes("history.walking_lost").is_yes() && !cannot_speak_for_pain(answers).is_yes();
  if (of_knee && !hip_not_shown) {
    if (!walks_not.is_yes() || !sign.is_no()) {
      return sign;
    }
    return may_be_knocked(answers, side) ? answers.positive("hip.percussion_patellopubic", side) : answers.chosen("hip.leg_attitude", side, {"attitude_short_turned_out"});
  }
  // Of who took no steps before and cannot tell of pain nothing else shows what a fall did (page: "cognitive impairment").
  const Clue untold = took_no_steps_before(answers).is_yes() && cannot_speak_for_pain(answers).is_yes() ? took_no_steps_before(answers) : Clue{};
  return led_by(either({sign, walks_not.value == Tri::undetermined ? answers.yes("history.walking_lost") : walks_not}), {untold});
}

}  // namespace

// After an injury or a fall, or where nobody knows why the person stopped walking. Taking steps is no answer: undisplaced ones walk.
Raised hip_fracture_old(const Answers& answers, Side side) {
  const FilmShows film = film_shows(answers, side, {"hip_fracture_seen"});
  const Clue& seen = film.clue;
  const Clue walks_not = cannot_walk(answers);
  // A fall these days needs no date; it is named among the grounds.
  const Clue fall = answers.yes("history.fall_recent");
  const Clue frail = answers.yes("history.frail");
  const bool weak = frail.is_yes() || (answers.yes("history.memory_poor").is_yes() && walks_not.is_yes());
  Raised raised;
  // What is seen asks for no age: a break on the film, or a leg short and turned out after an injury.
  const bool lies_so = answers.chosen("hip.leg_attitude", side, {"attitude_short_turned_out"}).is_yes() && (fall.is_yes() || hurt_lately(answers).is_yes());
  const Tri old = answers.may_be_from(hip_fracture_from) ? Tri::yes : answers.aged(hip_fracture_from, 200);  // who may be as old is taken for it
  raised.applies = weak || seen.is_yes() || lies_so ? Tri::yes : old;
  // The age gate of the page is from memory: younger, a fall that leaves a leg that does not carry and a hip that hurts raises it as well,
  // and is asked after where the complaint is of the hip (our own rule).
  const bool carries_not = walks_not.is_yes() || took_no_steps_before(answers).is_yes();
  const bool too_young = old == Tri::no && raised.applies == Tri::no;
  const bool fell_and_lies = carries_not && (fall.is_yes() || hurt_lately(answers).is_yes());
  if (too_young && !fell_and_lies) {
    return raised;
  }
  const Clue of_hip = hip_sign(answers, side, seen);
  const Clue sign = sign_or_not_walking(answers, side, of_hip);
  // "Sudden pain" by itself (page); one that is not severe as well needs a hip that hurts when it is moved (our own rule).
  const Clue onset = answers.chosen("history.onset", Side::midline, {"onset_sudden"});
  const Clue sudden = led_by(answers.yes("history.pain_severe_sudden"), {onset.is_yes() && strong_hip_sign(answers, side).is_yes() ? onset : Clue{}});
  const Clue lost = not_walking_is_explained(answers, side, of_hip) ? answers.yes("history.walking_lost") : walks_not;
  const Clue shows = shows_without_steps(answers, side);
  const Clue why = led_by(either({circumstance(hurt_lately(answers)), circumstance(lost)}), {fall, circumstance(sudden), shows});
  const Clue strong = too_young ? strong_hip_sign(answers, side) : Clue{};
  const bool grown = answers.child() == Tri::no;  // a child has lines of its own, and this one where it is brought for the injury
  const bool asked_after = grown && too_young && strong.value == Tri::undetermined && !strong.ask.empty() && part_complained_of(answers) == "hip";
  const bool by_signs = (strong.is_yes() && (grown || complains_of_something_recent(answers.view()))) || asked_after;
  raised.applies = by_signs ? Tri::yes : raised.applies;
  if (hip_taken_off(answers, side).is_yes() && !seen.is_yes()) {
    raised.applies = Tri::no;  // no hip is left there to break
    return raised;
  }
  raised.clue = every({why, by_signs ? strong : sign});
  for (const Clue& told : {fall, walks_not}) {
    if (!raised.clue.is_no() && told.is_yes()) {
      raised.clue.because.add(told.because);
    }
  }
  // Of an age that nobody recorded, steps that are not taken point to a hip where hip or knee is complained of, or walking is told to be lost
  // (page: "unexplained loss of walking"); else the age is asked first.
  const bool age_open = old == Tri::undetermined && !weak && !lies_so && !seen.is_yes();
  const auto of_hip_or_knee = [&](std::string_view part) { return part == "hip" || part == "knee"; };
  if (age_open && raised.clue.is_yes() && !answers.yes("history.walking_lost").is_yes() && of_walking_alone(answers, raised.clue) && !of_hip_or_knee(part_complained_of(answers))) {
    raised.clue.value = Tri::undetermined;
    raised.clue.ask = frail.ask;
    raised.clue.ask.add(roll_or_look(answers, side, answers.positive("hip.log_roll", side)).ask);
    raised.asks = "age";
  }
  // Nothing but steps that a hurt ankle or foot explains ("unexplained loss of walking"): a fall and the roll of the hip are asked after.
  if (raised.clue.is_yes() && !of_hip.is_yes() && !weak && !sudden.is_yes() && !shows.is_yes() && explained_below(answers, side)) {
    raised.clue = fall.is_no() && of_hip.is_no() ? every({fall, of_hip}) : Clue{};
    raised.clue.because = raised.clue.is_no() ? FindingTrail{} : walks_not.because;
    raised.clue.ask = fall.ask;
    raised.clue.ask.add(of_hip.ask);
    raised.asks = "explained";
  }
  const bool by_look = !weak && old != Tri::yes;
  const bool by_hip_alone = shows.is_yes() && !hurt_lately(answers).is_yes() && !fall.is_yes() && !sudden.is_yes() && !lost.is_yes();
  raised.what = seen.is_yes() ? "seen" : (by_signs ? "signs" : (by_look && lies_so ? "lies_so" : (by_hip_alone ? "without_steps" : (age_open ? "age_open" : "raised"))));
  if (raised.clue.is_yes()) {
    // What chose the line, or let it apply at this age, stands among the grounds.
    const bool old_enough = old == Tri::yes;
    const Clue lies = answers.chosen("hip.leg_attitude", side, {"attitude_short_turned_out"});
    const Clue memory = answers.yes("history.memory_poor");
    for (const auto& [counts, clue] : {std::pair<bool, const Clue*>(true, &seen), {by_look, &lies}, {!old_enough, &frail}, {!old_enough, &memory}}) {
      raised.clue.because.add(counts && clue->is_yes() ? clue->because : FindingTrail{});
    }
    raised.of_no_side = film.of_no_side;
    raised.what = film.of_no_side ? "seen_no_side" : raised.what;
  }
  return raised;
}

Clue broken_under_hip_wound(const Answers& answers, Side side) {
  const Clue wound = answers.chosen("hip.look_skin", side, {"hip_wound"});
  if (!wound.is_yes()) {
    return Clue{};
  }
  const Clue broken = led_by(answers.any_yes({"leg.thigh_shaft_tender", "leg.look_deformity"}, side),
                             {answers.chosen("hip.leg_attitude", side, {"attitude_short_turned_out"}), film_shows(answers, side, {"shaft_fracture_seen", "hip_fracture_seen"}).clue});
  return broken.is_yes() ? every({circumstance(hurt_lately(answers)), wound, broken}) : Clue{};
}

namespace {

[[nodiscard]] bool lay_so_before(const Answers& answers, Side side) {
  return answers.count_at_least("history.weeks_since_onset", lately_weeks + 1).is_yes() &&
         led_by(answers.yes("body.spastic_tone", side), {answers.yes("body.paralysis", side)}).is_yes();
}

[[nodiscard]] Clue newly_out(const Answers& answers, Side side, const Clue& held) {
  const Clue pain = led_by(answers.yes("history.pain_severe_sudden"), {answers.yes("hip.pain_passive_severe", side), answers.positive("hip.log_roll", side)});
  return every({held, either({pain, answers.yes("history.walking_lost"), unasked(cannot_walk(answers))})});
}

}  // namespace

// Held bent and turned in or out after an injury, or by a replaced hip, which needs none; short and turned out by a replaced one that hurts
// suddenly or does not carry (page: "painful prosthetic hip held so"). One that went back by itself is the same day.
Raised dislocated_hip(const Answers& answers, Side side) {
  const Clue replaced = unasked(answers.yes("body.hip_replaced", side));
  const Clue held = answers.chosen("hip.leg_attitude", side, {"attitude_bent_turned_in", "attitude_bent_turned_out"});
  const Clue bent = every({replaced.is_yes() ? replaced : hurt_beside(answers, held), held});
  const Clue short_out = answers.chosen("hip.leg_attitude", side, {"attitude_short_turned_out"});
  const Clue fails = either({answers.yes("history.pain_severe_sudden"), led_by(cannot_walk(answers), {hurt_lately(answers), answers.yes("history.fall_recent")})});
  const bool short_of_metal = replaced.is_yes() && short_out.is_yes();
  const Clue out_of_place = short_of_metal ? led_by(every({replaced, short_out, fails}), {bent}) : bent;
  // Weak or stiff legs lie so for years: of such a trouble a fall alone tells nothing new, and what does is asked.
  const bool lies_so_anyway = held.is_yes() && bent.is_yes() && !replaced.is_yes() && lay_so_before(answers, side);
  const Clue out_now = lies_so_anyway ? newly_out(answers, side, held) : out_of_place;
  const bool of_hip = part_complained_of(answers) == "hip";
  const Clue went_back = of_hip ? unasked(answers.yes("history.joint_put_back", side)) : Clue{};
  Raised raised;
  if (hip_taken_off(answers, side).is_yes()) {
    raised.applies = Tri::no;
    return raised;
  }
  raised.clue = led_by(out_now, {went_back});
  // At the age at which a hip is found that never was in place, legs that lie even are no answer until that one is.
  if (raised.clue.is_no() && !raised.clue.against.empty()) {
    const Raised never_in = late_dislocation(answers, side);
    if (never_in.applies != Tri::no && (never_in.clue.is_yes() || (never_in.applies == Tri::yes && !never_in.clue.is_no()))) {
      raised.clue = left_open(raised.clue, never_in.clue);
    }
  }
  if (raised.clue.value == Tri::undetermined && !held.is_yes() && !short_of_metal) {
    raised.clue.because.clear();
  }
  if (out_now.is_yes() || !raised.clue.is_yes()) {
    raised.urgency = AlertClass::now;
    raised.interrupts = true;
  }
  raised.what = out_now.is_yes() ? (bent.is_yes() ? (replaced.is_yes() ? "replaced" : "raised") : "replaced_short") : (went_back.is_yes() ? "went_back" : "raised");
  return raised;
}

}  // namespace limbledger::interpret
