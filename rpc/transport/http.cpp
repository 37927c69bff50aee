#include "rpc/transport/connection.hpp"
#include "rpc/transport/request_reader.hpp"

#include <boost/asio/post.hpp>
#include <boost/asio/write.hpp>
#include <boost/beast/core/flat_buffer.hpp>
#include <boost/beast/http/rfc7230.hpp>
#include <boost/beast/websocket/rfc6455.hpp>

#include <array>

namespace limbledger::rpc {

namespace {

namespace asio = boost::asio;
namespace beast = boost::beast;
namespace http = boost::beast::http;
using beast::http::field;

// A body of up to this size is copied behind its head: one piece costs the kernel less than two.
constexpr std::size_t joined_bytes_max = std::size_t{16} * 1024;
constexpr std::string_view continue_line = "HTTP/1.1 100 Continue\r\n\r\n";

[[nodiscard]] std::string_view plain(beast::string_view text) { return {text.data(), text.size()}; }

// One connection: request after request, each answered before the next is read. A reply is written at once, and only what the
// kernel does not take then is waited for.
class HttpConnection final : public Connection, public std::enable_shared_from_this<HttpConnection> {
 public:
  HttpConnection(Network& network, Socket socket)
      : network_(network),
        socket_(std::move(socket)),
        talk_(network.begin()),
        allowance_(network.limits.messages_a_second, network.limits.messages_rush),
        since_(Clock::now()) {
    ErrorCode ignored;  // a connection that broke is found by the first read
    socket_.non_blocking(true, ignored);
  }

  void start() {
    talk_->http_opened([weak = weak_from_this()](HttpReply reply) {
      const auto alive = weak.lock();
      if (alive && alive->phase_ == Phase::waiting && alive->write(std::move(reply), false)) {
        alive->go();
      }
    });
    read();
  }

  void start_crowded() {
    crowded_ = true;
    ++network_.refusals;
    refuse(talk_->http_trouble(Trouble::crowded, {}));
    if (!reading_ && phase_ != Phase::ended) {
      read();
    }
  }

  void check(Moment now) override {
    const NetLimits& limits = network_.limits;
    switch (phase_) {
      case Phase::idle:
        return over(since_, now, limits.idle_ms) ? end() : void();
      case Phase::head:
      case Phase::body:
        if (over(since_, now, phase_ == Phase::head ? limits.head_ms : limits.request_ms)) {
          refuse(talk_->http_trouble(Trouble::slow, {}));
        }
        return;
      case Phase::waiting:
        return talk_->look(false);
      case Phase::writing:
        return over(written_since_, now, limits.idle_ms) ? end() : void();
      case Phase::lingering:
        return over(written_since_, now, gives_way_ ? limits.give_way_ms : limits.linger_ms) ? end() : void();
      case Phase::ended:
        return;
    }
  }

  [[nodiscard]] std::optional<Moment> half_since() const override {
    const bool half = phase_ == Phase::head || phase_ == Phase::body || (phase_ == Phase::idle && !asked_);
    return half && !crowded_ && !gives_way_ ? std::optional(since_) : std::nullopt;
  }

  void give_way() override {
    if (network_.giving_way >= network_.limits.connections) {
      return end();
    }
    gives_way_ = true;
    ++network_.giving_way;
    refuse(talk_->http_trouble(Trouble::crowded, {}));
  }

  void stop() override {
    close_after_ = true;
    if (phase_ == Phase::waiting) {
      talk_->look(true);
    }
    if (phase_ != Phase::writing && phase_ != Phase::lingering) {
      end();
    }
  }

  void drop() override {
    end();
    talk_.reset();
  }

  void put_out() override { is_out_ = phase_ == Phase::writing && !on_its_way_ && put_out_now(); }
  void read_on() override {
    if (std::exchange(is_out_, false) && phase_ == Phase::idle) {
      go_on();
    }
  }

 private:
  enum class Phase : std::uint8_t { idle, head, body, waiting, writing, lingering, ended };

  void read() {
    reading_ = true;
    socket_.async_read_some(in_.prepare(read_bytes), [self = shared_from_this()](ErrorCode failed, std::size_t count) { self->take(failed, count); });
  }

  void take(ErrorCode failed, std::size_t count) {
    reading_ = false;
    if (phase_ == Phase::ended) {
      return;
    }
    if (phase_ == Phase::writing && !close_after_) {  // asked for while the reply waited
      in_.commit(count);
      close_after_ = static_cast<bool>(failed);
      return;
    }
    if (phase_ == Phase::writing || phase_ == Phase::lingering) {  // refused: what still comes is passed over, so that the refusal is read
      passed_over_ += count;
      if (!failed && passed_over_ <= passed_over_max) {
        return read();
      }
      return phase_ == Phase::lingering ? end() : void();
    }
    in_.commit(count);
    if (phase_ == Phase::waiting) {  // the next request, which has to wait, or the end
      close_after_ = close_after_ || failed;
      return failed ? talk_->look(true) : void();
    }
    if (failed == asio::error::eof && phase_ != Phase::idle) {
      return refuse(talk_->http_trouble(Trouble::malformed, {}));
    }
    if (failed) {
      return end();
    }
    go();
  }

