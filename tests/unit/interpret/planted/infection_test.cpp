// Planted cases of infection and of a person ill as a whole that stood silent, or were told as answered no: a red foot with whole skin, a joint that
// still bends, a replaced joint, the first three months, a fever that a drug hides, a sign that fails alone. Each beside its quiet neighbour.
// Sources: the red flags page, sections 6 to 9, 15, 21 and 22; clinical safety, C2 and C3; NICE NG51 (2016); what is our own rule says so where it
// stands. All is invented; the day is 2026-11-24.
#include "tests/outside/knee_document.hpp"

using namespace limbledger;
using limbledger::tests::KneeVisit;
using limbledger::tests::visit_with;

namespace {

// The line of an alert: its message's last word, with "!" where it interrupts.
std::string ill_line(const KneeVisit& visit, const std::string& name, model::Side of = model::Side::left) {
  for (const interpret::Alert& one : visit.assess().alerts) {
    if (one.alert.text == "alert." + name && (!one.side || *one.side == of)) {
      return one.message.text.substr(one.message.text.rfind('.') + 1) + (one.interrupts ? "!" : "");
    }
  }
  return "none";
}
std::string ill_flag(const KneeVisit& visit, const std::string& name) {
  for (const interpret::Flag& one : visit.assess().flags) {
    if (one.flag.text == "alert." + name && (!one.side || one.side == model::Side::left)) {
      return std::string(wire::type_of<interpret::FlagAnswer>().words[static_cast<std::size_t>(one.answer)]);
    }
  }
  return "no flag";
}
bool ill_asks(const KneeVisit& visit, const std::string& name, const std::string& item) {
  for (const interpret::Question& one : visit.assess().questions) {
    if (one.question.text == "alert." + name && (!one.side || *one.side == model::Side::left)) {
      return std::any_of(one.ask.begin(), one.ask.end(), [&](const interpret::Ask& ask) { return ask.item.text == item; });
    }
  }
  return false;
}
bool ill_names(const KneeVisit& visit, const std::string& name, std::size_t grounds) {
  for (const interpret::Alert& one : visit.assess().alerts) {
    if (one.alert.text == "alert." + name) {
      return one.because.size() >= grounds;
    }
  }
  return false;
}

const std::string ill_unhurt = "history.mechanism midline choice:no_injury;";
const std::string ill_new = ill_unhurt + "history.weeks_since_onset midline count:0;";
const std::string ill_cool = "history.fever midline answer:no;general.temperature midline cel:37.2;history.unwell midline answer:no;";
const std::string ill_adult = "1966-01-01";
const std::string ill_seven_weeks = "2026-10-05";

}  // namespace

// C2: deep spreading infection or sepsis interrupts. That heat or a failing body beside a red foot is enough is our own rule: gout and a collapsing
// foot are red as well.
TEST_CASE("planted: a hot red foot with whole skin and the signs of sepsis is now, with a fever the same day, and without either is asked about") {
  const std::string red = ill_unhurt + "skin.intact left answer:yes;history.diabetes midline answer:no;foot.hot_red_swollen left answer:yes;";
  for (const char* complaint : {"forefoot_pain", "wound_or_numb_foot", "diabetic_foot", "heel_pain", "free"}) {
    CAPTURE(complaint);
    for (const char* looked : {"", "skin.infection_signs left choices:none_of_these;", "skin.redness_spreading left answer:no;"}) {
      CAPTURE(looked);
      CHECK(ill_line(visit_with(complaint, ill_adult, red + looked + "general.temperature midline cel:39.4;general.pulse_rate midline count:118"), "nsti") == "red_foot_ill!");
      CHECK(ill_line(visit_with(complaint, ill_adult, red + looked + "general.consciousness midline choice:mind_new_confusion"), "nsti") == "red_foot_ill!");
      CHECK(ill_line(visit_with(complaint, ill_adult, red + looked + "general.temperature midline cel:38.4;general.pulse_rate midline count:82"), "nsti") == "red_foot_fever");
    }
    CHECK(ill_line(visit_with(complaint, ill_adult, red + ill_cool + "general.pulse_rate midline count:98;general.respiratory_rate midline count:22"), "nsti") == "none");
  }
  const std::string by_two = ill_unhurt + "vessel.foot_colour left choice:colour_red;vessel.foot_warm left answer:yes;";
  CHECK(ill_line(visit_with("free", ill_adult, by_two + "general.temperature midline cel:39.6;general.pulse_rate midline count:112"), "nsti") == "red_foot_ill!");
  CHECK(ill_line(visit_with("free", ill_adult, "vessel.foot_warm left answer:yes;general.temperature midline cel:39.6;general.pulse_rate midline count:112"), "nsti") == "none");
  CHECK(ill_asks(visit_with("free", ill_adult, red), "nsti", "general.temperature"));
  CHECK(ill_names(visit_with("free", ill_adult, red + "general.temperature midline cel:39.4;general.pulse_rate midline count:118"), "nsti", 3));
}

