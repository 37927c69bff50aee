#include "core/ledger/trust/order.hpp"

#include <sodium/crypto_aead_xchacha20poly1305.h>
#include <sodium/crypto_generichash.h>

namespace limbledger::ledger {

namespace {

constexpr Tag tag_order = tag("limb.order.1");
constexpr Tag tag_epoch = tag("limb.epoch.1");
constexpr std::size_t order_frame_size = 100;  // sub, version, length, key, signature

Bytes order_message(const Position& at, const OrderBody& order) {
  ByteWriter out(60 + order.fields.size());
  out.raw(tag_order).raw(at.clinic.bytes).raw(at.replica.bytes).u64(at.seq);
  out.u8(static_cast<std::uint8_t>(order.sub)).u8(order.version).u16(static_cast<std::uint16_t>(order.fields.size())).raw(order.fields);
  return out.take();
}

Secret32 epoch_key(const model::ClinicId& clinic, std::uint32_t epoch, const Secret32& secret) {
  std::array<std::uint8_t, 4> number{};
  put_integer(number.data(), epoch, number.size());
  return Secret32(hash256(tag_epoch, clinic.bytes, number, secret.view()));
}

Bytes epoch_bound(const model::ClinicId& clinic, std::uint32_t epoch) { return ByteWriter(36).raw(tag_epoch).raw(clinic.bytes).u32(epoch).take(); }

}  // namespace

Bytes OrderBody::to_bytes() const {
  require(fields.size() <= 0xffff);
  ByteWriter out(order_frame_size + fields.size());
  out.u8(static_cast<std::uint8_t>(sub)).u8(version).u16(static_cast<std::uint16_t>(fields.size())).raw(fields).raw(admin_pub).raw(signature);
  return out.take();
}

Result<OrderBody> OrderBody::from_bytes(View body) {
  ByteReader in(body);
  OrderBody out;
  out.sub = static_cast<OrderKind>(in.u8());
  out.version = in.u8();
  const View fields = in.raw(in.u16());
  out.fields.assign(fields.begin(), fields.end());
  out.admin_pub = in.array<32>();
  out.signature = in.array<64>();
  if (!in.done()) {
    return wire::Fault("entry.format", "", "an order of 100 bytes and its fields", std::to_string(body.size()));
  }
  return out;
}

OrderBody sign_order(const SignKey& admin, const Position& at, OrderKind sub, Bytes fields) {
  require(fields.size() <= 0xffff);
  OrderBody out;
  out.sub = sub;
  out.fields = std::move(fields);
  out.admin_pub = admin.pub();
  out.signature = admin.sign(order_message(at, out));
  return out;
}

bool verify_order(const Position& at, const OrderBody& order) {
  return verify(order.admin_pub, order_message(at, order), order.signature);
}

bool verify_order(const Position& at, const OrderBody& order, CheckedOrders& checked) {
  const Hash rests_on = hash256(order_message(at, order), order.admin_pub, order.signature);
  if (!checked.contains(rests_on) && !verify_order(at, order)) {
    return false;
  }
  checked.insert(rests_on);
  return true;
}

Bytes Grant::to_fields() const { return ByteWriter(34).raw(pub).u16(roles).take(); }

std::optional<Grant> Grant::from_fields(View fields) {
  ByteReader in(fields);
  Grant out;
  out.pub = in.array<32>();
  out.roles = in.u16();
  return in.done() ? std::optional(out) : std::nullopt;
}

Bytes Enrol::to_fields() const { return ByteWriter(34).raw(replica.bytes).raw(device.bytes).u16(roles).take(); }

std::optional<Enrol> Enrol::from_fields(View fields) {
  ByteReader in(fields);
  Enrol out;
  out.replica.bytes = in.array<16>();
  out.device.bytes = in.array<16>();
  out.roles = in.u16();
  return in.done() ? std::optional(out) : std::nullopt;
}

Bytes Revoke::to_fields() const {
  ByteWriter out(16 + 56 * cuts.size());
  out.raw(device.bytes);
  for (const Place& cut : cuts) {
    out.raw(ledger::to_bytes(cut));
  }
  return out.take();
}

std::optional<Revoke> Revoke::from_fields(View fields) {
  ByteReader in(fields);
  Revoke out;
  out.device.bytes = in.array<16>();
  while (!in.ran_short() && in.left() != 0) {
    out.cuts.push_back(read_place(in));
  }
  return in.done() ? std::optional(std::move(out)) : std::nullopt;
}

Bytes Epoch::to_fields() const {
  ByteWriter out(108 + 96 * boxes.size());
  out.u32(epoch).raw(pub).raw(older);
  for (const Box& box : boxes) {
    out.raw(box.replica.bytes).raw(box.sealed);
  }
  return out.take();
}

std::optional<Epoch> Epoch::from_fields(View fields) {
  ByteReader in(fields);
  Epoch out;
  out.epoch = in.u32();
  out.pub = in.array<32>();
  out.older = in.array<older_size>();
  while (!in.ran_short() && in.left() != 0) {
    Box box;
    box.replica.bytes = in.array<16>();
    box.sealed = in.array<box_size>();
    out.boxes.push_back(box);
  }
  return in.done() ? std::optional(std::move(out)) : std::nullopt;
}

void Epoch::hand_to(const model::ReplicaId& replica, const PublicKey& box_pub, const Secret32& secret, const Secret32& ephemeral_seed) {
  Box box;
  box.replica = replica;
  const Bytes sealed = seal_box(box_pub, ephemeral_seed, secret.view());
  std::copy(sealed.begin(), sealed.end(), box.sealed.begin());
  boxes.push_back(box);
}

Result<Secret32> Epoch::open_box_of(const model::ReplicaId& replica, const BoxPair& box) const {
  for (const Box& one : boxes) {
    if (one.replica != replica) {
      continue;
    }
    auto plain = open_box(box, one.sealed);
    if (!plain) {
      return plain.error();
    }
    const Secret32 secret{View(*plain)};
    sodium_memzero(plain->data(), plain->size());
    if (BoxPair(secret).pub() != pub) {
      return wire::Fault("entry.key", "", "the secret half of the pair that the order names");
    }
    return secret;
  }
  return wire::Fault("entry.key", "", "a box for this replica");
}

std::array<std::uint8_t, Epoch::older_size> seal_older(const model::ClinicId& clinic, std::uint32_t epoch, const Secret32& secret, const Secret32& older) {
  const Secret32 key = epoch_key(clinic, epoch, secret);
  const Bytes bound = epoch_bound(clinic, epoch);
  std::array<std::uint8_t, Epoch::older_size> out{};
  crypto_generichash_state state;
  require(crypto_generichash_init(&state, key.data(), key.size(), 24) == 0);
  crypto_generichash_update(&state, bound.data(), bound.size());
  crypto_generichash_update(&state, older.data(), older.size());
  crypto_generichash_final(&state, out.data(), 24);
  require(crypto_aead_xchacha20poly1305_ietf_encrypt(out.data() + 24, nullptr, older.data(), older.size(), bound.data(), bound.size(), nullptr,
                                                     out.data(), key.data()) == 0);
  return out;
}

Result<Secret32> Epoch::open_older(const model::ClinicId& clinic, const Secret32& secret) const {
  const Secret32 key = epoch_key(clinic, epoch, secret);
  const Bytes bound = epoch_bound(clinic, epoch);
  Secret32 out;
  if (crypto_aead_xchacha20poly1305_ietf_decrypt(out.data(), nullptr, nullptr, older.data() + 24, older.size() - 24, bound.data(), bound.size(),
                                                 older.data(), key.data()) != 0) {
    return wire::Fault("entry.seal", "", "the epoch before this one, sealed under this one");
  }
  return out;
}

}  // namespace limbledger::ledger
