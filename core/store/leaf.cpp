#include "core/store/leaf.hpp"

namespace limbledger::store {

namespace {

using ledger::Hash;
using ledger::Row;

constexpr std::uint64_t kept_every = 1000;

// The hash at `seq` on the branch that ends in (from_seq, from_hash); nothing when rows are missing.
Result<std::optional<Hash>> ancestor(std::uint64_t from_seq, Hash hash, std::uint64_t seq, const RowsAt& rows_at) {
  auto candidates = rows_at(seq);
  if (!candidates) {
    return candidates.error();
  }
  if (candidates->size() == 1 && from_seq > seq) {
    return std::optional<Hash>(candidates->front().hash);  // every branch runs through the only entry there
  }
  for (std::uint64_t at = from_seq; at > seq; --at) {
    auto here = rows_at(at);
    auto before = rows_at(at - 1);
    if (!here || !before) {
      return here ? before.error() : here.error();
    }
    std::optional<Hash> found;
    for (const Row& row : *here) {
      for (const Row& previous : *before) {
        if (row.hash == hash && ledger::entry_hash(previous.hash, at, row.header, ledger::body_hash(row)) == hash) {
          found = previous.hash;
        }
      }
    }
    if (!found) {
      return found;
    }
    hash = *found;
  }
  return std::optional<Hash>(hash);
}

}  // namespace

Result<LeafChange> leaf_change(const std::vector<ledger::Head>& newest, const ledger::Head& head, const RowsAt& rows_at) {
  LeafChange out;
  std::uint64_t replaced_seq = 0;
  for (std::size_t i = 0; i < newest.size(); ++i) {
    const ledger::Head& leaf = newest[i];
    if (leaf.seq == head.seq && leaf.hash == head.hash) {
      out.replaces = i;
      replaced_seq = head.seq;
      break;
    }
    const bool below = leaf.seq > head.seq;
    const auto met = below ? ancestor(leaf.seq, leaf.hash, head.seq, rows_at)
                           : ancestor(head.seq, head.hash, leaf.seq, rows_at);
    if (!met) {
      return met.error();
    }
    if (*met && **met == (below ? head.hash : leaf.hash)) {
      out.is_newest = !below;
      if (!below) {
        out.replaces = i;
        replaced_seq = leaf.seq;
      }
      break;
    }
  }
  out.is_kept = out.is_newest ? head.seq / kept_every > replaced_seq / kept_every : head.seq % kept_every == 0;
  return out;
}

Meeting meet(const Row& held, const Row& arriving) {
  if (held.header != arriving.header || ledger::body_hash(held) != ledger::body_hash(arriving)) {
    return Meeting::contradicts;
  }
  // An erased body stays erased; one that was only pruned or withheld may come back.
  const bool fills = arriving.state == ledger::RowState::whole &&
                     (held.state == ledger::RowState::pruned || held.state == ledger::RowState::withheld);
  return fills ? Meeting::fills : Meeting::same;
}

}  // namespace limbledger::store
