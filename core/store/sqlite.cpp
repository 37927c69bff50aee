#include "core/store/sqlite.hpp"

#include "core/store/sqlite_database.hpp"
#include "core/store/leaf.hpp"
#include "core/store/limits.hpp"

#include <algorithm>
#include <set>

namespace limbledger::store {

using ledger::Head;
using ledger::Row;
using ledger::RowState;
using ledger::View;

namespace {

// SQLite counts in 63 bits.
std::int64_t clamp(std::uint64_t value) {
  constexpr auto most = static_cast<std::uint64_t>(INT64_MAX);
  return static_cast<std::int64_t>(std::min(value, most));
}

std::array<std::uint8_t, 104> leaf_value(const Head& head) {
  std::array<std::uint8_t, 104> out{};
  ledger::put_integer(out.data(), head.seq, 8);
  std::copy(head.hash.begin(), head.hash.end(), out.begin() + 8);
  std::copy(head.signature.begin(), head.signature.end(), out.begin() + 40);
  return out;
}

constexpr std::size_t branch_count_max = 255;

bool before(const Head& a, const Head& b) {
  return std::tie(a.replica, a.seq, a.hash) < std::tie(b.replica, b.seq, b.hash);
}

}  // namespace

// The changes of one append, inside its transaction.
class Appending {
 public:
  explicit Appending(SqliteStore::Database& database) : database_(database) {}

  Result<void> put(const Row& row) {
    const auto chain = database_.chain(row.replica);
    if (!chain) {
      return chain.error();
    }
    if (row.seq >= static_cast<std::uint64_t>(newest_at)) {
      return ledger::entry_fault("entry.format", row.replica, row.seq, row.hash, "a sequence number below 2^63 - 1");
    }
    if (auto found = database_.find_end(*chain); !found) {
      return found;
    }
    Statement& insert = database_.insert_entry;
    const int code = insert.bind(1, *chain)
                         .bind(2, static_cast<std::int64_t>(row.seq))
                         .bind(3, View(row.hash))
                         .bind(4, std::int64_t{static_cast<std::uint8_t>(row.state)})
                         .bind(5, View(row.header))
                         .bind(6, View(row.body))
                         .step();
    if (code != SQLITE_DONE) {
      return database_.fail(code);
    }
    return sqlite3_changes(database_.handle) == 1 ? database_.list_under_key(row, *chain) : meet_held(row, *chain);
  }

  Result<void> put(const Head& head) {
    auto& newest = database_.newest[head.replica];
    const auto change = leaf_change(newest, head, [&](std::uint64_t seq) { return rows_at(head.replica, seq); });
    if (!change) {
      return change.error();
    }
    if (change->is_newest) {
      const std::size_t branch = change->replaces.value_or(newest.size());
      if (branch >= branch_count_max) {
        return wire::Fault("replica.forked", "", "at most 255 branches of one replica");
      }
      newest.resize(std::max(newest.size(), branch + 1));
      newest[branch] = head;
      if (auto done = put_newest(head, static_cast<std::uint8_t>(branch)); !done) {
        return done;
      }
    }
    return change->is_kept ? keep(head) : Result<void>();
  }

  Result<void> put(const std::string& name, const ledger::Bytes& value) {
    if (!value.empty()) {
      return put_small(part_meta, ledger::as_bytes(name), value);
    }
    const int code = database_.drop_small.bind(1, std::int64_t{part_meta}).bind(2, ledger::as_bytes(name)).step();
    return code == SQLITE_DONE ? Result<void>() : Result<void>(database_.fail(code));
  }

 private:
  Result<void> put_newest(const Head& head, std::uint8_t branch) {
    const auto chain = database_.chain(head.replica);
    if (!chain) {
      return chain.error();
    }
    const int code = database_.put_newest.bind(1, *chain).bind(2, View(head.replica.bytes)).bind(3, View(&branch, 1)).bind(4, View(leaf_value(head))).step();
    return code == SQLITE_DONE ? Result<void>() : Result<void>(database_.fail(code));
  }

  Result<void> put_small(int part, View name, View value) {
    const int code = database_.put_small.bind(1, std::int64_t{part}).bind(2, name).bind(3, value).step();
    return code == SQLITE_DONE ? Result<void>() : Result<void>(database_.fail(code));
  }

  Result<void> keep(const Head& head) {
    const auto chain = database_.chain(head.replica);
    if (!chain) {
      return chain.error();
    }
    const int code = database_.put_kept.bind(1, *chain)
                         .bind(2, clamp(head.seq))
                         .bind(3, View(head.hash))
                         .bind(4, View(head.signature))
                         .step();
    return code == SQLITE_DONE ? Result<void>() : Result<void>(database_.fail(code));
  }

  Result<std::vector<Row>> rows_at(const model::ReplicaId& replica, std::uint64_t seq) {
    return database_.rows(replica, seq, seq, branch_count_max);
  }

  Result<void> meet_held(const Row& row, std::int64_t chain) {
    const auto held = rows_at(row.replica, row.seq);
    if (!held) {
      return held.error();
    }
    const auto same = std::find_if(held->begin(), held->end(), [&](const Row& one) { return one.hash == row.hash; });
    if (same == held->end() || meet(*same, row) == Meeting::contradicts) {
      return contradiction(row);
    }
    if (meet(*same, row) == Meeting::same) {
      return {};
    }
    const int code = database_.fill_entry.bind(1, chain)
                         .bind(2, static_cast<std::int64_t>(row.seq))
                         .bind(3, View(row.hash))
                         .bind(4, std::int64_t{static_cast<std::uint8_t>(row.state)})
                         .bind(5, View(row.body))
                         .step();
    return code == SQLITE_DONE ? Result<void>() : Result<void>(database_.fail(code));
  }

