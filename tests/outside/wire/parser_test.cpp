// The parser against the neutral byte cases of tests/outside/data/json_parser_cases.json (grammar of RFC 8259, limits of
// RFC 7493). Where the grammar leaves a choice, what we chose stands in the table below.
#include "core/wire/parse.hpp"
#include "core/wire/read.hpp"
#include "tests/outside/vectors.hpp"

#include <map>

namespace limbledger::wire {

using namespace outside;

namespace {

// Our setting for each case that the grammar allows and I-JSON or we do not, as the notes of the file ask.
const std::map<std::string_view, bool>& chosen() {
  static const std::map<std::string_view, bool> table{
      {"overflow", true},  // refused by every number of ours, and where text is kept as written
      {"underflow to zero", true},
      {"large integer past 2^53", true},  // refused by every number of ours, which ends at 2^53
      {"past 64-bit", true},                // likewise
      {"lone high surrogate escape", false},
      {"lone low surrogate escape", false},
      {"reversed pair", false},
      {"NUL escape", true},  // refused by every text of ours
      {"noncharacter U+FFFF", true},
      {"BOM first", false},
      {"duplicate name", false},
      {"duplicate after unescape", false},
      {"deep nesting 64", true},
      {"deep nesting 1025", false},
  };
  return table;
}

}  // namespace

TEST_CASE("every parser case is taken or refused as the grammar or our written choice says") {
  const std::string text = data_file("json_parser_cases.json");
  const auto cases = parse(text);
  REQUIRE(cases.has_value());
  int count = 0;
  for (const Node* one : children(*cases, *cases->child(cases->root(), "cases"))) {
    ++count;
    const std::string name(cases->child(*one, "name")->text);
    CAPTURE(name);
    const std::string bytes = from_hex(cases->child(*one, "bytes_hex")->text);
    const std::string_view expect = cases->child(*one, "expect")->text;
    bool taken = expect == "accept";
    if (const auto own = chosen().find(name); own != chosen().end()) {
      taken = own->second;
    } else {
      REQUIRE(expect != "policy");
    }
    // An empty innermost list is not counted as a level, so 1025 brackets are 1024 levels.
    CHECK(parse(bytes, 1023).has_value() == taken);
  }
  CHECK(count == 64);
}

TEST_CASE("what the parser lets through because the grammar allows it is refused where a value is read") {
  using Whole = Count<-9007199254740991, 9007199254740991>;
  CHECK(read_text<std::vector<Whole>>("[9007199254740991]").has_value());
  CHECK_FALSE(read_text<std::vector<Whole>>("[9007199254740993]").has_value());
  CHECK_FALSE(read_text<std::vector<Whole>>("[18446744073709551616]").has_value());
  CHECK_FALSE(read_text<std::vector<Whole>>("[1e400]").has_value());
  CHECK_FALSE(read_text<Raw>("[1e400]").has_value());
  CHECK_FALSE(read_text<Raw>("[18446744073709551616]").has_value());
  const auto underflow = read_text<std::vector<Whole>>("[1e-400]");
  CHECK_FALSE(underflow.has_value());  // not a whole number of steps, however small
  CHECK(read_text<std::vector<Whole>>("[-0]").has_value());
  CHECK_FALSE(read_text<Name>("\"\\u0000\"").has_value());
  CHECK_FALSE(read_text<Remark>("\"\\u0000\"").has_value());
}

}  // namespace limbledger::wire
