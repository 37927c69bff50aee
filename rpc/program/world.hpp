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

 private:
  std::array<std::uint8_t, 8> boot_{};
  std::optional<std::int64_t> asked_up_ms_;  // when the kernel was last asked whether its clock is kept
  bool synchronised_ = false;
};

// 16 hexadecimal digits drawn now; names a failure in the log and in the reply, and says nothing else.
[[nodiscard]] std::string new_incident(ledger::World& world);

}  // namespace limbledger::rpc
