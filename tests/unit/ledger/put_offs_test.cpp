// What is put off in the queue: it stands whoever wrote it and whatever came before or after it, and changes nothing of the exam. Rules 26
// to 32 of the ledger. Everything here is invented.
#include "tests/unit/ledger/two_writers.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>

namespace limbledger::ledger::fold_test {

namespace {

std::string put_off(const std::vector<model::EntryId>& entries, const std::string& asked, const std::string& day = "2026-12-01") {
  return R"({"about":"finding","entries":)" + wire::write(entries) + R"(,"asked":")" + asked + R"(","look_again":")" + day + "\"}";
}

// Two readings of one flexion, neither known to the other's writer, on three devices.
struct Apart {
  DeviceWriter a{1};
  DeviceWriter b{2};
  DeviceWriter c{3};
  model::ExamId exam = exam_of(77);
  Opened opening = a.act(exam, "exam", open_body, {}, {}, false, 77);
  Opened of_a;
  Opened of_b;

  Apart() : of_a(opening), of_b(opening) {
    share();
    of_a = a.act(exam, "finding", flexion(finding_of(600), 105), {opening.entry()});
    of_b = b.act(exam, "finding", flexion(finding_of(601), 85), {opening.entry()});
    share();
  }
  void share() {
    for (int round = 0; round < 2; ++round) {
      b.take_from(a);
      c.take_from(b);
      a.take_from(c);
    }
  }
  [[nodiscard]] std::vector<model::EntryId> both() const { return {of_a.entry(), of_b.entry()}; }
};

// Who was asked, whether something came since, whether it was put off again.
std::string told(std::span<const Opened> operations, const std::vector<model::EntryId>& standing, std::string_view about = "finding") {
  std::string out;
  for (const PutOff& one : put_offs(operations, about, standing, {})) {
    out += one.said.asked.text + (one.changed ? " changed" : "") + (one.again ? " again" : "") + "; ";
  }
  return out;
}

std::vector<model::Conflict> conflicts_of(const ExamFold& fold) { return fold.exam.conflicts.value_or(std::vector<model::Conflict>{}); }

}  // namespace

TEST_CASE("what three devices put off without knowing of each other all stands, in every order and repetition, and nothing is settled") {
  Apart t;
  const ExamFold before = *t.a.fold(t.exam);
  REQUIRE(conflicts_about(before, "finding") == 1);
  t.a.act(t.exam, "put_off", put_off(t.both(), "b"), t.both());
  t.b.act(t.exam, "put_off", put_off(t.both(), "a"), t.both());
  t.c.act(t.exam, "put_off", put_off(t.both(), "his brother"), t.both());
  t.share();
  std::vector<Opened> all = t.a.operations(t.exam);
  REQUIRE(all.size() == 6);
  const ExamFold after = *t.a.fold(t.exam);
  CHECK(conflicts_of(after) == conflicts_of(before));
  CHECK(after.exam.findings == before.exam.findings);
  CHECK_FALSE(after.exam.marks.has_value());
  CHECK(unseen_marks(after, all).empty());
  CHECK(after.unread == 0);
  CHECK(after.exam.revision->size() == 3);
  const std::string wanted = told(all, t.both());
  CHECK(wanted.size() == std::string("b; a; his brother; ").size());
  for (const char* asked : {"b; ", "a; ", "his brother; "}) {
    CHECK(wanted.find(asked) != std::string::npos);
  }
  std::sort(all.begin(), all.end(), [](const Opened& one, const Opened& other) { return one.entry() < other.entry(); });
  int orders = 0;
  do {
    std::vector<Opened> came = all;
    came.push_back(all[static_cast<std::size_t>(orders) % all.size()]);
    REQUIRE(told(came, t.both()) == wanted);
    ++orders;
  } while (std::next_permutation(all.begin(), all.end(), [](const Opened& one, const Opened& other) { return one.entry() < other.entry(); }));
  CHECK(orders == 720);
}

