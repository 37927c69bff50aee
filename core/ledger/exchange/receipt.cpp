#include "core/ledger/exchange/receipt.hpp"

#include "core/ledger/exchange/take.hpp"
#include "core/ledger/trust/witness.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {

constexpr Tag tag_receipt = tag("limb.receipt.1");
constexpr std::string_view receipt_prefix = "receipt/";
constexpr std::size_t lines_max = 0xffff;

Bytes receipt_body(const Receipt& receipt) {
  require(receipt.lines.size() <= lines_max);
  ByteWriter out(82 + 57 * receipt.lines.size());
  out.raw(receipt.holder.bytes).raw(receipt.to.bytes).u64(receipt.holder_seq).raw(receipt.holder_hash);
  out.u64(static_cast<std::uint64_t>(receipt.wall_ms)).u16(static_cast<std::uint16_t>(receipt.lines.size()));
  std::vector<Receipt::Line> sorted = receipt.lines;
  std::sort(sorted.begin(), sorted.end(), [](const Receipt::Line& a, const Receipt::Line& b) { return a.place < b.place; });
  for (const Receipt::Line& line : sorted) {
    out.raw(to_bytes(line.place)).u8(static_cast<std::uint8_t>(line.level));
  }
  return out.take();
}

Bytes receipt_message(const model::ClinicId& clinic, const Receipt& receipt) {
  return ByteWriter().raw(tag_receipt).raw(clinic.bytes).raw(receipt_body(receipt)).take();
}

}  // namespace

Bytes Receipt::to_bytes() const { return ByteWriter().raw(receipt_body(*this)).raw(signature).take(); }

Result<Receipt> Receipt::from_bytes(View bytes) {
  ByteReader in(bytes);
  Receipt out;
  out.holder.bytes = in.array<16>();
  out.to.bytes = in.array<16>();
  out.holder_seq = in.u64();
  out.holder_hash = in.array<32>();
  const std::uint64_t wall = in.u64();
  out.wall_ms = static_cast<std::int64_t>(std::min<std::uint64_t>(wall, INT64_MAX));
  const std::size_t count = in.u16();
  bool is_known = wall <= INT64_MAX;
  for (std::size_t i = 0; i < count && !in.ran_short(); ++i) {
    Line line;
    line.place = read_place(in);
    const std::uint8_t level = in.u8();
    is_known = is_known && level >= 1 && level <= 3 && (out.lines.empty() || out.lines.back().place < line.place);
    line.level = static_cast<ReceiptLevel>(level);
    out.lines.push_back(line);
  }
  out.signature = in.array<64>();
  if (!in.done() || !is_known) {
    return wire::Fault("exchange.receipt", "", "a receipt of 146 bytes and 57 for each leaf, in order");
  }
  return out;
}

void sign_receipt(const SignKey& holder_key, const model::ClinicId& clinic, Receipt& receipt) {
  receipt.signature = holder_key.sign(receipt_message(clinic, receipt));
}

Result<void> verify_receipt(const model::ClinicId& clinic, const PublicKey& holder_pub, const Receipt& receipt) {
  if (replica_of(clinic, holder_pub) != receipt.holder || !verify(holder_pub, receipt_message(clinic, receipt), receipt.signature)) {
    return wire::Fault("exchange.receipt", "", "the holder's signature");
  }
  return {};
}

Result<Receipt> make_receipt(Member& member, const model::DeviceId& to, ReceiptLevel level) {
  const auto leaves = leaves_of(member.store);
  if (!leaves) {
    return leaves.error();
  }
  Receipt out;
  out.holder = member.replica();
  out.to = to;
  out.wall_ms = std::max<std::int64_t>(member.world.now().wall_ms, 0);
  for (const Place& leaf : *leaves) {
    if (leaf.replica == out.holder && leaf.seq >= out.holder_seq) {
      out.holder_seq = leaf.seq;
      out.holder_hash = leaf.hash;
    }
    out.lines.push_back({leaf, leaf.replica == out.holder ? ReceiptLevel::held : level});
  }
  sign_receipt(member.device_key, member.clinic, out);
  return out;
}

std::string receipt_name(const model::ReplicaId& holder) { return std::string(receipt_prefix) + holder.to_text(); }

Result<void> keep_receipt(Member& member, const Receipt& receipt) {
  const auto holder = stored_intro(member.store, member.clinic, receipt.holder);
  if (!holder) {
    return wire::Fault("replica.unknown", "");
  }
  if (auto good = verify_receipt(member.clinic, holder->sign_pub, receipt); !good) {
    return good;
  }
  Meta meta;
  meta[receipt_name(receipt.holder)] = receipt.to_bytes();
  const FlushPutOff late(member.store);  // lost, it is asked for again
  return member.store.append({}, {}, meta);
}

