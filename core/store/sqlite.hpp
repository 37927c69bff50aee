// The store on disk: one SQLite file with a write-ahead log, flushed at every commit. One connection both writes and
// checkpoints and holds the file alone, because SQLite before 3.51.3 can lose commits when two do (its reset race).
// The entries' bytes are sealed before they come here. Durations are milliseconds, sizes pages of 4096 bytes.
#pragma once

#include "core/ledger/entry.hpp"
#include "core/ledger/port.hpp"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace limbledger::store {

// `full` is the only one that survives a power cut; the others exist so that tests can show it.
enum class Flush : std::uint8_t { off, normal, full };

struct SqliteOptions {
  std::optional<model::ClinicId> clinic = std::nullopt;  // given: the file is made when there is none, and must be of this clinic
  bool read_only = false;                 // queries only; never checkpoints
  bool frozen = false;                    // the medium takes no write: nothing is made or locked; the caller holds the ledger
  bool alone = true;                      // holds the file against every other process while open
  Flush flush = Flush::full;
  std::string vfs = {};  // empty: the platform's
  std::function<void()> begin_writing = {};  // lets the disk begin with the log; promises nothing, and may be absent
  int busy_ms = 100;
  int checkpoint_pages = 1000;
  std::int64_t page_count_max = 0;  // 0: as large as the disk; else a bound, to stand for a full disk
};

class SqliteStore final : public ledger::LogStore {
 public:
  // Faults: ledger.none, ledger.missing (an empty file), ledger.in_use, ledger.read_only, format.newer, entry.store.
  [[nodiscard]] static Result<std::unique_ptr<SqliteStore>> open(const std::string& path, const SqliteOptions& options);
  ~SqliteStore() override;

  // For a program, before anything of SQLite runs in it: SQLite does not count its memory then, which takes a lock at every allocation.
  // It holds for the whole process, so who only links the library decides for itself.
  static void count_no_memory();

  [[nodiscard]] const model::ClinicId& clinic() const;

  [[nodiscard]] Result<void> append(std::span<const ledger::Row> rows, std::span<const ledger::Head> heads,
                                    const ledger::Meta& meta) override;
  void put_off_flush(bool is_put_off) override;
  [[nodiscard]] Result<void> flush() override;
  [[nodiscard]] Result<void> flush_chain(const model::ReplicaId& replica) override;
  [[nodiscard]] Result<std::vector<ledger::Row>> read(const model::ReplicaId& replica, std::uint64_t from,
                                                      std::uint64_t to, std::size_t limit) override;
  [[nodiscard]] Result<std::vector<ledger::Row>> read_kid(const model::KeyId& kid) override;
  [[nodiscard]] Result<ledger::Heads> heads() override;
  [[nodiscard]] Result<void> drop_bodies(std::span<const model::EntryId> entries, ledger::RowState state) override;
  [[nodiscard]] Result<std::vector<ledger::Row>> park(std::span<const ledger::Row> rows) override;
  [[nodiscard]] Result<std::vector<ledger::ListDamage>> check_lists(bool mend) override;
  [[nodiscard]] ledger::Durability durability() const override { return ledger::Durability::disk; }

 private:
  class Database;
  friend class Appending;

  explicit SqliteStore(std::unique_ptr<Database> database);

  std::unique_ptr<Database> database_;
};

}  // namespace limbledger::store
