// Planted cases of people who bleed inside or are septic by how they look, and of those who only share their numbers. Sources: clinical safety C2
// (sepsis interrupts) and C3; the red flags page, sections 2, 6, 7, 10 and 12; NICE NG51 (2016): 90 mmHg or below is high risk by itself, 91 to 100,
// 21 to 24 breaths moderate, mottled high at any age. How many make which class is our own rule. All is invented; the day is 2026-11-24.
#include "tests/outside/knee_document.hpp"

using namespace limbledger;
using limbledger::tests::KneeVisit;
using limbledger::tests::visit_with;

namespace {

// The line of an alert: its message's last word, with "!" where it interrupts.
std::string looks_line(const KneeVisit& visit, const std::string& name = "acutely_ill") {
  for (const interpret::Alert& one : visit.assess().alerts) {
    if (one.alert.text == "alert." + name && (!one.side || *one.side == model::Side::left)) {
      return one.message.text.substr(one.message.text.rfind('.') + 1) + (one.interrupts ? "!" : "");
    }
  }
  return "none";
}
bool looks_asks(const KneeVisit& visit, const std::string& item) {
  for (const interpret::Question& one : visit.assess().questions) {
    if (one.question.text == "alert.acutely_ill") {
      return std::any_of(one.ask.begin(), one.ask.end(), [&](const interpret::Ask& ask) { return ask.item.text == item; });
    }
  }
  return false;
}
bool looks_interrupts(const KneeVisit& visit) {
  const auto alerts = visit.assess().alerts;
  return std::any_of(alerts.begin(), alerts.end(), [](const interpret::Alert& one) { return one.interrupts; });
}

std::string counted(const std::string& item, int value) { return "general." + item + " midline " + (item.starts_with("blood") ? "mm_hg:" : "count:") + std::to_string(value) + ";"; }
std::string pulse_of(int value) { return counted("pulse_rate", value); }
std::string systolic_of(int value) { return counted("blood_pressure_systolic", value); }
std::string breaths_of(int value) { return counted("respiratory_rate", value); }
std::string oxygen_of(int value) { return counted("oxygen_saturation", value); }

const std::string looks_pale = "general.pallor midline answer:yes;";
const std::string looks_slow = "vessel.capillary_refill_slow left answer:yes;vessel.capillary_refill_slow right answer:yes;";
const std::string looks_mottled = "vessel.foot_colour left choice:colour_mottled;vessel.foot_colour right choice:colour_mottled;";
const std::string looks_unwell = "history.unwell midline answer:yes;";
const std::string looks_well = "history.fever midline answer:no;history.unwell midline answer:no;general.temperature midline cel:36.6;";
const std::string crashed = "history.mechanism midline choice:vehicle;";
const std::string twisted = "history.mechanism midline choice:twist;gait.steps_now midline count:4;";
const std::string unhurt = "history.mechanism midline choice:no_injury;";

}  // namespace

TEST_CASE("planted: who is hurt and pale, mottled or slow to refill bleeds inside by a fast pulse or a low pressure, at every age and once") {
  const std::string shin = "leg.look_deformity left answer:yes;";
  for (const char* born : {"2001-01-01", "1942-01-01", "2013-06-01", "2018-06-01"}) {
    CAPTURE(born);
    const auto hurt = [&](const std::string& lines) { return visit_with("whole_limb", born, lines, "2026-11-24"); };
    CHECK(looks_line(hurt(crashed + shin + looks_pale + looks_slow + looks_mottled + looks_unwell + pulse_of(128) + systolic_of(96))) == "shock!");
    CHECK(looks_line(hurt(crashed + shin + looks_pale + looks_slow + pulse_of(128))) == "shock!");
    CHECK(looks_line(hurt("history.mechanism midline choice:twist;" + looks_pale + looks_slow + pulse_of(128))) == "shock!");
  }
  const auto fell = [&](const std::string& lines) { return visit_with("hip_after_fall", "1942-01-01", "history.mechanism midline choice:fall;" + lines, "2026-11-24"); };
  CHECK(looks_line(fell(looks_pale + pulse_of(118) + systolic_of(96))) == "shock!");
  CHECK(looks_line(visit_with("acute_knee", "1998-01-01", crashed + looks_pale + pulse_of(140) + systolic_of(102), "2026-11-24")) == "shock!");
  CHECK(looks_line(visit_with("wound_or_numb_foot", "1996-01-01", "vessel.bleeding_active left answer:yes;" + looks_pale + pulse_of(128) + systolic_of(98))) == "shock!");
  // With child and a sore, guarded belly: no injury is told.
  CHECK(looks_line(visit_with("posterior_hip", "2002-01-01", "body.pregnancy midline answer:yes;pelvis.abdomen_look midline choices:abdomen_guarded;" + looks_unwell + looks_pale + pulse_of(126) +
                                                               systolic_of(94) + breaths_of(22))) == "shock!");
  // After a crash the pressure that is high risk by itself needs no second sign (NICE NG51).
  CHECK(looks_line(visit_with("acute_knee", "1986-01-01", crashed + systolic_of(85), "2026-11-24")) == "shock!");
  CHECK(looks_line(visit_with("acute_knee", "1986-01-01", twisted + looks_well + systolic_of(88), "2026-11-24")) == "none");
}

