// Simulated patients for every condition that computes: the condition drawn by its prior, results of tests drawn by the accuracy that the
// edition computes with, dependent on each other. What is assumed stands here and nowhere else; such a run shows arithmetic under these
// assumptions and nothing about people.
//
// Behind each test lies a normal number, apart in those with and those without the condition; the test is positive above the threshold
// that gives its sensitivity, or one less its specificity. Two tests of one group share a correlation of 0.65: what the only joint figures
// give for two tests of one mechanism (GOOSSENS2015: rho 0.652804 in K22 of tests/outside/data/evidence_checks.csv); two of different
// groups 0.3, weaker: our convention. Each test is done in 8 of 10 people.
#pragma once

#include "core/interpret/evidence/combine.hpp"
#include "core/interpret/evidence/judge.hpp"
#include "tests/unit/interpret/draw.hpp"
#include "tests/unit/interpret/support.hpp"

#include <optional>
#include <string>
#include <vector>

namespace limbledger::patients {

using interpret_test::Bench;
using interpret_test::Draw;

struct Dependence {
  double within = 0.65;
  double between = 0.3;
};

[[nodiscard]] double uniform(Draw& draw);  // between 0 and 1, neither
[[nodiscard]] double normal(Draw& draw);
[[nodiscard]] double below_normal(double x);   // share of a standard normal below x
[[nodiscard]] double normal_at(double share);  // its inverse
[[nodiscard]] double logit(double share);
[[nodiscard]] double share_of(double logit);

// One test of a group that may compute both ways, with the shares that its two ratios imply.
struct SimulatedTest {
  const reference::EvidenceGroup* group = nullptr;
  const reference::GroupMember* member = nullptr;
  const reference::AccuracyRow* row = nullptr;
  double sens = 0;
  double spec = 0;
  bool second_class = false;  // no interval was printed: a stated error
};

// A condition in fresh knees (injured two days ago) or older ones (thirty days), and its tests that may compute, no item in two of them.
struct Setup {
  model::Word condition;
  bool acute = false;
  std::vector<SimulatedTest> tests;
  std::size_t groups = 0;  // with one test or more
};
[[nodiscard]] std::vector<Setup> all_setups();

// Not done, negative, positive: one a test.
using Pattern = std::vector<std::int8_t>;
inline constexpr std::int8_t not_done = -1;

[[nodiscard]] Pattern draw_pattern(const Setup& setup, bool present, const Dependence& dependence, Draw& draw);

// What the interpretation says of such results, through its own door.
[[nodiscard]] Bench exam_of(const Setup& setup, const Pattern& pattern);
[[nodiscard]] std::optional<interpret::JudgedHypothesis> judged(const Bench& made, const Setup& setup,
                                                                const std::vector<interpret::TypedPrior>& priors);
// The ratios of the rows that it used.
[[nodiscard]] std::vector<interpret::Ratio> ratios_used(const Setup& setup, const Pattern& pattern, const interpret::Hypothesis& said);
// The last number of the line of the working that begins so.
[[nodiscard]] double number_of_line(const interpret::Working& working, const std::string& begins);

}  // namespace limbledger::patients
