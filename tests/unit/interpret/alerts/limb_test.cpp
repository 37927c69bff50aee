// Red flags of the limb, by the examples of the red flags page (sections 1 to 5) and the hard cases named.
#include "core/interpret/rules/rule.hpp"
#include "tests/unit/interpret/alerts/bench.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

TEST_CASE("open_fx: a wound with a knee that cannot bear weight is raised now; a wound that walks with no tender bone is not") {
  Bench bench = injured_knee();
  bench.yes("knee.look_open_wound", Side::left);
  CHECK(!raised(bench, "open_fx"));
  CHECK(asks(bench, "open_fx", "knee.bone_tender_elsewhere"));
  bench.count("gait.steps_now", 1);
  CHECK(is_now(bench, "open_fx"));
  bench.find("gait.steps_now").value = model::CountValue{{4}};
  bench.no("knee.look_deformity", Side::left);
  for (const char* bone : {"knee.bone_tender_elsewhere", "knee.fibular_head_tender", "knee.patella_tender"}) {
    bench.no(bone, Side::left);
  }
  CHECK(!raised(bench, "open_fx"));
  CHECK(flag(bench, "open_fx") == "asked_no");
}

TEST_CASE("open_fx: bone seen in a wound, or a wound near a possible break, is raised now by itself, whatever the complaint; an old ulcer's bone is not") {
  for (const char* sign : {"skin.bone_visible", "skin.wound_over_bone"}) {
    CAPTURE(sign);
    Bench bench = injured_knee();
    bench.exam.complaint = {"ankle_injury"};
    bench.yes(sign, Side::left);
    CHECK(is_now(bench, "open_fx"));
    CHECK(alert(bench, "open_fx")->message.text == (std::string(sign) == "skin.bone_visible" ? "msg.alert.open_fx.bone_seen" : "msg.alert.open_fx.near_break"));
    bench.find(sign).value = model::Answer{model::AnswerWord::no};
    CHECK(!raised(bench, "open_fx"));
  }
  Bench ulcer = sore_knee();
  ulcer.yes("skin.bone_visible", Side::left);
  CHECK(!raised(ulcer, "open_fx"));
}

TEST_CASE("knee_disloc_vasc: equal pulses and 107 of 119 is below 0.90 exactly, and raised now; 0.90 with equal pulses is the same day") {
  Bench bench = injured_knee();
  bench.yes("history.knee_dislocated", Side::left);
  CHECK(is_now(bench, "knee_disloc_vasc"));  // nobody felt a pulse yet
  pulses(bench, Side::left, "2");
  pulses(bench, Side::right, "2");
  CHECK(is_now(bench, "knee_disloc_vasc"));  // the pressure is unknown
  pressure(bench, "vessel.pressure_arm", Side::left, 119);
  pressure(bench, "vessel.pressure_posterior_tibial", Side::left, 107);
  CHECK(is_now(bench, "knee_disloc_vasc"));
  bench.find("vessel.pressure_posterior_tibial").value = [] {
    model::Pressure value;
    value.mm_hg = model::MillimetresOfMercury{108};
    return value;
  }();
  CHECK(raised(bench, "knee_disloc_vasc"));
  CHECK(!is_now(bench, "knee_disloc_vasc"));
}

TEST_CASE("HC-054: a knee that opens both ways at 0 with front and back loose was dislocated until shown otherwise, pulses or not") {
  Bench bench = injured_knee();
  graded(bench, "knee.valgus_0", Side::left, "2", "laxity/difference");
  CHECK(!raised(bench, "knee_disloc_vasc"));
  graded(bench, "knee.varus_0", Side::left, "2", "laxity/difference");
  graded(bench, "knee.lachman", Side::left, "2", "laxity/difference");
  graded(bench, "knee.posterior_drawer", Side::left, "2", "laxity/difference");
  pulses(bench, Side::left, "2");
  CHECK(is_now(bench, "knee_disloc_vasc"));
  CHECK(alert(bench, "knee_disloc_vasc")->message.text == "msg.alert.knee_disloc_vasc.loose");
  CHECK(!raised(bench, "ali"));
}

