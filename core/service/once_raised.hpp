// Which alerts one exam has raised, state by state as its writers were shown it, kept while the ledger is open: with each finding only
// the newest state is judged, and not all that came before. A state is named by the entries it ends in. What was kept holds for one
// person as known now, one day and one count of side exchanges; else it is worked out again and is the same.
#pragma once

#include "core/model/exam/exam.hpp"
#include "core/model/person.hpp"
#include "core/reference/alert_row.hpp"

#include <map>
#include <optional>
#include <vector>

namespace limbledger::service {

struct OnceRaised {
  struct Alert {
    const reference::AlertRow* row = nullptr;
    std::optional<model::Side> side;
    bool listed = true;  // false: shown inside a graver one
  };
  struct State {
    std::vector<Alert> raised;
    std::optional<model::Exam> exam;  // only where it was wanted again
  };
  std::optional<model::Person> person;
  model::PartialDate as_of;
  std::size_t exchanges = 0;
  std::map<std::vector<model::EntryId>, State> states;
};

}  // namespace limbledger::service