TEST_CASE("planted: pale alone, slow to refill alone or on one side, and cold blue feet are no bleeding") {
  CHECK(looks_line(visit_with("acute_knee", "1998-01-01", crashed + looks_pale + systolic_of(124) + pulse_of(88), "2026-11-24")) == "none");
  CHECK(looks_line(visit_with("acute_knee", "1998-01-01", twisted + looks_pale + pulse_of(104), "2026-11-24")) == "none");
  CHECK(looks_line(visit_with("acute_knee", "1998-01-01", crashed + "vessel.capillary_refill_slow left answer:yes;" + pulse_of(118), "2026-11-24")) == "none");
  CHECK(looks_line(visit_with("hip_after_fall", "1942-01-01",
                              "history.mechanism midline choice:fall;vessel.foot_colour left choice:colour_blue;vessel.foot_colour right choice:colour_blue;" + looks_well + pulse_of(104) + systolic_of(118),
                              "2026-11-24")) == "none");
  // Asked about where it was a crash, or the blood is thin.
  const KneeVisit pelvis = visit_with("hip_after_fall", "1996-01-01", crashed + "pelvis.ring_tender_light midline answer:yes;" + pulse_of(126) + systolic_of(108) + breaths_of(22), "2026-11-24");
  CHECK(looks_line(pelvis) == "none");
  CHECK(looks_asks(pelvis, "general.pallor"));
  const KneeVisit thin = visit_with("hip_after_fall", "1942-01-01", "history.mechanism midline choice:fall;history.blood_thinners midline answer:yes;" + pulse_of(118) + systolic_of(104), "2026-11-24");
  CHECK(looks_asks(thin, "vessel.capillary_refill_slow"));
  CHECK(looks_asks(visit_with("hip_groin", "1961-01-01", unhurt + "history.blood_thinners midline answer:yes;history.pain_severe_sudden midline answer:yes;" + looks_pale + pulse_of(124) + systolic_of(102)),
                   "vessel.capillary_refill_slow"));
}

// C2 and C3: a young woman in pain has these numbers.
TEST_CASE("planted: pulse, breath and pressure each a little out after a twist or without an injury are asked about again and call nobody") {
  struct Numbers {
    int pulse, systolic, breaths;
  };
  for (const Numbers& one : {Numbers{108, 98, 22}, Numbers{101, 100, 21}, Numbers{116, 100, 24}, Numbers{104, 91, 21}}) {
    const std::string signs = pulse_of(one.pulse) + systolic_of(one.systolic) + breaths_of(one.breaths) + oxygen_of(98);
    CAPTURE(signs);
    for (const std::string& how : {twisted, unhurt, std::string("history.mechanism midline choice:direct_blow;")}) {
      CAPTURE(how);
      for (const char* born : {"2004-01-01", "2013-06-01"}) {
        const KneeVisit visit = visit_with("ankle_injury", born, how + looks_well + signs, "2026-11-23");
        CHECK(looks_line(visit) == "none");
        CHECK_FALSE(looks_interrupts(visit));
        CHECK(looks_asks(visit, "general.pallor"));
      }
    }
    // What is seen, felt or found beside them settles it.
    CHECK(looks_line(visit_with("ankle_injury", "2004-01-01", twisted + looks_pale + signs, "2026-11-23")) == "shock!");
    CHECK(looks_line(visit_with("ankle_injury", "2004-01-01", twisted + "general.consciousness midline choice:mind_voice;" + signs, "2026-11-23")) == "shock!");
    CHECK(looks_line(visit_with("chronic_knee", "2004-01-01", unhurt + looks_unwell + signs)) != "none");
    // Of a fall, a crash or running blood they stand for bleeding as before.
    CHECK(looks_line(visit_with("hip_after_fall", "2004-01-01", "history.fall_recent midline answer:yes;" + signs, "2026-11-23")) == "shock!");
  }
  const std::string with_child = "body.pregnancy midline answer:yes;";
  CHECK(looks_line(visit_with("ankle_injury", "2000-01-01", with_child + twisted + looks_well + pulse_of(104) + systolic_of(88) + breaths_of(20), "2026-11-23")) == "none");
  CHECK(looks_line(visit_with("ankle_injury", "2000-01-01", with_child + twisted + pulse_of(104) + systolic_of(78) + breaths_of(20), "2026-11-23")) != "none");
}

