// What is wrong with an input, said so that a person can act on it: a stable code, where, what was expected,
// what to do. A fault never repeats text that was sent: `got` holds a number, an id or the name of a type.
// Codes stand in one table (fault.cpp); they are never renamed and never reused. Source: contract, section 8.
#pragma once

#include <boost/system/result.hpp>

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::wire {

// The number of the JSON-RPC error that a code answers with.
enum class FaultClass : std::int16_t {
  syntax = -32700,
  envelope = -32600,
  unknown_method = -32601,
  shape = -32602,
  internal = -32603,
  refused = 1,
  asked_back = 2,
  stale = 3,
  locked = 4,
  read_only = 5,
  denied = 6,
  limit = 7,
  unknown_id = 8,
  trust = 9,
};

struct FaultCode {
  std::string_view code;
  FaultClass number;
  bool retry;                // the same call again may succeed without a change
  std::string_view meaning;  // one sentence for the developer
  std::string_view hint;     // what the person or the developer can do
};

// The whole table, in alphabetical order; `schemas/faults.json` is printed from it.
[[nodiscard]] std::span<const FaultCode> fault_codes();
[[nodiscard]] const FaultCode* find_fault_code(std::string_view code);

// A number or a word that a front end puts into its own message.
struct FaultParam {
  std::string name;
  std::string json;  // one JSON value, already written

  FaultParam(std::string_view name_, std::string_view json_);
};

// What is made, copied and dropped wherever something can be refused stands in fault.cpp: in the program's every function
// it would be a tenth of what is compiled.
struct Fault {
  std::string code;
  std::string path;  // JSON Pointer into params; empty for the whole
  std::string expected;
  std::string got;
  std::vector<FaultParam> params;
  std::string text;  // for whoever is at the form, where the call named a language

  // A constructor, because an aggregate would be built from a lone value by parentheses.
  Fault(std::string_view code_, std::string_view path_, std::string_view expected_ = {}, std::string_view got_ = {});
  Fault(const Fault&);
  Fault(Fault&&) noexcept;
  Fault& operator=(const Fault&);
  Fault& operator=(Fault&&) noexcept;
  ~Fault();

  Fault with(std::string_view name, std::string_view json) &&;
};

// All independent faults of one call. `held` and `sent` carry both values of a stale write (contract, section 4), `held_also` a list of
// what else stands at that place.
struct Refusal {
  std::vector<Fault> faults;
  std::optional<std::string> held_json;
  std::optional<std::string> held_also_json;
  std::optional<std::string> sent_json;

  Refusal();
  explicit Refusal(std::vector<Fault> faults_);
  Refusal(Fault fault);  // NOLINT(google-explicit-constructor): one fault is the usual case
  Refusal(const Refusal&);
  Refusal(Refusal&&) noexcept;
  Refusal& operator=(const Refusal&);
  Refusal& operator=(Refusal&&) noexcept;
  ~Refusal();
  // The class of the gravest fault: a question to confirm counts only where nothing else is wrong.
  [[nodiscard]] FaultClass number() const;
  [[nodiscard]] bool retry() const;
};

// boost::system::result asks for this beside the error type; house rules ban the call that would reach it.
[[noreturn]] void throw_exception_from_error(const Refusal& refusal, const boost::source_location& location);

}  // namespace limbledger::wire

namespace limbledger {
template <class T>
using Result = boost::system::result<T, wire::Refusal>;
}
