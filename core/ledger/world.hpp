// What the ledger asks of the world: the time and randomness. Both are passed in, so that a test, a simulation and
// WebAssembly run the same code. Times are milliseconds since 1970 as claimed by the device (UTC).
#pragma once

#include <array>
#include <cstdint>
#include <span>

namespace limbledger::ledger {

enum class ClockQuality : std::uint8_t { unset, suspect, person, network };

struct Reading {
  std::int64_t wall_ms = 0;            // as claimed
  std::int64_t up_ms = 0;              // monotonic since start
  std::array<std::uint8_t, 8> boot{};  // drawn once a start
  ClockQuality clock = ClockQuality::person;
};

class World {
 public:
  World() = default;
  World(const World&) = delete;
  World& operator=(const World&) = delete;
  virtual ~World() = default;

  [[nodiscard]] virtual Reading now() = 0;
  virtual void random(std::span<std::uint8_t> bytes) = 0;
};

}  // namespace limbledger::ledger