// NICE NG51: mottled is high risk at any age.
TEST_CASE("planted: the mottled and ill are septic until shown otherwise, hot or cold, grown or not") {
  const std::string seen = looks_pale + looks_mottled + looks_slow + looks_unwell;
  for (const char* born : {"1978-01-01", "2013-06-01", "2018-06-01", "2026-04-20"}) {
    CAPTURE(born);
    CHECK(looks_interrupts(visit_with("free", born, seen + "general.temperature midline cel:39.4;" + pulse_of(126) + breaths_of(20))));
    CHECK(looks_interrupts(visit_with("free", born, seen + "general.temperature midline cel:35.6;" + pulse_of(96))));
  }
  CHECK(looks_line(visit_with("free", "1978-01-01", seen + "history.fever midline answer:yes;general.temperature midline cel:39.4;" + pulse_of(126) + breaths_of(20))) == "mottled!");
  CHECK(looks_line(visit_with("free", "1956-01-01", seen + "general.temperature midline cel:35.6;" + pulse_of(96))) == "mottled!");
  CHECK(looks_line(visit_with("free", "1978-01-01", looks_pale + looks_slow + "general.temperature midline cel:39.4;" + pulse_of(88))) == "mottled_same_day");
  // An infant that does not move and is mottled waits for no fever; cold feet of a well one in a bath room do.
  CHECK(looks_line(visit_with("infant_hip", "2026-04-20", looks_unwell + looks_pale + looks_mottled + "general.child_at_play midline choice:play_will_not_move;general.temperature midline cel:36.4;")) == "pale!");
  CHECK(looks_line(visit_with("infant_hip", "2026-04-20", looks_mottled + looks_slow + looks_well)) == "none");
  // Cold feet of an old man with a cold, and a flu.
  CHECK(looks_line(visit_with("free", "1948-01-01", looks_mottled + looks_slow + looks_well + pulse_of(78) + breaths_of(16))) == "none");
  const KneeVisit flu = visit_with("free", "1982-01-01", looks_unwell + "general.temperature midline cel:40.4;" + pulse_of(118) + breaths_of(20) + systolic_of(124));
  CHECK(looks_line(flu) == "none");
  CHECK(looks_asks(flu, "general.pallor"));
}

TEST_CASE("planted: a child hot, ill, fast and short of breath, an ill adult without a fever, and who fell and is cold are the same day") {
  const std::string child_signs = looks_unwell + "general.temperature midline cel:39.5;";
  CHECK(looks_line(visit_with("ankle_injury", "2021-06-01", twisted + child_signs + pulse_of(128) + breaths_of(27), "2026-11-23")) == "several_same_day");
  CHECK(looks_line(visit_with("ankle_injury", "2021-06-01", twisted + child_signs + pulse_of(128) + breaths_of(22), "2026-11-23")) == "none");
  const std::string knee = unhurt + "history.weeks_since_onset midline count:1;general.temperature midline cel:36.4;";
  CHECK(looks_line(visit_with("chronic_knee", "1954-01-01", knee + looks_unwell + pulse_of(118) + breaths_of(23) + systolic_of(104))) == "several_same_day");
  CHECK(looks_line(visit_with("chronic_knee", "1954-01-01", knee + "history.unwell midline answer:no;" + pulse_of(118) + breaths_of(23) + systolic_of(104))) == "none");
  // Section 12: a fall, and how long the person lay.
  const std::string cold = "history.unwell midline answer:no;history.fever midline answer:no;general.temperature midline cel:34.6;" + pulse_of(58);
  CHECK(looks_line(visit_with("hip_after_fall", "1940-01-01", "history.fall_recent midline answer:yes;" + cold, "2026-11-24")) == "cold_same_day");
  CHECK(looks_line(visit_with("chronic_knee", "1940-01-01", unhurt + cold)) == "none");
}

TEST_CASE("planted: pressure of 90 or less with a pulse that answers, or does not, is now, and one of them is asked about") {
  for (const std::string& beside : {std::string(), unhurt + looks_well}) {
    CAPTURE(beside);
    const auto at = [&](const std::string& lines) { return visit_with("free", "1966-01-01", beside + lines); };
    CHECK(looks_line(at(systolic_of(84) + pulse_of(126))) == "several!");
    CHECK(looks_line(at(systolic_of(90) + pulse_of(101))) == "several!");
    CHECK(looks_line(at(systolic_of(88) + pulse_of(36))) == "several!");
    CHECK(looks_line(at(systolic_of(88) + pulse_of(64))) == "none");
    CHECK(looks_asks(at(systolic_of(88) + pulse_of(64)), "general.consciousness"));
    CHECK(looks_line(at(systolic_of(96) + pulse_of(32))) == "none");
    CHECK(looks_asks(at(systolic_of(96) + pulse_of(32)), "general.pallor"));
    CHECK(looks_line(at(systolic_of(118) + pulse_of(36))) == "none");
    CHECK_FALSE(looks_asks(at(systolic_of(118) + pulse_of(36)), "general.pallor"));
    CHECK(looks_asks(at(pulse_of(146)), "general.pallor"));
  }
  CHECK(looks_asks(visit_with("limping_child", "2024-06-01", "general.child_at_play midline choice:play_quiet;" + looks_well + pulse_of(205)), "general.pallor"));
  CHECK_FALSE(looks_asks(visit_with("limping_child", "2024-06-01", "general.child_at_play midline choice:play_as_usual;" + looks_well + pulse_of(156)), "general.pallor"));
}

