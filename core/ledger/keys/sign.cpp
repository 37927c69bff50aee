#include "core/ledger/keys/sign.hpp"

#include <sodium/crypto_sign.h>

#include <algorithm>

namespace limbledger::ledger {

namespace {

constexpr Tag tag_head = tag("limb.head.1");
constexpr Tag tag_heir = tag("limb.heir.1");
constexpr Tag tag_examiner = tag("limb.examiner.1");
constexpr Tag tag_sign = tag("limb.sign.1");

Bytes head_message(const model::ClinicId& clinic, const model::ReplicaId& replica, std::uint64_t seq, const Hash& hash) {
  return ByteWriter(88).raw(tag_head).raw(clinic.bytes).raw(replica.bytes).u64(seq).raw(hash).take();
}

Bytes heir_message(const model::ClinicId& clinic, const model::ReplicaId& heir, const Predecessor& predecessor) {
  return ByteWriter(104).raw(tag_heir).raw(clinic.bytes).raw(heir.bytes).raw(to_bytes(predecessor)).take();
}

Bytes examiner_message(const model::ClinicId& clinic, const model::ReplicaId& replica,
                       const model::ExaminerId& examiner) {
  return ByteWriter(64).raw(tag_examiner).raw(clinic.bytes).raw(replica.bytes).raw(examiner.bytes).take();
}

Bytes matter_message(const SignedMatter& matter) {
  const Covered covered = cover(matter.covered);
  return ByteWriter(132)
      .raw(tag_sign)
      .raw(matter.clinic.bytes)
      .raw(matter.object.bytes)
      .raw(matter.examiner.bytes)
      .u32(covered.count)
      .raw(covered.digest)
      .raw(hash256(matter.body))
      .take();
}

}  // namespace

SignKey::SignKey(const Secret32& seed) {
  require(crypto_sign_seed_keypair(pub_.data(), expanded_.data(), seed.data()) == 0);
}

Signature SignKey::sign(View message) const {
  Signature out{};
  require(crypto_sign_detached(out.data(), nullptr, message.data(), message.size(), expanded_.data()) == 0);
  return out;
}

bool verify(const PublicKey& pub, View message, const Signature& signature) {
  return crypto_sign_verify_detached(signature.data(), message.data(), message.size(), pub.data()) == 0;
}

Head sign_head(const SignKey& key, const model::ClinicId& clinic, const model::ReplicaId& replica, std::uint64_t seq,
               const Hash& hash) {
  return {replica, seq, hash, key.sign(head_message(clinic, replica, seq, hash))};
}

Result<void> verify_head(const model::ClinicId& clinic, const PublicKey& sign_pub, const Head& head) {
  if (!verify(sign_pub, head_message(clinic, head.replica, head.seq, head.hash), head.signature)) {
    return entry_fault("entry.head", head.replica, head.seq, head.hash, "a head signed by the key of its replica");
  }
  return {};
}

Signature sign_heir(const SignKey& old_key, const model::ClinicId& clinic, const model::ReplicaId& heir,
                    const Predecessor& predecessor) {
  return old_key.sign(heir_message(clinic, heir, predecessor));
}

bool verify_heir(const PublicKey& old_pub, const Intro& intro) {
  return intro.has_predecessor() && replica_of(intro.clinic, old_pub) == intro.predecessor.replica &&
         verify(old_pub, heir_message(intro.clinic, replica_of(intro.clinic, intro.sign_pub), intro.predecessor),
                intro.heir_signature);
}

ExaminerBody prove_examiner(const SignKey& key, const model::ClinicId& clinic, const model::ReplicaId& replica,
                            const model::ExaminerId& examiner) {
  return {examiner, key.pub(), key.sign(examiner_message(clinic, replica, examiner))};
}

bool verify_examiner(const model::ClinicId& clinic, const model::ReplicaId& replica, const ExaminerBody& body) {
  return verify(body.pub, examiner_message(clinic, replica, body.examiner), body.signature);
}

Covered cover(std::vector<Hash> hashes) {
  std::sort(hashes.begin(), hashes.end());
  hashes.erase(std::unique(hashes.begin(), hashes.end()), hashes.end());
  ByteWriter all(hashes.size() * 32);
  for (const Hash& hash : hashes) {
    all.raw(hash);
  }
  return {static_cast<std::uint32_t>(hashes.size()), hash256(all.view())};
}

Signature sign_matter(const SignKey& key, const SignedMatter& matter) { return key.sign(matter_message(matter)); }

bool verify_matter(const PublicKey& pub, const SignedMatter& matter, const Signature& signature) {
  return verify(pub, matter_message(matter), signature);
}

}  // namespace limbledger::ledger
