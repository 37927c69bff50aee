#include "rpc/transport/tls_stream.hpp"

#include <boost/asio/basic_socket_acceptor.hpp>
#include <boost/asio/posix/basic_stream_descriptor.hpp>

#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <set>
#include <utility>

namespace limbledger::rpc {

namespace {

namespace asio = boost::asio;
namespace http = boost::beast::http;
using TlsAcceptor = asio::basic_socket_acceptor<asio::ip::tcp, TlsExecutor>;
using TlsDescriptor = asio::posix::basic_stream_descriptor<TlsExecutor>;

constexpr std::chrono::milliseconds tls_accept_pause{50};

}  // namespace

class TlsVisit;

struct TlsVisiting {
  explicit TlsVisiting(const TlsLimits& limits_) : limits(limits_) {}

  TlsLimits limits;
  NewTlsConversation begin;
  asio::io_context io{BOOST_ASIO_CONCURRENCY_HINT_UNSAFE};
  asio::ssl::context tls{asio::ssl::context::tls_server};
  std::set<std::shared_ptr<TlsVisit>> visits;
  std::size_t unknown = 0;  // of them, callers that have not proved who they are
  bool stopping = false;
};

// One connection, message after message.
class TlsVisit : public std::enable_shared_from_this<TlsVisit> {
 public:
  TlsVisit(TlsVisiting& all, TlsSocket socket) : all_(all), stream_(std::move(socket), all.tls), timer_(all.io.get_executor()) { ++all_.unknown; }
  ~TlsVisit() { know(); }
  TlsVisit(const TlsVisit&) = delete;
  TlsVisit& operator=(const TlsVisit&) = delete;

  void start() {
    wait_at_most(all_.limits.handshake_ms);
    stream_.async_handshake(asio::ssl::stream_base::server, [self = shared_from_this()](TlsError failed) {
      const auto shared = failed ? std::nullopt : shared_of(self->stream_.native_handle());
      if (!shared || self->all_.stopping) {
        return self->close();
      }
      self->talk_ = self->all_.begin(*shared);
      self->talk_ ? self->read() : self->close();
    });
  }

  void close() {
    TlsError ignored;
    timer_.cancel();
    stream_.lowest_layer().close(ignored);
    talk_.reset();
    all_.visits.erase(shared_from_this());
  }

 private:
  const std::chrono::steady_clock::time_point began_ = std::chrono::steady_clock::now();

  void know() {
    all_.unknown -= is_known_ ? 0 : 1;
    is_known_ = true;
  }

  void wait_at_most(int ms) {
    timer_.expires_after(std::chrono::milliseconds(ms));
    timer_.async_wait([weak = weak_from_this()](TlsError failed) {
      if (const auto self = weak.lock(); self && !failed) {
        self->close();
      }
    });
  }

  // A stranger's time is not renewed by its messages, or a few of them would hold every place.
  [[nodiscard]] int may_wait_ms() const {
    if (talk_->waits_for_person()) {
      return all_.limits.person_ms;
    }
    const auto gone = std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - began_).count();
    return talk_->knows_caller() ? all_.limits.idle_ms : std::max(1, all_.limits.idle_ms - static_cast<int>(std::min<std::int64_t>(gone, all_.limits.idle_ms)));
  }

  void read() {
    parser_.emplace();
    parser_->header_limit(static_cast<std::uint32_t>(all_.limits.head_bytes));
    parser_->body_limit(talk_->knows_caller() ? all_.limits.message_bytes : all_.limits.unknown_bytes);
    wait_at_most(may_wait_ms());
    http::async_read_header(stream_, buffer_, *parser_, [self = shared_from_this()](TlsError failed, std::size_t) {
      if (failed) {
        return self->close();
      }
      self->wait_at_most(self->all_.limits.message_ms);
      http::async_read(self->stream_, self->buffer_, *self->parser_, [self](TlsError broken, std::size_t) {
        if (broken && broken != http::error::body_limit) {
          return self->close();
        }
        self->answer(broken == http::error::body_limit);
      });
    });
  }

  void answer(bool too_long) {
    const auto& request = parser_->get();
    TlsReply reply;
    bool goes_on = false;
    if (too_long) {
      reply.status = 413;
    } else if (request.method() != http::verb::post) {
      reply.status = 405;
    } else {
      const auto target = request.target();
      reply = talk_->post({target.data(), target.size()}, request.body());
      goes_on = request.keep_alive() && !all_.stopping;
    }
    if (talk_->knows_caller()) {
      know();
    }
    response_ = {};
    response_.version(11);
    response_.result(reply.status);
    response_.set(http::field::content_type, boost::beast::string_view(reply.type.data(), reply.type.size()));
    response_.set(http::field::cache_control, "no-store");
    response_.body() = std::move(reply.body);
    response_.keep_alive(goes_on);
    response_.prepare_payload();
    wait_at_most(all_.limits.message_ms);
    http::async_write(stream_, response_, [self = shared_from_this(), goes_on](TlsError failed, std::size_t) {
      if (failed || !goes_on || self->all_.stopping) {
        return self->close();
      }
      self->read();
    });
  }

