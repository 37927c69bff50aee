// One invented talk with an invented ledger that calls every method at least once: the examples of the OpenRPC document. What
// is written here is only what is sent; the answers come from the methods themselves, so that no example can be stale.
#pragma once

#include <span>
#include <string_view>
#include <vector>

namespace limbledger::rpc {

// A part of the answer that later lines name: "@exam" in their params, with the quotes, becomes what stands there.
struct Kept {
  std::string_view name;
  std::string_view pointer;  // into the result
};

struct Line {
  std::string_view method;
  std::string_view title;
  std::string_view params;
  std::vector<Kept> keep;
};

// "@code" and "@passphrase" stand for those of the invented ledger, which is locked at the start.
[[nodiscard]] std::span<const Line> example_talk();
// The shortest way of a form from its link ("@once" is the code in it) to a signed exam, each line with what to keep of its answer. The
// ledger is unlocked, as one that --demo made.
[[nodiscard]] std::span<const Line> example_walk();

}  // namespace limbledger::rpc
