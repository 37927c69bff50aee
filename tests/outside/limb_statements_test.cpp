// Statements on hip, ankle, foot, lengths, girths, colour and pitting through document.assess with the built-in edition, against
// tests/outside/data/limb_statements.csv, whose verdicts were worked outside the program from printed figures (sources in its head).
#include "tests/outside/csv.hpp"
#include "tests/outside/knee_document.hpp"

#include "core/report/page_judged.hpp"
#include "core/report/text.hpp"
#include "core/report/words/words.hpp"
#include "core/wire/write.hpp"

#include <set>

using namespace limbledger;
using interpret::StatementGrade;
using tests::KneeVisit;

namespace {

[[nodiscard]] KneeVisit limb_visit() {
  KneeVisit visit;
  visit.complaint = "free";
  visit.injured_on.clear();
  return visit;
}
[[nodiscard]] bool limb_asked(const KneeVisit& visit, const std::string& name) {
  const auto all = visit.assess().contradictions;
  return std::any_of(all.begin(), all.end(), [&](const interpret::Contradiction& one) { return one.contradiction.text.starts_with("contradiction." + name + ":"); });
}
[[nodiscard]] std::string limb_plain(std::string text) {
  for (const std::string mark : {"\u2068", "\u2069"}) {
    for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark, at)) {
      text.erase(at, mark.size());
    }
  }
  return text;
}
[[nodiscard]] std::string limb_sentence(const KneeVisit& visit, const std::string& id) {
  return limb_plain(report::statement_text(visit.statement(id), model::Exam{}, *report::built_in_words(), *reference::built_in_edition()));
}

}  // namespace

TEST_CASE("every worked statement on hip, ankle, foot and what is measured comes out with its verdict, its words and its figures") {
  std::set<std::string> sources;
  std::size_t checks = 0;
  for (const tests::CsvRow& row : tests::read_csv("limb_statements.csv")) {
    KneeVisit visit = limb_visit();
    visit.born = row.at("born");
    visit.sex = row.at("sex");
    visit.add_all(row.at("findings"));
    INFO(row.at("check") << " " << row.at("source") << ": " << row.at("findings"));
    const interpret::Statement statement = visit.statement(row.at("statement"));
    CHECK(wire::write(statement.verdict) == "\"" + row.at("verdict") + "\"");
    CHECK(statement.message.text == row.at("message"));
    CHECK_MESSAGE(tests::unquoted(statement.params.json).find(row.at("params")) != std::string::npos, statement.params.json);
    CHECK(report::built_in_words()->has(statement.message.text));
    // A figure that nobody read at its source, and one that was printed of another place, raise nothing.
    const bool weak = statement.message.text.ends_with("_taught") || statement.message.text.ends_with("_finger") || statement.message.text.ends_with("_once");
    CHECK((!weak || statement.grade != StatementGrade::notable));
    CHECK(!visit.working(row.at("statement")).formula.text.empty());
    sources.insert(row.at("source"));
    ++checks;
  }
  CHECK(checks >= 80);
  CHECK(sources.size() >= 20);
}

TEST_CASE("leg length: what the tape cannot settle is said in the sentence, and blocks are named until they were used") {
  KneeVisit visit = limb_visit();
  visit.add_all("leg.length_true left twice:865/865 tape;leg.length_true right twice:875/875 tape");
  const std::string id = "measure.leg_length:leg.length_true:left";
  const std::string text = limb_sentence(visit, id);
  CHECK(text.find("LEFT") != std::string::npos);
  CHECK(text.find("which leg is shorter is not settled by a tape") != std::string::npos);
  CHECK(text.find("would tell more: ") != std::string::npos);
  CHECK(text.find("BADII2014") != std::string::npos);
  const auto working = visit.working(id);
  CHECK(tests::line(working, "875 - 865 = 10"));
  CHECK(tests::line(working, "the tape named the wrong leg in 7 of 20 (BADII2014)"));
  CHECK(visit.statement(id).grade == StatementGrade::unclear);
  visit.add("pelvis.block_height_standing left mm:10 blocks");
  CHECK(limb_sentence(visit, id).find("would tell more") == std::string::npos);
  CHECK_FALSE(limb_asked(visit, "tape_and_blocks"));
  visit.now.pop_back();
  visit.add("pelvis.block_height_standing right mm:10 blocks");
  CHECK(limb_asked(visit, "tape_and_blocks"));
}

