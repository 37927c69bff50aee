// What the truth tables of decision rules share: reading what the scripts of tests/outside/node wrote, and the words of a line.
#pragma once

#include "core/interpret/rules/knee/inputs.hpp"
#include "core/wire/type.hpp"

#include <sodium.h>

#include <array>
#include <fstream>
#include <iterator>
#include <optional>
#include <string>
#include <vector>

namespace limbledger::outside_test {

using interpret::Between;
using interpret::Outcome;
using interpret::Tri;

inline std::string slurp(const std::string& name) {
  std::ifstream file(std::string(LIMBLEDGER_SOURCE_DIR) + "/tests/outside/data/" + name, std::ios::binary);
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

template <std::size_t Count, std::size_t Named>
std::string settle_words(const interpret::Completed<Count>& completed, const std::array<std::string, Named>& names, char between) {
  std::string out;
  for (std::size_t i = 0; i < Named; ++i) {
    if (completed.settles[i]) {
      out += (out.empty() ? "" : std::string(1, between)) + names[i];
    }
  }
  return out;
}

}  // namespace limbledger::outside_test
