// Bone under stress, infected bone and joints away from the knee, a foot that drops: red flags page (sections 7, 9 and 17, with their
// examples) and clinical safety C13.
#include "core/interpret/held.hpp"
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

TEST_CASE("C13: groin pain on running after more load is the same day without a hop; the reason unknown is asked, and low intake counts unasked") {
  Bench bench = visit("hip_groin", 2002, "history.exertional_groin_pain left yes");
  CHECK_FALSE(raised(bench, "bone_stress_hip"));
  CHECK(asks(bench, "bone_stress_hip", "history.load_changed"));
  CHECK_FALSE(asks(bench, "bone_stress_hip", "history.low_energy_intake"));  // asked in private alone
  for (const char* reason : {"history.load_changed yes", "history.low_energy_intake yes", "history.bone_drugs yes"}) {
    CAPTURE(reason);
    Bench told = bench;
    tell(told, reason);
    REQUIRE(raised(told, "bone_stress_hip"));
    CHECK(alert(told, "bone_stress_hip")->urgency == interpret::Urgency::same_day);
    CHECK_FALSE(is_now(told, "bone_stress_hip"));
    const interpret::View view(told.exam, told.person, *told.edition, day(2026, 11, 24));
    const auto seen = interpret::watch(view);
    for (const char* step : {"hip.hop", "hip.fulcrum", "function.hop_distance", "hip.squat", "hip.resisted_straight_leg_raise"}) {
      CHECK_MESSAGE(interpret::withheld(*told.edition->item(std::string_view(step)), Side::left, seen.concerns, seen.flags).has_value(), step);
    }
  }
  tell(bench, "history.load_changed no; history.bone_drugs no");
  CHECK_FALSE(raised(bench, "bone_stress_hip"));
}

TEST_CASE("C13: bone medicine with pain of thigh or groin is the same day without running; a hip that hurts under no load is answered no") {
  Bench bench = visit("lateral_hip", 1954, "history.bone_drugs yes; history.pain_site left site_thigh_outer");
  CHECK(line_of(bench, "bone_stress_hip") == "medicine");
  CHECK(meanwhile_says(bench, "bone_stress_hip", "whole_thigh_bone"));
  CHECK(flag(visit("hip_groin", 2002, "history.exertional_groin_pain left no; history.load_changed yes"), "bone_stress_hip") == "asked_no");
  CHECK(flag(visit("hip_groin", 2002), "bone_stress_hip") == "not_asked");
}

TEST_CASE("osteomyelitis example: a tender shin, no fever, walks, sport is the stress route within two weeks; with 38.4 and refusing weight it is infection") {
  Bench bench = visit("free", 2012, "history.mechanism no_injury; leg.tibial_spot_tender left yes; history.load_changed yes; history.fever no; gait.steps_now 4");
  CHECK(referral_of(bench, "bone_stress") == "bone_stress");
  CHECK_FALSE(raised(bench, "osteomyelitis"));
  CHECK_FALSE(alert(bench, "bone_stress"));  // the two-week class is no alert
  tell(bench, "general.temperature 384; history.refuses_weight left yes; history.fever yes");
  CHECK(line_of(bench, "osteomyelitis") == "leg");
  CHECK(referral_of(bench, "bone_stress") == "none");
  Bench unknown = visit("free", 2012, "history.mechanism no_injury; leg.tibial_spot_tender left yes; history.load_changed yes");
  CHECK(referral_of(unknown, "bone_stress") == "none");
  CHECK(asks(unknown, "bone_stress", "history.fever"));
  Bench injured = visit("free", 2012, "history.mechanism direct_blow; leg.tibial_spot_tender left yes; history.load_changed yes; history.fever no");
  CHECK(referral_of(injured, "bone_stress") == "none");
}

TEST_CASE("bone_stress: the forefoot and the heel ask after their own bones, and an answer about those is the answer") {
  CHECK(asks(visit("heel_pain", 1990), "bone_stress", "foot.calcaneal_squeeze"));
  CHECK(flag(visit("heel_pain", 1990, "foot.calcaneal_squeeze left negative"), "bone_stress") == "asked_no");
  Bench fore = visit("forefoot_pain", 1990, "foot.metatarsal_second_tender left no; foot.metatarsal_third_tender left no; foot.metatarsal_fourth_tender left no");
  CHECK(flag(fore, "bone_stress") == "asked_no");
  tell(fore, "foot.metatarsal_third_tender left yes; history.load_changed yes; history.fever no; history.mechanism no_injury");
  CHECK(referral_of(fore, "bone_stress") == "bone_stress");
}

