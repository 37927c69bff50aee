// What people did in the simulated clinic, as they know it themselves: what they wrote, what stood on their screen when they opened
// the form, and which of it they meant to replace. Nothing here is read from a ledger's pointers; the oracle judges by this alone.
#pragma once

#include "core/ledger/body.hpp"
#include "core/ledger/log/log.hpp"
#include "core/model/link.hpp"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace limbledger::ledger::clinic_sim {

using ActId = std::size_t;
using Acts = std::set<ActId>;

enum class Deed : std::uint8_t {
  open,        // an exam, with its first findings in one request
  record,      // a new finding
  correct,     // a finding that was on the screen
  settle,      // one slot that was shown in conflict
  put_off,     // the same slot, whose writer was asked
  take_back,   // a finding that was on the screen
  withdraw,    // the whole exam
  sign,
  add,         // an addendum
  impress,     // an impression
  newer,       // an operation that only a newer program reads
  enrol,       // a person is registered
  amend,       // a person's home or birth
  decide,      // whether two records are of one person
  report,      // a count of the month, in two operations, after the reports on the screen
  other_kind,  // an entry of a kind that only a newer program knows
};

// One operation of an act.
struct Part {
  std::string words;   // stands in it and nowhere else
  std::string slot;    // of a finding: item and side
  std::string finding;
  std::set<std::string> replaces;  // words of the parts on the screen that it was to replace
};

struct Act {
  Deed deed{};
  model::ObjectId object;
  model::RequestId request;
  Acts seen;  // of this object: what stood on the screen
  std::vector<Part> parts;
  bool by_newer_program = false;        // a finding with a member that nobody here knows
  std::optional<std::string> home;      // enrol, amend
  std::optional<std::string> birth;
  std::pair<model::PersonId, model::PersonId> pair;  // decide
  model::SamePerson same{};
  std::optional<Place> place;           // other_kind: where it stands
};

// All that was ever tried, by anybody; each once, however often it was sent.
class Doings {
 public:
  ActId add(Act act) {
    of_request_[act.request] = all_.size();
    all_.push_back(std::move(act));
    return all_.size() - 1;
  }
  // The same act under another request.
  void also(const model::RequestId& request, ActId id) { of_request_[request] = id; }
  [[nodiscard]] const Act& at(ActId id) const { return all_.at(id); }
  [[nodiscard]] Act& at(ActId id) { return all_.at(id); }
  [[nodiscard]] std::size_t size() const { return all_.size(); }
  [[nodiscard]] std::optional<ActId> find(const model::RequestId& request) const {
    const auto found = of_request_.find(request);
    return found == of_request_.end() ? std::nullopt : std::optional(found->second);
  }
  // Neither had the other on the screen.
  [[nodiscard]] bool unseen(ActId a, ActId b) const { return a != b && !at(a).seen.contains(b) && !at(b).seen.contains(a); }

 private:
  std::vector<Act> all_;
  std::map<model::RequestId, ActId> of_request_;
};

}  // namespace limbledger::ledger::clinic_sim
