#include "core/interpret/alerts/circumstances.hpp"

#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/motion/difference.hpp"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace limbledger::interpret {

using model::Side;
using model::WhyNot;

namespace {

// Read with a remark on how: a limb that was held back may have more or less than was read, so no difference is no answer.
[[nodiscard]] bool held_back_reading(const Reading& reading) {
  return std::any_of(reading.findings.begin(), reading.findings.end(), [](const model::Finding* one) { return one->quality && !one->quality->empty(); });
}

// Less than the other side by more than the error of a difference; thousandths of a degree toward the named direction.
[[nodiscard]] Clue less_than_other(const Answers& answers, const ItemKey& item, Side side) {
  const View& view = answers.view();
  Clue clue;
  const model::Item* known = view.edition().item_of(item);
  if (known == nullptr) {
    return clue;
  }
  const Reading* here = answers.motion(*known, side);
  const Reading* other = answers.motion(*known, other_side(side));
  for (const auto& [reading, on] : {std::pair(here, side), std::pair(other, other_side(side))}) {
    if (reading == nullptr && view.at(*known, on).empty()) {
      clue.ask.add({view.trails().asks, ToAsk{known, on}});
    } else if (reading == nullptr) {
      clue.open.add(FindingTrail::of(view.trails().findings, view.at(*known, on)));  // asked, and no number
    }
  }
  if (here == nullptr || other == nullptr) {
    return clue;
  }
  const auto precision = precision_of(view.edition(), {here, other});
  const bool native = not_native(view, *here->item, here->side).empty() && not_native(view, *other->item, other->side).empty();
  // Nobody named the instrument: what is beyond the error of any is lost, and what is not is no answer.
  const auto widest = precision || !native ? std::nullopt : widest_error(view.edition(), {here, other});
  if (widest && other->low - here->high > std::max(*widest, side_difference_least)) {
    clue.value = Tri::yes;
  }
  if (!precision || !native) {
    FindingTrail& read = clue.is_yes() ? clue.because : clue.open;
    read.add(FindingTrail::of(view.trails().findings, here->findings));
    read.add(FindingTrail::of(view.trails().findings, other->findings));
    return clue;
  }
  const std::int64_t needed = std::max(precision->mdc95, side_difference_least);
  clue.because = FindingTrail::of(view.trails().findings, here->findings);
  clue.because.add(FindingTrail::of(view.trails().findings, other->findings));
  if (other->low - here->high > needed) {
    clue.value = Tri::yes;
  } else if (other->high - here->low <= needed && (held_back_reading(*here) || held_back_reading(*other))) {
    clue.open.add(clue.because);
    clue.because.clear();
  } else if (other->high - here->low <= needed) {
    clue.value = Tri::no;
    std::swap(clue.because, clue.against);
  } else {
    clue.because.clear();
  }
  return clue;
}

// Of either leg, as a way of walking is. Carried, or a child at play that will not move, says the same of who walked before; small
// children are carried anyway (our own rule). These are heard, not asked after.
[[nodiscard]] Clue refuses_weight(const Answers& answers) {
  const auto bears_not = [&](Side side) { return answers.chosen("history.weight_bearing", side, {"bears_not"}); };
  const auto never = [&](Side side) { return answers.chosen("history.weight_bearing", side, {"bears_never_walked"}).is_yes(); };
  const bool walks_at_all = answers.aged(0, walks_from - 1) == Tri::no && !never(Side::left) && !never(Side::right) && !took_no_steps_before(answers).is_yes();
  const Clue refused = either({answers.yes("history.refuses_weight", Side::left), answers.yes("history.refuses_weight", Side::right)});
  return led_by(refused, {bears_not(Side::left), bears_not(Side::right), walks_at_all ? answers.chosen("gait.aid", Side::midline, {"aid_carried"}) : Clue{},
                          walks_at_all ? answers.chosen("general.child_at_play", Side::midline, {"play_will_not_move"}) : Clue{}});
}

// Under one year nobody is asked for steps, and none taken says nothing (our own rule).
[[nodiscard]] Clue fewer_steps(const Answers& answers, std::int64_t than) {
  if (answers.aged(0, 0) == Tri::yes) {
    return {};
  }
  // Asked to walk, and stopped by pain or not able to: no step was taken (red flags page: "cannot bear weight"; our own rule). A rule keeps it unknown.
  Clue steps = led_by(answers.count_below("gait.steps_now", than), {answers.stopped("gait.steps_now", Side::midline, {WhyNot::pain, WhyNot::unable})});
  if (const Clue before = steps.is_no() ? Clue{} : took_no_steps_before(answers); before.is_yes()) {
    steps.value = Tri::undetermined;
    steps.open.add(steps.because);
    steps.open.add(before.because);
    steps.because.clear();
    steps.ask.clear();
  }
  return steps;
}

}  // namespace

