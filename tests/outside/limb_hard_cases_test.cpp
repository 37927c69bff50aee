// Hard cases (HC-...) and consultations (S..) of recording and comparing that need the whole limb's items: length, girth, ankle, hip of an
// infant. As documents judged by the built-in edition; invented people; the day is 2026-11-24. What needs a rule or an alert still to
// come is not tested here.
#include "tests/outside/knee_document.hpp"

#include "core/interpret/statement.hpp"
#include "core/report/words/words.hpp"
#include "core/wire/write.hpp"

using namespace limbledger;
using interpret::Verdict;
using tests::KneeVisit;

namespace {

[[nodiscard]] std::string all_of(const KneeVisit& visit) { return tests::unquoted(wire::write(visit.assess())); }
[[nodiscard]] const model::Item& limb_item(const std::string& name) {
  const model::Item* item = reference::built_in_edition()->item(std::string_view(name));
  REQUIRE_MESSAGE(item != nullptr, name);
  return *item;
}

}  // namespace

TEST_CASE("HC-009: girths of two levels are two items: neither is missing, refused, or compared with the other") {
  KneeVisit visit;
  visit.add_all("leg.thigh_girth_10cm right mm:440;leg.thigh_girth_15cm left mm:475");
  CHECK(visit.refusal() == "taken");
  CHECK(all_of(visit).find("missing") != std::string::npos);
  for (const auto& missing : visit.assess().missing) {
    CHECK_FALSE(missing.item.text.starts_with("leg.thigh_girth"));
  }
  // The reason is said, and no difference.
  CHECK(visit.message("measure.girth:leg.thigh_girth_15cm:left") == "msg.measure.girth_level");
  CHECK(all_of(visit).find("difference_mm") == std::string::npos);
  CHECK(limb_item("leg.thigh_girth_10cm").family == limb_item("leg.thigh_girth_15cm").family);
}

TEST_CASE("HC-014: an ankle 10 short with the knee straight and 10 beyond with it bent are two values of two items") {
  const model::Item& straight = limb_item("ankle.dorsiflexion_passive_knee_straight");
  const model::Item& bent = limb_item("ankle.dorsiflexion_passive_knee_bent");
  CHECK_FALSE(straight.item == bent.item);
  KneeVisit visit;
  visit.complaint = "free";
  visit.born = "2018-01-01";
  visit.add("ankle.dorsiflexion_passive_knee_straight right -10 goniometer_long", R"(,"position":")" + straight.positions->front().text + "\"");
  visit.add("ankle.dorsiflexion_passive_knee_bent right 10 goniometer_long", R"(,"position":")" + bent.positions->front().text + "\"");
  CHECK(visit.refusal() == "taken");
  for (const std::string item : {"ankle.dorsiflexion_passive_knee_straight", "ankle.dorsiflexion_passive_knee_bent"}) {
    const auto working = visit.working("motion.norm:" + item + ":right");
    REQUIRE(working.inputs.size() == 1);
    CHECK(working.inputs[0].deg->steps == (item.ends_with("straight") ? -100 : 100));
  }
}

TEST_CASE("HC-015: rotation lying face down and seated are two quantities: no difference between the sides is claimed") {
  KneeVisit visit;
  visit.complaint = "free";
  visit.add("hip.internal_rotation_passive_prone right 40 goniometer_long", R"(,"position":"prone")");
  visit.add("hip.internal_rotation_passive_seated left 25 goniometer_long", R"(,"position":"seated")");
  CHECK(all_of(visit).find("motion.side:hip.internal_rotation") == std::string::npos);
  CHECK(visit.message("motion.unlike:hip.internal_rotation_passive_seated:left") == "msg.motion.unlike");
}

TEST_CASE("HC-023: a very heavy limb: three reasons are kept as three, nothing is made up, and none of them is missing again") {
  KneeVisit visit;
  visit.complaint = "free";
  visit.add_all("leg.length_true left not:not_palpable;knee.lachman left not:cannot_hold;leg.thigh_girth_10cm left not:beyond_instrument");
  CHECK(visit.refusal() == "taken");
  CHECK(all_of(visit).find("laxity.test:knee.lachman:left") == std::string::npos);
}

