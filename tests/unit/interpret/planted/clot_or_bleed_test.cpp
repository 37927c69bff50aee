// Planted cases of swollen and pulled calves: two legs that swell alike, and blood that runs thin. Sources: the red flags page, section 10 ("unilateral
// new leg swelling"; bleeding risk) and 4, rule acs/boast2014 ("a bleeding disorder or anticoagulant adds risk"), clinical safety C2 and C3, NICE_NG51 for
// oxygen; one line for two equal legs and the bleed of a calf are our own rules. People and findings are invented.
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

Bench legs(int born, const std::string& story) {
  Bench bench = visit("swollen_legs", born, story);
  bench.exam.side.reset();
  return bench;
}
// The lines of a clot: message and side.
std::string clots(const Bench& bench) {
  std::string told;
  for (const auto& one : bench.assess().alerts) {
    if (one.alert.text == "alert.dvt") {
      told += (told.empty() ? "" : ", ") + one.message.text.substr(one.message.text.rfind('.') + 1) + (one.interrupts ? "!" : "") +
              (one.side ? (*one.side == Side::left ? " left" : " right") : " none");
    }
  }
  return told;
}

}  // namespace

TEST_CASE("planted: two legs swollen alike are one line of a clot and of no side; one that points to it has its own") {
  const std::string alike = "leg.calf_swelling both yes; ";
  CHECK(clots(legs(1948, alike + "history.breathless yes; history.weeks_since_onset 30; history.examiner_suspects_clot no")) == "both_chest! none");
  CHECK(clots(legs(1948, "vessel.whole_leg_swollen both yes; history.breathless yes")) == "both_chest! none");
  CHECK(clots(legs(1999, alike + "body.pregnancy yes; history.breathless no; leg.calf_girth_10cm left 378; leg.calf_girth_10cm right 380")) == "both none");
  CHECK(clots(legs(1948, alike + "history.examiner_suspects_clot yes; history.breathless no")) == "both none");
  for (const char* points : {"leg.calf_tender_vein left yes", "vessel.oedema_more_this_side left yes", "vessel.veins_collateral left yes",
                             "leg.calf_girth_10cm left 400; leg.calf_girth_10cm right 375", "vessel.foot_colour left colour_blue"}) {
    CAPTURE(points);
    CHECK(clots(legs(1948, alike + "history.breathless yes; " + points)) == "chest! left, chest! right");
  }
  // Both legs are among the grounds.
  const Bench two = legs(1948, alike + "history.breathless yes");
  std::size_t named = 0;
  const auto lung = alert(two, "dvt");
  REQUIRE(lung.has_value());
  for (const auto& id : lung->because) {
    named += std::any_of(two.exam.findings->begin(), two.exam.findings->end(), [&](const auto& one) { return one.finding == id && one.item.text == "leg.calf_swelling"; }) ? 1U : 0U;
  }
  CHECK(named == 2);
  CHECK(clots(legs(1948, "leg.calf_swelling left yes; leg.calf_swelling right no; history.breathless yes")) == "chest! left");
  CHECK(clots(legs(1948, "leg.calf_swelling left no; leg.calf_swelling right yes; history.breathless yes")) == "chest! right");
}

TEST_CASE("planted: oxygen of old lungs beside a leg swollen for weeks is asked after; lower, or with another sign, it is the chest") {
  for (const char* which : {"leg.calf_swelling both yes; ", "leg.calf_swelling left yes; "}) {
    CAPTURE(which);
    const std::string old = std::string(which) + "history.weeks_since_onset 200; history.examiner_suspects_clot no; history.breathless no; ";
    const Bench lungs = legs(1955, old + "general.respiratory_rate 22; general.oxygen_saturation 91");
    CHECK(clots(lungs).empty());
    CHECK(asks(lungs, "dvt", "history.cancer_active"));
    for (const char* more : {"general.oxygen_saturation 87", "general.oxygen_saturation 91; general.pulse_rate 112", "general.oxygen_saturation 91; history.breathless yes",
                             "general.oxygen_saturation 91; general.blood_pressure_systolic 84", "general.oxygen_saturation 91; history.weeks_since_onset 1"}) {
      CAPTURE(more);
      CHECK(clots(legs(1955, old + more)).find("chest!") != std::string::npos);
    }
  }
}

