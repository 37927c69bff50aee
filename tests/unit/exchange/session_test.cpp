// Two replicas of a clinic, message by message: what comes across, what a cut leaves, what is refused. Logic tests of our own rules
// (schemas/ledger-format.md, section 12).
#include "tests/unit/exchange/clinic.hpp"

namespace limbledger::ledger::exchange_test {

TEST_CASE("after one exchange both hold the same, fold to the same, and each knows what the hub holds of it") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  hub.write_some(50, 3);
  tablet.write_some(51, 4);
  tablet.write_some(50, 2);
  const auto done = exchange(tablet, hub);
  REQUIRE_MESSAGE(done.has_value(), (done ? "" : code_of(done.error())));
  CHECK(tablet.have() == hub.have());
  CHECK(tablet.said() == hub.said());
  CHECK(done->given == tablet.own_seq() - 1);  // the introduction went with the hello
  CHECK(done->taken.entries == hub.own_seq());
  CHECK(tablet.held_at(hub) == tablet.own_seq());
  tablet.write_some(51, 1);
  CHECK(tablet.held_at(hub) == tablet.own_seq() - 1);
}

TEST_CASE("with nothing new an exchange is one call and at most 256 bytes both ways") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  tablet.write_some(51, 4);
  REQUIRE(exchange(tablet, hub).has_value());
  const std::uint64_t before = hub.own_seq();
  const auto again = exchange(tablet, hub);
  REQUIRE(again.has_value());
  CHECK(again->is_same);
  CHECK(again->messages == 1);
  CHECK(again->sent_size == 1 + hello_size);
  CHECK(again->got_size == 1 + same_size);
  CHECK(again->sent_size + again->got_size <= 256);
  CHECK(hub.own_seq() == before);  // nothing is written about nothing
}

TEST_CASE("the hub writes one witness an exchange that brought something, and the receipt says so") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  tablet.write_some(51, 4);
  const std::uint64_t before = hub.own_seq();
  REQUIRE(exchange(tablet, hub, SIZE_MAX, 1).has_value());  // as many messages as there are runs
  CHECK(hub.own_seq() == before + 1);
  const auto rows = hub.store().read(hub.replica(), before + 1, before + 1, 1);
  REQUIRE(rows->size() == 1);
  CHECK(Header::from_bytes(rows->front().header)->kind == Kind::witness);
  const auto witness = WitnessBody::from_bytes(rows->front().body);
  REQUIRE(witness.has_value());
  REQUIRE(witness->heads.size() == 1);
  CHECK(witness->heads.front().replica == tablet.replica());
  CHECK(witness->heads.front().seq == tablet.own_seq());
  Member own = tablet.member();
  CHECK(held_elsewhere(own)->front().level == ReceiptLevel::witnessed);
  CHECK(tablet.own_seq() == tablet.seq_of(tablet.replica()));
  CHECK(tablet.have() == hub.have());
}

TEST_CASE("an exchange that breaks off anywhere goes on where it was, and no receipt runs ahead of what is held") {
  for (std::size_t cut = 0; cut < 8; ++cut) {
    Device hub(1);
    Device tablet(2);
    Device other(3);
    hub.enrol({&tablet, &other});
    other.write_some(52, 3);
    REQUIRE(exchange(other, hub).has_value());
    tablet.write_some(51, 5);
    INFO(cut);
    (void)exchange(tablet, hub, cut, 1);
    CHECK(tablet.held_at(hub) <= hub.seq_of(tablet.replica()));
    const auto done = exchange(tablet, hub, SIZE_MAX, 1);
    REQUIRE(done.has_value());
    CHECK(tablet.have() == hub.have());
    CHECK(tablet.said() == hub.said());
    CHECK(tablet.held_at(hub) == tablet.own_seq());
    CHECK(exchange(tablet, hub)->messages == 1);
  }
}

TEST_CASE("long chains go in parts that end at kept heads") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  tablet.write_some(51, 2300);
  const auto done = exchange(tablet, hub, SIZE_MAX, 1000);
  REQUIRE(done.has_value());
  CHECK(done->messages >= 5);  // hello, ask, three takes
  CHECK(hub.seq_of(tablet.replica()) == tablet.own_seq());
  CHECK(tablet.held_at(hub) == tablet.own_seq());
  CHECK(tablet.said() == hub.said());
}

