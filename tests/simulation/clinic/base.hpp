// What the parts of the simulated clinic share: dice from a seed, the faults that can be planted (planted_faults.md), and what the
// oracle says when something is wrong.
#pragma once

#include <cstdint>
#include <cstdlib>
#include <string>

namespace limbledger::ledger::clinic_sim {

// SplitMix64: the same on every machine.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : at_(seed) {}
  std::uint64_t next() {
    at_ += 0x9e3779b97f4a7c15U;
    std::uint64_t z = at_;
    z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
    z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
    return z ^ (z >> 31U);
  }
  std::uint64_t roll(std::uint64_t sides) { return next() % sides; }
  bool one_in(std::uint64_t sides) { return roll(sides) == 0; }

 private:
  std::uint64_t at_;
};

enum class Planted : std::uint8_t {
  none,
  form_overtaken,
  yes_before_disk,
  torn_commit,
  one_branch,
  own_chain_only,
  last_writer_wins,
  retry_is_new,
  newer_left_out
};

// Thrown by the oracle; the day is over.
struct Complaint {
  std::string kind;  // lost, settled, doubled, diverged, torn, hidden; refused and damaged: a device said no where it may not
  std::string what;
};

inline std::uint64_t number_from(const char* name, std::uint64_t otherwise) {
  const char* text = std::getenv(name);
  return text == nullptr ? otherwise : std::strtoull(text, nullptr, 10);
}

}  // namespace limbledger::ledger::clinic_sim
