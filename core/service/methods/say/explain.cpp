#include "core/service/methods/say/explain.hpp"

#include "core/service/methods/say/assess.hpp"

namespace limbledger::service {

Result<interpret::Working> explain_document(Context& context, const StatementExplainParams& params) {
  if (params.exam.has_value() == params.document.has_value()) {
    return wire::Fault{"value.all_or_one", "", "exactly one of exam, document"};
  }
  if (!params.document) {
    return wire::Fault{"params.missing", "/document", "the member document"};
  }
  std::vector<wire::Name> confirmed;
  for (const wire::FaultCode& code : wire::fault_codes()) {
    if (code.number == wire::FaultClass::asked_back) {
      confirmed.push_back({std::string(code.code)});
    }
  }
  const auto checked = check_document(*context.edition, *params.document, confirmed);
  if (!checked) {
    return checked.error();
  }
  std::vector<wire::Fault> faults = check_priors(*context.edition, params.priors);
  if (!faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  return interpret::explain(checked->exam, checked->person, checked->earlier, *context.edition,
                            make_ask(params.document->as_of, std::nullopt, params.priors), params.statement);
}

}  // namespace limbledger::service
