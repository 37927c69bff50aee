// The method table as an OpenRPC 1.3.2 document: every method with its params and result, the errors, and the schemas
// they name, in the subset that draft 7 and 2020-12 read alike. The same table gives the same bytes, on one line.
#pragma once

#include "core/service/method.hpp"

#include <span>
#include <string>
#include <vector>

namespace limbledger::rpc {

// One call with its answer; both are JSON.
struct Example {
  std::string method;
  std::string title;
  std::string params;  // an object
  std::string result;
};

[[nodiscard]] std::string openrpc_text(std::span<const service::Method> table, std::span<const Example> examples = {});
// Names that two types of the table claim; to be empty.
[[nodiscard]] std::vector<std::string> name_clashes(std::span<const service::Method> table);

}  // namespace limbledger::rpc
