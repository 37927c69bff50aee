// What is left open of a person's visits, so that it can be asked after: alerts without an action, urgent ones of which nobody recorded
// what became, alerts that came after the signature, what an addendum decided, referrals and reviews past their day, three visits without an impression. A pure function of the exams and of what was
// judged of each; it asks no clock. What protects a person stands in no such list. Source: clinical safety, requirements 12, 14, 16.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/reference/edition.hpp"

#include <optional>
#include <span>
#include <vector>

namespace limbledger::interpret {

enum class LoopKind { alert_without_action, call_back, urgent_without_outcome, planned_after_signature, referral_past_day, review_overdue, third_visit_without_impression };
BOOST_DESCRIBE_ENUM(LoopKind, alert_without_action, call_back, urgent_without_outcome, planned_after_signature, referral_past_day, review_overdue, third_visit_without_impression)

struct OpenLoop {
  LoopKind loop{};
  std::optional<model::ExamId> exam;
  std::optional<model::Word> alert;
  std::optional<model::Side> side;
  std::optional<model::PlanItemId> plan_item;
  std::optional<model::PartialDate> by;
};
BOOST_DESCRIBE_STRUCT(OpenLoop, (), (loop, exam, alert, side, plan_item, by))

struct Visit {
  const model::Exam* exam = nullptr;
  std::span<const Alert> alerts{};  // as judged today
  bool is_blank = false;            // opened alone: nothing says that the person was seen
};

// Of one person, oldest visit first; in this order: by visit, then as the kinds stand above. Withdrawn exams count for nothing.
[[nodiscard]] std::vector<OpenLoop> open_loops(std::span<const Visit> visits, const model::PartialDate& today);

// With what examiners disagree, how often and why, over both sides and of no person: read before the next edition. What protects a
// person is not among it.
struct DisagreedCount {
  model::StatementId statement;  // without the side
  wire::Count<1, 1000000> count;
  std::vector<wire::Remark> because;  // in the order of the exams
};
BOOST_DESCRIBE_STRUCT(DisagreedCount, (), (statement, count, because))
[[nodiscard]] std::vector<DisagreedCount> count_disagreed(std::span<const model::Exam* const> exams, const reference::Edition& edition);

// Marks the alerts that were not there when the exam was signed: somebody has to call the person back.
void mark_call_backs(std::span<const Alert> at_signature, std::vector<Alert>& now);

}  // namespace limbledger::interpret
