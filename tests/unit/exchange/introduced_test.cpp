// Who shows itself to a replica that does not know it, or no longer does: the introduction goes with a second call, and is believed only
// where orders that the other holds let that device in. Logic tests of our own rules (schemas/ledger-format.md, section 12).
#include "tests/unit/exchange/clinic.hpp"

namespace limbledger::ledger::exchange_test {

namespace {

// The device goes on under a new key, in the place of its chain as far as it is known here.
void begin_as_heir(Device& device, const SignKey& before, const SignKey& next, const model::DeviceId& stated) {
  Intro intro;
  intro.storage = Storage::memory;
  intro.box_pub = BoxPair::from_seed(secret_of(77)).pub();
  intro.device = stated;
  const model::ReplicaId replica = replica_of(the_clinic(), before.pub());
  const auto leaves = leaves_of(device.store());
  for (const Place& leaf : *leaves) {
    intro.predecessor = leaf.replica == replica ? leaf : intro.predecessor;
  }
  intro.heir_signature = sign_heir(before, the_clinic(), replica_of(the_clinic(), next.pub()), intro.predecessor);
  intro.program = "limbledger test";
  Member heir{device.store(), device.world(), the_clinic(), next};
  REQUIRE(begin_chain(heir, intro).has_value());
}

}  // namespace

TEST_CASE("a hub that was put back to a copy from before a tablet's first exchange is shown its introduction again") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  Device put_back(hub);
  tablet.write_some(51, 4);
  REQUIRE(exchange(tablet, hub).has_value());
  REQUIRE(put_back.seq_of(tablet.replica()) == 0);
  tablet.write_some(51, 2);
  const auto again = exchange(tablet, put_back);
  REQUIRE_MESSAGE(again.has_value(), (again ? "" : code_of(again.error())));
  CHECK(put_back.seq_of(tablet.replica()) == tablet.own_seq());
  CHECK(tablet.held_at(put_back) == tablet.own_seq());
  CHECK(put_back.said() == tablet.said());
  // From then on it is known: one call, without it.
  REQUIRE(exchange(tablet, put_back).has_value());
  CHECK(exchange(tablet, put_back)->sent_size == 1 + hello_size);
}

TEST_CASE("a tablet that has shown itself to another tablet first is let in by the hub all the same") {
  Device hub(1);
  Device a(2);
  Device b(3);
  hub.enrol({&a, &b});
  REQUIRE(exchange(b, hub).has_value());
  a.write_some(51, 3);
  // By stick it has learnt of the other.
  Sending stick;
  const auto chains = chains_to_give(b.store());
  REQUIRE(chains.has_value());
  for (const model::ReplicaId& chain : *chains) {
    REQUIRE(add_lacking(b.store(), chain, {}, 1, UINT64_MAX >> 1U, SIZE_MAX, stick).has_value());
  }
  Member own = a.member();
  REQUIRE(take(own, std::move(stick.runs)).has_value());
  a.catch_up();
  REQUIRE(exchange(a, b).has_value());
  REQUIRE(a.held_at(b) == a.own_seq());
  const auto met = exchange(a, hub);
  REQUIRE_MESSAGE(met.has_value(), (met ? "" : code_of(met.error())));
  CHECK(a.held_at(hub) == a.own_seq());
  CHECK(a.have() == hub.have());
}

TEST_CASE("an heir brings the introductions of its line to a hub that has met none of it") {
  Device hub(1);
  Device tablet(2);
  hub.enrol({&tablet});
  tablet.write_some(51, 3);
  const SignKey second(secret_of(81));
  const SignKey third(secret_of(82));
  begin_as_heir(tablet, tablet.key(), second, tablet.device());
  begin_as_heir(tablet, second, third, tablet.device());
  const auto met = exchange_as({tablet.store(), tablet.world(), the_clinic(), third}, hub);
  REQUIRE_MESSAGE(met.has_value(), (met ? "" : code_of(met.error())));
  CHECK(met->waiting_there == 0);
  CHECK(met->is_same);
  CHECK(hub.seq_of(tablet.replica()) == tablet.own_seq());
  CHECK(hub.seq_of(replica_of(the_clinic(), third.pub())) == 1);
  CHECK(waiting(hub.store())->empty());
}

TEST_CASE("who was never enrolled, or was revoked, is refused however much it shows of itself") {
  Device hub(1);
  Device tablet(2);
  Device stranger(3);
  hub.enrol({&tablet});
  const SignKey next(secret_of(81));
  begin_as_heir(stranger, stranger.key(), next, stranger.device());
  CHECK(code_of(exchange(stranger, hub).error()) == "replica.unknown");
  CHECK(code_of(exchange_as({stranger.store(), stranger.world(), the_clinic(), next}, hub).error()) == "replica.unknown");
  // In the place of an enrolled chain, but not by its key.
  const SignKey thief(secret_of(83));
  Device copy(tablet);
  Intro intro;
  intro.storage = Storage::memory;
  intro.device = tablet.device();
  intro.predecessor = {tablet.replica(), 1, leaves_of(tablet.store())->front().hash};
  intro.heir_signature = sign_heir(next, the_clinic(), replica_of(the_clinic(), thief.pub()), intro.predecessor);
  Member forged{copy.store(), copy.world(), the_clinic(), thief};
  REQUIRE(begin_chain(forged, intro).has_value());
  CHECK(code_of(exchange_as(forged, hub).error()) == "replica.unknown");

  // Revoked before the hub has met it: neither itself nor an heir that states another device is let in.
  Member own = hub.member();
  REQUIRE(append_orders(own, root_key(), {{OrderKind::revoke, Revoke{tablet.device(), {}}.to_fields()}}).has_value());
  hub.catch_up();
  model::DeviceId other;
  other.bytes.fill(99);
  begin_as_heir(tablet, tablet.key(), next, tablet.device());
  CHECK(code_of(exchange(tablet, hub).error()) == "replica.revoked");
  CHECK(code_of(exchange_as({tablet.store(), tablet.world(), the_clinic(), next}, hub).error()) == "replica.revoked");
  store::MemoryStore made_up;
  Intro stated;
  stated.storage = Storage::memory;
  stated.device = other;
  Member self{made_up, tablet.world(), the_clinic(), tablet.key()};
  REQUIRE(begin_chain(self, stated).has_value());
  Meta meta;
  meta[std::string(hub_key_name)] = Bytes(hub.key().pub().begin(), hub.key().pub().end());
  REQUIRE(made_up.append({}, {}, meta).has_value());
  CHECK(code_of(exchange_as(self, hub).error()) == "replica.revoked");
  CHECK(hub.seq_of(tablet.replica()) == 0);
  CHECK(hub.seq_of(stranger.replica()) == 0);
  CHECK(waiting(hub.store())->empty());
}

}  // namespace limbledger::ledger::exchange_test
