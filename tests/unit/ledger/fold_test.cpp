// The rules of the fold, each named by its number in the ledger's rules (26 to 32). Everything here is invented.
#include "tests/unit/ledger/two_writers.hpp"

#include <doctest/doctest.h>

namespace limbledger::ledger::fold_test {

namespace {

// An exam opened by the first writer and known to the second.
struct Pair {
  DeviceWriter a{1};
  DeviceWriter b{2};
  model::ExamId exam = exam_of(77);
  Opened opening = a.act(exam, "exam", open_body, {}, {}, false, 77);

  Pair() { share(); }
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
};

}  // namespace

TEST_CASE("rule 26: the same request from a restored device folds once, and either entry may be pointed at") {
  Pair p;
  const Opened first = p.a.act(p.exam, "finding", flexion(finding_of(500), 110), {p.opening.entry()}, {}, false, 500);
  // The first writer knows b, so both act under one examiner id: what the request says is what counts.
  NewOperation again;
  again.object = model::as_object(p.exam);
  again.op = "finding";
  again.request = DeviceWriter::request_of(500);
  again.after = {p.opening.entry()};
  again.by = p.a.examiner();
  again.body_json = flexion(finding_of(500), 110);
  p.b.world().pass(5000);
  const auto repeat = p.b.log().append({&again, 1}, model::EditionId{"facts.test"}, nullptr);
  REQUIRE(repeat.has_value());
  CHECK(repeat->front().entry() != first.entry());
  ExamFold fold = p.now();
  CHECK(fold.exam.findings->size() == 1);
  CHECK(conflicts_about(fold, "request") == 0);
  const Opened edit = p.a.act(p.exam, "finding", flexion(finding_of(500), 112), {repeat->front().entry()}, {repeat->front().entry()});
  fold = p.now();
  REQUIRE(fold.exam.findings->size() == 1);
  CHECK(fold.exam.findings->front().entry == edit.entry());
}

TEST_CASE("rule 26: one request id with two contents is a conflict, and both are kept") {
  Pair p;
  p.a.act(p.exam, "finding", flexion(finding_of(501), 110), {p.opening.entry()}, {}, false, 501);
  p.b.act(p.exam, "finding", flexion(finding_of(501), 95), {p.opening.entry()}, {}, false, 501);
  const ExamFold fold = p.now();
  CHECK(conflicts_about(fold, "request") == 1);
  CHECK(fold.exam.findings->size() == 2);
}

TEST_CASE("rule 27: an addendum by a writer who had not seen the signature shows as such") {
  Pair p;
  const Opened sign = p.a.act(p.exam, "sign", R"({"read_aloud":"Invented, 50, left, stiff knee"})", {p.opening.entry()}, {}, true);
  const Opened addendum = p.b.act(p.exam, "addendum", R"({"kind":"text","reason":"late word","text":"felt warm"})", {p.opening.entry()}, {}, true);
  const ExamFold fold = p.now();
  REQUIRE(fold.exam.signed_.has_value());
  CHECK(fold.exam.signed_->by == p.a.examiner());
  CHECK(has_mark(fold, addendum.entry(), "signature_unseen"));
  CHECK(has_mark(fold, addendum.entry(), "late"));
  CHECK_FALSE(has_mark(fold, sign.entry(), "late"));
}

TEST_CASE("rule 28: what a writer was shown decides, not what the store had when it wrote") {
  Pair p;
  const Opened of_a = p.a.act(p.exam, "finding", flexion(finding_of(502), 110), {p.opening.entry()});
  p.share();  // b's store has a's value now, but b's form was opened before
  const Opened of_b = p.b.act(p.exam, "finding", flexion(finding_of(503), 95), {p.opening.entry()});
  const ExamFold fold = p.now();
  CHECK(conflicts_about(fold, "finding") == 1);
  CHECK(standing_of(fold, of_a.entry()) == "\"in_conflict\"");
  CHECK(standing_of(fold, of_b.entry()) == "\"in_conflict\"");
}

TEST_CASE("rule 29: two findings of one slot are no conflict when one writer had seen the other's") {
  Pair p;
  const Opened of_a = p.a.act(p.exam, "finding", flexion(finding_of(504), 110), {p.opening.entry()});
  p.share();
  const Opened of_b = p.b.act(p.exam, "finding", flexion(finding_of(505), 95), {of_a.entry()});  // a second examiner, beside
  const ExamFold fold = p.now();
  CHECK_FALSE(fold.exam.conflicts.has_value());
  CHECK(fold.exam.findings->size() == 2);
  CHECK(standing_of(fold, of_a.entry()) == "\"current\"");
  CHECK(standing_of(fold, of_b.entry()) == "\"current\"");
}

TEST_CASE("rule 29: a side exchange and an edit that do not know each other meet in the one finding, marked") {
  Pair p;
  const Opened first = p.a.act(p.exam, "finding", flexion(finding_of(506), 110, "right"), {p.opening.entry()});
  p.share();
  const Opened edit = p.a.act(p.exam, "finding", flexion(finding_of(506), 112, "right"), {first.entry()}, {first.entry()});
  const Opened swap = p.b.act(p.exam, "swap_sides", R"({"reason":"the form was read from the other end of the couch"})", {first.entry()});
  const ExamFold fold = p.now();
  REQUIRE(fold.exam.findings->size() == 1);
  CHECK(fold.exam.findings->front().entry == edit.entry());
  CHECK(fold.exam.findings->front().side == model::Side::left);
  CHECK(has_mark(fold, edit.entry(), "side_exchange_unseen"));
  CHECK_FALSE(has_mark(fold, swap.entry(), "late"));
}

TEST_CASE("rule 29: what is recorded after a side exchange was seen keeps the side it says") {
  Pair p;
  const Opened first = p.a.act(p.exam, "finding", flexion(finding_of(507), 110, "right"), {p.opening.entry()});
  const Opened swap = p.a.act(p.exam, "swap_sides", R"({"reason":"wrong side"})", {first.entry()});
  const Opened later = p.a.act(p.exam, "finding", flexion(finding_of(508), 140, "right"), {swap.entry()});
  const Opened fresh_unseen = p.b.act(p.exam, "finding", flexion(finding_of(509), 70, "left"), {p.opening.entry()});
  const ExamFold fold = p.now();
  std::string sides;
  for (const model::Finding& finding : *fold.exam.findings) {
    sides += wire::write(finding.value).substr(22, 3) + wire::write(finding.side);
  }
  CHECK(sides == "70,\"left\"110\"left\"140\"right\"");
  CHECK(has_mark(fold, fresh_unseen.entry(), "side_exchange_unseen"));
  CHECK_FALSE(has_mark(fold, later.entry(), "side_exchange_unseen"));
}

TEST_CASE("rule 30: a pointer to another finding is void and marked") {
  Pair p;
  const Opened one = p.a.act(p.exam, "finding", flexion(finding_of(510), 110, "left"), {p.opening.entry()});
  const Opened other = p.a.act(p.exam, "finding", flexion(finding_of(511), 130, "right"), {one.entry()}, {one.entry()});
  const ExamFold fold = p.now();
  CHECK(fold.exam.findings->size() == 2);
  CHECK(has_mark(fold, other.entry(), "void_pointer"));
}

TEST_CASE("rule 30: a pointer whose target has not come hides nothing and waits") {
  Pair p;
  const Opened one = p.a.act(p.exam, "finding", flexion(finding_of(512), 110), {p.opening.entry()});
  const Opened two = p.a.act(p.exam, "finding", flexion(finding_of(512), 112), {one.entry()}, {one.entry()});
  const auto all = p.a.operations(p.exam);
  std::vector<Opened> without;
  for (const Opened& opened : all) {
    if (opened.entry() != one.entry()) {
      without.push_back(opened);
    }
  }
  const auto fold = p.a.fold_of(p.exam, without);
  REQUIRE(fold.has_value());
  CHECK(fold->exam.findings->size() == 1);
  CHECK(has_mark(*fold, two.entry(), "waits"));
  CHECK_FALSE(has_mark(*p.a.fold(p.exam), two.entry(), "waits"));
}

TEST_CASE("rule 28: what rests on a signature that has not come is not named as seen, so that a correction is no correction after it") {
  Pair p;
  const Opened one = p.a.act(p.exam, "finding", flexion(finding_of(520), 110), {p.opening.entry()});
  p.share();
  const Opened sign = p.b.act(p.exam, "sign", R"({"read_aloud":"Invented, 50, left, stiff knee"})", {one.entry()}, {}, true);
  const Opened added = p.b.act(p.exam, "addendum", R"({"kind":"text","reason":"later","text":"told by telephone"})", {sign.entry()}, {}, true);
  // By the stick that is here so far came the addendum, and not yet the signature before it.
  std::vector<Opened> here = p.a.operations(p.exam);
  here.push_back(added);
  const auto page = p.a.fold_of(p.exam, here);
  REQUIRE(page.has_value());
  CHECK(page->exam.state == model::ExamState::open);
  CHECK(has_mark(*page, added.entry(), "waits"));
  const Graph graph(here);
  const auto heads = graph.heads();
  CHECK(std::count(heads.begin(), heads.end(), added.entry()) == 1);
  CHECK(graph.whole(heads) == std::vector{one.entry()});
  CHECK(graph.whole(std::vector{one.entry()}) == std::vector{one.entry()});
  // What is shown as the revision names it no more: while the form is open the signature may come, and was on no screen.
  CHECK(*page->exam.revision == std::vector{one.entry()});
  const Opened edit = p.a.act(p.exam, "finding", flexion(finding_of(520), 112), *page->exam.revision, {one.entry()});
  const ExamFold fold = p.now();
  CHECK(fold.exam.state == model::ExamState::signed_);
  CHECK(standing_of(fold, edit.entry()) == "\"current\"");
  CHECK(has_mark(fold, edit.entry(), "late"));
  CHECK_FALSE(has_mark(fold, edit.entry(), "after_signature"));
  // With all here, what is shown is what is seen.
  const auto all = p.a.operations(p.exam);
  CHECK(Graph(all).whole(*fold.exam.revision) == *fold.exam.revision);
}

TEST_CASE("rule 30: equal values of two unseen writers collapse into one") {
  Pair p;
  p.a.act(p.exam, "finding", flexion(finding_of(513), 110), {p.opening.entry()});
  p.b.act(p.exam, "finding", flexion(finding_of(514), 110), {p.opening.entry()});
  const ExamFold fold = p.now();
  CHECK(fold.exam.findings->size() == 1);
  CHECK_FALSE(fold.exam.conflicts.has_value());
}

TEST_CASE("rule 30: settling replaces every head of the slot, and two different settlings are a conflict again") {
  Pair p;
  const Opened of_a = p.a.act(p.exam, "finding", flexion(finding_of(515), 110), {p.opening.entry()});
  const Opened of_b = p.b.act(p.exam, "finding", flexion(finding_of(516), 95), {p.opening.entry()});
  p.share();
  const auto settling = [&](int deg, unsigned finding) {
    std::string body = flexion(finding_of(finding), deg);
    body.pop_back();
    return body + R"(,"reason":"measured again together"})";
  };
  p.a.act(p.exam, "settle", settling(108, 517), {of_a.entry(), of_b.entry()}, {of_a.entry(), of_b.entry()}, true);
  ExamFold fold = p.now();
  CHECK_FALSE(fold.exam.conflicts.has_value());
  REQUIRE(fold.exam.findings->size() == 1);
  CHECK(wire::write(fold.exam.findings->front().value).find("\"deg\":108") != std::string::npos);
  p.b.act(p.exam, "settle", settling(96, 518), {of_a.entry(), of_b.entry()}, {of_a.entry(), of_b.entry()}, true);
  fold = p.now();
  CHECK(conflicts_about(fold, "finding") == 1);
}

TEST_CASE("a settled value is still whose it was who examined; who settled has entered it") {
  Pair p;
  const Opened of_a = p.a.act(p.exam, "finding", flexion(finding_of(515), 110), {p.opening.entry()});
  const Opened of_b = p.b.act(p.exam, "finding", flexion(finding_of(515), 95), {p.opening.entry()});
  p.share();
  std::string body = flexion(finding_of(515), 95);
  body.pop_back();
  p.a.act(p.exam, "settle", body + R"(,"reason":"b measured, a did not"})", {of_a.entry(), of_b.entry()}, {of_a.entry(), of_b.entry()}, true);
  const ExamFold fold = p.now();
  REQUIRE(fold.exam.findings->size() == 1);
  CHECK(fold.exam.findings->front().examiner == p.b.examiner());
  CHECK(fold.exam.findings->front().entered_by == p.a.examiner());
}

TEST_CASE("rule 30: an undo is a new operation with the old value") {
  Pair p;
  const Opened one = p.a.act(p.exam, "finding", flexion(finding_of(519), 110), {p.opening.entry()});
  const Opened two = p.a.act(p.exam, "finding", flexion(finding_of(519), 11), {one.entry()}, {one.entry()});
  const Opened undo = p.a.act(p.exam, "finding", flexion(finding_of(519), 110), {two.entry()}, {two.entry()});
  const ExamFold fold = p.now();
  REQUIRE(fold.exam.findings->size() == 1);
  CHECK(fold.exam.findings->front().entry == undo.entry());
  CHECK(standing_of(fold, one.entry()) == "\"replaced\"");
  CHECK(fold.history.size() == 3);
}

TEST_CASE("rule 30: after a signature was seen a finding is void; one that had not seen it is kept and marked late") {
  Pair p;
  const Opened sign = p.a.act(p.exam, "sign", R"({"read_aloud":"Invented, 50, left, stiff knee"})", {p.opening.entry()}, {}, true);
  const Opened late = p.b.act(p.exam, "finding", flexion(finding_of(520), 95), {p.opening.entry()});
  p.share();
  const Opened knowing = p.b.act(p.exam, "finding", flexion(finding_of(521), 90, "right"), {sign.entry()});
  const ExamFold fold = p.now();
  CHECK(fold.exam.state == model::ExamState::signed_);
  REQUIRE(fold.exam.findings->size() == 1);
  CHECK(fold.exam.findings->front().entry == late.entry());
  CHECK(has_mark(fold, late.entry(), "late"));
  CHECK(has_mark(fold, knowing.entry(), "after_signature"));
}

TEST_CASE("a withdrawal and an edit that do not know each other are a conflict, and the edit is not lost") {
  Pair p;
  const Opened one = p.a.act(p.exam, "finding", flexion(finding_of(522), 110), {p.opening.entry()});
  p.share();
  const std::string withdraw = R"({"finding":")" + finding_of(522).to_text() + R"(","reason":"wrong person"})";
  p.a.act(p.exam, "withdraw", withdraw, {one.entry()}, {one.entry()});
  CHECK(standing_of(*p.a.fold(p.exam), one.entry()) == "\"withdrawn\"");
  CHECK(p.a.fold(p.exam)->exam.findings->empty());
  const Opened edit = p.b.act(p.exam, "finding", flexion(finding_of(522), 112), {one.entry()}, {one.entry()});
  const ExamFold fold = p.now();
  CHECK(conflicts_about(fold, "withdrawal") == 1);
  CHECK(standing_of(fold, edit.entry()) == "\"in_conflict\"");
}

TEST_CASE("HC-094: a void exam stays void, and what was amended by someone who had not seen it is kept and marked") {
  Pair p;
  p.a.act(p.exam, "withdraw", R"({"reason":"entered for the wrong person"})", {p.opening.entry()});
  const Opened amended = p.b.act(p.exam, "finding", flexion(finding_of(523), 95), {p.opening.entry()});
  const ExamFold fold = p.now();
  CHECK(fold.exam.state == model::ExamState::withdrawn);
  CHECK(fold.exam.findings->size() == 1);
  CHECK(has_mark(fold, amended.entry(), "withdrawal_unseen"));
}

TEST_CASE("rule 31: a move replaces the earlier assignment, and two unseen moves are a conflict with nobody chosen") {
  Pair p;
  const auto person = [](std::uint8_t byte) {
    model::PersonId id;
    id.bytes.fill(byte);
    return id;
  };
  const auto move = [&](std::uint8_t byte) { return R"({"person":")" + person(byte).to_text() + R"(","reason":"namesakes"})"; };
  const Opened first = p.a.act(p.exam, "move", move(0x20), {p.opening.entry()}, {p.opening.entry()}, true);
  CHECK(p.a.fold(p.exam)->exam.person == person(0x20));
  p.share();
  p.a.act(p.exam, "move", move(0x30), {first.entry()}, {first.entry()}, true);
  p.b.act(p.exam, "move", move(0x40), {first.entry()}, {first.entry()}, true);
  const ExamFold fold = p.now();
  CHECK(conflicts_about(fold, "person") == 1);
  CHECK_FALSE(fold.exam.person.has_value());
  CHECK(fold.persons == std::vector<model::PersonId>{person(0x30), person(0x40)});
}

TEST_CASE("rule 18: a signature under a key that is not the examiner's, or over other entries, does not sign") {
  Pair p;
  DeviceWriter stranger(9);  // of the clinic's keys, but its examiner was never introduced to the others
  stranger.take_from(p.a);
  const Opened forged = stranger.act(p.exam, "sign", R"({"read_aloud":"Invented"})", {p.opening.entry()}, {}, true);
  std::vector<Opened> all = p.a.operations(p.exam);
  all.push_back(forged);
  const auto fold = p.a.fold_of(p.exam, all);
  REQUIRE(fold.has_value());
  CHECK(fold->exam.state == model::ExamState::open);
  CHECK(has_mark(*fold, forged.entry(), "signature_bad"));
}

TEST_CASE("HC-091, rule 32: an operation that asks for a newer edition is kept, counted and marked, and hides nothing") {
  Pair p;
  const Opened newer = p.a.act(p.exam, "finding_of_tomorrow", R"({"anything":[1,2]})", {p.opening.entry()});
  const Opened more = p.a.act(p.exam, "finding",
                              flexion(finding_of(524), 95).insert(1, R"("mood":"new member",)"), {newer.entry()});
  const ExamFold fold = p.now();
  CHECK(fold.unread == 1);
  CHECK(has_mark(fold, newer.entry(), "newer_edition"));
  CHECK(has_mark(fold, more.entry(), "newer_parts"));
  CHECK(fold.exam.findings->size() == 1);
}

TEST_CASE("unseen words about consent hold at what allows less until a person settles it") {
  Pair p;
  p.a.act(p.exam, "consent", R"({"consent":{"examine":"yes","record":"yes","send":"yes"}})", {p.opening.entry()});
  p.b.act(p.exam, "consent", R"({"consent":{"examine":"yes","record":"yes","send":"withdrawn"}})", {p.opening.entry()});
  const ExamFold fold = p.now();
  CHECK(conflicts_about(fold, "consent") == 1);
  CHECK(fold.exam.consent->send == model::ConsentWord::withdrawn);
  CHECK(fold.exam.consent->record == model::ConsentWord::yes);
}

TEST_CASE("two unseen impressions are both kept and neither is shown as the examiner's") {
  Pair p;
  p.a.act(p.exam, "impression", R"({"impression":{"text":"torn ligament"}})", {p.opening.entry()});
  p.b.act(p.exam, "impression", R"({"impression":{"text":"bruise"}})", {p.opening.entry()});
  const ExamFold fold = p.now();
  CHECK(conflicts_about(fold, "impression") == 1);
  CHECK_FALSE(fold.exam.impression.has_value());
  REQUIRE(fold.exam.conflicts->front().values.has_value());
  CHECK(fold.exam.conflicts->front().values->size() == 2);
}

}  // namespace limbledger::ledger::fold_test
