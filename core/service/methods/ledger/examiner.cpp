#include "core/service/methods/ledger/examiner.hpp"

#include "core/ledger/log/log.hpp"
#include "core/ledger/fold/records.hpp"
#include "core/match/folded.hpp"
#include "core/service/desk.hpp"
#include "core/wire/write.hpp"

#include <algorithm>
#include <set>

namespace limbledger::service {

namespace {

[[nodiscard]] ShownExaminer shown(const ledger::ExaminerNames& names, const model::ExaminerId& examiner) {
  ShownExaminer out;
  out.examiner = examiner;
  if (const auto found = names.find(examiner); found != names.end()) {
    for (const ledger::SaidName& one : found->second) {
      out.said.push_back({one.said.name, one.said.role, one.entry});
      out.revision.push_back(one.entry);
    }
  }
  return out;
}

[[nodiscard]] Result<void> check_amend(Context& context, const ExaminerAmendParams& params) {
  std::vector<wire::Fault> faults;
  if (match::trimmed(params.name.text).empty()) {
    faults.push_back({"value.empty", "/name", "at least one character"});
  }
  if (params.role && match::trimmed(params.role->text).empty()) {
    faults.push_back({"value.empty", "/role", "at least one character"});
  }
  if (!faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  const auto names = context.desk->records().examiners();
  if (!names) {
    return names.error();
  }
  const std::vector<model::EntryId> standing = shown(**names, context.desk->examiner()).revision;
  for (std::size_t i = 0; i < params.seen.size(); ++i) {
    if (std::find(standing.begin(), standing.end(), params.seen[i]) == standing.end()) {
      return wire::Fault{"revision.unknown", "/seen/" + std::to_string(i), "what stands of this examiner"};
    }
  }
  for (const model::EntryId& one : standing) {
    if (std::find(params.seen.begin(), params.seen.end(), one) == params.seen.end()) {
      return wire::Fault{"revision.old", "/seen", "all that stands of this examiner", one.to_text()};
    }
  }
  return {};
}

}  // namespace

Result<ExaminerAddResult> examiner_add(Context& context, const ExaminerAddParams& params) {
  wire::Refusal refusal;
  if (params.examiner.text.size() > examiner_label_bytes_max) {
    refusal.faults.emplace_back("limit.text", "/examiner", "at most " + std::to_string(examiner_label_bytes_max) + " bytes",
                                std::to_string(params.examiner.text.size()));
  }
  if (wire::code_points(params.passphrase.text) < passphrase_characters_min) {
    refusal.faults.emplace_back("passphrase.short", "/passphrase", "at least " + std::to_string(passphrase_characters_min) + " characters");
  }
  if (!refusal.faults.empty()) {
    return refusal;
  }
  const auto added = context.desk->add_examiner(params.code.text, params.examiner.text, params.passphrase.text);
  if (!added) {
    return added.error();
  }
  return ExaminerAddResult{added->examiner, added->repeat ? std::optional(true) : std::nullopt};
}

Result<ExaminerReadResult> examiner_read(Context& context, const ExaminerReadParams& params) {
  const auto names = context.desk->records().examiners();
  if (!names) {
    return names.error();
  }
  std::set<model::ExaminerId> examiners;
  for (const ledger::Examiner& known : context.desk->log().index().examiners) {
    examiners.insert(known.examiner);
  }
  ExaminerReadResult result;
  for (const model::ExaminerId& examiner : examiners) {
    if (!params.examiner || *params.examiner == examiner) {
      result.examiners.push_back(shown(**names, examiner));
    }
  }
  if (params.examiner && result.examiners.empty()) {
    return wire::Fault{"examiner.unknown", "/examiner", "the id of an examiner"};
  }
  return result;
}

Result<ExaminerAmendResult> examiner_amend(Context& context, const ExaminerAmendParams& params) {
  ledger::NewOperation operation =
      operation_for(context, context.desk->log().clinic_object(), ledger::ObjectType::clinic, "examiner", params.request, params.seen);
  operation.replaces = params.seen;
  operation.body_json = wire::write(model::ExaminerNameBody{params.name, params.role});
  operation.sign = true;
  const auto written = write(context, {operation}, [&] { return check_amend(context, params); });
  if (!written) {
    return written.error();
  }
  const auto names = context.desk->records().examiners();
  if (!names) {
    return names.error();
  }
  return ExaminerAmendResult{shown(**names, context.desk->examiner()), written->repeat ? std::optional(true) : std::nullopt};
}

}  // namespace limbledger::service