TEST_CASE("osteomyelitis: tender bone of ankle, foot and shaft with a fever and no injury is raised by its own line; a fever after an injury is not enough") {
  for (const char* bone : {"ankle.lateral_malleolus_tender", "foot.navicular_tender", "foot.metatarsal_first_tender", "leg.thigh_shaft_tender", "leg.fibular_shaft_tender"}) {
    CAPTURE(bone);
    for (const int born : {1980, 2016}) {
      Bench bench = visit("free", born, std::string("history.mechanism no_injury; ") + bone + " left yes");
      CHECK_FALSE(raised(bench, "osteomyelitis"));
      tell(bench, "general.temperature 384");
      CHECK(line_of(bench, "osteomyelitis") == "leg");
      tell(bench, "history.mechanism twist");
      CHECK_FALSE(raised(bench, "osteomyelitis"));
    }
  }
  Bench warm = visit("free", 2016, "history.mechanism no_injury; ankle.medial_malleolus_tender left yes; ankle.hot_red left yes");
  CHECK(line_of(warm, "osteomyelitis") == "leg");
}

TEST_CASE("osteomyelitis: a sinus that runs, and bone met in a sore, are raised at any age; in a diabetic foot beside the sore's own danger") {
  CHECK(line_of(visit("free", 1970, "skin.sinus_draining left yes"), "osteomyelitis") == "sinus");
  CHECK(line_of(visit("hip_groin", 1970, "hip.look_skin left hip_scar+hip_sinus"), "osteomyelitis") == "sinus");
  CHECK(line_of(visit("free", 1970, "skin.ulcer left yes; skin.ulcer_probe_to_bone left yes"), "osteomyelitis") == "probe");
  const Bench diabetic = visit("free", 1970, "history.diabetes yes; skin.ulcer left yes; skin.ulcer_probe_to_bone left yes");
  CHECK(line_of(diabetic, "osteomyelitis") == "probe");
  CHECK(line_of(diabetic, "df_infect") == "bone");
}

TEST_CASE("septic_adult: a hip whose smallest movement hurts badly, in days, with fever or not walking, is the same day; a roll without pain answers it") {
  Bench bench = visit("hip_groin", 1970, "history.mechanism no_injury; history.weeks_since_onset 0; hip.pain_passive_severe left yes");
  CHECK_FALSE(raised(bench, "septic_adult"));
  CHECK(asks(bench, "septic_adult", "general.temperature"));
  for (const char* more : {"general.temperature 382", "history.unwell yes", "gait.steps_now 0", "hip.look_skin left hip_hot_red"}) {
    CAPTURE(more);
    Bench ill = bench;
    tell(ill, more);
    CHECK(line_of(ill, "septic_adult") == "hip");
    CHECK(alert(ill, "septic_adult")->urgency == interpret::Urgency::same_day);
  }
  tell(bench, "history.unwell yes; general.temperature 390");
  CHECK(line_of(bench, "septic_adult") == "hip_ill");
  CHECK(is_now(bench, "septic_adult"));
  CHECK(flag(visit("hip_groin", 1970, "hip.log_roll left negative"), "septic_adult") == "asked_no");
  Bench metal = visit("hip_groin", 1950, "history.mechanism no_injury; body.hip_replaced left yes; hip.look_skin left hip_hot_red");
  CHECK(line_of(metal, "septic_adult") == "hip_replaced");
  CHECK(meanwhile_says(metal, "septic_adult", "fluid_first_replaced"));  // the needle is the surgeon's
  tell(metal, "history.unwell yes; general.temperature 390");
  CHECK(line_of(metal, "septic_adult") == "hip_ill");
  CHECK(meanwhile_says(metal, "septic_adult", "fluid_first_replaced_ill"));
}

TEST_CASE("septic_adult: a hot, tender, stiff ankle of days is the same day without fever; a fresh sprain is not, unless something points beyond it") {
  Bench bench = visit("free", 1970, "history.mechanism no_injury; history.weeks_since_onset 0; ankle.hot_red left yes; ankle.anterior_gutter_tender left yes");
  CHECK_FALSE(raised(bench, "septic_adult"));
  CHECK(asks(bench, "septic_adult", "ankle.dorsiflexion_passive_knee_bent"));
  tell(bench, "ankle.dorsiflexion_passive_knee_bent left pain");
  CHECK(line_of(bench, "septic_adult") == "ankle");
  Bench sprain = visit("ankle_injury", 1990, "ankle.hot_red left yes; ankle.anterior_gutter_tender left yes; ankle.dorsiflexion_passive_knee_bent left pain");
  CHECK_FALSE(raised(sprain, "septic_adult"));
  tell(sprain, "history.fever yes");
  CHECK(line_of(sprain, "septic_adult") == "ankle");
}

