// Signatures: Ed25519 (RFC 8032) over a domain tag and fixed fields. A device signs the heads of its own chain and,
// for an heir, what it hands on; an examiner signs what an exam said when it was signed. Nothing is signed that does
// not name the clinic. Malleable signatures and keys of small order are refused by the library's own check.
#pragma once

#include "core/ledger/body.hpp"
#include "core/ledger/keys/secret.hpp"

#include <vector>

namespace limbledger::ledger {

// A pair made from a 32-byte seed; the expanded half is kept, so that a signature costs one pass.
class SignKey {
 public:
  explicit SignKey(const Secret32& seed);
  [[nodiscard]] const PublicKey& pub() const { return pub_; }
  [[nodiscard]] Signature sign(View message) const;
  // For the carrier of an exchange, which proves this same key to the other side.
  [[nodiscard]] Secret32 seed() const { return Secret32(expanded_.view().first(32)); }

 private:
  Secret<64> expanded_;
  PublicKey pub_{};
};

[[nodiscard]] bool verify(const PublicKey& pub, View message, const Signature& signature);

// The head of a commit: where the chain stands.
[[nodiscard]] Head sign_head(const SignKey& key, const model::ClinicId& clinic, const model::ReplicaId& replica,
                             std::uint64_t seq, const Hash& hash);
// Fault entry.head, with the place.
[[nodiscard]] Result<void> verify_head(const model::ClinicId& clinic, const PublicKey& sign_pub, const Head& head);

// A new chain takes over from its predecessor; signed with the predecessor's key.
[[nodiscard]] Signature sign_heir(const SignKey& old_key, const model::ClinicId& clinic, const model::ReplicaId& heir,
                                  const Predecessor& predecessor);
[[nodiscard]] bool verify_heir(const PublicKey& old_pub, const Intro& intro);

// The body of an EXAMINER entry: the examiner's public half on this device, signed by its own secret half.
[[nodiscard]] ExaminerBody prove_examiner(const SignKey& key, const model::ClinicId& clinic,
                                          const model::ReplicaId& replica, const model::ExaminerId& examiner);
[[nodiscard]] bool verify_examiner(const model::ClinicId& clinic, const model::ReplicaId& replica,
                                   const ExaminerBody& body);

// What an examiner's signature covers. `covered` in any order, each entry once; `body` are the bytes of the operation's
// `body` as written, which hold what was shown.
struct SignedMatter {
  model::ClinicId clinic;
  model::ObjectId object;
  model::ExaminerId examiner;
  std::vector<Hash> covered;
  View body;
};
// Digest of the covered entries, as a signature states it: sorted, repeats removed.
struct Covered {
  std::uint32_t count = 0;
  Hash digest{};
};
[[nodiscard]] Covered cover(std::vector<Hash> hashes);
[[nodiscard]] Signature sign_matter(const SignKey& key, const SignedMatter& matter);
[[nodiscard]] bool verify_matter(const PublicKey& pub, const SignedMatter& matter, const Signature& signature);

}  // namespace limbledger::ledger
