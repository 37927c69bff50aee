#include "core/service/methods/people/dates.hpp"

#include "core/ledger/log/log.hpp"
#include "core/service/desk.hpp"
#include "core/service/writing.hpp"
#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

// The westernmost and the easternmost civil time, UTC-12 and UTC+14.
constexpr std::int64_t west_min = -12 * 60;
constexpr std::int64_t east_min = 14 * 60;
// Further back than these somebody is asked whether the year is right: our convention. Nobody is refused for being old.
constexpr std::int64_t oldest_years = 110;
constexpr std::int64_t exam_oldest_years = 50;
// So far ahead a time may be without a question: two clocks of one room, one of them without the hour of summer time (our convention).
constexpr std::int64_t clocks_apart_ms = std::int64_t{2} * 60 * 60 * 1000;

[[nodiscard]] std::int64_t years_before(std::int64_t day, std::int64_t years) { return day - years * 36525 / 100; }
constexpr std::int64_t care_days_before = 7;  // our convention: care told of in an exam was given in the week before it

// The days that an exam may have been on, and whether its writer stated them or a clock did.
struct ExamDays {
  std::optional<Days> days;
  bool stated = false;
};
[[nodiscard]] ExamDays exam_days(const ledger::ExamRecord& record) {
  const model::Exam& exam = record.fold.exam;
  const bool stamped = std::any_of(record.operations.begin(), record.operations.end(), [&](const ledger::Opened& opened) {
    return std::holds_alternative<model::ExamBody>(opened.body()) && opened.operation().examined_at == exam.examined_at && ledger::is_stamped(opened.operation());
  });
  return {days_examined(exam), exam.examined_on || !stamped};
}

[[nodiscard]] std::string day_text(std::int64_t day) { return model::date_of({day * 86'400'000}, 0).to_text(); }
// 2026-11-24 10:15
[[nodiscard]] std::string minute_text(model::Instant instant) {
  std::string text = instant.to_text().substr(0, 16);
  text[10] = ' ';
  return text;
}

}  // namespace

Days days_of(model::Instant instant, const std::optional<model::OffsetMinutes>& offset_min) {
  return {model::date_of(instant, offset_min ? offset_min->steps : west_min).first_day(),
          model::date_of(instant, offset_min ? offset_min->steps : east_min).last_day()};
}

bool may_be_within(const ledger::ListedExam& row, const std::optional<model::PartialDate>& from, const std::optional<model::PartialDate>& to) {
  const auto day = when_done(row).day;
  return !day || ((!from || day->last_day() >= from->first_day()) && (!to || day->first_day() <= to->last_day()));
}

Result<std::optional<model::Birth>> birth_of(Context& context, const std::optional<model::PersonId>& person) {
  if (!person) {
    return std::optional<model::Birth>();
  }
  const auto record = context.desk->records().person(*person);
  if (!record) {
    return record.error();
  }
  return (*record)->fold.person.birth;
}

std::optional<Today> today_of(Context& context, const std::optional<model::OffsetMinutes>& offset_min) {
  const ledger::Reading reading = context.desk->world().now();
  if (clock_is_suspect(reading)) {
    return std::nullopt;
  }
  const model::Instant now{reading.wall_ms};
  return Today{days_of(now, offset_min).last, model::date_of(now, offset_min ? offset_min->steps : 0).first_day(), !offset_min, now};
}

bool clock_is_suspect(const ledger::Reading& reading) {
  return reading.clock == ledger::ClockQuality::suspect || reading.clock == ledger::ClockQuality::unset || !model::can_be_right({reading.wall_ms});
}

std::optional<model::Instant> now_if_right(const ledger::Reading& reading) {
  return clock_is_suspect(reading) ? std::nullopt : std::optional(model::Instant{reading.wall_ms});
}

DateCheck::DateCheck(std::optional<Today> today, const std::optional<std::vector<wire::Name>>& confirmed) : today_(today) {
  confirmed_ = confirms(confirmed, "value.unusual");
}

Result<void> DateCheck::result() const {
  if (faults_.empty()) {
    return {};
  }
  return wire::Refusal(faults_);
}

void DateCheck::ask(wire::Fault fault) {
  if (!confirmed_) {
    faults_.push_back(std::move(fault));
  }
}

void DateCheck::ask_of_future(const std::string& path) {
  const std::string day = day_text(today_->by_clock);
  std::string expected = "not after today, " + day;
  if (today_->in_utc) {
    expected += " in UTC" + (today_->latest == today_->by_clock ? std::string() : "; somewhere it is " + day_text(today_->latest));
  }
  ask(wire::Fault("value.unusual", path, expected).with(today_->in_utc ? "today_utc" : "today", wire::quoted(day)));
}

void DateCheck::ask_of_long_ago(const std::string& path, std::int64_t years) {
  const std::string count = std::to_string(years);
  ask(wire::Fault("value.unusual", path, "not more than " + count + " years before today").with("years", count));
}

void DateCheck::refuse_or_ask(bool sure, const std::string& path, std::string_view order, std::string expected) {
  wire::Fault fault = wire::Fault(sure ? "value.date_order" : "value.unusual", path, expected).with("order", wire::quoted(order));
  if (sure) {
    faults_.push_back(std::move(fault));
  } else {
    ask(std::move(fault));
  }
}

