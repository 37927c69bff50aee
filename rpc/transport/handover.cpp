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

std::optional<std::string> Handover::ask(std::string_view text) {
  std::unique_lock lock(mutex_);
  if (closed_) {
    return std::nullopt;
  }
  question_ = text;
  reply_.reset();
  signal();
  answered_.wait(lock, [this] { return !question_ || closed_; });
  return std::move(reply_);
}

void Handover::leave() {
  const std::lock_guard lock(mutex_);
  left_ = true;
  signal();
}

bool Handover::answer(const std::function<std::optional<std::string>(std::string_view)>& reply) {
  std::uint64_t count = 0;
  static_cast<void>(!::read(descriptor_, &count, sizeof count));
  std::optional<std::string_view> text;
  {
    const std::lock_guard lock(mutex_);
    text = question_;
    if (!text) {
      return !left_;
    }
  }
  // Not under the lock: nobody else touches the question until it is answered.
  auto answer = reply(*text);
  const std::lock_guard lock(mutex_);
  reply_ = std::move(answer);
  question_.reset();
  answered_.notify_one();
  return true;
}

void Handover::close() {
  const std::lock_guard lock(mutex_);
  closed_ = true;
  answered_.notify_one();
}

}  // namespace limbledger::rpc
