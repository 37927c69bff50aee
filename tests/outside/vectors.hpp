// Reading of the case files in tests/outside/data, and comparison of JSON values: members in any order, numbers by digits.
#pragma once

#include "core/wire/parse.hpp"

#include <doctest/doctest.h>

#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace limbledger::outside {

inline std::string data_file(const std::string& name) {
  std::ifstream in(std::string(LIMBLEDGER_SOURCE_DIR) + "/tests/outside/data/" + name, std::ios::binary);
  REQUIRE(in.good());
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

inline std::string from_hex(std::string_view hex) {
  std::string bytes;
  const auto digit = [](char c) { return c <= '9' ? c - '0' : c - 'a' + 10; };
  for (std::size_t i = 0; i + 1 < hex.size(); i += 2) {
    bytes.push_back(static_cast<char>(digit(hex[i]) * 16 + digit(hex[i + 1])));
  }
  return bytes;
}

inline std::vector<const wire::Node*> children(const wire::Document& document, const wire::Node& parent) {
  std::vector<const wire::Node*> list;
  for (std::uint32_t at = parent.first; at != 0; at = document.at(at).next) {
    list.push_back(&document.at(at));
  }
  return list;
}

// `wanted` may leave out members of `error` and need not name its words.
inline bool fits(const wire::Document& a, const wire::Node& wanted, const wire::Document& b, const wire::Node& got) {
  if (wanted.kind != got.kind) {
    return false;
  }
  const auto left = children(a, wanted);
  const auto right = children(b, got);
  switch (wanted.kind) {
    case wire::NodeKind::object: {
      if (wanted.key != "error" && left.size() != right.size()) {
        return false;
      }
      for (const wire::Node* member : left) {
        const wire::Node* other = b.child(got, member->key);
        if (other == nullptr || (member->key != "message" && !fits(a, *member, b, *other))) {
          return false;
        }
      }
      return true;
    }
    case wire::NodeKind::list: {
      if (left.size() != right.size()) {
        return false;
      }
      std::vector<bool> used(right.size());
      for (const wire::Node* element : left) {
        std::size_t i = 0;
        while (i < right.size() && (used[i] || !fits(a, *element, b, *right[i]))) {
          ++i;
        }
        if (i == right.size()) {
          return false;
        }
        used[i] = true;
      }
      return true;
    }
    case wire::NodeKind::text:
      return wanted.text == got.text;
    default:
      return wanted.raw == got.raw;
  }
}

}  // namespace limbledger::outside
