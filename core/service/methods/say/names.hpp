// Names for the ids of places and examiners in one exam, so far as this ledger knows them: exam.read gives them, a document
// may carry them, and a page prints them. An id without a name is printed as it is.
#pragma once

#include "core/model/exam/exam.hpp"

#include <optional>
#include <vector>

namespace limbledger::service {

struct NamedPlace {
  model::PlaceId place;
  wire::Name name;
};
BOOST_DESCRIBE_STRUCT(NamedPlace, (), (place, name))
struct NamedExaminer {
  model::ExaminerId examiner;
  wire::Name name;  // the label that the examiner unlocks with
};
BOOST_DESCRIBE_STRUCT(NamedExaminer, (), (examiner, name))
struct ExamNames {
  std::optional<std::vector<NamedPlace>> places;
  std::optional<std::vector<NamedExaminer>> examiners;
};
BOOST_DESCRIBE_STRUCT(ExamNames, (), (places, examiners))

}  // namespace limbledger::service
