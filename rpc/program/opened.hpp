// A ledger opened by the program: its folder's lock, the store, and the desk on it. Closing goes the other way round, so
// that secrets are wiped and the log is checkpointed before the lock is let go.
#pragma once

#include "core/service/desk.hpp"
#include "core/store/sqlite.hpp"
#include "rpc/program/demo/still_world.hpp"
#include "rpc/program/demo/trouble.hpp"
#include "rpc/program/folder.hpp"
#include "rpc/program/lock_file.hpp"
#include "rpc/program/world.hpp"

#include <memory>
#include <optional>
#include <string>

namespace limbledger::rpc {

// A demonstration that lives in memory: invented people, a clock that stands, counted ids; gone when the program ends.
struct InMemory {};
// What a demonstration in memory is unlocked with; there is nothing to guess.
inline constexpr std::string_view shown_examiner = "Amina Invented";
inline constexpr std::string_view shown_passphrase = "four invented words here";

class OpenedLedger {
 public:
  // Throws Problem: no ledger there, in use, damaged, the disk.
  // `instead`: what can be done where another program has it.
  explicit OpenedLedger(const std::string& path, const std::string& instead = {});
  // Its folder is a new one that holds no ledger, only what names the addresses, and goes with it.
  explicit OpenedLedger(InMemory how);
  ~OpenedLedger();
  OpenedLedger(const OpenedLedger&) = delete;
  OpenedLedger& operator=(const OpenedLedger&) = delete;

  [[nodiscard]] const Folder& folder() const { return folder_; }
  [[nodiscard]] service::Desk& desk() { return *desk_; }
  // Whether nothing can be written where the ledger lies: it is read as it is.
  [[nodiscard]] bool read_only() const { return read_only_; }
  [[nodiscard]] MachineWorld& world() { return world_; }
  // For a demonstration that plays a clock that was set wrong.
  void set_clock(std::int64_t wall_ms) {
    world_.set_clock(wall_ms);
    still_world_.set_clock(wall_ms);
  }

  // With the passphrase from the descriptor, or the one kept beside a demonstration ledger. False when there is neither,
  // or when the one kept does not open: `why_locked` then says so. Throws Problem when the one given does not open.
  bool unlock_if_told(std::optional<int> passphrase_fd);
  [[nodiscard]] const std::string& why_locked() const { return why_locked_; }
  // The store that the desk writes to, for a demonstration that plays a full disk.
  [[nodiscard]] GatedStore& gate() { return *gate_; }
  // The printed code of one in memory; else empty.
  [[nodiscard]] const std::string& shown_code() const { return shown_code_; }

 private:
  Folder folder_;
  LockFile lock_;
  bool read_only_ = false;
  MachineWorld world_;
  StillWorld still_world_{250};  // four readings a second
  std::unique_ptr<ledger::LogStore> store_;
  std::unique_ptr<GatedStore> gate_;
  std::unique_ptr<service::Desk> desk_;
  std::string why_locked_;
  std::string shown_code_;
};

}  // namespace limbledger::rpc
