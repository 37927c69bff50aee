#include "core/wire/read.hpp"
#include "tests/unit/wire/shapes.hpp"

#include <doctest/doctest.h>

#include <map>

namespace limbledger::wire {

using namespace shapes;

namespace {

// Path -> code of every fault.
std::map<std::string, std::string> faults_of(std::string_view json) {
  const auto value = read_text<Everything>(json);
  std::map<std::string, std::string> found;
  if (!value) {
    for (const Fault& fault : value.error().faults) {
      found[fault.path] = fault.code;
    }
  }
  return found;
}

std::string with(std::string_view old_text, std::string_view new_text) {
  std::string json(good);
  const auto at = json.find(old_text);
  REQUIRE(at != std::string::npos);
  return json.replace(at, old_text.size(), new_text);
}

using Faults = std::map<std::string, std::string>;

}  // namespace

TEST_CASE("a good text is read into its type") {
  const auto value = read_text<Everything>(good);
  REQUIRE(value.has_value());
  CHECK(value->colour == Colour::green);
  CHECK(value->tilt.steps == -15);
  CHECK(value->open);
  CHECK(std::get<Square>(value->shape).edges.steps == 4);
  CHECK(value->stars->steps == 3);
  CHECK(value->colours.size() == 2);
  CHECK(value->anything->json == R"({"x": [1]})");
  CHECK(value->leaf->leaves.front().name.text == "C");
}

TEST_CASE("the tag of a choice may stand last") {
  const auto value = read_text<Everything>(with(R"({"kind":"square","edges":4})", R"({"size":2.5,"kind":"round"})"));
  REQUIRE(value.has_value());
  CHECK(std::get<Round>(value->shape).size.steps == 25);
}

TEST_CASE("null reads as absent: an optional stays empty, a list stays empty, a needed member is missing") {
  CHECK(faults_of(with("\"stars\":3", "\"stars\":null")).empty());
  CHECK(faults_of(with(R"(["red","green"])", "null")).empty());
  CHECK(faults_of(with("\"name\":\"A\"", "\"name\":null")) == Faults{{"/name", "params.missing"}});  // hard case HC-103
}

// Hard case HC-108.
TEST_CASE("a misspelt member is refused and the nearest name is shown") {
  const auto value = read_text<Everything>(with("\"tilt\"", "\"tild\""));
  REQUIRE_FALSE(value.has_value());
  const auto& faults = value.error().faults;
  REQUIRE(faults.size() == 2);
  CHECK(faults[0].code == "params.unknown_member");
  CHECK(faults[0].path == "/tild");
  CHECK(faults[0].expected == "perhaps tilt");
  CHECK(faults[1].code == "params.missing");
  CHECK(faults[1].path == "/tilt");
}

// Hard case HC-109: path, expected, got, and all faults in one reply.
TEST_CASE("wrong types are all found in one go, each with its path") {
  CHECK(faults_of(R"({"colour":"blue","tilt":"110","open":1,"name":7,"shape":[],"stars":{},"colours":{},"leaf":{"name":"B","leaves":[1,{"name":true}]}})") ==
        Faults{{"/colour", "params.unknown_word"},
               {"/tilt", "params.wrong_type"},
               {"/open", "params.wrong_type"},
               {"/name", "params.wrong_type"},
               {"/shape", "params.wrong_type"},
               {"/stars", "params.wrong_type"},
               {"/colours", "params.wrong_type"},
               {"/leaf/leaves/0", "params.wrong_type"},
               {"/leaf/leaves/1/name", "params.wrong_type"}});
  const auto value = read_text<Everything>(with("-1.5", "\"NaN\""));
  REQUIRE_FALSE(value.has_value());
  CHECK(value.error().faults.front().got == "string");
  CHECK(value.error().faults.front().expected == "a number of deg in steps of 0.1");
}

// Hard case HC-077: an identifier sent as a number would lose digits past 2^53.
TEST_CASE("a number where a text is wanted is refused and not converted") {
  CHECK(faults_of(with("\"name\":\"A\"", "\"name\":9007199254740993")) == Faults{{"/name", "params.wrong_type"}});
  const auto kept = read_text<Everything>(with("\"name\":\"A\"", "\"name\":\"9007199254740993\""));
  REQUIRE(kept.has_value());
  CHECK(kept->name.text == "9007199254740993");
}

TEST_CASE("numbers outside their limits, between their steps or past all use are refused with the limits") {
  CHECK(faults_of(with("-1.5", "170")).empty());
  CHECK(faults_of(with("-1.5", "170.1")) == Faults{{"/tilt", "value.out_of_range"}});
  CHECK(faults_of(with("-1.5", "-30.1")) == Faults{{"/tilt", "value.out_of_range"}});
  CHECK(faults_of(with("-1.5", "1.55")) == Faults{{"/tilt", "value.step"}});
  CHECK(faults_of(with("-1.5", "-0")).empty());
  const auto value = read_text<Everything>(with("-1.5", "17." + std::string(200, '7')));
  REQUIRE_FALSE(value.has_value());
  const Fault fault = value.error().faults.front();  // error() gives a copy
  CHECK(fault.code == "value.step");
  CHECK(fault.got == "a number of many digits");
  REQUIRE(fault.params.size() == 3);
  CHECK(fault.params[0].json == "-30");
  CHECK(fault.params[2].json == "0.1");
}

TEST_CASE("a choice without a tag, with an unknown one, or with members of another is refused") {
  CHECK(faults_of(with(R"({"kind":"square","edges":4})", R"({"edges":4})")) == Faults{{"/shape/kind", "params.missing"}});
  CHECK(faults_of(with(R"("kind":"square")", R"("kind":"oval")")) == Faults{{"/shape/kind", "value.kind"}});
  CHECK(faults_of(with(R"("kind":"square")", R"("kind":"round")")) ==
        Faults{{"/shape/edges", "params.unknown_member"}, {"/shape/size", "params.missing"}});
}

TEST_CASE("what was sent is not repeated in a fault, but for a number") {
  const auto value = read_text<Everything>(with("\"green\",\"tilt\"", "\"Wulan Invented\",\"tilt\""));
  REQUIRE_FALSE(value.has_value());
  for (const Fault& fault : value.error().faults) {
    CHECK((fault.expected + fault.got + fault.path).find("Wulan") == std::string::npos);
  }
}

TEST_CASE("unknown members are counted and passed over where the reader is told to ignore them") {
  const auto document = parse(with("\"open\":true", "\"open\":true,\"later\":1"));
  REQUIRE(document.has_value());
  Everything value;
  ReadReport report;
  read_into(type_of<Everything>(), &value, *document, document->root(), Unknown::ignore, "", report);
  CHECK(report.faults.empty());
  CHECK(report.unknown_members == 1);
  CHECK(value.open);
}

TEST_CASE("a list over its limit is refused without being read, and faults end at fifty") {
  std::string many = "[";
  for (int i = 0; i < 10001; ++i) {
    many += i == 0 ? "1" : ",1";
  }
  const auto too_many = read_text<std::vector<Count<0, 9>>>(many + "]");
  REQUIRE_FALSE(too_many.has_value());
  CHECK(too_many.error().faults.front().code == "limit.items");
  std::string bad = "[";
  for (int i = 0; i < 200; ++i) {
    bad += i == 0 ? "\"\"" : ",\"\"";
  }
  const auto all_bad = read_text<std::vector<Count<0, 9>>>(bad + "]");
  REQUIRE_FALSE(all_bad.has_value());
  CHECK(all_bad.error().faults.size() == 50);
}

TEST_CASE("the nearest name is near, or none is given") {
  constexpr std::array<std::string_view, 3> names{"minuend", "subtrahend", "flexion"};
  CHECK(nearest("flexon", names) == "flexion");
  CHECK(nearest("Minuend", names) == "minuend");
  CHECK(nearest("whatever", names).empty());
  // Half of a short name is another name.
  constexpr std::array<std::string_view, 3> members{"home", "text", "mm"};
  CHECK(nearest("name", members).empty());
  CHECK(nearest("cm", members).empty());
  CHECK(nearest("hone", members) == "home");
  CHECK(nearest(std::string(100, 'x'), names).empty());
}

}  // namespace limbledger::wire
