#include "core/store/sqlite_database.hpp"

namespace limbledger::store {

namespace {

// With NORMAL, SQLite flushes the log before a checkpoint and when it begins anew. What FULL adds, a flush of the log after every
// commit, is done by `flush`, so that it can be put off a little.
const char* flush_word(Flush flush) { return flush == Flush::off ? "OFF" : "NORMAL"; }

template <std::size_t Size>
bool copy_exact(ledger::View from, std::array<std::uint8_t, Size>& to) {
  if (from.size() != Size) {
    return false;
  }
  std::copy(from.begin(), from.end(), to.begin());
  return true;
}

std::string hex(ledger::View bytes) {
  constexpr std::string_view digits = "0123456789abcdef";
  std::string out;
  for (const std::uint8_t byte : bytes) {
    out += digits[byte >> 4];
    out += digits[byte & 15];
  }
  return out;
}

wire::Fault damaged(std::string expected) { return wire::Fault("entry.store", "", std::move(expected)); }

}  // namespace

Result<ledger::Row> read_row(Statement& statement, int from, const model::ReplicaId& replica) {
  ledger::Row row;
  row.replica = replica;
  row.seq = static_cast<std::uint64_t>(statement.integer(from));
  const std::int64_t state = statement.integer(from + 2);
  const bool whole = copy_exact(statement.blob(from + 1), row.hash) && copy_exact(statement.blob(from + 3), row.header);
  if (!whole || state < 0 || state > 3) {
    return ledger::entry_fault("entry.store", replica, row.seq, row.hash, "a whole row");
  }
  row.state = static_cast<ledger::RowState>(state);
  const ledger::View body = statement.blob(from + 4);
  row.body.assign(body.begin(), body.end());
  return row;
}

SqliteStore::Database::~Database() {
  // Statements are members and would be finalised after the connection: close_v2 waits for them.
  sqlite3_close_v2(handle);
}

wire::Fault SqliteStore::Database::fail(int code) {
  const int extended = handle != nullptr ? sqlite3_extended_errcode(handle) : code;
  const int best = (extended & 0xff) == (code & 0xff) ? extended : code;
  // A refused write (a quota, a limit on the size of files) was rolled back whole and may be tried again. After a failed
  // flush nobody knows what is on the disk, and a later flush may say yes without having written it.
  failed_ = failed_ || ((best & 0xff) == SQLITE_IOERR && best != SQLITE_IOERR_WRITE);
  return sqlite_fault(best);
}

Result<void> SqliteStore::Database::run(const std::string& sql) {
  const int code = sqlite3_exec(handle, sql.c_str(), nullptr, nullptr, nullptr);
  return code == SQLITE_OK ? Result<void>() : Result<void>(fail(code));
}

Result<std::int64_t> SqliteStore::Database::number(const std::string& sql) {
  Statement statement;
  int code = statement.prepare(handle, sql.c_str());
  if (code == SQLITE_OK) {
    code = statement.step();
  }
  if (code != SQLITE_ROW) {
    return code == SQLITE_DONE ? damaged("an answer from the store") : fail(code);
  }
  return statement.integer(0);
}

Result<std::string> SqliteStore::Database::words(const std::string& sql) {
  Statement statement;
  int code = statement.prepare(handle, sql.c_str());
  if (code == SQLITE_OK) {
    code = statement.step();
  }
  if (code != SQLITE_ROW) {
    return code == SQLITE_DONE ? damaged("an answer from the store") : fail(code);
  }
  const ledger::View text = statement.blob(0);
  return std::string(text.begin(), text.end());
}

Result<void> SqliteStore::Database::open(const std::string& path, const SqliteOptions& options) {
  const bool create = options.clinic.has_value() && !options.read_only && !options.frozen;
  const int code = options.frozen ? open_frozen(path)
                                  : sqlite3_open_v2(path.c_str(), &handle,
                                                    SQLITE_OPEN_READWRITE | SQLITE_OPEN_NOMUTEX | (create ? SQLITE_OPEN_CREATE : 0),
                                                    options.vfs.empty() ? nullptr : options.vfs.c_str());
  if (code != SQLITE_OK) {
    if (!create && (code & 0xff) == SQLITE_CANTOPEN) {
      return wire::Fault("ledger.none", "");
    }
    return fail(code);
  }
  if (!options.read_only && !options.frozen && sqlite3_db_readonly(handle, "main") != 0) {
    return wire::Fault("ledger.read_only", "", "a file that may be written");
  }
  if (!create && is_empty()) {
    return wire::Fault("ledger.missing", "", "a file with entries");
  }
  for (const auto& step : {&Database::configure, &Database::check_layout}) {
    if (auto done = (this->*step)(options); !done) {
      return done;
    }
  }
  if (auto done = prepare(); !done) {
    return done;
  }
  if (auto done = load(); !done) {
    return done;
  }
  if (options.clinic && *options.clinic != clinic) {
    return damaged("the ledger of this clinic");
  }
  flushes_ = options.flush == Flush::full && !options.read_only && !options.frozen;
  begin_writing_ = options.begin_writing;
  if (options.alone && flushes_) {
    if (auto settled = settle_log(); !settled) {
      return settled;
    }
    return reserve_log(options.checkpoint_pages);
  }
  return {};
}

sqlite3_file* SqliteStore::Database::log_file() {
  sqlite3_file* log = nullptr;
  const int code = sqlite3_file_control(handle, "main", SQLITE_FCNTL_JOURNAL_POINTER, &log);
  return code == SQLITE_OK && log != nullptr && log->pMethods != nullptr ? log : nullptr;
}

// What a log left behind is read from memory that a failed flush may have marked as written: it is written again, into the
// file itself, and waited for, before anything of it counts as kept.
Result<void> SqliteStore::Database::settle_log() {
  const auto busy = number("PRAGMA wal_checkpoint(TRUNCATE)");
  if (!busy) {
    return busy.error();
  }
  return *busy == 0 ? Result<void>() : Result<void>(fail(SQLITE_IOERR_FSYNC));
}

// A log that need not grow is flushed without its file's size as well, which costs another write of the disk a commit. What
// stands behind the last frame is no frame to SQLite, so zeros may. Only for speed: a disk without room goes on growing.
Result<void> SqliteStore::Database::reserve_log(int pages) {
  sqlite3_file* log = log_file();
  if (log == nullptr) {
    return {};
  }
  constexpr sqlite3_int64 frame_bytes = 4096 + 24;
  const sqlite3_int64 wanted = 32 + frame_bytes * (pages + 16);
  sqlite3_int64 size = 0;
  if (log->pMethods->xFileSize(log, &size) != SQLITE_OK) {
    return {};
  }
  const std::vector<std::uint8_t> zeros(1U << 16U);
  for (const sqlite3_int64 start = size; size < wanted;) {
    const int piece = static_cast<int>(std::min<sqlite3_int64>(wanted - size, static_cast<sqlite3_int64>(zeros.size())));
    if (log->pMethods->xWrite(log, zeros.data(), piece, size) != SQLITE_OK) {
      static_cast<void>(log->pMethods->xTruncate(log, start));
      return {};
    }
    size += piece;
  }
  // A disk that says no here would also say it of a finding.
  const int code = log->pMethods->xSync(log, SQLITE_SYNC_FULL);
  return code == SQLITE_OK ? Result<void>() : Result<void>(fail(code));
}

// Without a log beside the file, it is all there is. With one, its commits are read where they are: SQLite then wants a
// lock and a shared index, of which a medium that takes no write has neither, and gets the one that asks for no lock and
// keeps the index in process memory.
int SqliteStore::Database::open_frozen(const std::string& path) {
  sqlite3_vfs* files = sqlite3_vfs_find(nullptr);
  int has_log = 0;
  if (files == nullptr || files->xAccess(files, (path + "-wal").c_str(), SQLITE_ACCESS_EXISTS, &has_log) != SQLITE_OK) {
    return SQLITE_CANTOPEN;
  }
  constexpr int flags = SQLITE_OPEN_READONLY | SQLITE_OPEN_NOMUTEX;
  if (has_log != 0) {
    return sqlite3_open_v2(path.c_str(), &handle, flags, "unix-none");
  }
  constexpr std::string_view plain = "/-._~";
  std::string uri = "file:";
  for (const char c : path) {
    const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    const auto byte = static_cast<std::uint8_t>(c);
    uri += letter || plain.find(c) != std::string_view::npos ? std::string(1, c) : "%" + hex({&byte, 1});
  }
  return sqlite3_open_v2((uri + "?immutable=1").c_str(), &handle, flags | SQLITE_OPEN_URI, nullptr);
}

// Looked at before anything is read: SQLite takes away the log that lies beside an empty file.
bool SqliteStore::Database::is_empty() {
  sqlite3_file* file = nullptr;
  sqlite3_int64 size = -1;
  return sqlite3_file_control(handle, "main", SQLITE_FCNTL_FILE_POINTER, &file) == SQLITE_OK && file != nullptr &&
         file->pMethods != nullptr && file->pMethods->xFileSize(file, &size) == SQLITE_OK && size == 0;
}

Result<void> SqliteStore::Database::configure(const SqliteOptions& options) {
  sqlite3_extended_result_codes(handle, 1);
  sqlite3_busy_timeout(handle, options.busy_ms);
  sqlite3_db_config(handle, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
  sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
  sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_VIEW, 0, nullptr);
  std::string sql;
  if (options.frozen || (options.alone && !options.read_only)) {
    // Before anything reads the file: the log's index then stays in process memory, and the lock is held to the end.
    sql = "PRAGMA locking_mode=EXCLUSIVE;";
  }
  sql +=
      "PRAGMA trusted_schema=OFF; PRAGMA cell_size_check=ON; PRAGMA temp_store=MEMORY; PRAGMA mmap_size=0;"
      "PRAGMA cache_size=-16000; PRAGMA page_size=4096; PRAGMA secure_delete=ON;";
  sql += std::string("PRAGMA synchronous=") + flush_word(options.flush) + ";";
  if (options.read_only || options.frozen) {
    sqlite3_db_config(handle, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    return run(sql + "PRAGMA wal_autocheckpoint=0; PRAGMA query_only=ON;");
  }
  if (auto done = run(sql); !done) {
    return done;
  }
  const auto mode = words("PRAGMA journal_mode=WAL");
  if (!mode) {
    return mode.error();
  }
  if (*mode != "wal") {
    return wire::Fault("ledger.read_only", "", "a file system that can hold a write-ahead log");
  }
  checkpoint_pages_ = options.checkpoint_pages;
  static_cast<void>(sqlite3_wal_hook(  // instead of SQLite's own, which passes over what its checkpoint could not flush
      handle, [](void* log_pages, sqlite3*, const char*, int pages) { *static_cast<int*>(log_pages) = pages; return SQLITE_OK; }, &log_pages_));
  return options.page_count_max > 0 ? run("PRAGMA max_page_count=" + std::to_string(options.page_count_max)) : Result<void>();
}

Result<void> SqliteStore::Database::check_layout(const SqliteOptions& options) {
  const auto application = number("PRAGMA application_id");
  const auto version = number("PRAGMA user_version");
  const auto tables = number("SELECT count(*) FROM sqlite_schema");
  for (const auto* read : {&application, &version, &tables}) {
    if (!*read) {
      return read->error();
    }
  }
  if (*application == 0 && *version == 0 && *tables == 0) {
    if (!options.clinic || options.read_only || options.frozen) {
      return wire::Fault("ledger.none", "");
    }
    return make_file(*options.clinic);
  }
  if (*application != application_id) {
    return damaged("a ledger's file");
  }
  if (*version < 1 || *version > layout_version) {
    return wire::Fault("format.newer", "", "layout " + std::to_string(layout_version), std::to_string(*version));
  }
  layout_ = static_cast<int>(*version);
  if (layout_ < layout_version && !options.read_only && !options.frozen) {
    bring_up_to_date();
  }
  return {};
}

// One transaction: a power cut leaves a ledger or an empty file.
Result<void> SqliteStore::Database::make_file(const model::ClinicId& of) {
  auto made = run(std::string("BEGIN IMMEDIATE;") + layout_sql + runs_sql + "PRAGMA application_id=" + std::to_string(application_id) +
                  ";PRAGMA user_version=" + std::to_string(layout_version) + ";INSERT INTO small VALUES(0, x'', x'" + hex(of.bytes) + "');COMMIT");
  if (!made) {
    roll_back();
  }
  return made;
}

Result<void> SqliteStore::Database::prepare() {
  const auto make = [this](Statement& statement, const char* sql) { return statement.prepare(handle, sql); };
  int code = make(begin_, "BEGIN IMMEDIATE");
  const auto also = [&](Statement& statement, const char* sql) {
    if (code == SQLITE_OK) {
      code = make(statement, sql);
    }
  };
  also(commit_, "COMMIT");
  also(insert_entry, "INSERT INTO entries VALUES(?1,?2,?3,?4,?5,?6) ON CONFLICT DO NOTHING");
  also(fill_entry, "UPDATE entries SET state=?4, body=?5 WHERE chain=?1 AND seq=?2 AND hash=?3");
  also(read_range, "SELECT seq, hash, state, header, body FROM entries WHERE chain=?1 AND seq BETWEEN ?2 AND ?3 "
                   "ORDER BY seq, hash LIMIT ?4");
  if (has_runs()) {
    also(read_kid, "SELECT c.replica, e.seq, e.hash, e.state, e.header, e.body FROM runs r CROSS JOIN chains c ON c.chain=r.chain "
                   "CROSS JOIN entries e ON e.chain=r.chain AND e.seq BETWEEN r.first AND ifnull(r.last, 9223372036854775807) "
                   "WHERE r.kid=?1 AND substr(e.header, 17)=?1");
    also(open_run_, "INSERT INTO runs VALUES(?1,?2,?3,?4) ON CONFLICT DO NOTHING");
    also(close_run_, "UPDATE runs SET last=?4 WHERE kid=?1 AND chain=?2 AND first=?3");
    also(read_open_run_, "SELECT kid, first FROM runs WHERE chain=?1 AND last IS NULL AND kid=(SELECT substr(header, 17) FROM entries "
                         "WHERE chain=?1 AND seq < 9223372036854775807 AND substr(header, 17) <> zeroblob(16) ORDER BY seq DESC LIMIT 1) ORDER BY first DESC");
  } else {
    also(read_kid, "SELECT c.replica, e.seq, e.hash, e.state, e.header, e.body FROM entries e JOIN chains c ON c.chain=e.chain "
                   "WHERE substr(e.header, 17)=?1 AND substr(e.header, 17) <> x'00000000000000000000000000000000'");
  }
  also(put_small, "INSERT INTO small VALUES(?1,?2,?3) ON CONFLICT DO UPDATE SET value=excluded.value");
  also(put_newest, has_newest_behind_entries() ? "INSERT INTO entries VALUES(?1, 9223372036854775807, ?3, 0, x'', ?4) ON CONFLICT DO UPDATE SET body=excluded.body"
                                               : "INSERT INTO small VALUES(1, CAST(?2 || ?3 AS BLOB), ?4) ON CONFLICT DO UPDATE SET value=excluded.value");
  also(drop_small, "DELETE FROM small WHERE part=?1 AND name=?2");
  also(read_clinic_, "SELECT value FROM small WHERE part=0");
  also(read_chains_, "SELECT chain, replica FROM chains WHERE clinic=?1");
  also(read_newest_, has_newest_behind_entries()
                         ? "SELECT c.replica, e.hash, e.body FROM chains c CROSS JOIN entries e ON e.chain=c.chain AND e.seq=9223372036854775807 "
                           "WHERE c.clinic=?1 ORDER BY c.replica, e.hash"
                         : "SELECT substr(name, 1, 16), substr(name, 17), value FROM small WHERE part=1 AND ?1 IS NOT NULL ORDER BY name");
  also(read_end_, "SELECT max(seq) FROM entries WHERE chain=?1 AND seq < 9223372036854775807");
  also(read_kept, "SELECT c.replica, k.seq, k.hash, k.signature FROM kept_heads k JOIN chains c ON c.chain=k.chain");
  also(read_meta, "SELECT name, value FROM small WHERE part=2");
  also(put_kept, "INSERT INTO kept_heads VALUES(?1,?2,?3,?4) ON CONFLICT DO UPDATE SET signature=excluded.signature");
  return code == SQLITE_OK ? Result<void>() : Result<void>(fail(code));
}

// This waits for the disk: what is put off does not wait for that either, until the log is very long.
Result<void> SqliteStore::Database::shorten_log(bool brings_entries) {
  if (log_pages_ < checkpoint_pages_ * (brings_entries && !unflushed_ ? 1 : 4)) {
    return {};
  }
  log_pages_ = 0;
  const int code = sqlite3_wal_checkpoint_v2(handle, nullptr, SQLITE_CHECKPOINT_PASSIVE, nullptr, nullptr);
  if (code != SQLITE_OK) {
    auto fault = fail(code);
    if (failed_) {
      return fault;
    }
  }
  return {};
}

Result<void> SqliteStore::Database::begin() {
  if (failed_) {
    return wire::Fault("ledger.read_only", "", "the ledger opened again after its disk failed");
  }
  const int code = begin_.step();
  return code == SQLITE_DONE ? Result<void>() : Result<void>(fail(code));
}

Result<void> SqliteStore::Database::commit() {
  const int code = commit_.step();
  if (code != SQLITE_DONE) {
    return fail(code);
  }
  unflushed_ = flushes_;
  if (put_off_) {
    if (flushes_ && begin_writing_) {
      begin_writing_();
    }
    return {};
  }
  return flush();
}

Result<void> SqliteStore::Database::flush() {
  put_off_ = false;
  if (!unflushed_) {
    return {};
  }
  if (failed_) {
    return wire::Fault("ledger.read_only", "", "the ledger opened again after its disk failed");
  }
  sqlite3_file* log = log_file();
  const int code = log == nullptr ? SQLITE_IOERR_FSYNC : log->pMethods->xSync(log, SQLITE_SYNC_NORMAL);
  if (code != SQLITE_OK) {
    failed_ = true;
    return sqlite_fault(code);
  }
  unflushed_ = false;
  put_off_chains_.clear();
  return {};
}

void SqliteStore::Database::note_put_off(const model::ReplicaId& replica) {
  if (unflushed_) {
    put_off_chains_.insert(replica);
  }
}

void SqliteStore::Database::roll_back() {
  if (sqlite3_get_autocommit(handle) == 0) {
    sqlite3_exec(handle, "ROLLBACK", nullptr, nullptr, nullptr);
  }
}

std::optional<std::int64_t> SqliteStore::Database::find_chain(const model::ReplicaId& replica) const {
  const auto found = chains.find(replica);
  return found == chains.end() ? std::nullopt : std::optional(found->second);
}

Result<std::int64_t> SqliteStore::Database::chain(const model::ReplicaId& replica) {
  if (const auto known = find_chain(replica)) {
    return *known;
  }
  Statement insert;
  int code = insert.prepare(handle, "INSERT INTO chains(clinic, replica) VALUES(?1,?2)");
  if (code == SQLITE_OK) {
    code = insert.bind(1, ledger::View(clinic.bytes)).bind(2, ledger::View(replica.bytes)).step();
  }
  if (code != SQLITE_DONE) {
    return fail(code);
  }
  return chains[replica] = sqlite3_last_insert_rowid(handle);
}

Result<void> SqliteStore::Database::load() {
  chains.clear();
  ends.clear();
  newest.clear();
  const InUse clinics(read_clinic_);
  int code = read_clinic_.step();
  if (code != SQLITE_ROW || !copy_exact(read_clinic_.blob(0), clinic.bytes)) {
    return code == SQLITE_ROW || code == SQLITE_DONE ? damaged("the clinic's name") : fail(code);
  }
  const InUse known(read_chains_);
  code = read_chains_.bind(1, ledger::View(clinic.bytes)).step();
  for (; code == SQLITE_ROW; code = read_chains_.step()) {
    model::ReplicaId replica;
    if (!copy_exact(read_chains_.blob(1), replica.bytes)) {
      return damaged("the names of replicas");
    }
    chains[replica] = read_chains_.integer(0);
  }
  if (code != SQLITE_DONE) {
    return fail(code);
  }
  const InUse leaves(read_newest_);
  code = read_newest_.bind(1, ledger::View(clinic.bytes)).step();
  for (; code == SQLITE_ROW; code = read_newest_.step()) {
    const ledger::View replica = read_newest_.blob(0);
    const ledger::View value = read_newest_.blob(2);
    if (replica.size() != 16 || read_newest_.blob(1).size() != 1 || value.size() != 104) {
      return damaged("newest heads of 104 bytes");
    }
    ledger::ByteReader in(value);
    ledger::Head head;
    std::copy(replica.begin(), replica.end(), head.replica.bytes.begin());
    head.seq = in.u64();
    head.hash = in.array<32>();
    head.signature = in.array<64>();
    newest[head.replica].push_back(head);
  }
  return code == SQLITE_DONE ? Result<void>() : Result<void>(fail(code));
}

}  // namespace limbledger::store
