// Dates against each other and against today: nobody is examined before birth or injured before birth (refused), and what
// would lie in the future is asked back (value.unusual), because a clock that can be right may still be set wrong. A clock
// that cannot be right (unset, or before the release) asks nothing. Days are counted since 1970-01-01; where the offset of a
// place is not known, a day counts from the first to the last place on earth where it is that day.
#pragma once

#include "core/ledger/fold/records.hpp"
#include "core/ledger/world.hpp"
#include "core/service/context.hpp"
#include "core/service/methods/people/likeness.hpp"
#include "core/wire/fault.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::service {

// The calendar days that an instant may fall on: one where the offset is known.
[[nodiscard]] Days days_of(model::Instant instant, const std::optional<model::OffsetMinutes>& offset_min);

// The days on which an exam, or a row of one, may have been done; nothing where nobody can say it.
template <class Examined>
[[nodiscard]] std::optional<Days> days_examined(const Examined& exam) {
  const model::When when = when_done(exam);
  if (when.at) {
    return days_of(*when.at, exam.offset_min);
  }
  return when.day ? std::optional(Days{when.day->first_day(), when.day->last_day()}) : std::nullopt;
}

// Within these days, both inclusive, as far as its day is known; one of no day known may be of any.
[[nodiscard]] bool may_be_within(const ledger::ListedExam& row, const std::optional<model::PartialDate>& from, const std::optional<model::PartialDate>& to);

// Of the person an exam is of; none where it is of nobody yet, or the birth is not recorded. Faults: as of reading a record.
[[nodiscard]] Result<std::optional<model::Birth>> birth_of(Context& context, const std::optional<model::PersonId>& person);
// Now, by the ledger's clock.
struct Today {
  std::int64_t latest = 0;  // the latest day that it can now be anywhere, or at the place whose offset is known
  std::int64_t by_clock = 0;  // the day at that place; in UTC where no offset is known
  bool in_utc = false;
  std::optional<model::Instant> now = std::nullopt;  // none where only a day was stated
};
// Nothing while the clock cannot be right.
[[nodiscard]] std::optional<Today> today_of(Context& context, const std::optional<model::OffsetMinutes>& offset_min = {});
// Not set, said to be doubtful, or of a time that cannot be (model::can_be_right).
[[nodiscard]] bool clock_is_suspect(const ledger::Reading& reading);
// None where the clock cannot be right: it says of no day that it has passed.
[[nodiscard]] std::optional<model::Instant> now_if_right(const ledger::Reading& reading);

class DateCheck {
 public:
  DateCheck(std::optional<Today> today, const std::optional<std::vector<wire::Name>>& confirmed);

  // A birth, or the day an age was true, after today; a birth longer ago than people live. Of a birth today is the day of the clock: who is
  // examined at the leg was seldom born an hour ago, and a slip of a day is asked about.
  void birth(const model::Birth& birth, const std::string& path);
  // In the future (an instant is the same everywhere), or longer ago than anybody writes down now (a slip in the century).
  void performed(model::Instant instant, const std::optional<model::OffsetMinutes>& offset_min, const std::string& path);
  // Born after the examination: refused; asked back where one of the two rests on a clock (`sure` false).
  void born_by(const std::optional<model::Birth>& birth, const Days& examined, bool sure, const std::string& path);
  // Injured before birth: likewise. Injured after the examination, or after today.
  void injured(const model::PartialDate& injury, const std::optional<Days>& examined, bool examined_is_sure, const std::string& path);
  void injured_after_birth(const model::PartialDate& injury, const std::optional<model::Birth>& birth, bool sure, const std::string& path);

  // The day of an exam as a person says it: as dated(), not before the birth, and not before an injury that it tells of.
  void said_on(const model::PartialDate& on, const std::optional<model::Birth>& birth, const std::optional<model::PartialDate>& injured_on, const std::string& path);

  // The injury was dated by the clock whose day nobody believes.
  void same_clock(const std::string& path, const model::PartialDate& injured_on);

  // What became of a plan, or was found later: before the examination (refused where its day was stated), or after today.
  void happened(const model::PartialDate& on, const ledger::ExamRecord& exam, const std::string& path);
  // What is due: before the examination that decides it.
  void due(const model::PartialDate& by, const ledger::ExamRecord& exam, const std::string& path);
  // Care that the exam tells of: after today, or more than a week before the examination.
  void cared(model::Instant instant, const ledger::ExamRecord& exam, const std::string& path);
  // What comes after the examination by its nature.
  void follows(model::Instant instant, const ledger::ExamRecord& exam, const std::string& path);
  // A page with a day of its own (a protocol, texts that were read): after today, or longer ago than anybody keeps it.
  void dated(const model::PartialDate& on, const std::string& path);

  [[nodiscard]] const std::vector<wire::Fault>& faults() const { return faults_; }
  [[nodiscard]] Result<void> result() const;

 private:
  void ask(wire::Fault fault);
  void ask_of_future(const std::string& path);
  void ask_of_long_ago(const std::string& path, std::int64_t years);
  // `order` names the two days, for the sentence at the form.
  void refuse_or_ask(bool sure, const std::string& path, std::string_view order, std::string expected);

  std::optional<Today> today_;
  bool confirmed_ = false;
  std::vector<wire::Fault> faults_;
};

}  // namespace limbledger::service
