// How examiners of other devices are called: beside the signature on note and letter, on the day list and in the queue, by the word that they
// signed themselves. An id is never alone; two names are both there; a word that somebody else says names nobody. People are invented.
#include "tests/unit/service/clinic/other_device.hpp"

namespace limbledger::service::test::examiner_names {

namespace {

const std::string knee_exam = R"({"complaint":"acute_knee","side":"left","setting":"outreach","examined_at":"2026-11-24T10:00:00.000Z","offset_min":0,"request":")" + request_id(1) + "\"}";

model::ExaminerId colleague() {
  model::ExaminerId id;
  id.bytes.fill(51);
  return id;
}

std::string flexion(int deg, std::uint8_t number) {
  model::FindingId finding;
  finding.bytes.fill(number);
  return R"({"finding":")" + finding.to_text() + R"(","observation":{"item":"knee.flexion_active","side":"left","value":{"kind":"angle","deg":)" + std::to_string(deg) +
         R"(,"toward":"flexion","toward_deg":)" + std::to_string(deg) + R"(},"instrument":"goniometer_long","position":"supine"}})";
}

// The colleague opens an exam on the other device and signs it there, and a second one stays open in conflict with what is found here.
struct Clinic {
  DeskFixture desk;
  std::string signed_exam;
  std::string open_exam = at(desk.ok("exam.open", knee_exam), "/exam/exam");
  OtherDevice tablet{desk, desk.store, 77};

  Clinic() { tablet.is_used_by(colleague()); }

  void works() {
    model::RequestId request;
    REQUIRE(model::RequestId::from_text(request_id(700), request).empty());
    const model::ObjectId object = tablet.log->object_for(ledger::ObjectType::exam, request, 0);
    signed_exam = model::ExamId{object.bytes}.to_text();
    const model::EntryId opened = tablet.write(object, 700, "exam", R"({"complaint":"acute_knee","side":"left","setting":"outreach","offset_min":0})", {});
    const model::EntryId found = tablet.write(object, 701, "finding", flexion(110, 9), {opened});
    tablet.write(object, 702, "sign", R"({"read_aloud":"Invented, 50, left, stiff knee"})", {found}, true);
    model::ExamId open;
    REQUIRE(model::ExamId::from_text(open_exam, open).empty());
    const auto there = desk.desk->log().operations(model::as_object(open));
    tablet.write(model::as_object(open), 703, "finding", flexion(95, 10), {there->front().entry()});
    tablet.give_to(desk);
    desk.ok("finding.record", R"({"exam":")" + open_exam + R"(","findings":[{"item":"knee.flexion_active","side":"left","value":{"kind":"angle","toward_deg":112},"instrument":"goniometer_long","position":"supine","beside":true}],"seen":[")" +
                                  there->front().entry().to_text() + R"("],"request":")" + request_id(3) + "\"}");
  }
  [[nodiscard]] std::string note() const { return at(desk.ok("note.write", R"({"exam":")" + signed_exam + "\"}"), "/text"); }
  [[nodiscard]] std::string letter() const {
    const std::string seen = at(desk.ok("exam.read", R"({"exam":")" + signed_exam + "\"}"), "/revision");
    return at(desk.ok("letter.write", R"({"exam":")" + signed_exam + R"(","question":"Is it stiff?","seen":)" + seen + R"(,"confirmed":["consent.send"],"request":")" + request_id(40) + "\"}"), "/text");
  }
};

// Without the marks that keep the direction of what people wrote.
std::string plain(std::string text) {
  for (const std::string mark : {"\u2068", "\u2069"}) {
    for (std::size_t place = text.find(mark); place != std::string::npos; place = text.find(mark)) {
      text.erase(place, mark.size());
    }
  }
  return text;
}
bool has(const std::string& text, const std::string& words) { return plain(text).find(words) != std::string::npos; }

}  // namespace

TEST_CASE("an examiner of another device stands by name and role beside the signature on note and letter, on the day list and in the queue") {
  Clinic clinic;
  clinic.tablet.says(690, R"({"name":"Tuma Invented","role":"nurse"})");
  clinic.works();
  CHECK(has(clinic.note(), "Signed by Tuma Invented, nurse, "));
  const std::string letter = clinic.letter();
  CHECK(has(letter, "Tuma Invented, nurse"));
  CHECK(letter.find(colleague().to_text()) == std::string::npos);
  const std::string read = clinic.desk.ok("exam.read", R"({"exam":")" + clinic.signed_exam + "\"}");
  CHECK(at(read, "/names/examiners/0/name") == "Tuma Invented");
  CHECK(at(read, "/names/examiners/0/role") == "nurse");
  CHECK(at(read, "/names/examiners/0/also").empty());
  const std::string day = clinic.desk.ok("day.list", R"({"day":"2026-11-24","language":"en"})");
  CHECK(has(at(day, "/text"), "Tuma Invented, nurse"));
  CHECK(day.find("Tuma Invented") < day.find("\"text\""));
  const std::string queue = clinic.desk.ok("conflict.list", R"({"language":"en"})");
  CHECK(has(queue, R"("by_name":"Tuma Invented, nurse")"));
  CHECK(has(at(queue, "/text"), "Tuma Invented, nurse"));
}

