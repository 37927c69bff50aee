// A bad row planted in the invented edition, and whether the loader refuses it at the right place.
#pragma once

#include "tests/unit/invented/edition.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

namespace limbledger {

struct Planted {
  std::string InventedTexts::*file;
  std::string from;
  std::string to;
  std::string code;
  std::string path;
};

// Replaces one piece of one text, which must be there.
inline void spoil(std::string& text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  REQUIRE_MESSAGE(at != std::string::npos, from);
  text.replace(at, from.size(), to);
}

// True where a fault of this code has this path.
[[nodiscard]] inline bool fires(const InventedTexts& texts, const std::string& code, const std::string& path) {
  const auto edition = reference::Edition::load(texts.view());
  if (edition) {
    return false;
  }
  const wire::Refusal refusal = edition.error();
  return std::any_of(refusal.faults.begin(), refusal.faults.end(),
                     [&](const wire::Fault& fault) { return fault.code == code && fault.path == path; });
}

inline void check_planted(const Planted& one) {
  InventedTexts texts = invented_texts();
  spoil(texts.*(one.file), one.from, one.to);
  CHECK_MESSAGE(fires(texts, one.code, one.path), one.code << " " << one.path << " for " << one.to);
}

}  // namespace limbledger
