#include "rpc/transport/listener.hpp"

#include "rpc/transport/connection.hpp"

#include <boost/asio/basic_waitable_timer.hpp>
#include <boost/asio/ip/v6_only.hpp>
#include <boost/asio/posix/stream_descriptor.hpp>

#include <unistd.h>

#include <vector>

namespace limbledger::rpc {

namespace {

namespace asio = boost::asio;
using Timer = asio::basic_waitable_timer<Clock, asio::wait_traits<Clock>, Executor>;
using Descriptor = asio::posix::basic_stream_descriptor<Executor>;

constexpr std::chrono::milliseconds sweep_every{200};
constexpr std::chrono::milliseconds goodbye_max{1000};
constexpr std::chrono::milliseconds accept_pause{50};

}  // namespace

struct Listener::Inside {
  explicit Inside(const NetLimits& limits)
      : network(limits), stop(network.io.get_executor()), other(network.io.get_executor()), sweep(network.io.get_executor()), allowance(limits.connections_a_second, limits.connections_rush) {}

  Network network;
  std::vector<Acceptor> acceptors;
  Descriptor stop;
  Descriptor other;
  Timer sweep;
  Allowance allowance;
  Moment stopped_at;
  Moment ticked_at;

  [[nodiscard]] ErrorCode bind(const asio::ip::address& address, std::uint16_t port) {
    ErrorCode failed;
    Acceptor acceptor(network.io.get_executor());
    const asio::ip::tcp::endpoint endpoint(address, port);
    acceptor.open(endpoint.protocol(), failed);
    if (!failed && address.is_v6()) {
      acceptor.set_option(asio::ip::v6_only(true), failed);
    }
    if (!failed) {
      acceptor.set_option(asio::socket_base::reuse_address(true), failed);
    }
    if (!failed) {
      acceptor.bind(endpoint, failed);
    }
    if (!failed) {
      acceptor.listen(asio::socket_base::max_listen_connections, failed);
    }
    if (!failed) {
      acceptors.push_back(std::move(acceptor));
    }
    return failed;
  }

  void accept(Acceptor& acceptor) {
    acceptor.async_accept([this, &acceptor](ErrorCode failed, Socket socket) {
      if (network.stopping || failed == asio::error::operation_aborted) {
        return;
      }
      if (failed) {  // no descriptors left, or the like: what waits in the queue is taken later
        return accept_later(acceptor);
      }
      take(std::move(socket));
      // Those that cannot even be refused now wait in the kernel's queue.
      if (network.refusals >= network.limits.refusals) {
        return accept_later(acceptor);
      }
      accept(acceptor);
    });
  }

  void accept_later(Acceptor& acceptor) {
    auto timer = std::make_shared<Timer>(network.io.get_executor(), accept_pause);
    timer->async_wait([this, &acceptor, timer](ErrorCode) {
      if (network.stopping) {
        return;
      }
      network.refusals >= network.limits.refusals ? accept_later(acceptor) : accept(acceptor);
    });
  }

  void take(Socket socket) {
    ErrorCode ignored;
    socket.set_option(asio::ip::tcp::no_delay(true), ignored);
    const auto in_use = [&] { return network.connections.size() - network.refusals - network.giving_way; };
    if (in_use() >= network.limits.connections) {
      make_room();
    }
    const bool crowded = !allowance.take(Clock::now()) || in_use() >= network.limits.connections;
    begin_http(network, std::move(socket), crowded);
  }

  // The oldest of those that never came to a whole request: they hold nothing of anybody, and whoever asks goes first.
  void make_room() {
    std::shared_ptr<Connection> oldest;
    for (const auto& [name, connection] : network.connections) {
      const auto since = connection->half_since();
      if (since && (!oldest || *since < *oldest->half_since())) {
        oldest = connection;
      }
    }
    if (oldest) {
      oldest->give_way();
    }
  }

  // One look at all of them now and then costs less than a timer a message.
  void look(const std::function<void()>& tick, int tick_ms) {
    sweep.expires_after(sweep_every);
    sweep.async_wait([this, &tick, tick_ms](ErrorCode failed) {
      if (failed) {
        return;
      }
      const Moment now = Clock::now();
      for (const auto& connection : everybody()) {
        connection->check(now);
      }
      if (network.stopping && (network.connections.empty() || now - stopped_at > goodbye_max)) {
        network.io.stop();
        return;
      }
      if (tick && over(ticked_at, now, tick_ms)) {
        ticked_at = now;
        tick();
      }
      look(tick, tick_ms);
    });
  }

  void look_beside(const std::function<bool()>& ready) {
    other.async_wait(Descriptor::wait_read, [this, &ready](ErrorCode failed) {
      if (failed || network.stopping) {
        return;
      }
      ready() ? look_beside(ready) : end();
    });
  }

  [[nodiscard]] std::vector<std::shared_ptr<Connection>> everybody() const {
    std::vector<std::shared_ptr<Connection>> all;
    for (const auto& [name, connection] : network.connections) {
      all.push_back(connection);
    }
    return all;
  }

  void end() {
    if (network.stopping) {
      return;
    }
    network.stopping = true;
    stopped_at = Clock::now();
    ErrorCode ignored;
    for (Acceptor& acceptor : acceptors) {
      acceptor.close(ignored);
    }
    for (const auto& connection : everybody()) {
      connection->stop();
    }
    if (network.connections.empty()) {
      network.io.stop();
    }
  }
};

Listener::Listener(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}

Listener::~Listener() = default;

std::unique_ptr<Listener> Listener::open(std::uint16_t port, const NetLimits& limits, std::string& why) {
  auto inside = std::make_unique<Inside>(limits);
  if (const ErrorCode failed = inside->bind(asio::ip::address_v4::loopback(), port)) {
    why = failed.message();
    return nullptr;
  }
  // A machine without IPv6, or another program there: the first address is the one that is told.
  static_cast<void>(inside->bind(asio::ip::address_v6::loopback(), inside->acceptors.front().local_endpoint().port()));
  return std::unique_ptr<Listener>(new Listener(std::move(inside)));
}

std::uint16_t Listener::port() const { return inside_->acceptors.front().local_endpoint().port(); }

void Listener::run(const NewConversation& begin, int stop, const std::function<void()>& tick, int tick_ms, const Beside& beside) {
  Inside& in = *inside_;
  // Whoever still talks is let go before those whom they talk to, however this ends.
  struct LetGo {
    Inside& in;
    ~LetGo() {
      for (const auto& connection : in.everybody()) {
        connection->drop();
      }
      // One that ended by itself is held by what it still waited for: that is told now that it was given up.
      in.network.stopping = true;
      do {
        in.network.io.restart();
      } while (in.network.io.poll_one() != 0);
    }
  };
  const LetGo let_go{in};
  in.network.begin = begin;
  in.ticked_at = Clock::now();
  if (stop >= 0) {
    in.stop.assign(::dup(stop));
    in.stop.async_wait(Descriptor::wait_read, [&in](ErrorCode failed) {
      if (!failed) {
        in.end();
      }
    });
  }
  if (beside.descriptor >= 0) {
    in.other.assign(::dup(beside.descriptor));
    in.look_beside(beside.ready);
  }
  for (Acceptor& acceptor : in.acceptors) {
    in.accept(acceptor);
  }
  in.look(tick, tick_ms);
  in.network.io.run();
}

}  // namespace limbledger::rpc
