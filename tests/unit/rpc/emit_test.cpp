#include "rpc/emit/files.hpp"
#include "rpc/emit/openrpc.hpp"
#include "rpc/emit/page/faults_of.hpp"
#include "core/wire/parse.hpp"
#include "core/wire/schema.hpp"
#include "tests/outside/rpc/protocol_methods.hpp"
#include "tests/unit/rpc/holds.hpp"

#include <doctest/doctest.h>

#include <algorithm>

namespace limbledger::rpc {

namespace {

struct Mixed {
  std::optional<wire::Name> maybe;
  Whole needed;
};
BOOST_DESCRIBE_STRUCT(Mixed, (), (maybe, needed))

Result<Whole> mixed(service::Context&, const Mixed& params) { return params.needed; }

}  // namespace

TEST_CASE("the OpenRPC document names every method once, with its params in order and its result") {
  const std::string text = openrpc_text(protocol_methods());
  const auto document = wire::parse(text);
  REQUIRE(document.has_value());
  CHECK(document->child(document->root(), "methods")->count == protocol_methods().size() + 1);
  CHECK(holds(text, R"("name":"rpc.discover")"));
  CHECK(holds(text, R"("params":[{"name":"minuend","required":true,"schema":{"type":"integer")"));
  CHECK(text.find('\n') == std::string::npos);
  CHECK(text == openrpc_text(protocol_methods()));
}

// OpenRPC 1.3.2, method object: required params come first.
TEST_CASE("required params come first, and where the struct has them mixed only names are offered") {
  constexpr std::array table{service::bind<&mixed>("mixed", service::to_examiner_kiosk, "mixed", {true, true})};
  const std::string text = openrpc_text(table);
  CHECK(text.find("\"name\":\"needed\"") < text.find("\"name\":\"maybe\""));
  CHECK(holds(text, R"(May be called by: examiner, kiosk. Writes; the same request again writes nothing new. Answers also while the ledger is locked.)"));
  CHECK(holds(text, R"("paramStructure":"by-name")"));
}

TEST_CASE("the document says for programs whether a method writes, who may call it, and who of them while the ledger is locked") {
  constexpr std::array table{service::bind<&mixed>("mixed", service::to_examiner_kiosk, "mixed", {true, false, false, true}),
                             service::bind<&mixed>("open", service::to_anybody, "open", {false, true})};
  const std::string text = openrpc_text(table);
  CHECK(holds(text, R"("x-writes":true,"x-needs-token":true,"x-scopes":["examiner","kiosk"],"x-while-locked":["kiosk"])"));
  CHECK(holds(text, R"("x-writes":false,"x-needs-token":false,"x-scopes":["examiner","kiosk","viewer","sync"],"x-while-locked":["examiner","kiosk","viewer","sync"])"));
}

TEST_CASE("the document names of each method the errors and the codes that the page lists") {
  const std::string text = openrpc_text(service::methods());
  const auto document = wire::parse(text);
  REQUIRE(document.has_value());
  const wire::Node* methods = document->child(document->root(), "methods");
  std::size_t seen = 0;
  for (std::uint32_t at = methods->first; at != 0; at = document->at(at).next) {
    const wire::Node* codes = document->child(document->at(at), "x-faults");
    const std::string name(document->child(document->at(at), "name")->text);
    const auto known = std::find_if(service::methods().begin(), service::methods().end(), [&](const service::Method& one) { return one.name == name; });
    if (known == service::methods().end()) {
      continue;
    }
    REQUIRE(codes != nullptr);
    CHECK(codes->count == faults_of(*known).size());
    CHECK(document->child(document->at(at), "errors")->count > 0);
    ++seen;
  }
  CHECK(seen == service::methods().size());
  // What a form was seen to meet.
  const auto of = [&](std::string_view method) { return faults_of(*std::find_if(service::methods().begin(), service::methods().end(), [&](const service::Method& one) { return one.name == method; })); };
  const auto has = [](const auto& codes, std::string_view code) { return std::find(codes.begin(), codes.end(), code) != codes.end(); };
  for (const char* method : {"exam.sign", "letter.write", "statement.disagree", "outcome.record", "finding.withdraw"}) {
    CAPTURE(method);
    CHECK(has(of(method), "revision.old"));
    CHECK_FALSE(has(of(method), "finding.stale"));
  }
  for (const char* code : {"finding.unknown", "finding.several", "value.all_or_one", "value.sign"}) {
    CAPTURE(code);
    CHECK(has(of("finding.record"), code));
  }
  for (const char* code : {"value.empty", "value.control_character", "value.date", "value.step"}) {
    CAPTURE(code);
    CHECK(has(faults_of_every_call(), code));
  }
}

// What may be left out in truth: a list is described as optional only where an empty one is taken.
TEST_CASE("of the lists among the params of a method only those that may be empty are described as optional") {
  std::vector<std::string> optional;
  for (const service::Method& method : service::methods()) {
    for (const wire::Field& field : method.params().fields) {
      if (field.type().kind == wire::Kind::list && !wire::member_required(field)) {
        optional.push_back(std::string(method.name) + " " + std::string(field.name));
      }
    }
  }
  CHECK(optional == std::vector<std::string>{"examiner.amend seen", "person.amend replaces", "pair.decide seen", "place.amend replaces", "place.amend seen", "impression.record replaces", "plan.record replaces", "district.report seen", "conflict.put_off entries"});
  const std::string text = openrpc_text(service::methods());
  CHECK(holds(text, R"("name":"seen","description":"needed: the revision that was shown","required":true)"));
}

TEST_CASE("the errors of the document hold every code of the table") {
  const std::string text = openrpc_text(protocol_methods());
  const std::size_t errors = text.find("\"errors\":{\"syntax\"");
  REQUIRE(errors != std::string::npos);
  for (const wire::FaultCode& row : wire::fault_codes()) {
    CHECK(text.find("\"" + std::string(row.code) + "\"", errors) != std::string::npos);
  }
}

TEST_CASE("no two types of the real method table have one name") {
  for (const std::string& name : name_clashes(service::methods())) {
    CAPTURE(name);
    CHECK(false);
  }
}

TEST_CASE("a text laid out for reading says the same, and what stands in quotes is not touched") {
  CHECK(laid_out(R"({"a":[1,{"b":"x,{\"y\":\\"}],"c":{},"d":[]})") ==
        "{\n  \"a\": [\n    1,\n    {\n      \"b\": \"x,{\\\"y\\\":\\\\\"\n    }\n  ],\n  \"c\": {},\n  \"d\": []\n}\n");
}

TEST_CASE("the files are one a named type, the stored shapes apart, and the same each time") {
  const std::array stored{StoredShape{"subtraction", &wire::type_of<Subtraction>}};
  const auto files = schema_files(protocol_methods(), stored);
  CHECK(files.count("Subtraction.schema.json") == 1);
  CHECK(files.count("ErrorData.schema.json") == 1);
  CHECK(files.count("ledger/v1/subtraction.schema.json") == 1);
  CHECK(files.count("openrpc.json") == 1);
  CHECK(files.count("faults.json") == 1);
  for (const auto& file : files) {
    CAPTURE(file.first);
    CHECK(wire::parse(file.second).has_value());
    CHECK(file.second.back() == '\n');
  }
  CHECK(files == schema_files(protocol_methods(), stored));
}

}  // namespace limbledger::rpc
