// The invented people that a practice ledger begins with, so that who learns has somebody to examine. Their names say what they are;
// nothing about them is anybody's. They are registered by the method itself, under the first examiner.
#pragma once

#include "core/ledger/port.hpp"
#include "core/ledger/world.hpp"
#include "core/service/desk.hpp"

#include <string_view>

namespace limbledger::rpc {

// Into a ledger that was just made and stands in `store`. Faults: those of opening and of person.register.
[[nodiscard]] Result<std::size_t> register_invented_people(ledger::LogStore& store, ledger::World& world, const service::MadeLedger& made,
                                                           std::string_view passphrase);

}  // namespace limbledger::rpc