TEST_CASE("HC-020: at six weeks both hips 20 short of straight, turning 80 outward and 40 inward: no adult's figure, nothing notable") {
  // COON1975: 19 short of straight on the mean at six weeks; the figure is shown beside and judges nothing.
  KneeVisit visit;
  visit.complaint = "infant_hip";
  visit.born = "2026-10-13";
  visit.injured_on.clear();
  for (const std::string side : {"left", "right"}) {
    visit.add("hip.extension_passive_thomas " + side + " -20 goniometer_long");
    visit.add("hip.external_rotation_passive_supine " + side + " 80 goniometer_long");
    visit.add("hip.internal_rotation_passive_supine " + side + " 40 goniometer_long");
  }
  for (const std::string item : {"hip.extension_passive_thomas", "hip.external_rotation_passive_supine", "hip.internal_rotation_passive_supine"}) {
    CHECK(visit.statement("motion.norm:" + item + ":left").verdict == Verdict::no_norm);
    CHECK(visit.statement("motion.norm:" + item + ":right").verdict == Verdict::no_norm);
  }
  for (const auto& statement : visit.assess().statements) {
    CHECK_MESSAGE(statement.grade != interpret::StatementGrade::notable, statement.statement.text);
  }
}

TEST_CASE("HC-055: on tiptoe on both feet, no movement when the calf is squeezed: both are kept, the squeeze stays positive and is asked after by nothing") {
  KneeVisit visit;
  visit.complaint = "calf_pain";
  visit.born = "1982-01-01";
  visit.injured_on = "2026-11-23";
  visit.add_all("ankle.calf_squeeze left grade:absent;ankle.heel_rise_double left choice:rises_both_evenly;history.kick_to_heel_cord left answer:yes");
  CHECK(visit.refusal() == "taken");
  CHECK(visit.assess().contradictions.empty());
  const model::Item& squeeze = limb_item("ankle.calf_squeeze");
  REQUIRE(squeeze.counts.has_value());
  CHECK(squeeze.counts->front().as == model::TestResult::positive);
  CHECK(squeeze.counts->front().grades->front().text == "absent");
  // A heel rise is withheld while a torn heel cord is open; the squeeze and the feeling for a gap are not.
  const auto withheld = [](const std::string& item) {
    const auto by = limb_item(item).withheld_by.value_or(std::vector<model::ConcernId>{});
    return std::any_of(by.begin(), by.end(), [](const model::ConcernId& one) { return one.text == "concern.achilles_rupture"; });
  };
  for (const std::string rise : {"ankle.heel_rise_double", "ankle.heel_rise_single", "ankle.heel_rise_count", "function.heel_rise_count_incline"}) {
    CHECK_MESSAGE(withheld(rise), rise);
  }
  CHECK_FALSE(withheld("ankle.calf_squeeze"));
  const auto* words = report::built_in_words();
  CHECK(words->say("msg.item.ankle_calf_squeeze.care").find("even a heel rise leave a torn cord not excluded") != std::string::npos);
}

TEST_CASE("S02: five months: abduction 50 against 75 meets no figure of older people, differs from the other side, and no step provokes the hip") {
  KneeVisit visit;
  visit.complaint = "infant_hip";
  visit.born = "2026-06-20";
  visit.sex = "female";
  visit.injured_on.clear();
  visit.add("hip.abduction_passive_flexed left 50 goniometer_long");
  visit.add("hip.abduction_passive_flexed right 75 goniometer_long");
  visit.add("hip.knee_height_lower left test:positive");
  CHECK(visit.refusal() == "taken");
  const auto assessment = visit.assess();
  for (const auto& statement : assessment.statements) {
    CHECK_MESSAGE(statement.verdict != Verdict::within, statement.statement.text);
  }
  for (const auto& step : assessment.steps) {
    CHECK(step.step.text != "hip.barlow");
    CHECK(step.step.text != "hip.ortolani");
  }
  for (const auto& missing : assessment.missing) {
    CHECK(missing.item.text != "hip.barlow");
    CHECK(missing.item.text != "hip.ortolani");
  }
  CHECK(visit.has("body.under_one:age:midline"));
  for (const std::string side : {"left", "right"}) {
    CHECK(visit.statement("motion.norm:hip.abduction_passive_flexed:" + side).verdict == Verdict::no_norm);
  }
  const auto difference = visit.statement("motion.side:hip.abduction_passive_flexed:left");
  CHECK(difference.verdict == Verdict::below);
  CHECK(difference.grade == interpret::StatementGrade::notable);
  CHECK(all_of(visit).find("stretch") == std::string::npos);
}

