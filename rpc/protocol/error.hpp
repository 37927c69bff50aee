// The error object of a reply: number, short words, and `data` with every independent fault. Shapes: contract, section 8.
// A path is a JSON Pointer into the params; for -32700 and -32600 it points into the message itself. `hint` is the
// sentence of the code table in English; a front end that speaks another language goes by `code` and `params`.
#pragma once

#include "core/wire/fault.hpp"
#include "core/wire/type.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::rpc {

struct ShownFault {
  wire::Name code;
  wire::Remark path;
  std::optional<wire::Remark> expected;
  std::optional<wire::Remark> got;
  wire::Remark hint;
  std::optional<wire::Raw> params;
  std::optional<wire::LongText> text;
};
BOOST_DESCRIBE_STRUCT(ShownFault, (), (code, path, expected, got, hint, params, text))
constexpr auto notes(const ShownFault*) {
  return std::array{wire::Note{"path", "JSON Pointer into the params: the field that it belongs to"},
                    wire::Note{"got", "a number, an id or a type; never a text that was sent"},
                    wire::Note{"hint", "what to do, in English, for whoever makes the form"},
                    wire::Note{"params", "numbers and words for a sentence of your own: low, high ..."},
                    wire::Note{"text", "what is wrong and what to do, for whoever is at the form; where the call named a language"}};
}

struct ErrorData {
  bool retry = false;
  std::vector<ShownFault> faults;
  std::optional<wire::Raw> held;
  std::optional<wire::Raw> held_also;
  std::optional<wire::Raw> sent;
  std::optional<wire::Name> incident;
};
BOOST_DESCRIBE_STRUCT(ErrorData, (), (retry, faults, held, held_also, sent, incident))
constexpr auto notes(const ErrorData*) {
  return std::array{wire::Note{"held", "of finding.stale: the value that stands and was not named (a Finding, where a finding was sent; of person.amend and place.amend the member)"},
                    wire::Note{"held_also", "a list of the other findings that stand at this place beside it, those that were named too"},
                    wire::Note{"sent", "what was sent for it"}};
}

struct ErrorObject {
  wire::Count<-32768, 1000> code;
  wire::Name message;
  ErrorData data;
};
BOOST_DESCRIBE_STRUCT(ErrorObject, (), (code, message, data))

// Every number that an error may carry, with its words and its name in the OpenRPC document.
struct ErrorNumber {
  wire::FaultClass number;
  std::string_view name;
  std::string_view message;
};
[[nodiscard]] std::span<const ErrorNumber> error_numbers();

[[nodiscard]] ErrorObject error_of(const wire::Refusal& refusal, std::optional<std::string> incident);

}  // namespace limbledger::rpc
