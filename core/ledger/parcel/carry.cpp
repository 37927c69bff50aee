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

Result<ParcelWriting> ParcelWriting::begin(Member& member, std::uint32_t epoch, const PublicKey& epoch_pub, const std::optional<model::ReplicaId>& holder) {
  const auto own = stored_intro(member.store, member.clinic, member.replica());
  if (!own || own->purpose == Purpose::practice) {
    return wire::Fault(own ? "exchange.purpose" : "ledger.none", "", own ? "a ledger that is not for practice" : "a ledger whose own chain has begun");
  }
  auto chains = chains_to_give(member.store);
  auto held = holder ? held_by(member.store, *holder) : Result<std::vector<HaveRow>>(std::vector<HaveRow>());
  if (!chains || !held) {
    return chains ? held.error() : chains.error();
  }
  return ParcelWriting(member, std::move(*chains), std::move(*held), ParcelSealer(member.clinic, epoch, epoch_pub, ParcelDraw::from(member.world)));
}

Result<Bytes> ParcelWriting::next() {
  Bytes ready;
  while (ready.empty() && !is_over_) {
    if (at_ == chains_.size()) {
      sealer_.finish();
      out_.entries = sealer_.entries();
      out_.runs = sealer_.runs();
      is_over_ = true;
    } else {
      Sending sending;
      if (auto added = add_lacking(member_.store, chains_[at_], points_, 1, UINT64_MAX >> 1U, message_budget, sending); !added) {
        return added.error();
      }
      for (const Run& run : sending.runs) {
        sealer_.add(run);
        points_.push_back(have_row({run.replica, run.head.seq, run.head.hash}));
      }
      if (!sending.more || sending.runs.empty()) {
        ++at_;
        points_ = held_;
      }
    }
    ready = sealer_.take();
  }
  out_.size += ready.size();
  return ready;
}

Result<ParcelTaking::Wants> ParcelTaking::feed(View piece) {
  if (piece.empty()) {
    return end();
  }
  if (auto fed = reader_->feed(piece); !fed) {
    return fed.error();
  }
  std::vector<Run> runs = reader_->take_runs();
  for (const Run& run : runs) {
    looked_at_ += run.rows.size();
  }
  if (is_taking_) {
    std::move(runs.begin(), runs.end(), std::back_inserter(waiting_));
    if (auto done = take_some(false); !done) {
      return done.error();
    }
  }
  return Wants::more;  // also after its end: what stands there is counted
}

Result<void> ParcelTaking::take_some(bool last) {
  if (waiting_.empty() || (!last && bytes_in(waiting_) < message_budget)) {
    return {};
  }
  const auto one = take(member_, std::exchange(waiting_, {}));
  if (!one) {
    return one.error();
  }
  add_taken(out_.taken, *one);
  return {};
}

Result<ParcelTaking::Wants> ParcelTaking::end() {
  if (auto ended = reader_->finish(); !ended && !cut_too_) {
    return ended.error();
  }
  if (auto done = take_some(true); !done) {
    return done.error();
  }
  out_.entries = reader_->entries();
  out_.runs = reader_->runs();
  out_.is_whole = reader_->is_whole();
  out_.after_end = reader_->after_end();
  if (takes_ && !is_taking_) {
    is_taking_ = true;
    looked_at_ = 0;
    reader_.emplace(member_.clinic, *epochs_);
    return Wants::from_start;
  }
  if (!is_taking_) {
    return Wants::nothing;
  }
  // Also where an earlier reading was broken off after it had taken them: it writes only what no witness names yet.
  if (auto written = witness_if_hub(member_); !written) {
    return written.error();
  }
  if (auto flushed = member_.store.flush(); !flushed) {
    return flushed.error();
  }
  return Wants::nothing;
}

}  // namespace limbledger::ledger
