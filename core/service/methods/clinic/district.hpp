// district.count: what a clinic reports of a period: exams by setting and complaint, people, what was raised, referred, planned for review
// and left open. Each number is of exams and names them, so that whoever doubts it can open it; people are counted once, so far as they are
// known to be one. Counted is what was recorded and has reached this ledger; alerts are judged by the edition that is named, as the day list
// judges them, and what protects a person is in no number (clinical safety, C16). Nothing is counted by examiner (C25). Exams that may be of
// the period and are of no certain day are in no number and are listed beside them.
#pragma once

#include "core/service/methods/clinic/listed.hpp"

namespace limbledger::service {

struct DistrictCountParams {
  model::PartialDate from;
  std::optional<model::PartialDate> to;
  std::optional<model::PlaceId> place;
  std::optional<model::PartialDate> as_of;
  std::optional<model::Word> language;
};
BOOST_DESCRIBE_STRUCT(DistrictCountParams, (), (from, to, place, as_of, language))
constexpr auto notes(const DistrictCountParams*) {
  return std::array{wire::Note{"from", "a day, a month or a year, where the exams were done: 2026-11"}, wire::Note{"to", "to the end of this one; absent: of from"},
                    wire::Note{"as_of", "the day by which something is past; absent: today by this device's clock"}, wire::Note{"language", "with the page to print"}};
}

struct CountedNumber {
  model::Word count;
  std::optional<model::Word> of;
  wire::Count<0, 1000000> number;
  std::vector<model::ExamId> exams;
};
BOOST_DESCRIBE_STRUCT(CountedNumber, (), (count, of, number, exams))
constexpr auto notes(const CountedNumber*) {
  return std::array{wire::Note{"count", "exams, people, setting, complaint, unsigned, alert, referral, referral_unanswered, review, and what loop.list lists: call_back, alert_without_action, "
                                        "in_conflict, referral_past_day, review_overdue, third_visit_without_impression; one that is not listed is 0"},
                    wire::Note{"of", "which setting or complaint; of an alert now or same_day, the graver of an exam"},
                    wire::Note{"number", "of the exams in the list; of people, of those examined in them"}};
}

struct DistrictCountResult {
  model::PartialDate from;
  model::PartialDate to;
  model::PartialDate as_of;
  model::EditionId edition;
  std::vector<CountedNumber> counts;
  std::vector<model::ExamId> undated;      // in no number: they may be of the period
  std::vector<model::ExamId> withdrawn;    // in no number
  std::optional<wire::LongText> text;
};
BOOST_DESCRIBE_STRUCT(DistrictCountResult, (), (from, to, as_of, edition, counts, undated, withdrawn, text))
// Scope E V. Faults: value.date_order (to before from).
[[nodiscard]] Result<DistrictCountResult> district_count(Context& context, const DistrictCountParams& params);

}  // namespace limbledger::service