// C3: old lungs and thin air lack oxygen and are short of breath for years.
TEST_CASE("planted: little oxygen and short breath of who is well and slow are asked about, and with anything beside them are now") {
  const std::string breathless = "history.breathless midline answer:yes;";
  const auto old_lungs = [&](const std::string& lines) { return visit_with("chronic_knee", "1954-01-01", unhurt + breathless + lines); };
  for (const int oxygen : {91, 89, 87}) {
    CAPTURE(oxygen);
    const KneeVisit visit = old_lungs(looks_well + pulse_of(92) + breaths_of(22) + systolic_of(134) + oxygen_of(oxygen));
    CHECK(looks_line(visit) == "none");
    CHECK(looks_asks(visit, "general.consciousness"));
    CHECK(looks_line(old_lungs(looks_well + pulse_of(112) + breaths_of(22) + systolic_of(134) + oxygen_of(oxygen))) == "failing!");
    CHECK(looks_line(old_lungs(looks_well + pulse_of(92) + breaths_of(26) + systolic_of(134) + oxygen_of(oxygen))) == "failing!");
    CHECK(looks_interrupts(old_lungs(looks_unwell + pulse_of(92) + oxygen_of(oxygen))));
  }
  // Nobody asked how the person is, and less than known lungs need.
  CHECK(looks_line(old_lungs(oxygen_of(86))) == "failing!");
}

// Section 10; NICE NG158. In pregnancy less than 95 of 100 is taught, from memory.
TEST_CASE("planted: with child, or weeks after a birth, a fast pulse with little oxygen or a reason is a clot of the lung, and fever with signs is now") {
  const std::string with_child = "body.pregnancy midline answer:yes;";
  const std::string chest = with_child + "history.breathless midline answer:yes;leg.calf_swelling left answer:no;";
  CHECK(looks_line(visit_with("posterior_hip", "1997-01-01", chest + looks_well + pulse_of(125) + breaths_of(24) + oxygen_of(94))) == "lung_clot!");
  CHECK(looks_line(visit_with("posterior_hip", "1997-01-01", chest + looks_well + pulse_of(125) + breaths_of(18) + oxygen_of(94))) == "lung_clot!");
  CHECK(looks_line(visit_with("posterior_hip", "1997-01-01", chest + "history.clot_before midline answer:yes;" + pulse_of(104))) == "lung_clot!");
  CHECK(looks_line(visit_with("posterior_hip", "1997-01-01", chest + looks_well + pulse_of(106) + breaths_of(18) + oxygen_of(97))) == "none");
  CHECK(looks_line(visit_with("calf_pain", "1997-01-01", with_child + "leg.calf_swelling left answer:yes;history.breathless midline answer:no;" + pulse_of(124) + oxygen_of(94)), "dvt") == "chest!");
  CHECK(looks_line(visit_with("calf_pain", "1997-01-01", with_child + "leg.calf_swelling left answer:yes;history.breathless midline answer:no;" + pulse_of(106) + oxygen_of(98)), "dvt") == "raised");
  const std::string hot = looks_unwell + "general.temperature midline cel:38.9;" + pulse_of(122) + breaths_of(24) + systolic_of(108);
  CHECK(looks_line(visit_with("hip_groin", "2000-01-01", with_child + hot)) == "several!");
  CHECK(looks_line(visit_with("hip_groin", "2000-01-01", "history.childbirth_recent midline answer:yes;" + hot)) == "several!");
  CHECK(looks_line(visit_with("hip_groin", "2000-01-01", hot)) == "several_same_day");
}

TEST_CASE("planted: of short breath the pulse, the oxygen and the breaths are asked while nobody counted them, and fast breaths after an operation are the same day") {
  const std::string breathless = "history.breathless midline answer:yes;";
  for (const char* complaint : {"free", "swollen_legs", "after_plaster", "chronic_knee"}) {
    CAPTURE(complaint);
    const KneeVisit open = visit_with(complaint, "1966-01-01", breathless + "leg.calf_swelling left answer:no;leg.calf_swelling right answer:no;");
    CHECK(looks_asks(open, "general.pulse_rate"));
    CHECK(looks_asks(open, "general.oxygen_saturation"));
    CHECK(looks_asks(open, "general.respiratory_rate"));
    CHECK_FALSE(looks_asks(visit_with(complaint, "1966-01-01", breathless + pulse_of(76) + breaths_of(16) + oxygen_of(97)), "general.pulse_rate"));
    CHECK_FALSE(looks_asks(visit_with(complaint, "1966-01-01", "history.breathless midline answer:no;"), "general.pulse_rate"));
  }
  const std::string operated = breathless + "history.immobile_or_surgery_recent midline answer:yes;" + pulse_of(96) + oxygen_of(92) + systolic_of(118);
  CHECK(looks_line(visit_with("after_operation", "1960-01-01", operated + breaths_of(24))) == "lung_clot_same_day");
  CHECK(looks_line(visit_with("after_operation", "1960-01-01", operated + breaths_of(18))) == "none");
}

