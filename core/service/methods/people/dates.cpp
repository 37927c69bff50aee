#include "core/service/methods/people/dates.hpp"

#include "core/ledger/log/log.hpp"
#include "core/ledger/stamp.hpp"
#include "core/service/desk.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

// The westernmost and the easternmost civil time, UTC-12 and UTC+14.
constexpr std::int64_t west_min = -12 * 60;
constexpr std::int64_t east_min = 14 * 60;
// Further back than these somebody is asked whether the year is right: our convention. Nobody is refused for being old.
constexpr std::int64_t oldest_years = 110;
constexpr std::int64_t exam_oldest_years = 50;

[[nodiscard]] std::int64_t years_before(std::int64_t day, std::int64_t years) { return day - years * 36525 / 100; }
constexpr std::int64_t clock_years_max = 50;

[[nodiscard]] std::string day_text(std::int64_t day) { return model::date_of({day * 86'400'000}, 0).to_text(); }

}  // namespace

Days days_of(model::Instant instant, const std::optional<model::OffsetMinutes>& offset_min) {
  return {model::date_of(instant, offset_min ? offset_min->steps : west_min).first_day(),
          model::date_of(instant, offset_min ? offset_min->steps : east_min).last_day()};
}

std::optional<std::int64_t> latest_today(Context& context, const std::optional<model::OffsetMinutes>& offset_min) {
  const ledger::Reading reading = context.desk->world().now();
  if (clock_is_suspect(reading)) {
    return std::nullopt;
  }
  return days_of({reading.wall_ms}, offset_min).last;
}

bool clock_is_suspect(const ledger::Reading& reading) {
  return !ledger::HybridClock(ledger::release_ms).is_plausible(reading) || reading.wall_ms > ledger::release_ms + clock_years_max * 365 * 86'400'000;
}

bool can_be_right(model::Instant instant) { return instant.ms >= ledger::release_ms; }

DateCheck::DateCheck(std::optional<std::int64_t> today, const std::optional<std::vector<wire::Name>>& confirmed) : today_(today) {
  confirmed_ = confirmed && std::any_of(confirmed->begin(), confirmed->end(), [](const wire::Name& code) { return code.text == "value.unusual"; });
}

Result<void> DateCheck::result() const {
  if (faults_.empty()) {
    return {};
  }
  return wire::Refusal(faults_);
}

void DateCheck::ask(const std::string& path, std::string expected) {
  if (!confirmed_) {
    faults_.emplace_back("value.unusual", path, std::move(expected));
  }
}

void DateCheck::refuse_or_ask(bool sure, const std::string& path, std::string expected) {
  if (sure) {
    faults_.emplace_back("value.date_order", path, std::move(expected));
  } else {
    ask(path, std::move(expected));
  }
}

void DateCheck::birth(const model::Birth& birth, const std::string& path) {
  if (!today_) {
    return;
  }
  const std::string expected = "not after today, " + day_text(*today_);
  if (birth.date && birth.date->first_day() > *today_) {
    ask(path + "/date", expected);
  }
  if (birth.on && birth.on->first_day() > *today_) {
    ask(path + "/on", expected);
  }
  const std::string old = "not more than " + std::to_string(oldest_years) + " years before today";
  if (birth.date && birth.date->last_day() < years_before(*today_, oldest_years)) {
    ask(path + "/date", old);
  }
  if (birth.age_years && birth.age_years->steps > oldest_years) {
    ask(path + "/age_years", old);
  }
}

void DateCheck::performed(model::Instant instant, const std::optional<model::OffsetMinutes>& offset_min, const std::string& path) {
  if (today_ && days_of(instant, offset_min).first > *today_) {
    ask(path, "not after today, " + day_text(*today_));
  } else if (today_ && days_of(instant, offset_min).last < years_before(*today_, exam_oldest_years)) {
    ask(path, "not more than " + std::to_string(exam_oldest_years) + " years before today");
  }
}

void DateCheck::born_by(const std::optional<model::Birth>& birth, const Days& examined, bool sure, const std::string& path) {
  const auto born = birth_days(birth);
  if (born && born->first > examined.last) {
    refuse_or_ask(sure, path, "a birth not after the day of the examination");
  }
}

void DateCheck::injured(const model::PartialDate& injury, const std::optional<Days>& examined, bool examined_is_sure, const std::string& path) {
  if (examined && injury.first_day() > examined->last) {
    refuse_or_ask(examined_is_sure, path, "an injury not after the day of the examination");
  } else if (today_ && injury.first_day() > *today_) {
    ask(path, "not after today, " + day_text(*today_));
  }
}

void DateCheck::injured_after_birth(const model::PartialDate& injury, const std::optional<model::Birth>& birth, bool sure, const std::string& path) {
  const auto born = birth_days(birth);
  if (born && injury.last_day() < born->first) {
    refuse_or_ask(sure, path, "an injury not before the birth");
  }
}

}  // namespace limbledger::service
