// What the log says now, kept while the ledger is open: folded exams, persons and places, and the rows of the lists. A
// record is folded again, or grown by a finding, when an operation about it came; everything is thrown away on locking.
#pragma once

#include "core/ledger/fold/examiners.hpp"
#include "core/ledger/fold/fold.hpp"
#include "core/ledger/fold/links.hpp"
#include "core/ledger/log/log.hpp"

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace limbledger::ledger {

// An exam with the operations it was folded from, for what a writer had seen.
struct ExamRecord {
  ExamFold fold;
  std::vector<Opened> operations;
  std::size_t unopened = 0;
  std::size_t folded = 0;  // so many of `operations`, the first
  std::uint64_t used = 0;  // when it was last asked for, counted
};

// A person as the index keeps it.
struct PersonRow {
  model::Person person;
  std::optional<bool> in_conflict;
};
BOOST_DESCRIBE_STRUCT(PersonRow, (), (person, in_conflict))

// A report as the index keeps it.
struct ReportRow {
  model::EntryId entry;
  model::PartialDate from;
  model::PartialDate to;
  std::optional<model::PlaceId> place;
  wire::Count<1, 100000> report;
  std::vector<model::EntryId> after;
};
BOOST_DESCRIBE_STRUCT(ReportRow, (), (entry, from, to, place, report, after))
struct ReportRows {
  std::vector<ReportRow> reports;
};
BOOST_DESCRIBE_STRUCT(ReportRows, (), (reports))
struct ListedReport {
  model::ObjectId object;
  ReportRow row;
};

// Whether an operation had reached a ledger.
using HadReached = std::function<bool(const Opened&)>;

struct PersonRecord {
  PersonFold fold;
  std::vector<Opened> operations;
  std::uint64_t used = 0;
};

// The row of an object in the lists; empty where nothing opens the record.
[[nodiscard]] std::string list_row(const Log& log, const model::ObjectId& object, ObjectType type, std::span<const Opened> operations);

class Records {
 public:
  // Items that open letters never tell of do not mark them.
  explicit Records(Log& log, KeptApart kept_apart = {}) : log_(log), kept_apart_(std::move(kept_apart)) {}

  // Faults: exam.unknown, person.unknown, place.unknown. Good until the next append.
  [[nodiscard]] Result<const ExamRecord*> exam(const model::ExamId& id);
  [[nodiscard]] Result<const PersonRecord*> person(const model::PersonId& id);
  [[nodiscard]] Result<std::vector<PlaceFold>> places();
  [[nodiscard]] Result<std::vector<Opened>> clinic_operations();

  // All exams and persons, by id. Rows that the index does not hold are folded first.
  [[nodiscard]] Result<const std::map<model::ExamId, ListedExam>*> exams();
  [[nodiscard]] Result<const std::map<model::PersonId, model::Person>*> persons();

  // What was reported, as far as the rows tell: no report is opened for it that was listed before.
  [[nodiscard]] Result<std::vector<ListedReport>> reports();
  [[nodiscard]] Result<std::vector<ReportFold>> report(const model::ObjectId& object);
  // As they would stand by these operations alone; an exam that none of them opens is nothing.
  [[nodiscard]] Result<std::optional<ListedExam>> exam_by(const model::ExamId& id, const HadReached& had);
  [[nodiscard]] Result<LinkFold> links_by(const HadReached& had);

  // Those of whom something was recorded in two ways, neither knowing of the other.
  [[nodiscard]] Result<const std::set<model::PersonId>*> persons_in_conflict();

  // What was decided of pairs of records, and who is one with whom by it. Good until the next append.
  [[nodiscard]] Result<const LinkFold*> links();
  // How the examiners of all devices are called, as far as it is known here. Good until the next append.
  [[nodiscard]] Result<const ExaminerNames*> examiners();
  // Count what came about people, and about pairs, so that what was worked out of them is known to be old.
  [[nodiscard]] std::uint64_t people_changes() const { return people_changes_; }
  [[nodiscard]] std::uint64_t pair_changes() const { return pair_changes_; }

  // To be called with what was appended or taken.
  void changed(std::span<const Opened> operations);
  // To be called with what an exchange changed: folded anew when it is next asked for.
  void forget(std::span<const model::ObjectId> objects);
  // The index with every list row in place, written beside the log.
  [[nodiscard]] Result<void> save();

 private:
  [[nodiscard]] Result<void> refresh_lists();
  void list(const model::PersonId& id, PersonRow row);

  // Folded records kept at once; the one that was not asked for the longest goes. A finding in one takes 4 KB: more of
  // them would be memory that grows with the day, and one page of a list is 50.
  static constexpr std::size_t kept_max = 64;

  Log& log_;
  KeptApart kept_apart_;
  std::map<model::ExamId, std::unique_ptr<ExamRecord>> exams_;
  std::map<model::PersonId, std::unique_ptr<PersonRecord>> persons_;
  std::map<model::ExamId, ListedExam> listed_exams_;
  std::map<model::PersonId, model::Person> listed_persons_;
  std::set<model::PersonId> persons_in_conflict_;
  std::set<model::ObjectId> listed_;
  std::uint64_t uses_ = 0;
  std::optional<LinkFold> links_;
  std::optional<ExaminerNames> examiners_;
  std::uint64_t people_changes_ = 0;
  std::uint64_t pair_changes_ = 0;
};

}  // namespace limbledger::ledger
