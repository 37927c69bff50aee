#include "core/service/methods/say/assess.hpp"

#include "core/model/exam/day.hpp"
#include "core/wire/parse.hpp"

#include <algorithm>

namespace limbledger::service {

interpret::AssessAsk make_ask(const model::PartialDate& as_of, const std::optional<std::vector<wire::Name>>& only,
                              const std::optional<std::vector<interpret::TypedPrior>>& priors) {
  interpret::AssessAsk ask;
  ask.as_of = as_of;
  if (only) {
    for (const wire::Name& name : *only) {
      ask.only.push_back(name.text);
    }
  }
  if (priors) {
    ask.priors = *priors;
  }
  return ask;
}

std::vector<wire::Fault> check_priors(const reference::Edition& edition, const std::optional<std::vector<interpret::TypedPrior>>& priors) {
  std::vector<wire::Fault> faults;
  if (!priors) {
    return faults;
  }
  std::string known;
  for (const reference::EvidenceCondition& condition : edition.evidence().conditions) {
    if (condition.computes) {
      known += (known.empty() ? "" : ", ") + condition.condition.text;
    }
  }
  for (std::size_t i = 0; i < priors->size(); ++i) {
    const model::Word& name = (*priors)[i].condition;
    const std::string path = "/priors" + wire::pointer_step(i) + "/condition";
    const reference::EvidenceCondition* condition = edition.evidence().condition(name);
    if (condition == nullptr || !condition->computes) {
      faults.emplace_back("params.unknown_word", path, known);
    }
    const auto here = priors->begin() + static_cast<std::ptrdiff_t>(i);
    if (std::any_of(priors->begin(), here, [&](const interpret::TypedPrior& one) { return one.condition == name; })) {
      faults.emplace_back("json.duplicate_member", path, "each condition once");
    }
  }
  return faults;
}

model::PartialDate day_of(const model::Exam& exam, const model::PartialDate& otherwise) {
  return model::when_done(exam).day.value_or(otherwise);
}

}  // namespace limbledger::service
