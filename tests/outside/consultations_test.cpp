// The consultations S01 to S09 of clinical safety, part F, each as one document judged by the built-in edition: what is expected, and
// what must not appear in the assessment or on the page. Invented people; the day is 2026-11-24. What a form, a letter or the ledger
// has to do with them is tested with those.
#include "tests/outside/knee_document.hpp"

#include "core/report/page.hpp"
#include "core/report/words/words.hpp"
#include "core/wire/write.hpp"

using namespace limbledger;
using tests::KneeVisit;

namespace {

using model::Side;

struct Seen {
  interpret::Assessment assessment;
  std::string page;

  [[nodiscard]] const interpret::Alert* alert(const std::string& name, std::optional<Side> side = Side::left) const {
    for (const interpret::Alert& one : assessment.alerts) {
      if (one.alert.text == "alert." + name && (!one.side || one.side == side)) {
        return &one;
      }
    }
    return nullptr;
  }
  [[nodiscard]] bool asks(const std::string& name) const {
    return std::any_of(assessment.questions.begin(), assessment.questions.end(), [&](const auto& one) { return one.question.text == "alert." + name; });
  }
  [[nodiscard]] const interpret::RuleResult* rule(const std::string& name, Side side = Side::left) const {
    for (const interpret::RuleResult& one : assessment.rules) {
      if (one.rule.text == "rule." + name && one.side == side) {
        return &one;
      }
    }
    return nullptr;
  }
  [[nodiscard]] bool refers(const std::string& name) const {  // a prompt of two weeks
    return std::any_of(assessment.statements.begin(), assessment.statements.end(), [&](const auto& one) { return one.statement.text.starts_with("referral." + name); });
  }
  [[nodiscard]] std::size_t interrupting() const {
    return static_cast<std::size_t>(std::count_if(assessment.alerts.begin(), assessment.alerts.end(), [](const auto& one) { return one.interrupts; }));
  }
  [[nodiscard]] std::size_t pinned() const { return assessment.alerts.size() + assessment.questions.size(); }
  [[nodiscard]] bool says(const std::string& text) const { return page.find(text) != std::string::npos; }
};

[[nodiscard]] Seen see(const KneeVisit& visit) {
  service::Context context;
  context.edition = reference::built_in_edition();
  const auto params = wire::read_text<service::DocumentAssessParams>(visit.json(R"(,"confirmed":["value.unusual","finding.contradicts","item.withheld"])"));
  REQUIRE_MESSAGE(params.has_value(), (params ? std::string() : params.error().faults.front().code + params.error().faults.front().path));
  const auto assessment = service::document_assess(context, *params);
  REQUIRE_MESSAGE(assessment.has_value(), (assessment ? std::string() : assessment.error().faults.front().code + assessment.error().faults.front().path));
  const auto checked = service::check_document(*context.edition, params->document, params->confirmed);
  REQUIRE(checked.has_value());
  return {*assessment, report::exam_page(checked->exam, checked->person, *assessment, *report::built_in_words(), *context.edition, {})};
}

[[nodiscard]] KneeVisit visit_of(const std::string& complaint, const std::string& born, const std::string& sex, const std::string& injured_on = "") {
  KneeVisit visit;
  visit.complaint = complaint;
  visit.born = born;
  visit.sex = sex;
  visit.injured_on = injured_on;
  visit.setting = "outreach";
  return visit;
}

// What C2 asks of an ordinary visit.
void nobody_is_interrupted(const Seen& seen) {
  CAPTURE(wire::write(seen.assessment.questions));
  CAPTURE(wire::write(seen.assessment.alerts));
  CHECK(seen.interrupting() == 0);
  CHECK(seen.pinned() <= 2);
}

}  // namespace

TEST_CASE("S01: an ankle that was twisted and walks, only the front ligament tender") {
  KneeVisit visit = visit_of("ankle_injury", "1998-02-03", "female", "2026-11-23");
  visit.add_all(
      "history.mechanism midline choice:twist;history.ankle_rule_exclusions midline choices:none_of_these;ankle.pain_malleolar_zone left answer:yes;"
      "ankle.lateral_malleolus_tender left answer:no;ankle.medial_malleolus_tender left answer:no;foot.pain_midfoot_zone left answer:no;"
      "foot.fifth_metatarsal_base_tender left answer:no;foot.navicular_tender left answer:no;history.steps_at_once midline answer:yes;"
      "gait.steps_now midline count:4;ankle.atfl_tender left answer:yes;body.pregnancy midline answer:no;"
      "ankle.look_deformity left answer:no;history.pain_out_of_proportion left answer:no;knee.stretch_pain_calf left answer:no;vessel.foot_cold left answer:no;"
      "vessel.pulse_dorsalis_pedis left grade:2;vessel.pulse_posterior_tibial left grade:2;leg.fibular_neck_tender left answer:no");
  const Seen open = see(visit);
  nobody_is_interrupted(open);
  REQUIRE(open.rule("ottawa_ankle") != nullptr);
  CHECK(open.rule("ottawa_ankle")->outcome == interpret::Outcome::negative);
  CHECK(open.says("Film not required"));
  CHECK_FALSE(open.says("no fracture"));
}