TEST_CASE("an id without a name is never alone: note, letter, day list and queue say that the name is not known here") {
  Clinic clinic;
  clinic.works();
  const std::string words = colleague().to_text() + " (an examiner; the name is not known here)";
  CHECK(has(clinic.note(), words));
  CHECK(has(clinic.letter(), "the name is not known here"));
  CHECK(has(clinic.desk.ok("day.list", R"({"day":"2026-11-24"})"), words));
  CHECK(has(clinic.desk.ok("conflict.list", "{}"), words));
}

TEST_CASE("two devices that call one examiner differently: both names are shown, and a word that replaces both settles it") {
  Clinic clinic;
  clinic.tablet.says(690, R"({"name":"Tuma Invented","role":"nurse"})");
  OtherDevice second(clinic.desk, clinic.desk.store, 78);
  second.is_used_by(colleague());
  second.says(691, R"({"name":"Tumaini Invented"})");
  clinic.works();
  second.give_to(clinic.desk);
  const std::string note = clinic.note();
  CHECK(has(note, "Tuma Invented, nurse"));
  CHECK(has(note, "Tumaini Invented"));
  CHECK(has(note, "(called differently on two devices)"));
  const std::string read = clinic.desk.ok("examiner.read", R"({"examiner":")" + colleague().to_text() + "\"}");
  CHECK(at(read, "/examiners/0/said/1/entry") == at(read, "/examiners/0/revision/1"));
  CHECK_FALSE(at(read, "/examiners/0/said/1/name").empty());
}

TEST_CASE("a name without the signature of who is named names nobody") {
  Clinic clinic;
  clinic.tablet.says(690, R"({"name":"Somebody Else"})", false);
  clinic.works();
  CHECK(!has(clinic.note(), "Somebody Else"));
  CHECK(has(clinic.note(), "the name is not known here"));
  // Nor does a key that is not that examiner's on any device.
  OtherDevice second(clinic.desk, clinic.desk.store, 78);
  std::array<std::uint8_t, 32> seed{};
  seed.fill(99);
  second.examiner.emplace(colleague(), ledger::SignKey(ledger::Secret32(seed)));
  second.says(691, R"({"name":"Somebody Else"})");
  second.give_to(clinic.desk);
  CHECK(!has(clinic.note(), "Somebody Else"));
}

TEST_CASE("the label is said at the first unlocking, and the whole name and role by examiner.amend, once each") {
  DeskFixture fixture;
  const std::string before = fixture.ok("examiner.read", "{}");
  CHECK(at(before, "/examiners/0/said/0/name") == std::string(examiner_label));
  CHECK(at(before, "/examiners/1").empty());
  const std::string seen = at(before, "/examiners/0/revision");
  const std::string call = R"({"name":"Invented Examiner of Upper Ford, a long name","role":"physiotherapist","seen":)" + seen + R"(,"request":")" + request_id(5) + "\"}";
  CHECK(codes_of(fixture.call("examiner.amend", R"({"name":"Other","seen":[],"request":")" + request_id(6) + "\"}")) == "revision.old");
  CHECK(codes_of(fixture.call("examiner.amend", R"({"name":" ","role":" ","seen":)" + seen + R"(,"request":")" + request_id(7) + "\"}")) == "value.empty value.empty");
  CHECK(at(fixture.ok("examiner.amend", call), "/examiner/said/0/role") == "physiotherapist");
  CHECK(at(fixture.ok("examiner.amend", call), "/repeat") == "true");
  CHECK(codes_of(fixture.call("examiner.amend", R"({"name":"Other","seen":)" + seen + R"(,"request":")" + request_id(8) + "\"}")) == "revision.unknown");
  const auto entries = fixture.desk->log().index().entry_count;
  fixture.reopen();
  fixture.unlock();
  CHECK(fixture.desk->log().index().entry_count == entries);  // the own word stands, and the label is not said again
  const std::string after = fixture.ok("examiner.read", "{}");
  CHECK(at(after, "/examiners/0/said/0/name") == "Invented Examiner of Upper Ford, a long name");
  CHECK(at(after, "/examiners/0/said/1").empty());
  // Nothing of it is among what is named as seen of places.
  CHECK(at(fixture.ok("place.read", "{}"), "/revision") == "[]");
}

}  // namespace limbledger::service::test::examiner_names
