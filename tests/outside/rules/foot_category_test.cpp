// The category of the feet over every combination of its inputs, against digests made from the printed table and brute force in another
// language (tests/outside/node/foot_category.mjs), and against its 10 worked examples (IWGDF2019).
#include "core/interpret/rules/foot/foot_category.hpp"

#include <string>

namespace limbledger::interpret {

inline std::string outcome_word(FootCategory category) {
  const auto at = static_cast<std::size_t>(category);
  return at < 4 ? std::to_string(at) : (category == FootCategory::active ? "not_applicable(active)" : "undetermined");
}

}  // namespace limbledger::interpret

#include "tests/outside/truth_table.hpp"

#include <doctest/doctest.h>

#include <array>

using namespace limbledger;
using namespace limbledger::interpret;
using namespace limbledger::outside_test;

namespace {

const std::vector<std::string> yes_or_no{"no", "yes", "unknown"};
const TruthTable<7> feet{{"ulcer_now", "lops", "pad", "deform", "hx_ulcer", "hx_amp", "esrd"},
                         {{yes_or_no, yes_or_no, yes_or_no, yes_or_no, yes_or_no, yes_or_no, yes_or_no}}};

FootHistory to_feet(const std::array<std::string, 7>& words) {
  FootHistory in{};
  for (std::size_t i = 0; i < in.size(); ++i) {
    in[i] = to_tri(words[i]);
  }
  return in;
}

}  // namespace

TEST_CASE("the category of the feet is the printed table's, over every combination of its inputs") {
  check_every_combination(feet, "foot_category_digest.json", 2'187, [](const auto& words) { return foot_category(to_feet(words)); });
}

TEST_CASE("the category of the feet and what settles it are those of the 10 worked examples") {
  check_worked_examples(feet, "rule_examples_iwgdf.csv", "iw-", 10, [](const auto& words) { return foot_category(to_feet(words)); });
}
