// Which alerts one exam has raised, state by state as its writers were shown it, kept while the ledger is open: with each finding only
// the newest state is judged, and not all that came before. A state is named by the entries it ends in, and judged by what was known of
// its person then. What was kept holds for one count of side exchanges; else it is worked out again and is the same.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/model/exam/exam.hpp"
#include "core/model/person.hpp"
#include "core/reference/alert_row.hpp"

#include <functional>
#include <list>
#include <map>
#include <optional>
#include <string_view>
#include <utility>
#include <vector>

namespace limbledger::service {

struct OnceRaised {
  struct Alert {
    const reference::AlertRow* row = nullptr;
    std::optional<model::Side> side;
    bool listed = true;  // false: shown inside a graver one
    reference::AlertClass urgency{};
    std::string_view what{};                  // which message
    std::vector<model::FindingId> grounds{};  // in order; what an addendum found goes by its entry
  };
  // What alerts are judged by beside the findings.
  struct Opening {
    model::Word complaint;
    std::optional<model::Side> side;
    std::optional<model::PartialDate> injured_on;
    std::optional<model::WhoSpoke> who_spoke;
    std::optional<model::OffsetMinutes> offset_min;
    std::optional<model::PartialDate> examined_on;
    std::optional<bool> day_doubtful;
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

// How often each alert had to be shown, over states told oldest first: it came, or came again; became more urgent; said what it had not
// said; or rests on what it had not rested on, since it last came. What goes of its grounds is nothing to interrupt for.
class TimesRaised {
 public:
  // `knew`: whether this state was told by somebody who knew the state of that number (from 0, as they were added): another writer's, who
  // did not, takes no alert back.
  using Knew = std::function<bool(std::size_t earlier)>;
  void add(const std::vector<OnceRaised::Alert>& state, const Knew& knew);
  // What was said of an alert and answers it no more is one more time each.
  void mark(std::vector<interpret::Alert>& alerts) const;

 private:
  struct Told {
    OnceRaised::Alert newest;  // with every ground since it last came
    std::vector<std::string_view> said;
    std::size_t times = 0;
    std::size_t last = 0;  // the newest state in which it stood
    bool stands = false;
  };
  std::vector<Told> told_;
  std::size_t states_ = 0;
};

}  // namespace limbledger::service
