#include "rpc/transport/handover.hpp"

#include <sys/eventfd.h>
#include <unistd.h>

#include <cstdint>

namespace limbledger::rpc {

Handover::Handover() : descriptor_(::eventfd(0, EFD_CLOEXEC | EFD_NONBLOCK)) {}

Handover::~Handover() { ::close(descriptor_); }

void Handover::signal() const {
  const std::uint64_t one = 1;
  static_cast<void>(!::write(descriptor_, &one, sizeof one));
}

bool Handover::run(const std::function<void()>& deed) {
  std::unique_lock lock(mutex_);
  if (closed_) {
    return false;
  }
  Asked asked{deed, false, nullptr};
  waiting_.push_back(&asked);
  signal();
  done_.wait(lock, [&] { return asked.is_done || closed_; });
  if (asked.thrown) {
    std::rethrow_exception(asked.thrown);
  }
  return asked.is_done;
}

void Handover::work() {
  std::uint64_t count = 0;
  static_cast<void>(!::read(descriptor_, &count, sizeof count));
  Asked* asked = nullptr;
  {
    const std::lock_guard lock(mutex_);
    if (waiting_.empty()) {
      return;
    }
    asked = waiting_.front();
    waiting_.pop_front();
  }
  // Not under the lock: whoever asked waits, and nobody else touches it.
  std::exception_ptr thrown;
  try {
    asked->deed();
  } catch (...) {
    thrown = std::current_exception();
  }
  const std::lock_guard lock(mutex_);
  asked->thrown = thrown;
  asked->is_done = true;
  done_.notify_all();
  if (!waiting_.empty()) {
    signal();
  }
}

void Handover::close() {
  const std::lock_guard lock(mutex_);
  closed_ = true;
  waiting_.clear();
  done_.notify_all();
}

}  // namespace limbledger::rpc
