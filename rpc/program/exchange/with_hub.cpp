// limbledger exchange: calls the hub until both hold the same. A connection that breaks is made again, a few times; what was taken
// until then stays.
#include "rpc/program/commands.hpp"
#include "rpc/program/exchange/carried.hpp"
#include "rpc/transport/tls.hpp"

#include <unistd.h>

#include <iostream>

namespace limbledger::rpc {

namespace {

constexpr int tries_max = 4;
constexpr std::int64_t told_every_ms = 1000;

struct Tried {
  service::ExchangeState state;
  bool is_over = false;
  std::string why;  // where the connection broke
};

void tell(const service::ExchangeState& state) {
  std::cerr << "limbledger: " << state.calls << " calls; " << state.given << " entries given, " << state.taken << " taken; " << (state.bytes_sent + state.bytes_got) / 1024
            << " KB" << std::endl;
}

// One connection. Throws Problem for what trying again does not mend.
[[nodiscard]] Tried try_once(OpenedLedger& opened, service::ExchangeDoor& door, const HubAddress& at, const TlsKey& hub) {
  Tried out;
  bool is_other_key = false;
  const auto caller = TlsCaller::connect(at.host, at.port, hub, {}, out.why, is_other_key);
  if (is_other_key) {
    throw problem_of(wire::Fault("exchange.key", ""), at.host);
  }
  if (!caller) {
    return out;
  }
  const auto calling = door.calling(caller->shared());
  std::int64_t told_ms = opened.world().now().up_ms;
  while (true) {
    const auto message = calling->next();
    if (!message) {
      throw problem_of(message.error(), opened.folder().path);
    }
    out.state = calling->state();
    if (!*message) {
      out.is_over = true;
      return out;
    }
    const auto reply = caller->post(exchange_target, **message, out.why);
    if (!reply) {
      return out;
    }
    if (reply->status != 200) {
      const wire::Fault fault = refusal_in(reply->body, reply->status);
      if (reply->status == 503) {
        out.why = fault.code;
        return out;
      }
      throw problem_of(fault, at.host);
    }
    const auto received = calling->receive(reply->body);
    out.state = calling->state();
    if (!received) {
      throw problem_of(received.error(), opened.folder().path);
    }
    if (const std::int64_t now_ms = opened.world().now().up_ms; now_ms - told_ms >= told_every_ms) {
      told_ms = now_ms;
      tell(out.state);
    }
  }
}

}  // namespace

ExitCode exchange_with_hub(const Options& options) {
  const HubAddress at = read_address(options.with);
  OpenedLedger opened(folder_or_default(options), "stop it first: one program at a time has a ledger");
  unlock_for_exchange(opened, options);
  const auto door = open_door(opened);
  const auto hub = door->hub_key();
  if (!hub) {
    throw problem_of(hub.error(), opened.folder().path);
  }
  if (!*hub) {
    throw problem_of(wire::Fault("exchange.no_hub", ""), opened.folder().path);
  }
  service::ExchangeState all;
  Tried tried;
  for (int i = 0; i < tries_max && !tried.is_over; ++i) {
    if (i != 0) {
      std::cerr << "limbledger: " << at.host << ": " << tried.why << "; once more" << std::endl;
      ::sleep(1U << static_cast<unsigned>(i - 1));
    }
    tried = try_once(opened, *door, at, **hub);
    all.taken += tried.state.taken;
    all.given += tried.state.given;
    all.calls += tried.state.calls;
    all.bytes_sent += tried.state.bytes_sent;
    all.bytes_got += tried.state.bytes_got;
    all.was_restored = all.was_restored || tried.state.was_restored;
  }
  tell(all);
  std::cout << all.given << " entries were new to the hub, " << all.taken << " were new here.\n";
  tell_held(*door);
  if (all.was_restored) {
    std::cout << "Entries of this device came back that it no longer had: it was put back to an older copy, and writes nothing more under this\n"
                 "replica (replica.forked). Nothing is lost. What to do: keep this folder, and let the device join again in a new one.\n";
  }
  if (!tried.is_over) {
    throw Problem(ExitCode::unavailable, at.host + ": the hub does not answer (" + tried.why +
                                             ")\n  what to do: see that limbledger hub runs there and that the network is up; then do this again, what was taken stays");
  }
  std::cout << (tried.state.is_same ? "Both hold the same.\n" : "They do not hold the same yet: something was written meanwhile, or waits. Do this again.\n");
  return tried.state.is_same ? ExitCode::done : ExitCode::bad_answer;
}

}  // namespace limbledger::rpc