// NICE NG51, adults: 25 breaths or more, a pressure of 90 or below, a pulse of 130 or more, each high risk by itself; 21 to 24 breaths are not.
// WSES2018 counts more than 20 breaths and a pressure below 90 beside another sign.
TEST_CASE("planted: an adult's lone breaths are a danger from 25 and a pressure at 90, and 21 breaths are a sign to be counted") {
  const std::string knee = ill_new + "knee.look_skin_hot_red left answer:yes;knee.effusion_stroke left grade:2+;knee.joint_line_medial_tender left answer:yes;"
                                     "knee.flexion_active left 80;";
  const auto line = [&](const std::string& born, const std::string& signs) { return ill_line(visit_with("chronic_knee", born, knee + signs), "septic_adult"); };
  for (const char* quiet : {"general.respiratory_rate midline count:21", "general.respiratory_rate midline count:24", "general.blood_pressure_systolic midline mm_hg:91"}) {
    CAPTURE(quiet);
    CHECK(line(ill_adult, quiet) == "raised");
    CHECK(ill_line(visit_with("calf_pain", ill_adult, std::string("leg.calf_swelling left answer:yes;") + quiet), "dvt") == "none");
  }
  for (const char* danger : {"general.respiratory_rate midline count:25", "general.blood_pressure_systolic midline mm_hg:90",
                             "general.respiratory_rate midline count:21;general.temperature midline cel:38.1"}) {
    CAPTURE(danger);
    CHECK(line(ill_adult, danger) == "ill!");
  }
  CHECK(ill_line(visit_with("chronic_knee", "2014-06-01", knee + "general.respiratory_rate midline count:21;general.temperature midline cel:37.0;history.unwell midline answer:no"),
                 "septic_child") != "ill!");
  // A hot joint that nobody pressed on, with a fever and a second sign.
  CHECK(ill_line(visit_with("ankle_injury", ill_adult, ill_unhurt + "ankle.hot_red left answer:yes;general.temperature midline cel:39.0;general.pulse_rate midline count:118"), "septic_adult") ==
        "ankle_ill!");
  CHECK(ill_line(visit_with("forefoot_pain", ill_adult, ill_unhurt + "foot.mtp_first_hot_red left answer:yes;general.temperature midline cel:38.2;general.pulse_rate midline count:96"),
                 "septic_adult") != "toe_ill!");
}

