// A run: entries of one chain from a known point to a signed head, as they are sent and filed. Reading one checks its shape and
// links its hashes from the point it names; whether that point is known and who signed is asked where it is taken. The other
// way: which runs another lacks, by the points it says it holds. Runs end at heads alone, so a commit is whole everywhere.
// Source: ledger, items 5, 6 and 21; the format's section 12.
#pragma once

#include "core/ledger/chain.hpp"
#include "core/ledger/exchange/have.hpp"

#include <span>
#include <vector>

namespace limbledger::ledger {

struct Run {
  model::ReplicaId replica;
  std::uint64_t first = 1;
  Hash before{};  // the entry hash it starts from
  std::vector<Row> rows;
  Head head;
};

void put_run(ByteWriter& out, const Run& run);
// Faults: entry.format, entry.size, entry.gap (no entries), entry.head (a head that does not end it), with the place.
[[nodiscard]] Result<Run> read_run(ByteReader& in);

struct Sending {
  std::vector<Run> runs;
  std::size_t size = 0;  // bytes of the runs
  bool more = false;     // the budget was spent before all was said
};

// Adds what whoever holds `held` (points of any chains) lacks of one chain of ours, from `from` at the least, to the first head
// at or past `to`, once all of that chain is on the disk. At least one run is added where there is one, then as many as `budget` bytes
// allow.
[[nodiscard]] Result<void> add_lacking(LogStore& store, const model::ReplicaId& replica, std::span<const HaveRow> held, std::uint64_t from,
                                       std::uint64_t to, std::size_t budget, Sending& sending);

}  // namespace limbledger::ledger
