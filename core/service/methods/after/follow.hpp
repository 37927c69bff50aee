// statement.disagree, plan.follow, outcome.record: what is added to an exam when it is looked at again, also after its signature.
// A disagreement stands beside what it is about and takes nothing away; what became of a plan item is a step with its day; what
// was found later is what a clinic checks itself against. Source: clinical safety, requirements 14, 20 and 24.
#pragma once

#include "core/service/methods/exam/common.hpp"

namespace limbledger::service {

struct StatementDisagreeParams {
  model::ExamId exam;
  model::StatementId statement;
  wire::Remark because;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(StatementDisagreeParams, (), (exam, statement, because, seen, request, language))
constexpr auto notes(const StatementDisagreeParams*) {
  return std::array{wire::Note{"language", fault_words_note}, wire::Note{"seen", seen_note}, wire::Note{"statement", "the name of a statement or contradiction, or of a rule, hypothesis or alert with its side: rule.ottawa_knee:left, alert.scfe:left, alert.ces"}};
}
// Faults: statement.unknown (today's assessment holds none of that name), exam.withdrawn.
[[nodiscard]] Result<ExamReply> statement_disagree(Context& context, const StatementDisagreeParams& params);

struct PlanFollowParams {
  model::ExamId exam;
  model::PlanItemId plan_item;
  model::Became became{};
  std::optional<model::PartialDate> on;
  std::optional<wire::Remark> text;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<std::vector<wire::Name>> confirmed;  // codes a person has answered for: value.unusual
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(PlanFollowParams, (), (exam, plan_item, became, on, text, seen, request, confirmed, language))
constexpr auto notes(const PlanFollowParams*) {
  return std::array{wire::Note{"language", fault_words_note}, wire::Note{"seen", seen_note}, wire::Note{"became", "of a referral: written, sent, received, seen, answered, lost; of anything: arranged, given, done, declined"},
                    wire::Note{"on", "the day it became so, as far as it is known"}};
}
// Faults: plan.unknown, params.unknown_word (a word that only a referral becomes), revision.old (another step that was not seen),
// value.unusual (a day in the future), exam.withdrawn.
[[nodiscard]] Result<ExamReply> plan_follow(Context& context, const PlanFollowParams& params);

struct OutcomeRecordParams {
  model::ExamId exam;
  model::FoundLater found;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<std::vector<wire::Name>> confirmed;  // codes a person has answered for: value.unusual
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(OutcomeRecordParams, (), (exam, found, seen, request, confirmed, language))
constexpr auto notes(const OutcomeRecordParams*) { return std::array{wire::Note{"language", fault_words_note}, wire::Note{"seen", seen_note}, wire::Note{"exam", "the exam whose question it answers, not the review at which it was told"}}; }
// Faults: value.unusual (a day in the future), exam.withdrawn.
[[nodiscard]] Result<ExamReply> outcome_record(Context& context, const OutcomeRecordParams& params);

}  // namespace limbledger::service
