// An arithmetic check on simulated patients (patients.hpp says what is assumed): where tests depend on each other, the discounted
// combination fits better than plain multiplication of the same findings, and of the people of whom a range was told, so many have the
// condition. It proves arithmetic under its own assumptions only; nothing here was tested on people. Clinical safety, requirement 24.
#include "tests/simulation/patients/calibration.hpp"

#include "tests/simulation/patients/patients.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <string>

using namespace limbledger;
using namespace limbledger::patients;

namespace {

std::uint64_t patients_wanted() {
  if (const char* wanted = std::getenv("LIMBLEDGER_PATIENTS")) {
    return std::strtoull(wanted, nullptr, 10);
  }
  const char* tier = std::getenv("LIMBLEDGER_TIER");
  return tier != nullptr && std::string_view(tier) == "full" ? 400'000 : 40'000;
}

constexpr std::int64_t priors_per_cent[] = {5, 10, 20, 30, 40, 50};

// What is told of one pattern at one prior.
struct Chance {
  std::size_t used = 0;   // findings; 0: nothing was told
  double discounted = 0;  // the program's point
  double product = 0;     // the same findings, plainly multiplied
  double everything = 0;  // all that was done, several of one mechanism too, plainly multiplied
  std::pair<std::int64_t, std::int64_t> range;
};

Chance chance_of(const Setup& setup, const Pattern& pattern, std::int64_t per_cent) {
  Chance chance;
  const auto said = judged(exam_of(setup, pattern), setup, {{setup.condition, {per_cent}}});
  if (!said || !said->result.range) {
    return chance;
  }
  std::vector<interpret::Ratio> every;
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    if (pattern[i] != not_done) {
      every.push_back(*interpret::ratio_of(*setup.tests[i].row, pattern[i] == 1));
    }
  }
  const auto ratios = ratios_used(setup, pattern, said->result);
  const double prior = static_cast<double>(per_cent) / 100;
  chance.used = ratios.size();
  chance.discounted = interpret::posterior(prior, interpret::held(interpret::combine(ratios).point));
  chance.product = interpret::posterior(prior, interpret::held(interpret::combine(ratios, 1.0).point));
  chance.everything = interpret::posterior(prior, interpret::combine(every, 1.0).point);
  chance.range = {said->result.range->low.steps, said->result.range->high.steps};
  // What is compared is what the program told: its working has three decimals.
  CHECK(std::abs(number_of_line(said->working, "point: ") - std::clamp(chance.discounted, 0.001, 0.99)) <= 0.00051);
  return chance;
}

struct Fit {
  Told discounted;
  Told product;
  Told everything;
  double difference = 0;  // of squared distances, product less discounted
  double squares = 0;
  struct Seen {
    std::uint64_t people = 0;
    std::uint64_t present = 0;
  };
  std::map<std::pair<std::int64_t, std::int64_t>, Seen> ranges;

  void add(const Chance& chance, bool present) {
    discounted.add(chance.discounted, present);
    product.add(chance.product, present);
    everything.add(chance.everything, present);
    const double came = present ? 1 : 0;
    const double less = (chance.product - came) * (chance.product - came) - (chance.discounted - came) * (chance.discounted - came);
    difference += less;
    squares += less * less;
    Seen& seen = ranges[chance.range];
    ++seen.people;
    seen.present += present ? 1U : 0U;
  }
  void add(const Fit& other) {
    discounted.add(other.discounted);
    product.add(other.product);
    everything.add(other.everything);
    difference += other.difference;
    squares += other.squares;
  }
  [[nodiscard]] double people() const { return static_cast<double>(discounted.people()); }
  // How much lower the score of the discounted is, in its own standard errors.
  [[nodiscard]] double better_by() const {
    const double mean = difference / people();
    return mean / std::sqrt((squares / people() - mean * mean) / people());
  }
  // Share of people told a range in which the share of those told the same lies: half a step of its rounding, and three errors of counting.
  [[nodiscard]] double ranges_kept() const {
    std::uint64_t kept = 0;
    for (const auto& [range, seen] : ranges) {
      const double share = static_cast<double>(seen.present) / static_cast<double>(seen.people);
      const double about = 0.025 + 3 * std::sqrt(std::max(share * (1 - share), 0.01) / static_cast<double>(seen.people));
      const bool low = range.first <= 5 || share >= static_cast<double>(range.first) / 100 - about;
      const bool high = range.second >= 95 || share <= static_cast<double>(range.second) / 100 + about;
      kept += low && high ? seen.people : 0;
    }
    return static_cast<double>(kept) / people();
  }
};

