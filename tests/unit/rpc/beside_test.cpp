// The standard input beside the network: one thread answers both, whichever end is slow, and the end of the input is the end.
#include "rpc/program/network/stdio_beside.hpp"
#include "tests/unit/rpc/network_client.hpp"

#include <atomic>
#include <new>
#include <thread>
#include <vector>

namespace limbledger::rpc {

namespace {

using namespace test;

struct Pipe {
  std::array<int, 2> ends{};
  Pipe() { REQUIRE(::pipe(ends.data()) == 0); }
  ~Pipe() {
    ::close(ends[0]);
    end();
  }
  Pipe(const Pipe&) = delete;
  Pipe& operator=(const Pipe&) = delete;
  void end() {
    if (ends[1] >= 0) {
      ::close(ends[1]);
    }
    ends[1] = -1;
  }
  void put(std::string_view text) const { REQUIRE(::write(ends[1], text.data(), text.size()) == static_cast<ssize_t>(text.size())); }
  [[nodiscard]] std::string line() const {
    std::string out;
    for (char c = 0; c != '\n';) {
      REQUIRE(::read(ends[0], &c, 1) == 1);
      out += c;
    }
    return out;
  }
};

constexpr std::string_view beside_call = R"({"jsonrpc":"2.0","method":"echo","params":["x"],"id":1})";
constexpr std::string_view beside_reply = R"({"jsonrpc":"2.0","result":["x"],"id":1})";

}  // namespace

TEST_CASE("lines of the standard input are answered on the network's thread beside HTTP, and their end ends the serving") {
  Pipe in;
  const Pipe out;
  Stdio stdio;
  stdio.in = in.ends[0];
  stdio.out = out.ends[1];
  Handover handover;
  StdioBeside beside(stdio, handover, [] { return std::string("too large"); });
  service::test::FixedWorld world;
  service::Context context;
  context.caller.scope = service::Scope::none;
  const Service service{protocol_methods(), context, {}, {}, {}};
  Tokens tokens(world);
  std::string why;
  const auto listener = Listener::open(0, patient(), why);
  REQUIRE_MESSAGE(listener != nullptr, why);
  Visits visits(service, tokens, listener->port());
  std::thread::id answered_on;
  std::thread serving([&] {
    beside.start([&](std::string_view text) {
      answered_on = std::this_thread::get_id();
      return answer(text, service);
    });
    listener->run([&] { return visits.begin(); }, -1, nullptr, 1000, {handover.descriptor(), [&] {
                    handover.work();
                    return !beside.has_left();
                  }});
  });
  const auto serving_id = serving.get_id();
  Client client(listener->port());
  for (int i = 0; i < 20; ++i) {
    in.put(std::string(beside_call) + "\n");
    client.post(beside_call);
    CHECK(out.line() == std::string(beside_reply) + "\n");
    CHECK(client.reply() == "200 " + std::string(beside_reply));
  }
  in.put(std::string(R"({"jsonrpc":"2.0","method":"update","params":[1]})") + "\n" + std::string(beside_call) + "\n" + std::string(beside_call) + "\n");
  CHECK(out.line() == std::string(beside_reply) + "\n");
  CHECK(out.line() == std::string(beside_reply) + "\n");
  in.put(std::string(wire::message_bytes_max / 16 + 1, ' '));  // nobody waits for a line that does not end
  client.post(beside_call);
  CHECK(client.reply() == "200 " + std::string(beside_reply));
  in.put(std::string(beside_call) + "\n");
  CHECK(out.line() == std::string(beside_reply) + "\n");
  in.end();
  serving.join();
  CHECK(answered_on == serving_id);
  CHECK(beside.end().end == StdioEnd::input_ended);
}

TEST_CASE("whoever asks while the answering side goes is let go, and nothing is done for it") {
  Handover handover;
  bool was_done = true;
  int deeds = 0;
  std::thread asking([&] { was_done = handover.run([&] { ++deeds; }); });
  handover.close();
  asking.join();
  CHECK_FALSE(was_done);
  CHECK_FALSE(handover.run([&] { ++deeds; }));
  CHECK(deeds == 0);
}

TEST_CASE("what several threads ask is done one at a time on the answering one, and what is thrown there comes to who asked") {
  Handover handover;
  const auto here = std::this_thread::get_id();
  int deeds = 0;  // touched by deeds alone: no lock
  std::atomic<int> left = 3;
  std::vector<std::thread> asking;
  for (int i = 0; i < 3; ++i) {
    asking.emplace_back([&] {
      for (int turn = 0; turn < 100; ++turn) {
        CHECK(handover.run([&] { deeds += std::this_thread::get_id() == here ? 1 : 1000; }));
      }
      CHECK_THROWS_AS(static_cast<void>(handover.run([] { throw std::bad_alloc(); })), std::bad_alloc);
      --left;
    });
  }
  while (left != 0) {
    handover.work();
  }
  for (std::thread& one : asking) {
    one.join();
  }
  CHECK(deeds == 300);
}

}  // namespace limbledger::rpc
