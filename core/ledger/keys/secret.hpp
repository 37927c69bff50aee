// Secret bytes: wiped when they go out of use. A copy is a secret of its own and is wiped too.
#pragma once

#include "core/ledger/bytes.hpp"

#include <sodium/utils.h>

#include <algorithm>
#include <array>
#include <cstdint>

namespace limbledger::ledger {

template <std::size_t Size>
class Secret {
 public:
  Secret() = default;
  explicit Secret(View bytes) {
    require(bytes.size() == Size);
    std::copy(bytes.begin(), bytes.end(), bytes_.begin());
  }
  Secret(const Secret&) = default;
  Secret& operator=(const Secret&) = default;
  ~Secret() { sodium_memzero(bytes_.data(), bytes_.size()); }

  [[nodiscard]] const std::uint8_t* data() const { return bytes_.data(); }
  [[nodiscard]] std::uint8_t* data() { return bytes_.data(); }
  [[nodiscard]] static constexpr std::size_t size() { return Size; }
  [[nodiscard]] View view() const { return bytes_; }
  [[nodiscard]] std::span<std::uint8_t> room() { return bytes_; }

  // In a time that does not depend on where they differ.
  friend bool operator==(const Secret& a, const Secret& b) { return sodium_memcmp(a.data(), b.data(), Size) == 0; }

 private:
  std::array<std::uint8_t, Size> bytes_{};
};

using Secret32 = Secret<32>;

// A buffer that held plain text or keys: wiped before it is given back.
class WipedBytes {
 public:
  explicit WipedBytes(std::size_t size) : bytes(size) {}
  WipedBytes(const WipedBytes&) = delete;
  WipedBytes& operator=(const WipedBytes&) = delete;
  ~WipedBytes() { sodium_memzero(bytes.data(), bytes.size()); }

  Bytes bytes;
};

}  // namespace limbledger::ledger
