// JSON-RPC 2.0: one text in, one line or nothing out. The whole text is checked before anything runs; checks come in one
// order, so that every broken message has one answer: size, text, depth, repeated names, batch, then each call's id,
// jsonrpc, method, params. An id comes back as the token it was sent as. A notification is never answered, not even
// with an error; an object without id that is no request is. A response sent here is dropped. Source: JSON-RPC 2.0.
#pragma once

#include "core/service/call.hpp"
#include "rpc/protocol/limits.hpp"

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace limbledger::rpc {

// The name that the specification of OpenRPC keeps for the description of a service.
inline constexpr std::string_view discover_name = "rpc.discover";
// What a WebSocket session is told unasked.
inline constexpr std::string_view changed_name = "ledger.changed";
inline constexpr std::string_view staff_called_name = "staff.called";

// Whom a text is answered by. The functions may be left empty.
struct Service {
  std::span<const service::Method> table;
  service::Context& context;
  Limits limits{};
  std::function<std::string()> discover;  // the OpenRPC document; without it there is no such method
  // Told of every call that failed: the method (a name of the table, else empty) and the fault's code. For an internal
  // failure it gives back the number under which a person can report it; else what it gives is not used.
  std::function<std::string(std::string_view method, std::string_view code)> failed;
  // Around every message that is answered; for a demonstration that plays trouble.
  std::function<void()> asked{};
  std::function<void(std::string_view method)> called{};  // of each call in it
  std::function<void()> worked_out{};
};

[[nodiscard]] std::optional<std::string> answer(std::string_view text, const Service& service);
// The reply to a message that the transport could not even keep.
[[nodiscard]] std::string answer_too_large(const Service& service);
// The reply to what was no message at all, or had none yet.
[[nodiscard]] std::string refusal_text(const Service& service, const wire::Fault& fault);
// Reads the text as `answer` does, and gives each call in it this fault instead of running it.
[[nodiscard]] std::optional<std::string> answer_refused(std::string_view text, const Service& service, const wire::Fault& fault);

}  // namespace limbledger::rpc
