// WebSocket frames without a socket. The examples of RFC 6455, section 5.7; what sections 5.1, 5.2, 5.4, 5.5 and 7.4 forbid; every
// message in one piece and byte by byte.
#include "rpc/transport/socket_frames.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cstring>
#include <initializer_list>

namespace limbledger::rpc {

namespace {

constexpr std::size_t limit = 1000;

std::string bytes_of(std::initializer_list<unsigned> numbers) {
  std::string out;
  for (const unsigned number : numbers) {
    out += static_cast<char>(number);
  }
  return out;
}

// A client's frame, masked with 37 fa 21 3d as in the examples of the standard.
std::string frame(unsigned first, const std::string& payload, std::size_t length_bytes = 0) {
  std::string out(1, static_cast<char>(first));
  if (length_bytes == 0 && payload.size() < 126) {
    out += static_cast<char>(0x80U | payload.size());
  } else {
    const std::size_t bytes = length_bytes != 0 ? length_bytes : payload.size() < 65536 ? 2 : 8;
    out += static_cast<char>(bytes == 2 ? 0xFE : 0xFF);
    for (std::size_t i = bytes; i > 0; --i) {
      out += static_cast<char>(static_cast<std::uint64_t>(payload.size()) >> (8 * (i - 1)) & 0xFFU);
    }
  }
  const std::string mask = bytes_of({0x37, 0xFA, 0x21, 0x3D});
  out += mask;
  for (std::size_t i = 0; i < payload.size(); ++i) {
    out += static_cast<char>(payload[i] ^ mask[i % 4]);
  }
  return out;
}

std::string name_of(const SocketFrames& frames, SocketEvent event) {
  const std::string payload(frames.payload());
  switch (event) {
    case SocketEvent::nothing:
      return "";
    case SocketEvent::text:
      return "text " + payload;
    case SocketEvent::binary:
      return "binary " + payload;
    case SocketEvent::too_large:
      return "too large";
    case SocketEvent::ping:
      return "ping " + payload;
    case SocketEvent::pong:
      return "pong " + payload;
    case SocketEvent::close:
      return "close " + std::to_string(frames.code());
    case SocketEvent::broken:
      return "broken " + std::to_string(frames.code());
  }
  return "?";
}

// What is read out of it, in order, when it comes in pieces of this size.
std::string read_in(const std::string& sent, std::size_t piece) {
  SocketFrames frames(limit);
  std::string out;
  for (std::size_t at = 0; at < sent.size(); at += piece) {
    const std::string part = sent.substr(at, piece);
    const std::span<char> room = frames.room(part.size());
    std::memcpy(room.data(), part.data(), part.size());
    frames.came(part.size());
    for (SocketEvent event = frames.next(); event != SocketEvent::nothing; event = frames.next()) {
      out += (out.empty() ? "" : ", ") + name_of(frames, event);
    }
  }
  return out;
}

std::string read(const std::string& sent) {
  const std::string whole = read_in(sent, sent.size());
  for (const std::size_t piece : std::array<std::size_t, 4>{1, 2, 5, 7}) {
    CAPTURE(piece);
    CHECK(read_in(sent, piece) == whole);
  }
  return whole;
}

}  // namespace

TEST_CASE("the examples of RFC 6455, section 5.7, are read and written as they stand there") {
  CHECK(read(bytes_of({0x81, 0x85, 0x37, 0xFA, 0x21, 0x3D, 0x7F, 0x9F, 0x4D, 0x51, 0x58})) == "text Hello");
  CHECK(read(bytes_of({0x8A, 0x85, 0x37, 0xFA, 0x21, 0x3D, 0x7F, 0x9F, 0x4D, 0x51, 0x58})) == "pong Hello");
  CHECK(read(frame(0x01, "Hel") + frame(0x80, "lo")) == "text Hello");
  std::string written;
  add_frame(written, SocketOpcode::text, "Hello");
  CHECK(written == bytes_of({0x81, 0x05}) + "Hello");
  written.clear();
  add_frame(written, SocketOpcode::ping, "Hello");
  CHECK(written == bytes_of({0x89, 0x05}) + "Hello");
  const std::string middling(256, 'x');
  const std::string large(65536, 'x');
  written.clear();
  add_frame(written, SocketOpcode::text, middling);
  CHECK(written == bytes_of({0x81, 0x7E, 0x01, 0x00}) + middling);
  written.clear();
  add_frame(written, SocketOpcode::text, large);
  CHECK(written == bytes_of({0x81, 0x7F, 0, 0, 0, 0, 0, 1, 0, 0}) + large);
  written.clear();
  add_close(written, 1000);
  CHECK(written == bytes_of({0x88, 0x02, 0x03, 0xE8}));
}

TEST_CASE("messages follow one another, in fragments and with control frames between them, up to the limit") {
  CHECK(read(frame(0x81, "one") + frame(0x81, "") + frame(0x81, "three")) == "text one, text , text three");
  CHECK(read(frame(0x01, "a") + frame(0x89, "still there?") + frame(0x00, "b") + frame(0x8A, "") + frame(0x80, "c")) == "ping still there?, pong , text abc");
  CHECK(read(frame(0x01, "") + frame(0x80, "")) == "text ");
  CHECK(read(frame(0x81, std::string(limit, 'x'))) == "text " + std::string(limit, 'x'));
  CHECK(read(frame(0x01, std::string(600, 'x')) + frame(0x80, std::string(400, 'y'))) == "text " + std::string(600, 'x') + std::string(400, 'y'));
  CHECK(read(frame(0x82, "{}")) == "binary {}");
  CHECK(read(frame(0x01, "\xC3") + frame(0x80, "\xA4")) == "text \xC3\xA4");  // a letter in two fragments
}

TEST_CASE("what is over the limit is told once and passed over, and what follows it is read") {
  CHECK(read(frame(0x81, std::string(limit + 1, 'x')) + frame(0x81, "after")) == "too large, text after");
  CHECK(read(frame(0x81, std::string(70'000, 'x')) + frame(0x88, bytes_of({0x03, 0xE8}))) == "too large, close 1000");
  CHECK(read(frame(0x01, std::string(600, 'x')) + frame(0x00, std::string(401, 'x')) + frame(0x80, std::string(9, 'x')) + frame(0x89, "p")) == "too large, ping p");
}

TEST_CASE("a goodbye is answered with its own code, and with 1000 where it names none") {
  CHECK(read(frame(0x88, "")) == "close 1000");
  for (const unsigned code : {1000U, 1001U, 1003U, 1007U, 1011U, 3000U, 4999U}) {
    CHECK(read(frame(0x88, bytes_of({code >> 8U, code & 0xFFU}) + "done")) == "close " + std::to_string(code));
  }
  for (const unsigned code : {0U, 999U, 1004U, 1005U, 1006U, 1015U, 1016U, 2999U, 5000U, 65535U}) {
    CAPTURE(code);
    CHECK(read(frame(0x88, bytes_of({code >> 8U, code & 0xFFU}))) == "broken 1002");
  }
  CHECK(read(frame(0x88, "x")) == "broken 1002");
  CHECK(read(frame(0x88, bytes_of({0x03, 0xE8, 0xFF}))) == "broken 1007");
}

TEST_CASE("what no client may send breaks the connection, and nothing after it is read") {
  const std::string after = frame(0x81, "after");
  CHECK(read(bytes_of({0x81, 0x05}) + "Hello" + after) == "broken 1002");                        // no mask
  for (const unsigned first : {0xC1U, 0xA1U, 0x91U, 0x83U, 0x87U, 0x8BU, 0x8FU}) {               // bits and opcodes of no meaning
    CAPTURE(first);
    CHECK(read(frame(first, "x") + after) == "broken 1002");
  }
  CHECK(read(frame(0x09, "x") + after) == "broken 1002");                                        // a control frame in fragments
  CHECK(read(frame(0x89, std::string(126, 'x')) + after) == "broken 1002");                      // or too long
  CHECK(read(frame(0x80, "x") + after) == "broken 1002");                                        // goes on with nothing
  CHECK(read(frame(0x01, "x") + frame(0x81, "y") + after) == "broken 1002");                     // begins before the end
  CHECK(read(frame(0x81, "x", 2) + after) == "broken 1002");                                     // a length not written in the shortest way
  CHECK(read(frame(0x81, std::string(200, 'x'), 8) + after) == "broken 1002");
  CHECK(read(bytes_of({0x81, 0xFF, 0x80, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0})) == "broken 1002");   // a length of 64 bits
  CHECK(read(frame(0x81, "\xFF\xFE") + after) == "broken 1007");
  CHECK(read(frame(0x01, "\xC3") + frame(0x80, "x") + after) == "broken 1007");
}

}  // namespace limbledger::rpc
