// What a replica has, in few bytes: the leaves of its chains, one row each (several for a replica after a fork), and a digest
// over all of them, so that two that have the same need not list it. What is parked is not part of it: it is not had yet.
// Source: ledger, items 21 and 24; the format's section 12.
#pragma once

#include "core/ledger/body.hpp"

#include <vector>

namespace limbledger::ledger {

constexpr std::size_t have_row_size = 33;
constexpr std::uint8_t have_holes = 1;
constexpr std::uint8_t have_parked = 2;
constexpr std::uint8_t have_held_apart = 4;

// A point of a chain as it is told to another: enough of the hash to know it by, never enough to believe it.
struct HaveRow {
  model::ReplicaId replica;
  std::uint64_t seq = 0;
  std::array<std::uint8_t, 8> prefix{};
  std::uint8_t flags = 0;

  [[nodiscard]] bool is(std::uint64_t at, const Hash& hash) const {
    return at == seq && std::equal(prefix.begin(), prefix.end(), hash.begin());
  }
  friend bool operator==(const HaveRow&, const HaveRow&) = default;
};

[[nodiscard]] HaveRow have_row(const Place& place);
void put_have(ByteWriter& out, const HaveRow& row);
[[nodiscard]] HaveRow read_have(ByteReader& in);

// The ends of all chains held, sorted.
[[nodiscard]] Result<std::vector<Place>> leaves_of(LogStore& store);
// `leaves` in any order.
[[nodiscard]] Hash have_digest(std::vector<Place> leaves);

// Whether the store holds the entry that a row speaks of.
[[nodiscard]] Result<bool> holds(LogStore& store, const HaveRow& row);

// Points of one chain that are held, and with each all before it: the leaves, and below them at seq - 1, - 2, - 4 and so on,
// so that another finds the last common entry of a fork, or nearly, in one message.
[[nodiscard]] Result<std::vector<HaveRow>> points_of(LogStore& store, const model::ReplicaId& replica);

}  // namespace limbledger::ledger
