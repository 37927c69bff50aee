// The invented edition with invented evidence: conditions, tests and ratios that are round and wrong on purpose, for tests of
// logic. Base ratios: pull 4 and 0.25, pull_b 18 and 0.105 (no interval), turn 6 and 0.444, pop 2 and 0.667, turn_pop 3 and 0.5.
#pragma once

#include "tests/unit/invented/edition.hpp"

namespace limbledger {

struct InventedEvidence {
  InventedTexts base;
  std::string accuracy;
  std::string pretest;
  std::string conditions;
  std::string settings;
  std::string groups;

  [[nodiscard]] reference::EditionTexts view() const {
    reference::EditionTexts texts = base.view();
    texts.evidence = {accuracy, pretest, conditions, settings, groups};
    return texts;
  }
};

[[nodiscard]] InventedEvidence invented_evidence();
[[nodiscard]] const reference::Edition& invented_evidence_edition();

}  // namespace limbledger
