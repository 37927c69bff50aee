// The bytes of an entry: its header, its hashes and the names made from hashes. Integers are big-endian, H is
// BLAKE2b-256, tags are 16 bytes. The frame is fixed for every format to come: only kind, codec and the content of the
// body may grow, so that an old replica can check and pass on what it cannot read. Bodies over 1 MiB are refused.
#pragma once

#include "core/ledger/bytes.hpp"
#include "core/ledger/stamp.hpp"
#include "core/model/ids.hpp"

#include <array>
#include <cstdint>
#include <initializer_list>
#include <string>

namespace limbledger::ledger {

using PublicKey = std::array<std::uint8_t, 32>;
using HeaderBytes = std::array<std::uint8_t, 32>;

// Others are kept and passed on unread.
enum class Kind : std::uint8_t { op = 1, key = 2, intro = 3, order = 4, witness = 5, access = 6, examiner = 7 };

// What an object id names. Keys belong to persons, exams, reports and, for links, places and settings, the clinic.
enum class ObjectType : std::uint8_t {
  clinic = 0,
  person = 1,
  exam = 2,
  finding = 3,
  link = 4,
  examiner = 5,
  place = 6,
  plan_item = 7,
  letter = 8,
  report = 9
};

constexpr std::uint8_t frame_version = 1;
constexpr std::uint8_t codec_plain = 0x00;
constexpr std::uint8_t codec_padded = 0x10;  // padded to 64 bytes, not compressed
constexpr std::uint8_t flag_last_of_commit = 0x01;
constexpr std::size_t body_size_max = std::size_t{1} << 20;
constexpr std::size_t stub_size = 32;

struct Header {
  Kind kind = Kind::op;
  std::uint8_t codec = codec_plain;
  std::uint8_t flags = 0;  // unknown bits are kept
  std::uint32_t body_length = 0;
  Stamp stamp;
  model::KeyId kid;  // zero when the body is plain

  [[nodiscard]] bool last_of_commit() const { return (flags & flag_last_of_commit) != 0; }
  [[nodiscard]] HeaderBytes to_bytes() const;
  // Refuses any frame but the one.
  [[nodiscard]] static Result<Header> from_bytes(const HeaderBytes& bytes);
  friend bool operator==(const Header&, const Header&) = default;
};

[[nodiscard]] Hash hash_parts(std::initializer_list<View> parts);
// H over the parts, one after the other.
template <class... Parts>
[[nodiscard]] Hash hash256(const Parts&... parts) {
  return hash_parts({View(parts)...});
}
[[nodiscard]] model::Bytes16 id16(const Hash& hash);

[[nodiscard]] model::ClinicId clinic_of(const PublicKey& root_pub);
[[nodiscard]] model::ReplicaId replica_of(const model::ClinicId& clinic, const PublicKey& sign_pub);
[[nodiscard]] model::ObjectId object_of(const model::ClinicId& clinic, ObjectType type, const model::RequestId& request,
                                        std::uint16_t index);
// The object of links, places and settings: request and index are zero.
[[nodiscard]] model::ObjectId clinic_object(const model::ClinicId& clinic);
[[nodiscard]] model::EntryId entry_id(const Hash& entry_hash);

[[nodiscard]] Hash genesis(const model::ClinicId& clinic, const model::ReplicaId& replica, const PublicKey& sign_pub);
[[nodiscard]] Hash body_hash(View body);
// Of a row whole or reduced to its body's hash.
[[nodiscard]] Hash body_hash(const Row& row);
[[nodiscard]] Hash entry_hash(const Hash& previous, std::uint64_t seq, const HeaderBytes& header, const Hash& body);

// A fault that names the entry it is about: replica, sequence and the name the store gives it.
[[nodiscard]] wire::Fault entry_fault(std::string_view code, const model::ReplicaId& replica, std::uint64_t seq,
                                      const Hash& hash, std::string expected = {});

}  // namespace limbledger::ledger
