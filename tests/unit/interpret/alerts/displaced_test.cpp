// Joints out of place, the segment of an open break, and how far a limb without blood has gone, by the red flags page (sections 1, 2 and
// 5, with their examples). Classes of a limb without blood: RUTHERFORD1997.
#include "core/interpret/held.hpp"
#include "tests/unit/interpret/alerts/story.hpp"

#include <set>

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

std::set<std::string> held_on_the_left(const Bench& bench, const std::string& by) {
  const interpret::View view(bench.exam, bench.person, *bench.edition, day(2026, 11, 24));
  std::set<std::string> held;
  for (const auto& open : interpret::watch(view).concerns) {
    if (open.side == Side::left && std::find(open.held_by.begin(), open.held_by.end(), model::Word{by}) != open.held_by.end()) {
      held.insert(open.concern->concern.text);
    }
  }
  return held;
}

}  // namespace

TEST_CASE("hip_disloc: held bent and turned after an injury interrupts and opens its concern; a hip that lies as the other is asked and answered no") {
  for (const char* way : {"attitude_bent_turned_in", "attitude_bent_turned_out"}) {
    CAPTURE(way);
    Bench bench = visit("hip_after_fall", 1980, std::string("hip.leg_attitude left ") + way);
    CHECK(is_now(bench, "hip_disloc"));
    CHECK(held_on_the_left(bench, "alert.hip_disloc") == std::set<std::string>{"concern.hip_dislocated"});
    Bench unhurt = visit("hip_groin", 1980, std::string("history.mechanism no_injury; hip.leg_attitude left ") + way);
    CHECK_FALSE(raised(unhurt, "hip_disloc"));
  }
  CHECK(flag(visit("hip_after_fall", 1980, "hip.leg_attitude left attitude_even"), "hip_disloc") == "asked_no");
  CHECK_FALSE(raised(visit("hip_after_fall", 1980, "hip.leg_attitude left attitude_short_turned_out"), "hip_disloc"));
}

TEST_CASE("hip_disloc: a replaced hip needs no injury; a hip that went back is the same day and does not interrupt") {
  Bench replaced = visit("hip_groin", 1950, "history.mechanism no_injury; body.hip_replaced left yes");
  CHECK_FALSE(raised(replaced, "hip_disloc"));
  tell(replaced, "hip.leg_attitude left attitude_bent_turned_in");
  CHECK(line_of(replaced, "hip_disloc") == "replaced");
  CHECK(is_now(replaced, "hip_disloc"));
  Bench back = visit("hip_groin", 1980, "history.joint_put_back left yes");
  CHECK(line_of(back, "hip_disloc") == "went_back");
  CHECK_FALSE(is_now(back, "hip_disloc"));
  CHECK(alert(back, "hip_disloc")->urgency == interpret::Urgency::same_day);
  CHECK_FALSE(raised(visit("chronic_knee", 1980, "history.joint_put_back left yes"), "hip_disloc"));
}

TEST_CASE("ankle_disloc: out of shape after an injury is the same day; white skin, a lost pulse, cold or no movement make it now") {
  Bench bench = visit("ankle_injury", 1980, "ankle.look_deformity left yes");
  CHECK(line_of(bench, "ankle_disloc") == "raised");
  CHECK_FALSE(is_now(bench, "ankle_disloc"));
  CHECK(held_on_the_left(bench, "alert.ankle_disloc") == std::set<std::string>{"concern.ankle_fracture", "concern.foot_fracture"});
  const std::vector<std::pair<const char*, const char*>> signs{{"ankle.skin_tented left yes", "skin"}, {"vessel.pulse_dorsalis_pedis left 0", "pulse"},
                                                               {"ankle.movement left no", "held"}, {"vessel.foot_cold left yes", "held"},
                                                               {"ankle.dorsiflexion_passive_knee_bent left pain", "held"}};
  for (const auto& one : signs) {
    CAPTURE(one.first);
    Bench threatened = bench;
    tell(threatened, one.first);
    CHECK(line_of(threatened, "ankle_disloc") == one.second);
    CHECK(is_now(threatened, "ankle_disloc"));
  }
  CHECK(flag(visit("ankle_injury", 1980, "ankle.look_deformity left no; foot.look_deformity left no"), "ankle_disloc") == "asked_no");
  CHECK_FALSE(raised(visit("heel_pain", 1980, "history.mechanism no_injury; ankle.look_deformity left yes"), "ankle_disloc"));
}

TEST_CASE("HC-043: beside an ankle out of place no ankle rule says that no film is needed") {
  Bench bench = visit("ankle_injury", 1990,
                      "history.steps_at_once yes; gait.steps_now 4; ankle.pain_malleolar_zone left yes; foot.pain_midfoot_zone left yes;"
                      "ankle.lateral_malleolus_tender left no; ankle.medial_malleolus_tender left no; foot.fifth_metatarsal_base_tender left no;"
                      "foot.navicular_tender left no; history.ankle_rule_exclusions none_of_these");
  bench.exam.injured_on = day(2026, 11, 23);
  tell(bench, "ankle.look_deformity left yes");
  for (const auto& rule : bench.assess().rules) {
    CHECK(rule.outcome != interpret::Outcome::negative);
  }
}

