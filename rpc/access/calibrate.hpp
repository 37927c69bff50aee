// How much work a passphrase costs on this machine: Argon2id, p = 1, so that one try takes half a second to a second,
// between 19 MiB with 2 passes and 256 MiB with 4. Source of the bounds: the plan of the ledger, repeated in
// core/ledger/keys/keyring.hpp. Times are milliseconds.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>

namespace limbledger::rpc {

struct ArgonCost {
  std::uint32_t passes = 3;
  std::uint32_t kib = 64 * 1024;
  friend bool operator==(const ArgonCost&, const ArgonCost&) = default;
};

inline constexpr std::int64_t unlock_ms_min = 500;
inline constexpr std::int64_t unlock_ms_max = 1000;

// What one try takes; absent where memory does not suffice.
using MeasureCost = std::function<std::optional<std::int64_t>(const ArgonCost&)>;

// From the default upwards while it is too quick, downwards while it is too slow; stays within the bounds.
[[nodiscard]] ArgonCost calibrate(const MeasureCost& measure);
// On this machine, now.
[[nodiscard]] std::optional<std::int64_t> measure_cost(const ArgonCost& cost);

}  // namespace limbledger::rpc