// The red flags page, section 0: unknown is never no. A bleeding belly or bowel and sepsis have no injury.
TEST_CASE("planted: pulse and pressure out beside how the person looks is now, hurt, not hurt, not known or not asked, and once") {
  const std::string fails = looks_unwell + looks_pale + looks_slow + pulse_of(128) + systolic_of(92);
  for (const std::string& how : {unhurt, std::string(), std::string("history.mechanism midline choice:not_known;")}) {
    CAPTURE(how);
    for (const char* born : {"1986-01-01", "1944-01-01"}) {
      CHECK(looks_line(visit_with("chronic_knee", born, how + fails)) == "circulation!");
      CHECK(looks_line(visit_with("hip_after_fall", born, how + fails)) == (how == unhurt ? "circulation!" : "shock!"));
    }
    CHECK(looks_line(visit_with("free", "1986-01-01", how + looks_pale + looks_unwell + pulse_of(112) + systolic_of(96))) == "circulation!");
    CHECK(looks_line(visit_with("free", "1986-01-01", how + looks_pale + looks_slow + "general.temperature midline cel:39.1;" + pulse_of(118) + systolic_of(98))) == "raised!");
    CHECK(looks_interrupts(visit_with("free", "2020-06-01", how + looks_unwell + looks_pale + looks_slow + pulse_of(152) + systolic_of(72))));
  }
  // One of the two beside the looks is asked after, and so is who was not measured; who is well and slim is asked, and called by nobody.
  const KneeVisit fast = visit_with("free", "1986-01-01", unhurt + looks_unwell + looks_pale + looks_slow + pulse_of(118));
  CHECK(looks_line(fast) == "none");
  CHECK(looks_asks(fast, "general.blood_pressure_systolic"));
  CHECK(looks_asks(visit_with("free", "1986-01-01", unhurt + looks_unwell + looks_pale + looks_slow), "general.pulse_rate"));
  CHECK(looks_asks(visit_with("free", "1986-01-01", unhurt + looks_unwell + looks_slow), "general.blood_pressure_systolic"));
  const KneeVisit slim = visit_with("chronic_knee", "2004-01-01", unhurt + looks_well + looks_pale + looks_slow + pulse_of(104) + systolic_of(98));
  CHECK(looks_line(slim) == "none");
  CHECK(looks_asks(slim, "general.consciousness"));
  CHECK(looks_asks(visit_with("chronic_knee", "2004-01-01", unhurt + looks_well + pulse_of(118) + systolic_of(96) + breaths_of(18)), "general.pallor"));
  CHECK_FALSE(looks_asks(visit_with("chronic_knee", "2004-01-01", unhurt + looks_well + looks_slow + pulse_of(88) + systolic_of(118)), "general.pallor"));
}

// Clinical safety, C11: call before measuring.
TEST_CASE("planted: after a crash who looks like shock is now before anybody measured, and after a fall pulse and pressure are asked before all else") {
  const std::string looks = looks_unwell + looks_pale + looks_slow;
  for (const char* born : {"1996-01-01", "2013-06-01", "2019-06-01"}) {
    CAPTURE(born);
    CHECK(looks_line(visit_with("whole_limb", born, crashed + looks, "2026-11-24")) == "shock!");
    CHECK(looks_line(visit_with("hip_after_fall", born, crashed + looks_pale + looks_slow + looks_mottled, "2026-11-24")) == "shock!");
    CHECK_FALSE(looks_interrupts(visit_with("whole_limb", born, crashed + looks_pale + looks_slow + pulse_of(84) + systolic_of(124), "2026-11-24")));
    CHECK(looks_line(visit_with("whole_limb", born, crashed + looks_pale, "2026-11-24")) == "none");
    // Of one cause one line: slow to refill on both feet is no foot without flow.
    const KneeVisit bicycle = visit_with("hip_after_fall", born, crashed + looks, "2026-11-24");
    CHECK(looks_line(bicycle, "ali") == "none");
  }
  for (const char* born : {"1996-01-01", "2026-02-20"}) {
    const KneeVisit fell = visit_with("infant_hip", born, "history.mechanism midline choice:fall;leg.thigh_shaft_tender left answer:yes;" + looks_pale + looks_slow, "2026-11-24");
    const auto asked = fell.assess().questions;
    CHECK(!asked.empty());
    CHECK((!asked.empty() && asked.front().question.text == "alert.acutely_ill"));
    CHECK(looks_asks(fell, "general.pulse_rate"));
    CHECK(looks_asks(fell, "general.blood_pressure_systolic"));
  }
}

