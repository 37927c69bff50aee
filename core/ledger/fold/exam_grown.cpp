// A fold with one finding more. Findings come one by one, and folding all that was found before them anew with each is quadratic.
#include "core/ledger/fold/exam_folder.hpp"

#include <algorithm>
#include <tuple>

namespace limbledger::ledger {

namespace {

// Whoever wrote it had seen all that is there, so that it stands against nothing; and it is the last in the order of display.
[[nodiscard]] bool comes_last(const Opened& newest, std::span<const Opened> before, const model::Exam& exam) {
  std::vector<model::EntryId> seen = newest.operation().after;
  std::sort(seen.begin(), seen.end());
  return seen == exam.revision && std::all_of(before.begin(), before.end(), [&](const Opened& earlier) {
           const bool repeats = earlier.operation().request == newest.operation().request && earlier.operation().part == newest.operation().part;
           return !repeats && earlier.stamp() < newest.stamp();
         });
}

// A signature or a withdrawal decides of what comes after it; what was handled and what was written to others say what came since.
[[nodiscard]] bool is_plain(const model::Exam& exam) {
  return exam.state == model::ExamState::open && !exam.incomplete && !exam.conflicts && !exam.marks && !exam.alerts_handled && !exam.letters;
}

}  // namespace

bool grow_exam(ExamFold& fold, std::span<const Opened> operations) {
  const Opened& newest = operations.back();
  const auto* found = std::get_if<model::FindingBody>(&newest.body());
  const bool plain = found != nullptr && !newest.newer_parts() && newest.operation().replaces.empty() && newest.operation().after.size() <= model::pointers_max;
  if (!plain || !is_plain(fold.exam) || !comes_last(newest, operations.first(operations.size() - 1), fold.exam)) {
    return false;
  }
  const model::Finding finding = as_told(newest, found->finding, found->observation, fold.exam);
  const auto in_order = [](const model::Finding& a, const model::Finding& b) { return std::tie(a.item, a.side) < std::tie(b.item, b.side); };
  std::vector<model::Finding>& standing = *fold.exam.findings;
  standing.insert(std::upper_bound(standing.begin(), standing.end(), finding, in_order), finding);
  fold.history.push_back(finding);
  fold.finding_heads[found->finding].push_back(newest.entry());
  fold.exam.revision->assign(1, newest.entry());
  fold.entries = operations.size();
  fold.digest = digest_of(operations);
  return true;
}

}  // namespace limbledger::ledger