TEST_CASE("leg length: readings that straddle 5 or 20 mm claim the less, and either side can be the shorter one") {
  KneeVisit visit = limb_visit();
  // Two examiners: 850 and 856 against 860: 4 to 10 mm.
  visit.add_all("leg.length_true left mm:850 tape;leg.length_true right mm:860 tape");
  visit.add("leg.length_true left mm:856 tape");
  CHECK(visit.message("measure.leg_length:leg.length_true:left") == "msg.measure.length_possible_once");
  visit.now.back() = R"({"item":"leg.length_true","side":"left","value":{"kind":"length","mm":866},"instrument":"tape"})";
  CHECK(visit.message("measure.leg_length:leg.length_true:midline") == "msg.measure.length_possible_once");
  KneeVisit large = limb_visit();
  large.add_all("leg.length_true left twice:840/840 tape;leg.length_true right twice:865/865 tape");
  large.add("leg.length_true left mm:846 tape");  // 19 to 25
  CHECK(large.message("measure.leg_length:leg.length_true:left") == "msg.measure.length_possible");
}

TEST_CASE("a calf compared in two positions is not compared, and of a paralysed leg none is") {
  KneeVisit visit = limb_visit();
  visit.add("leg.calf_girth_10cm left mm:390 tape", R"(,"position":"supine")");
  visit.add("leg.calf_girth_10cm right mm:360 tape", R"(,"position":"seated")");
  CHECK(visit.message("measure.girth:leg.calf_girth_10cm:left") == "msg.measure.girth_other_position");
  KneeVisit weak = limb_visit();
  weak.add_all("leg.calf_girth_10cm left mm:320 tape;leg.calf_girth_10cm right mm:360 tape;body.paralysis left answer:yes");
  CHECK_FALSE(weak.has("measure.girth:leg.calf_girth_10cm:left"));
}

TEST_CASE("colour after a press: of a sex nobody names both limits are asked, and in time it leaves a poor supply not excluded (SCHRIGER1988, FLEMING2015)") {
  KneeVisit visit = limb_visit();
  visit.sex = "unspecified";
  const std::string id = "measure.refill:vessel.capillary_refill_great_toe:left";
  for (const auto& [s, message] : {std::pair("2", "refill_within_finger"), std::pair("2.5", "refill_open"), std::pair("3", "refill_slow_finger")}) {
    visit.now.clear();
    visit.sex = "male";
    visit.add("vessel.capillary_refill_great_toe left s:" + std::string(s) + " stopwatch");
    std::string text = visit.json("");
    text.replace(text.find(R"("norm_sex":"male")"), 17, R"("norm_sex":"unspecified")");
    service::Context context;
    context.edition = reference::built_in_edition();
    const auto params = wire::read_text<service::DocumentAssessParams>(text);
    REQUIRE(params.has_value());
    const auto assessment = service::document_assess(context, *params);
    REQUIRE(assessment.has_value());
    const auto at = std::find_if(assessment->statements.begin(), assessment->statements.end(), [&](const auto& one) { return one.statement.text == id; });
    REQUIRE(at != assessment->statements.end());
    CHECK(at->message.text == "msg.measure." + std::string(message));
  }
  visit.now.clear();
  visit.born = "2023-01-01";
  visit.add("vessel.capillary_refill_great_toe left s:3 stopwatch");
  CHECK(limb_sentence(visit, id).find("not excluded") != std::string::npos);
}

