// document.assess and statement.explain on a document: the same check as for recorded findings, faults with paths into the document.
#include "core/service/methods/say/assess.hpp"
#include "core/service/methods/say/document.hpp"
#include "core/service/methods/say/explain.hpp"
#include "core/wire/read.hpp"
#include "core/wire/write.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <string>

using namespace limbledger;

namespace {

std::string document_of(const std::string& findings, const std::string& rest = "") {
  return R"({"document":{"format":"limbledger-exam/1","as_of":"2026-11-24","person":{"birth":{"date":"1996-01-01"},"sex":"male","norm_sex":"male"},)"
         R"("exam":{"complaint":"acute_knee","side":"left","setting":"outreach","injured_on":"2026-11-23"},"findings":[)" +
         findings + "]}" + rest + "}";
}

Result<interpret::Assessment> assess(const std::string& json) {
  service::Context context;
  context.edition = reference::built_in_edition();
  const auto params = wire::read_text<service::DocumentAssessParams>(json);
  if (!params) {
    return params.error();
  }
  return service::document_assess(context, *params);
}

constexpr const char* flexion_finding =
    R"({"item":"knee.flexion_passive","side":"left","value":{"kind":"angle","toward_deg":118.5},"instrument":"goniometer_long","position":"supine"})";

}  // namespace

TEST_CASE("a document is judged without a ledger, and equal text gives equal bytes") {
  const auto first = assess(document_of(flexion_finding));
  REQUIRE(first.has_value());
  REQUIRE(first->statements.size() == 1);
  CHECK(first->statements[0].statement.text == "motion.norm:knee.flexion_passive:left");
  CHECK(first->statements[0].findings[0].to_text() == "aaaaaaaaaaaaaaaaaaaaaaaaae");  // the place, counted from 1, in the last bytes
  CHECK(first->alerts.empty());
  CHECK(wire::write(*first) == wire::write(*assess(document_of(flexion_finding))));
  CHECK(wire::write(*first).starts_with(
      R"({"edition":"facts.1","as_of":"2026-11-24","alerts":[],"questions":[)"));
}

TEST_CASE("a neutral-zero triple in a document is judged as its two ends") {
  const auto assessment = assess(document_of(
      R"({"item":"knee.arc_passive","side":"left","value":{"kind":"angle","entered":"0-20-110","order":"extension_zero_flexion"},"instrument":"goniometer_long","position":"supine"})"));
  REQUIRE(assessment.has_value());
  REQUIRE(assessment->statements.size() == 3);  // two ends against the norm, and that it does not reach straight
  CHECK(assessment->statements[2].statement.text == "motion.contracture:knee.extension_passive:left");
  CHECK(assessment->statements[0].statement.text == "motion.norm:knee.extension_passive:left");
  CHECK(assessment->statements[0].params.json.starts_with(R"({"toward":"extension","toward_deg":-20,)"));
  CHECK(!(assessment->statements[0].findings[0] == assessment->statements[1].findings[0]));
}

TEST_CASE("a document that says what is at its place advises nothing that is not there; the place of another exam is refused") {
  const std::string here = "aaaaaaaaaaaaaaaaaaaaaaaaae";
  const auto fell = [&](const std::string& place) {
    return assess(R"({"document":{"format":"limbledger-exam/1","as_of":"2026-11-24","person":{"birth":{"date":"1942-05-01"},"sex":"female","norm_sex":"female"},"exam":{"complaint":"hip_after_fall","side":"left",)"
                  R"("setting":"outreach","place":")" + here + R"("},"findings":[{"item":"history.fall_recent","side":"midline","value":{"kind":"answer","answer":"yes"}},)"
                  R"({"item":"gait.steps_now","side":"midline","value":{"kind":"count","count":0}}])" + place + "}}");
  };
  const auto advises = [&](const std::string& place, const std::string& message) {
    const auto said = fell(place);
    REQUIRE(said.has_value());
    REQUIRE(!said->alerts.empty());
    const auto& meanwhile = said->alerts.front().meanwhile;
    return std::any_of(meanwhile.begin(), meanwhile.end(), [&](const model::MessageId& one) { return one.text == "msg.meanwhile." + message; });
  };
  const std::string no_film = R"(,"place":{"place":")" + here + R"(","here":[{"what":"film","there":"no"}]})";
  CHECK(advises("", "film_hip"));
  CHECK(advises(no_film, "film_hip_elsewhere"));
  CHECK_FALSE(advises(no_film, "film_hip"));
  const auto refused = fell(R"(,"place":{"place":"aaaaaaaaaaaaaaaaaaaaaaaaai"})");
  REQUIRE_FALSE(refused.has_value());
  CHECK(refused.error().faults.front().code == "place.unknown");
  CHECK(refused.error().faults.front().path == "/document/place/place");
}

