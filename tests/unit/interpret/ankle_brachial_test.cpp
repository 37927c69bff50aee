// From pressures to the ankle-arm index. The index itself is checked elsewhere at every edge. Sources: decision rules page, section 7
// (AHA_ACC2016, BERNETTI2014, SUOMINEN2008); clinical safety, C7.
#include "core/interpret/rules/vessel/ankle_brachial.hpp"

#include "tests/unit/interpret/support.hpp"
#include "tests/unit/invented/edition.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using namespace limbledger::interpret_test;
using interpret::Outcome;

namespace {

interpret::RuleResult arm_index_of(const Bench& bench, Side side = Side::left) {
  for (const auto& rule : bench.assess().rules) {
    if (rule.rule.text == interpret::ankle_brachial_rule && rule.side == side) {
      return rule;
    }
  }
  return {};
}

std::string index_band_of(const interpret::RuleResult& rule) { return rule.band ? rule.band->text : ""; }

model::Pressure mm_hg(std::int64_t steps) {
  model::Pressure pressure;
  pressure.mm_hg = model::MillimetresOfMercury{steps};
  return pressure;
}

model::Pressure no_signal() {
  model::Pressure pressure = mm_hg(0);
  pressure.signal = model::Signal::absent;
  return pressure;
}

Bench pressures(std::int64_t dp, std::int64_t pt, std::int64_t ra, std::int64_t la) {
  Bench made(invented_edition());
  made.add("vessel.pressure_dorsalis_pedis", Side::left, mm_hg(dp));
  made.add("vessel.pressure_posterior_tibial", Side::left, mm_hg(pt));
  made.add("vessel.pressure_arm", Side::right, mm_hg(ra));
  made.add("vessel.pressure_arm", Side::left, mm_hg(la));
  return made;
}

}  // namespace

TEST_CASE("abi: the higher ankle artery over the higher arm, whichever arm that is, once for each leg that was measured") {
  const Bench made = pressures(110, 126, 132, 140);
  CHECK(index_band_of(arm_index_of(made)) == "low");
  CHECK(arm_index_of(made).outcome == Outcome::positive);
  CHECK(arm_index_of(made).value->low->steps == 90);
  CHECK(arm_index_of(made).value->high->steps == 90);
  CHECK(arm_index_of(made, Side::right).rule.text.empty());
  CHECK(arm_index_of(made).edition.text == "abi/aha2016");
}

TEST_CASE("abi: an artery without a signal counts as 0 and is a finding; a 0 without that word was not measured") {
  Bench made = pressures(0, 0, 140, 138);
  made.find("vessel.pressure_dorsalis_pedis").value = no_signal();
  CHECK(arm_index_of(made).outcome == Outcome::undetermined);
  CHECK(state_of(arm_index_of(made), "ankle_inner_side") == "signal_not_said");
  made.find("vessel.pressure_posterior_tibial").value = no_signal();
  CHECK(arm_index_of(made).outcome == Outcome::positive);
  CHECK(arm_index_of(made).value->low->steps == 0);
  CHECK(flagged(arm_index_of(made), "no_signal"));
}

TEST_CASE("abi: one arm alone can only be too high: a low index stands, any other is open and says which arm settles it") {
  Bench low = pressures(110, 100, 140, 0);
  low.exam.findings->pop_back();
  CHECK(index_band_of(arm_index_of(low)) == "low");
  CHECK(flagged(arm_index_of(low), "one_arm_only"));
  CHECK_FALSE(arm_index_of(low).value->low.has_value());
  Bench open = pressures(150, 130, 140, 0);
  open.exam.findings->pop_back();
  CHECK(arm_index_of(open).outcome == Outcome::undetermined);
  REQUIRE(arm_index_of(open).settle.size() == 1);
  CHECK(arm_index_of(open).settle[0].item->text == "vessel.pressure_arm");
  CHECK(arm_index_of(open).settle[0].side == Side::left);
}

TEST_CASE("abi: vessels that do not yield to the cuff give no index that speaks for anything") {
  const auto rule = arm_index_of(pressures(197, 150, 140, 140));
  CHECK(rule.outcome == Outcome::not_applicable);
  CHECK(index_band_of(rule) == "noncompressible");
  CHECK(rule.gate->text == "noncompressible");
}

TEST_CASE("abi: an ordinary index beside a pulse that was not felt is contradicted, never a bare negative") {
  Bench made = pressures(150, 130, 140, 138);
  CHECK(index_band_of(arm_index_of(made)) == "expected");
  CHECK_FALSE(flagged(arm_index_of(made), "contradicted"));
  made.add("vessel.pulse_dorsalis_pedis", Side::left, model::Grade{{"pulse/0-3"}, {"0"}, {}, {}, {}});
  CHECK(flagged(arm_index_of(made), "contradicted"));
  CHECK(flagged(arm_index_of(made), "pulse_absent"));
}

TEST_CASE("abi: with diabetes or failing kidneys an ordinary index says that stiff vessels give too high a number") {
  Bench made = pressures(150, 130, 140, 138);
  CHECK_FALSE(flagged(arm_index_of(made), "vessels_may_be_stiff"));
  made.yes("history.diabetes", Side::midline);
  CHECK(flagged(arm_index_of(made), "vessels_may_be_stiff"));
  Bench low = pressures(110, 100, 140, 138);
  low.yes("history.diabetes", Side::midline);
  CHECK_FALSE(flagged(arm_index_of(low), "vessels_may_be_stiff"));
}

TEST_CASE("abi: 1.00 says that European texts call it borderline; below 0.40 says what one source calls it") {
  CHECK(flagged(arm_index_of(pressures(140, 120, 140, 138)), "borderline_in_europe"));
  CHECK_FALSE(flagged(arm_index_of(pressures(142, 120, 140, 138)), "borderline_in_europe"));
  CHECK(flagged(arm_index_of(pressures(55, 40, 140, 138)), "below_040"));
  CHECK_FALSE(flagged(arm_index_of(pressures(56, 40, 140, 138)), "below_040"));
}

TEST_CASE("abi: two readings hold the pressure between them, and only what both give stands") {
  Bench made = pressures(126, 110, 140, 132);
  made.add("vessel.pressure_dorsalis_pedis", Side::left, mm_hg(124));
  CHECK(index_band_of(arm_index_of(made)) == "low");
  made.add("vessel.pressure_dorsalis_pedis", Side::left, mm_hg(127));
  CHECK(arm_index_of(made).outcome == Outcome::undetermined);
  CHECK(state_of(arm_index_of(made), "ankle_back_of_foot") == "known_in_part");
}

TEST_CASE("abi: the working gives each pressure, the ratio, and beside it the ratio by the lower artery") {
  const Bench made = pressures(126, 110, 140, 132);
  const auto working = interpret::explain(made.exam, made.person, made.earlier, *made.edition, made.ask(), {"rule.ankle_brachial:left"});
  REQUIRE(working.has_value());
  REQUIRE(working->lines.size() == 6);
  CHECK(working->lines[4].text == "higher ankle artery over higher arm: 0.90");
  CHECK(working->lines[5].text == "lower ankle artery over higher arm (beside it, finds more): 0.79");
  CHECK(working->message.text == "msg.rule.ankle_brachial.band_low");
}