Clue left_open(Clue no, const Clue& found) {
  if (no.is_no()) {
    no.value = Tri::undetermined;
    no.open = found.because;
    no.open.add(no.against);
    no.against.clear();
  }
  return no;
}

Clue no_injury_beside(const Answers& answers, const Clue& rest) {
  const Clue none = negate(injured(answers));
  return rest.is_yes() && none.value == Tri::undetermined ? none : circumstance(none);
}

Clue walks_as(const Answers& answers, std::initializer_list<std::string_view> gaits) {
  const Clue whole = answers.chosen("gait.pattern", Side::midline, gaits);
  const Clue left = answers.chosen("gait.pattern", Side::left, gaits);
  const Clue right = answers.chosen("gait.pattern", Side::right, gaits);
  if (whole.is_yes() || left.is_yes() || right.is_yes()) {
    return either({whole, left, right});
  }
  // Of one leg alone a no is none for both.
  Clue of_sides = either({left, right});
  return whole.is_no() || !of_sides.is_no() ? whole : of_sides;
}

Clue took_no_steps_before(const Answers& answers) {
  return answers.once(Known::took_no_steps_before, Side::midline, [&]() -> Clue {
    const Clue sits = led_by(answers.yes("body.chair_user"), {answers.chosen("history.walks_usually", Side::midline, {"walks_wheelchair", "walks_bed", "walks_not_yet"})});
    // Who sits or lies today took steps once, as nearly everybody did: the age of the first tells nothing then, nor does that walking was lost.
    const Clue first_steps = sits.is_yes() ? Clue{} : answers.count_at_least("history.walking_age_months", 1);
    const Clue walked = led_by(answers.chosen("history.walks_usually", Side::midline, {"walks_alone", "walks_indoors", "walks_with_aid", "walks_with_person"}),
                               {sits.is_yes() ? Clue{} : answers.yes("history.walking_lost"), answers.no("body.chair_user"), first_steps});
    const auto never = [&](Side side) { return answers.chosen("history.weight_bearing", side, {"bears_never_walked"}); };
    const auto months = answers.view().age_months_on_exam();
    const bool small = months && months->high < walks_by_months;
    const Clue crawls = small ? answers.chosen("history.moves_about", Side::midline, {"moves_not_yet", "moves_rolls", "moves_crawls", "moves_cruises"}) : Clue{};
    return walked.is_yes() ? Clue{} : led_by(Clue{}, {sits, never(Side::left), never(Side::right), crawls});
  });
}

Clue cannot_walk(const Answers& answers) {
  return answers.once(Known::cannot_walk, Side::midline, [&]() -> Clue {
    return led_by(fewer_steps(answers, 4),
                  {walks_as(answers, {"will_not_walk"}), answers.yes("history.walking_lost"), refuses_weight(answers)});
  });
}

Clue cannot_stand(const Answers& answers) {
  return answers.once(Known::cannot_stand, Side::midline, [&]() -> Clue {
    return led_by(fewer_steps(answers, 1), {walks_as(answers, {"will_not_walk"}), refuses_weight(answers)});
  });
}

bool of_walking_alone(const Answers& answers, const Clue& clue) {
  const std::string_view complaint = answers.view().exam().complaint.text;
  const bool of_a_child = complaint == "limping_child" || complaint == "infant_hip" || complaint == "child_alignment";
  return answers.child() == Tri::undetermined && !of_a_child && !clue.because.any([](const model::Finding* finding) {
    constexpr std::array<std::string_view, 8> walking{"gait.steps_now", "history.walking_lost", "gait.pattern", "gait.limp", "gait.aid", "history.weight_bearing", "history.refuses_weight", "history.mechanism"};
    return std::find(walking.begin(), walking.end(), finding->item.text) == walking.end();
  });
}

