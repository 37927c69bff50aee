// Who decided between values that were written without knowledge of each other, and whose the value is that was taken: on three devices, in
// every order in which their entries can come. Source: rules 28 to 30 of the ledger. Everything here is invented.
#include "tests/unit/ledger/two_writers.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>

namespace limbledger::ledger::fold_test {

namespace {

// An exam that the first opened, known to the second and to the third, who settles.
struct Three {
  DeviceWriter a{1};
  DeviceWriter b{2};
  DeviceWriter c{3};
  model::ExamId exam = exam_of(77);
  Opened opening = a.act(exam, "exam", open_body, {}, {}, false, 77);

  Three() { share(); }
  void share() {
    for (int round = 0; round < 2; ++round) {
      b.take_from(a);
      c.take_from(b);
      a.take_from(c);
    }
  }
  // What every device says, in whatever order its entries came.
  [[nodiscard]] ExamFold now() {
    share();
    const std::string wanted = said(a.fold(exam));
    REQUIRE(wanted == said(b.fold(exam)));
    REQUIRE(wanted == said(c.fold(exam)));
    std::vector<Opened> all = a.operations(exam);
    std::vector<std::size_t> order(all.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
      order[i] = i;
    }
    REQUIRE(order.size() <= 6);
    do {
      std::vector<Opened> came;
      for (const std::size_t i : order) {
        came.push_back(all[i]);
      }
      REQUIRE(wanted == said(a.fold_of(exam, came)));
    } while (std::next_permutation(order.begin(), order.end()));
    return *a.fold(exam);
  }
};

std::string settle_body(const std::string& finding, const std::string& reason) {
  std::string body = finding;
  body.pop_back();
  return body + R"(,"reason":")" + reason + "\"}";
}

// Written out as conflict.settle writes it: that it was observed is said.
std::string as_observed(std::string finding) { return finding.insert(finding.size() - 2, R"(,"origin":"observed")"); }

const model::Settled& only_settled(const ExamFold& fold) {
  REQUIRE(fold.exam.settled.has_value());
  REQUIRE(fold.exam.settled->size() == 1);
  return fold.exam.settled->front();
}

}  // namespace

TEST_CASE("a settled value stays whose it was, on either side and whichever was taken, and says who settled, why and between which values") {
  for (const std::string side : {"left", "right"}) {
    for (const bool first : {true, false}) {
      CAPTURE(side);
      CAPTURE(first);
      Three t;
      const Opened of_a = t.a.act(t.exam, "finding", flexion(finding_of(600), 105, side), {t.opening.entry()});
      const Opened of_b = t.b.act(t.exam, "finding", flexion(finding_of(601), 85, side), {t.opening.entry()});
      t.share();
      const std::string taken = first ? flexion(finding_of(600), 105, side) : flexion(finding_of(601), 85, side);
      const std::vector<model::EntryId> both{of_a.entry(), of_b.entry()};
      const Opened settle = t.c.act(t.exam, "settle", settle_body(as_observed(taken), "the tablet lay on the bed"), both, both, true);
      const ExamFold fold = t.now();
      REQUIRE(fold.exam.findings->size() == 1);
      const model::Finding& finding = fold.exam.findings->front();
      CHECK(finding.examiner == (first ? t.a : t.b).examiner());
      CHECK(finding.entered_by == t.c.examiner());
      CHECK(finding.entry == settle.entry());
      REQUIRE(finding.settled.has_value());
      REQUIRE(finding.settled->size() == 1);
      const model::Settled& settled = finding.settled->front();
      CHECK(settled.by == t.c.examiner());
      CHECK(settled.reason == wire::Remark{"the tablet lay on the bed"});
      CHECK(settled.taken == (first ? of_a : of_b).entry());
      CHECK(settled.at.ms == settle.operation().at.wall_ms.steps);
      CHECK_FALSE(settled.after_signature.has_value());
      REQUIRE(settled.among.size() == 2);
      for (const model::Weighed& one : settled.among) {
        const bool is_a = one.entry == of_a.entry();
        CHECK(one.by == (is_a ? t.a : t.b).examiner());
        CHECK(one.at.ms == (is_a ? of_a : of_b).operation().at.wall_ms.steps);
        CHECK(one.value->json.find(is_a ? "105" : "85") != std::string::npos);
      }
      CHECK_FALSE(fold.exam.settled.has_value());
    }
  }
}

