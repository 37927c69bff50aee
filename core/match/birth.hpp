// Births against each other, where a date may be known only to the year or the month, an age only roughly, the first of
// January stands for "some day of that year", ages are told in fives and tens, and day and month get swapped. One field with
// graded outcomes, because its parts go wrong together. Source of the outcomes: the project's page on matching (ours).
#pragma once

#include "core/model/time.hpp"

#include <optional>

namespace limbledger::match {

// Days since 1970 between which a birth lies; nothing when it is not known.
struct Days {
  std::int64_t first = 0;
  std::int64_t last = 0;
  [[nodiscard]] bool meets(const Days& other) const { return first <= other.last && other.first <= last; }
};
[[nodiscard]] std::optional<Days> birth_days(const std::optional<model::Birth>& birth);

// Best first; missing where one of the two is not known.
enum class BirthLevel { missing, same_day, swapped_day_month, one_slip, same_month, same_year, about, other };
BOOST_DESCRIBE_ENUM(BirthLevel, missing, same_day, swapped_day_month, one_slip, same_month, same_year, about, other)

[[nodiscard]] bool swapped_day_and_month(const model::Birth& a, const model::Birth& b);
[[nodiscard]] BirthLevel compare_births(const std::optional<model::Birth>& a, const std::optional<model::Birth>& b);
// Further apart than any slip or guess explains: a parent and a child.
[[nodiscard]] bool generation_apart(const std::optional<model::Birth>& a, const std::optional<model::Birth>& b);

}  // namespace limbledger::match
