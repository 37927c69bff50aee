// Two doors over real TLS, and a parcel of a real file. What an exchange took is on the disk before anybody is told that it is over, also
// where it broke off: each of these is red where the door's finish is left out of by_network, hub_talk or parcel_file. Source: ledger, items
// 3 and 25.
#include "core/ledger/exchange/session.hpp"
#include "core/ledger/log/log.hpp"
#include "rpc/program/exchange/by_network.hpp"
#include "rpc/program/exchange/hub_talk.hpp"
#include "rpc/program/exchange/parcel_file.hpp"
#include "tests/unit/exchange/joined.hpp"
#include "tests/unit/rpc/scratch.hpp"

#include <sys/eventfd.h>
#include <unistd.h>

#include <chrono>
#include <thread>

namespace limbledger::rpc::exchange_test {

namespace {

using service::test::Joined;

bool at_once(const std::function<void()>& deed) {
  deed();
  return true;
}

// A door that answers on a thread of its own.
struct Serving {
  explicit Serving(service::ExchangeDoor& door) : talks{at_once, door, [] { return nullptr; }, {}} {
    std::string why;
    door.with_seed([&](TlsSeed seed) { listener = TlsListener::open("127.0.0.1", 0, seed, {}, why); });
    REQUIRE_MESSAGE(listener != nullptr, why);
    thread = std::thread([this] { listener->run([this](const TlsShared& shared) { return hub_talk(talks, shared); }, stop); });
  }
  ~Serving() {
    const std::uint64_t one = 1;
    CHECK(::write(stop, &one, sizeof one) == sizeof one);
    thread.join();
    listener.reset();
    ::close(stop);
  }
  Serving(const Serving&) = delete;
  Serving& operator=(const Serving&) = delete;

  int stop = ::eventfd(0, EFD_CLOEXEC);
  HubTalks talks;
  std::unique_ptr<TlsListener> listener;
  std::thread thread;
};

struct House {
  House() {
    auto opened = service::ExchangeDoor::open(*clinic.desk);
    REQUIRE(opened.has_value());
    hub = std::move(*opened);
    service::test::join_to(*hub, clinic.made.recovery_code, tablet);
    service::test::register_somebody(*clinic.desk, 41, "Invented Hubward");
  }
  service::test::DeskFixture clinic;
  std::unique_ptr<service::ExchangeDoor> hub;
  Joined tablet;
};

NetworkOutcome exchange(service::ExchangeDoor& calls, service::ExchangeDoor& answers) {
  const Serving serving(answers);
  ByNetwork how;
  how.turn = at_once;
  NetworkOutcome outcome = exchange_by_network(how, calls, {"127.0.0.1", serving.listener->port()}, answers.key());
  CHECK_MESSAGE(!outcome.refused, (outcome.refused ? outcome.refused->faults.front().code : ""));
  return outcome;
}

void join_and_exchange(House& house, Joined& other) {
  service::test::join_to(*house.hub, house.clinic.made.recovery_code, other);
  service::test::register_somebody(*other.desk, 51, "Invented Elsewhere");
  REQUIRE(exchange(*other.door, *house.hub).is_over);
}

// Something of that size, which no edition reads.
void write_large(service::Desk& desk, unsigned number, std::size_t size) {
  ledger::NewOperation operation;
  REQUIRE(model::RequestId::from_text(service::test::request_id(number), operation.request).empty());
  operation.object = desk.log().object_for(ledger::ObjectType::exam, operation.request, 0);
  operation.op = "exam";
  operation.by = desk.examiner();
  operation.body_json = R"({"complaint":"free","setting":"outreach","recorded_by_a_later_program":")" + std::string(size, 'x') + "\"}";
  REQUIRE(desk.log().append({&operation, 1}, desk.edition().id(), desk.examiner_key()).has_value());
}

}  // namespace

TEST_CASE("a tablet whose exchange is given up has on its disk what it took, and where the disk refuses says so instead") {
  House house;
  const Serving serving(*house.hub);
  bool fails = false;
  SUBCASE("the disk takes it") {}
  SUBCASE("the disk refuses it") { fails = true; }
  std::atomic<bool> given_up = false;
  ByNetwork how;
  how.turn = at_once;
  how.given_up = &given_up;
  how.told = [&](const service::ExchangeState& state) {
    given_up = given_up || (state.taken != 0 && house.tablet.store.is_behind);
    house.tablet.store.fails = fails && given_up;
  };
  const NetworkOutcome outcome = exchange_by_network(how, *house.tablet.door, {"127.0.0.1", serving.listener->port()}, house.hub->key());
  CHECK(given_up);
  CHECK_FALSE(outcome.is_over);
  CHECK(outcome.refused.has_value() == fails);
  CHECK((!outcome.refused || outcome.refused->faults.front().code == "ledger.read_only"));
  CHECK_FALSE(outcome.refused_there);
  CHECK(house.tablet.store.is_behind == fails);
  CHECK(house.tablet.desk->locked() == fails);
}

