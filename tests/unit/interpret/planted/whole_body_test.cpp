// Planted cases of a person who is ill as a whole under a calm page, and of ordinary people whose breath, oxygen, pulse, pressure or sleep called as
// if they were. Sources: clinical safety C2; NICE NG51 (2016), high and moderate to high risk, for every figure that is not our own; the red flags
// page, sections 0, 4, 6, 8 and 10. How many signs make which class is our own rule. All is invented; the day is 2026-11-24.
#include "tests/outside/knee_document.hpp"
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using limbledger::tests::KneeVisit;
using limbledger::tests::visit_with;

namespace {

// The line of an alert: its message's last word, with "!" where it interrupts.
std::string body_line(const KneeVisit& visit, const std::string& name = "acutely_ill") {
  for (const interpret::Alert& one : visit.assess().alerts) {
    if (one.alert.text == "alert." + name && (!one.side || *one.side == model::Side::left)) {
      return one.message.text.substr(one.message.text.rfind('.') + 1) + (one.interrupts ? "!" : "");
    }
  }
  return "none";
}
// Something is now, and interrupts: where a part of the leg says so, that line stands for it.
bool body_called(const KneeVisit& visit) {
  const auto alerts = visit.assess().alerts;
  return std::any_of(alerts.begin(), alerts.end(), [](const interpret::Alert& one) { return one.interrupts; });
}
std::size_t body_grounds(const KneeVisit& visit) {
  for (const interpret::Alert& one : visit.assess().alerts) {
    if (one.alert.text == "alert.acutely_ill") {
      return one.because.size();
    }
  }
  return 0;
}
// What an alert says to do meanwhile, and what a flag that is open names.
bool body_meanwhile(const KneeVisit& visit, const std::string& message) {
  for (const interpret::Alert& one : visit.assess().alerts) {
    if (one.alert.text == "alert.acutely_ill") {
      return std::any_of(one.meanwhile.begin(), one.meanwhile.end(), [&](const model::MessageId& id) { return id.text == "msg.meanwhile." + message; });
    }
  }
  return false;
}
std::size_t body_open(const KneeVisit& visit) {
  for (const interpret::Flag& one : visit.assess().flags) {
    const bool open = one.answer == interpret::FlagAnswer::cannot_answer || one.answer == interpret::FlagAnswer::not_asked;
    if (one.flag.text == "alert.acutely_ill" && open) {
      return one.findings.size();
    }
  }
  return 0;
}
bool body_asks(const KneeVisit& visit, const std::string& name, const std::string& item) {
  for (const interpret::Question& one : visit.assess().questions) {
    if (one.question.text == "alert." + name && std::any_of(one.ask.begin(), one.ask.end(), [&](const interpret::Ask& ask) { return ask.item.text == item; })) {
      return true;
    }
  }
  return false;
}

std::string signs_of(int pulse, int breaths, int systolic, int oxygen) {
  return "general.pulse_rate midline count:" + std::to_string(pulse) + ";general.respiratory_rate midline count:" + std::to_string(breaths) +
         ";general.blood_pressure_systolic midline mm_hg:" + std::to_string(systolic) + ";general.oxygen_saturation midline count:" + std::to_string(oxygen) + ";";
}

const std::string body_unhurt = "history.mechanism midline choice:no_injury;";
const std::string body_well = "history.fever midline answer:no;history.unwell midline answer:no;general.temperature midline cel:36.8;";
const std::string body_adult = "1966-01-01";
const std::string body_newborn = "2026-10-25";
const std::string body_infant = "2026-05-25";

}  // namespace