TEST_CASE("who examined is not always who wrote: a settled value is of whom its entry names") {
  Three t;
  std::string told = flexion(finding_of(600), 105);
  told.insert(told.size() - 1, R"(,"examiner":")" + t.b.examiner().to_text() + "\"");
  const Opened of_a = t.a.act(t.exam, "finding", told, {t.opening.entry()});
  const Opened of_c = t.c.act(t.exam, "finding", flexion(finding_of(601), 85), {t.opening.entry()});
  t.share();
  const std::vector<model::EntryId> both{of_a.entry(), of_c.entry()};
  t.c.act(t.exam, "settle", settle_body(flexion(finding_of(600), 105), "written for b"), both, both, true);
  CHECK(t.now().exam.findings->front().examiner == t.b.examiner());
}

TEST_CASE("settling anew with the other value shows as that: what holds now, and the decision that it undid") {
  Three t;
  const Opened of_a = t.a.act(t.exam, "finding", flexion(finding_of(600), 105), {t.opening.entry()});
  const Opened of_b = t.b.act(t.exam, "finding", flexion(finding_of(601), 85), {t.opening.entry()});
  t.share();
  const std::vector<model::EntryId> both{of_a.entry(), of_b.entry()};
  const Opened once = t.c.act(t.exam, "settle", settle_body(flexion(finding_of(601), 85), "seen by c"), both, both, true);
  t.share();
  const Opened anew = t.a.act(t.exam, "settle", settle_body(flexion(finding_of(600), 105), "c had mixed them up"), {once.entry()}, {once.entry()}, true);
  const ExamFold fold = t.now();
  const model::Finding& finding = fold.exam.findings->front();
  CHECK(finding.examiner == t.a.examiner());
  REQUIRE(finding.settled.has_value());
  REQUIRE(finding.settled->size() == 2);
  const model::Settled& now = finding.settled->at(0);
  const model::Settled& before = finding.settled->at(1);
  CHECK(now.entry == anew.entry());
  CHECK(now.taken == of_a.entry());
  CHECK(now.among.size() == 2);
  CHECK_FALSE(now.undone.has_value());
  CHECK(before.entry == once.entry());
  CHECK(before.by == t.c.examiner());
  CHECK(before.taken == of_b.entry());
  CHECK(before.undone == true);
  // In the history each decision is of the one whose value it took.
  for (const model::Finding& one : fold.history) {
    CHECK(one.settled.has_value() == (one.entry == once.entry() || one.entry == anew.entry()));
    CHECK(one.examiner == (one.entry == of_a.entry() || one.entry == anew.entry() ? t.a : t.b).examiner());
  }
}

TEST_CASE("what was settled after the signature says so, and what neither had known of the other says that") {
  for (const bool known : {true, false}) {
    CAPTURE(known);
    Three t;
    const Opened of_a = t.a.act(t.exam, "finding", flexion(finding_of(600), 105), {t.opening.entry()});
    const Opened of_b = t.b.act(t.exam, "finding", flexion(finding_of(601), 85), {t.opening.entry()});
    t.share();
    const Opened sign = t.a.act(t.exam, "sign", R"({"read_aloud":"Invented, 50, left, stiff knee"})", {of_a.entry()}, {}, true);
    std::vector<model::EntryId> shown{of_b.entry(), known ? sign.entry() : of_a.entry()};
    if (known) {
      t.share();
    }
    t.c.act(t.exam, "settle", settle_body(flexion(finding_of(601), 85), "looked at together"), shown, {of_a.entry(), of_b.entry()}, true);
    const ExamFold fold = t.now();
    REQUIRE(fold.exam.findings->front().settled.has_value());
    CHECK(fold.exam.findings->front().settled->front().after_signature == (known ? model::AfterSignature::seen : model::AfterSignature::unseen));
    CHECK(fold.exam.findings->front().examiner == t.b.examiner());
  }
}