Clue leg_not_moved(const Answers& answers, Side side) {
  return led_by(answers.yes("hip.leg_not_moved", side), {answers.yes("history.child_not_moving_leg", side)});
}

Clue limps(const Answers& answers) {
  return answers.once(Known::limps, Side::midline, [&]() -> Clue {
    const Clue uneven = walks_as(answers, {"short_stance", "stiff_knee", "bent_knee", "knee_thrust", "knee_locked_back", "trunk_lean", "pelvis_drop",
                                           "waddling", "high_step", "toe_walking", "turned_out", "will_not_walk", "other_gait"});
    // Days of a limp are told of one, whether or not it is seen today.
    return led_by(answers.yes("gait.limp"), {uneven, cannot_walk(answers), answers.count_at_least("history.limp_days", 1)});
  });
}

Clue hot(const Answers& answers, Side side) { return answers.yes("knee.look_skin_hot_red", side); }

Clue swollen(const Answers& answers, Side side) {
  return answers.once(Known::swollen, side, [&]() -> Clue {
    return led_by(answers.graded("knee.effusion_stroke", side, {"1+", "2+", "3+"}),
                  {answers.positive("knee.effusion_ballottement", side), answers.positive("knee.effusion_fluctuation", side),
                   answers.chosen("knee.look_swelling_spread", side, {"whole_knee", "whole_limb"}), answers.yes("history.swelling_noticed", side),
                   answers.chosen("history.swelling_onset", side, {"within_2h", "within_24h", "later"})});
  });
}

Clue tender(const Answers& answers, Side side) {
  return answers.once(Known::tender, side, [&]() -> Clue {
    const Clue lines = either({answers.yes("knee.joint_line_medial_tender", side), answers.yes("knee.joint_line_lateral_tender", side)});
    return led_by(lines, {answers.yes("knee.bone_tender_elsewhere", side), answers.yes("knee.patella_tender", side)});
  });
}

Clue bone_tender(const Answers& answers, Side side) {
  return answers.once(Known::bone_tender, side, [&]() -> Clue {
    return either(
        {answers.yes("knee.bone_tender_elsewhere", side), answers.yes("knee.fibular_head_tender", side), answers.yes("knee.patella_tender", side)});
  });
}

Clue restricted(const Answers& answers, Side side) {
  return answers.once(Known::restricted, side, [&]() -> Clue {
    const auto stopped = [&](const ItemKey& item) { return answers.stopped(item, side, {WhyNot::pain, WhyNot::blocked, WhyNot::unable}); };
    const auto bends_too_little = [&](const ItemKey& item) {
      return answers.hear_as(item, side, [](const model::Finding& finding) -> Said {
        const auto* angle = std::get_if<model::Angle>(&finding.value);
        if (angle == nullptr || angle->reads || angle->bound || !angle->toward_deg) {
          return {std::nullopt, "unsure"};
        }
        return {static_cast<std::uint8_t>(angle->toward_deg->steps < flexion_restricted ? 2 : 1), "known"};
      });
    };
    const Clue passive = bends_too_little("knee.flexion_passive");
    const Clue active = bends_too_little("knee.flexion_active");
    const Clue lead = active.value == Tri::undetermined && passive.value != Tri::undetermined ? passive : active;
    return led_by(lead, {passive, stopped("knee.flexion_active"), stopped("knee.flexion_passive"), stopped("knee.extension_passive")});
  });
}

Clue hurts_badly_on(const Answers& answers, Side side, std::initializer_list<ItemKey> moved) {
  Clue out;
  for (const ItemKey& item : moved) {
    const Clue one = answers.tried(item, side, [](const model::Finding& finding) {
      const auto* not_done = std::get_if<model::NotDone>(&finding.value);
      const bool stopped = not_done != nullptr && not_done->reason == WhyNot::pain;
      if (stopped || (finding.pain && finding.pain->score && finding.pain->score->steps >= severe_pain)) {
        return Tri::yes;
      }
      return not_done == nullptr ? Tri::no : Tri::undetermined;
    });
    out.value = out.value == Tri::undetermined ? one.value : (one.is_yes() ? Tri::yes : out.value);
    out.because.add(one.because);
    out.against.add(one.against);
  }
  return out;
}