  // Takes what is there as far as it goes.
  void go() {
    for (;;) {
      if (!parser_) {
        if (in_.size() == 0) {
          return reading_ ? void() : read();
        }
        begin_request();
      }
      ErrorCode failed;
      in_.consume(parser_->put(in_.data(), failed));
      if (failed == http::error::need_more) {
        return read();
      }
      if (failed) {
        return refuse_unread(failed);
      }
      if (phase_ == Phase::head && parser_->is_header_done() && !take_head()) {
        return phase_ == Phase::idle ? go_on() : void();
      }
      if (parser_->is_done()) {
        return answer() ? go_on() : void();
      }
      if (in_.size() == 0) {
        return read();
      }
    }
  }

  // The next request. Whoever sent several at once waits for it as others wait for theirs.
  void go_on() {
    if (in_.size() == 0) {
      return go();
    }
    asio::post(socket_.get_executor(), [self = shared_from_this()] {
      if (self->phase_ == Phase::idle) {
        self->go();
      }
    });
  }

  void begin_request() {
    parser_.emplace(request_);
    parser_->header_limit(static_cast<std::uint32_t>(network_.limits.head_bytes));
    parser_->body_limit(network_.limits.message_bytes);
    phase_ = Phase::head;
    since_ = Clock::now();
  }

  [[nodiscard]] HttpHead head() const {
    HttpHead head;
    head.method = request_.method();
    head.target = request_.target();
    head.host = request_.value(field::host);
    head.origin = request_.value(field::origin);
    head.content_type = request_.value(field::content_type);
    head.authorization = request_.value(field::authorization);
    head.fetch_site = request_.value(field::sec_fetch_site);
    head.preflight = request_.value(field::access_control_request_method);
    head.upgrade = request_.value(field::upgrade) && http::token_list(request_.text(field::upgrade)).exists("websocket");
    for (const field once : {field::host, field::origin, field::content_type, field::authorization}) {
      head.ambiguous = head.ambiguous || request_.twice(once);
    }
    return head;
  }

  // False: answered (and idle once the answer is out), or no longer HTTP.
  [[nodiscard]] bool take_head() {
    const HttpHead head = this->head();
    if (auto refused = talk_->head(head)) {
      if (!parser_->is_done()) {
        refuse(std::move(*refused));
        return false;
      }
      const bool unsure = refused->status == 400;  // what was no request may hide another
      static_cast<void>(write(std::move(*refused), unsure || !parser_->keep_alive()));
      return false;
    }
    if (head.upgrade) {
      upgrade();
      return false;
    }
    phase_ = Phase::body;
    if (!parser_->is_done() && in_.size() == 0 && beast::iequals(request_.text(field::expect), "100-continue")) {
      ErrorCode ignored;  // a connection that broke is found by the next read
      asio::write(socket_, asio::buffer(continue_line), ignored);
    }
    return true;
  }

  void upgrade() {
    // Beast would answer these with a page of text.
    if (request_.text(field::sec_websocket_version) != "13") {
      HttpReply refused = talk_->http_trouble(Trouble::malformed, {});
      refused.status = 426;
      refused.fields += "Upgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Version: 13\r\n";
      return refuse(std::move(refused));
    }
    HttpRequest request(parser_->verb(), request_.target(), parser_->http_version());
    for (const field name : {field::host, field::upgrade, field::connection, field::sec_websocket_key, field::sec_websocket_version}) {
      if (const auto value = request_.value(name)) {
        request.set(name, *value);
      }
    }
    if (!beast::websocket::is_upgrade(request) || request[field::sec_websocket_key].size() != 24 || !parser_->is_done() || in_.size() != 0) {
      return refuse(talk_->http_trouble(Trouble::malformed, {}));
    }
    phase_ = Phase::ended;
    network_.leave(this);
    begin_websocket(network_, std::move(socket_), std::move(talk_), request);
  }

  void refuse_unread(ErrorCode failed) {
    if (failed == http::error::body_limit) {
      // Who may not call at all is told that first.
      if (phase_ == Phase::head) {
        if (auto refused = talk_->head(head())) {
          return refuse(std::move(*refused));
        }
      }
      return refuse(talk_->http_trouble(Trouble::large_message, {}));
    }
    refuse(talk_->http_trouble(failed == http::error::header_limit ? Trouble::large_head : Trouble::malformed, {}));
  }

  // True: answered, and the next request may come.
  [[nodiscard]] bool answer() {
    asked_ = true;
    const std::string_view text = request_.body();
    const bool keep = parser_->keep_alive();
    if (!allowance_.take(Clock::now())) {
      refused_in_a_row_ += 1;
      return write(talk_->http_trouble(Trouble::often, text), !keep || refused_in_a_row_ >= network_.limits.refused_in_a_row);
    }
    refused_in_a_row_ = 0;
    HttpReply reply = talk_->body(text);
    if (reply.later) {
      close_after_ = close_after_ || !keep;
      phase_ = Phase::waiting;
      // So that a caller who goes away is seen. Nothing is read further than the next request's first bytes.
      if (in_.size() == 0) {
        read();
      }
      return false;
    }
    const bool out = write(std::move(reply), !keep, network_.others_ask(this));
    talk_->after_reply();
    return out && phase_ == Phase::idle;
  }

