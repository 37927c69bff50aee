// What is taken in, what waits and what is refused: gaps, orders that come late, changed bytes, kinds and operations of later editions,
// forks. Logic tests of our own rules; the entries of later editions are those of tests/outside/node/ledger_bytes.mjs.
#include "tests/unit/exchange/clinic.hpp"

namespace limbledger::ledger::exchange_test {

using test::from_hex;
using test::make_stub;
using test::outside_data;
using test::text_member;

namespace {

// All of one chain from `first` on, as runs up to its heads.
std::vector<Run> runs_of(Device& device, const limbledger::model::ReplicaId& replica, std::uint64_t from = 1) {
  Sending sending;
  REQUIRE(add_lacking(device.store(), replica, {}, from, UINT64_MAX >> 1U, SIZE_MAX, sending).has_value());
  return std::move(sending.runs);
}

Taken take_all(Device& to, std::vector<Run> runs) {
  Member own = to.member();
  const auto taken = take(own, std::move(runs));
  REQUIRE_MESSAGE(taken.has_value(), (taken ? "" : code_of(taken.error())));
  to.catch_up();
  return *taken;
}

}  // namespace

TEST_CASE("entries whose predecessors are missing wait, are counted, and are folded when the earlier ones come") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  tablet.write_some(51, 2);
  auto early = runs_of(tablet, tablet.replica());
  const std::uint64_t middle = tablet.own_seq();
  tablet.write_some(51, 3);
  auto late = runs_of(tablet, tablet.replica(), middle + 1);
  const Hash before = hub.have();
  const Taken put_aside = take_all(hub, late);
  CHECK(put_aside.entries == 0);
  CHECK(put_aside.parked == 3);
  CHECK(hub.have() == before);  // parked is not had
  const auto waits = waiting(hub.store());
  REQUIRE(waits->size() == 1);
  CHECK(waits->front().replica == tablet.replica());
  CHECK(waits->front().entries == 3);
  CHECK(waits->front().first == middle + 1);
  CHECK(waits->front().held_to == 0);
  CHECK(take_all(hub, late).parked == 0);  // the same again is not another
  CHECK(waiting(hub.store())->size() == 1);
  const Taken joined = take_all(hub, early);
  CHECK(joined.entries == tablet.own_seq());
  CHECK(waiting(hub.store())->empty());
  CHECK(hub.seq_of(tablet.replica()) == tablet.own_seq());
  CHECK(hub.said() == tablet.said());
  const Taken replay = take_all(hub, late);
  CHECK(replay.entries == 0);
  CHECK(replay.known == 3);
}

TEST_CASE("a chain that comes before its enrolment waits for the order, whoever brings it") {
  Device hub(1);
  Device tablet(2);
  Device other(3);
  tablet.write_some(51, 3);
  hub.enrol({&other});
  REQUIRE(exchange(other, hub).has_value());
  CHECK(take_all(other, runs_of(tablet, tablet.replica())).parked == tablet.own_seq());
  Member own = hub.member();
  REQUIRE(append_orders(own, root_key(), {{OrderKind::enrol, Enrol{tablet.replica(), tablet.device(), roles::write}.to_fields()}}).has_value());
  hub.catch_up();
  const auto done = exchange(other, hub);
  REQUIRE(done.has_value());
  CHECK(done->taken.entries == 1 + 1 + tablet.own_seq());  // a witness, the order, and what waited for it
  CHECK(other.seq_of(tablet.replica()) == tablet.own_seq());
  CHECK(hub.seq_of(tablet.replica()) == tablet.own_seq());
  CHECK(other.have() == hub.have());
}

TEST_CASE("every changed byte of a run is refused, and nothing of it is taken") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  tablet.write_some(51, 1);
  ByteWriter out;
  put_run(out, runs_of(tablet, tablet.replica()).front());
  const Bytes whole = out.take();
  const Hash before = hub.have();
  Member own = hub.member();
  std::size_t refused = 0;
  for (std::size_t at = 0; at < whole.size(); ++at) {
    Bytes changed = whole;
    changed[at] ^= 0x10U;
    ByteReader in(changed);
    auto run = read_run(in);
    if (!run || !in.done()) {
      ++refused;
      continue;
    }
    INFO(at);
    std::vector<Run> runs;
    runs.push_back(std::move(*run));
    const auto taken = take(own, std::move(runs));
    CHECK((!taken || taken->entries == 0));
    refused += taken ? 0U : 1U;
  }
  CHECK(refused == whole.size());
  CHECK(hub.have() == before);
  CHECK(waiting(hub.store())->empty());
}