TEST_CASE("what a third wrote comes by way of the hub, and a tablet learns of its receipt though another brought its entries") {
  Device hub(1);
  Device a(2);
  Device b(3);
  hub.enrol({&a, &b});
  REQUIRE(exchange(a, hub).has_value());
  REQUIRE(exchange(b, hub).has_value());
  REQUIRE(exchange(a, hub).has_value());
  a.write_some(51, 3);
  // Tablet to tablet, without the hub.
  const auto between = exchange(a, b);
  REQUIRE_MESSAGE(between.has_value(), (between ? "" : code_of(between.error())));
  CHECK(a.said() == b.said());
  REQUIRE(exchange(b, hub).has_value());
  CHECK(hub.seq_of(a.replica()) == a.own_seq());
  CHECK(a.held_at(hub) < a.own_seq());
  REQUIRE(exchange(a, hub).has_value());
  CHECK(a.held_at(hub) == a.own_seq());
  CHECK(a.have() == hub.have());
}

TEST_CASE("who is not enrolled is not answered, and neither is a stranger's connection or another clinic") {
  Device hub(1);
  Device tablet(2);
  Device stranger(3);
  hub.enrol({&tablet});
  stranger.write_some(51, 1);
  CHECK(code_of(exchange(stranger, hub).error()) == "replica.unknown");
  CHECK(hub.seq_of(stranger.replica()) == 0);
  Member hub_member = hub.member();
  CHECK(waiting(hub.store())->empty());

  Caller caller(tablet.member(), exporter_of(8));
  Answerer elsewhere(hub_member, exporter_of(9));
  const auto hello = caller.next();
  CHECK(code_of(elsewhere.answer(**hello).error()) == "exchange.foreign");
  // Each byte of the signed part matters.
  Answerer answerer(hub_member, exporter_of(8));
  for (std::size_t at = 0; at < 1 + hello_size; ++at) {
    Bytes changed = **hello;
    changed[at] ^= 1U;
    INFO(at);
    CHECK_FALSE(answerer.answer(changed).has_value());
  }
  CHECK(code_of(answerer.answer(Ask{}.to_bytes()).error()) == "exchange.message");
  CHECK(answerer.answer(**hello).has_value());
}

TEST_CASE("an answer that another signed, or that was changed, ends the exchange") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  REQUIRE(exchange(tablet, hub).has_value());
  Answerer answerer(hub.member(), exporter_of(8));
  for (std::size_t at = 0; at < 1 + same_size; ++at) {
    Caller caller(tablet.member(), exporter_of(8));
    auto answer = answerer.answer(**caller.next());
    REQUIRE(answer.has_value());
    (*answer)[at] ^= 1U;
    CHECK_FALSE(caller.receive(*answer).has_value());
    const auto next = caller.next();
    CHECK((next.has_value() && !next->has_value()));
  }
}

TEST_CASE("demonstration, practice and clinic do not exchange") {
  Device hub(1);
  Device practice(2, Purpose::practice);
  Device demonstration(3, Purpose::demonstration);
  hub.enrol({&practice, &demonstration});
  CHECK(code_of(exchange(practice, hub).error()) == "exchange.purpose");
  CHECK(code_of(exchange(demonstration, hub).error()) == "exchange.purpose");
  CHECK(hub.seq_of(demonstration.replica()) == 0);
}

TEST_CASE("a revoked device is not answered") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  REQUIRE(exchange(tablet, hub).has_value());
  Member own = hub.member();
  REQUIRE(append_orders(own, root_key(), {{OrderKind::revoke, Revoke{tablet.device(), {}}.to_fields()}}).has_value());
  hub.catch_up();
  CHECK(code_of(exchange(tablet, hub).error()) == "replica.revoked");
}

TEST_CASE("a tablet that meets the hub for the first time has all in one exchange, though it takes many messages and the orders are not asked for first") {
  Device hub(1);
  std::vector<std::unique_ptr<Device>> others;
  std::vector<Device*> enrolled;
  for (std::uint8_t number = 2; number < 6; ++number) {
    others.push_back(std::make_unique<Device>(number));
    enrolled.push_back(others.back().get());
  }
  Device newcomer(6);
  enrolled.push_back(&newcomer);
  hub.enrol(enrolled);
  // Each longer than one run, and one at least comes before the hub's where chains are asked for by their names.
  for (const auto& other : others) {
    other->write_some(50U + static_cast<unsigned>(others.size()), 1100);
    REQUIRE(exchange(*other, hub).has_value());
  }
  REQUIRE(std::any_of(others.begin(), others.end(), [&](const auto& other) { return other->replica() < hub.replica(); }));
  const auto met = exchange(newcomer, hub, SIZE_MAX, 1);
  REQUIRE(met.has_value());
  CHECK(met->messages > 8);
  CHECK(met->taken.parked == 0);
  CHECK(met->is_same);
  CHECK(newcomer.have() == hub.have());
}

