// An edition of the facts that is invented from end to end, for tests of logic: its numbers are round and wrong on purpose,
// its sources are called INVENTED. Items carry the real names where a rule or a motion asks for them.
#pragma once

#include "core/reference/edition.hpp"

#include <string>

namespace limbledger {

// The texts themselves, so that a test can spoil one row of one of them.
struct InventedTexts {
  std::string edition;
  std::string items;
  std::string scales;
  std::string sequences;
  std::string norms;
  std::string errors;
  std::string sources;
  std::string concerns;
  std::string figures;
  std::string alerts;
  std::string bodies;

  [[nodiscard]] reference::EditionTexts view() const {
    return {edition, {items}, scales, {sequences}, {norms}, errors, sources, concerns, alerts, {}, figures, bodies};
  }
};

[[nodiscard]] InventedTexts invented_texts();
[[nodiscard]] const reference::Edition& invented_edition();

}  // namespace limbledger
