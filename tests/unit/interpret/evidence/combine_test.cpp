// The arithmetic of hypotheses: its laws (order, monotone, neutral, plain Bayes, the two ends of the discount), the bands and
// the rounding of requirement 4 of clinical safety, zero cells, and exp, ln and root against the standard library.
#include "core/interpret/evidence/combine.hpp"
#include "core/interpret/evidence/math.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

using namespace limbledger;
using namespace limbledger::interpret;

namespace {

Ratio ratio(double value) {
  Ratio one;
  one.value = value;
  return one;
}

std::vector<Ratio> ratios(std::initializer_list<double> values) {
  std::vector<Ratio> out;
  for (const double value : values) {
    out.push_back(ratio(value));
  }
  return out;
}

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed * 0x9E3779B97F4A7C15U + 1) {}
  double between(double low, double high) {
    state_ ^= state_ << 13U;
    state_ ^= state_ >> 7U;
    state_ ^= state_ << 17U;
    return low + (high - low) * static_cast<double>(state_ >> 11U) / 9007199254740992.0;
  }

 private:
  std::uint64_t state_;
};

std::vector<Ratio> random_ratios(Dice& dice, int most) {
  std::vector<Ratio> out;
  const int n = 1 + static_cast<int>(dice.between(0, most));
  for (int i = 0; i < n; ++i) {
    out.push_back(ratio(std::exp(dice.between(-3, 3))));
  }
  return out;
}

OutOf range(std::int64_t low, std::int64_t high) {
  OutOf out;
  out.low = {low};
  out.high = {high};
  out.of = {100};
  return out;
}

std::string bands(std::int64_t low, std::int64_t high, bool second = false) {
  std::string out;
  for (const Band band : bands_of(range(low, high), second)) {
    out += (out.empty() ? "" : ",") + std::string(wire::type_of<Band>().words[static_cast<std::size_t>(band)]);
  }
  return out;
}

}  // namespace

TEST_CASE("own exp, ln and root agree with the standard library to 1e-13 of their value") {
  Dice dice(3);
  for (int i = 0; i < 20000; ++i) {
    const double x = dice.between(-30, 30);
    CHECK(std::abs(own_exp(x) / std::exp(x) - 1) < 1e-13);
    const double y = std::exp(dice.between(-20, 20));
    CHECK(std::abs(own_ln(y) - std::log(y)) < 1e-13 * std::max(1.0, std::abs(std::log(y))));
    CHECK(std::abs(own_root(y) / std::sqrt(y) - 1) < 1e-13);
  }
  CHECK(own_exp(0) == 1);
  CHECK(own_ln(1) == 0);
  CHECK(to_steps(0.0745, 1000) == 75);
  CHECK(to_steps(-2.5, 1) == -3);
  CHECK(to_steps(0.4999, 1) == 0);
}

TEST_CASE("laws of the combination: order, neutral findings, plain Bayes, both ends of the discount") {
  Dice dice(11);
  for (int i = 0; i < 3000; ++i) {
    std::vector<Ratio> given = random_ratios(dice, 6);
    const double before = combine(given).sum;
    std::reverse(given.begin(), given.end());
    CHECK(std::abs(combine(given).sum - before) < 1e-12);
    given.push_back(ratio(1));
    CHECK(std::abs(combine(given).sum - before) < 1e-12);
    double product = 1;
    double strongest_for = 1;
    double strongest_against = 1;
    for (const Ratio& one : given) {
      product *= one.value;
      strongest_for = std::max(strongest_for, one.value);
      strongest_against = std::min(strongest_against, one.value);
    }
    CHECK(combine(given, 1).point == doctest::Approx(product).epsilon(1e-9));
    CHECK(combine(given, 0).point == doctest::Approx(strongest_for * strongest_against).epsilon(1e-9));
  }
  CHECK(combine(ratios({7, 0.3})).point == doctest::Approx(2.1).epsilon(1e-12));
  CHECK(posterior(0.25, combine(ratios({3})).point) == doctest::Approx(0.5).epsilon(1e-12));
}

TEST_CASE("a finding above 1 never lowers, one below 1 never raises, and turning one from negative to positive never lowers") {
  Dice dice(23);
  const PriorShare prior{0.1, 0.2, 0.35};
  for (int i = 0; i < 3000; ++i) {
    const std::vector<Ratio> given = random_ratios(dice, 5);
    const Chances before = chances(prior, combine(given));
    std::vector<Ratio> more = given;
    more.push_back(ratio(std::exp(dice.between(0.001, 3))));
    std::vector<Ratio> less = given;
    less.push_back(ratio(std::exp(dice.between(-3, -0.001))));
    const Chances up = chances(prior, combine(more));
    const Chances down = chances(prior, combine(less));
    const double hair = 1e-12;
    CHECK(up.low >= before.low - hair);
    CHECK(up.point >= before.point - hair);
    CHECK(up.high >= before.high - hair);
    CHECK(down.low <= before.low + hair);
    CHECK(down.point <= before.point + hair);
    CHECK(down.high <= before.high + hair);
    std::vector<Ratio> turned = less;
    turned.back() = ratio(std::exp(dice.between(0.001, 3)));
    const Chances after = chances(prior, combine(turned));
    CHECK(after.low >= down.low - hair);
    CHECK(after.point >= down.point - hair);
    CHECK(after.high >= down.high - hair);
  }
}

