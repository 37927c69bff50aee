// What note, letter and replies say of a value that somebody decided on: whose it is, what was not taken, who decided, when, why, and that
// it came after the signature. People are invented.
#include "core/ledger/fold/records.hpp"
#include "core/ledger/log/log.hpp"
#include "tests/unit/service/letter/letter_fixture.hpp"

#include <cstdlib>
#include <fstream>
#include <iterator>

namespace limbledger::service::test::settled {

namespace {

model::ExaminerId other_examiner() {
  model::ExaminerId id;
  id.bytes.fill(7);
  return id;
}

const ledger::ExamFold& fold_of(LetterFixture& made) {
  model::ExamId id;
  REQUIRE(model::ExamId::from_text(made.exam, id).empty());
  return (*made.desk.desk->records().exam(id))->fold;
}

// As another examiner's tablet would have written it that had been shown nothing but `after`.
std::string from_elsewhere(LetterFixture& made, const model::ObjectId& object, const std::string& op, const std::string& body, const std::vector<model::EntryId>& after,
                           const std::vector<model::EntryId>& replaces = {}) {
  ledger::NewOperation operation;
  operation.object = object;
  operation.op = op;
  REQUIRE(model::RequestId::from_text(request_id(900 + ++made.number), operation.request).empty());
  operation.after = after;
  operation.replaces = replaces;
  operation.by = other_examiner();
  operation.body_json = body;
  const auto appended = made.desk.desk->log().append({&operation, 1}, made.desk.desk->edition().id(), made.desk.desk->examiner_key());
  REQUIRE(appended.has_value());
  made.desk.desk->records().changed(*appended);
  return appended->front().entry().to_text();
}

std::string finding_elsewhere(LetterFixture& made, int deg) {
  model::FindingId finding;
  finding.bytes.fill(9);
  const ledger::ExamFold& fold = fold_of(made);
  return from_elsewhere(made, model::as_object(*fold.exam.exam), "finding",
                        R"({"finding":")" + finding.to_text() + R"(","observation":{"item":"knee.flexion_active","side":"left","value":{"kind":"angle","deg":)" + std::to_string(deg) +
                            R"(,"toward":"flexion","toward_deg":)" + std::to_string(deg) + R"(},"instrument":"goniometer_long","position":"supine"}})",
                        fold.opening_heads);
}

std::string note_of(LetterFixture& made) { return at(made.desk.ok("note.write", R"({"exam":")" + made.exam + "\"}"), "/text"); }

std::string settle(LetterFixture& made, const std::string& take, const std::string& reason) {
  return made.write("conflict.settle", R"("take":")" + take + R"(","reason":")" + reason + "\"");
}

std::string section_of(const std::string& page, const std::string& title) {
  const auto begin = page.find("\n" + title);
  REQUIRE(begin != std::string::npos);
  return page.substr(begin + 1, page.find("\n\n", begin + 1) - begin);
}

std::string own_reading(const LetterFixture& made) { return at(made.found, "/recorded/2/entry"); }

constexpr std::string_view title = "Decided between values that stood against each other";

}  // namespace

