#include "core/store/statement.hpp"

namespace limbledger::store {

wire::Fault sqlite_fault(int code) {
  const auto fault = [code](std::string_view name, std::string expected) {
    return wire::Fault(name, "", std::move(expected), std::to_string(code));
  };
  switch (code & 0xff) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
    case SQLITE_PROTOCOL:
      return fault("ledger.in_use", "a ledger that no other program holds");
    case SQLITE_FULL:
    case SQLITE_READONLY:
    case SQLITE_PERM:
    case SQLITE_CANTOPEN:
      return fault("ledger.read_only", "room and permission to write");
    case SQLITE_NOMEM:
      return fault("internal.memory", "");
    case SQLITE_IOERR:
      if (code == SQLITE_IOERR_WRITE || code == SQLITE_IOERR_FSYNC || code == SQLITE_IOERR_DIR_FSYNC ||
          code == SQLITE_IOERR_TRUNCATE || code == SQLITE_IOERR_DELETE) {
        return fault("ledger.read_only", "a disk that takes what is written");
      }
      return fault("entry.store", "a disk that gives back what was written");
    default:
      return fault("entry.store", "a store whose file is whole");
  }
}

int Statement::prepare(sqlite3* database, const char* sql) {
  return sqlite3_prepare_v3(database, sql, -1, SQLITE_PREPARE_PERSISTENT, &statement_, nullptr);
}

}  // namespace limbledger::store
