#include "tests/unit/ledger/kept_store.hpp"

using namespace limbledger::ledger;
using namespace limbledger::ledger::test;
namespace model = limbledger::model;
using limbledger::service::test::DeskFixture;
using limbledger::service::test::request_id;

namespace {

// Seven entries: who the device is, who examines, the clinic's key, how the examiner is called, a person's key, the person, a change.
DeskFixture& small_ledger(DeskFixture& fixture) {
  const std::string reply =
      fixture.ok("person.register", R"({"names":[{"text":"Awa Invented"}],"sex":"unknown","request":")" + request_id(1) + "\"}");
  fixture.ok("person.amend", R"({"person":")" + limbledger::service::test::at(reply, "/person/person") +
                                 R"(","changes":{"home":"Upper Ford"},"replaces":[],"seen":)" + limbledger::service::test::at(reply, "/revision") +
                                 R"(,"request":")" + request_id(2) + "\"}");
  return fixture;
}

struct Verified {
  Verification out;
  // Something is said about this place of this chain.
  [[nodiscard]] bool names(const model::ReplicaId& replica, std::uint64_t seq) const {
    return std::any_of(out.damage.begin(), out.damage.end(),
                       [&](const Verification::Damage& one) { return one.replica == replica && one.seq == seq; });
  }
};

Verified verified(LogStore& store, const model::ClinicId& clinic, const Log* log = nullptr) {
  auto result = verify_store(store, clinic, log);
  REQUIRE(result.has_value());
  return {std::move(*result)};
}

}  // namespace

TEST_CASE("a whole ledger verifies, locked and unlocked, and the head it reaches is named") {
  DeskFixture fixture;
  small_ledger(fixture);
  const Verification locked = verified(fixture.store, fixture.made.clinic).out;
  CHECK(locked.entries == 7);
  CHECK(locked.opened == 0);
  CHECK(locked.damage.empty());
  REQUIRE(locked.vouched_to.size() == 1);
  CHECK(locked.vouched_to.front().seq == 7);
  const Verification unlocked = verified(fixture.store, fixture.made.clinic, &fixture.desk->log()).out;
  CHECK(unlocked.opened == 3);
  CHECK(unlocked.damage.empty());
}

TEST_CASE("HC-090: every byte of every entry, changed one at a time, is detected and located") {
  DeskFixture fixture;
  small_ledger(fixture);
  KeptStore store(fixture.store);
  std::size_t changed_count = 0;
  for (std::size_t i = 0; i < store.rows.size(); ++i) {
    const model::ReplicaId replica = store.rows[i].replica;
    const std::uint64_t seq = i + 1;
    REQUIRE(store.rows[i].seq == seq);
    const auto must_be_named = [&](std::uint8_t& byte, std::size_t at) {
      for (const std::uint8_t flip : {std::uint8_t{0x01}, std::uint8_t{0x80}, std::uint8_t{0xff}}) {
        byte = static_cast<std::uint8_t>(byte ^ flip);
        const Verified found = verified(store, fixture.made.clinic);
        INFO(seq);
        INFO(at);
        CHECK(found.names(replica, seq));
        byte = static_cast<std::uint8_t>(byte ^ flip);
        ++changed_count;
      }
    };
    Row& row = store.rows[i];
    for (std::size_t at = 0; at < row.header.size(); ++at) {
      must_be_named(row.header[at], at);
    }
    for (std::size_t at = 0; at < row.body.size(); ++at) {
      must_be_named(row.body[at], at);
    }
    for (std::size_t at = 0; at < row.hash.size(); ++at) {
      must_be_named(row.hash[at], at);
    }
  }
  std::size_t bytes = 0;
  for (const Row& row : store.rows) {
    bytes += row.header.size() + row.body.size() + row.hash.size();
  }
  CHECK(changed_count == 3 * bytes);
  CHECK(verified(store, fixture.made.clinic).out.damage.empty());
}

