// tests/hazards.csv: one row a hazard, with the test that shows its control. A row without a test, a decision rule
// and a danger without a row, fail here.
#include "core/interpret/alerts/red_flag.hpp"
#include "core/interpret/rules/rule.hpp"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace limbledger::tests {

namespace {

std::vector<std::string> fields_of(const std::string& line) {
  std::vector<std::string> fields{""};
  bool quoted = false;
  for (const char c : line) {
    if (c == '"') {
      quoted = !quoted;
    } else if (c == ',' && !quoted) {
      fields.emplace_back();
    } else {
      fields.back() += c;
    }
  }
  return fields;
}

std::string all_tests() {
  std::string text;
  for (const auto& file : std::filesystem::recursive_directory_iterator(std::string(LIMBLEDGER_SOURCE_DIR) + "/tests")) {
    if (file.path().extension() == ".cpp") {
      std::ostringstream out;
      out << std::ifstream(file.path()).rdbuf();
      text += out.str();
    }
  }
  return text;
}

}  // namespace

TEST_CASE("every hazard names its cause, harm, control, a test that exists, and what remains; every rule has a hazard") {
  const std::string tests = all_tests();
  std::ifstream file(std::string(LIMBLEDGER_SOURCE_DIR) + "/tests/hazards.csv");
  std::string line;
  std::getline(file, line);
  CHECK(line == "hazard,cause,harm,control,test,remains");
  std::set<std::string> hazards;
  while (std::getline(file, line)) {
    const std::vector<std::string> fields = fields_of(line);
    INFO(line);
    REQUIRE(fields.size() == 6);
    for (const std::string& field : fields) {
      CHECK_FALSE(field.empty());
    }
    CHECK(hazards.insert(fields[0]).second);
    const bool shown = tests.find("TEST_CASE(\"" + fields[4] + "\")") != std::string::npos || tests.find(", \"" + fields[4] + "\")") != std::string::npos;
    CHECK_MESSAGE(shown, fields[4]);
  }
  for (const interpret::Rule& rule : interpret::all_rules()) {
    const auto first = hazards.lower_bound(std::string(rule.rule) + ".");
    CHECK_MESSAGE((first != hazards.end() && first->starts_with(std::string(rule.rule) + ".")), rule.rule);
  }
  for (const interpret::RedFlag& flag : interpret::all_red_flags()) {
    const auto first = hazards.lower_bound(std::string(flag.alert) + ".");
    CHECK_MESSAGE((first != hazards.end() && first->starts_with(std::string(flag.alert) + ".")), flag.alert);
  }
}

}  // namespace limbledger::tests
