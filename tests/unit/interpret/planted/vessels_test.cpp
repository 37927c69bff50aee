// Planted cases of blood that does not reach a limb or does not leave it, of pressure under a plaster, and of a body that fails without a sign
// at any limb; each with the ordinary neighbour that stays quiet. Sources: the red flags page, sections 4, 5 and 10; clinical safety C2, C3 and
// C13; BOAST_ACS; WELLS2003; NICE_NG51 for pulses of children and in pregnancy. What is our own rule says so. All is invented.
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

// C13: "one perfusion sign is enough" where feeling is reduced. That blue counts, and beside what, is our own rule.
TEST_CASE("planted: a blue or dusky foot with poor pulses that fails or is numb is cut off; blue alone, or with full pulses, is not") {
  const std::string poor = "vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 1; ";
  const std::string turned = "vessel.pulse_dorsalis_pedis left 1; vessel.pulse_posterior_tibial left 0; ";
  for (const std::string& pulses : {poor, turned}) {
    for (const char* sign : {"ankle.movement left no", "nerve.foot_drop left yes", "nerve.sensation_foot_reduced left yes", "nerve.power_ankle_plantarflexion left 2"}) {
      for (const char* colour : {"vessel.foot_colour left colour_blue; ", "vessel.foot_colour left colour_dusky; ", ""}) {
        CAPTURE(sign);
        CHECK(is_now(visit("calf_pain", 1955, "history.weeks_since_onset 0; history.mechanism no_injury; " + pulses + colour + sign), "ali"));
      }
    }
  }
  CHECK(is_now(visit("calf_pain", 1955, "history.weeks_since_onset 0; vessel.foot_colour left colour_blue; ankle.movement left no"), "ali"));
  // Both pulses lost since a twist that nobody dated: the weeks are not those of the foot.
  for (const char* weeks : {"history.weeks_since_onset 3", "history.pain_over_2_weeks yes", "history.weeks_since_onset 60"}) {
    CHECK(is_now(visit("ankle_injury", 1995, std::string("history.mechanism twist; vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 0; ") + weeks), "ali"));
  }
  // The ordinary neighbours: blue by itself; weak pulses by themselves; a numb foot of diabetes of years; one pulse missing beside a full one.
  for (const char* ordinary : {"vessel.foot_colour both colour_blue", "vessel.foot_colour left colour_dusky; vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 2",
                               "vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 1",
                               "vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 2; nerve.sensation_foot_reduced left yes",
                               "vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 1; history.diabetes yes; nerve.sensation_foot_reduced left yes; ankle.movement left yes;"
                               "history.weeks_since_onset 300"}) {
    CAPTURE(ordinary);
    CHECK_FALSE(raised(visit("calf_pain", 1955, std::string("history.mechanism no_injury; ") + ordinary), "ali"));
  }
}

// Our own rule, after C2: three perfusion signs of one side outweigh pulses that were noted, and two feet alike in the cold are asked about.
TEST_CASE("planted: a hurt foot that alone is cold, of an ill colour and slow to fill is cut off beside pulses noted as full; with two signs, or both feet so, it is asked") {
  const std::string hurt = "history.mechanism vehicle; history.injury_severe_or_crush yes; vessel.pulse_dorsalis_pedis both 2; vessel.pulse_posterior_tibial both 2; ";
  const std::string three = "vessel.foot_cold left yes; vessel.foot_colour left colour_pale; vessel.capillary_refill_slow left yes; ";
  for (const char* other : {"vessel.foot_cold right no", "vessel.capillary_refill_slow right no", "vessel.foot_colour right colour_pink"}) {
    CAPTURE(other);
    CHECK(is_now(visit("ankle_injury", 1996, hurt + three + other), "ali"));
  }
  CHECK_FALSE(raised(visit("ankle_injury", 1996, hurt + three), "ali"));  // nobody looked at the other foot
  CHECK(asks(visit("ankle_injury", 1996, hurt + three), "ali", "ankle.movement"));
  CHECK_FALSE(raised(visit("ankle_injury", 1996, hurt + "vessel.foot_cold both yes; vessel.foot_colour both colour_pale; vessel.capillary_refill_slow both yes"), "ali"));
  CHECK_FALSE(raised(visit("ankle_injury", 1996, hurt + "vessel.foot_cold left yes; vessel.foot_cold right no; vessel.foot_colour left colour_pale; vessel.capillary_refill_slow left no"), "ali"));
}