TEST_CASE("a settled value that was none of those is a new one, of who settled") {
  Three t;
  const Opened of_a = t.a.act(t.exam, "finding", flexion(finding_of(600), 105), {t.opening.entry()});
  const Opened of_b = t.b.act(t.exam, "finding", flexion(finding_of(601), 85), {t.opening.entry()});
  t.share();
  const std::vector<model::EntryId> both{of_a.entry(), of_b.entry()};
  const Opened of_c = t.c.act(t.exam, "settle", settle_body(flexion(finding_of(600), 97), "measured again"), both, both, true);
  ExamFold fold = t.now();
  CHECK(fold.exam.findings->front().examiner == t.c.examiner());
  CHECK_FALSE(fold.exam.findings->front().settled->front().taken.has_value());
  CHECK(fold.exam.findings->front().settled->front().among.size() == 2);
  // It is one of the values when it is settled anew.
  t.share();
  t.a.act(t.exam, "settle", settle_body(flexion(finding_of(601), 85), "as b had it"), {of_c.entry()}, {of_c.entry()}, true);
  fold = t.now();
  CHECK(fold.exam.findings->front().examiner == t.b.examiner());
  CHECK(fold.exam.findings->front().settled->front().among.size() == 3);
}

TEST_CASE("a value that its writer had corrected and that is taken all the same is still that writer's") {
  Three t;
  const Opened slip = t.a.act(t.exam, "finding", flexion(finding_of(600), 105), {t.opening.entry()});
  const Opened mended = t.a.act(t.exam, "finding", flexion(finding_of(600), 107), {slip.entry()}, {slip.entry()});
  const Opened of_b = t.b.act(t.exam, "finding", flexion(finding_of(601), 85), {t.opening.entry()});
  t.share();
  const std::vector<model::EntryId> both{mended.entry(), of_b.entry()};
  t.c.act(t.exam, "settle", settle_body(flexion(finding_of(600), 105), "the first reading"), both, both, true);
  const ExamFold fold = t.now();
  const model::Finding& finding = fold.exam.findings->front();
  CHECK(finding.examiner == t.a.examiner());
  CHECK(finding.settled->front().taken == slip.entry());
  CHECK(finding.settled->front().among.size() == 3);
}

TEST_CASE("two decisions that did not know of each other, decided between, name the values that were measured") {
  Three t;
  const Opened of_a = t.a.act(t.exam, "finding", flexion(finding_of(600), 105), {t.opening.entry()});
  const Opened of_b = t.b.act(t.exam, "finding", flexion(finding_of(601), 85), {t.opening.entry()});
  t.share();
  const std::vector<model::EntryId> both{of_a.entry(), of_b.entry()};
  const Opened by_a = t.a.act(t.exam, "settle", settle_body(flexion(finding_of(600), 105), "mine"), both, both, true);
  const Opened by_b = t.b.act(t.exam, "settle", settle_body(flexion(finding_of(601), 85), "mine"), both, both, true);
  ExamFold fold = t.now();
  CHECK(conflicts_about(fold, "finding") == 1);
  CHECK(fold.exam.findings->size() == 2);
  const std::vector<model::EntryId> decisions{by_a.entry(), by_b.entry()};
  t.c.act(t.exam, "settle", settle_body(flexion(finding_of(601), 85), "the goniometer was b's"), decisions, decisions, true);
  fold = t.now();
  const model::Finding& finding = fold.exam.findings->front();
  CHECK(finding.examiner == t.b.examiner());
  REQUIRE(finding.settled->size() == 3);
  CHECK(finding.settled->front().taken == of_b.entry());
  CHECK(finding.settled->front().among.size() == 2);
  CHECK(finding.settled->at(1).undone == true);
  CHECK(finding.settled->at(2).undone == true);
}