  // The rest of the request is not read, so the connection cannot go on.
  void refuse(HttpReply reply) { static_cast<void>(write(std::move(reply), true)); }

  // True: all of it is out, and the next request may come. Else `written` or `put_out` goes on where that is still to be.
  [[nodiscard]] bool write(HttpReply reply, bool close, bool put_off = false) {
    close_after_ = close_after_ || close;
    phase_ = Phase::writing;
    written_since_ = Clock::now();
    out_.clear();
    if (reply.status == 200) {
      out_ += "HTTP/1.1 200 OK\r\n";
    } else {
      out_ += "HTTP/1.1 " + std::to_string(reply.status) + " " + std::string(plain(http::obsolete_reason(static_cast<http::status>(reply.status)))) + "\r\n";
    }
    if (reply.status != 204) {
      out_ += "Content-Type: ";
      out_ += reply.type;
      out_ += "\r\nContent-Length: ";
      out_ += std::to_string(reply.body.size());
      out_ += "\r\n";
    }
    out_ += "Cache-Control: no-store\r\nX-Content-Type-Options: nosniff\r\n";
    out_ += reply.fields;
    if (close_after_ && reply.status != 426) {
      out_ += "Connection: close\r\n";
    }
    out_ += "\r\n";
    body_ = std::move(reply.body);
    // A HEAD is answered as the same GET would be, without the body.
    if (parser_ && parser_->is_header_done() && parser_->verb() == http::verb::head) {
      body_.clear();
    }
    if (body_.size() <= joined_bytes_max) {
      out_ += body_;
      body_.clear();
    }
    on_its_way_ = false;
    if (put_off) {
      network_.put_off(shared_from_this());
      return false;
    }
    return put_out_now();
  }

  [[nodiscard]] bool put_out_now() {
    ErrorCode failed;
    const std::array<asio::const_buffer, 2> both{asio::buffer(out_), asio::buffer(body_)};
    const std::size_t count = body_.empty() ? socket_.write_some(both[0], failed) : socket_.write_some(both, failed);
    if (failed && failed != asio::error::would_block) {
      end();
      return false;
    }
    const std::size_t went = failed ? 0 : count;
    if (went == out_.size() + body_.size()) {
      return finish();
    }
    const std::size_t of_head = std::min(went, out_.size());
    on_its_way_ = true;
    const std::array<asio::const_buffer, 2> rest{both[0] + of_head, both[1] + (went - of_head)};
    asio::async_write(socket_, rest, [self = shared_from_this()](ErrorCode broke, std::size_t) { self->written(broke); });
    return false;
  }

  void written(ErrorCode failed) {
    if (phase_ == Phase::ended) {
      return;
    }
    if (failed) {
      return end();
    }
    if (finish()) {
      go();
    }
  }

  // The reply is out.
  [[nodiscard]] bool finish() {
    if (close_after_) {
      linger();
      return false;
    }
    parser_.reset();
    body_ = std::string();
    phase_ = Phase::idle;
    since_ = Clock::now();
    return true;
  }

  // A socket closed with bytes unread resets the connection, and the reply would be lost with it.
  void linger() {
    phase_ = Phase::lingering;
    written_since_ = Clock::now();
    ErrorCode ignored;
    socket_.shutdown(asio::socket_base::shutdown_send, ignored);
    if (!reading_) {
      read();
    }
  }

  void end() {
    if (phase_ == Phase::ended) {
      return;
    }
    phase_ = Phase::ended;
    if (crowded_) {
      --network_.refusals;
    }
    if (gives_way_) {
      --network_.giving_way;
    }
    ErrorCode ignored;
    socket_.close(ignored);
    network_.leave(this);
  }

  Network& network_;
  Socket socket_;
  std::unique_ptr<Conversation> talk_;
  Allowance allowance_;
  beast::flat_buffer in_;
  KeptRequest request_;
  std::optional<RequestReader> parser_;
  std::string out_;
  std::string body_;
  Phase phase_ = Phase::idle;
  Moment since_;          // the connection fell idle, or the request began
  Moment written_since_;
  std::size_t passed_over_ = 0;
  std::size_t refused_in_a_row_ = 0;
  bool close_after_ = false;
  bool crowded_ = false;
  bool gives_way_ = false;
  bool asked_ = false;  // a whole request came
  bool reading_ = false;
  bool is_out_ = false;      // the reply that was put off, and it may read on
  bool on_its_way_ = false;  // of what is written, the kernel has taken a part
};

}  // namespace

void begin_http(Network& network, Socket socket, bool crowded) {
  const auto connection = std::make_shared<HttpConnection>(network, std::move(socket));
  network.join(connection);
  crowded ? connection->start_crowded() : connection->start();
}

}  // namespace limbledger::rpc
