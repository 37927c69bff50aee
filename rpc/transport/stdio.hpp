// Messages over two file descriptors, one at a time: read, answer, write. Ends at the end of the input, when the other side
// no longer reads, at a frame that cannot be read, or when the stop descriptor becomes readable (a signal).
#pragma once

#include "rpc/transport/framing.hpp"

#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace limbledger::rpc {

struct Stdio {
  Framing framing = Framing::lines;
  int in = 0;
  int out = 1;
  int stop = -1;  // none: only the end of the input ends it
  Limits limits{};
  std::function<void()> idle;  // called whenever nothing has come for `idle_ms`
  int idle_ms = 30'000;
  int beside = -1;              // what else this thread looks after: `ready` is called while it is readable
  std::function<void()> ready;
};

enum class StdioEnd : std::uint8_t { input_ended, stopped, nobody_reads, broken_frame, failed };

struct StdioOutcome {
  StdioEnd end{};
  std::string why;  // for a person; empty where all was well
};

// `reply` is asked for each message; `too_large` for one that was passed over.
[[nodiscard]] StdioOutcome serve_stdio(const Stdio& stdio, const std::function<std::optional<std::string>(std::string_view)>& reply,
                                       const std::function<std::string()>& too_large);

}  // namespace limbledger::rpc
