// The hybrid clock: milliseconds since 1970 and a counter, so that what was written later is shown later, whatever the
// wall clocks say. It orders the display and decides nothing else. Rules of sending and receiving: Kulkarni, Demirbas
// and others, "Logical Physical Clocks", 2014. The wall clock is claimed by the device and may be wrong by years.
#pragma once

#include "core/ledger/world.hpp"

#include <compare>
#include <cstdint>

namespace limbledger::ledger {

struct Stamp {
  std::int64_t ms = 0;        // 48 bits are stored
  std::uint16_t counter = 0;  // of events in one millisecond
  friend auto operator<=>(const Stamp&, const Stamp&) = default;
};

constexpr std::int64_t stamp_ms_max = (std::int64_t{1} << 48) - 1;

class HybridClock {
 public:
  // `release_ms`: no entry can be older than the program that writes it. `last`: the stamp of the newest own entry.
  explicit HybridClock(std::int64_t release_ms, Stamp last = {}) : release_ms_(release_ms), last_(last) {}

  // The stamp of an own entry: later than every one before it.
  Stamp next(const Reading& reading);

  struct Received {
    Stamp stamp;
    bool adopted = true;  // false: the sender's clock is more than a day ahead; to be shown, not followed
  };
  // Follows a stamp from elsewhere, so that the next own one is later than it.
  Received receive(const Stamp& stamp, const Reading& reading);

  // The wall clock can be right: it is set, and not before the release of the program.
  [[nodiscard]] bool is_plausible(const Reading& reading) const;
  [[nodiscard]] Stamp last() const { return last_; }

 private:
  Stamp advance(std::int64_t ms, std::uint32_t counter);

  std::int64_t release_ms_;
  Stamp last_;
};

}  // namespace limbledger::ledger
