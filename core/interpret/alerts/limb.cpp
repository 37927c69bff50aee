// What threatens the limb within hours: open break, dislocation, compartment, ischaemia.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"
#include "core/interpret/rules/knee/knee_vessels.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <vector>

namespace limbledger::interpret {

using model::Side;

namespace {

// One structure gives way by 6 mm or more, or at all with the knee straight (convention, after the bands of IKDC2000).
[[nodiscard]] Clue loose(const Answers& answers, Side side, std::initializer_list<ItemKey> items, const ItemKey* straight = nullptr) {
  Clue clue = straight == nullptr ? Clue{} : answers.graded(*straight, side, {"1", "2", "3"});
  for (const ItemKey& item : items) {
    clue = led_by(answers.graded(item, side, {"2", "3"}), {clue});
    clue = unasked(clue);
  }
  return clue;
}

[[nodiscard]] Clue two_structures_loose(const Answers& answers, Side side) {
  const Clue front = loose(answers, side, {"knee.lachman", "knee.lachman_prone", "knee.lachman_dropped_leg", "knee.anterior_drawer"});
  const Clue back = led_by(loose(answers, side, {"knee.posterior_drawer"}), {answers.positive("knee.posterior_sag", side)});
  static constexpr ItemKey valgus_straight = "knee.valgus_0", varus_straight = "knee.varus_0";
  const Clue inner = loose(answers, side, {"knee.valgus_30"}, &valgus_straight);
  const Clue outer = loose(answers, side, {"knee.varus_30"}, &varus_straight);
  Clue out = either({every({front, back}), every({front, inner}), every({front, outer}), every({back, inner}), every({back, outer}), every({inner, outer})});
  if (out.value == Tri::undetermined) {
    out.because.clear();  // one loose ligament alone points to no dislocation, and nobody is asked to test the others
  }
  return unasked(out);
}

// The concerns of the part of the limb that the break is at: where it shows, else where the complaint is, else all of them.
[[nodiscard]] std::vector<std::string_view> broken_segments(const Answers& answers, Side side, const Clue& at_knee) {
  std::vector<std::string_view> open;
  const auto opens = [&](bool here, std::string_view concern) {
    if (here) {
      open.push_back(concern);
    }
  };
  const auto says = [&](const ItemKey& item) { return answers.yes(item, side).is_yes(); };
  const std::string_view part = part_complained_of(answers);
  opens(at_knee.is_yes() || says("knee.look_deformity"), "concern.knee_fracture");
  opens(says("leg.look_deformity") || bone_tender_at_shaft(answers, side).is_yes(), "concern.shaft_fracture");
  if (foot_taken_off(answers, side).is_yes()) {
    open.push_back("concern.shaft_fracture");  // what is out of shape is the part above
    return open;
  }
  opens(says("ankle.look_deformity") || says("ankle.skin_tented") || bone_tender_at_ankle(answers, side).is_yes(), "concern.ankle_fracture");
  opens(says("foot.look_deformity") || bone_tender_at_foot(answers, side).is_yes(), "concern.foot_fracture");
  if (open.empty()) {
    opens(part == "hip", "concern.hip_fracture");
    opens(part == "knee" || bone_tender(answers, side).is_yes(), "concern.knee_fracture");
    opens(part == "leg", "concern.shaft_fracture");
    opens(part == "ankle", "concern.ankle_fracture");
    opens(part == "foot", "concern.foot_fracture");
  }
  return open;
}

// What the rule of the knee's vessels read, of this foot, the other one and both arms.
constexpr std::array<std::string_view, 5> vessel_items{"vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial", "vessel.pressure_posterior_tibial",
                                                       "vessel.pressure_dorsalis_pedis", "vessel.pressure_arm"};

// Only what was examined with a full hand leaves time.
[[nodiscard]] bool vessels_well_examined(const View& view, Side side) {
  return std::all_of(vessel_items.begin(), vessel_items.end(), [&](std::string_view item) {
    const auto well = [](const model::Finding* one) { return !one->quality || one->quality->empty(); };
    const Findings here = view.at(item, side);
    const Findings other = view.at(item, other_side(side));
    return std::all_of(here.begin(), here.end(), well) && (item != "vessel.pressure_arm" || std::all_of(other.begin(), other.end(), well));
  });
}

void name_vessels(const View& view, Side side, Raised& raised) {
  for (const std::string_view item : vessel_items) {
    for (const Side one : {side, other_side(side)}) {
      const bool of_ankle = item != "vessel.pressure_arm" && item.starts_with("vessel.pressure_");
      if (one == side || !of_ankle) {
        raised.clue.because.add(FindingTrail::of(view.trails().findings, view.at(item, one)));
      }
    }
  }
}

}  // namespace

namespace {

// An open break needs a break that is seen, or an injury these weeks. Nobody recorded one, and an ulcer or the weeks say that it is old: the
// wound is no open break until the injury was asked after (our own rule). Without any of that the wound counts as open.
[[nodiscard]] Clue freshly_broken(const Answers& answers, Side side, const Clue& wound) {
  if (!wound.is_yes()) {
    return fact(not_(tri(hurt_lately(answers).is_no())));
  }
  const Clue hurt = hurt_beside(answers, wound, true);
  if (hurt.is_no()) {
    const Clue bent = denied_beside(answers) ? led_by(foot_deformed(answers, side), {answers.yes("leg.look_deformity", side), answers.yes("knee.look_deformity", side)}) : Clue{};
    return bent.is_yes() ? circumstance(bent) : fact(Tri::no);  // bent, it is no ulcer, whatever was told
  }
  const bool old = answers.count_at_least("history.weeks_since_onset", lately_weeks + 1).is_yes() || answers.yes("skin.ulcer", side).is_yes() ||
                   answers.yes("history.foot_ulcer_over_2_weeks", side).is_yes();
  if (!old || hurt.is_yes()) {
    return old ? hurt : fact(Tri::yes);
  }
  const Clue seen = film_shows(answers, side, {"shaft_fracture_seen", "knee_fracture_seen", "ankle_fracture_seen", "foot_fracture_seen"}).clue;
  const Clue broken = led_by(Clue{}, {seen, foot_deformed(answers, side), answers.yes("knee.look_deformity", side)});
  return broken.is_yes() ? circumstance(broken) : hurt;
}

// A wound below the knee beside bone that is tender, a break on a film, or a leg that does not carry, after an injury. Whole skin is asked
// of foot and ankle alone and counts for the shin as well; a sore hip is a reason of its own not to walk (our own rule, the cautious one).
[[nodiscard]] Clue broken_under_wound(const Answers& answers, Side side, const Clue& wound) {
  if (!wound.is_yes()) {
    return Clue{};
  }
  const Clue seen = film_shows(answers, side, {"shaft_fracture_seen", "ankle_fracture_seen", "foot_fracture_seen"}).clue;
  const Clue tender = led_by(bone_tender_at_shaft(answers, side), {bone_tender_at_ankle(answers, side), bone_tender_at_foot(answers, side)});
  const Clue hurt = hurt_beside(answers, wound, true);
  const Clue carries_not = part_complained_of(answers) == "hip" ? Clue{} : cannot_walk(answers);
  if (!hurt.is_yes() && seen.is_yes() && !hurt.is_no()) {
    return every({wound, seen});
  }
  if (!hurt.is_yes()) {
    return hurt.is_no() || !tender.is_yes() ? Clue{} : every({hurt, wound, tender});  // whether it was hurt is asked
  }
  return every({hurt, wound, led_by(carries_not, {tender, seen})});
}

}  // namespace

// A wound said to lie near a break counts by itself, as does skin that bone lifts; below the knee a new deformity asks after both.
Raised open_fracture(const Answers& answers, Side side) {
  const Clue wound = answers.yes("knee.look_open_wound", side);
  const Clue on_film = film_shows(answers, side, {"knee_fracture_seen"}).clue;
  const Clue broken = led_by(either({answers.yes("knee.look_deformity", side), bone_tender(answers, side),
                                     every({hurt_beside(answers, wound, true), cannot_walk(answers)})}), {on_film});
  Clue at_knee = every({wound, broken});
  if (!wound.is_yes()) {
    at_knee.because.clear();  // tender bone alone points to no wound
  }
  const Clue over_bone = answers.yes("skin.wound_over_bone", side);
  const Clue near = every({over_bone, freshly_broken(answers, side, over_bone)});
  const Clue skin_open = answers.no("skin.intact", side);
  const Clue deep = answers.chosen("skin.deep_wound", side, {"wound_puncture", "wound_bite", "wound_sting_or_snake", "wound_body_left"});
  const Clue out_of_shape = foot_deformed(answers, side);
  const Clue below = every({out_of_shape, led_by(near.value == Tri::undetermined && skin_open.is_no() ? skin_open : near, {skin_open, deep})});
  // A blister or a crack of the heel is broken skin too: that no wound lies near a break is the direct answer, and outranks it.
  const Clue near_skin = answers.yes("skin.wound_over_bone", side).is_no() ? Clue{} : unasked(skin_open);
  const Clue wound_and_break = led_by(broken_under_wound(answers, side, led_by(near_skin, {deep})), {broken_under_hip_wound(answers, side)});
  const Clue tented = answers.yes("ankle.skin_tented", side);
  Raised raised;
  // Bone that is seen says by itself what wound and break say together, but for an old ulcer's.
  const Clue visible = answers.yes("skin.bone_visible", side);
  const Clue bone = every({visible, freshly_broken(answers, side, visible)});
  if (out_of_shape.is_yes()) {
    // Skin over the ankle is asked after where ankle or foot is what is bent.
    const bool of_foot = answers.yes("ankle.look_deformity", side).is_yes() || answers.yes("foot.look_deformity", side).is_yes();
    const Clue lower = led_by(of_foot ? either({below, tented}) : below, {tented, bone, near, wound_and_break});
    raised.clue = wound.is_yes() ? either({at_knee, lower}) : lower;
  } else {
    raised.clue = led_by(at_knee, {bone, near, tented, wound_and_break});
  }
  for (const Clue* one : {&wound_and_break, &bone, &near}) {
    if (!raised.clue.is_yes() && one->value == Tri::undetermined && !one->because.empty()) {
      raised.clue = either({raised.clue, *one});  // a wound over bone, and nobody said of what: that is asked
    }
  }
  const std::string& why = answers.view().exam().complaint.text;
  if (raised.clue.value == Tri::undetermined && raised.clue.warm() && !wound.is_yes() && !broken.is_yes() && why != "acute_knee" && why != "chronic_knee") {
    const std::string_view part = part_complained_of(answers);
    raised.clue.ask = part.empty() || part == "knee" ? raised.clue.ask : without_the_knee(answers, raised.clue.ask);
  }
  raised.urgency = AlertClass::now;
  raised.interrupts = true;
  const bool below_open = near.is_yes() || below.is_yes() || wound_and_break.is_yes();
  raised.what = at_knee.is_yes() ? "raised" : (bone.is_yes() ? "bone_seen" : (below_open ? "near_break" : (tented.is_yes() ? "skin" : "raised")));
  if (raised.clue.is_yes()) {
    raised.opens = broken_segments(answers, side, at_knee);
  }
  return raised;
}

Raised dislocated_kneecap(const Answers& answers, Side side) {
  const Clue aside = answers.chosen("knee.look_patella_height", side, {"laterally_displaced"});
  const Clue out_now = every({hurt_beside(answers, aside), aside});
  const Clue went_back = every({circumstance(hurt_lately(answers)), answers.yes("history.patella_dislocated", side)});
  Raised raised;
  raised.clue = either({out_now, went_back});
  raised.interrupts = out_now.is_yes();
  raised.what = out_now.is_yes() ? "out_now" : "raised";
  return raised;
}

// Out of shape after an injury is the same day; with movement, pulse or warmth lost, or skin that dies over it, there are minutes.
Raised dislocated_ankle(const Answers& answers, Side side) {
  const Clue of_ankle = answers.yes("ankle.look_deformity", side);
  const Clue of_foot = answers.yes("foot.look_deformity", side);
  const Clue bent = part_complained_of(answers) == "foot" ? led_by(of_foot, {of_ankle}) : led_by(of_ankle, {of_foot});
  const Clue skin = answers.yes("ankle.skin_tented", side);
  // Skin that bone lifts is of today too (page: "skin tented or blanched").
  const Clue shape = led_by(out_of_shape(answers, side, bent), {bent.is_yes() && skin.is_yes() ? every({bent, skin}) : Clue{}});
  const Clue stopped = led_by(answers.stopped("ankle.dorsiflexion_passive_knee_bent", side, {model::WhyNot::pain, model::WhyNot::blocked, model::WhyNot::unable}),
                              {answers.stopped("ankle.dorsiflexion_active_knee_bent", side, {model::WhyNot::pain, model::WhyNot::blocked, model::WhyNot::unable})});
  const Clue dorsal = pulse_absent(answers, dorsal_pulse, side);
  const Clue tibial = pulse_absent(answers, tibial_pulse, side);
  const Clue threatened = led_by(answers.no("ankle.movement", side), {skin, dorsal, tibial, answers.yes("vessel.foot_cold", side), stopped, newly_numb(answers, side)});
  const Clue went_back = part_complained_of(answers) == "ankle" ? unasked(answers.yes("history.joint_put_back", side)) : Clue{};
  Raised raised;
  // Of a foot that is gone the part above is out of shape, and has its own line (alert.fracture).
  if (foot_taken_off(answers, side).is_yes()) {
    raised.applies = Tri::no;
    return raised;
  }
  raised.clue = led_by(shape, {went_back});
  raised.what = shape.is_yes() ? "raised" : (went_back.is_yes() ? "went_back" : "raised");
  if (shape.is_yes() && threatened.is_yes()) {
    raised.urgency = AlertClass::now;
    raised.interrupts = true;
    for (const Clue* one : {&threatened, &skin, &dorsal, &tibial}) {
      raised.clue.because.add(one->is_yes() ? one->because : FindingTrail{});
    }
    raised.what = skin.is_yes() ? "skin" : (dorsal.is_yes() || tibial.is_yes() ? "pulse" : "held");
  }
  return raised;
}

Raised dislocated_knee(const Answers& answers, Side side) {
  if (knee_taken_off(answers, side).is_yes()) {
    Raised gone;
    gone.applies = Tri::no;
    return gone;
  }
  const Clue hurt = circumstance(hurt_lately(answers));
  const bool kneecap_out = answers.chosen("knee.look_patella_height", side, {"laterally_displaced"}).is_yes();
  const Clue bent = answers.yes("knee.look_deformity", side);
  const Clue deformed = kneecap_out && !one_gone_one_poor(answers, side).is_yes() ? fact(Tri::no) : out_of_shape(answers, side, bent);
  // A joint put back is the knee where the knee is complained of, unless the kneecap is what went out.
  const bool of_kneecap = kneecap_out || answers.yes("history.patella_dislocated", side).is_yes();
  const Clue put_back = part_complained_of(answers) == "knee" && !of_kneecap ? unasked(answers.yes("history.joint_put_back", side)) : Clue{};
  // Told to have been out it was hurt, whatever else was said of an injury; of a known day, or an old trouble, it is of then.
  const Clue was_out = led_by(answers.yes("history.knee_dislocated", side), {put_back});
  const bool by_itself = was_out.is_yes() && hurt_lately(answers).is_no() && !answers.view().exam().injured_on &&
                         !answers.count_at_least("history.weeks_since_onset", lately_weeks + 1).is_yes();
  const Clue went_back = every({by_itself ? fact(Tri::yes) : hurt_beside(answers, was_out), was_out});
  const Clue lax = every({hurt, two_structures_loose(answers, side)});
  const Clue marked = either({answers.yes("knee.bruising", side), answers.chosen("knee.look_swelling_spread", side, {"whole_knee", "whole_limb"}),
                              answers.graded("knee.effusion_stroke", side, {"2+", "3+"})});
  const Clue bent_back = answers.chosen("history.mechanism", Side::midline, {"hyperextension"});
  Raised raised;
  raised.clue = either({deformed, went_back, lax, every({hurt, circumstance(bent_back), bent_back.is_yes() ? marked : unasked(marked)})});
  if (!bent_back.is_yes() && raised.clue.value == Tri::undetermined) {
    raised.clue.because = either({deformed, went_back, lax}).because;  // a bruise alone points to no dislocation
  }
  // By the rule of the knee's vessels. Only equal pulses and a pressure ratio of 0.90 or more leave time; what was not looked at leaves none.
  const KneeVessels vessels = raised.clue.is_yes() ? hear_knee_vessels(answers.view(), side) : KneeVessels{};
  // Loose since weeks, and both pulses full: there was time, and the artery is looked at the same day (our own rule; the page's two weeks).
  const bool loose_alone = lax.is_yes() && !deformed.is_yes() && !went_back.is_yes() && !bent_back.is_yes();
  const auto full = [&](const ItemKey& item) { return answers.graded(item, side, {"2", "3"}).is_yes(); };
  const bool weeks_back = injured_weeks_ago(answers) || hurt_anew(answers);
  const bool of_weeks = loose_alone && weeks_back && vessels.hard != Tri::yes && vessels.pressure_low != Tri::yes && (vessels.pulse & 1) != 0 && full(dorsal_pulse) && full(tibial_pulse);
  const bool watched = vessels.pulse == 1 && vessels.hard != Tri::yes && vessels.pressure_low == Tri::no && vessels_well_examined(answers.view(), side);
  raised.urgency = watched || of_weeks ? AlertClass::same_day : AlertClass::now;
  raised.interrupts = raised.urgency == AlertClass::now;
  raised.what = deformed.is_yes() ? "deformed" : (lax.is_yes() ? "loose" : "raised");
  if (watched) {
    raised.what = "watched";
  } else if (vessels.pulse == 1 && vessels.pressure_low == Tri::yes) {
    raised.what = "pressure_low";
  }
  if (of_weeks && !watched) {
    raised.what = "loose_weeks";
    name_vessels(answers.view(), side, raised);
    raised.clue.because.add(injured_weeks_ago(answers) ? FindingTrail{} : over_two_weeks(answers).because);
  }
  if (raised.clue.is_yes() && (watched || raised.what == "pressure_low")) {
    name_vessels(answers.view(), side, raised);
  }
  name_lost_pulse(raised, pulse_absent(answers, dorsal_pulse, side), pulse_absent(answers, tibial_pulse, side));
  return raised;
}

namespace {

// Of a complaint that is of the plaster the weeks are those of the plaster; an older trouble's are not.
[[nodiscard]] bool worn_for_weeks(const Answers& answers) {
  return injured_weeks_ago(answers) ||
         (answers.view().exam().complaint.text == "after_plaster" && over_two_weeks(answers).is_yes() && !of_short_history(answers).is_yes());
}

// What lies round the muscles counts (C3 names the cast). One that has been on for weeks lies round a leg that grew stiff: it is no danger by
// itself, and no no either; what would make it one is asked (our own rule), and pain beyond the hurt is heard as where nobody was asked.
// A blood thinner or a bleeding disorder counts by the letter of the page, though every pulled calf hurts on stretch.
[[nodiscard]] Clue in_danger_by(const Answers& answers, Side side, const Clue& severe, const Clue& causes) {
  const Clue plaster = answers.chosen("body.cast", side, {"cast_thigh", "cast_knee", "cast_shin"});
  const bool stiff = plaster.is_yes() && worn_for_weeks(answers) && !answers.yes("history.fall_recent").is_yes();
  Clue danger = led_by(severe,
                       {film_shows(answers, side, {"knee_fracture_seen", "shaft_fracture_seen"}).clue, answers.yes("history.blood_thinners"), causes,
                        stiff ? Clue{} : plaster, answers.yes("history.bleeding_disorder"), answers.yes("leg.tense_compartment", side),
                        answers.any_yes({"leg.compartment_front_tense", "leg.compartment_outer_tense", "leg.compartment_back_tense"}, side)});
  if (stiff && !danger.is_yes()) {
    danger = left_open(danger, plaster);
    danger.ask.add(causes.ask);
  }
  return danger;
}

[[nodiscard]] Clue causes_named(const Answers& answers, Side side) {
  return answers.chosen("history.compartment_causes", side, {"cause_shin_broken", "cause_crush", "cause_long_lying", "cause_tight_cast",
                                                             "cause_flow_back", "cause_operation", "cause_bleed"});
}

}  // namespace

Clue compartment_in_danger(const Answers& answers, Side side) {
  return in_danger_by(answers, side, answers.yes("history.injury_severe_or_crush"), causes_named(answers, side));
}

bool danger_stays_open(const Answers& answers, Side side, std::string_view denied) {
  const bool severe = denied == "history.injury_severe_or_crush";
  const Clue danger = severe ? in_danger_by(answers, side, fact(Tri::no), causes_named(answers, side))
                             : in_danger_by(answers, side, answers.yes("history.injury_severe_or_crush"), fact(Tri::no));
  return danger.value == Tri::undetermined;
}

namespace {

// A stretch that was not let for pain is one that hurts.
[[nodiscard]] Clue stretch_not_let(const Answers& answers, Side side) {
  const View& view = answers.view();
  Clue out;
  for (const ItemKey item : std::initializer_list<ItemKey>{"knee.stretch_pain_calf", "leg.stretch_pain_back", "leg.stretch_pain_front", "leg.stretch_pain_outer", "leg.stretch_pain_deep"}) {
    const model::Item* known = view.edition().item_of(item);
    if (known != nullptr && !view.of(*known).empty()) {
      out = led_by(out, {answers.stopped(item, side, {model::WhyNot::pain})});
    }
  }
  return out;
}

// Answered, and to be asked once more.
[[nodiscard]] AskTrail again(const Answers& answers, const ItemKey& item, Side side) {
  const View& view = answers.view();
  const model::Item* known = view.edition().item_of(item);
  return known != nullptr ? AskTrail(view.trails().asks, {known, side}) : AskTrail{};
}

[[nodiscard]] Clue felt_tense(const Answers& answers, Side side) {
  return led_by(answers.yes("leg.tense_compartment", side),
                {answers.any_yes({"leg.compartment_front_tense", "leg.compartment_outer_tense", "leg.compartment_back_tense"}, side)});
}

// Of who cannot tell of pain its absence is no answer, and a hand tells what can be told: muscles felt tense after an injury, under a
// plaster or by what else does it are raised (convention, beyond the page, whose example has them soft and leaves it open).
void judge_without_pain(const Answers& answers, Side side, const Clue& hidden, const Clue& pains, Raised& raised) {
  const Clue tense = felt_tense(answers, side);
  // A spastic leg is tense by itself: there a cause must be named, a complaint or a fall is not enough. The other leg lowers nothing.
  const bool firm_anyway = answers.yes("body.spastic_tone", side).is_yes();
  const Clue cause = led_by(answers.yes("history.injury_severe_or_crush"),
                            {film_shows(answers, side, {"knee_fracture_seen", "shaft_fracture_seen", "ankle_fracture_seen", "foot_fracture_seen"}).clue,
                             answers.chosen("history.compartment_causes", side, {"cause_shin_broken", "cause_crush", "cause_long_lying", "cause_tight_cast",
                                                                                 "cause_flow_back", "cause_operation", "cause_bleed", "cause_snake"}),
                             answers.chosen("skin.deep_wound", side, {"wound_sting_or_snake"}),
                             answers.chosen("body.cast", side, {"cast_thigh", "cast_knee", "cast_shin", "cast_ankle", "cast_foot"}),
                             firm_anyway ? Clue{} : led_by(circumstance(hurt_lately(answers)),
                                                           {answers.yes("history.blood_thinners"), answers.yes("history.bleeding_disorder")})});
  // Felt tense, and nobody said by what: that is asked before anything else.
  raised.clue = every({tense, tense.is_yes() ? cause : unasked(cause)});
  if (raised.clue.is_yes()) {
    raised.clue.because.add(hidden.because);
    raised.what = "untold";
    return;
  }
  raised.ask_first = tense.is_yes() && cause.value == Tri::undetermined;
  raised.clue.value = Tri::undetermined;
  raised.clue.open.add(hidden.because);
  raised.clue.open.add(pains.against);
  raised.clue.open.add(pains.open);
  raised.clue.open.add(raised.clue.against);
  raised.clue.against.clear();
}

// A plaster that is not there for weeks, on a leg that is not paralysed.
[[nodiscard]] Clue fresh_plaster(const Answers& answers, Side side) {
  const Clue plaster = answers.chosen("body.cast", side, {"cast_hip", "cast_thigh", "cast_knee", "cast_shin", "cast_ankle", "cast_foot"});
  return !plaster.is_yes() || worn_for_weeks(answers) || answers.yes("body.paralysis", side).is_yes() ? Clue{} : plaster;
}

// The great toe is looked at where a plaster holds the foot (page, section 0: "toe up").
[[nodiscard]] Clue toes_or_foot_still(const Answers& answers, Side side) {
  const Clue still = answers.no("ankle.movement", side);
  if (answers.yes("body.spastic_tone", side).is_yes() || answers.no("history.foot_drop_new", side).is_yes()) {
    return still;
  }
  const auto weak = [&](const ItemKey& item) { return answers.graded(item, side, {"0", "1", "2", "3"}); };
  return led_by(still, {weak("nerve.power_great_toe_extension"), weak("nerve.power_toes_extension"), weak("nerve.power_toes_flexion"), answers.no("foot.toes_extension_active", side),
                        answers.no("foot.toes_flexion_active", side), answers.stopped("foot.toes_extension_active", side, {model::WhyNot::unable})});
}

// Severe pain under it, and a foot of an ill colour, slow to fill, newly numb or not moved, or a child that will not move: one sign and one symptom are
// enough, and nobody need have called the pain beyond the hurt (page, sections 4 and 5: "tight cast", "one perfusion sign + one symptom"; clinical
// safety, C13; what counts as severe, and the child, are our own rule).
[[nodiscard]] Clue hurts_under_plaster(const Answers& answers, Side side, const Clue& plaster) {
  const Clue sore = plaster.is_yes() ? severe_pain_told(answers) : Clue{};
  if (!sore.is_yes()) {
    return {};
  }
  const Clue child_still = answers.child() == Tri::yes ? answers.chosen("general.child_at_play", Side::midline, {"play_will_not_move"}) : Clue{};
  const Clue sign = led_by(Clue{}, {answers.chosen("vessel.foot_colour", side, {"colour_pale", "colour_mottled", "colour_blue", "colour_dusky"}),
                                    answers.yes("vessel.capillary_refill_slow", side), toes_or_foot_still(answers, side), newly_numb(answers, side), child_still});
  return every({plaster, sore, sign});
}

// The foot fails under it: numb and not moved, or, of who cannot tell of pain, of an ill colour and cold or slow to fill. It is opened to the skin whatever
// was said of pain (page, sections 4 and 5: nobody waits for numbness or a lost pulse; what counts here is our own rule).
[[nodiscard]] Clue fails_under_plaster(const Answers& answers, Side side, const Clue& plaster) {
  if (!plaster.is_yes()) {
    return {};
  }
  const Clue still = every({newly_numb(answers, side), toes_or_foot_still(answers, side)});
  const Clue hidden = cannot_tell_of_pain(answers, side);
  const Clue white = every({hidden, answers.chosen("vessel.foot_colour", side, {"colour_pale", "colour_mottled", "colour_blue", "colour_dusky"}),
                            led_by(answers.yes("vessel.capillary_refill_slow", side), {answers.yes("vessel.foot_cold", side)})});
  return every({plaster, led_by(still, {white})});
}

// Pain beyond what the hurt explains, or pain on stretch, in a limb at risk; both together without. The pulse never lowers it.
// Stretch pain alone in a limb not at risk is not raised; where nobody asked, that question comes first (C3).
[[nodiscard]] Raised compartment_by_pain(const Answers& answers, Side side) {
  const Clue beyond = answers.yes("history.pain_out_of_proportion", side);
  const Clue calf = answers.yes("knee.stretch_pain_calf", side);
  const Clue back = answers.yes("leg.stretch_pain_back", side);
  const Clue behind = led_by(calf.value == Tri::undetermined && back.value != Tri::undetermined ? back : calf, {calf, back});
  const Clue let_none = stretch_not_let(answers, side);
  const Clue stretch = led_by(behind, {let_none, answers.any_yes({"leg.stretch_pain_front", "leg.stretch_pain_outer", "leg.stretch_pain_deep"}, side)});
  // Where either pain would raise it, a group of muscles that nobody stretched is open: one stretch of four is no answer.
  const Clue stretched = let_none.is_yes() ? stretch : either({behind, answers.yes("leg.stretch_pain_front", side), answers.yes("leg.stretch_pain_outer", side), answers.yes("leg.stretch_pain_deep", side)});
  const Clue risk = compartment_in_danger(answers, side);
  const Clue hidden = led_by(cannot_tell_of_pain(answers, side),
                             {answers.stopped("history.pain_out_of_proportion", side, {model::WhyNot::cannot_answer, model::WhyNot::not_reliable})});
  Raised raised;
  raised.urgency = AlertClass::now;
  raised.interrupts = true;
  if (hidden.is_yes() && !beyond.is_yes() && !stretch.is_yes()) {
    judge_without_pain(answers, side, hidden, either({beyond, stretched}), raised);
    return raised;
  }
  const Clue both = every({beyond, beyond.is_yes() ? stretched : stretch});
  if (both.is_yes()) {
    raised.clue = both;
  } else if (risk.is_yes()) {
    raised.clue = either({beyond, stretched});
    raised.clue.because.add(risk.because);
  } else if (beyond.is_yes()) {
    raised.clue = risk.is_no() ? both : beyond;
  } else if (stretch.is_yes()) {
    raised.clue = risk.is_no() ? both : every({stretch, risk});
    raised.ask_first = raised.clue.value == Tri::undetermined;
  } else {
    raised.clue = either({beyond, every({stretch, circumstance(risk)})});
  }
  // Felt tense, and both pains answered no: it is felt again every hour, as a block, a drug or a nerve may hide the pain (BOAST_ACS).
  if (const Clue tense = raised.clue.is_no() ? felt_tense(answers, side) : Clue{}; tense.is_yes()) {
    raised.clue = left_open(raised.clue, tense);
    raised.clue.because.add(tense.because);
    raised.clue.ask.add(again(answers, "history.pain_out_of_proportion", side));
  }
  return raised;
}

}  // namespace

Raised compartment(const Answers& answers, Side side) {
  Raised raised = compartment_by_pain(answers, side);
  if (raised.clue.is_yes()) {
    return raised;
  }
  const Clue plaster = fresh_plaster(answers, side);
  const Clue fails = fails_under_plaster(answers, side, plaster);
  const Clue hurts = fails.is_yes() ? Clue{} : hurts_under_plaster(answers, side, plaster);
  if (fails.is_yes() || hurts.is_yes()) {
    raised.clue = fails.is_yes() ? fails : hurts;
    raised.ask_first = false;
    raised.what = fails.is_yes() ? "plaster" : "plaster_pain";
  }
  return raised;
}

}  // namespace limbledger::interpret
