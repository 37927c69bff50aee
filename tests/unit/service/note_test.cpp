// note.write: the page of a recorded exam. Order and wording: clinical safety, parts A and C (requirements 1, 8, 10, 16, 18, 24);
// that the page of a ledger and of a document say the same.
#include "core/report/page.hpp"
#include "core/service/methods/exam/exam.hpp"
#include "core/service/methods/exam/note.hpp"
#include "core/service/methods/say/document.hpp"

#include "tests/unit/service/desk_fixture.hpp"

using namespace limbledger;
using namespace limbledger::service;
using namespace limbledger::service::test;

namespace {

struct Recorded {
  std::string exam;
  std::string person;
};

// One person with a tender knee, an impression and a plan; `extra` is put among the findings.
Recorded record(const DeskFixture& desk, const std::string& extra = "") {
  unsigned number = 0;
  const auto request = [&] { return "\"request\":\"" + request_id(++number) + "\""; };
  Recorded out;
  const std::string person = desk.ok("person.register", R"({"names":[{"text":"<b>Wulan</b> & Invented"}],"birth":{"date":"1976"},"sex":"female",)" + request() + "}");
  out.person = at(person, "/person/person");
  std::string reply = desk.ok("exam.open", R"({"person":")" + out.person + R"(","complaint":"acute_knee","side":"left","setting":"outreach",)"
                                           R"("examined_at":"2026-11-24T08:00:00.000Z","offset_min":180,"injured_on":"2026-11-23",)" + request() + "}");
  out.exam = at(reply, "/exam/exam");
  const auto write = [&](const std::string& method, const std::string& members) {
    reply = desk.ok(method, R"({"exam":")" + out.exam + "\"," + members + ",\"seen\":" + at(reply, "/revision") + "," + request() + "}");
  };
  write("finding.record", R"("findings":[{"item":"knee.patella_tender","side":"left","value":{"kind":"answer","answer":"yes"}},)"
                          R"({"item":"knee.flexion_active","side":"left","value":{"kind":"angle","toward_deg":80},"instrument":"goniometer_long","position":"supine"})" +
                              extra + "]");
  write("impression.record", R"("impression":{"text":"broken kneecap","side":"left","certainty":"probable"})");
  write("plan.record", R"("plan_items":[{"kind":"splint","text":"straight splint","side":"left","became":"given"}])");
  return out;
}

std::string note(const DeskFixture& desk, const std::string& exam, const std::string& more = "") {
  return desk.ok("note.write", R"({"exam":")" + exam + "\"" + more + "}");
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

}  // namespace

TEST_CASE("the note of a ledger and the page of its document are the same text") {
  DeskFixture desk;
  const Recorded made = record(desk);
  const std::string text = at(note(desk, made.exam), "/text");
  const std::string exam = desk.ok("exam.read", R"({"exam":")" + made.exam + "\"}");
  const std::string person = desk.ok("person.read", R"({"person":")" + made.person + "\"}");
  // The document holds what the two methods gave, the findings beside the exam.
  std::string body = at(exam, "/exam");
  const std::string findings = at(exam, "/exam/findings");
  const auto place = body.find(",\"findings\":" + findings);
  REQUIRE(place != std::string::npos);
  body.erase(place, std::string(",\"findings\":").size() + findings.size());
  const std::string json = R"({"format":"limbledger-exam/1","as_of":"2026-11-24","person":)" + at(person, "/person") + ",\"exam\":" + body +
                           ",\"findings\":" + findings + ",\"names\":" + at(exam, "/names") + "}";
  const auto parsed = wire::parse(json);
  REQUIRE(parsed.has_value());
  const auto document = wire::read<ExamDocument>(*parsed, parsed->root(), wire::Unknown::refuse, "/document");
  REQUIRE(document.has_value());
  DocumentAssessParams params;
  params.document = *document;
  Context context;
  context.edition = &desk.desk->edition();
  const auto assessment = document_assess(context, params);
  const auto checked = check_document(*context.edition, params.document, std::nullopt);
  REQUIRE(assessment.has_value());
  REQUIRE(checked.has_value());
  report::PageNames names;
  for (const NamedExaminer& one : document->names->examiners.value()) {
    names.examiners[one.examiner] = one.name.text;
  }
  CHECK(report::exam_page(checked->exam, checked->person, *assessment, *report::built_in_words(), *context.edition, names) == text);
  CHECK(has(text, "Cannot say yet: needs "));
}

