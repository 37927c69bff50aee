// The laws of a knee exam that look at hypotheses and rules alone; each changes findings and puts them back, and gives how often it was
// met. What does not hold fails the test that calls it.
#pragma once

#include "core/interpret/statement.hpp"
#include "tests/unit/interpret/support.hpp"

#include <cstdint>
#include <vector>

namespace limbledger::knee_laws {

using interpret_test::Bench;

// No band from a row that may not compute: gives the bands.
[[nodiscard]] std::uint64_t bands_from_good_rows(const Bench& made, const std::vector<interpret::Hypothesis>& hypotheses);
// Turning a result from negative to positive lowers no hypothesis for which it speaks: gives the hypotheses looked at again.
[[nodiscard]] std::uint64_t positive_never_lowers(Bench& made, const std::vector<interpret::Hypothesis>& before);
// An undetermined rule is settled by exactly the inputs it names: gives the answers tried.
[[nodiscard]] std::uint64_t settled_by_what_is_named(Bench& made, const std::vector<interpret::RuleResult>& rules);

// Any one of several methods answers such a rule, and one that was not begun asks nothing.
[[nodiscard]] bool joins_methods(const interpret::RuleResult& rule);

struct Taken {
  std::uint64_t away = 0;
  std::uint64_t opened = 0;
};
// Any single answer that a decided rule used, taken away, leaves the outcome or opens it.
[[nodiscard]] Taken unknown_is_never_more_certain(Bench& made, const std::vector<interpret::RuleResult>& rules);

}  // namespace limbledger::knee_laws
