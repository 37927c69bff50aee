// The door by which a ledger exchanges, from enrolment on, with methods called on both sides as a front end calls them: what was
// recorded on one shows on the other, while it is open and while it is locked. Logic tests of our own rules.
#include "tests/unit/exchange/joined.hpp"

namespace limbledger::service::test {

namespace {

ExchangeState meet(ExchangeDoor& calls, ExchangeDoor& answers) {
  Exporter shared{};
  shared.fill(5);
  const auto calling = calls.calling(shared);
  const auto answering = answers.answering(shared);
  while (true) {
    const auto message = calling->next();
    REQUIRE(message.has_value());
    if (!*message) {
      return calling->state();
    }
    REQUIRE(calling->take_in().has_value());
    const auto answer = answering->answer(**message);
    REQUIRE(answer.has_value());
    REQUIRE(calling->receive(*answer).has_value());
  }
}

}  // namespace

TEST_CASE("a device that joined reads what the hub wrote and gives what it writes, open or locked") {
  DeskFixture clinic;
  auto hub = ExchangeDoor::open(*clinic.desk);
  REQUIRE(hub.has_value());
  Joined tablet;
  join_to(**hub, clinic.made.recovery_code, tablet);
  CHECK(*(*hub)->is_hub());
  CHECK_FALSE(*tablet.door->is_hub());

  const std::string there = register_somebody(*clinic.desk, 11, "Invented Hubward");
  const std::string here = register_somebody(*tablet.desk, 12, "Invented Tabletward");
  // Both lists were looked at before: what comes in changes them.
  CHECK(at(*call(*clinic.desk, "person.find", "{}"), "/people/1").empty());
  const ExchangeState done = meet(*tablet.door, **hub);
  CHECK(done.is_same);
  CHECK(done.given > 0);
  CHECK(done.taken > 0);
  CHECK(call(*tablet.desk, "person.read", R"({"person":")" + there + R"("})").has_value());
  CHECK(call(*clinic.desk, "person.read", R"({"person":")" + here + R"("})").has_value());
  CHECK_FALSE(at(*call(*clinic.desk, "person.find", "{}"), "/people/1").empty());
  const auto held = tablet.door->held_elsewhere();
  REQUIRE(held->size() == 1);
  CHECK(held->front().holder == (*hub)->replica());
  CHECK(held->front().not_held == 0);
  CHECK(held->front().level == "witnessed");

  const auto list = call(*tablet.desk, "replica.list", "{}");
  REQUIRE_MESSAGE(list.has_value(), codes_of(list));
  CHECK(at(*list, "/replica") == tablet.door->replica().to_text());
  CHECK(at(*list, "/hub") == "false");
  CHECK(at(*list, "/holders/0/replica") == (*hub)->replica().to_text());
  CHECK(at(*list, "/holders/0/not_held") == "0");
  CHECK(at(*list, "/holders/0/level") == "witnessed");
  CHECK(at(*call(*clinic.desk, "replica.list", "{}"), "/hub") == "true");

  // The hub is locked: it takes all the same, and shows it once it is open again.
  clinic.desk->lock();
  const std::string later = register_somebody(*tablet.desk, 13, "Invented Later");
  CHECK(meet(*tablet.door, **hub).is_same);
  CHECK(meet(*tablet.door, **hub).calls == 1);
  clinic.unlock();
  CHECK(call(*clinic.desk, "person.read", R"({"person":")" + later + R"("})").has_value());
  CHECK(at(*call(*clinic.desk, "ledger.verify", "{}"), "/damage/0").empty());
  // And it goes on writing where its witnesses stand.
  register_somebody(*clinic.desk, 14, "Invented After");
  CHECK(meet(*tablet.door, **hub).is_same);
}

namespace {

// An exchange as far as the tablet's taking of what the hub gave: it has not been waited for.
void take_without_end(Joined& tablet, ExchangeDoor& hub) {
  Exporter shared{};
  shared.fill(6);
  const auto calling = tablet.door->calling(shared);
  const auto answering = hub.answering(shared);
  for (int i = 0; i < 2; ++i) {
    const auto message = calling->next();
    REQUIRE(message.has_value());
    REQUIRE(*message);
    const auto answer = answering->answer(**message);
    REQUIRE(answer.has_value());
    REQUIRE(calling->receive(*answer).has_value());
  }
  REQUIRE(calling->take_in().has_value());
  REQUIRE(tablet.store.is_behind);
}

}  // namespace

TEST_CASE("what an exchange took is on the disk before anybody is told of it, whatever asks first, and when it breaks off") {
  DeskFixture clinic;
  auto hub = ExchangeDoor::open(*clinic.desk);
  REQUIRE(hub.has_value());
  Joined tablet;
  join_to(**hub, clinic.made.recovery_code, tablet);
  meet(*tablet.door, **hub);
  CHECK_FALSE(tablet.store.is_behind);
  unsigned number = 40;
  const auto take_one = [&] {
    ++number;
    const std::string person = register_somebody(*clinic.desk, number, "Invented Number " + std::to_string(number));
    take_without_end(tablet, **hub);
    return R"({"person":")" + person + R"("})";
  };
  SUBCASE("a record is read") {
    const std::string person = take_one();
    CHECK(call(*tablet.desk, "person.read", person).has_value());
  }
  SUBCASE("the exchange is asked after") {
    take_one();
    CHECK(call(*tablet.desk, "replica.list", "{}").has_value());
  }
  SUBCASE("the ledger is verified while it is locked") {
    take_one();
    tablet.desk->lock();
    CHECK(call(*tablet.desk, "ledger.verify", "{}").has_value());
  }
  SUBCASE("something is recorded beside it") {
    take_one();
    register_somebody(*tablet.desk, 60, "Invented Beside");
  }
  SUBCASE("a parcel is written") {
    take_one();
    const auto leaving = tablet.door->parcel_out(std::nullopt);
    REQUIRE(leaving.has_value());
    CHECK((*leaving)->next().has_value());
  }
  SUBCASE("it breaks off") {
    take_one();
    CHECK(tablet.door->finish().has_value());
  }
  CHECK_FALSE(tablet.store.is_behind);
}

TEST_CASE("what an exchange took and the disk then refuses is told nowhere, and shuts the ledger") {
  DeskFixture clinic;
  auto hub = ExchangeDoor::open(*clinic.desk);
  REQUIRE(hub.has_value());
  Joined tablet;
  join_to(**hub, clinic.made.recovery_code, tablet);
  meet(*tablet.door, **hub);
  const std::string person = register_somebody(*clinic.desk, 41, "Invented Unheld");
  take_without_end(tablet, **hub);
  tablet.store.fails = true;
  SUBCASE("read") { CHECK(codes_of(call(*tablet.desk, "person.read", R"({"person":")" + person + R"("})")) == "ledger.read_only"); }
  SUBCASE("recorded beside") {
    CHECK(codes_of(call(*tablet.desk, "person.register", R"({"names":[{"text":"Invented Beside"}],"sex":"female","request":")" + request_id(42) + R"("})")) ==
          "ledger.read_only");
  }
  SUBCASE("given on") {
    const auto leaving = tablet.door->parcel_out(std::nullopt);
    REQUIRE(leaving.has_value());
    CHECK_FALSE((*leaving)->next().has_value());
    CHECK_FALSE(tablet.door->finish().has_value());
  }
  SUBCASE("broken off") { CHECK_FALSE(tablet.door->finish().has_value()); }
  CHECK(tablet.desk->locked());
  CHECK(codes_of(call(*tablet.desk, "person.read", R"({"person":")" + person + R"("})")) == "ledger.locked");
  CHECK(call(*tablet.desk, "health.check", "{}").has_value());
}

TEST_CASE("two records that were decided to be one elsewhere are one here as soon as that came in") {
  DeskFixture clinic;
  auto hub = ExchangeDoor::open(*clinic.desk);
  REQUIRE(hub.has_value());
  Joined tablet;
  join_to(**hub, clinic.made.recovery_code, tablet);
  const std::string one = register_somebody(*clinic.desk, 31, "Invented Twice");
  const std::string two = register_somebody(*tablet.desk, 32, "Invented Twise");
  REQUIRE(meet(*tablet.door, **hub).is_same);
  // What was decided was looked at here before: what comes in changes it.
  REQUIRE(at(*call(*tablet.desk, "pair.list", R"({"decided":true})"), "/total") == "0");
  const auto decided = call(*clinic.desk, "pair.decide",
                            R"({"persons":[")" + one + R"(",")" + two + R"("],"same":"yes","reason":"asked_person","seen":[],"request":")" + request_id(33) + R"("})");
  REQUIRE_MESSAGE(decided.has_value(), codes_of(decided));
  REQUIRE(meet(*tablet.door, **hub).is_same);
  CHECK(at(*call(*tablet.desk, "pair.list", R"({"decided":true})"), "/total") == "1");
}

TEST_CASE("who holds another clinic's code, or none, lets nobody in; a practice ledger lets nobody in at all") {
  DeskFixture clinic;
  DeskFixture other(LedgerKind::clinic, 2);
  auto hub = ExchangeDoor::open(*clinic.desk);
  REQUIRE(hub.has_value());
  const auto code_of_fault = [](const auto& refused) { return refused ? std::string("answered") : refused.error().faults.front().code + refused.error().faults.front().path; };
  CHECK(code_of_fault(Admitting::begin(**hub, other.made.recovery_code)) == "ledger.passphrase/code");
  CHECK(code_of_fault(Admitting::begin(**hub, "no code")) == "ledger.passphrase/code");
  clinic.desk->lock();
  CHECK(code_of_fault(Admitting::begin(**hub, clinic.made.recovery_code)) == "ledger.locked");
  CHECK(code_of_fault(ExchangeDoor::open(*clinic.desk)) == "ledger.locked");
  DeskFixture practice(LedgerKind::practice, 3);
  auto door = ExchangeDoor::open(*practice.desk);
  REQUIRE(door.has_value());
  CHECK(code_of_fault(Admitting::begin(**door, practice.made.recovery_code)) == "exchange.purpose");
}

TEST_CASE("a parcel goes from door to door, and what it brings shows at once") {
  DeskFixture clinic;
  auto hub = ExchangeDoor::open(*clinic.desk);
  REQUIRE(hub.has_value());
  Joined tablet;
  join_to(**hub, clinic.made.recovery_code, tablet);
  const std::string here = register_somebody(*tablet.desk, 12, "Invented Tabletward");
  ledger::Bytes parcel;
  const auto leaving = tablet.door->parcel_out(std::nullopt);
  REQUIRE(leaving.has_value());
  for (auto piece = (*leaving)->next(); !piece->empty(); piece = (*leaving)->next()) {
    parcel.insert(parcel.end(), piece->begin(), piece->end());
  }
  const auto bring = [&](bool takes) {
    const auto coming = (*hub)->parcel_in(false, takes);
    REQUIRE(coming.has_value());
    std::size_t next = 0;
    for (auto wants = ParcelWants::more; wants != ParcelWants::nothing;) {
      next = wants == ParcelWants::from_start ? 0 : next;
      const std::size_t size = std::min<std::size_t>(700, parcel.size() - next);
      const auto fed = (*coming)->feed(std::span<const std::uint8_t>(parcel).subspan(next, size));
      REQUIRE(fed.has_value());
      wants = *fed;
      next += size;
    }
    return (*coming)->taken();
  };
  CHECK(bring(false).entries == (*leaving)->written().entries);
  CHECK_FALSE(call(*clinic.desk, "person.read", R"({"person":")" + here + R"("})").has_value());
  CHECK(bring(true).taken == (*leaving)->written().entries);
  CHECK(call(*clinic.desk, "person.read", R"({"person":")" + here + R"("})").has_value());
  CHECK(bring(true).taken == 0);
  // Locked in the middle of it: no key of the clinic's is used any more, and nothing new can be begun.
  const auto begun = (*hub)->parcel_in(false);
  REQUIRE(begun.has_value());
  REQUIRE((*begun)->feed(std::span<const std::uint8_t>(parcel).subspan(0, 700)).has_value());
  clinic.desk->lock();
  CHECK((*begun)->feed(std::span<const std::uint8_t>(parcel).subspan(700, 700)).error().faults.front().code == "ledger.locked");
  CHECK((*hub)->parcel_in(false).error().faults.front().code == "ledger.locked");
  CHECK((*hub)->parcel_out(std::nullopt).error().faults.front().code == "ledger.locked");
}

}  // namespace limbledger::service::test
