#include "core/ledger/parcel/carry.hpp"

#include <iterator>
#include <utility>

namespace limbledger::ledger {

namespace {

// What a holder has said it holds.
Result<std::vector<HaveRow>> held_by(LogStore& store, const model::ReplicaId& holder) {
  const auto heads = store.heads();
  if (!heads) {
    return heads.error();
  }
  std::vector<HaveRow> out;
  const auto kept = heads->meta.find(receipt_name(holder));
  if (kept == heads->meta.end()) {
    return out;
  }
  const auto receipt = Receipt::from_bytes(kept->second);
  if (!receipt) {
    return receipt.error();
  }
  for (const Receipt::Line& line : receipt->lines) {
    out.push_back(have_row(line.place));
  }
  return out;
}

// Reads the whole of it; `on_runs` gets the runs as they become whole.
Result<ParcelTaken> go_through(const model::ClinicId& clinic, const std::map<std::uint32_t, BoxPair>& epochs, ParcelSource& source, bool cut_too,
                               const std::function<Result<void>(std::vector<Run>, bool)>& on_runs) {
  if (auto begun = source.rewind(); !begun) {
    return begun.error();
  }
  ParcelReader reader(clinic, epochs);
  while (!reader.is_whole()) {
    const auto piece = source.next();
    if (!piece) {
      return piece.error();
    }
    if (piece->empty()) {
      break;
    }
    if (auto fed = reader.feed(*piece); !fed) {
      return fed.error();
    }
    if (auto done = on_runs(reader.take_runs(), false); !done) {
      return done.error();
    }
  }
  if (auto ended = reader.finish(); !ended && !cut_too) {
    return ended.error();
  }
  if (auto done = on_runs({}, true); !done) {
    return done.error();
  }
  ParcelTaken out;
  out.entries = reader.entries();
  out.runs = reader.runs();
  out.is_whole = reader.is_whole();
  return out;
}

std::size_t bytes_in(const std::vector<Run>& runs) {
  std::size_t out = 0;
  for (const Run& run : runs) {
    for (const Row& row : run.rows) {
      out += row.header.size() + row.body.size();
    }
  }
  return out;
}

}  // namespace

Result<ParcelWritten> write_parcel(Member& member, std::uint32_t epoch, const PublicKey& epoch_pub, const std::optional<model::ReplicaId>& holder,
                                   const ParcelSink& sink) {
  const auto own = stored_intro(member.store, member.clinic, member.replica());
  if (!own || own->purpose == Purpose::practice) {
    return wire::Fault(own ? "exchange.purpose" : "ledger.none", "", own ? "a ledger that is not for practice" : "a ledger whose own chain has begun");
  }
  const auto chains = chains_to_give(member.store);
  const auto held = holder ? held_by(member.store, *holder) : Result<std::vector<HaveRow>>(std::vector<HaveRow>());
  if (!chains || !held) {
    return chains ? held.error() : chains.error();
  }
  ParcelSealer sealer(member.clinic, epoch, epoch_pub, ParcelDraw::from(member.world));
  ParcelWritten out;
  const auto give = [&]() -> Result<void> {
    const Bytes ready = sealer.take();
    out.size += ready.size();
    return ready.empty() ? Result<void>() : sink(ready);
  };
  for (const model::ReplicaId& replica : *chains) {
    std::vector<HaveRow> points = *held;
    for (bool more = true; more;) {
      Sending sending;
      if (auto added = add_lacking(member.store, replica, points, 1, UINT64_MAX >> 1U, message_budget, sending); !added) {
        return added.error();
      }
      for (const Run& run : sending.runs) {
        sealer.add(run);
        points.push_back(have_row({run.replica, run.head.seq, run.head.hash}));
      }
      if (auto given = give(); !given) {
        return given.error();
      }
      more = sending.more && !sending.runs.empty();
    }
  }
  sealer.finish();
  if (auto given = give(); !given) {
    return given.error();
  }
  out.entries = sealer.entries();
  out.runs = sealer.runs();
  return out;
}

Result<ParcelTaken> check_parcel(const model::ClinicId& clinic, const std::map<std::uint32_t, BoxPair>& epochs, ParcelSource& source) {
  return go_through(clinic, epochs, source, false, [](std::vector<Run>, bool) { return Result<void>(); });
}

Result<ParcelTaken> take_parcel(Member& member, const std::map<std::uint32_t, BoxPair>& epochs, ParcelSource& source, bool cut_too,
                                const std::function<void(std::uint64_t)>& told) {
  const auto seen = go_through(member.clinic, epochs, source, cut_too, [](std::vector<Run>, bool) { return Result<void>(); });
  if (!seen) {
    return seen.error();
  }
  Taken taken;
  std::uint64_t looked_at = 0;
  std::vector<Run> waiting_runs;
  const auto take_some = [&](std::vector<Run> runs, bool last) -> Result<void> {
    std::move(runs.begin(), runs.end(), std::back_inserter(waiting_runs));
    if (waiting_runs.empty() || (!last && bytes_in(waiting_runs) < message_budget)) {
      return {};
    }
    for (const Run& run : waiting_runs) {
      looked_at += run.rows.size();
    }
    const auto one = take(member, std::exchange(waiting_runs, {}));
    if (!one) {
      return one.error();
    }
    add_taken(taken, *one);
    if (told) {
      told(looked_at);
    }
    return {};
  };
  auto out = go_through(member.clinic, epochs, source, cut_too, take_some);
  if (!out) {
    return out.error();
  }
  out->taken = taken;
  // Also where an earlier reading was broken off after it had taken them: it writes only what no witness names yet.
  if (auto written = witness_if_hub(member); !written) {
    return written.error();
  }
  if (auto flushed = member.store.flush(); !flushed) {
    return flushed.error();
  }
  return out;
}

}  // namespace limbledger::ledger