// One high sign is high risk (NICE NG51); from which size no answer makes it less is our own rule.
TEST_CASE("planted: one sign so far out that it threatens life is now whatever is answered beside it, and a step outside its limit is open and named") {
  struct Sign {
    std::string far, near;
  };
  const std::vector<Sign> signs{{"general.blood_pressure_systolic midline mm_hg:60", "general.blood_pressure_systolic midline mm_hg:88"},
                                {"general.pulse_rate midline count:190", "general.pulse_rate midline count:134"},
                                {"general.respiratory_rate midline count:45", "general.respiratory_rate midline count:27"},
                                {"general.oxygen_saturation midline count:80", "general.oxygen_saturation midline count:90"},
                                {"general.temperature midline cel:33.5", "general.temperature midline cel:34.8"}};
  for (const char* complaint : {"chronic_knee", "swollen_legs", "free"}) {
    for (const Sign& one : signs) {
      CAPTURE(complaint);
      CAPTURE(one.far);
      const bool warmth = one.far.find("temperature") != std::string::npos;
      const std::string noes = "history.fever midline answer:no;history.unwell midline answer:no;" + (warmth ? std::string() : "general.temperature midline cel:36.8;");
      CHECK(body_line(visit_with(complaint, body_adult, body_unhurt + noes + one.far)) == "alone!");
      CHECK(body_line(visit_with(complaint, body_adult, one.far)) == "alone!");
      const KneeVisit near = visit_with(complaint, body_adult, body_unhurt + noes + one.near);
      CHECK(body_line(near) == "none");
      CHECK(body_open(near) >= (warmth ? 2U : 4U));  // the sign that failed among them
      // A pressure and a pulse that are high risk by themselves are looked at again; breath and oxygen that old lungs have are named alone.
      const bool of_blood = one.near.find("pressure") != std::string::npos || one.near.find("pulse") != std::string::npos;
      CHECK(body_asks(near, "acutely_ill", "general.pallor") == of_blood);
    }
  }
  CHECK_FALSE(body_meanwhile(visit_with("free", body_adult, signs[0].far), "sepsis_by_protocol"));
  CHECK(body_line(visit_with("free", body_adult, "general.pulse_rate midline count:38")) == "none");  // an athlete's
  CHECK(body_line(visit_with("free", body_adult, "general.pulse_rate midline count:24")) == "alone!");
}

// The bands of NICE NG51: 21 to 24 breaths, 91 to 100 mmHg, below 36; of the pulse our own figure.
TEST_CASE("planted: several signs each one step inside its limit are told together, and two, a flu or old lungs are not") {
  for (const char* complaint : {"chronic_knee", "after_operation", "no_complaint"}) {
    CAPTURE(complaint);
    const auto at = [&](const std::string& lines) { return visit_with(complaint, body_adult, body_unhurt + lines); };
    const KneeVisit septic = at("history.unwell midline answer:yes;general.temperature midline cel:39.9;" + signs_of(129, 24, 92, 96));
    CHECK(body_line(septic) == "several!");
    CHECK(body_grounds(septic) == 5);
    CHECK(body_line(at("history.unwell midline answer:no;general.temperature midline cel:39.8;" + signs_of(129, 24, 91, 92))) == "several!");
    CHECK(body_line(at("history.unwell midline answer:yes;history.fever midline answer:no;general.temperature midline cel:36.1;" + signs_of(129, 24, 91, 92))) == "several!");
    CHECK(body_line(at(body_well + signs_of(131, 24, 95, 93))) == "several!");
    CHECK(body_line(at("general.temperature midline cel:39.2;" + signs_of(118, 22, 124, 97))) == "several_same_day");
    // Of who is well, pulse, breath and pressure each a little out are asked about again: a small woman in pain has all three (C2, C3).
    const KneeVisit small = at(body_well + signs_of(112, 22, 97, 97));
    CHECK(body_line(small) == "none");
    CHECK(body_asks(small, "acutely_ill", "general.pallor"));
    // Ordinary: a cold with a fever, fear, lungs of years, a small woman.
    CHECK(body_line(at("general.temperature midline cel:38.6;history.unwell midline answer:yes;" + signs_of(104, 20, 118, 97))) == "none");
    CHECK(body_line(at("general.temperature midline cel:38.6;history.unwell midline answer:yes;" + signs_of(104, 18, 96, 97))) == "several_same_day");
    CHECK(body_line(at(body_well + signs_of(132, 28, 138, 99))) == "none");
    CHECK(body_line(at(body_well + "history.breathless midline answer:no;" + signs_of(104, 26, 135, 90))) == "none");
    CHECK(body_line(at(body_well + signs_of(78, 14, 92, 98))) == "none");
    // Twice measured: fast with fear, and at rest twenty minutes later.
    CHECK(body_line(at(body_well + "general.pulse_rate midline count:136;general.respiratory_rate midline count:28;general.pulse_rate midline count:92;general.respiratory_rate midline count:16")) == "none");
  }
}

