// A prepared SQLite statement that is kept: bind, step, read columns, and it resets itself for the next use.
// Blobs are bound without a copy: they must live until the statement is stepped to its end.
#pragma once

#include "core/ledger/bytes.hpp"

#include <sqlite3.h>

#include <cstdint>
#include <string>

namespace limbledger::store {

// SQLite's result code, read as a fault: ledger.in_use, ledger.read_only, internal.memory or entry.store.
[[nodiscard]] wire::Fault sqlite_fault(int code);

class Statement {
 public:
  Statement() = default;
  Statement(const Statement&) = delete;
  Statement& operator=(const Statement&) = delete;
  ~Statement() { sqlite3_finalize(statement_); }

  [[nodiscard]] int prepare(sqlite3* database, const char* sql);

  Statement& bind(int at, std::int64_t value) {
    sqlite3_bind_int64(statement_, at, value);
    return *this;
  }
  Statement& bind(int at, ledger::View bytes) {
    // A null pointer would bind NULL where an empty blob is meant.
    static constexpr std::uint8_t none = 0;
    sqlite3_bind_blob64(statement_, at, bytes.empty() ? &none : bytes.data(), bytes.size(), SQLITE_STATIC);
    return *this;
  }
  Statement& bind_null(int at) {
    sqlite3_bind_null(statement_, at);
    return *this;
  }
  // SQLITE_ROW, or SQLITE_DONE or a failure; the last two reset.
  [[nodiscard]] int step() {
    const int code = sqlite3_step(statement_);
    if (code != SQLITE_ROW) {
      sqlite3_reset(statement_);
    }
    return code;
  }
  void reset() { sqlite3_reset(statement_); }

  [[nodiscard]] std::int64_t integer(int column) { return sqlite3_column_int64(statement_, column); }
  [[nodiscard]] ledger::View blob(int column) {
    const auto* data = static_cast<const std::uint8_t*>(sqlite3_column_blob(statement_, column));
    return {data, static_cast<std::size_t>(sqlite3_column_bytes(statement_, column))};
  }

 private:
  sqlite3_stmt* statement_ = nullptr;
};

// Resets on leaving, also half-way.
class InUse {
 public:
  explicit InUse(Statement& statement) : statement_(statement) {}
  InUse(const InUse&) = delete;
  InUse& operator=(const InUse&) = delete;
  ~InUse() { statement_.reset(); }

 private:
  Statement& statement_;
};

}  // namespace limbledger::store