TEST_CASE("planted: two feet cold alike with weak pulses are asked about, hurt or not; one that fails, weaker than the other, or without a pulse is cut off") {
  const std::string cold = "history.mechanism twist; vessel.foot_cold both yes; ";
  const std::string weak = "vessel.pulse_dorsalis_pedis both 1; vessel.pulse_posterior_tibial both 1; ";
  for (const std::string& pulses : {weak, std::string("vessel.pulse_dorsalis_pedis both 0; vessel.pulse_posterior_tibial both 2; ")}) {
    CAPTURE(pulses);
    const Bench winter = visit("ankle_injury", 1991, cold + pulses);
    CHECK_FALSE(raised(winter, "ali"));
    CHECK(asks(winter, "ali", "ankle.movement"));
    const Bench answered = visit("ankle_injury", 1991, cold + pulses + "nerve.sensation_foot_reduced left no; ankle.movement left yes; nerve.foot_drop left no");
    CHECK_FALSE(raised(answered, "ali"));
    CHECK(flag(answered, "ali") != "asked_no");
    for (const char* sign : {"ankle.movement left no", "nerve.sensation_foot_reduced left yes", "history.pain_out_of_proportion left yes", "history.cold_pale_sudden left yes"}) {
      CAPTURE(sign);
      CHECK(is_now(visit("ankle_injury", 1991, cold + pulses + sign), "ali"));
    }
  }
  CHECK(is_now(visit("ankle_injury", 1991, cold + "vessel.pulse_dorsalis_pedis left 1; vessel.pulse_posterior_tibial left 1; vessel.pulse_dorsalis_pedis right 2; vessel.pulse_posterior_tibial right 2"), "ali"));
  CHECK(is_now(visit("ankle_injury", 1991, cold + "vessel.pulse_dorsalis_pedis both 0; vessel.pulse_posterior_tibial both 0"), "ali"));
  // A pulse that is not felt, of this foot alone or with nothing known of the other's, makes no foot less cold.
  for (const char* other : {"", "vessel.pulse_posterior_tibial right 3"}) {
    CHECK(is_now(visit("ankle_injury", 1991, cold + "vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 0; " + other), "ali"));
  }
  CHECK(is_now(visit("ankle_injury", 1991, "history.mechanism twist; vessel.foot_cold left yes; vessel.foot_cold right no; " + weak), "ali"));
}

// Our own rule: the pulse of the groin, or of a stump the one behind the knee.
TEST_CASE("planted: what lies below a lost pulse of the groin, or a stump without its pulse, is cut off with a symptom or dead tissue") {
  const std::string covered = "history.weeks_since_onset 0; history.mechanism no_injury; vessel.pulse_femoral left 0; ";
  for (const char* symptom : {"history.numb_or_tingling left yes", "history.rest_pain_foot left yes", "nerve.sensation_foot_reduced left yes", "history.pain_out_of_proportion left yes"}) {
    CAPTURE(symptom);
    CHECK(is_now(visit("calf_pain", 1955, covered + symptom), "ali"));
  }
  const std::string shin = "body.limb_level left through_shin; ";
  for (const char* pulse : {"vessel.pulse_popliteal left 0; ", "vessel.pulse_femoral left 0; "}) {
    for (const char* dead : {"skin.gangrene left gangrene_dry; ", "skin.gangrene left gangrene_wet; "}) {
      const Bench young = visit("after_amputation", 1960, shin + pulse + dead + "history.weeks_since_onset 0");
      CHECK(line_of(young, "ali") == "stump");
      CHECK(is_now(young, "ali"));
      CHECK(is_now(visit("after_amputation", 1960, shin + pulse + dead), "ali"));
      CHECK(line_of(visit("after_amputation", 1960, shin + pulse + dead + "history.weeks_since_onset 8"), "clti") == "stump");
    }
  }
  // The ordinary neighbours: a groin that lost its pulse years ago in a leg that walks, and a foot of which the knee's pulse was not found.
  CHECK_FALSE(raised(visit("calf_pain", 1955, "vessel.pulse_femoral left 0; history.claudication left yes; history.weeks_since_onset 150; ankle.movement left yes; history.numb_or_tingling left yes"), "ali"));
  CHECK_FALSE(raised(visit("calf_pain", 1955, "vessel.pulse_popliteal left 0; history.numb_or_tingling left yes; vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 2;"
                                              "history.weeks_since_onset 0"), "ali"));
  CHECK_FALSE(raised(visit("after_amputation", 1960, shin + "vessel.pulse_popliteal left 2; vessel.pulse_femoral left 2; skin.gangrene left gangrene_none"), "ali"));
}

