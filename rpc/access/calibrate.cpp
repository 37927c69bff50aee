#include "rpc/access/calibrate.hpp"

#include "core/service/desk.hpp"

#include <time.h>

#include <array>

namespace limbledger::rpc {

namespace {

// Each is at most twice the work of the one before, so that no machine steps over the half second that is wanted.
constexpr std::array ladder{
    ArgonCost{2, 19 * 1024},  ArgonCost{2, 32 * 1024},  ArgonCost{2, 48 * 1024},  ArgonCost{3, 48 * 1024},  ArgonCost{3, 64 * 1024},  ArgonCost{3, 96 * 1024},
    ArgonCost{3, 128 * 1024}, ArgonCost{3, 192 * 1024}, ArgonCost{3, 256 * 1024}, ArgonCost{4, 256 * 1024},
};
constexpr std::size_t start = 4;
static_assert(ladder[start] == ArgonCost{});

[[nodiscard]] std::int64_t monotonic_ms() {
  timespec time{};
  ::clock_gettime(CLOCK_MONOTONIC, &time);
  return static_cast<std::int64_t>(time.tv_sec) * 1000 + time.tv_nsec / 1'000'000;
}

}  // namespace

ArgonCost calibrate(const MeasureCost& measure) {
  std::size_t at = start;
  auto took = measure(ladder[at]);
  if (took && *took < unlock_ms_min) {
    while (took && *took < unlock_ms_min && at + 1 < ladder.size()) {
      took = measure(ladder[at + 1]);
      if (!took || *took > unlock_ms_max) {
        break;  // a step too far: too quick is better than waiting at every unlocking
      }
      ++at;
    }
    return ladder[at];
  }
  while ((!took || *took > unlock_ms_max) && at > 0) {
    took = measure(ladder[--at]);
  }
  return ladder[at];
}

std::optional<std::int64_t> measure_cost(const ArgonCost& cost) {
  const std::int64_t before = monotonic_ms();
  return service::spend_passphrase(cost.passes, cost.kib) ? std::optional(monotonic_ms() - before) : std::nullopt;
}

}  // namespace limbledger::rpc