TEST_CASE("a recent complaint is enough where no day was recorded: a knee out of joint and a foot without blood do not wait for a date") {
  Bench bench = injured_knee();
  bench.exam.injured_on.reset();
  CHECK(bench.exam.complaint.text == "acute_knee");
  bench.yes("history.knee_dislocated", Side::left);
  CHECK(is_now(bench, "knee_disloc_vasc"));
  Bench cold = injured_knee();
  cold.exam.injured_on.reset();
  cold.yes("vessel.foot_cold", Side::left);
  pulses(cold, Side::right, "2");
  pulse(cold, "vessel.pulse_dorsalis_pedis", Side::left, "0");
  CHECK(!raised(cold, "ali"));
  Bench felt = cold;
  felt.yes("nerve.sensation_foot_reduced", Side::left);
  CHECK(is_now(felt, "ali"));
  pulse(cold, "vessel.pulse_posterior_tibial", Side::left, "0");
  CHECK(is_now(cold, "ali"));  // C2: a pulseless, cold limb
  // That the complaint is old does not make the sign of today old; pain of the foot at rest for weeks does, and says nothing about the sign.
  cold.count("history.weeks_since_onset", 104);
  CHECK(is_now(cold, "ali"));
  cold.yes("history.rest_pain_over_2_weeks", Side::left);
  CHECK(!raised(cold, "ali"));
  CHECK(flag(cold, "ali") == "not_asked");
}

TEST_CASE("an absent pulse after a knee injury names itself in the line") {
  Bench bench = injured_knee();
  bench.yes("knee.look_deformity", Side::left);
  pulses(bench, Side::left, "0");
  CHECK(alert(bench, "knee_disloc_vasc")->message.text == "msg.alert.knee_disloc_vasc.no_pulse");
  CHECK(is_now(bench, "knee_disloc_vasc"));
  // C2, "a flag inside another shows inside it": the foot's own alert says the same, and is raised without a line of its own.
  CHECK(!alert(bench, "ali"));
  CHECK(flag(bench, "ali") == "raised");
}

TEST_CASE("C3: stretch pain alone pins the question of risk in first place; answered no it is quiet, with pain beyond the hurt it interrupts") {
  Bench bench = injured_knee();
  bench.yes("knee.stretch_pain_calf", Side::left);
  REQUIRE(question(bench, "acs"));
  CHECK(question(bench, "acs")->rank.steps == 1);
  CHECK(!raised(bench, "acs"));
  bench.no("history.injury_severe_or_crush", Side::midline);
  bench.no("history.pain_out_of_proportion", Side::left);
  CHECK(!raised(bench, "acs"));
  CHECK(!question(bench, "acs"));
  bench.find("history.pain_out_of_proportion").value = model::Answer{model::AnswerWord::yes};
  CHECK(is_now(bench, "acs"));
}

TEST_CASE("HC-053: pain beyond the injury and on stretch is raised now, and pulses that are felt do not lower it") {
  Bench bench = injured_knee();
  bench.yes("history.pain_out_of_proportion", Side::left);
  bench.yes("knee.stretch_pain_calf", Side::left);
  pulses(bench, Side::left, "3");
  bench.no("vessel.foot_cold", Side::left);
  CHECK(is_now(bench, "acs"));
}

TEST_CASE("acs: a limb at risk whose owner cannot tell is never a no (worked example 4)") {
  Bench bench = injured_knee();
  bench.yes("history.injury_severe_or_crush", Side::midline);
  bench.no("history.pain_out_of_proportion", Side::left);
  bench.no("knee.stretch_pain_calf", Side::left);
  CHECK(flag(bench, "acs") == "not_asked");  // three groups of muscles were not stretched
  for (const char* group : {"leg.stretch_pain_front", "leg.stretch_pain_outer", "leg.stretch_pain_deep"}) {
    bench.no(group, Side::left);
  }
  CHECK(flag(bench, "acs") == "asked_no");
  bench.no("general.answers_reliable", Side::midline);
  CHECK(flag(bench, "acs") != "asked_no");
}

TEST_CASE("C13: one perfusion sign is enough where feeling is reduced; a cold foot of long standing is not acute") {
  Bench bench = sore_knee();
  bench.yes("vessel.foot_cold", Side::left);
  bench.yes("nerve.sensation_foot_reduced", Side::left);
  CHECK(!raised(bench, "ali"));
  CHECK(asks(bench, "ali", "history.weeks_since_onset"));
  bench.count("history.weeks_since_onset", 0);
  CHECK(is_now(bench, "ali"));
  bench.find("history.weeks_since_onset").value = model::CountValue{{30}};
  CHECK(!raised(bench, "ali"));
}

TEST_CASE("C8: a group entry, a carried-over value and a kiosk's answer neither raise nor reassure; what a kiosk says is asked again") {
  for (const auto origin : {model::Origin::bulk_expected, model::Origin::carried_over, model::Origin::self_reported}) {
    Bench bench = injured_knee();
    bench.yes("history.pain_out_of_proportion", Side::left).origin = origin;
    bench.yes("knee.stretch_pain_calf", Side::left).origin = origin;
    CHECK(!raised(bench, "acs"));
    CHECK(asks(bench, "acs", "history.pain_out_of_proportion"));
    for (auto& finding : *bench.exam.findings) {
      finding.value = model::Answer{model::AnswerWord::no};
    }
    CHECK(flag(bench, "acs") == "not_asked");
  }
}