TEST_CASE("a changed header or body is one finding with the name of its entry, and the rest still holds") {
  DeskFixture fixture;
  small_ledger(fixture);
  KeptStore store(fixture.store);
  store.rows[2].body[40] ^= 1;
  const Verification found = verified(store, fixture.made.clinic, &fixture.desk->log()).out;
  REQUIRE(found.damage.size() == 1);
  CHECK(found.damage.front().seq == 3);
  CHECK(found.damage.front().code == "entry.hash");
  CHECK(found.damage.front().entry == entry_id(store.rows[2].hash));
  CHECK(found.entries == 7);
  CHECK(found.opened == 3);
}

TEST_CASE("a row moved to another place, chain or state is detected where it is missing") {
  DeskFixture fixture;
  small_ledger(fixture);
  const KeptStore good(fixture.store);
  for (std::size_t i = 0; i < good.rows.size(); ++i) {
    INFO(i);
    const model::ReplicaId replica = good.rows[i].replica;
    const std::uint64_t seq = i + 1;
    for (std::size_t at = 0; at < 16; ++at) {
      KeptStore store(good);
      store.rows[i].replica.bytes[at] ^= 1;
      const Verified found = verified(store, fixture.made.clinic);
      CHECK((found.names(replica, seq) || found.names(replica, seq + 1)));
    }
    for (int bit = 0; bit < 62; ++bit) {
      KeptStore store(good);
      store.rows[i].seq ^= std::uint64_t{1} << bit;
      const Verified found = verified(store, fixture.made.clinic);
      CHECK((found.names(replica, seq) || found.names(replica, seq + 1)));
    }
    for (const RowState state : {RowState::erased, RowState::pruned, RowState::withheld}) {
      KeptStore store(good);
      store.rows[i].state = state;
      CHECK(verified(store, fixture.made.clinic).names(replica, seq));
    }
    KeptStore store(good);
    store.rows.erase(store.rows.begin() + static_cast<std::ptrdiff_t>(i));
    const Verified found = verified(store, fixture.made.clinic);
    CHECK((found.names(replica, seq) || found.names(replica, seq + 1)));
  }
}

TEST_CASE("every byte of the signed head, changed one at a time, is detected and located") {
  DeskFixture fixture;
  small_ledger(fixture);
  const KeptStore good(fixture.store);
  const Head head = good.all.newest.front();
  const auto found_with = [&](const Head& changed) {
    KeptStore store(good);
    store.all.newest = {changed};
    store.all.kept = {changed};
    return verified(store, fixture.made.clinic);
  };
  for (std::size_t i = 0; i < 64; ++i) {
    Head changed = head;
    changed.signature[i] ^= 1;
    const Verified found = found_with(changed);
    CHECK(found.names(head.replica, head.seq));
    // The newest head is also one of those kept, and is named once.
    REQUIRE(found.out.damage.size() == 1);
    CHECK(found.out.damage.front().code == "entry.head");
  }
  for (std::size_t i = 0; i < 32; ++i) {
    Head changed = head;
    changed.hash[i] ^= 1;
    CHECK(found_with(changed).names(head.replica, head.seq));
  }
  for (std::size_t i = 0; i < 16; ++i) {
    Head changed = head;
    changed.replica.bytes[i] ^= 1;
    CHECK(found_with(changed).names(changed.replica, head.seq));
  }
  for (int bit = 0; bit < 63; ++bit) {
    Head changed = head;
    changed.seq ^= std::uint64_t{1} << bit;
    CHECK(found_with(changed).names(head.replica, changed.seq));
  }
}

TEST_CASE("an entry whose hash fits but whose seal does not open is found only while unlocked") {
  DeskFixture fixture;
  small_ledger(fixture);
  KeptStore store(fixture.store);
  // As who holds the device's key could write it: the chain and the head are right, the seal is not.
  const Identity identity = identity_of(fixture);
  store.rows.back().body[30] ^= 1;
  Joint joint{4, store.rows[3].hash};
  link(identity.replica(), joint, store.rows.back());
  const Head head = sign_head(identity.device_key, identity.clinic, identity.replica(), joint.seq, joint.hash);
  store.all.newest = {head};
  store.all.kept = {head};
  CHECK(verified(store, fixture.made.clinic).out.damage.empty());
  const Verification found = verified(store, fixture.made.clinic, &fixture.desk->log()).out;
  REQUIRE(found.damage.size() == 1);
  CHECK(found.damage.front().code == "entry.seal");
  CHECK(found.damage.front().seq == 5);
}
