// The only door into the core: a method's name and its params -> the result as JSON text, or what was wrong. The table is
// an argument, so that the protocol's own examples run on a table of their own.
#pragma once

#include "core/service/method.hpp"

namespace limbledger::service {

// Every method of protocol 1, in the order of the documentation; table.cpp is the only place that names them.
[[nodiscard]] std::span<const Method> methods();

inline constexpr int protocol_oldest = 1;
inline constexpr int protocol_newest = 1;

// Checks in this order: the method exists (method.unknown), the scope allows it (token.missing, token.scope), the ledger is
// unlocked where it must be (ledger.locked) and by a named examiner where something is written (examiner.needed), the params
// fit. `params` may be null for none. Paths in faults start at the params.
[[nodiscard]] Result<std::string> call(std::span<const Method> table, Context& context, std::string_view method, const wire::Document& document,
                                       const wire::Node* params);

}  // namespace limbledger::service
