// The side of an exchange that calls.
#include "core/ledger/exchange/session.hpp"

#include "core/ledger/trust/trust.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {

constexpr std::size_t rounds_max = 4;  // of asking and giving: one does both, the next fetches what the other wrote about it

}  // namespace

Result<std::vector<model::ReplicaId>> chains_to_give(LogStore& store) {
  const auto orders = stored_orders(store);
  const auto leaves = leaves_of(store);
  if (!orders || !leaves) {
    return orders ? leaves.error() : orders.error();
  }
  std::vector<model::ReplicaId> out;
  const auto add = [&out](const model::ReplicaId& replica) {
    if (std::find(out.begin(), out.end(), replica) == out.end()) {
      out.push_back(replica);
    }
  };
  for (const Row& order : *orders) {
    add(order.replica);
  }
  for (const Place& leaf : *leaves) {
    add(leaf.replica);
  }
  return out;
}

Caller::Caller(Member member, const Exporter& exporter, std::size_t budget) : member_(member), exporter_(exporter), budget_(budget) {}

Result<std::optional<Bytes>> Caller::next() {
  if (!waiting_for_answer_) {
    auto made = make();
    if (!made) {
      step_ = Step::over;
      return made.error();
    }
    waiting_for_answer_ = std::move(*made);
    if (waiting_for_answer_) {
      ++out_.messages;
      out_.sent_size += waiting_for_answer_->size();
    }
  }
  return waiting_for_answer_;
}

Result<std::optional<Bytes>> Caller::make() {
  std::optional<Bytes> none;
  if (step_ == Step::hello) {
    auto hello = make_hello();
    return hello ? Result<std::optional<Bytes>>(std::optional<Bytes>(std::move(*hello))) : Result<std::optional<Bytes>>(hello.error());
  }
  if (aside_ && step_ == Step::ask) {
    auto ahead = make_take_ahead();
    if (!ahead || *ahead) {
      return ahead;
    }
    if (auto done = take_in(); !done) {
      return done.error();
    }
  }
  if (step_ == Step::ask && rounds_ < rounds_max) {
    auto ask = make_ask();
    if (!ask || *ask) {
      return ask;
    }
    has_given_ = false;
    auto take = make_take();
    if (!take || *take) {
      step_ = Step::give;
      return take;
    }
  }
  if (step_ == Step::give) {
    auto take = make_take();
    if (!take || *take) {
      return take;
    }
    // The receipt may name what is new here: a hub writes down what it was given.
    step_ = Step::ask;
    ++rounds_;
    return make();
  }
  if (step_ != Step::over) {
    step_ = Step::over;
    if (auto flushed = member_.store.flush(); !flushed) {
      return flushed.error();
    }
    if (auto compared = compare(); !compared) {
      return compared.error();
    }
  }
  return none;
}

Result<void> Caller::receive(View answer) {
  if (!waiting_for_answer_) {
    return wire::Fault("exchange.message", "", "no answer before a call");
  }
  const auto asked = message_kind(*waiting_for_answer_);
  waiting_for_answer_.reset();
  out_.got_size += answer.size();
  Result<void> done = *asked == MessageKind::hello ? receive_same(answer) : *asked == MessageKind::ask ? receive_runs(answer) : receive_receipt(answer);
  if (!done) {
    step_ = Step::over;
  }
  return done;
}

Result<void> Caller::put_aside(Bytes answer) {
  if (!waiting_for_answer_ || message_kind(*waiting_for_answer_) != MessageKind::ask) {
    return receive(answer);
  }
  waiting_for_answer_.reset();
  out_.got_size += answer.size();
  aside_ = std::move(answer);
  return {};
}

Result<void> Caller::take_in() {
  if (!aside_) {
    return {};
  }
  const Bytes answer = std::move(*aside_);
  aside_.reset();
  auto done = receive_runs(answer);
  if (!done) {
    step_ = Step::over;
    waiting_for_answer_.reset();
  }
  return done;
}

// Both hold the same leaves, as far as the other told.
Result<void> Caller::compare() {
  const auto leaves = leaves_of(member_.store);
  if (!leaves) {
    return leaves.error();
  }
  out_.is_same = leaves->size() == theirs_.size() && std::all_of(leaves->begin(), leaves->end(), [this](const Place& leaf) {
                   return std::find(theirs_.begin(), theirs_.end(), have_row(leaf)) != theirs_.end();
                 });
  return {};
}