Clue severe_pain_on_passive(const Answers& answers, Side side) {
  return answers.once(Known::severe_pain_on_passive, side, [&]() -> Clue {
    Clue out = hurts_badly_on(answers, side, {"knee.flexion_passive", "knee.extension_passive", "hip.internal_rotation_passive_seated",
                                              "hip.internal_rotation_passive_supine", "hip.log_roll", "ankle.dorsiflexion_passive_knee_bent"});
    if (const Clue smallest = answers.yes("hip.pain_passive_severe", side); smallest.is_yes()) {
      out.value = Tri::yes;
      out.because.add(smallest.because);
    }
    if (out.is_yes()) {
      out.against.clear();
    }
    return out;
  });
}

Clue hip_rotation_lost(const Answers& answers, Side side) {
  return answers.once(Known::hip_rotation_lost, side, [&]() -> Clue {
    const auto lost = [&](const ItemKey& item) {
      Clue difference = less_than_other(answers, item, side);
      Clue little;
      const Reading* here = answers.motion(item, side);
      if (difference.is_no() && here != nullptr && here->high < rotation_free_from * 100) {
        Clue both_little;  // compares with nothing: both hips may be ill
        both_little.open = both_little.because = difference.against;
        difference = both_little;
      }
      if (here != nullptr && here->high <= rotation_lost_at * 100) {
        little.value = Tri::yes;
        little.because = FindingTrail::of(answers.view().trails().findings, here->findings);
      }
      return led_by(difference, {little, answers.stopped(item, side, {WhyNot::pain, WhyNot::blocked})});
    };
    const Clue seated = lost("hip.internal_rotation_passive_seated");
    const Clue supine = led_by(lost("hip.internal_rotation_passive_supine"), {lost("hip.internal_rotation_passive_prone")});
    if (seated.value == Tri::undetermined && (supine.value != Tri::undetermined || (seated.because.empty() && !supine.because.empty()))) {
      return supine;
    }
    return led_by(seated, {supine});
  });
}

Clue extension_lacking(const Answers& answers, Side side) { return less_than_other(answers, "knee.extension_passive", side); }

Clue flexion_lacking(const Answers& answers, Side side) {
  return led_by(less_than_other(answers, "knee.flexion_passive", side), {less_than_other(answers, "knee.flexion_active", side)});
}

FindingTrail extension_short(const Answers& answers, Side side) {
  constexpr ItemKey item = "knee.extension_passive";
  const Reading* here = answers.motion(item, side);
  const Reading* other = answers.motion(item, other_side(side));
  if (here == nullptr || here->high >= 0 || (other != nullptr && here->low >= other->high)) {
    return {};
  }
  FindingTrail trail = FindingTrail::of(answers.view().trails().findings, here->findings);
  if (other != nullptr) {
    trail.add(FindingTrail::of(answers.view().trails().findings, other->findings));
  }
  return trail;
}

Clue abduction_lacking(const Answers& answers, Side side) {
  return less_than_other(answers, "hip.abduction_passive_flexed", side);
}

Clue ankle_restricted(const Answers& answers, Side side) {
  Clue out;
  for (const ItemKey item : std::initializer_list<ItemKey>{"ankle.dorsiflexion_passive_knee_bent", "ankle.dorsiflexion_passive_knee_straight", "ankle.dorsiflexion_active_knee_bent",
                                      "ankle.plantarflexion_passive_knee_bent"}) {
    const Clue one = led_by(less_than_other(answers, item, side), {answers.stopped(item, side, {WhyNot::pain, WhyNot::blocked, WhyNot::unable})});
    if (one.is_yes()) {
      return one;
    }
    const bool first = out.value == Tri::undetermined && out.ask.empty();
    out = first || (out.value == Tri::undetermined && one.is_no()) ? one : out;
  }
  return out;
}

Clue severe_pain_told(const Answers& answers) {
  return led_by(answers.yes("history.pain_severe_sudden"), {answers.count_at_least("history.pain_now", severe_pain), answers.count_at_least("history.pain_at_rest", severe_pain),
                                                            answers.count_at_least("history.pain_at_night", severe_pain)});
}

