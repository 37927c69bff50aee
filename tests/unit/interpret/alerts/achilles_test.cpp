// The torn heel cord, by the red flags page, section 18, with its examples (MAFFULLI1998, BJGP_ACHILLES).
#include "core/interpret/held.hpp"
#include "tests/unit/interpret/alerts/bench.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

Bench kicked() {
  Bench bench(*reference::built_in_edition());
  bench.exam.complaint = {"ankle_injury"};
  bench.yes("history.kick_to_heel_cord", Side::left);
  return bench;
}

void squeeze(Bench& bench, const std::string& grade) { graded(bench, "ankle.calf_squeeze", Side::left, grade, "achilles/squeeze"); }

bool cord_held(const Bench& bench) {
  const interpret::View view(bench.exam, bench.person, *bench.edition, day(2026, 11, 24));
  const auto open = interpret::watch(view).concerns;
  return std::any_of(open.begin(), open.end(), [](const auto& one) { return one.concern->concern.text == "concern.achilles_rupture" && one.side == Side::left; });
}

}  // namespace

TEST_CASE("achilles: a calf squeeze that moves nothing is the same day and holds the torn cord open; walking and a heel rise do not lower it") {
  Bench bench = kicked();
  squeeze(bench, "absent");
  bench.count("gait.steps_now", 4);
  bench.yes("history.steps_at_once", Side::midline);
  bench.add("ankle.heel_rise_count", Side::left, model::CountValue{{3}});
  CHECK(raised(bench, "achilles"));
  CHECK_FALSE(is_now(bench, "achilles"));
  CHECK(alert(bench, "achilles")->urgency == interpret::Urgency::same_day);
  CHECK(cord_held(bench));
}

TEST_CASE("achilles: one sign is enough, the squeeze, the foot that falls with bent knees or the gap") {
  Bench falls = kicked();
  test(falls, "ankle.matles", Side::left, true);
  CHECK(raised(falls, "achilles"));
  Bench gap = kicked();
  squeeze(gap, "full");
  gap.yes("ankle.achilles_gap", Side::left);
  CHECK(raised(gap, "achilles"));
}

TEST_CASE("achilles: a squeeze that was not done, or moves the foot less, leaves it open and asks for it") {
  Bench bench = kicked();
  CHECK(flag(bench, "achilles") == "not_asked");
  CHECK(asks(bench, "achilles", "ankle.calf_squeeze"));
  CHECK_FALSE(cord_held(bench));
  squeeze(bench, "reduced");
  CHECK_FALSE(raised(bench, "achilles"));
  CHECK(flag(bench, "achilles") != "asked_no");
}

TEST_CASE("achilles: a squeeze that moves the foot, no fall and no gap is answered no; pain of long standing without a kick is not raised") {
  Bench bench = kicked();
  squeeze(bench, "full");
  test(bench, "ankle.matles", Side::left, false);
  bench.no("ankle.achilles_gap", Side::left);
  CHECK_FALSE(raised(bench, "achilles"));
  CHECK(flag(bench, "achilles") == "asked_no");
  Bench old = sore_knee();
  old.exam.complaint = {"heel_pain"};
  old.no("history.kick_to_heel_cord", Side::left);
  old.yes("ankle.achilles_gap", Side::left);
  CHECK_FALSE(raised(old, "achilles"));
}
