// What is asked of an assessment beside the exam itself: the day, the names, and priors that the examiner typed (1 to 99 per cent).
#pragma once

#include "core/model/exam/exam.hpp"
#include "core/model/ids.hpp"
#include "core/model/person.hpp"
#include "core/model/place.hpp"
#include "core/model/time.hpp"
#include "core/wire/type.hpp"

#include <optional>
#include <string>
#include <vector>

namespace limbledger::interpret {

struct TypedPrior {
  model::Word condition;
  wire::Count<1, 99> per_cent;
};
BOOST_DESCRIBE_STRUCT(TypedPrior, (), (condition, per_cent))
constexpr auto notes(const TypedPrior*) {
  return std::array{wire::Note{"condition", "condition.acl_tear and the like"},
                    wire::Note{"per_cent", "how many in 100 people like this one have it, in the examiner's own judgement"}};
}

// The exam as it stood while its person was known otherwise, or was another, and what was corrected since.
struct KnownOtherwise {
  model::Exam exam;
  std::optional<model::Person> person;
  std::vector<model::Word> corrected;  // person.birth, person.sex, exam.person ...
  std::vector<model::EntryId> turned{};  // findings whose side was exchanged since, in order
};

struct AssessAsk {
  model::PartialDate as_of;       // the day to judge by where the exam has no time of its own
  std::vector<std::string> only;  // names or beginnings of names (rules, rule.ottawa_knee, motion.norm); empty: all
  std::optional<wire::Name> saw;  // digest of the entries that were read, handed through
  std::vector<TypedPrior> priors{};
  bool protected_ = false;  // show what protects a child or partner
  std::vector<model::Exam> before_corrections{};  // the exam as it stood while an alert was raised that is no more
  std::optional<model::Place> place{};            // what is there, so that nothing is advised that is not
  std::vector<KnownOtherwise> known_otherwise{};  // the exam while its person was known otherwise
};

}  // namespace limbledger::interpret
