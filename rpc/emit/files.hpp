// The files of schemas/: one <Type>.schema.json a named type of the methods, openrpc.json, faults.json, and under
// ledger/v1/ the shapes of what is stored, which never change once released. The same program gives the same bytes,
// members in the order of their description, two spaces a level, one line end at the close.
#pragma once

#include "core/service/method.hpp"
#include "rpc/emit/openrpc.hpp"

#include <map>
#include <span>
#include <string>
#include <string_view>

namespace limbledger::rpc {

// A shape that is stored, by the name of its file below ledger/v1/.
struct StoredShape {
  std::string name;
  wire::TypeRef type = nullptr;
};

// By path below the folder.
[[nodiscard]] std::map<std::string, std::string> schema_files(std::span<const service::Method> table, std::span<const StoredShape> stored,
                                                                std::span<const Example> examples = {});
// JSON text laid out for reading; what is between quotes stays as it is.
[[nodiscard]] std::string laid_out(std::string_view json);

}  // namespace limbledger::rpc
