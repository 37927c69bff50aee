#include "core/model/time.hpp"

#include "core/wire/read.hpp"
#include "core/wire/write.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using model::AgeInterval;
using model::Birth;
using model::Instant;
using model::PartialDate;

namespace {

[[nodiscard]] PartialDate date(std::string_view text) {
  PartialDate out;
  REQUIRE(PartialDate::from_text(text, out).empty());
  return out;
}

[[nodiscard]] Birth born(std::string_view text) {
  Birth birth;
  birth.date = date(text);
  return birth;
}

[[nodiscard]] Birth guessed(std::int64_t years, std::int64_t plus_minus, std::string_view on) {
  Birth birth;
  birth.age_years = model::AgeYears{years};
  birth.plus_minus = model::AgeYears{plus_minus};
  birth.on = date(on);
  return birth;
}

}  // namespace

TEST_CASE("an instant is read and written to the same text") {
  // Seconds since 1970 of these days: 86400 x the Julian day numbers' difference, as any almanac has it.
  const std::pair<std::string_view, std::int64_t> pairs[] = {{"1970-01-01T00:00:00.000Z", 0},
                                                             {"2000-03-01T00:00:00.000Z", 951868800000},
                                                             {"2026-11-24T10:15:00.000Z", 1795515300000},
                                                             {"1969-12-31T23:59:59.999Z", -1},
                                                             {"2024-02-29T12:00:00.500Z", 1709208000500}};
  for (const auto& [text, ms] : pairs) {
    Instant instant;
    REQUIRE(Instant::from_text(text, instant).empty());
    CHECK(instant.ms == ms);
    CHECK(instant.to_text() == text);
  }
}

TEST_CASE("an instant with another form, a leap second or a day that is not there is refused") {
  Instant instant;
  for (const char* text : {"2026-11-24T10:15:00Z", "2026-11-24 10:15:00.000Z", "2026-11-24T10:15:00.000", "2026-11-24T10:15:00.000+01:00", ""}) {
    CHECK(Instant::from_text(text, instant) == "params.wrong_type");
  }
  for (const char* text : {"2026-02-29T10:15:00.000Z", "2026-11-24T24:00:00.000Z", "2026-06-30T23:59:60.000Z", "2026-13-01T00:00:00.000Z"}) {
    CHECK(Instant::from_text(text, instant) == "value.date");
  }
}

TEST_CASE("a partial date is never padded") {
  for (const char* text : {"1971", "1971-05", "1971-05-12", "2000-02-29"}) {
    CHECK(date(text).to_text() == text);
  }
  CHECK(wire::write(date("1971")) == "\"1971\"");
  CHECK(date("1971").last_day() - date("1971").first_day() == 364);
  CHECK(date("1972").last_day() - date("1972").first_day() == 365);
  CHECK(date("1971-02").last_day() - date("1971-02").first_day() == 27);
}

TEST_CASE("a date that is not in the calendar is refused") {
  PartialDate out;
  for (const char* text : {"1900-02-29", "2026-02-30", "2026-04-31", "1971-00", "1971-13", "1849", "2201", "0000"}) {
    CHECK_MESSAGE(PartialDate::from_text(text, out) == "value.date", text);
  }
  for (const char* text : {"71", "1971-5", "1971/05", "1971-05-1", "1971-05-12T00", "", "abcd", "1971-"}) {
    CHECK_MESSAGE(PartialDate::from_text(text, out) == "params.wrong_type", text);
  }
}

TEST_CASE("the date of an instant is the one at the place") {
  Instant instant;
  REQUIRE(Instant::from_text("2026-11-24T22:30:00.000Z", instant).empty());
  CHECK(model::date_of(instant, 0).to_text() == "2026-11-24");
  CHECK(model::date_of(instant, 180).to_text() == "2026-11-25");
  CHECK(model::date_of(instant, -1380 + 300).to_text() == "2026-11-24");
}

TEST_CASE("HC-039: fifty-five on the birthday, fifty-four the day before") {
  CHECK(model::age_on(born("1971-11-24"), date("2026-11-24")) == AgeInterval{55, 55});
  CHECK(model::age_on(born("1971-11-24"), date("2026-11-23")) == AgeInterval{54, 54});
}

TEST_CASE("HC-040: only the year is known, so the age is 54 or 55") {
  CHECK(model::age_on(born("1971"), date("2026-06-10")) == AgeInterval{54, 55});
  CHECK(model::age_on(born("1971"), date("2026-12-31")) == AgeInterval{55, 55});
  CHECK(model::age_on(born("1971-06"), date("2026-06-10")) == AgeInterval{54, 55});
  CHECK(model::age_on(born("1971-05"), date("2026-06-10")) == AgeInterval{55, 55});
}

TEST_CASE("HC-041: about fifty, give or take five, is 45 to 55 and never a date") {
  const Birth birth = guessed(50, 5, "2026-11-24");
  CHECK(model::age_on(birth, date("2026-11-24")) == AgeInterval{45, 55});
  const auto read = wire::read_text<Birth>(R"({"age_years":50,"plus_minus":5,"on":"2026-11-24"})");
  REQUIRE(read.has_value());
  CHECK(*read == birth);
  CHECK(wire::write(*read) == R"({"age_years":50,"plus_minus":5,"on":"2026-11-24"})");
  // A year later both ends have moved, and the next birthday may have passed or not.
  CHECK(model::age_on(birth, date("2027-11-24")) == AgeInterval{46, 57});
}

TEST_CASE("an age is not known before birth, and a clock set to 1970 gives none") {
  CHECK(model::age_on(born("2026-11-25"), date("2026-11-24")) == std::nullopt);
  CHECK(model::age_on(born("1971-11-24"), date("1970-01-01")) == std::nullopt);
  CHECK(model::age_on(Birth{}, date("2026-11-24")) == std::nullopt);
  // Born this year, day not known: newborn at the most a few months old, not minus one.
  CHECK(model::age_on(born("2026"), date("2026-11-24")) == AgeInterval{0, 0});
}

TEST_CASE("who was born on 29 February has a birthday on 1 March of other years") {
  CHECK(model::age_on(born("2004-02-29"), date("2026-02-28")) == AgeInterval{21, 21});
  CHECK(model::age_on(born("2004-02-29"), date("2026-03-01")) == AgeInterval{22, 22});
}
