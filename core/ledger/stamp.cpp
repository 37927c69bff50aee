#include "core/ledger/stamp.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {
constexpr std::int64_t day_ms = std::int64_t{24} * 3600 * 1000;
// A device without a clock follows others freely, but not to the end of the 48 bits: no stamp would be left after it.
constexpr std::int64_t follow_ms_max = 100 * 366 * day_ms;
}  // namespace

bool HybridClock::is_plausible(const Reading& reading) const {
  return reading.clock != ClockQuality::unset && reading.wall_ms >= release_ms_ && reading.wall_ms <= stamp_ms_max;
}

Stamp HybridClock::advance(std::int64_t ms, std::uint32_t counter) {
  if (counter > 0xffff) {
    // Waiting for the wall clock would stop a tablet for years after one stamp from the future.
    ms += 1;
    counter = 0;
  }
  last_ = Stamp{ms, static_cast<std::uint16_t>(counter)};
  return last_;
}

Stamp HybridClock::next(const Reading& reading) {
  // An unset clock moves nothing: the counter alone keeps the order.
  const std::int64_t wall_ms = is_plausible(reading) ? reading.wall_ms : 0;
  if (wall_ms > last_.ms) {
    return advance(wall_ms, 0);
  }
  return advance(last_.ms, last_.counter + 1U);
}

HybridClock::Received HybridClock::receive(const Stamp& stamp, const Reading& reading) {
  const bool plausible = is_plausible(reading);
  const std::int64_t limit_ms = plausible ? reading.wall_ms + day_ms : release_ms_ + follow_ms_max;
  if (stamp.ms > limit_ms || stamp.ms < 0) {
    return {last_, false};
  }
  const std::int64_t wall_ms = plausible ? reading.wall_ms : 0;
  const std::int64_t ms = std::max({last_.ms, stamp.ms, wall_ms});
  std::uint32_t counter = 0;
  if (ms == last_.ms && ms == stamp.ms) {
    counter = std::max<std::uint32_t>(last_.counter, stamp.counter) + 1U;
  } else if (ms == last_.ms) {
    counter = last_.counter + 1U;
  } else if (ms == stamp.ms) {
    counter = stamp.counter + 1U;
  }
  return {advance(ms, counter), true};
}

}  // namespace limbledger::ledger
