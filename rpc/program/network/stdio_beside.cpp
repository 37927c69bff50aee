#include "rpc/program/network/stdio_beside.hpp"

#include "rpc/program/problem.hpp"

#include <sys/eventfd.h>
#include <unistd.h>

#include <cstdint>
#include <utility>

namespace limbledger::rpc {

StdioBeside::StdioBeside(const Stdio& stdio, Handover& handover, std::function<std::string()> too_large)
    : handover_(handover), stdio_(stdio), too_large_(std::move(too_large)), stop_(::eventfd(0, EFD_CLOEXEC | EFD_NONBLOCK)) {
  if (stop_ < 0 || handover_.descriptor() < 0) {
    throw Problem(ExitCode::internal, "no more files can be opened\n  what to do: close other programs and try again");
  }
  stdio_.stop = stop_;
}

StdioBeside::~StdioBeside() {
  static_cast<void>(end());
  ::close(stop_);
}

void StdioBeside::start(std::function<std::optional<std::string>(std::string_view)> reply) {
  reply_ = std::move(reply);
  thread_ = std::thread([this] {
    const auto ask = [this](std::string_view text) {
      std::optional<std::string> out;
      static_cast<void>(handover_.run([&] { out = reply_(text); }));
      return out;
    };
    outcome_ = serve_stdio(stdio_, ask, too_large_);
    static_cast<void>(handover_.run([this] { has_left_ = true; }));
  });
}

const StdioOutcome& StdioBeside::end() {
  if (thread_.joinable()) {
    const std::uint64_t one = 1;
    static_cast<void>(!::write(stop_, &one, sizeof one));
    handover_.close();
    thread_.join();
  }
  return outcome_;
}

}  // namespace limbledger::rpc
