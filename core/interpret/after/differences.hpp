// Where a supervisor's own findings and impression differ from what was signed: both stand, and nothing says whose is right. A
// number that is not the same is listed with both numbers; whether they can be told apart the reader judges. Source: clinical
// safety, requirement 25.
#pragma once

#include "core/model/exam/exam.hpp"

#include <optional>
#include <vector>

namespace limbledger::interpret {

struct SupervisedDifference {
  model::Word about;  // finding, impression
  std::optional<model::ItemId> item;
  std::optional<model::Side> side;
  std::optional<model::Value> signed_;      // absent: not recorded by the signer
  std::optional<model::Value> supervisor;   // absent of an impression, which stands beside it
};
BOOST_DESCRIBE_STRUCT(SupervisedDifference, (), (about, item, side, signed_, supervisor))

[[nodiscard]] std::vector<SupervisedDifference> differences(const model::Exam& exam, const model::Countersigned& other);

}  // namespace limbledger::interpret
