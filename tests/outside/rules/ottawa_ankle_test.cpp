// The two Ottawa rules of an injured ankle over every combination of their inputs, unknown and boundary values included, against
// digests made by an independent two-valued definition and brute force in another language (tests/outside/node/ottawa_ankle.mjs and
// ottawa_midfoot.mjs), and against the worked examples of tests/outside/data/rules/rule_examples_oar.csv and _omr.csv (STIELL1993).
#include "core/interpret/rules/ankle/ottawa_ankle.hpp"
#include "core/interpret/rules/ankle/ottawa_midfoot.hpp"
#include "tests/outside/truth_table.hpp"

#include <doctest/doctest.h>

#include <array>
#include <string>

using namespace limbledger;
using namespace limbledger::interpret;
using namespace limbledger::outside_test;

namespace {

TruthTable<8> table_of(const std::string& first, const std::string& second) {
  const std::vector<std::string> answers{"no", "yes", "unknown"};
  return {{"age", "days", "zone", first, second, "imm", "steps", "excl"},
          {{{"1", "2", "17", "18", "55", "unknown", "1-2"}, {"0", "10", "11", "unknown", "10-11"}, answers, answers, answers, answers, {"0", "3", "4", "unknown"}, answers}}};
}

FootInjury to_foot(const std::array<std::string, 8>& words) {
  FootInjury in;
  in.age = to_between(words[0]);
  in.days = to_between(words[1]);
  in.zone = to_tri(words[2]);
  in.first = to_tri(words[3]);
  in.second = to_tri(words[4]);
  in.imm = to_tri(words[5]);
  in.steps = to_between(words[6]);
  in.excl = to_tri(words[7]);
  return in;
}

Completed<foot_input_count> judged(const std::array<std::string, 8>& words) { return ottawa_series(to_foot(words)); }

}  // namespace

TEST_CASE("the ankle rule gives what the independent definition gives, over every combination of its inputs") {
  check_every_combination(table_of("lat", "med"), "ottawa_ankle_digest.json", 34'020, &judged);
}

TEST_CASE("the midfoot rule gives what the independent definition gives, over every combination of its inputs") {
  check_every_combination(table_of("mt5", "nav"), "ottawa_midfoot_digest.json", 34'020, &judged);
}

TEST_CASE("the ankle rule gives the outcome and the settling inputs of the 10 worked examples") {
  check_worked_examples(table_of("lat", "med"), "rule_examples_oar.csv", "oar-", 10, &judged);
}

TEST_CASE("the midfoot rule gives the outcome and the settling inputs of the 7 worked examples") {
  check_worked_examples(table_of("mt5", "nav"), "rule_examples_omr.csv", "omr-", 7, &judged);
}

TEST_CASE("tables and inputs of the ankle and the midfoot rule name the same places in the same order") {
  const auto names_of = [](const Series& series) { return std::vector<std::string_view>(series.names.begin(), series.names.end()); };
  CHECK(names_of(ottawa_ankle_series()) == std::vector<std::string_view>{"age", "days", "zone", "lat", "med", "imm", "steps", "excl", "pregnant"});
  CHECK(names_of(ottawa_midfoot_series()) == std::vector<std::string_view>{"age", "days", "zone", "mt5", "nav", "imm", "steps", "excl", "pregnant"});
  CHECK(ottawa_ankle_series().item(FootInput::first) == "ankle.lateral_malleolus_tender");
  CHECK(ottawa_ankle_series().item(FootInput::second) == "ankle.medial_malleolus_tender");
  CHECK(ottawa_midfoot_series().item(FootInput::first) == "foot.fifth_metatarsal_base_tender");
  CHECK(ottawa_midfoot_series().item(FootInput::second) == "foot.navicular_tender");
}
