// Decisions about pairs of person records -> who is one with whom. A function of the set of operations, as every fold. A pair whose
// deciders had not seen each other, and say different things, is undecided and shown as a conflict; so is a group that holds two
// people of whom it was decided that they are not the same: then nobody of it is shown as one with another, because two people in
// one record harm more than one person in two. Edges only: no record is changed, so separating gives back both as they were.
// Source: ledger, items 18 and 31.
#pragma once

#include "core/ledger/fold/fold.hpp"

#include <map>
#include <optional>
#include <set>
#include <span>
#include <vector>

namespace limbledger::ledger {

using PersonPair = std::pair<model::PersonId, model::PersonId>;  // the lower id first

struct Decided {
  model::EntryId entry;
  model::SamePerson same{};
  model::PairReason reason{};
  std::optional<model::PersonId> shown_under;
  std::optional<model::ExaminerId> by;
  model::Instant at;
};

struct PairFold {
  PersonPair persons;
  std::optional<model::SamePerson> same;  // yes or no; nothing when undone, or while two decisions stand against each other
  bool in_conflict = false;
  bool contradicted = false;              // a yes that would make one of two who are not
  std::vector<Decided> heads;             // what stands, by entry: several in a conflict
  std::vector<Decided> history;           // all of it, in the order of display
};

struct LinkFold {
  std::map<PersonPair, PairFold> pairs;
  std::vector<model::EntryMark> marks;                    // void: not signed by its examiner, not of two people
  std::map<model::PersonId, std::set<model::PersonId>> groups;  // of who is one with others: all of them, oneself too
  std::map<model::PersonId, model::PersonId> shown_under;       // of the same

  // All who are one with this person, by id; the person alone where nobody is.
  [[nodiscard]] std::set<model::PersonId> group_of(const model::PersonId& person) const;
};

[[nodiscard]] LinkFold fold_links(std::span<const Opened> clinic_operations, const ExaminerKeys& keys, const model::ClinicId& clinic);

}  // namespace limbledger::ledger
