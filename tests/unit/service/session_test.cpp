#include "tests/unit/service/desk_fixture.hpp"

using namespace limbledger::service;
using namespace limbledger::service::test;

namespace {

limbledger::Result<std::string> unlock(const DeskFixture& fixture, std::string_view words) {
  return fixture.call("ledger.unlock", R"({"passphrase":")" + std::string(words) + "\"}");
}

std::string param_of(const limbledger::Result<std::string>& result, std::string_view name) {
  const auto refusal = result.error();
  for (const auto& param : refusal.faults.front().params) {
    if (param.name == name) {
      return param.json;
    }
  }
  return {};
}

}  // namespace

TEST_CASE("health is answered locked and unlocked, and says what was read back") {
  DeskFixture fixture;
  const std::string ready = fixture.ok("health.check", "{}");
  CHECK(at(ready, "/state") == "ready");
  CHECK(at(ready, "/store/durability") == "memory");
  CHECK(at(ready, "/store/read") == "true");
  CHECK(at(ready, "/store/entries") == "2");  // who this device is, and who examines
  CHECK(at(ready, "/protocol/oldest") == "1");
  CHECK(at(ready, "/edition") == "facts.1");
  // Contract, section 1.
  CHECK(at(ready, "/limits") == R"({"message_bytes":1048576,"depth":32,"batch":100,"findings_a_call":100,"name":200,"remark":4000,"text":20000})");
  CHECK(at(ready, "/ledger_kind") == "clinic");
  CHECK(at(ready, "/examiners") == R"(["Invented Examiner"])");
  fixture.store.refuse_writes(true);
  CHECK(at(fixture.ok("health.check", "{}"), "/state") == "read_only");
  fixture.store.refuse_writes(false);
  CHECK(fixture.ok("ledger.lock", "{}") == R"({"locked":true})");
  fixture.caller.scope = Scope::none;
  const std::string locked = fixture.ok("health.check", "{}");
  CHECK(at(locked, "/state") == "locked");
  CHECK(at(locked, "/store/read") == "true");
  CHECK(at(locked, "/store/entries") == "");
}

TEST_CASE("a demonstration and a practice ledger say what they are") {
  CHECK(at(DeskFixture(LedgerKind::demonstration).ok("health.check", "{}"), "/ledger_kind") == "demonstration");
  CHECK(at(DeskFixture(LedgerKind::practice).ok("health.check", "{}"), "/ledger_kind") == "practice");
}

TEST_CASE("a session says what its caller may do, and another protocol is refused with the range") {
  DeskFixture fixture;
  CHECK(fixture.ok("session.open", R"({"client":"test","protocol":1})") == R"({"scope":"examiner","locked":false,"protocol":1})");
  const auto refused = fixture.call("session.open", R"({"protocol":2})");
  CHECK(codes_of(refused) == "protocol.version");
  CHECK(path_of(refused) == "/protocol");
  CHECK(param_of(refused, "oldest") == "1");
  CHECK(param_of(refused, "newest") == "1");
  CHECK(codes_of(fixture.call("session.open", R"({"examiner":"Somebody Else"})")) == "examiner.unknown");
  CHECK(codes_of(fixture.call("session.open", R"({"examiner":"Invented Examiner"})")) == "answered");
  fixture.caller.scope = Scope::viewer;
  fixture.desk->lock();
  CHECK(fixture.ok("session.open", "{}") == R"({"scope":"viewer","locked":true,"protocol":1})");
  CHECK(fixture.ok("session.end", "{}") == R"({"ended":true})");
}

TEST_CASE("a locked ledger answers nothing about anybody") {
  DeskFixture fixture;
  fixture.desk->lock();
  for (const char* method : {"person.find", "place.read", "request.read"}) {
    INFO(method);
    CHECK(codes_of(fixture.call(method, "{}")) == "ledger.locked");
  }
  const auto opened = unlock(fixture, passphrase);
  REQUIRE(codes_of(opened) == "answered");
  CHECK(at(*opened, "/examiner") == fixture.made.examiner.to_text());
  CHECK(at(*opened, "/locks_at") == "2026-11-24T10:30:00.000Z");
  CHECK(codes_of(fixture.call("person.find", "{}")) == "answered");
}

