#include "core/model/ids.hpp"

#include "core/wire/read.hpp"
#include "core/wire/write.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace limbledger;

TEST_CASE("an id is 26 characters of base32, as RFC 4648 writes its bytes") {
  // RFC 4648 section 10: "foobar" is MZXW6YTBOI; here in lower case, filled with zero bytes to sixteen.
  model::Bytes16 bytes{};
  const std::string_view foobar = "foobar";
  std::copy(foobar.begin(), foobar.end(), bytes.begin());
  const std::string text = model::to_base32(bytes);
  CHECK(text.size() == 26);
  CHECK(text.substr(0, 9) == "mzxw6ytbo");
  CHECK(model::from_base32(text) == bytes);
  CHECK(model::to_base32(model::Bytes16{}) == "aaaaaaaaaaaaaaaaaaaaaaaaaa");
}

TEST_CASE("one id has one text: capitals, padding and spare bits are refused") {
  CHECK(model::from_base32("aaaaaaaaaaaaaaaaaaaaaaaaaa"));
  CHECK(!model::from_base32("aaaaaaaaaaaaaaaaaaaaaaaaab"));
  CHECK(!model::from_base32("AAAAAAAAAAAAAAAAAAAAAAAAAA"));
  CHECK(!model::from_base32("aaaaaaaaaaaaaaaaaaaaaaaaa="));
  CHECK(!model::from_base32("aaaaaaaaaaaaaaaaaaaaaaaaa"));
  CHECK(!model::from_base32("aaaaaaaaaaaaaaaaaaaaaaaaa1"));
}

TEST_CASE("a request id is a UUID of any case, written in lower case") {
  model::RequestId id;
  REQUIRE(model::RequestId::from_text("F81D4FAE-7DEC-11D0-A765-00A0C91E6BF6", id).empty());  // RFC 4122, section 3
  CHECK(id.to_text() == "f81d4fae-7dec-11d0-a765-00a0c91e6bf6");
  for (const char* text : {"f81d4fae7dec11d0a76500a0c91e6bf6", "f81d4fae-7dec-11d0-a765-00a0c91e6bf", "g81d4fae-7dec-11d0-a765-00a0c91e6bf6", ""}) {
    CHECK(model::RequestId::from_text(text, id) == "params.wrong_type");
  }
}

TEST_CASE("a catalogue name starts with a letter or a digit and holds no space") {
  model::ItemId id;
  CHECK(model::ItemId::from_text("knee.flexion_active", id).empty());
  for (const char* text : {"", ".knee", "knee flexion", "knee\n", "-knee", "kn\u00e9e"}) {
    CHECK(model::ItemId::from_text(text, id) == "params.wrong_type");
  }
  CHECK(model::ItemId::from_text(std::string(121, 'a'), id) == "params.wrong_type");
}

TEST_CASE("HC-077: an identifier is a text; as a number it is refused") {
  const auto number = wire::read_text<model::PersonId>("9007199254740993");
  REQUIRE(number.has_error());
  const wire::Refusal refusal = number.error();
  CHECK(refusal.faults.front().code == "params.wrong_type");
}
