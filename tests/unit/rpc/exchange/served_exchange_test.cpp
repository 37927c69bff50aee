// Two programs that serve exchange with each other over TLS while they are called: what one recorded shows on the other at once, and
// every refusal is said at the call or stands in the errand. Logic tests of our own rules.
#include "tests/unit/rpc/exchange/served_house.hpp"

namespace limbledger::rpc::exchange_test {

TEST_CASE("a tablet that serves exchanges with a hub that serves, and both see at once what came") {
  service::test::DeskFixture clinic;
  ServedHouse hub(*clinic.desk, true);
  const auto newcomer = let_in(hub, clinic.made.recovery_code);
  ServedHouse tablet(*newcomer->desk, false);
  const std::string there = register_one(hub, 11, "Invented Hubward");
  const std::string here = register_one(tablet, 12, "Invented Tabletward");
  // Looked at before, so that what is kept of it must be dropped.
  CHECK(at(*hub.call("person.find"), "/people/1").empty());
  CHECK(at(*tablet.call("person.find"), "/people/1").empty());
  const std::string hub_cursor = at(*hub.call("changes.read"), "/cursor");

  const auto begun = tablet.call("exchange.begin", R"({"with":")" + hub.url() + R"("})");
  REQUIRE_MESSAGE(begun.has_value(), codes_of(begun));
  CHECK(at(*begun, "/errand/state") == "running");
  CHECK(codes_of(tablet.call("exchange.begin", R"({"with":")" + hub.url() + R"("})")) == "exchange.busy");
  CHECK(codes_of(tablet.call("parcel.take", R"({"path":"/tmp/none.parcel"})")) == "exchange.busy");
  until({&hub, &tablet}, [&] { return tablet.state() != "running"; });
  const auto done = tablet.call("exchange.read");
  CHECK(at(*done, "/errand/state") == "done");
  CHECK(at(*done, "/errand/same") == "true");
  CHECK(std::stoi(at(*done, "/errand/taken")) > 0);
  CHECK(std::stoi(at(*done, "/errand/given")) > 0);
  CHECK(at(*done, "/errand/held/not_held") == "0");
  CHECK(at(*done, "/errand/held/level") == "witnessed");
  CHECK(at(*done, "/answering").empty());

  CHECK(tablet.call("person.read", R"({"person":")" + there + R"("})").has_value());
  CHECK(hub.call("person.read", R"({"person":")" + here + R"("})").has_value());
  CHECK_FALSE(at(*hub.call("person.find"), "/people/1").empty());
  CHECK_FALSE(at(*tablet.call("person.find"), "/people/1").empty());
  const auto told = [](const Result<std::string>& changes, const std::string& object) { return changes->find(object) != std::string::npos; };
  CHECK(told(tablet.call("changes.read", R"({"cursor":")" + at(*done, "/errand/cursor") + R"("})"), there));
  CHECK(told(hub.call("changes.read", R"({"cursor":")" + hub_cursor + R"("})"), here));
  CHECK(at(*hub.call("ledger.verify"), "/entries") == at(*tablet.call("ledger.verify"), "/entries"));

  // Again, with the hub locked: nothing is new, and it is answered all the same.
  REQUIRE(hub.call("ledger.lock").has_value());
  REQUIRE(tablet.call("exchange.begin", R"({"with":")" + hub.url() + R"("})").has_value());
  until({&hub, &tablet}, [&] { return tablet.state() != "running"; });
  const auto again = tablet.call("exchange.read");
  CHECK(at(*again, "/errand/state") == "done");
  CHECK(at(*again, "/errand/taken") == "0");
  CHECK(at(*again, "/errand/given") == "0");

  // Locked in the middle: the device's own key goes on with what was begun, and what came is there once it is open again.
  clinic.unlock();
  const std::string later = register_one(hub, 13, "Invented Later");
  REQUIRE(tablet.call("exchange.begin", R"({"with":")" + hub.url() + R"("})").has_value());
  REQUIRE(tablet.call("ledger.lock").has_value());
  until({&hub, &tablet}, [&] { return tablet.state() != "running"; });
  CHECK(tablet.state() == "done");
  CHECK(codes_of(tablet.call("exchange.begin", R"({"with":")" + hub.url() + R"("})")) == "ledger.locked");
  REQUIRE(newcomer->desk->unlock({}, second_passphrase).has_value());
  CHECK(tablet.call("person.read", R"({"person":")" + later + R"("})").has_value());
}

TEST_CASE("an exchange is refused at the call where it cannot begin, and says in its errand what went wrong later") {
  service::test::DeskFixture clinic;
  ServedHouse hub(*clinic.desk, true);
  CHECK(codes_of(hub.call("exchange.begin", R"({"with":"http://127.0.0.1:1"})")) == "exchange.address");
  CHECK(path_of(hub.call("exchange.begin", R"({"with":"https://127.0.0.1"})")) == "/with");
  // The clinic's first device was enrolled by none.
  CHECK(codes_of(hub.call("exchange.begin", R"({"with":"https://127.0.0.1:1"})")) == "exchange.no_hub");
  CHECK(codes_of(service::test::call(*clinic.desk, "exchange.begin", R"({"with":"https://127.0.0.1:1"})")) == "exchange.not_served");
  CHECK(codes_of(service::test::call(*clinic.desk, "exchange.read", "{}")) == "exchange.not_served");
  CHECK(codes_of(service::test::call(*clinic.desk, "exchange.end", "{}")) == "exchange.not_served");
  CHECK(at(*hub.call("exchange.read"), "/errand").empty());
  CHECK(at(*hub.call("exchange.end"), "/ended") == "false");
  for (const service::Scope scope : {service::Scope::viewer, service::Scope::kiosk}) {
    hub.scope = scope;
    for (const std::string_view method : {"exchange.begin", "exchange.read", "exchange.end", "parcel.write", "parcel.take", "replica.enrol", "replica.let_in"}) {
      CHECK(codes_of(hub.call(method)) == "token.scope");
    }
  }
  hub.scope = service::Scope::sync;
  CHECK(hub.call("exchange.read").has_value());
  for (const std::string_view method : {"replica.enrol", "replica.enrolling", "replica.let_in", "replica.turn_away"}) {
    CHECK(codes_of(hub.call(method)) == "token.scope");
  }
  hub.scope = service::Scope::examiner;

  const auto newcomer = let_in(hub, clinic.made.recovery_code);
  ServedHouse tablet(*newcomer->desk, false);
  CHECK(codes_of(tablet.call("replica.enrol", R"({"code":"x"})")) == "enrol.no_hub");
  // Another clinic's hub answers at the address: nothing is sent to it.
  service::test::DeskFixture other(service::LedgerKind::clinic, 2);
  ServedHouse foreign(*other.desk, true);
  REQUIRE(tablet.call("exchange.begin", R"({"with":")" + foreign.url() + R"("})").has_value());
  until({&foreign, &tablet}, [&] { return tablet.state() != "running"; });
  CHECK(tablet.state() == "failed");
  CHECK(at(*tablet.call("exchange.read"), "/errand/fault/code") == "exchange.key");
  CHECK_FALSE(at(*tablet.call("exchange.read"), "/errand/fault/hint").empty());
  // Nobody answers: it tries again for some seconds, unless it is ended.
  REQUIRE(tablet.call("exchange.begin", R"({"with":"https://127.0.0.1:1"})").has_value());
  CHECK(at(*tablet.call("exchange.end"), "/ended") == "true");
  until({&tablet}, [&] { return tablet.state() != "running"; });
  CHECK(tablet.state() == "ended");
  CHECK(at(*tablet.call("exchange.end"), "/ended") == "false");
}

TEST_CASE("a new device is let in by the digits that it shows, typed, and by nothing else") {
  service::test::DeskFixture clinic;
  service::test::DeskFixture other(service::LedgerKind::clinic, 2);
  ServedHouse hub(*clinic.desk, true);
  const std::string code = R"({"code":")" + clinic.made.recovery_code + R"("})";
  CHECK(hub.enrolling() == "none");
  CHECK(codes_of(hub.call("replica.let_in", R"({"digits":"000000"})")) == "enrol.nobody");
  CHECK(codes_of(hub.call("replica.turn_away")) == "enrol.nobody");
  CHECK(codes_of(hub.call("replica.enrol", R"({"code":"no code"})")) == "ledger.passphrase");
  const auto foreign = hub.call("replica.enrol", R"({"code":")" + other.made.recovery_code + R"("})");
  CHECK(codes_of(foreign) == "ledger.passphrase");
  CHECK(path_of(foreign) == "/code");
  {
    Newcomer early(hub.url());  // nobody has begun an enrolment
    until({&hub}, [&] { return early.is_over.load(); });
    CHECK(early.refused_for == "enrol.closed");
  }
  REQUIRE(hub.call("replica.enrol", code).has_value());
  CHECK(codes_of(hub.call("replica.enrol", code)) == "enrol.closed");
  CHECK(codes_of(hub.call("replica.let_in", R"({"digits":""})")) == "value.empty");
  {
    Newcomer one(hub.url());
    until({&hub}, [&] { return one.has_digits && hub.enrolling() == "compares"; });
    CHECK(at(*hub.call("replica.enrolling"), "/digits") == one.digits);
    const std::string wrong = one.digits == "123456" ? "123457" : "123456";
    CHECK(codes_of(hub.call("replica.let_in", R"({"digits":")" + wrong + R"("})")) == "enrol.digits");
    CHECK(codes_of(hub.call("replica.let_in", R"({"digits":"yes"})")) == "enrol.digits");
    CHECK(codes_of(hub.call("replica.let_in", R"({"digits":""})")) == "value.empty");
    // A second one cannot push in, and what was typed for the first lets nobody else in once it has gone.
    Newcomer second(hub.url(), 10);
    until({&hub}, [&] { return second.is_over.load(); });
    CHECK(second.refused_for == "enrol.closed");
    one.goes_away = true;
    until({&hub}, [&] { return hub.enrolling() == "waits"; });
    CHECK(codes_of(hub.call("replica.let_in", R"({"digits":")" + one.digits + R"("})")) == "enrol.nobody");
  }
  {
    Newcomer unwanted(hub.url(), 11);
    until({&hub}, [&] { return unwanted.has_digits && hub.enrolling() == "compares"; });
    CHECK(at(*hub.call("replica.turn_away"), "/state") == "turned_away");
    until({&hub}, [&] { return unwanted.is_over.load(); });
    CHECK(unwanted.refused_for == "enrol.refused");
  }
  // Locked while somebody waits: the clinic's root key is gone with the rest.
  REQUIRE(hub.call("replica.enrol", code).has_value());
  {
    Newcomer late(hub.url(), 12);
    until({&hub}, [&] { return late.has_digits && hub.enrolling() == "compares"; });
    REQUIRE(hub.call("ledger.lock").has_value());
    CHECK(hub.enrolling() == "interrupted");
    CHECK(codes_of(hub.call("replica.let_in", R"({"digits":")" + late.digits + R"("})")) == "ledger.locked");
    until({&hub}, [&] { return late.is_over.load(); });
    CHECK(late.refused_for == "enrol.interrupted");
  }
  CHECK(codes_of(hub.call("replica.enrol", code)) == "ledger.locked");
  clinic.unlock();
  const auto newcomer = let_in(hub, clinic.made.recovery_code, 13);
  CHECK(at(*hub.call("replica.enrolling"), "/replica") == at(*service::test::call(*newcomer->desk, "replica.list", "{}"), "/replica"));
  CHECK(codes_of(hub.call("replica.turn_away")) == "enrol.nobody");
}

TEST_CASE("a program that is started locked answers other devices from the first unlocking on, and says at once where its port is taken") {
  service::test::DeskFixture clinic;
  clinic.desk->lock();
  ServedHouse hub(*clinic.desk, true);
  const auto locked = hub.call("exchange.read");
  CHECK(at(*locked, "/answering/open") == "false");
  CHECK(at(*locked, "/answering/addresses/0").empty());
  clinic.unlock();
  CHECK(at(*hub.call("exchange.read"), "/answering/open") == "true");
  const std::uint16_t port = address_in(hub.url())->port;
  service::test::DeskFixture other(service::LedgerKind::clinic, 2);
  Handover handover;
  CHECK_THROWS_AS(ServedExchange(*other.desk, handover, HubAt{"127.0.0.1", port}), Problem);
  other.desk->lock();
  CHECK_THROWS_AS(ServedExchange(*other.desk, handover, HubAt{"127.0.0.1", port}), Problem);
}

TEST_CASE("a hub names addresses that another device can call") {
  CHECK(addresses_to_call("192.0.2.20", 7443) == std::vector<std::string>{"https://192.0.2.20:7443"});
  CHECK(addresses_to_call("2001:db8::20", 7443) == std::vector<std::string>{"https://[2001:db8::20]:7443"});
  for (const std::string all : {"0.0.0.0", "::"}) {
    const auto named = addresses_to_call(all, 7443);
    REQUIRE_FALSE(named.empty());
    for (const std::string& one : named) {
      CAPTURE(one);
      const auto at = address_in(one);
      REQUIRE(at.has_value());
      CHECK(at->port == 7443);
      CHECK((at->host != "0.0.0.0" && at->host != "::"));
    }
  }
}

}  // namespace limbledger::rpc::exchange_test
