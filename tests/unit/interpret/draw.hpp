// Numbers for generated exams from a seed, the same on every machine, and the exchange of sides in what was said.
#pragma once

#include <cstdint>
#include <string>

namespace limbledger::interpret_test {

class Draw {
 public:
  explicit Draw(std::uint64_t seed) : state_(seed * 0x9E3779B97F4A7C15U + 1) {}
  std::uint64_t below(std::uint64_t limit) {
    state_ ^= state_ << 13U;
    state_ ^= state_ >> 7U;
    state_ ^= state_ << 17U;
    return (state_ >> 11U) % limit;
  }
  bool one_in(std::uint64_t n) { return below(n) == 0; }

 private:
  std::uint64_t state_;
};

// "left_out" is a member and "left_tilt" a way to lie: no sides.
inline std::string exchange_words(std::string text) {
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (text.compare(at, 4, "left") == 0 && text.compare(at, 8, "left_out") != 0 && text.compare(at, 9, "left_tilt") != 0) {
      text.replace(at, 4, "right");
      at += 4;
    } else if (text.compare(at, 5, "right") == 0) {
      text.replace(at, 5, "left");
      at += 3;
    }
  }
  return text;
}

}  // namespace limbledger::interpret_test