TEST_CASE("S01: a man of 61 whose hip hurts at night when he lies on it: no road for cancer, no film asked for") {
  KneeVisit visit = visit_of("hip_groin", "1965-03-01", "male");
  visit.add_all(
      "history.pain_with_use left answer:yes;history.pain_most_days left answer:yes;history.morning_stiffness_minutes midline count:15;history.night_pain midline answer:yes;"
      "history.night_pain_relieved_by_turning midline answer:yes;history.night_pain_getting_worse midline answer:no;history.pain_lying_on_side left answer:yes;"
      "history.weight_loss midline answer:no;history.fever midline answer:no;history.mechanism midline choice:no_injury;history.rapid_worsening midline answer:no;"
      "history.cancer_known midline answer:no;hip.internal_rotation_passive_seated left 18 goniometer_long;hip.internal_rotation_passive_seated right 32 goniometer_long;"
      "gait.steps_now midline count:4");
  const Seen seen = see(visit);
  nobody_is_interrupted(seen);
  CHECK_FALSE(seen.refers("tumour"));
  CHECK(seen.alert("tumour") == nullptr);
  REQUIRE(seen.rule("nice_oa") != nullptr);
  CHECK(seen.rule("nice_oa")->outcome == interpret::Outcome::positive);
}

TEST_CASE("S01: a calf strained in a game, pain on stretch: at risk is asked once, answered no, then it is quiet") {
  KneeVisit visit = visit_of("calf_pain", "1990-05-05", "male", "2026-11-24");
  visit.add_all(
      "history.mechanism midline choice:jump_or_landing;leg.stretch_pain_back left answer:yes;history.pain_out_of_proportion left answer:no;leg.calf_swelling left answer:no;"
      "leg.gastrocnemius_medial_tender left answer:yes;ankle.calf_squeeze left grade:full;ankle.achilles_gap left answer:no;gait.steps_now midline count:4");
  const Seen asked = see(visit);
  CHECK(asked.interrupting() == 0);
  CHECK(asked.alert("acs") == nullptr);
  CHECK(asked.asks("acs"));
  visit.add_all("history.injury_severe_or_crush midline answer:no;history.compartment_causes left choices:none_of_these");
  const Seen quiet = see(visit);
  nobody_is_interrupted(quiet);
  CHECK_FALSE(quiet.asks("acs"));
  CHECK(quiet.alert("dvt") == nullptr);
}

TEST_CASE("S01: both calves sore after running up a hill, no pain of the back: nothing") {
  KneeVisit visit = visit_of("calf_pain", "1994-05-05", "female");
  visit.complained_of = "";
  visit.add_all(
      "history.mechanism midline choice:no_injury;history.leg_pain_both midline answer:yes;history.back_pain midline answer:no;history.load_changed midline answer:yes;"
      "leg.calf_swelling left answer:no;leg.calf_swelling right answer:no;history.pain_out_of_proportion left answer:no;history.pain_out_of_proportion right answer:no;"
      "leg.gastrocnemius_medial_tender left answer:yes;leg.gastrocnemius_medial_tender right answer:yes;gait.steps_now midline count:4;"
      "knee.stretch_pain_calf left answer:no;knee.stretch_pain_calf right answer:no;vessel.foot_cold left answer:no;vessel.foot_cold right answer:no;"
      "vessel.pulse_dorsalis_pedis left grade:2;vessel.pulse_dorsalis_pedis right grade:2;vessel.pulse_posterior_tibial left grade:2;"
      "vessel.pulse_posterior_tibial right grade:2;ankle.calf_squeeze left grade:full;ankle.calf_squeeze right grade:full;ankle.achilles_gap left answer:no;"
      "ankle.achilles_gap right answer:no");
  const Seen seen = see(visit);
  nobody_is_interrupted(seen);
  CHECK(seen.assessment.alerts.empty());
  CHECK_FALSE(seen.asks("ces"));
}

TEST_CASE("S02: five months, breech, one hip abducts less and one knee is lower: the late dislocation, and no figure of older people") {
  KneeVisit visit = visit_of("infant_hip", "2026-06-20", "female");
  visit.add_all(
      "history.birth_presentation midline choice:birth_breech;hip.abduction_passive_flexed left 50 goniometer_long;hip.abduction_passive_flexed right 75 goniometer_long;"
      "hip.knee_height_lower left test:positive;general.temperature midline cel:36.8;history.unwell midline answer:no");
  const Seen seen = see(visit);
  CHECK(seen.refers("ddh_late"));
  for (const interpret::Step& step : seen.assessment.steps) {
    CHECK(step.step.text != "hip.barlow");
  }
  CHECK_FALSE(seen.says("Within the reference interval"));
  CHECK_FALSE(seen.says("stretch"));
}

