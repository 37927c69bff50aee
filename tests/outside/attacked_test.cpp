// What an attack on the judgement found, each kept as the right answer. Invented people; the day is 2026-11-24. Sources: red flags page,
// sections 3, 5 and 7; decision rules page, sections 3, 7, 8 and 17; clinical safety, parts B and C13.
#include "tests/outside/knee_document.hpp"

#include <algorithm>

using namespace limbledger;
using tests::KneeVisit;

namespace {

[[nodiscard]] KneeVisit visit_for(const std::string& complaint, const std::string& born) {
  KneeVisit visit;
  visit.complaint = complaint;
  visit.born = born;
  visit.injured_on = "";
  visit.setting = "outreach";
  return visit;
}

[[nodiscard]] std::string urgency_of(const KneeVisit& visit, const std::string& name) {
  for (const interpret::Alert& one : visit.assess().alerts) {
    if (one.alert.text == "alert." + name) {
      return one.urgency == interpret::Urgency::now ? "now" : "same_day";
    }
  }
  return "none";
}

}  // namespace

TEST_CASE("a cold foot without both pulses is called for now at any complaint, whatever was not asked; weeks of pain at rest are another trouble") {
  for (const char* complaint : {"swollen_legs", "free", "acute_knee", "heel_pain", "calf_pain"}) {
    CAPTURE(complaint);
    KneeVisit visit = visit_for(complaint, "1956-01-01");
    visit.add_all("vessel.foot_cold left answer:yes;vessel.pulse_dorsalis_pedis left grade:0");
    CHECK(urgency_of(visit, "ali") != "now");
    visit.add_all("vessel.pulse_posterior_tibial left grade:0");
    CHECK(urgency_of(visit, "ali") == "now");
    if (std::string(complaint) == "swollen_legs") {
      // How long the complaint has lasted is not how long the foot has been so.
      visit.add_all("history.weeks_since_onset midline count:9");
      CHECK(urgency_of(visit, "ali") == "now");
      visit.add_all("history.rest_pain_over_2_weeks left answer:yes");
      CHECK(urgency_of(visit, "ali") == "none");
    }
  }
}

TEST_CASE("a knee that was out of joint is not left to wait on a pressure that the cuff cannot press: a ratio above 1.40 says nothing") {
  KneeVisit visit = visit_for("acute_knee", "1990-01-01");
  visit.injured_on = "2026-11-24";
  visit.add_all("history.knee_dislocated left answer:yes;vessel.foot_cold left answer:no");
  for (const char* side : {"left", "right"}) {
    visit.add_all(std::string("vessel.pulse_dorsalis_pedis ") + side + " grade:2;vessel.pulse_posterior_tibial " + side + " grade:2");
  }
  const auto pressure = [&](const std::string& item, const std::string& side, int mm_hg) {
    visit.now.push_back(R"({"item":")" + item + R"(","side":")" + side + R"(","value":{"kind":"pressure","mm_hg":)" + std::to_string(mm_hg) + R"(},"instrument":"doppler","position":"supine"})");
  };
  pressure("vessel.pressure_arm", "left", 130);
  pressure("vessel.pressure_arm", "right", 130);
  KneeVisit yields = visit;
  pressure("vessel.pressure_posterior_tibial", "left", 190);
  CHECK(urgency_of(visit, "knee_disloc_vasc") == "now");
  std::swap(visit, yields);
  pressure("vessel.pressure_posterior_tibial", "left", 130);
  CHECK(urgency_of(visit, "knee_disloc_vasc") == "same_day");
}

TEST_CASE("feet with dead tissue or hot and swollen have no category to wait in") {
  for (const char* found : {"skin.gangrene left choice:gangrene_wet", "skin.black_toe left answer:yes", "foot.hot_red_swollen right answer:yes", "skin.redness_spreading left answer:yes"}) {
    KneeVisit visit = visit_for("diabetic_foot", "1966-01-01");
    visit.complained_of = "";
    visit.add_all("history.diabetes midline answer:yes;history.kidney_failure midline answer:no");
    for (const std::string side : {"left", "right"}) {
      visit.add_all("skin.ulcer " + side + " answer:no;foot.deformity " + side + " answer:no;history.foot_ulcer_before " + side + " answer:no;history.amputation_before " + side +
                    " answer:no;vessel.pulse_dorsalis_pedis " + side + " grade:2;vessel.pulse_posterior_tibial " + side + " grade:2;nerve.monofilament_great_toe " + side +
                    " count:3;nerve.monofilament_metatarsal_head_1 " + side + " count:3;nerve.monofilament_metatarsal_head_5 " + side + " count:3");
    }
    const interpret::RuleResult whole = visit.rule("foot_category", model::Side::midline);
    CHECK(whole.band == std::optional(model::Word{"category_0"}));
    visit.add_all(found);
    CAPTURE(found);
    const interpret::RuleResult rule = visit.rule("foot_category", model::Side::midline);
    CHECK(rule.outcome == interpret::Outcome::not_applicable);
    CHECK(rule.gate == std::optional(model::Word{"active_foot"}));
    CHECK_FALSE(rule.band);
  }
}

