// The Pittsburgh knee rule over every combination of its inputs, unknown and boundary values included, against digests made by
// an independent two-valued definition and brute force in another language (tests/outside/node/pittsburgh_knee.mjs), and against
// the 9 worked examples of tests/outside/data/rule_examples_pkr.csv (criteria: SEABERG1994, SEABERG1998).
#include "core/interpret/rules/knee/pittsburgh_knee.hpp"
#include "core/wire/parse.hpp"
#include "tests/outside/truth_table.hpp"

#include <doctest/doctest.h>

#include <map>
#include <sstream>

using namespace limbledger;
using namespace limbledger::interpret;
using namespace limbledger::outside_test;

namespace {

const std::array<std::vector<std::string>, 5> blunt_domain{{
    {"0", "11", "12", "50", "51", "unknown", "50-51", "11-12"},
    {"0", "7", "8", "unknown"},
    {"no", "yes", "unknown"},
    {"0", "3", "4", "unknown"},
    {"no", "yes", "unknown"},
}};
const std::array<std::string, 5> blunt_names{"age", "days", "blunt", "steps", "excl"};

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
  const std::string text = slurp("pittsburgh_knee_digest.json");
  const auto document = wire::parse(text);
  REQUIRE(document.has_value());
  const wire::Node* blocks = document->child(document->root(), "blocks");
  REQUIRE(blocks != nullptr);
  std::map<std::string, std::size_t> counts;
  std::string all;
  std::size_t lines = 0;
  std::array<std::string, 5> words;
  for (const std::string& age : blunt_domain[0]) {
    for (const std::string& days : blunt_domain[1]) {
      words[0] = age;
      words[1] = days;
      std::size_t total = 1;
      for (std::size_t i = 2; i < 5; ++i) {
        total *= blunt_domain[i].size();
      }
      std::string block;
      for (std::size_t n = 0; n < total; ++n) {
        std::size_t rest = n;
        for (std::size_t i = 4; i >= 2; --i) {
          words[i] = blunt_domain[i][rest % blunt_domain[i].size()];
          rest /= blunt_domain[i].size();
        }
        const auto completed = pittsburgh_knee(to_blunt(words));
        for (std::size_t i = 0; i < words.size(); ++i) {
          block += (i == 0 ? "" : "|") + words[i];
        }
        block += " -> " + outcome_word(completed.outcome) + "; settle=" + settle_words(completed, blunt_names, ',') + "\n";
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
  CHECK(lines == 1152);
  const wire::Node* expected_counts = document->child(document->root(), "counts");
  REQUIRE(expected_counts != nullptr);
  for (const auto& [outcome, count] : counts) {
    CHECK(document->child(*expected_counts, outcome)->raw == std::to_string(count));
  }
}

TEST_CASE("the Pittsburgh knee rule gives the outcome and the settling inputs of the 9 worked examples") {
  std::istringstream rows(slurp("rule_examples_pkr.csv"));
  std::size_t examples = 0;
  for (std::string row; std::getline(rows, row);) {
    if (!row.starts_with("pkr-")) {
      continue;
    }
    const std::vector<std::string> cells = cells_of(row);
    REQUIRE(cells.size() >= 5);
    const auto given = wire::parse(cells[2]);
    REQUIRE(given.has_value());
    std::array<std::string, 5> words;
    for (std::size_t i = 0; i < blunt_names.size(); ++i) {
      const wire::Node* value = given->child(given->root(), blunt_names[i]);
      REQUIRE(value != nullptr);
      words[i] = value->kind == wire::NodeKind::null ? "unknown" : std::string(value->raw);
      words[i] = words[i] == "true" ? "yes" : (words[i] == "false" ? "no" : words[i]);
    }
    CAPTURE(cells[0]);
    const auto completed = pittsburgh_knee(to_blunt(words));
    CHECK(outcome_word(completed.outcome) == cells[3]);
    CHECK(settle_words(completed, blunt_names, ';') == cells[4]);
    ++examples;
  }
  CHECK(examples == 9);
}
