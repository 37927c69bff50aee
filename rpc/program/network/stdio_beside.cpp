#include "rpc/program/network/stdio_beside.hpp"

#include "rpc/program/problem.hpp"

#include <sys/eventfd.h>
#include <unistd.h>

#include <cstdint>
#include <utility>

namespace limbledger::rpc {

StdioBeside::StdioBeside(const Stdio& stdio, std::function<std::string()> too_large)
    : stdio_(stdio), too_large_(std::move(too_large)), stop_(::eventfd(0, EFD_CLOEXEC | EFD_NONBLOCK)) {
  if (stop_ < 0 || handover_.descriptor() < 0) {
    throw Problem(ExitCode::internal, "no more files can be opened\n  what to do: close other programs and try again");
  }
  stdio_.stop = stop_;
}

StdioBeside::~StdioBeside() {
  static_cast<void>(end());
  ::close(stop_);
}

void StdioBeside::start() {
  thread_ = std::thread([this] {
    outcome_ = serve_stdio(stdio_, [this](std::string_view text) { return handover_.ask(text); }, too_large_);
    handover_.leave();
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
