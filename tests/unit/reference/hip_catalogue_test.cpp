// Hip and pelvis in the built-in edition: which steps the plan of the examination takes away before a fracture, a dislocation, a
// slip or an infection is settled and which it leaves (typed here a second time from that plan, our convention), on which end of
// which axis a motion stands, and that nobody who cannot lie, stand or sit is left without another way.
#include "core/reference/edition.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace limbledger;

namespace {

[[nodiscard]] const model::Item& hip_item(const std::string& name) {
  const model::Item* found = reference::built_in_edition()->item(model::ItemId{name});
  REQUIRE_MESSAGE(found != nullptr, name);
  return *found;
}

[[nodiscard]] bool hip_withheld(const std::string& name, const std::string& concern) {
  const auto list = hip_item(name).withheld_by.value_or(std::vector<model::ConcernId>{});
  return std::find(list.begin(), list.end(), model::ConcernId{"concern." + concern}) != list.end();
}

void hip_check_withheld(const std::string& concern, const std::vector<std::string>& away, const std::vector<std::string>& left) {
  for (const std::string& name : away) {
    CHECK_MESSAGE(hip_withheld(name, concern), concern << " takes away " << name);
  }
  for (const std::string& name : left) {
    CHECK_MESSAGE(!hip_withheld(name, concern), concern << " leaves " << name);
  }
}

}  // namespace

TEST_CASE("hip and pelvis: what is open takes away what could harm, and leaves looking, asking and the gentle signs") {
  hip_check_withheld("pelvic_fracture",
                     {"pelvis.distraction", "pelvis.thigh_thrust", "pelvis.compression", "pelvis.sacral_thrust", "pelvis.gaenslen", "hip.log_roll",
                      "hip.flexion_passive", "hip.abduction_passive", "hip.squat", "hip.hop", "pelvis.crest_tender", "pelvis.crest_level_standing",
                      "pelvis.ring_tender_light", "pelvis.lumbar_tender", "pelvis.groin_lump"},
                     {"hip.leg_attitude", "hip.look_skin", "pelvis.injury_pain", "pelvis.injury_deformity", "pelvis.perineum_bruise",
                      "pelvis.blood_at_meatus", "hip.percussion_patellopubic", "hip.straight_leg_lift"});
  hip_check_withheld("hip_fracture",
                     {"hip.fadir", "hip.faber_groin", "hip.faber_height", "hip.scour", "hip.scour_adduction", "hip.extension_passive_thomas",
                      "hip.extension_passive_thomas_edge", "hip.resisted_abduction", "hip.resisted_straight_leg_raise", "hip.adductor_squeeze_0",
                      "hip.trendelenburg", "hip.stance_pain_30s", "hip.squat", "hip.hop", "pelvis.crest_level_standing", "hip.ischial_tuberosity_tender"},
                     {"hip.leg_attitude", "hip.log_roll", "hip.percussion_patellopubic", "hip.heel_push", "hip.straight_leg_lift"});
  hip_check_withheld("femoral_neck_stress",
                     {"hip.hop", "hip.fulcrum", "hip.squat", "hip.resisted_straight_leg_raise", "hip.scour", "hip.trendelenburg", "hip.adductor_squeeze_0"},
                     {"hip.log_roll", "hip.internal_rotation_passive_supine", "hip.flexion_passive", "hip.percussion_patellopubic"});
  hip_check_withheld("hip_slip",
                     {"hip.internal_rotation_passive_prone", "hip.external_rotation_passive_supine", "hip.internal_rotation_overpressure",
                      "hip.abduction_passive_flexed", "hip.faber_groin", "hip.fadir", "hip.scour", "hip.squat", "hip.hop", "hip.femoral_version",
                      "hip.arc_passive", "hip.heel_push", "hip.straight_leg_lift", "pelvis.lumbar_flexion"},
                     {"hip.leg_attitude", "hip.flexion_passive", "hip.turns_out_in_flexion"});
  hip_check_withheld("joint_infection", {"hip.flexion_passive", "hip.abduction_passive", "hip.fadir", "hip.barlow", "hip.ortolani", "pelvis.compression"},
                     {"hip.log_roll", "hip.leg_attitude", "hip.pain_passive_severe"});
  hip_check_withheld("hip_dislocated", {"hip.flexion_passive", "hip.internal_rotation_passive_seated", "hip.trendelenburg", "hip.fadir", "hip.heel_push"},
                     {"hip.leg_attitude", "hip.look_skin"});
}

