// Whole consultations: clinical safety, part F (S01 the boy of 13 and the calf strain, S07, S08, but for letter and transfer), and what may not
// appear.
#include "tests/unit/interpret/alerts/bench.hpp"

#include "core/interpret/held.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

interpret::Watched watched(const Bench& bench) {
  const interpret::View view(bench.exam, bench.person, *bench.edition, day(2026, 11, 24));
  return interpret::watch(view);
}
bool is_withheld(const Bench& bench, const std::string& item, Side side = Side::left) {
  const auto seen = watched(bench);
  return interpret::withheld(*bench.edition->item(std::string_view(item)), side, seen.concerns, seen.flags).has_value();
}
std::size_t interrupting(const Bench& bench) {
  const auto alerts = bench.assess().alerts;
  return static_cast<std::size_t>(std::count_if(alerts.begin(), alerts.end(), [](const auto& one) { return one.interrupts; }));
}
const interpret::RuleResult* rule_of(const interpret::Assessment& assessment, const std::string& name) {
  for (const auto& rule : assessment.rules) {
    if (rule.rule.text == name) {
      return &rule;
    }
  }
  return nullptr;
}

}  // namespace

TEST_CASE("S01: a boy of 13 with a tender tubercle and free hips interrupts nobody, pins two lines at most and is asked after his hip only once") {
  Bench bench = sore_knee(2013);
  bench.yes("knee.tibial_tubercle_tender", Side::left);
  for (const char* bone : {"knee.bone_tender_elsewhere", "knee.fibular_head_tender", "knee.patella_tender", "knee.look_skin_hot_red"}) {
    bench.no(bone, Side::left);
  }
  graded(bench, "knee.effusion_stroke", Side::left, "0", "effusion/stroke");
  CHECK(question(bench, "scfe"));
  for (const Side side : {Side::left, Side::right}) {
    inward(bench, side, 42);
    test(bench, "hip.log_roll", side, false);
  }
  bench.no("gait.limp", Side::midline);
  bench.no("history.night_pain", Side::midline);
  bench.no("history.weight_loss", Side::midline);
  const auto assessment = bench.assess();
  CHECK(assessment.alerts.empty());
  CHECK(interrupting(bench) == 0);
  CHECK(assessment.alerts.size() + assessment.questions.size() <= 2);
  CHECK(!question(bench, "scfe"));
  CHECK(flag(bench, "scfe") == "asked_no");
  CHECK(!referred(bench, "tumour"));
}

TEST_CASE("S01: a calf strain is asked once whether it is at risk, answered no, and then it is quiet") {
  Bench bench = injured_knee();
  bench.nothing_found();
  bench.yes("knee.stretch_pain_calf", Side::left);
  bench.no("history.pain_out_of_proportion", Side::left);
  bench.no("leg.calf_swelling", Side::left);
  REQUIRE(question(bench, "acs"));
  CHECK(question(bench, "acs")->rank.steps == 1);
  bench.no("history.injury_severe_or_crush", Side::midline);
  CHECK(!question(bench, "acs"));
  CHECK(bench.assess().alerts.empty());
}

TEST_CASE("S07: at fifteen a kneecap that went out and back is the same day, no rotation test is offered, and the film is waited for") {
  Bench bench = injured_knee();
  bench.born(2011, 3, 1);
  bench.yes("history.patella_dislocated", Side::left);
  choice(bench, "history.swelling_onset", Side::left, "within_2h");
  choice(bench, "knee.look_patella_height", Side::left, "level");
  test(bench, "knee.straight_leg_raise_active", Side::left, false);
  bench.not_done("knee.lachman", Side::left, model::WhyNot::pain);
  CHECK(raised(bench, "dislocation"));
  CHECK(!is_now(bench, "dislocation"));
  CHECK(alert(bench, "dislocation")->urgency == interpret::Urgency::same_day);
  CHECK(alert(bench, "dislocation")->meanwhile.front().text == "msg.meanwhile.film_first");
  CHECK(!raised(bench, "ext_mech"));
  CHECK(!raised(bench, "knee_disloc_vasc"));
  for (const char* step : {"knee.mcmurray", "knee.thessaly_20", "knee.pivot_shift", "knee.apley_compression", "knee.squat"}) {
    CHECK_MESSAGE(is_withheld(bench, step), step);
  }
  interpret::AssessAsk ask = bench.ask();
  ask.only = {"hypotheses"};
  for (const auto& hypothesis : interpret::assess(bench.exam, bench.person, {}, *bench.edition, ask).hypotheses) {
    CHECK(!hypothesis.range);  // adult rows are not for a boy of fifteen
    CHECK(hypothesis.support != interpret::Support::against);
  }
  // What is asked in private is not a no because a coach stands by.
  bench.add("history.saddle_numbness", Side::midline, model::NotDone{model::WhyNot::other, wire::Remark{"not alone"}});
  CHECK(flag(bench, "ces") != "asked_no");
}

