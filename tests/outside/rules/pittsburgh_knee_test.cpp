// The Pittsburgh knee rule over every combination of its inputs, unknown and boundary values included, against digests made by
// an independent two-valued definition and brute force in another language (tests/outside/node/pittsburgh_knee.mjs), and against
// the 9 worked examples of tests/outside/data/rules/rule_examples_pkr.csv (criteria: SEABERG1994, SEABERG1998).
#include "core/interpret/rules/knee/pittsburgh_knee.hpp"
#include "tests/outside/truth_table.hpp"

#include <doctest/doctest.h>

#include <array>
#include <string>

using namespace limbledger;
using namespace limbledger::interpret;
using namespace limbledger::outside_test;

namespace {

const TruthTable<5> pittsburgh{{"age", "days", "blunt", "steps", "excl"},
                               {{
                                   {"0", "11", "12", "50", "51", "unknown", "50-51", "11-12"},
                                   {"0", "7", "8", "unknown"},
                                   {"no", "yes", "unknown"},
                                   {"0", "3", "4", "unknown"},
                                   {"no", "yes", "unknown"},
                               }}};

PittsburghKnee to_blunt(const std::array<std::string, 5>& words) {
  PittsburghKnee in;
  in.age = to_between(words[0]);
  in.days = to_between(words[1]);
  in.blunt = to_tri(words[2]);
  in.steps = to_between(words[3]);
  in.excl = to_tri(words[4]);
  return in;
}

}  // namespace

TEST_CASE("the Pittsburgh knee rule gives what the independent definition gives, over every combination of its inputs") {
  check_every_combination(pittsburgh, "pittsburgh_knee_digest.json", 1'152, [](const auto& words) { return pittsburgh_knee(to_blunt(words)); });
}

TEST_CASE("the Pittsburgh knee rule gives the outcome and the settling inputs of the 9 worked examples") {
  check_worked_examples(pittsburgh, "rule_examples_pkr.csv", "pkr-", 9, [](const auto& words) { return pittsburgh_knee(to_blunt(words)); });
}
