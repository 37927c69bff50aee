// Special bodies as documents judged by the built-in edition: what the hard cases (HC-...) and the consultations (S02 to S09) ask of
// recording and comparing where a limb, a joint, a feeling or an ability is not there. Invented people; the day is 2026-11-24. Figures:
// MALFAIT2017 (signs of nine, by age), STIELL1995 (the knee rule), SABHARWAL2008 (what falsifies length).
#include "tests/outside/knee_document.hpp"

#include "core/interpret/body.hpp"
#include "core/report/page_judged.hpp"
#include "core/report/words/words.hpp"

using namespace limbledger;
using interpret::Outcome;
using interpret::Verdict;
using model::Side;
using tests::KneeVisit;

namespace {

[[nodiscard]] bool asks_back(const interpret::Assessment& assessment, const std::string& name) {
  return std::any_of(assessment.contradictions.begin(), assessment.contradictions.end(),
                     [&](const interpret::Contradiction& one) { return one.contradiction.text.starts_with("contradiction." + name + ":"); });
}
[[nodiscard]] bool lacks_item(const interpret::Assessment& assessment, const std::string& item, Side side) {
  return std::any_of(assessment.missing.begin(), assessment.missing.end(), [&](const auto& one) { return one.item.text == item && one.side == side; });
}
[[nodiscard]] std::string state_in(const interpret::RuleResult& rule, const std::string& input) {
  for (const auto& one : rule.inputs) {
    if (one.input.text == input) {
      return one.state.text;
    }
  }
  return {};
}
[[nodiscard]] std::string body_text(const KneeVisit& visit, const std::string& id) {
  const auto* edition = reference::built_in_edition();
  model::Exam exam;
  std::string text = report::statement_text(visit.statement(id), exam, *report::built_in_words(), *edition);
  for (const std::string mark : {"\u2068", "\u2069"}) {
    for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark, at)) {
      text.erase(at, mark.size());
    }
  }
  return text;
}

}  // namespace

TEST_CASE("HC-017: one answer says that a shin ends: nothing below it is missing, the knee above it is") {
  KneeVisit visit;
  visit.complaint = "acute_knee";
  const auto whole = visit.assess();
  CHECK(lacks_item(whole, "vessel.pulse_dorsalis_pedis", Side::right));
  visit.add("body.limb_level right choice:through_shin");
  visit.add("body.prosthesis right answer:yes");
  const auto assessment = visit.assess();
  CHECK_FALSE(lacks_item(assessment, "vessel.pulse_dorsalis_pedis", Side::right));
  CHECK(lacks_item(assessment, "vessel.pulse_dorsalis_pedis", Side::left));
  CHECK(visit.message("body.limb_through_shin:body.limb_level:right") == "msg.body.limb_through_shin");
  CHECK(body_text(visit, "body.prosthesis:body.prosthesis:right").find("RIGHT") != std::string::npos);
  for (const auto& missing : assessment.missing) {
    const bool below = missing.item.text.starts_with("ankle.") || missing.item.text.starts_with("foot.");
    CHECK_FALSE((below && missing.side == Side::right));
  }
}

TEST_CASE("HC-017: a limb that ends in the thigh has no knee: no rule runs as if it had, and a finding below is asked about") {
  KneeVisit visit = tests::walked_in("1996-01-01");
  visit.add("body.limb_level left choice:through_thigh");
  CHECK(visit.rule("ottawa_knee").outcome == Outcome::not_applicable);
  CHECK(visit.rule("ottawa_knee").gate->text == "no_limb");
  CHECK(visit.rule("pittsburgh_knee").gate->text == "no_limb");
  CHECK(asks_back(visit.assess(), "finding_below_level"));
  for (const auto& missing : visit.assess().missing) {
    CHECK_FALSE((missing.item.text.starts_with("knee.") && missing.side == Side::left));
  }
}

