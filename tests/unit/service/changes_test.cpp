// changes.read: a cursor goes on from where it was, also after a restart, and tells a kiosk of its own exam only.
#include "tests/unit/service/desk_fixture.hpp"

namespace limbledger::service::test {

namespace {

std::string changes_since(DeskFixture& fixture, const std::string& cursor) {
  return fixture.ok("changes.read", R"({"cursor":")" + cursor + "\"}");
}
std::string new_person(DeskFixture& fixture, unsigned number) {
  return at(fixture.ok("person.register", R"({"names":[{"text":"Awa"}],"sex":"female","request":")" + request_id(number) + "\"}"), "/person/person");
}
std::string new_exam(DeskFixture& fixture, unsigned number) {
  return at(fixture.ok("exam.open", R"({"complaint":"free","setting":"outreach","request":")" + request_id(number) + "\"}"), "/exam/exam");
}

}  // namespace

TEST_CASE("each record that changed since the cursor is named once, oldest change first") {
  DeskFixture fixture;
  const std::string start = at(fixture.ok("changes.read", "{}"), "/cursor");
  CHECK(at(changes_since(fixture, start), "/changes") == "[]");
  const std::string person = new_person(fixture, 1);
  const std::string exam = new_exam(fixture, 2);
  fixture.ok("place.amend", R"({"changes":{"name":"Upper Ford"},"request":")" + request_id(3) + "\"}");
  const std::string read = changes_since(fixture, start);
  CHECK(at(read, "/changes/0/kind") == "person");
  CHECK(at(read, "/changes/0/object") == person);
  CHECK(at(read, "/changes/1/kind") == "exam");
  CHECK(at(read, "/changes/1/object") == exam);
  CHECK(at(read, "/changes/2/kind") == "clinic");
  CHECK(at(read, "/changes/3").empty());
  CHECK(at(changes_since(fixture, at(read, "/cursor")), "/changes") == "[]");
}

TEST_CASE("HC-116, HC-117: a cursor holds across a restart") {
  DeskFixture fixture;
  const std::string start = at(fixture.ok("changes.read", "{}"), "/cursor");
  const std::string exam = new_exam(fixture, 1);
  fixture.reopen(true);
  fixture.unlock();
  CHECK(at(changes_since(fixture, start), "/changes/0/object") == exam);
}

TEST_CASE("an empty or broken cursor is refused") {
  DeskFixture fixture;
  new_exam(fixture, 1);
  // An empty text is refused where texts are read, so there is no way to say "from nothing" by accident.
  CHECK(codes_of(fixture.call("changes.read", R"({"cursor":"","wait_ms":0})")) == "value.empty");
  for (const char* bad : {"x", ".", "12", "aaaaaaaaaaaaaaaaaaaaaaaaaa", "aaaaaaaaaaaaaaaaaaaaaaaaaa1x", "aaaaaaaaaaaaaaaaaaaaaaaaaa-1",
                          "aaaaaaaaaaaaaaaaaaaaaaaaaa9999999999999999999"}) {
    CAPTURE(bad);
    const auto refused = fixture.call("changes.read", R"({"cursor":")" + std::string(bad) + "\"}");
    CHECK(codes_of(refused) == "params.wrong_type");
    CHECK(path_of(refused) == "/cursor");
  }
}

TEST_CASE("a kiosk is told of its own exam and of nothing else") {
  DeskFixture fixture;
  const std::string start = at(fixture.ok("changes.read", "{}"), "/cursor");
  new_person(fixture, 1);
  const std::string own = new_exam(fixture, 2);
  new_exam(fixture, 3);
  fixture.caller.scope = Scope::kiosk;
  CHECK(at(changes_since(fixture, start), "/changes") == "[]");
  model::ExamId exam;
  REQUIRE(model::ExamId::from_text(own, exam).empty());
  fixture.caller.exam = exam;
  const std::string read = changes_since(fixture, start);
  CHECK(at(read, "/changes/0/object") == own);
  CHECK(at(read, "/changes/1").empty());
  fixture.caller.scope = Scope::sync;
  CHECK(codes_of(fixture.call("changes.read", "{}")) == "token.scope");
  fixture.caller.scope = Scope::none;
  CHECK(codes_of(fixture.call("changes.read", "{}")) == "token.missing");
}

}  // namespace limbledger::service::test
