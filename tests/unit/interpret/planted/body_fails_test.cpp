// Planted cases in which the body fails, or the leg, and the weeks of the complaint, an old pain, a temperature or the word "well" made them
// silent. Sources: clinical safety C2, C3, C13; the red flags page, sections 4 to 10, 22 and its summary of urgency; what is our own rule says
// so where it stands. All is invented; the day is 2026-11-24.
#include "tests/outside/knee_document.hpp"

using namespace limbledger;
using limbledger::tests::KneeVisit;
using limbledger::tests::visit_with;

namespace {

// The line of an alert: its message's last word, with "!" where it interrupts.
std::string failing_line(const KneeVisit& visit, const std::string& name) {
  for (const interpret::Alert& one : visit.assess().alerts) {
    if (one.alert.text == "alert." + name && (!one.side || *one.side == model::Side::left)) {
      return one.message.text.substr(one.message.text.rfind('.') + 1) + (one.interrupts ? "!" : "");
    }
  }
  return "none";
}
bool failing_asks(const KneeVisit& visit, const std::string& name, const std::string& item) {
  for (const interpret::Question& one : visit.assess().questions) {
    if (one.question.text == "alert." + name) {
      return std::any_of(one.ask.begin(), one.ask.end(), [&](const interpret::Ask& ask) { return ask.item.text == item; });
    }
  }
  return false;
}

const std::string failing_no_pulse = "vessel.pulse_dorsalis_pedis left grade:0;vessel.pulse_posterior_tibial left grade:0";
const std::string failing_felt = "vessel.pulse_dorsalis_pedis left grade:2;vessel.pulse_posterior_tibial left grade:2";
const std::string failing_cold = "vessel.foot_cold left answer:yes";
const std::string failing_weeks_3 = ";history.weeks_since_onset midline count:3";
const std::string failing_still = ";ankle.movement left answer:no";
const std::string failing_all_numb = ";nerve.sensation_loss_level left choice:loss_whole_foot_or_more";

}  // namespace

// C2 (pulseless or cold limb interrupts), section 5; that what is of today is not dated by the complaint is our own rule.
TEST_CASE("planted: a foot without its pulses that fails, was hurt these days or lies in a plaster is of today, whatever the weeks and an old pain say") {
  const std::string old_pain = ";history.rest_pain_over_2_weeks left answer:yes";
  const auto interrupts = [](const KneeVisit& visit) { return failing_line(visit, "ali").ends_with("!"); };
  CHECK(interrupts(visit_with("free", "1980-01-01", failing_no_pulse + ";" + failing_cold + failing_still + old_pain + ";history.weeks_since_onset midline count:0", "2026-11-24")));
  CHECK(interrupts(visit_with("free", "1980-01-01", failing_no_pulse + ";" + failing_cold + old_pain, "2026-11-24")));
  for (const std::string& weeks : {std::string(), failing_weeks_3, std::string(";history.weeks_since_onset midline count:8")}) {
    CAPTURE(weeks);
    CHECK(interrupts(visit_with("free", "1980-01-01", failing_no_pulse + failing_still + failing_all_numb + weeks)));
    CHECK(interrupts(visit_with("free", "1980-01-01", failing_no_pulse + ";nerve.foot_drop left answer:yes" + weeks)));
    CHECK(interrupts(visit_with("free", "1980-01-01", failing_no_pulse + ";nerve.power_ankle_dorsiflexion left grade:1" + weeks)));
    CHECK(interrupts(visit_with("free", "1980-01-01", failing_no_pulse + failing_all_numb + weeks)));
  }
  CHECK(interrupts(visit_with("after_plaster", "1980-01-01", failing_cold + failing_still + failing_weeks_3 + ";body.cast left choices:cast_shin;history.numb_or_tingling left answer:yes")));
  CHECK(interrupts(visit_with("after_plaster", "1980-01-01", failing_cold + failing_weeks_3 + ";body.cast left choices:cast_shin;history.numb_or_tingling left answer:yes")));
  CHECK(interrupts(visit_with("free", "1980-01-01", failing_cold + ";history.rest_pain_foot left answer:yes;nerve.foot_drop left answer:yes;"
                                                              "vessel.pulse_dorsalis_pedis left grade:0;vessel.pulse_posterior_tibial left not:unable")));
  // A vessel wide behind the knee sends what closes the foot.
  CHECK(interrupts(visit_with("free", "1980-01-01", failing_cold + failing_weeks_3 + ";history.numb_or_tingling left answer:yes;vessel.pulse_popliteal_broad left answer:yes")));
}