// NICE NG51, children under 12: fewer than 60 beats is high risk at any age; under 5 years so is a temperature below 36.0.
TEST_CASE("planted: a slow heart, or a cold one under five, makes a limping child's joint a danger") {
  const std::string limps = ill_unhurt + "gait.limp midline answer:yes;history.unwell midline answer:no;history.fever midline answer:no;hip.log_roll left test:positive;";
  CHECK(ill_line(visit_with("limping_child", "2022-06-01", limps + "general.pulse_rate midline count:52"), "septic_child") == "ill!");
  CHECK(ill_line(visit_with("limping_child", "2015-06-01", limps + "general.pulse_rate midline count:59"), "septic_child") == "ill!");
  CHECK(ill_line(visit_with("limping_child", "2015-06-01", limps + "general.pulse_rate midline count:60"), "septic_child") == "none");
  CHECK(ill_line(visit_with("limping_child", "2013-06-01", limps + "general.pulse_rate midline count:52"), "septic_child") == "none");
  CHECK(ill_line(visit_with("limping_child", "2022-06-01", limps + "general.temperature midline cel:35.2"), "septic_child") == "raised");
  CHECK(ill_line(visit_with("limping_child", "2022-06-01", limps + "general.temperature midline cel:36.0"), "septic_child") == "none");
  CHECK(ill_line(visit_with("limping_child", "2020-06-01", limps + "general.temperature midline cel:35.8"), "septic_child") == "none");
}

// Section 7: hot or newly swollen, tender, restricted, new; fever is not required. BSR2006 gives no number for "restricted"; pain of 7 or more on
// the motion, and what a hot knee lacks against the other, are our own reading.
TEST_CASE("planted: a hot new knee that still bends to 115 is an infected joint by its pain and by the other side") {
  const std::string knee = ill_new + ill_cool + "knee.joint_line_medial_tender left answer:yes;knee.effusion_stroke left grade:2+;";
  const std::string heat = "knee.look_skin_hot_red left answer:yes;";
  const auto with = [&](const std::string& lines, const std::string& motion, int pain) {
    KneeVisit visit = visit_with("chronic_knee", ill_adult, knee + lines);
    visit.add("knee.flexion_passive left " + motion + " goniometer_long", R"(,"pain":{"score":)" + std::to_string(pain) + "}");
    return visit;
  };
  CHECK(ill_line(with(heat, "115", 8), "septic_adult") == "raised");
  CHECK(ill_line(with(heat + "knee.flexion_passive right 145 goniometer_long;", "115", 2), "septic_adult") == "raised");
  CHECK(ill_line(with(heat + "knee.extension_passive left -25 goniometer_long;knee.extension_passive right 0 goniometer_long;", "135", 2), "septic_adult") == "raised");
  CHECK(ill_line(with("knee.look_skin_hot_red left answer:no;", "115", 8), "septic_adult") == "raised");
  // Neighbours: a hot knee that moves like the other and hurts little; a cool full one that lacks something; an old one.
  CHECK(ill_line(with(heat + "knee.flexion_passive right 137 goniometer_long;", "135", 3), "septic_adult") == "none");
  CHECK(ill_line(with("knee.look_skin_hot_red left answer:no;knee.flexion_passive right 140 goniometer_long;", "118", 3), "septic_adult") == "none");
  const KneeVisit unlooked = with("knee.flexion_passive right 145 goniometer_long;", "115", 3);
  CHECK(ill_flag(unlooked, "septic_adult") != "asked_no");
  CHECK(ill_asks(unlooked, "septic_adult", "knee.look_skin_hot_red"));
}

TEST_CASE("planted: a hip that hurts at the smallest movement and does not turn, and an ankle that hurts badly on motion, need no fever") {
  const std::string walks = "gait.steps_now midline count:4;history.immune_suppressed midline answer:no;history.joint_injection_or_operation_recent midline answer:no;";
  const std::string hip = ill_unhurt + ill_cool + walks + "hip.pain_passive_severe left answer:yes;";
  const std::string weeks_0 = "history.weeks_since_onset midline count:0;";
  CHECK(ill_line(visit_with("hip_groin", ill_adult, hip + weeks_0 + "hip.log_roll left test:positive"), "septic_adult") == "hip");
  CHECK(ill_line(visit_with("hip_groin", ill_adult, hip + weeks_0 + "hip.internal_rotation_passive_supine left 0 goniometer_long"), "septic_adult") == "hip");
  CHECK(ill_asks(visit_with("hip_groin", ill_adult, hip + weeks_0), "septic_adult", "hip.log_roll"));
  // Neighbours: an old pain, and one whose smallest movement does not hurt.
  CHECK(ill_line(visit_with("hip_groin", ill_adult, hip + "history.weeks_since_onset midline count:60;hip.log_roll left test:positive"), "septic_adult") == "none");
  CHECK(ill_line(visit_with("hip_groin", ill_adult, ill_new + ill_cool + walks + "hip.pain_passive_severe left answer:no;hip.log_roll left test:positive"), "septic_adult") == "none");
  KneeVisit ankle = visit_with("ankle_injury", ill_adult, ill_new + ill_cool + "ankle.hot_red left answer:yes;ankle.anterior_gutter_tender left answer:yes");
  CHECK(ill_line(ankle, "septic_adult") == "none");
  ankle.add("ankle.dorsiflexion_passive_knee_bent left -5 goniometer_short", R"(,"pain":{"score":9})");
  CHECK(ill_line(ankle, "septic_adult") == "ankle");
}

