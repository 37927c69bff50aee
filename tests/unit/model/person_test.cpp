#include "core/model/person.hpp"

#include "core/model/exam/finding.hpp"
#include "core/wire/read.hpp"
#include "core/wire/write.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace limbledger;

namespace {

[[nodiscard]] std::string person_json(const std::string& name, const std::string& chart = "1") {
  return R"({"names":[{"text":)" + wire::quoted(name) + R"(}],"sex":"unknown","norm_sex":"unspecified","identifiers":[{"issuer":"clinic K","text":)" +
         wire::quoted(chart) + "}]}";
}

[[nodiscard]] std::string first_code(std::string_view json) {
  const auto read = wire::read_text<model::Person>(json);
  if (read) {
    return {};
  }
  const wire::Refusal refusal = read.error();
  return refusal.faults.front().code + "@" + refusal.faults.front().path;
}

void comes_back(const std::string& name) {
  const auto read = wire::read_text<model::Person>(person_json(name));
  REQUIRE_MESSAGE(read.has_value(), name);
  CHECK((*read->names)[0].text.text == name);
  const auto again = wire::read_text<model::Person>(wire::write(*read));
  REQUIRE(again.has_value());
  CHECK(*again == *read);
}

}  // namespace

TEST_CASE("HC-067: a right-to-left name is kept code point for code point") {
  comes_back("\u0641\u0627\u0637\u0645\u0629 \u0628\u0646\u062a \u0639\u0644\u064a");
}

TEST_CASE("HC-068: joined signs are kept byte for byte, and lengths are code points") {
  const std::string note = "pain \U0001f9b5\U0001f3fd\u200d\u2642\ufe0f ok";
  comes_back(note);
  CHECK(wire::code_points(note) == 13);
  // Four code points in one visible sign: a limit cuts nothing, it refuses.
  wire::Text<8, false> out;
  CHECK((wire::Text<8, false>::from_text(note, out)) == "limit.text");
  CHECK(out.text.empty());
}

TEST_CASE("HC-069: one name is enough, and nothing is put in for the other") {
  const auto read = wire::read_text<model::Person>(R"({"names":[{"text":"Wulan"}],"sex":"female","norm_sex":"female"})");
  REQUIRE(read.has_value());
  CHECK(wire::write(*read) == R"({"names":[{"text":"Wulan"}],"sex":"female","norm_sex":"female"})");
}

TEST_CASE("HC-070: a name over 200 and a remark over 4,000 code points are refused, never cut") {
  CHECK(first_code(person_json(std::string(200, 'n'))).empty());
  CHECK(first_code(person_json(std::string(300, 'n'))) == "limit.text@/names/0/text");
  wire::Remark remark;
  CHECK(wire::Remark::from_text(std::string(1'000'000, 'n'), remark) == "limit.text");
  CHECK(wire::Remark::from_text(std::string(4000, 'n'), remark).empty());
}

TEST_CASE("HC-072: a name that looks like a keyword or a command is a name") {
  for (const char* name : {"Null", "N/A", "True", "0", "O'Neil", "Robert'); DROP"}) {
    comes_back(name);
  }
}

TEST_CASE("HC-074: a control character in a name is refused with its path") {
  CHECK(first_code(person_json(std::string("A\0B", 3))) == "value.control_character@/names/0/text");
  CHECK(first_code(person_json("A\aB")) == "value.control_character@/names/0/text");
  CHECK(first_code(person_json("A\nB")) == "value.control_character@/names/0/text");
  CHECK(first_code(person_json("A\u2028B")) == "value.control_character@/names/0/text");
  // In a remark of many lines it is a character like any other.
  wire::Remark remark;
  CHECK(wire::Remark::from_text("A\u2028B", remark).empty());
}

TEST_CASE("HC-075: chart numbers are texts, leading zeros and all") {
  const auto long_one = wire::read_text<model::Person>(person_json("A", "00123"));
  const auto short_one = wire::read_text<model::Person>(person_json("A", "123"));
  REQUIRE(long_one.has_value());
  REQUIRE(short_one.has_value());
  CHECK((*long_one->identifiers)[0].text.text == "00123");
  CHECK(!(*long_one == *short_one));
}

TEST_CASE("HC-077: a chart number beyond 2^53 is kept as text and refused as a number") {
  const auto read = wire::read_text<model::Person>(person_json("A", "9007199254740993"));
  REQUIRE(read.has_value());
  CHECK((*read->identifiers)[0].text.text == "9007199254740993");
  CHECK(first_code(R"({"sex":"male","norm_sex":"male","identifiers":[{"issuer":"clinic K","text":9007199254740993}]})") ==
        "params.wrong_type@/identifiers/0/text");
}

TEST_CASE("HC-104: broken UTF-8 and a lone surrogate are refused, never replaced") {
  CHECK(first_code("{\"names\":[{\"text\":\"A\xC3\x28\"}],\"sex\":\"male\",\"norm_sex\":\"male\"}").starts_with("json.syntax"));
  CHECK(first_code(R"({"names":[{"text":"\uD800"}],"sex":"male","norm_sex":"male"})").starts_with("json.syntax"));
}
