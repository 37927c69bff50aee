#include "core/service/watched_store.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

constexpr const char* trial_name = "trial";

[[nodiscard]] std::size_t size_of(std::span<const ledger::Row> rows) {
  std::size_t bytes = 0;
  for (const ledger::Row& row : rows) {
    bytes += row.body.size() + row.header.size() + row.hash.size();
  }
  return bytes;
}

}  // namespace

// Only the store's own inability counts; a row that contradicts one held says nothing about the disk.
template <class T>
void WatchedStore::note(const Result<T>& done, std::size_t bytes) {
  if (done) {
    return;
  }
  const wire::Refusal refusal = done.error();
  if (refusal.number() == wire::FaultClass::read_only || refusal.faults.front().code == "entry.store") {
    refused_ = true;
    refused_bytes_ = std::max(refused_bytes_, bytes);
  }
}

Result<void> WatchedStore::append(std::span<const ledger::Row> rows, std::span<const ledger::Head> heads, const ledger::Meta& meta) {
  auto done = store_.append(rows, heads, meta);
  std::size_t bytes = size_of(rows);
  for (const auto& [name, value] : meta) {
    bytes += value.size();
  }
  note(done, bytes);
  return done;
}

Result<void> WatchedStore::flush() {
  auto done = store_.flush();
  note(done, 0);
  return done;
}

Result<void> WatchedStore::flush_chain(const model::ReplicaId& replica) {
  auto done = store_.flush_chain(replica);
  note(done, 0);
  return done;
}

Result<void> WatchedStore::drop_bodies(std::span<const model::EntryId> entries, ledger::RowState state) {
  auto done = store_.drop_bodies(entries, state);
  note(done, 0);
  return done;
}

Result<std::vector<ledger::Row>> WatchedStore::park(std::span<const ledger::Row> rows) {
  auto done = store_.park(rows);
  note(done, size_of(rows));
  return done;
}

bool WatchedStore::takes_writes(std::int64_t up_ms) {
  const bool fresh = tried_up_ms_ && up_ms >= *tried_up_ms_ && up_ms - *tried_up_ms_ < trial_every_ms;
  if (!refused_ && fresh) {
    return true;
  }
  const std::size_t bytes = refused_bytes_ == 0 ? trial_bytes : refused_bytes_ + trial_bytes;
  const bool taken = store_.append({}, {}, {{trial_name, ledger::Bytes(bytes, 0x5a)}}).has_value() && store_.append({}, {}, {{trial_name, {}}}).has_value();
  refused_ = !taken;
  refused_bytes_ = taken ? 0 : refused_bytes_;
  tried_up_ms_ = up_ms;
  return taken;
}

}  // namespace limbledger::service