// Section 7: any prosthetic joint with new pain and heat, swelling, discharge or fever.
TEST_CASE("planted: a replaced hip or ankle with a new pain and a fever, a swelling or discharge goes to the surgeon the same day") {
  const std::string hip = ill_new + "body.hip_replaced left answer:yes;hip.log_roll left test:negative;hip.pain_passive_severe left answer:no;hip.look_skin left choices:none_of_these;"
                                    "history.unwell midline answer:no;";
  const std::string hot_now = "general.temperature midline cel:38.6;";
  CHECK(ill_line(visit_with("hip_groin", "1954-01-01", hip + hot_now), "septic_adult") == "hip_replaced");
  CHECK(ill_line(visit_with("lateral_hip", "1954-01-01", hip + hot_now), "septic_adult") == "hip_replaced");
  CHECK(ill_line(visit_with("free", "1954-01-01", hip + hot_now + "history.pain_site left choices:site_groin"), "septic_adult") == "hip_replaced");
  CHECK(ill_line(visit_with("hip_groin", "1954-01-01", hip + "history.fever midline answer:no;general.temperature midline cel:36.9"), "septic_adult") == "none");
  CHECK(ill_line(visit_with("ankle_injury", "1954-01-01", hip + hot_now + "history.pain_site left choices:site_ankle_front"), "septic_adult") == "none");
  const std::string operated = "body.hip_replaced left answer:yes;history.joint_injection_or_operation_recent midline answer:yes;general.temperature midline cel:37.2;";
  CHECK(ill_line(visit_with("after_operation", "1954-01-01", operated + "hip.look_skin left choices:hip_wound;skin.infection_signs left choices:sign_pus"), "septic_adult") == "hip_replaced");
  CHECK(ill_line(visit_with("after_operation", "1954-01-01", operated + "hip.look_skin left choices:hip_scar;skin.infection_signs left choices:none_of_these"), "septic_adult") == "none");
  const std::string ankle = ill_new + "body.ankle_replaced left answer:yes;";
  CHECK(ill_line(visit_with("ankle_injury", "1960-01-01", ankle + "ankle.swelling_lateral left answer:yes"), "septic_adult") == "ankle_replaced");
  CHECK(ill_line(visit_with("ankle_injury", "1960-01-01", ankle + hot_now), "septic_adult") == "ankle_replaced");
  CHECK(ill_line(visit_with("ankle_injury", "1960-01-01", ankle + "ankle.swelling_lateral left answer:no;ankle.hot_red left answer:no;general.temperature midline cel:36.9"), "septic_adult") == "none");
  const std::string old_ankle = ill_unhurt + "history.weeks_since_onset midline count:80;body.ankle_replaced left answer:yes;ankle.swelling_lateral left answer:yes";
  CHECK(ill_line(visit_with("ankle_injury", "1960-01-01", old_ankle), "septic_adult") == "none");
}

