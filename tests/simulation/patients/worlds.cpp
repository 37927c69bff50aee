#include "tests/simulation/patients/worlds.hpp"

#include "core/interpret/evidence/combine.hpp"

#include <cmath>

namespace limbledger::patients {

namespace {

// Marsaglia and Tsang, ACM Trans Math Softw 2000;26:363; below shape 1 by way of shape + 1.
double gamma_of(double shape, Draw& draw) {
  if (shape < 1) {
    return gamma_of(shape + 1, draw) * std::pow(uniform(draw), 1 / shape);
  }
  const double d = shape - 1.0 / 3;
  for (;;) {
    const double x = normal(draw);
    const double v = std::pow(1 + x / std::sqrt(9 * d), 3);
    if (v > 0 && std::log(uniform(draw)) < x * x / 2 + d - d * v + d * std::log(v)) {
      return d * v;
    }
  }
}

double beta_of(std::int64_t yes, std::int64_t no, Draw& draw) {
  const double a = gamma_of(static_cast<double>(yes) + 0.5, draw);
  return a / (a + gamma_of(static_cast<double>(no) + 0.5, draw));
}

constexpr int shared_steps = 48;

}  // namespace

std::int64_t binomial(std::int64_t of, double share, Draw& draw) {
  std::int64_t yes = 0;
  for (std::int64_t n = 0; n < of; ++n) {
    yes += uniform(draw) < share ? 1 : 0;
  }
  return yes;
}

double drawn_share(const reference::Measure& best, const reference::Measure& low, const reference::Measure& high, Draw& draw) {
  const double error = (logit(high.real()) - logit(low.real())) / (2 * interpret::z_95);
  return share_of(logit(best.real()) + error * normal(draw));
}

std::pair<double, double> drawn_accuracy(const SimulatedTest& test, Draw& draw) {
  const reference::AccuracyRow& row = *test.row;
  if (row.counts) {
    return {beta_of(row.counts->tp.steps, row.counts->fn.steps, draw), beta_of(row.counts->tn.steps, row.counts->fp.steps, draw)};
  }
  if (row.sens && row.spec && row.sens_low && row.sens_high && row.spec_low && row.spec_high) {
    return {drawn_share(*row.sens, *row.sens_low, *row.sens_high, draw), drawn_share(*row.spec, *row.spec_low, *row.spec_high, draw)};
  }
  const auto positive = interpret::ratio_of(row, true);
  const auto negative = interpret::ratio_of(row, false);
  for (;;) {
    const double for_it = std::exp(positive->ln() + positive->se * normal(draw));
    const double against_it = std::exp(negative->ln() + negative->se * normal(draw));
    if (for_it > 1 && against_it < 1) {
      const double spec = (for_it - 1) / (for_it - against_it);
      return {for_it * (1 - spec), spec};
    }
  }
}

Setup one_a_group(const Setup& setup) {
  Setup kept = setup;
  kept.tests.clear();
  for (const SimulatedTest& test : setup.tests) {
    if (kept.tests.empty() || kept.tests.back().group != test.group) {
      kept.tests.push_back(test);
    }
  }
  return kept;
}

std::vector<Pattern> all_patterns(std::size_t tests) {
  std::vector<Pattern> all{Pattern{}};
  for (std::size_t i = 0; i < tests; ++i) {
    std::vector<Pattern> longer;
    for (const Pattern& one : all) {
      for (const std::int8_t result : {not_done, std::int8_t{0}, std::int8_t{1}}) {
        longer.push_back(one);
        longer.back().push_back(result);
      }
    }
    all = std::move(longer);
  }
  return all;
}

double share_with(const Pattern& pattern, const std::vector<double>& positives, double between) {
  std::vector<double> thresholds;
  for (const double share : positives) {
    thresholds.push_back(normal_at(1 - share));
  }
  double sum = 0;
  double weights = 0;
  for (int n = 0; n <= shared_steps; ++n) {
    const double shared = -4.8 + 9.6 * n / shared_steps;
    const double weight = std::exp(-shared * shared / 2);
    double share = 1;
    for (std::size_t i = 0; i < pattern.size(); ++i) {
      if (pattern[i] != not_done) {
        const double negative = below_normal((thresholds[i] - std::sqrt(between) * shared) / std::sqrt(1 - between));
        share *= pattern[i] == 1 ? 1 - negative : negative;
      }
    }
    sum += weight * share;
    weights += weight;
  }
  return sum / weights;
}

}  // namespace limbledger::patients
