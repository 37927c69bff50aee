// The Ottawa knee rule over every combination of its inputs, unknown and boundary values included, against digests made by an
// independent two-valued definition and brute force in another language (tests/outside/node/ottawa_knee.mjs), and against the
// 18 worked examples of tests/outside/data/rule_examples_okr.csv (criteria: STIELL1995).
#include "core/interpret/rules/knee/ottawa_knee.hpp"
#include "core/wire/parse.hpp"
#include "tests/outside/truth_table.hpp"

#include <doctest/doctest.h>

#include <array>
#include <map>
#include <sstream>
#include <string>
#include <vector>

using namespace limbledger;
using namespace limbledger::interpret;
using namespace limbledger::outside_test;

namespace {

const std::array<std::vector<std::string>, 9> domain{{
    {"4", "5", "17", "18", "54", "55", "unknown", "54-55", "4-5"},
    {"0", "7", "8", "unknown"},
    {"no", "yes", "unknown"},
    {"no", "yes", "unknown"},
    {"no", "yes", "unknown"},
    {"0", "89", "90", "120", "unknown"},
    {"no", "yes", "unknown"},
    {"0", "3", "4", "unknown"},
    {"no", "yes", "unknown"},
}};
const std::array<std::string, 9> names{"age", "days", "fib", "pat", "other", "flex", "imm", "steps", "excl"};

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
  const std::string text = slurp("ottawa_knee_digest.json");
  const auto document = wire::parse(text);
  REQUIRE(document.has_value());
  const wire::Node* blocks = document->child(document->root(), "blocks");
  REQUIRE(blocks != nullptr);

  std::map<std::string, std::size_t> counts;
  std::string all;
  std::size_t lines = 0;
  std::array<std::string, 9> words;
  for (const std::string& age : domain[0]) {
    for (const std::string& days : domain[1]) {
      words[0] = age;
      words[1] = days;
      std::size_t total = 1;
      for (std::size_t i = 2; i < 9; ++i) {
        total *= domain[i].size();
      }
      std::string block;
      for (std::size_t n = 0; n < total; ++n) {
        std::size_t rest = n;
        for (std::size_t i = 8; i >= 2; --i) {
          words[i] = domain[i][rest % domain[i].size()];
          rest /= domain[i].size();
        }
        const auto completed = ottawa_knee(to_input(words));
        for (std::size_t i = 0; i < words.size(); ++i) {
          block += (i == 0 ? "" : "|") + words[i];
        }
        block += " -> " + outcome_word(completed.outcome) + "; settle=" + settle_words(completed, names, ',') + "\n";
        ++counts[outcome_word(completed.outcome)];
        ++lines;
      }
      const wire::Node* expected = document->child(*blocks, age + "|" + days);
      REQUIRE(expected != nullptr);
      CAPTURE(age);
      CAPTURE(days);
      CHECK(blake2b_256(block) == expected->text);
      all += block;
    }
  }
  const wire::Node* digest = document->child(document->root(), "digest");
  REQUIRE(digest != nullptr);
  CHECK(blake2b_256(all) == digest->text);
  CHECK(lines == 174960);
  const wire::Node* expected_counts = document->child(document->root(), "counts");
  REQUIRE(expected_counts != nullptr);
  for (const auto& [outcome, count] : counts) {
    CHECK(document->child(*expected_counts, outcome)->raw == std::to_string(count));
  }
}

TEST_CASE("the knee rule gives the outcome and the settling inputs of the 18 worked examples") {
  std::istringstream rows(slurp("rule_examples_okr.csv"));
  std::size_t examples = 0;
  for (std::string row; std::getline(rows, row);) {
    if (!row.starts_with("okr-")) {
      continue;
    }
    const std::vector<std::string> cells = cells_of(row);
    REQUIRE(cells.size() >= 5);
    const auto given = wire::parse(cells[2]);
    REQUIRE(given.has_value());
    std::array<std::string, 9> words;
    for (std::size_t i = 0; i < names.size(); ++i) {
      const wire::Node* value = given->child(given->root(), names[i]);
      REQUIRE(value != nullptr);
      words[i] = value->kind == wire::NodeKind::null ? "unknown" : std::string(value->raw);
      words[i] = words[i] == "true" ? "yes" : (words[i] == "false" ? "no" : words[i]);
    }
    CAPTURE(cells[0]);
    const auto completed = ottawa_knee(to_input(words));
    CHECK(outcome_word(completed.outcome) == cells[3]);
    CHECK(settle_words(completed, names, ';') == cells[4]);
    ++examples;
  }
  CHECK(examples == 18);
}

TEST_CASE("for an unknown age alone, each of the three ages gives what worked example 15 says") {
  OttawaKnee in = to_input({"unknown", "1", "no", "no", "no", "120", "yes", "4", "no"});
  const auto completed = ottawa_knee(in);
  CHECK(completed.gives[0][0] == Outcome::not_applicable);  // under 5
  CHECK(completed.gives[0][1] == Outcome::negative);        // 5 to 54
  CHECK(completed.gives[0][2] == Outcome::positive);        // 55 or more
}
