// What the network side asks of those who know what a message means: bytes come in, a reply goes out, and the transport
// itself decides nothing. One Conversation a connection; it is told of what the transport had to refuse and gives the words.
// Sources: RFC 9110 and 9112 for HTTP, RFC 6455 for WebSocket.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace limbledger::rpc {

// The head of one HTTP request, as far as anybody asks for it. A field that did not come is absent, which is not empty.
struct HttpHead {
  std::string_view method;
  std::string_view target;
  std::optional<std::string_view> host;
  std::optional<std::string_view> origin;
  std::optional<std::string_view> content_type;
  std::optional<std::string_view> authorization;
  std::optional<std::string_view> fetch_site;
  std::optional<std::string_view> preflight;  // Access-Control-Request-Method
  bool upgrade = false;                       // asks for WebSocket
  bool ambiguous = false;                     // a field that may come once came twice
};

struct HttpReply {
  unsigned status = 200;
  std::string body;    // JSON unless `type` says otherwise, or empty
  std::string fields;  // more header lines, each with its line end
  std::string_view type = "application/json";
  bool later = false;  // not yet: the reply comes by the function that `http_opened` was given
};

// What a transport refuses by itself.
enum class Trouble : std::uint8_t {
  malformed,        // no HTTP request, or no WebSocket handshake
  large_head,
  large_message,
  slow,             // a request that began and did not come to its end in time
  often,            // too many messages in a short time; the text of the message is at hand
  crowded,          // too many connections
  binary,           // a WebSocket message that is no text
  silent,           // no session.open on a WebSocket in time
};

struct SocketReply {
  std::optional<std::string> text;
  std::uint16_t close = 0;  // the code to close with once `text` is out; 0: go on
};

class Conversation {
 public:
  Conversation() = default;
  Conversation(const Conversation&) = delete;
  Conversation& operator=(const Conversation&) = delete;
  virtual ~Conversation() = default;

  // HTTP. Asked once the head is there: what refuses it, or nothing to go on to the body (or to WebSocket).
  [[nodiscard]] virtual std::optional<HttpReply> head(const HttpHead& head) = 0;
  [[nodiscard]] virtual HttpReply body(std::string_view text) = 0;
  // `send` takes the reply to a body that was to be answered later; never called from within `body`. Without it every body
  // is answered at once.
  virtual void http_opened(std::function<void(HttpReply)> send) = 0;
  [[nodiscard]] virtual HttpReply http_trouble(Trouble trouble, std::string_view text) = 0;

  // WebSocket. `send` takes what is to be sent unasked; it may be called for as long as this conversation lives.
  virtual void socket_opened(std::function<void(std::string)> send) = 0;
  // Whether a session was opened; until then the transport waits only so long.
  [[nodiscard]] virtual bool admitted() const = 0;
  [[nodiscard]] virtual SocketReply message(std::string_view text) = 0;
  [[nodiscard]] virtual SocketReply socket_trouble(Trouble trouble, std::string_view text) = 0;
  // Called after a reply is on its way: the time for telling others.
  virtual void after_reply() = 0;
  // Called now and then: answers what has waited long enough. `all`: this is going to end, and nothing waits any longer.
  virtual void look(bool all) = 0;
};

using NewConversation = std::function<std::unique_ptr<Conversation>()>;

}  // namespace limbledger::rpc
