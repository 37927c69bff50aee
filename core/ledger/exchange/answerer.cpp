// The side of an exchange that answers.
#include "core/ledger/exchange/session.hpp"

#include "core/ledger/trust/witness.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {

constexpr std::string_view witnessed_name = "witnessed";

// Of all chains but the own: what there is to witness.
Result<std::vector<Place>> leaves_of_others(Member& member) {
  auto leaves = leaves_of(member.store);
  if (leaves) {
    std::erase_if(*leaves, [&](const Place& leaf) { return leaf.replica == member.replica(); });
  }
  return leaves;
}

Result<bool> is_witnessed(Member& member) {
  const auto heads = member.store.heads();
  const auto leaves = leaves_of_others(member);
  if (!heads || !leaves) {
    return heads ? leaves.error() : heads.error();
  }
  const Hash digest = have_digest(*leaves);
  const auto noted = heads->meta.find(std::string(witnessed_name));
  return noted != heads->meta.end() && std::equal(noted->second.begin(), noted->second.end(), digest.begin(), digest.end());
}

}  // namespace

Result<void> witness_if_hub(Member& member) {
  const auto trust = stored_trust(member.store, member.clinic, member.checked_orders);
  const auto witnessed = is_witnessed(member);
  auto leaves = leaves_of_others(member);
  if (!trust || !witnessed || !leaves) {
    return !trust ? trust.error() : !witnessed ? witnessed.error() : leaves.error();
  }
  const auto find = [&member](const model::ReplicaId& replica) { return stored_intro(member.store, member.clinic, replica); };
  if ((roles_of_replica(*trust, member.clinic, member.replica(), find) & roles::hub) == 0 || *witnessed || leaves->empty()) {
    return {};
  }
  Meta meta;
  const Hash digest = have_digest(*leaves);
  meta[std::string(witnessed_name)] = Bytes(digest.begin(), digest.end());
  const WitnessBody body{std::move(*leaves)};
  const auto rows = append_plain(member, {{Kind::witness, [&body](const Position&) { return body.to_bytes(); }}}, meta);
  return rows ? Result<void>() : Result<void>(rows.error());
}

Answerer::Answerer(Member member, const Exporter& exporter, std::size_t budget) : member_(member), exporter_(exporter), budget_(budget) {}

Result<Bytes> Answerer::answer(View message) {
  const auto kind = message_kind(message);
  if (kind == MessageKind::hello) {
    return answer_hello(message);
  }
  if (!caller_ || (kind != MessageKind::ask && kind != MessageKind::take)) {
    return wire::Fault("exchange.message", "", caller_ ? "ask or take" : "hello first");
  }
  return kind == MessageKind::ask ? answer_ask(message) : answer_take(message);
}

