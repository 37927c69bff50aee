// exam.amend: what an exam was opened with is corrected by an operation that replaces the opening; unseen amendments are a
// conflict. Logic tests of our own rules (ledger, items 26 to 30); everything is invented.
#include "tests/unit/ledger/two_writers.hpp"
#include "tests/unit/service/desk_fixture.hpp"

namespace limbledger::service::test {

namespace {

struct Opened : DeskFixture {
  unsigned requests = 900;
  std::string exam;
  std::string seen;

  Opened() {
    const std::string reply = ok("exam.open", R"({"complaint":"free","side":"left","setting":"outreach","injured_on":"2026-11-20",)" + request() + "}");
    exam = at(reply, "/exam/exam");
    seen = at(reply, "/revision");
  }
  std::string request() { return R"("request":")" + request_id(++requests) + "\""; }
  std::string params(const std::string& changes, const std::string& revision, const std::string& request_member) const {
    return R"({"exam":")" + exam + R"(","changes":)" + changes + R"(,"seen":)" + revision + "," + request_member + "}";
  }
  Result<std::string> amend(const std::string& changes) { return call("exam.amend", params(changes, seen, request())); }
};

}  // namespace

TEST_CASE("the side complained of is corrected, the rest stays, and a repeat gives the same answer") {
  Opened form;
  const std::string sent = form.params(R"({"side":"right"})", form.seen, form.request());
  const std::string reply = form.ok("exam.amend", sent);
  CHECK(at(reply, "/exam/side") == "right");
  CHECK(at(reply, "/exam/injured_on") == "2026-11-20");
  CHECK(at(reply, "/exam/complaint") == "free");
  CHECK(at(reply, "/exam/conflicts").empty());
  CHECK(at(reply, "/exam/marks").empty());
  CHECK(at(form.ok("exam.find", "{}"), "/exams/0/side") == "right");
  const std::string again = form.ok("exam.amend", sent);
  CHECK(at(again, "/repeat") == "true");
  CHECK(at(again, "/revision") == at(reply, "/revision"));
  // Who had not been shown the correction is asked to look first.
  CHECK(codes_of(form.amend(R"({"side":"midline"})")) == "revision.old");
  form.seen = at(reply, "/revision");
  CHECK(at(*form.amend(R"({"injured_on":"2026-11-21"})"), "/exam/side") == "right");
}

TEST_CASE("what an exam is amended to passes the checks of its opening, and a signed exam is not amended") {
  Opened form;
  CHECK(codes_of(form.amend("{}")) == "value.empty");
  CHECK(codes_of(form.amend(R"({"complaint":"nothing"})")) == "params.unknown_word");
  CHECK(codes_of(form.amend(R"({"place":"aaaaaaaaaaaaaaaaaaaaaaaaaa"})")) == "place.unknown");
  CHECK(codes_of(form.amend(R"({"injured_on":"2026-12-24"})")) == "value.unusual");
  const std::string reply = form.ok("exam.sign", R"({"exam":")" + form.exam + R"(","read_aloud":"Invented","seen":)" + form.seen + "," + form.request() + "}");
  form.seen = at(reply, "/revision");
  CHECK(codes_of(form.amend(R"({"side":"right"})")) == "exam.signed");
}

TEST_CASE("an amendment changes nothing about whose exam it is, before and after a move") {
  Opened form;
  const auto person = [&](const char* name) {
    return at(form.ok("person.register", R"({"names":[{"text":")" + std::string(name) + R"("}],"sex":"female",)" + form.request() + "}"), "/person/person");
  };
  const std::string one = person("Asha Invented");
  const auto move = [&](const std::string& to) {
    const std::string reply = form.ok("exam.move", R"({"exam":")" + form.exam + R"(","person":")" + to + R"(","reason":"it is hers","seen":)" + form.seen + "," +
                                                       form.request() + "}");
    form.seen = at(reply, "/revision");
    return at(reply, "/exam/person");
  };
  CHECK(move(one) == one);
  const auto amended = form.amend(R"({"side":"right"})");
  REQUIRE(codes_of(amended) == "answered");
  CHECK(at(*amended, "/exam/person") == one);
  form.seen = at(*amended, "/revision");
  const std::string other = person("Wulan Invented");
  CHECK(move(other) == other);
  CHECK(at(form.ok("exam.read", R"({"exam":")" + form.exam + "\"}"), "/exam/side") == "right");
}

TEST_CASE("exam.read names the examiners, so far as this device knows them") {
  Opened form;
  const std::string read = form.ok("exam.read", R"({"exam":")" + form.exam + "\"}");
  CHECK(at(read, "/names/examiners/0/examiner") == form.made.examiner.to_text());
  CHECK(at(read, "/names/examiners/0/name") == examiner_label);
}

}  // namespace limbledger::service::test

namespace limbledger::ledger::fold_test {

TEST_CASE("two amendments that had not seen each other: what they say differently is not known, and both are kept") {
  DeviceWriter a{1};
  DeviceWriter b{2};
  const model::ExamId exam = exam_of(88);
  const Opened opening = a.act(exam, "exam", R"({"complaint":"free","side":"left","setting":"outreach"})", {}, {}, false, 88);
  b.take_from(a);
  const auto amend = [&](DeviceWriter& writer, const std::string& side) {
    return writer.act(exam, "exam", R"({"complaint":"free","side":")" + side + R"(","setting":"outreach"})", {opening.entry()}, {opening.entry()});
  };
  const Opened right = amend(a, "right");
  const Opened midline = amend(b, "midline");
  a.take_from(b);
  b.take_from(a);
  const auto fold = a.fold(exam);
  REQUIRE(fold.has_value());
  CHECK(said(fold) == said(b.fold(exam)));
  CHECK(!fold->exam.side);
  CHECK(fold->exam.complaint.text == "free");
  CHECK(conflicts_about(*fold, "exam") == 1);
  CHECK(fold->opening_heads.size() == 2);
  a.act(exam, "exam", R"({"complaint":"free","side":"right","setting":"outreach"})", {right.entry(), midline.entry()}, {right.entry(), midline.entry()});
  CHECK(a.fold(exam)->exam.side == model::Side::right);
  CHECK(conflicts_about(*a.fold(exam), "exam") == 0);
}

}  // namespace limbledger::ledger::fold_test