// NICE NG51: a changed mind is high risk at any age; of a child under five it asks how the child wakes.
TEST_CASE("planted: who is newly confused or answers to voice only is now, whatever else is answered no, but for a small child that may sleep") {
  const std::string noes = "history.fever midline answer:no;history.unwell midline answer:no;general.temperature midline cel:36.7;";
  for (const char* mind : {"mind_new_confusion", "mind_voice", "mind_pain", "mind_none"}) {
    CAPTURE(mind);
    const std::string said = std::string("general.consciousness midline choice:") + mind;
    CHECK(body_line(visit_with("free", body_adult, body_unhurt + noes + said)) == "alone!");
    CHECK(body_line(visit_with("acute_knee", "2002-01-01", "history.mechanism midline choice:vehicle;" + noes + said)) != "none");
    CHECK(body_line(visit_with("limping_child", "2017-06-01", noes + said)) != "none");
  }
  CHECK(body_line(visit_with("limping_child", "2023-06-01", noes + "general.consciousness midline choice:mind_voice")) == "none");
}

// The red flags page, sections 4 and 10 for what is done; that hurt or bleeding with three such signs bleeds until shown otherwise is our own rule.
TEST_CASE("planted: after an injury or with blood running the signs of shock are said as bleeding, and treated as no infection") {
  const std::string crash = "history.mechanism midline choice:vehicle;leg.thigh_shaft_tender left answer:yes;";
  for (const char* signs : {"general.blood_pressure_systolic midline mm_hg:92;general.pulse_rate midline count:128;general.respiratory_rate midline count:24",
                            "general.blood_pressure_systolic midline mm_hg:80;general.pulse_rate midline count:130", "general.blood_pressure_systolic midline mm_hg:85;general.pulse_rate midline count:112"}) {
    for (const std::string& hurt : {crash, std::string("vessel.bleeding_active left answer:yes;"), std::string("history.fall_recent midline answer:yes;")}) {
      CAPTURE(signs);
      CAPTURE(hurt);
      const KneeVisit visit = visit_with("hip_after_fall", "2001-01-01", hurt + signs, "2026-11-24");
      CHECK(body_line(visit) == "shock!");
      CHECK(body_meanwhile(visit, "bleeding_and_warmth"));
      CHECK_FALSE(body_meanwhile(visit, "sepsis_by_protocol"));
    }
  }
  // Frightened and in pain; and a fever beside it is an infection too.
  CHECK(body_line(visit_with("hip_after_fall", "2001-01-01", crash + signs_of(132, 26, 132, 99), "2026-11-24")) == "none");
  CHECK(body_line(visit_with("hip_after_fall", "2001-01-01", crash + "general.temperature midline cel:39.4;general.blood_pressure_systolic midline mm_hg:80;general.pulse_rate midline count:130", "2026-11-24")) == "raised!");
}

// NICE_NG158 for what makes a clot of the lung likelier; that three of them wait for no swollen leg is our own rule.
TEST_CASE("planted: breath newly short with a fast pulse after an operation or days in bed is a clot of the lung until shown otherwise") {
  const std::string no_leg = "leg.calf_swelling left answer:no;history.examiner_suspects_clot midline answer:no;";
  for (const char* reason : {"history.immobile_or_surgery_recent midline answer:yes", "history.clot_before midline answer:yes", "history.cancer_active midline answer:yes"}) {
    CAPTURE(reason);
    CHECK(body_line(visit_with("after_operation", body_adult, no_leg + "history.breathless midline answer:yes;general.pulse_rate midline count:118;" + reason)) == "lung_clot!");
    CHECK(body_line(visit_with("after_operation", body_adult, no_leg + "history.breathless midline answer:no;general.pulse_rate midline count:118;" + reason)) == "none");
    CHECK(body_line(visit_with("after_operation", body_adult, no_leg + "history.breathless midline answer:yes;general.pulse_rate midline count:92;" + reason)) == "none");
  }
}

