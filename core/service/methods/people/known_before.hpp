// Whose an exam was, and what was known of them, at each point of its history: an alert is judged by the date of birth and the sex that
// stood when its inputs did, and by the person whose exam it then was (clinical safety, C2). Entries of two objects name nothing of each
// other: the stamps of the ledger's own clock order them.
#pragma once

#include "core/service/methods/exam/common.hpp"

#include <optional>
#include <vector>

namespace limbledger::service {

// What of a person alerts are judged by and differs: person.birth, person.sex, person.norm_sex.
[[nodiscard]] std::vector<model::Word> what_differs(const std::optional<model::Person>& before, const std::optional<model::Person>& now);

class PersonsKnown {
 public:
  // Nearly always one person of whom nothing changed since the exam was opened: then it costs a look at the entries.
  PersonsKnown(Context& context, const ledger::ExamRecord& record);

  // What was known of this person by what came before the stamp, or with it; good as long as this is.
  [[nodiscard]] const std::optional<model::Person>& at(const std::optional<model::PersonId>& person, const ledger::Stamp& stamp, bool with = false) const;
  // When something of one of them was corrected while the exam was there, in order.
  [[nodiscard]] const std::vector<ledger::Stamp>& corrections() const { return corrections_; }

 private:
  struct Version {
    ledger::Stamp from;
    std::optional<model::Person> person;
  };
  struct Known {
    model::PersonId id;
    std::vector<Version> versions;  // never empty; the first holds from ever
  };
  void add(Context& context, const model::PersonId& id, const ledger::Stamp& opened);

  std::vector<Known> known_;
  std::vector<ledger::Stamp> corrections_;
  std::optional<model::Person> nobody_;
};

}  // namespace limbledger::service
