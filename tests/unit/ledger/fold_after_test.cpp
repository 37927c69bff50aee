// What is added beside the findings, by two devices that had not seen each other: nothing is lost, and no clock decides. Rules 18 and
// 26 to 30 of the ledger; clinical safety, requirements 11, 14, 20 and 25. Everything here is invented.
#include "tests/unit/ledger/two_writers.hpp"

#include <doctest/doctest.h>

namespace limbledger::ledger::fold_test {

namespace {

// An exam that two devices know; each has an examiner of its own.
struct BothKnow {
  DeviceWriter a{1};
  DeviceWriter b{2};
  model::ExamId exam = exam_of(88);
  Opened opening = a.act(exam, "exam", open_body, {}, {}, false, 88);

  BothKnow() { share(); }
  void share() {
    b.take_from(a);
    a.take_from(b);
  }
  [[nodiscard]] ExamFold now() {
    share();
    const std::string of_a = said(a.fold(exam));
    REQUIRE(of_a == said(b.fold(exam)));
    return *a.fold(exam);
  }
  [[nodiscard]] std::vector<model::EntryId> heads() { return *now().exam.revision; }
};

std::string set_of(const std::string& members) { return R"({"set":{)" + members + "}}"; }
std::string item_text() { return finding_of(900).to_text(); }
std::string fate(const std::string& word, const std::string& more = "") { return R"({"plan_item":")" + item_text() + R"(","became":")" + word + "\"" + more + "}"; }
std::string referral() { return R"({"plan_item":{"plan_item":")" + item_text() + R"(","kind":"referral","text":"knee clinic","by":"2026-12-08"}})"; }

}  // namespace

TEST_CASE("two devices that transfer at once: both sets travel, and which holds a person settles") {
  BothKnow p;
  const Opened one = p.a.act(p.exam, "transfer", set_of(R"("allergies":"penicillin")"), {p.opening.entry()});
  const Opened two = p.b.act(p.exam, "transfer", set_of(R"("allergies":"none told")"), {p.opening.entry()});
  ExamFold fold = p.now();
  REQUIRE(fold.exam.transfer.has_value());
  CHECK(fold.exam.transfer->size() == 2);
  CHECK(conflicts_about(fold, "transfer") == 1);
  CHECK(fold.exam.state == model::ExamState::open);
  p.a.act(p.exam, "transfer", set_of(R"("allergies":"penicillin, rash as a child")"), {one.entry(), two.entry()}, {one.entry(), two.entry()});
  fold = p.now();
  REQUIRE(fold.exam.transfer->size() == 1);
  CHECK(fold.exam.transfer->front().set.allergies->text == "penicillin, rash as a child");
  CHECK(conflicts_about(fold, "transfer") == 0);
}

TEST_CASE("two devices that send on the same set say one thing") {
  BothKnow p;
  p.a.act(p.exam, "transfer", set_of(""), {p.opening.entry()});
  p.b.act(p.exam, "transfer", set_of(""), {p.opening.entry()});
  const ExamFold fold = p.now();
  CHECK(fold.exam.transfer->size() == 1);
  CHECK_FALSE(fold.exam.conflicts.has_value());
}

TEST_CASE("who disagrees twice is heard twice, and nothing is a conflict; a side exchange turns the side in the name") {
  BothKnow p;
  p.a.act(p.exam, "disagree", R"({"statement":"rule.ottawa_knee:left","because":"examined again"})", {p.opening.entry()});
  p.b.act(p.exam, "disagree", R"({"statement":"rule.ottawa_knee:left","because":"the bone was not tender"})", {p.opening.entry()});
  p.share();
  p.a.act(p.exam, "disagree", R"({"statement":"rule.ottawa_knee:left","because":"examined again"})", {p.opening.entry()});
  ExamFold fold = p.now();
  REQUIRE(fold.exam.disagreed.has_value());
  CHECK(fold.exam.disagreed->size() == 3);
  CHECK_FALSE(fold.exam.conflicts.has_value());
  p.a.act(p.exam, "swap_sides", R"({"reason":"wrong end of the couch"})", p.heads());
  fold = p.now();
  for (const model::Disagreed& one : *fold.exam.disagreed) {
    CHECK(one.statement.text == "rule.ottawa_knee:right");
  }
}

