// A device's disk, behind the ledger's port: in memory, or an SQLite file on a disk that tears what it was writing. The power can go
// at any commit, which is then there or not, and nobody was told; with it goes all that was not flushed. A disk may lie: it answers yes, and when the power goes it is
// what it was when it began to. Faults are planted here (planted_faults.md).
#pragma once

#include "core/ledger/port.hpp"
#include "core/store/memory.hpp"
#include "tests/simulation/clinic/base.hpp"
#include "tests/simulation/power_cut_vfs.hpp"

#include <memory>
#include <optional>
#include <set>

namespace limbledger::ledger::clinic_sim {

class Disk final : public LogStore {
 public:
  // With a clinic: an SQLite file of it.
  Disk(Planted planted, std::uint64_t seed, const std::optional<model::ClinicId>& on_file);
  // What it holds now, what waits included, on a disk in memory.
  [[nodiscard]] std::unique_ptr<Disk> copy(std::uint64_t seed);

  // The power goes at a commit soon, or now.
  void arm();
  void disarm();
  void go_dark() { is_dark_ = true; }
  [[nodiscard]] bool is_dark() const { return is_dark_; }
  void power_back();

  // What stands so far is on the disk, whatever is planted.
  void keep();
  void begin_lying();
  void stop_lying();
  [[nodiscard]] bool is_lying() const { return is_lying_; }
  [[nodiscard]] bool is_file() const { return power_ != nullptr; }
  [[nodiscard]] std::uint64_t commits() const { return commits_; }

  [[nodiscard]] Result<void> append(std::span<const Row> rows, std::span<const Head> heads, const Meta& meta) override;
  void put_off_flush(bool is_put_off) override;
  [[nodiscard]] Result<void> flush() override;
  [[nodiscard]] Result<void> flush_chain(const model::ReplicaId& replica) override;
  [[nodiscard]] Result<std::vector<Row>> read(const model::ReplicaId& replica, std::uint64_t from, std::uint64_t to, std::size_t limit) override;
  [[nodiscard]] Result<std::vector<Row>> read_kid(const model::KeyId& kid) override;
  [[nodiscard]] Result<Heads> heads() override;
  [[nodiscard]] Result<void> drop_bodies(std::span<const model::EntryId> entries, RowState state) override;
  [[nodiscard]] Result<std::vector<Row>> park(std::span<const Row> rows) override;
  [[nodiscard]] Durability durability() const override { return Durability::memory; }

 private:
  void open_file();
  void note_waited(bool is_written);

  Planted planted_;
  Dice dice_;
  std::optional<model::ClinicId> clinic_;
  std::unique_ptr<simulation::PowerCutDisk> power_;
  std::unique_ptr<LogStore> inner_;
  std::unique_ptr<store::MemoryStore> kept_;  // what it falls back to when the power goes
  std::unique_ptr<store::MemoryStore> flushed_;  // what stood at the last flush, where one was put off since
  std::set<model::ReplicaId> put_off_chains_;    // what came of these since
  std::uint64_t dies_in_ = 0;                 // commits; 0: not armed
  std::uint64_t commits_ = 0;
  bool is_dark_ = false;
  bool is_put_off_ = false;
  bool is_lying_ = false;
};

}  // namespace limbledger::ledger::clinic_sim
