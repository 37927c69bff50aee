// Signs of pressure in a compartment, and vessels of a knee that was out of joint: what is never read as no, and that neither lowers its
// alert. Sources: decision rules page (acs, kd_abi), clinical safety C3. People are invented.
#include "tests/unit/interpret/alerts/bench.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

std::optional<interpret::RuleResult> limb_rule(const Bench& made, const std::string& rule, Side side = Side::left) {
  for (const auto& one : made.assess().rules) {
    if (one.rule.text == "rule." + rule && one.side == side) {
      return one;
    }
  }
  return std::nullopt;
}

Bench crushed_leg() {
  Bench made = injured_knee();
  made.yes("history.injury_severe_or_crush", Side::midline);
  made.no("history.pain_out_of_proportion", Side::left);
  for (const char* group : {"knee.stretch_pain_calf", "leg.stretch_pain_front", "leg.stretch_pain_outer", "leg.stretch_pain_deep"}) {
    made.no(group, Side::left);  // "all signs no" (worked example 5) is of all groups of muscles
  }
  return made;
}

Bench knee_out() {
  Bench made = injured_knee();
  made.yes("history.knee_dislocated", Side::left);
  pulses(made, Side::left, "2");
  pulses(made, Side::right, "2");
  pressure(made, "vessel.pressure_posterior_tibial", Side::left, 120);
  pressure(made, "vessel.pressure_arm", Side::left, 120);
  pressure(made, "vessel.pressure_arm", Side::right, 118);
  for (const char* item : {"vessel.foot_cold", "vessel.haematoma_expanding", "vessel.bleeding_active", "vessel.bruit_popliteal", "vessel.thrill"}) {
    made.no(item, Side::left);
  }
  return made;
}

}  // namespace

TEST_CASE("compartment: stretch pain alone asks first whether the limb is in danger; pain beyond the hurt is positive though nobody asked (C3)") {
  Bench made = injured_knee();
  made.yes("knee.stretch_pain_calf", Side::left);
  made.no("history.pain_out_of_proportion", Side::left);
  const auto open = limb_rule(made, "compartment_signs");
  CHECK(open->outcome == interpret::Outcome::undetermined);
  CHECK(settle_of(*open) == "limb_in_danger");
  CHECK(question(made, "acs")->rank.steps == 1);
  CHECK(!raised(made, "acs"));
  made.find("history.pain_out_of_proportion").value = model::Answer{model::AnswerWord::yes};
  made.drop("knee.stretch_pain_calf");
  CHECK(limb_rule(made, "compartment_signs")->outcome == interpret::Outcome::positive);
  CHECK(is_now(made, "acs"));
}

TEST_CASE("compartment: pulses that are felt lower nothing, one that is not adds the artery") {
  Bench made = crushed_leg();
  made.find("knee.stretch_pain_calf").value = model::Answer{model::AnswerWord::yes};
  pulses(made, Side::left, "3");
  CHECK(limb_rule(made, "compartment_signs")->outcome == interpret::Outcome::positive);
  CHECK_FALSE(flagged(*limb_rule(made, "compartment_signs"), "pulse_absent"));
  made.find("vessel.pulse_dorsalis_pedis").value = model::Grade{{"pulse/0-3"}, {"0"}, {}, {}, {}};
  CHECK(flagged(*limb_rule(made, "compartment_signs"), "pulse_absent"));
}

TEST_CASE("compartment: who cannot tell of pain in a limb in danger is never negative; who can is looked at every hour") {
  Bench made = crushed_leg();
  CHECK(limb_rule(made, "compartment_signs")->band->text == "hourly");
  Bench drowsy = made;
  drowsy.no("general.answers_reliable", Side::midline);
  CHECK(limb_rule(drowsy, "compartment_signs")->outcome == interpret::Outcome::undetermined);
  CHECK(settle_of(*limb_rule(drowsy, "compartment_signs")) == "compartment_pressure");
  Bench small = made;
  small.born(2025, 1, 1);
  CHECK(limb_rule(small, "compartment_signs")->outcome == interpret::Outcome::undetermined);
  made.yes("nerve.sensation_foot_reduced", Side::left);
  CHECK(flagged(*limb_rule(made, "compartment_signs"), "contradicted"));
}

TEST_CASE("compartment: a blank about either pain in a limb in danger leaves it open, and a leg nobody asked about has no result") {
  for (const char* item : {"history.pain_out_of_proportion", "knee.stretch_pain_calf"}) {
    Bench made = crushed_leg();
    made.drop(item);
    CHECK(limb_rule(made, "compartment_signs")->outcome == interpret::Outcome::undetermined);
  }
  Bench quiet = injured_knee();
  quiet.no("history.pain_out_of_proportion", Side::left);
  quiet.no("knee.stretch_pain_calf", Side::left);
  quiet.no("history.injury_severe_or_crush", Side::midline);
  CHECK_FALSE(limb_rule(quiet, "compartment_signs"));
  // A strained calf: known not to be in danger, stretch pain alone is negative and nothing more (C3).
  quiet.find("knee.stretch_pain_calf").value = model::Answer{model::AnswerWord::yes};
  quiet.add("history.compartment_causes", Side::left, model::Choices{{{"none_of_these"}}});
  CHECK(limb_rule(quiet, "compartment_signs")->outcome == interpret::Outcome::negative);
  CHECK(limb_rule(quiet, "compartment_signs")->flags.empty());
  CHECK_FALSE(limb_rule(crushed_leg(), "compartment_signs", Side::right));
}