TEST_CASE("who answers has on its disk what came of a caller that goes away before it was promised anything") {
  House house;
  // The hub's half as a caller that the tablet knows.
  REQUIRE(exchange(*house.tablet.door, *house.hub).is_over);
  REQUIRE_FALSE(house.tablet.store.is_behind);
  // Two chains to be given, and a run a message: the first is not the last.
  Joined other(11);
  join_and_exchange(house, other);
  const Serving serving(*house.tablet.door);
  std::string why;
  bool is_other_key = false;
  auto connection = TlsCaller::connect("127.0.0.1", serving.listener->port(), house.tablet.door->key(), {}, why, is_other_key);
  REQUIRE_MESSAGE(connection != nullptr, why);
  ledger::Caller caller({house.clinic.desk->store(), house.clinic.desk->world(), house.clinic.desk->clinic(), house.clinic.desk->log().identity().device_key}, connection->shared(), 1);
  for (bool has_given = false; !has_given;) {
    const auto message = caller.next();
    REQUIRE(message.has_value());
    REQUIRE(message->has_value());
    has_given = ledger::message_kind(**message) == ledger::MessageKind::take;
    REQUIRE((!has_given || !ledger::Runs::from_bytes(**message, ledger::MessageKind::take)->mark));
    const auto reply = connection->post(exchange_target, **message, why);
    REQUIRE_MESSAGE(reply.has_value(), why);
    REQUIRE(reply->status == 200);
    REQUIRE(caller.receive(reply->body).has_value());
  }
  CHECK(house.tablet.store.is_behind);
  connection.reset();
  const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(30);
  while (house.tablet.store.is_behind && std::chrono::steady_clock::now() < end) {
    std::this_thread::sleep_for(std::chrono::milliseconds(2));
  }
  CHECK_FALSE(house.tablet.store.is_behind);
}

TEST_CASE("a tablet that a hub does not know yet, and that has shown itself to another first, shows itself on the same connection and is let in") {
  House house;
  Joined other(11);
  join_and_exchange(house, other);
  // By stick it learns of the other, and the hub learns nothing of it.
  const Scratch stick;
  ByFile by_file;
  by_file.turn = at_once;
  REQUIRE(write_parcel_to(by_file, *house.hub, stick.path("hub.parcel"), std::nullopt).has_value());
  REQUIRE(take_parcel_from(by_file, *house.tablet.door, stick.path("hub.parcel"), false).has_value());
  REQUIRE(exchange(*house.tablet.door, *other.door).is_over);
  const std::string here = service::test::register_somebody(*house.tablet.desk, 61, "Invented Tabletward");
  const NetworkOutcome met = exchange(*house.tablet.door, *house.hub);
  CHECK(met.is_over);
  CHECK(met.state.is_same);
  CHECK(service::test::call(*house.clinic.desk, "person.read", R"({"person":")" + here + R"("})").has_value());
}

TEST_CASE("what was taken from a parcel whose reading breaks off is on the disk when that is told") {
  House house;
  Joined other(11);
  service::test::join_to(*house.hub, house.clinic.made.recovery_code, other);
  for (unsigned number = 70; number < 77; ++number) {
    write_large(*other.desk, number, 50'000);  // together more than is taken at once
  }
  REQUIRE(exchange(*other.door, *house.hub).is_over);
  const Scratch stick;
  const std::string path = stick.path("friday.parcel");
  ByFile how;
  how.turn = at_once;
  REQUIRE(write_parcel_to(how, *house.hub, path, std::nullopt).has_value());
  bool fails = false;
  SUBCASE("the disk takes it") {}
  SUBCASE("the disk refuses it") { fails = true; }
  std::atomic<bool> given_up = false;
  how.given_up = &given_up;
  how.told = [&](const service::ParcelIn& parcel) {
    given_up = given_up || (parcel.taken().taken != 0 && house.tablet.store.is_behind);
    house.tablet.store.fails = fails && given_up;
  };
  const auto taken = take_parcel_from(how, *house.tablet.door, path, false);
  CHECK(given_up);
  REQUIRE_FALSE(taken.has_value());
  CHECK(taken.error().faults.front().code == (fails ? "ledger.read_only" : "exchange.ended"));
  CHECK(house.tablet.store.is_behind == fails);
}

}  // namespace limbledger::rpc::exchange_test