TEST_CASE("kinds and operations of later editions are kept, passed on and counted") {
  Device hub(1);
  Device tablet(2);
  Device third(3);
  hub.enrol({&tablet, &third});
  tablet.write_some(51, 2);
  Member own = tablet.member();
  REQUIRE(append_plain(own, {{static_cast<Kind>(99), [](const Position&) { return Bytes(300, 0x2a); }}}).has_value());
  tablet.catch_up();
  // Parts of a newer edition in an exam: one that may be acted on, and one that may not.
  NewOperation operation;
  operation.object = object_of(the_clinic(), ObjectType::exam, request_number(51), 0);
  operation.op = "hologram";
  operation.request = request_number(99001);
  operation.body_json = R"({"depth":3})";
  REQUIRE(tablet.log().append({&operation, 1}, limbledger::model::EditionId{"facts.test"}, nullptr).has_value());
  REQUIRE(exchange(tablet, hub).has_value());
  REQUIRE(exchange(third, hub).has_value());
  for (Device* device : {&tablet, &hub, &third}) {
    CHECK(device->seq_of(tablet.replica()) == tablet.own_seq());
    CHECK(device->said() == tablet.said());
    const auto verified = verify_store(device->store(), the_clinic(), &device->log());
    REQUIRE(verified.has_value());
    CHECK(verified->damage.empty());
    CHECK(verified->other_kinds == 1);
    const auto operations = device->log().operations(operation.object);
    std::size_t unread = 0;
    for (const Opened& opened : *operations) {
      unread += opened.readable() ? 0U : 1U;
    }
    CHECK(unread == 1);
    const auto exam = fold_exam(limbledger::model::ExamId{operation.object.bytes}, *operations, {}, the_clinic());
    REQUIRE(exam.has_value());
    CHECK(exam->unread == 1);
  }
}

TEST_CASE("another's word that a body was erased is no order: the body still comes") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  tablet.write_some(51, 2);
  auto runs = runs_of(tablet, tablet.replica());
  make_stub(runs.front().rows.back(), RowState::erased);
  CHECK(take_all(hub, runs).entries == tablet.own_seq());
  const auto held = hub.store().read(tablet.replica(), tablet.own_seq(), tablet.own_seq(), 1);
  CHECK(held->front().state == RowState::withheld);
  take_all(hub, runs_of(tablet, tablet.replica()));
  CHECK(hub.store().read(tablet.replica(), tablet.own_seq(), tablet.own_seq(), 1)->front().state == RowState::whole);
}

TEST_CASE("a device restored from an older copy takes its lost entries back and writes nothing more under its replica") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  tablet.write_some(51, 2);
  REQUIRE(exchange(tablet, hub).has_value());
  Device restored(tablet);  // the copy is as old as this
  tablet.write_some(51, 3);
  REQUIRE(exchange(tablet, hub).has_value());
  const auto done = exchange(restored, hub);
  REQUIRE(done.has_value());
  CHECK(done->taken.own_came_back);
  CHECK(restored.own_seq() == tablet.own_seq());
  CHECK(restored.said() == hub.said());
  CHECK(code_of(restored.write(51).error()) == "replica.forked");
  restored.open();
  CHECK(code_of(restored.write(51).error()) == "replica.forked");
}

TEST_CASE("a device that wrote on after a restore has two branches: both are kept everywhere, and both are folded") {
  Device hub(1);
  Device tablet(2);
  Device third(3);
  hub.enrol({&tablet, &third});
  tablet.write_some(51, 20);
  REQUIRE(exchange(tablet, hub).has_value());
  Device restored(tablet);
  tablet.write_some(51, 9);
  REQUIRE(exchange(tablet, hub).has_value());
  restored.write_some(51, 4);
  restored.write_some(53, 2);
  const auto done = exchange(restored, hub);
  REQUIRE_MESSAGE(done.has_value(), (done ? "" : code_of(done.error())));
  CHECK(done->taken.own_came_back);
  CHECK(restored.have() == hub.have());
  CHECK(restored.said() == hub.said());
  CHECK(code_of(restored.write(51).error()) == "replica.forked");
  REQUIRE(exchange(third, hub).has_value());
  CHECK(third.have() == hub.have());
  CHECK(third.said() == hub.said());
  const auto operations = third.log().operations(object_of(the_clinic(), ObjectType::exam, request_number(51), 0));
  CHECK(operations->size() == 20 + 9 + 4);
  CHECK(third.log().operations(object_of(the_clinic(), ObjectType::exam, request_number(53), 0))->size() == 2);
  const auto verified = verify_store(third.store(), the_clinic(), &third.log());
  CHECK(verified->damage.empty());
  third.open();
  CHECK(third.log().damage().empty());
  CHECK(third.said() == hub.said());
  // The other half of the clone learns of it at its next contact.
  const auto learned = exchange(tablet, hub);
  REQUIRE(learned.has_value());
  CHECK(learned->taken.own_came_back);
  CHECK(tablet.have() == hub.have());
  CHECK(exchange(third, hub)->messages <= 4);
  CHECK(exchange(third, hub)->messages == 1);
}

}  // namespace limbledger::ledger::exchange_test