TEST_CASE("planted: a pulled calf on a blood thinner is a bleed of the same day too, and a compartment by the letter while it hurts on stretch") {
  const std::string pulled = "history.mechanism other_mechanism; knee.stretch_pain_calf left yes; history.pain_out_of_proportion left no; leg.tense_compartment left no; "
                             "leg.calf_swelling left no; history.injury_severe_or_crush no; ";
  for (const char* thin : {"history.blood_thinners yes; ", "history.bleeding_disorder yes; "}) {
    CAPTURE(thin);
    const Bench bench = visit("calf_pain", 1962, pulled + thin);
    CHECK(line_of(bench, "bleed_joint") == "calf");
    CHECK_FALSE(is_now(bench, "bleed_joint"));
    CHECK(meanwhile_says(bench, "bleed_joint", "calf_felt_again"));
    CHECK_FALSE(meanwhile_says(bench, "bleed_joint", "rest_joint"));
    CHECK(is_now(bench, "acs"));
    // Swollen after a hurt: a clot is not all that it may be.
    CHECK(line_of(visit("calf_pain", 1962, std::string(thin) + "history.mechanism twist; leg.calf_swelling left yes"), "bleed_joint") == "calf");
    CHECK(line_of(visit("calf_pain", 1962, std::string(thin) + "history.mechanism no_injury; leg.calf_swelling left yes"), "bleed_joint") == "none");
    CHECK(is_now(visit("calf_pain", 1962, std::string(thin) + "history.mechanism other_mechanism; knee.stretch_pain_calf left yes"), "acs"));
  }
  // The same calf of who takes none.
  const Bench plain = visit("calf_pain", 1962, pulled + "history.blood_thinners no; history.bleeding_disorder no");
  CHECK(plain.assess().alerts.empty());
}

// Decision rules page, section 6a (unlikely, D-dimer positive: scan); red flags page, section 10 ("swelling or pain"), C3 ("calf pain not explained by a recorded
// injury") and decision rules page, section 24 ("unilateral new oedema").
TEST_CASE("planted: a positive D-dimer is never answered no, and beside calf pain without an injury or water in one leg it is scanned the same day") {
  const std::string nothing = "history.mechanism no_injury; history.weeks_since_onset 0; history.cancer_active no; history.leg_paralysed_or_plaster left no; history.immobile_or_surgery_recent no;"
                              "vessel.whole_leg_swollen left no; vessel.veins_collateral left no; history.clot_before no; history.other_cause_as_likely left no; history.breathless no;"
                              "history.examiner_suspects_clot no; leg.calf_swelling left no; leg.calf_tender_vein left no; ";
  const std::string positive = nothing + "general.lab_d_dimer lab_positive; ";
  CHECK(line_of(visit("calf_pain", 1986, positive), "dvt") == "d_dimer");
  for (const char* beside : {"history.pain_site left site_calf", "history.pain_site left site_whole_limb+site_knee_back", "vessel.oedema_more_this_side left yes",
                             "vessel.oedema_pitting left 2+; vessel.oedema_pitting right 0"}) {
    CAPTURE(beside);
    CHECK(line_of(visit("whole_limb", 1986, positive + beside), "dvt") == "d_dimer");
    CHECK_FALSE(is_now(visit("whole_limb", 1986, positive + beside), "dvt"));
    CHECK(is_now(visit("whole_limb", 1986, positive + beside + "; history.breathless yes"), "dvt"));  // section 10: with it, now
    CHECK(line_of(visit("whole_limb", 1986, positive + beside + "; general.scan_leg_veins left scan_no_clot_seen"), "dvt") == "none");
    CHECK(line_of(visit("whole_limb", 1986, positive + beside + "; general.scan_leg_veins right scan_no_clot_seen"), "dvt") == "d_dimer");
    CHECK_FALSE(raised(visit("whole_limb", 1986, nothing + beside + "; general.lab_d_dimer lab_negative"), "dvt"));
  }
  // Nothing of the leg beside it, an injury that explains the pain, both legs alike, or scanned: no line, and no answer that is a no.
  for (const char* beside : {"history.pain_site left site_knee_front", "history.pain_site left site_calf; history.mechanism twist", "vessel.oedema_pitting left 2+; vessel.oedema_pitting right 2+",
                             "vessel.oedema_more_this_side left no", "history.pain_site left site_calf; general.scan_leg_veins left scan_no_clot_seen"}) {
    CAPTURE(beside);
    const Bench bench = visit("whole_limb", 1986, positive + beside);
    CHECK_FALSE(raised(bench, "dvt"));
    CHECK(flag(bench, "dvt") == "cannot_answer");
  }
  CHECK(flag(visit("whole_limb", 1986, nothing + "general.lab_d_dimer lab_negative"), "dvt") == "asked_no");
}