TEST_CASE("an ankle that was found numb when it was tested leaves a no to its bones unsettled") {
  for (const char* found : {"nerve.monofilament_great_toe left count:0", "nerve.sensation_foot_reduced left answer:yes"}) {
    KneeVisit visit = visit_for("ankle_injury", "1976-01-01");
    visit.injured_on = "2026-11-23";
    visit.add_all(
        "history.ankle_rule_exclusions midline choices:none_of_these;ankle.pain_malleolar_zone left answer:yes;ankle.lateral_malleolus_tender left answer:no;"
        "ankle.medial_malleolus_tender left answer:no;history.steps_at_once midline answer:yes;gait.steps_now midline count:4");
    CHECK(visit.rule("ottawa_ankle").outcome == interpret::Outcome::negative);
    visit.add_all(found);
    CAPTURE(found);
    CHECK(visit.rule("ottawa_ankle").outcome == interpret::Outcome::undetermined);
  }
}

TEST_CASE("a hot, full, stiff knee with a fever is raised though nobody pressed on its joint line") {
  KneeVisit visit = visit_for("chronic_knee", "1959-01-01");
  visit.add_all(
      "knee.look_skin_hot_red left answer:yes;knee.effusion_stroke left grade:3+;general.temperature midline cel:39.5;history.fever midline answer:yes;"
      "knee.flexion_active left 20 goniometer_long;history.weeks_since_onset midline count:0;history.mechanism midline choice:no_injury");
  CHECK(urgency_of(visit, "septic_adult") != "none");
}

// Decision rules page, section 24, example 11: "DP absent, PT normal, same foot: no PAD flag; Doppler advised".
TEST_CASE("one dorsal pulse that is lost in a warm foot flags no lack of blood, hurt or not, and the Doppler is asked for") {
  for (const bool hurt : {false, true}) {
    CAPTURE(hurt);
    KneeVisit visit = visit_for(hurt ? "ankle_injury" : "chronic_knee", "1958-01-01");
    visit.injured_on = hurt ? "2026-11-23" : "";
    visit.add_all(std::string("history.mechanism midline choice:") + (hurt ? "twist" : "no_injury") +
                  ";vessel.pulse_dorsalis_pedis left grade:0;vessel.pulse_posterior_tibial left grade:2;vessel.pulse_dorsalis_pedis right grade:2;"
                  "vessel.pulse_posterior_tibial right grade:2;vessel.foot_cold left answer:no;nerve.sensation_foot_reduced left answer:no;ankle.movement left answer:yes");
    CHECK(urgency_of(visit, "ali") == "none");
    CHECK(urgency_of(visit, "clti") == "none");
    const auto questions = visit.assess().questions;
    CHECK(std::any_of(questions.begin(), questions.end(), [](const interpret::Question& one) {
      return std::any_of(one.ask.begin(), one.ask.end(), [](const interpret::Ask& ask) { return ask.item.text == "vessel.doppler_arterial_audible"; });
    }));
  }
}

// Red flags page, section 10: "likely or undetermined: raised; unlikely: raised at lower tier (D-dimer)"; NICE_NG158: a positive D-dimer is scanned.
TEST_CASE("a clot that nobody suspects is looked for beside a swollen calf and a positive D-dimer") {
  KneeVisit visit = visit_for("calf_pain", "1986-01-01");
  visit.add_all("history.mechanism midline choice:no_injury;leg.calf_swelling left answer:yes;leg.calf_tender_vein left answer:yes;history.examiner_suspects_clot midline answer:no");
  CHECK(urgency_of(visit, "dvt") == "none");
  visit.add_all("general.lab_d_dimer midline choice:lab_positive");
  CHECK(urgency_of(visit, "dvt") == "same_day");
}
