// A reading against what was measured in healthy people of that age and sex, with the instrument's error:
// error = minimal detectable change / 2.772; below if reading + 1.96 x error is under the low limit; above likewise; within if
// both ends lie inside; else it cannot be told. Exact integer arithmetic in thousandths of a degree.
// Where the age or the sex is not known closely, every norm that may apply is asked and must agree.
#pragma once

#include "core/interpret/motion/reading.hpp"
#include "core/interpret/statement.hpp"

namespace limbledger::interpret {

struct Limits {
  std::int64_t low = -open_end;
  std::int64_t high = open_end;
};

[[nodiscard]] Verdict against_norm(std::int64_t reading_low, std::int64_t reading_high, std::int64_t mdc95, const Limits& limits);

struct NormQuestion {
  const model::Item* item = nullptr;
  model::NormSex sex{};  // male or female
  std::int64_t age_years = 0;
  std::set<std::string> positions;
};
// The row to compare with, or null: item, mode, position, sex, age, among the default sources alone.
[[nodiscard]] const reference::NormRow* norm_row(const reference::Edition& edition, const NormQuestion& question);
// mean - 2 SD to mean + 2 SD, or what the source printed.
[[nodiscard]] std::optional<Limits> limits_of(const reference::NormRow& row);

[[nodiscard]] std::vector<Judged> judge_norms(const View& view, const std::vector<Reading>& readings);

}  // namespace limbledger::interpret
