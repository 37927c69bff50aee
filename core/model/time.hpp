// Times: an instant in UTC with milliseconds, and a calendar date that may be known only to the year or the month and is
// never padded. Ages are intervals of completed years, because a date or an age may be known only roughly.
// Refused: dates that are not in the calendar, years before 1850 or after 2200, leap seconds.
#pragma once

#include "core/wire/text.hpp"
#include "core/wire/type.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace limbledger::model {

struct Instant {
  std::int64_t ms = 0;  // since 1970-01-01T00:00:00Z

  static constexpr wire::TextRule wire_rule{"an instant in UTC such as 2026-11-24T10:15:00.000Z",
                                            "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}\\.[0-9]{3}Z$", 24};
  [[nodiscard]] std::string to_text() const;
  [[nodiscard]] static wire::TextProblem from_text(std::string_view text, Instant& out);
  friend bool operator==(const Instant&, const Instant&) = default;
  friend bool operator<(const Instant& a, const Instant& b) { return a.ms < b.ms; }
};

// 2026-11-01: the day of the first release. No clock of a device of ours can honestly be before it; it is never moved, or what was stamped
// rightly would be doubted later.
inline constexpr std::int64_t first_release_ms = 1793491200000;
// The clock that stamped this can have been right: not before the first release, nor more than 50 years after it (our convention).
[[nodiscard]] bool can_be_right(Instant instant);

using OffsetMinutes = wire::Count<-1080, 1080>;

// Days since 1970-01-01.
[[nodiscard]] std::int64_t days_from_civil(std::int64_t year, unsigned month, unsigned day);

struct PartialDate {
  std::int16_t year = 1970;
  std::uint8_t month = 0;  // 0: not known
  std::uint8_t day = 0;    // 0: not known

  static constexpr wire::TextRule wire_rule{"a calendar date: 1971, 1971-05 or 1971-05-12", "^[0-9]{4}(-[0-9]{2}(-[0-9]{2})?)?$", 10};
  [[nodiscard]] std::string to_text() const;
  [[nodiscard]] static wire::TextProblem from_text(std::string_view text, PartialDate& out);
  // The earliest and latest day it can mean, as days since 1970-01-01.
  [[nodiscard]] std::int64_t first_day() const;
  [[nodiscard]] std::int64_t last_day() const;
  friend bool operator==(const PartialDate&, const PartialDate&) = default;
};

// The calendar date of an instant at a place that is `offset_min` east of UTC.
[[nodiscard]] PartialDate date_of(Instant instant, std::int64_t offset_min);

using AgeYears = wire::Count<0, 130>;

// How a birth is known: a date, or an age that was estimated on a day.
struct Birth {
  std::optional<PartialDate> date;
  std::optional<AgeYears> age_years;
  std::optional<AgeYears> plus_minus;
  std::optional<PartialDate> on;
  friend bool operator==(const Birth&, const Birth&) = default;
};
BOOST_DESCRIBE_STRUCT(Birth, (), (date, age_years, plus_minus, on))

// Completed years on a day, lowest and highest possible; both 0 or more.
struct AgeInterval {
  std::int64_t low = 0;
  std::int64_t high = 0;
  friend bool operator==(const AgeInterval&, const AgeInterval&) = default;
};

// Nothing when the birth is unknown, lies after the day (a clock set wrong), or would make more than 130 years.
[[nodiscard]] std::optional<AgeInterval> age_on(const Birth& birth, const PartialDate& day);
// The same in completed months, for infants; an age said in years spans the months of its years.
[[nodiscard]] std::optional<AgeInterval> age_months_on(const Birth& birth, const PartialDate& day);

}  // namespace limbledger::model
