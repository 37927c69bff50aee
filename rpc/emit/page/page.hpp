// The description of the interface as a page for people: every method with what it takes and gives, its faults and examples; the
// shapes; the faults; the limits. It is made of the same table as the OpenRPC document, loads nothing from elsewhere and holds
// nothing of anybody. With a try-out it belongs to a demonstration ledger in memory alone: only then does its script call anything.
#pragma once

#include "core/service/methods/ledger/session.hpp"
#include "rpc/emit/openrpc.hpp"
#include "rpc/protocol/limits.hpp"

#include <span>
#include <string>
#include <string_view>

namespace limbledger::rpc {

// One call of the invented talk that the examples are made of, as JSON with its open places ("@exam"), and what is kept of its answer.
struct TryLine {
  std::string_view method;
  std::string_view title;
  std::string_view params;
  std::string keep;  // an object: name -> JSON Pointer into the result
};

struct PageAsk {
  std::span<const service::Method> table;
  std::span<const Example> examples;
  std::span<const Example> walk{};     // in their order, from a link to a signed exam
  Limits limits{};
  service::NetworkLimits network{};
  std::span<const TryLine> try_out{};  // empty: without
  std::string examiner{};              // of the demonstration, with the passphrase: for trying
  std::string passphrase{};
  std::string kept{};                  // an object: what the open places of the first lines stand for
};

[[nodiscard]] std::string description_page(const PageAsk& ask);
[[nodiscard]] std::string_view description_script();
[[nodiscard]] std::string_view description_style();

}  // namespace limbledger::rpc
