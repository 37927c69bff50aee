#include "core/interpret/after/differences.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

[[nodiscard]] bool same_impression(const model::Impression& a, const model::Impression& b) {
  return a.text == b.text && a.side == b.side && a.alternatives == b.alternatives && a.code == b.code;
}

}  // namespace

std::vector<SupervisedDifference> differences(const model::Exam& exam, const model::Countersigned& other) {
  std::vector<SupervisedDifference> out;
  const std::vector<model::Finding> none;
  const std::vector<model::Finding>& held = exam.findings ? *exam.findings : none;
  for (const model::Observation& seen : other.findings.value_or(std::vector<model::Observation>{})) {
    const auto here = [&](const model::Finding& finding) { return finding.item == seen.item && finding.side == seen.side; };
    const auto first = std::find_if(held.begin(), held.end(), here);
    const bool same = std::any_of(held.begin(), held.end(), [&](const model::Finding& finding) { return here(finding) && finding.value == seen.value; });
    if (!same) {
      out.push_back({{"finding"}, seen.item, seen.side, first == held.end() ? std::nullopt : std::optional(first->value), seen.value});
    }
  }
  const bool differ = other.impression && (!exam.impression || !same_impression(*exam.impression, *other.impression));
  if (differ) {
    out.push_back({{"impression"}, std::nullopt, other.impression->side, std::nullopt, std::nullopt});
  }
  return out;
}

}  // namespace limbledger::interpret
