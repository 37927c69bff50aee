// The signals that ask the program to stop, as a descriptor that becomes readable. One a program.
#pragma once

#include "rpc/program/problem.hpp"

#include <signal.h>
#include <sys/signalfd.h>
#include <unistd.h>

namespace limbledger::rpc {

class StopSignals {
 public:
  StopSignals() {
    sigset_t set;
    ::sigemptyset(&set);
    for (const int one : {SIGTERM, SIGINT, SIGHUP}) {
      ::sigaddset(&set, one);
    }
    ::sigprocmask(SIG_BLOCK, &set, nullptr);
    ::signal(SIGPIPE, SIG_IGN);
    descriptor_ = ::signalfd(-1, &set, SFD_CLOEXEC | SFD_NONBLOCK);
    if (descriptor_ < 0) {
      throw Problem(ExitCode::internal, "signals cannot be waited for\n  what to do: try again");
    }
  }
  ~StopSignals() { ::close(descriptor_); }
  StopSignals(const StopSignals&) = delete;
  StopSignals& operator=(const StopSignals&) = delete;

  [[nodiscard]] int descriptor() const { return descriptor_; }

 private:
  int descriptor_ = -1;
};

}  // namespace limbledger::rpc
