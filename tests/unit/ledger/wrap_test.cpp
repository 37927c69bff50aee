#include "tests/unit/ledger/support.hpp"

#include <doctest/doctest.h>

#include <sodium/crypto_box.h>

using namespace limbledger::ledger;
using namespace limbledger::ledger::test;
namespace model = limbledger::model;

// Source: tests/outside/data/aead_and_kdf_crosscheck.json, a box sealed by another build of the library's own call.
TEST_CASE("a box that the library sealed elsewhere opens") {
  const std::string json = outside_data("aead_and_kdf_crosscheck.json");
  const BoxPair pair = BoxPair::from_seed(Secret32(from_hex(text_member(json, "seed_for_box_keypair"))));
  CHECK(to_hex(pair.pub()) == text_member(json, "public_key"));
  CHECK(to_hex(pair.secret().view()) == text_member(json, "private_key"));
  const auto opened = open_box(pair, from_hex(text_member(json, "sealed_hex")));
  REQUIRE(opened.has_value());
  CHECK(std::string(opened->begin(), opened->end()) == text_member(json, "opens_to_utf8"));
}

TEST_CASE("a wrapped key opens with the library's own call, and the same randomness gives the same bytes") {
  const Writer writer;
  const BoxPair epoch = BoxPair::from_seed(secret_of(7));
  const KeyBody body = wrap(writer.key, 3, epoch.pub(), secret_of(8));
  CHECK(body.epoch == 3);
  CHECK(body.to_bytes() == wrap(writer.key, 3, epoch.pub(), secret_of(8)).to_bytes());
  CHECK(body.to_bytes() != wrap(writer.key, 3, epoch.pub(), secret_of(9)).to_bytes());
  Bytes plain(48);
  REQUIRE(crypto_box_seal_open(plain.data(), body.sealed.data(), body.sealed.size(), epoch.pub().data(),
                               epoch.secret().data()) == 0);
  CHECK(Bytes(plain.begin(), plain.begin() + 32) == Bytes(32, 4));

  const auto key = unwrap(body, epoch, writer.key.kid());
  REQUIRE(key.has_value());
  CHECK(key->kid() == writer.key.kid());
  CHECK(key->object() == writer.key.object());
  CHECK(key->key() == writer.key.key());
}

TEST_CASE("a key whose id does not fit, a changed byte or another epoch is refused") {
  const Writer writer;
  const BoxPair epoch = BoxPair::from_seed(secret_of(7));
  const KeyBody body = wrap(writer.key, 1, epoch.pub(), secret_of(8));
  const ObjectKey other(secret_of(5), writer.key.object());
  const auto mismatch = unwrap(body, epoch, other.kid());
  REQUIRE_FALSE(mismatch.has_value());
  CHECK(code_of(mismatch.error()) == "entry.key");
  CHECK(param_of(mismatch.error(), "kid") == '"' + other.kid().to_text() + '"');
  CHECK(code_of(unwrap(body, BoxPair::from_seed(secret_of(6)), writer.key.kid()).error()) == "entry.key");
  for (std::size_t i = 0; i < body.sealed.size(); ++i) {
    KeyBody changed = body;
    changed.sealed[i] ^= 2;
    CHECK_FALSE(unwrap(changed, epoch, writer.key.kid()).has_value());
  }
}

TEST_CASE("a shelved key comes back for its own id on its own device") {
  const Writer writer;
  const BlobKey shelf(secret_of(30));
  const Bytes sealed = shelve(shelf, writer.key);
  const auto key = unshelve(shelf, writer.key.kid(), sealed);
  REQUIRE(key.has_value());
  CHECK(key->key() == writer.key.key());
  CHECK(key->object() == writer.key.object());
  CHECK_FALSE(unshelve(BlobKey(secret_of(31)), writer.key.kid(), sealed).has_value());
  CHECK_FALSE(unshelve(shelf, model::KeyId{filled<16>(1)}, sealed).has_value());
  for (std::size_t i = 0; i < sealed.size(); ++i) {
    Bytes changed = sealed;
    changed[i] ^= 2;
    CHECK_FALSE(unshelve(shelf, writer.key.kid(), changed).has_value());
  }
}
