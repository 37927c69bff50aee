// Infection, blood in the joint, the extensor and the locked knee, by the red flags page (sections 7 to 9, 19, 20), clinical safety
// C3 and C13, and the hard cases named.
#include "tests/unit/interpret/alerts/bench.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

Bench hot_knee() {
  Bench bench = sore_knee();
  bench.yes("knee.look_skin_hot_red", Side::left);
  bench.yes("knee.joint_line_medial_tender", Side::left);
  bench.angle("knee.flexion_active", Side::left, 600);
  bench.count("history.weeks_since_onset", 0);
  return bench;
}

}  // namespace

TEST_CASE("HC-050: a hot stiff tender knee of days is raised the same day without fever, and a cool forehead does not lower it") {
  Bench bench = hot_knee();
  temperature(bench, 368);
  bench.no("history.fever", Side::midline);
  bench.yes("history.immune_suppressed", Side::midline);
  CHECK(raised(bench, "septic_adult"));
  CHECK(!is_now(bench, "septic_adult"));
}

TEST_CASE("septic_adult: the same for three weeks is not raised; restricted movement unknown is asked; ill with it is now") {
  Bench bench = hot_knee();
  bench.find("history.weeks_since_onset").value = model::CountValue{{3}};
  CHECK(!raised(bench, "septic_adult"));
  bench = hot_knee();
  bench.drop("knee.flexion_active");
  CHECK(!raised(bench, "septic_adult"));
  CHECK(asks(bench, "septic_adult", "knee.flexion_active"));
  bench.not_done("knee.flexion_passive", Side::left, model::WhyNot::pain);
  CHECK(raised(bench, "septic_adult"));
  bench.yes("history.unwell", Side::midline);
  temperature(bench, 390);
  CHECK(is_now(bench, "septic_adult"));
}

TEST_CASE("HC-059: a replaced knee that is hot goes to the surgeon the same day, by its own line") {
  Bench bench = sore_knee();
  bench.yes("body.knee_replaced", Side::left);
  bench.yes("knee.look_skin_hot_red", Side::left);
  REQUIRE(raised(bench, "septic_adult"));
  CHECK(alert(bench, "septic_adult")->message.text == "msg.alert.septic_adult.replaced");
}

TEST_CASE("septic_child: fever and a limp is raised; temperature not taken is asked for; a well child is not raised") {
  Bench bench = sore_knee(2020);
  bench.yes("gait.limp", Side::midline);
  CHECK(!raised(bench, "septic_child"));
  CHECK(asks(bench, "septic_child", "general.temperature"));
  temperature(bench, 386);
  CHECK(raised(bench, "septic_child"));
  CHECK(flag(bench, "septic_adult") == "no flag");
  CHECK(!raised(bench, "limp_child"));  // shown inside it
  bench.find("general.temperature").value = [] {
    model::Temperature value;
    value.cel = model::Celsius{370};
    return value;
  }();
  bench.no("history.fever", Side::midline);
  bench.no("history.unwell", Side::midline);
  bench.count("gait.steps_now", 4);
  CHECK(!raised(bench, "septic_child"));
}

TEST_CASE("osteomyelitis: a child's tender bone with fever and no injury is raised; the tender growth plate of a well child is not") {
  Bench bench = sore_knee(2014);
  bench.yes("knee.bone_tender_elsewhere", Side::left);
  CHECK(!raised(bench, "osteomyelitis"));
  temperature(bench, 384);
  CHECK(raised(bench, "osteomyelitis"));
  Bench plate = sore_knee(2013);
  plate.yes("knee.tibial_tubercle_tender", Side::left);
  for (const char* bone : {"knee.bone_tender_elsewhere", "knee.fibular_head_tender", "knee.patella_tender"}) {
    plate.no(bone, Side::left);
  }
  CHECK(!raised(plate, "osteomyelitis"));
  CHECK(!question(plate, "osteomyelitis"));
}

TEST_CASE("bleed_joint: rapid swelling with a blood thinner is raised; the thinner unknown is asked; swelling days later is not") {
  Bench bench = injured_knee();
  choice(bench, "history.swelling_onset", Side::left, "within_24h");
  CHECK(asks(bench, "bleed_joint", "history.blood_thinners"));
  bench.yes("history.blood_thinners", Side::midline);
  CHECK(raised(bench, "bleed_joint"));
  bench.find("history.swelling_onset").value = model::Choice{{"later"}};
  CHECK(!raised(bench, "bleed_joint"));
}

TEST_CASE("C13: a joint swollen for weeks with a hot skin is a referral, no alert; an ordinary swollen worn knee is neither") {
  Bench bench = sore_knee();
  graded(bench, "knee.effusion_stroke", Side::left, "2+", "effusion/stroke");
  bench.count("history.weeks_since_onset", 12);
  bench.no("knee.look_skin_hot_red", Side::left);
  bench.count("history.morning_stiffness_minutes", 15);
  CHECK(!referred(bench, "joint_over_2_weeks"));
  bench.find("knee.look_skin_hot_red").value = model::Answer{model::AnswerWord::yes};
  CHECK(referred(bench, "joint_over_2_weeks"));
  CHECK(!alert(bench, "joint_over_2_weeks"));
}

