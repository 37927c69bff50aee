// Planted cases at the gates of time between two dangers of one limb: whatever the day, known or not, one of them has it. The pages (red
// flags, sections 5, 7 and 11; clinical safety, C13) gate at two weeks; which of the two has what nobody dated is our own rule. The pairs:
// ali and clti; septic_adult and joint_over_2_weeks; the nerves of the back with pain down both legs and none. All is invented.
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

const std::string both_pulses_lost = "vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 0";
const std::string black_toe = "history.diabetes no; skin.black_toe left yes";

// How long, told in each of the ways there are: the day of an injury, weeks, or a yes to "over two weeks".
struct ToldSince {
  std::string what;
  int injured_days = -1;
  std::string told;
  bool is_long = false;
};
const std::vector<ToldSince> told_since{{"nobody said", -1, "", false},
                               {"13 days", 13, "history.weeks_since_onset 1", false},
                               {"14 days", 14, "history.weeks_since_onset 2", false},
                               {"15 days", 15, "history.weeks_since_onset 2", false},
                               {"three weeks", -1, "history.weeks_since_onset 3", true},
                               {"over two weeks", -1, "history.pain_over_2_weeks yes", true},
                               {"not over two weeks", -1, "history.pain_over_2_weeks no", false}};

Bench visit_since(const ToldSince& one, const std::string& complaint, const std::string& story) {
  Bench bench = visit(complaint, 1950, story + (one.told.empty() ? "" : "; " + one.told));
  if (one.injured_days >= 0) {
    bench.exam.injured_on = day(2026, 11, 24 - one.injured_days);
  }
  return bench;
}

}  // namespace

// Section 22 names dead tissue and a limb without blood among what threatens it: immediate referral. C13: over two weeks, urgent vascular.
TEST_CASE("planted: dead tissue beside a lost pulse is urgent at any age of it, known or not, whatever the cause") {
  for (const char* dead : {"skin.black_toe left yes", "skin.gangrene left gangrene_dry"}) {
    CAPTURE(dead);
    for (const ToldSince& one : told_since) {
      CAPTURE(one.what);
      const Bench bench = visit_since(one, "wound_or_numb_foot", "history.diabetes no; " + both_pulses_lost + "; " + dead);
      CHECK(raised(bench, "clti") == one.is_long);  // under two weeks, or not dated, it stands inside the graver one
      CHECK(is_now(bench, "ali") == !one.is_long);
      if (one.is_long) {
        CHECK(line_of(bench, "clti") == "dead");
        CHECK(alert(bench, "clti")->urgency == interpret::Urgency::same_day);
      }
    }
  }
  // One pulse lost, the other weak or not felt for: lost. Beside a full one, or where both are weak: the same day.
  CHECK(is_now(visit("free", 1950, black_toe + "; vessel.pulse_dorsalis_pedis left 0"), "ali"));
  CHECK(is_now(visit("free", 1950, black_toe + "; vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 1"), "ali"));
  for (const char* pulses : {"vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 2", "vessel.pulse_dorsalis_pedis left 1; vessel.pulse_posterior_tibial left 1"}) {
    CAPTURE(pulses);
    const Bench bench = visit("free", 1950, black_toe + "; " + pulses);
    CHECK_FALSE(raised(bench, "ali"));
    CHECK(line_of(bench, "clti") == "dead_early");
  }
  // Pulses nobody felt for are asked after, whatever the complaint; full ones, and a foot without a dead spot, raise nothing.
  CHECK(asks(visit("free", 1950, black_toe), "clti", "vessel.pulse_dorsalis_pedis"));
  const Bench full = visit("free", 1950, black_toe + "; vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 2");
  CHECK_FALSE(raised(full, "clti"));
  CHECK_FALSE(raised(full, "ali"));
  const Bench ordinary = visit("wound_or_numb_foot", 1950, "history.diabetes no; skin.black_toe left no; skin.gangrene left gangrene_none; " + both_pulses_lost);
  CHECK_FALSE(raised(ordinary, "clti"));
  CHECK_FALSE(raised(ordinary, "ali"));
}

TEST_CASE("planted: pain at rest of a foot without pulses falls between no two gates") {
  for (const ToldSince& one : told_since) {
    CAPTURE(one.what);
    const Bench bench = visit_since(one, "calf_pain", both_pulses_lost + "; history.rest_pain_foot left yes");
    CHECK(raised(bench, "clti") == one.is_long);
    CHECK(is_now(bench, "ali") == !one.is_long);
  }
  const Bench none = visit("calf_pain", 1950, both_pulses_lost + "; history.rest_pain_foot left no");
  CHECK_FALSE(raised(none, "ali"));
  CHECK_FALSE(raised(none, "clti"));
}

// Section 7: onset up to 14 days; known gout of three weeks: two weeks "unless fever". C13: swollen for over two weeks is referred.
TEST_CASE("planted: a hot joint is infected until it is not, or referred, or its weeks are asked after; a fever waits for no weeks") {
  const std::string hot = "history.mechanism no_injury; knee.look_skin_hot_red left yes; knee.effusion_stroke left 2+; knee.joint_line_medial_tender left yes; knee.flexion_passive left pain";
  for (const ToldSince& one : told_since) {
    CAPTURE(one.what);
    Bench bench = visit_since(one, "chronic_knee", hot);
    bench.exam.injured_on.reset();
    const bool unknown = one.told.empty();
    CHECK(raised(bench, "septic_adult") == (!one.is_long && !unknown));
    CHECK(referred(bench, "joint_over_2_weeks") == one.is_long);
    CHECK(asks(bench, "septic_adult", "history.weeks_since_onset") == unknown);
    CHECK(flag(bench, "septic_adult") != "asked_no");
    for (const int days : {-1, 13, 14, 15, 30}) {
      CAPTURE(days);
      Bench fever = bench;
      tell(fever, "general.temperature 382");
      if (days >= 0) {
        tell(fever, "history.mechanism fall");
        fever.exam.injured_on = day(2026, 11, 24);
        fever.exam.injured_on = days < 24 ? day(2026, 11, 24 - days) : day(2026, 10, 25);
      }
      CHECK(raised(fever, "septic_adult"));
    }
  }
}

// Section 11: new, under 14 days. What nobody dated is asked after and is no no.
TEST_CASE("planted: pain down both legs from the back is new, old, or its weeks are asked after") {
  const std::string both = "history.back_pain yes; history.leg_pain_both yes; history.saddle_numbness no; history.bladder_bowel_change no";
  for (const ToldSince& one : told_since) {
    CAPTURE(one.what);
    Bench bench = visit_since(one, "back_leg", both);
    bench.exam.injured_on.reset();
    const bool unknown = one.told.empty();
    CHECK(raised(bench, "ces") == (!one.is_long && !unknown));
    CHECK(asks(bench, "ces", "history.weeks_since_onset") == unknown);
  }
  // C3: both calves sore after a run, without a back that hurts, is nothing.
  CHECK_FALSE(raised(visit("calf_pain", 1990, "history.leg_pain_both yes; history.back_pain no; history.weeks_since_onset 0"), "ces"));
  CHECK_FALSE(question(visit("calf_pain", 1990, "history.leg_pain_both yes; history.back_pain no; history.saddle_numbness no; history.bladder_bowel_change no"), "ces"));
}
