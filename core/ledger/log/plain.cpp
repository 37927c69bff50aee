#include "core/ledger/log/plain.hpp"

#include "core/ledger/log/log.hpp"

namespace limbledger::ledger {

namespace {

// The row that a head stands on.
Result<std::optional<Row>> row_of(LogStore& store, const model::ReplicaId& replica, std::uint64_t seq, const Hash& hash) {
  auto rows = store.read(replica, seq, seq, page_rows);
  if (!rows) {
    return rows.error();
  }
  for (Row& row : *rows) {
    if (row.hash == hash) {
      return std::optional<Row>(std::move(row));
    }
  }
  return std::optional<Row>();
}

}  // namespace

Result<std::vector<Row>> append_plain(Member& member, const std::vector<PlainEntry>& entries, Meta meta) {
  const auto heads = member.store.heads();
  if (!heads) {
    return heads.error();
  }
  const model::ReplicaId replica = member.replica();
  Joint joint = start_of({member.clinic, replica, member.device_key.pub()});
  HybridClock clock(release_ms);
  const Reading reading = member.world.now();
  bool has_own = false;
  for (const Head& head : heads->newest) {
    const auto row = row_of(member.store, head.replica, head.seq, head.hash);
    if (!row) {
      return row.error();
    }
    if (const auto header = *row ? Header::from_bytes((*row)->header) : Result<Header>(wire::Fault("entry.gap", ""))) {
      (void)clock.receive(header->stamp, reading);
    }
    if (head.replica != replica) {
      continue;
    }
    if (has_own) {
      return wire::Fault("replica.forked", "");
    }
    has_own = true;
    joint = {head.seq, head.hash};
  }
  std::vector<Row> rows;
  for (std::size_t i = 0; i < entries.size(); ++i) {
    Row row;
    row.body = entries[i].make_body({member.clinic, replica, joint.seq + 1});
    Header header;
    header.kind = entries[i].kind;
    header.flags = i + 1 == entries.size() ? flag_last_of_commit : std::uint8_t{0};
    header.body_length = static_cast<std::uint32_t>(row.body.size());
    header.stamp = clock.next(reading);
    row.header = header.to_bytes();
    link(replica, joint, row);
    rows.push_back(std::move(row));
  }
  const Head head = sign_head(member.device_key, member.clinic, replica, joint.seq, joint.hash);
  note_orders(*heads, rows, meta);
  if (auto stored = member.store.append(rows, {&head, 1}, meta); !stored) {
    return stored.error();
  }
  return rows;
}

Result<void> begin_chain(Member& member, Intro intro, Meta meta) {
  intro.clinic = member.clinic;
  intro.sign_pub = member.device_key.pub();
  const auto rows = append_plain(member, {{Kind::intro, [&intro](const Position&) { return intro.to_bytes(); }}}, std::move(meta));
  return rows ? Result<void>() : Result<void>(rows.error());
}

Result<void> append_orders(Member& member, const SignKey& admin, const std::vector<NewOrder>& orders) {
  std::vector<PlainEntry> entries;
  for (const NewOrder& order : orders) {
    entries.push_back({Kind::order, [&admin, &order](const Position& at) { return sign_order(admin, at, order.sub, order.fields).to_bytes(); }});
  }
  const auto rows = append_plain(member, entries);
  return rows ? Result<void>() : Result<void>(rows.error());
}

void note_orders(const Heads& heads, std::span<const Row> rows, Meta& meta) {
  const std::string name(orders_name);
  const auto known = heads.meta.find(name);
  ByteWriter out;
  if (known != heads.meta.end()) {
    out.raw(known->second);
  }
  bool is_changed = false;
  for (const Row& row : rows) {
    if (row.header[1] == static_cast<std::uint8_t>(Kind::order) && row.state == RowState::whole) {
      out.raw(to_bytes(Place{row.replica, row.seq, row.hash}));
      is_changed = true;
    }
  }
  if (is_changed) {
    meta[name] = out.take();
  }
}

bool has_ended(const Meta& meta, const model::ReplicaId& replica) {
  const auto found = meta.find(std::string(restored_name));
  return found != meta.end() && std::equal(found->second.begin(), found->second.end(), replica.bytes.begin(), replica.bytes.end());
}

Result<std::vector<Row>> stored_orders(LogStore& store) {
  const auto heads = store.heads();
  if (!heads) {
    return heads.error();
  }
  std::vector<Row> out;
  const auto known = heads->meta.find(std::string(orders_name));
  if (known == heads->meta.end()) {
    return out;
  }
  ByteReader in(known->second);
  while (in.left() >= 56) {
    const Place place = read_place(in);
    auto row = row_of(store, place.replica, place.seq, place.hash);
    if (!row) {
      return row.error();
    }
    if (*row) {
      out.push_back(std::move(**row));
    }
  }
  return out;
}

}  // namespace limbledger::ledger
