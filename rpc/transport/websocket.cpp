#include "rpc/transport/connection.hpp"

#include <boost/beast/core/flat_buffer.hpp>
#include <boost/beast/websocket/stream.hpp>

#include <deque>

namespace limbledger::rpc {

namespace {

namespace asio = boost::asio;
namespace beast = boost::beast;
namespace websocket = boost::beast::websocket;

constexpr std::size_t unread_bytes_max = std::size_t{16} * 1024 * 1024;
constexpr std::uint16_t close_going = 1001;
constexpr std::uint16_t close_policy = 1008;

// One WebSocket: message after message, each answered before the next is read; what is sent unasked waits its turn.
class SocketConnection final : public Connection, public std::enable_shared_from_this<SocketConnection> {
 public:
  SocketConnection(Network& network, Socket socket, std::unique_ptr<Conversation> talk)
      : network_(network),
        socket_(std::move(socket)),
        talk_(std::move(talk)),
        allowance_(network.limits.messages_a_second, network.limits.messages_rush),
        opened_at_(Clock::now()) {}

  void start(const HttpRequest& request) {
    websocket::stream_base::timeout times{};
    times.handshake_timeout = std::chrono::milliseconds(network_.limits.linger_ms);
    times.idle_timeout = std::chrono::milliseconds(network_.limits.socket_idle_ms);
    times.keep_alive_pings = true;
    socket_.set_option(times);
    socket_.read_message_max(0);  // looked at below, so that the answer comes before the end
    socket_.auto_fragment(false);
    socket_.text(true);
    socket_.async_accept(request, [self = shared_from_this()](ErrorCode failed) {
      if (failed) {
        return self->end();
      }
      self->open_ = true;
      self->opened_at_ = Clock::now();
      self->talk_->socket_opened([weak = self->weak_from_this()](std::string text) {
        if (const auto alive = weak.lock()) {
          alive->send(std::move(text));
        }
      });
      self->pump();
    });
  }

  void check(Moment now) override {
    if (open_ && close_ == 0 && !talk_->admitted() && over(opened_at_, now, network_.limits.session_ms)) {
      return say(talk_->socket_trouble(Trouble::silent, {}));
    }
    talk_->look(false);
  }

  void stop() override {
    if (!open_) {
      return end();
    }
    talk_->look(true);
    say({std::nullopt, close_going});
  }

  void drop() override {
    end();
    talk_.reset();
  }

 private:
  void read() {
    reading_ = true;
    socket_.async_read_some(in_, read_bytes, [self = shared_from_this()](ErrorCode failed, std::size_t) { self->take(failed); });
  }

  void take(ErrorCode failed) {
    reading_ = false;
    if (failed) {  // closed by the other side, broken, or silent too long; Beast has sent the close code where there is one
      return closing_ ? void() : end();
    }
    if (close_ != 0) {
      return pump();
    }
    if (in_.size() > network_.limits.message_bytes) {
      in_.clear();
      in_.shrink_to_fit();
      return say(talk_->socket_trouble(Trouble::large_message, {}));
    }
    if (!socket_.is_message_done()) {
      return read();
    }
    if (!socket_.got_text()) {
      return say(talk_->socket_trouble(Trouble::binary, {}));
    }
    answer();
  }

  void answer() {
    const std::string_view text(static_cast<const char*>(in_.cdata().data()), in_.size());
    if (!allowance_.take(Clock::now())) {
      SocketReply refused = talk_->socket_trouble(Trouble::often, text);
      in_.clear();
      if (++refused_in_a_row_ >= network_.limits.refused_in_a_row) {
        refused.close = close_policy;
      }
      return say(std::move(refused));
    }
    refused_in_a_row_ = 0;
    SocketReply reply = talk_->message(text);
    in_.clear();
    say(std::move(reply));
    talk_->after_reply();
  }

  void say(SocketReply reply) {
    if (close_ == 0) {
      close_ = reply.close;
    }
    if (reply.text) {
      waiting_bytes_ += reply.text->size();
      waiting_.push_back(std::move(*reply.text));
    }
    pump();
  }

  void send(std::string text) {
    if (!open_ || close_ != 0) {
      return;
    }
    if (waiting_bytes_ + text.size() > unread_bytes_max) {  // nobody reads there
      return end();
    }
    say({std::move(text), 0});
  }

  void pump() {
    if (writing_ || ended_) {
      return;
    }
    if (!waiting_.empty()) {
      writing_ = true;
      socket_.async_write(asio::buffer(waiting_.front()), [self = shared_from_this()](ErrorCode failed, std::size_t) {
        self->writing_ = false;
        if (failed) {
          return self->end();
        }
        self->waiting_bytes_ -= self->waiting_.front().size();
        self->waiting_.pop_front();
        self->pump();
      });
    } else if (close_ != 0) {
      if (!closing_) {
        closing_ = true;
        socket_.async_close(websocket::close_reason(close_), [self = shared_from_this()](ErrorCode) { self->end(); });
      }
    } else if (!reading_) {
      read();
    }
  }

  void end() {
    if (ended_) {
      return;
    }
    ended_ = true;
    open_ = false;
    ErrorCode ignored;
    socket_.next_layer().close(ignored);
    network_.leave(this);
  }

  Network& network_;
  websocket::stream<Socket, false> socket_;  // without deflate: nothing here goes over a slow line
  std::unique_ptr<Conversation> talk_;
  Allowance allowance_;
  beast::flat_buffer in_;
  std::deque<std::string> waiting_;  // to be sent; the first is on its way while `writing_`
  std::size_t waiting_bytes_ = 0;
  Moment opened_at_;
  std::size_t refused_in_a_row_ = 0;
  std::uint16_t close_ = 0;
  bool open_ = false;
  bool reading_ = false;
  bool writing_ = false;
  bool closing_ = false;
  bool ended_ = false;
};

}  // namespace

void begin_websocket(Network& network, Socket socket, std::unique_ptr<Conversation> talk, const HttpRequest& request) {
  const auto connection = std::make_shared<SocketConnection>(network, std::move(socket), std::move(talk));
  network.join(connection);
  connection->start(request);
}

}  // namespace limbledger::rpc