  TlsVisiting& all_;
  TlsStream stream_;
  TlsTimer timer_;
  boost::beast::flat_buffer buffer_;
  std::optional<http::request_parser<TlsBody>> parser_;
  http::response<TlsBody> response_;
  std::unique_ptr<TlsConversation> talk_;
  bool is_known_ = false;
};

struct TlsListener::Inside {
  explicit Inside(const TlsLimits& limits) : visiting(limits), acceptor(visiting.io.get_executor()), stop(visiting.io.get_executor()), other(visiting.io.get_executor()) {}

  TlsVisiting visiting;
  TlsAcceptor acceptor;
  TlsDescriptor stop;
  TlsDescriptor other;

  void accept() {
    acceptor.async_accept([this](TlsError failed, TlsSocket socket) {
      if (visiting.stopping || failed == asio::error::operation_aborted) {
        return;
      }
      const bool crowded = visiting.visits.size() >= visiting.limits.connections || visiting.unknown >= visiting.limits.connections_unknown;
      if (!failed && !crowded) {
        TlsError ignored;
        socket.set_option(asio::ip::tcp::no_delay(true), ignored);
        const auto visit = std::make_shared<TlsVisit>(visiting, std::move(socket));
        visiting.visits.insert(visit);
        visit->start();
        return accept();
      }
      // One too many is let go; the caller tries again later.
      socket.close(failed);
      auto timer = std::make_shared<TlsTimer>(visiting.io.get_executor(), tls_accept_pause);
      timer->async_wait([this, timer](TlsError) {
        if (!visiting.stopping) {
          accept();
        }
      });
    });
  }

  void look_beside(const std::function<bool()>& ready) {
    other.async_wait(TlsDescriptor::wait_read, [this, &ready](TlsError failed) {
      if (failed || visiting.stopping) {
        return;
      }
      if (ready()) {
        look_beside(ready);
      }
    });
  }

  void end() {
    visiting.stopping = true;
    TlsError ignored;
    acceptor.close(ignored);
    for (const auto& visit : std::set<std::shared_ptr<TlsVisit>>(visiting.visits)) {
      visit->close();
    }
    visiting.io.stop();
  }
};

TlsListener::TlsListener(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}

TlsListener::~TlsListener() {
  // What still waited is told that it was given up, while what it speaks to is there.
  inside_->end();
  inside_->visiting.io.restart();
  inside_->visiting.io.poll();
}

std::unique_ptr<TlsListener> TlsListener::open(const std::string& address, std::uint16_t port, TlsSeed seed, const TlsLimits& limits, std::string& why) {
  TlsError failed;
  const auto at = asio::ip::make_address(address, failed);
  if (failed) {
    why = "not an address in numbers";
    return nullptr;
  }
  auto inside = std::make_unique<Inside>(limits);
  if (!hold_to_rules(inside->visiting.tls.native_handle()) || !show_key(inside->visiting.tls.native_handle(), seed)) {
    why = "the TLS library refuses what is asked of it";
    return nullptr;
  }
  TlsAcceptor& acceptor = inside->acceptor;
  const asio::ip::tcp::endpoint endpoint(at, port);
  acceptor.open(endpoint.protocol(), failed);
  if (!failed) {
    acceptor.set_option(asio::socket_base::reuse_address(true), failed);
  }
  if (!failed) {
    acceptor.bind(endpoint, failed);
  }
  if (!failed) {
    acceptor.listen(asio::socket_base::max_listen_connections, failed);
  }
  if (failed) {
    why = failed.message();
    return nullptr;
  }
  return std::unique_ptr<TlsListener>(new TlsListener(std::move(inside)));
}

std::uint16_t TlsListener::port() const { return inside_->acceptor.local_endpoint().port(); }

void TlsListener::run(const NewTlsConversation& begin, int stop, const Beside& beside) {
  Inside& in = *inside_;
  in.visiting.begin = begin;
  if (stop >= 0) {
    in.stop.assign(::dup(stop));
    in.stop.async_wait(TlsDescriptor::wait_read, [&in](TlsError failed) {
      if (!failed) {
        in.end();
      }
    });
  }
  if (beside.descriptor >= 0) {
    in.other.assign(::dup(beside.descriptor));
    in.look_beside(beside.ready);
  }
  in.accept();
  in.visiting.io.run();
}

}  // namespace limbledger::rpc