TEST_CASE("decision rules page, section 24: a depth outside its grade is asked back; a reflex or a pulse of another scale is never guessed") {
  KneeVisit deep = limb_visit();
  deep.add("vessel.oedema_pitting left pit:2+/5");
  CHECK(deep.refusal().find("finding.contradicts@") == 0);
  KneeVisit edge = limb_visit();
  edge.add("vessel.oedema_pitting left pit:2+/4");
  CHECK(edge.refusal() == "taken");
  const auto refused = [](const std::string& value, const std::string& item) {
    KneeVisit visit = limb_visit();
    visit.now.push_back(R"({"item":")" + item + R"(","side":"left","value":)" + value + "}");
    return visit.refusal();
  };
  // A bare 3 is brisk on one scale and the upper half of the ordinary on the other; without its scale it is not taken.
  CHECK(refused(R"({"kind":"grade","grade":"3"})", "nerve.reflex_knee").find("params.missing@") != std::string::npos);
  CHECK(refused(R"({"kind":"grade","scale":"ninds/1996","grade":"3"})", "nerve.reflex_knee").find("value.grade@") != std::string::npos);
  CHECK(refused(R"({"kind":"grade","scale":"reflex/common-0-4plus","grade":"3"})", "nerve.reflex_knee").find("value.grade@") != std::string::npos);
  CHECK(refused(R"({"kind":"grade","scale":"reflex/common-0-4plus","grade":"3+"})", "nerve.reflex_knee") == "taken");
  CHECK(refused(R"({"kind":"grade","scale":"pulse/0-4a","grade":"3"})", "vessel.pulse_dorsalis_pedis").find("value.grade@") != std::string::npos);
  CHECK(refused(R"({"kind":"grade","scale":"pulse/0-3","grade":"3","word":"bounding"})", "vessel.pulse_dorsalis_pedis") == "taken");
}

TEST_CASE("decision rules page, section 24: grades of power, reflex and pulse are said in words with what they mean") {
  const auto* edition = reference::built_in_edition();
  const auto* words = report::built_in_words();
  const auto said = [&](const std::string& item, const std::string& scale, const std::string& grade) {
    model::Finding finding;
    finding.item = {item};
    finding.side = model::Side::left;
    finding.value = model::Grade{{scale}, {grade}, std::nullopt, std::nullopt, std::nullopt};
    return limb_plain(report::value_text(*words, *edition, finding));
  };
  CHECK(said("nerve.power_hip_flexion", "mrc/1976", "3").find("against gravity") != std::string::npos);
  CHECK(said("nerve.power_hip_flexion", "mrc/1976", "1").find("flicker") != std::string::npos);
  CHECK(said("nerve.reflex_knee", "reflex/common-0-4plus", "3+").find("Brisk") != std::string::npos);
  CHECK(said("vessel.pulse_dorsalis_pedis", "pulse/0-3", "1").find("Diminished") != std::string::npos);
  CHECK(said("vessel.pulse_dorsalis_pedis", "pulse/0-3", "3").find("Bounding") != std::string::npos);
}

TEST_CASE("HC-007: 87.5 cm and 865 mm: both in millimetres, the units as written, the left a candidate and no more") {
  KneeVisit visit = limb_visit();
  visit.add_all("leg.length_true right entered_length:87.5cm tape;leg.length_true left entered_length:865mm tape");
  const auto statement = visit.statement("measure.leg_length:leg.length_true:left");
  CHECK(statement.grade == StatementGrade::unclear);
  CHECK(statement.verdict == interpret::Verdict::not_distinguishable);
  CHECK(visit.json("").find("87.5cm") != std::string::npos);
}

TEST_CASE("HC-008: a number without a unit and 870 cm are refused, and nothing is compared until they are settled") {
  KneeVisit visit = limb_visit();
  visit.add("leg.length_true right entered_length:870 tape");
  CHECK(visit.refusal().find("value.unit_missing@") != std::string::npos);
  visit.now.clear();
  visit.add("leg.length_true right entered_length:870cm tape");
  CHECK(visit.refusal().find("value.out_of_range@") != std::string::npos);
}

TEST_CASE("HC-006 beyond the knee: hip and ankle going further by themselves than when moved are asked about, and no lack is claimed") {
  for (const std::string pair : {"hip.flexion_active left 125 goniometer_long;hip.flexion_passive left 110 goniometer_long",
                                 "ankle.dorsiflexion_active_knee_bent left 30 goniometer_long;ankle.dorsiflexion_passive_knee_bent left 10 goniometer_long",
                                 "foot.mtp_first_extension_active left 80 goniometer_long;foot.mtp_first_extension_passive left 50 goniometer_long"}) {
    KneeVisit visit = limb_visit();
    visit.add_all(pair);
    const std::string written = tests::unquoted(wire::write(visit.assess()));
    CHECK_MESSAGE(written.find("motion.active_beyond_passive:") != std::string::npos, pair);
    CHECK_MESSAGE(written.find("motion.active:") == std::string::npos, pair);
  }
}

