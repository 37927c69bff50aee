// The Ottawa knee rule over every combination of its inputs, unknown and boundary values included, against digests made by an
// independent two-valued definition and brute force in another language (tests/outside/node/ottawa_knee.mjs), and against the
// 18 worked examples of tests/outside/data/rules/rule_examples_okr.csv (criteria: STIELL1995).
#include "core/interpret/rules/knee/ottawa_knee.hpp"
#include "tests/outside/truth_table.hpp"

#include <doctest/doctest.h>

#include <array>
#include <string>

using namespace limbledger;
using namespace limbledger::interpret;
using namespace limbledger::outside_test;

namespace {

const TruthTable<9> ottawa{{"age", "days", "fib", "pat", "other", "flex", "imm", "steps", "excl"},
                           {{
                               {"4", "5", "17", "18", "54", "55", "unknown", "54-55", "4-5"},
                               {"0", "7", "8", "unknown"},
                               {"no", "yes", "unknown"},
                               {"no", "yes", "unknown"},
                               {"no", "yes", "unknown"},
                               {"0", "89", "90", "120", "unknown"},
                               {"no", "yes", "unknown"},
                               {"0", "3", "4", "unknown"},
                               {"no", "yes", "unknown"},
                           }}};

OttawaKnee to_input(const std::array<std::string, 9>& words) {
  OttawaKnee in;
  in.age = to_between(words[0]);
  in.days = to_between(words[1]);
  in.fib = to_tri(words[2]);
  in.pat = to_tri(words[3]);
  in.other = to_tri(words[4]);
  in.flex = to_between(words[5], 10);
  in.imm = to_tri(words[6]);
  in.steps = to_between(words[7]);
  in.excl = to_tri(words[8]);
  return in;
}

}  // namespace

TEST_CASE("the knee rule gives what the independent definition gives, over every combination of its inputs") {
  check_every_combination(ottawa, "ottawa_knee_digest.json", 174'960, [](const auto& words) { return ottawa_knee(to_input(words)); });
}

TEST_CASE("the knee rule gives the outcome and the settling inputs of the 18 worked examples") {
  check_worked_examples(ottawa, "rule_examples_okr.csv", "okr-", 18, [](const auto& words) { return ottawa_knee(to_input(words)); });
}

TEST_CASE("for an unknown age alone, each of the three ages gives what worked example 15 says") {
  OttawaKnee in = to_input({"unknown", "1", "no", "no", "no", "120", "yes", "4", "no"});
  const auto completed = ottawa_knee(in);
  CHECK(completed.gives[0][0] == Outcome::not_applicable);  // under 5
  CHECK(completed.gives[0][1] == Outcome::negative);        // 5 to 54
  CHECK(completed.gives[0][2] == Outcome::positive);        // 55 or more
}