TEST_CASE("a pulse in a foot that is not there is asked about; that none is felt is not") {
  KneeVisit visit;
  visit.add("body.limb_level right choice:through_shin");
  visit.add("vessel.pulse_dorsalis_pedis right grade:2");
  CHECK(asks_back(visit.assess(), "pulse_below_level"));
  visit.now.pop_back();
  visit.add("vessel.pulse_dorsalis_pedis right grade:0");
  CHECK_FALSE(asks_back(visit.assess(), "pulse_below_level"));
  CHECK_FALSE(asks_back(visit.assess(), "finding_below_level"));
  visit.now.pop_back();
  visit.add("vessel.pulse_dorsalis_pedis left grade:2");  // the other foot
  CHECK_FALSE(asks_back(visit.assess(), "pulse_below_level"));
}

TEST_CASE("HC-005: a fused knee at 15 is a value; that it does not bend to 90 is no new loss; one that moves is asked about") {
  KneeVisit visit = tests::walked_in("1996-01-01");
  visit.now.erase(visit.now.begin() + 3);  // the 120 of before
  visit.add("body.knee_fused left answer:yes");
  visit.add("knee.arc_passive left triple:0-15-15 goniometer_long");
  CHECK_FALSE(asks_back(visit.assess(), "fused_and_motion"));
  const auto rule = visit.rule("ottawa_knee");
  CHECK(rule.outcome == Outcome::not_applicable);
  CHECK(rule.gate->text == "fused");
  visit.add("knee.fibular_head_tender left answer:yes");
  visit.now.erase(visit.now.begin());
  CHECK(visit.rule("ottawa_knee").outcome == Outcome::positive);  // tender bone speaks for a film in any knee
  visit.now.erase(visit.now.begin());
  KneeVisit moving;
  moving.add("body.knee_fused left answer:yes");
  moving.add("knee.arc_passive left triple:0-10-60 goniometer_long");
  CHECK(asks_back(moving.assess(), "fused_and_motion"));
  CHECK(moving.statement("motion.norm:knee.flexion_passive:left").verdict == Verdict::no_norm);
  // An instrument that was not named is no reason to leave a joint both fused and free.
  KneeVisit unnamed;
  unnamed.add("body.knee_fused left answer:yes");
  unnamed.add("knee.arc_passive left triple:0-10-60");
  CHECK(asks_back(unnamed.assess(), "fused_and_motion"));
}

TEST_CASE("HC-005: of a fused knee the tests of its ligaments are not missing, its motion and its bone are") {
  KneeVisit visit;
  visit.complaint = "acute_knee";
  visit.add("body.knee_fused left answer:yes");
  const auto assessment = visit.assess();
  CHECK_FALSE(lacks_item(assessment, "knee.lachman", Side::left));
  CHECK(lacks_item(assessment, "knee.patella_tender", Side::left));
}

TEST_CASE("HC-018: metal is said, and a replaced hip takes the norms of its motion away and leaves the knee's") {
  KneeVisit visit;
  visit.add("body.hip_replaced left answer:yes");
  visit.add("hip.internal_rotation_passive_seated left 10 goniometer_long", R"(,"position":"seated")");
  visit.add("hip.internal_rotation_passive_seated right 40 goniometer_long", R"(,"position":"seated")");
  visit.add("knee.flexion_passive left 130 goniometer_long");
  CHECK(visit.message("motion.norm:hip.internal_rotation_passive_seated:left") == "msg.motion.no_norm_implant");
  CHECK_FALSE(visit.has("motion.side:hip.internal_rotation_passive_seated:left"));
  CHECK(visit.message("motion.norm:knee.flexion_passive:left") != "msg.motion.no_norm_implant");
  visit.add("body.implant left choices:metal_shin");
  CHECK(visit.message("body.implant:body.implant:left") == "msg.body.implant");
}

TEST_CASE("HC-022: six signs of nine at any age, five up to 50, four above: no norm, the own other side stays the comparator") {
  const std::vector<std::pair<std::string, std::string>> far{{"2016-01-01", "6"}, {"1996-01-01", "5"}, {"1966-01-01", "4"}};
  for (const auto& [born, count] : far) {
    KneeVisit visit;
    visit.born = born;
    visit.add("knee.extension_passive left 12 goniometer_long");
    visit.add("knee.extension_passive right 12 goniometer_long");
    CHECK(visit.message("motion.norm:knee.extension_passive:left") != "msg.motion.no_norm_body");
    visit.add("body.hypermobility midline count:" + count);
    CHECK(visit.message("motion.norm:knee.extension_passive:left") == "msg.motion.no_norm_body");
    CHECK(body_text(visit, "motion.norm:knee.extension_passive:left").find("joints that move far") != std::string::npos);
    CHECK(visit.statement("motion.side:knee.extension_passive:left").verdict == Verdict::not_distinguishable);
    visit.now.pop_back();
    visit.add("body.hypermobility midline count:" + std::to_string(std::stoi(count) - 1));
    CHECK(visit.message("motion.norm:knee.extension_passive:left") != "msg.motion.no_norm_body");
  }
}

