// Hard cases (HC-...) and consultations (S..) of recording and comparing that need the whole limb's items: length, girth, ankle, hip of an
// infant. As documents judged by the built-in edition; invented people; the day is 2026-11-24. What needs a rule or an alert still to
// come is not tested here.
#include "tests/outside/knee_document.hpp"

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
  CHECK(all_of(visit).find("thigh_girth") == std::string::npos);
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
}

TEST_CASE("HC-023: a very heavy limb: three reasons are kept as three, nothing is made up, and none of them is missing again") {
  KneeVisit visit;
  visit.complaint = "free";
  visit.add_all("leg.length_true left not:not_palpable;knee.lachman left not:cannot_hold;leg.thigh_girth_10cm left not:beyond_instrument");
  CHECK(visit.refusal() == "taken");
  CHECK(all_of(visit).find("laxity.test:knee.lachman:left") == std::string::npos);
}

TEST_CASE("S02: five months: abduction 50 against 75 meets no figure of older people, and a step that provokes the hip is not the next one") {
  KneeVisit visit;
  visit.complaint = "infant_hip";
  visit.born = "2026-06-20";
  visit.sex = "female";
  visit.injured_on.clear();
  const model::Item& abduction = limb_item("hip.abduction_passive_flexed");
  const std::string position = R"(,"position":")" + abduction.positions->front().text + "\"";
  const std::string instrument = abduction.instruments->front().text;
  visit.add("hip.abduction_passive_flexed left 50 " + instrument, position);
  visit.add("hip.abduction_passive_flexed right 75 " + instrument, position);
  const auto assessment = visit.assess();
  for (const auto& statement : assessment.statements) {
    CHECK_MESSAGE(statement.verdict != Verdict::within, statement.statement.text);
  }
  for (const auto& step : assessment.steps) {
    CHECK(step.step.text != "hip.barlow");
  }
  CHECK(visit.has("body.under_one:age:midline"));
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
