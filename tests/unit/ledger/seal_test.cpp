#include "tests/unit/ledger/support.hpp"

#include <doctest/doctest.h>

#include <sodium/crypto_aead_xchacha20poly1305.h>

using namespace limbledger::ledger;
using namespace limbledger::ledger::test;
namespace model = limbledger::model;

namespace {

struct Sealed {
  Writer writer;
  Position at = writer.next_position();
  HeaderBytes header{};
  Bytes body;

  explicit Sealed(std::string_view text) {
    header = sealed_header(Kind::op, {1764000000000, 3}, writer.key, text.size()).to_bytes();
    body = *seal(writer.key, at, header, as_bytes(text));
  }
};

}  // namespace

// Source: draft-irtf-cfrg-xchacha appendix A.3.1, in tests/outside/data/aead_and_kdf_crosscheck.json.
TEST_CASE("the cipher is XChaCha20-Poly1305 as published") {
  const std::string json = outside_data("aead_and_kdf_crosscheck.json");
  const Bytes key = from_hex(text_member(json, "key"));
  const Bytes nonce = from_hex(text_member(json, "nonce"));
  const Bytes aad = from_hex(text_member(json, "aad"));
  const std::string text = text_member(json, "plaintext_utf8");
  Bytes out(text.size() + 16);
  crypto_aead_xchacha20poly1305_ietf_encrypt(out.data(), nullptr, as_bytes(text).data(), text.size(), aad.data(), aad.size(),
                                             nullptr, nonce.data(), key.data());
  CHECK(to_hex(out) == text_member(json, "ciphertext_and_tag"));
}

TEST_CASE("what is sealed opens again at every length around the padding's steps") {
  for (const std::size_t size : {0U, 1U, 62U, 63U, 64U, 65U, 127U, 128U, 1000U, 65536U}) {
    const std::string text(size, 'x');
    const Sealed sealed(text);
    CHECK(sealed.body.size() == sealed_size(size));
    CHECK((sealed.body.size() - 40) % 64 == 0);
    CHECK(sealed.body.size() - 40 > size);
    const auto opened = open(sealed.writer.key, sealed.at, sealed.header, sealed.body);
    REQUIRE(opened.has_value());
    CHECK(std::string(opened->begin(), opened->end()) == text);
  }
  // 300 bytes of text are an entry of 392 (format page).
  CHECK(32 + sealed_size(300) == 392);
}

TEST_CASE("a text over 64 KiB is not sealed") {
  const Writer writer;
  const std::string text(65537, 'x');
  const auto header = sealed_header(Kind::op, {}, writer.key, text.size()).to_bytes();
  const auto body = seal(writer.key, writer.next_position(), header, as_bytes(text));
  REQUIRE_FALSE(body.has_value());
  CHECK(code_of(body.error()) == "limit.size");
}

TEST_CASE("the same text at the same place gives the same bytes, any other place another nonce") {
  const Sealed one("text");
  const Sealed again("text");
  CHECK(one.body == again.body);
  const Sealed other("test");
  CHECK_FALSE(std::equal(one.body.begin(), one.body.begin() + 24, other.body.begin()));
  Position next = one.at;
  next.seq += 1;
  const Bytes moved = *seal(one.writer.key, next, one.header, as_bytes("text"));
  CHECK_FALSE(std::equal(one.body.begin(), one.body.begin() + 24, moved.begin()));
}

TEST_CASE("a changed byte, another place, another header or another key does not open") {
  const Sealed sealed("{\"v\":1}");
  const auto fails = [&](const ObjectKey& key, const Position& at, const HeaderBytes& header, const Bytes& body) {
    const auto opened = open(key, at, header, body);
    return !opened && code_of(opened.error()) == "entry.seal" && param_of(opened.error(), "seq") == std::to_string(at.seq);
  };
  for (std::size_t i = 0; i < sealed.body.size(); ++i) {
    Bytes body = sealed.body;
    body[i] ^= 1;
    CHECK(fails(sealed.writer.key, sealed.at, sealed.header, body));
  }
  for (std::size_t i = 0; i < sealed.body.size(); ++i) {
    const Bytes shorter(sealed.body.begin(), sealed.body.begin() + static_cast<std::ptrdiff_t>(i));
    CHECK(fails(sealed.writer.key, sealed.at, sealed.header, shorter));
  }
  for (std::size_t i = 0; i < sealed.header.size(); ++i) {
    HeaderBytes header = sealed.header;
    header[i] ^= 1;
    CHECK_FALSE(open(sealed.writer.key, sealed.at, header, sealed.body).has_value());
  }
  Position at = sealed.at;
  at.seq = 2;
  CHECK(fails(sealed.writer.key, at, sealed.header, sealed.body));
  at = sealed.at;
  at.clinic.bytes[15] ^= 1;
  CHECK(fails(sealed.writer.key, at, sealed.header, sealed.body));
  at = sealed.at;
  at.replica.bytes[15] ^= 1;
  CHECK(fails(sealed.writer.key, at, sealed.header, sealed.body));
  CHECK(fails(ObjectKey(secret_of(5), sealed.writer.key.object()), sealed.at, sealed.header, sealed.body));
}

TEST_CASE("a compressed or unpadded body is said to be of a newer format") {
  const Sealed sealed("x");
  HeaderBytes header = sealed.header;
  header[2] = 0x11;
  CHECK(code_of(open(sealed.writer.key, sealed.at, header, sealed.body).error()) == "format.newer");
}

TEST_CASE("the key id commits to the key and to the object") {
  const Writer writer;
  CHECK(writer.key.kid() == kid_of(secret_of(4), writer.key.object()));
  CHECK(writer.key.kid() != kid_of(secret_of(5), writer.key.object()));
  CHECK(writer.key.kid() != kid_of(secret_of(4), clinic_object(writer.origin.clinic)));
}

TEST_CASE("a local blob opens under its own key and name alone") {
  const Writer writer;
  const BlobKey blob_key = writer.key.blob_key();
  const Bytes sealed = blob_key.seal(as_bytes("exam"), as_bytes("content"));
  const auto opened = blob_key.open(as_bytes("exam"), sealed);
  REQUIRE(opened.has_value());
  CHECK(std::string(opened->begin(), opened->end()) == "content");
  CHECK_FALSE(blob_key.open(as_bytes("Exam"), sealed).has_value());
  CHECK_FALSE(BlobKey(writer.key.key()).open(as_bytes("exam"), sealed).has_value());
  for (std::size_t i = 0; i < sealed.size(); ++i) {
    Bytes changed = sealed;
    changed[i] ^= 0x10;
    CHECK_FALSE(blob_key.open(as_bytes("exam"), changed).has_value());
  }
}