TEST_CASE("faults carry the path into the document, all of them at once") {
  const auto refused =
      assess(document_of(std::string(flexion_finding) + R"(,{"item":"knee.flexion_passive","side":"midline","value":{"kind":"angle","toward_deg":100}})"
                                                R"(,{"item":"knee.flexion_passive","side":"left","value":{"kind":"angle","toward_deg":190}})"));
  REQUIRE(!refused.has_value());
  bool side = false;
  bool range = false;
  for (const auto& fault : refused.error().faults) {
    side = side || (fault.path.starts_with("/document/findings/1") && fault.code == "item.side");
    range = range || (fault.path.starts_with("/document/findings/2") && fault.code == "value.out_of_range");
  }
  CHECK(side);
  CHECK(range);
}

TEST_CASE("an unusual value is asked back once and accepted when it is said to be so") {
  const std::string unusual =
      R"({"item":"knee.flexion_passive","side":"left","value":{"kind":"angle","toward_deg":168},"instrument":"goniometer_long"})";
  const auto asked = assess(document_of(unusual));
  REQUIRE(!asked.has_value());
  CHECK(asked.error().number() == wire::FaultClass::asked_back);
  CHECK(assess(document_of(unusual, R"(,"confirmed":["value.unusual"])")).has_value());
}

TEST_CASE("another format, and findings inside the exam, are refused by their path") {
  std::string other = document_of(flexion_finding);
  other.replace(other.find("exam/1"), 6, "exam/9");
  CHECK(assess(other).error().faults[0].path == "/document/format");
}

TEST_CASE("a document with a complaint, an answered alert or a finding of an addendum that the edition does not have is refused by its place") {
  const auto refusal = [](const std::string& exam, const std::string& earlier) -> std::optional<wire::Fault> {
    const auto answer = assess(R"({"document":{"format":"limbledger-exam/1","as_of":"2026-11-24","person":{"birth":{"date":"1996-01-01"},"sex":"male","norm_sex":"male"},"exam":{"side":"left","setting":"outreach",)" +
                               exam + R"(},"findings":[])" + earlier + "}}");
    return answer ? std::nullopt : std::optional(answer.error().faults.front());
  };
  CHECK_FALSE(refusal(R"("complaint":"acute_knee")", ""));
  const auto complaint = refusal(R"("complaint":"acute_kne")", "");
  REQUIRE(complaint);
  CHECK(complaint->code == "params.unknown_word");
  CHECK(complaint->path == "/document/exam/complaint");
  CHECK(complaint->expected.find("acute_knee") != std::string::npos);
  const auto earlier = refusal(R"("complaint":"acute_knee")", R"(,"earlier":[{"complaint":"knees","side":"left","setting":"outreach","examined_at":"2026-10-01T10:00:00.000Z"}])");
  REQUIRE(earlier);
  CHECK(earlier->path == "/document/earlier/0/complaint");
  const auto handled = refusal(R"("complaint":"acute_knee","alerts_handled":[{"alert":"alert.cold","urgent":true,"action":"called","at":"2026-11-24T10:00:00.000Z"}])", "");
  REQUIRE(handled);
  CHECK(handled->path == "/document/exam/alerts_handled/0/alert");
  const auto addendum = refusal(R"("complaint":"acute_knee","addenda":[{"entry":"aaaaaaaaaaaaaaaaaaaaaaaaaa","by":"aaaaaaaaaaaaaaaaaaaaaaaaaa","at":"2026-11-24T10:00:00.000Z","kind":"findings","reason":"looked again","findings":[{"item":"knee.brusing","side":"left","value":{"kind":"answer","answer":"yes"}}]}])", "");
  REQUIRE(addendum);
  CHECK(addendum->code == "item.unknown");
  CHECK(addendum->path == "/document/exam/addenda/0/findings/0/item");
}

