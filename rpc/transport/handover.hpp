// Hands messages that come on one thread to the thread that answers, one at a time: the asking thread waits for its answer,
// the answering one waits for nobody and learns by a descriptor that something is there. So the standard input can be served
// beside the network, though records are touched by one thread alone.
#pragma once

#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <string>
#include <string_view>

namespace limbledger::rpc {

class Handover {
 public:
  Handover();
  ~Handover();
  Handover(const Handover&) = delete;
  Handover& operator=(const Handover&) = delete;

  // On the asking thread. Nothing for a message without an answer, and once the other side has closed. The text must live
  // until then, which it does: this returns with the answer.
  [[nodiscard]] std::optional<std::string> ask(std::string_view text);
  // On the asking thread, as its last word.
  void leave();

  // Readable while a message waits or the asking side has left.
  [[nodiscard]] int descriptor() const { return descriptor_; }
  // On the answering thread, once readable: answers what waits. False once the asking side has left.
  [[nodiscard]] bool answer(const std::function<std::optional<std::string>(std::string_view)>& reply);
  // On the answering thread: nothing is answered any more.
  void close();

 private:
  void signal() const;

  int descriptor_ = -1;
  std::mutex mutex_;
  std::condition_variable answered_;
  std::optional<std::string_view> question_;
  std::optional<std::string> reply_;
  bool left_ = false;
  bool closed_ = false;
};

}  // namespace limbledger::rpc