// Section 10: "unilateral new leg swelling". From over six weeks on is our own rule, as elsewhere.
TEST_CASE("planted: a leg long swollen, as well explained and not suspected asks for no day; new, painful, tested or not explained it does") {
  const std::string veins = "history.mechanism no_injury; leg.calf_swelling left yes; vessel.veins_varicose left yes; leg.calf_girth_10cm left 380; leg.calf_girth_10cm right 370;"
                            "history.cancer_active no; history.immobile_or_surgery_recent no; history.clot_before no; history.leg_paralysed_or_plaster left no; leg.calf_tender_vein left no;"
                            "vessel.whole_leg_swollen left no; vessel.veins_collateral left no; vessel.oedema_more_this_side left yes; history.breathless no; general.pulse_rate 80;"
                            "history.weeks_since_onset 300; history.other_cause_as_likely left yes; history.examiner_suspects_clot no; ";
  for (const char* weeks : {"history.weeks_since_onset 300", "history.weeks_since_onset 7"}) {
    const Bench old = visit("swollen_legs", 1960, veins + weeks);
    CHECK_FALSE(alert(old, "dvt"));
    CHECK_FALSE(referred(old, "dvt"));
    CHECK(flag(old, "dvt") == "cannot_answer");
  }
  for (const char* day : {"history.weeks_since_onset 6", "history.weeks_since_onset 0", "leg.calf_tender_vein left yes", "history.pain_site left site_calf", "history.other_cause_as_likely left no; vessel.oedema_more_this_side left no",
                          "history.examiner_suspects_clot unsure"}) {
    CAPTURE(day);
    CHECK(line_of(visit("swollen_legs", 1960, veins + day), "dvt") == "under_two");
  }
  CHECK(line_of(visit("calf_pain", 1960, veins), "dvt") == "under_two");
  CHECK(line_of(visit("swollen_legs", 1960, veins + "general.lab_d_dimer lab_positive"), "dvt") == "d_dimer");
  CHECK(line_of(visit("swollen_legs", 1960, veins + "history.examiner_suspects_clot yes"), "dvt") == "raised");
  CHECK(line_of(visit("swollen_legs", 1960, veins + "history.cancer_active yes; history.clot_before yes; history.immobile_or_surgery_recent yes"), "dvt") == "points");
  CHECK(is_now(visit("swollen_legs", 1960, veins + "history.breathless yes"), "dvt"));
}

