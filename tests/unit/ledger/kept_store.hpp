// A store of plain rows that a test may change byte by byte, behind the port's own order and rules of reading. It appends
// like the one in memory; it never checks, as a damaged card does not either. Counts the rows that were read.
#pragma once

#include "core/ledger/chain.hpp"
#include "core/ledger/keys/keyring.hpp"
#include "core/ledger/log/log.hpp"
#include "core/service/desk.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <algorithm>
#include <tuple>
#include <vector>

namespace limbledger::ledger::test {

class KeptStore final : public LogStore {
 public:
  KeptStore() = default;
  // What another store holds of these chains.
  explicit KeptStore(LogStore& other) {
    auto held = other.heads();
    REQUIRE(held.has_value());
    all = std::move(*held);
    for (const Head& head : all.newest) {
      auto part = other.read(head.replica, 1, UINT64_MAX >> 1U, SIZE_MAX);
      REQUIRE(part.has_value());
      for (Row& row : *part) {
        if (std::none_of(rows.begin(), rows.end(), [&](const Row& known) { return known.hash == row.hash; })) {
          rows.push_back(std::move(row));
        }
      }
    }
  }
  KeptStore(const KeptStore& other) : LogStore(), rows(other.rows), all(other.all) {}
  KeptStore& operator=(const KeptStore&) = delete;

  Result<void> append(std::span<const Row> more, std::span<const Head> heads, const Meta& meta) override {
    rows.insert(rows.end(), more.begin(), more.end());
    for (const Head& head : heads) {
      std::erase_if(all.newest, [&](const Head& known) { return known.replica == head.replica; });
      std::erase_if(all.kept, [&](const Head& known) { return known.replica == head.replica; });
      all.newest.push_back(head);
      all.kept.push_back(head);
    }
    for (const auto& [name, value] : meta) {
      if (value.empty()) {
        all.meta.erase(name);
      } else {
        all.meta[name] = value;
      }
    }
    return {};
  }
  Result<std::vector<Row>> read(const model::ReplicaId& replica, std::uint64_t from, std::uint64_t to, std::size_t limit) override {
    return picked([&](const Row& row) { return row.replica == replica && row.seq >= from && row.seq <= to; }, limit);
  }
  Result<std::vector<Row>> read_kid(const model::KeyId& kid) override {
    return picked([&](const Row& row) { return std::equal(kid.bytes.begin(), kid.bytes.end(), row.header.begin() + 16); }, SIZE_MAX);
  }
  Result<Heads> heads() override { return all; }
  Result<void> drop_bodies(std::span<const model::EntryId> /*entries*/, RowState /*state*/) override { return {}; }
  Result<std::vector<Row>> park(std::span<const Row> /*rows*/) override { return std::vector<Row>{}; }
  [[nodiscard]] Durability durability() const override { return Durability::memory; }

  std::vector<Row> rows;
  Heads all;
  std::size_t read_count = 0;

 private:
  template <class Wanted>
  std::vector<Row> picked(Wanted wanted, std::size_t limit) {
    std::vector<Row> out;
    for (const Row& row : rows) {
      if (wanted(row)) {
        out.push_back(row);
      }
    }
    std::sort(out.begin(), out.end(), [](const Row& a, const Row& b) {
      return std::tie(a.replica, a.seq, a.hash) < std::tie(b.replica, b.seq, b.hash);
    });
    out.resize(std::min(out.size(), limit));
    read_count += out.size();
    return out;
  }
};

// The keys of a fixture's clinic, for a log without a desk; another seed for another device of the same clinic.
inline Vault vault_of(const service::test::DeskFixture& fixture) {
  const auto keyring = Keyring::from_bytes(fixture.made.keyring);
  REQUIRE(keyring.has_value());
  const auto opened = keyring->open_passphrase(service::test::passphrase);
  REQUIRE(opened.has_value());
  return opened->vault;
}
inline Identity identity_of(const service::test::DeskFixture& fixture) {
  const Vault vault = vault_of(fixture);
  Identity identity{fixture.made.clinic, SignKey(vault.sign_seed), {}, BlobKey(vault.shelf_key)};
  for (const auto& [epoch, secret] : vault.epoch_secrets) {
    identity.epochs.emplace(epoch, BoxPair(secret));
  }
  return identity;
}
inline Identity other_device(const service::test::DeskFixture& fixture, std::uint8_t seed) {
  Identity identity = identity_of(fixture);
  std::array<std::uint8_t, 32> bytes{};
  bytes.fill(seed);
  identity.device_key = SignKey(Secret32(bytes));
  return identity;
}

// The first entry of another device: who it is.
inline void introduce(LogStore& store, World& world, const Identity& identity) {
  Intro intro;
  intro.storage = storage_of(store.durability());
  intro.clinic = identity.clinic;
  intro.sign_pub = identity.device_key.pub();
  intro.box_pub = identity.epochs.rbegin()->second.pub();
  world.random(intro.device.bytes);
  intro.program = "a second device";
  Row row;
  row.body = intro.to_bytes();
  Header header;
  header.kind = Kind::intro;
  header.flags = flag_last_of_commit;
  header.body_length = static_cast<std::uint32_t>(row.body.size());
  header.stamp = HybridClock(release_ms).next(world.now());
  row.header = header.to_bytes();
  Joint joint = start_of({identity.clinic, identity.replica(), identity.device_key.pub()});
  link(identity.replica(), joint, row);
  const Head head = sign_head(identity.device_key, identity.clinic, identity.replica(), joint.seq, joint.hash);
  REQUIRE(store.append({&row, 1}, {&head, 1}, {}).has_value());
}

}  // namespace limbledger::ledger::test
