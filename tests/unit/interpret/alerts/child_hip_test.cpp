// The hip of infant and child: a hip that never was in place (RACGP_DDH: under 60 degrees after three months; ultrasound to six months,
// then film), the slip (RCH_SUFE), Perthes disease and the red list of a limp (LIMP_RCHT). Red flags page, sections 13 to 15; clinical
// safety, C13 and F (S02).
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

Bench born_on(int year, int month, const std::string& story) {
  Bench bench = visit("infant_hip", year, story);
  bench.born(year, month, 20);
  return bench;
}

}  // namespace

TEST_CASE("S02: five months, left hip opens 50, right 75, left knee lower: referred with ultrasound at this age, no test provokes the hip, no alert rings") {
  Bench bench = born_on(2026, 6, "hip.abduction_passive_flexed left 50; hip.abduction_passive_flexed right 75; hip.knee_height_lower left positive;"
                                 "history.birth_presentation birth_breech; history.fever no; general.temperature 368");
  bench.person->sex = model::Sex::female;
  CHECK(referral_of(bench, "ddh_late") == "ddh_late.ultrasound");
  const auto assessment = bench.assess();
  CHECK(assessment.alerts.empty());  // a prompt, and no alert
  const reference::AlertRow* row = bench.edition->alert("alert.ddh_late");
  REQUIRE(row != nullptr);
  CHECK(std::find(row->stop.begin(), row->stop.end(), model::ItemId{"hip.barlow"}) != row->stop.end());
  for (const auto& step : assessment.steps) {
    CHECK(step.step.text != "hip.barlow");
  }
  for (const auto& statement : assessment.statements) {
    CHECK_MESSAGE(statement.verdict != interpret::Verdict::within, statement.statement.text);
  }
  Bench older = bench;
  older.born(2026, 3, 20);  // eight months
  CHECK(referral_of(older, "ddh_late") == "ddh_late.film");
}

TEST_CASE("ddh_late: 60 on both sides is answered no, 59 is referred from three months on, and before that the other side alone speaks") {
  const auto opens = [](int month, int left, int right) {
    return born_on(2026, month, "hip.knee_height_lower left negative; hip.abduction_passive_flexed left " + std::to_string(left) +
                                    "; hip.abduction_passive_flexed right " + std::to_string(right));
  };
  CHECK(flag(opens(6, 60, 60), "ddh_late") == "asked_no");
  CHECK(referral_of(opens(6, 59, 60), "ddh_late") == "ddh_late.ultrasound");
  CHECK(referral_of(opens(10, 59, 60), "ddh_late") == "none");  // one month old
  CHECK(referral_of(opens(10, 59, 79), "ddh_late") == "ddh_late.ultrasound");
  CHECK(referral_of(opens(10, 60, 79), "ddh_late") == "none");
}

TEST_CASE("ddh_late: a child who waddles, and a hip that comes out or in, are referred; adults are never judged by it, and nothing measured is asked") {
  CHECK(referral_of(visit("child_alignment", 2023, "gait.pattern left waddling"), "ddh_late") == "ddh_late.film");
  CHECK(referral_of(born_on(2026, 11, "hip.ortolani left positive"), "ddh_late") == "ddh_late.ultrasound");
  CHECK(flag(visit("hip_groin", 1980, "gait.pattern left waddling"), "ddh_late") == "no flag");
  CHECK(flag(born_on(2026, 6, ""), "ddh_late") == "not_asked");
  const Bench nothing = born_on(2026, 6, "hip.leg_not_moved both no; history.child_not_moving_leg both no; general.temperature 368; history.fever no; history.unwell no");
  CHECK(asks(nothing, "ddh_late", "hip.abduction_passive_flexed"));
}

TEST_CASE("a hip that was not let be measured cannot answer: neither no nor not asked") {
  Bench infant = born_on(2026, 6, "hip.abduction_passive_flexed left declined; hip.abduction_passive_flexed right 75; hip.knee_height_lower left negative");
  CHECK(flag(infant, "ddh_late") == "cannot_answer");
  Bench slip = visit("chronic_knee", 2013, "hip.internal_rotation_passive_seated both declined");
  CHECK(flag(slip, "scfe") == "cannot_answer");
}

