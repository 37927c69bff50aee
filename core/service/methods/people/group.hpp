// Who is one person with whom, as it was decided: for every list of a person's exams, and for the comparison with earlier ones.
#pragma once

#include "core/ledger/fold/records.hpp"
#include "core/service/context.hpp"
#include "core/service/desk.hpp"

#include <set>

namespace limbledger::service {

// The person alone where nothing was decided, or where the decisions cannot be read.
[[nodiscard]] inline std::set<model::PersonId> group_of(Context& context, const model::PersonId& person) {
  const auto links = context.desk->records().links();
  return links ? (*links)->group_of(person) : std::set<model::PersonId>{person};
}

// Of one of them, and of nobody else besides.
[[nodiscard]] inline bool is_of_group(const std::vector<model::PersonId>& persons, const std::set<model::PersonId>& group) {
  for (const model::PersonId& one : persons) {
    if (!group.contains(one)) {
      return false;
    }
  }
  return !persons.empty();
}
[[nodiscard]] inline bool touches_group(const std::vector<model::PersonId>& persons, const std::set<model::PersonId>& group) {
  for (const model::PersonId& one : persons) {
    if (group.contains(one)) {
      return true;
    }
  }
  return false;
}

}  // namespace limbledger::service