TEST_CASE("only names a list or the beginning of a name") {
  CHECK(assess(document_of(flexion_finding, R"(,"only":["rules"])"))->statements.empty());
  CHECK(assess(document_of(flexion_finding, R"(,"only":["motion.norm"])"))->statements.size() == 1);
  CHECK(assess(document_of(flexion_finding, R"(,"only":["motion.norm"])"))->rules.empty());
}

TEST_CASE("the working of a document's statement is found by its name, and an unknown name is said to be unknown") {
  service::Context context;
  context.edition = reference::built_in_edition();
  std::string json = document_of(flexion_finding);
  json.insert(json.size() - 1, R"(,"statement":"motion.norm:knee.flexion_passive:left")");
  const auto params = wire::read_text<service::StatementExplainParams>(json);
  REQUIRE(params.has_value());
  const auto working = service::explain_document(context, *params);
  REQUIRE(working.has_value());
  CHECK(working->lines[0].text == "10 / 2.772 = 3.6");
  auto unknown = *params;
  unknown.statement = {"motion.norm:hip.flexion_passive:left"};
  CHECK(service::explain_document(context, unknown).error().faults[0].code == "statement.unknown");
}

TEST_CASE("with a language, statements, alerts, questions, missing and contradictions carry the sentences of the page; without one they do not") {
  const std::string without = wire::write(*assess(document_of(flexion_finding)));
  CHECK(without.find("\"text\"") == std::string::npos);
  const auto told = assess(document_of(flexion_finding, R"(,"language":"en")"));
  REQUIRE(told.has_value());
  REQUIRE(told->statements[0].text.has_value());
  CHECK(told->statements[0].text->text.starts_with("Knee flexion, passive, LEFT, 118.5\u00b0, with error of measurement 111.4 to 125.6: cannot be told"));
  for (const auto& question : told->questions) {
    CHECK((question.text && !question.text->text.empty() && !question.text->text.starts_with("msg.")));
  }
  REQUIRE(!told->missing.empty());
  for (const auto& missing : told->missing) {
    CHECK((missing.text && !missing.text->text.empty()));
  }
  const auto refused = assess(document_of(flexion_finding, R"(,"language":"xx")"));
  REQUIRE(!refused.has_value());
  CHECK(refused.error().faults[0].code == "params.unknown_word");
  CHECK(refused.error().faults[0].path == "/language");
}

