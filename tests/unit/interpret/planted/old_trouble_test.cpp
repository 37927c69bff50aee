// Planted cases of what is old, each beside the danger that it may not hide: weak and numb legs of long standing, feet that are cold in winter,
// the knee and the heel cord of a paralysed leg, a plaster of weeks. Sources: the red flags page (4: pain on stretch in a limb at risk; 5: a sign
// of flow and a symptom, under two weeks; 11: new, under 14 days; 18; 19: a kneecap out of height after an injury), clinical safety C2
// ("pulseless or cold limb" interrupts, and an ordinary day does not) and C3. What counts as known to be old is our own rule. All is invented.
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

const std::string sore_back = "history.back_pain yes; ";
const std::string dry_and_felt = "; history.saddle_numbness no; history.bladder_bowel_change no";
const std::string nothing_new = "; history.both_legs_weak no; history.weakness_getting_worse no";

struct OldLegs {
  const char* what;
  const char* complaint;
  int born;
  std::string story;
};

const std::vector<OldLegs>& old_legs() {
  static const std::vector<OldLegs> all{
      {"polio, told to be old", "back_leg", 1981, "history.weeks_since_onset 1500; history.foot_drop_new both no; nerve.foot_drop both yes; nerve.power_ankle_dorsiflexion both 2"},
      {"polio, of the weeks alone", "back_leg", 1981, "history.weeks_since_onset 1500; nerve.power_ankle_dorsiflexion both 2"},
      {"polio, recorded", "back_leg", 1981, "body.paralysis both yes; nerve.power_knee_extension both 1"},
      {"drops told to be old, undated", "back_leg", 1976, "nerve.foot_drop both yes; history.foot_drop_new both no; nerve.power_great_toe_extension both 2"},
      {"diplegia, a sore back of days", "back_leg", 2007, "body.spastic_tone both yes; history.weeks_since_onset 2; nerve.power_ankle_dorsiflexion both 3; nerve.clonus_ankle both clonus_goes_on"},
      {"muscle disease", "child_alignment", 2018, "history.weeks_since_onset 150; nerve.power_hip_extension both 3"},
      {"frail hips", "hip_groin", 1940, "history.frail yes; history.weeks_since_onset 150; nerve.power_hip_extension both 3"},
      {"girdle pain of pregnancy", "posterior_hip", 1996, "body.pregnancy yes; history.weeks_since_onset 6; nerve.power_hip_flexion both 3"},
      {"a stump and the other foot", "back_leg", 1966, "body.limb_level left through_thigh; nerve.power_hip_flexion left 3; nerve.power_ankle_dorsiflexion right 3"},
      {"feet numb of diabetes", "diabetic_foot", 1960, "history.diabetes yes; history.weeks_since_onset 300; nerve.sensation_foot_reduced both yes"},
      {"feet numb of diabetes, undated", "diabetic_foot", 1960, "history.diabetes yes; nerve.sensation_foot_reduced both yes"},
      {"feet numb of diabetes, a blister of days", "diabetic_foot", 1960, "history.diabetes yes; history.weeks_since_onset 1; nerve.sensation_foot_reduced both yes"},
      {"feet numb of leprosy", "wound_or_numb_foot", 1976, "history.leprosy yes; history.weeks_since_onset 500; nerve.sensation_foot_reduced both yes"},
      {"feeling known lost, a sore back of days", "back_leg", 1960, "body.feeling_lost both yes; history.weeks_since_onset 1; nerve.touch_s1 both felt_less; nerve.sensation_foot_reduced both yes"},
  };
  return all;
}

}  // namespace

TEST_CASE("planted: both legs weak or numb for long are asked whether anything is new, and call by what is new whatever they are") {
  for (const OldLegs& one : old_legs()) {
    CAPTURE(one.what);
    const Bench bench = visit(one.complaint, one.born, sore_back + one.story + dry_and_felt);
    CHECK_FALSE(raised(bench, "ces"));
    CHECK(asks(bench, "ces", "history.weakness_getting_worse"));
    CHECK(asks(bench, "ces", "history.both_legs_weak"));
    const Bench answered = visit(one.complaint, one.born, sore_back + one.story + dry_and_felt + nothing_new);
    CHECK_FALSE(raised(answered, "ces"));
    CHECK(flag(answered, "ces") != "asked_no");
    for (const char* fresh : {"history.saddle_numbness yes", "nerve.saddle_touch left not_felt", "history.bladder_bowel_change yes", "general.bladder_after_ml 300",
                              "history.both_legs_weak yes", "history.weakness_getting_worse yes"}) {
      CAPTURE(fresh);
      CHECK(is_now(visit(one.complaint, one.born, sore_back + one.story + "; " + fresh), "ces"));
    }
  }
}