TEST_CASE("a note names the entries it was written from, and a demonstration says so on top") {
  DeskFixture desk(LedgerKind::demonstration);
  const Recorded made = record(desk);
  const std::string written = note(desk, made.exam, R"(,"language":"en")");
  CHECK(at(written, "/about") == at(desk.ok("exam.read", R"({"exam":")" + made.exam + "\"}"), "/revision"));
  CHECK(at(written, "/text").starts_with("DEMONSTRATION: invented people only\n"));
  CHECK(has(at(written, "/html"), "DEMONSTRATION: invented people only"));
  DeskFixture clinic;
  CHECK(at(note(clinic, record(clinic).exam), "/text").starts_with("EXAMINATION  "));
  DeskFixture practice(LedgerKind::practice);
  CHECK(at(note(practice, record(practice).exam), "/text").starts_with("PRACTICE: "));
}

TEST_CASE("the page to print loads nothing, runs nothing, and what people wrote stays text") {
  DeskFixture desk;
  const std::string html = at(note(desk, record(desk).exam), "/html");
  CHECK(html.starts_with("<!DOCTYPE html>\n"));
  CHECK(has(html, "<bdi>&lt;b&gt;Wulan&lt;/b&gt; &amp; Invented</bdi>"));
  for (const std::string word : {"<script", "http:", "https:", "src=", "href=", "url(", "@import", "<img", "<link", " on"}) {
    CAPTURE(word);
    // " on" begins the handlers of events; in a text it is followed by a space or a dash.
    for (std::size_t at = html.find(word); at != std::string::npos; at = html.find(word, at + 1)) {
      CHECK((word == " on" && html.find('=', at) > html.find_first_of(" <>-.,;", at + 1)));
    }
  }
  CHECK(has(html, "size:A4"));
  CHECK(has(html, "<th scope=\"col\">RIGHT</th><th scope=\"col\">LEFT</th>"));
}

TEST_CASE("what is asked for a person's protection is on no page until an examiner asks for it, whatever the answer") {
  for (const std::string answer : {"yes", "no"}) {
    DeskFixture desk;
    const Recorded made = record(desk, R"(,{"item":"history.unexplained_bruises","side":"midline","value":{"kind":"answer","answer":")" + answer + "\"}}");
    const std::string usual = note(desk, made.exam);
    CHECK(has(at(usual, "/text"), "  - See protected note: the examiner alone opens it"));
    CHECK(!has(at(usual, "/text"), "Bruises"));
    CHECK(at(usual, "/protected").empty());
    const std::string asked = note(desk, made.exam, R"(,"protected":true)");
    CHECK(has(at(asked, "/text"), "Bruises that nothing explains: " + answer + "\n"));
    CHECK(at(asked, "/protected") == "true");
    desk.caller.scope = Scope::viewer;
    CHECK(!has(at(note(desk, made.exam), "/text"), "rotected"));
    const auto refused = desk.call("note.write", R"({"exam":")" + made.exam + R"(","protected":true})");
    CHECK(codes_of(refused) == "token.scope");
    CHECK(path_of(refused) == "/protected");
  }
}

TEST_CASE("a note in a language without words, or of an exam that is not there, is refused by name") {
  DeskFixture desk;
  const Recorded made = record(desk);
  const auto language = desk.call("note.write", R"({"exam":")" + made.exam + R"(","language":"xx"})");
  CHECK(codes_of(language) == "params.unknown_word");
  CHECK(path_of(language) == "/language");
  CHECK(codes_of(desk.call("note.write", R"({"exam":")" + made.person + "\"}")) == "exam.unknown");
}