TEST_CASE("the count of signs against the signs themselves is asked about where it cannot be") {
  KneeVisit visit;
  visit.add("body.hypermobility midline count:2");
  visit.add_all("body.beighton_thumb left answer:yes;body.beighton_thumb right answer:yes;body.beighton_trunk midline answer:yes");
  CHECK(asks_back(visit.assess(), "signs_and_count"));
  visit.now.front() = R"({"item":"body.hypermobility","side":"midline","value":{"kind":"count","count":9}})";
  CHECK_FALSE(asks_back(visit.assess(), "signs_and_count"));  // six were not recorded
}

TEST_CASE("HC-024: who used a chair before has not lost the steps: not assessable; tender bone is positive all the same") {
  KneeVisit visit = tests::walked_in("1996-01-01");
  visit.now.erase(visit.now.begin() + 4, visit.now.begin() + 6);
  visit.add_all("body.chair_user midline answer:yes;history.steps_at_once midline answer:no;gait.steps_now midline count:0");
  const auto rule = visit.rule("ottawa_knee");
  CHECK(rule.outcome == Outcome::undetermined);
  CHECK(state_in(rule, "steps") == "not_reliable");
  CHECK(state_in(rule, "imm") == "not_reliable");
  CHECK_FALSE(asks_back(visit.assess(), "chair_and_steps"));
  visit.add("knee.fibular_head_tender left answer:yes");
  visit.now.erase(visit.now.begin());
  CHECK(visit.rule("ottawa_knee").outcome == Outcome::positive);
  KneeVisit walks = tests::walked_in("1996-01-01");
  walks.add("body.chair_user midline answer:yes");
  CHECK(asks_back(walks.assess(), "chair_and_steps"));
}

TEST_CASE("HC-012, S03: four steps at five months are asked about, at twenty-two months not") {
  KneeVisit visit;
  visit.born = "2026-06-20";
  visit.injured_on.clear();
  visit.add("gait.steps_now midline count:4");
  CHECK(asks_back(visit.assess(), "age_and_steps"));
  visit.born = "2025-01-20";
  CHECK_FALSE(asks_back(visit.assess(), "age_and_steps"));
  CHECK(visit.message("body.under_two:age:midline") == "msg.body.under_two");
}

TEST_CASE("S02: at five months standing is left out, and no figure of older people is met") {
  KneeVisit visit;
  visit.born = "2026-06-20";
  visit.sex = "female";
  visit.injured_on.clear();
  visit.add("knee.extension_passive left -20 goniometer_long");
  CHECK(visit.message("body.under_one:age:midline") == "msg.body.under_one");
  CHECK(visit.statement("motion.norm:knee.extension_passive:left").verdict == Verdict::no_norm);
}

TEST_CASE("HC-025, S04: in pregnancy a positive stands with its flag; weeks against a no are asked about") {
  KneeVisit visit = tests::walked_in("1996-01-01");
  visit.sex = "female";
  visit.add_all("body.pregnancy midline answer:yes;body.pregnancy_weeks midline count:30;knee.fibular_head_tender left answer:yes");
  visit.now.erase(visit.now.begin());
  const auto rule = visit.rule("ottawa_knee");
  CHECK(rule.outcome == Outcome::positive);
  CHECK(std::any_of(rule.flags.begin(), rule.flags.end(), [](const auto& one) { return one.text == "outside_derivation"; }));
  CHECK(body_text(visit, "body.pregnancy_late:body.pregnancy:midline").find("not face down") != std::string::npos);
  visit.add("body.pregnancy midline answer:no");
  visit.now.erase(visit.now.begin() + 6);
  CHECK(asks_back(visit.assess(), "weeks_without_pregnancy"));
}

