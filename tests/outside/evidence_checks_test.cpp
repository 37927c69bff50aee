// The arithmetic of hypotheses against values worked out by a separate script (tests/outside/data/evidence_checks.csv names the
// sources of each case), and the built-in edition against intervals of prevalence from the printed counts.
#include "core/interpret/evidence/combine.hpp"
#include "core/reference/edition.hpp"

#include "tests/outside/csv.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

using namespace limbledger;
using namespace limbledger::interpret;

namespace {

// The number after `name` in the inputs of a check; "28/134" is a quotient.
double number_after(const std::string& text, const std::string& name) {
  const std::size_t at = text.find(name);
  REQUIRE_MESSAGE(at != std::string::npos, text);
  std::size_t used = 0;
  const std::string rest = text.substr(at + name.size());
  double value = std::stod(rest, &used);
  if (used < rest.size() && rest[used] == '/') {
    value /= std::stod(rest.substr(used + 1));
  }
  return value;
}

bool has(const std::string& text, const std::string& piece) { return text.find(piece) != std::string::npos; }

std::optional<reference::Measure> measure(double value) { return reference::Measure{std::llround(value * 10000)}; }

// "sens=0.81 (0.73-0.87)" into a figure with its limits.
void read_interval(const std::string& text, const std::string& name, std::optional<reference::Measure>& value, std::optional<reference::Measure>& low,
                   std::optional<reference::Measure>& high) {
  if (!has(text, name)) {
    return;
  }
  value = measure(number_after(text, name));
  const std::string rest = text.substr(text.find(name));
  const std::size_t open = rest.find(" (");
  if (open != std::string::npos && rest.find(';') > open) {
    low = measure(std::stod(rest.substr(open + 2)));
    high = measure(std::stod(rest.substr(rest.find('-', open) + 1)));
  }
}

reference::AccuracyRow row_of(const std::string& inputs) {
  reference::AccuracyRow row;
  read_interval(inputs, "sens=", row.sens, row.sens_low, row.sens_high);
  read_interval(inputs, "spec=", row.spec, row.spec_low, row.spec_high);
  read_interval(inputs, "LR+=", row.lr_pos, row.lr_pos_low, row.lr_pos_high);
  read_interval(inputs, "LR-=", row.lr_neg, row.lr_neg_low, row.lr_neg_high);
  if (has(inputs, "TP=")) {
    const auto count = [&](const char* name) { return reference::PeopleCount{std::llround(number_after(inputs, name))}; };
    row.counts = reference::FourCells{count("TP="), count("FN="), count("FP="), count("TN=")};
  }
  return row;
}

std::vector<Ratio> list_of(const std::string& inputs) {
  std::vector<Ratio> ratios;
  std::string list = inputs.substr(inputs.find('[') + 1);
  list = list.substr(0, list.find(']'));
  for (std::size_t at = 0; at < list.size();) {
    std::size_t used = 0;
    Ratio one;
    one.value = std::stod(list.substr(at), &used);
    ratios.push_back(one);
    at += used + 2;
  }
  return ratios;
}

bool close(double value, const tests::CsvRow& row) {
  const double expected = std::stod(row.at("value"));
  const double tolerance = std::stod(row.at("abs_tolerance"));
  // The script wrote eight digits; above 10 they are relative.
  return std::abs(value - expected) <= std::max(tolerance, std::abs(expected) * 1e-6);
}

}  // namespace

TEST_CASE("single tests K01 to K13: ratios, their errors, posteriors and limits are those of the separate script") {
  std::size_t checked = 0;
  for (const auto& check : tests::read_csv("evidence_checks.csv")) {
    const std::string& id = check.at("check_id");
    const std::string& inputs = check.at("inputs");
    const std::string& quantity = check.at("quantity");
    if (id.substr(0, 3) > "K13" || has(inputs, "se_logit") || has(quantity, "se_logit") || has(quantity, "sens_") || has(quantity, "spec_")) {
      continue;
    }
    CAPTURE(id);
    const reference::AccuracyRow row = row_of(inputs);
    const bool positive = has(quantity, "LR+") || has(quantity, "pos") || (has(inputs, "LR+") && !has(quantity, "neg"));
    const bool negative = has(quantity, "LR-") || has(quantity, "neg") || has(inputs, "LR-");
    REQUIRE((positive || negative));
    const auto ratio = ratio_of(row, !negative);
    REQUIRE(ratio.has_value());
    const Combined combined = combine({*ratio});
    const RatioInterval interval = interval_of(combined);
    double value = 0;
    if (has(quantity, "se_logLR")) {
      value = combined.se;
    } else if (has(quantity, "delta_lo")) {
      value = posterior(number_after(inputs, "pre="), interval.low);
    } else if (has(quantity, "delta_hi")) {
      value = posterior(number_after(inputs, "pre="), interval.high);
    } else if (has(quantity, "post")) {
      value = posterior(number_after(inputs, "pre="), combined.point);
    } else if (has(quantity, "_lo")) {
      value = interval.low;
    } else if (has(quantity, "_hi")) {
      value = interval.high;
    } else {
      value = combined.point;
    }
    CHECK_MESSAGE(close(value, check), id << " " << quantity << " " << value << " not " << check.at("value"));
    ++checked;
  }
  CHECK(checked > 60);
}