TEST_CASE("open_fx: the concern that opens is that of the part the break shows at, else of the complaint, else of every part") {
  const auto opened = [](const char* complaint, const char* story) { return held_on_the_left(visit(complaint, 1990, story), "alert.open_fx"); };
  const std::set<std::string> knee{"concern.knee_fracture"};
  const std::set<std::string> ankle{"concern.ankle_fracture"};
  const std::set<std::string> foot{"concern.foot_fracture"};
  const std::set<std::string> shaft{"concern.shaft_fracture"};
  CHECK(opened("acute_knee", "knee.look_open_wound left yes; knee.look_deformity left yes") == knee);
  CHECK(opened("acute_knee", "skin.wound_over_bone left yes") == knee);
  CHECK(opened("ankle_injury", "skin.wound_over_bone left yes") == ankle);
  CHECK(opened("free", "history.fall_or_blow yes; skin.bone_visible left yes; ankle.look_deformity left yes") == ankle);
  CHECK(opened("ankle_injury", "ankle.skin_tented left yes") == ankle);
  CHECK(opened("ankle_injury", "skin.wound_over_bone left yes; foot.look_deformity left yes") == foot);
  CHECK(opened("free", "skin.wound_over_bone left yes; leg.tibial_crest_tender left yes") == shaft);
  CHECK(opened("calf_pain", "skin.wound_over_bone left yes") == shaft);
  CHECK(opened("free", "skin.wound_over_bone left yes").size() == 5);
}

TEST_CASE("ali: cold pale foot for hours, toes numb, moves: class IIa; strength unknown: raised, and no class is claimed (the page's examples)") {
  Bench bench = visit("free", 1956, "history.cold_pale_sudden left yes; vessel.foot_cold left yes; nerve.sensation_loss_level left loss_toes_only");
  CHECK(is_now(bench, "ali"));
  CHECK(line_of(bench, "ali") == "raised");
  tell(bench, "ankle.movement left yes");
  CHECK(line_of(bench, "ali") == "grade_2a");
  CHECK(is_now(bench, "ali"));
}

TEST_CASE("ali: classes by RUTHERFORD1997: I with the artery heard, IIb by weakness or numbness beyond the toes, III without feeling, movement or vein") {
  const auto graded_as = [](const char* story) {
    Bench bench = visit("free", 1956, "history.weeks_since_onset 0; vessel.foot_cold left yes; history.rest_pain_foot left yes");
    tell(bench, story);
    CHECK(is_now(bench, "ali"));
    return line_of(bench, "ali");
  };
  CHECK(graded_as("ankle.movement left yes; nerve.sensation_loss_level left loss_none; vessel.doppler_arterial_audible left yes") == "grade_1");
  CHECK(graded_as("ankle.movement left yes; nerve.sensation_loss_level left loss_none; vessel.doppler_arterial_audible left no") == "grade_2a");
  CHECK(graded_as("ankle.movement left yes; nerve.sensation_loss_level left loss_none") == "raised");  // nobody listened
  CHECK(graded_as("ankle.movement left yes; nerve.sensation_loss_level left loss_beyond_toes") == "grade_2b");
  CHECK(graded_as("nerve.foot_drop left yes") == "grade_2b");
  const std::string dead = "ankle.movement left no; nerve.power_ankle_dorsiflexion left 0; nerve.power_ankle_plantarflexion left 0; nerve.sensation_loss_level left loss_whole_foot_or_more";
  CHECK(graded_as(dead.c_str()) == "grade_2b");  // the vein was not listened for
  CHECK(graded_as((dead + "; vessel.doppler_venous_audible left no").c_str()) == "grade_3");
}

TEST_CASE("ali: a pale foot and an artery that the Doppler does not hear are signs of flow as well") {
  for (const char* sign : {"vessel.foot_colour left colour_pale", "vessel.doppler_arterial_audible left no"}) {
    CAPTURE(sign);
    Bench bench = visit("free", 1956, "history.weeks_since_onset 0; history.numb_or_tingling left yes");
    CHECK_FALSE(raised(bench, "ali"));
    tell(bench, sign);
    CHECK(is_now(bench, "ali"));
  }
}

// BOAST_ACS: pain on stretch of any compartment, in a limb at risk.
TEST_CASE("acs: pain on stretch of any compartment of the leg counts, and a hard one puts the limb at risk") {
  for (const char* where : {"leg.stretch_pain_front", "leg.stretch_pain_outer", "leg.stretch_pain_back", "leg.stretch_pain_deep"}) {
    CAPTURE(where);
    Bench bench = visit("calf_pain", 1990, std::string(where) + " left yes; history.injury_severe_or_crush no; history.pain_out_of_proportion left no");
    CHECK_FALSE(raised(bench, "acs"));
    tell(bench, "leg.compartment_front_tense left yes");
    CHECK(is_now(bench, "acs"));
  }
}
