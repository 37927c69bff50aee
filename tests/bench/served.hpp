// What the measurements over sockets share: a listener at work on a thread of its own with limits that nothing reaches, a plain
// client of it, and the bytes of a call over HTTP and over WebSocket.
#pragma once

#include "rpc/access/visit.hpp"
#include "rpc/transport/listener.hpp"
#include "tests/bench/bench.hpp"

#include <arpa/inet.h>
#include <netinet/in.h>
#include <netinet/tcp.h>
#include <pthread.h>
#include <sched.h>
#include <sys/socket.h>
#include <unistd.h>

#include <array>
#include <optional>
#include <thread>

namespace limbledger::bench {

[[noreturn]] inline void give_up(const char* what) {
  std::perror(what);
  std::exit(1);
}

inline void stay_on(unsigned core) {
  cpu_set_t set;
  CPU_ZERO(&set);
  CPU_SET(core % std::max(1U, std::thread::hardware_concurrency()), &set);
  ::sched_setaffinity(0, sizeof set, &set);
}

inline void at_once(int file) {
  const int yes = 1;
  ::setsockopt(file, IPPROTO_TCP, TCP_NODELAY, &yes, sizeof yes);
}

[[nodiscard]] inline int connected(std::uint16_t port) {
  sockaddr_in address{};
  address.sin_family = AF_INET;
  address.sin_port = htons(port);
  address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  const int file = ::socket(AF_INET, SOCK_STREAM, 0);
  if (::connect(file, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0) {
    give_up("connect");
  }
  at_once(file);
  return file;
}

inline void send_all(int file, const std::string& bytes) {
  if (::send(file, bytes.data(), bytes.size(), MSG_NOSIGNAL) != static_cast<ssize_t>(bytes.size())) {
    give_up("send");
  }
}

// What comes until `whole` says that it is all.
template <class Whole>
[[nodiscard]] std::string taken(int file, Whole whole) {
  std::string got;
  std::array<char, 65536> piece{};
  while (!whole(got)) {
    const ssize_t count = ::recv(file, piece.data(), piece.size(), 0);
    if (count <= 0) {
      give_up("recv");
    }
    got.append(piece.data(), static_cast<std::size_t>(count));
  }
  return got;
}

[[nodiscard]] inline std::string as_http(std::uint16_t port, const std::string& path, const std::string& fields, const std::string& text) {
  return "POST " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + std::to_string(port) + "\r\n" + fields + "Content-Type: application/json\r\nContent-Length: " +
         std::to_string(text.size()) + "\r\n\r\n" + text;
}

[[nodiscard]] inline std::string as_upgrade(std::uint16_t port, const std::string& path) {
  return "GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + std::to_string(port) +
         "\r\nUpgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Version: 13\r\nSec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n\r\n";
}

// RFC 6455, section 5.2; up to 64 KB.
[[nodiscard]] inline std::string as_frame(const std::string& text) {
  std::string out = "\x81";
  if (text.size() < 126) {
    out += static_cast<char>(0x80U | text.size());
  } else {
    out += '\xFE';
    out += static_cast<char>(text.size() >> 8U);
    out += static_cast<char>(text.size() & 0xFFU);
  }
  const std::string mask = "\x5a\xa5\x3c\xc3";
  out += mask;
  for (std::size_t i = 0; i < text.size(); ++i) {
    out += static_cast<char>(text[i] ^ mask[i % 4]);
  }
  return out;
}

[[nodiscard]] inline std::size_t framed_bytes(std::size_t text) { return text + (text < 126 ? 2 : text < 65536 ? 4 : 10); }

// The first text in these bytes of a server, once it is there whole.
[[nodiscard]] inline std::optional<std::string> text_of(std::string& bytes) {
  const auto byte = [&](std::size_t i) { return static_cast<std::size_t>(static_cast<unsigned char>(bytes[i])); };
  if (bytes.size() < 2) {
    return std::nullopt;
  }
  const std::size_t longer = byte(1) < 126 ? 0 : byte(1) == 126 ? 2 : 8;
  if (bytes.size() < 2 + longer) {
    return std::nullopt;
  }
  std::size_t size = longer == 0 ? byte(1) : 0;
  for (std::size_t i = 0; i < longer; ++i) {
    size = size << 8U | byte(2 + i);
  }
  if (bytes.size() < 2 + longer + size) {
    return std::nullopt;
  }
  std::string text = bytes.substr(2 + longer, size);
  bytes.erase(0, 2 + longer + size);
  return text;
}

class Served {
 public:
  // `prepare` is done on the serving thread before anything else.
  template <class Prepare>
  Served(std::span<const service::Method> table, service::Context& context, ledger::World& world, Prepare prepare)
      : service_{table, context, {}, {}, {}}, tokens_(world, {64, 1'000'000'000, 1'000'000'000'000}) {
    context.caller.scope = service::Scope::none;
    rpc::NetLimits limits;
    limits.messages_rush = 1e12;
    limits.session_ms = 3'600'000;
    std::string why;
    listener_ = rpc::Listener::open(0, limits, why);
    if (!listener_) {
      std::fprintf(stderr, "listen: %s\n", why.c_str());
      std::exit(1);
    }
    visits_ = std::make_unique<rpc::Visits>(service_, tokens_, listener_->port());
    token = tokens_.make({service::Scope::examiner, std::nullopt}).text;
    if (::pipe(stop_.data()) != 0) {
      give_up("pipe");
    }
    thread_ = std::thread([this, prepare] {
      prepare();
      listener_->run([this] { return visits_->begin(); }, stop_[0], nullptr, 1000);
    });
  }
  ~Served() {
    ::close(stop_[1]);
    thread_.join();
    listener_.reset();
    ::close(stop_[0]);
  }
  Served(const Served&) = delete;
  Served& operator=(const Served&) = delete;

  [[nodiscard]] std::uint16_t port() const { return listener_->port(); }
  [[nodiscard]] std::string authorization() const { return "Authorization: Bearer " + token + "\r\n"; }
  // The clock of the processor time that the serving thread has used.
  [[nodiscard]] clockid_t time() {
    clockid_t clock{};
    if (::pthread_getcpuclockid(thread_.native_handle(), &clock) != 0) {
      give_up("clock");
    }
    return clock;
  }
  std::string token;

 private:
  rpc::Service service_;
  rpc::Tokens tokens_;
  std::unique_ptr<rpc::Visits> visits_;
  std::unique_ptr<rpc::Listener> listener_;
  std::array<int, 2> stop_{};
  std::thread thread_;
};

// A WebSocket with a session; what it is told unasked is passed over.
class SocketSession {
 public:
  SocketSession(std::uint16_t port, const std::string& token) : file_(connected(port)) {
    send_all(file_, as_upgrade(port, "/rpc"));
    static_cast<void>(taken(file_, [](const std::string& got) { return got.find("\r\n\r\n") != std::string::npos; }));
    static_cast<void>(ask("session.open", R"({"token":")" + token + "\"}"));
  }
  ~SocketSession() { ::close(file_); }
  SocketSession(const SocketSession&) = delete;
  SocketSession& operator=(const SocketSession&) = delete;

  [[nodiscard]] std::string ask(const std::string& method, const std::string& params) {
    send_all(file_, as_frame(R"({"jsonrpc":"2.0","method":")" + method + R"(","params":)" + params + R"(,"id":1})"));
    for (;;) {
      while (auto text = text_of(kept_)) {
        if (text->find(R"("error":)") < 20) {
          std::fprintf(stderr, "%s: %s\n", method.c_str(), text->c_str());
          std::exit(1);
        }
        if (text->find(R"("result":)") < 20) {
          return *text;
        }
      }
      kept_ += taken(file_, [](const std::string& got) { return !got.empty(); });
    }
  }

 private:
  int file_;
  std::string kept_;
};

}  // namespace limbledger::bench