TEST_CASE("HC-047, S09: of a foot without feeling a no to tenderness settles nothing; a yes does") {
  KneeVisit visit;
  visit.add_all("body.feeling_lost left answer:yes");
  const auto* edition = reference::built_in_edition();
  model::Exam exam;
  exam.findings = std::vector<model::Finding>{};
  model::Finding numb;
  numb.item = {"body.feeling_lost"};
  numb.side = Side::left;
  numb.value = model::Answer{model::AnswerWord::yes};
  exam.findings->push_back(numb);
  const std::optional<model::Person> nobody;
  const interpret::View view(exam, nobody, *edition, {2026, 11, 24});
  for (const model::Item& item : edition->items()) {
    const std::string& name = item.item.text;
    const bool is_seen = name.starts_with("foot.look_") || name.starts_with("ankle.look_") || name == "foot.deformity" || name == "foot.hot_red_swollen";
    const bool of_foot = (item.region.text == "ankle" || item.region.text == "foot") && !is_seen;
    CHECK((view.bodies().not_reliable(item.item.text, Side::left) != nullptr) == of_foot);
    CHECK(view.bodies().not_reliable(item.item.text, Side::right) == nullptr);
  }
  CHECK(body_text(visit, "body.feeling_lost:body.feeling_lost:left").find("tells nothing") != std::string::npos);
}

TEST_CASE("a leg paralysed for long: its active motion is compared neither with other people nor with the other leg; the passive is") {
  KneeVisit visit;
  for (const std::string side : {"left", "right"}) {
    visit.add("knee.flexion_active " + side + (side == "left" ? " 60" : " 130") + " goniometer_long");
    visit.add("knee.flexion_passive " + side + " 130 goniometer_long");
  }
  visit.add("body.paralysis left answer:yes");
  CHECK(visit.message("motion.norm:knee.flexion_active:left") == "msg.motion.no_norm_body");
  CHECK_FALSE(visit.has("motion.side:knee.flexion_active:left"));
  CHECK(visit.has("motion.side:knee.flexion_passive:left"));
}

TEST_CASE("covered by plaster: what is under it is no gap, and skin that was looked at is asked about") {
  KneeVisit visit;
  visit.complaint = "acute_knee";
  visit.add("body.cast left choices:cast_knee");
  CHECK_FALSE(lacks_item(visit.assess(), "knee.patella_tender", Side::left));
  CHECK_FALSE(asks_back(visit.assess(), "cast_and_skin"));
  visit.add("knee.look_skin_hot_red left answer:no");
  CHECK(asks_back(visit.assess(), "cast_and_skin"));
}

TEST_CASE("a film that shows a break and one that does not, of the same part and side, are asked about") {
  KneeVisit visit;
  visit.now.push_back(
      R"({"item":"history.film_result","side":"left","value":{"kind":"choices","choices":["knee_fracture_seen","knee_fracture_not_seen"]}})");
  CHECK(asks_back(visit.assess(), "film_both"));
  visit.now.back() = R"({"item":"history.film_result","side":"left","value":{"kind":"choices","choices":["knee_fracture_seen","hip_fracture_not_seen"]}})";
  CHECK_FALSE(asks_back(visit.assess(), "film_both"));
}

TEST_CASE("recording after consent to record was refused or taken back is remarked, and nothing is refused") {
  for (const std::string word : {"no", "withdrawn"}) {
    const std::string text = R"({"document":{"format":"limbledger-exam/1","as_of":"2026-11-24","exam":{"complaint":"free","setting":"outreach","consent":{"record":")" +
                             word + R"("}},"findings":[{"item":"knee.patella_tender","side":"left","value":{"kind":"answer","answer":"no"}}]}})";
    service::Context context;
    context.edition = reference::built_in_edition();
    const auto params = wire::read_text<service::DocumentAssessParams>(text);
    REQUIRE(params.has_value());
    const auto assessment = service::document_assess(context, *params);
    REQUIRE(assessment.has_value());
    CHECK(asks_back(*assessment, "consent_and_record"));
  }
}