TEST_CASE("a value that holds against its withdrawal says who had taken it back, and why") {
  Three t;
  const Opened of_a = t.a.act(t.exam, "finding", flexion(finding_of(600), 105), {t.opening.entry()});
  t.share();
  const Opened back = t.b.act(t.exam, "withdraw", R"({"finding":")" + finding_of(600).to_text() + R"(","reason":"wrong person"})", {of_a.entry()}, {of_a.entry()});
  const Opened edit = t.a.act(t.exam, "finding", flexion(finding_of(600), 107), {of_a.entry()}, {of_a.entry()});
  t.share();
  const std::vector<model::EntryId> seen{back.entry(), edit.entry()};
  t.c.act(t.exam, "settle", settle_body(flexion(finding_of(600), 107), "it was his knee"), seen, {edit.entry()}, true);
  const ExamFold fold = t.now();
  CHECK_FALSE(fold.exam.conflicts.has_value());
  const model::Finding& finding = fold.exam.findings->front();
  CHECK(finding.examiner == t.a.examiner());
  REQUIRE(finding.settled->front().among.size() == 2);
  CHECK(finding.settled->front().among.back().by == t.b.examiner());
  CHECK(finding.settled->front().among.back().reason == wire::Remark{"wrong person"});
  CHECK_FALSE(finding.settled->front().among.back().value.has_value());
}

TEST_CASE("a reading of one's own in the place of two is its writer's, also where it equals one of them, and an ordinary correction decides nothing") {
  Three t;
  const Opened first = t.a.act(t.exam, "finding", flexion(finding_of(600), 105), {t.opening.entry()});
  const Opened mended = t.a.act(t.exam, "finding", flexion(finding_of(600), 106), {first.entry()}, {first.entry()});
  CHECK_FALSE(t.now().exam.findings->front().settled.has_value());
  const Opened other = t.b.act(t.exam, "finding", flexion(finding_of(600), 85), {first.entry()}, {first.entry()});
  t.share();
  const std::vector<model::EntryId> both{mended.entry(), other.entry()};
  t.c.act(t.exam, "finding", flexion(finding_of(600), 85), both, both);
  const ExamFold fold = t.now();
  const model::Finding& finding = fold.exam.findings->front();
  CHECK(finding.examiner == t.c.examiner());
  REQUIRE(finding.settled.has_value());
  CHECK_FALSE(finding.settled->front().taken.has_value());
  CHECK(finding.settled->front().by == t.c.examiner());
  CHECK(finding.settled->front().among.size() == 2);
}