TEST_CASE("planted: both legs weak call while nobody knows that they are old, of a known cancer whatever the weeks") {
  const std::string weak = "nerve.power_knee_extension both 2";
  CHECK(is_now(visit("back_leg", 1970, sore_back + weak + dry_and_felt + nothing_new), "ces"));
  CHECK(is_now(visit("back_leg", 1970, sore_back + weak + dry_and_felt + nothing_new + "; history.weeks_since_onset 2"), "ces"));
  CHECK(is_now(visit("back_leg", 1960, sore_back + weak + dry_and_felt + "; history.cancer_known yes; history.weeks_since_onset 12"), "ces"));
  CHECK(is_now(visit("back_leg", 1960, sore_back + "nerve.sensation_foot_reduced both yes"), "ces"));
  CHECK(is_now(visit("wound_or_numb_foot", 1960, sore_back + "nerve.sensation_foot_reduced both yes; history.weeks_since_onset 1"), "ces"));
  CHECK(is_now(visit("back_leg", 1960, sore_back + "nerve.foot_drop both yes"), "ces"));
  // An old drop takes the groups that lift the foot with it, and no others.
  CHECK(is_now(visit("back_leg", 1960, sore_back + "history.foot_drop_new both no; nerve.foot_drop both yes; nerve.power_hip_flexion both 2"), "ces"));
  CHECK(is_now(visit("back_leg", 1960, sore_back + "body.spastic_tone left yes; " + weak + "; history.weeks_since_onset 1; history.weakness_getting_worse yes"), "ces"));
  // An old sore back, and two drops that were told to be new.
  const std::string drops = "nerve.foot_drop both yes; nerve.power_ankle_dorsiflexion both 1; history.weeks_since_onset 30";
  CHECK(is_now(visit("back_leg", 1970, sore_back + drops + "; history.foot_drop_new both yes"), "ces"));
  CHECK_FALSE(raised(visit("back_leg", 1970, sore_back + drops), "ces"));
  // An old sore back, and an injury of days.
  Bench fell = visit("back_leg", 1970, sore_back + weak + "; history.weeks_since_onset 200");
  CHECK_FALSE(raised(fell, "ces"));
  fell.exam.injured_on = day(2026, 11, 22);
  CHECK(is_now(fell, "ces"));
}

TEST_CASE("planted: power tried with little effort is asked about before all else; tried well it calls") {
  Bench bench = visit("posterior_hip", 1970, sore_back + "nerve.power_hip_flexion both 3" + dry_and_felt);
  CHECK(is_now(bench, "ces"));
  for (model::Finding& finding : *bench.exam.findings) {
    if (finding.item.text == "nerve.power_hip_flexion" && finding.side == Side::left) {
      finding.quality = std::vector<model::Quality>{model::Quality::effort_limited};
    }
  }
  CHECK_FALSE(raised(bench, "ces"));
  CHECK(asks(bench, "ces", "history.both_legs_weak"));
  CHECK(bench.assess().questions.front().question.text == "alert.ces");
  tell(bench, "nerve.power_knee_extension left 3");
  CHECK(is_now(bench, "ces"));
}

// Section 11: "back or leg pain".
TEST_CASE("planted: pain down both legs from the back is pain enough for legs found weak, and a sign of the cord in one leg is asked about") {
  const std::string legs = "history.back_pain no; history.leg_pain_both yes; nerve.power_ankle_dorsiflexion both ";
  CHECK(is_now(visit("back_leg", 1966, legs + "2; history.weeks_since_onset 1" + dry_and_felt), "ces"));
  CHECK_FALSE(raised(visit("back_leg", 1966, legs + "5; history.weeks_since_onset 1" + dry_and_felt), "ces"));
  CHECK_FALSE(raised(visit("calf_pain", 1990, legs + "4" + dry_and_felt), "ces"));
  const std::string one_leg = "nerve.plantar_response right toe_up; nerve.clonus_ankle right clonus_goes_on; history.weeks_since_onset 1";
  CHECK(asks(visit("back_leg", 1966, sore_back + one_leg + dry_and_felt), "ces", "history.both_legs_weak"));
  CHECK_FALSE(question(visit("back_leg", 1966, sore_back + one_leg + dry_and_felt + "; body.spastic_tone right yes"), "ces"));
}

