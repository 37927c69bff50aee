// An ordinary hour (clinical safety, part F, S01) beside the boy and the calf strain of consultations_test.cpp, as far as what is built
// for a knee meets it: nobody is interrupted, two lines at most are pinned, and nobody is sent down a road for the ill.
#include "tests/unit/interpret/alerts/bench.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

void check_quiet(const Bench& bench) {
  const auto assessment = bench.assess();
  for (const auto& alert : assessment.alerts) {
    CHECK_MESSAGE(false, alert.alert.text);
  }
  CHECK(assessment.questions.size() <= 2);
  CHECK(assessment.questions_more.steps == 0);
  for (const auto& statement : assessment.statements) {
    CHECK_MESSAGE(!statement.statement.text.starts_with("referral."), statement.statement.text);
  }
}

}  // namespace

TEST_CASE("S01: a twisted ankle that walks, its proximal fibula asked after, interrupts nobody and asks for no film of the knee") {
  Bench bench = injured_knee();
  bench.exam.complaint = {"free"};
  choice(bench, "history.mechanism", Side::midline, "twist");
  bench.yes("history.steps_at_once", Side::midline);
  bench.count("gait.steps_now", 4);
  bench.no("knee.fibular_head_tender", Side::left);
  check_quiet(bench);
  for (const auto& rule : bench.assess().rules) {
    CHECK(rule.outcome != interpret::Outcome::positive);
  }
}

TEST_CASE("S01: a man of 61 whose hip hurts at night when he lies on it is sent down no road for cancer") {
  Bench bench = sore_knee(1965);
  bench.exam.complaint = {"free"};
  bench.yes("history.night_pain", Side::midline);
  bench.yes("history.night_pain_relieved_by_turning", Side::midline);
  bench.no("history.night_pain_getting_worse", Side::midline);
  bench.no("history.weight_loss", Side::midline);
  bench.count("history.morning_stiffness_minutes", 15);
  inward(bench, Side::left, 15);
  inward(bench, Side::right, 32);
  check_quiet(bench);
  CHECK(!referred(bench, "tumour"));
  CHECK(flag(bench, "tumour") != "raised");
  CHECK(!question(bench, "tumour"));
  for (const auto& hypothesis : bench.assess().hypotheses) {
    CHECK(!hypothesis.range);  // a worn joint has no number
  }
  for (const auto& rule : bench.assess().rules) {
    CHECK(rule.outcome != interpret::Outcome::positive);
  }
}

TEST_CASE("S01: both calves sore after running up a hill, the back free: no clot, no compartment, no cauda equina") {
  Bench bench = sore_knee(1991);
  bench.exam.complaint = {"free"};
  bench.no("history.back_pain", Side::midline);
  for (const Side side : {Side::left, Side::right}) {
    bench.yes("leg.calf_tender_vein", side);
    bench.no("leg.calf_swelling", side);
    bench.no("knee.stretch_pain_calf", side);
  }
  CHECK(!alert(bench, "ces"));
  CHECK(!question(bench, "ces"));
  CHECK(!question(bench, "acs"));
  CHECK(asks(bench, "dvt", "history.examiner_suspects_clot"));  // a tender calf that nobody explained yet
  CHECK(!asks(bench, "dvt", "body.pregnancy"));                 // of a man
  CHECK(bench.assess().questions.size() == 2);  // one a leg
  bench.no("history.examiner_suspects_clot", Side::midline);
  CHECK(!question(bench, "dvt"));
  check_quiet(bench);
}

TEST_CASE("a calf that swells is asked after although no clot is suspected, and a woman of 30 after pregnancy") {
  Bench bench = sore_knee(1996);
  bench.person->sex = model::Sex::female;
  bench.yes("leg.calf_tender_vein", Side::left);
  bench.yes("leg.calf_swelling", Side::left);
  bench.no("history.examiner_suspects_clot", Side::midline);
  CHECK(asks(bench, "dvt", "body.pregnancy"));
  bench.born(1936, 1, 1);
  CHECK(question(bench, "dvt"));
  CHECK(!asks(bench, "dvt", "body.pregnancy"));
}
