#include "core/store/memory.hpp"

#include "core/store/leaf.hpp"
#include "core/store/limits.hpp"

#include <algorithm>
#include <set>

namespace limbledger::store {

using ledger::Head;
using ledger::Row;
using ledger::RowState;

namespace {
wire::Fault refused() { return wire::Fault("ledger.read_only", ""); }

// The least and the greatest hash, as bounds of one sequence number.
constexpr ledger::Hash hash_least{};
ledger::Hash hash_greatest() {
  ledger::Hash out{};
  out.fill(0xff);
  return out;
}
}  // namespace

std::vector<Row> MemoryStore::rows_at(const model::ReplicaId& replica, std::uint64_t seq) const {
  std::vector<Row> out;
  const auto end = rows_.upper_bound({replica, seq, hash_greatest()});
  for (auto it = rows_.lower_bound({replica, seq, hash_least}); it != end; ++it) {
    out.push_back(it->second);
  }
  return out;
}

void MemoryStore::put(const Row& row) {
  const Key key{row.replica, row.seq, row.hash};
  const auto [held, is_new] = rows_.try_emplace(key, row);
  if (!is_new) {
    if (meet(held->second, row) == Meeting::fills) {
      held->second = row;
    }
    return;
  }
  model::KeyId kid;
  std::copy(row.header.begin() + 16, row.header.end(), kid.bytes.begin());
  if (kid != model::KeyId{}) {
    by_kid_[kid].push_back(key);
  }
}

Result<void> MemoryStore::put(const Head& head) {
  std::vector<Head>& newest = newest_[head.replica];
  const auto change = leaf_change(
      newest, head, [&](std::uint64_t seq) -> Result<std::vector<Row>> { return rows_at(head.replica, seq); });
  if (!change) {
    return change.error();
  }
  if (change->replaces) {
    newest[*change->replaces] = head;
  } else if (change->is_newest) {
    newest.push_back(head);
  }
  if (change->is_kept) {
    kept_.insert_or_assign({head.replica, head.seq, head.hash}, head);
  }
  return {};
}

Result<void> MemoryStore::append(std::span<const Row> rows, std::span<const Head> heads, const ledger::Meta& meta) {
  if (refuses_) {
    return refused();
  }
  Rows arriving;
  for (const Row& row : rows) {
    const Key key{row.replica, row.seq, row.hash};
    const auto [first, is_new] = arriving.try_emplace(key, row);
    const auto held = rows_.find(key);
    const bool contradicts = (!is_new && meet(first->second, row) == Meeting::contradicts) ||
                             (held != rows_.end() && meet(held->second, row) == Meeting::contradicts);
    if (contradicts) {
      return contradiction(row);
    }
  }
  for (const Row& row : rows) {
    put(row);
  }
  for (const Head& head : heads) {
    if (auto done = put(head); !done) {
      return done.error();
    }
  }
  for (const auto& [name, value] : meta) {
    if (value.empty()) {
      meta_.erase(name);
    } else {
      meta_.insert_or_assign(name, value);
    }
  }
  return {};
}

Result<std::vector<Row>> MemoryStore::read(const model::ReplicaId& replica, std::uint64_t from, std::uint64_t to,
                                           std::size_t limit) {
  std::vector<Row> out;
  const auto end = rows_.upper_bound({replica, to, hash_greatest()});
  for (auto it = rows_.lower_bound({replica, from, hash_least}); from <= to && it != end && out.size() < limit; ++it) {
    out.push_back(it->second);
  }
  return out;
}

Result<std::vector<Row>> MemoryStore::read_kid(const model::KeyId& kid) {
  std::vector<Row> out;
  const auto keys = by_kid_.find(kid);
  if (keys == by_kid_.end()) {
    return out;
  }
  std::sort(keys->second.begin(), keys->second.end());
  for (const Key& key : keys->second) {
    out.push_back(rows_.at(key));
  }
  return out;
}

Result<ledger::Heads> MemoryStore::heads() {
  ledger::Heads out;
  std::map<Key, Head> stored = kept_;
  for (const auto& [replica, newest] : newest_) {
    std::map<Key, Head> sorted;
    for (const Head& head : newest) {
      sorted.insert_or_assign({head.replica, head.seq, head.hash}, head);
    }
    for (const auto& [key, head] : sorted) {
      out.newest.push_back(head);
      stored.insert_or_assign(key, head);
    }
  }
  for (const auto& [key, head] : stored) {
    out.kept.push_back(head);
  }
  out.meta = meta_;
  return out;
}

Result<void> MemoryStore::drop_bodies(std::span<const model::EntryId> entries, RowState state) {
  ledger::require(state != RowState::whole);
  if (refuses_) {
    return refused();
  }
  const std::set<model::EntryId> wanted(entries.begin(), entries.end());
  for (auto& [key, row] : rows_) {
    if (row.state == RowState::erased || !wanted.contains(ledger::entry_id(row.hash))) {
      continue;
    }
    const ledger::Hash hash = ledger::body_hash(row);
    row.body.assign(hash.begin(), hash.end());
    row.state = state;
  }
  return {};
}

Result<std::vector<Row>> MemoryStore::park(std::span<const Row> rows) {
  std::vector<Row> out;
  if (refuses_) {
    return refused();
  }
  if (rows.empty()) {
    for (auto& [key, row] : parked_) {
      out.push_back(std::move(row));
    }
    parked_.clear();
    return out;
  }
  if (parked_.size() + rows.size() > parked_count_max) {
    return parked_full();
  }
  for (const Row& row : rows) {
    parked_.try_emplace({row.replica, row.seq, row.hash}, row);
  }
  return out;
}

}  // namespace limbledger::store
