// What every store agrees on beyond the port: how much may be parked, and the fault of a row that contradicts one held.
#pragma once

#include "core/ledger/entry.hpp"

namespace limbledger::store {

// Rows that wait for an earlier stick; more are refused until those have come.
constexpr std::size_t parked_count_max = 200000;

[[nodiscard]] inline wire::Fault contradiction(const ledger::Row& row) {
  return ledger::entry_fault("entry.hash", row.replica, row.seq, row.hash, "the bytes already held under this hash");
}

[[nodiscard]] inline wire::Fault parked_full() {
  return wire::Fault("limit.items", "", "at most " + std::to_string(parked_count_max) + " parked entries");
}

}  // namespace limbledger::store
