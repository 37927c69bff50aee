// exam.countersign: who supervises adds the own findings and impression to an exam that its examiner has closed, under the own
// signature; both stay, and what differs is listed. agreement.read: how far examiners of this ledger agree where two looked at the
// same thing; of items, never of persons. Source: clinical safety, requirement 25.
#pragma once

#include "core/interpret/after/agreement.hpp"
#include "core/interpret/after/differences.hpp"
#include "core/service/methods/exam/common.hpp"
#include "core/service/methods/exam/finding.hpp"

namespace limbledger::service {

struct ExamCountersignParams {
  model::ExamId exam;
  std::optional<std::vector<NewFinding>> findings;
  std::optional<model::Impression> impression;
  std::optional<wire::Remark> remark;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<model::Word> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ExamCountersignParams, (), (exam, findings, impression, remark, seen, request, language))
constexpr auto notes(const ExamCountersignParams*) {
  return std::array{wire::Note{"seen", seen_note}, wire::Note{"findings", "the supervisor's own, also where they are the same; what the signer recorded stays as it is"},
                    wire::Note{"impression", "the supervisor's own; absent: none of their own"}, wire::Note{"language", sentences_note}};
}
struct ExamCountersignResult {
  model::Countersigned countersigned;
  std::vector<interpret::SupervisedDifference> differences;
  std::vector<model::EntryId> revision;
  std::optional<bool> repeat;
  std::optional<std::vector<interpret::Alert>> call_backs = std::nullopt;  // alerts that were not there when the exam was signed
};
BOOST_DESCRIBE_STRUCT(ExamCountersignResult, (), (countersigned, differences, revision, repeat, call_backs))
// Faults: exam.not_signed, examiner.own (the signer), revision.old (something came since that was not seen), exam.withdrawn, and
// those of a finding.
[[nodiscard]] Result<ExamCountersignResult> exam_countersign(Context& context, const ExamCountersignParams& params);

struct AgreementReadParams {
  std::optional<std::vector<model::ItemId>> items;
  std::optional<model::PartialDate> from;  // calendar dates where the exam was done, both inclusive
  std::optional<model::PartialDate> to;
  std::optional<model::Word> language;  // en: with sentences
};
BOOST_DESCRIBE_STRUCT(AgreementReadParams, (), (items, from, to, language))
struct ItemAgreement {
  model::ItemId item;
  interpret::Agreement agreement;
  std::optional<wire::LongText> text;
};
BOOST_DESCRIBE_STRUCT(ItemAgreement, (), (item, agreement, text))
struct AgreementReadResult {
  wire::Count<0, 10000000> exams;  // that were looked through
  std::vector<ItemAgreement> items;
};
BOOST_DESCRIBE_STRUCT(AgreementReadResult, (), (exams, items))
constexpr auto notes(const AgreementReadResult*) {
  return std::array{wire::Note{"items", "those that two examiners looked at side by side in one exam, and said in words of the catalogue"}};
}
// Faults: item.unknown, params.unknown_word (language). Items that protect a person are in no count.
[[nodiscard]] Result<AgreementReadResult> agreement_read(Context& context, const AgreementReadParams& params);

}  // namespace limbledger::service
