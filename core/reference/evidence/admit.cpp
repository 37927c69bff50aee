#include "core/reference/evidence/admit.hpp"

namespace limbledger::reference {

namespace {

[[nodiscard]] bool between(const std::optional<Measure>& low, const std::optional<Measure>& high) { return low && high; }
[[nodiscard]] bool inside_one(const std::optional<Measure>& share) { return share && share->steps > 0 && share->steps < 10000; }

// Both ratios of the row have an error that was printed, or that follows from what was printed.
[[nodiscard]] bool has_intervals(const AccuracyRow& row) {
  if (row.counts) {
    return true;
  }
  const bool shares = inside_one(row.sens) && inside_one(row.spec) && between(row.sens_low, row.sens_high) && between(row.spec_low, row.spec_high) &&
                      inside_one(row.sens_low) && inside_one(row.sens_high) && inside_one(row.spec_low) && inside_one(row.spec_high);
  const bool positive = between(row.lr_pos_low, row.lr_pos_high);
  const bool negative = between(row.lr_neg_low, row.lr_neg_high);
  return (positive || shares) && (negative || shares);
}

}  // namespace

Admission admit(const AccuracyRow& row, const EvidenceCondition& condition, const PersonAtHand& person) {
  Admission admission;
  const auto refuse = [&](bool if_so, const char* reason) {
    if (if_so) {
      admission.reasons.push_back({reason});
    }
  };
  // A share of exactly 1 without its counts gives a ratio of nothing or of infinity, which is no figure.
  const bool shares = inside_one(row.sens) && inside_one(row.spec);
  const bool whole = row.counts || shares || (row.lr_pos && row.lr_neg);
  refuse(!condition.computes, "condition_described_only");
  refuse(row.status != model::Status::read, "not_read");
  refuse(!whole, "one_ratio_or_none");
  refuse(row.design == Design::case_control, "case_control");
  refuse(row.range && *row.range, "range");
  refuse(row.confidence == Confidence::d || row.confidence == Confidence::low, "low_confidence");
  refuse(!person.age, "age_not_known");
  refuse(person.age && person.age->low < row.age_low.steps, "younger_than_studied");
  refuse(person.age && row.age_high && person.age->high > row.age_high->steps, "older_than_studied");
  refuse(row.setting == StudyPhase::anaesthesia, "under_anaesthesia");
  refuse(row.setting == StudyPhase::acute && !person.acute, "acute_only");
  refuse(row.setting == StudyPhase::chronic && person.acute, "chronic_only");
  refuse(row.sex && row.sex != person.sex, "other_sex_studied");
  refuse(row.days_low && row.days_high && !(person.days && row.days_low->steps <= person.days->least && person.days->most <= row.days_high->steps),
         "other_days_studied");
  if (admission.reasons.empty()) {
    admission.row_class = has_intervals(row) ? RowClass::first : RowClass::second;
  }
  return admission;
}

}  // namespace limbledger::reference
