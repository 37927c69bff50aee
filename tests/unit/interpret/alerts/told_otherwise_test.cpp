// What somebody cannot say, denies, or has not been asked yet takes no danger away (red flags page, section 0). Each case is an invented person
// of whom the page's own line speaks; the section is named beside it.
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

// Section 2: "patella: same_day"; section 1: a wound near a break.
TEST_CASE("no injury told beside a kneecap or a leg that is seen out of place: the sign counts as if nobody had told how; of what is old it is an answer") {
  CHECK(raised(visit("acute_knee", 2007, "history.mechanism no_injury; knee.look_patella_height left laterally_displaced"), "dislocation"));
  CHECK_FALSE(raised(visit("acute_knee", 2007, "history.mechanism no_injury; knee.look_patella_height left laterally_displaced; history.weeks_since_onset 60"), "dislocation"));
  CHECK(is_now(visit("acute_knee", 1980, "history.mechanism no_injury; knee.look_deformity left yes; vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 0"), "knee_disloc_vasc"));
  CHECK(is_now(visit("acute_knee", 1980, "history.mechanism no_injury; skin.wound_over_bone left yes; leg.look_deformity left yes"), "open_fx"));
  // A sore over bone in a leg of its old shape is no open break.
  CHECK_FALSE(raised(visit("chronic_knee", 1980, "history.mechanism no_injury; skin.bone_visible left yes; skin.ulcer left yes"), "open_fx"));
}

// Section 9: "localised bone tenderness AND (temp >= 38.0 OR ...)"; tenths of a degree.
TEST_CASE("osteomyelitis: bone of the pelvis, the hip and the heel counts with a fever; without one a sore heel or hip is ordinary") {
  for (const char* bone : {"pelvis.crest_tender left yes", "pelvis.pubic_ramus_tender left yes", "hip.trochanter_tender left positive", "foot.calcaneal_squeeze left positive"}) {
    CAPTURE(bone);
    const std::string told = std::string("history.mechanism no_injury; ") + bone;
    CHECK(raised(visit("free", 1980, told + "; general.temperature 386"), "osteomyelitis"));
    CHECK_FALSE(raised(visit("free", 1980, told + "; general.temperature 368"), "osteomyelitis"));
  }
  const std::string sickle = "history.mechanism no_injury; history.sickle_cell yes; history.pain_now 9; ";
  CHECK(raised(visit("hip_groin", 2006, sickle + "pelvis.crest_tender left yes"), "osteomyelitis"));
  CHECK_FALSE(raised(visit("hip_groin", 2006, sickle + "hip.trochanter_tender left positive"), "osteomyelitis"));
  CHECK_FALSE(raised(visit("heel_pain", 1971, "history.mechanism no_injury; history.immune_suppressed yes; foot.calcaneal_tubercle_tender left yes; history.pain_now 8; general.temperature 367"), "osteomyelitis"));
}

// Section 11, and section 0: unknown includes who cannot answer.
TEST_CASE("ces: who cannot answer about saddle or bladder is touched there and measured, as one who is not sure") {
  for (const char* reason : {"not:cannot_answer", "not:not_reliable", "not:declined"}) {
    CAPTURE(reason);
    const Bench bench = visit("back_leg", 1983, "history.back_pain yes; history.pain_below_knee left yes; history.bladder_bowel_change " + std::string(reason) + "; history.saddle_numbness " + reason);
    CHECK(asks(bench, "ces", "nerve.saddle_touch"));
    CHECK(asks(bench, "ces", "general.bladder_after_ml"));
  }
}

// Section 11, signs "sexual dysfunction" and "rapidly worsening weakness": the sentence says what was told.
TEST_CASE("ces: raised by weakness that worsens, the sentence tells of no numbness that was answered no") {
  const Bench bench = visit("back_leg", 1983, "history.back_pain yes; history.pain_below_knee left yes; history.saddle_numbness no; history.bladder_bowel_change no; history.weakness_getting_worse yes");
  REQUIRE(is_now(bench, "ces"));
  CHECK(alert(bench, "ces")->message.text == "msg.alert.ces.told");
}

