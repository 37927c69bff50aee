// The states a form has to show, over HTTP and over WebSocket alike: locked, locked by idleness, waiting after a wrong passphrase,
// and a disk that refuses. Each has one code and says what to do; what was refused is not recorded, and the same call goes
// through once it can. Numbers of errors: contract, section 8; waits: section 11 (1, 2, 4 ... 60 s).
#include "core/wire/fault.hpp"
#include "tests/unit/rpc/token_house.hpp"

namespace limbledger::rpc {

namespace {

using namespace test;

struct StateHouse : TokenHouse {
  StateHouse() {
    line->socket_opened([](std::string) {});
    CHECK(at(says("session.open", R"({"token":")" + examiner + "\"}"), "/result/scope") == "examiner");
  }
  std::unique_ptr<Conversation> line = visits.begin();

  std::string says(std::string_view method, std::string_view params = "{}") {
    return line->message(R"({"jsonrpc":"2.0","id":1,"method":")" + std::string(method) + R"(","params":)" + std::string(params) + "}").text.value_or("{}");
  }
  // The same call over either.
  std::string over(bool socket, std::string_view method, std::string_view params = "{}") { return socket ? says(method, params) : asks(examiner, method, params); }
};

std::string awa_again(unsigned number) { return R"({"names":[{"text":"Awa Invented"}],"sex":"female","request":")" + service::test::request_id(number) + "\"}"; }

// "code number retry", and that there is a hint.
std::string state_told(const std::string& reply) {
  CHECK(at(reply, "/error/data/faults/0/hint").size() > 10);
  return at(reply, "/error/data/faults/0/code") + " " + at(reply, "/error/code") + " " + at(reply, "/error/data/retry");
}

}  // namespace

TEST_CASE("locked is one code over either carrier, and the same call goes through once an examiner has unlocked") {
  for (const bool socket : {false, true}) {
    CAPTURE(socket);
    StateHouse house;
    house.locks();
    CHECK(state_told(house.over(socket, "person.register", awa_again(1))) == "ledger.locked 4 true");
    CHECK(state_told(house.over(socket, "person.find")) == "ledger.locked 4 true");
    CHECK(at(house.over(socket, "health.check"), "/result/state") == "locked");
    CHECK(at(house.over(socket, "session.open"), "/result/locked") == "true");
    CHECK(at(house.over(socket, "ledger.unlock", R"({"passphrase":")" + std::string(service::test::passphrase) + "\"}"), "/result/opened_by") == "passphrase");
    CHECK(at(house.over(socket, "person.register", awa_again(1)), "/result/repeat").empty());
    CHECK(at(house.over(socket, "person.register", awa_again(1)), "/result/repeat") == "true");
  }
}

TEST_CASE("a quarter of an hour without use locks for every carrier, and health.check is no use") {
  StateHouse house;
  house.desk.world.pass(service::Desk::idle_ms - 1);
  CHECK(refused_for(house.says("person.find")).empty());
  house.desk.world.pass(service::Desk::idle_ms - 1);
  CHECK(at(house.asks(house.examiner, "health.check"), "/result/state") == "ready");
  house.desk.world.pass(1);
  CHECK(state_told(house.says("person.find")) == "ledger.locked 4 true");
  CHECK(state_told(house.asks(house.examiner, "person.find")) == "ledger.locked 4 true");
}

TEST_CASE("after a wrong passphrase every carrier waits, longer each time, and the right one tells nothing before") {
  StateHouse house;
  house.locks();
  const std::string right = R"({"passphrase":")" + std::string(service::test::passphrase) + "\"}";
  for (const int seconds : {1, 2, 4, 8, 16, 32, 60, 60}) {
    CAPTURE(seconds);
    CHECK(state_told(house.over(seconds % 3 == 1, "ledger.unlock", R"({"passphrase":"wrong words"})")) == "ledger.passphrase 4 true");
    for (const bool socket : {false, true}) {
      const std::string early = house.over(socket, "ledger.unlock", right);
      CHECK(state_told(early) == "ledger.wait 4 true");
      CHECK(at(early, "/error/data/faults/0/params/wait_s") == std::to_string(seconds));
    }
    house.desk.world.pass(seconds * 1000);
  }
  CHECK(at(house.says("ledger.unlock", right), "/result/opened_by") == "passphrase");
}

TEST_CASE("HC-111: a disk that refuses is one code over either carrier; reading goes on, and what was refused is recorded once there is room") {
  for (const bool socket : {false, true}) {
    CAPTURE(socket);
    StateHouse house;
    const std::string exam = house.open_exam(1);
    house.desk.store.refuse_writes(true);
    CHECK(state_told(house.over(socket, "person.register", awa_again(1))) == "ledger.read_only 5 true");
    CHECK(at(house.over(socket, "health.check"), "/result/state") == "read_only");
    CHECK(at(house.over(socket, "health.check"), "/result/store/writes") == "false");
    CHECK(at(house.over(socket, "exam.read", R"({"exam":")" + exam + "\"}"), "/result/exam/exam") == exam);
    CHECK(at(house.over(socket, "person.find"), "/result/people") == "[]");
    CHECK(at(house.over(socket, "request.read", R"({"request":")" + service::test::request_id(1) + "\"}"), "/result/state") == "unknown");
    house.desk.store.refuse_writes(false);
    CHECK(at(house.over(socket, "person.register", awa_again(1)), "/result/repeat").empty());
    CHECK(at(house.over(socket, "health.check"), "/result/state") == "ready");
  }
}

}  // namespace limbledger::rpc