TEST_CASE("scfe example: thirteen, knee pain, and the hip rolls out as it bends: the same day; short and turned out, or seen on a film, as well") {
  for (const char* sign : {"hip.turns_out_in_flexion left positive", "hip.leg_attitude left attitude_short_turned_out"}) {
    CAPTURE(sign);
    Bench bench = visit("chronic_knee", 2013, sign);
    CHECK(line_of(bench, "scfe") == "turned_out");
    tell(bench, "gait.steps_now 0");
    CHECK(line_of(bench, "scfe") == "unstable_turned_out");
    CHECK(is_now(bench, "scfe"));
  }
  Bench film = visit("chronic_knee", 2013, "history.film_result left hip_slip_seen");
  CHECK(line_of(film, "scfe") == "seen");
  CHECK(flag(visit("chronic_knee", 2021, "hip.turns_out_in_flexion left positive"), "scfe") == "no flag");  // five: another route
}

TEST_CASE("perthes: less opening with the hip bent counts as less rotation does") {
  Bench bench = visit("limping_child", 2019, "history.weeks_since_onset 4; general.temperature 368; history.fever no; gait.steps_now 4;"
                                             "hip.abduction_passive_flexed left 30; hip.abduction_passive_flexed right 65");
  CHECK(referred(bench, "perthes"));
}

TEST_CASE("limp_child: the rest of the red list counts where it was answered: sudden severe pain, tiredness, sweats, pallor, a lump, unseen for over 7 days") {
  for (const char* sign : {"history.pain_severe_sudden yes", "history.fatigue yes", "history.night_sweats yes", "general.pallor yes", "skin.lump left yes",
                           "history.limp_days 8; history.limp_seen_before no"}) {
    CAPTURE(sign);
    Bench bench = visit("limping_child", 2018, "history.mechanism no_injury; gait.limp yes");
    CHECK_FALSE(raised(bench, "limp_child"));
    tell(bench, sign);
    CHECK(raised(bench, "limp_child"));
  }
  CHECK_FALSE(raised(visit("limping_child", 2018, "history.mechanism no_injury; gait.limp yes; history.limp_days 7; history.limp_seen_before no"), "limp_child"));
  // "> 14 days undiagnosed": who looked at it made no diagnosis that is recorded here.
  CHECK(raised(visit("limping_child", 2018, "history.mechanism no_injury; gait.limp yes; history.limp_days 15; history.limp_seen_before yes"), "limp_child"));
  CHECK_FALSE(raised(visit("limping_child", 2018, "history.mechanism no_injury; gait.limp yes; history.limp_days 14; history.limp_seen_before yes"), "limp_child"));
  CHECK_FALSE(raised(visit("limping_child", 2018, "history.mechanism fall; gait.limp yes; history.limp_days 15; history.limp_seen_before yes"), "limp_child"));
  for (const char* weeks : {"1", "2"}) {
    const Bench since = visit("limping_child", 2018, std::string("history.mechanism no_injury; gait.limp yes; history.fever no; history.unwell no; general.temperature 368; history.weeks_since_onset ") + weeks);
    CHECK(asks(since, "limp_child", "history.limp_days"));
    CHECK(asks(since, "limp_child", "history.limp_seen_before"));
  }
  CHECK_FALSE(asks(visit("limping_child", 2018, "history.mechanism no_injury; gait.limp yes; history.weeks_since_onset 0"), "limp_child", "history.limp_days"));
}

// Red flags page, section 15 ("limp > 7 days unassessed"): days of a limp above none are an answer to the limp.
TEST_CASE("limp_child: a limp told by its days alone is a limp; none is none") {
  CHECK(raised(visit("limping_child", 2021, "history.mechanism no_injury; history.limp_days 20; history.limp_seen_before no; gait.steps_now 4; history.fever no"), "limp_child"));
  CHECK(raised(visit("limping_child", 2021, "history.mechanism no_injury; history.limp_days 8; history.limp_seen_before no; gait.limp no"), "limp_child"));
  CHECK_FALSE(raised(visit("limping_child", 2021, "history.mechanism no_injury; history.limp_days 7; history.limp_seen_before no"), "limp_child"));
  const Bench none = visit("limping_child", 2021, "history.mechanism no_injury; history.limp_days 0; history.night_pain yes");
  CHECK_FALSE(raised(none, "limp_child"));
  CHECK(asks(none, "limp_child", "gait.limp"));
  CHECK_FALSE(asks(visit("limping_child", 2021, "history.mechanism no_injury; history.limp_days 3"), "limp_child", "gait.limp"));
}

TEST_CASE("septic_child: a hip whose smallest movement hurts badly counts as pain on passive movement") {
  CHECK(raised(visit("limping_child", 2019, "history.mechanism no_injury; gait.limp yes; hip.pain_passive_severe left yes"), "septic_child"));
}
