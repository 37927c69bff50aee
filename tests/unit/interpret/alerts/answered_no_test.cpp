// A danger is answered no only where what it rests on is a no that counts. What was found of it, or of a danger of its kind, leaves it
// open, and both are named. Our own rules, after clinical safety C3, C7 and C13 and the red flags page (sections 5, 8, 21, 22).
#include "tests/unit/interpret/alerts/story.hpp"

#include <algorithm>
#include <string>
#include <vector>

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

// The items that the flag of the left side names.
std::vector<std::string> named(const Bench& bench, const std::string& name) {
  std::vector<std::string> items;
  for (const auto& one : bench.assess().flags) {
    if (one.flag.text != "alert." + name || (one.side && *one.side != Side::left)) {
      continue;
    }
    for (const auto& id : one.findings) {
      for (const auto& finding : *bench.exam.findings) {
        if (finding.finding == id) {
          items.push_back(finding.item.text);
        }
      }
    }
  }
  std::sort(items.begin(), items.end());
  return items;
}

}  // namespace

TEST_CASE("C7: df_infect: a small redness whose depth nobody saw is not mild: it is acted on as the deeper one, the same day") {
  const std::string sore = "history.diabetes yes; skin.ulcer left yes; skin.infection_signs left sign_redness+sign_warmth; skin.redness_margin left 11;";
  Bench bench = visit("diabetic_foot", 1958, sore + "skin.ulcer_depth left depth_not_seen");
  CHECK(line_of(bench, "df_infect") == "depth_open");
  CHECK(alert(bench, "df_infect")->urgency == interpret::Urgency::same_day);
  CHECK(line_of(visit("diabetic_foot", 1958, sore), "df_infect") == "depth_open");
  tell(bench, "skin.ulcer_depth left depth_under_skin");
  CHECK(line_of(bench, "df_infect") == "mild");  // skin and what lies under it: IWGDF_IDSA_DFI
  tell(bench, "skin.ulcer_depth left depth_tendon_or_capsule");
  CHECK(line_of(bench, "df_infect") == "moderate");
}

TEST_CASE("hip_disloc: a leg that lies in another way than even is no proof of a no; even legs are") {
  for (const char* lies : {"attitude_short_turned_out", "attitude_turned_out", "attitude_short", "attitude_held_bent", "attitude_other"}) {
    CAPTURE(lies);
    const Bench bench = visit("hip_after_fall", 1942, std::string("history.fall_recent yes; hip.leg_attitude left ") + lies);
    CHECK(flag(bench, "hip_disloc") == "cannot_answer");
    CHECK(named(bench, "hip_disloc") == std::vector<std::string>{"hip.leg_attitude"});
    CHECK_FALSE(raised(bench, "hip_disloc"));
  }
  CHECK(flag(visit("hip_after_fall", 1942, "history.fall_recent yes; hip.leg_attitude left attitude_even"), "hip_disloc") == "asked_no");
}

TEST_CASE("hip_disloc: legs that lie even are no answer in an infant while a hip that never was in place is raised, or open") {
  Bench bench = visit("infant_hip", 2026, "hip.leg_attitude left attitude_even; hip.knee_height_lower left positive");
  CHECK(referred(bench, "ddh_late"));
  CHECK(flag(bench, "hip_disloc") == "cannot_answer");
  CHECK(named(bench, "hip_disloc") == std::vector<std::string>{"hip.knee_height_lower", "hip.leg_attitude"});
  tell(bench, "hip.knee_height_lower left negative");
  CHECK(flag(bench, "hip_disloc") == "cannot_answer");  // how far it opens is not measured
}

TEST_CASE("joint_over_2_weeks: a swollen joint is no no by its cool skin and short stiffness, and one that nobody looked at is asked for") {
  Bench bench = sore_knee();
  tell(bench, "history.weeks_since_onset 160; knee.look_skin_hot_red left no; history.morning_stiffness_minutes 15");
  CHECK(flag(bench, "joint_over_2_weeks") == "not_asked");
  tell(bench, "knee.effusion_stroke left 1+");
  CHECK(flag(bench, "joint_over_2_weeks") == "cannot_answer");
  CHECK(named(bench, "joint_over_2_weeks") == std::vector<std::string>{"history.morning_stiffness_minutes", "knee.effusion_stroke", "knee.look_skin_hot_red"});
  CHECK_FALSE(referred(bench, "joint_over_2_weeks"));
  tell(bench, "knee.effusion_stroke left 0");
  CHECK(flag(bench, "joint_over_2_weeks") == "asked_no");
}