TEST_CASE("C2: three questions at most are shown, and the rest is a count") {
  Bench bench = injured_knee();
  const auto assessment = bench.assess();
  CHECK(assessment.questions.size() == 3);
  CHECK(assessment.questions_more.steps > 0);
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK(assessment.questions[i].rank.steps == static_cast<std::int64_t>(i + 1));
  }
}

TEST_CASE("a flag that was refused or is not known cannot be answered, and is neither no nor not asked") {
  Bench bench = injured_knee();
  bench.not_done("knee.look_open_wound", Side::left, model::WhyNot::declined);
  bench.yes("knee.bone_tender_elsewhere", Side::left);
  CHECK(flag(bench, "open_fx") == "cannot_answer");
  bench.answer("history.examiner_suspects_clot", Side::midline, model::AnswerWord::unsure);
  CHECK(!raised(bench, "dvt"));
}

TEST_CASE("a rule never lowers an alert: with both knee rules negative, what is raised stays raised") {
  Bench bench = injured_knee();
  bench.nothing_found();
  bench.no("history.fall_or_blow", Side::midline);
  const std::size_t before = bench.assess().alerts.size();
  CHECK(before == 0);
  bench.yes("history.knee_dislocated", Side::left);
  CHECK(is_now(bench, "knee_disloc_vasc"));
}

TEST_CASE("HC-043: with an open break or a joint out of place no rule is used: none says that no film is needed, a positive stands") {
  Bench bench = injured_knee();
  bench.nothing_found();
  bench.no("history.fall_or_blow", Side::midline);
  for (const auto& rule : bench.assess().rules) {
    CHECK(rule.outcome == interpret::Outcome::negative);
  }
  bench.yes("knee.look_open_wound", Side::left);
  bench.yes("knee.look_deformity", Side::left);
  CHECK(is_now(bench, "open_fx"));
  for (const auto& rule : bench.assess().rules) {
    if (interpret::film_for(rule.rule).empty()) {
      continue;  // the vessels of a knee out of joint are judged all the more
    }
    CHECK(rule.outcome == interpret::Outcome::not_applicable);
    CHECK(rule.gate->text == "red_flag");
  }
  bench.find("knee.fibular_head_tender").value = model::Answer{model::AnswerWord::yes};
  CHECK(bench.rule().outcome == interpret::Outcome::positive);
}

TEST_CASE("what only the absence of an injury settles is not said to have been asked and answered no") {
  const Bench bench = sore_knee();
  CHECK(flag(bench, "knee_disloc_vasc") != "asked_no");
  CHECK(flag(bench, "ext_mech") != "asked_no");
}

TEST_CASE("acs: pain on stretch in a limb not at risk is open until pain beyond the hurt was asked after, and first among the questions (C3)") {
  Bench bench = injured_knee();
  bench.yes("knee.stretch_pain_calf", Side::left);
  bench.no("history.injury_severe_or_crush", Side::midline);
  CHECK(flag(bench, "acs") == "not_asked");
  REQUIRE(question(bench, "acs"));
  CHECK(question(bench, "acs")->rank.steps == 1);
  bench.no("history.pain_out_of_proportion", Side::midline);
  CHECK(flag(bench, "acs") == "asked_no");
}

// BOAST_ACS: a tight cast puts a limb at risk; hard exertion and a bite count with both pains only.
TEST_CASE("acs: pain on stretch with a tight cast named among the causes is raised now; with hard exertion alone it is not") {
  const auto with_cause = [](const char* cause) {
    Bench bench = injured_knee();
    bench.yes("knee.stretch_pain_calf", Side::left);
    bench.no("history.injury_severe_or_crush", Side::midline);
    bench.no("history.pain_out_of_proportion", Side::left);
    bench.add("history.compartment_causes", Side::left, model::Choices{{model::ChoiceId{cause}}});
    return bench;
  };
  CHECK(is_now(with_cause("cause_tight_cast"), "acs"));
  CHECK(!raised(with_cause("cause_exertion"), "acs"));
}

TEST_CASE("nobody is asked for the foot of a leg that ends in the shin; what is left of that danger is asked still") {
  Bench bench = injured_knee();
  CHECK(asks(bench, "ali", "vessel.foot_cold"));
  choice(bench, "body.limb_level", Side::left, "through_shin");
  for (const char* foot : {"vessel.foot_cold", "vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial", "nerve.foot_drop", "ankle.movement"}) {
    CHECK_MESSAGE(!asks(bench, "ali", foot), foot);
  }
}
