// Infection of joint and bone, blood in a joint, a joint swollen for weeks. No fever says nothing; a cause that was found closes no question.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

#include <array>
#include <initializer_list>
#include <utility>

namespace limbledger::interpret {

using model::Side;
using model::WhyNot;

namespace {

[[nodiscard]] Clue ill(const Answers& answers) {
  const Clue told = every({answers.yes("history.unwell"), either({fever(answers), pulse_raised(answers), answers.colder_than(temperature_low_tenths)})});
  // Signs that were counted need nobody's word; two that are raised beside a joint are an adult's rule (WSES2018), a child's hot joint has both.
  return led_by(told, {answers.child() == Tri::no ? whole_body_answers(answers) : body_fails(answers)});
}

void make_now_if_ill(const Answers& answers, Raised& raised) {
  const Clue general = raised.clue.is_yes() ? ill(answers) : Clue{};
  if (general.is_yes()) {
    raised.clue.because.add(general.because);
    raised.urgency = AlertClass::now;
    raised.interrupts = true;
    raised.what = "ill";
  }
}

// Something that points beyond the injury that explains a swollen joint.
[[nodiscard]] Clue beyond_the_injury(const Answers& answers, const Clue& lowered) {
  return hurt_lately(answers).is_yes() ? either({unless_drug_hides(answers, fever(answers)), answers.yes("history.unwell"), lowered}) : fact(Tri::yes);
}

// Restricted, of a joint that is hot or full (BSR2006 gives no number): by what it bends, by the pain of moving it, and where it is hot by
// what it lacks against the other. One that nobody hurt and that lacks something is no no: its heat is asked after.
[[nodiscard]] Clue infected_knee_stiff(const Answers& answers, Side side) {
  const Clue bends = restricted(answers, side);
  const Clue heat = hot(answers, side);
  if (bends.is_yes() || !(heat.is_yes() || swollen(answers, side).is_yes())) {
    return bends;
  }
  const Clue hurts = hurts_badly_on(answers, side, {"knee.flexion_active", "knee.flexion_passive", "knee.extension_active", "knee.extension_passive"});
  const Clue lacks = led_by(flexion_lacking(answers, side), {extension_lacking(answers, side)});
  Clue stiff = led_by(bends, {hurts, every({lacks, heat})});
  if (stiff.is_no() && lacks.is_yes() && !hurt_lately(answers).is_yes()) {
    stiff = left_open(stiff, lacks);
    stiff.ask = heat.ask;
  }
  return stiff;
}

// What runs from a joint, or an infected wound where one was operated on lately.
[[nodiscard]] Clue discharge(const Answers& answers, Side side) {
  const Clue signs = answers.several("skin.infection_signs", side, {"sign_redness", "sign_swelling", "sign_pain", "sign_warmth", "sign_pus"}, 2);
  return led_by(answers.any_yes({"skin.sinus_draining"}, side),
                {unasked(every({answers.yes("history.joint_injection_or_operation_recent"), led_by(signs, {answers.several("skin.infection_signs", side, {"sign_pus"}, 1)})}))});
}

// The pain is of this joint: complained of here, or placed here.
[[nodiscard]] Clue pain_is_there(const Answers& answers, Side side, std::string_view part, std::initializer_list<std::string_view> sites) {
  return led_by(fact(part_complained_of(answers) == part ? Tri::yes : Tri::undetermined), {answers.chosen("history.pain_site", side, sites)});
}

// Nobody sees a hip swell: that the smallest movement hurts badly, or that it is held bent and turned out, stands for heat and swelling. A joint that
// is not complained of is raised by what was found of it: without that no more of it is looked at, here and below.
[[nodiscard]] Clue infected_hip(const Answers& answers, Side side, const Clue& lowered, bool complained_of) {
  const Clue roll = answers.positive("hip.log_roll", side);
  // Told so, or seen in how it is let be rolled and turned.
  const auto not_let = [&](const ItemKey& item) { return answers.stopped(item, side, {WhyNot::pain}); };
  const Clue moved = roll.is_no() ? Clue{}
                                  : led_by(hurts_badly_on(answers, side, {"hip.log_roll"}),
                                           {not_let("hip.internal_rotation_passive_seated"), not_let("hip.internal_rotation_passive_supine"), not_let("hip.external_rotation_passive_seated"),
                                            not_let("hip.external_rotation_passive_supine"), not_let("hip.flexion_passive")});
  const Clue severe = led_by(answers.yes("hip.pain_passive_severe", side), {moved});
  const Clue hot_skin = answers.chosen("hip.look_skin", side, {"hip_hot_red"});
  // With a fever a roll that hurts, or a hip held bent, is enough (our own rule).
  const Clue signs = led_by(Clue{}, {roll, answers.chosen("hip.leg_attitude", side, {"attitude_held_bent"})});
  const Clue sore = led_by(severe.value == Tri::undetermined && roll.is_no() ? roll : severe,
                           {answers.chosen("hip.leg_attitude", side, {"attitude_bent_turned_out"}), hot_skin, signs.is_yes() ? every({signs, fever(answers)}) : Clue{}});
  const Clue replaced = answers.yes("body.hip_replaced", side);
  if (!complained_of && !sore.is_yes() && !replaced.is_yes()) {
    return {};
  }
  // No fever is asked of an adult's joint (BSR2006): what hurts at the smallest movement and lets itself be turned no more is enough.
  const Clue stiff = severe.is_yes() ? led_by(roll, {hip_rotation_lost(answers, side)}) : (severe.is_no() ? fact(Tri::no) : Clue{});
  const Clue general = either({unless_drug_hides(answers, fever(answers)), answers.yes("history.unwell"), unasked(lowered), unasked(cannot_walk(answers)), unasked(hot_skin), stiff});
  // Nobody sees it hot: that it lets nobody move it stands for heat and lost motion, with a high fever today, whatever the weeks.
  const Clue high_fever = answers.warm_at_least(fever_child_tenths);
  const Clue lately = sore.is_yes() && high_fever.is_yes() ? led_by(high_fever, {of_short_history(answers)}) : of_short_history(answers);
  const Clue of_own = every({sore, bare_no(general), lately, beyond_the_injury(answers, lowered)});
  if (!replaced.is_yes()) {
    return of_own;
  }
  // A replaced joint of which a pain is new: heat or discharge alone, else a fever with it (BSR2006).
  const Clue there = led_by(pain_is_there(answers, side, "hip", {"site_groin", "site_outer_hip", "site_buttock", "site_thigh_front"}), {sore});
  const Clue fevered = every({there, led_by(of_short_history(answers), {sore}), unless_drug_hides(answers, fever(answers))});
  const Clue wound = led_by(fact(answers.view().exam().complaint.text == "after_operation" ? Tri::yes : Tri::undetermined), {answers.chosen("hip.look_skin", side, {"hip_wound"})});
  const Clue runs = led_by(every({wound, discharge(answers, side)}), {answers.any_yes({"skin.sinus_draining"}, side), answers.chosen("hip.look_skin", side, {"hip_sinus"})});
  const Clue of_metal = every({replaced, led_by(fevered, {hot_skin, runs})});
  return either({of_own, of_metal});
}

[[nodiscard]] Clue infected_ankle(const Answers& answers, Side side, const Clue& lowered, bool complained_of) {
  const Clue heat = answers.yes("ankle.hot_red", side);
  const Clue full = led_by(heat, {answers.any_yes({"ankle.swelling_lateral"}, side).is_yes() ? answers.any_yes({"ankle.swelling_medial"}, side) : Clue{}});
  const Clue replaced = unasked(answers.yes("body.ankle_replaced", side));
  if (!complained_of && !full.is_yes() && !replaced.is_yes()) {
    return {};
  }
  const Clue sore = led_by(answers.yes("ankle.anterior_gutter_tender", side),
                           {answers.any_yes({"ankle.lateral_malleolus_tender", "ankle.medial_malleolus_tender", "ankle.deltoid_tender"}, side)});
  const Clue hurts = hurts_badly_on(answers, side, {"ankle.dorsiflexion_passive_knee_bent", "ankle.dorsiflexion_passive_knee_straight", "ankle.dorsiflexion_active_knee_bent",
                                                    "ankle.plantarflexion_passive_knee_bent"});
  // Hot with a fever it waits for nobody to press on it, as the knee does (convention, beyond the page).
  const Clue pressed = heat.is_yes() && fever(answers).is_yes() ? led_by(fact(Tri::yes), {sore}) : sore;
  const Clue of_own = every({full, pressed, led_by(ankle_restricted(answers, side), {hurts, answers.no("ankle.movement", side)}), of_short_history(answers), beyond_the_injury(answers, lowered)});
  if (!replaced.is_yes()) {
    return of_own;
  }
  const Clue there = pain_is_there(answers, side, "ankle", {"site_ankle_inner", "site_ankle_outer", "site_ankle_front"});
  const Clue swells = answers.any_yes({"ankle.swelling_lateral", "ankle.swelling_medial"}, side);
  const Clue newly = every({of_short_history(answers), led_by(swells, {every({there, fever(answers)})})});
  return led_by(of_own, {every({replaced, led_by(heat, {newly, discharge(answers, side)})})});
}

// A hot great toe is gout far more often: it counts with a fever, illness, weak defence or broken skin.
[[nodiscard]] Clue infected_toe(const Answers& answers, Side side, const Clue& lowered, bool complained_of) {
  const Clue heat = answers.yes("foot.mtp_first_hot_red", side);
  if (!complained_of && !heat.is_yes()) {
    return {};
  }
  const Clue more = either({fever(answers), answers.yes("history.unwell"), lowered, unasked(answers.no("skin.intact", side))});
  return every({heat, answers.yes("foot.mtp_first_tender", side), bare_no(more), of_short_history(answers)});
}

// White cells and protein of an infection, by the figures of KOCHER1999 and its later form; heard where they are there, and no no.
[[nodiscard]] Clue blood_of_infection(const Answers& answers) {
  const Clue cells = answers.count_at_least("general.lab_white_cells", white_cells_over + 1);
  return led_by(Clue{}, {cells, answers.count_at_least("general.lab_crp", crp_over + 1)});
}

// The first is asked after; another joint that says yes is raised, and one that is hot or held leaves a no open.
[[nodiscard]] Clue of_this_or_another(const Clue& asked, std::initializer_list<std::pair<Clue, bool>> others) {
  Clue out = asked;
  for (const auto& other : others) {
    if (other.first.is_yes()) {
      out = led_by(out, {other.first});
    } else if (other.second && !out.is_yes() && other.first.value == Tri::undetermined) {
      out = either({out, other.first});
    }
  }
  return out;
}

}  // namespace

Raised infected_joint_adult(const Answers& answers, Side side) {
  Raised raised;
  raised.applies = not_(answers.child());
  if (raised.applies == Tri::no) {
    return raised;
  }
  const Clue hurt = injured(answers);
  const Clue lowered = either({answers.yes("history.immune_suppressed"), answers.yes("history.joint_injection_or_operation_recent")});
  // After an injury the joint is swollen anyway: something more must point to infection.
  const Clue beyond_injury = hurt.is_yes() ? either({fever(answers), answers.yes("history.unwell"), lowered}) : fact(Tri::yes);
  // Hot, hardly moving and with a fever: how long the complaint has lasted is not how long the joint has been so ("2_weeks unless fever or
  // new change": the page's example). So it is, full as well, after a needle or an operation or where the defence is weak (our own rule).
  const Clue stiff = infected_knee_stiff(answers, side);
  const Clue defence = swollen(answers, side).is_yes() ? lowered : Clue{};
  const Clue change = led_by(fever(answers), {defence});
  const bool today = change.is_yes() && hot(answers, side).is_yes() && stiff.is_yes();
  // Hot and swollen with a fever waits for nobody to press on it (convention, beyond the page).
  const bool burning = hot(answers, side).is_yes() && swollen(answers, side).is_yes() && fever(answers).is_yes();
  const Clue of_own = every({either({hot(answers, side), swollen(answers, side)}), burning ? led_by(fact(Tri::yes), {tender(answers, side)}) : tender(answers, side), stiff,
                             today ? led_by(change, {of_short_history(answers)}) : of_short_history(answers), beyond_injury});
  const Clue heat = either({hot(answers, side), every({either({swollen(answers, side), fever(answers)}), of_short_history(answers)})});
  const Clue replaced = answers.yes("body.knee_replaced", side);
  const Clue of_metal = every({replaced, led_by(heat, {replaced.is_yes() ? discharge(answers, side) : Clue{}})});  // a wound that runs, or is infected, counts as heat does
  Clue knee = either({of_own, replaced.is_yes() ? of_metal : circumstance(of_metal)});
  if (knee.value == Tri::undetermined && !hot(answers, side).is_yes() && !swollen(answers, side).is_yes() && !replaced.is_yes()) {
    knee.because.clear();  // a tender or stiff joint that is neither hot nor swollen points to much else
  }
  const std::string_view part = part_complained_of(answers);
  const Clue hip = infected_hip(answers, side, lowered, part == "hip");
  const Clue ankle = infected_ankle(answers, side, lowered, part == "ankle");
  const Clue toe = infected_toe(answers, side, lowered, part == "foot");
  const auto points = [&](const ItemKey& item) { return answers.yes(item, side).is_yes(); };
  const bool hip_points = points("hip.pain_passive_severe");
  const bool ankle_points = points("ankle.hot_red");
  Clue lead = part == "hip" ? hip : (part == "ankle" ? ankle : (part == "foot" ? toe : knee));
  if (lead.value == Tri::undetermined && ((part == "hip" && !hip_points) || (part == "ankle" && !ankle_points) || (part == "foot" && !points("foot.mtp_first_hot_red")))) {
    lead.because.clear();
  }
  raised.clue = of_this_or_another(lead, {{knee, knee.warm()}, {hip, hip_points}, {ankle, ankle_points}, {toe, false}});
  // A hot joint beside signs of shock or sepsis waits for no hand, no week and no injury (our own rule).
  const Clue fails = raised.clue.is_yes() ? Clue{} : hot_body_answers(answers);
  const Clue hot_hip = fails.is_yes() ? every({led_by(answers.chosen("hip.look_skin", side, {"hip_hot_red"}), {answers.yes("hip.pain_passive_severe", side)}), fails}) : Clue{};
  const Clue hot_ankle = fails.is_yes() ? every({answers.yes("ankle.hot_red", side), fails}) : Clue{};
  // Gout has a fever and a fast pulse of its own: beside a great toe only a body that fails.
  const Clue hot_toe = fails.is_yes() ? every({answers.yes("foot.mtp_first_hot_red", side), body_fails_by_illness(answers)}) : Clue{};
  const Clue hot_knee = fails.is_yes() ? every({hot(answers, side), fails}) : Clue{};
  raised.clue = led_by(raised.clue, {hot_knee, hot_hip, hot_ankle, hot_toe});
  if (raised.clue.is_no() && raised.clue.against.empty()) {
    // Time alone speaks against it; what was asked of it is named, though a fever that is not there settles nothing.
    const Clue skin = part == "hip" ? answers.chosen("hip.look_skin", side, {"hip_hot_red"}) : (part == "ankle" ? answers.yes("ankle.hot_red", side) : hot(answers, side));
    Clue found;
    for (const Clue& one : {skin, answers.yes("history.fever"), answers.warm_at_least(fever_tenths), answers.yes("history.unwell")}) {
      found.because.add(one.is_yes() ? one.because : FindingTrail{});
      raised.clue.against.add(one.against);
    }
    if (!found.because.empty() || !raised.clue.against.empty()) {
      raised.clue = left_open(raised.clue, found);
    }
  }
  raised.what = replaced.is_yes() ? "replaced" : "raised";
  if (raised.clue.is_yes() && !knee.is_yes() && !hot_knee.is_yes()) {
    const bool of_metal_hip = hip.is_yes() && points("body.hip_replaced");
    const bool of_metal_ankle = ankle.is_yes() && points("body.ankle_replaced");
    const bool at_hip = hip.is_yes() || hot_hip.is_yes();
    const bool at_ankle = ankle.is_yes() || hot_ankle.is_yes();
    raised.what = at_hip ? (of_metal_hip ? "hip_replaced" : "hip") : (at_ankle ? (of_metal_ankle ? "ankle_replaced" : "ankle") : "toe");
  }
  if (raised.clue.is_yes()) {
    for (const Clue& metal : {replaced, answers.yes("body.hip_replaced", side), answers.yes("body.ankle_replaced", side)}) {
      raised.clue.because.add(raised.what.ends_with("replaced") && metal.is_yes() ? metal.because : FindingTrail{});
    }
  }
  const std::string_view joint = raised.what;
  make_now_if_ill(answers, raised);
  if (raised.what == "ill" && raised.clue.is_yes() && !knee.is_yes() && !hot_knee.is_yes()) {
    raised.what = joint.starts_with("hip") ? "hip_ill" : (joint.starts_with("ankle") ? "ankle_ill" : "toe_ill");
  }
  return raised;
}

Raised infected_joint_child(const Answers& answers, Side side) {
  Raised raised;
  raised.applies = answers.child();
  if (raised.applies == Tri::no) {
    return raised;
  }
  const Clue stopped = led_by(answers.stopped("knee.flexion_passive", side, {WhyNot::pain}), {answers.positive("hip.log_roll", side)});
  // A child that does not limp may still not bear the knee to be moved: that is not answered until somebody moved it.
  // Under one year nobody limps, nor does who took no steps before: the leg that is not moved is asked for, unless it is paralysed.
  const bool infant = answers.aged(0, 0) == Tri::yes;
  // Under three months, or perhaps so, a joint that hurts is enough, and 38.0 is a fever.
  const bool newborn = perhaps_newborn(answers);
  const Clue still = leg_not_moved(answers, side);
  const Clue sore = severe_pain_on_passive(answers, side);
  const bool paralysed = answers.yes("body.paralysis", side).is_yes();
  const Clue irritable = infant || newborn || took_no_steps_before(answers).is_yes() ? led_by(paralysed ? Clue{} : still, {limps(answers), stopped, cannot_walk(answers), sore})
                                : either({limps(answers), led_by(stopped, {cannot_walk(answers), sore, still})});
  const Clue feverish = unless_drug_hides(answers, fever_of_child(answers));
  // Beside a joint that is hot any sign counts; beside a limp none that fear or sleep makes of a well child.
  const Clue fails = body_fails(answers);
  const Clue fails_by_illness = body_fails_by_illness(answers);
  const Clue cold = answers.aged(0, cold_child_under_years - 1) == Tri::yes ? answers.colder_than(temperature_low_tenths) : Clue{};
  const Clue general = led_by(either({feverish, answers.yes("history.unwell")}), {fails_by_illness, cold, newborn ? fever(answers) : Clue{}, newborn ? fact(Tri::yes) : Clue{}});
  const bool hurt = injured(answers).is_yes();
  // The page has no gate for an injury: a child that is brought for a limp, and fell, is judged as any other. Brought for the injury itself,
  // one of the two signs is what a hurt leg does; with both, or warm from 38.0 or with the blood of an infection, it is raised (our own rule).
  const Clue signs = either({cannot_stand(answers), unasked(severe_pain_on_passive(answers, side))});
  const bool for_the_injury = hurt && complains_of_something_recent(answers.view());
  const Clue beside_injury = unasked(every({signs, either({every({cannot_stand(answers), severe_pain_on_passive(answers, side)}), fever(answers), blood_of_infection(answers)})}));
  const Clue severe = for_the_injury ? led_by(general, {beside_injury}) : either({general, signs});
  // Who took no steps before is not asked for them either: the leg that is not moved stands for one that does not carry, unless it is paralysed.
  const bool before_walking = infant || (took_no_steps_before(answers).is_yes() && !paralysed);
  const bool still_infant = before_walking && still.is_yes();
  // A joint hot and red, or a knee with fluid, in a child with a fever waits for no limp, and in the first months for no fever (convention).
  const Clue heat = led_by(hot(answers, side), {answers.yes("ankle.hot_red", side), answers.chosen("hip.look_skin", side, {"hip_hot_red"}),
                                                answers.yes("foot.mtp_first_hot_red", side)});
  const Clue local = either({heat, swollen(answers, side)});
  const Clue burning = led_by(every({local, feverish}), {fails.is_yes() ? every({heat, fails}) : Clue{}, newborn ? local : Clue{}});
  const Clue moved = every({irritable, severe});
  const Clue joined = local.is_yes() || feverish.is_yes() ? either({burning, moved}) : moved;
  raised.clue = still_infant ? led_by(joined, {still}) : joined;
  if (raised.clue.is_yes() && raised.applies == Tri::undetermined && of_walking_alone(answers, raised.clue)) {
    raised.clue.value = Tri::undetermined;
    raised.clue.ask = general.ask;
    raised.asks = "age";
  }
  if (raised.clue.is_no() && (heat.is_yes() || (local.is_yes() && !hurt))) {
    // Found today, and no answer about limp or fever makes it none; an injury explains fluid alone.
    raised.clue = Clue{};
    raised.clue.open = local.because;
    raised.clue.ask = answers.yes("history.unwell").ask;
    raised.clue.ask.add(answers.positive("hip.log_roll", side).ask);
  }
  if (raised.clue.is_no() && newborn && fever(answers).is_yes()) {
    raised.clue = left_open(raised.clue, fever(answers));  // what hides behind it in the first months is not looked for by a joint alone
  }
  if (raised.clue.is_no() && for_the_injury && signs.is_yes()) {
    raised.clue = left_open(raised.clue, signs);  // an injury explains it, and answers nothing
  }
  make_now_if_ill(answers, raised);
  // The other leg that is not stood on says nothing of this one, whichever the child is brought for.
  const auto of_other = [&](const model::Finding* one) { return one->side == other_side(side); };
  if (raised.clue.is_yes() && side != Side::midline && raised.clue.because.any(of_other) && !raised.clue.because.any([&](const model::Finding* one) { return !of_other(one); })) {
    raised.clue = Clue{};
    raised.clue.ask = answers.yes("history.refuses_weight", side).ask;
  }
  if (raised.clue.is_yes() && still.is_yes() && raised.what != "ill") {
    raised.what = feverish.is_yes() ? "not_moved_fever" : "not_moved";
    raised.clue.because.add(still.because);
    raised.clue.because.add(feverish.is_yes() ? feverish.because : FindingTrail{});
  } else if (burning.is_yes() && raised.what == "raised") {
    raised.what = "burning";
  } else if (raised.clue.is_yes() && raised.what == "raised" && !infant) {
    // A plaster explains neither that a child refuses to stand or to be moved nor what hurts outside of it, and nobody sees what it hides: it is
    // opened, and the joints above and below are looked at (page, sections 0 and 8; that the plaster is opened for it is our own rule).
    const auto& complaint = answers.view().exam().side;
    const bool of_this_leg = !complaint || *complaint == Side::midline || *complaint == side || raised.clue.because.any([&](const model::Finding* one) { return one->side == side; });
    const Clue plaster = of_this_leg ? answers.chosen("body.cast", side, {"cast_hip", "cast_thigh", "cast_knee", "cast_shin", "cast_ankle", "cast_foot"}) : Clue{};
    raised.what = plaster.is_yes() ? "plaster" : raised.what;
    raised.clue.because.add(plaster.is_yes() ? plaster.because : FindingTrail{});
  }
  const bool same_day = still_infant && !newborn && !joined.is_yes();
  if (raised.clue.is_yes() && ((infant && !same_day) || (still.is_yes() && feverish.is_yes()))) {
    raised.urgency = AlertClass::now;
    raised.interrupts = true;
    raised.what = raised.what == "not_moved" ? "not_moved_now" : (raised.what == "burning" ? "burning_now" : (raised.what == "raised" ? "raised_now" : raised.what));
  }
  return raised;
}

namespace {

// The same without the knee's items, and with bones of this part, where none of them was found tender.
[[nodiscard]] AskTrail asked_of_part(const Answers& answers, Side side, std::string_view part, bool tender_there, const AskTrail& asked) {
  struct Bone {
    std::string_view part;
    ItemKey item;
  };
  static constexpr std::array bones{Bone{"hip", "leg.thigh_shaft_tender"},         Bone{"leg", "leg.tibial_crest_tender"},
                                    Bone{"leg", "leg.fibular_shaft_tender"},       Bone{"ankle", "ankle.lateral_malleolus_tender"},
                                    Bone{"ankle", "ankle.medial_malleolus_tender"}, Bone{"foot", "foot.fifth_metatarsal_base_tender"},
                                    Bone{"foot", "foot.navicular_tender"},         Bone{"foot", "foot.metatarsal_second_tender"}};
  AskTrail out;
  for (const Bone& bone : bones) {
    if (!tender_there && bone.part == part) {
      out.add(answers.yes(bone.item, side).ask);
    }
  }
  out.add(without_the_knee(answers, asked));
  return out;
}

}  // namespace

Raised infected_bone(const Answers& answers, Side side) {
  const Clue bone = bone_tender(answers, side);
  const Clue feverish = unless_drug_hides(answers, fever(answers));
  const Clue lowered = led_by(answers.yes("history.immune_suppressed"), {answers.yes("history.sickle_cell")});
  // Children fall, and a bruise makes no fever: brought for a limp, or of weak defence, no injury is sufficient beside one (our own reading).
  const bool for_a_limp = answers.view().exam().complaint.text == "limping_child" || lowered.is_yes();
  const bool not_sufficient = answers.child() == Tri::yes && feverish.is_yes() && for_a_limp;
  const auto no_injury = [&](const Clue& signs) { return not_sufficient ? fact(Tri::yes) : no_injury_beside(answers, signs); };
  const Clue local = answers.chosen("knee.look_swelling_spread", side, {"local", "whole_limb"});
  // A tender growth plate of the shin counts with fever only: at that age it is common and harmless without.
  const auto in_child = [&] {
    return either({every({bone, either({feverish, cannot_stand(answers), hot(answers, side), local, lowered})}), every({answers.yes("knee.tibial_tubercle_tender", side), feverish})});
  };
  // Of a grown person sickle cells or weak defence count where it hurts badly (page: "OR"; that pain is asked for, as tender bone is common, is our own rule).
  const Clue weak_and_sore = lowered.is_yes() ? every({lowered, severe_pain_told(answers)}) : Clue{};
  const auto in_adult = [&] {
    const Clue by_sickness = every({bone, either({feverish, every({hot(answers, side), lowered})})});
    return led_by(by_sickness, {bone.is_yes() && weak_and_sore.is_yes() ? every({bone, weak_and_sore}) : Clue{}});
  };
  Raised raised;
  const Clue here = answers.child() == Tri::no ? in_adult() : in_child();
  raised.clue = every({no_injury(here), here});
  if (raised.clue.value == Tri::undetermined && !bone.is_yes()) {
    raised.clue.because.clear();
  }
  // Bone of hip, thigh, shin, ankle and foot, which nobody is asked after one by one; warmth over it is that of its own part.
  const Clue shaft = bone_tender_at_shaft(answers, side);
  const Clue below = led_by(bone_tender_at_ankle(answers, side), {bone_tender_at_foot(answers, side)});
  const Clue warmth = led_by(answers.any_yes({"ankle.hot_red"}, side), {answers.any_yes({"foot.hot_red_swollen"}, side)});
  const Clue pelvis = bone_tender_at_pelvis(answers, side), often = bone_often_tender(answers, side);
  const bool bone_elsewhere = shaft.is_yes() || below.is_yes() || pelvis.is_yes() || often.is_yes();
  const bool grown = answers.child() == Tri::no;
  const auto ill_elsewhere = [&] {
    const Clue shaft_ill = every({shaft, grown ? led_by(feverish, {weak_and_sore}) : either({feverish, cannot_stand(answers), lowered})});
    const Clue below_ill = every({below, grown ? led_by(either({feverish, every({warmth, lowered})}), {weak_and_sore}) : either({feverish, cannot_stand(answers), warmth, lowered})});
    const Clue pelvis_ill = pelvis.is_yes() ? every({pelvis, led_by(feverish, {weak_and_sore})}) : Clue{};
    const Clue ill_there = led_by(either({shaft_ill, below_ill}), {pelvis_ill, often.is_yes() ? every({often, feverish}) : Clue{}});
    return every({no_injury(ill_there), ill_there});
  };
  const Clue elsewhere = bone_elsewhere ? ill_elsewhere() : Clue{};
  const Clue knee = raised.clue;
  const Clue sinus = led_by(answers.yes("skin.sinus_draining", side), {answers.chosen("hip.look_skin", side, {"hip_sinus"})});
  // Bone that is seen lies in an open break while the injury is fresh; else in a sore that reaches it.
  const Clue bare = hurt_lately(answers).is_yes() ? Clue{} : answers.any_yes({"skin.bone_visible"}, side);
  const Clue probed = led_by(answers.yes("skin.ulcer_probe_to_bone", side), {bare});
  raised.clue = of_this_or_another(knee, {{elsewhere, bone_elsewhere}, {unasked(sinus), false}, {unasked(probed), false}});
  if (raised.clue.is_no() && !raised.clue.against.empty() && feverish.value == Tri::undetermined) {
    raised.clue = Clue{};  // bone that is not tender alone answers nothing while nobody asked after fever, or a drug hides it
    raised.clue.ask = feverish.ask;
    raised.clue.open = feverish.open;
  }
  // Of another part nobody is asked after the bones of the knee, but after its own; where one is tender, after what would make it ill.
  const std::string_view part = raised.clue.value == Tri::undetermined && raised.clue.warm() ? part_complained_of(answers) : std::string_view();
  if (!part.empty() && part != "knee" && !bone.is_yes() && !hot(answers, side).is_yes() && !local.is_yes()) {
    raised.clue.ask = asked_of_part(answers, side, part, bone_elsewhere, raised.clue.ask);
  }
  raised.what = !raised.clue.is_yes() || knee.is_yes() ? "raised" : (elsewhere.is_yes() ? "leg" : (sinus.is_yes() ? "sinus" : (bare.is_yes() ? "bone_seen" : "probe")));
  // By weak defence and pain alone, without a fever or warmth: said so. Where nobody asked how much it hurts, that is asked and nothing is answered no.
  const bool tender_there = bone.is_yes() || bone_elsewhere;
  if (grown && raised.clue.is_yes() && weak_and_sore.is_yes() && (raised.what == "raised" || raised.what == "leg") && !feverish.is_yes() && !hot(answers, side).is_yes() && !warmth.is_yes()) {
    raised.what = "weak_defence";
  } else if (grown && !raised.clue.is_yes() && lowered.is_yes() && tender_there && severe_pain_told(answers).value == Tri::undetermined && !injured(answers).is_yes()) {
    raised.clue = left_open(raised.clue, lowered);
    raised.clue.ask.add(answers.count_at_least("history.pain_at_rest", severe_pain).ask);
  }
  make_now_if_ill(answers, raised);
  return raised;
}

namespace {

[[nodiscard]] Clue bleeds_into_calf(const Answers& answers, Side side) {
  const Clue stretch = answers.any_yes({"knee.stretch_pain_calf", "leg.stretch_pain_back"}, side);
  const Clue swells = answers.any_yes({"leg.calf_swelling"}, side);
  return led_by(stretch, {swells.is_yes() ? every({circumstance(hurt_lately(answers)), swells}) : Clue{}});
}
}  // namespace

Raised bleeding_joint(const Answers& answers, Side side) {
  const Clue thin = either({answers.yes("history.blood_thinners"), answers.yes("history.bleeding_disorder")});
  Raised raised;
  const Clue onset = answers.chosen("history.swelling_onset", side, {"within_2h", "within_24h"});
  // Full after a hurt of these days, and nobody can say how soon: unknown is not slow (our own rule).
  const Clue full = onset.value == Tri::undetermined && onset.ask.empty() && thin.is_yes() ? answers.graded("knee.effusion_stroke", side, {"3+"}) : Clue{};
  const Clue joint = led_by(every({onset, thin}), {full.is_yes() ? every({circumstance(hurt_lately(answers)), full, thin}) : Clue{}});
  // Into the muscle as well: a calf that hurts on stretch, or swells after a hurt, is no clot alone (our own rule, after section 10's bleeding risk).
  const Clue calf = thin.is_yes() ? bleeds_into_calf(answers, side) : Clue{};
  raised.clue = led_by(joint, {calf.is_yes() ? every({calf, thin}) : Clue{}});
  // "Swelled within a day" is told of what is complained of; of the other leg it is no knee's unless something says so.
  const bool of_knee = part_complained_of(answers) == "knee" && answers.view().exam().side == side;
  const bool another_joint = !of_knee && !answers.graded("knee.effusion_stroke", side, {"1+", "2+", "3+"}).is_yes();
  raised.what = calf.is_yes() && !joint.is_yes() ? "calf" : (another_joint ? "joint" : "raised");
  if (raised.clue.value == Tri::undetermined && thin.is_yes() && !swollen(answers, side).is_yes()) {
    raised.clue.because.clear();
  }
  return raised;
}

// Tuberculosis, inflammatory and juvenile arthritis: a referral, and no steroid into the joint.
Raised joint_over_two_weeks(const Answers& answers, Side side) {
  const Clue sign = either({hot(answers, side), answers.count_at_least("history.morning_stiffness_minutes", stiffness_minutes + 1), fact(answers.child())});
  Raised raised;
  const Clue lasting = every({swollen(answers, side), bare_no(over_two_weeks(answers)), sign});
  raised.clue = every({no_injury_beside(answers, lasting), lasting});
  raised.urgency = AlertClass::two_weeks;
  if (raised.clue.value == Tri::undetermined && !swollen(answers, side).is_yes()) {
    raised.clue.because.clear();
  }
  // A joint that is swollen, or that nobody looked at, is no no by its cool skin or its short stiffness.
  const Clue full = swollen(answers, side);
  if (raised.clue.is_no() && !raised.clue.against.empty() && !full.is_no()) {
    if (injured(answers).is_yes() || over_two_weeks(answers).is_no()) {
      raised.clue.against.clear();  // an injury, or the time, is what speaks against it
    } else {
      raised.clue = left_open(raised.clue, full);
      raised.clue.ask = full.ask;
    }
  }
  const Clue hot_ankle = unasked(answers.yes("ankle.hot_red", side));
  const Clue ankle = every({circumstance(negate(injured(answers))), hot_ankle, bare_no(over_two_weeks(answers)), bare_no(negate(numb_foot(answers, side)))});
  if (!raised.clue.is_yes() && ankle.is_yes()) {
    raised.clue = led_by(raised.clue, {ankle});
    raised.refer = "ankle";
  }
  return raised;
}

// Several joints stiff in the morning for weeks: an illness of joints, not of this one.
Raised joints_stiff(const Answers& answers, Side) {
  const Clue many = answers.yes("history.joints_several");
  Raised raised;
  raised.clue = every({many, answers.count_at_least("history.morning_stiffness_minutes", stiffness_minutes + 1), bare_no(over_two_weeks(answers))});
  raised.urgency = AlertClass::two_weeks;
  if (raised.clue.value == Tri::undetermined && !many.is_yes()) {
    raised.clue.because.clear();
  }
  if (raised.clue.is_no() && !raised.clue.against.empty() && many.value == Tri::undetermined) {
    raised.clue = Clue{};  // how long one joint is stiff says nothing of several
    raised.clue.ask = many.ask;
  } else if (many.is_yes() && !raised.clue.against.empty()) {
    raised.clue = left_open(raised.clue, many);
  }
  return raised;
}

}  // namespace limbledger::interpret
