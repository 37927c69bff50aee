// Whole people, as far as alerts go: consultation S05 of clinical safety F, and hard cases HC-049 to HC-059 where joint_test, limb_test,
// person_test and the outside tests leave something over. What is expected, and what must not appear.
#include "core/interpret/held.hpp"
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

bool kept_back(const Bench& bench, const std::string& step) {
  const interpret::View view(bench.exam, bench.person, *bench.edition, day(2026, 11, 24));
  const auto seen = interpret::watch(view);
  const model::Item* item = bench.edition->item(std::string_view(step));
  REQUIRE_MESSAGE(item != nullptr, step);
  return interpret::withheld(*item, Side::left, seen.concerns, seen.flags).has_value();
}

}  // namespace

TEST_CASE("S05: 84, poor memory, blood thinner, fell two days ago, told by her daughter, cannot stand, the hip hurts when turned: the hip the same day, and no trial on it") {
  Bench bench = visit("acute_knee", 1942, "history.memory_poor yes; history.blood_thinners yes; history.mechanism fall; general.answers_reliable no; gait.steps_now 0;"
                                          "knee.bruising left yes; knee.patella_tender left no; knee.fibular_head_tender left no; hip.log_roll left positive");
  bench.exam.injured_on = day(2026, 11, 22);
  CHECK(raised(bench, "hip_fx_old"));
  CHECK(alert(bench, "hip_fx_old")->urgency == interpret::Urgency::same_day);
  const auto alerts = bench.assess().alerts;
  REQUIRE_FALSE(alerts.empty());
  CHECK(alerts.front().alert.text == "alert.hip_fx_old");  // above the knee
  CHECK(meanwhile_says(bench, "hip_fx_old", "no_standing_trial"));
  for (const char* step : {"gait.steps_now", "hip.fadir", "hip.extension_passive_thomas", "hip.faber_groin", "hip.scour", "function.squat_depth"}) {
    CHECK_MESSAGE(kept_back(bench, step), step);
  }
  for (const auto& rule : bench.assess().rules) {
    CHECK(rule.outcome != interpret::Outcome::negative);  // what she says is not reliable
  }
  for (const auto& step : bench.assess().steps) {
    CHECK_FALSE(step.step.text.starts_with("gait."));
  }
}

TEST_CASE("S05: no film here: the hip is treated as broken until a film elsewhere, and what is listed nowhere changes nothing") {
  Bench bench = visit("hip_after_fall", 1942, "history.fall_recent yes; hip.log_roll left positive");
  interpret::AssessAsk ask = bench.ask();
  ask.place.emplace();
  const auto first = [&] { return interpret::assess(bench.exam, bench.person, {}, *bench.edition, ask).alerts.front(); };
  const auto says = [&](const char* message) {
    const auto found = first();
    return std::find(found.meanwhile.begin(), found.meanwhile.end(), model::MessageId{message}) != found.meanwhile.end();
  };
  CHECK(says("msg.meanwhile.film_hip"));
  ask.place->here = std::vector<model::Here>{{{"film"}, model::YesNo::no}};
  CHECK(says("msg.meanwhile.film_hip_elsewhere"));
  CHECK_FALSE(says("msg.meanwhile.film_hip"));
}

TEST_CASE("HC-049: thirteen, knee normal, hip empty: the hip is asked for before closing; rolling outward as it bends stops every further turning") {
  Bench bench = visit("chronic_knee", 2013, "history.mechanism no_injury; history.weeks_since_onset 3; knee.effusion_stroke left 0; knee.look_skin_hot_red left no");
  CHECK(asks(bench, "scfe", "hip.internal_rotation_passive_seated"));
  CHECK(flag(bench, "scfe") == "not_asked");
  tell(bench, "hip.turns_out_in_flexion left positive");
  CHECK(raised(bench, "scfe"));
  for (const char* step : {"hip.internal_rotation_passive_seated", "gait.steps_now", "hip.hop", "function.squat_depth"}) {
    CHECK_MESSAGE(kept_back(bench, step), step);
  }
}

TEST_CASE("HC-051: day ten after an ankle plaster, complaint of a stiff ankle: the fuller calf is asked after all the same, with plaster counted") {
  Bench bench = visit("after_plaster", 1980, "history.leg_paralysed_or_plaster left yes; leg.calf_swelling left yes; leg.calf_tender_vein left yes; ankle.dorsiflexion_passive_knee_bent left 0");
  CHECK(asks(bench, "dvt", "history.examiner_suspects_clot"));
  tell(bench, "history.examiner_suspects_clot yes");
  CHECK(raised(bench, "dvt"));
}

TEST_CASE("HC-053: nobody is told to raise the leg or to wait: open the dressings, height of the heart, move") {
  Bench bench = visit("acute_knee", 1990, "history.mechanism direct_blow; history.pain_out_of_proportion left yes; knee.stretch_pain_calf left yes; vessel.pulse_dorsalis_pedis left 2");
  CHECK(is_now(bench, "acs"));
  for (const char* message : {"open_dressings", "heart_level", "call_and_move"}) {
    CHECK(meanwhile_says(bench, "acs", message));
  }
}

TEST_CASE("HC-054: a knee that went back by itself has vessel and nerve of both sides looked at each hour") {
  Bench bench = visit("acute_knee", 1990, "history.mechanism fall; history.knee_dislocated left yes; vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 2");
  CHECK(is_now(bench, "knee_disloc_vasc"));
  CHECK(meanwhile_says(bench, "knee_disloc_vasc", "vessel_hourly"));
}

TEST_CASE("HC-055: on tiptoe on both legs, no movement when the calf is squeezed: the torn heel cord is raised and the rise takes nothing back") {
  Bench bench = visit("calf_pain", 1982, "history.kick_to_heel_cord left yes; ankle.heel_rise_double left rises_both_evenly; ankle.calf_squeeze left absent");
  CHECK(raised(bench, "achilles"));
  CHECK(kept_back(bench, "ankle.heel_rise_count"));
}

TEST_CASE("HC-058: seven months, fell from a sofa, tender thigh bone: the protected note, masked, with no flag and no question") {
  Bench bench = visit("free", 2026, "history.mechanism fall; leg.thigh_shaft_tender left yes");
  bench.born(2026, 4, 20);
  REQUIRE(alert(bench, "protected"));
  CHECK(alert(bench, "protected")->because.empty());
  CHECK_FALSE(alert(bench, "nai"));
  CHECK(flag(bench, "nai") == "no flag");
  CHECK_FALSE(question(bench, "nai"));
}

TEST_CASE("HC-059: three weeks after a knee was replaced its wound is wet and red: the surgeon today, and no antibiotic first") {
  Bench bench = visit("after_operation", 1955, "history.mechanism no_injury; body.knee_replaced left yes; history.joint_injection_or_operation_recent yes; history.weeks_since_onset 3");
  CHECK_FALSE(raised(bench, "septic_adult"));
  tell(bench, "skin.infection_signs left sign_redness+sign_pus; skin.redness_margin left 40");
  CHECK(line_of(bench, "septic_adult") == "replaced");
  CHECK(meanwhile_says(bench, "septic_adult", "fluid_first_replaced"));
  CHECK_FALSE(meanwhile_says(bench, "septic_adult", "fluid_first"));
}
