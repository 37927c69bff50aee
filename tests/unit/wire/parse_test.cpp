#include "core/wire/parse.hpp"

#include <doctest/doctest.h>

namespace limbledger::wire {

namespace {

std::string nested(std::size_t levels) { return std::string(levels, '[') + "1" + std::string(levels, ']'); }

std::string first_code(std::string_view text, std::size_t depth = depth_max_default) {
  const auto document = parse(text, depth);
  return document ? "" : document.error().faults.front().code;
}

}  // namespace

TEST_CASE("every node keeps its text as it was written") {
  const auto document = parse(" {\"a\": [1.50, -0, 1e3], \"b\" : \"x\\u00e9\\n\", \"c\":{ \"d\" : null } , \"e\":true} ");
  REQUIRE(document.has_value());
  const Node& root = document->root();
  CHECK(root.count == 4);
  const Node* a = document->child(root, "a");
  REQUIRE(a != nullptr);
  CHECK(a->raw == "[1.50, -0, 1e3]");
  CHECK(document->at(a->first).raw == "1.50");
  CHECK(document->at(document->at(a->first).next).raw == "-0");
  const Node* b = document->child(root, "b");
  CHECK(b->text == "x\xC3\xA9\n");
  CHECK(b->raw == "\"x\\u00e9\\n\"");
  CHECK(document->child(root, "c")->raw == "{ \"d\" : null }");
  CHECK(document->child(root, "e")->kind == NodeKind::boolean);
  CHECK(document->child(root, "f") == nullptr);
}

TEST_CASE("a text of one scalar is a document") {
  CHECK(parse(" 12 ")->root().raw == "12");
  CHECK(parse("\"a\"")->root().text == "a");
  CHECK(parse("null")->root().kind == NodeKind::null);
  CHECK(parse("true")->root().kind == NodeKind::boolean);
}

// Hard case HC-100: 100,000 brackets; the limit is ours.
TEST_CASE("nesting is taken up to the limit and refused one level deeper, also at 100,000 levels") {
  CHECK(first_code(nested(32)) == "");
  CHECK(first_code(nested(33)) == "limit.depth");
  CHECK(first_code(nested(3), 2) == "limit.depth");
  CHECK(first_code(std::string(100000, '[') + std::string(100000, ']')) == "limit.depth");
  CHECK(first_code("{}") == "");
}

// Hard case HC-101: not the first, not the last.
TEST_CASE("a member named twice is refused by its path, at any depth and after unescaping") {
  const auto twice = parse(R"({"params":{"list":[{"side":"left"},{"side":"left","si\u0064e":"right"}]}})");
  REQUIRE_FALSE(twice.has_value());
  CHECK(twice.error().faults.front().code == "json.duplicate_member");
  CHECK(twice.error().faults.front().path == "/params/list/1/side");
  CHECK(first_code(R"({"a":{"x":1},"b":{"x":1}})") == "");
}

// Hard cases HC-103, HC-104, HC-113: the grammar of RFC 8259, one text, strict UTF-8, no byte order mark.
TEST_CASE("what is not one JSON text in UTF-8 is refused") {
  for (const std::string_view text : {"", " ", "{\"a\":NaN}", "[Infinity]", "[-Infinity]", "{}{}", "{} // x", "[1,]", "{\"a\":1,}", "\xEF\xBB\xBF{}",
                                      "\"\xC3\x28\"", "\"\\uD800\"", "[01]", "'a'", "{\"a\":tru}", "[1e400x]", "[1e]", "[-]", "{\"a\":1"}) {
    CAPTURE(text);
    CHECK(first_code(text) == "json.syntax");
  }
}

TEST_CASE("a fault of the text says what was expected and never repeats the text") {
  const auto broken = parse("{\"name\":\"Invented\xFF\"}");
  REQUIRE_FALSE(broken.has_value());
  CHECK(broken.error().faults.front().expected == "strict UTF-8");
  CHECK(broken.error().faults.front().got == "byte 17");
}

// The Unicode Standard, section 3.9, table 3-7 (well-formed UTF-8 byte sequences) and RFC 3629, section 4: the first byte of
// the first sequence that is not in the table.
TEST_CASE("broken UTF-8 is refused with the byte at which the first broken character begins") {
  const auto where = [](std::string_view inside) {
    const auto broken = parse("[\"\xC3\xA9" + std::string(inside) + "\"]");
    REQUIRE_FALSE(broken.has_value());
    return broken.error().faults.front().got;
  };
  for (const std::string_view bad : {"\x80", "\xBF", "\xC0\xAF", "\xC1\x81", "\xC2", "\xC3\x28", "\xE0\x9F\xBF", "\xE1\x80", "\xED\xA0\x80",
                                     "\xED\xBF\xBF", "\xF0\x8F\xBF\xBF", "\xF1\x80\x80", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFE", "\xFF"}) {
    CAPTURE(bad.size());
    CHECK(where(bad) == "byte 4");
    CHECK(where("\xF0\x9F\xA6\xB5 " + std::string(bad)) == "byte 9");
  }
  // The ends of every row of the table are well-formed: what is broken behind them is what is named.
  CHECK(where("\xC2\x80\xDF\xBF\xE0\xA0\x80\xED\x9F\xBF\xEE\x80\x80\xF0\x90\x80\x80\xF4\x8F\xBF\xBF\xFF") == "byte 25");
  CHECK(parse(std::string_view("\"\xE2\x82", 3)).error().faults.front().got == "byte 1");
}

// Hard case HC-102. RFC 8259, section 6, sets no limit to numbers, so these are JSON; what they stand for is judged by its type.
TEST_CASE("a number that no double holds is JSON, keeps its digits, and is marked so that it is never passed on") {
  const auto document = parse(R"({"a":[1e400,"1e400 \" 9",-1E+999],"b":1e30})");
  REQUIRE(document.has_value());
  const Node& list = document->at(document->root().first);
  CHECK(document->at(list.first).raw == "1e400");
  CHECK(document->at(list.first).beyond_double);
  CHECK(document->at(document->at(list.first).next).text == "1e400 \" 9");
  CHECK(!document->child(document->root(), "b")->beyond_double);
  CHECK(parse(std::string(400, '9')).has_value());
  CHECK(first_code("[1e400,01]") == "json.syntax");
  CHECK(first_code("[1e400,]") == "json.syntax");
}