TEST_CASE("HC-005 beyond the knee: a fused hip or ankle that moves is asked about, one that does not is a value") {
  KneeVisit hip = limb_visit();
  hip.add_all("body.hip_fused left answer:yes;hip.flexion_passive left 60 goniometer_long;hip.extension_passive_prone left -10 goniometer_long");
  CHECK(limb_asked(hip, "fused_and_motion"));
  KneeVisit ankle = limb_visit();
  ankle.add_all("body.ankle_fused left answer:yes;ankle.arc_passive_knee_bent left ankle_triple:10-0-40 goniometer_long");
  CHECK(limb_asked(ankle, "fused_and_motion"));
  CHECK_FALSE(ankle.has("motion.contracture:ankle.dorsiflexion_passive_knee_bent:left"));
  ankle.now.pop_back();
  ankle.add("ankle.arc_passive_knee_bent left ankle_triple:0-5-5 goniometer_long");
  CHECK_FALSE(limb_asked(ankle, "fused_and_motion"));
}

TEST_CASE("HC-013: words and bounds at hip and ankle give no number: nothing is short of the middle, nothing differs") {
  KneeVisit visit = limb_visit();
  visit.now.push_back(R"({"item":"hip.flexion_passive","side":"left","value":{"kind":"angle","entered":"full","reads":"full"},"position":"supine"})");
  visit.now.push_back(R"({"item":"ankle.dorsiflexion_passive_knee_bent","side":"left","value":{"kind":"angle","entered":"equal to other side","reads":"same_as_other_side"},"position":"supine"})");
  visit.now.push_back(
      R"({"item":"ankle.plantarflexion_passive_knee_bent","side":"left","value":{"kind":"angle","toward_deg":20,"bound":"at_most"},"instrument":"goniometer_long","position":"supine"})");
  REQUIRE(visit.refusal() == "taken");
  CHECK(visit.message("motion.norm:hip.flexion_passive:left") == "msg.motion.words_only");
  CHECK(visit.message("motion.norm:ankle.dorsiflexion_passive_knee_bent:left") == "msg.motion.words_only");
  const std::string written = tests::unquoted(wire::write(visit.assess()));
  CHECK(written.find("motion.contracture:") == std::string::npos);
  CHECK(written.find("motion.side:") == std::string::npos);
}

TEST_CASE("HC-016 beyond the knee: an ankle complained of on the left and found on the right is asked about, and nothing is turned") {
  KneeVisit visit;
  visit.complaint = "ankle_injury";
  visit.injured_on = "2026-11-23";
  visit.add_all(
      "ankle.lateral_malleolus_tender left answer:no;ankle.lateral_malleolus_tender right answer:yes;ankle.atfl_tender left answer:no;"
      "ankle.atfl_tender right answer:yes;ankle.movement left answer:yes;ankle.movement right answer:yes");
  CHECK(limb_asked(visit, "complaint_side"));
  visit.add("ankle.swelling_lateral left answer:yes");
  CHECK_FALSE(limb_asked(visit, "complaint_side"));  // the side complained of has a sign of its own
}

TEST_CASE("HC-017: with the right shin ending above the ankle nothing of that foot is missing, not examined, or compared") {
  KneeVisit visit;
  visit.complaint = "ankle_injury";
  visit.injured_on = "2026-11-23";
  visit.add_all("body.limb_level right choice:through_shin;ankle.dorsiflexion_passive_knee_bent left 10 goniometer_long;ankle.lateral_malleolus_tender left answer:no");
  const auto assessment = visit.assess();
  for (const auto& one : assessment.missing) {
    const bool below = one.item.text.starts_with("ankle.") || one.item.text.starts_with("foot.");
    CHECK_FALSE((below && one.side == model::Side::right));
  }
  for (const auto& one : assessment.not_examined) {
    CHECK_FALSE((one.joint.text != "knee" && one.side == model::Side::right));
  }
  CHECK(tests::unquoted(wire::write(assessment)).find("motion.side:ankle") == std::string::npos);
}

