#include "core/model/value.hpp"

#include "core/wire/read.hpp"
#include "core/wire/write.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace limbledger;

TEST_CASE("each kind of value is written as it was read, with its tag first") {
  for (const char* json :
       {R"({"kind":"angle","deg":112,"toward":"flexion","toward_deg":112,"trials":[111,113],"of_trials":"mean"})",
        R"({"kind":"length","mm":865,"entered":"86.5 cm"})", R"({"kind":"time","s":30.5})", R"({"kind":"force","n":210})",
        R"({"kind":"pressure","mm_hg":0,"signal":"absent"})", R"({"kind":"temperature","cel":36.8})", R"({"kind":"mass","kg":70.5})",
        R"({"kind":"count","count":4})", R"({"kind":"grade","scale":"mrc/1976","grade":"4","shade":"minus","word":"weak","mm":3})",
        R"({"kind":"test","result":"equivocal","reproduces":"familiar"})", R"({"kind":"answer","answer":"unsure"})",
        R"({"kind":"choice","choice":"twist"})", R"({"kind":"choices","choices":["a","b"]})", R"({"kind":"text","text":"it went out"})",
        R"({"kind":"not_done","reason":"blocked","detail":"locked at 40"})"}) {
    const auto value = wire::read_text<model::Value>(json);
    REQUIRE_MESSAGE(value.has_value(), json);
    CHECK(wire::write(*value) == json);
    CHECK(std::string(json).find("\"" + std::string(model::kind_of(*value)) + "\"") != std::string::npos);
  }
}

TEST_CASE("the tag may come last, and an unknown one is refused") {
  const auto last = wire::read_text<model::Value>(R"({"answer":"yes","kind":"answer"})");
  REQUIRE(last.has_value());
  CHECK(wire::write(*last) == R"({"kind":"answer","answer":"yes"})");
  CHECK(wire::read_text<model::Value>(R"({"kind":"colour","colour":"red"})").has_error());
  CHECK(wire::read_text<model::Value>(R"({"answer":"yes"})").has_error());
}

TEST_CASE("a member of another kind is refused by name") {
  const auto value = wire::read_text<model::Value>(R"({"kind":"angle","flexon":110})");
  REQUIRE(value.has_error());
  const wire::Refusal refusal = value.error();
  CHECK(refusal.faults.front().code == "params.unknown_member");
  CHECK(refusal.faults.front().path == "/flexon");
}

TEST_CASE("no reason why something was not done reads as no") {
  const auto value = wire::read_text<model::Value>(R"({"kind":"not_done","reason":"pain"})");
  REQUIRE(value.has_value());
  CHECK(std::holds_alternative<model::NotDone>(*value));
  CHECK(!std::holds_alternative<model::Answer>(*value));
  for (const char* word : {"not_asked", "no", "none"}) {
    CHECK(wire::read_text<model::Value>(R"({"kind":"not_done","reason":")" + std::string(word) + R"("})").has_error());
  }
}
