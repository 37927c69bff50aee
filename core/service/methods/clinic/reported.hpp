// What was reported of a period (district.report) against what is counted now, or against an earlier report: number by number, with the
// exams that came and went and why, as far as the record tells it. Whether an exam had been there then is read from how far each chain had
// come where it was counted, never from a clock. Reports that several devices made without knowing of each other all stand.
#pragma once

#include "core/ledger/fold/fold.hpp"
#include "core/model/time.hpp"
#include "core/report/words/words.hpp"
#include "core/service/context.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace limbledger::service {

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

struct ToldReport {
  wire::Count<1, 100000> report;
  model::EntryId entry;
  model::PartialDate as_of;
  model::EditionId edition;
  model::Instant at;                       // when it was written, as that device's clock claimed
  std::optional<model::ExaminerId> by;
  std::optional<wire::Remark> by_name;     // name and role, or in words that the name is not known here
  std::vector<model::EntryId> after;
  std::optional<bool> incomplete = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ToldReport, (), (report, entry, as_of, edition, at, by, by_name, after, incomplete))
constexpr auto notes(const ToldReport*) {
  return std::array{wire::Note{"report", "its number among the reports of this period and place; two that know nothing of each other may have the same"},
                    wire::Note{"entry", "names it: for `entry` of district.count, and for `seen` of district.report"}, wire::Note{"as_of", "the day that it was counted by"},
                    wire::Note{"after", "the reports that whoever reported was shown"},
                    wire::Note{"incomplete", "true: a part of it cannot be read here; the numbers are whole, the lists of exams are not"}};
}

struct ChangedExam {
  model::ExamId exam;
  std::optional<model::Word> why;
};
BOOST_DESCRIBE_STRUCT(ChangedExam, (), (exam, why))
constexpr auto notes(const ChangedExam*) {
  return std::array{wire::Note{"why", "arrived: it was not in the ledger that reported; withdrawn; dated, place: its day, its place is another now; moved: to another person; linked, separated: its person was decided "
                                      "to be one with another, or not to be; recorded: something came into its record; judged: nothing did, and the day counted by, the edition, another visit or another "
                                      "decision about people makes it so; absent where it cannot be told"}};
}
struct ChangedNumber {
  model::Word count;
  std::optional<model::Word> of;
  wire::Count<0, 1000000> then;
  wire::Count<0, 1000000> now;
  std::vector<ChangedExam> came;
  std::vector<ChangedExam> went;
  std::optional<std::vector<ChangedExam>> regrouped = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ChangedNumber, (), (count, of, then, now, came, went, regrouped))
constexpr auto notes(const ChangedNumber*) {
  return std::array{wire::Note{"count", "as of a number; undated and withdrawn: the exams listed beside the numbers"},
                    wire::Note{"regrouped", "of people: exams in both whose person is one with that of another exam now and was not then, or the other way round"}};
}
struct Reported {
  ToldReport report;
  std::vector<ChangedNumber> changes;  // empty: none
};
BOOST_DESCRIBE_STRUCT(Reported, (), (report, changes))

// A period and a place: reports of the same days and place are of one.
struct Period {
  model::PartialDate from;
  model::PartialDate to;
  std::optional<model::PlaceId> place;
};

// The numbers of now or as reported; undated and withdrawn among them.
struct NumbersAt {
  std::vector<CountedNumber> numbers;
  const model::ReportBody* said = nullptr;  // none: now
};
[[nodiscard]] std::vector<CountedNumber> numbers_of(const model::ReportBody& said);
[[nodiscard]] bool same_numbers(const std::vector<CountedNumber>& a, const std::vector<CountedNumber>& b);
// A report to be written, in as many operations as its size needs; of less than 64 KiB each.
[[nodiscard]] std::vector<model::ReportBody> to_operations(model::ReportBody said, const std::vector<CountedNumber>& numbers);

// Every report of a period, by number, then entry.
[[nodiscard]] Result<std::vector<ledger::ReportFold>> reports_of(Context& context, const Period& period);
// Those that no other one comes after.
[[nodiscard]] std::vector<const ledger::ReportFold*> last_of(const std::vector<ledger::ReportFold>& reports);
[[nodiscard]] ToldReport tell_report(Context& context, const ledger::ReportFold& report);
[[nodiscard]] Result<Reported> compare(Context& context, const Period& period, const ledger::ReportFold& then, const NumbersAt& now);

// What a page says of them.
[[nodiscard]] std::string label_of(const model::Word& count, const std::optional<model::Word>& of, const report::Words& words);
[[nodiscard]] Result<std::string> changes_in_words(Context& context, const std::vector<Reported>& reported, const report::Words& words);

}  // namespace limbledger::service
