// The examples of the OpenRPC document are what the methods answer. The outside tests hold each against the schemas.
#include "core/service/call.hpp"
#include "core/wire/parse.hpp"
#include "rpc/program/examples/examples.hpp"
#include "rpc/program/examples/talk.hpp"

#include <doctest/doctest.h>

#include <algorithm>

namespace limbledger::rpc {

TEST_CASE("every method has an example, every call of the invented talk is answered, and nothing stays open in it") {
  const HeldTalk& held = held_talk();
  for (const std::string& refused : held.refused) {
    CAPTURE(refused);
    CHECK(false);
  }
  CHECK(held.examples.size() == example_talk().size());
  for (const service::Method& method : service::methods()) {
    CAPTURE(method.name);
    CHECK(std::any_of(held.examples.begin(), held.examples.end(), [&](const Example& one) { return one.method == method.name; }));
  }
  for (const Example& one : held.examples) {
    CAPTURE(one.title);
    CHECK(one.params.find("\"@") == std::string::npos);
    CHECK(one.params.find(":,") == std::string::npos);  // a part that the answer before did not hold
  }
}

TEST_CASE("the walk of the page is answered from its link to the signature, in eight messages, with an alert in words") {
  const HeldTalk& walk = held_walk();
  for (const std::string& refused : walk.refused) {
    CAPTURE(refused);
    CHECK(false);
  }
  std::vector<std::string> methods;
  for (const Example& one : walk.examples) {
    CAPTURE(one.title);
    methods.push_back(one.method);
    CHECK(one.params.find("\"@") == std::string::npos);
    CHECK(one.params.find(":,") == std::string::npos);
  }
  REQUIRE(methods == std::vector<std::string>{"session.open", "person.register", "exam.open", "form.describe", "finding.record", "form.describe", "exam.assess", "exam.sign"});
  const auto at = [&](std::size_t place, std::string_view pointer) {
    const auto document = wire::parse(walk.examples[place].result);
    REQUIRE(document.has_value());
    const wire::Node* node = document->at_pointer(pointer);
    return node == nullptr ? std::string() : std::string(node->kind == wire::NodeKind::text ? node->text : node->raw);
  };
  CHECK(at(0, "/scope") == "examiner");
  CHECK(at(0, "/locked") == "false");
  CHECK(!at(3, "/texts/0/text").empty());
  CHECK(at(4, "/recorded/4/finding") != "");
  CHECK(at(4, "/alerts/0/interrupts") == "true");
  CHECK(at(4, "/alerts/0/times_raised") == "1");
  CHECK(at(4, "/alerts/0/meanwhile_text/0") != "");
  CHECK(!at(5, "/withheld/0/because").empty());
  CHECK(walk.examples[5].result.find("\"recorded\":") != std::string::npos);
  CHECK(at(6, "/alerts/0/text") == at(4, "/alerts/0/text"));
  CHECK(at(7, "/signed/at") != "");
}

TEST_CASE("the document shows a method's examples with their params by name, and those of no other method") {
  const Example example{"health.check", "a title", R"({"b":[1, 2],"a":"x"})", R"({"state":"ready"})"};
  const std::string text = openrpc_text(service::methods(), std::span(&example, 1));
  const std::string pairing =
      R"("examples":[{"name":"a title","params":[{"name":"b","value":[1, 2]},{"name":"a","value":"x"}],"result":{"name":"result","value":{"state":"ready"}}}])";
  const std::size_t at = text.find(pairing);
  REQUIRE(at != std::string::npos);
  CHECK(text.rfind(R"({"name":"health.check")", at) > text.rfind(R"({"name":"rpc.discover")", at));
  CHECK(text.find(R"({"name":"session.open")") > at);
  CHECK(text.find("a title", at + pairing.size()) == std::string::npos);
}

}  // namespace limbledger::rpc