// C2 and C3: a winter street, pain and fright.
TEST_CASE("planted: pale, cold and slow to refill after a fall on ice, well, with a pressure that holds, is asked about and calls nobody") {
  const std::string ice = "history.mechanism midline choice:fall;gait.steps_now midline count:4;history.fever midline answer:no;";
  const std::string is_well = "history.unwell midline answer:no;";
  const std::string cold = "vessel.foot_cold left answer:yes;vessel.foot_cold right answer:yes;";
  const std::string full = "vessel.pulse_dorsalis_pedis left grade:2;vessel.pulse_posterior_tibial left grade:2;vessel.pulse_dorsalis_pedis right grade:2;vessel.pulse_posterior_tibial right grade:2;";
  for (const std::string& feet : {cold + full, full, std::string()}) {
    const KneeVisit street = visit_with("ankle_injury", "1992-01-01", ice + is_well + feet + looks_pale + looks_slow + pulse_of(104) + systolic_of(112) + breaths_of(18), "2026-11-24");
    CHECK_FALSE(looks_interrupts(street));
    CHECK(looks_asks(street, "general.consciousness"));
  }
  const auto on_ice = [&](const std::string& lines) { return visit_with("ankle_injury", "1992-01-01", ice + looks_pale + looks_slow + lines, "2026-11-24"); };
  CHECK(looks_line(on_ice(looks_unwell + pulse_of(104) + systolic_of(112))) == "shock!");
  CHECK(looks_line(on_ice(is_well + pulse_of(124) + systolic_of(112))) == "shock!");
  CHECK(looks_line(on_ice(is_well + pulse_of(104) + systolic_of(96))) == "shock!");
  CHECK(looks_line(on_ice(is_well + pulse_of(104))) == "shock!");  // nobody took the pressure
  CHECK(looks_line(on_ice(is_well + looks_mottled + pulse_of(104) + systolic_of(112))) == "shock!");
  // A faint has a slow pulse, and a tablet of the old has too.
  const auto faint = [&](const char* born, const std::string& lines) { return visit_with("ankle_injury", born, ice + looks_pale + is_well + systolic_of(86) + lines, "2026-11-24"); };
  CHECK(looks_line(faint("2002-01-01", pulse_of(52))) == "none");
  CHECK(looks_asks(faint("2002-01-01", pulse_of(52)), "general.consciousness"));
  CHECK(looks_line(faint("2002-01-01", pulse_of(92))) == "shock!");
  CHECK(looks_line(faint("1944-01-01", pulse_of(52))) == "shock!");
  // Slow to refill on both feet and a fall: the foot that nobody felt is no foot without flow.
  const KneeVisit felt_left = visit_with("ankle_injury", "2007-01-01", ice + is_well + looks_pale + looks_slow + "vessel.pulse_dorsalis_pedis left grade:2;vessel.pulse_posterior_tibial left grade:2;", "2026-11-24");
  CHECK_FALSE(looks_interrupts(felt_left));
  // A symptom of its own makes it one, and so does a lost pulse.
  for (const char* more : {"history.numb_or_tingling left answer:yes;", "vessel.pulse_dorsalis_pedis left grade:0;vessel.pulse_posterior_tibial left grade:0;", "vessel.foot_cold left answer:yes;"}) {
    CAPTURE(more);
    CHECK(looks_line(visit_with("ankle_injury", "2007-01-01", ice + is_well + looks_slow + more, "2026-11-24"), "ali") != "none");
  }
}

// NICE NG51: mottled or ashen, and blue skin, high at any age. Clinical safety, C8: a side that nobody looked at is not normal.
TEST_CASE("planted: dusky feet of the hot, and one mottled foot while nobody looked at the other, count; of a hurt leg or beside a sound foot they do not") {
  const std::string hot = "general.temperature midline cel:38.8;" + pulse_of(118) + systolic_of(104);
  for (const char* colour : {"colour_dusky", "colour_blue"}) {
    CAPTURE(colour);
    const std::string feet = std::string("vessel.foot_colour left choice:") + colour + ";vessel.foot_colour right choice:" + colour + ";";
    const auto old_man = [&](const std::string& lines) { return visit_with("wound_or_numb_foot", "1960-01-01", unhurt + feet + lines); };
    CHECK(looks_line(old_man(looks_unwell + looks_slow + hot)) == "mottled!");
    CHECK(looks_line(old_man(looks_unwell + looks_pale + hot)) == "mottled!");
    // Dusky of the old, beside two signs of toxicity (red flags page, section 6), waits for no second look; blue feet are of winter too.
    CHECK(looks_line(old_man(looks_unwell + hot)) == (std::string(colour) == "colour_dusky" ? "mottled!" : "none"));
    CHECK(looks_line(old_man(looks_slow + looks_well + pulse_of(118) + systolic_of(124))) == "none");
  }
  const std::string one = "vessel.foot_colour left choice:colour_mottled;vessel.capillary_refill_slow left answer:yes;";
  const std::string ill = looks_unwell + "general.temperature midline cel:39.3;" + pulse_of(122);
  CHECK(looks_line(visit_with("acute_knee", "1968-01-01", unhurt + one + looks_pale + ill)) == "mottled!");
  CHECK(looks_line(visit_with("acute_knee", "1968-01-01", unhurt + one + ill)) == "none");
  CHECK(looks_line(visit_with("acute_knee", "1968-01-01", unhurt + one + looks_pale + ill + "vessel.foot_colour right choice:colour_as_expected;vessel.capillary_refill_slow right answer:no;")) != "mottled!");
  CHECK(looks_line(visit_with("acute_knee", "1968-01-01", crashed + one + looks_pale + pulse_of(118), "2026-11-24")) == "none");
  CHECK(looks_line(visit_with("chronic_knee", "1981-01-01", unhurt + looks_mottled + "general.temperature midline cel:39.0;" + pulse_of(124) + breaths_of(21))) == "several!");
}

