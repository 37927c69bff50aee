// day.list: who came on a day, and what is left of it: unfinished, unsigned, alerts without an action, call-backs, conflicts. Exams of a
// clock that cannot have been right belong to no day and are listed beside every day, until a person has said when it was; one of which the
// month alone is known, beside each day of that month. With a
// language it is a page to print as well, in words. Source: clinical safety, requirement 14.
#pragma once

#include "core/service/methods/clinic/listed.hpp"

namespace limbledger::service {

struct DayListParams {
  std::optional<model::PartialDate> day;    // absent: today, by the clock of this device
  std::optional<model::PlaceId> place;
  std::optional<model::Word> language;      // with the page to print
};
BOOST_DESCRIBE_STRUCT(DayListParams, (), (day, place, language))
constexpr auto notes(const DayListParams*) { return std::array{wire::Note{"day", "a calendar day where the exams were done: 2026-11-24; absent: today by this device's clock"}}; }

struct DayVisit {
  model::ExamId exam;
  ListedPerson person;
  model::ExamState state{};
  model::Word complaint;
  std::optional<model::Side> side;
  std::optional<model::PlaceId> place;
  std::optional<model::ExaminerId> examiner;
  std::optional<wire::Remark> examiner_name;  // name and role, or in words that the name is not known here
  std::optional<model::Instant> examined_at;
  std::optional<model::PartialDate> examined_on;  // as a person said it
  std::vector<model::Word> left;            // what is missing: person, consent, findings, impression, minimum_set ...
  std::vector<ListedAlert> alerts;          // without an action
  bool conflicts = false;
  bool unseen = false;                      // holds something whose writer had not seen what matters to it
};
BOOST_DESCRIBE_STRUCT(DayVisit, (), (exam, person, state, complaint, side, place, examiner, examiner_name, examined_at, examined_on, left, alerts, conflicts, unseen))

struct DayListResult {
  model::PartialDate day;
  std::vector<DayVisit> visits;             // in the order they came
  std::vector<DayVisit> undated;            // may have been on this day: of a clock that cannot have been right, or known to the month alone
  wire::Count<0, 1000000> came;             // people, each once, so far as they are known to be one
  wire::Count<0, 1000000> open;             // exams that nobody signed
  wire::Count<0, 1000000> with_alerts;      // exams with an alert and no action
  std::optional<wire::LongText> text;
};
BOOST_DESCRIBE_STRUCT(DayListResult, (), (day, visits, undated, came, open, with_alerts, text))
// Scope E V.
[[nodiscard]] Result<DayListResult> day_list(Context& context, const DayListParams& params);

}  // namespace limbledger::service