// NICE NG51: below 36.0 is high risk under five years; below 35.0 from then on is taught, from memory.
TEST_CASE("planted: the cold newborn, the cold and ill child and the cold and ill adult are now, and a cold ear in winter is not") {
  CHECK(body_line(visit_with("infant_hip", body_newborn, "general.temperature midline cel:35.2")) == "newborn_cold!");
  CHECK(body_line(visit_with("infant_hip", body_newborn, "general.temperature midline cel:35.2;history.unwell midline answer:no;history.fever midline answer:no")) == "newborn_cold!");
  CHECK(body_line(visit_with("infant_hip", body_newborn, "general.temperature midline cel:36.4;history.unwell midline answer:no")) == "none");
  CHECK(body_line(visit_with("child_alignment", "2023-06-01", "general.temperature midline cel:35.6;history.unwell midline answer:yes")) == "cold!");
  CHECK(body_line(visit_with("child_alignment", "2023-06-01", "general.temperature midline cel:35.8;history.unwell midline answer:no")) == "none");
  const KneeVisit old_one = visit_with("free", "1946-01-01", "history.unwell midline answer:yes;general.temperature midline cel:34.6;general.pulse_rate midline count:48");
  CHECK(body_line(old_one) == "cold!");
  CHECK(body_meanwhile(old_one, "dry_and_warm"));
  CHECK(body_line(visit_with("free", "1946-01-01", "history.unwell midline answer:no;general.temperature midline cel:35.4;general.pulse_rate midline count:66")) == "none");
}

// NICE NG51, under 5 and 5 to 11 years: pallor, refill of three seconds or more, less activity are moderate, ill to look at is high.
TEST_CASE("planted: a hot child that is pale, slow to refill or will not move is told, and a child with a cold is not") {
  const std::string hot_ill = "general.temperature midline cel:39.4;history.unwell midline answer:yes;";
  const std::string refill = "vessel.capillary_refill_slow left answer:yes;vessel.capillary_refill_slow right answer:yes;";
  const std::string still = "general.child_at_play midline choice:play_will_not_move;";
  for (const char* born : {"2026-05-25", "2023-06-01", "2017-06-01"}) {
    CAPTURE(born);
    const auto child = [&](const std::string& lines) { return visit_with("child_alignment", born, lines); };
    CHECK(body_called(child(hot_ill + refill + still)));
    CHECK(body_called(child("general.temperature midline cel:39.4;general.pallor midline answer:yes;" + refill)));
    CHECK(body_line(child(hot_ill + refill + "general.pallor midline answer:yes")) == "pale!");
    CHECK(body_line(child(hot_ill + "general.pallor midline answer:yes")) == "pale_same_day");
    CHECK(body_line(child(hot_ill + "general.child_at_play midline choice:play_quiet;general.pallor midline answer:no")) == "none");
    // One foot slow to refill is the leg's; both, in winter and well, are cold.
    CHECK(body_line(child(hot_ill + "vessel.capillary_refill_slow left answer:yes")) == "none");
    CHECK(body_line(child(refill + "general.pallor midline answer:no;history.unwell midline answer:no;general.temperature midline cel:36.8")) == "none");
  }
  CHECK(body_grounds(visit_with("infant_hip", body_infant, hot_ill + refill + still + "general.pallor midline answer:yes")) == 6);
}

// An infant's own pulse and breath where nobody wrote its birth.
TEST_CASE("planted: an infant without a day of birth is measured by no grown person's limits of what is a danger alone") {
  interpret_test::Bench infant = interpret_test::visit("infant_hip", 2026, "history.unwell no; history.fever no; general.temperature 368; general.pulse_rate 158; general.respiratory_rate 44");
  infant.person->birth.reset();
  CHECK_FALSE(interpret_test::raised(infant, "acutely_ill"));
  interpret_test::tell(infant, "general.oxygen_saturation 80");
  CHECK(interpret_test::raised(infant, "acutely_ill"));
  // A fever in it is a newborn's until somebody knows better.
  interpret_test::Bench hot_infant = interpret_test::visit("infant_hip", 2026, "general.temperature 384");
  hot_infant.person->birth.reset();
  CHECK(interpret_test::line_of(hot_infant, "acutely_ill") == "newborn");
  interpret_test::tell(hot_infant, "history.moves_about moves_walks");
  CHECK_FALSE(interpret_test::raised(hot_infant, "acutely_ill"));
}

