// The real clock and randomness, for the ledger: milliseconds since 1970 as this machine claims them, and since it was
// switched on. A clock that stands before the program's release cannot be right and is said to be unset.
#pragma once

#include "core/ledger/world.hpp"

#include <optional>
#include <string>

namespace limbledger::rpc {

class MachineWorld final : public ledger::World {
 public:
  MachineWorld();

  [[nodiscard]] ledger::Reading now() override;
  void random(std::span<std::uint8_t> bytes) override;
  // From now on the clock is claimed to have stood at this moment when it was set, and goes on; for a demonstration that plays trouble.
  void set_clock(std::int64_t wall_ms);

 private:
  std::array<std::uint8_t, 8> boot_{};
  std::int64_t beside_ms_ = 0;               // how far the clock was set beside the machine's
  std::optional<std::int64_t> asked_up_ms_;  // when the kernel was last asked whether its clock is kept
  bool synchronised_ = false;
};

// 16 hexadecimal digits drawn now; names a failure in the log and in the reply, and says nothing else.
[[nodiscard]] std::string new_incident(ledger::World& world);

}  // namespace limbledger::rpc