TEST_CASE("joints_stiff: several joints that are stiff for minutes only are found, and not answered no") {
  Bench bench = sore_knee();
  tell(bench, "history.weeks_since_onset 10; history.joints_several yes; history.morning_stiffness_minutes 15");
  CHECK(flag(bench, "joints_stiff") == "cannot_answer");
  CHECK(named(bench, "joints_stiff") == std::vector<std::string>{"history.joints_several", "history.morning_stiffness_minutes"});
}

TEST_CASE("C3: tumour: pain at night that turning relieves is not raised, and no no until its explanation was answered") {
  Bench bench = sore_knee();
  tell(bench, "history.night_pain yes; history.night_pain_relieved_by_turning yes; history.night_pain_getting_worse no; history.weight_loss no; history.cancer_known no");
  CHECK_FALSE(referred(bench, "tumour"));
  CHECK(flag(bench, "tumour") == "cannot_answer");
  CHECK(named(bench, "tumour").front() == "history.cancer_known");
  const auto items = named(bench, "tumour");
  CHECK(std::find(items.begin(), items.end(), "history.night_pain") != items.end());
  CHECK_FALSE(question(bench, "tumour"));
  tell(bench, "history.bone_pain_unexplained left no");
  CHECK(flag(bench, "tumour") == "asked_no");
  tell(bench, "history.night_pain no");
  CHECK(flag(bench, "tumour") == "asked_no");
}

TEST_CASE("C13: clti: one full pulse beside one that is not, or that nobody felt, is no no; both full are") {
  Bench bench = visit("diabetic_foot", 1958, "history.diabetes yes; skin.ulcer left yes; vessel.pulse_posterior_tibial left 2; vessel.pulse_dorsalis_pedis left 1");
  CHECK(flag(bench, "clti") != "asked_no");
  CHECK(named(bench, "clti") == std::vector<std::string>{"vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial"});
  tell(bench, "history.rest_pain_over_2_weeks left no; history.foot_ulcer_over_2_weeks left yes");
  CHECK(flag(bench, "clti") == "cannot_answer");
  CHECK_FALSE(raised(bench, "clti"));
  CHECK(flag(visit("diabetic_foot", 1958, "vessel.pulse_posterior_tibial left 2"), "clti") != "asked_no");
  tell(bench, "vessel.pulse_dorsalis_pedis left 2");
  CHECK(flag(bench, "clti") == "asked_no");
}

TEST_CASE("charcot: a foot told not to be hot, with redness and warmth seen at its sore, is not answered no") {
  Bench bench = visit("diabetic_foot", 1958, "history.diabetes yes; body.feeling_lost left yes; foot.hot_red_swollen left no; skin.infection_signs left sign_redness+sign_warmth");
  CHECK(flag(bench, "charcot") == "cannot_answer");
  CHECK(named(bench, "charcot") == std::vector<std::string>{"foot.hot_red_swollen", "skin.infection_signs"});
  CHECK_FALSE(raised(bench, "charcot"));
  tell(bench, "skin.infection_signs left none_of_these");
  CHECK(flag(bench, "charcot") == "asked_no");
}

TEST_CASE("an infant is asked for no filament and for no limp; a foot known to feel nothing, and a leg not moved, count all the same") {
  Bench bench = visit("infant_hip", 2026, "vessel.foot_warm both yes; hip.leg_not_moved both no; history.fever no; history.unwell no");
  CHECK(flag(bench, "charcot") == "no flag");
  CHECK_FALSE(question(bench, "charcot"));
  CHECK(flag(bench, "limp_child") == "no flag");
  tell(bench, "body.feeling_lost left yes");
  CHECK(raised(bench, "charcot"));
  Bench still = visit("infant_hip", 2026, "history.mechanism no_injury; hip.leg_not_moved left yes; history.unwell yes");
  CHECK(flag(still, "limp_child") == "raised");
  CHECK(flag(visit("limping_child", 2020, "gait.limp no; gait.pattern even; gait.steps_now 10"), "limp_child") != "no flag");
}

TEST_CASE("septic_adult: where only the time speaks against it, the skin, the fever and feeling unwell that were asked are named, and it stays open") {
  Bench bench = sore_knee();
  tell(bench, "history.weeks_since_onset 160; knee.effusion_stroke left 1+");
  const std::string before = flag(bench, "septic_adult");
  CHECK(before == "not_asked");
  tell(bench, "history.fever no; history.unwell no; knee.look_skin_hot_red left no");
  CHECK(flag(bench, "septic_adult") == "cannot_answer");
  CHECK(named(bench, "septic_adult") == std::vector<std::string>{"history.fever", "history.unwell", "knee.look_skin_hot_red"});
  CHECK_FALSE(question(bench, "septic_adult"));
}
