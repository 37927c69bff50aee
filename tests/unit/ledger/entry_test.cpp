#include "tests/unit/ledger/support.hpp"

#include <doctest/doctest.h>

using namespace limbledger::ledger;
using namespace limbledger::ledger::test;
namespace model = limbledger::model;

// Worked values: the format page's example, made by two independent programs before this one existed.
TEST_CASE("the worked example of the format page comes out byte for byte") {
  const Writer start;
  CHECK(to_hex(start.origin.clinic.bytes) == "90441da2d987b8ae0bb3202a232d6c50");
  CHECK(to_hex(start.origin.replica.bytes) == "645d6c27d61c5fd5d74c51d501b7ebf1");
  CHECK(to_hex(start.key.object().bytes) == "0056bd8ffb2789658cb0c0775eb98bf7");
  CHECK(to_hex(start_of(start.origin).hash) == "ec20758502697455a5cafe5a601c62e5569db313398f3191044d48f695ae87c8");

  Writer writer;
  const Row& row = writer.write(R"({"v":1,"min":1,"op":"test"})");
  CHECK(to_hex(row.header) == "0101100100000068019ab697e8000000ffc03934f6e02ccce5156669c01a62bf");
  CHECK(to_hex(writer.key.kid().bytes) == "ffc03934f6e02ccce5156669c01a62bf");
  CHECK(to_hex(View(row.body).first(24)) == "e52cc870bc010150adabb1f388a7ca19a0e52b55cf04f599");
  CHECK(to_hex(body_hash(row)) == "70873412f84467508402b4f5516ab6d71fca657123a2932475ce949ee2327eeb");
  CHECK(to_hex(row.hash) == "75435f9b7575759869cd4dbb6794cc15d374f9b6ce6d66d6bdd5efe96b42e302");
  const std::string signature = to_hex(writer.head().signature);
  CHECK(signature.substr(0, 16) == "df9398b9c9d91a98");
  CHECK(signature.substr(118) == "cc8e49240d");
}

// BLAKE2b-256 of "abc": tests/outside/data/aead_and_kdf_crosscheck.json, two independent libraries agree.
TEST_CASE("the hash is BLAKE2b with 32 bytes of output") {
  CHECK(to_hex(hash256(as_bytes("abc"))) == "bddd813c634239723171ef3fee98579b94964e3bb1cb3e427262c8c068d52319");
  CHECK(hash256(as_bytes("a"), as_bytes("bc")) == hash256(as_bytes("abc")));
}

TEST_CASE("a header keeps what it does not know, but for the frame") {
  HeaderBytes bytes{};
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    bytes[i] = static_cast<std::uint8_t>(200 + i);
  }
  bytes[0] = frame_version;
  const auto header = Header::from_bytes(bytes);
  REQUIRE(header.has_value());
  CHECK(header->to_bytes() == bytes);
  for (const int frame : {0, 2, 255}) {
    bytes[0] = static_cast<std::uint8_t>(frame);
    CHECK(code_of(Header::from_bytes(bytes).error()) == "entry.format");
  }
}

TEST_CASE("names differ by every part they are made of") {
  const model::ClinicId clinic{filled<16>(1)};
  const model::RequestId request{filled<16>(2)};
  const auto base = object_of(clinic, ObjectType::exam, request, 0);
  CHECK(base != object_of(clinic, ObjectType::person, request, 0));
  CHECK(base != object_of(clinic, ObjectType::exam, request, 1));
  CHECK(base != object_of(clinic, ObjectType::exam, model::RequestId{filled<16>(3)}, 0));
  CHECK(base != object_of(model::ClinicId{filled<16>(2)}, ObjectType::exam, request, 0));
  CHECK(clinic_object(clinic) == object_of(clinic, ObjectType::clinic, model::RequestId{}, 0));
}

namespace {

Writer three_entries() {
  Writer writer;
  writer.introduce();
  writer.give_key(1, BoxPair::from_seed(secret_of(7)).pub(), 8);
  writer.write(R"({"v":1,"min":1,"op":"test"})");
  return writer;
}

// The fault of a run, or nothing.
std::optional<limbledger::wire::Refusal> fault_of(const Writer& writer, const std::vector<Row>& rows, const Head& head) {
  auto run = verify_run(writer.origin, start_of(writer.origin), rows, head);
  return run ? std::nullopt : std::optional(run.error());
}

}  // namespace

