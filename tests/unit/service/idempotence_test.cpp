#include "tests/unit/service/desk_fixture.hpp"

#include <vector>

using namespace limbledger::service;
using namespace limbledger::service::test;

// The same request again gives the same entries and revision; other params under it are refused (contract, section 9).
namespace {

struct Call {
  std::string method;
  std::string params;
  std::string others;  // other params under the same request
};

std::vector<Call> calls(const DeskFixture& fixture) {
  const std::string request = R"(,"request":")";
  const std::string end = "\"}";
  const std::string person = fixture.ok("person.register", R"({"names":[{"text":"Awa Invented"}],"sex":"female")" + request + request_id(1) + end);
  const std::string amend = R"({"person":")" + at(person, "/person/person") + R"(","replaces":[],"seen":)" + at(person, "/revision") + R"(,"changes":)";
  const std::string exam = R"({"person":")" + at(person, "/person/person") + R"(","setting":"outreach","complaint":)";
  return {
      {"person.register", R"({"names":[{"text":" Binta "}],"sex":"female")" + request + request_id(2) + end,
       R"({"names":[{"text":"Binta"}],"sex":"male")" + request + request_id(2) + end},
      {"person.amend", amend + R"({"home":"Upper Ford"})" + request + request_id(3) + end, amend + R"({"home":"Lower Ford"})" + request + request_id(3) + end},
      {"place.amend", R"({"changes":{"name":"Upper Ford"})" + request + request_id(4) + end, R"({"changes":{"name":"Lower Ford"})" + request + request_id(4) + end},
      {"exam.open", exam + R"("free")" + request + request_id(5) + end, exam + R"("free","side":"left")" + request + request_id(5) + end},
  };
}

// All but what says that it is a repeat; who looks alike is told as of now.
std::string without_repeat(std::string reply) {
  const std::string mark = R"(,"repeat":true)";
  const auto found = reply.find(mark);
  REQUIRE(found != std::string::npos);
  return reply.erase(found, mark.size());
}

enum class Between { nothing, reopened, crashed, index_dropped, other_writes };

void go_on(DeskFixture& fixture, Between between) {
  switch (between) {
    case Between::nothing:
      return;
    case Between::other_writes:
      fixture.ok("person.register", R"({"names":[{"text":"Someone Else"}],"sex":"unknown","request":")" + request_id(900) + "\"}");
      return;
    case Between::reopened:
      fixture.reopen();
      break;
    case Between::crashed:
      fixture.reopen(true);
      break;
    case Between::index_dropped:
      fixture.reopen();
      REQUIRE(fixture.store.append({}, {}, {{"index", {}}}).has_value());
      break;
  }
  fixture.world.pass(3'600'000);
  fixture.unlock();
}

}  // namespace

TEST_CASE("26: a request sent again gives the same answer, also after a restart, a crash and a lost index") {
  for (const Between between : {Between::nothing, Between::reopened, Between::crashed, Between::index_dropped, Between::other_writes}) {
    DeskFixture fixture;
    for (const Call& call : calls(fixture)) {
      INFO(static_cast<int>(between));
      INFO(call.method);
      const std::string first = fixture.ok(call.method, call.params);
      CHECK(at(first, "/repeat") == "");
      const std::string entries = at(fixture.ok("ledger.verify", "{}"), "/entries");
      if (between != Between::other_writes) {
        go_on(fixture, between);
      }
      const std::string again = fixture.ok(call.method, call.params);
      CHECK(without_repeat(again) == first);
      CHECK(at(fixture.ok("ledger.verify", "{}"), "/entries") == entries);
      CHECK(codes_of(fixture.call(call.method, call.others)) == "request.reused");
      CHECK(path_of(fixture.call(call.method, call.others)) == "/request");
      CHECK(at(fixture.ok("ledger.verify", "{}"), "/entries") == entries);
    }
  }
}

