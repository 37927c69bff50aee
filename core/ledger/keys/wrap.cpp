#include "core/ledger/keys/wrap.hpp"

#include <sodium/crypto_box.h>
#include <sodium/crypto_generichash.h>
#include <sodium/crypto_scalarmult.h>

namespace limbledger::ledger {

namespace {

static_assert(crypto_box_SEALBYTES == 48);

wire::Fault key_fault(const model::KeyId& kid, std::string expected) {
  return wire::Fault("entry.key", "", std::move(expected)).with("kid", '"' + kid.to_text() + '"');
}

Result<ObjectKey> read_pair(View key_and_object, const model::KeyId& kid) {
  if (key_and_object.size() != 48) {
    return key_fault(kid, "a key of 32 bytes and the object it is for");
  }
  model::ObjectId object;
  std::copy(key_and_object.begin() + 32, key_and_object.end(), object.bytes.begin());
  ObjectKey out(Secret32(key_and_object.first(32)), object);
  if (out.kid() != kid) {
    return key_fault(kid, "a key that its own id was made of");
  }
  return out;
}

}  // namespace

BoxPair::BoxPair(const Secret32& secret) : secret_(secret) {
  require(crypto_scalarmult_base(pub_.data(), secret_.data()) == 0);
}

BoxPair BoxPair::from_seed(const Secret32& seed) {
  PublicKey pub{};
  Secret32 secret;
  require(crypto_box_seed_keypair(pub.data(), secret.data(), seed.data()) == 0);
  return BoxPair(secret);
}

Bytes seal_box(const PublicKey& to, const Secret32& ephemeral_seed, View plaintext) {
  PublicKey ephemeral_pub{};
  Secret32 ephemeral_secret;
  require(crypto_box_seed_keypair(ephemeral_pub.data(), ephemeral_secret.data(), ephemeral_seed.data()) == 0);
  std::array<std::uint8_t, crypto_box_NONCEBYTES> nonce{};
  crypto_generichash_state state;
  require(crypto_generichash_init(&state, nullptr, 0, nonce.size()) == 0);
  crypto_generichash_update(&state, ephemeral_pub.data(), ephemeral_pub.size());
  crypto_generichash_update(&state, to.data(), to.size());
  crypto_generichash_final(&state, nonce.data(), nonce.size());

  Bytes out(crypto_box_SEALBYTES + plaintext.size());
  std::copy(ephemeral_pub.begin(), ephemeral_pub.end(), out.begin());
  // Only a public key of small order fails here, and the epoch's key is our own.
  require(crypto_box_easy(out.data() + ephemeral_pub.size(), plaintext.data(), plaintext.size(), nonce.data(), to.data(),
                          ephemeral_secret.data()) == 0);
  return out;
}

Result<Bytes> open_box(const BoxPair& pair, View sealed) {
  if (sealed.size() < crypto_box_SEALBYTES) {
    return wire::Fault("entry.key", "", "a sealed box", std::to_string(sealed.size()));
  }
  Bytes out(sealed.size() - crypto_box_SEALBYTES);
  if (crypto_box_seal_open(out.data(), sealed.data(), sealed.size(), pair.pub().data(), pair.secret().data()) != 0) {
    return wire::Fault("entry.key", "", "a box sealed to this pair");
  }
  return out;
}

KeyBody wrap(const ObjectKey& key, std::uint32_t epoch, const PublicKey& epoch_pub, const Secret32& random) {
  WipedBytes plain(48);
  std::copy(key.key().view().begin(), key.key().view().end(), plain.bytes.begin());
  std::copy(key.object().bytes.begin(), key.object().bytes.end(), plain.bytes.begin() + 32);
  const Bytes sealed = seal_box(epoch_pub, random, plain.bytes);
  KeyBody out;
  out.epoch = epoch;
  std::copy(sealed.begin(), sealed.end(), out.sealed.begin());
  return out;
}

Result<ObjectKey> unwrap(const KeyBody& body, const BoxPair& epoch, const model::KeyId& kid) {
  auto plain = open_box(epoch, body.sealed);
  if (!plain) {
    return key_fault(kid, "a box sealed to the epoch it names");
  }
  auto out = read_pair(*plain, kid);
  sodium_memzero(plain->data(), plain->size());
  return out;
}

Bytes shelve(const BlobKey& shelf, const ObjectKey& key) {
  WipedBytes plain(48);
  std::copy(key.key().view().begin(), key.key().view().end(), plain.bytes.begin());
  std::copy(key.object().bytes.begin(), key.object().bytes.end(), plain.bytes.begin() + 32);
  return shelf.seal(key.kid().bytes, plain.bytes);
}

Result<ObjectKey> unshelve(const BlobKey& shelf, const model::KeyId& kid, View sealed) {
  auto plain = shelf.open(kid.bytes, sealed);
  if (!plain) {
    return key_fault(kid, "a key kept on this device's shelf");
  }
  auto out = read_pair(*plain, kid);
  sodium_memzero(plain->data(), plain->size());
  return out;
}

}  // namespace limbledger::ledger
