// Planted cases of a foot that fails, or of an illness that hides, under a plaster; each with the neighbour that stays a question. Sources: the red
// flags page, sections 4 ("do not wait for lost pulse, numbness"; undetermined of who cannot report), 0 and 22. What counts is our own rule. All is
// invented.
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

TEST_CASE("planted: a foot numb and not moved under a fresh plaster is now, whatever was said of pain and felt of pulses; numb alone is asked") {
  const std::string no_pain = "history.weeks_since_onset 0; history.pain_out_of_proportion left no; knee.stretch_pain_calf left no; ";
  const std::string fails = "ankle.movement left no; nerve.sensation_foot_reduced left yes; ";
  for (const char* cast : {"cast_thigh", "cast_knee", "cast_shin", "cast_ankle", "cast_foot"}) {
    CAPTURE(cast);
    const std::string plaster = std::string("body.cast left ") + cast + "; ";
    CHECK(line_of(visit("after_plaster", 1990, plaster + no_pain + fails), "acs") == "plaster");
    CHECK(is_now(visit("after_plaster", 1990, plaster + no_pain + fails + "vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 2"), "acs"));
    CHECK(is_now(visit("after_plaster", 1990, plaster + "ankle.movement left no; nerve.sensation_loss_level left loss_beyond_toes"), "acs"));
    CHECK(is_now(visit("after_plaster", 1990, plaster + fails + "history.pain_out_of_proportion left yes"), "acs"));
    CHECK_FALSE(raised(visit("after_plaster", 1990, plaster + no_pain + "ankle.movement left yes; nerve.sensation_foot_reduced left yes"), "acs"));
    CHECK_FALSE(raised(visit("after_plaster", 1990, plaster + no_pain + "ankle.movement left no; nerve.sensation_foot_reduced left no"), "acs"));
    // A plaster of weeks, a paralysed leg, a foot numb for years, and no plaster.
    CHECK_FALSE(raised(visit("after_plaster", 1990, plaster + fails + "history.weeks_since_onset 6; history.pain_out_of_proportion left no"), "acs"));
    CHECK_FALSE(raised(visit("after_plaster", 1990, plaster + no_pain + fails + "body.paralysis left yes; body.feeling_lost left yes"), "acs"));
    CHECK_FALSE(raised(visit("after_plaster", 1990, plaster + no_pain + fails + "history.leprosy yes"), "acs"));
  }
  CHECK(line_of(visit("after_plaster", 1990, no_pain + fails), "acs") != "plaster");
}

TEST_CASE("planted: of who cannot tell of pain a foot pale and slow to fill under a fresh plaster is now; with one of the two, or of who can tell, it is asked") {
  const std::string plaster = "body.cast left cast_shin; history.weeks_since_onset 0; history.pain_out_of_proportion left no; knee.stretch_pain_calf left no; ";
  const std::string both = "vessel.foot_colour left colour_pale; vessel.capillary_refill_slow left yes; ";
  for (const char* cannot : {"general.answers_reliable no; ", "general.consciousness mind_pain; ", "history.memory_poor yes; "}) {
    CAPTURE(cannot);
    CHECK(line_of(visit("after_plaster", 1990, plaster + both + cannot), "acs") == "plaster");
    CHECK_FALSE(raised(visit("after_plaster", 1990, plaster + "vessel.foot_colour left colour_pale; " + cannot), "acs"));
    CHECK_FALSE(raised(visit("after_plaster", 1990, plaster + "vessel.capillary_refill_slow left yes; vessel.foot_colour left colour_pink; " + cannot), "acs"));
  }
  CHECK_FALSE(raised(visit("after_plaster", 1990, plaster + both), "acs"));
}