Result<Bytes> Caller::make_hello() {
  const auto intro = stored_intro(member_.store, member_.clinic, member_.replica());
  if (!intro) {
    return wire::Fault("ledger.none", "", "a ledger whose own chain has begun");
  }
  if (intro->purpose == Purpose::practice) {
    return wire::Fault("exchange.purpose", "", "a ledger that is not for practice");
  }
  if (auto flushed = member_.store.flush(); !flushed) {
    return flushed.error();
  }
  const auto leaves = leaves_of(member_.store);
  const auto elsewhere = held_elsewhere(member_);
  if (!leaves || !elsewhere) {
    return leaves ? elsewhere.error() : leaves.error();
  }
  Hello hello = sign_hello(member_.device_key, member_.clinic, exporter_, have_digest(*leaves));
  if (shows_all_ || std::none_of(elsewhere->begin(), elsewhere->end(), [](const HeldElsewhere& one) { return one.held != 0; })) {
    if (auto added = add_introduction(hello); !added) {
      return added.error();
    }
  }
  return hello.to_bytes(member_.clinic, exporter_);
}

Result<void> Caller::add_introduction(Hello& hello) {
  auto first = member_.store.read(member_.replica(), 1, 1, 1);
  if (!first || first->empty()) {
    return first ? Result<void>(wire::Fault("entry.gap", "")) : Result<void>(first.error());
  }
  // The introduction alone, with a head of its own: it is a commit by itself.
  Run run;
  run.replica = member_.replica();
  run.before = start_of({member_.clinic, run.replica, member_.device_key.pub()}).hash;
  run.head = sign_head(member_.device_key, member_.clinic, run.replica, 1, first->front().hash);
  run.rows = std::move(*first);
  auto intro = intro_of(run.rows.front());
  hello.introduction = std::move(run);
  while (shows_all_ && intro && intro->has_predecessor() && hello.before.size() < heirs_max) {
    const model::ReplicaId before = intro->predecessor.replica;
    auto rows = member_.store.read(before, 1, 1, 1);
    if (!rows) {
      return rows.error();
    }
    if (rows->empty() || rows->front().state != RowState::whole) {
      break;
    }
    intro = intro_of(rows->front());
    hello.before.push_back(std::move(rows->front()));
  }
  return {};
}

bool Caller::shows_more(std::string_view code) {
  // What was given ahead is refused: what can be had comes first, and the last TAKE meets the same.
  if (waiting_for_answer_ && step_ == Step::ask && message_kind(*waiting_for_answer_) == MessageKind::take) {
    waiting_for_answer_.reset();
    gives_ahead_ = false;
    return true;
  }
  const bool again = waiting_for_answer_ && step_ == Step::hello && !shows_all_ && code == "replica.unknown";
  waiting_for_answer_.reset();
  if (again) {
    shows_all_ = true;
  } else {
    step_ = Step::over;
  }
  return again;
}

Result<void> Caller::know_peer(const Same& same) {
  const auto heads = member_.store.heads();
  if (!heads) {
    return heads.error();
  }
  std::vector<PublicKey> keys;
  if (const auto hub = heads->meta.find(std::string(hub_key_name)); hub != heads->meta.end() && hub->second.size() == 32) {
    std::copy(hub->second.begin(), hub->second.end(), keys.emplace_back().begin());
  }
  for (const Head& head : heads->newest) {
    if (const auto intro = stored_intro(member_.store, member_.clinic, head.replica)) {
      keys.push_back(intro->sign_pub);
    }
  }
  for (const PublicKey& key : keys) {
    if (key != member_.device_key.pub() && verify_same(key, exporter_, same)) {
      out_.peer = replica_of(member_.clinic, key);
      return {};
    }
  }
  return wire::Fault("replica.unknown", "", "an answer signed by a replica of this clinic");
}

Result<void> Caller::receive_same(View answer) {
  const auto same = Same::from_bytes(answer);
  if (!same) {
    return same.error();
  }
  if (auto known = know_peer(*same); !known) {
    return known;
  }
  const auto leaves = leaves_of(member_.store);
  if (!leaves) {
    return leaves.error();
  }
  theirs_ = same->have;
  if (same->is_same && same->digest == have_digest(*leaves)) {
    for (const Place& leaf : *leaves) {
      theirs_.push_back(have_row(leaf));
    }
  }
  step_ = Step::ask;
  return {};
}

Result<std::optional<Bytes>> Caller::make_ask() {
  Ask ask;
  asked_.clear();
  for (const HaveRow& row : theirs_) {
    if ((row.flags & have_parked) != 0 || given_up_.contains(row.replica)) {
      continue;
    }
    const auto here = holds(member_.store, row);
    if (!here) {
      return here.error();
    }
    if (*here) {
      continue;
    }
    if (asked_.insert(row.replica).second) {
      const auto points = points_of(member_.store, row.replica);
      if (!points) {
        return points.error();
      }
      ask.held.insert(ask.held.end(), points->begin(), points->end());
      ask.wants.push_back({row.replica, 1, row.seq, 0});
    }
    for (Want& want : ask.wants) {
      want.to = want.replica == row.replica ? std::max(want.to, row.seq) : want.to;
    }
    if (ask.wants.size() == Ask::wants_max) {
      break;
    }
  }
  return ask.wants.empty() ? std::optional<Bytes>() : std::optional<Bytes>(ask.to_bytes());
}

