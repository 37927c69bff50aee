// Taking runs in: each is checked by its own head's signature, by who its replica is (enrolled, or the heir of one that is) and
// by where it joins, and all that holds is stored in one transaction. A run that does not join, or whose replica nobody has
// enrolled yet, is parked: neither folded nor receipted, counted, and tried again with whatever comes. Bad bytes refuse the whole
// message. Taking the same again changes nothing. It does not wait for the disk: whoever says that it is held, or is done with an
// exchange, flushes before. Works on a locked ledger: an open log catches up afterwards.
// Source: ledger, items 5, 16, 21 and 23.
#pragma once

#include "core/ledger/exchange/run.hpp"
#include "core/ledger/log/plain.hpp"
#include "core/ledger/trust/trust.hpp"

#include <vector>

namespace limbledger::ledger {

struct Taken {
  std::uint64_t entries = 0;      // new here
  std::uint64_t known = 0;        // were here already
  std::uint64_t parked = 0;       // of what came now: put aside to wait
  std::uint64_t turned_away = 0;  // there was no more room to wait in; sent again later
  // Entries of the own chain that this device no longer had: it was restored from an older copy. From here on it writes nothing
  // under this replica, also after a restart.
  bool own_came_back = false;
};
inline void add_taken(Taken& to, const Taken& more) {
  to.entries += more.entries;
  to.known += more.known;
  to.parked += more.parked;
  to.turned_away += more.turned_away;
  to.own_came_back = to.own_came_back || more.own_came_back;
}

// Faults: entry.* with the place, exchange.purpose (demonstration and clinic do not mix), ledger.none (no own chain yet), and the
// store's own.
[[nodiscard]] Result<Taken> take(Member& member, std::vector<Run> runs);

// Parked entries of one replica: what they are and what is missing before them.
struct Waiting {
  model::ReplicaId replica;
  std::uint64_t first = 0;
  std::uint64_t entries = 0;
  std::uint64_t held_to = 0;  // the newest entry of this replica that is held; the gap is between
};
[[nodiscard]] Result<std::vector<Waiting>> waiting(LogStore& store);

// The introduction a stored chain begins with, where it is of this clinic.
[[nodiscard]] std::optional<Intro> stored_intro(LogStore& store, const model::ClinicId& clinic, const model::ReplicaId& replica);
[[nodiscard]] Result<Trust> stored_trust(LogStore& store, const model::ClinicId& clinic);
[[nodiscard]] Result<Trust> stored_trust(LogStore& store, const model::ClinicId& clinic, CheckedOrders& checked);

}  // namespace limbledger::ledger