TEST_CASE("planted: the pulses of groin and knee count where none of the foot is felt, and both legs weak is a symptom of a cold foot") {
  const std::string groin = "vessel.pulse_femoral left grade:0";
  CHECK(failing_line(visit_with("free", "1950-01-01", failing_cold + ";" + groin), "ali") == "raised!");
  CHECK(failing_line(visit_with("free", "1950-01-01", failing_cold + ";vessel.pulse_popliteal left grade:0"), "ali") == "raised!");
  CHECK(failing_line(visit_with("free", "1950-01-01", failing_cold + ";history.both_legs_weak midline answer:yes;history.weeks_since_onset midline count:0"), "ali") == "raised!");
  CHECK(failing_line(visit_with("after_amputation", "1950-01-01", failing_cold + ";" + groin + ";body.limb_level left choice:through_thigh;history.cold_pale_sudden left answer:yes"), "ali") ==
        "stump!");
  // An ankle hurt, and no pulse found behind the knee: no foot that is cut off.
  CHECK(failing_line(visit_with("ankle_injury", "1981-02-01", "vessel.pulse_popliteal left grade:0;history.pain_out_of_proportion left answer:yes;history.weeks_since_onset midline count:0"), "ali") ==
        "none");
  // Pulses of the foot that are felt, and a groin's that was lost for years in a foot that walks.
  CHECK(failing_line(visit_with("free", "1950-01-01", failing_cold + ";" + groin + ";" + failing_felt + failing_weeks_3), "ali") == "none");
  CHECK(failing_line(visit_with("calf_pain", "1950-01-01", groin + ";vessel.foot_cold left answer:no;ankle.movement left answer:yes;history.weeks_since_onset midline count:80"), "ali") ==
        "none");
}

TEST_CASE("planted: weeks take no question away, and what is known to be old is of no day") {
  const KneeVisit open = visit_with("free", "1960-01-01", failing_no_pulse + failing_weeks_3);
  CHECK(failing_line(open, "ali") == "none");
  CHECK(failing_asks(open, "ali", "ankle.movement"));
  const KneeVisit moves = visit_with("free", "1960-01-01", failing_no_pulse + failing_weeks_3 + ";ankle.movement left answer:yes");
  CHECK(failing_line(moves, "ali") == "none");
  CHECK_FALSE(failing_asks(moves, "ali", "ankle.movement"));
  // The ordinary neighbour: a numb foot of somebody with diabetes and poor pulses for months is threatened, and no emergency of today.
  const KneeVisit clti = visit_with("diabetic_foot", "1950-01-01", failing_no_pulse + ";history.diabetes midline answer:yes;nerve.sensation_foot_reduced left answer:yes;ankle.movement left answer:yes;"
                                                                                 "history.rest_pain_over_2_weeks left answer:yes;history.weeks_since_onset midline count:20");
  CHECK(failing_line(clti, "ali") == "none");
  CHECK(failing_line(clti, "clti") == "raised");
  CHECK(failing_line(visit_with("free", "1960-01-01", failing_cold + failing_still + failing_weeks_3 + ";body.paralysis left answer:yes"), "ali") == "none");
  CHECK(failing_line(visit_with("free", "1960-01-01", failing_cold + failing_still + failing_weeks_3 + ";" + failing_felt), "ali") == "none");
  // Cold and numb for long, and nobody felt for a pulse: whether it moves is asked.
  const KneeVisit failing_numb = visit_with("free", "1960-01-01", failing_cold + failing_weeks_3 + ";nerve.sensation_foot_reduced left answer:yes");
  CHECK(failing_line(failing_numb, "ali") == "none");
  CHECK(failing_asks(failing_numb, "ali", "ankle.movement"));
}

