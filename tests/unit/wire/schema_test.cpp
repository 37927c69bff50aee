#include "core/wire/schema.hpp"
#include "core/wire/parse.hpp"
#include "tests/unit/wire/shapes.hpp"

#include <doctest/doctest.h>

namespace limbledger::wire {

using namespace shapes;

namespace another {

struct Leaf {
  bool open = false;
};
BOOST_DESCRIBE_STRUCT(Leaf, (), (open))

}  // namespace another

TEST_CASE("an object is closed, and asks for what is neither optional nor a list") {
  SchemaSet set("#/$defs/");
  CHECK(set.of(type_of<Everything>()) == R"({"$ref":"#/$defs/Everything"})");
  const std::string everything = set.named().at("Everything");
  CHECK(everything.find(R"("required":["colour","tilt","open","name","shape"],"additionalProperties":false)") != std::string::npos);
  CHECK(everything.rfind(R"({"type":"object","description":"one of each",)", 0) == 0);
}

TEST_CASE("numbers carry their limits, and their unit and step in words; only whole counts are integers") {
  SchemaSet set("#/");
  CHECK(set.of(type_of<Tenths>()) == R"({"type":"number","minimum":-30,"maximum":170,"description":"deg, in steps of 0.1"})");
  CHECK(set.of(type_of<Count<1, 5>>()) == R"({"type":"integer","minimum":1,"maximum":5})");
}

TEST_CASE("a remark on a member stands beside its schema, and around a reference") {
  SchemaSet set("#/");
  static_cast<void>(set.of(type_of<Everything>()));
  const std::string everything = set.named().at("Everything");
  CHECK(everything.find(R"-("description":"forwards is positive (deg, in steps of 0.1)")-") != std::string::npos);
  CHECK(everything.find(R"("colour":{"allOf":[{"$ref":"#/Colour"}],"description":"as seen"})") != std::string::npos);
  CHECK(set.named().at("Colour") == R"({"type":"string","enum":["red","green"]})");
}

TEST_CASE("each branch of a choice names its kind as a constant") {
  SchemaSet set("#/");
  CHECK(set.of(type_of<Shape>()) == R"({"oneOf":[{"$ref":"#/Round"},{"$ref":"#/Square"}]})");
  CHECK(set.named().at("Square") ==
        R"({"type":"object","properties":{"kind":{"const":"square"},"edges":{"type":"integer","minimum":0,"maximum":9},)"
        R"("label":{"type":"string","maxLength":200}},"required":["kind","edges"],"additionalProperties":false})");
}

TEST_CASE("a type that contains itself ends") {
  SchemaSet set("#/");
  static_cast<void>(set.of(type_of<Leaf>()));
  CHECK(set.named().at("Leaf").find(R"("items":{"$ref":"#/Leaf"})") != std::string::npos);
  const auto document = parse(schema_document(type_of<Leaf>()));
  REQUIRE(document.has_value());
  CHECK(document->child(*document->child(document->root(), "$defs"), "Leaf") != nullptr);
}

TEST_CASE("a value kept as it is may be anything, and an optional has the schema of what it holds") {
  SchemaSet set("#/");
  CHECK(set.of(type_of<Raw>()) == "{}");
  CHECK(set.of(type_of<std::optional<bool>>()) == R"({"type":"boolean"})");
}

TEST_CASE("two types of one name are told of and do not take each other's place") {
  SchemaSet set("#/");
  static_cast<void>(set.of(type_of<Leaf>()));
  CHECK(set.clashes().empty());
  CHECK(set.of(type_of<another::Leaf>()).rfind(R"({"type":"object")", 0) == 0);
  CHECK(set.clashes() == std::vector<std::string>{"Leaf"});
  // As a branch of a choice it has a member more, so it is another type again.
  SchemaSet branch("#/");
  static_cast<void>(branch.of(type_of<Shape>()));
  static_cast<void>(branch.of(type_of<Round>()));
  CHECK(branch.clashes() == std::vector<std::string>{"Round"});
}

TEST_CASE("the same type gives the same text") { CHECK(schema_document(type_of<Everything>()) == schema_document(type_of<Everything>())); }

}  // namespace limbledger::wire
