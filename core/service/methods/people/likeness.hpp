// Who may be the same person: a short list of reasons in words, made by fixed rules, never a score and never a decision.
// Nobody is merged or rejected by it. Births are compared as intervals of days, because a date may be known only to the
// year and an age only roughly; a birth that does not fit hides no one who shares a number, or name and home.
#pragma once

#include "core/model/person.hpp"
#include "core/service/methods/people/folded.hpp"

#include <map>
#include <optional>
#include <vector>

namespace limbledger::service {

// Days since 1970 between which a birth lies; nothing when it is not known.
struct Days {
  std::int64_t first = 0;
  std::int64_t last = 0;
  [[nodiscard]] bool meets(const Days& other) const { return first <= other.last && other.first <= last; }
};
[[nodiscard]] std::optional<Days> birth_days(const std::optional<model::Birth>& birth);

struct LookAlike {
  model::PersonId person;
  // same_name, similar_name, look_alike_letters, same_birth, birth_may_agree, swapped_day_month, other_birth, same_home,
  // same_identifier
  std::vector<model::Word> because;
};
BOOST_DESCRIBE_STRUCT(LookAlike, (), (person, because))

// Those among `all` that may be `person`, by id; `person` itself left out.
[[nodiscard]] std::vector<LookAlike> look_alikes_of(const model::PersonId& id, const model::Person& person,
                                                    const std::map<model::PersonId, model::Person>& all);

}  // namespace limbledger::service
