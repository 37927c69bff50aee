// The examples of the OpenRPC document: the invented talk, held with the methods themselves on a demonstration ledger in
// memory, whose clock stands still and whose randomness is counted. The same program gives the same bytes.
#pragma once

#include "rpc/emit/openrpc.hpp"

#include <vector>

namespace limbledger::rpc {

struct HeldTalk {
  std::vector<Example> examples;
  std::vector<std::string> refused;  // "method code path" of each call that was not answered; to be empty
};

// Each held once, when it is first wanted.
[[nodiscard]] const HeldTalk& held_talk();
[[nodiscard]] const HeldTalk& held_walk();

}  // namespace limbledger::rpc