// NICE_QS201: the score is for adults. Section 10: "likely or undetermined: raised"; section 0: a rule lowers no flag. That nothing else explains it is our own rule.
TEST_CASE("planted: under 18 no points are made: a swollen or tender leg that nothing else explains is scanned the same day, and else it is asked") {
  const std::string calf = "history.mechanism no_injury; history.weeks_since_onset 0; history.cancer_active no; history.leg_paralysed_or_plaster left no; history.immobile_or_surgery_recent no;"
                           "vessel.whole_leg_swollen left no; vessel.veins_collateral left no; vessel.oedema_more_this_side left no; history.clot_before no; history.breathless no;"
                           "history.examiner_suspects_clot no; body.pregnancy no; ";
  const auto at_17 = [&](const std::string& story) { return visit("calf_pain", 2009, calf + story); };
  for (const char* found : {"leg.calf_swelling left yes; leg.calf_tender_vein left yes; ", "leg.calf_swelling left yes; leg.calf_tender_vein left no; ", "leg.calf_swelling left no; leg.calf_tender_vein left yes; "}) {
    CAPTURE(found);
    CHECK(line_of(at_17(std::string(found) + "history.other_cause_as_likely left no"), "dvt") == "raised");
    CHECK_FALSE(is_now(at_17(std::string(found) + "history.other_cause_as_likely left no"), "dvt"));
    CHECK_FALSE(raised(at_17(found), "dvt"));
    CHECK(asks(at_17(found), "dvt", "history.other_cause_as_likely"));
    const Bench explained = at_17(std::string(found) + "history.other_cause_as_likely left yes");
    CHECK_FALSE(raised(explained, "dvt"));
    CHECK(flag(explained, "dvt") == "cannot_answer");
  }
  // At 18 the points are made; nothing found is a no at 17 too.
  CHECK(line_of(visit("calf_pain", 2008, calf + "leg.calf_swelling left yes; leg.calf_tender_vein left yes; leg.calf_girth_10cm left 375; leg.calf_girth_10cm right 360; history.other_cause_as_likely left no"), "dvt") == "under_two");
  CHECK(flag(at_17("leg.calf_swelling left no; leg.calf_tender_vein left no; history.other_cause_as_likely left no"), "dvt") == "asked_no");
}

// Section 10: urgency same_day at the lower tier too, so it has its line, its day and its answer (C2, C14).
TEST_CASE("planted: fewer than two points are an alert of the same day for a D-dimer, of one leg or of both, which interrupts nobody and sends nobody to a scan") {
  const std::string none = "history.mechanism no_injury; history.weeks_since_onset 1; history.breathless no; history.cancer_active no; history.immobile_or_surgery_recent no; history.clot_before no;"
                           "history.leg_paralysed_or_plaster both no; vessel.whole_leg_swollen both no; vessel.oedema_more_this_side both no; vessel.veins_collateral both no;"
                           "leg.calf_tender_vein both no; history.other_cause_as_likely both no; leg.calf_girth_10cm both 370; history.examiner_suspects_clot no; ";
  CHECK(clots(legs(1970, none + "leg.calf_swelling left yes; leg.calf_swelling right no")) == "under_two left");
  CHECK(clots(legs(1970, none + "leg.calf_swelling both yes")) == "both_under_two none");
  const Bench one = visit("calf_pain", 1970, none + "leg.calf_swelling left yes; leg.calf_swelling right no");
  CHECK_FALSE(referred(one, "dvt"));
  CHECK_FALSE(meanwhile_says(one, "dvt", "scan_route"));
  CHECK(meanwhile_says(one, "dvt", "measure_calves"));
  CHECK(meanwhile_says(visit("calf_pain", 1970, none + "leg.calf_swelling left yes; leg.calf_swelling right no; history.examiner_suspects_clot yes"), "dvt", "scan_route"));
}

// Of two values that differ the one that raises more counts, and so does its sentence.
TEST_CASE("planted: a D-dimer that was negative and then positive is scanned, and not taken once more") {
  Bench bench = visit("calf_pain", 1986,
                      "history.mechanism no_injury; leg.calf_swelling left yes; leg.calf_tender_vein left no; history.breathless no; history.cancer_active no; history.immobile_or_surgery_recent no;"
                      "history.clot_before no; history.leg_paralysed_or_plaster left no; vessel.whole_leg_swollen left no; vessel.oedema_more_this_side left no; vessel.veins_collateral left no;"
                      "history.other_cause_as_likely left no; history.examiner_suspects_clot no; general.lab_d_dimer lab_negative");
  CHECK_FALSE(alert(bench, "dvt"));
  model::Finding again = bench.find("general.lab_d_dimer");
  again.finding = id_of(901);
  again.value = model::Choice{{"lab_positive"}};
  bench.exam.findings->push_back(again);
  CHECK(line_of(bench, "dvt") == "d_dimer");
  bench.find("general.lab_d_dimer").value = model::Choice{{"lab_not_done"}};
  CHECK(line_of(bench, "dvt") == "d_dimer");
}
