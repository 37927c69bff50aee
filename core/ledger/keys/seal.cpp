#include "core/ledger/keys/seal.hpp"

#include <sodium/core.h>
#include <sodium/crypto_aead_xchacha20poly1305.h>
#include <sodium/crypto_generichash.h>
#include <sodium/crypto_kdf.h>

#include <optional>

namespace limbledger::ledger {

namespace {

constexpr Tag tag_seal = tag("limb.seal.1");
constexpr Tag tag_kid = tag("limb.kid.1");
constexpr Tag tag_blob = tag("limb.blob.1");

constexpr std::size_t block_size = 64;
constexpr std::size_t nonce_size = 24;
constexpr std::size_t mac_size = 16;
static_assert(nonce_size == crypto_aead_xchacha20poly1305_ietf_NPUBBYTES);
static_assert(mac_size == crypto_aead_xchacha20poly1305_ietf_ABYTES);

Secret32 subkey(const Secret32& key, std::uint64_t number, const char* context) {
  Secret32 out;
  require(crypto_kdf_derive_from_key(out.data(), out.size(), number, context, key.data()) == 0);
  return out;
}

std::size_t padded_size(std::size_t size) { return (size / block_size + 1) * block_size; }

// nonce | ciphertext | tag.
Bytes seal_padded(const Secret32& seal_key, const Secret32& nonce_key, View aad, View plaintext) {
  WipedBytes padded(padded_size(plaintext.size()));
  std::copy(plaintext.begin(), plaintext.end(), padded.bytes.begin());
  padded.bytes[plaintext.size()] = 0x80;

  Bytes out(nonce_size + padded.bytes.size() + mac_size);
  crypto_generichash_state state;
  require(crypto_generichash_init(&state, nonce_key.data(), nonce_key.size(), nonce_size) == 0);
  crypto_generichash_update(&state, aad.data(), aad.size());
  crypto_generichash_update(&state, padded.bytes.data(), padded.bytes.size());
  crypto_generichash_final(&state, out.data(), nonce_size);
  crypto_aead_xchacha20poly1305_ietf_encrypt(out.data() + nonce_size, nullptr, padded.bytes.data(), padded.bytes.size(),
                                             aad.data(), aad.size(), nullptr, out.data(), seal_key.data());
  return out;
}

// Nothing when it does not open.
std::optional<Bytes> open_padded(const Secret32& seal_key, View aad, View sealed) {
  if (sealed.size() < nonce_size + block_size + mac_size || (sealed.size() - nonce_size - mac_size) % block_size != 0) {
    return std::nullopt;
  }
  Bytes out(sealed.size() - nonce_size - mac_size);
  if (crypto_aead_xchacha20poly1305_ietf_decrypt(out.data(), nullptr, nullptr, sealed.data() + nonce_size,
                                                 sealed.size() - nonce_size, aad.data(), aad.size(), sealed.data(),
                                                 seal_key.data()) != 0) {
    return std::nullopt;
  }
  std::size_t size = 0;
  if (sodium_unpad(&size, out.data(), out.size(), block_size) != 0) {
    return std::nullopt;
  }
  out.resize(size);
  return out;
}

using Aad = std::array<std::uint8_t, 88>;

Aad entry_aad(const Position& at, const HeaderBytes& header) {
  Aad out{};
  std::copy(tag_seal.begin(), tag_seal.end(), out.begin());
  std::copy(at.clinic.bytes.begin(), at.clinic.bytes.end(), out.begin() + 16);
  std::copy(at.replica.bytes.begin(), at.replica.bytes.end(), out.begin() + 32);
  put_integer(out.data() + 48, at.seq, 8);
  std::copy(header.begin(), header.end(), out.begin() + 56);
  return out;
}

wire::Fault sealed_fault(const Position& at, std::string_view code, std::string expected) {
  return wire::Fault(code, "", std::move(expected))
      .with("replica", '"' + at.replica.to_text() + '"')
      .with("seq", std::to_string(at.seq));
}

}  // namespace

bool prepare_sealing() { return sodium_init() >= 0; }

BlobKey::BlobKey(const Secret32& key) : seal_(subkey(key, 1, "limbblob")), nonce_(subkey(key, 2, "limbblob")) {}

Bytes BlobKey::seal(View label, View plaintext) const {
  return seal_padded(seal_, nonce_, ByteWriter(16 + label.size()).raw(tag_blob).raw(label).view(), plaintext);
}

Result<Bytes> BlobKey::open(View label, View sealed) const {
  auto out = open_padded(seal_, ByteWriter(16 + label.size()).raw(tag_blob).raw(label).view(), sealed);
  if (!out) {
    return wire::Fault("entry.seal", "", "what was sealed under this key and name");
  }
  return std::move(*out);
}

model::KeyId kid_of(const Secret32& key, const model::ObjectId& object) {
  return {id16(hash256(tag_kid, key.view(), object.bytes))};
}

ObjectKey::ObjectKey(const Secret32& key, const model::ObjectId& object)
    : key_(key),
      object_(object),
      kid_(kid_of(key, object)),
      seal_(subkey(key, 1, "limbseal")),
      nonce_(subkey(key, 2, "limbseal")) {}

BlobKey ObjectKey::blob_key() const { return BlobKey(subkey(key_, 3, "limbseal")); }

std::uint32_t sealed_size(std::size_t plaintext_size) {
  require(plaintext_size <= body_size_max);
  return static_cast<std::uint32_t>(nonce_size + padded_size(plaintext_size) + mac_size);
}

Header sealed_header(Kind kind, const Stamp& stamp, const ObjectKey& key, std::size_t plaintext_size) {
  Header out;
  out.kind = kind;
  out.codec = codec_padded;
  out.body_length = sealed_size(plaintext_size);
  out.stamp = stamp;
  out.kid = key.kid();
  return out;
}

Result<Bytes> seal(const ObjectKey& key, const Position& at, const HeaderBytes& header, View plaintext) {
  if (plaintext.size() > plaintext_size_max) {
    return sealed_fault(at, "limit.size", "an operation of at most 64 KiB");
  }
  require(header[2] == codec_padded && get_integer(header.data() + 4, 4) == sealed_size(plaintext.size()));
  return seal_padded(key.seal_key(), key.nonce_key(), entry_aad(at, header), plaintext);
}

Result<Bytes> open(const ObjectKey& key, const Position& at, const HeaderBytes& header, View body) {
  if (header[2] != codec_padded) {
    return sealed_fault(at, "format.newer", "a body padded to 64 bytes and not compressed");
  }
  auto out = open_padded(key.seal_key(), entry_aad(at, header), body);
  if (!out) {
    return sealed_fault(at, "entry.seal", "what was sealed under this key at this place");
  }
  return std::move(*out);
}

}  // namespace limbledger::ledger