// Section 0: of an interval the more urgent end; that who crawls or walks is no newborn is our own rule.
TEST_CASE("planted: an infant of unknown age with 38.1 is taken for a newborn until it crawls or walks") {
  const std::string hot_one = "general.temperature midline cel:38.1;";
  CHECK(body_line(visit_with("infant_hip", "2026", hot_one)) == "newborn!");
  for (const char* older : {"history.moves_about midline choice:moves_crawls", "history.moves_about midline choice:moves_walks", "gait.steps_now midline count:4"}) {
    CHECK(body_line(visit_with("infant_hip", "2026", hot_one + older)) == "none");
    CHECK(body_line(visit_with("infant_hip", body_newborn, hot_one + older)) == "newborn!");  // an age that is known stands
  }
  CHECK(body_line(visit_with("infant_hip", "2026", hot_one + "history.moves_about midline choice:moves_rolls")) == "newborn!");
}

// NICE NG51, tables of children: a joint that is hot is an infection suspected, and there one high sign is enough.
TEST_CASE("planted: beside a hot joint one high sign of a child is now, however well it is") {
  for (const char* sign : {"general.respiratory_rate midline count:52", "general.pulse_rate midline count:158", "general.oxygen_saturation midline count:88"}) {
    CAPTURE(sign);
    CHECK(body_line(visit_with("chronic_knee", "2024-06-01", body_unhurt + "history.weeks_since_onset midline count:0;knee.look_skin_hot_red left answer:yes;knee.effusion_stroke left grade:2+;" + body_well + sign),
                    "septic_child") == "ill!");
  }
}

// NICE NG51 speaks of a person in whom infection is suspected; that one sign which fear, training, sleep, thin air or old lungs make is none of
// illness in who is well and neither hot nor cold is our own rule.
TEST_CASE("planted: one pulse, breath or oxygen of a well and cool person makes no infection of the part that is complained of") {
  struct Ordinary {
    std::string complaint, born, lines, sign, alert;
  };
  const std::string limps = "history.mechanism midline choice:fall;gait.limp midline answer:yes;gait.steps_now midline count:4;hip.log_roll left test:negative;";
  const std::string gout = body_unhurt + "foot.hot_red_swollen left answer:yes;foot.mtp_first_hot_red left answer:yes;history.gout_known midline answer:yes;";
  const std::string nail = body_unhurt + "foot.hot_red_swollen left answer:yes;";
  const std::vector<Ordinary> all{{"limping_child", "2024-06-01", limps, "general.pulse_rate midline count:156", "septic_child"},
                                  {"limping_child", "2015-06-01", limps, "general.pulse_rate midline count:57", "septic_child"},
                                  {"limping_child", "2018-06-01", limps, "general.oxygen_saturation midline count:91", "septic_child"},
                                  {"limping_child", "2024-06-01", limps, "general.consciousness midline choice:mind_voice", "septic_child"},
                                  {"wound_or_numb_foot", "2023-06-01", nail, "general.pulse_rate midline count:146", "nsti"},
                                  {"forefoot_pain", "1956-01-01", gout, "general.oxygen_saturation midline count:90", "nsti"},
                                  {"forefoot_pain", "1956-01-01", gout, "general.oxygen_saturation midline count:90;general.respiratory_rate midline count:26", "septic_adult"}};
  for (const Ordinary& one : all) {
    CAPTURE(one.complaint);
    CAPTURE(one.sign);
    const KneeVisit well = visit_with(one.complaint, one.born, one.lines + body_well + one.sign, "2026-11-23");
    CHECK(body_line(well, one.alert) == "none");
    CHECK(body_line(well) == "none");
    CHECK(body_open(well) > 0);
    CHECK_FALSE(body_called(well));
    // Ill, hot, or nobody asked: the sign stands.
    const auto called = [&](const std::string& state) {
      const KneeVisit visit = visit_with(one.complaint, one.born, one.lines + state + one.sign, "2026-11-23");
      return body_called(visit);
    };
    CHECK(called("history.unwell midline answer:yes;general.temperature midline cel:36.8;"));
    CHECK(called("history.unwell midline answer:no;general.temperature midline cel:39.1;"));
    CHECK(called(""));
    CHECK(called(body_well + "general.blood_pressure_systolic midline mm_hg:60;"));
  }
}

