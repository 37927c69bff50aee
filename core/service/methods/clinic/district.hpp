// district.count and district.report: what a clinic reports of a period: exams by setting and complaint, people, what was raised, referred, planned for review
// and left open. Each number is of exams and names them, so that whoever doubts it can open it; people are counted once, so far as they are
// known to be one. Counted is what was recorded and has reached this ledger; alerts are judged by the edition that is named, as the day list
// judges them, and what protects a person is in no number (clinical safety, C16). Nothing is counted by examiner (C25). Exams that may be of
// the period and are of no certain day are in no number and are listed beside them. A count that was given away is kept (district.report),
// with its number among the reports of that period and place: what comes home late or is corrected after it makes another number, and the
// count says which, from which, and by which exams. A report is never changed, and read as it was reported.
#pragma once

#include "core/service/methods/clinic/listed.hpp"
#include "core/service/methods/clinic/reported.hpp"
#include "core/service/writing.hpp"

namespace limbledger::service {

struct DistrictCountParams {
  model::PartialDate from;
  std::optional<model::PartialDate> to;
  std::optional<model::PlaceId> place;
  std::optional<model::PartialDate> as_of;
  std::optional<model::Word> language;
  std::optional<wire::Count<1, 100000>> report = std::nullopt;
  std::optional<model::EntryId> entry = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(DistrictCountParams, (), (from, to, place, as_of, language, report, entry))
constexpr auto notes(const DistrictCountParams*) {
  return std::array{wire::Note{"from", "a day, a month or a year, where the exams were done: 2026-11"}, wire::Note{"to", "to the end of this one; absent: of from"},
                    wire::Note{"as_of", "the day by which something is past; absent: today by this device's clock; not with report"}, wire::Note{"language", "with the page to print"},
                    wire::Note{"report", "the number of a report of this period and place: the numbers as they were reported, not as they are now"},
                    wire::Note{"entry", "which of them, where two reports have this number"}};
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
  std::optional<std::vector<Reported>> reported = std::nullopt;
  std::optional<ToldReport> report = std::nullopt;
  std::optional<std::vector<ToldReport>> later = std::nullopt;
  std::optional<std::vector<model::EntryId>> revision = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(DistrictCountResult, (), (from, to, as_of, edition, counts, undated, withdrawn, text, reported, report, later, revision))
constexpr auto notes(const DistrictCountResult*) {
  return std::array{wire::Note{"reported", "the last report of this period and place, and what has changed since; several where devices reported without knowing of each other; of a report, those that it came after"},
                    wire::Note{"report", "which report these numbers are; absent: of now"}, wire::Note{"later", "with report: the reports that came after it or beside it"},
                    wire::Note{"revision", "of a count of now, for `seen` of district.report: the `entry` of each report in `reported`"}};
}
// Scope E V. Faults: value.date_order (to before from), value.all_or_one (as_of of a report; entry without one), report.unknown, report.several.
[[nodiscard]] Result<DistrictCountResult> district_count(Context& context, const DistrictCountParams& params);

struct DistrictReportParams {
  model::PartialDate from;
  std::optional<model::PartialDate> to;
  std::optional<model::PlaceId> place;
  std::optional<model::PartialDate> as_of;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<model::Word> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(DistrictReportParams, (), (from, to, place, as_of, seen, request, language))
constexpr auto notes(const DistrictReportParams*) {
  return std::array{wire::Note{"from", "as of district.count"}, wire::Note{"to", "as of district.count"}, wire::Note{"as_of", "the day by which something is past; absent: today by this device's clock"},
                    wire::Note{"seen", "`revision` of district.count: the `entry` of every report that it names in `reported`; empty where none was made"}, wire::Note{"language", "with the page to print"}};
}
struct DistrictReportResult {
  ToldReport report;
  DistrictCountResult counted;              // as it was reported
  std::vector<model::EntryId> revision;     // for `seen` of the next
  std::optional<bool> unchanged;
  std::optional<bool> repeat;
  std::optional<wire::LongText> text;
};
BOOST_DESCRIBE_STRUCT(DistrictReportResult, (), (report, counted, revision, unchanged, repeat, text))
constexpr auto notes(const DistrictReportResult*) {
  return std::array{wire::Note{"unchanged", "true: every number is as in the last report, which stands; nothing was written"}};
}
// Scope E; writes. Faults: value.date_order, revision.unknown (no report of this period and place), revision.old (one that was not
// named stands too), request.reused.
[[nodiscard]] Result<DistrictReportResult> district_report(Context& context, const DistrictReportParams& params);

}  // namespace limbledger::service
