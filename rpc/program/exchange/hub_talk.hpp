// How a device of the clinic is answered over TLS, by `limbledger hub` and by a program that serves: the exchange, and the one enrolment
// that somebody looks after. Records are touched in turns.
#pragma once

#include "core/service/exchange/letting_in.hpp"
#include "rpc/transport/handover.hpp"
#include "rpc/transport/tls.hpp"

#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace limbledger::rpc {

struct HubTalks {
  Turn turn;
  service::ExchangeDoor& door;
  std::function<service::LettingIn*()> letting_in;                  // null: nobody is let in now
  std::function<void(const service::ExchangeState&)> brought;       // in a turn, of a connection that ended and had brought something
};

// `all` must outlive it.
[[nodiscard]] std::unique_ptr<TlsConversation> hub_talk(const HubTalks& all, const TlsShared& shared);

// What was brought, as a line for a person.
[[nodiscard]] std::string line_of_brought(const service::ExchangeState& state);

// Where another device can call: the address as it was given, or of all addresses those of this machine's networks; where it has none,
// its own alone.
[[nodiscard]] std::vector<std::string> addresses_to_call(const std::string& address, std::uint16_t port);

}  // namespace limbledger::rpc