TEST_CASE("S03: bow legs at 22 months: each figure is of the nearest ages with source and span, or there is none; alike on both sides, nothing raised") {
  KneeVisit visit;
  visit.complaint = "child_alignment";
  visit.complained_of.clear();
  visit.born = "2025-01-20";
  visit.injured_on.clear();
  for (const std::string side : {"left", "right"}) {
    visit.add("knee.tibiofemoral_angle_standing " + side + " -3 goniometer_long", R"(,"position":"standing")");
    visit.add("hip.internal_rotation_passive_prone " + side + " 60 goniometer_long", R"(,"position":"prone")");
    visit.add("leg.thigh_foot_angle " + side + " -15 goniometer_long", R"(,"position":"prone")");
  }
  visit.add("gait.foot_progression_angle left -10", R"(,"position":"walking")");
  visit.add_all(
      "knee.intercondylar_distance_standing midline mm:35;history.walking_age_months midline count:12;gait.limp midline answer:no");
  REQUIRE(visit.refusal() == "taken");
  const auto of_ages = [&](const std::string& item, const std::string& row) {
    for (const std::string side : {"left", "right"}) {
      const auto statement = visit.statement("motion.norm:" + item + ":" + side);
      REQUIRE(!statement.rows.empty());
      CHECK(statement.rows.front().text == row);
      CHECK(statement.grade != interpret::StatementGrade::notable);
      CHECK(visit.statement("motion.side:" + item + ":" + side).verdict == Verdict::not_distinguishable);
    }
  };
  of_ages("knee.tibiofemoral_angle_standing", "norm.knee.tibiofemoral_angle.unspecified.any.18-24m.SALENIUS1975");
  of_ages("hip.internal_rotation_passive_prone", "norm.hip.internal_rotation.passive.any.0-1.EORIF_ROT");
  of_ages("leg.thigh_foot_angle", "norm.leg.thigh_foot_angle.passive.any.0-1.EORIF_ROT");
  // A mean of 18 to 24 months without a spread is shown beside and judges nothing.
  CHECK(visit.statement("motion.norm:knee.tibiofemoral_angle_standing:left").verdict == Verdict::no_norm);
  CHECK(visit.message("motion.norm:knee.tibiofemoral_angle_standing:left") == "msg.motion.shown");
  CHECK(visit.message("motion.norm:gait.foot_progression_angle:left") == "msg.motion.no_norm");
  const auto assessment = visit.assess();
  CHECK(assessment.alerts.empty());
  CHECK(assessment.rules.empty());
  // What this complaint must not miss is asked after, once: a hip that opens as the other and knees that stand alike answer it.
  CHECK(assessment.questions.size() == 2);
  for (const auto& question : assessment.questions) {
    CHECK(question.question.text == "alert.ddh_late");  // of either hip: no side is complained of
  }
  for (const std::string side : {"left", "right"}) {
    visit.add("hip.abduction_passive_flexed " + side + " 70 goniometer_long");
    visit.add("hip.knee_height_lower " + side + " test:negative");
  }
  CHECK(visit.assess().questions.empty());
}

TEST_CASE("S03: what grew since the last visit is measured the same way and compared with itself") {
  KneeVisit visit;
  visit.complaint = "child_alignment";
  visit.complained_of.clear();
  visit.born = "2025-01-20";
  visit.injured_on.clear();
  visit.add("then knee.tibiofemoral_angle_standing left -3 goniometer_long", R"(,"position":"standing")");
  visit.add("knee.tibiofemoral_angle_standing left -14 goniometer_long", R"(,"position":"standing")");
  CHECK(visit.has("motion.past:knee.tibiofemoral_angle_standing:left"));
}

TEST_CASE("S04: at 30 weeks a test of the sacroiliac set carries its caution for pregnancy, and what is asked in private stays not asked") {
  const auto* words = report::built_in_words();
  for (const std::string test : {"distraction", "thigh_thrust", "compression", "sacral_thrust", "gaenslen"}) {
    CHECK_MESSAGE(words->say("msg.item.pelvis_" + test + ".care").find("not with great pain in pregnancy") != std::string::npos, test);
  }
  KneeVisit visit;
  visit.complaint = "posterior_hip";
  visit.sex = "female";
  visit.injured_on.clear();
  visit.add_all("body.pregnancy midline answer:yes;body.pregnancy_weeks midline count:30;leg.calf_girth_10cm left mm:385;leg.calf_girth_10cm right mm:360");
  visit.now.push_back(R"({"item":"history.saddle_numbness","side":"midline","value":{"kind":"not_done","reason":"other","detail":"not alone"}})");
  CHECK(visit.refusal() == "taken");
  const auto assessment = visit.assess();
  CHECK(visit.has("body.pregnancy_late:body.pregnancy_weeks:midline"));
  bool asked_after = false;
  for (const auto& flag : assessment.flags) {
    if (flag.flag.text == "alert.ces") {
      asked_after = true;
      CHECK(flag.answer == interpret::FlagAnswer::not_asked);
    }
  }
  CHECK(asked_after);
  std::size_t versions = 0;
  for (const auto& rule : assessment.rules) {
    if (rule.rule.text.starts_with("rule.wells")) {
      ++versions;
      CHECK(rule.outcome == interpret::Outcome::not_applicable);
      CHECK(rule.gate == std::optional(model::Word{"pregnancy"}));
    }
  }
  CHECK(versions == 2);
}

