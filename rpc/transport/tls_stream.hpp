// What both ends of TLS share: the stream's types, the context with the device's key, the key of the other side and the value that
// both share. Included by tls_listener.cpp and tls_caller.cpp alone, which see OpenSSL.
#pragma once

#include "rpc/transport/tls.hpp"

#include <boost/asio/basic_waitable_timer.hpp>
#include <boost/asio/io_context.hpp>
#include <boost/asio/ip/tcp.hpp>
#include <boost/asio/ssl/context.hpp>
#include <boost/asio/ssl/stream.hpp>
#include <boost/beast/core/flat_buffer.hpp>
#include <boost/beast/http/parser.hpp>
#include <boost/beast/http/read.hpp>
#include <boost/beast/http/vector_body.hpp>
#include <boost/beast/http/write.hpp>

#include <openssl/evp.h>
#include <openssl/ssl.h>
#include <openssl/x509.h>

#include <chrono>
#include <memory>

namespace limbledger::rpc {

using TlsExecutor = boost::asio::io_context::executor_type;
using TlsSocket = boost::asio::basic_stream_socket<boost::asio::ip::tcp, TlsExecutor>;
using TlsStream = boost::asio::ssl::stream<TlsSocket>;
using TlsTimer = boost::asio::basic_waitable_timer<std::chrono::steady_clock, boost::asio::wait_traits<std::chrono::steady_clock>, TlsExecutor>;
using TlsBody = boost::beast::http::vector_body<std::uint8_t>;
using TlsError = boost::system::error_code;

template <class Part, void (*Free)(Part*)>
struct TlsFree {
  void operator()(Part* part) const { Free(part); }
};
using EvpKey = std::unique_ptr<EVP_PKEY, TlsFree<EVP_PKEY, EVP_PKEY_free>>;
using Certificate = std::unique_ptr<X509, TlsFree<X509, X509_free>>;

// TLS 1.3, Ed25519, nothing resumed. False where the library does not do it.
[[nodiscard]] inline bool hold_to_rules(SSL_CTX* context) {
  SSL_CTX_set_session_cache_mode(context, SSL_SESS_CACHE_OFF);
  SSL_CTX_set_options(context, SSL_OP_NO_TICKET | SSL_OP_NO_RENEGOTIATION);
  return SSL_CTX_set_min_proto_version(context, TLS1_3_VERSION) == 1 && SSL_CTX_set_max_proto_version(context, TLS1_3_VERSION) == 1 &&
         SSL_CTX_set_num_tickets(context, 0) == 1 && SSL_CTX_set1_sigalgs_list(context, "ed25519") == 1;
}

// The certificate holds the key, and otherwise as little as one can: no name, and dates that nobody looks at.
[[nodiscard]] inline bool show_key(SSL_CTX* context, TlsSeed seed) {
  const EvpKey key(EVP_PKEY_new_raw_private_key(EVP_PKEY_ED25519, nullptr, seed.data(), seed.size()));
  const Certificate made(X509_new());
  if (!key || !made) {
    return false;
  }
  return X509_set_version(made.get(), 2) == 1 && ASN1_INTEGER_set(X509_get_serialNumber(made.get()), 1) == 1 &&
         ASN1_TIME_set_string_X509(X509_getm_notBefore(made.get()), "19700101000000Z") == 1 &&
         ASN1_TIME_set_string_X509(X509_getm_notAfter(made.get()), "99991231235959Z") == 1 && X509_set_pubkey(made.get(), key.get()) == 1 &&
         X509_sign(made.get(), key.get(), nullptr) > 0 && SSL_CTX_use_certificate(context, made.get()) == 1 && SSL_CTX_use_PrivateKey(context, key.get()) == 1;
}

[[nodiscard]] inline std::optional<TlsKey> key_in(X509* certificate) {
  EVP_PKEY* key = certificate == nullptr ? nullptr : X509_get0_pubkey(certificate);
  TlsKey out{};
  std::size_t size = out.size();
  if (key == nullptr || EVP_PKEY_get_base_id(key) != EVP_PKEY_ED25519 || EVP_PKEY_get_raw_public_key(key, out.data(), &size) != 1 || size != out.size()) {
    return std::nullopt;
  }
  return out;
}

// RFC 9266: what both ends of this connection share and nobody else.
[[nodiscard]] inline std::optional<TlsShared> shared_of(SSL* connection) {
  static constexpr std::string_view label = "EXPORTER-Channel-Binding";
  TlsShared out{};
  if (SSL_export_keying_material(connection, out.data(), out.size(), label.data(), label.size(), nullptr, 0, 1) != 1) {
    return std::nullopt;
  }
  return out;
}

}  // namespace limbledger::rpc
