// C16 over the network: a kiosk fills its own exam and nothing else, also while the ledger is locked; what it sends is the
// person's own word until an examiner takes it over. Sources: clinical safety C16; ledger, decision 10 and section 4 ("a kiosk
// writes while locked and sees only its own open exam"); contract, sections 9 and 11.
#include "core/ledger/log/log.hpp"
#include "tests/unit/rpc/token_house.hpp"

namespace limbledger::rpc {

namespace {

using namespace test;

std::string told_yes(std::string_view item, std::string_view side = "left", std::string_view more = {}) {
  return R"({"item":")" + std::string(item) + R"(","side":")" + std::string(side) + R"(","value":{"kind":"answer","answer":"yes"})" + std::string(more) + "}";
}

// An exam of an examiner, and a kiosk for it.
struct KioskWaiting : TokenHouse {
  std::string other = open_exam(1);
  std::string exam = open_exam(2);
  std::string seen = at(asks(examiner, "exam.read", R"({"exam":")" + exam + "\"}"), "/result/revision");
  std::string first_seen = seen;
  std::string made = asks(examiner, "token.make", R"({"scope":"kiosk","exam":")" + exam + "\"}");
  std::string kiosk = at(made, "/result/token");

  std::string records(const std::string& finding, unsigned number, const std::string& of = {}) {
    return asks(kiosk, "finding.record", R"({"exam":")" + (of.empty() ? exam : of) + R"(","findings":[)" + finding + R"(],"seen":)" + seen + R"(,"request":")" + service::test::request_id(number) + "\"}");
  }
};

}  // namespace

TEST_CASE("C16: a kiosk goes on with its own exam while the ledger is locked, and nobody else does") {
  KioskWaiting house;
  house.locks();
  CHECK(refused_for(house.asks(house.examiner, "exam.read", R"({"exam":")" + house.exam + "\"}")) == "ledger.locked");
  CHECK(at(house.asks(house.kiosk, "health.check"), "/result/state") == "locked");
  CHECK(at(house.asks(house.kiosk, "exam.read", R"({"exam":")" + house.exam + "\"}"), "/result/exam/exam") == house.exam);
  CHECK(at(house.asks(house.kiosk, "form.describe", R"({"complaint":"acute_knee","exam":")" + house.exam + "\"}"), "/result/complaint") == "acute_knee");
  const std::string ordinary = house.records(told_yes("history.pop"), 10);
  house.seen = at(ordinary, "/result/revision");
  CHECK(at(ordinary, "/result/recorded/0/finding").size() == 26);
  CHECK(at(house.records(told_yes("history.saddle_numbness", "midline"), 11), "/result/tell_staff") == "true");
  CHECK(at(house.asks(house.kiosk, "request.read", R"({"request":")" + service::test::request_id(10) + "\"}"), "/result/state") == "recorded");
  // The same again writes nothing twice.
  CHECK(at(house.asks(house.kiosk, "finding.record",
                      R"({"exam":")" + house.exam + R"(","findings":[)" + told_yes("history.pop") + R"(],"seen":)" + house.first_seen + R"(,"request":")" +
                          service::test::request_id(10) + "\"}"),
           "/result/repeat") == "true");
  CHECK(refused_for(house.asks(house.kiosk, "exam.read", R"({"exam":")" + house.other + "\"}")) == "exam.not_yours");
  CHECK(refused_for(house.asks(house.kiosk, "exam.find")) == "token.scope");
  CHECK(house.desk.desk->locked());

  house.desk.unlock();
  const std::string read = house.asks(house.examiner, "exam.read", R"({"exam":")" + house.exam + "\"}");
  CHECK(at(read, "/result/exam/findings/0/origin") == "self_reported");
  CHECK(at(read, "/result/exam/findings/0/entered_by").empty());
  CHECK(at(read, "/result/exam/findings/1/origin") == "self_reported");
  CHECK(at(read, "/result/exam/incomplete").empty());
  const std::string assessed = house.asks(house.examiner, "exam.assess", R"({"exam":")" + house.exam + "\"}");
  CHECK(at(assessed, "/result/alerts") == "[]");  // asked again, and no alert before
  CHECK(at(assessed, "/result/questions/0/question") == "alert.ces");
  CHECK(at(house.asks(house.examiner, "ledger.verify"), "/result/damage") == "[]");
  CHECK(at(house.asks(house.examiner, "exam.find"), "/result/exams/1/exam").size() == 26);
}