TEST_CASE("a whole run up to its signed head becomes verified entries") {
  const Writer writer = three_entries();
  const auto run = verify_run(writer.origin, start_of(writer.origin), writer.rows, writer.head());
  REQUIRE(run.has_value());
  REQUIRE(run->size() == 3);
  CHECK((*run)[0].header().kind == Kind::intro);
  CHECK((*run)[2].id() == entry_id(writer.rows[2].hash));
  const auto origin = origin_of(writer.origin.clinic, writer.rows.front());
  REQUIRE(origin.has_value());
  CHECK(origin->sign_pub == writer.origin.sign_pub);
}

TEST_CASE("every changed byte of every stored entry is detected at its entry") {
  const Writer writer = three_entries();
  const Head head = writer.head();
  std::size_t changed_count = 0;
  const auto must_fail_at = [&](std::vector<Row>& rows, std::size_t entry, std::uint8_t& byte) {
    for (const std::uint8_t flip : {std::uint8_t{0x01}, std::uint8_t{0x80}, std::uint8_t{0xff}}) {
      byte = static_cast<std::uint8_t>(byte ^ flip);
      const auto fault = fault_of(writer, rows, head);
      byte = static_cast<std::uint8_t>(byte ^ flip);
      REQUIRE(fault.has_value());
      CHECK(param_of(*fault, "seq") == std::to_string(entry + 1));
      CHECK(param_of(*fault, "replica") == '"' + writer.origin.replica.to_text() + '"');
      ++changed_count;
    }
  };
  std::vector<Row> rows = writer.rows;
  for (std::size_t entry = 0; entry < rows.size(); ++entry) {
    for (std::uint8_t& byte : rows[entry].header) {
      must_fail_at(rows, entry, byte);
    }
    for (std::uint8_t& byte : rows[entry].body) {
      must_fail_at(rows, entry, byte);
    }
    for (std::uint8_t& byte : rows[entry].hash) {
      must_fail_at(rows, entry, byte);
    }
  }
  CHECK(changed_count == 3 * (3 * 64 + rows[0].body.size() + rows[1].body.size() + rows[2].body.size()));
}

TEST_CASE("every changed byte of a head is detected as the head's") {
  const Writer writer = three_entries();
  const Head good = writer.head();
  const auto fault_code = [&](const Head& head) {
    const auto fault = fault_of(writer, writer.rows, head);
    return fault ? code_of(*fault) : std::string("none");
  };
  for (std::size_t i = 0; i < 64; ++i) {
    Head head = good;
    head.signature[i] ^= 1;
    CHECK(fault_code(head) == "entry.head");
  }
  for (std::size_t i = 0; i < 32; ++i) {
    Head head = good;
    head.hash[i] ^= 1;
    CHECK(fault_code(head) == "entry.head");
  }
  for (std::size_t i = 0; i < 16; ++i) {
    Head head = good;
    head.replica.bytes[i] ^= 1;
    CHECK(fault_code(head) == "entry.head");
  }
  for (int bit = 0; bit < 64; ++bit) {
    Head head = good;
    head.seq ^= std::uint64_t{1} << bit;
    CHECK(fault_code(head) == "entry.head");
  }
}

TEST_CASE("a body reduced to its hash still verifies, and a wrong hash does not") {
  const Writer writer = three_entries();
  std::vector<Row> rows = writer.rows;
  make_stub(rows[1]);
  make_stub(rows[2], RowState::pruned);
  const auto run = verify_run(writer.origin, start_of(writer.origin), rows, writer.head());
  REQUIRE(run.has_value());
  CHECK((*run)[1].body().empty());
  CHECK_FALSE((*run)[1].is_whole());
  for (std::size_t i = 0; i < 32; ++i) {
    rows[1].body[i] ^= 4;
    const auto fault = fault_of(writer, rows, writer.head());
    rows[1].body[i] ^= 4;
    REQUIRE(fault.has_value());
    CHECK(param_of(*fault, "seq") == "2");
  }
}

