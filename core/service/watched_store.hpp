// The store as the desk sees it: passes every call on and remembers whether the last write was taken, so that a full or
// read-only disk is known before somebody's finding is refused. Sizes in bytes, times in milliseconds since the start.
#pragma once

#include "core/ledger/port.hpp"

#include <optional>

namespace limbledger::service {

class WatchedStore final : public ledger::LogStore {
 public:
  explicit WatchedStore(ledger::LogStore& store) : store_(store) {}

  // Whether a write would be taken: tried with bytes that are written, flushed and taken away again. While writes are
  // taken, one try holds for `trial_every_ms`; after a refusal each call tries, with no less than was refused.
  [[nodiscard]] bool takes_writes(std::int64_t up_ms);

  [[nodiscard]] Result<void> append(std::span<const ledger::Row> rows, std::span<const ledger::Head> heads, const ledger::Meta& meta) override;
  void put_off_flush(bool is_put_off) override { store_.put_off_flush(is_put_off); }
  [[nodiscard]] Result<void> flush() override;
  [[nodiscard]] Result<void> flush_chain(const model::ReplicaId& replica) override;
  [[nodiscard]] Result<std::vector<ledger::Row>> read(const model::ReplicaId& replica, std::uint64_t from, std::uint64_t to,
                                                      std::size_t limit) override {
    return store_.read(replica, from, to, limit);
  }
  [[nodiscard]] Result<std::vector<ledger::Row>> read_kid(const model::KeyId& kid) override { return store_.read_kid(kid); }
  [[nodiscard]] Result<ledger::Heads> heads() override { return store_.heads(); }
  [[nodiscard]] Result<void> drop_bodies(std::span<const model::EntryId> entries, ledger::RowState state) override;
  [[nodiscard]] Result<std::vector<ledger::Row>> park(std::span<const ledger::Row> rows) override;
  [[nodiscard]] Result<std::vector<ledger::ListDamage>> check_lists(bool mend) override { return store_.check_lists(mend); }
  [[nodiscard]] ledger::Durability durability() const override { return store_.durability(); }

  static constexpr std::int64_t trial_every_ms = 10'000;
  static constexpr std::size_t trial_bytes = 16 * 1024;  // more than a finding with its key and heads takes

 private:
  template <class T>
  void note(const Result<T>& done, std::size_t bytes);

  ledger::LogStore& store_;
  bool refused_ = false;
  std::size_t refused_bytes_ = 0;
  std::optional<std::int64_t> tried_up_ms_;
};

}  // namespace limbledger::service