TEST_CASE("S03: bow legs at 22 months, alike on both sides, without pain: no flag is raised and nobody is sent anywhere") {
  KneeVisit visit = visit_of("child_alignment", "2025-01-20", "male");
  visit.complained_of = "";
  visit.add_all(
      "knee.intercondylar_distance_supine midline mm:30;history.walking_age_months midline count:12;history.growth midline choice:growth_as_siblings;"
      "history.night_pain midline answer:no;gait.limp midline answer:no;history.mechanism midline choice:no_injury");
  const Seen seen = see(visit);
  nobody_is_interrupted(seen);
  CHECK(seen.assessment.alerts.empty());
  CHECK_FALSE(seen.refers("limp_child"));
}

TEST_CASE("S04: thirty weeks, one calf 25 mm thicker: the way for a clot the same day and no points") {
  KneeVisit visit = visit_of("posterior_hip", "1995-01-01", "female");
  visit.exam_more = R"(,"who_spoke":{"who":"husband","reliable":"unsure"},"company":{"others":["husband"]})";
  visit.add_all(
      "body.pregnancy midline answer:yes;body.pregnancy_weeks midline count:30;leg.calf_girth_10cm left mm:385;leg.calf_girth_10cm right mm:360;"
      "leg.calf_swelling left answer:yes;history.mechanism midline choice:no_injury");
  const Seen seen = see(visit);
  REQUIRE(seen.alert("dvt") != nullptr);
  CHECK(seen.alert("dvt")->urgency == interpret::Urgency::same_day);
  if (const interpret::RuleResult* wells = seen.rule("wells_dvt")) {
    CHECK(wells->outcome == interpret::Outcome::not_applicable);
    CHECK(wells->gate == std::optional(model::Word{"pregnancy"}));
  }
  CHECK_FALSE(seen.says("unlikely"));
}

TEST_CASE("S05: a woman of 84 with a sore knee after a fall cannot stand, her hip hurts when it is turned: the hip the same day, above the knee") {
  KneeVisit visit = visit_of("acute_knee", "1942-02-02", "female", "2026-11-22");
  visit.exam_more = R"(,"who_spoke":{"who":"daughter","reliable":"unsure"})";
  visit.add_all(
      "history.fall_or_blow midline answer:yes;history.memory_poor midline answer:yes;history.blood_thinners midline answer:yes;history.steps_at_once midline answer:no;"
      "gait.steps_now midline count:0;knee.bruising left answer:yes;hip.log_roll left test:positive;knee.flexion_active left 100 goniometer_long");
  const Seen seen = see(visit);
  const interpret::Alert* hip = seen.alert("hip_fx_old");
  REQUIRE(hip != nullptr);
  CHECK(hip->urgency == interpret::Urgency::same_day);
  CHECK(seen.assessment.alerts.front().alert.text != "alert.ext_mech");
  for (const interpret::Step& step : seen.assessment.steps) {
    CHECK(step.step.text != "hip.fadir");
    CHECK(step.step.text != "hip.extension_passive_thomas");
  }
  CHECK(seen.page.find("hip") < seen.page.find("Ottawa knee rule"));
}

TEST_CASE("S06: sore at the side of the hip, declines to undress, her son of 12 interprets: no band, and his no settles nothing") {
  KneeVisit visit = visit_of("lateral_hip", "1981-01-01", "female");
  visit.exam_more = R"more(,"interpreter":{"kind":"child","name":"her son (invented)"})more";
  visit.add_all(
      "hip.trochanter_tender left not:declined;hip.trendelenburg left not:declined;hip.internal_rotation_passive_seated left 30 goniometer_long;"
      "hip.internal_rotation_passive_seated right 31 goniometer_long;history.pain_lying_on_side left answer:yes");
  const Seen seen = see(visit);
  CHECK(seen.interrupting() == 0);
  CHECK(seen.assessment.hypotheses.empty());
  CHECK_FALSE(seen.says("must"));
}

TEST_CASE("S09: treated for leprosy, an ulcer of the sole, a new foot drop, a warm midfoot, not diabetic: each is raised without diabetes") {
  KneeVisit visit = visit_of("wound_or_numb_foot", "1976-01-01", "female");
  visit.complained_of = "right";
  visit.add_all(
      "history.leprosy midline answer:yes;history.diabetes midline answer:no;body.feeling_lost right answer:yes;skin.ulcer right answer:yes;history.foot_drop_new right answer:yes;"
      "foot.hot_red_swollen right answer:yes;vessel.foot_warm right answer:yes;skin.infection_signs right choices:sign_warmth;history.mechanism midline choice:no_injury");
  const Seen seen = see(visit);
  CHECK(seen.alert("charcot", Side::right) != nullptr);
  CHECK(seen.alert("foot_drop_new", Side::right) != nullptr);
  for (const interpret::RuleResult& rule : seen.assessment.rules) {
    CHECK(rule.band != std::optional(model::Word{"category_0"}));
  }
  CHECK_FALSE(seen.says("routine"));
  for (const interpret::Step& step : seen.assessment.steps) {
    CHECK(step.step.text.find("heel_rise") == std::string::npos);
  }
}
