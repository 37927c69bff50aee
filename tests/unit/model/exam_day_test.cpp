// When an exam was done: the day that a person said, else that of a clock that may be right, else nothing. Our own rule; the days of
// instants are as `date -u` has them.
#include "core/model/exam/day.hpp"

#include <doctest/doctest.h>

using namespace limbledger::model;

namespace {

std::optional<PartialDate> said_day(const char* text) {
  PartialDate date;
  REQUIRE(PartialDate::from_text(text, date).empty());
  return date;
}
Instant instant_of(const char* text) {
  Instant instant;
  REQUIRE(Instant::from_text(text, instant).empty());
  return instant;
}
const OffsetMinutes three_hours_east{180};

}  // namespace

TEST_CASE("an exam is of the day of its time at its place, unless the day is said or the time is doubtful") {
  const Instant late = instant_of("2026-11-24T22:30:00.000Z");
  CHECK(when_done({}, late, {}, false).day == said_day("2026-11-24"));
  CHECK(when_done({}, late, three_hours_east, false).day == said_day("2026-11-25"));
  CHECK(when_done({}, late, {}, false).at == std::optional(late));
  const When doubtful = when_done({}, instant_of("2001-01-01T00:04:00.000Z"), {}, true);
  CHECK_FALSE(doubtful.day);
  CHECK_FALSE(doubtful.at);
  CHECK(doubtful.doubtful);
  const When none = when_done({}, {}, {}, false);
  CHECK_FALSE(none.day);
  CHECK_FALSE(none.doubtful);
}

TEST_CASE("the day that a person said stands before the clock, and the time of day goes with it only where it is of that day") {
  const Instant late = instant_of("2026-11-24T22:30:00.000Z");
  const When other = when_done(said_day("2026-11-20"), late, {}, false);
  CHECK(other.day == said_day("2026-11-20"));
  CHECK_FALSE(other.at);
  CHECK(when_done(said_day("2026-11-24"), late, {}, false).at == std::optional(late));
  CHECK_FALSE(when_done(said_day("2026-11-24"), late, three_hours_east, false).at);
  CHECK(when_done(said_day("2026-11"), late, {}, false).day == said_day("2026-11"));
  const When said = when_done(said_day("2026-11-24"), instant_of("2001-01-01T00:04:00.000Z"), {}, true);
  CHECK(said.day == said_day("2026-11-24"));
  CHECK_FALSE(said.at);
  CHECK_FALSE(said.doubtful);
}

TEST_CASE("of two exams one is earlier only where that is certain") {
  const auto at = [](const char* text) { return when_done({}, instant_of(text), {}, false); };
  const auto on = [](const char* text) { return when_done(said_day(text), {}, {}, false); };
  CHECK(is_before(at("2026-11-24T09:00:00.000Z"), at("2026-11-24T09:01:00.000Z")));
  CHECK_FALSE(is_before(at("2026-11-24T09:01:00.000Z"), at("2026-11-24T09:00:00.000Z")));
  CHECK(is_before(on("2026-10"), at("2026-11-24T09:00:00.000Z")));
  CHECK_FALSE(is_before(on("2026-11"), at("2026-11-24T09:00:00.000Z")));
  CHECK_FALSE(is_before(at("2026-11-24T09:00:00.000Z"), on("2026-11-24")));
  const When doubtful = when_done({}, instant_of("2001-01-01T00:04:00.000Z"), {}, true);
  CHECK_FALSE(is_before(doubtful, at("2026-11-24T09:00:00.000Z")));
  CHECK_FALSE(is_before(at("2026-11-24T09:00:00.000Z"), doubtful));
  // Lists show it after all that have a day, where it is seen.
  CHECK(doubtful.in_order_ms > on("2200").in_order_ms);
}

TEST_CASE("a clock can be right from the first release on, for fifty years") {
  CHECK_FALSE(can_be_right(instant_of("2001-01-01T00:04:00.000Z")));
  CHECK_FALSE(can_be_right(instant_of("2026-10-31T23:59:59.999Z")));
  CHECK(can_be_right(instant_of("2026-11-01T00:00:00.000Z")));
  CHECK(can_be_right(instant_of("2075-11-01T00:00:00.000Z")));
  CHECK_FALSE(can_be_right(instant_of("2077-11-01T00:00:00.000Z")));
}