TEST_CASE("a value that was decided on after the signature: note, letter and replies say whose it is, what was not taken, by whom, and why") {
  LetterFixture made;
  made.sign();
  made.desk.world.pass(300'000);
  const std::string there = finding_elsewhere(made, 105);
  CHECK(note_of(made).find(title) == std::string::npos);
  made.desk.world.pass(300'000);
  const std::string reply = settle(made, there, "looked at again together");
  CHECK(at(reply, "/exam/findings/1/value/deg") == "105");
  CHECK(at(reply, "/exam/findings/1/examiner") == other_examiner().to_text());
  CHECK(at(reply, "/exam/findings/1/settled/0/after_signature") == "seen");
  CHECK(at(reply, "/exam/findings/1/settled/0/text").empty());  // no language was named
  const std::string note = note_of(made);
  CHECK(says(note, "AFTER THIS SIGNATURE it was decided between values that stood against each other: Knee flexion, active, LEFT"));
  CHECK(says(note, "Knee flexion, active, LEFT: 105\u00b0, long goniometer, supine (\u2068" + other_examiner().to_text()));
  CHECK(says(note, "Decided by \u2068Invented Examiner\u2069, 2026-11-24 13:25 UTC+03:00, after the signature."));
  CHECK(says(note, "Not taken: 80\u00b0, long goniometer, supine (\u2068Invented Examiner\u2069, 2026-11-24"));
  CHECK(says(note, "Reason: \u2068looked at again together\u2069."));
  CHECK(says(note, "105\u00b0, long goniometer, supine, by \u2068" + other_examiner().to_text() + " (an examiner; the name is not known here)\u2069, decided on"));
  const std::string letter = at(made.letter(), "/text");
  CHECK(says(letter, "AFTER THIS SIGNATURE"));
  CHECK(says(letter, "Decided by \u2068Invented Examiner\u2069"));
  CHECK(says(letter, "Not taken: 80\u00b0"));
  const std::string read = made.desk.ok("exam.read", R"({"exam":")" + made.exam + R"(","language":"en"})");
  const std::string told = at(read, "/exam/findings/1/settled/0/text");
  CHECK(says(told, "Not taken: 80\u00b0"));
  CHECK(says(told, "after the signature"));
  CHECK(says(told, "Reason: \u2068looked at again together\u2069."));
  const std::string history = made.desk.ok("finding.history", R"({"exam":")" + made.exam + R"(","item":"knee.flexion_active","language":"en"})");
  CHECK(at(history, "/findings/2/settled/0/text") == told);
  CHECK(at(history, "/findings/0/settled").empty());
}

TEST_CASE("a value that was decided on and decided anew, as it is printed") {
  LetterFixture made;
  made.sign();
  made.desk.world.pass(300'000);
  const std::string there = finding_elsewhere(made, 105);
  settle(made, there, "looked at again together");
  made.desk.world.pass(300'000);
  settle(made, own_reading(made), "the tablets had been mixed up");
  const std::string section = section_of(note_of(made), std::string(title));
  CHECK(says(section, "LEFT: 80\u00b0, long goniometer, supine (\u2068Invented Examiner\u2069"));
  CHECK(says(section, "Decided once and undone since: 105\u00b0"));
  const std::string path = std::string(LIMBLEDGER_SOURCE_DIR) + "/tests/unit/report/data/note_settled.txt";
  if (std::getenv("LIMBLEDGER_KEEP_PAGES") != nullptr) {
    std::ofstream(path) << section;
  }
  std::ifstream kept(path);
  CHECK(section == std::string(std::istreambuf_iterator<char>(kept), {}));
}

TEST_CASE("impressions of two who did not know of each other are both said, and once decided the page says whose it is") {
  LetterFixture made;
  const auto opening = fold_of(made).opening_heads;
  const model::ObjectId exam = model::as_object(*fold_of(made).exam.exam);
  const std::string there = from_elsewhere(made, exam, "impression", R"({"impression":{"text":"bruised kneecap","side":"left"}})", opening);
  const std::string open = note_of(made);
  CHECK(says(open, "not decided between: "));
  CHECK(says(open, "LEFT: \u2068bruised kneecap\u2069"));
  CHECK(says(open, "LEFT: \u2068broken kneecap\u2069"));
  made.write("impression.record", R"("impression":{"text":"bruised kneecap","side":"left"},"replaces":[")" + made.impression_entry + "\",\"" + there + R"("],"reason":"seen by both")");
  const std::string note = note_of(made);
  CHECK(says(note, "Impression: LEFT: \u2068bruised kneecap\u2069 (\u2068" + other_examiner().to_text()));
  CHECK(says(note, "Not taken: LEFT: \u2068broken kneecap\u2069 (\u2068Invented Examiner\u2069"));
  CHECK(says(note, "Reason: \u2068seen by both\u2069."));
  CHECK(says(section_of(note, "Examiner's impression"), other_examiner().to_text()));
}

TEST_CASE("a birth that was decided on stands on the page with the one that was not taken") {
  LetterFixture made;
  model::PersonId person;
  REQUIRE(model::PersonId::from_text(made.person, person).empty());
  const auto registered = *(*made.desk.desk->records().person(person))->fold.person.revision;
  const auto amend = [&](const std::string& birth, const std::string& replaces, const std::string& seen) {
    return made.desk.ok("person.amend", R"({"person":")" + made.person + R"(","changes":{"birth":{"date":")" + birth + R"("}},"replaces":)" + replaces + R"(,"reason":"the mother knows","seen":)" + seen + "," + made.request() + "}");
  };
  const std::string first = "[\"" + registered.front().to_text() + "\"]";
  amend("2003", first, first);
  const std::string there = from_elsewhere(made, model::as_object(person), "person_change", R"({"birth":{"date":"1999"}})", registered, registered);
  const std::string two = made.desk.ok("person.read", R"({"person":")" + made.person + "\"}");
  CHECK(at(two, "/conflicts/0/about") == "birth");
  CHECK(at(two, "/settled").empty());
  amend("1999", at(two, "/revision"), at(two, "/revision"));
  const std::string decided = made.desk.ok("person.read", R"({"person":")" + made.person + "\"}");
  CHECK(at(decided, "/conflicts").empty());
  CHECK(at(decided, "/settled/0/about") == "birth");
  CHECK(at(decided, "/settled/0/taken") == there);
  const std::string note = note_of(made);
  CHECK(says(note, "Birth: 1999 (\u2068" + other_examiner().to_text()));
  CHECK(says(note, "Not taken: 2003 (\u2068Invented Examiner\u2069"));
  CHECK(says(note, "Reason: \u2068the mother knows\u2069."));
}

}  // namespace limbledger::service::test::settled