// Section 5: "onset < 14 days"; the answer to it is that it did not come suddenly. Our own rule.
TEST_CASE("planted: a cold foot without its pulses that is said not to have turned so suddenly is asked after, and any symptom of today raises it") {
  const std::string cold = "vessel.pulse_dorsalis_pedis both 0; vessel.pulse_posterior_tibial both 0; vessel.foot_cold both yes; ";
  CHECK(is_now(visit("no_complaint", 1950, cold), "ali"));  // nobody was asked
  const Bench crept = visit("no_complaint", 1950, cold + "history.cold_pale_sudden both no");
  CHECK_FALSE(raised(crept, "ali"));
  CHECK(asks(crept, "ali", "ankle.movement"));
  CHECK(flag(crept, "ali") != "asked_no");
  const std::string lame = "history.mechanism no_injury; history.claudication left yes; history.weeks_since_onset 150; history.rest_pain_foot left no; nerve.sensation_foot_reduced left no; ankle.movement left yes; ";
  CHECK_FALSE(raised(visit("calf_pain", 1956, cold + lame + "history.cold_pale_sudden both no"), "ali"));
  for (const char* today : {"ankle.movement left no", "nerve.foot_drop left yes", "nerve.sensation_foot_reduced left yes", "body.cast left cast_shin; history.numb_or_tingling left yes",
                            "history.weeks_since_onset 1; history.rest_pain_foot left yes"}) {
    CAPTURE(today);
    CHECK(is_now(visit("calf_pain", 1956, cold + "history.cold_pale_sudden both no; " + today), "ali"));
  }
  // Who cannot tell of it gives no such answer, and an injury of these days is one of its own.
  CHECK(is_now(visit("no_complaint", 1950, cold + "history.memory_poor yes; history.cold_pale_sudden both no"), "ali"));
  Bench hurt = visit("calf_pain", 1990, cold + "history.cold_pale_sudden both no");
  hurt.exam.injured_on = day(2026, 11, 23);
  CHECK(is_now(hurt, "ali"));
}

// C3 names the cast among what puts a limb at risk; BOAST_ACS (block, hourly).
TEST_CASE("planted: pain on stretch under a plaster of the leg calls, and a leg that is tense is never answered no") {
  for (const char* cast : {"cast_shin", "cast_knee", "cast_thigh", "cast_shin+cast_ankle+cast_foot"}) {
    for (const int born : {2024, 2018, 1980}) {
      CAPTURE(cast);
      CHECK(is_now(visit("after_plaster", born, std::string("history.pain_out_of_proportion left no; knee.stretch_pain_calf left yes; body.cast left ") + cast), "acs"));
    }
  }
  // The ordinary neighbours: a bandage of the foot, the other leg's plaster, and a plaster without pain.
  for (const char* ordinary : {"knee.stretch_pain_calf left yes; history.injury_severe_or_crush no; body.cast left cast_foot", "knee.stretch_pain_calf left yes; history.injury_severe_or_crush no; body.cast right cast_shin",
                               "knee.stretch_pain_calf left no; history.pain_out_of_proportion left no; body.cast left cast_shin"}) {
    CAPTURE(ordinary);
    CHECK_FALSE(raised(visit("after_plaster", 1980, ordinary), "acs"));
  }
  const std::string painless = "history.pain_out_of_proportion left no; knee.stretch_pain_calf left no; leg.stretch_pain_front left no; leg.stretch_pain_outer left no; leg.stretch_pain_deep left no; ";
  for (const char* tense : {"leg.tense_compartment left yes", "leg.compartment_front_tense left yes", "leg.tense_compartment left yes; history.compartment_causes left cause_operation"}) {
    CAPTURE(tense);
    const Bench hidden = visit("after_operation", 1996, painless + tense);
    CHECK_FALSE(raised(hidden, "acs"));
    CHECK(flag(hidden, "acs") != "asked_no");
    CHECK(asks(hidden, "acs", "history.pain_out_of_proportion"));
  }
  CHECK(flag(visit("after_operation", 1996, painless + "leg.tense_compartment left no"), "acs") == "asked_no");
}