namespace {

// A store that says whether anything of it, or of one chain, still waits for the disk.
class Waited final : public LogStore {
 public:
  explicit Waited(LogStore& kept) : kept_(kept) {}
  Result<void> append(std::span<const Row> rows, std::span<const Head> heads, const Meta& meta) override {
    is_behind = is_put_off_;
    for (const Row& row : rows) {
      behind_.insert(row.replica);
    }
    if (!is_behind) {
      behind_.clear();
    }
    return kept_.append(rows, heads, meta);
  }
  void put_off_flush(bool is_put_off) override { is_put_off_ = is_put_off; }
  [[nodiscard]] bool is_chain_behind(const model::ReplicaId& replica) const { return behind_.contains(replica); }
  Result<void> flush_chain(const model::ReplicaId& replica) override { return is_chain_behind(replica) ? flush() : Result<void>(); }
  Result<void> flush() override {
    is_put_off_ = is_behind = false;
    behind_.clear();
    return fails ? Result<void>(wire::Fault("ledger.read_only", "")) : Result<void>();
  }
  Result<std::vector<Row>> read(const model::ReplicaId& replica, std::uint64_t from, std::uint64_t to, std::size_t limit) override {
    return kept_.read(replica, from, to, limit);
  }
  Result<std::vector<Row>> read_kid(const model::KeyId& kid) override { return kept_.read_kid(kid); }
  Result<Heads> heads() override { return kept_.heads(); }
  Result<void> drop_bodies(std::span<const model::EntryId> entries, RowState state) override { return kept_.drop_bodies(entries, state); }
  Result<std::vector<Row>> park(std::span<const Row> rows) override { return kept_.park(rows); }
  [[nodiscard]] Durability durability() const override { return Durability::disk; }

  bool is_behind = false;
  bool fails = false;

 private:
  LogStore& kept_;
  std::set<model::ReplicaId> behind_;
  bool is_put_off_ = false;
};

// A tablet and a hub that have three messages for each other, every run one of its own.
struct ThreePartsEachWay {
  Device hub{1};
  Device tablet{2};
  Device other{3};
  Waited hub_disk{hub.store()};
  Waited tablet_disk{tablet.store()};
  Caller caller{{tablet_disk, tablet.world(), the_clinic(), tablet.key()}, exporter_of(7), 1000};
  Answerer answerer{{hub_disk, hub.world(), the_clinic(), hub.key()}, exporter_of(7), 1000};

  ThreePartsEachWay() {
    hub.enrol({&tablet, &other});
    other.write_some(52, 2300);
    REQUIRE(exchange(other, hub).has_value());
    tablet.write_some(51, 2300);
  }
  // After the exchange.
  void check_the_same() {
    CHECK_FALSE(hub_disk.is_behind);
    CHECK_FALSE(tablet_disk.is_behind);
    hub.catch_up();
    tablet.catch_up();
    CHECK(tablet.have() == hub.have());
    CHECK(tablet.held_at(hub) == tablet.own_seq());
  }
};

}  // namespace

TEST_CASE("what came waits for the disk once, and before anything is given, receipted or said to be held") {
  ThreePartsEachWay both;
  Caller& caller = both.caller;
  const Waited& hub_disk = both.hub_disk;
  const Waited& tablet_disk = both.tablet_disk;
  int left_waiting = 0;
  int receipts = 0;
  for (auto message = caller.next(); message && *message; message = caller.next()) {
    const auto asked = message_kind(**message);
    CHECK((asked == MessageKind::ask || !tablet_disk.is_behind));
    const auto answer = both.answerer.answer(**message);
    REQUIRE(answer.has_value());
    const bool promises = message_kind(*answer) != MessageKind::receipt || answer->size() > 17;
    CHECK((!promises || !hub_disk.is_behind));
    receipts += asked == MessageKind::take && promises ? 1 : 0;
    REQUIRE(caller.receive(*answer).has_value());
    left_waiting += (hub_disk.is_behind ? 1 : 0) + (tablet_disk.is_behind ? 1 : 0);
  }
  CHECK(receipts == 1);
  CHECK(left_waiting >= 4);  // of three parts each way all but the last
  both.check_the_same();
}