void DateCheck::birth(const model::Birth& birth, const std::string& path) {
  if (!today_) {
    // The same wrong clock dated the age, and each later exam would make this person that many years older.
    if (birth.on && !model::can_be_right({birth.on->last_day() * 86'400'000})) {
      ask({"value.unusual", path + "/on", "the day on which the age was true; the clock of this device is not set"});
    }
    return;
  }
  if (birth.date && birth.date->first_day() > today_->by_clock) {
    ask_of_future(path + "/date");
  }
  if (birth.on && birth.on->first_day() > today_->latest) {
    ask_of_future(path + "/on");
  }
  if (birth.date && birth.date->last_day() < years_before(today_->latest, oldest_years)) {
    ask_of_long_ago(path + "/date", oldest_years);
  }
  if (birth.age_years && birth.age_years->steps > oldest_years) {
    ask_of_long_ago(path + "/age_years", oldest_years);
  }
}

void DateCheck::performed(model::Instant instant, const std::optional<model::OffsetMinutes>& offset_min, const std::string& path) {
  if (today_ && today_->now && instant.ms > today_->now->ms + clocks_apart_ms) {
    const std::string now = minute_text(*today_->now);
    ask(wire::Fault("value.unusual", path, "not after now, " + now + " in UTC").with("now_utc", wire::quoted(now)));
  } else if (today_ && !today_->now && days_of(instant, offset_min).first > today_->latest) {
    ask_of_future(path);
  } else if (today_ && days_of(instant, offset_min).last < years_before(today_->latest, exam_oldest_years)) {
    ask_of_long_ago(path, exam_oldest_years);
  }
}

void DateCheck::born_by(const std::optional<model::Birth>& birth, const Days& examined, bool sure, const std::string& path) {
  const auto born = birth_days(birth);
  if (born && born->first > examined.last) {
    refuse_or_ask(sure, path, "birth_after_exam",
                  "a birth not after the day of the examination, " + day_text(examined.last) + "; where that day is of a clock that was not set, the right one in examined_on");
  }
}

void DateCheck::injured(const model::PartialDate& injury, const std::optional<Days>& examined, bool examined_is_sure, const std::string& path) {
  if (examined && injury.first_day() > examined->last) {
    refuse_or_ask(examined_is_sure, path, "injury_after_exam", "an injury not after the day of the examination");
  } else if (today_ && injury.first_day() > today_->latest) {
    ask_of_future(path);
  } else if (today_ && injury.last_day() < years_before(today_->latest, oldest_years)) {
    ask_of_long_ago(path, oldest_years);
  }
}

void DateCheck::happened(const model::PartialDate& on, const ledger::ExamRecord& exam, const std::string& path) {
  const ExamDays examined = exam_days(exam);
  if (examined.days && on.last_day() < examined.days->first) {
    refuse_or_ask(examined.stated, path, "before_exam", "a day not before the examination, " + day_text(examined.days->first));
  } else if (today_ && on.first_day() > today_->latest) {
    ask_of_future(path);
  }
}

void DateCheck::due(const model::PartialDate& by, const ledger::ExamRecord& exam, const std::string& path) {
  const ExamDays examined = exam_days(exam);
  if (examined.days && by.last_day() < examined.days->first) {
    refuse_or_ask(false, path, "before_exam", "a day not before the examination, " + day_text(examined.days->first));
  }
}

void DateCheck::cared(model::Instant instant, const ledger::ExamRecord& exam, const std::string& path) {
  const std::size_t before = faults_.size();
  performed(instant, exam.fold.exam.offset_min, path);
  const ExamDays examined = exam_days(exam);
  if (faults_.size() == before && examined.days && days_of(instant, exam.fold.exam.offset_min).last < examined.days->first - care_days_before) {
    refuse_or_ask(false, path, "long_before_exam", "not more than " + std::to_string(care_days_before) + " days before the examination, " + day_text(examined.days->first));
  }
}

void DateCheck::follows(model::Instant instant, const ledger::ExamRecord& exam, const std::string& path) {
  const ExamDays examined = exam_days(exam);
  if (examined.days && days_of(instant, exam.fold.exam.offset_min).last < examined.days->first) {
    refuse_or_ask(false, path, "before_exam", "not before the examination, " + day_text(examined.days->first));
  }
}

void DateCheck::dated(const model::PartialDate& on, const std::string& path) {
  if (today_ && on.first_day() > today_->latest) {
    ask_of_future(path);
  } else if (today_ && on.last_day() < years_before(today_->latest, exam_oldest_years)) {
    ask_of_long_ago(path, exam_oldest_years);
  }
}

void DateCheck::said_on(const model::PartialDate& on, const std::optional<model::Birth>& birth, const std::optional<model::PartialDate>& injured_on,
                        const std::string& path) {
  dated(on, path);
  const auto born = birth_days(birth);
  if (born && born->first > on.last_day()) {
    refuse_or_ask(true, path, "exam_before_birth", "a day not before the birth");
  }
  if (injured_on && injured_on->first_day() > on.last_day()) {
    refuse_or_ask(true, path, "exam_before_injury", "a day not before the injury, " + injured_on->to_text());
  }
}

void DateCheck::same_clock(const std::string& path, const model::PartialDate& injured_on) {
  ask({"value.unusual", path, "the day of the injury with it (injured_on): " + injured_on.to_text() + " is the day of the same clock"});
}

void DateCheck::injured_after_birth(const model::PartialDate& injury, const std::optional<model::Birth>& birth, bool sure, const std::string& path) {
  const auto born = birth_days(birth);
  if (born && injury.last_day() < born->first) {
    refuse_or_ask(sure, path, "injury_before_birth", "an injury not before the birth");
  }
}

}  // namespace limbledger::service