// Section 8: an irritable joint under three months is enough, and an infant's is now; section 0: of an interval the more urgent end. NICE NG51:
// under three months 38.0 or more is high risk.
TEST_CASE("planted: under three months, or perhaps so, a hip that hurts is now without a fever, and 38.0 is now without a hip") {
  const std::string calm = "history.unwell midline answer:no;hip.leg_not_moved left answer:no;history.child_not_moving_leg left answer:no;";
  const std::string afebrile = "history.fever midline answer:no;general.temperature midline cel:37.3;";
  for (const std::string& born : {ill_seven_weeks, std::string("2026"), std::string("2026-08")}) {
    CAPTURE(born);
    CHECK(ill_line(visit_with("infant_hip", born, calm + afebrile + "hip.log_roll left test:positive"), "septic_child") == "raised_now!");
    CHECK(ill_line(visit_with("infant_hip", born, afebrile + "hip.leg_not_moved left answer:yes"), "septic_child") == "not_moved_now!");
    CHECK(ill_line(visit_with("infant_hip", born, calm + afebrile + "knee.look_skin_hot_red left answer:yes"), "septic_child") == "burning_now!");
    const KneeVisit hot_one = visit_with("infant_hip", born, calm + "hip.log_roll left test:negative;general.temperature midline cel:38.0");
    CHECK(ill_line(hot_one, "acutely_ill") == "newborn!");
    CHECK(ill_flag(hot_one, "septic_child") != "asked_no");
    const KneeVisit cool_one = visit_with("infant_hip", born, calm + afebrile + "hip.log_roll left test:negative");
    CHECK(ill_line(cool_one, "septic_child") == "none");
    CHECK(ill_line(cool_one, "acutely_ill") == "none");
  }
  // Neighbours: at five months a leg that is not moved is the same day, a sore hip without anything else is asked about, 38.2 is no danger by itself.
  CHECK(ill_line(visit_with("infant_hip", "2026-06-10", afebrile + "hip.leg_not_moved left answer:yes"), "septic_child") == "not_moved");
  CHECK(ill_line(visit_with("infant_hip", "2026-06-10", calm + afebrile + "hip.log_roll left test:positive"), "septic_child") == "none");
  CHECK(ill_line(visit_with("infant_hip", "2026-06-10", calm + "general.temperature midline cel:38.2"), "acutely_ill") == "none");
  // Nobody is asked for the steps of a baby, and none taken is no sign.
  for (const char* months : {"2026-10-05", "2026-06-10", "2026-01-10"}) {
    CAPTURE(months);
    const KneeVisit baby = visit_with("infant_hip", months, "hip.log_roll left test:positive;gait.limp midline answer:unsure");
    for (const char* alert : {"septic_child", "limp_child"}) {
      CHECK_FALSE(ill_asks(baby, alert, "gait.steps_now"));
    }
    CHECK(ill_line(visit_with("infant_hip", months, calm + afebrile + "gait.steps_now midline count:0;hip.log_roll left test:negative"), "septic_child") == "none");
  }
}

// That a painkiller of the last hours makes a fever's no none is our own rule; C23 records it for tender points.
TEST_CASE("planted: a fever that a painkiller may hide is not answered no") {
  const std::string limps = ill_unhurt + "gait.limp midline answer:yes;gait.steps_now midline count:4;history.fever midline answer:no;history.unwell midline answer:no;"
                                         "hip.log_roll left test:negative;history.refuses_weight left answer:no;hip.pain_passive_severe left answer:no;general.temperature midline cel:38.4;";
  CHECK(ill_flag(visit_with("limping_child", "2020-06-01", limps), "septic_child") == "asked_no");
  CHECK(ill_flag(visit_with("limping_child", "2020-06-01", limps + "history.painkiller_last_6h midline answer:no"), "septic_child") == "asked_no");
  const KneeVisit drugged = visit_with("limping_child", "2020-06-01", limps + "history.painkiller_last_6h midline answer:yes");
  CHECK(ill_flag(drugged, "septic_child") == "cannot_answer");
  CHECK(ill_line(drugged, "septic_child") == "none");
  CHECK(ill_line(visit_with("limping_child", "2020-06-01", limps + "history.painkiller_last_6h midline answer:yes;general.temperature_highest_7_days midline cel:38.6"), "septic_child") != "none");
  const std::string wound = "skin.intact left answer:no;skin.infection_signs left choices:sign_pus;general.temperature midline cel:37.1;general.pulse_rate midline count:80;history.fever midline answer:no;";
  CHECK(ill_flag(visit_with("wound_or_numb_foot", ill_adult, wound + "history.painkiller_last_6h midline answer:yes"), "nsti") != "asked_no");
}

