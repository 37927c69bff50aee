#include "core/service/methods/say/explain.hpp"

#include "core/service/methods/say/assess.hpp"
#include "core/service/methods/say/texts.hpp"

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
  return explain_in_words(context, params, checked->exam, checked->person, checked->earlier, make_ask(params.document->as_of, std::nullopt, params.priors));
}

Result<interpret::Working> explain_in_words(Context& context, const StatementExplainParams& params, const model::Exam& exam, const std::optional<model::Person>& person,
                                            std::span<const model::Exam> earlier, interpret::AssessAsk ask) {
  const auto sentences = Sentences::in(params.language);
  if (!sentences) {
    return sentences.error();
  }
  auto working = interpret::explain(exam, person, earlier, *context.edition, ask, params.statement);
  if (working && sentences->wanted()) {
    ask.only = {params.statement.text.substr(0, params.statement.text.find(':'))};
    interpret::Assessment assessment = interpret::assess(exam, person, earlier, *context.edition, ask);
    add_texts(exam, *sentences, *context.edition, assessment);
    add_working_texts(exam, *sentences, assessment, *working);
  }
  return working;
}

}  // namespace limbledger::service
