// In which complaints a danger is asked after though nothing points to it, and which steps it stops. Typed here a second time from
// the red flags page ("stop / skip") and the plan of the examination (section 0, the focused sequences, what is unsafe): what a
// complaint must not miss, as far as a danger is built for it. A danger that looks at the knee alone is asked of a knee.
#include "core/interpret/alerts/alerts.hpp"
#include "tests/unit/interpret/alerts/bench.hpp"

#include <set>

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

const reference::AlertRow& row_of(const std::string& name) {
  const reference::AlertRow* row = reference::built_in_edition()->alert("alert." + name);
  REQUIRE(row != nullptr);
  return *row;
}

// Stopped by the danger itself, or withheld by what it opens.
bool keeps_off(const std::string& name, const model::Item& item) {
  const reference::AlertRow& row = row_of(name);
  const bool held = item.withheld_by && std::any_of(item.withheld_by->begin(), item.withheld_by->end(), [&](const model::ConcernId& concern) {
                      return std::find(row.opens.begin(), row.opens.end(), concern) != row.opens.end();
                    });
  return held || std::find(row.stop.begin(), row.stop.end(), item.item) != row.stop.end();
}

void check_stops(const std::string& name, std::initializer_list<const char*> items) {
  for (const char* id : items) {
    const model::Item* item = reference::built_in_edition()->item(std::string_view(id));
    REQUIRE_MESSAGE(item != nullptr, id);
    CHECK_MESSAGE(keeps_off(name, *item), name << " " << id);
  }
}

// Nothing recorded but the complaint.
bool is_asked_after(const std::string& complaint, const std::string& name, int born) {
  Bench bench(*reference::built_in_edition());
  bench.exam.complaint = {complaint};
  bench.exam.injured_on.reset();
  bench.born(born, 1, 1);
  const interpret::View view(bench.exam, bench.person, *bench.edition, day(2026, 11, 24));
  const auto flags = interpret::judge_flags(view);
  const auto asked = interpret::asked_flags(view, flags);
  return std::any_of(asked.begin(), asked.end(), [&](const auto* flag) { return flag->row->alert.text == "alert." + name; });
}

struct Asked {
  const char* danger;
  int born;  // so that it is made for this person
  std::vector<const char*> complaints;
};

const std::vector<Asked>& asked_after() {
  static const std::vector<Asked> all{
      {"acs", 1986, {"acute_knee", "ankle_injury", "calf_pain", "after_operation", "after_plaster"}},
      {"ali",
       1986,
       {"acute_knee", "ankle_injury", "calf_pain", "swollen_legs", "diabetic_foot", "wound_or_numb_foot", "forefoot_pain", "back_leg", "after_operation",
        "after_plaster", "after_amputation", "whole_limb", "no_complaint"}},
      {"ces", 1986, {"back_leg", "posterior_hip", "whole_limb"}},
      {"septic_adult", 1986, {"chronic_knee", "hip_groin", "lateral_hip", "posterior_hip", "forefoot_pain"}},
      {"septic_child", 2019, {"chronic_knee", "limping_child", "infant_hip", "hip_groin"}},
      {"dvt", 1986, {"calf_pain", "swollen_legs", "after_operation", "after_plaster", "review"}},
      {"scfe", 2013, {"acute_knee", "chronic_knee", "limping_child", "hip_groin", "child_alignment", "whole_limb", "review"}},
      {"hip_fx_old", 1946, {"acute_knee", "hip_groin", "hip_after_fall", "lateral_hip", "posterior_hip"}},
      {"limp_child", 2019, {"limping_child"}},
      {"perthes", 2019, {"limping_child"}},
      {"tumour",
       1986,
       {"chronic_knee", "limping_child", "hip_groin", "lateral_hip", "posterior_hip", "heel_pain", "back_leg", "whole_limb", "no_complaint", "review"}},
      {"achilles", 1986, {"ankle_injury", "calf_pain"}},
      {"charcot", 1986, {"diabetic_foot", "wound_or_numb_foot", "forefoot_pain"}},
      {"df_infect", 1986, {"diabetic_foot", "wound_or_numb_foot", "after_amputation"}},
      {"nsti", 1986, {"wound_or_numb_foot"}},
      {"hip_disloc", 1986, {"hip_after_fall"}},
      {"ankle_disloc", 1986, {"ankle_injury"}},
      {"deep_wound", 1986, {"wound_or_numb_foot"}},
      {"clti", 1986, {"diabetic_foot", "wound_or_numb_foot"}},
      {"foot_drop_new", 1986, {"back_leg"}},
      {"bone_stress_hip", 1986, {"hip_groin", "lateral_hip"}},
      {"bone_stress", 1986, {"heel_pain", "forefoot_pain"}},
      {"ddh_late", 2024, {"infant_hip", "child_alignment"}},
  };
  return all;
}

}  // namespace

TEST_CASE("each complaint asks after the dangers that its plan must not miss, though nothing points to them yet") {
  for (const Asked& one : asked_after()) {
    const auto& listed = row_of(one.danger).asked_in;
    CHECK_MESSAGE(listed.size() == one.complaints.size(), one.danger);
    for (const char* complaint : one.complaints) {
      CHECK_MESSAGE(std::find(listed.begin(), listed.end(), model::Word{complaint}) != listed.end(), one.danger << " " << complaint);
      CHECK_MESSAGE(is_asked_after(complaint, one.danger, one.born), one.danger << " " << complaint);
    }
  }
}