// People of whom two findings or more were combined: with one there is nothing to discount.
Fit simulate(const Setup& setup, const Dependence& dependence, std::uint64_t seed) {
  Fit fit;
  Draw draw(seed);
  std::map<std::pair<Pattern, std::int64_t>, Chance> known;
  for (std::uint64_t n = patients_wanted(); n > 0; --n) {
    const std::int64_t per_cent = priors_per_cent[draw.below(std::size(priors_per_cent))];
    const bool present = uniform(draw) < static_cast<double>(per_cent) / 100;
    const auto key = std::pair(draw_pattern(setup, present, dependence, draw), per_cent);
    auto at = known.find(key);
    if (at == known.end()) {
      at = known.emplace(key, chance_of(setup, key.first, per_cent)).first;
    }
    if (at->second.used > 1) {
      fit.add(at->second, present);
    }
  }
  return fit;
}

std::string figures(const Fit& fit) {
  char text[256];
  std::snprintf(text, sizeof text,
                "%.0f people, %.3f had it, told %.3f; Brier %.4f discounted, %.4f product, %.4f everything; slope %.2f, %.2f, %.2f; ", fit.people(),
                fit.discounted.observed(), fit.discounted.mean(), fit.discounted.brier(), fit.product.brier(), fit.everything.brier(),
                fit.discounted.slope(), fit.product.slope(), fit.everything.slope());
  char rest[64];
  std::snprintf(rest, sizeof rest, "better by %.1f errors", fit.better_by());
  return std::string(text) + rest;
}

}  // namespace

TEST_CASE("simulated patients with tests that depend on each other: discounted fits better than multiplied, by Brier score and slope") {
  Fit all;
  Fit apart;
  std::size_t combined = 0;
  for (const Setup& setup : all_setups()) {
    if (setup.groups < 2) {
      continue;
    }
    CAPTURE(setup.condition.text);
    const Fit fit = simulate(setup, {}, 1 + combined);
    MESSAGE(setup.condition.text << std::string(setup.acute ? ", fresh: " : ": ") << figures(fit) << "; ranges kept " << fit.ranges_kept());
    REQUIRE(fit.people() > 1000);
    // No condition is worse off, beyond chance; each range holds for nearly all of whom it was told.
    CHECK(fit.better_by() > -3);
    CHECK(fit.ranges_kept() >= 0.9);
    all.add(fit);
    apart.add(simulate(setup, {0.0, 0.0}, 1001 + combined));
    ++combined;
  }
  REQUIRE(combined >= 2);
  MESSAGE("all: " << figures(all));
  MESSAGE("all, were tests independent: " << figures(apart));
  CHECK(all.discounted.brier() < all.product.brier());
  CHECK(all.better_by() > 3);
  CHECK(std::abs(all.discounted.slope() - 1) < std::abs(all.product.slope() - 1));
  CHECK(all.product.slope() < 1);  // plain multiplication claims too much
  // Several tests of one mechanism know a little more than one: multiplied, the score is lower for some, and far too much is claimed.
  CHECK(std::abs(all.discounted.slope() - 1) < std::abs(all.everything.slope() - 1));
  // The other way round where nothing depends on anything: the discount has its price, which is why it is told.
  CHECK(apart.product.brier() < apart.discounted.brier());
}

TEST_CASE("the Brier score and the calibration slope of chances worked out by hand") {
  // Four people told 0.8, three of whom had it, and two told 0.4, one of whom had it: (3 x 0.04 + 0.64 + 0.36 + 0.16) / 6.
  Told told;
  told.add(0.8, true, 3);
  told.add(0.8, false, 1);
  told.add(0.4, true, 1);
  told.add(0.4, false, 1);
  CHECK(std::abs(told.brier() - 1.28 / 6) < 1e-12);
  // Two chances are fitted exactly: logits 1.0986 and 0 of what came, on logits 1.3863 and -0.4055 of what was told.
  CHECK(std::abs(told.slope() - (std::log(3.0) - 0) / (std::log(4.0) - std::log(2.0 / 3))) < 1e-9);
  CHECK(std::abs(told.observed() - 4.0 / 6) < 1e-12);
}
