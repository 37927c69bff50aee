// From single likelihood ratios to a range in 100: signed geometric discount of one half, held between 0.04 and 25, bounded by
// the best single finding and by the undiscounted product, over the lowest and the highest prior; then the bands.
// Pure arithmetic on doubles; what is shown is rounded at the very end, by to_steps alone.
// Sources: the dependence page of the facts, sections 2 and 3; clinical safety, requirements 4 and 6. Limits of bands: convention.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/reference/evidence/admit.hpp"

#include <optional>
#include <string>
#include <vector>

namespace limbledger::interpret {

inline constexpr double discount = 0.5;
inline constexpr double ratio_least = 0.04;  // the best published whole examination of one ligament (SOLOMON2001)
inline constexpr double ratio_most = 25;
inline constexpr double ratio_most_case_control = 10;
inline constexpr double stated_error = 0.5;  // of ln ratio, where nothing was printed: our convention
// An interval of fewer people, or of a smaller group with (or without) the condition, is no first class: our convention, from a study
// of the rows again and again (91 to 93 in 100 held where 95 is said).
inline constexpr std::int64_t people_least = 40;
inline constexpr double group_least = 20;
inline constexpr double z_95 = 1.959963985;

// A likelihood ratio as it may be used, with the standard error of its logarithm and the sum that gives it.
struct Ratio {
  double value = 1;
  double se = stated_error;
  bool stated = false;  // the error is ours
  std::string sum;      // "0.81 / (1 - 0.85) = 5.4"

  [[nodiscard]] double ln() const;
};

// Nothing where the row has no such ratio. Zero cells get 0.5 each; a ratio of a case-control study counts half in the logarithm.
[[nodiscard]] std::optional<Ratio> ratio_of(const reference::AccuracyRow& row, bool positive);

struct Combined {
  double sum = 0;  // of ln ratios, discounted
  double se = 0;
  double point = 1;                // exp(sum), not held
  double best = 1;                 // the strongest single finding, either way
  double product = 1;              // undiscounted
  std::vector<std::size_t> order;  // of the ratios as they were given: those for, strongest first, then those against
  std::vector<double> weight;      // of each in that order
};
[[nodiscard]] Combined combine(const std::vector<Ratio>& ratios, double by = discount);

[[nodiscard]] double held(double ratio);
// odds = p / (1 - p); odds x ratio / (1 + odds x ratio).
[[nodiscard]] double posterior(double prior, double ratio);

struct PriorShare {
  double low = 0;
  double best = 0;
  double high = 0;
};

struct Chances {
  double low = 0;
  double point = 0;
  double high = 0;
};
[[nodiscard]] Chances chances(const PriorShare& prior, const Combined& combined);

// In 100, rounded to 5, never under 5 or over 95.
[[nodiscard]] std::int64_t in_hundred(double chance);
// Never one figure alone, but for the two ends.
[[nodiscard]] OutOf out_of_hundred(const Chances& chances);
// Read from the range that is shown, so that no sentence and no number can disagree: below 10, 10 to 50, above 50, above 80.
// One, two neighbours, or cannot_tell for more; without an interval of its own nothing above favour.
[[nodiscard]] std::vector<Band> bands_of(const OutOf& range, bool second_class);
// The 95 % interval of the combined ratio, from the rows' own errors.
struct RatioInterval {
  double low = 1;
  double high = 1;
};
[[nodiscard]] RatioInterval interval_of(const Combined& combined);
// It holds 1.
[[nodiscard]] bool tells_nothing(const Combined& combined);

}  // namespace limbledger::interpret
