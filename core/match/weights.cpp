#include "core/match/weights.hpp"

#include <algorithm>

namespace limbledger::match {

namespace {

// Ours. Where the page gives a range: sex m 0.99, u 0.5; home m 0.85; both names m 0.9 and u 0.005 to 0.1, so both u 0.0008;
// birth to the day u 1/(365 x 50), floor 0.0001; year u 0.02.
constexpr Shares start_m{{
    {0, 0.55, 0.03, 0.15, 0.10, 0.05, 0.09, 0.03},  // name
    {0, 0.55, 0.03, 0.06, 0.04, 0.12, 0.15, 0.05},  // birth
    {0, 0.99, 0.01},                                // sex
    {0, 0.85, 0.03, 0.12},                          // home
    {0, 0.90, 0.05, 0.05},                          // identifier
}};
constexpr Shares start_u{{
    {0, 0.0008, 0.0001, 0.0005, 0.004, 0.0015, 0.08, 0.9131},
    {0, 0.0001, 0.0001, 0.0015, 0.0017, 0.02, 0.06, 0.9166},
    {0, 0.5, 0.5},
    {0, 0.05, 0.005, 0.945},
    {0, 0.0001, 0.0005, 0.9994},
}};
constexpr double registered_twice = 0.15;
constexpr std::size_t people_least = 200;  // fewer people are not asked about sooner: whoever keeps the list knows them
constexpr double least_share = 0.000001;  // no level weighs more than twenty bits
constexpr std::size_t rounds_max = 200;
constexpr double still = 0.000001;

// The share of pairs with this pattern that are of one person.
[[nodiscard]] double share_of_one(const Model& model, const Pattern& pattern) {
  double one = model.prior;
  double two = 1 - model.prior;
  for (std::size_t field = 0; field < fields; ++field) {
    const std::uint8_t level = pattern[field];
    if (level != 0) {
      one *= model.m[field][level];
      two *= model.u[field][level];
    }
  }
  return one + two > 0 ? one / (one + two) : 0;
}

void normalise(std::array<double, levels_max>& shares, const std::array<double, levels_max>& from, double tied) {
  double sum = 0;
  for (std::size_t level = 1; level < levels_max; ++level) {
    sum += shares[level];
  }
  for (std::size_t level = 1; level < levels_max; ++level) {
    shares[level] = sum + tied > 0 ? (shares[level] + tied * from[level]) / (sum + tied) : from[level];
  }
}

void add_pattern(Shares& shares, const Pattern& pattern, double count) {
  for (std::size_t field = 0; field < fields; ++field) {
    shares[field][pattern[field]] += count;
  }
}

[[nodiscard]] double largest_move(const Shares& a, const Shares& b) {
  double move = 0;
  for (std::size_t field = 0; field < fields; ++field) {
    for (std::size_t level = 1; level < levels_max; ++level) {
      move = std::max({move, a[field][level] - b[field][level], b[field][level] - a[field][level]});
    }
  }
  return move;
}

}  // namespace

double log2_of(double x) {
  int twos = 0;
  for (; x > 1.5; x /= 2) {
    ++twos;
  }
  for (; x > 0 && x < 0.75; x *= 2) {
    --twos;
  }
  // ln x = 2 (z + z^3/3 + z^5/5 ...), z = (x - 1) / (x + 1), at most 0.2 here.
  const double z = (x - 1) / (x + 1);
  double term = z;
  double sum = 0;
  for (int n = 1; n < 60; n += 2) {
    sum += term / n;
    term *= z * z;
  }
  return 2 * sum / 0.69314718055994530942 + twos;
}

Model starting_model(std::size_t people) {
  Model model;
  model.m = start_m;
  model.u = start_u;
  model.prior = std::min(0.1, 2 * registered_twice / static_cast<double>(std::max(people, people_least)));
  return model;
}

double weight_of(const Model& model, Field field, std::uint8_t level) {
  const auto at = static_cast<std::size_t>(field);
  if (level == 0) {
    return 0;
  }
  return log2_of(std::max(model.m[at][level], least_share) / std::max(model.u[at][level], least_share));
}

double total_weight(const Model& model, const Pattern& pattern) {
  double sum = 0;
  for (std::size_t field = 0; field < fields; ++field) {
    sum += weight_of(model, static_cast<Field>(field), pattern[field]);
  }
  return sum;
}

double log_odds(const Model& model, double weight) { return log2_of(model.prior / (1 - model.prior)) + weight; }

Learnt learn(const Model& from, const Counted& counted, double tied) {
  Learnt out{from, 0};
  double all = 0;
  for (const auto& [pattern, count] : counted.pairs) {
    all += count;
  }
  for (; all > 0 && out.rounds < rounds_max; ++out.rounds) {
    Model next;
    next.learnt = true;
    double ones = 0;
    for (const auto& [pattern, count] : counted.pairs) {
      const double one = share_of_one(out.model, pattern);
      ones += one * count;
      add_pattern(next.m, pattern, one * count);
      add_pattern(next.u, pattern, (1 - one) * count);
    }
    for (const auto& [pattern, count] : counted.one) {
      add_pattern(next.m, pattern, count);
    }
    for (const auto& [pattern, count] : counted.two) {
      add_pattern(next.u, pattern, count);
    }
    for (std::size_t field = 0; field < fields; ++field) {
      normalise(next.m[field], from.m[field], tied);
      normalise(next.u[field], from.u[field], tied);
    }
    next.prior = (ones + tied * from.prior) / (all + tied);
    const double moved = std::max({largest_move(next.m, out.model.m), largest_move(next.u, out.model.u),
                                   next.prior - out.model.prior, out.model.prior - next.prior});
    out.model = next;
    if (moved < still) {
      ++out.rounds;
      break;
    }
  }
  return out;
}

Shares count_shares(const Shares& from, const std::map<Pattern, double>& pairs, double tied) {
  Shares out{};
  for (const auto& [pattern, count] : pairs) {
    add_pattern(out, pattern, count);
  }
  for (std::size_t field = 0; field < fields; ++field) {
    normalise(out[field], from[field], tied);
  }
  return out;
}

}  // namespace limbledger::match
