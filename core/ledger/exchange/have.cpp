#include "core/ledger/exchange/have.hpp"

#include "core/ledger/entry.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {
constexpr Tag tag_have = tag("limb.have.1");
constexpr std::size_t branches_max = 4096;
}  // namespace

HaveRow have_row(const Place& place) {
  HaveRow out;
  out.replica = place.replica;
  out.seq = place.seq;
  std::copy_n(place.hash.begin(), out.prefix.size(), out.prefix.begin());
  return out;
}

void put_have(ByteWriter& out, const HaveRow& row) { out.raw(row.replica.bytes).u64(row.seq).raw(row.prefix).u8(row.flags); }

HaveRow read_have(ByteReader& in) {
  HaveRow out;
  out.replica.bytes = in.array<16>();
  out.seq = in.u64();
  out.prefix = in.array<8>();
  out.flags = in.u8();
  return out;
}

Result<std::vector<Place>> leaves_of(LogStore& store) {
  const auto heads = store.heads();
  if (!heads) {
    return heads.error();
  }
  std::vector<Place> out;
  for (const Head& head : heads->newest) {
    out.push_back({head.replica, head.seq, head.hash});
  }
  std::sort(out.begin(), out.end());
  return out;
}

Hash have_digest(std::vector<Place> leaves) {
  std::sort(leaves.begin(), leaves.end());
  ByteWriter rows(57 * leaves.size());
  for (const Place& leaf : leaves) {
    // No replica of this version leaves out bodies, so none has holes.
    rows.raw(to_bytes(leaf)).u8(0);
  }
  return hash256(tag_have, rows.view());
}

Result<bool> holds(LogStore& store, const HaveRow& row) {
  const auto rows = store.read(row.replica, row.seq, row.seq, branches_max);
  if (!rows) {
    return rows.error();
  }
  return std::any_of(rows->begin(), rows->end(), [&row](const Row& held) { return row.is(held.seq, held.hash); });
}

Result<std::vector<HaveRow>> points_of(LogStore& store, const model::ReplicaId& replica) {
  const auto leaves = leaves_of(store);
  if (!leaves) {
    return leaves.error();
  }
  std::vector<HaveRow> out;
  std::uint64_t newest = 0;
  for (const Place& leaf : *leaves) {
    if (leaf.replica == replica) {
      out.push_back(have_row(leaf));
      newest = std::max(newest, leaf.seq);
    }
  }
  for (std::uint64_t below = 1; below < newest; below *= 2) {
    const auto rows = store.read(replica, newest - below, newest - below, branches_max);
    if (!rows) {
      return rows.error();
    }
    for (const Row& row : *rows) {
      out.push_back(have_row({replica, row.seq, row.hash}));
    }
  }
  return out;
}

}  // namespace limbledger::ledger
