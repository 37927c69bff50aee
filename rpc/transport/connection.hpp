// What the three sources of the network side share: the sockets' types, the figures, the connections that live, and how
// often something may come. Included by listener.cpp, http.cpp and websocket.cpp alone: Asio and Beast cost every file that
// sees them a quarter of a minute, so the three are compiled as one.
#pragma once

#include "rpc/transport/listener.hpp"

#include <boost/asio/basic_socket_acceptor.hpp>
#include <boost/asio/basic_stream_socket.hpp>
#include <boost/asio/io_context.hpp>
#include <boost/asio/ip/tcp.hpp>
#include <boost/asio/post.hpp>
#include <boost/beast/http/message.hpp>
#include <boost/beast/http/string_body.hpp>

#include <algorithm>
#include <chrono>
#include <map>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace limbledger::rpc {

using Clock = std::chrono::steady_clock;
using Moment = Clock::time_point;
using Executor = boost::asio::io_context::executor_type;
using Socket = boost::asio::basic_stream_socket<boost::asio::ip::tcp, Executor>;
using Acceptor = boost::asio::basic_socket_acceptor<boost::asio::ip::tcp, Executor>;
using HttpRequest = boost::beast::http::request<boost::beast::http::string_body>;
using ErrorCode = boost::system::error_code;

inline constexpr std::size_t read_bytes = std::size_t{16} * 1024;  // asked of the kernel at once
inline constexpr std::size_t passed_over_max = std::size_t{16} * 1024 * 1024;  // read to its end after a refusal

[[nodiscard]] inline bool over(Moment since, Moment now, int ms) { return now - since > std::chrono::milliseconds(ms); }

// So many at once, and so many a second after that.
class Allowance {
 public:
  Allowance(double a_second, double rush) : a_second_(a_second), rush_(rush), level_(rush), at_(Clock::now()) {}

  [[nodiscard]] bool take(Moment now) {
    level_ = std::min(rush_, level_ + a_second_ * std::chrono::duration<double>(now - at_).count());
    at_ = now;
    if (level_ < 1) {
      return false;
    }
    level_ -= 1;
    return true;
  }

 private:
  double a_second_;
  double rush_;
  double level_;
  Moment at_;
};

class Connection {
 public:
  Connection() = default;
  Connection(const Connection&) = delete;
  Connection& operator=(const Connection&) = delete;
  virtual ~Connection() = default;

  // Looks whether a time is over.
  virtual void check(Moment now) = 0;
  // Since when it holds a request that is not whole; nothing where it is of use to somebody.
  [[nodiscard]] virtual std::optional<Moment> half_since() const { return std::nullopt; }
  // Makes room: answered as one too many, and closed.
  virtual void give_way() {}
  // Sends the reply that was put off until now (Network::put_off).
  virtual void put_out() = 0;
  // Reads on, once all replies that were put off are out.
  virtual void read_on() = 0;
  // The program is going: say so where the protocol can, and end.
  virtual void stop() = 0;
  // Ends at once and lets go of whom it talks to; nothing of it runs any more.
  virtual void drop() = 0;
};

// One thread's network: everything here is touched by that thread alone.
struct Network {
  explicit Network(const NetLimits& limits_) : limits(limits_) {}

  NetLimits limits;
  NewConversation begin;
  // No locks: nothing but this thread runs it.
  boost::asio::io_context io{BOOST_ASIO_CONCURRENCY_HINT_UNSAFE};
  std::map<Connection*, std::shared_ptr<Connection>> connections;
  std::size_t refusals = 0;
  std::size_t giving_way = 0;  // of them there may be as many as there are connections
  bool stopping = false;

  // Whether somebody else asked since this one did last. Their replies then go out together: a write that wakes its reader costs as much
  // as the rest of a small call, and the second finds the reader awake. Who asks alone is answered at once.
  [[nodiscard]] bool others_ask(const Connection* asking) { return std::exchange(asked_last_, asking) != asking; }
  // Until what came in together is answered, and never past so many replies or so long, but for the call that is at work then.
  void put_off(std::shared_ptr<Connection> connection) {
    const Moment now = Clock::now();
    if (put_off_.empty()) {
      put_off_since_ = now;
      boost::asio::post(io, [this] { put_out(); });
    }
    put_off_.push_back(std::move(connection));
    if (put_off_.size() >= put_off_max || now - put_off_since_ > put_off_time) {
      put_out();
    }
  }

  void join(const std::shared_ptr<Connection>& connection) { connections.emplace(connection.get(), connection); }
  void leave(Connection* connection) { connections.erase(connection); }

 private:
  static constexpr std::size_t put_off_max = 16;
  static constexpr std::chrono::microseconds put_off_time{200};

  void put_out() {
    going_out_.swap(put_off_);
    for (const std::shared_ptr<Connection>& one : going_out_) {
      one->put_out();
    }
    // Not each after its own: while the others are sent, the next call of the first arrives, and need not be waited for.
    for (const std::shared_ptr<Connection>& one : going_out_) {
      one->read_on();
    }
    going_out_.clear();
  }

  const Connection* asked_last_ = nullptr;  // its name alone
  std::vector<std::shared_ptr<Connection>> put_off_;
  std::vector<std::shared_ptr<Connection>> going_out_;
  Moment put_off_since_;
};

// A new connection, which speaks HTTP first. `crowded`: one too many, to be told so and closed.
void begin_http(Network& network, Socket socket, bool crowded);
// Goes on as WebSocket; the handshake is checked as far as the answers differ from Beast's own.
void begin_websocket(Network& network, Socket socket, std::unique_ptr<Conversation> talk, const HttpRequest& request);

}  // namespace limbledger::rpc
