// Secret bytes: wiped when they go out of use. A copy is a secret of its own and is wiped too.
#pragma once

#include "core/ledger/bytes.hpp"

#include <sodium/core.h>
#include <sodium/utils.h>

#include <algorithm>
#include <array>
#include <cstdint>
#include <new>

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

// A secret on a page of its own that is not written to the swap space, where the system allows it; where it does not, the
// secret is kept all the same. For the master and the epoch keys only: what may be locked is little.
class LockedSecret32 {
 public:
  LockedSecret32() : LockedSecret32(Secret32()) {}
  LockedSecret32(const Secret32& secret) : at_(place(secret)) {}  // NOLINT: as good as the secret itself
  LockedSecret32(const LockedSecret32& other) : at_(place(*other.at_)) {}
  LockedSecret32& operator=(const LockedSecret32& other) {
    *at_ = *other.at_;
    return *this;
  }
  ~LockedSecret32() {
    at_->~Secret();
    sodium_free(at_);
  }

  operator const Secret32&() const { return *at_; }  // NOLINT
  [[nodiscard]] const std::uint8_t* data() const { return at_->data(); }
  [[nodiscard]] View view() const { return at_->view(); }
  [[nodiscard]] std::span<std::uint8_t> room() { return at_->room(); }
  friend bool operator==(const LockedSecret32& a, const LockedSecret32& b) { return *a.at_ == *b.at_; }

 private:
  [[nodiscard]] static Secret32* place(const Secret32& secret) {
    require(sodium_init() >= 0);  // its guards are drawn once; pages from before would not be taken back
    void* page = sodium_malloc(sizeof(Secret32));
    require(page != nullptr);
    return new (page) Secret32(secret);
  }

  Secret32* at_;
};

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
