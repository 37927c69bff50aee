// Leg, ankle and foot in the built-in edition: what an open fracture, a torn heel cord or a clot withholds and what stays allowed,
// typed here a second time from the plan of the examination (its table of steps that are unsafe before a fracture is settled); kinds
// that rules will read; what is never taken from a group entry.
#include "core/reference/edition.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace limbledger;

namespace {

[[nodiscard]] const model::Item& lower_item(const std::string& name) {
  const model::Item* found = reference::built_in_edition()->item(model::ItemId{name});
  REQUIRE_MESSAGE(found != nullptr, name);
  return *found;
}

[[nodiscard]] bool lower_withheld(const std::string& name, const std::string& concern) {
  const auto list = lower_item(name).withheld_by.value_or(std::vector<model::ConcernId>{});
  return std::find(list.begin(), list.end(), model::ConcernId{"concern." + concern}) != list.end();
}

}  // namespace

TEST_CASE("a fracture of ankle or foot withholds stress and load, and leaves touch, pulses and one squeeze") {
  for (const char* concern : {"ankle_fracture", "foot_fracture"}) {
    for (const char* name : {"ankle.anterior_drawer", "ankle.anterior_drawer_reverse", "ankle.anterolateral_drawer", "ankle.talar_tilt_neutral",
                             "ankle.talar_tilt_plantarflexed", "ankle.talar_tilt_outward", "ankle.dorsiflexion_external_rotation",
                             "ankle.heel_rise_double", "ankle.heel_rise_single", "ankle.heel_rise_count", "ankle.dorsiflexion_lunge_distance"}) {
      CHECK_MESSAGE(lower_withheld(name, concern), name << " by " << concern);
    }
    for (const char* name : {"ankle.lateral_malleolus_tender", "ankle.medial_malleolus_tender", "foot.fifth_metatarsal_base_tender",
                             "foot.navicular_tender", "leg.fibular_shaft_tender", "leg.fibula_squeeze", "ankle.syndesmosis_squeeze",
                             "ankle.calf_squeeze", "ankle.achilles_gap", "vessel.pulse_dorsalis_pedis", "leg.stretch_pain_front"}) {
      CHECK_MESSAGE(!lower_withheld(name, concern), name << " by " << concern);
    }
  }
  CHECK(lower_withheld("foot.piano_key", "foot_fracture"));
}

TEST_CASE("a torn heel cord withholds heel rises and the foot bent up; one squeeze, the gap and the look stay") {
  for (const char* name : {"ankle.heel_rise_double", "ankle.heel_rise_single", "ankle.heel_rise_count", "ankle.heel_rise_seated",
                           "ankle.dorsiflexion_passive_knee_bent", "ankle.dorsiflexion_passive_knee_straight", "ankle.silfverskiold",
                           "ankle.dorsiflexion_lunge_distance", "ankle.achilles_tender_in_dorsiflexion"}) {
    CHECK_MESSAGE(lower_withheld(name, "achilles_rupture"), name);
  }
  for (const char* name : {"ankle.calf_squeeze", "ankle.matles", "ankle.achilles_gap"}) {
    CHECK_MESSAGE(!lower_item(name).withheld_by.has_value(), name);
    CHECK_MESSAGE(lower_item(name).safety, name);
  }
  CHECK(lower_withheld("ankle.heel_rise_count", "clot"));
  CHECK(lower_withheld("ankle.dorsiflexion_passive_knee_straight", "clot"));
}

TEST_CASE("leg, ankle and foot: no concern takes away what an alert or a rule is asked with, and no group entry answers it") {
  for (const model::Item& one : reference::built_in_edition()->items()) {
    const std::string& name = one.item.text;
    const bool asked = name.starts_with("leg.stretch_pain_") || name.starts_with("leg.compartment_") || one.family.text == "foot.bone_tender" ||
                       one.family.text == "ankle.bone_tender" || one.family.text == "leg.bone_tender";
    if (asked) {
      CHECK_MESSAGE(!one.withheld_by.has_value(), name);
      CHECK_MESSAGE((one.safety || name == "foot.calcaneal_tubercle_tender"), name);
    }
  }
  for (const char* name : {"ankle.pain_malleolar_zone", "ankle.lateral_malleolus_tender", "ankle.medial_malleolus_tender", "foot.pain_midfoot_zone",
                           "foot.fifth_metatarsal_base_tender", "foot.navicular_tender"}) {
    CHECK_MESSAGE(lower_item(name).value == model::ValueKind::answer, name);
  }
  CHECK(lower_item("leg.calf_girth_10cm").value == model::ValueKind::length);
  CHECK(lower_item("ankle.heel_rise_count").value == model::ValueKind::count);
}

TEST_CASE("a drawer of the ankle counts by its end as well as by its millimetres") {
  const auto as = [](const std::string& grade, const std::string& end) -> std::string {
    for (const model::Counts& one : *lower_item("ankle.anterior_drawer").counts) {
      const bool grades = !one.grades || std::any_of(one.grades->begin(), one.grades->end(), [&](const wire::Name& g) { return g.text == grade; });
      const bool ends =
          !one.end_feels || std::any_of(one.end_feels->begin(), one.end_feels->end(), [&](const model::Word& e) { return e.text == end; });
      if (grades && ends) {
        return one.as == model::TestResult::positive ? "positive" : (one.as == model::TestResult::negative ? "negative" : "equivocal");
      }
    }
    return "";
  };
  // Two plus, or a difference with a soft end; no difference and no end is unsure.
  CHECK(as("0", "firm") == "negative");
  CHECK(as("0", "soft") == "negative");
  CHECK(as("0", "none") == "equivocal");
  CHECK(as("1+", "firm") == "equivocal");
  CHECK(as("1+", "soft") == "positive");
  CHECK(as("2+", "firm") == "positive");
}
