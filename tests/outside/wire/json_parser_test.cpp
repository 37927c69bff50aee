// The walk that reads JSON takes a text where simdjson's DOM parser, which checks a whole text by itself, takes it, and no other: over
// texts of every kind of value, whole and broken at every byte, compared with that parser (a library of its own, simdjson 3).
#include "core/wire/parse.hpp"

#include <doctest/doctest.h>
#include <simdjson.h>

#include <array>
#include <string>

namespace limbledger::wire {

namespace {

constexpr std::array<std::string_view, 12> texts{
    R"({"a":[1,-2.5,0,3e1],"bc":"x\u00e9\n","c":{"d":null,"e":true},"f":false})",
    R"([[],{},[{}],"",{"":""},[[[1]]]])",
    "\t{ \"a\" : [ 1 , 2 ] ,\r\n \"b\" : \"c d\" } ",
    R"(["\"\\\/\b\f\n\r\t","\ud83d\ude00"])",
    "[\"\xC3\xA9\",\"\xE2\x82\xAC\",\"\xF0\x9F\x98\x80\"]",
    R"({"jsonrpc":"2.0","method":"finding.record","params":{"side":"left","deg":-12.75,"on":true},"id":7})",
    "[true,false,null]",
    "[0,-0,10,1.25,-3.5]",
    R"("a text")",
    "-17.5",
    "null",
    R"({"k1":1,"k2":2,"k3":3,"k4":4,"k5":5,"k6":6,"k7":7,"k8":8,"k9":9,"k10":10,"k11":11,"k12":12,"k13":13,"k14":14})",
};

struct Outcomes {
  std::size_t looked_at = 0;
  std::size_t taken = 0;
  std::size_t different = 0;
  std::string first;
};

void compare(const std::string& text, Outcomes& out) {
  simdjson::dom::parser parser;
  simdjson::dom::element whole;
  const auto theirs = parser.parse(simdjson::padded_string(text)).get(whole);
  if (theirs == simdjson::NUMBER_ERROR) {
    return;  // also numbers that no double holds, which are read here by their digits
  }
  const auto ours = parse(text);
  ++out.looked_at;
  out.taken += ours ? 1U : 0U;
  // A member named twice is JSON, and refused here.
  const bool is_same = ours ? theirs == simdjson::SUCCESS
                            : theirs != simdjson::SUCCESS || ours.error().faults.front().code == "json.duplicate_member";
  if (!is_same) {
    ++out.different;
    out.first = out.first.empty() ? text : out.first;
    return;
  }
  // What is kept of the whole value reads as the same value.
  if (ours && (parser.parse(simdjson::padded_string(ours->root().raw)).get(whole) != simdjson::SUCCESS)) {
    ++out.different;
    out.first = out.first.empty() ? text : out.first;
  }
}

}  // namespace

TEST_CASE("simdjson's DOM parser takes what the walk takes, and refuses what it refuses, at every byte changed, left out or put in") {
  static constexpr char other_bytes[] = "{}[]\",:\\/ \t\n0149eE.+-tfnul\x00\x01\x1f\x7f\x80\xC3\xED\xF0\xFF";
  constexpr std::string_view others(other_bytes, sizeof other_bytes - 1);
  Outcomes out;
  for (const std::string_view text : texts) {
    compare(std::string(text), out);
    for (std::size_t at = 0; at <= text.size(); ++at) {
      compare(std::string(text.substr(0, at)), out);
      for (const char other : others) {
        std::string put_in(text);
        put_in.insert(at, 1, other);
        compare(put_in, out);
        if (at < text.size()) {
          std::string changed(text);
          changed[at] = other;
          compare(changed, out);
        }
      }
      if (at < text.size()) {
        std::string left_out(text);
        left_out.erase(at, 1);
        compare(left_out, out);
      }
    }
  }
  INFO(out.first);
  CHECK(out.different == 0);
  CHECK(out.looked_at > 30'000);
  CHECK(out.taken > 5'000);
  MESSAGE(out.looked_at << " texts, " << out.taken << " of them JSON");
}

TEST_CASE("texts read by the walk are what simdjson's DOM parser reads") {
  for (const std::string_view text : {R"("plain")", R"("a\"b")", R"("\\")", R"("tab\tend")", R"("\u00e9")", R"("\ud83d\ude00")", R"("")", R"("a\/b")"}) {
    CAPTURE(text);
    simdjson::dom::parser parser;
    std::string_view theirs;
    REQUIRE(parser.parse(simdjson::padded_string(text)).get_string().get(theirs) == simdjson::SUCCESS);
    const std::string listed = "{" + std::string(text) + ":[" + std::string(text) + "]}";
    const auto ours = parse(listed);
    REQUIRE(ours.has_value());
    const Node& member = ours->at(ours->root().first);
    CHECK(member.key == theirs);
    CHECK(ours->at(member.first).text == theirs);
    CHECK(parse(text)->root().text == theirs);
  }
}

}  // namespace limbledger::wire
