// Letters in the fold: what their writer had not seen makes them stale, also where it came from another tablet. HC-066; ledger, items
// 26 to 32.
#include "tests/unit/ledger/two_writers.hpp"

#include <doctest/doctest.h>

namespace limbledger::ledger::fold_test {

namespace {

// An exam that two tablets hold; `now` brings them together, and both must say the same.
struct TwoTablets {
  DeviceWriter a{1};
  DeviceWriter b{2};
  model::ExamId exam = exam_of(77);
  Opened opening = a.act(exam, "exam", open_body, {}, {}, false, 77);

  TwoTablets() { b.take_from(a); }
  [[nodiscard]] ExamFold now() {
    b.take_from(a);
    a.take_from(b);
    REQUIRE(said(a.fold(exam)) == said(b.fold(exam)));
    return *a.fold(exam);
  }
};

std::string letter_json(unsigned number, const std::string& more = "") {
  model::LetterId id;
  id.bytes.fill(static_cast<std::uint8_t>(number));
  return R"({"letter":")" + id.to_text() + R"(","question":"Broken?","language":"en",)" + more +
         R"("page":{"title":"LETTER","who":"Invented","examined":"today","head":["To: somebody"],"sections":[{"title":"Question","lines":[{"kind":"plain","text":"\u2068Broken?\u2069"}]}]}})";
}

std::vector<model::Letter> letters_of(const ExamFold& fold) {
  REQUIRE(fold.exam.letters.has_value());
  return *fold.exam.letters;
}

}  // namespace

TEST_CASE("a finding that another tablet recorded unseen makes a letter stale, and one that it had seen does not") {
  TwoTablets p;
  const Opened seen = p.a.act(p.exam, "finding", flexion(finding_of(1), 90), {p.opening.entry()});
  const Opened letter = p.a.act(p.exam, "letter", letter_json(7), {seen.entry()});
  CHECK_FALSE(letters_of(p.now()).front().stale.has_value());
  p.b.act(p.exam, "finding", flexion(finding_of(2), 80), {p.opening.entry()});
  const ExamFold fold = p.now();
  REQUIRE(letters_of(fold).size() == 1);
  CHECK(letters_of(fold).front().entry == letter.entry());
  CHECK(letters_of(fold).front().stale == true);
  REQUIRE(letters_of(fold).front().stale_because.has_value());
  CHECK(letters_of(fold).front().stale_because->front().text == "finding");
}

TEST_CASE("a letter stands after the signature, changes nothing of the record, and two unseen letters are both kept") {
  TwoTablets p;
  const Opened sign = p.a.act(p.exam, "sign", R"({"read_aloud":"Invented"})", {p.opening.entry()}, {}, true);
  p.a.act(p.exam, "letter", letter_json(7), {sign.entry()});
  p.b.act(p.exam, "letter", letter_json(8, R"("protected":true,"to":"somebody",)"), {p.opening.entry()});
  const ExamFold fold = p.now();
  CHECK(fold.exam.state == model::ExamState::signed_);
  REQUIRE(letters_of(fold).size() == 2);
  for (const model::Letter& one : letters_of(fold)) {
    CHECK_FALSE(one.stale.has_value());
    // Of a protected letter the record tells neither its reader nor its question.
    CHECK(one.question.has_value() != one.protected_.has_value());
    CHECK_FALSE(one.to.has_value());
  }
}

}  // namespace limbledger::ledger::fold_test