TEST_CASE("a repeat keeps its revision though others have written since") {
  DeskFixture fixture;
  const std::string params = R"({"names":[{"text":"Awa Invented"}],"sex":"female","request":")" + request_id(1) + "\"}";
  const std::string first = fixture.ok("person.register", params);
  fixture.ok("person.amend", R"({"person":")" + at(first, "/person/person") + R"(","replaces":[],"seen":)" + at(first, "/revision") +
                                 R"(,"changes":{"home":"Upper Ford"},"request":")" + request_id(2) + "\"}");
  go_on(fixture, Between::other_writes);
  const std::string again = fixture.ok("person.register", params);
  CHECK(at(again, "/revision") == at(first, "/revision"));
  CHECK(at(again, "/repeat") == "true");
  CHECK(at(again, "/person/home") == "Upper Ford");
}

TEST_CASE("a request id of one method is refused in another, and in any letter case") {
  DeskFixture fixture;
  const std::string id = "ABCDEF00-0000-4000-8000-00000000000a";
  const std::string lower = "abcdef00-0000-4000-8000-00000000000a";
  const std::string person = R"({"names":[{"text":"Awa Invented"}],"sex":"female","request":")";
  fixture.ok("person.register", person + id + "\"}");
  CHECK(at(fixture.ok("person.register", person + lower + "\"}"), "/repeat") == "true");
  CHECK(codes_of(fixture.call("place.amend", R"({"changes":{"name":"Upper Ford"},"request":")" + lower + "\"}")) == "request.reused");
  CHECK(codes_of(fixture.call("person.register", person + "not a uuid\"}")) == "params.wrong_type");
}

TEST_CASE("a refused call is not recorded, and its request may be sent again mended") {
  DeskFixture fixture;
  const std::string bad = R"({"names":[{"text":""}],"sex":"female","request":")" + request_id(1) + "\"}";
  CHECK(codes_of(fixture.call("person.register", bad)) == "value.empty");
  CHECK(fixture.ok("request.read", R"({"request":")" + request_id(1) + "\"}") == R"({"state":"unknown"})");
  fixture.store.refuse_writes(true);
  const std::string good = R"({"names":[{"text":"Awa"}],"sex":"female","request":")" + request_id(1) + "\"}";
  CHECK(codes_of(fixture.call("person.register", good)) == "ledger.read_only");
  CHECK(at(fixture.ok("person.find", "{}"), "/people") == "[]");
  fixture.store.refuse_writes(false);
  CHECK(at(fixture.ok("person.register", good), "/repeat") == "");
}

TEST_CASE("request.read tells what was recorded, and a kiosk only of its own exam") {
  DeskFixture fixture;
  const std::string person = fixture.ok("person.register", R"({"names":[{"text":"Awa"}],"sex":"female","request":")" + request_id(1) + "\"}");
  const std::string exam = fixture.ok("exam.open", R"({"complaint":"free","setting":"outreach","request":")" + request_id(2) + "\"}");
  const auto state = [&](unsigned request) { return at(fixture.ok("request.read", R"({"request":")" + request_id(request) + "\"}"), "/state"); };
  const std::string recorded = fixture.ok("request.read", R"({"request":")" + request_id(1) + "\"}");
  CHECK(at(recorded, "/state") == "recorded");
  CHECK(at(recorded, "/object") == at(person, "/person/person"));
  CHECK(at(recorded, "/entries") == at(person, "/revision"));
  CHECK(at(recorded, "/revision") == at(person, "/revision"));
  CHECK(state(3) == "unknown");
  fixture.caller.scope = Scope::kiosk;
  CHECK(state(2) == "unknown");
  limbledger::model::ExamId id;
  REQUIRE(limbledger::model::ExamId::from_text(at(exam, "/exam/exam"), id).empty());
  fixture.caller.exam = id;
  CHECK(state(2) == "recorded");
  CHECK(state(1) == "unknown");
}