// Section 10: "unlikely -> raised at lower tier (D-dimer)", breathlessness makes it now: both answers raise, so its absence holds nothing back.
TEST_CASE("dvt: under two points stands while nobody has asked whether the breath is short, and that is asked") {
  const std::string one_point =
      "history.cancer_active no; history.cancer_known no; history.leg_paralysed_or_plaster left no; history.immobile_or_surgery_recent no; leg.calf_tender_vein left yes; vessel.whole_leg_swollen left no; "
      "vessel.oedema_more_this_side left no; vessel.veins_collateral left no; history.clot_before no; history.other_cause_as_likely left no; body.pregnancy no; "
      "leg.calf_swelling left yes; leg.calf_girth_10cm left 409; leg.calf_girth_10cm right 380";
  Bench bench = visit("calf_pain", 1976, one_point);
  REQUIRE(raised(bench, "dvt"));
  CHECK(alert(bench, "dvt")->message.text == "msg.alert.dvt.under_two");
  CHECK(asks(bench, "dvt", "history.breathless"));
  tell(bench, "history.breathless no");
  CHECK(alert(bench, "dvt")->message.text == "msg.alert.dvt.under_two");
  Bench short_breath = visit("calf_pain", 1976, one_point + "; history.breathless yes");
  CHECK(is_now(short_breath, "dvt"));
}

// Section 15: "bony lump or tenderness".
TEST_CASE("limp_child: bone of the shin, the ankle or the foot that is tender counts as that of the knee does; a sore heel does not") {
  for (const char* bone : {"leg.fibular_shaft_tender", "leg.tibial_crest_tender", "ankle.lateral_malleolus_tender", "foot.navicular_tender", "knee.bone_tender_elsewhere"}) {
    CAPTURE(bone);
    CHECK(raised(visit("limping_child", 2017, std::string("history.mechanism no_injury; gait.limp yes; ") + bone + " left yes"), "limp_child"));
  }
  CHECK_FALSE(raised(visit("limping_child", 2015, "history.mechanism no_injury; gait.limp yes; foot.calcaneal_squeeze left positive"), "limp_child"));
}

// Clinical safety, C13 (a joint of one who bleeds more) and C10 (no wrong joint).
TEST_CASE("bleed_joint: the knee is named where it is the knee") {
  CHECK(alert(visit("ankle_injury", 2019, "history.bleeding_disorder yes; history.mechanism twist; history.swelling_onset left within_2h"), "bleed_joint")->message.text == "msg.alert.bleed_joint.joint");
  CHECK(alert(visit("acute_knee", 2010, "history.bleeding_disorder yes; history.mechanism twist; history.swelling_onset left within_2h"), "bleed_joint")->message.text == "msg.alert.bleed_joint.raised");
}

// Clinical safety, C3 (suspicion raises whatever is asked) and C10 (no words of a leg that are not its own).
TEST_CASE("dvt: a clot that is suspected alone is called so of a leg that was not found swollen, and the swollen one by what it shows") {
  const Bench bench = visit("chronic_knee", 1976, "history.examiner_suspects_clot yes; leg.calf_swelling right yes; leg.calf_tender_vein right yes; leg.calf_swelling left no; leg.calf_tender_vein left no");
  for (const interpret::Alert& one : bench.assess().alerts) {
    if (one.alert.text == "alert.dvt") {
      CHECK(one.message.text == (one.side == model::Side::left ? "msg.alert.dvt.suspected" : "msg.alert.dvt.raised"));
    }
  }
  REQUIRE(raised(bench, "dvt"));
  const Bench breath = visit("chronic_knee", 1976, "history.examiner_suspects_clot yes; history.breathless yes; leg.calf_swelling left no; leg.calf_tender_vein left no");
  CHECK(alert(breath, "dvt")->message.text == "msg.alert.dvt.suspected_chest");
}

// Section 1: what suspects a break. Who sat before and bends a leg without an injury that anybody saw has broken it; that walking was lost is no answer.
TEST_CASE("fracture: a new bend in the leg of who does not walk stays a break when walking was lost with it") {
  Bench bench = visit("whole_limb", 1950, "history.mechanism no_injury; body.chair_user yes; leg.look_deformity right yes");
  CHECK(raised(bench, "fracture"));
  tell(bench, "history.walking_lost yes");
  CHECK(raised(bench, "fracture"));
  CHECK(raised(visit("whole_limb", 1950, "history.mechanism no_injury; leg.look_deformity right yes; history.walking_lost yes"), "fracture"));
  // Tender bone of the foot after a fall, of who lies as a rule: that walking was lost as well does not say that it carries.
  Bench lies = visit("hip_after_fall", 1950, "history.walks_usually walks_bed; ankle.medial_malleolus_tender right yes; foot.navicular_dorsum_tender right yes");
  CHECK(raised(lies, "fracture"));
  tell(lies, "history.walking_lost yes");
  CHECK(raised(lies, "fracture"));
}