// Section 4: pain on passive stretch; "undetermined when the patient cannot report". That a stretch not let for pain hurts is our own reading.
TEST_CASE("planted: a stretch that is not let for pain hurts, and who cannot say how much it hurts cannot tell of pain") {
  const std::string crush = "history.injury_severe_or_crush yes; leg.tense_compartment left yes; ";
  for (const char* item : {"knee.stretch_pain_calf", "leg.stretch_pain_back", "leg.stretch_pain_front", "leg.stretch_pain_outer", "leg.stretch_pain_deep"}) {
    CAPTURE(item);
    CHECK(is_now(visit("calf_pain", 1996, crush + "history.pain_out_of_proportion left unsure; " + item + " left pain"), "acs"));
    CHECK_FALSE(raised(visit("calf_pain", 1996, crush + "history.pain_out_of_proportion left unsure; " + item + " left declined"), "acs"));
    // Not at risk: quiet, as a stretch that hurts is (C3).
    CHECK_FALSE(raised(visit("calf_pain", 1996, std::string("history.injury_severe_or_crush no; history.pain_out_of_proportion left no; ") + item + " left pain"), "acs"));
  }
  Bench untold = visit("calf_pain", 1996, crush + "knee.stretch_pain_calf left declined; history.pain_out_of_proportion left declined");
  CHECK_FALSE(raised(untold, "acs"));
  for (model::Finding& one : *untold.exam.findings) {
    if (one.item.text == "history.pain_out_of_proportion") {
      one.value = model::NotDone{model::WhyNot::cannot_answer, std::nullopt};
    }
  }
  CHECK(line_of(untold, "acs") == "untold");
}

// WELLS2003: two points are scanned; C3: "not explained by a recorded injury". NICE_NG51: pulse by age and in pregnancy.
TEST_CASE("planted: a tender vein with another point is a clot to be looked for after an injury too; alone it is explained by one") {
  const auto hurt = [](const std::string& story) {
    Bench bench = visit("after_plaster", 1982, "leg.calf_tender_vein left yes; leg.calf_swelling left no; history.breathless no; history.other_cause_as_likely left no; " + story);
    bench.exam.injured_on = day(2026, 10, 20);
    return bench;
  };
  for (const char* point : {"history.leg_paralysed_or_plaster left yes", "history.immobile_or_surgery_recent yes", "history.clot_before yes", "history.cancer_active yes", "body.cast left cast_shin"}) {
    CAPTURE(point);
    CHECK(line_of(hurt(point), "dvt") == "points");
    CHECK_FALSE(is_now(hurt(point), "dvt"));
    Bench unsaid = hurt(point);
    tell(unsaid, "history.other_cause_as_likely left unsure");
    CHECK_FALSE(raised(unsaid, "dvt"));
    CHECK(flag(unsaid, "dvt") != "asked_no");
  }
  CHECK_FALSE(raised(hurt("history.leg_paralysed_or_plaster left no; history.immobile_or_surgery_recent no; history.clot_before no"), "dvt"));
  CHECK_FALSE(raised(hurt("body.cast right cast_shin"), "dvt"));
  // Swollen as a whole and blue: no score is waited for (our own rule).
  CHECK(raised(visit("swollen_legs", 1966, "vessel.whole_leg_swollen left yes; vessel.foot_colour left colour_blue"), "dvt"));
  CHECK_FALSE(raised(visit("swollen_legs", 1966, "vessel.whole_leg_swollen left yes; vessel.foot_colour left colour_as_expected"), "dvt"));
  CHECK_FALSE(raised(visit("swollen_legs", 1966, "vessel.whole_leg_swollen left no; leg.calf_swelling left no; vessel.foot_colour left colour_blue"), "dvt"));
}

