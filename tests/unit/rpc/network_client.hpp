// A listener at work on a thread of its own, and a plain client of it. What a client waits for must come; ten seconds guard
// against hanging.
#pragma once

#include "rpc/access/visit.hpp"
#include "rpc/transport/listener.hpp"
#include "tests/outside/rpc/protocol_methods.hpp"
#include "tests/unit/rpc/holds.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <arpa/inet.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <unistd.h>

#include <thread>

namespace limbledger::rpc::test {

class Running {
 public:
  // With a desk the whole interface is served, else the methods of the protocol's own examples.
  explicit Running(NetLimits limits, service::Desk* desk = nullptr) {
    if (desk != nullptr) {
      context.desk = desk;
      context.edition = &desk->edition();
      service.table = service::methods();
    }
    service.limits.message_bytes = limits.message_bytes;
    std::string why;
    listener = Listener::open(0, limits, why);
    REQUIRE_MESSAGE(listener != nullptr, why);
    REQUIRE(::pipe(stop.data()) == 0);
    visits = std::make_unique<Visits>(service, tokens, listener->port());
    token = tokens.make({service::Scope::examiner, std::nullopt}).text;
    context.caller.scope = service::Scope::none;
    thread = std::thread([this] { listener->run([this] { return visits->begin(); }, stop[0], nullptr, 1000); });
  }
  ~Running() {
    ::close(stop[1]);
    thread.join();
    listener.reset();  // before those whom its connections talk to
    ::close(stop[0]);
  }
  Running(const Running&) = delete;
  Running& operator=(const Running&) = delete;

  service::test::FixedWorld world;
  service::Context context;
  Service service{protocol_methods(), context, {}, {}, {}};
  Tokens tokens{world};
  std::unique_ptr<Visits> visits;
  std::unique_ptr<Listener> listener;
  std::string token;
  std::array<int, 2> stop{};
  std::thread thread;
};

class Client {
 public:
  explicit Client(const Running& running) : Client(running.listener->port()) {}
  explicit Client(std::uint16_t port) : host_("127.0.0.1:" + std::to_string(port)), file_(::socket(AF_INET, SOCK_STREAM, 0)) {
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_port = htons(port);
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    const timeval patience{10, 0};
    ::setsockopt(file_, SOL_SOCKET, SO_RCVTIMEO, &patience, sizeof patience);
    REQUIRE(::connect(file_, reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0);
  }
  ~Client() { ::close(file_); }
  Client(const Client&) = delete;
  Client& operator=(const Client&) = delete;

  void send(std::string_view bytes) const {
    while (!bytes.empty()) {
      const ssize_t sent = ::send(file_, bytes.data(), bytes.size(), MSG_NOSIGNAL);
      REQUIRE(sent > 0);
      bytes.remove_prefix(static_cast<std::size_t>(sent));
    }
  }
  void no_more() const { ::shutdown(file_, SHUT_WR); }

  // False at the end of what comes.
  bool more() {
    std::array<char, 65536> piece{};
    const ssize_t got = ::recv(file_, piece.data(), piece.size(), 0);
    REQUIRE_MESSAGE(got >= 0, "the connection was reset, or nothing came");
    kept_.append(piece.data(), static_cast<std::size_t>(got));
    return got > 0;
  }
  bool ends() {
    while (more()) {
    }
    return true;
  }
  std::string bytes(std::size_t count) {
    while (kept_.size() < count) {
      REQUIRE(more());
    }
    std::string out = kept_.substr(0, count);
    kept_.erase(0, count);
    return out;
  }

  [[nodiscard]] std::string head(std::string_view rest = {}) const {
    return "POST /rpc HTTP/1.1\r\nHost: " + host_ + "\r\nContent-Type: application/json\r\n" + std::string(rest);
  }
  void post(std::string_view body, std::string_view fields = {}) const {
    send(head(fields) + "Content-Length: " + std::to_string(body.size()) + "\r\n\r\n" + std::string(body));
  }
  // One reply: "status body".
  std::string reply() {
    std::size_t end = std::string::npos;
    while ((end = kept_.find("\r\n\r\n")) == std::string::npos) {
      REQUIRE(more());
    }
    last_head = bytes(end + 4);
    const auto length = last_head.find("Content-Length: ");
    const std::string body = length == std::string::npos ? "" : bytes(std::stoul(last_head.substr(length + 16)));
    return last_head.substr(9, 3) + " " + body;
  }
  std::string last_head;

  void upgrade(std::string_view fields = "Sec-WebSocket-Version: 13\r\nSec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n") const {
    send("GET /rpc HTTP/1.1\r\nHost: " + host_ + "\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n" + std::string(fields) + "\r\n");
  }
  // One masked frame; a mask of zeros leaves the bytes as they are.
  void frame(std::uint8_t first, std::string_view payload) const {
    std::string out(1, static_cast<char>(first));
    if (payload.size() < 126) {
      out += static_cast<char>(0x80U | payload.size());
    } else {
      const bool small = payload.size() < 65536;
      out += static_cast<char>(0x80U | (small ? 126U : 127U));
      for (int shift = small ? 8 : 56; shift >= 0; shift -= 8) {
        out += static_cast<char>((payload.size() >> static_cast<unsigned>(shift)) & 0xFFU);
      }
    }
    send(out + std::string(4, '\0') + std::string(payload));
  }
  void text(std::string_view payload) const { frame(0x81, payload); }
  // The next frame: "text ..." or "close CODE".
  std::string next() {
    const std::string start = bytes(2);
    std::size_t size = static_cast<unsigned char>(start[1]);
    if (size == 126) {
      const std::string two = bytes(2);
      size = static_cast<std::size_t>(static_cast<unsigned char>(two[0])) * 256 + static_cast<unsigned char>(two[1]);
    }
    const std::string payload = bytes(size);
    switch (static_cast<unsigned char>(start[0])) {
      case 0x81:
        return "text " + payload;
      case 0x88:
        return "close " + std::to_string(static_cast<unsigned char>(payload[0]) * 256 + static_cast<unsigned char>(payload[1]));
      default:
        return "another frame";
    }
  }

 private:
  std::string host_;
  int file_;
  std::string kept_;
};


inline NetLimits patient() {
  NetLimits limits;
  limits.session_ms = 600'000;
  return limits;
}

}  // namespace limbledger::rpc::test
