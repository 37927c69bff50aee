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
  // `too_large` is called on the other thread. The handover must outlive it.
  StdioBeside(const Stdio& stdio, Handover& handover, std::function<std::string()> too_large);
  ~StdioBeside();
  StdioBeside(const StdioBeside&) = delete;
  StdioBeside& operator=(const StdioBeside&) = delete;

  // `reply` is called where the handover works.
  void start(std::function<std::optional<std::string>(std::string_view)> reply);
  // On the thread where the handover works: whether the other side has gone.
  [[nodiscard]] bool has_left() const { return has_left_; }
  // Ends it where it has not ended, closes the handover, and says how it went.
  [[nodiscard]] const StdioOutcome& end();

 private:
  Handover& handover_;
  Stdio stdio_;
  std::function<std::string()> too_large_;
  std::function<std::optional<std::string>(std::string_view)> reply_;
  int stop_ = -1;
  StdioOutcome outcome_{StdioEnd::stopped, {}};
  bool has_left_ = false;
  std::thread thread_;
};

}  // namespace limbledger::rpc