  SqliteStore::Database& database_;
};

SqliteStore::SqliteStore(std::unique_ptr<Database> database) : database_(std::move(database)) {}
SqliteStore::~SqliteStore() = default;

Result<std::unique_ptr<SqliteStore>> SqliteStore::open(const std::string& path, const SqliteOptions& options) {
  auto database = std::make_unique<Database>();
  if (auto done = database->open(path, options); !done) {
    return done.error();
  }
  return std::unique_ptr<SqliteStore>(new SqliteStore(std::move(database)));
}

void SqliteStore::count_no_memory() { static_cast<void>(sqlite3_config(SQLITE_CONFIG_MEMSTATUS, 0)); }

const model::ClinicId& SqliteStore::clinic() const { return database_->clinic; }

Result<void> SqliteStore::append(std::span<const Row> rows, std::span<const Head> heads, const ledger::Meta& meta) {
  if (auto shortened = database_->shorten_log(!rows.empty()); !shortened) {
    return shortened;
  }
  Appending appending(*database_);
  auto done = database_->transact([&]() -> Result<void> {
    for (const Row& row : rows) {
      if (auto put = appending.put(row); !put) {
        return put;
      }
    }
    for (const Head& head : heads) {
      if (auto put = appending.put(head); !put) {
        return put;
      }
    }
    for (const auto& [name, value] : meta) {
      if (auto put = appending.put(name, value); !put) {
        return put;
      }
    }
    return {};
  });
  if (!done) {
    // What is remembered of the file may be ahead of it.
    static_cast<void>(database_->load());
    return done;
  }
  for (const Row& row : rows) {
    database_->note_put_off(row.replica);
  }
  for (const Head& head : heads) {
    database_->note_put_off(head.replica);
  }
  return done;
}

void SqliteStore::put_off_flush(bool is_put_off) { database_->put_off_flush(is_put_off); }

Result<void> SqliteStore::flush() { return database_->flush(); }

Result<void> SqliteStore::flush_chain(const model::ReplicaId& replica) {
  return database_->is_put_off(replica) ? database_->flush() : Result<void>();
}

Result<std::vector<Row>> SqliteStore::read(const model::ReplicaId& replica, std::uint64_t from, std::uint64_t to,
                                           std::size_t limit) {
  return database_->rows(replica, from, to, limit);
}

Result<std::vector<Row>> SqliteStore::read_kid(const model::KeyId& kid) {
  std::vector<Row> out;
  Statement& statement = database_->read_kid;
  const InUse in_use(statement);
  int code = statement.bind(1, View(kid.bytes)).step();
  for (; code == SQLITE_ROW; code = statement.step()) {
    model::ReplicaId replica;
    const View name = statement.blob(0);
    std::copy_n(name.begin(), std::min(name.size(), replica.bytes.size()), replica.bytes.begin());
    auto row = read_row(statement, 1, replica);
    if (!row) {
      return row.error();
    }
    out.push_back(std::move(*row));
  }
  // Put in order here: SQLite would copy every body into a sorter of its own. They mostly come so.
  const auto place = [](const Row& row) { return std::tie(row.replica, row.seq, row.hash); };
  std::sort(out.begin(), out.end(), [&place](const Row& a, const Row& b) { return place(a) < place(b); });
  // Runs may overlap where a chain has branches.
  out.erase(std::unique(out.begin(), out.end(), [&place](const Row& a, const Row& b) { return place(a) == place(b); }), out.end());
  return code == SQLITE_DONE ? Result<std::vector<Row>>(std::move(out)) : Result<std::vector<Row>>(database_->fail(code));
}

Result<ledger::Heads> SqliteStore::heads() {
  if (auto done = database_->load(); !done) {
    return done.error();
  }
  ledger::Heads out;
  for (const auto& [replica, newest] : database_->newest) {
    out.newest.insert(out.newest.end(), newest.begin(), newest.end());
  }
  std::sort(out.newest.begin(), out.newest.end(), before);
  out.kept = out.newest;

  Statement& kept = database_->read_kept;
  const InUse kept_in_use(kept);
  int code = kept.step();
  for (; code == SQLITE_ROW; code = kept.step()) {
    const View replica = kept.blob(0);
    const View hash = kept.blob(2);
    const View signature = kept.blob(3);
    Head head;
    head.seq = static_cast<std::uint64_t>(kept.integer(1));
    if (replica.size() != 16 || hash.size() != head.hash.size() || signature.size() != head.signature.size()) {
      return wire::Fault("entry.store", "", "kept heads of 120 bytes");
    }
    std::copy(replica.begin(), replica.end(), head.replica.bytes.begin());
    std::copy(hash.begin(), hash.end(), head.hash.begin());
    std::copy(signature.begin(), signature.end(), head.signature.begin());
    out.kept.push_back(head);
  }
  if (code != SQLITE_DONE) {
    return database_->fail(code);
  }
  std::sort(out.kept.begin(), out.kept.end(), before);
  out.kept.erase(std::unique(out.kept.begin(), out.kept.end()), out.kept.end());

  Statement& meta = database_->read_meta;
  const InUse meta_in_use(meta);
  code = meta.step();
  for (; code == SQLITE_ROW; code = meta.step()) {
    const View name = meta.blob(0);
    const View value = meta.blob(1);
    out.meta[std::string(name.begin(), name.end())] = ledger::Bytes(value.begin(), value.end());
  }
  return code == SQLITE_DONE ? Result<ledger::Heads>(std::move(out)) : Result<ledger::Heads>(database_->fail(code));
}

}  // namespace limbledger::store
