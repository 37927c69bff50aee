#include "core/model/time.hpp"

#include <algorithm>

namespace limbledger::model {

namespace {

constexpr std::int64_t ms_per_day = 86'400'000;
constexpr int year_first = 1850;
constexpr int year_last = 2200;

struct Civil {
  std::int64_t year;
  unsigned month;
  unsigned day;
};

// Both conversions count days in 400-year eras of the proleptic Gregorian calendar, years starting in March.
[[nodiscard]] Civil civil_from_days(std::int64_t days) {
  days += 719468;
  const std::int64_t era = (days >= 0 ? days : days - 146096) / 146097;
  const auto day_of_era = static_cast<unsigned>(days - era * 146097);
  const unsigned year_of_era = (day_of_era - day_of_era / 1460 + day_of_era / 36524 - day_of_era / 146096) / 365;
  const unsigned day_of_year = day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
  const unsigned month_index = (5 * day_of_year + 2) / 153;
  const unsigned day = day_of_year - (153 * month_index + 2) / 5 + 1;
  const unsigned month = month_index < 10 ? month_index + 3 : month_index - 9;
  return {static_cast<std::int64_t>(year_of_era) + era * 400 + (month <= 2 ? 1 : 0), month, day};
}

[[nodiscard]] unsigned days_in_month(std::int64_t year, unsigned month) {
  constexpr unsigned lengths[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  return month == 2 && leap ? 29 : lengths[month - 1];
}

// Digits at a fixed place, or -1.
[[nodiscard]] int digits(std::string_view text, std::size_t at, std::size_t count) {
  int value = 0;
  for (std::size_t i = at; i < at + count; ++i) {
    if (i >= text.size() || text[i] < '0' || text[i] > '9') {
      return -1;
    }
    value = value * 10 + (text[i] - '0');
  }
  return value;
}

[[nodiscard]] bool is_date(int year, int month, int day) {
  return year >= year_first && year <= year_last && month >= 1 && month <= 12 && day >= 1 &&
         static_cast<unsigned>(day) <= days_in_month(year, static_cast<unsigned>(month));
}

void pad(std::string& out, std::int64_t value, std::size_t width) {
  const std::string text = std::to_string(value);
  out.append(width > text.size() ? width - text.size() : 0, '0');
  out += text;
}

// Completed years between two days; a birthday on 29 February is kept on 1 March of other years.
[[nodiscard]] std::int64_t completed_years(std::int64_t birth_day, std::int64_t day) {
  const Civil born = civil_from_days(birth_day);
  const Civil now = civil_from_days(day);
  const bool before_birthday = now.month < born.month || (now.month == born.month && now.day < born.day);
  return now.year - born.year - (before_birthday ? 1 : 0);
}

[[nodiscard]] std::int64_t completed_months(std::int64_t birth_day, std::int64_t day) {
  const Civil born = civil_from_days(birth_day);
  const Civil now = civil_from_days(day);
  const auto month = [](const Civil& one) { return one.year * 12 + static_cast<std::int64_t>(one.month); };
  return month(now) - month(born) - (now.day < born.day ? 1 : 0);
}

}  // namespace

std::int64_t days_from_civil(std::int64_t year, unsigned month, unsigned day) {
  year -= month <= 2 ? 1 : 0;
  const std::int64_t era = (year >= 0 ? year : year - 399) / 400;
  const auto year_of_era = static_cast<unsigned>(year - era * 400);
  const unsigned day_of_year = (153 * (month > 2 ? month - 3 : month + 9) + 2) / 5 + day - 1;
  const unsigned day_of_era = year_of_era * 365 + year_of_era / 4 - year_of_era / 100 + day_of_year;
  return era * 146097 + static_cast<std::int64_t>(day_of_era) - 719468;
}

std::string Instant::to_text() const {
  const std::int64_t days = ms >= 0 ? ms / ms_per_day : (ms - ms_per_day + 1) / ms_per_day;
  const std::int64_t in_day = ms - days * ms_per_day;
  const Civil civil = civil_from_days(days);
  std::string out;
  pad(out, civil.year, 4);
  out += '-';
  pad(out, civil.month, 2);
  out += '-';
  pad(out, civil.day, 2);
  out += 'T';
  pad(out, in_day / 3'600'000, 2);
  out += ':';
  pad(out, in_day / 60'000 % 60, 2);
  out += ':';
  pad(out, in_day / 1000 % 60, 2);
  out += '.';
  pad(out, in_day % 1000, 3);
  return out + 'Z';
}

wire::TextProblem Instant::from_text(std::string_view text, Instant& out) {
  const int year = digits(text, 0, 4);
  const int month = digits(text, 5, 2);
  const int day = digits(text, 8, 2);
  const int hour = digits(text, 11, 2);
  const int minute = digits(text, 14, 2);
  const int second = digits(text, 17, 2);
  const int milli = digits(text, 20, 3);
  const bool form = text.size() == 24 && text[4] == '-' && text[7] == '-' && text[10] == 'T' && text[13] == ':' && text[16] == ':' &&
                    text[19] == '.' && text[23] == 'Z';
  if (!form || milli < 0) {
    return "params.wrong_type";
  }
  // A device with a flat battery stamps 1970, so any year of the form is an instant.
  if (year < 0 || month < 1 || month > 12 || day < 1 || static_cast<unsigned>(day) > days_in_month(year, static_cast<unsigned>(month)) ||
      hour < 0 || hour > 23 || minute < 0 || minute > 59 || second < 0 || second > 59) {
    return "value.date";
  }
  out.ms = days_from_civil(year, static_cast<unsigned>(month), static_cast<unsigned>(day)) * ms_per_day + hour * 3'600'000LL + minute * 60'000LL +
           second * 1000LL + milli;
  return {};
}

std::string PartialDate::to_text() const {
  std::string out;
  pad(out, year, 4);
  if (month != 0) {
    out += '-';
    pad(out, month, 2);
  }
  if (day != 0) {
    out += '-';
    pad(out, day, 2);
  }
  return out;
}

wire::TextProblem PartialDate::from_text(std::string_view text, PartialDate& out) {
  const int year = digits(text, 0, 4);
  const int month = text.size() > 4 ? digits(text, 5, 2) : 1;
  const int day = text.size() > 7 ? digits(text, 8, 2) : 1;
  const bool form = (text.size() == 4 || text.size() == 7 || text.size() == 10) && (text.size() <= 4 || text[4] == '-') &&
                    (text.size() <= 7 || text[7] == '-') && year >= 0 && month >= 0 && day >= 0;
  if (!form) {
    return "params.wrong_type";
  }
  if (!is_date(year, month, day)) {
    return "value.date";
  }
  out.year = static_cast<std::int16_t>(year);
  out.month = static_cast<std::uint8_t>(text.size() > 4 ? month : 0);
  out.day = static_cast<std::uint8_t>(text.size() > 7 ? day : 0);
  return {};
}

std::int64_t PartialDate::first_day() const {
  return days_from_civil(year, std::max<unsigned>(month, 1), std::max<unsigned>(day, 1));
}

std::int64_t PartialDate::last_day() const {
  const unsigned last_month = month == 0 ? 12 : month;
  return days_from_civil(year, last_month, day == 0 ? days_in_month(year, last_month) : day);
}

bool can_be_right(Instant instant) {
  constexpr std::int64_t clock_years_max = 50;
  return instant.ms >= first_release_ms && instant.ms <= first_release_ms + clock_years_max * 365 * ms_per_day;
}

PartialDate date_of(Instant instant, std::int64_t offset_min) {
  const std::int64_t local = instant.ms + offset_min * 60'000;
  const Civil civil = civil_from_days(local >= 0 ? local / ms_per_day : (local - ms_per_day + 1) / ms_per_day);
  PartialDate date;
  date.year = static_cast<std::int16_t>(civil.year);
  date.month = static_cast<std::uint8_t>(civil.month);
  date.day = static_cast<std::uint8_t>(civil.day);
  return date;
}

std::optional<AgeInterval> age_on(const Birth& birth, const PartialDate& day) {
  AgeInterval age;
  if (birth.date) {
    age.low = completed_years(birth.date->last_day(), day.first_day());
    age.high = completed_years(birth.date->first_day(), day.last_day());
  } else if (birth.age_years && birth.on) {
    // An age said to be 50 give or take 5 on a day means from 45 up to 55 completed years on that day.
    const std::int64_t spread = birth.plus_minus ? birth.plus_minus->steps : 0;
    const std::int64_t since_low = completed_years(birth.on->last_day(), day.first_day());
    const std::int64_t since_high = completed_years(birth.on->first_day(), day.last_day());
    const bool same_day = birth.on->first_day() == day.first_day() && birth.on->last_day() == day.last_day();
    age.low = birth.age_years->steps - spread + since_low;
    // On a later day the next birthday may have passed already.
    age.high = birth.age_years->steps + spread + since_high + (same_day ? 0 : 1);
  } else {
    return std::nullopt;
  }
  if (age.high < 0 || age.low > 130) {
    return std::nullopt;
  }
  age.low = std::max<std::int64_t>(age.low, 0);
  return age;
}

std::optional<AgeInterval> age_months_on(const Birth& birth, const PartialDate& day) {
  const auto years = age_on(birth, day);
  if (!years) {
    return std::nullopt;
  }
  AgeInterval months{years->low * 12, years->high * 12 + 11};
  if (birth.date) {
    months.low = std::max<std::int64_t>(completed_months(birth.date->last_day(), day.first_day()), 0);
    months.high = completed_months(birth.date->first_day(), day.last_day());
  }
  return months;
}

}  // namespace limbledger::model
