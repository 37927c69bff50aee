#include "core/interpret/motion/compare.hpp"

#include <algorithm>

namespace limbledger::interpret {

Difference difference_of(const reference::Edition& edition, const Reading& reading, const Reading& other, std::int64_t least) {
  Difference difference;
  const auto precision = precision_of(edition, {&reading, &other});
  if (!precision) {
    difference.comparable = Comparable::needs_instrument;
    return difference;
  }
  if (!reading.positions.empty() && !other.positions.empty() && reading.positions != other.positions) {
    difference.comparable = Comparable::other_position;
    return difference;
  }
  difference.precision = *precision;
  difference.low = std::clamp(reading.low - other.high, -open_end, open_end);
  difference.high = std::clamp(reading.high - other.low, -open_end, open_end);
  difference.needed = std::max(precision->mdc95, least);
  difference.methods_differ = reading.instruments != other.instruments;
  return difference;
}

const Reading* number_at(const std::vector<Reading>& readings, std::string_view item, model::Side side) {
  for (const Reading& reading : readings) {
    if (reading.item->item.text == item && reading.side == side && reading.readable == Readable::number) {
      return &reading;
    }
  }
  return nullptr;
}

std::string motion_without_mode(const model::Item& item) {
  std::string name = item.item.text;
  for (const std::string_view mode : {"_active", "_passive"}) {
    if (const auto at = name.find(mode); at != std::string::npos) {
      return name.erase(at, mode.size());
    }
  }
  return name;
}

bool beyond_error(std::int64_t distance, std::int64_t mdc95) { return 99 * distance > 70 * mdc95; }

}  // namespace limbledger::interpret
