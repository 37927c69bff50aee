// The open SQLite file behind the store: settings, prepared statements and transactions. Known to sqlite.cpp alone.
#pragma once

#include "core/store/layout.hpp"
#include "core/store/sqlite.hpp"
#include "core/store/statement.hpp"

#include <map>
#include <set>
#include <vector>

namespace limbledger::store {

// Where a chain ends, and the run of entries under one key that goes on there.
struct ChainEnd {
  std::uint64_t seq = 0;
  std::optional<model::KeyId> kid;
  std::uint64_t first = 0;
};

class SqliteStore::Database {
 public:
  Database() = default;
  Database(const Database&) = delete;
  Database& operator=(const Database&) = delete;
  ~Database();

  [[nodiscard]] Result<void> open(const std::string& path, const SqliteOptions& options);

  // Runs `change` inside one transaction: all of it, or nothing.
  template <class Change>
  [[nodiscard]] Result<void> transact(const Change& change) {
    if (auto begun = begin(); !begun) {
      return begun;
    }
    Result<void> done = change();
    if (done) {
      done = commit();
    }
    if (!done) {
      roll_back();
    }
    return done;
  }

  [[nodiscard]] Result<void> run(const std::string& sql);
  [[nodiscard]] Result<std::int64_t> number(const std::string& sql);
  [[nodiscard]] Result<std::string> words(const std::string& sql);
  // A failure of SQLite as a fault; a disk that failed once takes no more writes until the ledger is opened again.
  [[nodiscard]] wire::Fault fail(int code);

  // The local number of a replica's chain; made when it is new, inside a transaction.
  [[nodiscard]] Result<std::int64_t> chain(const model::ReplicaId& replica);
  [[nodiscard]] std::optional<std::int64_t> find_chain(const model::ReplicaId& replica) const;

  void put_off_flush(bool is_put_off) { put_off_ = is_put_off; }
  // Before a commit: writes a log that has become long into the file.
  [[nodiscard]] Result<void> shorten_log(bool brings_entries);
  // Chains of which something waits for the disk. A disk that failed has all of them behind.
  void note_put_off(const model::ReplicaId& replica);
  [[nodiscard]] bool is_put_off(const model::ReplicaId& replica) const { return unflushed_ && (failed_ || put_off_chains_.contains(replica)); }
  // Waits until every commit is on the disk.
  [[nodiscard]] Result<void> flush();

  // Where a chain ends, before an entry is added to it.
  [[nodiscard]] Result<void> find_end(std::int64_t chain);
  // Lists an entry that was added under its key.
  [[nodiscard]] Result<void> list_under_key(const ledger::Row& row, std::int64_t chain);
  // Whether every entry is listed under its key; fault entry.store.
  [[nodiscard]] Result<std::uint64_t> left_out_of_runs();
  [[nodiscard]] Result<void> make_runs_anew();

  // Reads again what is remembered of the file: clinic, chains, newest heads. Ends are looked for when they are needed: a file that is
  // damaged there is opened and read all the same.
  [[nodiscard]] Result<void> load();
  [[nodiscard]] Result<std::vector<ledger::Row>> rows(const model::ReplicaId& replica, std::uint64_t from,
                                                      std::uint64_t to, std::size_t limit);

  model::ClinicId clinic;
  std::map<model::ReplicaId, std::int64_t> chains;
  std::map<std::int64_t, ChainEnd> ends;
  std::map<model::ReplicaId, std::vector<ledger::Head>> newest;
  sqlite3* handle = nullptr;

  Statement insert_entry;
  Statement fill_entry;
  Statement read_range;
  Statement read_kid;
  Statement put_small;
  Statement put_newest;
  Statement drop_small;
  Statement put_kept;
  Statement read_kept;
  Statement read_meta;

 private:
  [[nodiscard]] int open_frozen(const std::string& path);
  [[nodiscard]] bool is_empty();
  [[nodiscard]] Result<void> configure(const SqliteOptions& options);
  [[nodiscard]] Result<void> check_layout(const SqliteOptions& options);
  [[nodiscard]] Result<void> make_file(const model::ClinicId& of);
  void bring_up_to_date();
  [[nodiscard]] Result<void> prepare();
  [[nodiscard]] sqlite3_file* log_file();
  [[nodiscard]] Result<void> settle_log();
  [[nodiscard]] Result<void> reserve_log(int pages);
  [[nodiscard]] Result<void> begin();
  [[nodiscard]] Result<void> commit();
  void roll_back();

  Statement open_run_;
  Statement close_run_;
  // Less than the newest where a file of an earlier version could not be written: it keeps its lists and heads where it had them.
  int layout_ = layout_version;
  [[nodiscard]] bool has_runs() const { return layout_ >= 2; }
  [[nodiscard]] bool has_newest_behind_entries() const { return layout_ >= 3; }
  Statement read_clinic_;
  Statement read_chains_;
  Statement read_newest_;
  Statement read_end_;
  Statement read_open_run_;
  Statement begin_;
  Statement commit_;
  bool failed_ = false;
  bool flushes_ = false;   // this store was asked to be durable
  bool put_off_ = false;
  bool unflushed_ = false;
  std::set<model::ReplicaId> put_off_chains_;
  int checkpoint_pages_ = 0;
  int log_pages_ = 0;
  std::function<void()> begin_writing_;
};

// Columns `from`.. are seq, hash, state, header, body. Fault entry.store, with the place, when they cannot be a row.
[[nodiscard]] Result<ledger::Row> read_row(Statement& statement, int from, const model::ReplicaId& replica);

constexpr int part_clinic = 0;
constexpr int part_meta = 2;

}  // namespace limbledger::store
