// How much each level of agreement says, as Fellegi and Sunter (JASA 1969;64:1183) weigh it: log2(m / u), where m is how often
// the records of one person agree so, and u how often those of two people do. A field that is missing weighs nothing. The sum is
// worth what independence is worth: births are one field because their parts go wrong together. It is a weight of evidence in
// bits, shown with its working, and decides nothing: a person does. Starting values are ours, from the ranges of the
// project's page on matching (own figures and published error rates), and are learnt anew from the clinic's own people.
#pragma once

#include "core/match/compare.hpp"

#include <array>
#include <map>
#include <vector>

namespace limbledger::match {

[[nodiscard]] double log2_of(double x);

// By field and level; [0] is missing and not used. Each adds up to 1 over its levels.
using Shares = std::array<std::array<double, levels_max>, fields>;

struct Model {
  Shares m{};
  Shares u{};
  double prior = 0;       // that two of all people are one
  bool learnt = false;    // from the clinic's own people
};

// What is taken before anything is known of a clinic, for so many people; one in seven is thought to be registered twice (10 to
// 20 % in published registers).
[[nodiscard]] Model starting_model(std::size_t people);

[[nodiscard]] double weight_of(const Model& model, Field field, std::uint8_t level);
[[nodiscard]] double total_weight(const Model& model, const Pattern& pattern);
// log2 of the odds, prior and evidence together.
[[nodiscard]] double log_odds(const Model& model, double weight);

// Patterns of agreement with how many pairs show each; of pairs that a person decided, whether they are one.
struct Counted {
  std::map<Pattern, double> pairs;
  std::map<Pattern, double> one;   // decided: the same person
  std::map<Pattern, double> two;   // decided: two people
};

// Expectation and maximisation over compared pairs, until nothing moves by more than a millionth or 200 rounds are over. `tied`
// is how many pairs the given model counts for, so that a level nobody showed does not get the share 0; 0 is the plain method.
struct Learnt {
  Model model;           // prior: the share of one person's pairs among those compared
  std::size_t rounds = 0;
};
[[nodiscard]] Learnt learn(const Model& from, const Counted& counted, double tied);

// u by counting pairs that were drawn without regard to agreement.
[[nodiscard]] Shares count_shares(const Shares& from, const std::map<Pattern, double>& pairs, double tied);

}  // namespace limbledger::match