TEST_CASE("ledger, decision 10: what a kiosk holds while the ledger is locked opens its own exam and no other") {
  KioskWaiting house;
  model::ExamId own;
  model::ExamId other;
  REQUIRE(model::ExamId::from_text(house.exam, own).empty());
  REQUIRE(model::ExamId::from_text(house.other, other).empty());
  const std::unique_ptr<ledger::Log> log = house.desk.desk->log().narrowed({model::as_object(own)});
  CHECK(log->identity().epochs.empty());
  CHECK(log->index().objects.size() == 1);
  const auto mine = log->operations(model::as_object(own));
  REQUIRE(mine.has_value());
  CHECK(mine->size() == 1);
  CHECK(log->operations(model::as_object(other))->empty());
  log->keep_only({});
  CHECK(log->operations(model::as_object(own))->empty());
}

TEST_CASE("what a kiosk wrote while the ledger was locked is there after a crash, and a kiosk that opened nothing yet opens one exam while it is locked") {
  TokenHouse house;
  const std::string kiosk = at(house.asks(house.examiner, "token.make", R"({"scope":"kiosk"})"), "/result/token");
  house.locks();
  const std::string opened = house.asks(kiosk, "exam.open", R"({"complaint":"acute_knee","side":"left","setting":"outreach","request":")" + service::test::request_id(1) + "\"}");
  const std::string exam = at(opened, "/result/exam/exam");
  REQUIRE(exam.size() == 26);
  // One exam a token, over whichever connection.
  CHECK(refused_for(house.asks(kiosk, "exam.open", R"({"complaint":"free","setting":"outreach","request":")" + service::test::request_id(2) + "\"}")) == "exam.not_yours");
  CHECK(at(house.asks(kiosk, "finding.record", R"({"exam":")" + exam + R"(","findings":[)" + told_yes("history.pop") + R"(],"seen":)" + at(opened, "/result/revision") +
                                                  R"(,"request":")" + service::test::request_id(3) + "\"}"),
           "/result/recorded/0/entry")
            .size() == 26);
  house.desk.reopen(true);
  house.context.desk = house.desk.desk.get();
  house.desk.unlock();
  const std::string read = house.asks(house.examiner, "exam.read", R"({"exam":")" + exam + "\"}");
  CHECK(at(read, "/result/exam/findings/0/item") == "history.pop");
  CHECK(at(read, "/result/exam/person").empty());
  CHECK(at(house.asks(house.examiner, "ledger.verify"), "/result/damage") == "[]");
}

TEST_CASE("a kiosk whose token has ended or expired goes on with nothing, and its key is forgotten") {
  KioskWaiting house;
  SUBCASE("ended while locked, which the examiner may") {
    house.locks();
    CHECK(house.desk.desk->keeps_kiosks());
    CHECK(at(house.asks(house.examiner, "token.end", R"({"number":)" + at(house.made, "/result/number") + "}"), "/result/ended") == "true");
  }
  SUBCASE("an hour is over") {
    house.locks();
    house.desk.world.pass(service::kiosk_minutes * 60'000);
  }
  SUBCASE("the person is done") {
    house.locks();
    CHECK(at(house.asks(house.kiosk, "session.end"), "/result/ended") == "true");
  }
  CHECK(refused_for(house.asks(house.kiosk, "exam.read", R"({"exam":")" + house.exam + "\"}")) == "token.expired");
  house.desk.desk->lock_if_idle();
  CHECK_FALSE(house.desk.desk->keeps_kiosks());
}

TEST_CASE("a kiosk in use keeps nobody's records open") {
  KioskWaiting house;
  house.desk.world.pass(service::Desk::idle_ms - 1);
  CHECK(at(house.asks(house.kiosk, "exam.read", R"({"exam":")" + house.exam + "\"}"), "/result/exam/exam") == house.exam);
  house.desk.world.pass(1);
  CHECK(at(house.asks(house.kiosk, "exam.read", R"({"exam":")" + house.exam + "\"}"), "/result/exam/exam") == house.exam);
  CHECK(refused_for(house.asks(house.examiner, "person.find")) == "ledger.locked");
  CHECK(house.desk.desk->locked());
}