TEST_CASE("planted: feet cold, blue or tingling with both pulses full are asked about, and call once they feel less, fail or lose a pulse") {
  const std::string full = "; vessel.pulse_dorsalis_pedis both 2; vessel.pulse_posterior_tibial both 3";
  const std::string twist = "history.mechanism twist; ";
  for (const char* winter : {"vessel.foot_cold both yes", "vessel.foot_cold left yes", "vessel.foot_cold both yes; vessel.foot_colour both colour_blue; vessel.capillary_refill_slow both yes",
                             "vessel.foot_colour both colour_pale", "vessel.foot_cold both yes; history.numb_or_tingling both yes; history.weeks_since_onset 0",
                             "body.paralysis left yes; vessel.foot_cold left yes; ankle.movement left no; history.weeks_since_onset 1",
                             "body.spastic_tone both yes; vessel.foot_cold both yes; nerve.power_ankle_dorsiflexion both 3; history.weeks_since_onset 1",
                             "body.feeling_lost both yes; vessel.foot_cold both yes; nerve.sensation_foot_reduced both yes; history.weeks_since_onset 1"}) {
    CAPTURE(winter);
    CHECK_FALSE(raised(visit("ankle_injury", 1990, twist + winter + full), "ali"));
    const Bench answered = visit("ankle_injury", 1990, twist + winter + full + "; nerve.sensation_foot_reduced left no; ankle.movement left yes; nerve.foot_drop left no");
    CHECK_FALSE(raised(answered, "ali"));
  }
  const std::string cold = "vessel.foot_cold both yes";
  CHECK(asks(visit("ankle_injury", 1990, twist + cold + full), "ali", "nerve.sensation_foot_reduced"));
  CHECK(flag(visit("ankle_injury", 1990, twist + cold + full + "; nerve.sensation_foot_reduced both no; ankle.movement both yes"), "ali") == "asked_no");
  for (const char* grave : {"nerve.sensation_foot_reduced left yes", "ankle.movement left no", "nerve.foot_drop left yes", "history.pain_out_of_proportion left yes",
                            "history.cold_pale_sudden left yes", "vessel.doppler_arterial_audible left no", "vessel.pulse_femoral left 0", "vessel.pulse_posterior_tibial left 0",
                            "vessel.pulse_posterior_tibial left 1"}) {
    CAPTURE(grave);
    CHECK(is_now(visit("ankle_injury", 1990, twist + cold + full + "; " + grave), "ali"));
  }
  CHECK(is_now(visit("forefoot_pain", 1960, cold + full + "; history.weeks_since_onset 1; history.rest_pain_foot left yes"), "ali"));
  CHECK_FALSE(raised(visit("ankle_injury", 1990, twist + cold + full + "; history.rest_pain_foot left yes"), "ali"));  // a sprain hurts at rest
  CHECK(is_now(visit("ankle_injury", 1990, twist + cold), "ali"));  // nobody felt for a pulse
  CHECK(is_now(visit("ankle_injury", 1990, twist + cold + "; vessel.pulse_dorsalis_pedis both 2"), "ali"));
}