TEST_CASE("an examiner unlocks by label or id, and the printed code opens for reading and recording") {
  DeskFixture fixture;
  fixture.desk->lock();
  const std::string words = R"(","passphrase":")" + std::string(passphrase) + "\"}";
  CHECK(codes_of(fixture.call("ledger.unlock", R"({"examiner":"Invented Examiner)" + words)) == "answered");
  fixture.desk->lock();
  CHECK(codes_of(fixture.call("ledger.unlock", R"({"examiner":")" + fixture.made.examiner.to_text() + words)) == "answered");
  fixture.desk->lock();
  CHECK(codes_of(fixture.call("ledger.unlock", R"({"examiner":"Nobody)" + words)) == "examiner.unknown");
  CHECK(codes_of(unlock(fixture, fixture.made.recovery_code)) == "answered");
  CHECK(fixture.desk->examiner_key() == nullptr);
}

// The waits of contract, section 11: 1, 2, 4 ... 60 seconds.
TEST_CASE("wrong passphrases wait 1, 2, 4 ... 60 seconds, also after a restart, and a right one in time is not tried") {
  DeskFixture fixture;
  fixture.desk->lock();
  for (const int wait_s : {1, 2, 4, 8, 16, 32, 60, 60, 60}) {
    INFO(wait_s);
    CHECK(codes_of(unlock(fixture, "some other invented words")) == "ledger.passphrase");
    const auto at_once = unlock(fixture, passphrase);
    CHECK(codes_of(at_once) == "ledger.wait");
    CHECK(param_of(at_once, "wait_s") == std::to_string(wait_s));
    fixture.reopen();
    fixture.world.pass(wait_s * 1000 - 1);
    const auto too_soon = unlock(fixture, passphrase);
    CHECK(codes_of(too_soon) == "ledger.wait");
    CHECK(param_of(too_soon, "wait_s") == "1");
    fixture.world.pass(1);
  }
  CHECK(codes_of(unlock(fixture, passphrase)) == "answered");
  fixture.desk->lock();
  CHECK(codes_of(unlock(fixture, "some other invented words")) == "ledger.passphrase");
  fixture.world.pass(1000);
  CHECK(codes_of(unlock(fixture, passphrase)) == "answered");
}

TEST_CASE("a clock that was set back makes nobody wait longer than a minute") {
  DeskFixture fixture;
  fixture.desk->lock();
  CHECK(codes_of(unlock(fixture, "some other invented words")) == "ledger.passphrase");
  fixture.world.reading.wall_ms -= std::int64_t{365} * 86400 * 1000;
  const auto waits = unlock(fixture, passphrase);
  CHECK(codes_of(waits) == "ledger.wait");
  CHECK(param_of(waits, "wait_s") == "60");
  fixture.world.pass(60'000);
  CHECK(codes_of(unlock(fixture, passphrase)) == "answered");
}

TEST_CASE("no fault repeats a passphrase") {
  DeskFixture fixture;
  fixture.desk->lock();
  const auto silent = [&](const std::string& params) {
    const auto refused = fixture.call("ledger.unlock", params);
    REQUIRE_FALSE(refused.has_value());
    const auto refusal = refused.error();
    for (const auto& fault : refusal.faults) {
      for (const std::string* text : {&fault.path, &fault.expected, &fault.got}) {
        CHECK(text->find("hunting") == std::string::npos);
      }
      for (const auto& param : fault.params) {
        CHECK(param.json.find("hunting") == std::string::npos);
      }
    }
    return codes_of(refused);
  };
  CHECK(silent(R"({"passphrase":"hunting words"})") == "ledger.passphrase");
  CHECK(silent(R"({"passphrase":"hunting words"})") == "ledger.wait");
  fixture.world.pass(60'000);
  CHECK(silent(R"({"passphrase":"hunting\nwords"})") == "value.control_character");
  CHECK(silent(R"({"passphrase":")" + std::string(195, 'x') + R"(hunting"})") == "limit.text");
  CHECK(silent(R"({"passphrase":["hunting"]})") == "params.wrong_type");
  CHECK(silent(R"({"passphrase":""})") == "value.empty");
}

TEST_CASE("an unlocked ledger locks itself after a quarter of an hour, and asking for health does not keep it open") {
  DeskFixture fixture;
  fixture.world.pass(Desk::idle_ms);
  CHECK(codes_of(fixture.call("person.find", "{}")) == "answered");
  for (int minute = 0; minute < 15; ++minute) {
    fixture.world.pass(60'000);
    CHECK(codes_of(fixture.call("health.check", "{}")) == "answered");
  }
  fixture.world.pass(1);
  CHECK(codes_of(fixture.call("person.find", "{}")) == "ledger.locked");
}

TEST_CASE("verifying names what holds, and a kiosk may not") {
  DeskFixture fixture;
  const std::string verified = fixture.ok("ledger.verify", "{}");
  CHECK(at(verified, "/entries") == "2");
  CHECK(at(verified, "/replicas") == "1");
  CHECK(at(verified, "/damage") == "[]");
  CHECK(at(verified, "/vouched_to/0/seq") == "2");
  CHECK(at(verified, "/opened") == "0");
  fixture.ok("person.register", R"({"names":[{"text":"Awa"}],"sex":"female","request":")" + request_id(1) + "\"}");
  CHECK(at(fixture.ok("ledger.verify", "{}"), "/opened") == "1");
  CHECK(at(fixture.ok("ledger.verify", R"({"from":3})"), "/entries") == "4");
  fixture.caller.scope = Scope::kiosk;
  CHECK(codes_of(fixture.call("ledger.verify", "{}")) == "token.scope");
}