namespace {

constexpr std::uint64_t witness_page = 256;
constexpr int witness_pages_max = 16;  // back from the end of the hub's chain

// The ends of the chains of those that orders make a hub.
Result<std::vector<Head>> hubs_here(Member& member, const Heads& heads) {
  const auto trust = stored_trust(member.store, member.clinic, member.checked_orders);
  if (!trust) {
    return trust.error();
  }
  const auto find = [&member](const model::ReplicaId& replica) { return stored_intro(member.store, member.clinic, replica); };
  std::vector<Head> out;
  for (const Head& head : heads.newest) {
    if (head.replica != member.replica() && (roles_of_replica(*trust, member.clinic, head.replica, find) & roles::hub) != 0) {
      out.push_back(head);
    }
  }
  return out;
}

// What a hub's newest witness says of the own chain.
Result<HeldElsewhere> witnessed_by(Member& member, const Head& hub) {
  HeldElsewhere out;
  out.holder = hub.replica;
  std::uint64_t to = hub.seq;
  for (int page = 0; page < witness_pages_max && to != 0; ++page) {
    const std::uint64_t from = to > witness_page ? to - witness_page + 1 : 1;
    const auto rows = member.store.read(hub.replica, from, to, SIZE_MAX >> 1U);
    if (!rows) {
      return rows.error();
    }
    for (auto row = rows->rbegin(); row != rows->rend(); ++row) {
      const auto header = Header::from_bytes(row->header);
      const auto body = header && header->kind == Kind::witness && row->state == RowState::whole ? WitnessBody::from_bytes(row->body) : Result<WitnessBody>(wire::Fault("entry.format", ""));
      if (!body) {
        continue;
      }
      for (const Place& place : body->heads) {
        const auto here = place.replica == member.replica() ? holds(member.store, have_row(place)) : Result<bool>(false);
        if (!here) {
          return here.error();
        }
        if (*here && place.seq > out.held) {
          out.held = place.seq;
          out.level = ReceiptLevel::witnessed;
          out.wall_ms = header->stamp.ms;
        }
      }
      return out;
    }
    to = from - 1;
  }
  return out;
}

}  // namespace

Result<std::vector<HeldElsewhere>> held_elsewhere(Member& member) {
  const auto heads = member.store.heads();
  if (!heads) {
    return heads.error();
  }
  std::uint64_t own_seq = 0;
  for (const Head& head : heads->newest) {
    own_seq = head.replica == member.replica() ? std::max(own_seq, head.seq) : own_seq;
  }
  std::vector<HeldElsewhere> out;
  for (const auto& [name, bytes] : heads->meta) {
    if (!name.starts_with(receipt_prefix)) {
      continue;
    }
    const auto receipt = Receipt::from_bytes(bytes);
    const auto holder = receipt ? stored_intro(member.store, member.clinic, receipt->holder) : std::nullopt;
    if (!holder || !verify_receipt(member.clinic, holder->sign_pub, *receipt)) {
      continue;
    }
    HeldElsewhere one;
    one.holder = receipt->holder;
    one.wall_ms = receipt->wall_ms;
    for (const Receipt::Line& line : receipt->lines) {
      if (line.place.replica != member.replica() || line.place.seq <= one.held) {
        continue;
      }
      const auto here = holds(member.store, have_row(line.place));
      if (!here) {
        return here.error();
      }
      if (*here) {
        one.held = line.place.seq;
        one.level = line.level;
      }
    }
    one.not_held = own_seq - std::min(one.held, own_seq);
    out.push_back(one);
  }
  // By stick no receipt comes, but the hub's witnesses do.
  const auto hubs = hubs_here(member, *heads);
  if (!hubs) {
    return hubs.error();
  }
  for (const Head& hub : *hubs) {
    const auto said = witnessed_by(member, hub);
    if (!said) {
      return said.error();
    }
    auto known = std::find_if(out.begin(), out.end(), [&hub](const HeldElsewhere& one) { return one.holder == hub.replica; });
    if (said->held == 0 || (known != out.end() && known->held >= said->held)) {
      continue;
    }
    if (known == out.end()) {
      known = out.insert(out.end(), *said);
    }
    *known = *said;
    known->not_held = own_seq - std::min(said->held, own_seq);
  }
  return out;
}

}  // namespace limbledger::ledger