TEST_CASE("planted: a pulse beside a swollen calf speaks for the lung by the age, and in pregnancy from 130") {
  const auto calf = [](int born, int pulse, const std::string& more = {}) {
    return visit("calf_pain", born, "history.mechanism direct_blow; leg.calf_swelling left yes; history.breathless no; general.pulse_rate " + std::to_string(pulse) + more);
  };
  CHECK_FALSE(is_now(calf(2023, 112), "dvt"));
  CHECK_FALSE(is_now(calf(2026, 125), "dvt"));
  CHECK_FALSE(is_now(calf(2018, 114), "dvt"));
  CHECK(is_now(calf(2023, 140), "dvt"));
  CHECK(is_now(calf(2018, 115), "dvt"));
  CHECK(is_now(calf(1990, 101), "dvt"));
  CHECK_FALSE(is_now(calf(1990, 100), "dvt"));
  CHECK_FALSE(is_now(calf(1999, 104, "; body.pregnancy yes"), "dvt"));
  CHECK(line_of(calf(1999, 104, "; body.pregnancy yes"), "dvt") == "raised");  // the same day all the same
  CHECK(is_now(calf(1999, 130, "; body.pregnancy yes"), "dvt"));
  CHECK(is_now(visit("calf_pain", 1999, "body.pregnancy yes; leg.calf_swelling left yes; history.breathless yes; general.pulse_rate 90"), "dvt"));
}

// C2 names sepsis by itself; the figures are those of NICE_NG51 (adults: high risk). How many of them without a place is our own rule.
TEST_CASE("planted: shock, sepsis or a lung that fails without any sign at the limb is called; one figure alone is asked about") {
  for (const char* ill : {"general.temperature 396; general.pulse_rate 135; general.consciousness mind_new_confusion; general.blood_pressure_systolic 75",
                          "leg.look_deformity left yes; general.blood_pressure_systolic 72; general.pulse_rate 142", "history.breathless yes; general.oxygen_saturation 86; general.respiratory_rate 30; leg.calf_swelling left no",
                          "vessel.foot_warm left yes; general.consciousness mind_new_confusion", "history.fever yes; general.blood_pressure_systolic 84", "general.temperature 350; general.pulse_rate 140",
                          "general.consciousness mind_pain"}) {
    for (const char* complaint : {"no_complaint", "chronic_knee", "after_operation"}) {
      CAPTURE(ill);
      CHECK(is_now(visit(complaint, 1960, ill), "acutely_ill"));
    }
  }
  // Where an infection or a clot is called it has the line.
  const Bench joint = visit("chronic_knee", 1960, "history.weeks_since_onset 0; knee.look_skin_hot_red left yes; general.temperature 392; general.blood_pressure_systolic 75");
  CHECK(is_now(joint, "septic_adult"));
  CHECK_FALSE(alert(joint, "acutely_ill"));
  // One figure alone: the others are asked, and once all are there and ordinary nobody is called.
  const Bench thin_air = visit("chronic_knee", 1960, "general.oxygen_saturation 90");
  CHECK_FALSE(raised(thin_air, "acutely_ill"));
  CHECK(asks(thin_air, "acutely_ill", "general.temperature"));
  const Bench looked_at = visit("chronic_knee", 1960, "general.oxygen_saturation 90; general.temperature 367; history.fever no; general.pulse_rate 80; general.respiratory_rate 16; general.consciousness mind_alert;"
                                                      "general.blood_pressure_systolic 124");
  CHECK_FALSE(raised(looked_at, "acutely_ill"));
  // Old lungs: little oxygen for years, and breaths that are no danger by themselves.
  CHECK_FALSE(raised(visit("chronic_knee", 1955, "history.weeks_since_onset 200; general.respiratory_rate 22; general.oxygen_saturation 90; general.pulse_rate 96; history.fever no"), "acutely_ill"));
  // A child's own figures.
  CHECK_FALSE(alert(visit("limping_child", 2023, "general.temperature 390; general.pulse_rate 136; general.respiratory_rate 36"), "acutely_ill"));
  CHECK(flag(visit("chronic_knee", 1960, "general.temperature 394; general.pulse_rate 104"), "acutely_ill") == "no flag");
}

