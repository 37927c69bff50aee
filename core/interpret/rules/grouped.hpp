// A sheet whose inputs count in groups: what is decided depends on the sum of each group alone (six grades of a foot, nine signs, "any of
// these"). The same answers as complete_sheet, in the time of the sums instead of that of every combination. An input that stands
// alone is a group of its own, with the points 0, 1, 2 ... of its classes.
#pragma once

#include "core/interpret/rules/sheet.hpp"

#include <limits>

namespace limbledger::interpret {

struct SheetGroups {
  static constexpr std::int64_t no_most = std::numeric_limits<std::int64_t>::max();
  std::vector<std::size_t> of_input;                // the group of each input
  std::vector<std::vector<std::int64_t>> points;    // of each input, by class
  std::vector<std::int64_t> most;                   // of each group: a sum stops here (1: any of these); points are then not below 0

  // An input for each call, in the order of the sheet. A new group where `group` is the next number.
  void add(std::size_t group, std::vector<std::int64_t> of_classes, std::int64_t sum_stops_at = no_most);
};

using SumsDecision = std::function<SheetAnswer(std::span<const std::int64_t> sums)>;

[[nodiscard]] SheetCompleted complete_groups(std::span<const Classes> may_be, const SheetGroups& groups, const SumsDecision& decide);
[[nodiscard]] JudgedRule judge_groups(const View& view, const RuleSheet& sheet, const SheetGroups& groups, const SumsDecision& decide);
// For a rule of the whole person: an input that is asked of both sides stands once, open where either is.
void join_sides(JudgedRule& judged);

}  // namespace limbledger::interpret
