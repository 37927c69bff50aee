#include "rpc/protocol/error.hpp"

#include "core/wire/write.hpp"

#include <algorithm>
#include <array>

namespace limbledger::rpc {

namespace {

using wire::FaultClass;

// The first five in the words of the specification.
constexpr std::array numbers{
    ErrorNumber{FaultClass::syntax, "syntax", "Parse error"},
    ErrorNumber{FaultClass::envelope, "envelope", "Invalid Request"},
    ErrorNumber{FaultClass::unknown_method, "unknown_method", "Method not found"},
    ErrorNumber{FaultClass::shape, "shape", "Invalid params"},
    ErrorNumber{FaultClass::internal, "internal", "Internal error"},
    ErrorNumber{FaultClass::refused, "refused", "refused"},
    ErrorNumber{FaultClass::asked_back, "asked_back", "please confirm"},
    ErrorNumber{FaultClass::stale, "stale", "changed meanwhile"},
    ErrorNumber{FaultClass::locked, "locked", "locked"},
    ErrorNumber{FaultClass::read_only, "read_only", "cannot write now"},
    ErrorNumber{FaultClass::denied, "denied", "not allowed"},
    ErrorNumber{FaultClass::limit, "limit", "too much at once"},
    ErrorNumber{FaultClass::unknown_id, "unknown_id", "not found"},
    ErrorNumber{FaultClass::trust, "trust", "cannot be trusted"},
};

[[nodiscard]] std::optional<wire::Remark> if_any(const std::string& text) {
  return text.empty() ? std::nullopt : std::optional(wire::Remark{text});
}

[[nodiscard]] ShownFault shown(const wire::Fault& fault) {
  const wire::FaultCode* row = wire::find_fault_code(fault.code);
  ShownFault out;
  out.code.text = fault.code;
  out.path.text = fault.path;
  out.expected = if_any(fault.expected);
  out.got = if_any(fault.got);
  out.hint.text = row != nullptr ? std::string(row->hint) : std::string{};
  if (!fault.text.empty()) {
    out.text = wire::LongText{fault.text};
  }
  if (!fault.params.empty()) {
    std::string members;
    for (const wire::FaultParam& param : fault.params) {
      members += (members.empty() ? "" : ",") + wire::quoted(param.name) + ":" + param.json;
    }
    out.params = wire::Raw{"{" + members + "}"};
  }
  return out;
}

[[nodiscard]] std::optional<wire::Raw> raw_if_any(const std::optional<std::string>& json) {
  return json ? std::optional(wire::Raw{*json}) : std::nullopt;
}

}  // namespace

std::span<const ErrorNumber> error_numbers() { return numbers; }

ErrorObject error_of(const wire::Refusal& refusal, std::optional<std::string> incident) {
  const FaultClass number = refusal.number();
  const auto row = std::find_if(numbers.begin(), numbers.end(), [&](const ErrorNumber& n) { return n.number == number; });
  ErrorObject error;
  error.code.steps = static_cast<std::int64_t>(number);
  error.message.text = row != numbers.end() ? std::string(row->message) : std::string{};
  error.data.retry = refusal.retry();
  for (const wire::Fault& fault : refusal.faults) {
    error.data.faults.push_back(shown(fault));
  }
  error.data.held = raw_if_any(refusal.held_json);
  error.data.held_also = raw_if_any(refusal.held_also_json);
  error.data.sent = raw_if_any(refusal.sent_json);
  if (incident) {
    error.data.incident = wire::Name{*incident};
  }
  return error;
}

}  // namespace limbledger::rpc
