// What the specification's own exchanges (tests/outside/rpc) do not show: limits, one line, incidents, the log.
#include "rpc/protocol/envelope.hpp"
#include "rpc/protocol/error.hpp"
#include "tests/outside/rpc/protocol_methods.hpp"
#include "tests/unit/rpc/holds.hpp"

#include <doctest/doctest.h>

namespace limbledger::rpc {

namespace {

struct Told {
  std::string method;
  std::string code;
};

struct Bench {
  service::Context context;
  std::vector<Told> told;
  Service service{protocol_methods(), context, {}, {}, {}};

  Bench() {
    service.failed = [this](std::string_view method, std::string_view code) {
      told.push_back({std::string(method), std::string(code)});
      return std::string("0123456789abcdef");
    };
  }
  std::string say(std::string_view text) { return answer(text, service).value_or("nothing"); }
};

}  // namespace

TEST_CASE("a message over the limit is refused with the limit named, and the next is answered") {
  Bench bench;
  bench.service.limits.message_bytes = 100;
  const std::string reply = bench.say(R"({"jsonrpc":"2.0","method":"echo","params":[")" + std::string(200, 'x') + R"("],"id":1})");
  CHECK(holds(reply, R"("code":-32600)"));
  CHECK(holds(reply, R"("code":"limit.size")"));
  CHECK(holds(reply, R"("params":{"bytes":100})"));
  CHECK(holds(reply, R"("id":null)"));
  CHECK(bench.say(R"({"jsonrpc":"2.0","method":"get_data","id":2})") == R"({"jsonrpc":"2.0","result":["hello",5],"id":2})");
}

// Hard case HC-100.
TEST_CASE("a message nested too deep is refused with the limit named") {
  Bench bench;
  const std::string reply = bench.say(std::string(100000, '[') + std::string(100000, ']'));
  CHECK(holds(reply, R"("code":"limit.depth")"));
  CHECK(holds(reply, R"("params":{"depth":32})"));
  CHECK(holds(reply, R"("code":-32600)"));
}

TEST_CASE("HC-098: a batch over the limit is refused as a whole and nothing of it runs") {
  Bench bench;
  bench.service.limits.batch_calls = 2;
  const std::string one = R"({"jsonrpc":"2.0","method":"break_down","id":1})";
  const std::string reply = bench.say("[" + one + "," + one + "," + one + "]");
  CHECK(holds(reply, R"("code":"limit.batch")"));
  REQUIRE(bench.told.size() == 1);
  CHECK(bench.told[0].code == "limit.batch");
  CHECK(bench.say("[" + one + "," + one + "]").front() == '[');
}

TEST_CASE("HC-098: 1000 calls, ten of them notifications: refused whole under the published limit, and under a wider one 990 replies by id") {
  Bench bench;
  std::string batch = "[";
  for (int i = 0; i < 1000; ++i) {
    const std::string id = i % 100 == 0 ? "" : R"(,"id":)" + std::to_string(i);
    batch += (i == 0 ? "" : ",") + (R"({"jsonrpc":"2.0","method":"get_data")" + id + "}");
  }
  batch += "]";
  CHECK(holds(bench.say(batch), R"("params":{"batch":100})"));
  bench.service.limits.batch_calls = 1000;
  const std::string replies = bench.say(batch);
  for (int i = 0; i < 1000; ++i) {
    const std::string reply = R"({"jsonrpc":"2.0","result":["hello",5],"id":)" + std::to_string(i) + "}";
    CHECK(holds(replies, reply) == (i % 100 != 0));
  }
}

// Hard case HC-101.
TEST_CASE("a member named twice in the params is refused and named") {
  Bench bench;
  const std::string reply = bench.say(R"({"jsonrpc":"2.0","id":1,"method":"echo","params":{"side":"left","side":"right"}})");
  CHECK(holds(reply, R"("code":"json.duplicate_member","path":"/params/side")"));
  CHECK(holds(reply, R"("code":-32600)"));
}

// Hard case HC-105: a fraction and an exponent come back as they were sent.
TEST_CASE("an id comes back as the token it was sent as") {
  Bench bench;
  for (const std::string_view id : {"1.50", "1e3", "-0", "\"\\u0041\"", "123456789012345678", "null"}) {
    CHECK(holds(bench.say(R"({"jsonrpc":"2.0","method":"get_data","id":)" + std::string(id) + " }"), "\"id\":" + std::string(id) + "}"));
  }
}

// Hard case HC-102.
TEST_CASE("an id that no double holds is refused and not sent back") {
  Bench bench;
  const std::string reply = bench.say(R"({"jsonrpc":"2.0","method":"get_data","id":1e400})");
  CHECK(holds(reply, R"("code":"request.envelope","path":"/id")"));
  CHECK(holds(reply, R"("id":null)"));
  CHECK(holds(bench.say(R"({"jsonrpc":"2.0","method":"get_data",})"), R"("got":"byte 37")"));
}

TEST_CASE("a reply is one line, also where it copies a value that was sent on several") {
  Bench bench;
  const std::string reply = bench.say("{\"jsonrpc\":\"2.0\",\"method\":\"echo\",\"id\":1,\"params\":{\"a\":\n [1,\r\n 2]}}");
  CHECK(reply.find_first_of("\r\n") == std::string::npos);
  CHECK(holds(reply, "[1,"));
}

TEST_CASE("an internal failure is answered with a number and nothing else, and told to the log with the method") {
  Bench bench;
  const std::string reply = bench.say(R"({"jsonrpc":"2.0","method":"break_down","id":1})");
  CHECK(holds(reply, R"("code":-32603,"message":"Internal error")"));
  CHECK(holds(reply, R"("incident":"0123456789abcdef")"));
  REQUIRE(bench.told.size() == 1);
  CHECK(bench.told[0].method == "break_down");
  CHECK(bench.told[0].code == "internal.failure");
}

TEST_CASE("other failures carry no incident") {
  Bench bench;
  CHECK_FALSE(holds(bench.say(R"({"jsonrpc":"2.0","method":"subtract","id":1})"), "incident"));
}

TEST_CASE("the log is told of a failed notification, and never a method's name that was made up") {
  Bench bench;
  CHECK(bench.say(R"({"jsonrpc":"2.0","method":"Wulan Invented"})") == "nothing");
  CHECK(bench.say(R"({"jsonrpc":"2.0","method":"break_down"})") == "nothing");
  REQUIRE(bench.told.size() == 2);
  CHECK(bench.told[0].method.empty());
  CHECK(bench.told[0].code == "method.unknown");
  CHECK(bench.told[1].method == "break_down");
}

TEST_CASE("all faults of one call come in one reply, each with its path into the params") {
  Bench bench;
  const std::string reply = bench.say(R"({"jsonrpc":"2.0","method":"subtract","params":{"minuend":"42","subtrahent":1},"id":1})");
  CHECK(holds(reply, R"("path":"/minuend")"));
  CHECK(holds(reply, R"("path":"/subtrahent","expected":"perhaps subtrahend")"));
  CHECK(holds(reply, R"("code":-32602)"));
  CHECK(holds(reply, R"("retry":false)"));
}

TEST_CASE("the description of the service is a method where the table has one") {
  Bench bench;
  CHECK(holds(bench.say(R"({"jsonrpc":"2.0","method":"rpc.discover","id":1})"), R"("code":-32601)"));
  bench.service.discover = [] { return std::string(R"({"openrpc":"1.3.2"})"); };
  CHECK(bench.say(R"({"jsonrpc":"2.0","method":"rpc.discover","id":1})") == R"({"jsonrpc":"2.0","result":{"openrpc":"1.3.2"},"id":1})");
  CHECK(holds(bench.say(R"({"jsonrpc":"2.0","method":"rpc.discover","params":[1],"id":1})"), R"("code":-32602)"));
  bench.context.caller.scope = service::Scope::none;
  CHECK(holds(bench.say(R"({"jsonrpc":"2.0","method":"rpc.discover","id":1})"), R"("code":6)"));
}

TEST_CASE("every number that a code answers with has words, and both values of a stale write go along") {
  for (const wire::FaultCode& row : wire::fault_codes()) {
    CAPTURE(row.code);
    const ErrorObject error = error_of(wire::Fault{row.code, ""}, std::nullopt);
    CHECK_FALSE(error.message.text.empty());
    CHECK(error.code.steps == static_cast<std::int64_t>(row.number));
    CHECK(error.data.faults.front().hint.text == row.hint);
  }
  wire::Refusal stale(wire::Fault{"finding.stale", "/findings/0"});
  stale.held_json = R"({"deg":1})";
  stale.sent_json = R"({"deg":2})";
  CHECK(holds(wire::write(error_of(stale, std::nullopt)), R"("held":{"deg":1},"sent":{"deg":2})"));
}

}  // namespace limbledger::rpc