// Sections 4 ("tight cast") and 5 ("one perfusion sign + one symptom is enough"); from which number pain is severe is the convention of limits.hpp.
TEST_CASE("planted: severe pain under a fresh plaster with a blue foot, or one newly numb or not moved, is now; less pain, a foot in order or an old plaster is asked") {
  const std::string plaster = "body.cast left cast_shin; history.weeks_since_onset 0; ";
  for (const char* sign : {"vessel.foot_colour left colour_blue", "vessel.foot_colour left colour_pale", "vessel.capillary_refill_slow left yes", "ankle.movement left no", "nerve.sensation_foot_reduced left yes"}) {
    CAPTURE(sign);
    for (const char* sore : {"history.pain_now 8; ", "history.pain_now 7; ", "history.pain_at_rest 9; ", "history.pain_severe_sudden yes; "}) {
      CAPTURE(sore);
      CHECK(line_of(visit("after_plaster", 1996, plaster + sore + sign), "acs") == "plaster_pain");
      CHECK(is_now(visit("after_plaster", 1996, plaster + sore + sign), "acs"));
    }
    CHECK_FALSE(raised(visit("after_plaster", 1996, plaster + "history.pain_now 6; " + sign), "acs"));
    CHECK_FALSE(raised(visit("after_plaster", 1996, std::string("body.cast left cast_shin; history.weeks_since_onset 5; history.pain_now 8; ") + sign), "acs"));
    CHECK_FALSE(raised(visit("after_plaster", 1996, std::string("history.weeks_since_onset 0; history.pain_now 8; ") + sign), "acs"));
  }
  CHECK_FALSE(raised(visit("after_plaster", 1996, plaster + "history.pain_now 8; vessel.foot_colour left colour_pink; ankle.movement left yes"), "acs"));
  CHECK(is_now(visit("after_plaster", 2023, plaster + "history.pain_now 9; ankle.movement left no"), "acs"));
  // Numb for years is no sign of today.
  CHECK_FALSE(raised(visit("after_plaster", 1966, plaster + "history.pain_now 8; history.diabetes yes; nerve.sensation_foot_reduced left yes"), "acs"));
  // A child in pain that will not move; one that plays, and a grown person who lies still, are asked.
  const std::string still = plaster + "history.pain_at_night 9; general.child_at_play play_will_not_move";
  CHECK(is_now(visit("after_plaster", 2023, still), "acs"));
  CHECK_FALSE(raised(visit("after_plaster", 2023, plaster + "history.pain_at_night 9"), "acs"));
  CHECK_FALSE(raised(visit("after_plaster", 1990, still), "acs"));
}

TEST_CASE("planted: ill with a fever and a plaster on a foot that feels little is the same day; well, cool, feeling or seen whole it is not") {
  const std::string plaster = "body.cast left cast_ankle+cast_foot; ";
  const std::string hot = "history.unwell yes; general.temperature 385; ";
  for (const char* cause : {"history.diabetes yes; ", "body.feeling_lost left yes; ", "history.leprosy yes; "}) {
    CAPTURE(cause);
    CHECK(line_of(visit("after_plaster", 1969, plaster + hot + cause), "df_infect") == "under_plaster");
    CHECK_FALSE(is_now(visit("after_plaster", 1969, plaster + hot + cause), "df_infect"));
    CHECK_FALSE(raised(visit("after_plaster", 1969, plaster + "history.unwell no; general.temperature 381; " + cause), "df_infect"));
    CHECK_FALSE(raised(visit("after_plaster", 1969, plaster + "history.unwell yes; history.fever no; general.temperature 368; " + cause), "df_infect"));
    CHECK_FALSE(raised(visit("after_plaster", 1969, "body.cast left cast_thigh; " + hot + cause), "df_infect"));
  }
  CHECK_FALSE(raised(visit("after_plaster", 1969, plaster + hot), "df_infect"));
}

// Section 0; clinical safety, C8: what was seen of a side is asked after, whatever leg is complained of.
TEST_CASE("planted: one foot blue or dusky whose pulses nobody felt is asked after on any side; like the other, or over pulses that are felt, it is not") {
  for (const char* colour : {"colour_blue", "colour_dusky"}) {
    CAPTURE(colour);
    const std::string blue = std::string("vessel.foot_colour left ") + colour + "; ";
    const auto other_leg = [&](const std::string& more) {
      Bench bench = visit("after_plaster", 1996, "body.cast right cast_shin; history.pain_now 8; history.weeks_since_onset 0; " + blue + more);
      bench.exam.side = Side::right;
      return bench;
    };
    CHECK(asks(other_leg(""), "ali", "vessel.pulse_dorsalis_pedis"));
    CHECK_FALSE(raised(other_leg(""), "ali"));
    CHECK_FALSE(raised(other_leg(""), "acs"));
    const auto asks_left = [](const Bench& bench) {
      const auto asked = bench.assess().questions;
      return std::any_of(asked.begin(), asked.end(), [](const auto& one) { return one.question.text == "alert.ali" && one.side == Side::left; });
    };
    CHECK(asks_left(other_leg("")));
    CHECK_FALSE(asks_left(other_leg("vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 2")));
    CHECK_FALSE(asks_left(other_leg(std::string("vessel.foot_colour right ") + colour)));
  }
}

