// A table of tests/outside/data: lines starting with # are remarks, the first other line names the columns.
// Fields in double quotes may hold commas; there are no line feeds inside fields.
#pragma once

#include <doctest/doctest.h>

#include <fstream>
#include <map>
#include <string>
#include <vector>

namespace limbledger::tests {

using CsvRow = std::map<std::string, std::string>;

[[nodiscard]] inline std::vector<std::string> csv_fields(const std::string& line) {
  std::vector<std::string> fields(1);
  bool quoted = false;
  for (const char c : line) {
    if (c == '"') {
      quoted = !quoted;
    } else if (c == ',' && !quoted) {
      fields.emplace_back();
    } else {
      fields.back().push_back(c);
    }
  }
  return fields;
}

[[nodiscard]] inline std::vector<CsvRow> read_csv(const std::string& name) {
  std::ifstream file(std::string(LIMBLEDGER_SOURCE_DIR) + "/tests/outside/data/" + name);
  REQUIRE_MESSAGE(file.good(), name);
  std::vector<std::string> names;
  std::vector<CsvRow> rows;
  for (std::string line; std::getline(file, line);) {
    if (line.empty() || line.front() == '#') {
      continue;
    }
    const std::vector<std::string> fields = csv_fields(line);
    if (names.empty()) {
      names = fields;
      continue;
    }
    REQUIRE_MESSAGE(fields.size() == names.size(), line);
    CsvRow row;
    for (std::size_t i = 0; i < names.size(); ++i) {
      row[names[i]] = fields[i];
    }
    rows.push_back(std::move(row));
  }
  REQUIRE(!rows.empty());
  return rows;
}

}  // namespace limbledger::tests
