// The standard input served beside the network: read and written on a thread of its own, answered on the network's. When its
// other side goes, the program does too: whoever started it so is gone.
#pragma once

#include "rpc/transport/handover.hpp"
#include "rpc/transport/stdio.hpp"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <thread>

namespace limbledger::rpc {

class StdioBeside {
 public:
  // `too_large` is called on the other thread.
  StdioBeside(const Stdio& stdio, std::function<std::string()> too_large);
  ~StdioBeside();
  StdioBeside(const StdioBeside&) = delete;
  StdioBeside& operator=(const StdioBeside&) = delete;

  void start();
  [[nodiscard]] Handover& handover() { return handover_; }
  // Ends it where it has not ended, and says how it went.
  [[nodiscard]] const StdioOutcome& end();

 private:
  Handover handover_;
  Stdio stdio_;
  std::function<std::string()> too_large_;
  int stop_ = -1;
  StdioOutcome outcome_{StdioEnd::stopped, {}};
  std::thread thread_;
};

}  // namespace limbledger::rpc
