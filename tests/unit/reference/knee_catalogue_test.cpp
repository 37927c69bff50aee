// The knee in the built-in edition: the items that rules, alerts and hypotheses name; the minimum sets and what withholds what,
// typed here a second time from the plan of the examination (our convention, no publication); kinds that must not drift.
#include "core/reference/edition.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>
#include <utility>
#include <vector>

using namespace limbledger;

namespace {

using Names = std::set<std::string>;

[[nodiscard]] const model::Item& item(const std::string& name) {
  const model::Item* found = reference::built_in_edition()->item(model::ItemId{name});
  REQUIRE_MESSAGE(found != nullptr, name);
  return *found;
}

[[nodiscard]] const model::Sequence& sequence(const std::string& complaint) {
  const model::Sequence* found = reference::built_in_edition()->sequence(model::Word{complaint});
  REQUIRE_MESSAGE(found != nullptr, complaint);
  return *found;
}

[[nodiscard]] Names minimum_of(const std::string& complaint, std::int64_t age) {
  Names names;
  for (const model::SequenceStep& step : sequence(complaint).steps) {
    if (step.minimum.value_or(false) || (step.minimum_under && age < step.minimum_under->steps)) {
      names.insert(step.item.text);
    }
  }
  return names;
}

[[nodiscard]] std::size_t place_of(const std::string& complaint, const std::string& name) {
  const auto& steps = sequence(complaint).steps;
  const auto at = std::find_if(steps.begin(), steps.end(), [&](const model::SequenceStep& step) { return step.item.text == name; });
  REQUIRE_MESSAGE(at != steps.end(), name);
  return static_cast<std::size_t>(at - steps.begin());
}

[[nodiscard]] bool withheld(const std::string& name, const std::string& concern) {
  const auto list = item(name).withheld_by.value_or(std::vector<model::ConcernId>{});
  return std::find(list.begin(), list.end(), model::ConcernId{"concern." + concern}) != list.end();
}

}  // namespace

TEST_CASE("the items of the knee have the kinds of value that rules and hypotheses were written for") {
  const auto all = [](model::ValueKind kind, const std::vector<std::string>& names) {
    for (const std::string& name : names) {
      CHECK_MESSAGE(item(name).value == kind, name);
    }
  };
  using Kind = model::ValueKind;
  all(Kind::test, {"knee.effusion_ballottement",
                   "knee.effusion_fluctuation",
                   "knee.straight_leg_raise_active",
                   "knee.lever_sign",
                   "knee.posterior_sag",
                   "knee.quadriceps_active",
                   "knee.dial_30",
                   "knee.dial_90",
                   "knee.mcmurray",
                   "knee.thessaly_20",
                   "knee.thessaly_5",
                   "knee.apley_compression",
                   "knee.ege",
                   "knee.bounce_home",
                   "knee.patellar_apprehension",
                   "knee.patellar_apprehension_moving",
                   "knee.patellar_glide",
                   "knee.patellar_tilt",
                   "knee.step_down_eccentric",
                   "knee.squat",
                   "knee.noble_compression",
                   "hip.log_roll"});
  all(Kind::answer, {"knee.look_deformity",
                     "knee.look_open_wound",
                     "knee.look_skin_hot_red",
                     "knee.bruising",
                     "knee.joint_line_lateral_tender",
                     "knee.collateral_medial_tender",
                     "knee.collateral_lateral_tender",
                     "knee.adductor_tubercle_tender",
                     "knee.patellar_margin_medial_tender",
                     "knee.quadriceps_gap",
                     "knee.patellar_tendon_gap",
                     "knee.tibial_tubercle_tender",
                     "knee.popliteal_swelling",
                     "knee.crepitus",
                     "ankle.movement",
                     "vessel.foot_cold",
                     "vessel.capillary_refill_slow",
                     "nerve.sensation_foot_reduced",
                     "nerve.foot_drop",
                     "gait.limp",
                     "history.pop",
                     "history.giving_way",
                     "history.locking",
                     "history.patella_dislocated",
                     "history.knee_dislocated",
                     "history.fever",
                     "history.night_pain",
                     "history.saddle_numbness",
                     "leg.tense_compartment",
                     "knee.stretch_pain_calf",
                     "general.concern_knee_fracture"});
  all(Kind::grade, {"knee.lachman", "knee.lachman_prone", "knee.lachman_dropped_leg", "knee.anterior_drawer", "knee.pivot_shift",
                    "knee.posterior_drawer", "knee.valgus_30", "knee.valgus_0", "knee.varus_30", "knee.varus_0", "vessel.pulse_posterior_tibial",
                    "vessel.pulse_popliteal", "nerve.power_ankle_dorsiflexion"});
  all(Kind::angle, {"hip.internal_rotation_passive_seated", "hip.internal_rotation_passive_supine", "hip.external_rotation_passive_seated",
                    "hip.flexion_passive"});
  all(Kind::count, {"history.morning_stiffness_minutes", "history.weeks_since_onset", "general.pulse_rate"});
  all(Kind::choice, {"knee.look_swelling_spread", "knee.look_patella_height", "knee.alignment_standing", "gait.pattern", "history.swelling_onset"});
  CHECK(item("history.film_result").value == Kind::choices);
  CHECK(item("knee.pivot_shift").scale == model::ScaleId{"pivot/0-3"});
}