TEST_CASE("ext_mech: no straight leg raise after injury is raised; with pain it is open; a gap is named") {
  Bench bench = injured_knee();
  CHECK(asks(bench, "ext_mech", "knee.straight_leg_raise_active") == false);  // three others come first
  bench.not_done("knee.straight_leg_raise_active", Side::left, model::WhyNot::pain);
  CHECK(flag(bench, "ext_mech") == "not_asked");  // the gap and the kneecap can still be felt and seen
  bench.find("knee.straight_leg_raise_active").value = model::Test{model::TestResult::positive, std::nullopt};
  CHECK(raised(bench, "ext_mech"));
  bench.yes("knee.quadriceps_gap", Side::left);
  CHECK(alert(bench, "ext_mech")->message.text == "msg.alert.ext_mech.gap");
}

TEST_CASE("C3: a locked knee lacks extension by more than the error of a difference; old stiffness is not locked") {
  Bench bench = injured_knee();
  bench.born(2012, 1, 1);
  bench.angle("knee.extension_passive", Side::left, -100);
  bench.angle("knee.extension_passive", Side::right, 0);
  CHECK(!raised(bench, "locked_knee"));  // 10 short: within the error of a long goniometer
  bench.find("knee.extension_passive") = bench.angle("knee.extension_passive", Side::left, -150);
  bench.exam.findings->pop_back();
  CHECK(raised(bench, "locked_knee"));
  bench.born(1990, 1, 1);
  CHECK(!alert(bench, "locked_knee"));
  CHECK(referred(bench, "locked_knee"));
  Bench old = sore_knee();
  old.count("history.weeks_since_onset", 100);
  old.no("history.locking", Side::left);
  old.angle("knee.extension_passive", Side::left, -200);
  old.angle("knee.extension_passive", Side::right, 0);
  CHECK(!referred(old, "locked_knee"));
}

TEST_CASE("septic_child: not limping is no answer about a knee that nobody moved") {
  Bench bench = sore_knee(2014);
  bench.no("gait.limp", Side::midline);
  bench.yes("knee.look_skin_hot_red", Side::left);
  bench.yes("history.unwell", Side::midline);
  CHECK(flag(bench, "septic_child") != "asked_no");
}

TEST_CASE("what is done meanwhile for a replaced knee stands in the alert itself: no needle, and the antibiotic of who is ill does not wait") {
  Bench bench = sore_knee();
  bench.yes("body.knee_replaced", Side::left);
  bench.yes("knee.look_skin_hot_red", Side::left);
  const auto holds_message = [&](const std::string& message) {
    const auto found = alert(bench, "septic_adult");
    return found && std::find(found->meanwhile.begin(), found->meanwhile.end(), model::MessageId{message}) != found->meanwhile.end();
  };
  CHECK(holds_message("msg.meanwhile.fluid_first_replaced"));
  CHECK(!holds_message("msg.meanwhile.fluid_first"));
  bench.yes("history.unwell", Side::midline);
  temperature(bench, 390);
  CHECK(holds_message("msg.meanwhile.fluid_first_replaced_ill"));
}

TEST_CASE("locked_knee: a lack that the error of measurement hides, or that an answered locking leaves, is no no; a straight knee is") {
  Bench bench = injured_knee();
  bench.angle("knee.extension_passive", Side::left, -50);
  bench.angle("knee.extension_passive", Side::right, 30);
  CHECK(flag(bench, "locked_knee") == "cannot_answer");  // 8 against the other side, 10 needed
  bench.find("knee.extension_passive") = bench.angle("knee.extension_passive", Side::left, 30);
  bench.exam.findings->pop_back();
  CHECK(flag(bench, "locked_knee") == "asked_no");
  Bench old = sore_knee();
  old.no("history.locking", Side::left);
  old.angle("knee.extension_passive", Side::left, -120);
  old.angle("knee.extension_passive", Side::right, 0);
  CHECK(flag(old, "locked_knee") == "cannot_answer");
  CHECK(!referred(old, "locked_knee"));
  CHECK(!question(old, "locked_knee"));
}

TEST_CASE("osteomyelitis: bone that is not tender is no answer while nobody asked after fever") {
  Bench bench = sore_knee();
  for (const char* bone : {"knee.patella_tender", "knee.fibular_head_tender", "knee.bone_tender_elsewhere"}) {
    bench.no(bone, Side::left);
  }
  CHECK(flag(bench, "osteomyelitis") == "not_asked");
  bench.no("history.fever", Side::midline);
  temperature(bench, 368);
  CHECK(flag(bench, "osteomyelitis") == "asked_no");
}

TEST_CASE("joints_stiff: minutes of stiffness alone are no answer about several joints") {
  Bench bench = sore_knee();
  bench.count("history.morning_stiffness_minutes", 15);
  CHECK(flag(bench, "joints_stiff") == "not_asked");
  bench.no("history.joints_several", Side::midline);
  CHECK(flag(bench, "joints_stiff") == "asked_no");
}

TEST_CASE("clti: pulses felt after an injury of days are no answer about weeks; asked after them, they are") {
  Bench bench = injured_knee();
  pulses(bench, Side::left, "2");
  CHECK(flag(bench, "clti") == "not_asked");
  bench.no("history.rest_pain_over_2_weeks", Side::left);
  CHECK(flag(bench, "clti") == "asked_no");
  Bench old = sore_knee();
  pulses(old, Side::left, "2");
  CHECK(flag(old, "clti") == "asked_no");
}