TEST_CASE("S06: rotation measured seated stands for nothing it is not, and meets the minimum set of a hip that hurts at its side") {
  KneeVisit visit;
  visit.complaint = "lateral_hip";
  visit.sex = "female";
  visit.born = "1981-01-01";
  visit.injured_on.clear();
  const auto lacks = [&](const std::string& item) {
    const auto missing = visit.assess().missing;
    return std::any_of(missing.begin(), missing.end(), [&](const auto& one) { return one.item.text == item && one.side == model::Side::left; });
  };
  REQUIRE(lacks("hip.internal_rotation_passive_seated"));
  visit.add("hip.internal_rotation_passive_seated left 30 goniometer_long", R"(,"position":"seated")");
  CHECK_FALSE(lacks("hip.internal_rotation_passive_seated"));
  for (const std::string item : {"hip.trochanter_tender", "hip.trendelenburg", "hip.stance_pain_30s", "hip.log_roll", "nerve.power_hip_abduction"}) {
    REQUIRE_MESSAGE(lacks(item), item);
    visit.add(item + " left not:declined");
    CHECK_MESSAGE(!lacks(item), item);
  }
  // What was declined gives no band, and no direction either.
  for (const auto& hypothesis : visit.assess().hypotheses) {
    CHECK_FALSE(hypothesis.range.has_value());
  }
}

TEST_CASE("S06: what she declines is a reason for each item and no gap; a no through her son is asked about, never settled") {
  KneeVisit visit;
  visit.complaint = "lateral_hip";
  visit.sex = "female";
  visit.add("hip.trochanter_tender left not:declined");
  for (const auto& missing : visit.assess().missing) {
    CHECK_FALSE((missing.item.text == "hip.trochanter_tender" && missing.side == model::Side::left));
  }
  const std::string text =
      R"({"document":{"format":"limbledger-exam/1","as_of":"2026-11-24","exam":{"complaint":"free","setting":"outreach","interpreter":{"kind":"child"}},)"
      R"("findings":[{"item":"history.saddle_numbness","side":"midline","value":{"kind":"answer","answer":"no"}}]}})";
  service::Context context;
  context.edition = reference::built_in_edition();
  const auto params = wire::read_text<service::DocumentAssessParams>(text);
  REQUIRE(params.has_value());
  const auto assessment = service::document_assess(context, *params);
  REQUIRE(assessment.has_value());
  const std::string written = tests::unquoted(wire::write(*assessment));
  CHECK(written.find("contradiction.sensitive_through_family:midline") != std::string::npos);
}

TEST_CASE("S09: leprosy, feeling lost, a new foot drop: the foot's silence is said to tell nothing, and diabetes answered no changes nothing of it") {
  KneeVisit visit;
  visit.complaint = "wound_or_numb_foot";
  visit.sex = "female";
  visit.born = "1976-01-01";
  visit.injured_on.clear();
  visit.add_all(
      "body.feeling_lost left answer:yes;history.leprosy midline answer:yes;history.diabetes midline answer:no;ankle.lateral_malleolus_tender left answer:no;"
      "history.foot_drop_new left answer:yes;skin.ulcer left answer:yes");
  CHECK(visit.refusal() == "taken");
  CHECK(visit.message("body.feeling_lost:body.feeling_lost:left") == "msg.body.feeling_lost");
  CHECK_FALSE(visit.has("body.feeling_lost:body.feeling_lost:right"));
  for (const auto& rule : visit.assess().rules) {
    CHECK(rule.outcome != interpret::Outcome::negative);
  }
  // The form of a foot like this asks for shoes and soaking, and for no heel rise or hop.
  const auto find = [](const std::string& item) {
    for (const auto& step : reference::built_in_edition()->sequence(model::Word{"wound_or_numb_foot"})->steps) {
      if (step.item.text == item) {
        return true;
      }
    }
    return false;
  };
  for (const std::string asked : {"history.shoes", "history.foot_soaking", "skin.shoes_inside", "nerve.foot_drop", "history.leprosy"}) {
    CHECK_MESSAGE(find(asked), asked);
  }
  for (const std::string never : {"ankle.heel_rise_double", "ankle.heel_rise_single", "ankle.heel_rise_count", "function.heel_rise_count_incline", "function.hop_distance"}) {
    CHECK_MESSAGE(!find(never), never);
  }
}
