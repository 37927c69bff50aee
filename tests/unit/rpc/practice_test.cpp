// A practice ledger begins with invented people whose names say so, and its first entry says for ever that it is for practice
// (clinical safety, requirement 25; schemas/ledger-format.md, section 7).
#include "core/ledger/body.hpp"
#include "rpc/program/practice/people.hpp"
#include "tests/unit/service/desk_fixture.hpp"

namespace limbledger::rpc {

TEST_CASE("C25: a practice ledger holds invented people of every age, sound to its last entry, and its first entry is marked for practice") {
  service::test::DeskFixture fixture(service::LedgerKind::practice);
  const auto made = register_invented_people(fixture.store, fixture.world, fixture.made, service::test::passphrase);
  REQUIRE(made.has_value());
  fixture.reopen();
  fixture.unlock();
  const std::string found = fixture.ok("person.find", "{}");
  std::size_t count = 0;
  for (std::string name; !(name = service::test::at(found, "/people/" + std::to_string(count) + "/person/names/0/text")).empty(); ++count) {
    CHECK(name.ends_with(" Invented"));
  }
  CHECK(count == *made);
  CHECK(count >= 5);
  CHECK(service::test::at(fixture.ok("ledger.verify", "{}"), "/damage") == "[]");
  CHECK(service::test::at(fixture.ok("health.check", "{}"), "/ledger_kind") == "practice");
  const auto heads = fixture.store.heads();
  REQUIRE(heads.has_value());
  const auto first = fixture.store.read(heads->newest.front().replica, 1, 1, 1);
  REQUIRE(first.has_value());
  const auto intro = ledger::Intro::from_bytes(first->front().body);
  REQUIRE(intro.has_value());
  CHECK(intro->purpose == ledger::Purpose::practice);
}

}  // namespace limbledger::rpc
