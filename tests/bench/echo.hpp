// The floor of a call over a socket: a server that takes so many bytes and gives so many, for ever, and looks at none of them.
// One wait for all connections, one read and one write a call.
#pragma once

#include "tests/bench/served.hpp"

#include <sys/epoll.h>

#include <map>

namespace limbledger::bench {

class Echo {
 public:
  // `prepare` is done on the echo's own thread before anything else.
  template <class Prepare>
  Echo(std::size_t up, std::size_t down, Prepare prepare) : up_(up), down_(down), server_(::socket(AF_INET, SOCK_STREAM | SOCK_NONBLOCK, 0)) {
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    socklen_t size = sizeof address;
    if (::bind(server_, reinterpret_cast<sockaddr*>(&address), size) != 0 || ::listen(server_, 16) != 0 ||
        ::getsockname(server_, reinterpret_cast<sockaddr*>(&address), &size) != 0 || ::pipe(stop_.data()) != 0) {
      give_up("echo");
    }
    port = ntohs(address.sin_port);
    thread_ = std::thread([this, prepare] {
      prepare();
      run();
    });
  }
  ~Echo() {
    ::close(stop_[1]);
    thread_.join();
    ::close(stop_[0]);
    ::close(server_);
  }
  Echo(const Echo&) = delete;
  Echo& operator=(const Echo&) = delete;

  std::uint16_t port = 0;
  [[nodiscard]] clockid_t time() {
    clockid_t clock{};
    if (::pthread_getcpuclockid(thread_.native_handle(), &clock) != 0) {
      give_up("clock");
    }
    return clock;
  }

 private:
  void run() const {
    const int queue = ::epoll_create1(0);
    const auto watch = [&](int file) {
      epoll_event event{};
      event.events = EPOLLIN;
      event.data.fd = file;
      ::epoll_ctl(queue, EPOLL_CTL_ADD, file, &event);
    };
    watch(server_);
    watch(stop_[0]);
    std::vector<char> in(up_ + 1);
    const std::string out(down_, 'x');
    std::map<int, std::size_t> have;
    std::array<epoll_event, 16> ready{};
    for (bool on = true; on;) {
      const int count = ::epoll_wait(queue, ready.data(), static_cast<int>(ready.size()), -1);
      for (int i = 0; i < count; ++i) {
        const int file = ready[static_cast<std::size_t>(i)].data.fd;
        if (file == stop_[0]) {
          on = false;
        } else if (file == server_) {
          const int fresh = ::accept4(server_, nullptr, nullptr, 0);
          at_once(fresh);
          watch(fresh);
        } else {
          const ssize_t got = ::recv(file, in.data(), in.size(), 0);
          std::size_t& taken_bytes = have[file];
          taken_bytes += got > 0 ? static_cast<std::size_t>(got) : 0;
          if (got <= 0) {
            have.erase(file);
            ::close(file);
          } else if (taken_bytes >= up_) {
            taken_bytes = 0;
            if (::send(file, out.data(), down_, MSG_NOSIGNAL) < 0) {
              break;
            }
          }
        }
      }
    }
    for (const auto& [file, bytes] : have) {
      ::close(file);
    }
    ::close(queue);
  }

  std::size_t up_;
  std::size_t down_;
  int server_;
  std::array<int, 2> stop_{};
  std::thread thread_;
};

}  // namespace limbledger::bench