TEST_CASE("single tests K01 to K11: limits by the error of the logarithm lie where a separate script drew them") {
  std::size_t checked = 0;
  for (const auto& check : tests::read_csv("evidence_drawn.csv")) {
    const std::string& inputs = check.at("inputs");
    const std::string& quantity = check.at("quantity");
    const auto ratio = ratio_of(row_of(inputs), !(has(quantity, "neg") || has(inputs, "LR-")));
    REQUIRE(ratio.has_value());
    const RatioInterval interval = interval_of(combine({*ratio}));
    const double value = posterior(number_after(inputs, "pre="), has(quantity, "_lo") ? interval.low : interval.high);
    const double allowed = check.at("check_id").starts_with("K04") ? 0.03 : 0.01;
    CHECK_MESSAGE(std::abs(value - std::stod(check.at("value"))) <= allowed, check.at("check_id") << " " << value << " not " << check.at("value"));
    ++checked;
  }
  CHECK(checked == 28);
}

TEST_CASE("combinations K15 to K21 and K28: product, best single and signed geometric discount are those of the separate script") {
  std::size_t checked = 0;
  for (const auto& check : tests::read_csv("evidence_checks.csv")) {
    const std::string& inputs = check.at("inputs");
    const std::string& quantity = check.at("quantity");
    if (!has(inputs, "LRs=[")) {
      continue;
    }
    const Combined combined = combine(list_of(inputs));
    double ratio = combined.point;
    if (has(quantity, "naive")) {
      ratio = combined.product;
    } else if (has(quantity, "best_single")) {
      ratio = combined.best;
    }
    const double value = has(quantity, "post") ? posterior(number_after(inputs, "pre="), ratio) : ratio;
    CHECK_MESSAGE(close(value, check), check.at("check_id") << " " << value << " not " << check.at("value"));
    ++checked;
  }
  CHECK(checked >= 40);
}

TEST_CASE("K29 and K31: a general practice patient with pivot shift, Lachman and pop, and the limits of 0.04 and 25") {
  std::map<std::string, tests::CsvRow> checks;
  for (const auto& check : tests::read_csv("evidence_checks.csv")) {
    checks[check.at("check_id")] = check;
  }
  std::vector<Ratio> three;
  for (const double value : {2.3, 5.4, 0.55 / 0.06}) {
    Ratio one;
    one.value = value;
    three.push_back(one);
  }
  const double prior = 28.0 / 134;
  const Combined combined = combine(three);
  CHECK(close(combined.point, checks.at("K29a")));
  CHECK(close(posterior(prior, combined.point), checks.at("K29b")));
  CHECK(close(posterior(prior, combined.product), checks.at("K29f")));
  CHECK(close(posterior(prior, held(combined.point)), checks.at("K29h")));
  CHECK(close(posterior(0.3, held(32.870272)), checks.at("K31")));
  CHECK(close(posterior(0.3, held(0.021401752)), checks.at("K31b")));
}

TEST_CASE("K30: what a model with the pair's covariance gives lies between the best single finding and the product, which bound the range") {
  const auto ratio_for = [](double sens, double spec, bool positive) {
    reference::AccuracyRow row;
    row.sens = measure(sens);
    row.spec = measure(spec);
    return *ratio_of(row, positive);
  };
  std::size_t checked = 0;
  for (const auto& check : tests::read_csv("evidence_checks.csv")) {
    if (!check.at("check_id").starts_with("K30")) {
      continue;
    }
    const std::string& quantity = check.at("quantity");  // LR(+-): Lachman, pivot shift
    const Combined both = combine({ratio_for(0.81, 0.85, quantity[3] == '+'), ratio_for(0.55, 0.94, quantity[4] == '+')});
    const double modelled = std::stod(check.at("value"));
    CAPTURE(quantity);
    CHECK(modelled > std::min({both.point, both.best, both.product}));
    CHECK(modelled < std::max({both.point, both.best, both.product}));
    ++checked;
  }
  CHECK(checked == 3);
}

TEST_CASE("published predictive values follow from the printed shares within their rounding") {
  // PEAT2006 prints 44 % and 72 % at a prevalence of 33 %; WAGEMAKERS2010 prints 0.39 for the pop (missing answers: 0.03 allowed).
  const auto predict = [](double prior, double sens, double spec) {
    reference::AccuracyRow row;
    row.sens = measure(sens);
    row.spec = measure(spec);
    return std::pair(posterior(prior, ratio_of(row, true)->value), posterior(prior, ratio_of(row, false)->value));
  };
  CHECK(std::abs(predict(0.33, 0.41, 0.75).first - 0.44) < 0.01);
  CHECK(std::abs(1 - predict(0.33, 0.41, 0.75).second - 0.72) < 0.005);
  CHECK(std::abs(predict(28.0 / 134, 0.63, 0.73).first - 0.39) < 0.03);
  CHECK(std::abs(predict(28.0 / 134, 0.71, 0.71).first - 0.42) < 0.03);
}

TEST_CASE("K27: the edition's limits of a prevalence are the Wilson limits of the printed counts") {
  std::map<std::string, std::vector<double>> wilson;  // "28/134" -> p, low, high
  for (const auto& check : tests::read_csv("evidence_checks.csv")) {
    if (check.at("check_id").starts_with("K27")) {
      wilson[check.at("inputs")].push_back(std::stod(check.at("value")));
    }
  }
  const auto* edition = reference::built_in_edition();
  REQUIRE(edition != nullptr);
  std::size_t checked = 0;
  for (const reference::PretestRow& row : edition->evidence().pretest) {
    if (!row.positive || !row.people) {
      continue;
    }
    const auto known = wilson.find(std::to_string(row.positive->steps) + "/" + std::to_string(row.people->steps));
    if (known == wilson.end()) {
      continue;
    }
    CAPTURE(row.row.text);
    CHECK(std::abs(row.best.real() - known->second[0]) < 0.00051);
    CHECK(std::abs(row.low.real() - known->second[1]) < 0.00051);
    CHECK(std::abs(row.high.real() - known->second[2]) < 0.00051);
    ++checked;
  }
  CHECK(checked >= 12);
}
