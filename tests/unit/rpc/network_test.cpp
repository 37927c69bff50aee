// The network side over real connections on this machine: framing of HTTP and WebSocket, and every limit answered before
// anything is closed. Limits are set small; nothing waits for a time to pass but for the answer that must come.
// HTTP: RFC 9112; WebSocket frames: RFC 6455, section 5.2.
#include "tests/unit/rpc/network_client.hpp"

namespace limbledger::rpc {

namespace {

using namespace test;

constexpr std::string_view echo_call = R"({"jsonrpc":"2.0","method":"echo","params":["x"],"id":1})";
constexpr std::string_view echo_reply = R"({"jsonrpc":"2.0","result":["x"],"id":1})";

}  // namespace

TEST_CASE("requests one after the other, in pieces and in one piece, are answered in order on one connection") {
  const Running running(patient());
  Client client(running);
  client.post(echo_call);
  CHECK(client.reply() == "200 " + std::string(echo_reply));
  CHECK(holds(client.last_head, "Content-Type: application/json\r\n"));
  CHECK(holds(client.last_head, "Cache-Control: no-store\r\n"));
  const std::string request = client.head("Content-Length: " + std::to_string(echo_call.size()) + "\r\n\r\n") + std::string(echo_call);
  for (const char byte : request) {
    client.send({&byte, 1});
  }
  CHECK(client.reply() == "200 " + std::string(echo_reply));
  client.send(request + request);
  CHECK(client.reply() == "200 " + std::string(echo_reply));
  CHECK(client.reply() == "200 " + std::string(echo_reply));
  client.send(client.head("Transfer-Encoding: chunked\r\n\r\n") + "37\r\n" + std::string(echo_call) + "\r\n0\r\n\r\n");
  CHECK(client.reply() == "200 " + std::string(echo_reply));
  client.post(R"({"jsonrpc":"2.0","method":"update","params":[1]})");
  CHECK(client.reply() == "204 ");
  CHECK_FALSE(holds(client.last_head, "Content-Length"));
  client.post(echo_call, "Connection: close\r\n");
  CHECK(client.reply() == "200 " + std::string(echo_reply));
  CHECK(holds(client.last_head, "Connection: close\r\n"));
  CHECK(client.ends());
}

TEST_CASE("a client that asks whether to go on is told so, or why not, before it sends the body") {
  const Running running(patient());
  Client client(running);
  client.send(client.head("Expect: 100-continue\r\nContent-Length: " + std::to_string(echo_call.size()) + "\r\n\r\n"));
  CHECK(client.reply() == "100 ");
  client.send(echo_call);
  CHECK(client.reply() == "200 " + std::string(echo_reply));
  client.send(client.head("Expect: 100-continue\r\nAuthorization: Bearer wrong\r\nContent-Length: 10\r\n\r\n"));
  CHECK(holds(client.reply(), R"("code":"token.unknown")"));
  CHECK(holds(client.last_head, "HTTP/1.1 401 Unauthorized\r\n"));
  CHECK(client.ends());
}

TEST_CASE("a message that is too large is refused, announced or not, and the refusal can be read though all was sent") {
  NetLimits limits = patient();
  limits.message_bytes = 1000;
  const Running running(limits);
  const std::string large(2'000'000, 'x');
  Client announced(running);
  announced.post(large);
  CHECK(holds(announced.reply(), R"("code":"limit.size")"));
  CHECK(holds(announced.last_head, "HTTP/1.1 413 "));
  announced.no_more();
  CHECK(announced.ends());
  Client chunked(running);
  chunked.send(chunked.head("Transfer-Encoding: chunked\r\n\r\n") + "1E8480\r\n" + large + "\r\n0\r\n\r\n");
  CHECK(chunked.reply().starts_with("413 "));
  Client foreign(running);  // who may not call is not told about sizes
  foreign.post(large, "Origin: http://evil.example\r\n");
  CHECK(holds(foreign.reply(), R"("code":"origin.refused")"));
  Client exact(running);
  exact.post(std::string(1000 - echo_call.size(), ' ') + std::string(echo_call));
  CHECK(exact.reply() == "200 " + std::string(echo_reply));
}

TEST_CASE("what is no HTTP, or cut short, or has too long a head is answered before the end") {
  const Running running(patient());
  const auto said = [&](const std::string& bytes, bool end) {
    Client client(running);
    client.send(bytes);
    if (end) {
      client.no_more();
    }
    const std::string reply = client.reply();
    CHECK(holds(client.last_head, "Connection: close\r\n"));
    client.no_more();
    CHECK(client.ends());
    return reply;
  };
  const Client any(running);
  CHECK(holds(said("hello\r\n\r\n", false), R"("code":"http.request")"));
  CHECK(said("\x16\x03\x01\x02\x03 TLS\r\n\r\n", false).starts_with("400 "));
  CHECK(said(any.head("Content-Length: 10\r\nContent-Length: 20\r\n\r\n"), false).starts_with("400 "));
  CHECK(said(any.head("Content-Length: -1\r\n\r\n"), false).starts_with("400 "));
  CHECK(said(any.head("Host: evil.example\r\nContent-Length: 0\r\n\r\n"), false).starts_with("400 "));
  CHECK(said(any.head("Content-Length: 10\r\n\r\n{\"js"), true).starts_with("400 "));
  CHECK(said(any.head("X: " + std::string(9000, 'x') + "\r\n\r\n"), false).starts_with("431 "));
}

TEST_CASE("HC-106: a request that does not come to its end in time is told so, and an idle connection is closed") {
  NetLimits limits = patient();
  limits.head_ms = 1;
  limits.request_ms = 1;
  const Running running(limits);
  Client head(running);
  head.send("POST /rpc HTTP/1.1\r\n");
  CHECK(holds(head.reply(), R"("code":"limit.time")"));
  Client body(running);
  body.send(body.head("Content-Length: 10\r\n\r\n{"));
  CHECK(body.reply().starts_with("408 "));
  NetLimits brief = patient();
  brief.idle_ms = 1;
  const Running other(brief);
  Client idle(other);
  CHECK(idle.ends());
}

TEST_CASE("one connection too many is told so, and the next has room once one has gone") {
  NetLimits limits = patient();
  limits.connections = 2;
  const Running running(limits);
  Client first(running);
  first.post(echo_call);
  CHECK(first.reply().starts_with("200 "));
  {
    Client second(running);
    second.post(echo_call);
    CHECK(second.reply().starts_with("200 "));
    Client third(running);
    third.post(echo_call);
    CHECK(holds(third.reply(), R"("code":"limit.rate")"));
    CHECK(holds(third.last_head, "HTTP/1.1 503 "));
    CHECK(holds(third.last_head, "Retry-After: 1\r\n"));
    third.no_more();
    CHECK(third.ends());
    second.post(echo_call, "Connection: close\r\n");
    CHECK(second.reply().starts_with("200 "));
    second.no_more();
    CHECK(second.ends());
  }
  Client later(running);
  later.post(echo_call);
  CHECK(later.reply().starts_with("200 "));
}

TEST_CASE("requests that never come to their end make room for whoever asks, the oldest first and with an answer") {
  NetLimits limits = patient();
  limits.connections = 8;
  const Running running(limits);
  std::vector<std::unique_ptr<Client>> half;
  for (int i = 0; i < 40; ++i) {
    half.push_back(std::make_unique<Client>(running));
    half.back()->send("POST /rpc HTTP/1.1\r\nHost: ");
  }
  Client asks(running);
  asks.post(echo_call);
  CHECK(asks.reply() == "200 " + std::string(echo_reply));
  CHECK(half.front()->reply().starts_with("503 "));
  CHECK(half.front()->ends());
}

TEST_CASE("messages that come too often are refused with their own id, and a client that goes on is closed") {
  NetLimits limits = patient();
  limits.messages_a_second = 0;
  limits.messages_rush = 2;
  limits.refused_in_a_row = 2;
  const Running running(limits);
  Client http(running);
  for (const char* status : {"200 ", "200 ", "429 ", "429 "}) {
    http.post(echo_call);
    CHECK(http.reply().starts_with(status));
  }
  CHECK(http.ends());
  Client socket(running);
  socket.upgrade();
  CHECK(socket.reply().starts_with("101 "));
  socket.text(echo_call);
  socket.text(echo_call);
  CHECK(socket.next() == "text " + std::string(echo_reply));
  CHECK(socket.next() == "text " + std::string(echo_reply));
  socket.text(echo_call);
  const std::string refused = socket.next();
  CHECK(holds(refused, R"("code":"limit.rate")"));
  CHECK(holds(refused, R"("id":1})"));
  socket.text(echo_call);
  CHECK(socket.next().starts_with("text "));
  CHECK(socket.next() == "close 1008");
}

TEST_CASE("a WebSocket answers message after message, whole or in fragments, and pings meanwhile") {
  const Running running(patient());
  Client client(running);
  client.upgrade();
  CHECK(client.reply().starts_with("101 "));
  CHECK(holds(client.last_head, "Sec-WebSocket-Accept: s3pPLMBiTxaQ9kYGzzhZRbK+xOo=\r\n"));  // RFC 6455, section 1.3
  client.text(echo_call);
  CHECK(client.next() == "text " + std::string(echo_reply));
  client.frame(0x01, echo_call.substr(0, 20));
  client.frame(0x89, "");
  CHECK(client.bytes(2) == std::string("\x8a\x00", 2));
  client.frame(0x80, echo_call.substr(20));
  CHECK(client.next() == "text " + std::string(echo_reply));
  client.text(R"({"jsonrpc":"2.0","method":"update"})");
  client.text("{");
  CHECK(holds(client.next(), R"("code":-32700)"));
  client.frame(0x88, std::string("\x03\xe8", 2));
  CHECK(client.next() == "close 1000");
  CHECK(client.ends());
}

TEST_CASE("what a WebSocket may not send is answered, then closed with the code that says why") {
  NetLimits limits = patient();
  limits.message_bytes = 1000;
  const Running running(limits);
  const auto closed = [&](const std::function<void(const Client&)>& act) {
    Client client(running);
    client.upgrade();
    CHECK(client.reply().starts_with("101 "));
    act(client);
    const std::string first = client.next();
    return first.starts_with("close") ? first : (holds(first, R"("error")") ? "error, " : "") + client.next();
  };
  CHECK(closed([](const Client& c) { c.text(std::string(70'000, 'x')); }) == "error, close 1009");
  CHECK(closed([](const Client& c) {
          for (int i = 0; i < 4; ++i) {
            c.frame(i == 0 ? 0x01 : 0x00, std::string(400, 'x'));
          }
        }) == "error, close 1009");
  CHECK(closed([](const Client& c) { c.frame(0x82, "{}"); }) == "error, close 1003");
  CHECK(closed([](const Client& c) { c.text("\xff\xfe"); }) == "close 1007");
  CHECK(closed([](const Client& c) { c.frame(0xC1, "{}"); }) == "close 1002");
}

TEST_CASE("a handshake that is none is answered in JSON, and another version is told which there is") {
  const Running running(patient());
  Client version(running);
  version.upgrade("Sec-WebSocket-Version: 12\r\nSec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n");
  CHECK(holds(version.reply(), R"("code":"http.request")"));
  CHECK(holds(version.last_head, "HTTP/1.1 426 "));
  CHECK(holds(version.last_head, "Sec-WebSocket-Version: 13\r\n"));
  Client key(running);
  key.upgrade("Sec-WebSocket-Version: 13\r\nSec-WebSocket-Key: short\r\n");
  CHECK(key.reply().starts_with("400 "));
}

TEST_CASE("a WebSocket on which nobody opens a session is told so and closed") {
  NetLimits limits;
  limits.session_ms = 1;
  const Running running(limits);
  Client client(running);
  client.upgrade();
  CHECK(client.reply().starts_with("101 "));
  CHECK(holds(client.next(), R"("code":"token.missing")"));
  CHECK(client.next() == "close 1008");
}

TEST_CASE("a stop says goodbye on every WebSocket") {
  auto running = std::make_unique<Running>(patient());
  Client client(*running);
  client.upgrade();
  CHECK(client.reply().starts_with("101 "));
  client.text(echo_call);
  CHECK(client.next().starts_with("text "));
  running.reset();
  CHECK(client.next() == "close 1001");
}

TEST_CASE("a port in use is named") {
  const Running running(patient());
  std::string why;
  CHECK(Listener::open(running.listener->port(), {}, why) == nullptr);
  CHECK_FALSE(why.empty());
}

}  // namespace limbledger::rpc