// Section 0: what could become yes is asked. Section 15: the red list of a limp; section 9: tender bone and a fever.
TEST_CASE("planted: an injury that nobody asked after is asked, where all the rest says yes") {
  const std::string child = "gait.limp midline answer:yes;gait.steps_now midline count:4;history.night_pain midline answer:yes;history.weight_loss midline answer:yes;history.unwell midline answer:no;"
                            "history.fever midline answer:no;general.temperature midline cel:36.8;";
  const KneeVisit untold = visit_with("limping_child", "2020-06-01", child);
  CHECK(ill_asks(untold, "limp_child", "history.mechanism"));
  CHECK(ill_line(visit_with("limping_child", "2020-06-01", child + "history.mechanism midline choice:no_injury"), "limp_child") != "none");
  CHECK(ill_line(visit_with("limping_child", "2020-06-01", child + "history.mechanism midline choice:fall"), "limp_child") == "none");
  CHECK_FALSE(ill_asks(visit_with("limping_child", "2020-06-01", "gait.limp midline answer:no"), "limp_child", "history.mechanism"));
  const std::string bone = "leg.tibial_spot_tender left answer:yes;general.temperature midline cel:38.4;";
  CHECK(ill_asks(visit_with("free", ill_adult, bone), "osteomyelitis", "history.mechanism"));
  CHECK(ill_line(visit_with("free", ill_adult, bone + "history.mechanism midline choice:no_injury"), "osteomyelitis") == "leg");
  CHECK_FALSE(ill_asks(visit_with("free", ill_adult, "leg.tibial_spot_tender left answer:yes;general.temperature midline cel:36.8;history.fever midline answer:no"), "osteomyelitis", "history.mechanism"));
}

// Sections 9 and 22: probe to bone or visible bone; the item's own text: in an ulcer the same day. A fresh injury makes it an open break.
TEST_CASE("planted: bone that lies bare in a wound is an infected bone without diabetes, and an open break while the injury is fresh") {
  const std::string sore = "history.diabetes midline answer:no;nerve.sensation_foot_reduced left answer:no;skin.ulcer left answer:yes;";
  CHECK(ill_line(visit_with("wound_or_numb_foot", ill_adult, ill_unhurt + sore + "skin.bone_visible left answer:yes"), "osteomyelitis") == "bone_seen");
  CHECK(ill_line(visit_with("wound_or_numb_foot", ill_adult, "history.mechanism midline choice:vehicle;skin.bone_visible left answer:yes", "2026-09-20"), "osteomyelitis") == "bone_seen");
  const KneeVisit fresh = visit_with("wound_or_numb_foot", ill_adult, "history.mechanism midline choice:vehicle;skin.bone_visible left answer:yes", "2026-11-24");
  CHECK(ill_line(fresh, "osteomyelitis") == "none");
  CHECK(ill_line(fresh, "open_fx").ends_with("!"));
  CHECK(ill_line(visit_with("wound_or_numb_foot", ill_adult, ill_unhurt + sore + "skin.bone_visible left answer:no"), "osteomyelitis") == "none");
}