TEST_CASE("both sides work at once: of the own chain what is on the disk goes before what came is taken, and both hold the same at the end") {
  ThreePartsEachWay both;
  Caller& caller = both.caller;
  const Waited& hub_disk = both.hub_disk;
  const Waited& tablet_disk = both.tablet_disk;
  std::optional<std::uint64_t> taken_then;  // entries, when an answer was put aside
  int given_before_taken = 0;
  int given_beside_what_waits = 0;
  for (auto message = caller.next(); message && *message; message = caller.next()) {
    const auto asked = message_kind(**message);
    if (asked == MessageKind::take) {
      const auto given = Runs::from_bytes(**message, MessageKind::take);
      REQUIRE(given.has_value());
      const bool is_ahead = taken_then == caller.exchanged().taken.entries;
      for (const Run& run : given->runs) {
        CHECK_FALSE(tablet_disk.is_chain_behind(run.replica));
        CHECK((!is_ahead || run.replica == both.tablet.replica()));
      }
      CHECK((!is_ahead || !given->mark));
      given_before_taken += is_ahead ? 1 : 0;
      given_beside_what_waits += tablet_disk.is_behind ? 1 : 0;
    }
    REQUIRE(caller.take_in().has_value());
    const auto answer = both.answerer.answer(**message);
    REQUIRE(answer.has_value());
    if (asked == MessageKind::ask) {
      const auto brought = Runs::from_bytes(*answer, MessageKind::runs);
      for (const Run& run : brought->runs) {
        CHECK_FALSE(hub_disk.is_chain_behind(run.replica));
      }
    }
    const bool promises = message_kind(*answer) == MessageKind::same || (message_kind(*answer) == MessageKind::receipt && answer->size() > 17);
    CHECK((!promises || !hub_disk.is_behind));
    REQUIRE(caller.put_aside(*answer).has_value());
    taken_then = asked == MessageKind::ask ? std::optional(caller.exchanged().taken.entries) : std::nullopt;
  }
  CHECK(given_before_taken == 3);        // its three parts
  CHECK(given_beside_what_waits >= 1);   // nobody waited for the disk in the middle
  CHECK(caller.exchanged().is_same);
  both.check_the_same();
}

TEST_CASE("a hub that takes nothing, as with a full disk, still gives all of it: what was given ahead is refused, and asking goes on") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  REQUIRE(exchange(tablet, hub).has_value());
  hub.write_some(52, 2300);
  tablet.write_some(51, 3);
  Caller caller(tablet.member(), exporter_of(7), 1000);
  Answerer answerer(hub.member(), exporter_of(7), 1000);
  int refused = 0;
  bool is_over = false;
  while (!is_over) {
    const auto message = caller.next();
    REQUIRE(message.has_value());
    REQUIRE(message->has_value());
    if (message_kind(**message) == MessageKind::take) {
      ++refused;
      is_over = !caller.shows_more("ledger.read_only");
      REQUIRE(caller.take_in().has_value());
      continue;
    }
    REQUIRE(caller.take_in().has_value());
    REQUIRE(caller.put_aside(*answerer.answer(**message)).has_value());
  }
  CHECK(refused == 2);  // ahead, and the last
  CHECK(caller.exchanged().taken.entries >= 2300);
  tablet.catch_up();
  const auto theirs = leaves_of(hub.store());
  for (const Place& leaf : *theirs) {
    CHECK(*holds(tablet.store(), have_row(leaf)) == true);
  }
}

TEST_CASE("entries that do not hold are refused when they are taken, and nothing is asked or given after that") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  REQUIRE(exchange(tablet, hub).has_value());
  hub.write_some(52, 3);
  Caller caller(tablet.member(), exporter_of(7));
  Answerer answerer(hub.member(), exporter_of(7));
  REQUIRE(caller.put_aside(*answerer.answer(**caller.next())).has_value());
  const auto ask = caller.next();
  REQUIRE(message_kind(**ask) == MessageKind::ask);
  Bytes answer = *answerer.answer(**ask);
  answer[answer.size() / 2] ^= 1U;
  const auto before = tablet.have();
  REQUIRE(caller.put_aside(answer).has_value());
  SUBCASE("while the next call is under way") {
    CHECK(code_of(caller.take_in().error()).starts_with("entry."));
  }
  SUBCASE("by the next call") {
    CHECK(code_of(caller.next().error()).starts_with("entry."));
  }
  const auto after = caller.next();
  REQUIRE(after.has_value());
  CHECK_FALSE(after->has_value());
  tablet.catch_up();
  CHECK(tablet.have() == before);
}

TEST_CASE("a disk that refuses the flush gives no receipt, and neither does it say what it holds") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  REQUIRE(exchange(tablet, hub).has_value());
  tablet.write_some(51, 3);
  Waited hub_disk(hub.store());
  Caller caller(tablet.member(), exporter_of(7));
  Answerer answerer({hub_disk, hub.world(), the_clinic(), hub.key()}, exporter_of(7));
  const auto hello = caller.next();
  REQUIRE(caller.receive(*answerer.answer(**hello)).has_value());
  const auto given = caller.next();
  REQUIRE(message_kind(**given) == MessageKind::take);
  hub_disk.fails = true;
  CHECK(code_of(answerer.answer(**given).error()) == "ledger.read_only");
  CHECK(code_of(answerer.answer(**hello).error()) == "ledger.read_only");
  CHECK(tablet.held_at(hub) < tablet.own_seq());
}

}  // namespace limbledger::ledger::exchange_test
