// limbledger exchange: calls the hub until both hold the same.
#include "rpc/program/commands.hpp"
#include "rpc/program/exchange/by_network.hpp"

#include <iostream>

namespace limbledger::rpc {

namespace {

constexpr std::int64_t told_every_ms = 1000;

void tell(const service::ExchangeState& state) {
  std::cerr << "limbledger: " << state.calls << " calls; " << state.given << " entries given, " << state.taken << " taken; " << (state.bytes_sent + state.bytes_got) / 1024
            << " KB" << std::endl;
}

}  // namespace

ExitCode exchange_with_hub(const Options& options) {
  const HubAddress at = read_address(options.with);
  OpenedLedger opened(folder_or_default(options), "stop it first, or ask it: exchange.begin");
  unlock_for_exchange(opened, options);
  const auto door = open_door(opened);
  const auto hub = door->hub_key();
  if (!hub) {
    throw problem_of(hub.error(), opened.folder().path);
  }
  if (!*hub) {
    throw problem_of(wire::Fault("exchange.no_hub", ""), opened.folder().path);
  }
  std::int64_t told_ms = opened.world().now().up_ms;
  ByNetwork how;
  how.turn = [](const std::function<void()>& deed) {
    deed();
    return true;
  };
  how.told = [&](const service::ExchangeState& state) {
    if (const std::int64_t now_ms = opened.world().now().up_ms; now_ms - told_ms >= told_every_ms) {
      told_ms = now_ms;
      tell(state);
    }
  };
  how.again = [&](const std::string& why) { std::cerr << "limbledger: " << at.host << ": " << why << "; once more" << std::endl; };
  const NetworkOutcome done = exchange_by_network(how, *door, at, **hub);
  if (done.refused) {
    throw problem_of(*done.refused, done.refused_there ? at.host : opened.folder().path);
  }
  tell(done.state);
  std::cout << done.state.given << " entries were new to the hub, " << done.state.taken << " were new here.\n";
  tell_held(*door);
  if (done.state.was_restored) {
    std::cout << "Entries of this device came back that it no longer had: it was put back to an older copy, and writes nothing more under this\n"
                 "replica (replica.forked). Nothing is lost. What to do: keep this folder, and let the device join again in a new one:\n"
                 "  limbledger join NEW_FOLDER --with https://HOST:PORT     (with limbledger hub --enrol at the clinic)\n";
  }
  if (!done.is_over) {
    throw Problem(ExitCode::unavailable, at.host + ": the hub does not answer (" + done.why +
                                             ")\n  what to do: see that limbledger hub runs there, or that the program that serves there with --hub is unlocked, and that the network is up;\n"
                                             "  then do this again, what was taken stays");
  }
  std::cout << (done.state.is_same ? "Both hold the same.\n" : "They do not hold the same yet: something was written meanwhile, or waits. Do this again.\n");
  return done.state.is_same ? ExitCode::done : ExitCode::bad_answer;
}

}  // namespace limbledger::rpc
