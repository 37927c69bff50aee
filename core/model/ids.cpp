#include "core/model/ids.hpp"

#include "core/wire/text.hpp"

namespace limbledger::model {

namespace {

constexpr std::string_view alphabet = "abcdefghijklmnopqrstuvwxyz234567";
constexpr std::string_view hex = "0123456789abcdef";

[[nodiscard]] int hex_value(char c) {
  if (c >= '0' && c <= '9') {
    return c - '0';
  }
  if (c >= 'a' && c <= 'f') {
    return c - 'a' + 10;
  }
  return c >= 'A' && c <= 'F' ? c - 'A' + 10 : -1;
}

}  // namespace

std::string to_base32(const Bytes16& bytes) {
  std::string text;
  text.reserve(26);
  std::uint32_t held = 0;
  unsigned bits = 0;
  for (const std::uint8_t byte : bytes) {
    held = (held << 8U) | byte;
    bits += 8;
    while (bits >= 5) {
      bits -= 5;
      text.push_back(alphabet[(held >> bits) & 31U]);
    }
  }
  text.push_back(alphabet[(held << (5 - bits)) & 31U]);
  return text;
}

std::optional<Bytes16> from_base32(std::string_view text) {
  if (text.size() != 26) {
    return std::nullopt;
  }
  Bytes16 bytes{};
  std::uint32_t held = 0;
  unsigned bits = 0;
  std::size_t at = 0;
  for (const char c : text) {
    const auto value = alphabet.find(c);
    if (value == std::string_view::npos) {
      return std::nullopt;
    }
    held = (held << 5U) | static_cast<std::uint32_t>(value);
    bits += 5;
    if (bits >= 8 && at < bytes.size()) {
      bits -= 8;
      bytes[at++] = static_cast<std::uint8_t>((held >> bits) & 255U);
    }
  }
  if ((held & 3U) != 0) {
    return std::nullopt;  // the two spare bits: one id has one text
  }
  return bytes;
}

std::string RequestId::to_text() const {
  std::string text;
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    if (i == 4 || i == 6 || i == 8 || i == 10) {
      text.push_back('-');
    }
    text.push_back(hex[bytes[i] >> 4U]);
    text.push_back(hex[bytes[i] & 15U]);
  }
  return text;
}

wire::TextProblem RequestId::from_text(std::string_view text, RequestId& out) {
  if (text.size() != 36) {
    return "params.wrong_type";
  }
  std::size_t at = 0;
  for (std::size_t i = 0; i < text.size();) {
    if (i == 8 || i == 13 || i == 18 || i == 23) {
      if (text[i] != '-') {
        return "params.wrong_type";
      }
      ++i;
      continue;
    }
    const int high = hex_value(text[i]);
    const int low = hex_value(text[i + 1]);
    if (high < 0 || low < 0) {
      return "params.wrong_type";
    }
    out.bytes[at++] = static_cast<std::uint8_t>(high * 16 + low);
    i += 2;
  }
  return {};
}

}  // namespace limbledger::model
