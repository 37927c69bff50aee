#include "core/match/jaro_winkler.hpp"

#include <algorithm>

namespace limbledger::match {

namespace {
constexpr std::size_t prefix_max = 4;
constexpr double prefix_share = 0.1;
}  // namespace

double jaro(const Letters& a, const Letters& b) {
  if (a.empty() || b.empty()) {
    return a.empty() && b.empty() ? 1 : 0;
  }
  const std::size_t half = std::max(a.size(), b.size()) / 2;
  const std::size_t window = half > 0 ? half - 1 : 0;
  std::vector<bool> taken(b.size());
  Letters common_a;
  for (std::size_t i = 0; i < a.size(); ++i) {
    const std::size_t end = std::min(b.size(), i + window + 1);
    for (std::size_t j = i > window ? i - window : 0; j < end; ++j) {
      if (!taken[j] && a[i] == b[j]) {
        taken[j] = true;
        common_a.push_back(a[i]);
        break;
      }
    }
  }
  if (common_a.empty()) {
    return 0;
  }
  std::size_t out_of_order = 0;
  std::size_t at = 0;
  for (std::size_t j = 0; j < b.size(); ++j) {
    if (taken[j]) {
      out_of_order += common_a[at] == b[j] ? 0U : 1U;
      ++at;
    }
  }
  const auto m = static_cast<double>(common_a.size());
  const double t = static_cast<double>(out_of_order) / 2;
  return (m / static_cast<double>(a.size()) + m / static_cast<double>(b.size()) + (m - t) / m) / 3;
}

double jaro_winkler(const Letters& a, const Letters& b) {
  const double alike = jaro(a, b);
  std::size_t prefix = 0;
  while (prefix < prefix_max && prefix < a.size() && prefix < b.size() && a[prefix] == b[prefix]) {
    ++prefix;
  }
  return alike + static_cast<double>(prefix) * prefix_share * (1 - alike);
}

}  // namespace limbledger::match
