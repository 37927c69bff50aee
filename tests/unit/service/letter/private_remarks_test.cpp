// What an examiner wrote in own words beside something that a protected alert looks at. The expected words are those that the test itself
// wrote; a logic test of our own rule (clinical safety, C16). Everything is invented.
#include "core/interpret/after/private_remarks.hpp"
#include "tests/unit/service/letter/letter_fixture.hpp"

#include <doctest/doctest.h>

#include <array>
#include <string>

namespace limbledger::service::test::private_remarks {

namespace {

[[nodiscard]] bool says(const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; }

// An infant who does not move about, bruised at the shin and sore below the knee; each with a remark, as is what no such alert looks at.
struct Infant : LetterFixture {
  explicit Infant(const std::string& moves = "moves_not_yet", const std::string& born = "2026-05-20") : LetterFixture(LedgerKind::demonstration) {
    person = at(desk.ok("person.register", R"({"names":[{"text":"Timi Invented"}],"birth":{"date":")" + born + R"("},"sex":"male",)" + request() + "}"), "/person/person");
    exam = at(desk.ok("exam.open", R"({"person":")" + person + R"(","complaint":"acute_knee","side":"left","setting":"outreach","examined_at":"2026-11-24T08:00:00.000Z","offset_min":180,"injured_on":"2026-11-23",)" + request() + "}"),
              "/exam/exam");
    write("finding.record", R"("findings":[{"item":"history.moves_about","side":"midline","value":{"kind":"choice","choice":")" + moves + R"("},"remark":"SAID_MOVES"},)"
                            R"({"item":"skin.bruises","side":"left","value":{"kind":"answer","answer":"yes"},"remark":"LIKE_TEETH"},)"
                            R"({"item":"knee.bone_tender_elsewhere","side":"left","value":{"kind":"answer","answer":"no"},"remark":"PULLED_AWAY"},)"
                            R"({"item":"knee.effusion_ballottement","side":"left","value":{"kind":"test","result":"negative"},"remark":"SLACK_TODAY"}])");
  }
  [[nodiscard]] std::string note(const std::string& more = {}) const { return at(desk.ok("note.write", R"({"exam":")" + exam + "\"" + more + "}"), "/text"); }
  [[nodiscard]] bool raises() const { return says(desk.ok("exam.assess", R"({"exam":")" + exam + R"(","protected":true})"), R"("alert":"alert.nai")"); }
};

constexpr std::array apart{"SAID_MOVES", "LIKE_TEETH", "PULLED_AWAY"};

}  // namespace

TEST_CASE("C16: a remark on anything that a raised protected alert looks at is on no page but the protected ones; what was found stays, and so does every other remark") {
  Infant made;
  REQUIRE(made.raises());
  const std::string carried = at(made.letter(), "/text");
  const std::string home = at(made.desk.ok("take_home.write", R"({"exam":")" + made.exam + "\"}"), "/text");
  const std::string note = made.note();
  const std::string sealed = at(made.letter(R"(,"protected":true)"), "/text");
  const std::string opened = made.note(R"(,"protected":true)");
  for (const char* remark : apart) {
    CAPTURE(remark);
    CHECK_FALSE(says(carried, remark));
    CHECK_FALSE(says(home, remark));
    CHECK_FALSE(says(note, remark));
    CHECK(says(sealed, remark));
    CHECK(says(opened, remark));
  }
  CHECK(says(note, "Bruises on this limb"));
  CHECK(says(carried, "Bruises on this limb"));
  CHECK(says(note, "SLACK_TODAY"));
  CHECK(says(opened, "SLACK_TODAY"));
  CHECK_FALSE(says(sealed, "SLACK_TODAY"));
  // Not silently for whoever keeps the note; nothing at all on what is carried.
  CHECK(says(note, "A remark is kept in the protected note."));
  CHECK_FALSE(says(carried, "rotected"));
  CHECK_FALSE(says(home, "rotected"));
  CHECK_FALSE(says(opened, "A remark is kept"));
  made.desk.caller.scope = Scope::viewer;
  const std::string viewed = made.note() + made.desk.ok("exam.read", R"({"exam":")" + made.exam + "\"}") + made.desk.ok("finding.history", R"({"exam":")" + made.exam + R"(","item":"skin.bruises"})");
  for (const char* remark : apart) {
    CHECK_FALSE(says(viewed, remark));
  }
  CHECK(says(viewed, "SLACK_TODAY"));
  CHECK_FALSE(says(viewed, "rotected"));
}

TEST_CASE("C16: where no protected alert is raised every remark stands where it always stood") {
  Infant made("moves_walks", "2022-05-20");
  REQUIRE_FALSE(made.raises());
  const std::string note = made.note();
  for (const char* remark : apart) {
    CHECK(says(note, remark));
  }
  CHECK(says(at(made.letter(), "/text"), "LIKE_TEETH"));
  CHECK_FALSE(says(note, "A remark is kept"));
}

TEST_CASE("C16: a remark in an addendum, and one of a value that was decided on, is kept apart as well") {
  Infant made;
  made.write("exam.sign", R"("read_aloud":"Timi Invented, LEFT leg","confirmed":["note.protected"])");
  made.write("addendum.record", R"("kind":"findings","reason":"looked again","findings":[{"item":"skin.bruises","side":"right","value":{"kind":"answer","answer":"yes"},"remark":"ROUND_MARKS"}])");
  const std::string whole = made.desk.ok("exam.read", R"({"exam":")" + made.exam + "\"}");
  CHECK(says(whole, "ROUND_MARKS"));
  CHECK_FALSE(says(made.note() + at(made.letter(), "/text"), "ROUND_MARKS"));
  made.desk.caller.scope = Scope::viewer;
  CHECK_FALSE(says(made.desk.ok("exam.read", R"({"exam":")" + made.exam + "\"}"), "ROUND_MARKS"));

  const std::string written = R"({"item":"skin.bruises","side":"left","value":{"kind":"answer","answer":"yes"},"remark":"LIKE_TEETH"})";
  model::Exam exam;
  model::Finding& decided = exam.findings.emplace().emplace_back();
  decided.item = {"skin.bruises"};
  model::Settled& settled = decided.settled.emplace().emplace_back();
  settled.about = {"finding"};
  settled.value = wire::Raw{written};
  settled.among.emplace_back().value = wire::Raw{written};
  CHECK_FALSE(interpret::take_out_remarks({{"knee.bruising"}}, exam));
  CHECK(settled.value->json == written);
  CHECK(interpret::take_out_remarks({{"skin.bruises"}}, exam));
  for (const std::string& left : {settled.value->json, settled.among.front().value->json}) {
    CHECK_FALSE(says(left, "LIKE_TEETH"));
    CHECK(says(left, R"("answer":"yes")"));
  }
}

}  // namespace limbledger::service::test::private_remarks