// As the fold has it of a recorded exam: no clock of the program can be before its first release (model/time.hpp).
TEST_CASE("a document whose examined_at is of a clock that was not set is judged by no age from it; a day that a person said is judged by") {
  const auto fell = [](const std::string& as_of, const std::string& more) {
    return R"({"document":{"format":"limbledger-exam/1","as_of":")" + as_of + R"(","person":{"birth":{"date":"1944-05-01"},"sex":"female","norm_sex":"female"},"exam":{"complaint":"hip_after_fall",)" +
           R"("side":"left","setting":"outreach","offset_min":0,"examined_at":"2001-01-01T00:10:00.000Z")" + more +
           R"(},"findings":[{"item":"history.mechanism","side":"midline","value":{"kind":"choice","choice":"fall"}},{"item":"gait.steps_now","side":"midline","value":{"kind":"count","count":0}}]}})";
  };
  const auto hip = [](const Result<interpret::Assessment>& assessment) -> std::string {
    for (const interpret::Alert& one : assessment ? assessment->alerts : std::vector<interpret::Alert>{}) {
      if (one.alert.text == "alert.hip_fx_old") {
        return one.message.text;
      }
    }
    return assessment ? "none" : assessment.error().faults.front().code;
  };
  CHECK(hip(assess(fell("2026-11-24", ""))) == "msg.alert.hip_fx_old.raised");  // 56 by that clock, 82 now: taken for old
  CHECK(hip(assess(fell("2026-11-24", R"(,"examined_on":"2026-11-24")"))) == "msg.alert.hip_fx_old.raised");
  CHECK(hip(assess(fell("2001-01-02", ""))) == "none");  // nothing shows it: 56 years
  // Born after it: nothing is refused for the clock, and where the document itself is of then the refusal names what helps.
  const auto newborn = [](const std::string& as_of) {
    return assess(R"({"document":{"format":"limbledger-exam/1","as_of":")" + as_of + R"(","person":{"birth":{"date":"2026-11-03"},"sex":"male","norm_sex":"male"},"exam":{"complaint":"infant_hip","side":"left",)" +
                  R"("setting":"outreach","offset_min":0,"examined_at":"2001-01-01T00:10:00.000Z"},"findings":[{"item":"history.unwell","side":"midline","value":{"kind":"answer","answer":"yes"}},)" +
                  R"({"item":"general.temperature","side":"midline","value":{"kind":"temperature","cel":38.3}}]},"confirmed":["value.unusual"]})");
  };
  const auto ill = newborn("2026-11-24");
  REQUIRE(ill.has_value());
  CHECK(std::any_of(ill->alerts.begin(), ill->alerts.end(), [](const interpret::Alert& one) { return one.alert.text == "alert.acutely_ill" && one.urgency == interpret::Urgency::now; }));
  const auto refused = newborn("2001-01-02");
  REQUIRE(!refused.has_value());
  CHECK(refused.error().faults.front().code == "value.date_order");
  CHECK(refused.error().faults.front().expected.find("clock") != std::string::npos);
  CHECK(refused.error().faults.front().expected.find("examined_on") != std::string::npos);
}

// What the birth settles whatever the day: nobody born in 2019 is sixty, nor is one born in 1944 a child.
TEST_CASE("a document of a doubtful day is judged by the ages that its person can have had: by an unset clock, one that is ahead, and an age that was told") {
  const auto judged = [](const std::string& birth, const std::string& at, const std::string& exam, const std::string& findings) {
    auto assessment = assess(R"({"document":{"format":"limbledger-exam/1","as_of":"2026-11-24","person":{"birth":)" + birth + R"(,"sex":"female","norm_sex":"female"},"exam":{)" + exam +
                             R"(,"side":"left","setting":"outreach","offset_min":0,"examined_at":")" + at + R"("},"findings":[)" + findings + R"(]},"confirmed":["value.unusual"]})");
    REQUIRE(assessment.has_value());
    return *assessment;
  };
  const auto names = [](const interpret::Assessment& assessment, const std::string& alert) {
    std::string lines;
    for (const interpret::Alert& one : assessment.alerts) {
      lines += one.alert.text == "alert." + alert ? one.message.text.substr(one.message.text.rfind('.') + 1) : "";
    }
    return lines;
  };
  const auto asks_of = [](const interpret::Assessment& assessment, const std::string& alert) {
    return std::any_of(assessment.questions.begin(), assessment.questions.end(), [&](const interpret::Question& one) { return one.question.text == "alert." + alert; });
  };
  const std::string unset = "2001-01-01T00:10:00.000Z", ahead = "2031-01-01T00:10:00.000Z";
  const std::string no_injury = R"({"item":"history.mechanism","side":"midline","value":{"kind":"choice","choice":"no_injury"}})";
  const std::string no_steps = R"({"item":"gait.steps_now","side":"midline","value":{"kind":"count","count":0}})";
  const std::string warm = R"({"item":"general.temperature","side":"midline","value":{"kind":"temperature","cel":38.2}})";
  const std::string refuses = R"({"item":"history.refuses_weight","side":"left","value":{"kind":"answer","answer":"yes"}})";
  const auto child = judged(R"({"date":"2019-02-02"})", unset, R"("complaint":"limping_child")", no_injury + "," + refuses + "," + warm);
  CHECK(names(child, "septic_child") != "");
  CHECK(names(child, "hip_fx_old") == "");
  CHECK_FALSE(asks_of(child, "hip_fx_old"));
  CHECK(names(child, "acutely_ill") == "");  // nor a newborn: seven years now, and nothing tells of an infant
  for (const std::string& at : {unset, ahead}) {
    CAPTURE(at);
    const auto grown = judged(R"({"date":"1995-02-02"})", at, R"("complaint":"ankle_injury")", no_steps);
    for (const char* other : {"hip_fx_old", "septic_child"}) {
      CHECK_FALSE(asks_of(grown, other));
      CHECK(names(grown, other) == "");
    }
    const auto old = judged(R"({"date":"1944-05-01"})", at, R"("complaint":"hip_after_fall")", no_steps);
    CHECK(names(old, "hip_fx_old") == "raised");
    CHECK_FALSE(asks_of(old, "septic_child"));
    CHECK(names(judged(R"({"age_years":82,"plus_minus":0,"on":"2026-11-24"})", at, R"("complaint":"hip_after_fall")", no_steps), "hip_fx_old") == "raised");
    // An infant of weeks is one by either clock.
    CHECK(names(judged(R"({"date":"2026-10-10"})", at, R"("complaint":"infant_hip")", warm), "acutely_ill") == "newborn");
  }
  // A record that may be of two years ago: nine months by it, almost three years now.
  CHECK(names(judged(R"({"date":"2024-02-01"})", "2024-11-01T09:00:00.000Z", R"("complaint":"infant_hip")", warm), "acutely_ill") == "");
  // One month by it: nobody knows.
  CHECK(names(judged(R"({"date":"2024-10-01"})", "2024-11-01T09:00:00.000Z", R"("complaint":"infant_hip")", warm), "acutely_ill") == "newborn");
  // A day further on is time zones and drift, two are a clock that is ahead.
  const auto day_asked = [&](const std::string& at) {
    const auto all = judged(R"({"date":"1996-02-02"})", at, R"("complaint":"ankle_injury")", no_steps).contradictions;
    return std::any_of(all.begin(), all.end(), [](const interpret::Contradiction& one) { return one.contradiction.text.starts_with("contradiction.examined_day"); });
  };
  CHECK_FALSE(day_asked("2026-11-25T23:00:00.000Z"));
  CHECK(day_asked("2026-11-26T01:00:00.000Z"));
}