TEST_CASE("septic_adult: a hot great toe counts with a fever or broken skin only, since gout does the same") {
  Bench gout = visit("forefoot_pain", 1970, "history.mechanism no_injury; history.weeks_since_onset 0; foot.mtp_first_hot_red left yes; foot.mtp_first_tender left yes;"
                                            "history.fever no; general.temperature 371; history.unwell no; history.immune_suppressed no; history.joint_injection_or_operation_recent no; skin.intact left yes");
  CHECK_FALSE(raised(gout, "septic_adult"));
  tell(gout, "skin.intact left no");
  CHECK(line_of(gout, "septic_adult") == "toe");
  CHECK(flag(visit("forefoot_pain", 1970, "foot.mtp_first_hot_red left no"), "septic_adult") == "asked_no");
}

TEST_CASE("C13: a foot that drops newly is the same day; an old one is answered no, and whether it is new is asked") {
  Bench bench = visit("back_leg", 1980, "nerve.foot_drop left yes");
  CHECK_FALSE(raised(bench, "foot_drop_new"));
  CHECK(asks(bench, "foot_drop_new", "history.foot_drop_new"));
  Bench old = bench;
  tell(old, "history.foot_drop_new left no");
  CHECK(flag(old, "foot_drop_new") == "asked_no");
  tell(bench, "history.foot_drop_new left yes");
  CHECK(raised(bench, "foot_drop_new"));
  CHECK(alert(bench, "foot_drop_new")->urgency == interpret::Urgency::same_day);
  CHECK(flag(visit("back_leg", 1980, "nerve.foot_drop left no"), "foot_drop_new") == "asked_no");
  Bench pressed = bench;
  tell(pressed, "history.saddle_numbness yes");
  CHECK(is_now(pressed, "ces"));
  CHECK_FALSE(alert(pressed, "foot_drop_new"));  // shown inside it
}

TEST_CASE("ces: numb where one sits, felt on examination, counts as told; pain down both legs counts when it is new and comes from the back") {
  CHECK(is_now(visit("back_leg", 1980, "nerve.saddle_touch left felt_less"), "ces"));
  Bench legs = visit("back_leg", 1980, "history.leg_pain_both yes; history.back_pain yes");
  CHECK_FALSE(raised(legs, "ces"));
  tell(legs, "history.weeks_since_onset 40");
  CHECK_FALSE(raised(legs, "ces"));
  tell(legs, "history.weeks_since_onset 1");
  CHECK(is_now(legs, "ces"));
}

// NICE_NG12, SCOT_SARCOMA: a lump must be more than 5 cm unless another feature holds.
TEST_CASE("tumour: a lump of 50 mm, static, mobile and shallow is no referral; 51 mm, growing, deep, back again or with nodes is, and the young the same day") {
  Bench bench = visit("free", 1970, "skin.lump left yes; skin.lump_size left 50; skin.lump_features left none_of_these");
  CHECK(referral_of(bench, "tumour") == "none");
  tell(bench, "skin.lump_size left 51");
  CHECK(referral_of(bench, "tumour") == "tumour.lump");
  for (const char* feature : {"lump_grows", "lump_deep_or_fixed", "lump_came_back", "lump_with_nodes"}) {
    CAPTURE(feature);
    CHECK(referral_of(visit("free", 1970, std::string("skin.lump_features left ") + feature), "tumour") == "tumour.lump");
    CHECK(line_of(visit("free", 2010, std::string("skin.lump_features left ") + feature), "tumour") == "lump");
  }
}

TEST_CASE("C13: several joints stiff for over half an hour for weeks, and an ankle hot for weeks, are referrals; a numb foot's heat is another danger") {
  Bench bench = visit("free", 1980, "history.joints_several yes; history.morning_stiffness_minutes 31; history.weeks_since_onset 6");
  CHECK(referral_of(bench, "joints_stiff") == "joints_stiff");
  tell(bench, "history.morning_stiffness_minutes 30");
  CHECK(referral_of(bench, "joints_stiff") == "none");
  Bench ankle = visit("free", 1980, "history.mechanism no_injury; ankle.hot_red left yes; history.weeks_since_onset 6; body.feeling_lost left no");
  CHECK(referral_of(ankle, "joint_over_2_weeks") == "joint_over_2_weeks.ankle");
  tell(ankle, "body.feeling_lost left yes");
  CHECK(referral_of(ankle, "joint_over_2_weeks") == "none");
  CHECK(raised(ankle, "charcot"));
}
