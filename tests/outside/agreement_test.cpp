// Kappa against worked figures in print. Sources: A. R. Feinstein and D. V. Cicchetti, J Clin Epidemiol 1990;43:543-549 (two tables with
// the same raw agreement of 0.85: kappa 0.70 and 0.32), as printed again by B. B. Gerstman, Epidemiology Kept Simple, tables 10.6A and
// 10.6B; and the films of illustrative example 10.1 there (raw 0.8943, kappa 0.524). What has no kappa follows from its definition
// (J. Cohen, Educ Psychol Meas 1960;20:37-46: the divisor is what chance alone leaves open).
#include "core/interpret/after/agreement.hpp"

#include <doctest/doctest.h>

namespace limbledger::interpret::agreement_test {

namespace {

// Both yes, first alone, second alone, both no.
Agreement of_table(int both, int first_alone, int second_alone, int neither) {
  std::vector<DoubleFinding> pairs;
  const auto add = [&](int many, const char* first, const char* second) { pairs.insert(pairs.end(), static_cast<std::size_t>(many), {first, second}); };
  add(both, "yes", "yes");
  add(first_alone, "yes", "no");
  add(second_alone, "no", "yes");
  add(neither, "no", "no");
  return agreement_of(pairs);
}

}  // namespace

TEST_CASE("HC-032: kappa of two printed tables with one raw agreement, with the commonness that parts them") {
  const Agreement even = of_table(40, 9, 6, 45);
  CHECK(even.agree->steps == 850);
  CHECK(even.kappa->steps == 70);
  CHECK(even.commonest->text == "no");
  CHECK(even.commonest_of->steps == 525);
  const Agreement skewed = of_table(80, 10, 5, 5);
  CHECK(skewed.agree->steps == 850);
  CHECK(skewed.kappa->steps == 32);
  CHECK(skewed.commonest->text == "yes");
  CHECK(skewed.commonest_of->steps == 875);
}

TEST_CASE("kappa of the printed films: 0.8943 raw and 0.524") {
  const Agreement films = of_table(1467, 782, 1309, 16232);
  CHECK(films.pairs.steps == 19790);
  CHECK(films.agree->steps == 894);
  CHECK(films.kappa->steps == 52);
}

TEST_CASE("HC-032: where both always say the same one thing there is no kappa, and nothing is divided by zero") {
  const Agreement all = of_table(12, 0, 0, 0);
  CHECK(all.agree->steps == 1000);
  CHECK_FALSE(all.kappa.has_value());
  CHECK(all.no_kappa->text == "one_answer_only");
  CHECK(all.commonest_of->steps == 1000);
  const Agreement none = of_table(0, 0, 0, 0);
  CHECK_FALSE(none.agree.has_value());
  CHECK_FALSE(none.kappa.has_value());
  CHECK(none.no_kappa->text == "no_pairs");
}

TEST_CASE("kappa by its definition at the ends: 1 where all agree on two answers, -1 where two even examiners always differ, 0 at chance") {
  CHECK(of_table(5, 0, 0, 5).kappa->steps == 100);
  CHECK(of_table(0, 5, 5, 0).kappa->steps == -100);
  CHECK(of_table(25, 25, 25, 25).kappa->steps == 0);
}

TEST_CASE("HC-032: fifty pairs, 48 both negative and one discordant each way: raw 96 of 100, kappa about -0.02, and the commonness is said") {
  const Agreement clinic = of_table(0, 1, 1, 48);
  CHECK(clinic.agree->steps == 960);
  CHECK(clinic.kappa->steps == -2);
  CHECK(clinic.commonest->text == "no");
  CHECK(clinic.commonest_of->steps == 980);
}

}  // namespace limbledger::interpret::agreement_test
