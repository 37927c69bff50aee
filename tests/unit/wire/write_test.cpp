#include "core/wire/read.hpp"
#include "core/wire/write.hpp"
#include "tests/unit/wire/shapes.hpp"

#include <doctest/doctest.h>

namespace limbledger::wire {

using namespace shapes;

TEST_CASE("what was read is written as it was, members in the order of their description") {
  const auto value = read_text<Everything>(good);
  REQUIRE(value.has_value());
  CHECK(write(*value) == good);
}

TEST_CASE("the order in which members came does not show in what is written") {
  const auto value = read_text<Everything>(
      R"({"name":"A","shape":{"edges":4,"kind":"square","label":null},"open":true,"tilt":-15e-1,"colour":"green"})");
  REQUIRE(value.has_value());
  CHECK(write(*value) == R"({"colour":"green","tilt":-1.5,"open":true,"name":"A","shape":{"kind":"square","edges":4},"colours":[]})");
}

// RFC 8259, section 7: quotation mark, reverse solidus and U+0000 to U+001F must be escaped; nothing else need be.
TEST_CASE("a text is escaped where JSON asks for it and nowhere else") {
  using namespace std::string_literals;
  CHECK(wire::quoted("a\"b\\c/d") == R"("a\"b\\c/d")");
  CHECK(wire::quoted("\n\t\r\b\f\0\x1F"s) == R"("\n\t\r\u0008\u000c\u0000\u001f")");
  CHECK(wire::quoted("\x7F\xC3\xA9\xE2\x80\xA8\xF0\x9F\x98\x80") == "\"\x7F\xC3\xA9\xE2\x80\xA8\xF0\x9F\x98\x80\"");
}

TEST_CASE("every text of one code point up to U+FFFF comes back from its writing") {
  for (std::uint32_t point = 0; point <= 0xFFFF; ++point) {
    if (point >= 0xD800 && point <= 0xDFFF) {
      continue;
    }
    std::string text;
    if (point < 0x80) {
      text += static_cast<char>(point);
    } else if (point < 0x800) {
      text += static_cast<char>(0xC0U | (point >> 6U));
      text += static_cast<char>(0x80U | (point & 0x3FU));
    } else {
      text += static_cast<char>(0xE0U | (point >> 12U));
      text += static_cast<char>(0x80U | ((point >> 6U) & 0x3FU));
      text += static_cast<char>(0x80U | (point & 0x3FU));
    }
    const auto document = parse(wire::quoted(text));
    REQUIRE(document.has_value());
    REQUIRE(document->root().text == text);
  }
}

}  // namespace limbledger::wire
