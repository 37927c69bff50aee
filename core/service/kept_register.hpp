// The people of the clinic made ready for asking who may be registered twice, with the weights learnt from them: seconds of work at
// 20,000 people. It is kept while the ledger is open; comparing goes on call by call, none longer than a page may take, and is made anew once
// something came about people. After a decision only the weights are learnt anew, from what was compared already.
#pragma once

#include "core/match/register.hpp"

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

namespace limbledger::service {

struct KeptRegister {
  std::unique_ptr<match::Register> people;
  std::uint64_t of_changes = 0;
  std::optional<std::uint64_t> of_pair_changes;  // what was learnt, and the undecided: once all are compared
  std::vector<match::PersonPair> undecided;      // worth asking about, most weighty first
};

}  // namespace limbledger::service
