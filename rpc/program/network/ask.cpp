#include "rpc/program/network/ask.hpp"

#include "core/wire/parse.hpp"
#include "core/wire/read.hpp"
#include "rpc/access/visit.hpp"
#include "rpc/program/network/discovery.hpp"
#include "rpc/program/problem.hpp"

#include <netdb.h>
#include <sys/socket.h>
#include <sys/time.h>
#include <unistd.h>

#include <array>
#include <charconv>
#include <optional>

namespace limbledger::rpc {

namespace {

constexpr std::size_t sidecar_bytes_max = 65536;
constexpr std::size_t answer_bytes_max = std::size_t{4} << 20U;
constexpr std::string_view before_port = "http://127.0.0.1:";

[[nodiscard]] Problem nothing_serves(const Folder& folder) {
  return {ExitCode::unavailable, folder.path + ": no program serves this ledger over HTTP\n  what to do: start it with: limbledger serve --ledger DIR --http 0"};
}

[[nodiscard]] Sidecar read_sidecar(const Folder& folder) {
  const auto text = read_file(folder.file("sidecar.json"), sidecar_bytes_max);
  auto sidecar = text ? wire::read_text<Sidecar>(*text) : Result<Sidecar>(wire::Fault{"ledger.none", ""});
  if (!sidecar || sidecar->tokens.empty() || !sidecar->http.text.starts_with(before_port)) {
    throw nothing_serves(folder);
  }
  return std::move(*sidecar);
}

[[nodiscard]] std::uint16_t sidecar_port(const Sidecar& sidecar) {
  std::uint16_t port = 0;
  const std::string_view digits = std::string_view(sidecar.http.text).substr(before_port.size());
  std::from_chars(digits.data(), digits.data() + digits.size(), port);
  return port;
}

class OneCall {
 public:
  explicit OneCall(std::uint16_t port) : file_(::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0)) {
    const timeval patience{10, 0};
    ::setsockopt(file_, SOL_SOCKET, SO_RCVTIMEO, &patience, sizeof patience);
    ::setsockopt(file_, SOL_SOCKET, SO_SNDTIMEO, &patience, sizeof patience);
    addrinfo wanted{};
    wanted.ai_family = AF_INET;
    wanted.ai_socktype = SOCK_STREAM;
    wanted.ai_flags = AI_NUMERICHOST | AI_NUMERICSERV;  // nobody is asked for a name
    addrinfo* found = nullptr;
    if (::getaddrinfo("127.0.0.1", std::to_string(port).c_str(), &wanted, &found) == 0) {
      open_ = file_ >= 0 && ::connect(file_, found->ai_addr, found->ai_addrlen) == 0;
      ::freeaddrinfo(found);
    }
  }
  ~OneCall() {
    if (file_ >= 0) {
      ::close(file_);
    }
  }
  OneCall(const OneCall&) = delete;
  OneCall& operator=(const OneCall&) = delete;

  // All of the answer, which ends with the connection; nothing where none came.
  [[nodiscard]] std::optional<std::string> ask(std::string_view request) const {
    while (open_ && !request.empty()) {
      const ssize_t sent = ::send(file_, request.data(), request.size(), MSG_NOSIGNAL);
      if (sent <= 0) {
        return std::nullopt;
      }
      request.remove_prefix(static_cast<std::size_t>(sent));
    }
    std::string all;
    std::array<char, 16384> piece{};
    for (ssize_t got = 1; open_ && got > 0 && all.size() < answer_bytes_max;) {
      got = ::recv(file_, piece.data(), piece.size(), 0);
      if (got < 0) {
        return std::nullopt;
      }
      all.append(piece.data(), static_cast<std::size_t>(got));
    }
    const auto body = all.find("\r\n\r\n");
    return body == std::string::npos ? std::nullopt : std::optional(all.substr(body + 4));
  }

 private:
  int file_ = -1;
  bool open_ = false;
};

[[nodiscard]] std::string_view member_text(const wire::Document& document, const wire::Node* node, std::string_view member) {
  const wire::Node* found = node == nullptr ? nullptr : document.child(*node, member);
  return found == nullptr ? std::string_view() : found->text;
}

// The first fault of an error, told as one of this program's own.
[[nodiscard]] Problem told_by_sidecar(const wire::Document& document, const wire::Node& error) {
  const wire::Node* data = document.child(error, "data");
  const wire::Node* faults = data == nullptr ? nullptr : document.child(*data, "faults");
  const wire::Node* first = faults == nullptr || faults->first == 0 ? nullptr : &document.at(faults->first);
  return problem_of(wire::Fault{member_text(document, first, "code"), member_text(document, first, "path"), member_text(document, first, "expected")}, "the program that serves");
}

}  // namespace

std::string ask_sidecar(const Folder& folder, std::string_view method, std::string_view params_json) {
  const Sidecar sidecar = read_sidecar(folder);
  const std::uint16_t port = sidecar_port(sidecar);
  const std::string body = R"({"jsonrpc":"2.0","id":1,"method":")" + std::string(method) + R"(","params":)" + std::string(params_json) + "}";
  const auto answer = OneCall(port).ask("POST " + std::string(rpc_path) + " HTTP/1.1\r\nHost: 127.0.0.1:" + std::to_string(port) +
                                     "\r\nContent-Type: application/json\r\nConnection: close\r\nAuthorization: Bearer " + sidecar.tokens.front().token.text +
                                     "\r\nContent-Length: " + std::to_string(body.size()) + "\r\n\r\n" + body);
  if (!answer) {
    throw nothing_serves(folder);
  }
  const auto document = wire::parse(*answer);
  if (!document) {
    throw nothing_serves(folder);
  }
  if (const wire::Node* error = document->child(document->root(), "error")) {
    throw told_by_sidecar(*document, *error);
  }
  const wire::Node* result = document->child(document->root(), "result");
  return result == nullptr ? "{}" : std::string(result->raw);
}

std::string sidecar_origin(const Folder& folder) { return std::string(before_port) + std::to_string(sidecar_port(read_sidecar(folder))); }

}  // namespace limbledger::rpc
