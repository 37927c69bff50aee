// What an exchange door holds; seen by the files that work on it.
#pragma once

#include "core/ledger/exchange/session.hpp"
#include "core/service/desk.hpp"
#include "core/service/exchange/door.hpp"

namespace limbledger::service {

struct ExchangeDoor::Inside {
  Inside(Desk& of, const ledger::SignKey& device_key) : desk(of), key(device_key) {}

  Desk& desk;
  ledger::SignKey key;

  [[nodiscard]] ledger::Member member() { return {desk.store(), desk.world(), desk.clinic(), key}; }
};

}  // namespace limbledger::service