// NICE NG51: 91 to 100 mmHg and a pulse of 100 to 130 are moderate in pregnancy; how many make which class is our own rule.
TEST_CASE("planted: with child, hot and ill, one of pulse, breath and low pressure is the same day and two are now; breathless after a twist is no bleeding") {
  for (const char* bears : {"body.pregnancy midline answer:yes;", "history.childbirth_recent midline answer:yes;"}) {
    CAPTURE(bears);
    const auto mother = [&](const std::string& lines) { return visit_with("posterior_hip", "1998-01-01", bears + unhurt + lines); };
    const std::string hot = looks_unwell + "general.temperature midline cel:38.6;";
    CHECK(looks_line(mother(hot + pulse_of(112) + systolic_of(98))) == "several!");
    CHECK(looks_line(mother(hot + pulse_of(112) + systolic_of(118))) == "several_same_day");
    CHECK(looks_line(mother(hot + pulse_of(92) + systolic_of(118))) == "none");
    CHECK(looks_line(mother(looks_well + pulse_of(112) + systolic_of(98))) == "none");
  }
  const std::string breath = "history.breathless midline answer:yes;" + oxygen_of(91) + pulse_of(118) + breaths_of(20);
  CHECK(looks_line(visit_with("ankle_injury", "1971-01-01", twisted + breath, "2026-11-24")) == "failing!");
  CHECK(looks_line(visit_with("ankle_injury", "1971-01-01", crashed + breath, "2026-11-24")) == "shock!");
}

// The red flags page, section 6: above 38 or under 36, pulse over 90, breaths over 20. From 60 is the age gate of section 12 (a convention here); that they
// are counted beside a mottled foot is our own rule.
TEST_CASE("planted: old, ill and mottled or dusky on a foot, two signs of toxicity are now, cold or hot; one is asked, and unmeasured all are asked first") {
  const std::string one = "vessel.foot_colour left choice:colour_mottled;", dusky = "vessel.foot_colour left choice:colour_dusky;vessel.foot_colour right choice:colour_as_expected;";
  const auto at = [&](const char* born, const std::string& lines) { return visit_with("acute_knee", born, unhurt + lines); };
  for (const std::string& skin : {one, looks_mottled, dusky}) {
    CAPTURE(skin);
    CHECK(looks_line(at("1946-01-01", looks_unwell + skin + "general.temperature midline cel:35.4;" + pulse_of(92))) == "mottled!");
    CHECK(looks_line(at("1956-01-01", looks_unwell + skin + "general.temperature midline cel:38.9;" + pulse_of(112) + breaths_of(20))) == "mottled!");
    CHECK(looks_line(at("1966-01-01", looks_unwell + skin + pulse_of(96) + breaths_of(22))) == "mottled!");
    // One sign; younger; and well: nobody is called.
    const KneeVisit one_sign = at("1946-01-01", looks_unwell + skin + "general.temperature midline cel:35.4;" + pulse_of(84));
    CHECK(looks_line(one_sign) == "none");
    CHECK(looks_asks(one_sign, "general.blood_pressure_systolic"));
    CHECK(looks_line(at("1996-01-01", looks_unwell + skin + "general.temperature midline cel:38.4;" + pulse_of(96))) == "none");
    CHECK_FALSE(looks_interrupts(at("1946-01-01", looks_well + skin + pulse_of(96) + breaths_of(22))));
    // Nothing measured: warmth, pulse, pressure and breaths before all else.
    const KneeVisit unmeasured = at("1946-01-01", looks_unwell + skin);
    CHECK(looks_line(unmeasured) == "none");
    for (const char* item : {"general.temperature", "general.pulse_rate", "general.blood_pressure_systolic", "general.respiratory_rate"}) {
      CAPTURE(item);
      CHECK(looks_asks(unmeasured, item));
    }
    const auto asked = unmeasured.assess().questions;
    CHECK((!asked.empty() && asked.front().question.text == "alert.acutely_ill"));
  }
  // A foot that is hurt is so of its own.
  CHECK(looks_line(visit_with("ankle_injury", "1946-01-01", "history.mechanism midline choice:twist;" + looks_unwell + one + pulse_of(96) + breaths_of(22), "2026-11-24")) != "mottled!");
  // Without a colour they are asked about.
  const KneeVisit cold = at("1946-01-01", looks_unwell + "general.temperature midline cel:35.4;" + pulse_of(92));
  CHECK(looks_line(cold) == "none");
  CHECK(looks_asks(cold, "general.blood_pressure_systolic"));
  CHECK_FALSE(looks_asks(at("1946-01-01", looks_unwell + "general.temperature midline cel:36.4;" + pulse_of(92)), "general.blood_pressure_systolic"));
  // Below 35.0 mottled skin says as much as feeling ill.
  CHECK(looks_line(visit_with("wound_or_numb_foot", "1974-01-01", unhurt + looks_mottled + "general.temperature midline cel:34.2;" + pulse_of(48) + systolic_of(98))) == "cold!");
  CHECK(looks_line(visit_with("wound_or_numb_foot", "1974-01-01", unhurt + one + "general.temperature midline cel:34.2;" + pulse_of(48) + systolic_of(118))) == "none");
  // Three looks and feeling ill wait for no number, hurt these days they do.
  CHECK(looks_line(at("1971-01-01", looks_unwell + looks_pale + looks_mottled + looks_slow)) == "mottled!");
  CHECK(looks_line(visit_with("ankle_injury", "1971-01-01", twisted + looks_unwell + looks_pale + looks_mottled + looks_slow, "2026-11-24")) != "mottled!");
}

