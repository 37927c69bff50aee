#include "rpc/transport/connection.hpp"
#include "rpc/transport/socket_frames.hpp"

#include <boost/asio/post.hpp>
#include <boost/beast/websocket/stream.hpp>

namespace limbledger::rpc {

namespace {

namespace asio = boost::asio;
namespace websocket = boost::beast::websocket;

constexpr std::size_t unread_bytes_max = std::size_t{16} * 1024 * 1024;
constexpr std::size_t kept_bytes_max = std::size_t{64} * 1024;
constexpr std::uint16_t close_going = 1001;
constexpr std::uint16_t close_policy = 1008;

// One WebSocket: message after message, each answered before the next is read; what is sent unasked waits its turn. A reply is
// written at once, and only what the kernel does not take then is waited for: a call costs one wait, one read and one write.
class SocketConnection final : public Connection, public std::enable_shared_from_this<SocketConnection> {
 public:
  SocketConnection(Network& network, Socket socket, std::unique_ptr<Conversation> talk)
      : network_(network),
        socket_(std::move(socket)),
        talk_(std::move(talk)),
        frames_(network.limits.message_bytes),
        allowance_(network.limits.messages_a_second, network.limits.messages_rush),
        opened_at_(Clock::now()),
        heard_at_(opened_at_) {}

  void start(const HttpRequest& request) {
    ErrorCode failed;
    socket_.non_blocking(true, failed);
    if (!failed) {
      websocket::stream<Socket&, false> greeter(socket_);  // without deflate: nothing here goes over a slow line
      greeter.accept(request, failed);
    }
    if (failed) {
      return end();
    }
    open_ = true;
    talk_->socket_opened([weak = weak_from_this()](std::string text) {
      if (const auto alive = weak.lock()) {
        alive->send(text);
      }
    });
    read();
  }

