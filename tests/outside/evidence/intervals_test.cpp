// The intervals behind a hypothesis against two others: chances drawn 400,000 times by a script in another language (node,
// tests/outside/node/evidence_intervals.mjs), and limits from counts by an independent statistics library (statsmodels,
// tests/outside/python/evidence_counts.py).
#include "core/interpret/evidence/combine.hpp"
#include "core/interpret/evidence/math.hpp"
#include "core/reference/edition.hpp"

#include "tests/outside/csv.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

using namespace limbledger;
using namespace limbledger::interpret;

namespace {

double figure_of(const tests::CsvRow& row, const std::string& name) { return std::stod(row.at(name)); }

const reference::AccuracyRow* accuracy_named(const std::string& name) {
  for (const auto& row : reference::built_in_edition()->evidence().accuracy) {
    if (row.row.text == name) {
      return &row;
    }
  }
  return nullptr;
}

const reference::PretestRow* pretest_named(const std::string& name) {
  for (const auto& row : reference::built_in_edition()->evidence().pretest) {
    if (row.row.text == name) {
      return &row;
    }
  }
  return nullptr;
}

// "accuracy.acl.lachman.SOKAL2022 positive; accuracy.acl.pivot_shift.SOKAL2022 negative"
std::vector<Ratio> ratios_of_drawn(const std::string& findings) {
  std::vector<Ratio> ratios;
  for (std::size_t at = 0; at < findings.size();) {
    const std::size_t space = findings.find(' ', at);
    const std::size_t end = std::min(findings.find(';', at), findings.size());
    const auto* row = accuracy_named(findings.substr(at, space - at));
    REQUIRE_MESSAGE(row != nullptr, findings);
    const auto ratio = ratio_of(*row, findings.substr(space + 1, end - space - 1) == "positive");
    REQUIRE(ratio.has_value());
    ratios.push_back(*ratio);
    at = end + 2;
  }
  return ratios;
}

PriorShare prior_of_drawn(const std::string& prior) {
  if (const auto* row = pretest_named(prior)) {
    return {row->low.real(), row->best.real(), row->high.real()};
  }
  const double typed = std::stod(prior);
  return {typed, typed, typed};
}

double logit_of(double share) { return std::log(share / (1 - share)); }
double share_of_logit(double value) { return 1 / (1 + std::exp(-value)); }

}  // namespace

// How far a variance of logarithms may lie from what is drawn is the facts' own page (dependence, section 3): 0.01 in limits where every
// error of a logit is at most 0.40, 0.03 up to 0.61; no claim with an empty cell. To it come four standard errors of the drawing.
TEST_CASE("chances and their limits, the prior held and the prior drawn, lie where a script in another language drew them") {
  std::size_t checked = 0;
  std::size_t several = 0;
  for (const auto& row : tests::read_csv("evidence_intervals.csv")) {
    CAPTURE(row.at("findings"));
    CAPTURE(row.at("prior"));
    const double spread = figure_of(row, "spread");
    const double drawing = 4 * figure_of(row, "error");
    const std::vector<Ratio> ratios = ratios_of_drawn(row.at("findings"));
    const Combined combined = combine(ratios);
    const PriorShare prior = prior_of_drawn(row.at("prior"));
    const double point = posterior(prior.best, combined.point);
    const RatioInterval interval = interval_of(combined);
    // The page speaks of up to 0.61; a ratio whose own logarithm is drawn is exact at any width, and so is an error above it.
    const double page = (spread <= 0.40 ? 0.01 : 0.03) + drawing;
    // The median of what is drawn is where the point lies; a mean of a skewed chance lies off it, by less than the limits do.
    const auto& median = row.at("fixed_median");
    CHECK_MESSAGE(std::abs(point - std::stod(median)) <= (spread > 1 ? 0.03 : 0.01) + drawing, point << " not " << median);
    CHECK(point > figure_of(row, "fixed_low"));
    CHECK(point < figure_of(row, "fixed_high"));
    CHECK(std::abs(point - figure_of(row, "fixed_mean")) <= (figure_of(row, "fixed_high") - figure_of(row, "fixed_low")) / 8 + drawing);
    if (spread > 1) {
      continue;  // an empty cell: the two differ by up to 0.16, and what is shown lies nearer the prior
    }
    if (std::any_of(ratios.begin(), ratios.end(), [](const Ratio& one) { return one.stated; })) {
      // Of few people: what is told is wider than what was printed, at both ends. Beyond 0.61 the page claims nothing; there the two
      // differ by up to 0.05.
      const double claimed = spread <= 0.61 ? page : 0.05 + drawing;
      CHECK(posterior(prior.best, interval.low) <= figure_of(row, "fixed_low") + claimed);
      CHECK(posterior(prior.best, interval.high) >= figure_of(row, "fixed_high") - claimed);
      continue;
    }
    CHECK_MESSAGE(std::abs(posterior(prior.best, interval.low) - figure_of(row, "fixed_low")) <= page, posterior(prior.best, interval.low));
    CHECK_MESSAGE(std::abs(posterior(prior.best, interval.high) - figure_of(row, "fixed_high")) <= page, posterior(prior.best, interval.high));
    // With the prior drawn as well, variances of logits add (section 3).
    const double prior_error = prior.low < prior.high ? (logit_of(prior.high) - logit_of(prior.low)) / (2 * z_95) : 0;
    const double both = z_95 * own_root(combined.se * combined.se + prior_error * prior_error);
    CHECK(std::abs(share_of_logit(logit_of(point) - both) - figure_of(row, "drawn_low")) <= page);
    CHECK(std::abs(share_of_logit(logit_of(point) + both) - figure_of(row, "drawn_high")) <= page);
    // The ends that the range is built from, lowest prior with lowest ratio, hold what is drawn of both.
    CHECK(posterior(prior.low, interval.low) <= figure_of(row, "drawn_low") + page);
    CHECK(posterior(prior.high, interval.high) >= figure_of(row, "drawn_high") - page);
    ++checked;
    several += row.at("findings").find(';') == std::string::npos ? 0U : 1U;
  }
  CHECK(checked >= 60);
  CHECK(several >= 20);
}

