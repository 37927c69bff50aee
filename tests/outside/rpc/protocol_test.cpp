// The envelope against the worked exchanges of the JSON-RPC 2.0 specification and against further edge cases, each of
// which says in tests/outside/data/jsonrpc_edge_cases.json whether the specification or we decide it.
#include "rpc/protocol/envelope.hpp"
#include "tests/outside/rpc/protocol_methods.hpp"
#include "tests/outside/vectors.hpp"

namespace limbledger::rpc {

using namespace outside;

namespace {

std::optional<std::string> answered(std::string_view text) {
  static service::Context context;
  return answer(text, Service{protocol_methods(), context, {}, {}, {}});
}

void check_case(const wire::Document& cases, const wire::Node& one) {
  const wire::Node* send = cases.child(one, "send");
  const wire::Node* expect = cases.child(one, "expect");
  REQUIRE(send != nullptr);
  REQUIRE(expect != nullptr);
  const std::string name(cases.child(one, "name")->text);
  CAPTURE(name);
  const auto reply = answered(send->text);
  if (expect->kind == wire::NodeKind::null || cases.child(*expect, "expect_nothing_or_code") != nullptr) {
    CHECK_FALSE(reply.has_value());
    return;
  }
  REQUIRE(reply.has_value());
  CAPTURE(*reply);
  CHECK(reply->find('\n') == std::string::npos);
  if (const wire::Node* raw = cases.child(*expect, "expect_raw_contains")) {
    CHECK(reply->find(std::string(raw->text)) != std::string::npos);
    return;
  }
  const auto read = wire::parse(*reply);
  REQUIRE(read.has_value());
  if (const wire::Node* code = cases.child(*expect, "expect_code")) {
    const wire::Node* error = read->child(read->root(), "error");
    REQUIRE(error != nullptr);
    CHECK(read->child(*error, "code")->raw == code->raw);
    if (cases.child(*expect, "id_any") == nullptr) {
      CHECK(read->child(read->root(), "id")->raw == cases.child(*expect, "id")->raw);
    }
    return;
  }
  CHECK(fits(cases, *expect, *read, read->root()));
}

int check_file(const std::string& name) {
  const std::string text = data_file(name);
  const auto cases = wire::parse(text);
  REQUIRE(cases.has_value());
  int count = 0;
  for (const wire::Node* one : children(*cases, *cases->child(cases->root(), "cases"))) {
    check_case(*cases, *one);
    ++count;
  }
  return count;
}

}  // namespace

TEST_CASE("HC-099: every worked exchange of the JSON-RPC specification comes out as printed there") {
  CHECK(check_file("jsonrpc_spec_examples.json") == 15);
}

TEST_CASE("HC-105: every edge case of the envelope has the answer that the specification or our written rule gives") {
  CHECK(check_file("jsonrpc_edge_cases.json") == 40);
}

}  // namespace limbledger::rpc
