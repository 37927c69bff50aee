#include "core/model/exam/day.hpp"

namespace limbledger::model {

namespace {

constexpr std::int64_t day_ms = std::int64_t{24} * 3600 * 1000;
constexpr std::int64_t after_all_ms = 9'000'000'000'000'000;  // the year 2200 ends before 1e13

}  // namespace

When when_done(const std::optional<PartialDate>& said, const std::optional<Instant>& at, const std::optional<OffsetMinutes>& offset_min, bool doubtful) {
  const std::int64_t offset = offset_min ? offset_min->steps : 0;
  When when;
  when.day = said;
  if (at && !doubtful) {
    const PartialDate of_time = date_of(*at, offset);
    if (!said || *said == of_time) {
      when.at = at;
      when.day = of_time;
    }
  }
  when.doubtful = !when.day && doubtful;
  if (when.at) {
    when.in_order_ms = when.at->ms;
  } else if (when.day) {
    when.in_order_ms = when.day->first_day() * day_ms - offset * 60'000;
  } else if (at) {
    when.in_order_ms = after_all_ms + at->ms;
  }
  return when;
}

bool is_before(const When& one, const When& other) {
  if (one.at && other.at) {
    return *one.at < *other.at;
  }
  return one.day && other.day && one.day->last_day() < other.day->first_day();
}

}  // namespace limbledger::model
