// take_home.write, and the languages of forms and sheets. Source: clinical safety, requirement 19 and wording A.
#include "tests/unit/service/letter/letter_fixture.hpp"

#include <cctype>

using namespace limbledger;
using namespace limbledger::service;
using namespace limbledger::service::test;

namespace {

std::string sheet_call(const LetterFixture& made, const std::string& more = "") { return R"({"exam":")" + made.exam + "\"" + more + "}"; }

void review(LetterFixture& made, const std::string& language) {
  made.desk.ok("place.amend", R"({"place":")" + made.place + R"(","changes":{"reviewed":[{"language":")" + language +
                                  R"(","by":"Dr Invented","on":"2026-11-01"}]},"replaces":[],"seen":)" + made.place_seen + "," + made.request() + "}");
}

}  // namespace

TEST_CASE("C19: a language that no named clinician has read prints no sheet; a place names who read it, and when") {
  LetterFixture made;
  const auto refused = made.desk.call("take_home.write", sheet_call(made));
  CHECK(codes_of(refused) == "language.not_reviewed");
  CHECK(path_of(refused) == "/language");
  review(made, "en");
  const std::string sheet = made.desk.ok("take_home.write", sheet_call(made));
  CHECK(at(sheet, "/for_review").empty());
  CHECK(!says(at(sheet, "/text"), "FOR REVIEW"));
  CHECK(codes_of(made.desk.call("take_home.write", sheet_call(made, R"(,"language":"es")"))) == "language.not_reviewed");
  CHECK(codes_of(made.desk.call("take_home.write", sheet_call(made, R"(,"language":"xx")"))) == "params.unknown_word");
}

TEST_CASE("C19: labels of a form alone make no sheet, also where somebody has read them") {
  LetterFixture made;
  review(made, "fr");
  CHECK(codes_of(made.desk.call("take_home.write", sheet_call(made, R"(,"language":"fr")"))) == "language.no_texts");
}

TEST_CASE("a ledger of invented people prints the sheet without a review, and marks it") {
  LetterFixture made(LedgerKind::demonstration);
  const std::string sheet = made.desk.ok("take_home.write", sheet_call(made));
  CHECK(at(sheet, "/for_review") == "true");
  CHECK(says(at(sheet, "/text"), "FOR REVIEW"));
  CHECK(says(at(sheet, "/text"), "DEMONSTRATION"));
  CHECK(codes_of(made.desk.call("take_home.write", sheet_call(made, R"(,"language":"es")"))) == "language.not_reviewed");
}

TEST_CASE("C19: the sheet says what the examiner wrote, three things at most, when to come back, whom to call, and the side in words") {
  LetterFixture made(LedgerKind::demonstration);
  made.write("plan.record", R"("plan_items":[{"kind":"exercise","text":"tighten the thigh"},{"kind":"advice","text":"rest it high"},)"
                            R"({"kind":"limit","text":"no weight on it","side":"left"},{"kind":"medicine","text":"as written by hand"},)"
                            R"({"kind":"safety_net","text":"the splint hurts"},{"kind":"review","text":"here again","by":"2026-12-01"}])");
  const std::string sheet = made.desk.ok("take_home.write", sheet_call(made));
  const std::string text = at(sheet, "/text");
  CHECK(says(text, "LEFT side: \u2068broken kneecap\u2069"));
  CHECK(says(text, "- LEFT side: \u2068no weight on it\u2069 - LEFT side: \u2068straight splint\u2069 - \u2068as written by hand\u2069"));
  CHECK(!says(text, "tighten the thigh"));
  CHECK(at(sheet, "/left_out") == "2");
  CHECK(says(text, "Your examiner: come back if: \u2068the splint hurts\u2069 Come back the same day it happens, if: - the foot turns cold, numb, pale or blue"));
  CHECK(says(text, "\u2068clinic office\u2069: \u2068000 111\u2069"));
  CHECK(says(text, "\u2068here again\u2069, by 2026-12-01"));
  CHECK(says(text, "You are sent to: \u2068bone clinic\u2069, by 2026-12-01"));
  CHECK(!says(text, "ruises"));
  CHECK(at(sheet, "/about") == made.revision());
}