// Red flags page, section 10 ("unlikely: raised at lower tier (D-dimer)"); NICE_NG158: a positive D-dimer is scanned; C3 and C7.
TEST_CASE("planted: that no clot is suspected silences no swollen calf and no tender vein, and a positive D-dimer is scanned the same day") {
  const std::string none = "history.mechanism no_injury; history.examiner_suspects_clot no; history.breathless no; history.cancer_active no; history.immobile_or_surgery_recent no; history.clot_before no;"
                           "history.leg_paralysed_or_plaster left no; vessel.whole_leg_swollen left no; vessel.oedema_more_this_side left no; vessel.veins_collateral left no;"
                           "history.other_cause_as_likely left no; ";
  for (const char* found : {"leg.calf_swelling left yes; leg.calf_tender_vein left no; ", "leg.calf_swelling left yes; leg.calf_tender_vein left yes; ", "leg.calf_swelling left no; leg.calf_tender_vein left yes; "}) {
    CAPTURE(found);
    const std::string calf = none + found + "leg.calf_girth_10cm left 375; leg.calf_girth_10cm right 360; ";
    CHECK(line_of(visit("calf_pain", 1986, calf), "dvt") == "under_two");
    CHECK(line_of(visit("calf_pain", 1986, calf + "general.lab_d_dimer lab_not_done"), "dvt") == "under_two");
    CHECK(line_of(visit("calf_pain", 1986, calf + "general.lab_d_dimer lab_positive"), "dvt") == "d_dimer");
    for (const char* other : {"general.lab_d_dimer lab_negative", "general.scan_leg_veins left scan_no_clot_seen"}) {
      const Bench another_cause = visit("calf_pain", 1986, calf + other);
      CHECK_FALSE(alert(another_cause, "dvt"));
      CHECK(flag(another_cause, "dvt") != "asked_no");
    }
    // The points are open, and the test is positive: no point is waited for, nor is a recorded injury heard against it.
    CHECK(line_of(visit("calf_pain", 1986, std::string(found) + "history.examiner_suspects_clot no; general.lab_d_dimer lab_positive"), "dvt") == "d_dimer");
    CHECK(line_of(visit("ankle_injury", 1986, std::string("history.mechanism twist; ") + found + "history.examiner_suspects_clot no; general.lab_d_dimer lab_positive"), "dvt") == "d_dimer");
    CHECK(flag(visit("ankle_injury", 1986, std::string("history.mechanism twist; ") + found + none), "dvt") != "asked_no");
  }
  CHECK(asks(visit("calf_pain", 1986, "leg.calf_tender_vein left yes; leg.calf_swelling left no; history.mechanism no_injury; history.examiner_suspects_clot no"), "dvt", "history.cancer_active"));
}

namespace {
const std::string neither_left = "history.weeks_since_onset 0; history.mechanism no_injury; vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 0; ";
const std::string both_right = "vessel.pulse_dorsalis_pedis right 2; vessel.pulse_posterior_tibial right 2; ";
const std::string cold_pale = "history.weeks_since_onset 0; history.mechanism no_injury; vessel.foot_cold left yes; vessel.foot_colour left colour_pale; vessel.foot_cold right no; ";
}  // namespace

