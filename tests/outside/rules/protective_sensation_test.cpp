// Protective sensation of a foot over every combination of its inputs against digests made by an independent two-valued definition
// and brute force in another language (tests/outside/node/protective_sensation.mjs), and against worked examples
// (IWGDF_ADDENDUM, FORK_RESTATED, IWGDF2019, IPTT2020).
#include "core/interpret/rules/foot/protective_sensation.hpp"
#include "tests/outside/truth_table.hpp"

#include <doctest/doctest.h>

#include <array>
#include <string>

using namespace limbledger;
using namespace limbledger::interpret;
using namespace limbledger::outside_test;

namespace {

const std::vector<std::string> lost_or_not{"no", "yes", "unknown"};
const TruthTable<10> sensation{
    {"filament", "touch", "site_toe", "site_head_1", "site_head_5", "fork", "toe_1", "toe_3", "toe_5", "toes_of_other_foot"},
    {{
        {"no", "yes"},
        {"no", "yes"},
        lost_or_not,
        lost_or_not,
        lost_or_not,
        lost_or_not,
        lost_or_not,
        lost_or_not,
        lost_or_not,
        {"0", "1", "2", "unknown", "0-1"},
    }}};

ProtectiveSensation to_foot(const std::array<std::string, 10>& words) {
  ProtectiveSensation foot;
  foot.filament = words[0] == "yes";
  foot.touch = words[1] == "yes";
  for (std::size_t n = 0; n < 3; ++n) {
    foot.site[n] = to_tri(words[2 + n]);
    foot.toe[n] = to_tri(words[6 + n]);
  }
  foot.fork = to_tri(words[5]);
  foot.other = to_between(words[9]);
  return foot;
}

}  // namespace

TEST_CASE("protective sensation gives what the independent definition gives, over every combination of its inputs") {
  check_every_combination(sensation, "protective_sensation_digest.json", 43'740, [](const auto& words) { return protective_sensation(to_foot(words)); });
}

TEST_CASE("protective sensation gives the outcome and what settles it of six worked examples") {
  check_worked_examples(sensation, "rule_examples_lops.csv", "lops-", 6, [](const auto& words) { return protective_sensation(to_foot(words)); });
}