// Section 7: now if sepsis signs; section 22, severe; C2: deep spreading infection or sepsis interrupts. One sign that fails is enough: our own rule.
TEST_CASE("planted: low pressure, fast breath, a changed mind or little oxygen beside an infection is now, whatever temperature and 'unwell' say") {
  const std::string wound = "skin.ulcer left answer:yes;skin.redness_spreading left answer:no;skin.infection_signs left choices:sign_redness\",\"sign_pus;";
  const std::string knee = "history.weeks_since_onset midline count:0;knee.look_skin_hot_red left answer:yes;knee.effusion_stroke left grade:3+;knee.joint_line_medial_tender left answer:yes;"
                           "knee.flexion_passive left not:pain;";
  const std::string hip = "hip.pain_passive_severe left answer:yes;";
  const std::string cool = ";general.temperature midline cel:37.0;general.pulse_rate midline count:84;history.unwell midline answer:no;history.fever midline answer:no";
  const std::string bone = "history.mechanism midline choice:no_injury;skin.sinus_draining left answer:yes;";
  struct Infected {
    std::string complaint;
    std::string lines;
    std::string alert;
    std::string line;
    std::string ordinary;
  };
  const std::vector<Infected> all{{"wound_or_numb_foot", wound, "nsti", "ill!", "none"},
                                  {"diabetic_foot", wound + "history.diabetes midline answer:yes;", "df_infect", "severe!", "infected"},
                                  {"chronic_knee", knee, "septic_adult", "ill!", "raised"},
                                  {"chronic_knee", "knee.look_skin_hot_red left answer:yes;", "septic_adult", "ill!", "none"},
                                  {"hip_groin", hip, "septic_adult", "hip_ill!", "none"},
                                  {"ankle_injury", "ankle.hot_red left answer:yes;", "septic_adult", "ankle_ill!", "none"},
                                  {"forefoot_pain", "foot.mtp_first_hot_red left answer:yes;", "septic_adult", "toe_ill!", "none"},
                                  {"free", bone, "osteomyelitis", "ill!", "sinus"}};
  for (const Infected& one : all) {
    CAPTURE(one.complaint);
    CAPTURE(one.lines);
    CHECK(failing_line(visit_with(one.complaint, "1960-01-01", one.lines + "history.sickle_cell midline answer:no" + cool), one.alert) == one.ordinary);
    for (const char* sign : {"general.blood_pressure_systolic midline mm_hg:75", "general.respiratory_rate midline count:32", "general.consciousness midline choice:mind_new_confusion",
                             "general.oxygen_saturation midline count:84", "general.pulse_rate midline count:144"}) {
      CAPTURE(sign);
      CHECK(failing_line(visit_with(one.complaint, "1960-01-01", one.lines + sign), one.alert) == one.line);
      const std::string beside = std::string(sign).starts_with("general.pulse") ? ";general.temperature midline cel:37.0" : cool;
      CHECK(failing_line(visit_with(one.complaint, "1960-01-01", one.lines + sign + beside), one.alert) == one.line);
    }
  }
  // Pressure of 91 and 20 breaths are no sign; at 90 NICE NG51 begins (high risk: 90 or below).
  CHECK(failing_line(visit_with("chronic_knee", "1960-01-01", knee + "general.blood_pressure_systolic midline mm_hg:91;general.respiratory_rate midline count:20"), "septic_adult") == "raised");
}

// NICE NG51 (2016), tables for children under 5 and of 5 to 11 years, and for adults: high risk. Pressure: 70 and two a year
// (J Trauma Acute Care Surg 2019;86(3):448-453).
TEST_CASE("planted: a child's infected joint is now by a child's signs, and not by an adult's") {
  const std::string limps = "gait.limp midline answer:yes;hip.pain_passive_severe left answer:yes;general.temperature midline cel:38.7;";
  const auto child = [&](const std::string& sign) { return failing_line(visit_with("limping_child", "2021-06-01", limps + sign), "septic_child"); };
  CHECK(child("general.respiratory_rate midline count:28;general.blood_pressure_systolic midline mm_hg:88;general.pulse_rate midline count:129") == "raised");
  for (const char* sign : {"general.respiratory_rate midline count:44", "general.blood_pressure_systolic midline mm_hg:72", "general.consciousness midline choice:mind_voice",
                           "general.oxygen_saturation midline count:88"}) {
    CAPTURE(sign);
    CHECK(child(sign) == "ill!");
  }
  struct HighRisk {
    std::string born;
    int breaths, pulse;
  };
  // Examined on 2026-11-24; both ends of each band of years.
  const std::vector<HighRisk> bands{{"2025-12-01", 60, 160}, {"2025-11-01", 50, 150}, {"2023-12-01", 50, 150}, {"2023-11-01", 40, 140}, {"2021-12-01", 40, 140},
                                    {"2021-11-01", 29, 130}, {"2020-12-01", 29, 130}, {"2020-11-01", 27, 120}, {"2018-12-01", 27, 120}, {"2018-11-01", 25, 115},
                                    {"2014-12-01", 25, 115}};
  for (const HighRisk& one : bands) {
    CAPTURE(one.born);
    const auto with = [&](const std::string& item, int count) {
      return failing_line(visit_with("limping_child", one.born, limps + item + " midline count:" + std::to_string(count)), "septic_child");
    };
    CHECK(with("general.respiratory_rate", one.breaths) == "ill!");
    CHECK(with("general.respiratory_rate", one.breaths - 1) != "ill!");
    CHECK(with("general.pulse_rate", one.pulse) == "ill!");
    CHECK(with("general.pulse_rate", one.pulse - 1) != "ill!");
  }
}