TEST_CASE("HC-023: three reasons are three: each says that nothing is concluded, and another way is named where there is one") {
  KneeVisit visit = limb_visit();
  visit.add_all("leg.length_true left not:not_palpable;knee.lachman left not:cannot_hold;leg.thigh_girth_10cm left not:beyond_instrument");
  const auto says = [&](const std::string& item, const std::string& piece) {
    const auto statement = visit.statement("measure.not_read:" + item + ":left");
    CHECK(statement.grade == StatementGrade::cannot_tell);
    CHECK_MESSAGE(tests::unquoted(statement.params.json).find(piece) != std::string::npos, statement.params.json);
  };
  says("leg.length_true", "reason:not_palpable,instead:pelvis.block_height_standing");
  says("knee.lachman", "reason:cannot_hold,instead:knee.lachman_");
  says("leg.thigh_girth_10cm", "reason:beyond_instrument");
  CHECK(limb_sentence(visit, "measure.not_read:leg.length_true:left").find("nothing is concluded from it") != std::string::npos);
  visit.add("leg.length_true left mm:850 tape");  // somebody else read it
  CHECK_FALSE(visit.has("measure.not_read:leg.length_true:left"));
}

TEST_CASE("HC-024, HC-025, HC-026: at the ankle as at the knee: steps that never were, pregnancy that stands, pregnancy that nobody asked after") {
  KneeVisit visit;
  visit.complaint = "ankle_injury";
  visit.injured_on = "2026-11-23";
  visit.sex = "female";
  visit.add_all("ankle.pain_malleolar_zone left answer:yes;ankle.lateral_malleolus_tender left answer:no;ankle.medial_malleolus_tender left answer:no;body.chair_user midline answer:yes;"
                "history.steps_at_once midline answer:no;gait.steps_now midline count:0;history.ankle_rule_exclusions midline choices:none_of_these");
  CHECK(visit.rule("ottawa_ankle").outcome == interpret::Outcome::undetermined);
  visit.add_all("ankle.lateral_malleolus_tender left answer:yes;body.pregnancy midline answer:yes");
  visit.now.erase(visit.now.begin() + 1);
  const auto positive = visit.rule("ottawa_ankle");
  CHECK(positive.outcome == interpret::Outcome::positive);
  CHECK(std::any_of(positive.flags.begin(), positive.flags.end(), [](const auto& one) { return one.text == "outside_derivation"; }));
  KneeVisit unasked;
  unasked.complaint = "ankle_injury";
  unasked.injured_on = "2026-11-23";
  unasked.sex = "female";
  unasked.born = "2002-01-01";
  unasked.add_all("ankle.pain_malleolar_zone left answer:yes;ankle.lateral_malleolus_tender left answer:no;ankle.medial_malleolus_tender left answer:no;"
                  "history.steps_at_once midline answer:yes;gait.steps_now midline count:4;history.ankle_rule_exclusions midline choices:none_of_these");
  CHECK(unasked.rule("ottawa_ankle").outcome != interpret::Outcome::negative);
}

TEST_CASE("decision rules page, section 24: an effort that pain held back is no grade of the muscle; a full grade stands") {
  KneeVisit visit = limb_visit();
  visit.add("nerve.power_ankle_dorsiflexion left grade:3", R"(,"quality":["effort_limited"])");
  const std::string id = "measure.power:nerve.power_ankle_dorsiflexion:left";
  CHECK(visit.statement(id).grade == StatementGrade::cannot_tell);
  CHECK(limb_sentence(visit, id).find("no grade of the muscle") != std::string::npos);
  visit.now.clear();
  visit.add("nerve.power_ankle_dorsiflexion left grade:5", R"(,"quality":["effort_limited"])");
  CHECK_FALSE(visit.has(id));
  visit.now.clear();
  visit.add("nerve.power_ankle_dorsiflexion left grade:3");
  CHECK_FALSE(visit.has(id));
}

TEST_CASE("decision rules page, section 24: a depth taken with another grade is kept, and what its depth stands for is said") {
  KneeVisit visit = limb_visit();
  visit.add("vessel.oedema_pitting left pit:2+/5");  // asked back, and confirmed where it is assessed
  const std::string id = "measure.pitting:vessel.oedema_pitting:left";
  CHECK(tests::unquoted(visit.statement(id).params.json).find("grade:2+,mm:5,by_depth:3+") != std::string::npos);
  CHECK(limb_sentence(visit, id).find("by its depth it is 3+") != std::string::npos);
}
