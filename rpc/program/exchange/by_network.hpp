// An exchange with the hub over TLS, for the command and for a program that answers others meanwhile: the network is waited for on
// the thread that calls, records are touched in turns, a message at a time. A connection that breaks is made again, a few times; what
// was taken until then stays.
#pragma once

#include "core/service/exchange/door.hpp"
#include "rpc/program/exchange/carried.hpp"
#include "rpc/transport/handover.hpp"
#include "rpc/transport/tls.hpp"

#include <atomic>
#include <functional>
#include <optional>
#include <string>

namespace limbledger::rpc {

struct ByNetwork {
  Turn turn;
  std::function<void(const service::ExchangeState&)> told;        // in a turn, after each message: all connections so far together
  std::function<void(const std::string& why)> again;              // a connection broke, another is tried
  const std::atomic<bool>* given_up = nullptr;
};

struct NetworkOutcome {
  service::ExchangeState state;
  bool is_over = false;                // it came to its end
  std::optional<wire::Refusal> refused;
  bool refused_there = false;          // by the hub, else here
  std::string why;                     // where it is not over and nothing was refused: how the last connection broke
};

[[nodiscard]] NetworkOutcome exchange_by_network(const ByNetwork& how, service::ExchangeDoor& door, const HubAddress& at, const TlsKey& hub);

}  // namespace limbledger::rpc