TEST_CASE("put off again by who knew of the first, and what came to stand there that nobody had named, are both told") {
  Apart t;
  const Opened first = t.c.act(t.exam, "put_off", put_off(t.both(), "b"), t.both());
  t.share();
  t.a.act(t.exam, "put_off", put_off(t.both(), "b once more"), {first.entry()});
  t.share();
  CHECK(told(t.b.operations(t.exam), t.both()) == "b again; b once more; ");
  const Opened third = t.b.act(t.exam, "finding", flexion(finding_of(602), 60), {t.opening.entry()});
  const std::vector<model::EntryId> now{t.of_a.entry(), t.of_b.entry(), third.entry()};
  CHECK(told(t.b.operations(t.exam), now) == "b changed again; b once more changed; ");
  CHECK(told(t.b.operations(t.exam), {third.entry()}).empty());
  CHECK(told(t.b.operations(t.exam), now, "impression").empty());
}

TEST_CASE("a put-off by who had not seen a signature or a withdrawal is no late entry, stands after a signature, and makes no letter stale") {
  Apart t;
  const Opened sign = t.a.act(t.exam, "sign", R"({"read_aloud":"Invented"})", t.both(), {}, true);
  const Opened letter = t.a.act(t.exam, "letter", R"({"letter":")" + finding_of(9600).to_text() + R"(","question":"Broken?","language":"en","page":{"title":"LETTER","who":"Invented","examined":"today","head":[],"sections":[]}})",
                                {sign.entry()});
  const Opened unseen = t.b.act(t.exam, "put_off", put_off(t.both(), "a"), t.both());
  const Opened seen = t.a.act(t.exam, "put_off", put_off(t.both(), "b"), {letter.entry()});
  t.share();
  const ExamFold fold = *t.c.fold(t.exam);
  CHECK(fold.exam.state == model::ExamState::signed_);
  CHECK_FALSE(has_mark(fold, unseen.entry(), "late"));
  CHECK_FALSE(has_mark(fold, seen.entry(), "after_signature"));
  REQUIRE(fold.exam.letters.has_value());
  CHECK_FALSE(fold.exam.letters->front().stale.has_value());
  CHECK(told(t.c.operations(t.exam), t.both()) == "a; b; ");
  t.c.act(t.exam, "withdraw", R"({"reason":"void"})", {sign.entry()}, {}, true);
  t.share();
  const ExamFold withdrawn = *t.a.fold(t.exam);
  CHECK(withdrawn.exam.state == model::ExamState::withdrawn);
  CHECK_FALSE(has_mark(withdrawn, unseen.entry(), "withdrawal_unseen"));
  CHECK_FALSE(has_mark(withdrawn, seen.entry(), "withdrawal_unseen"));
}

TEST_CASE("rule 32: a program that does not know the operation keeps it, passes it on and counts it; the conflict stays and can be settled after it") {
  Apart t;
  // The same words under a name that nobody knows yet: what put_off is to an older program.
  const Opened unknown = t.c.act(t.exam, "put_off_of_tomorrow", put_off(t.both(), "b"), t.both());
  t.share();
  const ExamFold fold = *t.a.fold(t.exam);
  CHECK(fold.unread == 1);
  CHECK(has_mark(fold, unknown.entry(), "newer_edition"));
  CHECK(conflicts_about(fold, "finding") == 1);
  CHECK(unknown.operation().v.steps == 1);
  CHECK(unknown.operation().min.steps == 1);
  const std::vector<Opened> passed_on = t.b.operations(t.exam);  // it came by way of another that does not know it
  CHECK(std::any_of(passed_on.begin(), passed_on.end(), [&](const Opened& one) { return one.entry() == unknown.entry() && !one.readable(); }));
  std::string settle = flexion(finding_of(601), 85);
  settle.pop_back();
  t.b.act(t.exam, "settle", settle + R"(,"reason":"felt again"})", {unknown.entry()}, t.both(), true);
  t.share();
  CHECK(conflicts_about(*t.a.fold(t.exam), "finding") == 0);
}

}  // namespace limbledger::ledger::fold_test
