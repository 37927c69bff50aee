#include "core/interpret/alerts/alerts.hpp"
#include "core/interpret/alerts/limits.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

const Clue& waits_for(const Raised& raised) { return raised.clue.is_yes() && raised.graver ? *raised.graver : raised.clue; }

std::span<const RedFlag> all_red_flags() {
  static constexpr std::array flags{
      RedFlag{"alert.open_fx", true, &open_fracture},
      RedFlag{"alert.knee_disloc_vasc", true, &dislocated_knee},
      RedFlag{"alert.acs", true, &compartment},
      RedFlag{"alert.ali", true, &limb_ischaemia},
      RedFlag{"alert.dislocation", true, &dislocated_kneecap},
      RedFlag{"alert.ces", false, &cauda_equina},
      RedFlag{"alert.septic_adult", true, &infected_joint_adult},
      RedFlag{"alert.septic_child", true, &infected_joint_child},
      RedFlag{"alert.osteomyelitis", true, &infected_bone},
      RedFlag{"alert.dvt", true, &leg_clot},
      RedFlag{"alert.scfe", true, &hip_slip},
      RedFlag{"alert.hip_fx_old", true, &hip_fracture_old},
      RedFlag{"alert.ext_mech", true, &extensor_rupture},
      RedFlag{"alert.achilles", true, &achilles_rupture},
      RedFlag{"alert.bleed_joint", true, &bleeding_joint},
      RedFlag{"alert.locked_knee", true, &locked_knee},
      RedFlag{"alert.limp_child", false, &limping_child},
      RedFlag{"alert.nai", false, &inflicted_injury},
      RedFlag{"alert.tumour", false, &tumour},
      RedFlag{"alert.perthes", true, &perthes},
      RedFlag{"alert.joint_over_2_weeks", true, &joint_over_two_weeks},
      RedFlag{"alert.hip_disloc", true, &dislocated_hip},
      RedFlag{"alert.ankle_disloc", true, &dislocated_ankle},
      RedFlag{"alert.nsti", true, &deep_infection},
      RedFlag{"alert.deep_wound", true, &deep_wound},
      RedFlag{"alert.df_infect", true, &infected_foot},
      RedFlag{"alert.charcot", true, &collapsing_foot},
      RedFlag{"alert.clti", true, &lasting_ischaemia},
      RedFlag{"alert.foot_drop_new", true, &new_foot_drop},
      RedFlag{"alert.bone_stress_hip", true, &hip_bone_stress},
      RedFlag{"alert.bone_stress", true, &bone_stress},
      RedFlag{"alert.ddh_late", true, &late_dislocation},
      RedFlag{"alert.joints_stiff", false, &joints_stiff},
      RedFlag{"alert.bleeding", true, &bleeding_now},
      RedFlag{"alert.fracture", true, &broken_bone},
      RedFlag{"alert.pelvic_fx", false, &broken_pelvis},
      RedFlag{"alert.acutely_ill", false, &acutely_ill_at_any_age},
      RedFlag{"alert.not_put_back", true, &not_put_back},
  };
  return flags;
}

bool calls_staff(const reference::Edition& edition, const model::ItemId& item, const model::Value& value) {
  const auto* temperature = std::get_if<model::Temperature>(&value);
  if (item.text == "general.temperature" && temperature != nullptr && temperature->cel && temperature->cel->steps >= fever_tenths) {
    return true;
  }
  const auto* answer = std::get_if<model::Answer>(&value);
  if (answer == nullptr || answer->answer != model::AnswerWord::yes) {
    return false;
  }
  const auto rows = edition.alerts();
  return std::any_of(rows.begin(), rows.end(), [&](const reference::AlertRow& row) {
    return std::find(row.tell_staff.begin(), row.tell_staff.end(), item) != row.tell_staff.end();
  });
}

}  // namespace limbledger::interpret
