#include "tests/unit/ledger/support.hpp"

#include <doctest/doctest.h>

using namespace limbledger::ledger;
using namespace limbledger::ledger::test;
namespace model = limbledger::model;

// Source: RFC 8032 section 7.1, tests 1 to 3, in tests/outside/data/ed25519_rfc8032.json; the refusals are its own rows.
TEST_CASE("signatures are those of RFC 8032, and malleable or wrong ones are refused") {
  const std::string json = outside_data("ed25519_rfc8032.json");
  int case_count = 0;
  for (std::size_t from = json.find("\"seed\""); from != std::string::npos; from = json.find("\"seed\"", from + 1)) {
    const SignKey key(Secret32(from_hex(text_member(json, "seed", from))));
    const Bytes message = from_hex(text_member(json, "message_hex", from));
    const Bytes wrong_message = from_hex(text_member(json, "wrong_message_hex", from));
    const auto signature_of = [&](std::string_view name) {
      const Bytes bytes = from_hex(text_member(json, name, from));
      Signature out{};
      std::copy(bytes.begin(), bytes.end(), out.begin());
      return out;
    };
    const Signature signature = signature_of("signature");
    CHECK(to_hex(key.pub()) == text_member(json, "public_key", from));
    CHECK(key.sign(message) == signature);
    CHECK(verify(key.pub(), message, signature));
    CHECK_FALSE(verify(key.pub(), wrong_message, signature));
    CHECK_FALSE(verify(key.pub(), message, signature_of("flipped_signature")));
    CHECK_FALSE(verify(key.pub(), message, signature_of("s_plus_L")));
    ++case_count;
  }
  CHECK(case_count == 3);
}

TEST_CASE("a head is good for its clinic, replica, place and key alone") {
  const Writer writer;
  const Head head = sign_head(writer.device, writer.origin.clinic, writer.origin.replica, 7, filled<32>(9));
  CHECK(verify_head(writer.origin.clinic, writer.origin.sign_pub, head).has_value());
  const auto other_clinic = verify_head(model::ClinicId{filled<16>(1)}, writer.origin.sign_pub, head);
  CHECK(code_of(other_clinic.error()) == "entry.head");
  CHECK(param_of(other_clinic.error(), "seq") == "7");
  CHECK_FALSE(verify_head(writer.origin.clinic, writer.root.pub(), head).has_value());
  Head moved = head;
  moved.seq = 8;
  CHECK_FALSE(verify_head(writer.origin.clinic, writer.origin.sign_pub, moved).has_value());
}

TEST_CASE("an heir is admitted by its predecessor's key and by no other") {
  const Writer old;
  const Writer heir(3);
  Intro intro;
  intro.clinic = old.origin.clinic;
  intro.sign_pub = heir.origin.sign_pub;
  intro.predecessor = {old.origin.replica, 12, filled<32>(8)};
  intro.heir_signature = sign_heir(old.device, old.origin.clinic, heir.origin.replica, intro.predecessor);
  CHECK(verify_heir(old.origin.sign_pub, intro));
  CHECK_FALSE(verify_heir(heir.origin.sign_pub, intro));
  Intro other = intro;
  other.predecessor.seq = 13;
  CHECK_FALSE(verify_heir(old.origin.sign_pub, other));
  other = intro;
  other.sign_pub = old.root.pub();
  CHECK_FALSE(verify_heir(old.origin.sign_pub, other));
  other = intro;
  other.heir_signature = sign_heir(heir.device, old.origin.clinic, heir.origin.replica, intro.predecessor);
  CHECK_FALSE(verify_heir(old.origin.sign_pub, other));
}

TEST_CASE("an examiner's key proves itself for one replica") {
  const Writer writer;
  const SignKey examiner(secret_of(20));
  const model::ExaminerId id{filled<16>(21)};
  const ExaminerBody body = prove_examiner(examiner, writer.origin.clinic, writer.origin.replica, id);
  CHECK(verify_examiner(writer.origin.clinic, writer.origin.replica, body));
  CHECK_FALSE(verify_examiner(writer.origin.clinic, model::ReplicaId{filled<16>(1)}, body));
  ExaminerBody stolen = body;
  stolen.examiner.bytes = filled<16>(22);
  CHECK_FALSE(verify_examiner(writer.origin.clinic, writer.origin.replica, stolen));
  stolen = body;
  stolen.pub = writer.device.pub();
  CHECK_FALSE(verify_examiner(writer.origin.clinic, writer.origin.replica, stolen));
}

TEST_CASE("an examiner's signature covers object, person, entries in any order, and what was shown") {
  const Writer writer;
  const SignKey examiner(secret_of(20));
  SignedMatter matter{writer.origin.clinic,
                      writer.key.object(),
                      model::ExaminerId{filled<16>(21)},
                      {filled<32>(3), filled<32>(1), filled<32>(2)},
                      as_bytes("{\"shown\":1}")};
  const Signature signature = sign_matter(examiner, matter);
  CHECK(verify_matter(examiner.pub(), matter, signature));
  SignedMatter same = matter;
  same.covered = {filled<32>(1), filled<32>(2), filled<32>(3), filled<32>(2)};
  CHECK(verify_matter(examiner.pub(), same, signature));
  CHECK(cover(same.covered).count == 3);

  SignedMatter other = matter;
  other.covered.pop_back();
  CHECK_FALSE(verify_matter(examiner.pub(), other, signature));
  other = matter;
  other.body = as_bytes("{\"shown\":2}");
  CHECK_FALSE(verify_matter(examiner.pub(), other, signature));
  other = matter;
  other.examiner.bytes = filled<16>(22);
  CHECK_FALSE(verify_matter(examiner.pub(), other, signature));
  other = matter;
  other.object = clinic_object(writer.origin.clinic);
  CHECK_FALSE(verify_matter(examiner.pub(), other, signature));
  other = matter;
  other.clinic.bytes[0] ^= 1;
  CHECK_FALSE(verify_matter(examiner.pub(), other, signature));
  CHECK_FALSE(verify_matter(writer.device.pub(), matter, signature));
}