TEST_CASE("C16: a kiosk records no hands-on item, nothing that is asked in private, and nobody else's examination") {
  KioskWaiting house;
  for (const char* item : {"knee.flexion_active", "knee.patella_tender", "vessel.pulse_dorsalis_pedis", "body.knee_replaced", "general.concern_knee_fracture",
                           "history.hurt_or_afraid"}) {
    CAPTURE(item);
    const std::string refused = house.records(told_yes(item, std::string_view(item).starts_with("history") ? "midline" : "left"), 20);
    CHECK(refused_for(refused) == "item.hands_on");
    CHECK(at(refused, "/error/data/faults/0/path") == "/findings/0/item");
    CHECK(at(refused, "/error/code") == "6");
  }
  const std::string checked = house.asks(house.kiosk, "finding.check", R"({"exam":")" + house.exam + R"(","findings":[)" + told_yes("knee.patella_tender") + "]}");
  CHECK(at(checked, "/result/faults/0/code") == "item.hands_on");
  const std::string claimed = house.records(told_yes("history.pop", "left", R"(,"examiner":")" + house.desk.made.examiner.to_text() + "\""), 21);
  CHECK(refused_for(claimed) == "token.scope");
  CHECK(at(house.records(told_yes("vessel.foot_cold"), 22), "/result/tell_staff") == "true");  // somebody feels a cold foot
  // Its form asks what it takes.
  const std::string form = house.asks(house.kiosk, "form.describe", R"({"complaint":"acute_knee","exam":")" + house.exam + "\"}");
  int steps = 0;
  for (int position = 0; !at(form, "/result/positions/" + std::to_string(position)).empty(); ++position) {
    for (int step = 0;; ++step) {
      const std::string item = at(form, "/result/positions/" + std::to_string(position) + "/steps/" + std::to_string(step) + "/item");
      if (item.empty()) {
        break;
      }
      ++steps;
      CAPTURE(item);
      CHECK((item.starts_with("history.") || item.starts_with("function.activity") || item == "vessel.foot_cold" || item == "general.temperature"));
    }
  }
  CHECK(steps > 5);
}

TEST_CASE("a kiosk that sends its opening again reads nothing of what examiners think, did about alerts, or keep apart") {
  TokenHouse house;
  const std::string kiosk = at(house.asks(house.examiner, "token.make", R"({"scope":"kiosk"})"), "/result/token");
  const std::string opening = R"({"complaint":"acute_knee","side":"left","setting":"outreach","examined_at":"2026-11-24T10:00:00.000Z","request":")" + service::test::request_id(1) + "\"}";
  const std::string opened = house.asks(kiosk, "exam.open", opening);
  const std::string exam = R"("exam":")" + at(opened, "/result/exam/exam") + "\"";
  std::string seen = at(opened, "/result/revision");
  const auto writes = [&](std::string_view method, const std::string& params, unsigned number) {
    const std::string reply = house.asks(house.examiner, method, "{" + params + "," + exam + R"(,"seen":)" + seen + R"(,"request":")" + service::test::request_id(number) + "\"}");
    REQUIRE(refused_for(reply).empty());
    seen = at(reply, "/result/revision");
  };
  writes("finding.record", R"("findings":[)" + told_yes("history.hurt_or_afraid", "midline") + "]", 2);
  writes("impression.record", R"("impression":{"text":"torn ligament, front"},"replaces":[])", 3);
  writes("plan.record", R"("plan_items":[{"kind":"referral","text":"knee clinic"}],"replaces":[])", 4);
  for (const std::string& read : {house.asks(kiosk, "exam.open", opening), house.asks(kiosk, "exam.read", "{" + exam + "}")}) {
    CHECK(refused_for(read).empty());
    CHECK(read.find("hurt_or_afraid") == std::string::npos);
    CHECK(read.find("torn ligament") == std::string::npos);
    CHECK(read.find("knee clinic") == std::string::npos);
  }
}

TEST_CASE("whoever found the printed code gives nobody a token, and a kiosk does not go on behind it") {
  KioskWaiting house;
  house.desk.desk->lock();
  REQUIRE(house.desk.desk->unlock("", house.desk.made.recovery_code).has_value());
  CHECK(refused_for(house.asks(house.examiner, "token.make", R"({"scope":"kiosk"})")) == "examiner.needed");
  CHECK(refused_for(house.records(told_yes("history.pop"), 30)) == "examiner.needed");
  house.locks();
  CHECK_FALSE(house.desk.desk->keeps_kiosks());
  CHECK(refused_for(house.records(told_yes("history.pop"), 30)) == "ledger.locked");
}

TEST_CASE("HC-111: a kiosk on a locked ledger whose disk refuses is told that nothing is recorded, and may send it again") {
  KioskWaiting house;
  house.locks();
  house.desk.store.refuse_writes(true);
  const std::string refused = house.records(told_yes("history.pop"), 40);
  CHECK(refused_for(refused) == "ledger.read_only");
  CHECK(at(refused, "/error/code") == "5");
  CHECK(at(refused, "/error/data/retry") == "true");
  house.desk.store.refuse_writes(false);
  const std::string recorded = house.records(told_yes("history.pop"), 40);
  CHECK(refused_for(recorded).empty());
  CHECK(at(recorded, "/result/repeat").empty());
}

}  // namespace limbledger::rpc