TEST_CASE("the minimum set of an acute knee") {
  const Names planned{"vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial",
                      // the fracture rule
                      "knee.fibular_head_tender", "knee.patella_tender", "knee.bone_tender_elsewhere", "knee.flexion_active", "gait.steps_now",
                      "history.steps_at_once",
                      // the rest
                      "knee.straight_leg_raise_active", "knee.effusion_stroke", "knee.lachman", "knee.posterior_sag", "knee.valgus_30",
                      "knee.varus_30", "hip.internal_rotation_passive_supine"};
  CHECK(minimum_of("acute_knee", 30) == planned);
  CHECK(minimum_of("acute_knee", 12) == planned);
}

TEST_CASE("the minimum set of a chronic knee; under 16 the hip is compulsory") {
  const Names planned{"gait.pattern",
                      "knee.alignment_standing",
                      "knee.flexion_passive",
                      "knee.extension_passive",
                      "knee.effusion_stroke",
                      "knee.joint_line_medial_tender",
                      "knee.joint_line_lateral_tender",
                      "knee.crepitus",
                      "nerve.power_knee_extension",
                      "hip.internal_rotation_passive_supine"};
  CHECK(minimum_of("chronic_knee", 16) == planned);
  Names child = planned;
  child.insert({"hip.log_roll", "hip.flexion_passive", "hip.external_rotation_passive_seated"});
  CHECK(minimum_of("chronic_knee", 15) == child);
}

TEST_CASE("in an acute knee pulses come before bone, bone before the rule's motion, sag before any anterior test, twisting last") {
  const auto before = [](const char* first, const char* second) {
    CHECK_MESSAGE(place_of("acute_knee", first) < place_of("acute_knee", second), first << " before " << second);
  };
  before("knee.look_open_wound", "vessel.pulse_dorsalis_pedis");
  before("vessel.pulse_dorsalis_pedis", "knee.patella_tender");
  before("knee.patella_tender", "knee.flexion_active");
  before("knee.flexion_active", "gait.steps_now");
  before("gait.steps_now", "knee.straight_leg_raise_active");
  before("knee.straight_leg_raise_active", "knee.effusion_stroke");
  before("knee.effusion_stroke", "knee.joint_line_medial_tender");
  before("knee.posterior_sag", "knee.lachman");
  before("knee.lachman", "knee.valgus_30");
  before("knee.varus_0", "knee.mcmurray");
  for (const char* absent : {"knee.pivot_shift", "knee.thessaly_20", "knee.squat", "knee.ege"}) {
    const auto& steps = sequence("acute_knee").steps;
    CHECK_MESSAGE(std::none_of(steps.begin(), steps.end(), [&](const model::SequenceStep& step) { return step.item.text == absent; }), absent);
  }
}