// Red flags page, section 5: "one perfusion sign + one symptom is enough", "rest pain". That severe pain anywhere in the leg counts while the other
// foot has blood is our own rule.
TEST_CASE("planted: a foot without its pulses or cold, the other one with blood, and severe pain of whatever part: blood is cut off; of two feet pulseless alike, or little pain, it is asked") {
  for (const char* why : {"forefoot_pain", "calf_pain", "chronic_knee", "back_leg", "free", "hip_groin"}) {
    for (const char* pain : {"history.pain_at_rest 8", "history.pain_now 9", "history.pain_at_night 10", "history.pain_severe_sudden yes"}) {
      CAPTURE(why);
      CAPTURE(pain);
      CHECK(is_now(visit(why, 1956, neither_left + both_right + pain), "ali"));
      CHECK(is_now(visit(why, 1956, cold_pale + pain), "ali"));
    }
    CAPTURE(why);
    CHECK_FALSE(raised(visit(why, 1956, neither_left + both_right + "history.pain_at_rest 3"), "ali"));
    CHECK_FALSE(raised(visit(why, 1956, neither_left + "vessel.pulse_dorsalis_pedis right 0; vessel.pulse_posterior_tibial right 0; history.pain_at_rest 8"), "ali"));
    // A foot that nobody looked at bars nothing; two that lack it alike do, unless it came suddenly.
    CHECK(is_now(visit(why, 1956, neither_left + "history.pain_at_rest 8"), "ali"));
    CHECK(is_now(visit(why, 1956, neither_left + "vessel.pulse_dorsalis_pedis right 0; vessel.pulse_posterior_tibial right 0; history.pain_severe_sudden yes"), "ali"));
    CHECK_FALSE(raised(visit(why, 1956, neither_left + both_right + "history.pain_at_rest 8; history.rest_pain_foot left no; history.cold_pale_sudden left no"), "ali"));
  }
  // One colder foot whose pulses are full is winter's, whatever hurts elsewhere.
  CHECK_FALSE(raised(visit("chronic_knee", 1956, "history.weeks_since_onset 0; history.mechanism no_injury; vessel.foot_cold left yes; vessel.foot_cold right no; vessel.pulse_dorsalis_pedis left 2; "
                                                 "vessel.pulse_posterior_tibial left 2; history.pain_at_rest 8"), "ali"));
  CHECK(is_now(visit("hip_groin", 1960, "history.weeks_since_onset 0; history.mechanism no_injury; vessel.pulse_femoral left 0; history.pain_severe_sudden yes"), "ali"));
}

// "Pulses newly absent (or no Doppler signal)": section 5.
TEST_CASE("planted: an artery that the Doppler does not hear counts like lost pulses: beside a cold foot, or where neither pulse is felt and the other foot has blood") {
  const std::string silent = "vessel.doppler_arterial_audible left no; ";
  const std::string none = "nerve.sensation_foot_reduced left no; nerve.foot_drop left no; ankle.movement left yes; history.pain_out_of_proportion left no; ";
  CHECK(is_now(visit("calf_pain", 1956, "history.weeks_since_onset 0; history.mechanism no_injury; vessel.foot_cold left yes; vessel.foot_cold right no; " + silent + none), "ali"));
  CHECK(is_now(visit("after_operation", 1966, neither_left + both_right + silent + none), "ali"));
  for (const char* untold : {"nerve.sensation_foot_reduced left not:not_reliable", "nerve.sensation_foot_reduced left not:cannot_answer"}) {
    CAPTURE(untold);
    CHECK(is_now(visit("after_operation", 1966, neither_left + both_right + untold), "ali"));
  }
  CHECK_FALSE(raised(visit("after_operation", 1966, neither_left + both_right + "nerve.sensation_foot_reduced left no"), "ali"));
  CHECK_FALSE(raised(visit("calf_pain", 1956, "history.weeks_since_onset 0; history.mechanism no_injury; vessel.foot_cold left no; vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 2; " + silent + none), "ali"));
}

