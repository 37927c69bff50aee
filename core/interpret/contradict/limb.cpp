#include "core/interpret/contradict/pair.hpp"

#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/joint/neutral.hpp"
#include "core/interpret/motion/compare.hpp"
#include "core/interpret/rules/vessel/ankle_brachial.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::int64_t full_arc_from = 120'000;  // CONVENTION: a knee that bends this far moves freely

[[nodiscard]] Clue seen_in(const Answers& answers, bool yes, const std::vector<const model::Finding*>& findings) {
  Clue clue;
  if (yes) {
    clue.value = Tri::yes;
    clue.because = FindingTrail::of(answers.view().trails().findings, findings);
  }
  return clue;
}

// Done, with whatever result.
[[nodiscard]] Clue was_done_at(const Answers& answers, std::string_view item, Side side) {
  return answers.tried(item, side, [](const model::Finding& finding) { return tri(!std::holds_alternative<model::NotDone>(finding.value)); });
}

// A length or a count of more than nought.
[[nodiscard]] Clue more_than_none(const Answers& answers, std::string_view item, Side side) {
  return answers.tried(item, side, [](const model::Finding& finding) {
    const auto* length = std::get_if<model::Length>(&finding.value);
    const auto* count = std::get_if<model::CountValue>(&finding.value);
    return tri((length != nullptr && length->mm && length->mm->steps > 0) || (count != nullptr && count->count.steps > 0));
  });
}

[[nodiscard]] Clue hops_somewhere(const Answers& answers, Side) {
  Clue any;
  for (const Side side : {Side::left, Side::right}) {
    any = either({any, was_done_at(answers, "hip.hop", side), more_than_none(answers, "function.hop_distance", side), more_than_none(answers, "ankle.heel_rise_count", side),
                  more_than_none(answers, "function.heel_rise_count_incline", side)});
  }
  return any;
}

// Fewer than four steps, or none at all: seen today. What was told is no measure of it.
[[nodiscard]] Clue steps_fail(const Answers& answers, Side) {
  return either({negate(answers.count_at_least("gait.steps_now", 4)), walks_as(answers, {"will_not_walk"})});
}

[[nodiscard]] Clue tender_malleolus(const Answers& answers, Side side) {
  return either({answers.yes("ankle.lateral_malleolus_tender", side), answers.yes("ankle.medial_malleolus_tender", side)});
}

[[nodiscard]] Clue tender_midfoot(const Answers& answers, Side side) {
  return either({answers.yes("foot.fifth_metatarsal_base_tender", side), answers.yes("foot.navicular_tender", side)});
}

// Bends far without pain, and nothing says that it does not straighten.
[[nodiscard]] Clue free_painless_arc(const Answers& answers, Side side) {
  const auto painless = [](const Reading& reading) {
    return std::all_of(reading.findings.begin(), reading.findings.end(), [](const model::Finding* finding) {
      return !finding->pain || (finding->pain->score && finding->pain->score->steps == 0);
    });
  };
  const Reading* straight = answers.motion("knee.extension_active", side);
  if (straight != nullptr && (!painless(*straight) || straight->high < 0)) {
    return {};
  }
  for (const std::string_view item : {"knee.flexion_active", "knee.flexion_passive"}) {
    const Reading* bent = answers.motion(item, side);
    if (bent != nullptr && bent->low >= full_arc_from && painless(*bent)) {
      return seen_in(answers, true, bent->findings);
    }
  }
  return {};
}

// Every place that was tried was felt at least twice of three.
[[nodiscard]] Clue filament_felt(const Answers& answers, Side side) {
  std::vector<const model::Finding*> used;
  bool felt = true;
  for (const std::string_view item : {"nerve.monofilament_great_toe", "nerve.monofilament_metatarsal_head_1", "nerve.monofilament_metatarsal_head_3",
                                      "nerve.monofilament_metatarsal_head_5"}) {
    for (const model::Finding* finding : answers.view().at(item, side)) {
      const auto* count = std::get_if<model::CountValue>(&finding->value);
      if (count != nullptr && settles(*finding)) {
        felt = felt && count->count.steps >= 2;
        used.push_back(finding);
      }
    }
  }
  return seen_in(answers, felt && !used.empty(), used);
}

