// The people of the clinic made ready for asking who may be registered twice, with the weights learnt from them: seconds of work at
// 20,000 people, so it is kept while the ledger is open and made anew once something came about people or pairs.
#pragma once

#include "core/match/register.hpp"

#include <cstdint>
#include <memory>

namespace limbledger::service {

struct KeptRegister {
  std::unique_ptr<match::Register> people;
  std::uint64_t of_changes = 0;
};

}  // namespace limbledger::service
