// Sealing: XChaCha20-Poly1305 under the key of one object, padded to 64 bytes (ISO 7816-4) so that lengths say little.
// The nonce is a keyed hash of what is sealed and where it stands: the same call gives the same bytes, and no restored
// or cloned device can use one nonce for two texts. Texts over 64 KiB are refused.
#pragma once

#include "core/ledger/entry.hpp"
#include "core/ledger/keys/secret.hpp"

namespace limbledger::ledger {

// Lets the library choose its fastest code for this machine; called before a ledger is made or opened. False: it cannot work here.
[[nodiscard]] bool prepare_sealing();

constexpr std::size_t plaintext_size_max = std::size_t{64} << 10;

// Local blobs that are never exchanged: snapshots, drafts, keys kept for reopening. The label is bound, not stored.
class BlobKey {
 public:
  explicit BlobKey(const Secret32& key);
  [[nodiscard]] Bytes seal(View label, View plaintext) const;
  // Fault entry.seal when it is not what was sealed under this key and label.
  [[nodiscard]] Result<Bytes> open(View label, View sealed) const;

 private:
  Secret32 seal_;
  Secret32 nonce_;
};

// The key of one person record, exam, or of the clinic, with the subkeys it is used by.
class ObjectKey {
 public:
  ObjectKey(const Secret32& key, const model::ObjectId& object);

  [[nodiscard]] const model::KeyId& kid() const { return kid_; }
  [[nodiscard]] const model::ObjectId& object() const { return object_; }
  [[nodiscard]] const Secret32& key() const { return key_; }
  [[nodiscard]] const Secret32& seal_key() const { return seal_; }
  [[nodiscard]] const Secret32& nonce_key() const { return nonce_; }
  [[nodiscard]] BlobKey blob_key() const;

 private:
  Secret32 key_;
  model::ObjectId object_;
  model::KeyId kid_;
  Secret32 seal_;
  Secret32 nonce_;
};

// The key id commits to key and object, so that no two contents hide under one id.
[[nodiscard]] model::KeyId kid_of(const Secret32& key, const model::ObjectId& object);

// Where an entry stands; sealed in, so that a body cannot be moved.
struct Position {
  model::ClinicId clinic;
  model::ReplicaId replica;
  std::uint64_t seq = 0;
};

// Length of the body that a text of `plaintext_size` becomes; the header states it and is itself sealed in.
[[nodiscard]] std::uint32_t sealed_size(std::size_t plaintext_size);
// The header of an operation's entry, with everything but the last-of-commit flag.
[[nodiscard]] Header sealed_header(Kind kind, const Stamp& stamp, const ObjectKey& key, std::size_t plaintext_size);

[[nodiscard]] Result<Bytes> seal(const ObjectKey& key, const Position& at, const HeaderBytes& header, View plaintext);
// Fault entry.seal, with the place: another key, another place or a changed byte.
[[nodiscard]] Result<Bytes> open(const ObjectKey& key, const Position& at, const HeaderBytes& header, View body);

}  // namespace limbledger::ledger