TEST_CASE("every counted prior of the edition has the Wilson limits of an independent statistics library") {
  std::size_t checked = 0;
  for (const auto& row : tests::read_csv("evidence_counts_shares.csv")) {
    CAPTURE(row.at("row"));
    const auto* known = pretest_named(row.at("row"));
    if (row.at("figure") != "best") {
      continue;
    }
    REQUIRE(known != nullptr);
    REQUIRE(known->positive.has_value());
    REQUIRE(known->people.has_value());
    CHECK(std::to_string(known->positive->steps) == row.at("positive"));
    CHECK(std::to_string(known->people->steps) == row.at("people"));
    // Three decimals are stored.
    CHECK(std::abs(known->best.real() - figure_of(row, "share")) < 0.00051);
    CHECK(std::abs(known->low.real() - figure_of(row, "low")) < 0.00051);
    CHECK(std::abs(known->high.real() - figure_of(row, "high")) < 0.00051);
    ++checked;
  }
  CHECK(checked >= 20);
}

TEST_CASE("GOOSSENS2015 and DECARY2018ACL: the stored limits of sensitivity and specificity are those of their counts by the library") {
  std::size_t checked = 0;
  for (const auto& row : tests::read_csv("evidence_counts_shares.csv")) {
    CAPTURE(row.at("row"));
    CAPTURE(row.at("figure"));
    const auto* known = accuracy_named(row.at("row"));
    if (known == nullptr) {
      continue;
    }
    const bool sens = row.at("figure") == "sens";
    // Two decimals are printed, and the counts are rebuilt from them.
    CHECK(std::abs((sens ? known->sens : known->spec)->real() - figure_of(row, "share")) < 0.0051);
    CHECK(std::abs((sens ? known->sens_low : known->spec_low)->real() - figure_of(row, "low")) < 0.0081);
    CHECK(std::abs((sens ? known->sens_high : known->spec_high)->real() - figure_of(row, "high")) < 0.0081);
    ++checked;
  }
  CHECK(checked == 4);
}

TEST_CASE("likelihood ratios from counts, their errors and limits are those of an independent statistics library") {
  std::size_t checked = 0;
  std::size_t of_rows = 0;
  std::size_t of_few = 0;
  const auto near = [](double value, double expected) { return std::abs(value - expected) <= 1e-6 * std::max(1.0, expected); };
  for (const auto& row : tests::read_csv("evidence_counts_ratios.csv")) {
    CAPTURE(row.at("row"));
    CAPTURE(row.at("result"));
    const auto cell = [&](const char* name) { return reference::PeopleCount{std::stoll(row.at(name))}; };
    reference::AccuracyRow counted;
    counted.counts = reference::FourCells{cell("tp"), cell("fn"), cell("fp"), cell("tn")};
    const auto* known = accuracy_named(row.at("row"));
    if (known != nullptr && known->counts) {
      counted = *known;  // what the edition holds, not what the table copied
      CHECK(known->counts->tp == cell("tp"));
      ++of_rows;
    }
    const auto ratio = ratio_of(counted, row.at("result") == "positive");
    REQUIRE(ratio.has_value());
    if (ratio->stated) {
      // A group of fewer than 20: never believed closer than our stated error, never closer than the library says.
      CHECK((cell("tp").steps + cell("fn").steps < 20 || cell("fp").steps + cell("tn").steps < 20));
      CHECK(near(ratio->se, std::max(figure_of(row, "se"), 0.5)));
      ++of_few;
      continue;
    }
    const bool held_to_better = counted.lr_pos_cap.has_value() && row.at("result") == "positive";
    const bool halved = counted.design == reference::Design::case_control;
    if (!held_to_better && !halved) {
      CHECK(near(ratio->value, figure_of(row, "ratio")));
      CHECK(near(interval_of(combine({*ratio})).low, figure_of(row, "low")));
      CHECK(near(interval_of(combine({*ratio})).high, figure_of(row, "high")));
    }
    CHECK(near(ratio->se, figure_of(row, "se")));
    ++checked;
  }
  CHECK(checked + of_few >= 90);
  CHECK(checked >= 50);
  CHECK(of_rows >= 2);
}

TEST_CASE("GOOSSENS2015 prints the ratio of a positive Thessaly test as 1.37 (1.10 to 1.70); its counts give that to the last digit") {
  for (const auto& row : tests::read_csv("evidence_counts_ratios.csv")) {
    if (row.at("row") != "accuracy.meniscus.thessaly_20.GOOSSENS2015" || row.at("result") != "positive") {
      continue;
    }
    const auto* printed = accuracy_named(row.at("row"));
    REQUIRE(printed != nullptr);
    CHECK(std::abs(printed->lr_pos->real() - figure_of(row, "ratio")) < 0.01);
    CHECK(std::abs(printed->lr_pos_low->real() - figure_of(row, "low")) < 0.0051);
    CHECK(std::abs(printed->lr_pos_high->real() - figure_of(row, "high")) < 0.0051);
  }
}