Clue foot_hurts_at_rest(const Answers& answers, Side side) {
  const std::string_view part = part_complained_of(answers);
  const bool of_it = (part == "foot" || part == "ankle") && answers.view().exam().side == side;
  return led_by(answers.yes("history.rest_pain_foot", side), {of_it ? answers.count_at_least("history.pain_at_rest", severe_pain) : Clue{}});
}

Clue dead_tissue(const Answers& answers, Side side) {
  return led_by(answers.chosen("skin.gangrene", side, {"gangrene_dry", "gangrene_wet"}), {answers.yes("skin.black_toe", side)});
}

Clue pulses_lost(const Answers& answers, Side side) {
  const Clue dorsal = pulse_absent(answers, dorsal_pulse, side);
  const Clue tibial = pulse_absent(answers, tibial_pulse, side);
  const auto full = [&](const ItemKey& item) { return answers.graded(item, side, {"2", "3"}).is_yes(); };
  Clue lost;
  if ((dorsal.is_yes() && !full(tibial_pulse)) || (tibial.is_yes() && !full(dorsal_pulse))) {
    lost.value = Tri::yes;
    lost.because = dorsal.because;
    lost.because.add(tibial.because);
    lost.because.add(FindingTrail::of(answers.view().trails().findings, answers.view().at(dorsal.is_yes() ? tibial_pulse.name() : dorsal_pulse.name(), side)));
  }
  return lost;
}

FilmShows film_shows(const Answers& answers, Side side, std::initializer_list<std::string_view> choices) {
  constexpr ItemKey film = "history.film_result";
  FilmShows shows{answers.chosen(film, side, choices)};
  const bool of_this_side = shows.clue.because.any([&](const model::Finding* one) { return one->side == side; });
  if (!shows.clue.is_yes() || side == Side::midline || of_this_side) {
    shows.of_no_side = shows.clue.is_yes() && side == Side::midline;
    return shows;
  }
  const auto& complaint = answers.view().exam().side;
  if (!complaint || *complaint == Side::midline) {
    shows.of_no_side = true;
  } else if (*complaint != side) {
    shows.clue = Clue{};
  }
  return shows;
}

namespace {

// Asked for by many dangers and recorded of few people: nothing is kept where it was not.
Clue taken_off_at(const Answers& answers, Side side, std::initializer_list<std::string_view> levels) {
  return answers.tried("body.limb_level", side, [levels](const model::Finding& finding) {
    const auto* level = std::get_if<model::Choice>(&finding.value);
    return level != nullptr && std::find(levels.begin(), levels.end(), level->choice.text) != levels.end() ? Tri::yes : Tri::undetermined;
  });
}

}  // namespace

Clue hip_taken_off(const Answers& answers, Side side) { return taken_off_at(answers, side, {"at_hip"}); }

Clue knee_taken_off(const Answers& answers, Side side) { return taken_off_at(answers, side, {"at_hip", "through_thigh", "at_knee"}); }

Clue foot_taken_off(const Answers& answers, Side side) {
  return taken_off_at(answers, side, {"at_hip", "through_thigh", "at_knee", "through_shin", "at_ankle"});
}

std::string_view part_complained_of(const Answers& answers) {
  const model::Sequence* sequence = answers.view().edition().sequence(answers.view().exam().complaint);
  return sequence != nullptr && sequence->part ? std::string_view(sequence->part->text) : std::string_view();
}

AskTrail without_the_knee(const Answers& answers, const AskTrail& asked) {
  AskTrail out;
  for (const ToAsk& ask : asked.written()) {
    if (ask.item->region.text != "knee") {
      out.add({answers.view().trails().asks, ask});
    }
  }
  return out;
}

Clue foot_deformed(const Answers& answers, Side side) {
  return either({answers.yes("ankle.look_deformity", side), answers.yes("foot.look_deformity", side), answers.yes("leg.look_deformity", side)});
}

Clue pulse_absent(const Answers& answers, const ItemKey& item, Side side) { return answers.graded(item, side, {"0"}); }

}  // namespace limbledger::interpret