// C2: sepsis interrupts, whatever part is complained of. NICE NG51 for the signs; two of them without a word of infection are our own rule.
TEST_CASE("planted: a person ill as a whole is told whatever is complained of, once, and an ordinary fast pulse is not") {
  const std::string hot_now = "general.temperature midline cel:39.6;";
  for (const char* complaint : {"no_complaint", "chronic_knee", "hip_after_fall", "after_operation", "swollen_legs"}) {
    CAPTURE(complaint);
    CHECK(ill_line(visit_with(complaint, ill_adult, hot_now + "general.pulse_rate midline count:135"), "acutely_ill") == "raised!");
    CHECK(ill_line(visit_with(complaint, ill_adult, "history.unwell midline answer:yes;general.blood_pressure_systolic midline mm_hg:88"), "acutely_ill") == "shock_ill!");
    CHECK(ill_line(visit_with(complaint, ill_adult, "general.temperature midline cel:35.1;general.consciousness midline choice:mind_new_confusion"), "acutely_ill") == "raised!");
    CHECK(ill_line(visit_with(complaint, ill_adult, ill_cool + "general.blood_pressure_systolic midline mm_hg:72;general.pulse_rate midline count:142"), "acutely_ill") == "failing!");
    const std::string lungs = ill_cool + "general.oxygen_saturation midline count:86;general.respiratory_rate midline count:30";
    CHECK(ill_line(visit_with(complaint, ill_adult, lungs + ";history.breathless midline answer:yes"), "acutely_ill") == "failing!");
    CHECK(ill_line(visit_with(complaint, ill_adult, ill_cool + "general.oxygen_saturation midline count:84;history.breathless midline answer:yes"), "acutely_ill") == "failing!");
    CHECK(ill_line(visit_with(complaint, ill_adult, lungs + ";general.consciousness midline choice:mind_new_confusion"), "acutely_ill") == "failing!");
    // Old lungs, and thin air: one organ, and no breath that is short. Fear: fast breath and pulse alone.
    CHECK(ill_line(visit_with(complaint, ill_adult, ill_cool + "general.oxygen_saturation midline count:90;general.respiratory_rate midline count:26;history.breathless midline answer:no"), "acutely_ill") == "none");
    CHECK(ill_line(visit_with(complaint, ill_adult, ill_cool + "general.pulse_rate midline count:134;general.respiratory_rate midline count:28"), "acutely_ill") == "none");
    // One sign alone is asked about, and is no no.
    const KneeVisit lone = visit_with(complaint, ill_adult, "general.blood_pressure_systolic midline mm_hg:84");
    CHECK(ill_line(lone, "acutely_ill") == "none");
    CHECK(ill_asks(lone, "acutely_ill", "general.temperature"));
    // With every word of illness answered no, how the person looks is asked; and answered, the pressure stays open and named.
    const std::string low_alone = ill_cool + "general.blood_pressure_systolic midline mm_hg:84";
    CHECK(ill_flag(visit_with(complaint, ill_adult, low_alone), "acutely_ill") == "not_asked");
    CHECK(ill_asks(visit_with(complaint, ill_adult, low_alone), "acutely_ill", "general.pallor"));
    CHECK(ill_flag(visit_with(complaint, ill_adult,
                              low_alone + ";general.pallor midline answer:no;general.consciousness midline choice:mind_alert;general.pulse_rate midline count:72;general.respiratory_rate midline count:14;"
                                          "vessel.capillary_refill_slow left answer:no;vessel.capillary_refill_slow right answer:no"),
                   "acutely_ill") == "cannot_answer");
    // Neighbours: a fever, a pulse and breaths of an ordinary visit; nothing is asked, and no line of flags speaks of it.
    for (const char* quiet : {"general.temperature midline cel:38.4;general.pulse_rate midline count:104;general.respiratory_rate midline count:20",
                              "general.temperature midline cel:36.8;general.pulse_rate midline count:118", "history.unwell midline answer:yes;general.blood_pressure_systolic midline mm_hg:96"}) {
      CAPTURE(quiet);
      CHECK(ill_line(visit_with(complaint, ill_adult, quiet), "acutely_ill") == "none");
      CHECK(ill_flag(visit_with(complaint, ill_adult, quiet), "acutely_ill") == "no flag");
    }
  }
  CHECK(ill_names(visit_with("no_complaint", ill_adult, hot_now + "general.pulse_rate midline count:135;general.blood_pressure_systolic midline mm_hg:75;history.unwell midline answer:yes"), "acutely_ill", 4));
  // A child that is afraid has a fast heart and fast breath; with a fever, or a mind or a pressure that fails, it is told.
  const std::string afraid = "general.pulse_rate midline count:144;general.respiratory_rate midline count:42;";
  CHECK(ill_line(visit_with("child_alignment", "2023-06-01", afraid + ill_cool), "acutely_ill") == "none");
  CHECK(ill_line(visit_with("child_alignment", "2023-06-01", afraid + hot_now), "acutely_ill") == "raised!");
  CHECK(ill_line(visit_with("child_alignment", "2023-06-01", afraid + ill_cool + "general.consciousness midline choice:mind_voice"), "acutely_ill") == "failing!");
  // Where a part of the leg says so, that line stands for it.
  const KneeVisit knee = visit_with("chronic_knee", ill_adult, ill_new + "knee.look_skin_hot_red left answer:yes;" + hot_now + "general.pulse_rate midline count:135");
  CHECK(ill_line(knee, "septic_adult") == "ill!");
  CHECK(ill_line(knee, "acutely_ill") == "none");
}