// Section 0 (nv_check: first web, back of the foot, sole, toe up) and clinical safety, C13 (who cannot tell).
TEST_CASE("planted: the touch and the great toe of the nerve check, and two signs of one side of who cannot tell, stand for a symptom; winter's feet and full pulses do not") {
  for (const char* nerve : {"nerve.touch_first_web left not_felt", "nerve.touch_foot_dorsum left felt_less", "nerve.touch_sole left not_felt", "nerve.power_great_toe_extension left 2"}) {
    CAPTURE(nerve);
    CHECK(is_now(visit("calf_pain", 1956, cold_pale + nerve), "ali"));
    CHECK_FALSE(raised(visit("calf_pain", 1956, "history.weeks_since_onset 0; history.mechanism no_injury; vessel.foot_cold left no; vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 2; " + std::string(nerve)), "ali"));
  }
  for (const char* toes : {"nerve.power_toes_extension left 0", "foot.toes_flexion_active left no"}) {
    CAPTURE(toes);
    CHECK(is_now(visit("calf_pain", 1956, cold_pale + toes), "ali"));
  }
  CHECK(is_now(visit("calf_pain", 1956, cold_pale + "general.answers_reliable no"), "ali"));
  CHECK(is_now(visit("calf_pain", 1956, neither_left + both_right + "general.consciousness mind_pain"), "ali"));
  // Cold like the other with full pulses, a toe that is weak is of a root.
  CHECK_FALSE(raised(visit("back_leg", 1970, "history.weeks_since_onset 0; history.mechanism no_injury; vessel.foot_cold both yes; vessel.pulse_dorsalis_pedis both 2; vessel.pulse_posterior_tibial both 2; "
                                             "nerve.power_great_toe_extension left 3"), "ali"));
  CHECK_FALSE(raised(visit("calf_pain", 1956, cold_pale + "general.answers_reliable yes"), "ali"));
  CHECK_FALSE(raised(visit("calf_pain", 1956, "history.weeks_since_onset 0; history.mechanism no_injury; vessel.foot_cold both yes; vessel.foot_colour both colour_pale; general.answers_reliable no"), "ali"));
  const std::string plaster = "history.weeks_since_onset 0; body.cast left cast_shin+cast_foot; ";
  CHECK(is_now(visit("after_plaster", 1986, plaster + "nerve.touch_first_web left not_felt; ankle.movement left no"), "acs"));
  CHECK(is_now(visit("after_plaster", 1986, plaster + "history.pain_at_rest 9; foot.toes_extension_active left no"), "acs"));
  CHECK(is_now(visit("after_plaster", 1986, plaster + "general.answers_reliable no; vessel.foot_colour left colour_pale; vessel.foot_cold left yes"), "acs"));
  CHECK_FALSE(raised(visit("after_plaster", 1986, plaster + "history.pain_at_rest 9; foot.toes_extension_active left yes; vessel.foot_cold left no"), "acs"));
  CHECK(is_now(visit("after_plaster", 2022, "history.weeks_since_onset 0; body.cast left cast_hip; general.answers_reliable no; vessel.foot_colour left colour_pale; vessel.foot_cold left yes"), "acs"));
  // A snake's bite swells a leg as a blow does, and who cannot tell is felt (section 4: "snakebite").
  CHECK(is_now(visit("wound_or_numb_foot", 2022, "skin.deep_wound left wound_sting_or_snake; leg.tense_compartment left yes; general.answers_reliable no"), "acs"));
}

// Decision rules page, section 24 (times of refill); that the other foot has to be in time is our own rule.
TEST_CASE("planted: colour that comes back late by the time that was measured, while the other foot's is in time, is a sign; late alike on both feet, or of one foot alone, it is none") {
  const std::string pain = "history.weeks_since_onset 0; history.mechanism no_injury; history.rest_pain_foot left yes; vessel.capillary_refill_great_toe left 70; ";
  CHECK(is_now(visit("forefoot_pain", 1956, pain + "vessel.capillary_refill_great_toe right 20"), "ali"));
  CHECK_FALSE(raised(visit("forefoot_pain", 1956, pain + "vessel.capillary_refill_great_toe right 70"), "ali"));
  CHECK_FALSE(raised(visit("forefoot_pain", 1956, pain), "ali"));
}

// C2 ("pulseless or cold limb" may not interrupt an ordinary day): as cold as the other, it is no sign of one foot.
TEST_CASE("planted: one pulse not found in a twisted knee whose foot is as cold as the other, feels and moves asks for a Doppler; a cold foot of one side is now; a plaster over it is opened first") {
  const std::string twisted_knee = "history.mechanism twist; vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 2; " + both_right +
                              "nerve.sensation_foot_reduced left no; ankle.movement left yes; gait.steps_now 4; history.knee_dislocated left no; knee.look_deformity left no; vessel.foot_cold left yes; ";
  CHECK_FALSE(raised(visit("acute_knee", 1996, twisted_knee + "vessel.foot_cold right yes"), "ali"));
  CHECK(asks(visit("acute_knee", 1996, twisted_knee + "vessel.foot_cold right yes"), "ali", "vessel.doppler_arterial_audible"));
  CHECK(is_now(visit("acute_knee", 1996, twisted_knee + "vessel.foot_cold right no"), "ali"));
  const auto under = alert(visit("after_plaster", 1986, cold_pale + "body.cast left cast_shin; nerve.sensation_foot_reduced left yes"), "ali");
  REQUIRE(under);
  CHECK(under->meanwhile.front().text == "msg.meanwhile.open_dressings");
}