  void check(Moment now) override {
    const NetLimits& limits = network_.limits;
    if (said_goodbye_) {
      return over(said_goodbye_at_, now, limits.linger_ms) ? end() : void();
    }
    if (over(heard_at_, now, limits.socket_idle_ms)) {
      return end();
    }
    if (!asked_for_life_ && over(heard_at_, now, limits.socket_idle_ms / 2)) {
      asked_for_life_ = true;
      put(SocketOpcode::ping, {});
    }
    if (open_ && !talk_->admitted() && over(opened_at_, now, limits.session_ms)) {
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

  void put_out() override {
    is_put_off_ = false;
    if (!out_.empty()) {
      write();
    }
  }
  void read_on() override { go_on(); }

 private:
  void read() {
    if (reading_ || ended_) {
      return;
    }
    reading_ = true;
    const std::span<char> room = frames_.room(read_bytes);
    socket_.async_read_some(asio::buffer(room.data(), room.size()), [self = shared_from_this()](ErrorCode failed, std::size_t count) { self->take(failed, count); });
  }

  void take(ErrorCode failed, std::size_t count) {
    reading_ = false;
    if (ended_) {
      return;
    }
    if (failed) {  // closed by the other side, or broken
      return end();
    }
    heard_at_ = Clock::now();
    asked_for_life_ = false;
    frames_.came(count);
    if (said_goodbye_ && (passed_over_ += count) > passed_over_max) {
      return end();
    }
    go();
  }

  // Takes what is there: up to one message that is answered, so that nobody who sends many at once keeps the others waiting.
  void go() {
    while (!ended_ && !writing_) {
      switch (frames_.next()) {
        case SocketEvent::nothing:
          return read();
        case SocketEvent::text:
          if (!said_goodbye_) {
            answer(frames_.payload());
            return go_on();
          }
          break;
        case SocketEvent::binary:
          trouble(Trouble::binary);
          break;
        case SocketEvent::too_large:
          trouble(Trouble::large_message);
          break;
        case SocketEvent::ping:
          if (!said_goodbye_) {
            put(SocketOpcode::pong, frames_.payload());
          }
          break;
        case SocketEvent::pong:
          break;
        case SocketEvent::close:
        case SocketEvent::broken:
          close(frames_.code());
          hang_up();
          break;
      }
    }
  }

  void go_on() {
    if (ended_ || writing_ || is_put_off_) {
      return;
    }
    if (!frames_.holds_more()) {
      return read();
    }
    // Once: a reply that was put off may have gone out, and been followed by reading, within the call that put it off.
    if (!std::exchange(is_posted_, true)) {
      asio::post(socket_.get_executor(), [self = shared_from_this()] {
        self->is_posted_ = false;
        self->go();
      });
    }
  }

  void answer(std::string_view text) {
    if (!allowance_.take(heard_at_)) {
      SocketReply refused = talk_->socket_trouble(Trouble::often, text);
      if (++refused_in_a_row_ >= network_.limits.refused_in_a_row) {
        refused.close = close_policy;
      }
      return say(refused);
    }
    refused_in_a_row_ = 0;
    const SocketReply reply = talk_->message(text);
    if (reply.text && reply.close == 0 && !writing_ && !ended_ && !said_goodbye_ && network_.others_ask(this)) {
      add_frame(out_, SocketOpcode::text, *reply.text);
      is_put_off_ = true;
      network_.put_off(shared_from_this());
    } else {
      say(reply);
    }
    talk_->after_reply();
  }

  void trouble(Trouble trouble) {
    if (!said_goodbye_) {
      say(talk_->socket_trouble(trouble, {}));
    }
  }

  void say(const SocketReply& reply) {
    if (said_goodbye_) {
      return;
    }
    if (reply.text) {
      put(SocketOpcode::text, *reply.text);
    }
    if (reply.close != 0) {
      close(reply.close);
    }
  }

  void send(const std::string& text) {
    if (!open_ || said_goodbye_) {
      return;
    }
    if (out_.size() + waiting_.size() + text.size() > unread_bytes_max) {  // nobody reads there
      return end();
    }
    put(SocketOpcode::text, text);
  }

  void close(std::uint16_t code) {
    if (said_goodbye_ || ended_) {
      return;
    }
    said_goodbye_ = true;
    said_goodbye_at_ = Clock::now();
    add_close(writing_ ? waiting_ : out_, code);
    write();
  }

  // Both have said goodbye, or nothing can follow: the other side is to close, and is not reset while it reads.
  void hang_up() {
    hung_up_ = true;
    if (!writing_ && !ended_) {
      ErrorCode ignored;
      socket_.shutdown(asio::socket_base::shutdown_send, ignored);
    }
  }

  void put(SocketOpcode opcode, std::string_view payload) {
    if (!ended_) {
      add_frame(writing_ ? waiting_ : out_, opcode, payload);
      write();
    }
  }

  void write() {
    if (writing_ || ended_) {
      return;
    }
    ErrorCode failed;
    const std::size_t count = socket_.write_some(asio::buffer(out_), failed);
    if (failed && failed != asio::error::would_block) {
      return end();
    }
    written_ = failed ? 0 : count;
    if (written_ < out_.size()) {
      writing_ = true;
      return write_rest();
    }
    let_go_of_sent();
  }

  // The bytes on their way stay where they are: what is to be sent after them gathers in `waiting_`.
  void write_rest() {
    socket_.async_write_some(asio::const_buffer(out_.data() + written_, out_.size() - written_), [self = shared_from_this()](ErrorCode failed, std::size_t count) {
      if (self->ended_) {
        return;
      }
      if (failed) {
        return self->end();
      }
      self->written_ += count;
      if (self->written_ == self->out_.size()) {
        self->let_go_of_sent();
        self->written_ = 0;
        self->out_.swap(self->waiting_);
      }
      if (!self->out_.empty()) {
        return self->write_rest();
      }
      self->writing_ = false;
      if (self->hung_up_) {
        self->hang_up();
      }
      self->go();
    });
  }

  void let_go_of_sent() {
    if (out_.capacity() > kept_bytes_max) {
      out_ = std::string();
    }
    out_.clear();
  }

  void end() {
    if (ended_) {
      return;
    }
    ended_ = true;
    open_ = false;
    ErrorCode ignored;
    socket_.close(ignored);
    network_.leave(this);
  }

  Network& network_;
  Socket socket_;
  std::unique_ptr<Conversation> talk_;
  SocketFrames frames_;
  Allowance allowance_;
  std::string out_;            // frames on their way
  std::size_t written_ = 0;    // so much of them has gone
  std::string waiting_;        // what follows them
  std::size_t passed_over_ = 0;
  Moment opened_at_;
  Moment heard_at_;
  Moment said_goodbye_at_;
  std::size_t refused_in_a_row_ = 0;
  bool open_ = false;
  bool reading_ = false;
  bool is_put_off_ = false;  // a reply: `read_on` comes
  bool is_posted_ = false;   // `go`
  bool writing_ = false;
  bool asked_for_life_ = false;
  bool said_goodbye_ = false;
  bool hung_up_ = false;
  bool ended_ = false;
};

}  // namespace

void begin_websocket(Network& network, Socket socket, std::unique_ptr<Conversation> talk, const HttpRequest& request) {
  const auto connection = std::make_shared<SocketConnection>(network, std::move(socket), std::move(talk));
  network.join(connection);
  connection->start(request);
}

}  // namespace limbledger::rpc
