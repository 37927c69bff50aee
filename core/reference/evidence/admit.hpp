// Which accuracy rows may enter a probability, and how firmly: first class with an interval (printed, or from counts), second
// class without (a stated wide error, and no band above "favour"), none: direction only, with every reason named.
// Source: clinical safety, requirement 6.
#pragma once

#include "core/model/time.hpp"
#include "core/reference/evidence/rows.hpp"

#include <optional>
#include <vector>

namespace limbledger::reference {

enum class RowClass : std::uint8_t { none, first, second };

struct Admission {
  RowClass row_class = RowClass::none;
  std::vector<model::Word> reasons;  // why it may not compute; empty where it may
};

struct DayInterval {
  std::int64_t least = 0;
  std::int64_t most = 0;
};

// Whom the row is asked about: completed years, whether freshly injured and for how many days, recorded sex.
struct PersonAtHand {
  std::optional<model::AgeInterval> age;
  bool acute = false;
  std::optional<DayInterval> days = std::nullopt;
  std::optional<model::Sex> sex = std::nullopt;
};

[[nodiscard]] Admission admit(const AccuracyRow& row, const EvidenceCondition& condition, const PersonAtHand& person);

}  // namespace limbledger::reference
