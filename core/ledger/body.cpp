#include "core/ledger/body.hpp"

namespace limbledger::ledger {

namespace {
constexpr std::uint8_t intro_version = 1;
constexpr std::size_t program_size_max = 200;

wire::Fault wrong_body(std::string_view expected, std::size_t got_size) {
  return wire::Fault("entry.format", "", std::string(expected), std::to_string(got_size));
}
}  // namespace

Storage storage_of(Durability durability) {
  return durability == Durability::disk      ? Storage::disk
         : durability == Durability::browser ? Storage::browser
                                             : Storage::memory;
}

Bytes to_bytes(const Predecessor& predecessor) {
  return ByteWriter(56).raw(predecessor.replica.bytes).u64(predecessor.seq).raw(predecessor.hash).take();
}

Place read_place(ByteReader& in) {
  Place out;
  out.replica.bytes = in.array<16>();
  out.seq = in.u64();
  out.hash = in.array<32>();
  return out;
}

Bytes Intro::to_bytes() const {
  require(program.size() <= program_size_max);
  ByteWriter out(222 + program.size());
  out.u8(intro_version)
      .u8(static_cast<std::uint8_t>(chain_class))
      .u8(static_cast<std::uint8_t>(storage))
      .u8(static_cast<std::uint8_t>(purpose))
      .raw(clinic.bytes)
      .raw(sign_pub)
      .raw(box_pub)
      .raw(device.bytes)
      .raw(ledger::to_bytes(predecessor))
      .raw(heir_signature)
      .u16(static_cast<std::uint16_t>(program.size()))
      .raw(as_bytes(program));
  return out.take();
}

Result<Intro> Intro::from_bytes(View body) {
  ByteReader in(body);
  if (in.u8() != intro_version) {
    return wire::Fault("format.newer", "", "an introduction of version 1");
  }
  Intro out;
  const std::uint8_t chain_class = in.u8();
  const std::uint8_t storage = in.u8();
  const std::uint8_t purpose = in.u8();
  out.clinic.bytes = in.array<16>();
  out.sign_pub = in.array<32>();
  out.box_pub = in.array<32>();
  out.device.bytes = in.array<16>();
  out.predecessor = read_place(in);
  out.heir_signature = in.array<64>();
  const std::size_t program_size = in.u16();
  const View program = in.raw(program_size);
  if (!in.done() || program_size > program_size_max) {
    return wrong_body("an introduction of 222 bytes and the program's name", body.size());
  }
  const bool known = (chain_class == 1 || chain_class == 2) && storage >= 1 && storage <= 3 && purpose <= 2;
  if (!known || (!out.has_predecessor() && !is_zero(out.heir_signature))) {
    return wrong_body("class 1 or 2, storage 1 to 3, purpose 0 to 2, a signature only beside a predecessor", body.size());
  }
  out.chain_class = static_cast<ChainClass>(chain_class);
  out.storage = static_cast<Storage>(storage);
  out.purpose = static_cast<Purpose>(purpose);
  out.program.assign(program.begin(), program.end());
  return out;
}

Bytes KeyBody::to_bytes() const { return ByteWriter(100).u32(epoch).raw(sealed).take(); }

Result<KeyBody> KeyBody::from_bytes(View body) {
  ByteReader in(body);
  KeyBody out;
  out.epoch = in.u32();
  out.sealed = in.array<sealed_key_size>();
  if (!in.done()) {
    return wrong_body("a wrapped key of 100 bytes", body.size());
  }
  return out;
}

Bytes ExaminerBody::to_bytes() const { return ByteWriter(112).raw(examiner.bytes).raw(pub).raw(signature).take(); }

Result<ExaminerBody> ExaminerBody::from_bytes(View body) {
  ByteReader in(body);
  ExaminerBody out;
  out.examiner.bytes = in.array<16>();
  out.pub = in.array<32>();
  out.signature = in.array<64>();
  if (!in.done()) {
    return wrong_body("an examiner's key of 112 bytes", body.size());
  }
  return out;
}

}  // namespace limbledger::ledger
