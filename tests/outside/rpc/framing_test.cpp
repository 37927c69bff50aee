// Both framings against the byte cases of tests/outside/data/framing_cases.json, whole and in every split in two.
#include "rpc/transport/framing.hpp"
#include "tests/outside/vectors.hpp"

namespace limbledger::rpc {

using namespace outside;

namespace {

struct Decoded {
  std::vector<std::string> messages;
  std::size_t too_large = 0;
  bool broken = false;
  friend bool operator==(const Decoded&, const Decoded&) = default;
};

Decoded decode(Framing framing, const Limits& limits, const std::vector<std::string_view>& pieces) {
  Decoder decoder(framing, limits);
  Decoded decoded;
  const auto drain = [&] {
    while (const auto frame = decoder.next()) {
      switch (frame->kind) {
        case FrameKind::message:
        case FrameKind::unended:
          decoded.messages.push_back(frame->text);
          break;
        case FrameKind::too_large:
          ++decoded.too_large;
          break;
        case FrameKind::broken:
          decoded.broken = true;
          break;
      }
    }
  };
  for (const auto piece : pieces) {
    decoder.feed(piece);
    drain();
  }
  decoder.end();
  drain();
  return decoded;
}

std::string text_member(const wire::Document& cases, const wire::Node& one, std::string_view key) {
  const wire::Node* member = cases.child(one, key);
  return member != nullptr ? std::string(member->text) : std::string{};
}

void check_cases(std::string_view list, Framing framing, int count_wanted) {
  const std::string text = data_file("framing_cases.json");
  const auto cases = wire::parse(text);
  REQUIRE(cases.has_value());
  int count = 0;
  for (const wire::Node* one : children(*cases, *cases->child(cases->root(), list))) {
    ++count;
    const std::string name = text_member(*cases, *one, "name");
    CAPTURE(name);
    const std::string bytes = from_hex(text_member(*cases, *one, "hex"));
    const std::string error = text_member(*cases, *one, "error");
    Limits limits;
    if (error.find("limit to 200") != std::string::npos || name == "endless header") {
      limits.header_bytes = 200;
      limits.message_bytes = 200;
    }
    const Decoded whole = decode(framing, limits, {bytes});
    if (const wire::Node* messages = cases->child(*one, "messages")) {
      std::vector<std::string> wanted;
      for (const wire::Node* message : children(*cases, *messages)) {
        wanted.emplace_back(message->text);
      }
      std::vector<std::string> parsed;
      for (const std::string& message : whole.messages) {
        if (wire::parse(message)) {
          parsed.push_back(message);
        }
      }
      CHECK(parsed == wanted);
      CHECK_FALSE(whole.broken);
    }
    if (cases->child(*one, "answer_code") != nullptr) {
      bool one_broken_text = false;
      for (const std::string& message : whole.messages) {
        one_broken_text = one_broken_text || !wire::parse(message);
      }
      CHECK(one_broken_text);
      CHECK_FALSE(whole.broken);
    }
    if (error.rfind("close", 0) == 0) {
      CHECK((whole.broken || whole.too_large == 1));
      CHECK(whole.broken == (framing == Framing::headers));
    }
    for (std::size_t cut = 0; cut <= bytes.size(); ++cut) {
      const std::string_view view = bytes;
      CHECK(decode(framing, limits, {view.substr(0, cut), view.substr(cut)}) == whole);
    }
    std::vector<std::string_view> single;
    for (std::size_t i = 0; i < bytes.size(); ++i) {
      single.push_back(std::string_view(bytes).substr(i, 1));
    }
    CHECK(decode(framing, limits, single) == whole);
  }
  CHECK(count == count_wanted);
}

}  // namespace

TEST_CASE("Content-Length frames come out the same however the bytes are cut, and a header that cannot be read ends the stream") {
  check_cases("content_length", Framing::headers, 15);
}

TEST_CASE("lines come out the same however the bytes are cut, and a line over the limit is passed over") {
  check_cases("newline", Framing::lines, 8);
}

TEST_CASE("the line after one over the limit is read") {
  Limits limits;
  limits.message_bytes = 200;
  const Decoded decoded = decode(Framing::lines, limits, {std::string(5000, 'a') + "\n{}\n"});
  CHECK(decoded.too_large == 1);
  CHECK(decoded.messages == std::vector<std::string>{"{}"});
}

TEST_CASE("a line of exactly the limit is read with and without CR, and one byte more is not") {
  Limits limits;
  limits.message_bytes = 10;
  const std::string full = "\"12345678\"";
  CHECK(decode(Framing::lines, limits, {full + "\n"}).messages.size() == 1);
  CHECK(decode(Framing::lines, limits, {full + "\r\n"}).messages.size() == 1);
  CHECK(decode(Framing::lines, limits, {" " + full + "\n"}).too_large == 1);
  CHECK(decode(Framing::lines, limits, {" " + full + "\r\n"}).too_large == 1);
}

TEST_CASE("a body between the limit and 16 MiB is passed over and the next frame is read") {
  Limits limits;
  limits.message_bytes = 4;
  const std::string bytes = framed(Framing::headers, "\"too long\"") + framed(Framing::headers, "null");
  const Decoded decoded = decode(Framing::headers, limits, {bytes});
  CHECK(decoded.too_large == 1);
  CHECK(decoded.messages == std::vector<std::string>{"null"});
  CHECK_FALSE(decoded.broken);
}

// Found by tests/fuzz: the end of the header was looked for before its first line had four bytes, and the program ended.
TEST_CASE("a first header line of three bytes breaks the stream and nothing else") {
  const Limits limits;
  CHECK(decode(Framing::headers, limits, {"}\r\n"}).broken);
  CHECK(decode(Framing::headers, limits, {"}\r\n\r\n"}).broken);
  CHECK(decode(Framing::headers, limits, {"x\r\nContent-Length: 2\r\n\r\n{}"}).messages.empty());
}

TEST_CASE("a stream that ends inside a body or a header is broken") {
  const Limits limits;
  CHECK(decode(Framing::headers, limits, {"Content-Length: 9\r\n\r\n{}"}).broken);
  CHECK(decode(Framing::headers, limits, {"Content-Le"}).broken);
  CHECK_FALSE(decode(Framing::headers, limits, {framed(Framing::headers, "{}")}).broken);
}

}  // namespace limbledger::rpc
