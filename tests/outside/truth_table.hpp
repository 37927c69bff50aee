// What the truth tables of decision rules share: reading what the scripts of tests/outside/node wrote, the words of a line, and
// the walk over every combination and over the worked examples.
#pragma once

#include "core/interpret/rules/knee/inputs.hpp"
#include "core/wire/parse.hpp"
#include "core/wire/type.hpp"

#include <doctest/doctest.h>
#include <sodium.h>

#include <array>
#include <fstream>
#include <iterator>
#include <map>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

namespace limbledger::outside_test {

using interpret::Between;
using interpret::Outcome;
using interpret::Tri;

inline std::string slurp(const std::string& name) {
  std::ifstream file(std::string(LIMBLEDGER_SOURCE_DIR) + "/tests/outside/data/rules/" + name, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

inline std::string blake2b_256(const std::string& text) {
  std::array<unsigned char, 32> hash{};
  crypto_generichash(hash.data(), hash.size(), reinterpret_cast<const unsigned char*>(text.data()), text.size(), nullptr, 0);
  std::array<char, 65> hex{};
  sodium_bin2hex(hex.data(), hex.size(), hash.data(), hash.size());
  return hex.data();
}

inline Tri to_tri(const std::string& text) {
  if (text == "unknown") {
    return Tri::undetermined;
  }
  return interpret::tri(text == "yes");
}

inline std::optional<Between> to_between(const std::string& text, std::int64_t times = 1) {
  if (text == "unknown") {
    return std::nullopt;
  }
  const auto dash = text.find('-');
  const std::int64_t low = std::stoi(text.substr(0, dash)) * times;
  return Between{low, dash == std::string::npos ? low : std::stoi(text.substr(dash + 1)) * times};
}

inline std::string outcome_word(Outcome outcome) { return std::string(wire::type_of<Outcome>().words[static_cast<std::size_t>(outcome)]); }

// One row of a CSV table whose cells may stand in double quotes.
inline std::vector<std::string> cells_of(const std::string& row) {
  std::vector<std::string> cells{""};
  bool quoted = false;
  for (std::size_t i = 0; i < row.size(); ++i) {
    if (row[i] == '"' && quoted && i + 1 < row.size() && row[i + 1] == '"') {
      cells.back() += row[++i];
    } else if (row[i] == '"') {
      quoted = !quoted;
    } else if (row[i] == ',' && !quoted) {
      cells.emplace_back();
    } else if (row[i] != '\r') {
      cells.back() += row[i];
    }
  }
  return cells;
}

template <std::size_t Count, class Result, std::size_t Named>
std::string settle_words(const interpret::Completed<Count, Result>& completed, const std::array<std::string, Named>& names, char between) {
  std::string out;
  for (std::size_t i = 0; i < Named; ++i) {
    if (completed.settles[i]) {
      out += (out.empty() ? "" : std::string(1, between)) + names[i];
    }
  }
  return out;
}

// Inputs of one rule in the order of its table, and the values each takes there.
template <std::size_t Count>
struct TruthTable {
  std::array<std::string, Count> names;
  std::array<std::vector<std::string>, Count> domain;
};

// Every combination, one block for each pair of the first two inputs (age and days); `judge` takes the words of one line.
template <std::size_t Count, class Judge>
void check_every_combination(const TruthTable<Count>& table, const std::string& digest_file, std::size_t lines_expected, Judge judge) {
  const std::string text = slurp(digest_file);
  const auto document = wire::parse(text);
  REQUIRE(document.has_value());
  const wire::Node* blocks = document->child(document->root(), "blocks");
  REQUIRE(blocks != nullptr);
  std::map<std::string, std::size_t> counts;
  std::string all;
  std::size_t lines = 0;
  std::size_t in_block = 1;
  for (std::size_t i = 2; i < Count; ++i) {
    in_block *= table.domain[i].size();
  }
  std::array<std::string, Count> words;
  for (const std::string& age : table.domain[0]) {
    for (const std::string& days : table.domain[1]) {
      words[0] = age;
      words[1] = days;
      std::string block;
      for (std::size_t n = 0; n < in_block; ++n) {
        std::size_t rest = n;
        for (std::size_t i = Count - 1; i >= 2; --i) {
          words[i] = table.domain[i][rest % table.domain[i].size()];
          rest /= table.domain[i].size();
        }
        const auto completed = judge(words);
        for (std::size_t i = 0; i < Count; ++i) {
          block += (i == 0 ? "" : "|") + words[i];
        }
        block += " -> " + outcome_word(completed.outcome) + "; settle=" + settle_words(completed, table.names, ',') + "\n";
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
  CHECK(lines == lines_expected);
  const wire::Node* expected_counts = document->child(document->root(), "counts");
  REQUIRE(expected_counts != nullptr);
  for (const auto& [outcome, count] : counts) {
    CHECK(document->child(*expected_counts, outcome)->raw == std::to_string(count));
  }
}

// The rows that start with `prefix`: what was given, the outcome and what settles it.
template <std::size_t Count, class Judge>
void check_worked_examples(const TruthTable<Count>& table, const std::string& file, const std::string& prefix, std::size_t expected, Judge judge) {
  std::istringstream rows(slurp(file));
  std::size_t examples = 0;
  for (std::string row; std::getline(rows, row);) {
    if (!row.starts_with(prefix)) {
      continue;
    }
    const std::vector<std::string> cells = cells_of(row);
    REQUIRE(cells.size() >= 5);
    const auto given = wire::parse(cells[2]);
    REQUIRE(given.has_value());
    std::array<std::string, Count> words;
    for (std::size_t i = 0; i < Count; ++i) {
      const wire::Node* value = given->child(given->root(), table.names[i]);
      REQUIRE(value != nullptr);
      words[i] = value->kind == wire::NodeKind::null ? "unknown" : std::string(value->raw);
      words[i] = words[i] == "true" ? "yes" : (words[i] == "false" ? "no" : words[i]);
    }
    CAPTURE(cells[0]);
    const auto completed = judge(words);
    CHECK(outcome_word(completed.outcome) == cells[3]);
    CHECK(settle_words(completed, table.names, ';') == cells[4]);
    ++examples;
  }
  CHECK(examples == expected);
}

}  // namespace limbledger::outside_test
