#include "core/service/methods/say/assess.hpp"

#include "core/interpret/rules/rule.hpp"
#include "core/model/exam/day.hpp"
#include "core/reference/edition.hpp"
#include "core/wire/parse.hpp"

#include <algorithm>
#include <array>
#include <string_view>

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

std::vector<wire::Fault> check_only(const reference::Edition& edition, const std::optional<std::vector<wire::Name>>& only) {
  constexpr std::array<std::string_view, 9> lists{"alerts", "questions", "flags", "missing", "steps", "rules", "statements", "hypotheses", "contradictions"};
  // What the names of statements and contradictions begin with; the rest of such a name tells the item and the side.
  constexpr std::array<std::string_view, 10> kinds{"motion.", "measure.", "body.", "function.", "effusion.", "laxity.", "hip.", "injury.", "contradiction.", "referral."};
  std::vector<wire::Fault> faults;
  for (std::size_t i = 0; only && i < only->size(); ++i) {
    const std::string_view asked = (*only)[i].text;
    const auto begins = [&](std::string_view name) { return name.starts_with(asked); };
    const auto rules = interpret::all_rules();
    const bool known =
        !asked.empty() &&
        (std::find(lists.begin(), lists.end(), asked) != lists.end() || begins("step") || begins("question") || begins("missing") || begins("alert.protected") ||
         std::any_of(kinds.begin(), kinds.end(), [&](std::string_view kind) { return begins(kind) || asked.starts_with(kind); }) ||
         std::any_of(rules.begin(), rules.end(), [&](const interpret::Rule& rule) { return begins(rule.rule); }) ||
         std::any_of(edition.alerts().begin(), edition.alerts().end(),
                     [&](const reference::AlertRow& row) { return begins(row.alert.text) || begins("flag." + row.alert.text.substr(row.alert.text.find('.') + 1)); }) ||
         std::any_of(edition.evidence().conditions.begin(), edition.evidence().conditions.end(),
                     [&](const reference::EvidenceCondition& one) { return begins(one.condition.text); }));
    if (!known) {
      std::string expected;
      for (const std::string_view list : lists) {
        expected += (expected.empty() ? "" : ", ") + std::string(list);
      }
      faults.emplace_back("params.unknown_word", "/only" + wire::pointer_step(i), expected + "; or the beginning of a name, such as rule.ottawa_knee, alert.ali or motion.norm");
    }
  }
  return faults;
}

model::PartialDate day_of(const model::Exam& exam, const model::PartialDate& otherwise) {
  return model::when_done(exam).day.value_or(otherwise);
}

}  // namespace limbledger::service
