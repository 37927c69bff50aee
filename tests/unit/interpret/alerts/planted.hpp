// Planted dangers: what is told and found one after the other, the last of which settles the alert. People and findings are invented.
#pragma once

#include "tests/unit/interpret/alerts/story.hpp"

#include <string>
#include <vector>

namespace limbledger::interpret_test {

struct Planted {
  std::string alert;
  std::string complaint;
  int born = 1980;
  std::vector<std::string> answers;  // in their order; the last one settles it
  bool interrupts = true;
  bool prompt = false;               // a referral, no alert
};

inline Bench tell_first(const Planted& one, std::size_t count) {
  Bench bench = visit(one.complaint, one.born);
  for (std::size_t i = 0; i < count; ++i) {
    tell(bench, one.answers[i]);
  }
  return bench;
}
inline bool stands(const Bench& bench, const Planted& one) { return one.prompt ? referred(bench, one.alert) : raised(bench, one.alert); }

inline const std::vector<Planted>& planted() {
  static const std::vector<Planted> all{
      {"open_fx", "acute_knee", 1990, {"history.mechanism vehicle", "knee.look_deformity left no", "knee.look_open_wound left yes", "knee.bone_tender_elsewhere left yes"}},
      {"knee_disloc_vasc", "acute_knee", 1990, {"history.mechanism hyperextension", "knee.effusion_stroke left trace", "knee.bruising left yes"}},
      {"acs", "acute_knee", 1990, {"history.mechanism direct_blow", "knee.stretch_pain_calf left yes", "history.pain_out_of_proportion left yes"}},
      {"ali", "calf_pain", 1950, {"history.weeks_since_onset 0", "vessel.foot_cold left yes", "nerve.sensation_foot_reduced left yes"}},
      {"dislocation", "acute_knee", 2008, {"history.mechanism twist", "history.swelling_onset left within_2h", "knee.look_patella_height left laterally_displaced"}},
      {"hip_disloc", "hip_after_fall", 1985, {"history.mechanism vehicle", "vessel.foot_cold left no", "hip.leg_attitude left attitude_bent_turned_in"}},
      {"ankle_disloc", "ankle_injury", 1985, {"history.mechanism jump_or_landing", "ankle.look_deformity left yes", "ankle.movement left no"}},
      {"nsti", "wound_or_numb_foot", 1975, {"skin.ulcer left no", "skin.redness_spreading left yes", "skin.numb_patch left yes"}},
      {"df_infect", "diabetic_foot", 1960, {"history.diabetes yes", "skin.ulcer left yes", "skin.infection_signs left sign_redness+sign_pus", "general.pulse_rate 104", "general.temperature 388"}},
      {"ces", "back_leg", 1975, {"history.back_pain yes", "history.pain_below_knee left yes", "history.saddle_numbness yes"}},
      {"septic_adult", "chronic_knee", 1955, {"history.mechanism no_injury", "history.weeks_since_onset 0", "knee.look_skin_hot_red left yes", "knee.joint_line_medial_tender left yes",
                                             "knee.flexion_passive left pain", "general.temperature 392", "history.unwell yes"}},
      {"septic_child", "limping_child", 2024, {"history.mechanism no_injury", "hip.leg_not_moved left yes", "general.temperature 389"}},
      {"dvt", "calf_pain", 1970, {"leg.calf_swelling left yes", "history.examiner_suspects_clot yes", "history.breathless yes"}},
      {"scfe", "chronic_knee", 2013, {"history.mechanism no_injury", "hip.turns_out_in_flexion left positive", "gait.steps_now 0"}},
      {"tumour", "free", 1960, {"history.cancer_known yes", "history.fracture_minimal_force left yes"}, false},
      {"bleeding", "acute_knee", 1990, {"history.mechanism vehicle", "vessel.bleeding_active left yes"}, false},
      {"pelvic_fx", "hip_after_fall", 1990, {"history.mechanism vehicle", "pelvis.injury_deformity yes"}, false},
      {"fracture", "free", 1990, {"history.mechanism vehicle", "leg.look_deformity left yes"}, false},
      {"deep_wound", "free", 1960, {"skin.ulcer left no", "skin.deep_wound left wound_sting_or_snake"}, false},
      // The same day, and within two weeks: those that this file's neighbours added.
      {"charcot", "diabetic_foot", 1960, {"body.feeling_lost left yes", "foot.hot_red_swollen left yes"}, false},
      {"clti", "wound_or_numb_foot", 1950, {"history.rest_pain_over_2_weeks left yes", "vessel.pulse_dorsalis_pedis left 0", "vessel.pulse_posterior_tibial left 0"}, false},
      {"foot_drop_new", "back_leg", 1970, {"nerve.foot_drop left yes", "history.foot_drop_new left yes"}, false},
      {"bone_stress_hip", "hip_groin", 2000, {"history.exertional_groin_pain left yes", "history.load_changed yes"}, false},
      {"bone_stress", "forefoot_pain", 2000, {"history.mechanism no_injury", "foot.metatarsal_third_tender left yes", "history.fever no", "history.load_changed yes"}, false, true},
      {"ddh_late", "infant_hip", 2025, {"hip.abduction_passive_flexed right 80", "hip.abduction_passive_flexed left 50"}, false, true},
      {"joints_stiff", "free", 1980, {"history.joints_several yes", "history.weeks_since_onset 6", "history.morning_stiffness_minutes 60"}, false, true},
      {"acutely_ill", "chronic_knee", 1975, {"history.mechanism no_injury", "general.blood_pressure_systolic 84", "general.temperature 394"}},
  };
  return all;
}

}  // namespace limbledger::interpret_test
