// Which entries of the disk store lie under one key: runs, kept where a chain goes from one key to another.
#include "core/store/layout.hpp"
#include "core/store/sqlite_database.hpp"

#include <algorithm>

namespace limbledger::store {

using ledger::View;

// All of it or nothing. Where there is no room for it, or the file is damaged, it is read and written on as it was.
void SqliteStore::Database::bring_up_to_date() {
  const std::string runs = has_runs() ? "" : std::string(runs_sql) + runs_from_entries_sql + drop_index_sql;
  if (run("BEGIN IMMEDIATE;" + runs + newest_from_small_sql + "PRAGMA user_version=" + std::to_string(layout_version) + ";COMMIT").has_value()) {
    layout_ = layout_version;
  } else {
    roll_back();
  }
}

Result<void> SqliteStore::Database::find_end(std::int64_t chain) {
  if (!has_runs() || ends.contains(chain)) {
    return {};
  }
  ChainEnd end;
  const InUse last(read_end_);
  int code = read_end_.bind(1, chain).step();
  if (code != SQLITE_ROW) {
    return fail(code);
  }
  end.seq = static_cast<std::uint64_t>(read_end_.integer(0));
  const InUse open_run(read_open_run_);
  code = read_open_run_.bind(1, chain).step();
  if (code == SQLITE_ROW && read_open_run_.blob(0).size() == 16) {
    std::copy_n(read_open_run_.blob(0).begin(), 16, end.kid.emplace().bytes.begin());
    end.first = static_cast<std::uint64_t>(read_open_run_.integer(1));
  }
  ends[chain] = end;
  return code == SQLITE_ROW || code == SQLITE_DONE ? Result<void>() : Result<void>(fail(code));
}

Result<void> SqliteStore::Database::list_under_key(const ledger::Row& row, std::int64_t chain) {
  model::KeyId kid;
  std::copy_n(row.header.begin() + 16, 16, kid.bytes.begin());
  if (!has_runs()) {
    return {};
  }
  ChainEnd& end = ends.at(chain);
  const bool goes_on = kid == model::KeyId{} || (end.kid == kid && row.seq >= end.first);
  const bool at_end = row.seq > end.seq;
  int code = SQLITE_DONE;
  if (!goes_on) {
    if (at_end && end.kid) {
      code = close_run_.bind(1, View(end.kid->bytes)).bind(2, chain).bind(3, static_cast<std::int64_t>(end.first)).bind(4, static_cast<std::int64_t>(end.seq)).step();
    }
    if (code == SQLITE_DONE) {
      // A branch that comes later lies beside what goes on at the end.
      const auto at = static_cast<std::int64_t>(row.seq);
      open_run_.bind(1, View(kid.bytes)).bind(2, chain).bind(3, at);
      code = (at_end ? open_run_.bind_null(4) : open_run_.bind(4, at)).step();
    }
    if (at_end) {
      end.kid = kid;
      end.first = row.seq;
    }
  }
  end.seq = std::max(end.seq, row.seq);
  return code == SQLITE_DONE ? Result<void>() : Result<void>(fail(code));
}

Result<std::uint64_t> SqliteStore::Database::left_out_of_runs() {
  if (!has_runs()) {
    return std::uint64_t{0};
  }
  const auto left_out = number("SELECT count(*) FROM entries e WHERE e.seq < 9223372036854775807 AND substr(e.header, 17) <> zeroblob(16) AND NOT EXISTS (SELECT 1 FROM runs r "
                               "WHERE r.kid=substr(e.header, 17) AND r.chain=e.chain AND e.seq BETWEEN r.first AND ifnull(r.last, e.seq))");
  return left_out ? Result<std::uint64_t>(static_cast<std::uint64_t>(*left_out)) : Result<std::uint64_t>(left_out.error());
}

Result<void> SqliteStore::Database::make_runs_anew() {
  auto done = transact([&] { return run(std::string("DELETE FROM runs;") + runs_from_entries_sql); });
  ends.clear();
  return done;
}

// SQLite says of its own pages whether they agree, and the runs are held against the entries. Of a table whose pages do not agree nothing
// is counted, and it is left as it is.
Result<std::vector<ledger::ListDamage>> SqliteStore::check_lists(bool mend) {
  struct Table {
    const char* name;
    const char* list;
  };
  constexpr Table tables[] = {{"runs", "entries_by_key"}, {"entries", "entries"}, {"chains", "chains"}, {"small", "heads"}, {"kept_heads", "heads"}, {"parked", "parked"}};
  std::vector<ledger::ListDamage> out;
  const auto note = [&](const char* list) {
    if (std::none_of(out.begin(), out.end(), [&](const ledger::ListDamage& one) { return one.list == list; })) {
      out.push_back({list, 0, false});
    }
  };
  const auto whole = database_->words("PRAGMA integrity_check(1)");
  if (!whole || *whole != "ok") {
    for (const Table& table : tables) {
      const auto said = database_->words(std::string("PRAGMA integrity_check(") + table.name + ")");
      if (!said || *said != "ok") {
        note(table.list);
      }
    }
    if (out.empty()) {
      note("pages");
    }
    return out;
  }
  const auto left_out = database_->left_out_of_runs();
  if (!left_out) {
    return left_out.error();
  }
  if (*left_out != 0) {
    const bool mended = mend && database_->make_runs_anew().has_value();
    out.push_back({"entries_by_key", *left_out, mended});
  }
  return out;
}

}  // namespace limbledger::store