// The red flags page, section 8 ("cannot bear weight at all OR severe pain on passive movement": same day) and 15 have no gate for a plaster: it explains
// neither that nor what hurts outside of it, and recording it takes nothing back (clinical safety, C2).
TEST_CASE("planted: a child in a plaster that refuses weight, will not move or whose hip hurts badly is the same day, and the plaster is opened; a plaster alone takes no alert away") {
  const std::string well = "history.mechanism fall; history.weeks_since_onset 0; history.fever no; history.unwell no; general.temperature 369; ";
  for (const char* sign : {"history.refuses_weight left yes", "general.child_at_play play_will_not_move", "hip.pain_passive_severe left yes", "gait.steps_now 0"}) {
    CAPTURE(sign);
    Bench bench = visit("after_plaster", 2022, well + sign);
    REQUIRE(raised(bench, "septic_child"));
    CHECK(line_of(bench, "septic_child") == "raised");
    for (const char* cast : {"cast_thigh", "cast_knee", "cast_shin", "cast_ankle", "cast_foot"}) {
      tell(bench, std::string("body.cast left ") + cast);
      CHECK(line_of(bench, "septic_child") == "plaster");
      CHECK(alert(bench, "septic_child")->urgency == interpret::Urgency::same_day);
      CHECK_FALSE(alert(bench, "septic_child")->interrupts);
    }
    Bench right = visit("after_plaster", 2022, well + "body.cast right cast_shin; history.refuses_weight right yes");
    right.exam.side = Side::right;
    REQUIRE(raised(right, "septic_child"));
    CHECK(alert(right, "septic_child")->side == Side::right);
  }
  // The other leg is not stood on: of that one, whichever leg the plaster is on.
  const Bench of_other = visit("after_plaster", 2022, well + "body.cast left cast_shin; history.refuses_weight right yes");
  REQUIRE(raised(of_other, "septic_child"));
  CHECK(alert(of_other, "septic_child")->side == Side::right);
  CHECK(of_other.assess().alerts.size() == 1);
  CHECK(line_of(visit("after_plaster", 2022, "history.weeks_since_onset 2; body.cast left cast_shin; history.refuses_weight left yes"), "septic_child") == "plaster");
  Bench of_no_side = visit("after_plaster", 2022, well + "body.cast right cast_shin; general.child_at_play play_will_not_move");
  of_no_side.exam.side.reset();
  REQUIRE(raised(of_no_side, "septic_child"));
  CHECK(alert(of_no_side, "septic_child")->side == Side::right);  // the leg that the plaster is on
  // A plaster of the other leg is none of this one, and one that plays and stands is not raised.
  const Bench left = visit("limping_child", 2022, "history.mechanism no_injury; body.cast right cast_shin; history.refuses_weight left yes");
  CHECK(line_of(left, "septic_child") == "raised");
  const auto alerts = left.assess().alerts;
  CHECK(std::none_of(alerts.begin(), alerts.end(), [](const auto& one) { return one.alert.text == "alert.septic_child" && one.side == Side::right; }));
  CHECK_FALSE(raised(visit("after_plaster", 2022, well + "body.cast left cast_shin; gait.steps_now 4"), "septic_child"));
}

// Section 12: "unexplained loss of walking AND groin, thigh or hip pain".
TEST_CASE("planted: a plaster below the knee explains no old hip that hurts; one of the hip, or a hip that does not hurt, is explained") {
  const std::string lost = "history.mechanism no_injury; history.weeks_since_onset 2; gait.steps_now 0; ";
  const std::string groin = "history.pain_site left site_groin; ";
  for (const char* cast : {"cast_shin", "cast_ankle", "cast_foot"}) {
    CHECK(raised(visit("after_plaster", 1946, lost + groin + "body.cast left " + cast), "hip_fx_old"));
    CHECK_FALSE(raised(visit("after_plaster", 1946, lost + "body.cast left " + cast), "hip_fx_old"));
  }
  CHECK_FALSE(raised(visit("after_plaster", 1946, lost + groin + "body.cast left cast_hip"), "hip_fx_old"));
}

TEST_CASE("planted: ill with a fever in a plaster a child is raised, and the pulse that nobody took is asked") {
  const std::string still = "body.cast left cast_shin; history.weeks_since_onset 0; general.child_at_play play_will_not_move; ";
  CHECK(raised(visit("after_plaster", 2023, still + "history.unwell yes"), "septic_child"));
  CHECK(raised(visit("after_plaster", 2023, still + "general.temperature 388"), "septic_child"));
  CHECK(raised(visit("after_plaster", 2023, "history.weeks_since_onset 0; history.mechanism no_injury; general.child_at_play play_will_not_move"), "septic_child"));
  const std::string ill = "body.cast left cast_shin; history.unwell yes; general.temperature 383; ";
  CHECK(asks(visit("after_plaster", 1981, ill), "acutely_ill", "general.pulse_rate"));
  CHECK_FALSE(asks(visit("after_plaster", 1981, ill + "general.pulse_rate 84"), "acutely_ill", "general.respiratory_rate"));
  CHECK_FALSE(asks(visit("after_plaster", 1981, "body.cast left cast_shin; history.unwell no; general.temperature 383"), "acutely_ill", "general.pulse_rate"));
}
