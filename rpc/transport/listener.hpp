// HTTP and WebSocket on this machine's own addresses, on one thread: 127.0.0.1, and ::1 where there is one, with the same
// port. Every connection is held to the figures below; what goes over them is answered and then closed. Times are in ms.
// The figures are ours: a form on the same machine comes nowhere near them.
#pragma once

#include "rpc/protocol/limits.hpp"
#include "rpc/transport/answerer.hpp"

#include <cstdint>
#include <functional>
#include <memory>

namespace limbledger::rpc {

struct NetLimits {
  std::size_t message_bytes = Limits{}.message_bytes;
  std::size_t head_bytes = std::size_t{8} * 1024;
  std::size_t connections = 64;
  std::size_t refusals = 16;              // connections over the limit that are being answered so at one time
  double messages_a_second = 1000;        // of one connection, after a first rush
  double messages_rush = 2000;
  double connections_a_second = 1000;
  double connections_rush = 2000;
  std::size_t refused_in_a_row = 1000;    // then the connection is closed
  int head_ms = 10'000;
  int request_ms = 30'000;                // head and body together
  int idle_ms = 60'000;                   // between two requests, or for a reply that nobody takes
  int session_ms = 5'000;                 // from the handshake to session.open
  int socket_idle_ms = 120'000;           // a WebSocket is asked for a sign of life after half of it
  int give_way_ms = 200;                  // likewise for one that made room
  int linger_ms = 2'000;                  // for the other side to read a refusal, or to say goodbye
};

// What else the serving thread looks after.
struct Beside {
  int descriptor = -1;
  std::function<bool()> ready;  // called while it is readable; false ends the serving
};

class Listener {
 public:
  // Port 0: any that is free. Absent when the port cannot be had; `why` then says so.
  [[nodiscard]] static std::unique_ptr<Listener> open(std::uint16_t port, const NetLimits& limits, std::string& why);
  ~Listener();
  Listener(const Listener&) = delete;
  Listener& operator=(const Listener&) = delete;

  [[nodiscard]] std::uint16_t port() const;
  // Serves until the descriptor `stop` becomes readable (negative: for ever). `tick` is called every `tick_ms`. No
  // conversation outlives it.
  void run(const NewConversation& begin, int stop, const std::function<void()>& tick, int tick_ms, const Beside& beside = {});

 private:
  struct Inside;
  explicit Listener(std::unique_ptr<Inside> inside);
  std::unique_ptr<Inside> inside_;
};

}  // namespace limbledger::rpc