TEST_CASE("S08: a farmer on a blood thinner with a full knee: blood in the joint the same day, both rules shown, infection still asked") {
  Bench bench = injured_knee();
  bench.born(1964, 5, 1);
  choice(bench, "history.mechanism", Side::midline, "twist");
  bench.no("history.fall_or_blow", Side::midline);
  bench.yes("history.blood_thinners", Side::midline);
  choice(bench, "history.swelling_onset", Side::left, "within_24h");
  bench.angle("knee.flexion_active", Side::left, 700);
  temperature(bench, 368);
  bench.count("gait.steps_now", 4);
  bench.add("history.knee_rule_exclusions", Side::midline, model::Choices{{{"none_of_these"}}});
  REQUIRE(raised(bench, "bleed_joint"));
  const auto bleed = *alert(bench, "bleed_joint");
  CHECK(bleed.urgency == interpret::Urgency::same_day);
  CHECK(!bleed.interrupts);
  const auto says = [&](const char* message) {
    return std::any_of(bleed.meanwhile.begin(), bleed.meanwhile.end(), [&](const auto& one) { return one.text == message; });
  };
  CHECK(says("msg.meanwhile.clotting_test"));
  CHECK(says("msg.meanwhile.no_needle_by_program"));
  const auto assessment = bench.assess();
  const auto* ottawa = rule_of(assessment, "rule.ottawa_knee");
  const auto* pittsburgh = rule_of(assessment, "rule.pittsburgh_knee");
  REQUIRE(ottawa);
  REQUIRE(pittsburgh);
  CHECK(ottawa->outcome == interpret::Outcome::positive);
  CHECK(pittsburgh->outcome == interpret::Outcome::negative);
  CHECK(flagged(*ottawa, "rules_disagree"));
  CHECK(flagged(*pittsburgh, "rules_disagree"));
  const auto working = bench.explain("rule.ottawa_knee:left");
  const auto met = [&](const std::string& line) {
    return std::any_of(working.lines.begin(), working.lines.end(), [&](const auto& one) { return one.text == line; });
  };
  CHECK(met("age 62, 55 or older: met"));
  CHECK(met("flexion 70, below 90: met"));
  CHECK(flag(bench, "septic_adult") == "not_asked");
  CHECK(question(bench, "septic_adult"));
  CHECK(!raised(bench, "septic_adult"));
  bench.yes("history.fever", Side::midline);
  bench.yes("knee.joint_line_medial_tender", Side::left);
  CHECK(raised(bench, "septic_adult"));  // a cause that was found does not drop infection
}

TEST_CASE("S08: where blood in the joint chose the prior, the swelling gives no evidence of a torn ligament as well") {
  for (const char* onset : {"within_2h", "within_24h"}) {
    Bench bench = injured_knee();
    bench.born(1964, 5, 1);
    bench.exam.setting = model::Setting::primary_care;
    bench.yes("history.blood_thinners", Side::midline);
    choice(bench, "history.swelling_onset", Side::left, onset);
    graded(bench, "knee.effusion_stroke", Side::left, "2+", "effusion/stroke");
    bench.yes("history.pop", Side::left);
    CAPTURE(onset);
    const auto working = bench.explain("condition.acl_tear:left");
    const auto line = [&](const char* piece) {
      return std::any_of(working.lines.begin(), working.lines.end(), [&](const auto& one) { return one.text.find(piece) != std::string::npos; });
    };
    CHECK(line("history: pop positive"));
    const bool blood_prior = line("OLSSON2016");
    CHECK(blood_prior == (std::string(onset) == "within_2h"));
    CHECK(blood_prior == line("two_of_three: left out: in_prior"));  // pop, giving way and swelling together
  }
}

