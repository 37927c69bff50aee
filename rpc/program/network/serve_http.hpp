// Serving over HTTP and WebSocket: listens, writes sidecar.json, makes the tokens of this launch anew before they expire,
// prints the one-time link where one is asked for, and takes the file away at a clean stop. The standard input may be served
// beside it; its caller needs no token.
#pragma once

#include "rpc/program/commands.hpp"
#include "rpc/program/logging.hpp"
#include "rpc/program/network/stdio_beside.hpp"
#include "rpc/program/opened.hpp"
#include "rpc/protocol/envelope.hpp"

#include <functional>

namespace limbledger::rpc {

// What serving has in common with the standard input.
struct HttpHooks {
  std::function<void()> while_waiting;
  int stop = -1;                  // becomes readable with the signal to stop
  Handover& handover;             // from the other threads
  StdioBeside* beside = nullptr;  // started once the port is had
};

// Throws Problem when the port cannot be had.
[[nodiscard]] ExitCode serve_http(const Options& options, OpenedLedger& opened, Service& service, Log& log, const HttpHooks& hooks);

}  // namespace limbledger::rpc
