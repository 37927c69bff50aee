// HTTP and WebSocket on this machine's own addresses, on one thread: 127.0.0.1, and ::1 where there is one, with the same
// port. Every connection is held to NetLimits; what goes over them is answered and then closed. Times are in ms.
#pragma once

#include "rpc/transport/answerer.hpp"
#include "rpc/transport/net_limits.hpp"

#include <cstdint>
#include <functional>
#include <memory>

namespace limbledger::rpc {

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
