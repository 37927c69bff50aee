#include "core/service/methods/ledger/examiner.hpp"

#include "core/service/desk.hpp"

namespace limbledger::service {

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

}  // namespace limbledger::service
