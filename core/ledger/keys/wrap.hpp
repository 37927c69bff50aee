// Wrapped keys: the body of a KEY entry is the key of one object in a sealed box to the public half of the epoch, so
// that a locked tablet or a kiosk writes what it cannot read. The box is built from randomness passed in and opens with
// the library's own call. A key whose id does not fit key and object is refused: it would let one text have two readings.
#pragma once

#include "core/ledger/body.hpp"
#include "core/ledger/keys/seal.hpp"

namespace limbledger::ledger {

class BoxPair {
 public:
  explicit BoxPair(const Secret32& secret);
  [[nodiscard]] static BoxPair from_seed(const Secret32& seed);
  [[nodiscard]] const PublicKey& pub() const { return pub_; }
  [[nodiscard]] const Secret32& secret() const { return secret_; }

 private:
  LockedSecret32 secret_;
  PublicKey pub_{};
};

// 48 bytes longer than what it holds: ephemeral public key 32, then ciphertext and tag.
[[nodiscard]] Bytes seal_box(const PublicKey& to, const Secret32& ephemeral_seed, View plaintext);
// Fault entry.key when it was not sealed to this pair.
[[nodiscard]] Result<Bytes> open_box(const BoxPair& pair, View sealed);

// `random`: 32 fresh bytes, used for nothing else.
[[nodiscard]] KeyBody wrap(const ObjectKey& key, std::uint32_t epoch, const PublicKey& epoch_pub, const Secret32& random);
// `kid` is that of the entry's header. Fault entry.key.
[[nodiscard]] Result<ObjectKey> unwrap(const KeyBody& body, const BoxPair& epoch, const model::KeyId& kid);

// The shelf: keys once unwrapped, kept under a key of this device alone, so that reopening a ledger need not undo every
// box again. Local, never exchanged.
[[nodiscard]] Bytes shelve(const BlobKey& shelf, const ObjectKey& key);
[[nodiscard]] Result<ObjectKey> unshelve(const BlobKey& shelf, const model::KeyId& kid, View sealed);

}  // namespace limbledger::ledger