TEST_CASE("what only names is a list, or begins a name that an assessment gives; a slip of the keyboard is refused and no clean page") {
  const auto only = [](const std::string& word) { return assess(document_of(flexion_finding, R"(,"only":[")" + word + R"("])")); };
  for (const char* wrong : {"alertz", "Alerts", "foo", "alerts ", "alert.alix", "rule.ottawa_nee", "condition.acl_teer"}) {
    CAPTURE(wrong);
    const auto refused = only(wrong);
    REQUIRE_FALSE(refused.has_value());
    CHECK(refused.error().faults.front().code == "params.unknown_word");
    CHECK(refused.error().faults.front().path == "/only/0");
    CHECK(refused.error().faults.front().expected.find("alerts, questions, flags") != std::string::npos);
  }
  // Whatever a whole assessment names can be asked for by its name.
  std::size_t names = 0;
  for (const char* name : {"ankle", "child", "clot", "fall", "football", "hip", "infant", "lock", "sole", "stiff"}) {
    std::ifstream file(std::string(LIMBLEDGER_SOURCE_DIR) + "/tests/unit/report/exams/" + name + ".json");
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    const auto whole = assess(R"({"document":)" + text + R"(,"only":["alerts","flags","rules","statements","hypotheses","contradictions"]})");
    REQUIRE(whole.has_value());
    const auto known = [&](const std::string& one) {
      ++names;
      CHECK_MESSAGE(service::check_only(*reference::built_in_edition(), std::vector<wire::Name>{{one}}).empty(), one);
    };
    for (const interpret::Alert& one : whole->alerts) {
      known(one.alert.text);
    }
    for (const interpret::Flag& one : whole->flags) {
      known(one.flag.text);
    }
    for (const interpret::RuleResult& one : whole->rules) {
      known(one.rule.text);
    }
    for (const interpret::Statement& one : whole->statements) {
      known(one.statement.text);
    }
    for (const interpret::Hypothesis& one : whole->hypotheses) {
      known(one.hypothesis.text);
    }
    for (const interpret::Contradiction& one : whole->contradictions) {
      known(one.contradiction.text);
    }
  }
  CHECK(names > 200);
}
