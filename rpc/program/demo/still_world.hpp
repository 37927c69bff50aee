// A world in which the same calls give the same answers: the clock on the wall stands at 2026-11-24T10:15:00Z, or where it was set, and what should be random
// is counted. For invented ledgers alone: nothing that comes of it is secret.
#pragma once

#include "core/ledger/world.hpp"

namespace limbledger::rpc {

class StillWorld final : public ledger::World {
 public:
  // `step_ms`: how far the clock that counts since the start goes on each time that it is read, so that a wait ends at last.
  explicit StillWorld(std::int64_t step_ms = 0) : step_ms_(step_ms) {}

  [[nodiscard]] ledger::Reading now() override {
    up_ms_ += step_ms_;
    return {wall_ms_, up_ms_, {1, 2, 3, 4, 5, 6, 7, 8}, ledger::ClockQuality::person};
  }
  void set_clock(std::int64_t wall_ms) { wall_ms_ = wall_ms; }
  // By the mixing step of a published generator (splitmix64), so that every id differs.
  void random(std::span<std::uint8_t> bytes) override {
    for (std::uint8_t& byte : bytes) {
      std::uint64_t mixed = (count_ += 0x9E3779B97F4A7C15U);
      mixed = (mixed ^ (mixed >> 30U)) * 0xBF58476D1CE4E5B9U;
      mixed = (mixed ^ (mixed >> 27U)) * 0x94D049BB133111EBU;
      byte = static_cast<std::uint8_t>(mixed >> 56U);
    }
  }

 private:
  std::int64_t step_ms_;
  std::int64_t wall_ms_ = 1795515300000;
  std::int64_t up_ms_ = 0;
  std::uint64_t count_ = 0;
};

}  // namespace limbledger::rpc