[[nodiscard]] Clue no_pulse_in_foot(const Answers& answers, Side side) {
  return every({pulse_absent(answers, "vessel.pulse_dorsalis_pedis", side), pulse_absent(answers, "vessel.pulse_posterior_tibial", side)});
}

[[nodiscard]] Clue index_expected(const Answers& answers, Side side) {
  const View& view = answers.view();
  if (!no_pulse_in_foot(answers, side).is_yes()) {
    return {};  // the rule is not run for nothing
  }
  for (const JudgedRule& rule : run_ankle_brachial(view)) {
    if (rule.result.side != side || !rule.result.band || rule.result.band->text != "expected") {
      continue;
    }
    std::vector<const model::Finding*> used;
    for (const model::Finding* finding : view.findings()) {
      const bool of_rule = finding->finding && std::find(rule.result.findings.begin(), rule.result.findings.end(), *finding->finding) != rule.result.findings.end();
      if (of_rule) {
        used.push_back(finding);
      }
    }
    return seen_in(answers, true, used);
  }
  return {};
}

[[nodiscard]] Clue pit_graded(const Answers& answers, Side side) { return answers.graded("vessel.oedema_pitting", side, {"1+", "2+", "3+", "4+"}); }

[[nodiscard]] Clue both_sides_chosen(const Answers& answers, std::string_view item, std::string_view choice) {
  return every({answers.chosen(item, Side::left, {choice}), answers.chosen(item, Side::right, {choice})});
}

// One side cannot be lower than the other and the other lower than the one.
[[nodiscard]] Clue crest_low_on_both(const Answers& answers, Side) {
  return either({both_sides_chosen(answers, "pelvis.crest_level_standing", "low"), both_sides_chosen(answers, "pelvis.crest_level_standing", "high")});
}
[[nodiscard]] Clue always_so(const Answers&, Side) { return fact(true); }

// The angle of the knee, by more than the error of one reading, beyond straight toward valgus (1) or varus (-1).
[[nodiscard]] Clue knee_angle_beyond(const Answers& answers, Side side, std::int64_t toward) {
  for (const std::string_view item : {"knee.tibiofemoral_angle_standing", "knee.tibiofemoral_angle_supine"}) {
    const Reading* angle = answers.motion(item, side);
    const auto precision = angle == nullptr ? std::nullopt : precision_of(answers.view().edition(), {angle});
    if (precision && angle->exact() && beyond_error(toward * angle->low, precision->mdc95)) {
      return seen_in(answers, true, angle->findings);
    }
  }
  return {};
}

[[nodiscard]] Clue held_short_at(const Answers& answers, std::initializer_list<std::string_view> items, Side side) {
  for (const std::string_view item : items) {
    const Reading* motion = answers.motion(item, side);
    if (motion != nullptr && short_of_neutral(answers.view(), *motion) == Tri::yes) {
      return seen_in(answers, true, motion->findings);
    }
  }
  return {};
}

// Behind the trunk by more than the error of one reading.
[[nodiscard]] Clue hip_goes_back(const Answers& answers, Side side) {
  for (const std::string_view item : {"hip.extension_passive_prone", "hip.extension_passive_side_lying"}) {
    const Reading* motion = answers.motion(item, side);
    const auto precision = motion == nullptr ? std::nullopt : precision_of(answers.view().edition(), {motion});
    if (precision && motion->low > 0 && beyond_error(motion->low, precision->mdc95)) {
      return seen_in(answers, true, motion->findings);
    }
  }
  return {};
}

// Where "skin of foot and ankle whole" looks.
[[nodiscard]] Clue ulcer_of_foot(const Answers& answers, Side side) {
  return answers.chosen("skin.ulcer_site", side, {"at_great_toe", "at_lesser_toes", "between_toes_site", "under_first_head", "under_other_heads", "at_midfoot_sole",
                                                  "at_heel", "at_foot_back", "at_inner_ankle", "at_outer_ankle"});
}

