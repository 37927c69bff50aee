// The frames of a WebSocket as a server reads and writes them, without a socket: bytes in, whole messages and control frames out.
// A message that lies whole in what came is unmasked where it lies and not copied. Text is not looked at here; everything that a
// client may not send (no mask, bits of no meaning, a length not written in the shortest way, broken fragments) is `broken`.
// Source: RFC 6455, sections 5.2 to 5.5 and 7.4.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::rpc {

enum class SocketEvent : std::uint8_t {
  nothing,    // more bytes are needed
  text,       // a whole message; `payload` holds it until the next call
  binary,
  too_large,  // a message over the limit began; the rest of it is passed over
  ping,       // to be answered with the same payload
  pong,
  close,      // `code` is the one to answer with
  broken,     // `code` says how; nothing can follow
};

enum class SocketOpcode : std::uint8_t { text = 1, close = 8, ping = 9, pong = 10 };

class SocketFrames {
 public:
  explicit SocketFrames(std::size_t message_bytes) : message_bytes_(message_bytes) {}

  // Where the next bytes go, at least `at_least` of them; then how many came.
  [[nodiscard]] std::span<char> room(std::size_t at_least);
  void came(std::size_t count) { end_ += count; }
  [[nodiscard]] SocketEvent next();
  [[nodiscard]] std::string_view payload() const { return payload_; }
  [[nodiscard]] std::uint16_t code() const { return code_; }
  // Whether bytes are left that were not taken yet.
  [[nodiscard]] bool holds_more() const { return begin_ < end_; }

 private:
  struct Head {
    bool last = false;
    std::uint8_t opcode = 0;
    std::size_t bytes = 0;  // of the head itself
    std::uint64_t length = 0;
    std::uint32_t mask = 0;  // as it lies in the bytes
  };

  // Nothing: broken, or not whole yet (then `code_` is 0).
  [[nodiscard]] std::optional<Head> read_head();
  [[nodiscard]] SocketEvent control(const Head& head);
  [[nodiscard]] SocketEvent data(const Head& head);
  [[nodiscard]] SocketEvent take_part();
  [[nodiscard]] SocketEvent whole();
  [[nodiscard]] SocketEvent fail(std::uint16_t code);

  std::size_t message_bytes_;
  std::vector<char> bytes_;
  std::size_t begin_ = 0;
  std::size_t end_ = 0;
  std::string kept_;           // a message of which not everything came at once
  std::string_view payload_;
  std::uint64_t left_ = 0;     // of the data frame that is being taken in parts
  std::uint32_t mask_ = 0;     // turned to where `left_` begins
  std::uint16_t code_ = 0;
  std::uint8_t opcode_ = 0;    // of the message that has begun; 0: none
  bool in_frame_ = false;
  bool last_ = false;          // the frame that is being taken ends its message
  bool passing_over_ = false;
  bool broken_ = false;
};

// Adds one frame of a server.
void add_frame(std::string& out, SocketOpcode opcode, std::string_view payload);
void add_close(std::string& out, std::uint16_t code);

}  // namespace limbledger::rpc