TEST_CASE("what an open concern withholds, and what stays allowed") {
  for (const char* name :
       {"knee.pivot_shift", "knee.mcmurray", "knee.thessaly_20", "knee.thessaly_5", "knee.squat", "knee.flexion_passive", "knee.ege"}) {
    CHECK_MESSAGE(withheld(name, "knee_fracture"), name);
    CHECK_MESSAGE(withheld(name, "extensor_rupture"), name);
  }
  // Palpation, a gentle active straight leg raise and the pulses stay.
  for (const char* name : {"knee.straight_leg_raise_active", "knee.patella_tender", "knee.joint_line_medial_tender", "vessel.pulse_dorsalis_pedis"}) {
    CHECK_MESSAGE(!withheld(name, "knee_fracture"), name);
    CHECK_MESSAGE(!withheld(name, "extensor_rupture"), name);
  }
  for (const char* name :
       {"hip.internal_rotation_passive_seated", "hip.internal_rotation_passive_supine", "gait.steps_now", "knee.squat", "hip.log_roll"}) {
    CHECK_MESSAGE(withheld(name, "hip_slip"), name);
  }
  CHECK(!withheld("hip.flexion_passive", "hip_slip"));
  // Suspected fracture of the hip: attitude, pulses, a small log roll and an active straight leg raise are allowed; no standing.
  CHECK(!withheld("hip.log_roll", "hip_fracture"));
  CHECK(!withheld("knee.straight_leg_raise_active", "hip_fracture"));
  CHECK(withheld("gait.steps_now", "hip_fracture"));
  CHECK(withheld("hip.log_roll", "pelvic_fracture"));
  CHECK(withheld("knee.mcmurray", "knee_locked"));
  CHECK(withheld("knee.posterior_drawer", "knee_dislocated"));
  CHECK(withheld("knee.squat", "femoral_neck_stress"));
  CHECK(!withheld("hip.log_roll", "femoral_neck_stress"));
  // No concern takes away what an alert is asked with.
  for (const char* name : {"leg.tense_compartment", "knee.stretch_pain_calf", "vessel.foot_cold", "nerve.foot_drop", "history.saddle_numbness"}) {
    CHECK_MESSAGE(!item(name).withheld_by.has_value(), name);
  }
}

TEST_CASE("a test of the knee that bends or turns the hip, or needs lying face down, waits for the hip as well") {
  for (const char* name : {"knee.mcmurray", "knee.mcmurray_pain", "knee.pain_full_flexion", "knee.pivot_shift", "knee.reverse_pivot_shift",
                           "knee.posterior_sag", "knee.posterior_drawer", "knee.anterior_drawer", "knee.quadriceps_active",
                           "knee.external_rotation_recurvatum", "knee.extension_passive_hip_bent", "knee.collateral_lateral_tender",
                           "knee.lachman_prone", "knee.apley_compression", "knee.heel_height_prone", "knee.flexion_passive_prone"}) {
    CHECK_MESSAGE(withheld(name, "hip_fracture"), name);
    CHECK_MESSAGE(withheld(name, "hip_slip"), name);
    CHECK_MESSAGE(withheld(name, "pelvic_fracture"), name);
  }
  for (const char* name : {"knee.posterior_sag", "knee.collateral_lateral_tender", "knee.crepitus", "knee.patellar_tracking"}) {
    CHECK_MESSAGE(withheld(name, "knee_fracture"), name);
  }
}

