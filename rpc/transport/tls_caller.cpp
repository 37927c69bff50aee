#include "rpc/transport/tls_stream.hpp"

#include <boost/asio/connect.hpp>

#include <algorithm>
#include <chrono>
#include <utility>

namespace limbledger::rpc {

// What the check of the other side's certificate needs and finds.
struct TlsPeer {
  std::optional<TlsKey> pinned;
  std::optional<TlsKey> shown;
};

namespace {

namespace asio = boost::asio;
namespace http = boost::beast::http;

constexpr std::chrono::milliseconds given_up_look{100};

// In the place of the library's own check: no chain, no name, no date; the key alone, which the handshake has proved.
int look_at_key(X509_STORE_CTX* store, void* peer) {
  TlsPeer& to = *static_cast<TlsPeer*>(peer);
  to.shown = key_in(X509_STORE_CTX_get0_cert(store));
  const bool good = to.shown && (!to.pinned || *to.pinned == *to.shown);
  X509_STORE_CTX_set_error(store, good ? X509_V_OK : X509_V_ERR_CERT_REJECTED);
  return good ? 1 : 0;
}

}  // namespace

struct TlsCaller::Inside {
  Inside(const TlsLimits& limits_, const std::string& host_, const std::optional<TlsKey>& pinned, const std::atomic<bool>* given_up_)
      : limits(limits_), host(host_), given_up(given_up_), peer{pinned, std::nullopt}, ready(prepare()), stream(io.get_executor(), tls) {}

  TlsLimits limits;
  std::string host;
  const std::atomic<bool>* given_up;
  TlsPeer peer;
  asio::io_context io{BOOST_ASIO_CONCURRENCY_HINT_UNSAFE};
  asio::ssl::context tls{asio::ssl::context::tls_client};
  bool ready;
  TlsStream stream;
  TlsKey key{};
  TlsShared shared{};
  boost::beast::flat_buffer buffer;

  [[nodiscard]] bool prepare() {
    SSL_CTX* context = tls.native_handle();
    SSL_CTX_set_verify(context, SSL_VERIFY_PEER, nullptr);
    SSL_CTX_set_cert_verify_callback(context, look_at_key, &peer);
    return hold_to_rules(context);
  }

  // Runs what was begun to its end, or until the time is over or nobody wants it any more.
  [[nodiscard]] bool finish(const std::optional<TlsError>& done, int ms, std::string& why) {
    const auto until = std::chrono::steady_clock::now() + std::chrono::milliseconds(ms);
    const auto is_given_up = [this] { return given_up != nullptr && *given_up; };
    io.restart();
    while (!done && !is_given_up() && std::chrono::steady_clock::now() < until) {
      io.run_until(std::min(until, std::chrono::steady_clock::now() + given_up_look));
    }
    if (!done) {
      why = is_given_up() ? "ended here" : "no answer in time";
      TlsError ignored;
      stream.lowest_layer().close(ignored);
      io.restart();
      io.run();
      return false;
    }
    if (*done) {
      // The machine is there: a clinic's program opens this port when somebody has unlocked it, and not before.
      why = *done == asio::error::connection_refused ? "that machine is there, but the clinic's program is not running on it, or is locked since it started" : done->message();
    }
    return !*done;
  }
};

TlsCaller::TlsCaller(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}

TlsCaller::~TlsCaller() = default;

std::unique_ptr<TlsCaller> TlsCaller::connect(const std::string& host, std::uint16_t port, const std::optional<TlsKey>& pinned, const TlsLimits& limits,
                                              std::string& why, bool& is_other_key, const std::atomic<bool>* given_up) {
  is_other_key = false;
  auto inside = std::make_unique<Inside>(limits, host, pinned, given_up);
  Inside& in = *inside;
  if (!in.ready) {
    why = "the TLS library refuses what is asked of it";
    return nullptr;
  }
  TlsError failed;
  asio::ip::basic_resolver<asio::ip::tcp, TlsExecutor> resolver(in.io.get_executor());
  const auto found = resolver.resolve(host, std::to_string(port), failed);
  if (failed) {
    why = failed.message();
    return nullptr;
  }
  std::optional<TlsError> done;
  asio::async_connect(in.stream.lowest_layer(), found, [&done](TlsError broken, const asio::ip::tcp::endpoint&) { done = broken; });
  if (!in.finish(done, limits.handshake_ms, why)) {
    return nullptr;
  }
  in.stream.lowest_layer().set_option(asio::ip::tcp::no_delay(true), failed);
  done.reset();
  in.stream.async_handshake(asio::ssl::stream_base::client, [&done](TlsError broken) { done = broken; });
  if (!in.finish(done, limits.handshake_ms, why)) {
    is_other_key = in.peer.shown && in.peer.pinned && *in.peer.shown != *in.peer.pinned;
    return nullptr;
  }
  const auto shared = shared_of(in.stream.native_handle());
  if (!shared || !in.peer.shown) {
    why = "the TLS library refuses what is asked of it";
    return nullptr;
  }
  in.key = *in.peer.shown;
  in.shared = *shared;
  return std::unique_ptr<TlsCaller>(new TlsCaller(std::move(inside)));
}

const TlsKey& TlsCaller::key() const { return inside_->key; }
const TlsShared& TlsCaller::shared() const { return inside_->shared; }

std::optional<TlsReply> TlsCaller::post(std::string_view target, std::span<const std::uint8_t> body, std::string& why, const std::function<bool()>& meanwhile) {
  Inside& in = *inside_;
  http::request<TlsBody> request;
  request.version(11);
  request.method(http::verb::post);
  request.target(boost::beast::string_view(target.data(), target.size()));
  request.set(http::field::host, in.host);
  request.set(http::field::content_type, "application/octet-stream");
  request.body().assign(body.begin(), body.end());
  request.prepare_payload();
  std::optional<TlsError> done;
  http::async_write(in.stream, request, [&done](TlsError broken, std::size_t) { done = broken; });
  if (!in.finish(done, in.limits.message_ms, why)) {
    return std::nullopt;
  }
  if (meanwhile && !meanwhile()) {
    return std::nullopt;
  }
  http::response_parser<TlsBody> parser;
  parser.header_limit(static_cast<std::uint32_t>(in.limits.head_bytes));
  parser.body_limit(in.limits.message_bytes);
  done.reset();
  http::async_read(in.stream, in.buffer, parser, [&done](TlsError broken, std::size_t) { done = broken; });
  if (!in.finish(done, in.limits.message_ms, why)) {
    return std::nullopt;
  }
  TlsReply out;
  out.status = parser.get().result_int();
  out.type = parser.get()[http::field::content_type] == "application/json" ? "application/json" : "application/octet-stream";
  out.body = std::move(parser.get().body());
  return out;
}

}  // namespace limbledger::rpc
