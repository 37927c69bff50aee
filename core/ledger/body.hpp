// The plain bodies that the program writes besides sealed operations: the introduction of a replica, a wrapped key and
// the public half of an examiner's key. Read strictly: every byte has its place, nothing may follow. What they claim is
// checked where keys are at hand (keys/sign, keys/wrap, chain).
#pragma once

#include "core/ledger/entry.hpp"

#include <string>
#include <tuple>

namespace limbledger::ledger {

enum class ChainClass : std::uint8_t { record = 1, access = 2 };
// Where a chain is kept, as its introduction states it.
enum class Storage : std::uint8_t { disk = 1, browser = 2, memory = 3 };
[[nodiscard]] Storage storage_of(Durability durability);
// A ledger of invented people may draw its randomness from a seed; no other exchanges with it.
enum class Purpose : std::uint8_t { record = 0, demonstration = 1, practice = 2 };

struct Predecessor {  // the chain whose place this one takes, up to where it was known
  model::ReplicaId replica;
  std::uint64_t seq = 0;
  Hash hash{};
  friend bool operator==(const Predecessor&, const Predecessor&) = default;
};

// An entry where it stands; 56 bytes where it is stored or sent.
using Place = Predecessor;
[[nodiscard]] inline bool operator<(const Place& a, const Place& b) {
  return std::tie(a.replica.bytes, a.seq, a.hash) < std::tie(b.replica.bytes, b.seq, b.hash);
}

struct Intro {
  ChainClass chain_class = ChainClass::record;
  Storage storage = Storage::disk;
  Purpose purpose = Purpose::record;
  model::ClinicId clinic;
  PublicKey sign_pub{};
  PublicKey box_pub{};
  model::DeviceId device;
  Predecessor predecessor;  // all zero for the first chain of a device
  Signature heir_signature{};
  std::string program;  // name and version, up to 200 bytes

  [[nodiscard]] bool has_predecessor() const { return predecessor != Predecessor{}; }
  [[nodiscard]] Bytes to_bytes() const;
  [[nodiscard]] static Result<Intro> from_bytes(View body);
};

constexpr std::size_t sealed_key_size = 96;       // key 32 and object 16 in a sealed box
constexpr std::uint32_t auditor_line = 1U << 31;  // top bit of an epoch: the pair belongs to the auditor

struct KeyBody {
  std::uint32_t epoch = 0;
  std::array<std::uint8_t, sealed_key_size> sealed{};

  [[nodiscard]] Bytes to_bytes() const;
  [[nodiscard]] static Result<KeyBody> from_bytes(View body);
};

struct ExaminerBody {
  model::ExaminerId examiner;
  PublicKey pub{};
  Signature signature{};  // by that key: whoever published it held the secret

  [[nodiscard]] Bytes to_bytes() const;
  [[nodiscard]] static Result<ExaminerBody> from_bytes(View body);
};

// The 56 bytes a predecessor's key signs, after tag, clinic and the new replica.
[[nodiscard]] Bytes to_bytes(const Predecessor& predecessor);
[[nodiscard]] Place read_place(ByteReader& in);

}  // namespace limbledger::ledger
