// How well chances fit what came: the Brier score (mean squared distance; Brier, Mon Weather Rev 1950;78:1) and the calibration slope (Cox, Biometrika 1958;45:562: the slope of the
// outcome's logit on the logit of the chance; below 1 where chances claim too much).
#pragma once

#include <cstdint>
#include <map>
#include <utility>
#include <vector>

namespace limbledger::patients {

// Chances told, and how often it was so, by each distinct chance.
class Told {
 public:
  void add(double chance, bool present, std::uint64_t people = 1);
  void add(const Told& other);
  [[nodiscard]] double brier() const;
  [[nodiscard]] double slope() const;
  [[nodiscard]] double mean() const;      // of the chances
  [[nodiscard]] double observed() const;  // share that had it
  [[nodiscard]] std::uint64_t people() const { return people_; }

 private:
  struct Seen {
    std::uint64_t people = 0;
    std::uint64_t present = 0;
  };
  std::map<double, Seen> by_chance_;
  std::uint64_t people_ = 0;
};

}  // namespace limbledger::patients