TEST_CASE("C14: the steps of a referral are all kept; two that did not know each other leave it open until a person says") {
  BothKnow p;
  const Opened plan = p.a.act(p.exam, "plan", referral(), {p.opening.entry()});
  const Opened sign = p.a.act(p.exam, "sign", R"({"read_aloud":"Invented, LEFT knee"})", {plan.entry()}, {}, true);
  p.share();
  const Opened sent = p.a.act(p.exam, "became", fate("sent", R"(,"on":"2026-11-25")"), {sign.entry()});
  ExamFold fold = p.now();
  CHECK(fold.exam.plan->front().became == model::Became::sent);
  CHECK(fold.exam.plan->front().became_on->to_text() == "2026-11-25");
  CHECK(fold.exam.plan->front().text.text == "knee clinic");
  const Opened seen = p.a.act(p.exam, "became", fate("seen", R"(,"on":"2026-12-01")"), {sent.entry()}, {sent.entry()});
  const Opened lost = p.b.act(p.exam, "became", fate("lost"), {sent.entry()}, {sent.entry()});
  fold = p.now();
  CHECK(fold.exam.followed->size() == 3);
  CHECK_FALSE(fold.exam.plan->front().became.has_value());
  CHECK(conflicts_about(fold, "became") == 1);
  p.b.act(p.exam, "became", fate("answered", R"(,"on":"2026-12-03","text":"cartilage torn, seen in the clinic")"), {seen.entry(), lost.entry()},
          {seen.entry(), lost.entry()});
  fold = p.now();
  CHECK(fold.exam.plan->front().became == model::Became::answered);
  CHECK(conflicts_about(fold, "became") == 0);
  CHECK(fold.exam.followed->size() == 4);
  CHECK(fold.exam.state == model::ExamState::signed_);
}

TEST_CASE("C25: a countersignature counts once its writer saw the exam signed by another; the signer's own does not") {
  BothKnow p;
  const Opened sign = p.a.act(p.exam, "sign", R"({"read_aloud":"Invented, LEFT knee"})", {p.opening.entry()}, {}, true);
  const std::string body = R"({"impression":{"text":"torn meniscus","side":"left"},"remark":"seen together"})";
  const Opened unseen = p.b.act(p.exam, "countersign", body, {p.opening.entry()}, {}, true);
  p.share();
  const Opened own = p.a.act(p.exam, "countersign", body, {sign.entry()}, {}, true);
  const Opened other = p.b.act(p.exam, "countersign", body, {sign.entry()}, {}, true);
  const Opened unsigned_one = p.b.act(p.exam, "countersign", body, {sign.entry()});
  const ExamFold fold = p.now();
  CHECK(has_mark(fold, unseen.entry(), "signature_unseen"));
  CHECK(has_mark(fold, own.entry(), "own_countersignature"));
  CHECK(has_mark(fold, unsigned_one.entry(), "signature_bad"));
  REQUIRE(fold.exam.countersigned.has_value());
  REQUIRE(fold.exam.countersigned->size() == 1);
  CHECK(fold.exam.countersigned->front().entry == other.entry());
  CHECK(fold.exam.countersigned->front().by == p.b.examiner());
}

TEST_CASE("C25: of two amendments that did not know each other the one that keeps an exam supervised holds until a person settles it") {
  BothKnow p;
  const std::string supervised = R"({"complaint":"free","setting":"outreach","supervised":true})";
  const Opened one = p.a.act(p.exam, "exam", supervised, {p.opening.entry()}, {p.opening.entry()});
  const Opened two = p.b.act(p.exam, "exam", R"({"complaint":"free","setting":"outreach","supervised":false})", {p.opening.entry()}, {p.opening.entry()});
  ExamFold fold = p.now();
  CHECK(fold.exam.supervised == true);
  CHECK(conflicts_about(fold, "exam") == 1);
  p.a.act(p.exam, "exam", R"({"complaint":"free","setting":"outreach","supervised":false})", {one.entry(), two.entry()}, {one.entry(), two.entry()});
  fold = p.now();
  CHECK(fold.exam.supervised == false);
}

TEST_CASE("after the signature a transfer needs the examiner's own signature; what became of a plan and what was found later do not") {
  BothKnow p;
  const Opened sign = p.a.act(p.exam, "sign", R"({"read_aloud":"Invented, LEFT knee"})", {p.opening.entry()}, {}, true);
  p.share();
  const Opened bare = p.b.act(p.exam, "transfer", set_of(R"("onset":"an hour ago")"), {sign.entry()});
  p.b.act(p.exam, "outcome", R"({"found":{"kind":"film","text":"no break seen","on":"2026-12-01"}})", {sign.entry()});
  ExamFold fold = p.now();
  CHECK(has_mark(fold, bare.entry(), "signature_bad"));
  CHECK_FALSE(fold.exam.transfer.has_value());
  REQUIRE(fold.exam.outcomes.has_value());
  CHECK(fold.exam.outcomes->front().found.kind == model::LaterKind::film);
  p.b.act(p.exam, "transfer", set_of(R"("onset":"an hour ago")"), {sign.entry()}, {}, true);
  fold = p.now();
  CHECK(fold.exam.transfer->size() == 1);
}

}  // namespace limbledger::ledger::fold_test