// Section 7 and its examples: "2_weeks unless fever or new change"; BSR2006: a hot joint in a known disease is infected until shown otherwise. That
// weak defence, a needle or an operation stands for the change where the joint is hot, full, tender and stiff is our own rule.
TEST_CASE("planted: the weeks of an old joint silence no hot and full one of weak defence, after a needle or an operation") {
  const std::string joint = ill_unhurt + "history.weeks_since_onset midline count:200;general.temperature midline cel:37.2;knee.joint_line_medial_tender left answer:yes;knee.flexion_active left 50 goniometer_long;";
  const std::string hot_full = joint + "knee.look_skin_hot_red left answer:yes;knee.effusion_stroke left grade:3+;";
  for (const char* reason : {"history.joint_injection_or_operation_recent midline answer:yes", "history.immune_suppressed midline answer:yes"}) {
    CAPTURE(reason);
    CHECK(ill_line(visit_with("chronic_knee", ill_adult, hot_full + reason), "septic_adult") == "raised");
    CHECK(ill_line(visit_with("after_operation", ill_adult, hot_full + reason), "septic_adult") == "raised");
    CHECK(ill_line(visit_with("chronic_knee", ill_adult, joint + "knee.look_skin_hot_red left answer:no;knee.effusion_stroke left grade:1+;" + reason), "septic_adult") == "none");
  }
  CHECK(ill_line(visit_with("chronic_knee", ill_adult, hot_full + "history.immune_suppressed midline answer:no;history.joint_injection_or_operation_recent midline answer:no"), "septic_adult") == "none");
}

// Section 7; that a roll that hurts, or a hip held bent, is enough beside a fever is our own rule. Sixteen is the first day of an adult's alert.
TEST_CASE("planted: a feverish hip whose roll hurts or that is held bent is infected at sixteen as at fifteen, whatever one no says") {
  const std::string rolls = ill_unhurt + "gait.limp midline answer:yes;general.temperature midline cel:38.9;history.weeks_since_onset midline count:0;hip.log_roll left test:positive";
  for (const char* complaint : {"hip_groin", "limping_child", "free"}) {
    CAPTURE(complaint);
    CHECK(ill_line(visit_with(complaint, "2010-11-25", rolls), "septic_child") == "raised");
    CHECK(ill_line(visit_with(complaint, "2010-11-24", rolls), "septic_adult") == "hip");
  }
  const std::string bent = "hip.leg_attitude left choice:attitude_held_bent;hip.pain_passive_severe left answer:no;history.weeks_since_onset midline count:0;";
  CHECK(ill_line(visit_with("hip_groin", "1986-01-01", bent + "general.temperature midline cel:39.1"), "septic_adult") == "hip");
  CHECK(ill_line(visit_with("hip_groin", "1986-01-01", bent + ill_cool), "septic_adult") == "none");
  CHECK(ill_line(visit_with("hip_groin", "1986-01-01", ill_new + ill_cool + "hip.log_roll left test:positive"), "septic_adult") == "none");
}
