// A ledger opened by the program: its folder's lock, the store, and the desk on it. Closing goes the other way round, so
// that secrets are wiped and the log is checkpointed before the lock is let go.
#pragma once

#include "core/service/desk.hpp"
#include "core/store/sqlite.hpp"
#include "rpc/program/folder.hpp"
#include "rpc/program/lock_file.hpp"
#include "rpc/program/world.hpp"

#include <memory>
#include <optional>
#include <string>

namespace limbledger::rpc {

class OpenedLedger {
 public:
  // Throws Problem: no ledger there, in use, damaged, the disk.
  // `instead`: what can be done where another program has it.
  explicit OpenedLedger(const std::string& path, const std::string& instead = {});

  [[nodiscard]] const Folder& folder() const { return folder_; }
  [[nodiscard]] service::Desk& desk() { return *desk_; }
  // Whether nothing can be written where the ledger lies: it is read as it is.
  [[nodiscard]] bool read_only() const { return read_only_; }
  [[nodiscard]] MachineWorld& world() { return world_; }

  // With the passphrase from the descriptor, or the one kept beside a demonstration ledger. False when there is neither,
  // or when the one kept does not open: `why_locked` then says so. Throws Problem when the one given does not open.
  bool unlock_if_told(std::optional<int> passphrase_fd);
  [[nodiscard]] const std::string& why_locked() const { return why_locked_; }

 private:
  Folder folder_;
  LockFile lock_;
  bool read_only_ = false;
  MachineWorld world_;
  std::unique_ptr<store::SqliteStore> store_;
  std::unique_ptr<service::Desk> desk_;
  std::string why_locked_;
};

}  // namespace limbledger::rpc
