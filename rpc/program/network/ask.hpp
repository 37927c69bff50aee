// One call of the program that serves a ledger, by another command of the same owner: the address and the token come from
// sidecar.json, never from the command line. Plain HTTP to this machine; ten seconds at most.
#pragma once

#include "rpc/program/folder.hpp"

#include <string>
#include <string_view>

namespace limbledger::rpc {

// The result as JSON. Throws Problem: nothing serves there, or what the other program refused, in its own words.
[[nodiscard]] std::string ask_sidecar(const Folder& folder, std::string_view method, std::string_view params_json);
// The address a link of that program begins with.
[[nodiscard]] std::string sidecar_origin(const Folder& folder);

}  // namespace limbledger::rpc
