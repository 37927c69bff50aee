#include "core/reference/evidence/rows.hpp"

#include <algorithm>

namespace limbledger::reference {

const EvidenceCondition* Evidence::condition(const model::Word& name) const {
  const auto found = std::find_if(conditions.begin(), conditions.end(), [&](const EvidenceCondition& one) { return one.condition == name; });
  return found == conditions.end() ? nullptr : &*found;
}

const EvidenceCondition* Evidence::condition_of(const wire::Name& about) const {
  for (const EvidenceCondition& one : conditions) {
    if (std::find(one.texts.begin(), one.texts.end(), about) != one.texts.end()) {
      return &one;
    }
  }
  return nullptr;
}

const ConditionGroups* Evidence::groups_of(const model::Word& condition) const {
  const auto found = std::find_if(groups.begin(), groups.end(), [&](const ConditionGroups& one) { return one.condition == condition; });
  return found == groups.end() ? nullptr : &*found;
}

std::optional<PriorSetting> Evidence::setting_of(const wire::Name& text) const {
  for (const SettingRow& one : settings) {
    if (one.text == text) {
      return one.setting;
    }
  }
  return std::nullopt;
}

const AccuracyRow* Evidence::default_row(const model::Word& condition_name, const model::Word& test, bool acute) const {
  for (const AccuracyRow& row : accuracy) {
    const bool fits = row.default_for && (*row.default_for == DefaultFor::any || (*row.default_for == DefaultFor::acute) == acute);
    if (fits && row.test == test) {
      const EvidenceCondition* about = condition_of(row.about);
      if (about != nullptr && about->condition == condition_name) {
        return &row;
      }
    }
  }
  return nullptr;
}

}  // namespace limbledger::reference
