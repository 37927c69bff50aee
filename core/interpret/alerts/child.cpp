// Children: the slipped hip behind a painful knee, the limp that nothing explains, Perthes disease, a hip that never was in place, and
// protection.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

#include <algorithm>
#include <utility>

namespace limbledger::interpret {

using model::Side;

namespace {

// Nobody knows which hip the film shows: one line, and neither is walked on.
void say_of_no_side(const FilmShows& film, Raised& raised) {
  if (film.of_no_side && raised.what.ends_with("seen")) {
    raised.of_no_side = true;
    raised.what = raised.urgency == AlertClass::now ? "unstable_seen_no_side" : "seen_no_side";
  }
}

}  // namespace

Raised hip_slip(const Answers& answers, Side side) {
  Raised raised;
  const FilmShows film = film_shows(answers, side, {"hip_slip_seen"});
  const Clue& seen = film.clue;
  raised.applies = seen.is_yes() ? Tri::yes : (hip_taken_off(answers, side).is_yes() ? Tri::no : answers.aged(slip_from, slip_to));  // what a film shows asks for no age
  if (raised.applies == Tri::no) {
    return raised;
  }
  const Clue lost = hip_rotation_lost(answers, side);
  const Clue rolls = answers.positive("hip.log_roll", side);
  const Clue gait = answers.chosen("gait.pattern", side, {"turned_out"});
  raised.clue = led_by(lost, {gait, answers.positive("hip.turns_out_in_flexion", side),
                              answers.chosen("hip.leg_attitude", side, {"attitude_turned_out", "attitude_short_turned_out"}), seen});
  if (raised.clue.value == Tri::undetermined && rolls.is_yes()) {
    raised.clue.because.add(rolls.because);
  }
  if (raised.clue.value == Tri::undetermined && raised.clue.ask.empty() && !lost.because.empty()) {
    raised.clue.ask = answers.positive("hip.turns_out_in_flexion", side).ask;  // the rotation that was read settles nothing
  }
  raised.what = lost.is_yes() ? "raised" : (seen.is_yes() ? "seen" : "turned_out");
  if (raised.clue.is_yes() && cannot_walk(answers).is_yes()) {
    raised.urgency = AlertClass::now;
    raised.interrupts = true;
    raised.what = lost.is_yes() ? "unstable" : (seen.is_yes() ? "unstable_seen" : "unstable_turned_out");
    raised.clue.because.add(cannot_walk(answers).because);
  }
  if (raised.clue.is_yes()) {
    raised.clue.because.add(seen.is_yes() ? seen.because : FindingTrail{});
    say_of_no_side(film, raised);
  }
  return raised;
}

Raised limping_child(const Answers& answers, Side) {
  Raised raised;
  raised.applies = answers.child();
  if (raised.applies == Tri::no) {
    return raised;
  }
  const auto both = [&](auto&& of) { return either({of(Side::left), of(Side::right)}); };
  const Clue pain = both([&](Side side) { return severe_pain_on_passive(answers, side); });
  const Clue bone = both([&](Side side) { return bone_tender(answers, side); });
  const Clue sign = either({unless_drug_hides(answers, fever_of_child(answers)), answers.yes("history.unwell"), cannot_stand(answers), answers.yes("history.night_pain"),
                            answers.yes("history.weight_loss"), over_two_weeks(answers), unasked(bone), unasked(pain)});
  // The rest of the red list counts where it was answered, and is not asked after here.
  const Clue unseen = every({answers.count_at_least("history.limp_days", limp_unseen_days + 1), answers.no("history.limp_seen_before")});
  // "Bony tenderness" of the whole leg; the heel of a growing child is sore for months.
  const Clue bone_below = both([&](Side side) { return led_by(Clue{}, {bone_tender_at_shaft(answers, side), bone_tender_at_ankle(answers, side), bone_tender_at_foot(answers, side)}); });
  const Clue lump = both([&](Side side) { return answers.yes("skin.lump", side); });
  // Over 14 days it stands by the days as well, whoever saw the child: nothing that was recorded here is a diagnosis.
  const Clue undiagnosed = answers.count_at_least("history.limp_days", limp_undiagnosed_days + 1);
  const Clue told = led_by(answers.any_yes({"history.pain_severe_sudden", "history.fatigue", "history.night_sweats", "general.pallor"}, Side::midline), {unseen, undiagnosed, lump, bone_below});
  const Clue still = both([&](Side side) { return leg_not_moved(answers, side); });
  // Who took no steps before cannot limp: a knee that swells, or bone that is tender with sudden severe pain, stands for it (our own rule).
  const bool infant = answers.aged(0, 0) == Tri::yes;
  const bool no_steps_before = !infant && took_no_steps_before(answers).is_yes();
  const Clue full = both([&](Side side) { return swollen(answers, side); });
  const Clue sudden = bone.is_yes() ? every({bone, answers.yes("history.pain_severe_sudden")}) : Clue{};
  const Clue stands_for_it = no_steps_before ? led_by(full, {sudden}) : Clue{};
  const Clue limping = infant || no_steps_before ? led_by(still, {limps(answers), stands_for_it}) : led_by(limps(answers), {still});
  const Clue red = every({limping, led_by(sign, {told})});
  raised.clue = every({no_injury_beside(answers, red), red});
  // The question after an infected joint of a child asks for the age (of_walking_alone): one of the two is enough.
  if (raised.clue.is_yes() && raised.applies == Tri::undetermined && of_walking_alone(answers, raised.clue)) {
    raised.clue.value = Tri::undetermined;
    raised.clue.because.clear();
  }
  if (raised.clue.value == Tri::undetermined && !limping.is_yes()) {
    raised.clue.because.clear();
  }
  // A week or more since it began: the days of the limp, and whether anybody looked at it, are asked with the rest.
  if (!raised.clue.is_yes() && unseen.value == Tri::undetermined && limping.is_yes() && !injured(answers).is_yes() && answers.count_at_least("history.weeks_since_onset", 1).is_yes()) {
    raised.clue = left_open(raised.clue, limping);
    raised.clue.ask.add(unseen.ask);
  }
  // A tender testis: the page has it looked at in every limping child and gives no class. It is twisted until a surgeon has looked, whatever the child was
  // brought for (from memory: it is lost within hours; our own rule).
  const Clue testis = led_by(Clue{}, {answers.any_yes({"pelvis.scrotum_tender"}, Side::left), answers.any_yes({"pelvis.scrotum_tender"}, Side::right)});
  if (testis.is_yes()) {
    raised.clue = raised.clue.is_yes() ? raised.clue : fact(Tri::yes);
    raised.clue.because.add(testis.because);
    raised.what = "testis";
    return raised;
  }
  // Nobody limps before walking: that both legs are moved is no answer about it.
  if (answers.aged(0, 0) == Tri::yes && raised.clue.is_no()) {
    raised.applies = Tri::no;
    return raised;
  }
  // What is worst to miss is named first while either hip leaves it open.
  const auto slip_open = [&](Side side) {
    const Raised slip = hip_slip(answers, side);
    return slip.applies != Tri::no && slip.clue.value == Tri::undetermined;
  };
  if (raised.clue.is_yes() && no_steps_before && stands_for_it.is_yes() && !limps(answers).is_yes()) {
    raised.what = "no_steps";
    return raised;
  }
  raised.what = raised.clue.is_yes() && (slip_open(Side::left) || slip_open(Side::right)) ? "slip_open" : "raised";
  return raised;
}

Raised perthes(const Answers& answers, Side side) {
  Raised raised;
  raised.applies = hip_taken_off(answers, side).is_yes() ? Tri::no : answers.aged(perthes_from, perthes_to);
  if (raised.applies == Tri::no) {
    return raised;
  }
  const Clue lost = led_by(hip_rotation_lost(answers, side), {abduction_lacking(answers, side)});
  // A fever or legs that do not carry name another danger; they say nothing about this one.
  raised.clue = every({bare_no(over_two_weeks(answers)), lost, bare_no(negate(fever_of_child(answers))), bare_no(negate(cannot_walk(answers)))});
  raised.urgency = AlertClass::two_weeks;
  if (!lost.is_yes()) {
    raised.clue.because.clear();
  }
  return raised;
}

// Who cannot walk yet does not break or bruise by walking. Pointers only; nobody states a cause. Under one year stands for not yet
// walking (convention). What was told or seen of the story counts at any age: a partner and a dependent adult are protected as well.
Raised inflicted_injury(const Answers& answers, Side) {
  const Clue story = answers.chosen("history.injury_story", Side::midline, {"story_none", "story_changes", "story_not_fitting", "story_beyond_child",
                                                                            "story_late", "story_told", "story_old_breaks"});
  const Clue marks = answers.chosen("skin.bruise_pattern", Side::midline, {"mark_shape_of_object", "mark_bite", "mark_burn_line", "mark_burn_object",
                                                                           "mark_soles_buttocks_ears", "mark_different_ages", "mark_child_not_moving"});
  const Clue told = unasked(either({story, marks, answers.yes("history.hurt_or_afraid"), answers.yes("history.neglect_concern")}));
  const Tri young = answers.aged(0, 17);
  Raised raised;
  raised.applies = told.is_yes() ? Tri::yes : young;
  if (raised.applies == Tri::no) {
    return raised;
  }
  const auto hurt_at = [&](Side side) {
    return either({bone_tender(answers, side), bone_tender_at_shaft(answers, side), bone_tender_at_ankle(answers, side), bone_tender_at_foot(answers, side),
                   answers.yes("knee.look_deformity", side), answers.yes("knee.bruising", side),
                   foot_deformed(answers, side), answers.yes("skin.bruises", side),
                   film_shows(answers, side, {"knee_fracture_seen", "shaft_fracture_seen", "hip_fracture_seen"}).clue,
                   answers.chosen("knee.look_swelling_spread", side, {"whole_limb"})});
  };
  const Clue hurt = unasked(either({hurt_at(Side::left), hurt_at(Side::right)}));
  const Clue not_walking = led_by(fact(answers.aged(0, 0)), {answers.chosen("history.moves_about", Side::midline, {"moves_not_yet", "moves_rolls"})});
  // Page: a break of the femur under 18 months (from memory); a child that crawls or pulls up breaks it seldom by itself, so the film counts.
  const auto months = answers.view().age_months_on_exam();
  const bool of_18_months = months && months->high < femur_break_months;
  const Clue crawls = of_18_months ? answers.chosen("history.moves_about", Side::midline, {"moves_crawls", "moves_cruises"}) : Clue{};
  const auto thigh_at = [&](Side side) { return film_shows(answers, side, {"shaft_fracture_seen", "hip_fracture_seen"}).clue; };
  const Clue thigh = crawls.is_yes() ? every({crawls, led_by(Clue{}, {thigh_at(Side::left), thigh_at(Side::right)})}) : Clue{};
  const Clue of_child = led_by(either({unasked(answers.yes("history.unexplained_bruises")), every({unasked(not_walking), hurt})}), {thigh});
  raised.clue = led_by(young == Tri::no ? fact(Tri::no) : of_child, {told});
  if (!raised.clue.is_yes()) {
    raised.clue.because.clear();
  }
  return raised;
}

namespace {

[[nodiscard]] bool held_back_at(const Reading* reading) {
  return std::any_of(reading->findings.begin(), reading->findings.end(), [](const model::Finding* one) { return one->quality && !one->quality->empty(); });
}

// How far a hip opens with the knee bent: less than 60 degrees after three months, or 20 less than the other.
[[nodiscard]] Clue opens_too_little(const Answers& answers, Side side) {
  constexpr ItemKey item = "hip.abduction_passive_flexed";
  constexpr std::int64_t thousandths = 1000;
  const View& view = answers.view();
  const Reading* here = answers.motion(item, side);
  const Reading* other = answers.motion(item, other_side(side));
  Clue clue;
  for (const auto& [reading, on] : {std::pair(here, side), std::pair(other, other_side(side))}) {
    const model::Item* known = view.edition().item_of(item);
    if (reading == nullptr && view.at(item.name(), on).empty() && known != nullptr) {
      clue.ask.add({view.trails().asks, ToAsk{known, on}});
    } else if (reading == nullptr) {
      clue.open.add(FindingTrail::of(view.trails().findings, view.at(item.name(), on)));
    }
  }
  if (here == nullptr) {
    return clue;
  }
  const auto months = view.age_months_on_exam();
  const bool of_age = months && months->low >= abduction_from_months && months->high <= abduction_to_months;
  const bool not_of_age = months && (months->high < abduction_from_months || months->low > abduction_to_months);
  const Tri little = !of_age ? (not_of_age ? Tri::no : Tri::undetermined) : (here->high < abduction_least * thousandths ? Tri::yes : (here->low >= abduction_least * thousandths ? Tri::no : Tri::undetermined));
  Tri differs = Tri::undetermined;
  if (other != nullptr) {
    differs = other->low - here->high >= abduction_differs * thousandths
                  ? Tri::yes
                  : (other->high - here->low < abduction_differs * thousandths ? Tri::no : Tri::undetermined);
  }
  clue.value = or_(little, differs);
  if (clue.is_no() && (held_back_at(here) || (other != nullptr && held_back_at(other)))) {
    clue.value = Tri::undetermined;
    clue.open.add(FindingTrail::of(view.trails().findings, here->findings));
  }
  FindingTrail measured = FindingTrail::of(view.trails().findings, here->findings);
  if (other != nullptr && little != Tri::yes) {
    measured.add(FindingTrail::of(view.trails().findings, other->findings));
  }
  if (clue.value != Tri::undetermined) {
    (clue.is_yes() ? clue.because : clue.against) = measured;
    clue.ask.clear();
    clue.open.clear();
  }
  return clue;
}

}  // namespace

// A hip that never was in its socket, found after the first weeks. Uneven folds say little and count for nothing.
Raised late_dislocation(const Answers& answers, Side side) {
  Raised raised;
  raised.applies = hip_taken_off(answers, side).is_yes() ? Tri::no : answers.aged(0, late_dislocation_to);
  if (raised.applies == Tri::no) {
    return raised;
  }
  const Clue lower = answers.positive("hip.knee_height_lower", side);
  const Clue waddles = answers.chosen("gait.pattern", side, {"waddling"});
  raised.clue = led_by(either({opens_too_little(answers, side), lower}), {waddles, answers.positive("hip.ortolani", side), answers.positive("hip.barlow", side)});
  raised.urgency = AlertClass::two_weeks;
  const auto months = answers.view().age_months_on_exam();
  if (months && months->high <= ultrasound_to_months) {
    raised.refer = "ultrasound";
  } else if (months && months->low > ultrasound_to_months) {
    raised.refer = "film";
  }
  return raised;
}

}  // namespace limbledger::interpret
