// What every connection over HTTP and WebSocket is held to; health.check publishes it. Times are in ms. The figures are ours: a
// form on the same machine comes nowhere near them.
#pragma once

#include "rpc/protocol/limits.hpp"

#include <cstddef>

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

}  // namespace limbledger::rpc
