// What a clinic reported of a period: a count as it was said then, with the exams behind each number, kept as an operation (report) of an
// object of its own. It is never changed; a later one of the same period names those it comes after. It holds ids and numbers alone, and
// of what protects a person nothing (clinical safety, C16). Each exam stands once, with the numbers that it is in. Where that would be too
// long for one operation it goes on in the next of the same request: these hold the exams alone, and their places are those of the first.
#pragma once

#include "core/model/ids.hpp"
#include "core/model/time.hpp"
#include "core/wire/number.hpp"
#include "core/wire/type.hpp"

#include <array>
#include <optional>
#include <vector>

namespace limbledger::model {

struct ReportedNumber {
  Word count;
  std::optional<Word> of;
  wire::Count<0, 1000000> number;
  friend bool operator==(const ReportedNumber&, const ReportedNumber&) = default;
};
BOOST_DESCRIBE_STRUCT(ReportedNumber, (), (count, of, number))

struct ReportedExams {
  std::vector<wire::Count<0, 10000>> in;  // places in `counts`, from 0, rising
  std::vector<ExamId> exams;              // by id
  friend bool operator==(const ReportedExams&, const ReportedExams&) = default;
};
BOOST_DESCRIBE_STRUCT(ReportedExams, (), (in, exams))

// How far a chain had come where it was counted: what lies behind came since.
struct Reached {
  ReplicaId replica;
  wire::Count<0, 9007199254740991> seq;
  EntryId entry;
  friend bool operator==(const Reached&, const Reached&) = default;
};
BOOST_DESCRIBE_STRUCT(Reached, (), (replica, seq, entry))

struct ReportBody {  // report
  PartialDate from;
  PartialDate to;
  std::optional<PlaceId> place;
  wire::Count<1, 100000> report;       // its number among those of this period and place
  PartialDate as_of;
  std::vector<EntryId> after;          // the reports that were shown, each by its last entry
  std::vector<Reached> had;            // by replica
  std::vector<ReportedNumber> counts;  // undated and withdrawn are in no other number
  std::vector<ReportedExams> exams;
  friend bool operator==(const ReportBody&, const ReportBody&) = default;
};
BOOST_DESCRIBE_STRUCT(ReportBody, (), (from, to, place, report, as_of, after, had, counts, exams))

}  // namespace limbledger::model

// One table a type for the whole program, made in core/model/types.cpp: it is costly to make in every file.
namespace limbledger::wire {
extern template const Type& type_of<model::ReportBody>();
}  // namespace limbledger::wire