TEST_CASE("a danger of one kind of complaint is no question of another") {
  CHECK_FALSE(is_asked_after("ankle_injury", "ces", 1986));
  CHECK_FALSE(is_asked_after("ankle_injury", "hip_fx_old", 1946));
  CHECK_FALSE(is_asked_after("heel_pain", "dvt", 1986));
  CHECK_FALSE(is_asked_after("hip_groin", "scfe", 1986));
  CHECK_FALSE(is_asked_after("heel_pain", "septic_adult", 1986));
  CHECK_FALSE(is_asked_after("chronic_knee", "charcot", 1986));
  CHECK_FALSE(is_asked_after("hip_groin", "ddh_late", 1986));
  CHECK_FALSE(is_asked_after("acute_knee", "achilles", 1986));
}

TEST_CASE("every step that a danger stops is an item of the list, and named once") {
  for (const reference::AlertRow& row : reference::built_in_edition()->alerts()) {
    std::set<std::string> seen;
    for (const model::ItemId& item : row.stop) {
      CHECK_MESSAGE(reference::built_in_edition()->item(item) != nullptr, item.text);
      CHECK_MESSAGE(seen.insert(item.text).second, row.alert.text << " " << item.text);
    }
  }
}

// Examination sequence, what is allowed with a suspected fracture of the hip: attitude, pulses, a small log roll, percussion, one heel
// push, the straight leg lifted by the person.
TEST_CASE("a break of the hip that is not settled leaves what its page allows, or its own minimum set could not be examined") {
  for (const char* item : {"hip.log_roll", "hip.leg_attitude", "hip.percussion_patellopubic", "hip.heel_push", "hip.straight_leg_lift", "vessel.pulse_dorsalis_pedis"}) {
    const model::Item* known = reference::built_in_edition()->item(std::string_view(item));
    REQUIRE_MESSAGE(known != nullptr, item);
    CHECK_MESSAGE(!keeps_off("hip_fx_old", *known), item);
  }
}

TEST_CASE("the dangers stop what their page says: loading where nothing may be loaded, nerves stretched again, hips forced, bone struck") {
  for (const char* name : {"open_fx", "knee_disloc_vasc", "acs", "ali", "septic_adult", "septic_child", "osteomyelitis", "scfe", "hip_fx_old", "limp_child"}) {
    check_stops(name, {"function.hop_distance", "function.squat_depth", "function.single_leg_stance_eyes_open", "ankle.heel_rise_count", "gait.toe_walk", "hip.hop"});
  }
  check_stops("ces", {"nerve.straight_leg_raise", "nerve.straight_leg_raise_seated", "nerve.crossed_straight_leg_raise", "nerve.slump", "gait.tandem_walk",
                      "gait.heel_walk", "function.stance_tandem"});
  check_stops("perthes", {"hip.hop", "function.hop_distance"});
  check_stops("charcot", {"ankle.heel_rise_single", "gait.steps_now", "function.single_leg_stance_eyes_open", "function.stance_tandem", "ankle.dorsiflexion_lunge_distance"});
  check_stops("df_infect", {"gait.pattern", "gait.toe_walk", "foot.mtp_second_drawer", "foot.mtp_first_grind", "function.walk_10m_usual"});
  check_stops("nsti", {"skin.gas_crackle", "vessel.oedema_pitting", "gait.steps_now", "function.squat_depth"});
  check_stops("bone_stress_hip", {"hip.hop", "hip.fulcrum", "hip.squat", "hip.resisted_straight_leg_raise", "function.hop_distance", "function.squat_depth"});
  check_stops("hip_disloc", {"gait.steps_now", "hip.flexion_passive", "hip.fadir", "hip.log_roll_free", "hip.internal_rotation_passive_seated"});
  check_stops("ankle_disloc", {"gait.steps_now", "ankle.anterior_drawer", "ankle.talar_tilt_neutral", "ankle.dorsiflexion_passive_knee_bent", "ankle.heel_rise_count"});
  check_stops("ddh_late", {"hip.barlow", "hip.ortolani"});
  check_stops("osteomyelitis", {"leg.shin_percussion_pain", "hip.heel_push"});
  check_stops("dvt", {"ankle.heel_rise_count", "function.hop_distance"});
  check_stops("achilles", {"ankle.heel_rise_single", "ankle.heel_rise_count", "ankle.dorsiflexion_lunge_distance", "function.hop_distance"});
}

TEST_CASE("open_fx: every step that a broken bone of the leg takes away is stopped in that leg") {
  const std::set<std::string> breaks{"concern.knee_fracture", "concern.ankle_fracture", "concern.foot_fracture", "concern.shaft_fracture", "concern.hip_fracture"};
  std::size_t checked = 0;
  for (const model::Item& item : reference::built_in_edition()->items()) {
    const bool taken = item.withheld_by && std::any_of(item.withheld_by->begin(), item.withheld_by->end(),
                                                       [&](const model::ConcernId& concern) { return breaks.count(concern.text) != 0; });
    if (taken) {
      CHECK_MESSAGE(keeps_off("open_fx", item), item.item.text);
      ++checked;
    }
  }
  CHECK(checked > 200);
}