TEST_CASE("a fault of the text names the byte where it stopped making sense, counted from 0") {
  const auto where = [](std::string_view text) { return parse(text).error().faults.front().got; };
  CHECK(where("[1,]") == "byte 3");
  CHECK(where("{\"a\":1,\"b\":01}") == "byte 11");
  CHECK(where("[1e400,2e]") == "byte 7");
  CHECK(where("{\"a\":\"b") == "byte 7");
}

// RFC 6901, section 3: ~ and / in a member's name.
TEST_CASE("a pointer escapes tilde and slash") {
  CHECK(pointer_step("a/b~c") == "/a~1b~0c");
  CHECK(pointer_step(std::size_t{12}) == "/12");
  CHECK(pointer_step(std::string(1000, 'x')).size() == 201);
}

}  // namespace limbledger::wire

// RFC 6901, sections 4 and 5, without escapes.
TEST_CASE("a pointer names a member of an object, an element of a list by its number from 0, or nothing") {
  const auto document = limbledger::wire::parse(R"({"foo":["bar","baz",{"deep":[0,1,2,3,4,5,6,7,8,9,10,"eleven"]}],"":0})");
  REQUIRE(document.has_value());
  const auto found = [&](std::string_view pointer) {
    const limbledger::wire::Node* node = document->at_pointer(pointer);
    return node == nullptr ? std::string("none") : std::string(node->raw);
  };
  CHECK(document->at_pointer("") == &document->root());
  CHECK(found("/foo/0") == R"("bar")");
  CHECK(found("/") == "0");
  CHECK(found("/foo/2/deep/11") == R"("eleven")");
  for (const char* nowhere : {"/foo/3", "/foo/-", "/foo/x", "/foo/", "/bar", "/foo/0/x", "/foo/2/deep/12"}) {
    CAPTURE(nowhere);
    CHECK(found(nowhere) == "none");
  }
}

// JSONTestSuite: n_incomplete_null, n_incomplete_true, n_incomplete_false, n_multidigit_number_then_00 and others whose break
// lies where the walk for its place has to look at a broken value.
TEST_CASE("broken values are refused with their code wherever they stand, never by an exception") {
  for (const std::string_view text : {"[nul]", "[tru]", "[fals]", "[nulll]", "[truee]", R"({"a":nul})", R"({"a":[nul,1]})", "nul", "tru", "[1.0e+]", "[-01]",
                                      R"(["a\u00"])", R"(["\uD800"])", R"({"a":"\x"})", "[1,,2]", R"({"a":1,})", "[", R"({"a")", R"(["a)", "]", "[1]]"}) {
    CAPTURE(text);
    const auto parsed = limbledger::wire::parse(text);
    REQUIRE_FALSE(parsed.has_value());
    CHECK(parsed.error().faults.front().code == "json.syntax");
  }
  // A megabyte of digits that are no number is looked at once, not once a digit.
  for (const std::string& digits : {std::string(1'000'000, '0'), std::string(1'000'000, '1') + "x", std::string(1'000'000, '1') + ".x"}) {
    const auto long_one = limbledger::wire::parse("[" + digits + "]");
    REQUIRE_FALSE(long_one.has_value());
    CHECK(long_one.error().faults.front().code == "json.syntax");
    CHECK(long_one.error().faults.front().got == "byte 1");
  }
  // The byte where it stops making sense is that behind the value.
  for (const auto& [slip, byte] : {std::pair{R"(["id":7])", "byte 5"}, std::pair{R"(["a":false])", "byte 4"}, std::pair{R"({"a":["b":1]})", "byte 9"},
                                   std::pair{R"({"k":"a":true})", "byte 8"}}) {
    CHECK(limbledger::wire::parse(slip).error().faults.front().got == byte);
  }
  // Of two members that stand twice the smaller is named, of few members and of many.
  const std::string twice = R"("b":1,"b":1,"a":1,"a":1)";
  CHECK(limbledger::wire::parse("{" + twice + "}").error().faults.front().path == "/a");
  CHECK(limbledger::wire::parse("{" + twice + R"(,"c":1,"d":1,"e":1,"f":1,"g":1,"h":1,"i":1,"j":1,"k":1,"l":1})").error().faults.front().path == "/a");
  // n_structure_100000_opening_arrays: broken and deep at once.
  for (const char open : {'[', '{'}) {
    const auto deep = limbledger::wire::parse(std::string(100000, open));
    REQUIRE_FALSE(deep.has_value());
    CHECK((deep.error().faults.front().code == "json.syntax" || deep.error().faults.front().code == "limit.depth"));
  }
  const auto keyed = limbledger::wire::parse([] { std::string text; for (int i = 0; i < 50000; ++i) { text += "{\"a\":"; } return text; }());
  REQUIRE_FALSE(keyed.has_value());
}
