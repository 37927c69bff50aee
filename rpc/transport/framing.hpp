// Bytes in, whole messages out, in any pieces: one JSON text a line (LF ends it, a CR before it is tolerated, blank lines
// are skipped), or header frames with Content-Length in bytes. A message over the limit is passed over without being
// kept and shown as `too_large`; a header that cannot be read ends the stream, because the next message cannot be found.
// Sources: the base protocol of the Language Server Protocol for the headers; the limits are ours.
#pragma once

#include "rpc/protocol/limits.hpp"

#include <cstdint>
#include <deque>
#include <optional>
#include <string>
#include <string_view>

namespace limbledger::rpc {

enum class Framing : std::uint8_t { lines, headers };

enum class FrameKind : std::uint8_t {
  message,
  unended,    // the last line of a stream, without its line end: to be taken only when it is whole
  too_large,  // passed over
  broken,     // nothing can follow; `text` says what was wrong
};

struct Frame {
  FrameKind kind{};
  std::string text;
};

class Decoder {
 public:
  Decoder(Framing framing, const Limits& limits) : framing_(framing), limits_(limits) {}

  void feed(std::string_view bytes);
  // The stream has ended.
  void end();
  [[nodiscard]] std::optional<Frame> next();
  [[nodiscard]] bool broken() const { return state_ == State::broken; }

 private:
  enum class State : std::uint8_t { start, line, skip_line, header, body, skip_body, broken };

  [[nodiscard]] std::size_t take_line(std::string_view bytes);
  [[nodiscard]] std::size_t take_header(std::string_view bytes);
  [[nodiscard]] std::size_t take_body(std::string_view bytes);
  void end_line();
  void end_header();
  // Empty, or what is wrong with one field.
  [[nodiscard]] std::string read_field(std::string_view field);
  void give(FrameKind kind, std::string text);
  void stop(std::string why);

  Framing framing_;
  Limits limits_;
  State state_ = State::start;
  std::string kept_;             // the line, header or body so far
  std::optional<std::uint64_t> length_;
  std::uint64_t left_ = 0;       // bytes of the body still to come
  std::deque<Frame> frames_;
};

// A reply as it goes out.
[[nodiscard]] std::string framed(Framing framing, std::string_view message);

}  // namespace limbledger::rpc
