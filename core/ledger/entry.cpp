#include "core/ledger/entry.hpp"

#include <sodium/crypto_generichash.h>

#include <cstring>

namespace limbledger::ledger {

namespace {
constexpr Tag tag_clinic = tag("limb.clinic.1");
constexpr Tag tag_replica = tag("limb.replica.1");
constexpr Tag tag_object = tag("limb.object.1");
constexpr Tag tag_chain = tag("limb.chain.1");
constexpr Tag tag_body = tag("limb.body.1");
constexpr Tag tag_entry = tag("limb.entry.1");
}  // namespace

HeaderBytes Header::to_bytes() const {
  require(stamp.ms >= 0 && stamp.ms <= stamp_ms_max);
  HeaderBytes out{};
  out[0] = frame_version;
  out[1] = static_cast<std::uint8_t>(kind);
  out[2] = codec;
  out[3] = flags;
  put_integer(out.data() + 4, body_length, 4);
  put_integer(out.data() + 8, static_cast<std::uint64_t>(stamp.ms), 6);
  put_integer(out.data() + 14, stamp.counter, 2);
  std::copy(kid.bytes.begin(), kid.bytes.end(), out.begin() + 16);
  return out;
}

Result<Header> Header::from_bytes(const HeaderBytes& bytes) {
  if (bytes[0] != frame_version) {
    return wire::Fault("entry.format", "", "frame 1", std::to_string(bytes[0]));
  }
  Header out;
  out.kind = static_cast<Kind>(bytes[1]);
  out.codec = bytes[2];
  out.flags = bytes[3];
  out.body_length = static_cast<std::uint32_t>(get_integer(bytes.data() + 4, 4));
  out.stamp.ms = static_cast<std::int64_t>(get_integer(bytes.data() + 8, 6));
  out.stamp.counter = static_cast<std::uint16_t>(get_integer(bytes.data() + 14, 2));
  std::copy(bytes.begin() + 16, bytes.end(), out.kid.bytes.begin());
  return out;
}

Hash hash_parts(std::initializer_list<View> parts) {
  crypto_generichash_state state;
  require(crypto_generichash_init(&state, nullptr, 0, 32) == 0);
  for (const View part : parts) {
    crypto_generichash_update(&state, part.data(), part.size());
  }
  Hash out{};
  crypto_generichash_final(&state, out.data(), out.size());
  return out;
}

model::Bytes16 id16(const Hash& hash) {
  model::Bytes16 out{};
  std::copy(hash.begin(), hash.begin() + 16, out.begin());
  return out;
}

model::ClinicId clinic_of(const PublicKey& root_pub) { return {id16(hash256(tag_clinic, root_pub))}; }

model::ReplicaId replica_of(const model::ClinicId& clinic, const PublicKey& sign_pub) {
  return {id16(hash256(tag_replica, clinic.bytes, sign_pub))};
}

model::ObjectId object_of(const model::ClinicId& clinic, ObjectType type, const model::RequestId& request,
                          std::uint16_t index) {
  ByteWriter rest(19);
  rest.u8(static_cast<std::uint8_t>(type)).raw(request.bytes).u16(index);
  return {id16(hash256(tag_object, clinic.bytes, rest.view()))};
}

model::ObjectId clinic_object(const model::ClinicId& clinic) { return object_of(clinic, ObjectType::clinic, {}, 0); }

model::EntryId entry_id(const Hash& entry_hash) { return {id16(entry_hash)}; }

Hash genesis(const model::ClinicId& clinic, const model::ReplicaId& replica, const PublicKey& sign_pub) {
  return hash256(tag_chain, clinic.bytes, replica.bytes, sign_pub);
}

Hash body_hash(View body) { return hash256(tag_body, body); }

Hash body_hash(const Row& row) {
  if (row.state == RowState::whole) {
    return body_hash(View(row.body));
  }
  Hash out{};
  if (row.body.size() == out.size()) {
    std::copy(row.body.begin(), row.body.end(), out.begin());
  }
  return out;
}

Hash entry_hash(const Hash& previous, std::uint64_t seq, const HeaderBytes& header, const Hash& body) {
  std::array<std::uint8_t, 120> block{};
  std::copy(tag_entry.begin(), tag_entry.end(), block.begin());
  std::copy(previous.begin(), previous.end(), block.begin() + 16);
  put_integer(block.data() + 48, seq, 8);
  std::copy(header.begin(), header.end(), block.begin() + 56);
  std::copy(body.begin(), body.end(), block.begin() + 88);
  Hash out{};
  require(crypto_generichash(out.data(), out.size(), block.data(), block.size(), nullptr, 0) == 0);
  return out;
}

wire::Fault entry_fault(std::string_view code, const model::ReplicaId& replica, std::uint64_t seq, const Hash& hash,
                        std::string expected) {
  return wire::Fault(code, "", std::move(expected))
      .with("replica", '"' + replica.to_text() + '"')
      .with("seq", std::to_string(seq))
      .with("entry", '"' + entry_id(hash).to_text() + '"');
}

}  // namespace limbledger::ledger