// Section 10 and C2: chest symptoms with a swollen leg.
TEST_CASE("planted: a swollen leg beside fast breath, little oxygen or low pressure is now, whatever is told of breathlessness") {
  for (const char* told : {"history.breathless midline answer:no", "history.breathless midline answer:unsure", "general.pulse_rate midline count:98"}) {
    const std::string calf = std::string("leg.calf_swelling left answer:yes;") + told;
    CHECK(failing_line(visit_with("calf_pain", "1980-01-01", calf), "dvt") == "none");
    for (const char* sign : {";general.oxygen_saturation midline count:82", ";general.respiratory_rate midline count:34", ";general.blood_pressure_systolic midline mm_hg:80"}) {
      CHECK(failing_line(visit_with("calf_pain", "1980-01-01", calf + sign), "dvt") == "chest!");
    }
    CHECK(failing_line(visit_with("calf_pain", "1980-01-01", calf + ";general.oxygen_saturation midline count:96;general.respiratory_rate midline count:16"), "dvt") == "none");
  }
}

// Section 4: a bleeding disorder and blood thinners put a leg in danger; that a tense leg of who cannot tell is then raised is our own rule.
TEST_CASE("planted: a tense leg in who cannot tell of pain and bleeds easily is raised") {
  const std::string tense = "leg.tense_compartment left answer:yes;history.memory_poor midline answer:yes";
  CHECK(failing_line(visit_with("calf_pain", "1942-01-01", tense + ";history.blood_thinners midline answer:yes"), "acs") == "untold!");
  CHECK(failing_line(visit_with("calf_pain", "1942-01-01", tense + ";history.bleeding_disorder midline answer:yes"), "acs") == "untold!");
  CHECK(failing_line(visit_with("calf_pain", "1942-01-01", tense + ";history.blood_thinners midline answer:no;history.bleeding_disorder midline answer:no"), "acs") == "none");
  CHECK(failing_line(visit_with("calf_pain", "1942-01-01", "leg.tense_compartment left answer:no;history.memory_poor midline answer:yes;history.blood_thinners midline answer:yes"), "acs") ==
        "none");
  // What is found on the other leg lowers nothing.
  CHECK(failing_line(visit_with("calf_pain", "1942-01-01", tense + ";leg.tense_compartment right answer:yes;history.blood_thinners midline answer:yes"), "acs") == "untold!");
}

// LEE2007, SCOTT2013: looked at, never sprung. That no day of injury is needed is our own rule.
TEST_CASE("planted: a pelvis out of shape needs no day of injury, and beside signs of shock no injury at all") {
  const std::string shape = "pelvis.injury_deformity midline answer:yes";
  const std::string shock = ";general.blood_pressure_systolic midline mm_hg:75;general.pulse_rate midline count:140";
  CHECK(failing_line(visit_with("free", "1980-01-01", shape + shock), "pelvic_fx") == "raised");
  CHECK(failing_line(visit_with("free", "1980-01-01", shape), "pelvic_fx") == "raised");
  CHECK(failing_line(visit_with("free", "1980-01-01", shape + shock + ";history.mechanism midline choice:no_injury"), "pelvic_fx") == "raised");
  CHECK(failing_line(visit_with("free", "1980-01-01", "pelvis.blood_at_meatus midline answer:yes" + shock), "pelvic_fx") == "raised");
  // Of an injury of last year, or none, and a person who is well.
  CHECK(failing_line(visit_with("free", "1980-01-01", shape + ";general.blood_pressure_systolic midline mm_hg:124", "2025-11-01"), "pelvic_fx") == "none");
  CHECK(failing_line(visit_with("free", "1980-01-01", shape + ";history.mechanism midline choice:no_injury"), "pelvic_fx") == "none");
}

// C13 has dead tissue with poor pulses; that pulses nobody could feel for count beside dead tissue is our own rule.
TEST_CASE("planted: dead tissue of a foot whose pulses could not be felt for is the same day") {
  const std::string unable = ";vessel.pulse_dorsalis_pedis left not:unable;vessel.pulse_posterior_tibial left not:unable";
  const std::string dead = "skin.gangrene left choice:gangrene_dry";
  CHECK(failing_line(visit_with("free", "1980-01-01", dead + unable + ";history.weeks_since_onset midline count:1"), "clti") == "dead_unfelt");
  CHECK(failing_line(visit_with("free", "1980-01-01", dead + unable), "clti") == "dead_unfelt");
  CHECK(failing_line(visit_with("free", "1980-01-01", dead + unable + failing_weeks_3), "clti") == "dead_unfelt_long");
  CHECK(failing_line(visit_with("free", "1980-01-01", dead + ";" + failing_felt), "clti") == "none");
  CHECK(failing_line(visit_with("free", "1980-01-01", "skin.gangrene left choice:gangrene_none" + unable), "clti") == "none");
}