TEST_CASE("a missing, repeated, moved or foreign entry does not join") {
  const Writer writer = three_entries();
  std::vector<Row> rows = writer.rows;
  rows.erase(rows.begin() + 1);
  CHECK(code_of(*fault_of(writer, rows, writer.head())) == "entry.gap");
  rows = writer.rows;
  rows.insert(rows.begin() + 1, rows[1]);
  CHECK(code_of(*fault_of(writer, rows, writer.head())) == "entry.gap");
  rows = writer.rows;
  std::swap(rows[1], rows[2]);
  CHECK(code_of(*fault_of(writer, rows, writer.head())) == "entry.gap");
  rows = writer.rows;
  rows.pop_back();
  CHECK(code_of(*fault_of(writer, rows, writer.head())) == "entry.head");

  Writer other(9);
  other.introduce();
  CHECK(code_of(*fault_of(writer, other.rows, other.head())) == "entry.gap");
  CHECK(code_of(*fault_of(other, writer.rows, writer.head())) == "entry.gap");
}

TEST_CASE("HC-091: an unknown kind is kept and verified; a body over 1 MiB is refused") {
  Writer writer;
  Header header;
  header.kind = static_cast<Kind>(200);
  header.codec = 0x7f;
  header.flags = 0xff;
  header.body_length = 5;
  writer.add(header, Bytes(5, 1));
  const auto run = verify_run(writer.origin, start_of(writer.origin), writer.rows, writer.head());
  REQUIRE(run.has_value());
  CHECK((*run)[0].header().kind == static_cast<Kind>(200));

  for (const std::size_t over : {std::size_t{0}, std::size_t{1}}) {
    Writer large;
    header.body_length = static_cast<std::uint32_t>(body_size_max + over);
    large.add(header, Bytes(body_size_max + over, 1));
    const auto fault = fault_of(large, large.rows, large.head());
    CHECK((over == 0 ? !fault : fault && code_of(*fault) == "entry.size"));
  }
}

TEST_CASE("the plain bodies are read strictly") {
  const Writer writer = three_entries();
  const Bytes& intro = writer.rows[0].body;
  const auto read = Intro::from_bytes(intro);
  REQUIRE(read.has_value());
  CHECK(read->program == "limbledger test");
  CHECK(read->to_bytes() == intro);
  CHECK(intro.size() == 222 + read->program.size());
  for (std::size_t size = 0; size < intro.size(); ++size) {
    CHECK_FALSE(Intro::from_bytes(View(intro).first(size)).has_value());
  }
  Bytes longer = intro;
  longer.push_back(0);
  CHECK_FALSE(Intro::from_bytes(longer).has_value());
  for (const std::size_t at : {0U, 1U, 2U, 3U}) {
    Bytes other = intro;
    other[at] = 9;
    CHECK_FALSE(Intro::from_bytes(other).has_value());
  }
  Bytes signed_without = intro;
  signed_without[4 + 16 + 32 + 32 + 16 + 56] = 1;
  CHECK_FALSE(Intro::from_bytes(signed_without).has_value());

  CHECK(KeyBody::from_bytes(writer.rows[1].body)->to_bytes() == writer.rows[1].body);
  CHECK_FALSE(KeyBody::from_bytes(View(writer.rows[1].body).first(99)).has_value());
  CHECK_FALSE(KeyBody::from_bytes(Bytes(101)).has_value());
  CHECK(ExaminerBody::from_bytes(Bytes(112, 3))->to_bytes() == Bytes(112, 3));
  CHECK_FALSE(ExaminerBody::from_bytes(Bytes(111)).has_value());
}

TEST_CASE("HC-092: an introduction that names another clinic or another key starts no chain") {
  Writer writer;
  writer.introduce();
  CHECK(code_of(origin_of(model::ClinicId{filled<16>(9)}, writer.rows[0]).error()) == "entry.format");
  Row moved = writer.rows[0];
  moved.replica.bytes[0] ^= 1;
  CHECK(code_of(origin_of(writer.origin.clinic, moved).error()) == "entry.format");
  Row stub = writer.rows[0];
  make_stub(stub);
  CHECK(code_of(origin_of(writer.origin.clinic, stub).error()) == "entry.format");
}
