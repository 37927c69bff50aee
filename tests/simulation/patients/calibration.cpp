#include "tests/simulation/patients/calibration.hpp"

#include "tests/simulation/patients/patients.hpp"

#include <algorithm>
#include <cmath>

namespace limbledger::patients {

void Told::add(double chance, bool present, std::uint64_t people) {
  Seen& seen = by_chance_[chance];
  seen.people += people;
  seen.present += present ? people : 0;
  people_ += people;
}

void Told::add(const Told& other) {
  for (const auto& [chance, seen] : other.by_chance_) {
    by_chance_[chance].people += seen.people;
    by_chance_[chance].present += seen.present;
  }
  people_ += other.people_;
}

double Told::brier() const {
  double sum = 0;
  for (const auto& [chance, seen] : by_chance_) {
    const auto had = static_cast<double>(seen.present);
    const auto had_not = static_cast<double>(seen.people - seen.present);
    sum += had * (1 - chance) * (1 - chance) + had_not * chance * chance;
  }
  return sum / static_cast<double>(people_);
}

// Newton's method for the two coefficients of a logistic regression.
double Told::slope() const {
  double a = 0;
  double b = 1;
  for (int round = 0; round < 30; ++round) {
    double ga = 0, gb = 0, aa = 0, ab = 0, bb = 0;
    for (const auto& [chance, seen] : by_chance_) {
      const double x = logit(std::clamp(chance, 1e-9, 1 - 1e-9));
      const double p = share_of(a + b * x);
      const auto people = static_cast<double>(seen.people);
      const double over = static_cast<double>(seen.present) - people * p;
      const double w = people * p * (1 - p);
      ga += over;
      gb += over * x;
      aa += w;
      ab += w * x;
      bb += w * x * x;
    }
    const double det = aa * bb - ab * ab;
    // Far chances make the first steps too long.
    a += std::clamp((bb * ga - ab * gb) / det, -0.5, 0.5);
    b += std::clamp((aa * gb - ab * ga) / det, -0.25, 0.25);
  }
  return b;
}

double Told::mean() const {
  double sum = 0;
  for (const auto& [chance, seen] : by_chance_) {
    sum += chance * static_cast<double>(seen.people);
  }
  return sum / static_cast<double>(people_);
}

double Told::observed() const {
  std::uint64_t present = 0;
  for (const auto& [chance, seen] : by_chance_) {
    present += seen.present;
  }
  return static_cast<double>(present) / static_cast<double>(people_);
}

}  // namespace limbledger::patients