// Of last week and gone: the item asks after seven days.
TEST_CASE("planted: a fever of last week in a well and cool person is none of today, and in pregnancy 90 mmHg is no shock") {
  const std::string past = "history.fever midline answer:yes;history.unwell midline answer:no;general.temperature midline cel:36.8;";
  CHECK(body_line(visit_with("chronic_knee", "1956-01-01", past + "general.oxygen_saturation midline count:91")) == "none");
  CHECK(body_open(visit_with("chronic_knee", "1956-01-01", past + "general.oxygen_saturation midline count:91")) == 2);  // the oxygen is named
  CHECK(body_line(visit_with("child_alignment", "2024-06-01", past + "general.pulse_rate midline count:152")) == "none");
  for (const char* ill : {"history.unwell midline answer:yes;general.temperature midline cel:36.8;", "general.temperature midline cel:38.3;history.unwell midline answer:no;", "",
                          "history.unwell midline answer:no;general.temperature midline cel:36.8;history.painkiller_last_6h midline answer:yes;"}) {
    CAPTURE(ill);
    CHECK(body_line(visit_with("chronic_knee", "1956-01-01", std::string("history.fever midline answer:yes;") + ill + "general.oxygen_saturation midline count:91")) == "raised!");
  }
  const std::string carries = "history.unwell midline answer:yes;history.fever midline answer:no;general.temperature midline cel:36.8;body.pregnancy midline answer:yes;";
  KneeVisit mother = visit_with("posterior_hip", "2003-01-01", carries + "general.blood_pressure_systolic midline mm_hg:90");
  mother.sex = "female";
  CHECK(body_line(mother) == "none");
  mother.add_all("general.pulse_rate midline count:134");
  CHECK(body_line(mother) == "raised!");
  KneeVisit low = visit_with("posterior_hip", "2003-01-01", carries + "general.blood_pressure_systolic midline mm_hg:86");
  low.sex = "female";
  CHECK(body_line(low) == "shock_bears!");
}

// The page's question stands until somebody looked, felt or measured (section 0); exam sequence, section 5: never dropped.
TEST_CASE("planted: covered and no instrument leave the question standing, and a leg that is not there does not") {
  for (const char* why : {"covered", "no_instrument", "no_time"}) {
    CAPTURE(why);
    const std::string undone = std::string(" left not:") + why + ";";
    const KneeVisit ankle = visit_with("ankle_injury", body_adult, "history.mechanism midline choice:twist;vessel.pulse_dorsalis_pedis" + undone + "vessel.pulse_posterior_tibial" + undone +
                                                                       "vessel.foot_cold" + undone + "ankle.look_deformity" + undone, "2026-11-24");
    CHECK(body_asks(ankle, "ali", "vessel.pulse_dorsalis_pedis"));
    CHECK(body_asks(ankle, "ankle_disloc", "ankle.look_deformity"));
    const KneeVisit child = visit_with("limping_child", "2023-06-01", body_unhurt + "gait.limp midline answer:yes;gait.steps_now midline count:4;history.unwell midline answer:no;"
                                                                      "history.fever midline not:cannot_answer;general.temperature midline not:" + why);
    CHECK(body_asks(child, "septic_child", "general.temperature"));
  }
  // A plaster is not taken off to look.
  const std::string under = "history.mechanism midline choice:twist;body.cast left choices:cast_ankle;vessel.foot_cold left answer:no;vessel.pulse_dorsalis_pedis left not:covered;"
                            "vessel.pulse_posterior_tibial left not:covered;ankle.movement left answer:yes;nerve.sensation_foot_reduced left answer:no";
  CHECK_FALSE(body_asks(visit_with("after_plaster", body_adult, under), "ali", "vessel.pulse_dorsalis_pedis"));
  const KneeVisit refused = visit_with("ankle_injury", body_adult, "history.mechanism midline choice:twist;ankle.look_deformity left not:declined", "2026-11-24");
  CHECK_FALSE(body_asks(refused, "ankle_disloc", "ankle.look_deformity"));
}
