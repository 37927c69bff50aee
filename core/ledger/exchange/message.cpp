#include "core/ledger/exchange/message.hpp"

#include "core/ledger/trust/trust.hpp"

namespace limbledger::ledger {

namespace {

constexpr Tag tag_hint = tag("limb.hint.1");
constexpr Tag tag_hello = tag("limb.hello.1");
constexpr Tag tag_same = tag("limb.same.1");
constexpr std::uint8_t status_same = 0;
constexpr std::uint8_t status_different = 1;
constexpr std::size_t want_row_size = 33;
constexpr std::size_t introduction_size_max = 1024;  // its program's name is 200 bytes at most

wire::Fault no_message(std::string_view expected, View got) {
  return wire::Fault("exchange.message", "", expected, std::to_string(got.size()));
}

// The 58 bytes that are signed, after tag and exporter.
Bytes hello_front(const model::ClinicId& clinic, const Exporter& exporter, const Hello& hello) {
  return ByteWriter(58).u8(exchange_protocol).u8(hello.flags).raw(hint_of(clinic, exporter)).raw(hello.replica.bytes).raw(hello.digest).take();
}

// The first entry of a chain by itself: its key names the chain, and a head is not asked for where nothing is stored of it.
std::optional<Row> read_introduction(ByteReader& in) {
  Row out;
  out.header = in.array<32>();
  const auto header = Header::from_bytes(out.header);
  if (in.ran_short() || !header || header->body_length > introduction_size_max) {
    return std::nullopt;
  }
  const View body = in.raw(header->body_length);
  out.body.assign(body.begin(), body.end());
  out.seq = 1;
  const auto intro = in.ran_short() ? Result<Intro>(wire::Fault("entry.format", "")) : intro_of(out);
  if (!intro) {
    return std::nullopt;
  }
  const model::ReplicaId replica = replica_of(intro->clinic, intro->sign_pub);
  Joint joint = start_of({intro->clinic, replica, intro->sign_pub});
  link(replica, joint, out);
  return out;
}

Bytes same_front(const Same& same) { return ByteWriter(33).u8(same.is_same ? status_same : status_different).raw(same.digest).take(); }

Bytes bound_message(const Tag& what, const Exporter& exporter, View front) {
  return ByteWriter(48 + front.size()).raw(what).raw(exporter).raw(front).take();
}

}  // namespace

std::array<std::uint8_t, 8> hint_of(const model::ClinicId& clinic, View salt) {
  const Hash hash = hash256(tag_hint, clinic.bytes, salt);
  std::array<std::uint8_t, 8> out{};
  std::copy_n(hash.begin(), out.size(), out.begin());
  return out;
}

Bytes Hello::to_bytes(const model::ClinicId& clinic, const Exporter& exporter) const {
  ByteWriter out(1 + hello_size);
  out.u8(static_cast<std::uint8_t>(MessageKind::hello)).raw(hello_front(clinic, exporter, *this)).raw(signature);
  if (introduction) {
    put_run(out, *introduction);
    for (const Row& row : before) {
      out.raw(row.header).raw(row.body);
    }
  }
  return out.take();
}

Result<Hello> Hello::from_bytes(View message, const model::ClinicId& clinic, const Exporter& exporter) {
  ByteReader in(message);
  Hello out;
  const std::uint8_t kind = in.u8();
  const std::uint8_t protocol = in.u8();
  out.flags = in.u8();
  const auto hint = in.array<8>();
  out.replica.bytes = in.array<16>();
  out.digest = in.array<32>();
  out.signature = in.array<64>();
  if (in.ran_short() || kind != static_cast<std::uint8_t>(MessageKind::hello)) {
    return no_message("a hello of 122 bytes", message);
  }
  if (protocol != exchange_protocol) {
    return wire::Fault("protocol.version", "", "1", std::to_string(protocol));
  }
  if (hint != hint_of(clinic, exporter)) {
    return wire::Fault("exchange.foreign", "");
  }
  if (in.left() != 0) {
    auto run = read_run(in);
    if (!run) {
      return run.error();
    }
    bool fits = !in.ran_short() && run->replica == out.replica && run->first == 1;
    while (fits && in.left() != 0) {
      auto row = read_introduction(in);
      fits = row && out.before.size() < heirs_max;
      if (fits) {
        out.before.push_back(std::move(*row));
      }
    }
    if (!fits) {
      return no_message("nothing, or the caller's own first run and the introductions before it, after the hello", message);
    }
    out.introduction = std::move(*run);
  }
  return out;
}

Hello sign_hello(const SignKey& key, const model::ClinicId& clinic, const Exporter& exporter, const Hash& digest) {
  Hello out;
  out.replica = replica_of(clinic, key.pub());
  out.digest = digest;
  out.signature = key.sign(bound_message(tag_hello, exporter, hello_front(clinic, exporter, out)));
  return out;
}

bool verify_hello(const PublicKey& pub, const model::ClinicId& clinic, const Exporter& exporter, const Hello& hello) {
  return replica_of(clinic, pub) == hello.replica &&
         verify(pub, bound_message(tag_hello, exporter, hello_front(clinic, exporter, hello)), hello.signature);
}

Bytes Same::to_bytes() const {
  ByteWriter out(1 + same_size + have_row_size * have.size());
  out.u8(static_cast<std::uint8_t>(MessageKind::same)).raw(same_front(*this)).raw(signature);
  for (const HaveRow& row : have) {
    put_have(out, row);
  }
  return out.take();
}

Result<Same> Same::from_bytes(View message) {
  ByteReader in(message);
  Same out;
  const std::uint8_t kind = in.u8();
  const std::uint8_t status = in.u8();
  out.is_same = status == status_same;
  out.digest = in.array<32>();
  out.signature = in.array<64>();
  const bool fits = in.left() % have_row_size == 0 && (in.left() == 0 || !out.is_same);
  if (in.ran_short() || kind != static_cast<std::uint8_t>(MessageKind::same) || status > status_different || !fits) {
    return no_message("an answer of 97 bytes, and 33 for each leaf where it is not the same", message);
  }
  while (in.left() != 0) {
    out.have.push_back(read_have(in));
  }
  return out;
}

Same sign_same(const SignKey& key, const Exporter& exporter, bool is_same, const Hash& digest) {
  Same out;
  out.is_same = is_same;
  out.digest = digest;
  out.signature = key.sign(bound_message(tag_same, exporter, same_front(out)));
  return out;
}

bool verify_same(const PublicKey& pub, const Exporter& exporter, const Same& same) {
  return verify(pub, bound_message(tag_same, exporter, same_front(same)), same.signature);
}

Bytes Ask::to_bytes() const {
  require(wants.size() <= wants_max);
  ByteWriter out(3 + want_row_size * wants.size() + have_row_size * held.size());
  out.u8(static_cast<std::uint8_t>(MessageKind::ask)).u16(static_cast<std::uint16_t>(wants.size()));
  for (const Want& want : wants) {
    out.raw(want.replica.bytes).u64(want.from).u64(want.to).u8(want.flags);
  }
  for (const HaveRow& row : held) {
    put_have(out, row);
  }
  return out.take();
}

Result<Ask> Ask::from_bytes(View message) {
  ByteReader in(message);
  Ask out;
  const std::uint8_t kind = in.u8();
  const std::size_t count = in.u16();
  for (std::size_t i = 0; i < count && !in.ran_short(); ++i) {
    Want want;
    want.replica.bytes = in.array<16>();
    want.from = in.u64();
    want.to = in.u64();
    want.flags = in.u8();
    out.wants.push_back(want);
  }
  if (in.ran_short() || kind != static_cast<std::uint8_t>(MessageKind::ask) || in.left() % have_row_size != 0) {
    return no_message("ranges and points of 33 bytes each", message);
  }
  while (in.left() != 0) {
    out.held.push_back(read_have(in));
  }
  return out;
}

Bytes Runs::to_bytes() const {
  // Made in one piece: in memory a run takes more than its bytes.
  std::size_t room = 2;
  for (const Run& run : runs) {
    room += sizeof(Run) + run.rows.size() * sizeof(Row);
    for (const Row& row : run.rows) {
      room += row.body.size();
    }
  }
  ByteWriter out(room);
  out.u8(static_cast<std::uint8_t>(kind)).u8(mark ? 1 : 0);
  for (const Run& run : runs) {
    put_run(out, run);
  }
  return out.take();
}

Result<Runs> Runs::from_bytes(View message, MessageKind kind) {
  ByteReader in(message);
  Runs out;
  out.kind = kind;
  const std::uint8_t stated = in.u8();
  const std::uint8_t mark = in.u8();
  if (in.ran_short() || stated != static_cast<std::uint8_t>(kind) || mark > 1) {
    return no_message("runs", message);
  }
  out.mark = mark == 1;
  while (in.left() != 0) {
    auto run = read_run(in);
    if (!run) {
      return run.error();
    }
    out.runs.push_back(std::move(*run));
  }
  return out;
}

std::optional<MessageKind> message_kind(View message) {
  if (message.empty() || message.front() < 1 || message.front() > static_cast<std::uint8_t>(MessageKind::receipt)) {
    return std::nullopt;
  }
  return static_cast<MessageKind>(message.front());
}

}  // namespace limbledger::ledger
