// The name of an item as it is written in a source, with its hash as the compiler worked it out. Judging one exam asks for a thousand
// of them by name, and at every finding again: a key finds its item without a letter being read (Edition::item_of). A name
// that is only known at run time may stand in its place, and is hashed there.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace limbledger::reference {

// FNV-1a, 64 bits, of the whole name: an edition is refused where two of its names share one.
[[nodiscard]] constexpr std::uint64_t key_of(std::string_view name) {
  std::uint64_t hash = 0xcbf29ce484222325U;
  for (const char letter : name) {
    hash = (hash ^ static_cast<unsigned char>(letter)) * 0x100000001b3U;
  }
  return hash;
}

class ItemKey {
 public:
  template <std::size_t Size>
  consteval ItemKey(const char (&name)[Size]) : ItemKey(std::string_view(name, Size - 1)) {}    // NOLINT(google-explicit-constructor)
  constexpr ItemKey(std::string_view name) : name_(name), key_(key_of(name)) {}                 // NOLINT(google-explicit-constructor)
  [[nodiscard]] constexpr std::string_view name() const { return name_; }
  [[nodiscard]] constexpr std::uint64_t key() const { return key_; }

 private:
  std::string_view name_;
  std::uint64_t key_;
};

}  // namespace limbledger::reference
