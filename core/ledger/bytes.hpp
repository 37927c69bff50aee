// Bytes in the order they are stored: integers big-endian, fields without gaps. The writer appends to one buffer; the
// reader takes from the front and refuses to read past the end, so a format is checked by asking `done()` last.
#pragma once

#include "core/ledger/port.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <cstdlib>
#include <span>
#include <string_view>

namespace limbledger::ledger {

using View = std::span<const std::uint8_t>;
using Tag = std::array<std::uint8_t, 16>;

// A programmer's mistake ends the program, also in release; input from outside never reaches one.
inline void require(bool holds) {
  if (!holds) {
    std::abort();
  }
}

// A domain tag: at most 16 ASCII characters, padded with zeros.
[[nodiscard]] constexpr Tag tag(std::string_view text) {
  Tag out{};
  for (std::size_t i = 0; i < text.size() && i < out.size(); ++i) {
    out[i] = static_cast<std::uint8_t>(text[i]);
  }
  return out;
}

[[nodiscard]] inline View as_bytes(std::string_view text) {
  return {reinterpret_cast<const std::uint8_t*>(text.data()), text.size()};
}

[[nodiscard]] inline bool is_zero(View bytes) {
  return std::all_of(bytes.begin(), bytes.end(), [](std::uint8_t byte) { return byte == 0; });
}

// The `size` low bytes of `value`, highest first.
inline void put_integer(std::uint8_t* to, std::uint64_t value, std::size_t size) {
  for (std::size_t i = 0; i < size; ++i) {
    to[i] = static_cast<std::uint8_t>(value >> (8 * (size - 1 - i)));
  }
}

[[nodiscard]] inline std::uint64_t get_integer(const std::uint8_t* from, std::size_t size) {
  std::uint64_t value = 0;
  for (std::size_t i = 0; i < size; ++i) {
    value = (value << 8) | from[i];
  }
  return value;
}

class ByteWriter {
 public:
  explicit ByteWriter(std::size_t expected = 0) { bytes_.reserve(expected); }

  ByteWriter& u8(std::uint8_t value) { return integer(value, 1); }
  ByteWriter& u16(std::uint16_t value) { return integer(value, 2); }
  ByteWriter& u32(std::uint32_t value) { return integer(value, 4); }
  ByteWriter& u64(std::uint64_t value) { return integer(value, 8); }
  ByteWriter& raw(View bytes) {
    bytes_.insert(bytes_.end(), bytes.begin(), bytes.end());
    return *this;
  }
  ByteWriter& zeros(std::size_t count) {
    bytes_.insert(bytes_.end(), count, std::uint8_t{0});
    return *this;
  }
  [[nodiscard]] View view() const { return bytes_; }
  [[nodiscard]] Bytes take() { return std::move(bytes_); }

 private:
  ByteWriter& integer(std::uint64_t value, std::size_t size) {
    std::array<std::uint8_t, 8> out{};
    put_integer(out.data(), value, size);
    bytes_.insert(bytes_.end(), out.begin(), out.begin() + static_cast<std::ptrdiff_t>(size));
    return *this;
  }

  Bytes bytes_;
};

class ByteReader {
 public:
  explicit ByteReader(View bytes) : left_(bytes) {}

  [[nodiscard]] std::uint8_t u8() { return static_cast<std::uint8_t>(integer(1)); }
  [[nodiscard]] std::uint16_t u16() { return static_cast<std::uint16_t>(integer(2)); }
  [[nodiscard]] std::uint32_t u32() { return static_cast<std::uint32_t>(integer(4)); }
  [[nodiscard]] std::uint64_t u64() { return integer(8); }
  [[nodiscard]] View raw(std::size_t size) {
    if (size > left_.size()) {
      short_ = true;
      left_ = {};
      return {};
    }
    const View out = left_.first(size);
    left_ = left_.subspan(size);
    return out;
  }
  template <std::size_t Size>
  [[nodiscard]] std::array<std::uint8_t, Size> array() {
    std::array<std::uint8_t, Size> out{};
    const View from = raw(Size);
    std::copy(from.begin(), from.end(), out.begin());
    return out;
  }
  [[nodiscard]] std::size_t left() const { return left_.size(); }
  // All was there and all was read.
  [[nodiscard]] bool done() const { return !short_ && left_.empty(); }
  [[nodiscard]] bool ran_short() const { return short_; }

 private:
  [[nodiscard]] std::uint64_t integer(std::size_t size) {
    const View from = raw(size);
    return from.empty() ? 0 : get_integer(from.data(), size);
  }

  View left_;
  bool short_ = false;
};

}  // namespace limbledger::ledger
