// Worlds that differ from the printed figures as far as their intervals allow: sensitivity, specificity and prior drawn from counts
// (Beta with 0.5 added to each side), from their intervals (normal logits), or, where a row has no interval, from its ratios with the
// error that the program states for them (0.5 of the logarithm; such that a positive speaks for and a negative against).
#pragma once

#include "tests/simulation/patients/patients.hpp"

#include <cstdint>
#include <utility>
#include <vector>

namespace limbledger::patients {

[[nodiscard]] std::int64_t binomial(std::int64_t of, double share, Draw& draw);
[[nodiscard]] double drawn_share(const reference::Measure& best, const reference::Measure& low, const reference::Measure& high, Draw& draw);
// Sensitivity and specificity.
[[nodiscard]] std::pair<double, double> drawn_accuracy(const SimulatedTest& test, Draw& draw);

// The first test of each group, as the program keeps one.
[[nodiscard]] Setup one_a_group(const Setup& setup);
// Every pattern with a place for each test; the first is the one where nothing was done.
[[nodiscard]] std::vector<Pattern> all_patterns(std::size_t tests);
// Share of people with these results, of whom each test is positive in such a share. The numbers behind the tests share `between` and
// nothing else (one test a group), so one sum over what they share is enough.
[[nodiscard]] double share_with(const Pattern& pattern, const std::vector<double>& positives, double between);

}  // namespace limbledger::patients