TEST_CASE("hip and pelvis: the ring is never sprung, and what seems no sign after a fall is said to leave a fracture open") {
  for (const model::Item& one : reference::built_in_edition()->items()) {
    CHECK_MESSAGE(one.item.text.find("spring") == std::string::npos, one.item.text);
  }
  for (const char* name : {"hip.heel_push", "hip.percussion_patellopubic", "hip.straight_leg_lift", "pelvis.ring_tender_light", "pelvis.injury_deformity"}) {
    CHECK_MESSAGE(hip_item(name).text.no.has_value(), name);
    CHECK_MESSAGE(hip_item(name).safety, name);
  }
}

TEST_CASE("hip: each motion stands on one end of the axis that the contract names") {
  const auto stands = [](const std::string& name, const std::string& axis, model::AxisEnd end, const std::string& toward) {
    const model::Item& one = hip_item(name);
    CHECK_MESSAGE((one.axis == model::Word{axis} && one.end == end && one.toward == model::Word{toward}), name);
  };
  for (const std::string mode : {"_active", "_passive"}) {
    stands("hip.flexion" + mode, "flexion", model::AxisEnd::high, "flexion");
    stands("hip.extension" + mode + "_prone", "flexion", model::AxisEnd::low, "extension");
    stands("hip.abduction" + mode, "abduction", model::AxisEnd::high, "abduction");
    stands("hip.adduction" + mode, "abduction", model::AxisEnd::low, "adduction");
    for (const std::string position : {"_seated", "_supine", "_prone"}) {
      stands("hip.internal_rotation" + mode + position, "external_rotation", model::AxisEnd::low, "internal_rotation");
      stands("hip.external_rotation" + mode + position, "external_rotation", model::AxisEnd::high, "external_rotation");
      const model::Item& arc = hip_item("hip.arc_rotation" + mode + position);
      REQUIRE(arc.arc.has_value());
      CHECK(arc.arc->low.text == "hip.internal_rotation" + mode + position);
      CHECK(arc.arc->high.text == "hip.external_rotation" + mode + position);
    }
  }
  // A fixed flexion and an extension face down are measured differently: a norm of one says nothing of the other.
  CHECK(hip_item("hip.extension_passive_thomas").family != hip_item("hip.extension_passive_prone").family);
  CHECK(hip_item("hip.abduction_passive_flexed").family != hip_item("hip.abduction_passive").family);
}

TEST_CASE("hip and pelvis: every item says what it is for, and how else it is done or what is lost") {
  for (const model::Item& one : reference::built_in_edition()->items()) {
    const bool here = one.region == model::Word{"hip"} || one.region == model::Word{"pelvis"};
    if (!here) {
      continue;
    }
    CHECK_MESSAGE(one.text.purpose.has_value(), one.item.text);
    CHECK_MESSAGE(one.text.otherwise.has_value(), one.item.text);
    const bool test = one.value == model::ValueKind::test;
    CHECK_MESSAGE((!test || (one.text.yes && one.text.no && one.text.care)), one.item.text);
  }
}

TEST_CASE("hip: what is written in three numbers can be written in each of its positions at both ends") {
  for (const model::Item& one : reference::built_in_edition()->items()) {
    if (one.region != model::Word{"hip"} || !one.arc) {
      continue;
    }
    for (const model::Word& position : one.positions.value_or(std::vector<model::Word>{})) {
      for (const model::ItemId& end : {one.arc->low, one.arc->high}) {
        const auto there = hip_item(end.text).positions.value_or(std::vector<model::Word>{});
        CHECK_MESSAGE(std::find(there.begin(), there.end(), position) != there.end(), end.text << " " << position.text);
      }
    }
  }
}

TEST_CASE("hip: the timed test of the abductors counts each grade but the full one, as Hardcastle and Nade do") {
  const model::Item& one = hip_item("hip.trendelenburg");
  REQUIRE(one.counts.has_value());
  REQUIRE(one.scale.has_value());
  const model::Scale* scale = reference::built_in_edition()->scale(*one.scale);
  REQUIRE(scale != nullptr);
  CHECK(scale->grades.size() == 4);
  for (const model::Counts& row : *one.counts) {
    const bool full = row.grades && *row.grades == std::vector<wire::Name>{wire::Name{"0"}};
    CHECK((row.as == model::TestResult::negative) == full);
  }
}
