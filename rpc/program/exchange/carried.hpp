// What hub and callers share: where messages are posted, a refusal as bytes, an address as typed, a ledger that is opened for it.
#pragma once

#include "core/ledger/port.hpp"
#include "core/service/exchange/door.hpp"
#include "rpc/program/opened.hpp"
#include "rpc/program/options.hpp"

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace limbledger::rpc {

inline constexpr std::string_view exchange_target = "/exchange";
inline constexpr std::string_view enrol_target = "/enrol";

// JSON: code and what was expected of the first fault. Nothing that was sent is said back.
[[nodiscard]] ledger::Bytes refusal_bytes(const wire::Refusal& refusal);
// What the other side refused; of anything else a fault of the network.
[[nodiscard]] wire::Fault refusal_in(std::span<const std::uint8_t> bytes, unsigned status);

struct HubAddress {
  std::string host;
  std::uint16_t port = 0;
};
// https://HOST:PORT, or https://[ADDRESS]:PORT; none where it is neither.
[[nodiscard]] std::optional<HubAddress> address_in(const std::string& text);
// The same of a command line: throws Problem.
[[nodiscard]] HubAddress read_address(const std::string& text);

[[nodiscard]] std::string folder_or_default(const Options& options);

// Unlocks it, asking on the terminal where nothing was given; throws Problem.
void unlock_for_exchange(OpenedLedger& opened, const Options& options);
[[nodiscard]] std::unique_ptr<service::ExchangeDoor> open_door(OpenedLedger& opened);

// Which of the entries of this device are held elsewhere, and which wait here; a line each.
void tell_held(service::ExchangeDoor& door);

}  // namespace limbledger::rpc
