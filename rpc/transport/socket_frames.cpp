#include "rpc/transport/socket_frames.hpp"

#include "core/wire/parse.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cstring>

namespace limbledger::rpc {

namespace {

constexpr std::uint16_t code_done = 1000;
constexpr std::uint16_t code_protocol = 1002;
constexpr std::uint16_t code_no_utf8 = 1007;
constexpr std::uint8_t opcode_more = 0;
constexpr std::uint8_t opcode_text = 1;
constexpr std::uint8_t opcode_binary = 2;
constexpr std::uint64_t control_bytes_max = 125;
constexpr std::size_t kept_bytes_max = std::size_t{64} * 1024;  // more is given back before the next message

[[nodiscard]] std::uint64_t number_at(const char* at, std::size_t bytes) {
  std::uint64_t number = 0;
  for (std::size_t i = 0; i < bytes; ++i) {
    number = number << 8U | static_cast<unsigned char>(at[i]);
  }
  return number;
}

// Eight bytes at a time: a message of some KB is unmasked byte by byte in the time of a system call.
void unmask(char* at, std::size_t count, std::uint32_t mask) {
  const std::uint64_t both = static_cast<std::uint64_t>(mask) << 32U | mask;
  std::size_t i = 0;
  for (; i + sizeof both <= count; i += sizeof both) {
    std::uint64_t eight = 0;
    std::memcpy(&eight, at + i, sizeof eight);
    eight ^= both;
    std::memcpy(at + i, &eight, sizeof eight);
  }
  std::array<char, 4> last{};
  std::memcpy(last.data(), &mask, last.size());
  for (std::size_t j = 0; i < count; ++i, ++j) {
    at[i] = static_cast<char>(at[i] ^ last[j % 4]);
  }
}

// The mask for what follows `count` bytes of it.
[[nodiscard]] std::uint32_t turned(std::uint32_t mask, std::size_t count) {
  const int bits = static_cast<int>(count % 4) * 8;
  return std::endian::native == std::endian::little ? std::rotr(mask, bits) : std::rotl(mask, bits);
}

[[nodiscard]] bool may_be_sent(std::uint64_t code) {
  const bool registered = code >= 1000 && code <= 1013 && code != 1004 && code != 1005 && code != 1006;
  return registered || (code >= 3000 && code <= 4999);
}

}  // namespace

std::span<char> SocketFrames::room(std::size_t at_least) {
  if (begin_ == end_) {
    begin_ = end_ = 0;
  } else if (begin_ > 0 && bytes_.size() - end_ < at_least) {
    std::memmove(bytes_.data(), bytes_.data() + begin_, end_ - begin_);
    end_ -= begin_;
    begin_ = 0;
  }
  if (bytes_.size() - end_ < at_least) {
    bytes_.resize(end_ + at_least);
  }
  return {bytes_.data() + end_, bytes_.size() - end_};
}

SocketEvent SocketFrames::fail(std::uint16_t code) {
  broken_ = true;
  code_ = code;
  begin_ = end_;
  return SocketEvent::broken;
}

std::optional<SocketFrames::Head> SocketFrames::read_head() {
  code_ = 0;
  const char* at = bytes_.data() + begin_;
  const std::size_t have = end_ - begin_;
  if (have < 2) {
    return std::nullopt;
  }
  const auto first = static_cast<unsigned char>(at[0]);
  const auto second = static_cast<unsigned char>(at[1]);
  Head head;
  head.last = (first & 0x80U) != 0;
  head.opcode = first & 0x0FU;
  const bool is_control = head.opcode >= 8;
  const bool known = head.opcode <= opcode_binary || (head.opcode >= 8 && head.opcode <= 10);
  const std::uint64_t marked = second & 0x7FU;
  const bool in_turn = head.opcode == opcode_more ? opcode_ != 0 : opcode_ == 0;
  if ((first & 0x70U) != 0 || (second & 0x80U) == 0 || !known || (is_control ? !head.last || marked > control_bytes_max : !in_turn)) {
    code_ = code_protocol;
    return std::nullopt;
  }
  const std::size_t longer = marked < 126 ? 0 : marked == 126 ? 2 : 8;
  head.bytes = 2 + longer + 4;
  if (have < head.bytes) {
    return std::nullopt;
  }
  head.length = longer == 0 ? marked : number_at(at + 2, longer);
  if ((longer == 2 && head.length < 126) || (longer == 8 && (head.length < 65536 || head.length >> 63U != 0))) {
    code_ = code_protocol;
    return std::nullopt;
  }
  std::memcpy(&head.mask, at + 2 + longer, 4);
  return head;
}

SocketEvent SocketFrames::next() {
  for (;;) {
    payload_ = {};
    if (broken_) {
      begin_ = end_;
      return SocketEvent::nothing;
    }
    if (in_frame_) {
      const SocketEvent event = take_part();
      if (event != SocketEvent::nothing || in_frame_) {
        return event;
      }
      continue;
    }
    const auto head = read_head();
    if (!head) {
      return code_ != 0 ? fail(code_) : SocketEvent::nothing;
    }
    if (head->opcode >= 8) {
      return end_ - begin_ < head->bytes + head->length ? SocketEvent::nothing : control(*head);
    }
    const SocketEvent event = data(*head);
    if (event != SocketEvent::nothing) {
      return event;
    }
  }
}

SocketEvent SocketFrames::control(const Head& head) {
  char* at = bytes_.data() + begin_ + head.bytes;
  const auto length = static_cast<std::size_t>(head.length);
  unmask(at, length, head.mask);
  begin_ += head.bytes + length;
  payload_ = {at, length};
  if (head.opcode != static_cast<std::uint8_t>(SocketOpcode::close)) {
    return head.opcode == static_cast<std::uint8_t>(SocketOpcode::ping) ? SocketEvent::ping : SocketEvent::pong;
  }
  if (length == 0) {
    code_ = code_done;
    return SocketEvent::close;
  }
  const std::uint64_t code = length < 2 ? 0 : number_at(at, 2);
  if (!may_be_sent(code)) {
    return fail(code_protocol);
  }
  if (!wire::is_utf8(payload_.substr(2))) {
    return fail(code_no_utf8);
  }
  code_ = static_cast<std::uint16_t>(code);
  return SocketEvent::close;
}

SocketEvent SocketFrames::data(const Head& head) {
  const bool begins = head.opcode != opcode_more;
  if (begins) {
    opcode_ = head.opcode;
    if (kept_.capacity() > kept_bytes_max) {
      kept_ = std::string();
    }
    kept_.clear();
  }
  char* at = bytes_.data() + begin_ + head.bytes;
  const std::uint64_t have = end_ - begin_ - head.bytes;
  if (begins && head.last && head.length <= have && head.length <= message_bytes_) {
    const auto length = static_cast<std::size_t>(head.length);
    unmask(at, length, head.mask);
    begin_ += head.bytes + length;
    payload_ = {at, length};
    return whole();
  }
  begin_ += head.bytes;
  in_frame_ = true;
  last_ = head.last;
  left_ = head.length;
  mask_ = head.mask;
  if (!passing_over_ && head.length > message_bytes_ - kept_.size()) {
    passing_over_ = true;
    kept_.clear();
    kept_.shrink_to_fit();
    return SocketEvent::too_large;
  }
  return SocketEvent::nothing;
}

SocketEvent SocketFrames::take_part() {
  const auto count = static_cast<std::size_t>(std::min<std::uint64_t>(left_, end_ - begin_));
  char* at = bytes_.data() + begin_;
  if (!passing_over_ && count != 0) {
    unmask(at, count, mask_);
    mask_ = turned(mask_, count);
    kept_.append(at, count);
  }
  begin_ += count;
  left_ -= count;
  if (left_ != 0) {
    return SocketEvent::nothing;
  }
  in_frame_ = false;
  if (!last_) {
    return SocketEvent::nothing;
  }
  if (passing_over_) {
    passing_over_ = false;
    opcode_ = 0;
    return SocketEvent::nothing;
  }
  payload_ = kept_;
  return whole();
}

SocketEvent SocketFrames::whole() {
  const bool is_text = opcode_ == opcode_text;
  opcode_ = 0;
  if (is_text && !wire::is_utf8(payload_)) {
    return fail(code_no_utf8);
  }
  return is_text ? SocketEvent::text : SocketEvent::binary;
}

void add_frame(std::string& out, SocketOpcode opcode, std::string_view payload) {
  out += static_cast<char>(0x80U | static_cast<std::uint8_t>(opcode));
  const std::size_t length = payload.size();
  const int bits = length < 126 ? 0 : length < 65536 ? 16 : 64;
  out += static_cast<char>(bits == 0 ? length : bits == 16 ? 126 : 127);
  for (int shift = bits - 8; shift >= 0; shift -= 8) {
    out += static_cast<char>(static_cast<std::uint64_t>(length) >> static_cast<unsigned>(shift) & 0xFFU);
  }
  out += payload;
}

void add_close(std::string& out, std::uint16_t code) {
  const char both[] = {static_cast<char>(code >> 8U), static_cast<char>(code & 0xFFU)};
  add_frame(out, SocketOpcode::close, {both, sizeof both});
}

}  // namespace limbledger::rpc