TEST_CASE("planted: a knee that a paralysed or spastic leg never lifted is no torn extensor; a gap, a new fall and a sound leg are") {
  const std::string limp = "history.mechanism no_injury; knee.straight_leg_raise_active left positive; ";
  for (const char* old : {"body.paralysis left yes; knee.look_patella_height left high", "body.spastic_tone left yes; knee.look_patella_height left high",
                          "body.knee_replaced left yes; knee.look_patella_height left low", "knee.look_patella_height left high"}) {
    CAPTURE(old);
    const Bench bench = visit("chronic_knee", 1970, limp + old + "; history.weeks_since_onset 400");
    CHECK_FALSE(raised(bench, "ext_mech"));
    CHECK(asks(bench, "ext_mech", "knee.quadriceps_gap"));
    CHECK(raised(visit("chronic_knee", 1970, limp + old + "; knee.quadriceps_gap left yes"), "ext_mech"));
  }
  // Past six weeks a gap is referred, not the same day; torn again or fallen these days it is.
  const Bench five_years = visit("chronic_knee", 1966, limp + "knee.quadriceps_gap left yes; history.weeks_since_onset 260");
  CHECK(line_of(five_years, "ext_mech") == "none");
  CHECK(referral_of(five_years, "ext_mech") == "ext_mech");
  CHECK(line_of(visit("chronic_knee", 1966, limp + "knee.quadriceps_gap left yes; history.weeks_since_onset 260; history.fall_recent yes"), "ext_mech") == "gap");
  CHECK(line_of(visit("chronic_knee", 1966, limp + "knee.quadriceps_gap left yes; history.weeks_since_onset 3"), "ext_mech") == "gap_alone");
  // A fall these days is an injury in any complaint.
  CHECK(line_of(visit("chronic_knee", 1971, "history.weeks_since_onset 150; history.fall_recent yes; knee.straight_leg_raise_active left positive"), "ext_mech") == "raised");
  CHECK(line_of(visit("chronic_knee", 1971, "history.weeks_since_onset 150; history.fall_recent yes; knee.straight_leg_raise_active left negative"), "ext_mech") == "none");
  const std::string fell = "history.mechanism fall; body.paralysis left yes; knee.straight_leg_raise_active left positive";
  CHECK_FALSE(raised(visit("acute_knee", 1970, fell), "ext_mech"));
  CHECK(line_of(visit("acute_knee", 1970, fell + "; knee.patellar_tendon_gap left yes"), "ext_mech") == "gap");
}

TEST_CASE("planted: a calf squeeze that moves no foot in a paralysed, spastic or contracted leg is open; with a kick it is torn") {
  for (const char* old : {"body.paralysis left yes", "body.spastic_tone left yes", "body.contracture left contracture_ankle"}) {
    CAPTURE(old);
    const std::string squeeze = std::string(old) + "; ankle.calf_squeeze left absent";
    const Bench bench = visit("calf_pain", 1976, squeeze);
    CHECK_FALSE(raised(bench, "achilles"));
    CHECK(flag(bench, "achilles") != "asked_no");
    CHECK(raised(visit("calf_pain", 1976, squeeze + "; history.kick_to_heel_cord left yes"), "achilles"));
    CHECK(raised(visit("ankle_injury", 1976, squeeze + "; history.mechanism fall"), "achilles"));
  }
  CHECK(raised(visit("calf_pain", 1976, "body.contracture left contracture_hip; ankle.calf_squeeze left absent"), "achilles"));
  CHECK(raised(visit("calf_pain", 1976, "body.paralysis right yes; ankle.calf_squeeze left absent"), "achilles"));
}

TEST_CASE("planted: a stretch that hurts in a plaster of weeks is asked about first; in a new one, beyond the hurt, tense or by another cause it calls") {
  const std::string plaster = "body.cast left cast_shin; knee.stretch_pain_calf left yes; ";
  const Bench stiff = visit("after_plaster", 1996, plaster + "history.weeks_since_onset 5; history.pain_out_of_proportion left no");
  CHECK_FALSE(raised(stiff, "acs"));
  CHECK(stiff.assess().questions.front().question.text == "alert.acs");
  CHECK(asks(stiff, "acs", "history.compartment_causes"));
  for (const char* grave : {"history.weeks_since_onset 0", "history.weeks_since_onset 2", "history.pain_now 1", "history.weeks_since_onset 5; history.pain_out_of_proportion left yes",
                            "history.weeks_since_onset 5; leg.tense_compartment left yes", "history.weeks_since_onset 5; history.compartment_causes left cause_tight_cast",
                            "history.weeks_since_onset 5; history.fall_recent yes", "history.weeks_since_onset 5; history.blood_thinners yes"}) {
    CAPTURE(grave);
    CHECK(is_now(visit("after_plaster", 1996, plaster + grave), "acs"));
  }
  CHECK(is_now(visit("after_operation", 1996, plaster + "history.weeks_since_onset 100"), "acs"));  // the weeks are those of an older trouble
  Bench dated = visit("after_plaster", 1996, plaster + "history.pain_out_of_proportion left no");
  CHECK(is_now(dated, "acs"));
  dated.exam.injured_on = day(2026, 10, 20);
  CHECK_FALSE(raised(dated, "acs"));
  dated.exam.injured_on = day(2026, 11, 22);
  CHECK(is_now(dated, "acs"));
}