// C2 and C3: a fever in winter shoes.
TEST_CASE("planted: cold, blue feet over full pulses beside a fever and its pulse alone are asked about; dusky, without a pulse or with a second sign they call") {
  const std::string feet = "vessel.foot_cold left answer:yes;vessel.foot_cold right answer:yes;" + looks_slow;
  const std::string full = "vessel.pulse_dorsalis_pedis left grade:2;vessel.pulse_posterior_tibial left grade:2;vessel.pulse_dorsalis_pedis right grade:2;vessel.pulse_posterior_tibial right grade:2;";
  const auto coloured = [](const std::string& colour) { return "vessel.foot_colour left choice:" + colour + ";vessel.foot_colour right choice:" + colour + ";"; };
  const std::string ill = looks_unwell + "general.temperature midline cel:38.6;" + pulse_of(116) + systolic_of(122);
  for (const char* born : {"2000-01-01", "2014-06-01"}) {
    CAPTURE(born);
    const auto flu = [&](const std::string& lines) { return visit_with("calf_pain", born, unhurt + ill + feet + lines); };
    CHECK_FALSE(looks_interrupts(flu(full + coloured("colour_blue") + breaths_of(18) + oxygen_of(98))));
    CHECK(looks_asks(flu(full + coloured("colour_blue") + breaths_of(18) + oxygen_of(98)), "general.pallor"));
    CHECK(looks_interrupts(flu(coloured("colour_blue"))));
    CHECK(looks_interrupts(flu(full + coloured("colour_dusky"))));
    CHECK(looks_interrupts(flu(full + coloured("colour_mottled"))));
    CHECK(looks_interrupts(flu(full + coloured("colour_blue") + breaths_of(28))));
  }
}

TEST_CASE("planted: ill without heat or cold and a pressure that fails is bleeding inside or sepsis, with child bleeding there; with a fever it is sepsis") {
  const auto ill = [](const std::string& lines) { return visit_with("chronic_knee", "1960-01-01", unhurt + looks_unwell + looks_pale + lines); };
  CHECK(looks_line(ill(looks_slow + pulse_of(62) + systolic_of(84))) == "shock_ill!");
  CHECK(looks_line(ill(looks_slow + pulse_of(128) + systolic_of(92))) == "circulation!");
  CHECK(looks_line(ill(looks_slow + pulse_of(62) + systolic_of(84) + "general.temperature midline cel:38.9;")) == "raised!");
  for (const char* bears : {"body.pregnancy midline answer:yes;", "history.childbirth_recent midline answer:yes;"}) {
    CAPTURE(bears);
    const KneeVisit mother = visit_with("free", "1997-01-01", bears + unhurt + looks_unwell + looks_pale + pulse_of(124) + systolic_of(86));
    CHECK(looks_line(mother) == "shock_bears!");
    CHECK(looks_line(visit_with("free", "1997-01-01", bears + unhurt + looks_unwell + looks_pale + pulse_of(124) + systolic_of(86) + "general.temperature midline cel:38.9;")) == "raised!");
    // Hot, and two of pulse, breath and pressure, while nobody asked how she feels: now; of one who says to be well the same day.
    const std::string signs = "general.temperature midline cel:38.4;" + pulse_of(122) + systolic_of(104) + breaths_of(22);
    CHECK(looks_line(visit_with("posterior_hip", "1998-01-01", bears + unhurt + signs)) == "several!");
    CHECK(looks_line(visit_with("posterior_hip", "1998-01-01", bears + unhurt + signs + "history.unwell midline answer:no;")) == "several_same_day");
  }
}
