#include "core/match/birth.hpp"

#include <algorithm>
#include <array>

namespace limbledger::match {

namespace {

constexpr std::int64_t about_days = 2 * 365 + 1;          // "year within 2"
constexpr std::int64_t generation_days = 14 * 365;        // our convention
constexpr std::int64_t heaped_days = 2 * 365 + 1;         // a told 40 stands for 38 to 42: the nearest five

[[nodiscard]] bool is_whole(const model::PartialDate& date) { return date.month != 0 && date.day != 0; }
[[nodiscard]] bool is_new_year(const model::PartialDate& date) { return date.month == 1 && date.day == 1; }

using Digits = std::array<int, 8>;
[[nodiscard]] Digits digits_of(const model::PartialDate& date) {
  return {date.year / 1000, date.year / 100 % 10, date.year / 10 % 10, date.year % 10, date.month / 10, date.month % 10, date.day / 10, date.day % 10};
}

// One digit another, or two neighbours exchanged.
[[nodiscard]] bool one_slip_apart(const model::PartialDate& a, const model::PartialDate& b) {
  const Digits x = digits_of(a);
  const Digits y = digits_of(b);
  std::size_t differ = 0;
  std::size_t first = 0;
  for (std::size_t i = 0; i < x.size(); ++i) {
    if (x[i] != y[i]) {
      first = differ == 0 ? i : first;
      ++differ;
    }
  }
  return differ == 1 || (differ == 2 && first + 1 < x.size() && x[first] == y[first + 1] && x[first + 1] == y[first]);
}

[[nodiscard]] Days widened(const model::Birth& birth) {
  Days days = *birth_days(birth);
  if (birth.age_years && birth.age_years->steps >= 10 && birth.age_years->steps % 5 == 0) {
    days.first -= heaped_days;
    days.last += heaped_days;
  }
  if (birth.date && is_new_year(*birth.date)) {
    days.last += 364;
  }
  return days;
}

// A date known to the day, or guessed: the first of January and an age are guesses.
[[nodiscard]] bool is_guessed(const model::Birth& birth) { return !birth.date || !is_whole(*birth.date) || is_new_year(*birth.date); }

[[nodiscard]] std::int64_t gap(const Days& a, const Days& b) { return std::max<std::int64_t>({a.first - b.last, b.first - a.last, 0}); }

}  // namespace

std::optional<Days> birth_days(const std::optional<model::Birth>& birth) {
  if (!birth) {
    return std::nullopt;
  }
  if (birth->date) {
    return Days{birth->date->first_day(), birth->date->last_day()};
  }
  if (!birth->age_years || !birth->on) {
    return std::nullopt;
  }
  // Completed years on a day: born up to a year less a day before the birthday of that age. 365.25 days, rounded outwards.
  const std::int64_t around = birth->plus_minus ? birth->plus_minus->steps : 0;
  const std::int64_t oldest = birth->age_years->steps + around + 1;
  const std::int64_t youngest = std::max<std::int64_t>(birth->age_years->steps - around, 0);
  return Days{birth->on->first_day() - (oldest * 1461 + 3) / 4, birth->on->last_day() - youngest * 1461 / 4 + (youngest > 0 ? 1 : 0)};
}

bool swapped_day_and_month(const model::Birth& a, const model::Birth& b) {
  return a.date && b.date && a.date->day != 0 && b.date->day != 0 && a.date->year == b.date->year && a.date->month != a.date->day &&
         a.date->month == b.date->day && a.date->day == b.date->month;
}

BirthLevel compare_births(const std::optional<model::Birth>& a, const std::optional<model::Birth>& b) {
  if (!birth_days(a) || !birth_days(b)) {
    return BirthLevel::missing;
  }
  const bool both_known = !is_guessed(*a) && !is_guessed(*b);
  if (both_known && *a->date == *b->date) {
    return BirthLevel::same_day;
  }
  if (swapped_day_and_month(*a, *b)) {
    return BirthLevel::swapped_day_month;
  }
  if (both_known && one_slip_apart(*a->date, *b->date)) {
    return BirthLevel::one_slip;
  }
  if (a->date && b->date && a->date->year == b->date->year) {
    const bool month = a->date->month != 0 && a->date->month == b->date->month && !is_new_year(*a->date) && !is_new_year(*b->date);
    return month ? BirthLevel::same_month : BirthLevel::same_year;
  }
  const std::int64_t apart = gap(widened(*a), widened(*b));
  if (apart == 0 || (apart <= about_days && (is_guessed(*a) || is_guessed(*b)))) {
    return BirthLevel::about;
  }
  return BirthLevel::other;
}

bool generation_apart(const std::optional<model::Birth>& a, const std::optional<model::Birth>& b) {
  return birth_days(a) && birth_days(b) && gap(widened(*a), widened(*b)) > generation_days;
}

}  // namespace limbledger::match