TEST_CASE("an alert that stops a test of the knee stops its variants as well") {
  const std::vector<std::pair<const char*, const char*>> variants{{"knee.lachman", "knee.lachman_supported"},
                                                                  {"knee.lachman", "knee.lachman_dropped_leg"},
                                                                  {"knee.anterior_drawer", "knee.anterior_drawer_foot_in"},
                                                                  {"knee.dial_90", "knee.dial_90_seated"},
                                                                  {"knee.mcmurray", "knee.mcmurray_pain"},
                                                                  {"knee.apley_compression", "knee.apley_distraction"},
                                                                  {"knee.pivot_shift", "knee.reverse_pivot_shift"}};
  for (const reference::AlertRow& row : reference::built_in_edition()->alerts()) {
    const auto stops = [&](const char* name) {
      return std::find(row.stop.begin(), row.stop.end(), model::ItemId{name}) != row.stop.end();
    };
    for (const auto& variant : variants) {
      CHECK_MESSAGE((!stops(variant.first) || stops(variant.second)), row.alert.text << " " << variant.second);
    }
  }
}

TEST_CASE("a film that shows nothing lifts no concern of the hip's neck") {
  for (const model::Concern& concern : reference::built_in_edition()->concerns()) {
    const std::string& name = concern.concern.text;
    const bool by_film = name == "concern.knee_fracture" || name == "concern.shaft_fracture" || name == "concern.pelvic_fracture" ||
                         name == "concern.hip_slip" || name == "concern.ankle_fracture" || name == "concern.foot_fracture";
    CHECK_MESSAGE(concern.film_lifts.has_value() == by_film, name);
  }
}

TEST_CASE("every answer of the history that an alert rests on stays out of a group entry") {
  for (const model::Item& one : reference::built_in_edition()->items()) {
    const std::string& name = one.item.text;
    const bool flag = name.starts_with("general.concern_") || name.find("pulse") != std::string::npos || name.starts_with("hip.") ||
                      name.find("sensation") != std::string::npos || one.family.text == "knee.bone_tender";
    CHECK_MESSAGE((!flag || one.safety), name);
  }
  for (const char* name :
       {"history.fever", "history.unwell", "history.night_pain", "history.weight_loss", "history.cancer_known", "history.blood_thinners",
        "history.saddle_numbness", "history.bladder_bowel_change", "history.breathless", "history.unexplained_bruises",
        "history.pain_out_of_proportion", "history.knee_dislocated", "knee.straight_leg_raise_active"}) {
    CHECK_MESSAGE(item(name).safety, name);
  }
}

TEST_CASE("a laxity grade counts by its end as well as by its millimetres") {
  const auto as = [](const std::string& name, const std::string& grade, const std::string& end) -> std::string {
    for (const model::Counts& one : *item(name).counts) {
      const bool grades = !one.grades || std::any_of(one.grades->begin(), one.grades->end(), [&](const wire::Name& g) { return g.text == grade; });
      const bool ends =
          !one.end_feels || std::any_of(one.end_feels->begin(), one.end_feels->end(), [&](const model::Word& e) { return e.text == end; });
      if (grades && ends) {
        return one.as == model::TestResult::positive ? "positive" : (one.as == model::TestResult::negative ? "negative" : "equivocal");
      }
    }
    return "";
  };
  // 3 mm or more, or a soft end; 3 to 5 mm with a firm end is unsure.
  CHECK(as("knee.lachman", "0", "firm") == "negative");
  CHECK(as("knee.lachman", "0", "soft") == "positive");
  CHECK(as("knee.lachman", "1", "firm") == "equivocal");
  CHECK(as("knee.lachman", "1", "") == "positive");
  CHECK(as("knee.lachman", "2", "firm") == "positive");
  CHECK(as("knee.posterior_drawer", "1", "firm") == "positive");
  CHECK(as("knee.valgus_30", "0", "none") == "positive");
  CHECK(as("knee.valgus_30", "0", "soft") == "negative");
  CHECK(as("knee.pivot_shift", "1", "") == "positive");
}