TEST_CASE("an impression, a plan item and whose exam it is: what was decided between names whose it was") {
  for (const auto& row :
       {std::array<std::string, 4>{"impression", "impression", R"({"impression":{"text":"torn ligament"}})", R"({"impression":{"text":"bruise"}})"},
        std::array<std::string, 4>{"plan", "plan", R"({"plan_item":{"plan_item":")" + finding_of(610).to_text() + R"(","kind":"film","text":"today"}})",
                                   R"({"plan_item":{"plan_item":")" + finding_of(610).to_text() + R"(","kind":"film","text":"in a week"}})"},
        std::array<std::string, 4>{"move", "person", R"({"person":")" + finding_of(611).to_text() + R"(","reason":"namesakes"})",
                                   R"({"person":")" + finding_of(612).to_text() + R"(","reason":"her sister"})"}}) {
    const std::string& op = row[0];
    const std::string& about = row[1];
    const std::string& of_a_says = row[2];
    const std::string& of_b_says = row[3];
    CAPTURE(op);
    Three t;
    const bool move = op == "move";
    const std::vector<model::EntryId> replaced = move ? std::vector{t.opening.entry()} : std::vector<model::EntryId>{};
    const Opened of_a = t.a.act(t.exam, op, of_a_says, {t.opening.entry()}, replaced, move);
    const Opened of_b = t.b.act(t.exam, op, of_b_says, {t.opening.entry()}, replaced, move);
    CHECK(conflicts_about(t.now(), about) == 1);
    CHECK_FALSE(t.now().exam.settled.has_value());
    const std::vector<model::EntryId> both{of_a.entry(), of_b.entry()};
    const Opened once = t.c.act(t.exam, op, of_b_says, both, both, move);
    const ExamFold decided = t.now();
    const model::Settled& settled = only_settled(decided);
    CHECK(settled.about.text == about);
    CHECK(settled.by == t.c.examiner());
    CHECK(settled.taken == of_b.entry());
    CHECK(settled.among.size() == 2);
    CHECK(settled.reason.has_value() == move);
    // Undone by writing the other again; one more that equals neither is an ordinary change.
    t.a.act(t.exam, op, of_a_says, {once.entry()}, {once.entry()}, move);
    const ExamFold undone = t.now();
    REQUIRE(undone.exam.settled->size() == 2);
    CHECK(undone.exam.settled->at(0).taken == of_a.entry());
    CHECK(undone.exam.settled->at(0).by == t.a.examiner());
    CHECK(undone.exam.settled->at(1).undone == true);
  }
}

TEST_CASE("side, complaint and consent are decided each by itself, with the reason, also between a changed value and one that the other left as it was") {
  Three t;
  const auto body = [](const std::string& complaint, const std::string& side, const std::string& more = "") {
    return R"({"complaint":")" + complaint + R"(","side":")" + side + R"(","setting":"outreach")" + more + "}";
  };
  const Opened first = t.a.act(t.exam, "exam", body("free", "left"), {t.opening.entry()}, {t.opening.entry()});
  t.share();
  const Opened of_a = t.a.act(t.exam, "exam", body("acute_knee", "left"), {first.entry()}, {first.entry()});
  const Opened of_b = t.b.act(t.exam, "exam", body("heel_pain", "right"), {first.entry()}, {first.entry()});
  const std::vector<model::EntryId> both{of_a.entry(), of_b.entry()};
  t.share();
  const Opened decided = t.c.act(t.exam, "exam", body("acute_knee", "right", R"(,"reason":"asked again")"), both, both);
  const ExamFold fold = t.now();
  REQUIRE(fold.exam.settled.has_value());
  REQUIRE(fold.exam.settled->size() == 2);
  for (const model::Settled& settled : *fold.exam.settled) {
    const bool complaint = settled.about.text == "complaint";
    CHECK((complaint || settled.about.text == "side"));
    CHECK(settled.taken == (complaint ? of_a : of_b).entry());
    CHECK(settled.among.size() == 2);
    CHECK(settled.reason == wire::Remark{"asked again"});
  }
  CHECK(fold.exam.side == model::Side::right);
  // A later amendment of the side alone leaves the decision about the complaint as it was.
  t.b.act(t.exam, "exam", body("acute_knee", "left"), {decided.entry()}, {decided.entry()});
  const ExamFold later = t.now();
  REQUIRE(later.exam.settled.has_value());
  CHECK(std::count_if(later.exam.settled->begin(), later.exam.settled->end(), [&](const model::Settled& one) {
          return one.about.text == "complaint" && one.entry == decided.entry() && !one.undone;
        }) == 1);
  Three asked;
  const auto consent = [](const std::string& send) { return R"({"consent":{"examine":"yes","record":"yes","send":")" + send + "\"}}"; };
  const Opened yes = asked.a.act(asked.exam, "consent", consent("yes"), {asked.opening.entry()});
  const Opened no = asked.b.act(asked.exam, "consent", consent("no"), {asked.opening.entry()});
  asked.share();
  asked.c.act(asked.exam, "consent", consent("no"), {yes.entry(), no.entry()}, {yes.entry(), no.entry()});
  const ExamFold said_no = asked.now();
  CHECK(only_settled(said_no).about.text == "consent");
  CHECK(only_settled(said_no).taken == no.entry());
}