Result<Bytes> Answerer::answer_hello(View message) {
  caller_.reset();
  auto hello = Hello::from_bytes(message, member_.clinic, exporter_);
  if (!hello) {
    return hello.error();
  }
  const auto own = stored_intro(member_.store, member_.clinic, member_.replica());
  if (!own || own->purpose == Purpose::practice) {
    return wire::Fault(own ? "exchange.purpose" : "ledger.none", "");
  }
  const auto held = stored_intro(member_.store, member_.clinic, hello->replica);
  std::optional<Intro> intro = held;
  if (!intro && hello->introduction) {
    const auto stated = intro_of(hello->introduction->rows.front());
    intro = stated ? std::optional<Intro>(*stated) : std::nullopt;
  }
  const auto trust = stored_trust(member_.store, member_.clinic, member_.checked_orders);
  if (!trust) {
    return trust.error();
  }
  bool knows_line = true;  // by what is stored here
  const auto find = [&](const model::ReplicaId& replica) -> std::optional<Intro> {
    if (replica == hello->replica) {
      return intro;
    }
    if (auto stored = stored_intro(member_.store, member_.clinic, replica)) {
      return stored;
    }
    knows_line = false;
    const auto told = std::find_if(hello->before.begin(), hello->before.end(), [&replica](const Row& row) { return row.replica == replica; });
    const auto stated = told == hello->before.end() ? Result<Intro>(wire::Fault("entry.gap", "")) : intro_of(*told);
    return stated ? std::optional<Intro>(*stated) : std::nullopt;
  };
  // Whom the clinic has enrolled is said by the orders that are stored here; what the caller brings shows only that it is one of them.
  const Enrol* enrolled = intro ? enrolment_of(*trust, member_.clinic, hello->replica, find) : nullptr;
  if (enrolled == nullptr || enrolled->roles == 0 || !verify_hello(intro->sign_pub, member_.clinic, exporter_, *hello)) {
    return wire::Fault("replica.unknown", "", "the hello of a replica that this clinic has enrolled");
  }
  // An introduction states its device itself: one that was not stored before a device was revoked could state another.
  if (trust->is_revoked(intro->device) || trust->is_revoked(enrolled->device)) {
    return wire::Fault("replica.revoked", "");
  }
  // Of an heir whose line is not stored it comes later, behind the chains before it.
  if (!held && knows_line) {
    std::vector<Run> first;
    first.push_back(std::move(*hello->introduction));
    if (const auto taken = take(member_, std::move(first)); !taken) {
      return taken.error();
    }
  }
  // What SAME says is held: the introduction, and what an exchange that broke off has left.
  if (auto flushed = member_.store.flush(); !flushed) {
    return flushed.error();
  }
  caller_ = hello->replica;
  device_ = intro->device;
  const auto leaves = leaves_of(member_.store);
  if (!leaves) {
    return leaves.error();
  }
  const Hash digest = have_digest(*leaves);
  Same same = sign_same(member_.device_key, exporter_, digest == hello->digest, digest);
  if (!same.is_same) {
    for (const Place& leaf : *leaves) {
      same.have.push_back(have_row(leaf));
    }
  }
  return same.to_bytes();
}

Result<Bytes> Answerer::answer_ask(View message) {
  const auto ask = Ask::from_bytes(message);
  if (!ask) {
    return ask.error();
  }
  const auto chains = chains_to_give(member_.store);
  if (!chains) {
    return chains.error();
  }
  // In that order, whatever the order of the wishes: where more is asked for than a message holds, what comes first must not have to
  // wait for the orders that enrol it.
  Sending sending;
  for (const model::ReplicaId& replica : *chains) {
    for (const Want& want : ask->wants) {
      if (want.replica != replica) {
        continue;
      }
      if (auto added = add_lacking(member_.store, replica, ask->held, std::max<std::uint64_t>(want.from, 1), want.to, budget_, sending); !added) {
        return added.error();
      }
    }
  }
  Runs out;
  out.mark = sending.more;
  out.runs = std::move(sending.runs);
  return out.to_bytes();
}

Result<Bytes> Answerer::answer_take(View message) {
  auto runs = Runs::from_bytes(message, MessageKind::take);
  if (!runs) {
    return runs.error();
  }
  const auto taken = take(member_, std::move(runs->runs));
  if (!taken) {
    return taken.error();
  }
  taken_.entries += taken->entries;
  taken_.known += taken->known;
  taken_.parked += taken->parked;
  taken_.turned_away += taken->turned_away;
  taken_.own_came_back = taken_.own_came_back || taken->own_came_back;
  ByteWriter out;
  out.u8(static_cast<std::uint8_t>(MessageKind::receipt)).u64(taken->entries).u64(taken->parked + taken->turned_away);
  if (!runs->mark) {
    return out.take();  // nothing is promised before the last
  }
  if (auto written = witness_if_hub(member_); !written) {
    return written.error();
  }
  const auto witnessed = is_witnessed(member_);
  if (!witnessed) {
    return witnessed.error();
  }
  if (auto flushed = member_.store.flush(); !flushed) {
    return flushed.error();
  }
  const auto receipt = make_receipt(member_, device_, *witnessed ? ReceiptLevel::witnessed : ReceiptLevel::held);
  if (!receipt) {
    return receipt.error();
  }
  return out.raw(receipt->to_bytes()).take();
}

}  // namespace limbledger::ledger
