// Hands work that comes on other threads to the thread that answers: whoever asks waits until it was done, the answering thread waits
// for nobody and learns by a descriptor that something is there. So the standard input, the hub's network and an exchange go on beside
// the calls, though records are touched by one thread alone.
#pragma once

#include <condition_variable>
#include <deque>
#include <exception>
#include <functional>
#include <mutex>

namespace limbledger::rpc {

// Does something where records may be touched. False, and not done, once nothing is answered any more.
using Turn = std::function<bool(const std::function<void()>&)>;

class Handover {
 public:
  Handover();
  ~Handover();
  Handover(const Handover&) = delete;
  Handover& operator=(const Handover&) = delete;

  // On any other thread; returns when it was done, or throws what it threw. False, and not done, where the answering side has closed.
  [[nodiscard]] bool run(const std::function<void()>& deed);
  [[nodiscard]] Turn turn() {
    return [this](const std::function<void()>& deed) { return run(deed); };
  }

  // Readable while something waits.
  [[nodiscard]] int descriptor() const { return descriptor_; }
  // On the answering thread, once readable: does the first of what waits, so that whoever else asks has a turn before the next.
  void work();
  // On the answering thread: nothing is done any more.
  void close();

 private:
  struct Asked {
    const std::function<void()>& deed;
    bool is_done = false;
    std::exception_ptr thrown;
  };

  void signal() const;

  int descriptor_ = -1;
  std::mutex mutex_;
  std::condition_variable done_;
  std::deque<Asked*> waiting_;
  bool closed_ = false;
};

}  // namespace limbledger::rpc
