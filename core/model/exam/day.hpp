// When an exam was done, in one place for lists, judgement and pages: the day that a person said; else the day of its time, unless that
// tells none (of a clock that cannot have been right, or two people said different days); else nothing. Days are calendar days where the
// exam was done, and may be known to the month or the year alone.
#pragma once

#include "core/model/exam/exam.hpp"

namespace limbledger::model {

struct When {
  std::optional<PartialDate> day;
  std::optional<Instant> at;    // the time of day too, where that is of this day
  bool doubtful = false;        // there is a time, but nobody can say the day from it
  std::int64_t in_order_ms = 0;  // a place among others for display: of no day known after all that have one; it decides nothing
};
[[nodiscard]] When when_done(const std::optional<PartialDate>& said, const std::optional<Instant>& at, const std::optional<OffsetMinutes>& offset_min,
                             bool doubtful);
[[nodiscard]] inline When when_done(const Exam& exam) {
  return when_done(exam.examined_on, exam.examined_at, exam.offset_min, exam.day_doubtful.value_or(false));
}

// A time that no clock of ours can have had rightly: no day is read from it.
[[nodiscard]] inline bool is_of_no_clock(const std::optional<Instant>& at) { return at && !can_be_right(*at); }

// Certainly done before: of two on one day only by their times.
[[nodiscard]] bool is_before(const When& one, const When& other);

}  // namespace limbledger::model