TEST_CASE("concerns: an unsettled knee rule withholds stress tests until it is negative, a film shows nothing, or the examiner lifts it") {
  Bench bench = injured_knee();
  CHECK(is_withheld(bench, "knee.mcmurray"));
  CHECK(!is_withheld(bench, "knee.mcmurray", Side::right));
  CHECK(is_withheld(bench, "knee.squat", Side::right));  // nobody squats on one leg alone
  CHECK(!is_withheld(bench, "knee.patella_tender"));
  bench.nothing_found();
  CHECK(!is_withheld(bench, "knee.mcmurray"));
  bench.find("knee.fibular_head_tender").value = model::Answer{model::AnswerWord::yes};
  CHECK(is_withheld(bench, "knee.mcmurray"));
  bench.add("history.film_result", Side::left, model::Choices{{{"knee_fracture_not_seen"}}});
  CHECK(!is_withheld(bench, "knee.mcmurray"));
  bench.drop("history.film_result");
  CHECK(is_withheld(bench, "knee.mcmurray"));
  bench.no("general.concern_knee_fracture", Side::left);
  CHECK(!is_withheld(bench, "knee.mcmurray"));
}

TEST_CASE("concerns: age alone opens none in a knee that nobody hurt; a raised alert opens its own and stops what it names") {
  Bench bench = sore_knee(1950);
  bench.no("knee.patella_tender", Side::left);
  CHECK(!is_withheld(bench, "knee.mcmurray"));
  bench.yes("knee.look_skin_hot_red", Side::left);
  bench.yes("knee.joint_line_medial_tender", Side::left);
  bench.angle("knee.flexion_active", Side::left, 600);
  bench.count("history.weeks_since_onset", 0);
  REQUIRE(raised(bench, "septic_adult"));
  CHECK(is_withheld(bench, "knee.mcmurray"));
  const auto seen = watched(bench);
  CHECK(std::any_of(seen.concerns.begin(), seen.concerns.end(), [](const auto& open) {
    return open.concern->concern.text == "concern.joint_infection" && open.held_by == std::vector{model::Word{"alert.septic_adult"}};
  }));
}

TEST_CASE("C21: a step is offered only where an answer changes an alert or a rule, is never withheld, and none once the plan is set") {
  Bench bench = injured_knee();
  const auto steps = bench.assess().steps;
  REQUIRE(steps.size() == 1);
  CHECK(!steps[0].changes.empty());
  CHECK(!is_withheld(bench, steps[0].step.text, steps[0].side));
  CHECK(steps[0].discomfort <= model::Discomfort::low);
  bench.exam.plan.emplace();
  bench.exam.plan->push_back({std::nullopt, model::PlanKind::film, {"film of the knee"}, std::nullopt, std::nullopt, std::nullopt, std::nullopt});
  CHECK(bench.assess().steps.empty());
}

TEST_CASE("C21: where every answer would leave things as they are, nothing is offered") {
  Bench bench = sore_knee();
  bench.exam.complaint = {"free"};
  bench.no("knee.patella_tender", Side::left);
  bench.add("history.knee_rule_exclusions", Side::midline, model::Choices{{{"repeat_visit"}}});
  CHECK(bench.assess().steps.empty());
}

