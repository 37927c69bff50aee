// The calls of the disk store that are not on the path of a finding: dropping bodies and parking.
#include "core/store/sqlite_database.hpp"
#include "core/store/limits.hpp"

#include <set>

namespace limbledger::store {

using ledger::Row;
using ledger::RowState;
using ledger::View;

Result<std::vector<Row>> SqliteStore::Database::rows(const model::ReplicaId& replica, std::uint64_t from, std::uint64_t to,
                                                     std::size_t limit) {
  std::vector<Row> out;
  const auto found = find_chain(replica);
  if (!found || from > to) {
    return out;
  }
  constexpr auto most = static_cast<std::uint64_t>(newest_at) - 1;
  constexpr std::uint64_t room_max = 4096;  // a range may name more than there is
  out.reserve(static_cast<std::size_t>(std::min({to - from + 1, static_cast<std::uint64_t>(limit), room_max})));
  const InUse in_use(read_range);
  int code = read_range.bind(1, *found)
                 .bind(2, static_cast<std::int64_t>(std::min(from, most)))
                 .bind(3, static_cast<std::int64_t>(std::min(to, most)))
                 .bind(4, static_cast<std::int64_t>(std::min<std::uint64_t>(limit, INT64_MAX)))
                 .step();
  for (; code == SQLITE_ROW; code = read_range.step()) {
    auto row = read_row(read_range, 0, replica);
    if (!row) {
      return row.error();
    }
    out.push_back(std::move(*row));
  }
  return code == SQLITE_DONE ? Result<std::vector<Row>>(std::move(out)) : Result<std::vector<Row>>(fail(code));
}

Result<void> SqliteStore::drop_bodies(std::span<const model::EntryId> entries, RowState state) {
  ledger::require(state != RowState::whole);
  // Erasing is rare and must find every copy, so it walks all rows instead of keeping one more index.
  std::set<ledger::Bytes> wanted;
  for (const model::EntryId& entry : entries) {
    wanted.emplace(entry.bytes.begin(), entry.bytes.end());
  }
  std::vector<Row> found;
  for (const auto& [replica, chain] : database_->chains) {
    Statement walk;
    int code = walk.prepare(database_->handle, "SELECT seq, hash, state, header, body FROM entries WHERE chain=?1 AND state<>1");
    if (code == SQLITE_OK) {
      code = walk.bind(1, chain).step();
    }
    for (; code == SQLITE_ROW; code = walk.step()) {
      const View hash = walk.blob(1);
      if (hash.size() != 32 || !wanted.contains(ledger::Bytes(hash.begin(), hash.begin() + 16))) {
        continue;
      }
      auto row = read_row(walk, 0, replica);
      if (!row) {
        return row.error();
      }
      found.push_back(std::move(*row));
    }
    if (code != SQLITE_DONE) {
      return database_->fail(code);
    }
  }
  auto done = database_->transact([&]() -> Result<void> {
    for (const Row& row : found) {
      const ledger::Hash stub = ledger::body_hash(row);
      const int code = database_->fill_entry.bind(1, database_->chains.at(row.replica))
                           .bind(2, static_cast<std::int64_t>(row.seq))
                           .bind(3, View(row.hash))
                           .bind(4, std::int64_t{static_cast<std::uint8_t>(state)})
                           .bind(5, View(stub))
                           .step();
      if (code != SQLITE_DONE) {
        return database_->fail(code);
      }
    }
    return {};
  });
  // The log still holds the old pages. Best effort: flash keeps copies that no program reaches.
  return done && !found.empty() ? database_->run("PRAGMA wal_checkpoint(TRUNCATE)") : done;
}

Result<std::vector<Row>> SqliteStore::park(std::span<const Row> rows) {
  std::vector<Row> out;
  auto done = database_->transact([&]() -> Result<void> {
    if (rows.empty()) {
      Statement all;
      int code = all.prepare(database_->handle,
                             "SELECT replica, seq, hash, state, header, body FROM parked ORDER BY replica, seq, hash");
      if (code == SQLITE_OK) {
        code = all.step();
      }
      for (; code == SQLITE_ROW; code = all.step()) {
        model::ReplicaId replica;
        const View name = all.blob(0);
        std::copy_n(name.begin(), std::min(name.size(), replica.bytes.size()), replica.bytes.begin());
        auto row = read_row(all, 1, replica);
        if (!row) {
          return row.error();
        }
        out.push_back(std::move(*row));
      }
      return code == SQLITE_DONE ? database_->run("DELETE FROM parked") : Result<void>(database_->fail(code));
    }
    const auto held = database_->number("SELECT count(*) FROM parked");
    if (!held) {
      return held.error();
    }
    if (static_cast<std::uint64_t>(*held) + rows.size() > parked_count_max) {
      return parked_full();
    }
    Statement insert;
    int code = insert.prepare(database_->handle, "INSERT INTO parked VALUES(?1,?2,?3,?4,?5,?6) ON CONFLICT DO NOTHING");
    for (const Row& row : rows) {
      if (code != SQLITE_OK && code != SQLITE_DONE) {
        break;
      }
      code = insert.bind(1, View(row.replica.bytes))
                 .bind(2, static_cast<std::int64_t>(row.seq))
                 .bind(3, View(row.hash))
                 .bind(4, std::int64_t{static_cast<std::uint8_t>(row.state)})
                 .bind(5, View(row.header))
                 .bind(6, View(row.body))
                 .step();
    }
    return code == SQLITE_DONE ? Result<void>() : Result<void>(database_->fail(code));
  });
  if (!done) {
    return done.error();
  }
  return out;
}

}  // namespace limbledger::store
