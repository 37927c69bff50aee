// Jaro-Winkler against Winkler's printed pairs (jaro_winkler_pairs.csv), and weights against worked ones
// (fellegi_sunter_cases.csv): each says where it is from. log2 against the C library's.
#include "core/match/jaro_winkler.hpp"
#include "core/match/weights.hpp"
#include "tests/outside/csv.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

namespace limbledger::match::published_test {

namespace {

// With one field of two levels: m and u of agreeing, and the rest.
match::Model of_one_field(double m, double u) {
  match::Model model;
  model.m[2] = {0, m, 1 - m};
  model.u[2] = {0, u, 1 - u};
  return model;
}

}  // namespace

TEST_CASE("Jaro and Jaro-Winkler give the values that Winkler printed, and the six digits of the definition") {
  std::size_t printed = 0;
  for (const auto& row : tests::read_csv("jaro_winkler_pairs.csv")) {
    const match::Letters a = match::to_letters(row.at("string1"));
    const match::Letters b = match::to_letters(row.at("string2"));
    INFO(row.at("string1"), " ", row.at("string2"));
    CHECK(std::abs(match::jaro(a, b) - std::stod(row.at("jaro_6dp"))) < 0.0000006);
    CHECK(std::abs(match::jaro_winkler(a, b) - std::stod(row.at("winkler_6dp"))) < 0.0000006);
    CHECK(match::jaro_winkler(a, b) == doctest::Approx(match::jaro_winkler(b, a)));
    const std::string& winkler = row.at("published_winkler");
    if (!winkler.empty() && winkler != "0.000") {
      ++printed;
      CHECK(std::abs(match::jaro(a, b) - std::stod(row.at("published_jaro"))) < 0.00051);
      CHECK(std::abs(match::jaro_winkler(a, b) - std::stod(winkler)) < 0.00051);
    }
  }
  CHECK(printed == 22);
}

TEST_CASE("weights of agreeing and differing are the worked ones, and their sums give the worked odds") {
  std::map<std::string, match::Model> models;
  std::size_t sums = 0;
  for (const auto& row : tests::read_csv("fellegi_sunter_cases.csv")) {
    INFO(row.at("name"));
    if (row.at("kind") != "pattern") {
      const match::Model model = of_one_field(std::stod(row.at("m")), std::stod(row.at("u")));
      const double close = row.at("kind") == "published" ? 0.006 : 0.000001;
      CHECK(std::abs(match::weight_of(model, match::Field::sex, 1) - std::stod(row.at("agree"))) < close);
      if (!row.at("disagree").empty()) {
        CHECK(std::abs(match::weight_of(model, match::Field::sex, 2) - std::stod(row.at("disagree"))) < close);
      }
      models.emplace(row.at("name"), model);
      continue;
    }
    double weight = 0;
    for (const char* field : {"family_name", "given_name", "birth_year", "birth_month", "birth_day", "sex", "village"}) {
      const std::string& agrees = row.at(field);
      weight += match::weight_of(models.at(field), match::Field::sex, agrees.empty() ? std::uint8_t{0} : (agrees == "1" ? std::uint8_t{1} : std::uint8_t{2}));
    }
    CHECK(std::abs(weight - std::stod(row.at("weight"))) < 0.000003);
    match::Model prior;
    prior.prior = 0.001;
    const double odds = std::exp2(match::log_odds(prior, weight));
    CHECK(std::abs(odds / (1 + odds) - std::stod(row.at("posterior"))) < 0.0000006);
    ++sums;
  }
  CHECK(sums == 6);
}

TEST_CASE("our logarithm is the C library's") {
  for (double x = 1e-7; x < 1e7; x *= 1.37) {
    CHECK(match::log2_of(x) == doctest::Approx(std::log2(x)).epsilon(1e-13));
  }
}

}  // namespace limbledger::match::published_test