TEST_CASE("C21: while an alert on a limb is open, no painful test and no walking is offered for it") {
  Bench bench = injured_knee();
  bench.yes("history.knee_dislocated", Side::left);
  for (int round = 0; round < 30; ++round) {
    const auto steps = bench.assess().steps;
    if (steps.empty()) {
      break;
    }
    const model::Item* item = bench.edition->item(steps[0].step);
    REQUIRE(item != nullptr);
    CHECK(item->discomfort <= model::Discomfort::low);
    CHECK(item->region.text != "gait");
    bench.not_done(item->item.text, steps[0].side, model::WhyNot::declined);
  }
}

TEST_CASE("missing: the minimum set on both sides, with the hip of a child; a reason why not is a record, and so is what stands instead") {
  Bench bench = sore_knee(2013);
  const auto lacks = [&](const std::string& item, Side side) {
    const auto missing = bench.assess().missing;
    return std::any_of(missing.begin(), missing.end(), [&](const auto& one) { return one.item.text == item && one.side == side; });
  };
  CHECK(lacks("hip.log_roll", Side::left));
  CHECK(lacks("hip.log_roll", Side::right));
  CHECK(lacks("knee.effusion_stroke", Side::left));
  bench.not_done("hip.log_roll", Side::left, model::WhyNot::declined);
  CHECK(!lacks("hip.log_roll", Side::left));
  CHECK(lacks("hip.log_roll", Side::right));
  bench.born(1980, 1, 1);
  CHECK(!lacks("hip.log_roll", Side::right));
}

TEST_CASE("contradictions are asked about and settle nothing: much fluid but no tap, a gap but a lifted leg, no fall but a fall") {
  Bench bench = injured_knee();
  const auto asked = [&](const std::string& name) {
    const auto all = bench.assess().contradictions;
    return std::any_of(all.begin(), all.end(), [&](const auto& one) { return one.contradiction.text.starts_with("contradiction." + name + ":"); });
  };
  const auto tapped = [&] {
    const auto all = bench.assess().contradictions;
    return std::any_of(all.begin(), all.end(), [&](const auto& one) { return one.contradiction.text.starts_with("effusion.sign_without_wave:"); });
  };
  graded(bench, "knee.effusion_stroke", Side::left, "0", "effusion/stroke");
  CHECK(!tapped());
  test(bench, "knee.effusion_ballottement", Side::left, true);
  CHECK(tapped());
  bench.yes("knee.quadriceps_gap", Side::left);
  test(bench, "knee.straight_leg_raise_active", Side::left, false);
  CHECK(asked("gap_and_lift"));
  bench.no("history.fall_or_blow", Side::midline);
  choice(bench, "history.mechanism", Side::midline, "fall");
  CHECK(asked("fall_and_mechanism"));
  pulses(bench, Side::left, "0");
  pressure(bench, "vessel.pressure_posterior_tibial", Side::left, 110);
  CHECK(asked("pulse_and_pressure"));
  CHECK(!asked("limb_and_findings"));
  bench.add("knee.patella_tender", Side::left, model::NotDone{model::WhyNot::no_limb, {}});
  CHECK(asked("limb_and_findings"));
  CHECK(!asked("pregnancy_and_sex"));
  bench.yes("body.pregnancy", Side::midline);
  bench.person->sex = model::Sex::male;
  CHECK(asked("pregnancy_and_sex"));
}

TEST_CASE("alerts follow the leg: exchanging left and right exchanges them and changes nothing else") {
  Bench left = injured_knee();
  left.yes("history.knee_dislocated", Side::left);
  left.yes("knee.look_open_wound", Side::left);
  left.yes("knee.bone_tender_elsewhere", Side::left);
  Bench right = left;
  right.exam.side = Side::right;
  for (auto& finding : *right.exam.findings) {
    finding.side = finding.side == Side::left ? Side::right : finding.side;
  }
  const auto a = left.assess().alerts;
  const auto b = right.assess().alerts;
  REQUIRE(a.size() == b.size());
  for (std::size_t i = 0; i < a.size(); ++i) {
    CHECK(a[i].alert == b[i].alert);
    CHECK(a[i].urgency == b[i].urgency);
    CHECK(*a[i].side == Side::left);
    CHECK(*b[i].side == Side::right);
  }
}