TEST_CASE("compartment: a no to a cause settles no limb in an old plaster, and none whose severe injury was denied with a doubt; the result says so") {
  for (const bool old_plaster : {true, false}) {
    CAPTURE(old_plaster);
    Bench made = injured_knee();
    made.yes("knee.stretch_pain_calf", Side::left);
    made.no("history.pain_out_of_proportion", Side::left);
    made.no("history.injury_severe_or_crush", Side::midline);
    if (old_plaster) {
      made.exam.injured_on = day(2026, 10, 1);
      made.add("body.cast", Side::left, model::Choices{{{"cast_shin"}}});
    } else {
      made.find("history.injury_severe_or_crush").quality = std::vector{model::Quality::effort_limited};
    }
    const auto open = limb_rule(made, "compartment_signs");
    REQUIRE(open->outcome == interpret::Outcome::undetermined);
    REQUIRE(settle_of(*open) == "limb_in_danger");
    REQUIRE(open->settle.front().item->text == "history.compartment_causes");
    for (const auto& answer : open->settle.front().answers) {
      CAPTURE(answer.if_.text);
      const bool no = answer.if_.text == "no";
      Bench told = made;
      told.add("history.compartment_causes", Side::left, model::Choices{{{no ? "none_of_these" : "cause_crush"}}});
      CHECK(limb_rule(told, "compartment_signs")->outcome == answer.gives);
      CHECK(answer.gives == (no ? interpret::Outcome::undetermined : interpret::Outcome::positive));
    }
  }
}

TEST_CASE("compartment: pain on stretch of one compartment counts for rule and alert alike") {
  Bench made = crushed_leg();
  made.find("leg.stretch_pain_deep").value = model::Answer{model::AnswerWord::yes};
  CHECK(limb_rule(made, "compartment_signs")->outcome == interpret::Outcome::positive);
  CHECK(is_now(made, "acs"));
}

TEST_CASE("knee vessels: each thing nobody looked at keeps the result open and the alert now, but hard signs that nobody saw keep only the result") {
  CHECK(limb_rule(knee_out(), "knee_vessels")->band->text == "watched");
  CHECK(!is_now(knee_out(), "knee_disloc_vasc"));
  CHECK(alert(knee_out(), "knee_disloc_vasc")->message.text == "msg.alert.knee_disloc_vasc.watched");
  for (const char* item : {"vessel.pulse_dorsalis_pedis", "vessel.pressure_posterior_tibial", "vessel.pressure_arm"}) {
    CAPTURE(item);
    Bench made = knee_out();
    made.drop(item);
    CHECK(limb_rule(made, "knee_vessels")->outcome == interpret::Outcome::undetermined);
    CHECK(is_now(made, "knee_disloc_vasc"));
  }
  Bench unseen = knee_out();
  unseen.drop("vessel.thrill");
  CHECK(settle_of(*limb_rule(unseen, "knee_vessels")) == "hard_signs");
  CHECK(!is_now(unseen, "knee_disloc_vasc"));
}

TEST_CASE("knee vessels: a foot with one pulse missing or weaker than the other's is imaged now, without both or with a hard sign it is an emergency") {
  Bench weak = knee_out();
  weak.find("vessel.pulse_dorsalis_pedis").value = model::Grade{{"pulse/0-3"}, {"0"}, {}, {}, {}};
  CHECK(limb_rule(weak, "knee_vessels")->band->text == "imaging_now");
  weak.find("vessel.pulse_dorsalis_pedis").value = model::Grade{{"pulse/0-3"}, {"2"}, {}, {}, {}};
  pulse(weak, "vessel.pulse_dorsalis_pedis", Side::right, "3");
  weak.exam.findings->erase(std::find_if(weak.exam.findings->begin(), weak.exam.findings->end(), [](const auto& f) {
    return f.item.text == "vessel.pulse_dorsalis_pedis" && f.side == Side::right;
  }));
  CHECK(limb_rule(weak, "knee_vessels")->band->text == "imaging_now");
  CHECK(is_now(weak, "knee_disloc_vasc"));
  Bench hard = knee_out();
  hard.find("vessel.bleeding_active").value = model::Answer{model::AnswerWord::yes};
  CHECK(limb_rule(hard, "knee_vessels")->band->text == "emergency");
  CHECK(is_now(hard, "knee_disloc_vasc"));
}

TEST_CASE("knee vessels: the alert names a pressure below 0.90, measured again where the joint is still out; of a knee never out there is no result") {
  Bench made = knee_out();
  made.find("vessel.pressure_posterior_tibial").value = [] {
    model::Pressure value;
    value.mm_hg = model::MillimetresOfMercury{107};
    return value;
  }();
  made.no("history.joint_put_back", Side::left);
  CHECK(limb_rule(made, "knee_vessels")->band->text == "imaging_now");
  CHECK(flagged(*limb_rule(made, "knee_vessels"), "measure_again_when_back"));
  CHECK(alert(made, "knee_disloc_vasc")->message.text == "msg.alert.knee_disloc_vasc.pressure_low");
  // A second artery that is higher speaks for the foot.
  pressure(made, "vessel.pressure_dorsalis_pedis", Side::left, 118);
  CHECK(limb_rule(made, "knee_vessels")->band->text == "watched");
  made.find("history.knee_dislocated").value = model::Answer{model::AnswerWord::no};
  CHECK_FALSE(limb_rule(made, "knee_vessels"));
}
