#include "core/service/watched_store.hpp"
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
  CHECK(at(ready, "/store/entries") == "4");  // who this device is, who examines, and under a key how they are called
  CHECK(at(ready, "/protocol/oldest") == "1");
  CHECK(at(ready, "/edition") == "facts.1");
  // Contract, section 1.
  CHECK(at(ready, "/limits") == R"({"message_bytes":1048576,"depth":32,"batch":100,"findings_a_call":100,"name":200,"remark":4000,"text":20000})");
  CHECK(at(ready, "/ledger_kind") == "clinic");
  CHECK(at(ready, "/examiners") == R"(["Invented Examiner"])");
  CHECK(at(ready, "/store/writes") == "true");
  CHECK(at(ready, "/store/damage") == "");
  // The disk fills up behind our back: known at the next trial, no later than this.
  fixture.store.refuse_writes(true);
  fixture.world.pass(WatchedStore::trial_every_ms);
  const std::string full = fixture.ok("health.check", "{}");
  CHECK(at(full, "/state") == "read_only");
  CHECK(at(full, "/store/writes") == "false");
  fixture.store.refuse_writes(false);
  CHECK(at(fixture.ok("health.check", "{}"), "/state") == "ready");
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

TEST_CASE("HC-118: a session says what its caller may do, and another protocol is refused with the range") {
  DeskFixture fixture;
  CHECK(fixture.ok("session.open", R"({"client":"test","protocol":1})") == R"({"scope":"examiner","locked":false,"protocol":1})");
  const auto refused = fixture.call("session.open", R"({"protocol":2})");
  CHECK(codes_of(refused) == "protocol.version");
  CHECK(path_of(refused) == "/protocol");
  CHECK(param_of(refused, "oldest") == "1");
  CHECK(param_of(refused, "newest") == "1");
  CHECK(codes_of(fixture.call("session.open", R"({"examiner":"Somebody Else"})")) == "examiner.unknown");
  CHECK(codes_of(fixture.call("session.open", R"({"examiner":"Invented Examiner"})")) == "answered");
  // Contract, section 11: stdio has no tokens. One that nobody checks is refused, not passed over.
  const auto unchecked = fixture.call("session.open", R"({"token":"hunting"})");
  CHECK(codes_of(unchecked) == "token.unwanted");
  CHECK(path_of(unchecked) == "/token");
  CHECK(unchecked.error().faults.front().got.empty());
  CHECK(path_of(fixture.call("session.open", R"({"once":"hunting"})")) == "/once");
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

TEST_CASE("an examiner unlocks by label or id, and the printed code opens for reading only") {
  DeskFixture fixture;
  fixture.desk->lock();
  const std::string words = R"(","passphrase":")" + std::string(passphrase) + "\"}";
  CHECK(codes_of(fixture.call("ledger.unlock", R"({"examiner":"Invented Examiner)" + words)) == "answered");
  fixture.desk->lock();
  CHECK(codes_of(fixture.call("ledger.unlock", R"({"examiner":")" + fixture.made.examiner.to_text() + words)) == "answered");
  fixture.desk->lock();
  CHECK(codes_of(fixture.call("ledger.unlock", R"({"examiner":"Nobody)" + words)) == "examiner.unknown");
  CHECK(codes_of(fixture.call("ledger.unlock", R"({"examiner":"Invented Examiner)" + words)) == "answered");
  fixture.ok("person.register", R"({"names":[{"text":"Awa"}],"sex":"female","request":")" + request_id(1) + "\"}");
  const auto entries = at(fixture.ok("health.check", "{}"), "/store/entries");
  // With and without a name: a front end that always sends who unlocks is no reason to stay outside.
  for (const char* named : {"", R"("examiner":"Invented Examiner",)"}) {
    fixture.desk->lock();
    const std::string opened = fixture.ok("ledger.unlock", "{" + std::string(named) + R"("passphrase":")" + fixture.made.recovery_code + "\"}");
    CHECK(at(opened, "/examiner") == "");
    CHECK(at(opened, "/opened_by") == "printed_code");
    CHECK(fixture.desk->examiner_key() == nullptr);
    CHECK(at(fixture.ok("person.find", R"({"text":"Awa"})"), "/people/0/person") != "");
    for (const Method& method : methods()) {
      if (method.name == "ledger.lock") {
        continue;
      }
      INFO(method.name);
      const auto answer = fixture.call(method.name, "{}");
      CHECK((codes_of(answer) == "examiner.needed") == method.writes);
    }
    const std::string health = fixture.ok("health.check", "{}");
    CHECK(at(health, "/state") == "read_only");
    CHECK(at(health, "/store/writes") == "true");
    CHECK(at(health, "/store/entries") == entries);
  }
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

TEST_CASE("HC-111: a refused write makes the ledger read only at once, and it is ready again when there is room") {
  DeskFixture fixture;
  CHECK(at(fixture.ok("health.check", "{}"), "/state") == "ready");
  const std::string params = R"({"names":[{"text":"Awa"}],"sex":"female","request":")" + request_id(1) + "\"}";
  fixture.store.refuse_writes(true);
  CHECK(codes_of(fixture.call("person.register", params)) == "ledger.read_only");
  CHECK(at(fixture.ok("health.check", "{}"), "/state") == "read_only");
  CHECK(codes_of(fixture.call("person.find", "{}")) == "answered");
  fixture.store.refuse_writes(false);
  CHECK(at(fixture.ok("health.check", "{}"), "/state") == "ready");
  CHECK(codes_of(fixture.call("person.register", params)) == "answered");
  const auto heads = fixture.store.heads();
  REQUIRE(heads.has_value());
  CHECK(heads->meta.count("trial") == 0);  // nothing of the trial stays
}

TEST_CASE("damage found while unlocking or verifying is told by health, also while locked") {
  DeskFixture fixture;
  fixture.ok("person.register", R"({"names":[{"text":"Awa"}],"sex":"female","request":")" + request_id(1) + "\"}");
  auto heads = fixture.store.heads();
  REQUIRE(heads.has_value());
  limbledger::ledger::Head torn = heads->newest.front();
  torn.signature[7] ^= 1U;
  REQUIRE(fixture.store.append({}, {&torn, 1}, {}).has_value());
  CHECK(at(fixture.ok("health.check", "{}"), "/store/damage") == "");  // nobody has looked yet
  const std::string verified = fixture.ok("ledger.verify", "{}");
  CHECK(at(verified, "/damage/0/code") == "entry.head");
  CHECK(at(verified, "/damage/1/code") == "");  // once, though the newest head is also one of those kept
  CHECK(at(fixture.ok("health.check", "{}"), "/store/damage") == R"({"count":1,"code":"entry.head"})");
  fixture.desk->lock();
  CHECK(at(fixture.ok("health.check", "{}"), "/store/damage") == R"({"count":1,"code":"entry.head"})");
  fixture.reopen();
  CHECK(at(fixture.ok("health.check", "{}"), "/store/damage") == "");
  fixture.unlock();
  const std::string found = fixture.ok("health.check", "{}");
  CHECK(at(found, "/store/damage") == R"({"count":1,"code":"entry.head"})");
  CHECK(at(found, "/state") == "read_only");
  REQUIRE(fixture.store.append({}, {&heads->newest.front(), 1}, {}).has_value());
  fixture.desk->lock();
  fixture.ok("ledger.verify", "{}");
  CHECK(at(fixture.ok("health.check", "{}"), "/store/damage") == "");
}

TEST_CASE("only reading and writing records keeps a ledger open, and health tells that it is locked at once") {
  DeskFixture fixture;
  fixture.world.pass(Desk::idle_ms - 1);
  CHECK(codes_of(fixture.call("person.find", "{}")) == "answered");
  for (int minute = 0; minute < 14; ++minute) {
    fixture.world.pass(60'000);
    for (const char* method : {"health.check", "session.open", "ledger.verify", "catalogue.read"}) {
      CHECK(codes_of(fixture.call(method, "{}")) == "answered");
    }
  }
  fixture.world.pass(59'999);
  CHECK(at(fixture.ok("health.check", "{}"), "/state") == "ready");
  fixture.world.pass(1);
  CHECK(at(fixture.ok("health.check", "{}"), "/state") == "locked");
  CHECK(codes_of(fixture.call("person.find", "{}")) == "ledger.locked");
}

TEST_CASE("a ledger that fell asleep wakes for a record where nobody need be asked, and not after it was locked on purpose") {
  DeskFixture fixture(LedgerKind::demonstration);
  fixture.desk->wakes_by([&] { fixture.unlock(); });
  fixture.world.pass(Desk::idle_ms);
  CHECK(at(fixture.ok("health.check", "{}"), "/state") == "locked");
  CHECK(codes_of(fixture.call("person.find", "{}")) == "answered");
  fixture.world.pass(Desk::idle_ms);
  CHECK(at(fixture.ok("health.check", "{}"), "/state") == "locked");
  fixture.ok("ledger.lock", "{}");
  CHECK(codes_of(fixture.call("person.find", "{}")) == "ledger.locked");
}

TEST_CASE("verifying names what holds, and a kiosk may not") {
  DeskFixture fixture;
  const std::string verified = fixture.ok("ledger.verify", "{}");
  CHECK(at(verified, "/entries") == "4");
  CHECK(at(verified, "/replicas") == "1");
  CHECK(at(verified, "/damage") == "[]");
  CHECK(at(verified, "/vouched_to/0/seq") == "4");
  CHECK(at(verified, "/opened") == "1");
  fixture.ok("person.register", R"({"names":[{"text":"Awa"}],"sex":"female","request":")" + request_id(1) + "\"}");
  CHECK(at(fixture.ok("ledger.verify", "{}"), "/opened") == "2");
  CHECK(at(fixture.ok("ledger.verify", R"({"from":3})"), "/entries") == "6");
  fixture.caller.scope = Scope::kiosk;
  CHECK(codes_of(fixture.call("ledger.verify", "{}")) == "token.scope");
}

TEST_CASE("a kiosk, a copying program and who looks on lock nobody out, and a kiosk is given no assessment of a document") {
  DeskFixture fixture;
  const std::string document =
      R"({"document":{"format":"limbledger-exam/1","as_of":"2026-11-24","exam":{"complaint":"free","setting":"outreach"},"findings":[]}})";
  CHECK(codes_of(fixture.call("document.assess", document)) == "answered");
  for (const Scope scope : {Scope::kiosk, Scope::sync, Scope::viewer}) {
    fixture.caller.scope = scope;
    CHECK(codes_of(fixture.call("ledger.lock", "{}")) == "token.scope");
  }
  fixture.caller.scope = Scope::kiosk;
  CHECK(codes_of(fixture.call("document.assess", document)) == "token.scope");
  CHECK_FALSE(fixture.desk->locked());
  fixture.caller.scope = Scope::examiner;
  CHECK(at(fixture.ok("ledger.lock", "{}"), "/locked") == "true");
}

TEST_CASE("a clock before the release or more than fifty years after it is called suspect with what to do, and an exam opened by it says so") {
  DeskFixture fixture;
  const std::int64_t now = fixture.world.reading.wall_ms;
  const auto open = [&](unsigned number) {
    return fixture.ok("exam.open", R"({"complaint":"free","setting":"outreach","request":")" + request_id(number) + "\"}");
  };
  CHECK(at(fixture.ok("health.check", "{}"), "/clock/state") == "plausible");
  CHECK(at(open(1), "/remarks").empty());
  unsigned number = 2;
  for (const std::int64_t wrong : {std::int64_t{-126230400000}, std::int64_t{11234000000000}}) {  // 1966 and 2326
    fixture.world.reading.wall_ms = wrong;
    const std::string health = fixture.ok("health.check", "{}");
    CHECK(at(health, "/clock/state") == "suspect");
    CHECK(at(health, "/clock/hint").starts_with("set date and time"));
    CHECK(at(open(number++), "/remarks/0") == "clock_suspect");
  }
  fixture.world.reading.wall_ms = now;
  CHECK(at(fixture.ok("health.check", "{}"), "/clock/state") == "plausible");
}