Result<void> Caller::receive_runs(View answer) {
  auto runs = Runs::from_bytes(answer, MessageKind::runs);
  if (!runs) {
    return runs.error();
  }
  const bool more = runs->mark;
  std::set<model::ReplicaId> came;
  for (const Run& run : runs->runs) {
    came.insert(run.replica);
  }
  const auto taken = take(member_, std::move(runs->runs));
  if (!taken) {
    return taken.error();
  }
  add_taken(out_.taken, *taken);
  if (taken->entries == 0) {
    // Nothing of it could be had, or it waits: not asked for again in this exchange.
    const std::set<model::ReplicaId>& done = more && !came.empty() ? came : asked_;
    given_up_.insert(done.begin(), done.end());
  }
  return {};
}

Result<bool> Caller::needs_receipt() {
  const auto elsewhere = held_elsewhere(member_);
  if (!elsewhere) {
    return elsewhere.error();
  }
  return std::none_of(elsewhere->begin(), elsewhere->end(), [this](const HeldElsewhere& one) { return one.holder == out_.peer && one.not_held == 0; });
}

Result<std::optional<Bytes>> Caller::make_take() {
  if (has_sent_last_) {
    has_sent_last_ = gives_no_more_ = false;
    return std::optional<Bytes>();
  }
  const auto chains = chains_to_give(member_.store);
  if (!chains) {
    return chains.error();
  }
  Sending sending;
  for (const model::ReplicaId& replica : *chains) {
    if (gives_no_more_) {
      break;
    }
    if (given_up_.contains(replica)) {
      continue;  // what they hold of it is not known here, so neither is what they lack
    }
    if (auto added = add_lacking(member_.store, replica, theirs_, 1, UINT64_MAX >> 1U, budget_, sending); !added) {
      return added.error();
    }
    if (sending.more) {
      break;
    }
  }
  if (sending.runs.empty() && !owes_last_) {
    const auto needed = has_given_ ? Result<bool>(false) : needs_receipt();
    if (!needed) {
      return needed.error();
    }
    if (!*needed) {
      return std::optional<Bytes>();
    }
  }
  const bool is_last = !sending.more;
  return std::optional<Bytes>(take_of(std::move(sending), is_last));
}

// Of what was written here alone, where all that the other told of this chain is known.
Result<std::optional<Bytes>> Caller::make_take_ahead() {
  const model::ReplicaId own = member_.replica();
  if (!gives_ahead_ || asked_.contains(own) || given_up_.contains(own)) {
    return std::optional<Bytes>();
  }
  Sending sending;
  if (auto added = add_lacking(member_.store, own, theirs_, 1, UINT64_MAX >> 1U, budget_, sending); !added) {
    return added.error();
  }
  return sending.runs.empty() ? std::optional<Bytes>() : std::optional<Bytes>(take_of(std::move(sending), false));
}

Bytes Caller::take_of(Sending sending, bool is_last) {
  Runs out;
  out.kind = MessageKind::take;
  out.mark = is_last;
  out.runs = std::move(sending.runs);
  sent_.clear();
  for (const Run& run : out.runs) {
    sent_.push_back(have_row({run.replica, run.head.seq, run.head.hash}));
  }
  has_sent_last_ = is_last;
  owes_last_ = !is_last;
  has_given_ = true;
  return out.to_bytes();
}

Result<void> Caller::receive_receipt(View answer) {
  ByteReader in(answer);
  const std::uint8_t kind = in.u8();
  const std::uint64_t new_there = in.u64();
  const std::uint64_t parked_there = in.u64();
  if (in.ran_short() || kind != static_cast<std::uint8_t>(MessageKind::receipt)) {
    return wire::Fault("exchange.message", "", "a receipt");
  }
  out_.given += new_there;
  out_.waiting_there += parked_there;
  if (owes_last_) {
    if (in.left() != 0) {
      return wire::Fault("exchange.message", "", "a receipt with the last alone");
    }
    theirs_.insert(theirs_.end(), sent_.begin(), sent_.end());
    (step_ == Step::ask ? gives_ahead_ : gives_no_more_) = (step_ == Step::ask) == (new_there != 0);  // it takes nothing more of this
    return {};
  }
  const auto receipt = Receipt::from_bytes(in.raw(in.left()));
  if (!receipt) {
    return receipt.error();
  }
  if (receipt->holder != out_.peer) {
    return wire::Fault("exchange.receipt", "", "a receipt of the replica that answered");
  }
  if (auto kept = keep_receipt(member_, *receipt); !kept) {
    return kept;
  }
  theirs_.clear();
  for (const Receipt::Line& line : receipt->lines) {
    theirs_.push_back(have_row(line.place));
  }
  return {};
}

}  // namespace limbledger::ledger