constexpr std::array pairs_of_limb{
    Pair{"tender_without_pain_ankle", true, &tender_malleolus, [](const Answers& a, Side s) { return negate(a.yes("ankle.pain_malleolar_zone", s)); }},
    Pair{"tender_without_pain_midfoot", true, &tender_midfoot, [](const Answers& a, Side s) { return negate(a.yes("foot.pain_midfoot_zone", s)); }},
    Pair{"steps_and_hop", false, &steps_fail, &hops_somewhere},
    Pair{"kneecap_and_arc", true, [](const Answers& a, Side s) { return a.chosen("knee.look_patella_height", s, {"laterally_displaced"}); }, &free_painless_arc},
    Pair{"feeling_and_filament", true, [](const Answers& a, Side s) { return a.yes("body.feeling_lost", s); }, &filament_felt},
    Pair{"foot_cold_and_warm", true, [](const Answers& a, Side s) { return a.yes("vessel.foot_cold", s); },
         [](const Answers& a, Side s) { return a.yes("vessel.foot_warm", s); }},
    Pair{"pulses_and_index", true, &no_pulse_in_foot, &index_expected},
    Pair{"pitting_and_level", true, &pit_graded, [](const Answers& a, Side s) { return a.chosen("vessel.oedema_level", s, {"oedema_none"}); }},
    Pair{"no_pit_and_level", true, [](const Answers& a, Side s) { return a.graded("vessel.oedema_pitting", s, {"0"}); },
         [](const Answers& a, Side s) { return a.chosen("vessel.oedema_level", s, {"oedema_foot", "oedema_ankle", "oedema_shin", "oedema_knee", "oedema_thigh"}); }},
    Pair{"heel_rise_and_count", true, [](const Answers& a, Side s) { return a.chosen("ankle.heel_rise_single", s, {"rises_not"}); },
         [](const Answers& a, Side s) { return more_than_none(a, "ankle.heel_rise_count", s); }},
    Pair{"crest_on_both", false, &crest_low_on_both, &always_so},
    Pair{"bowed_and_angle", true, [](const Answers& a, Side s) { return a.chosen("knee.alignment_standing", s, {"bowed"}); },
         [](const Answers& a, Side s) { return knee_angle_beyond(a, s, 1); }},
    Pair{"knock_kneed_and_angle", true, [](const Answers& a, Side s) { return a.chosen("knee.alignment_standing", s, {"knock_kneed"}); },
         [](const Answers& a, Side s) { return knee_angle_beyond(a, s, -1); }},
    Pair{"hip_bent_and_back", true, [](const Answers& a, Side s) { return held_short_at(a, {"hip.extension_passive_thomas"}, s); }, &hip_goes_back},
    Pair{"prosthesis_and_limb", true, [](const Answers& a, Side s) { return a.yes("body.prosthesis", s); },
         [](const Answers& a, Side s) { return a.chosen("body.limb_level", s, {"limb_whole"}); }},
    Pair{"heel_walk_and_power", true, [](const Answers& a, Side s) { return a.chosen("gait.heel_walk", s, {"walk_able"}); },
         [](const Answers& a, Side s) { return either({a.graded("nerve.power_ankle_dorsiflexion", s, {"0", "1", "2"}), a.yes("nerve.foot_drop", s)}); }},
    Pair{"toe_walk_and_power", true, [](const Answers& a, Side s) { return a.chosen("gait.toe_walk", s, {"walk_able"}); },
         [](const Answers& a, Side s) { return a.graded("nerve.power_ankle_plantarflexion", s, {"0", "1", "2"}); }},
    Pair{"skin_whole_and_open", true, [](const Answers& a, Side s) { return a.yes("skin.intact", s); },
         [](const Answers& a, Side s) { return every({a.yes("skin.ulcer", s), ulcer_of_foot(a, s)}); }},
};

}  // namespace

std::span<const Pair> limb_pairs() { return pairs_of_limb; }

}  // namespace limbledger::interpret
