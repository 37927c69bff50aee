#include "core/ledger/log/had.hpp"

#include <algorithm>
#include <optional>

namespace limbledger::ledger {

namespace {

// The row at a place of which this holds; a place has few, one a branch.
template <class Test>
[[nodiscard]] std::optional<Row> row_at(LogStore& store, const model::ReplicaId& replica, std::uint64_t seq, Test test) {
  auto rows = seq == 0 ? Result<std::vector<Row>>(std::vector<Row>{}) : store.read(replica, seq, seq, 64);
  if (!rows) {
    return std::nullopt;
  }
  const auto found = std::find_if(rows->begin(), rows->end(), test);
  return found == rows->end() ? std::nullopt : std::optional(std::move(*found));
}

[[nodiscard]] std::optional<Row> before(LogStore& store, const Row& row) {
  return row_at(store, row.replica, row.seq - 1, [&](const Row& other) { return entry_hash(other.hash, row.seq, row.header, body_hash(row)) == row.hash; });
}

// Adds what lies on the other branch above where the two part; false where that is not found.
[[nodiscard]] bool walk(LogStore& store, std::optional<Row> own, std::optional<Row> other, std::set<model::EntryId>& elsewhere) {
  while (own && other && own->hash != other->hash) {
    const std::uint64_t seq = std::max(own->seq, other->seq);
    if (other->seq == seq) {
      elsewhere.insert(entry_id(other->hash));
      other = before(store, *other);
    }
    if (own->seq == seq) {
      own = before(store, *own);
    }
  }
  return own && other;
}

}  // namespace

Had::Had(std::span<const model::Reached> reached, const Index& index, LogStore& store) : all_(false) {
  for (const model::Reached& one : reached) {
    End end{static_cast<std::uint64_t>(one.seq.steps), {}};
    const auto leaves = index.leaves.find(one.replica);
    if (leaves != index.leaves.end() && leaves->second.size() > 1) {
      const auto own = row_at(store, one.replica, end.seq, [&](const Row& row) { return entry_id(row.hash) == one.entry; });
      for (const Joint& leaf : leaves->second) {
        const auto other = row_at(store, one.replica, leaf.seq, [&](const Row& row) { return row.hash == leaf.hash; });
        if (!walk(store, own, other, end.elsewhere)) {
          untold_.insert(one.replica);
        }
      }
    }
    ends_[one.replica].push_back(std::move(end));
  }
}

bool Had::operator()(const Opened& one) const {
  const auto found = ends_.find(one.replica());
  return all_ || (found != ends_.end() && std::any_of(found->second.begin(), found->second.end(), [&](const End& end) { return one.seq() <= end.seq && !end.elsewhere.contains(one.entry()); }));
}

}  // namespace limbledger::ledger
