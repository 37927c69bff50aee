// Which alerts one exam has raised, state by state as its writers were shown it, kept while the ledger is open: with each finding only
// the newest state is judged, and not all that came before. A state is named by the entries it ends in, and judged by what was known of
// its person then. What was kept holds for one count of side exchanges; else it is worked out again and is the same.
#pragma once

#include "core/model/exam/exam.hpp"
#include "core/model/person.hpp"
#include "core/reference/alert_row.hpp"

#include <list>
#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace limbledger::service {

struct OnceRaised {
  struct Alert {
    const reference::AlertRow* row = nullptr;
    std::optional<model::Side> side;
    bool listed = true;  // false: shown inside a graver one
  };
  // What alerts are judged by beside the findings.
  struct Opening {
    model::Word complaint;
    std::optional<model::Side> side;
    std::optional<model::PartialDate> injured_on;
    std::optional<model::WhoSpoke> who_spoke;
    std::optional<model::OffsetMinutes> offset_min;
  };
  struct State {
    bool read = false;                                                // opening and person are those of the exam
    std::optional<model::PersonId> person;                            // whose it was
    Opening opening;
    std::list<std::pair<std::size_t, std::vector<Alert>>> raised;     // by what was known of the person: its place in `known`
    std::optional<model::Exam> exam;                                  // only where it was wanted again
  };
  std::vector<std::optional<model::Person>> known;  // different in what alerts are judged by
  std::size_t exchanges = 0;
  std::map<std::vector<model::EntryId>, State> states;
};

}  // namespace limbledger::service
