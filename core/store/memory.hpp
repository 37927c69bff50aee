// The store that forgets: everything in process memory, for tests, simulations and a form that is open before a ledger is.
// Behaves as the disk store does in all but lasting; can be told to refuse writes as a full disk does.
#pragma once

#include "core/ledger/port.hpp"

#include <map>
#include <tuple>
#include <vector>

namespace limbledger::store {

class MemoryStore final : public ledger::LogStore {
 public:
  [[nodiscard]] Result<void> append(std::span<const ledger::Row> rows, std::span<const ledger::Head> heads,
                                    const ledger::Meta& meta) override;
  [[nodiscard]] Result<std::vector<ledger::Row>> read(const model::ReplicaId& replica, std::uint64_t from,
                                                      std::uint64_t to, std::size_t limit) override;
  [[nodiscard]] Result<std::vector<ledger::Row>> read_kid(const model::KeyId& kid) override;
  [[nodiscard]] Result<ledger::Heads> heads() override;
  [[nodiscard]] Result<void> drop_bodies(std::span<const model::EntryId> entries, ledger::RowState state) override;
  [[nodiscard]] Result<std::vector<ledger::Row>> park(std::span<const ledger::Row> rows) override;
  [[nodiscard]] ledger::Durability durability() const override { return ledger::Durability::memory; }

  void refuse_writes(bool refuse) { refuses_ = refuse; }

 private:
  using Key = std::tuple<model::ReplicaId, std::uint64_t, ledger::Hash>;
  using Rows = std::map<Key, ledger::Row>;

  void put(const ledger::Row& row);
  [[nodiscard]] Result<void> put(const ledger::Head& head);
  [[nodiscard]] std::vector<ledger::Row> rows_at(const model::ReplicaId& replica, std::uint64_t seq) const;

  Rows rows_;
  std::map<model::KeyId, std::vector<Key>> by_kid_;
  std::map<model::ReplicaId, std::vector<ledger::Head>> newest_;
  std::map<Key, ledger::Head> kept_;
  ledger::Meta meta_;
  Rows parked_;
  bool refuses_ = false;
};

}  // namespace limbledger::store