TEST_CASE("C19: where nothing was written there are lines to write on, and no number but of a day or a telephone") {
  LetterFixture made(LedgerKind::demonstration);
  const std::string other = made.desk.ok("exam.open", R"({"complaint":"ankle_injury","side":"right","setting":"outreach",)" + made.request() + "}");
  const std::string sheet = made.desk.ok("take_home.write", R"({"exam":")" + at(other, "/exam/exam") + "\"}");
  const std::string text = at(sheet, "/text");
  CHECK(says(text, "Name: ____"));
  CHECK(says(text, "This sheet speaks of your RIGHT side. ____"));
  CHECK(says(text, "What to do ---------- ____"));
  CHECK(says(text, "Next visit ---------- ____"));
  const std::size_t day = text.find("Seen on 20");  // the day of the visit, and nothing else
  REQUIRE(day != std::string::npos);
  for (const char c : text.substr(0, day) + text.substr(text.find('\n', day))) {
    CHECK(std::isdigit(static_cast<unsigned char>(c)) == 0);
  }
}

TEST_CASE("what was said back is recorded with the plan and stands in the note, not on the person's own sheet") {
  LetterFixture made(LedgerKind::demonstration);
  made.write("plan.record", R"("plan_items":[{"kind":"advice","text":"rest it high","became":"given","said_back":"partly"}])");
  CHECK(made.read("/exam/plan/2/said_back") == "partly");
  CHECK(!says(at(made.desk.ok("take_home.write", sheet_call(made)), "/text"), "artly"));
  CHECK(says(at(made.desk.ok("note.write", sheet_call(made)), "/text"), "said back: partly"));
}

TEST_CASE("form.describe in another language gives the words of each name, for review; what nobody translated is English and marked") {
  DeskFixture desk;
  const std::string form = desk.ok("form.describe", R"({"complaint":"acute_knee","language":"es"})");
  CHECK(at(form, "/language") == "es");
  CHECK(at(form, "/for_review") == "true");
  CHECK(form.find(R"({"message":"msg.item.knee_lachman.short","text":"Prueba de Lachman"})") != std::string::npos);
  CHECK(form.find(R"({"message":"msg.side.left","text":"IZQUIERDA"})") != std::string::npos);
  CHECK(form.find(R"({"message":"msg.why.no_limb","text":"sin miembro"})") != std::string::npos);
  CHECK(form.find(" (en)\",\"english\":true}") != std::string::npos);
  const std::string english = desk.ok("form.describe", R"({"complaint":"acute_knee","language":"en"})");
  CHECK(at(english, "/for_review").empty());
  CHECK(english.find(" (en)\"") == std::string::npos);
  CHECK(at(desk.ok("form.describe", R"({"complaint":"acute_knee"})"), "/texts").empty());
  CHECK(codes_of(desk.call("form.describe", R"({"complaint":"acute_knee","language":"xx"})")) == "params.unknown_word");
}

TEST_CASE("C19: a kiosk shows no words that no clinician has read") {
  LetterFixture made;
  made.desk.caller.scope = Scope::kiosk;
  CHECK(codes_of(made.desk.call("form.describe", R"({"complaint":"acute_knee","language":"fr"})")) == "language.not_reviewed");
  made.desk.caller.scope = Scope::examiner;
  review(made, "fr");
  made.desk.caller.scope = Scope::kiosk;
  CHECK(codes_of(made.desk.call("form.describe", R"({"complaint":"acute_knee","language":"fr"})")) == "answered");
}

TEST_CASE("form.write in Spanish and French names its language and says on each sheet that it is for review") {
  DeskFixture desk;
  for (const std::string language : {"es", "fr"}) {
    const std::string paper = desk.ok("form.write", R"({"complaint":"ankle_injury","language":")" + language + "\"}");
    const std::string html = at(paper, "/html");
    CHECK(at(paper, "/language") == language);
    CHECK(at(paper, "/for_review") == "true");
    CHECK(html.find("<html lang=\"" + language + "\"") != std::string::npos);
    // In the head of the table, which stands again on each sheet.
    const auto mark = html.find(language == "es" ? "PARA REVISI" : "RELIRE");
    CHECK(mark < html.find("</thead>"));
    CHECK(html.find(language == "es" ? "IZQUIERDA" : "GAUCHE") != std::string::npos);
  }
}
