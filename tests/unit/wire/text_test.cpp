#include "core/wire/text.hpp"

#include <doctest/doctest.h>

namespace limbledger::wire {

TEST_CASE("length is counted in code points, not bytes") {
  CHECK(code_points("") == 0);
  CHECK(code_points("abc") == 3);
  CHECK(code_points("\xC3\xA9\xE2\x82\xAC\xF0\x9F\x98\x80") == 3);  // e acute, euro sign, a face: 2, 3 and 4 bytes (RFC 3629)
}

TEST_CASE("a text of exactly the limit is taken and one character more is not") {
  std::string full;
  for (int i = 0; i < 200; ++i) {
    full += "\xC3\xA9";
  }
  Name name;
  CHECK(Name::from_text(full, name).empty());
  CHECK(name.text == full);
  CHECK(Name::from_text(full + "x", name) == "limit.text");
}

// Hard case HC-074: U+0000, U+0007, a line feed and U+2028 in a name.
TEST_CASE("no control character stands in a name, and only tab and line feed in a longer text") {
  using namespace std::string_literals;
  Name name;
  Remark remark;
  for (const std::string& bad : {"a\0b"s, "a\ab"s, "a\x7F"s, "a\xC2\x85z"s, "a\x1Bz"s, "a\rb"s}) {
    CHECK(Name::from_text(bad, name) == "value.control_character");
    CHECK(Remark::from_text(bad, remark) == "value.control_character");
  }
  for (const std::string& line : {"a\nb"s, "a\tb"s, "a\xE2\x80\xA8z"s, "a\xE2\x80\xA9z"s}) {
    CHECK(Name::from_text(line, name) == "value.control_character");
    CHECK(Remark::from_text(line, remark).empty());
  }
  CHECK(Name::from_text("\xC2\xA0\xE2\x80\x9Cquoted\xE2\x80\x9D", name).empty());
}

TEST_CASE("a refused text leaves the target as it was") {
  Name name{"before"};
  CHECK(Name::from_text("a\ab", name) == "value.control_character");
  CHECK(name.text == "before");
}

}  // namespace limbledger::wire