TEST_CASE("the range holds the point, the best single finding and the product, and never leaves 0.04 to 25") {
  const PriorShare prior{0.2, 0.3, 0.4};
  const Combined strong = combine(ratios({20, 10, 8}));
  CHECK(strong.product > 25);
  CHECK(chances(prior, strong).high == doctest::Approx(posterior(0.4, 25)));
  CHECK(chances(prior, strong).low == doctest::Approx(posterior(0.2, 20)));
  const Combined weak = combine(ratios({0.05, 0.1}));
  CHECK(chances(prior, weak).low == doctest::Approx(posterior(0.2, 0.04)));
  CHECK(chances(prior, weak).high == doctest::Approx(posterior(0.4, 0.05)));
}

TEST_CASE("C4: bands by the whole shown range, two neighbours both named, more than two cannot be told") {
  CHECK(bands(5, 5) == "speak_against");
  CHECK(bands(5, 10) == "speak_against,leave_open");
  CHECK(bands(10, 50) == "leave_open");
  CHECK(bands(10, 55) == "leave_open,favour");
  CHECK(bands(55, 80) == "favour");
  CHECK(bands(50, 80) == "leave_open,favour");
  CHECK(bands(55, 85) == "favour,strongly_favour");
  CHECK(bands(85, 95) == "strongly_favour");
  CHECK(bands(5, 55) == "cannot_tell");
  CHECK(bands(40, 95) == "cannot_tell");
  // Without an interval of its own nothing stands above favour.
  CHECK(bands(85, 95, true) == "favour");
  CHECK(bands(55, 85, true) == "favour");
}

TEST_CASE("C4: counts of 100 rounded to 5, never under 5 nor over 95") {
  CHECK(in_hundred(0.0001) == 5);
  CHECK(in_hundred(0.074) == 5);
  CHECK(in_hundred(0.075) == 10);
  CHECK(in_hundred(0.524) == 50);
  CHECK(in_hundred(0.525) == 55);
  CHECK(in_hundred(0.9249) == 90);
  CHECK(in_hundred(0.9999) == 95);
}

TEST_CASE("C4: where rounding leaves one figure the fives around it are said, but for the ends, which are words") {
  const auto shown = [](double low, double high) {
    const OutOf range = out_of_hundred({low, low, high});
    return std::pair(range.low.steps, range.high.steps);
  };
  CHECK(shown(0.486, 0.516) == std::pair<std::int64_t, std::int64_t>(45, 55));
  CHECK(shown(0.48, 0.49) == std::pair<std::int64_t, std::int64_t>(45, 50));
  CHECK(shown(0.51, 0.51) == std::pair<std::int64_t, std::int64_t>(50, 55));
  CHECK(shown(0.5, 0.5) == std::pair<std::int64_t, std::int64_t>(45, 55));
  CHECK(shown(0.52, 0.53) == std::pair<std::int64_t, std::int64_t>(50, 55));
  CHECK(shown(0.02, 0.03) == std::pair<std::int64_t, std::int64_t>(5, 5));    // fewer than 10 in 100
  CHECK(shown(0.97, 0.98) == std::pair<std::int64_t, std::int64_t>(95, 95));  // more than 90 in 100
  // More for the condition never shows less: every pair of chances a step apart.
  for (int low = 1; low < 200; ++low) {
    for (int high = low; high < 200; ++high) {
      const auto here = shown(low / 200.0, high / 200.0);
      const auto raised = shown((low + 1) / 200.0, std::max(low + 1, high) / 200.0);
      const auto wider = shown(low / 200.0, (high + 1) / 200.0);
      REQUIRE(raised.first >= here.first);
      REQUIRE(raised.second >= here.second);
      REQUIRE(wider.first >= here.first);
      REQUIRE(wider.second >= here.second);
    }
  }
}

TEST_CASE("zero cells get a half each; a share of 1 without counts gives no ratio; case-control counts half and is held to 10") {
  reference::AccuracyRow row;
  row.counts = reference::FourCells{{9}, {1}, {0}, {10}};
  const auto positive = ratio_of(row, true);
  REQUIRE(positive.has_value());
  CHECK(positive->value == doctest::Approx((9.5 / 11) / (0.5 / 11)));
  CHECK(positive->sum == "(9.5 / 11) / (0.5 / 11) = 19, 0.5 added to each count");
  row.design = reference::Design::case_control;
  row.spec = reference::Measure{10000};
  CHECK(ratio_of(row, true)->value == doctest::Approx(std::sqrt(19.0)));
  row.counts = reference::FourCells{{90}, {10}, {0}, {1000}};
  CHECK(ratio_of(row, true)->value == 10);
  CHECK(ratio_of(row, false)->value == doctest::Approx(std::sqrt((10.5 / 101) / (1000.5 / 1001))));
  reference::AccuracyRow shares;
  shares.sens = reference::Measure{9000};
  shares.spec = reference::Measure{10000};
  CHECK(!ratio_of(shares, true).has_value());
  shares.spec = reference::Measure{7000};
  CHECK(ratio_of(shares, true)->value == doctest::Approx(3));
  CHECK(ratio_of(shares, true)->stated);
  CHECK(ratio_of(shares, true)->se == stated_error);
  shares.lr_pos_cap = reference::Measure{20000};
  CHECK(ratio_of(shares, true)->value == 2);
}