TEST_CASE("a value that one took back and another changed, neither knowing, and that was then taken back by who saw both, stands with both and the reasons") {
  for (const std::string side : {"left", "right"}) {
    CAPTURE(side);
    Three t;
    const Opened first = t.a.act(t.exam, "finding", flexion(finding_of(600), 105, side), {t.opening.entry()});
    t.share();
    const auto taken_back = [](const std::string& reason) { return R"({"finding":")" + finding_of(600).to_text() + R"(","reason":")" + reason + "\"}"; };
    const Opened of_a = t.a.act(t.exam, "withdraw", taken_back("another's"), {first.entry()}, {first.entry()});
    const Opened of_b = t.b.act(t.exam, "finding", flexion(finding_of(600), 85, side), {first.entry()}, {first.entry()});
    t.share();
    CHECK_FALSE(t.now().exam.settled.has_value());
    const Opened decided = t.c.act(t.exam, "withdraw", taken_back("nobody felt this knee"), {of_a.entry(), of_b.entry()}, {of_b.entry()});
    const ExamFold fold = t.now();
    CHECK(fold.exam.findings->empty());
    const model::Settled& settled = only_settled(fold);
    CHECK(settled.about.text == "withdrawal");
    CHECK(settled.entry == decided.entry());
    CHECK(settled.reason == wire::Remark{"nobody felt this knee"});
    CHECK(settled.taken == of_a.entry());
    REQUIRE(settled.among.size() == 2);
    CHECK(settled.among[0].by == t.b.examiner());
    CHECK(settled.among[0].value->json.find("85") != std::string::npos);
    CHECK(settled.among[1].reason == wire::Remark{"another's"});
  }
}

TEST_CASE("of a person the birth and the home are decided each by itself, and say whose word was taken") {
  Three t;
  const model::ExamId record{object_of(test_clinic(), ObjectType::person, DeviceWriter::request_of(78), 0).bytes};
  const Opened first = t.a.act(record, "person", R"({"names":[{"text":"Awa Invented"}],"birth":{"date":"1960"},"home":"Upper Ford"})", {});
  t.share();
  const Opened of_a = t.a.act(record, "person_change", R"({"birth":{"date":"1961"},"home":"Far Hill"})", {first.entry()}, {first.entry()});
  const Opened of_b = t.b.act(record, "person_change", R"({"birth":{"date":"1962"}})", {first.entry()}, {first.entry()});
  t.share();
  const std::vector<model::EntryId> all{first.entry(), of_a.entry(), of_b.entry()};
  t.c.act(record, "person_change", R"({"birth":{"date":"1962"},"reason":"read off her card"})", {of_a.entry(), of_b.entry()}, all);
  t.share();
  for (DeviceWriter* device : {&t.a, &t.b, &t.c}) {
    const auto fold = fold_person(model::PersonId{record.bytes}, device->operations(record));
    REQUIRE(fold.has_value());
    CHECK(fold->conflicts.empty());
    REQUIRE(fold->settled.size() == 1);
    const model::Settled& settled = fold->settled.front();
    CHECK(settled.about.text == "birth");
    CHECK(settled.by == t.c.examiner());
    CHECK(settled.taken == of_b.entry());
    CHECK(settled.reason == wire::Remark{"read off her card"});
    REQUIRE(settled.among.size() == 2);
    for (const model::Weighed& one : settled.among) {
      CHECK(one.value->json == (one.entry == of_a.entry() ? R"({"date":"1961"})" : R"({"date":"1962"})"));
    }
  }
}

}  // namespace limbledger::ledger::fold_test
