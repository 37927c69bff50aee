// What one screen needs once an alert of class now is raised: whom to call from this place, and whether to call before anything else
// is asked, because help is farther than the harm is. What the place does not say is not known: then nobody is told that there is
// time. Source: clinical safety, requirements 11 and 15.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/model/place.hpp"
#include "core/reference/edition.hpp"

#include <optional>
#include <vector>

namespace limbledger::interpret {

struct JudgedFlag;  // alerts/alerts.hpp

// Nothing where no alert of class now stands unanswered; what is kept apart for a person's protection counts for nothing here.
[[nodiscard]] std::optional<UrgentWay> urgent_way(const std::vector<Alert>& alerts, const std::optional<model::Place>& place,
                                                  const reference::Edition& edition);

// The name that a disagreement with it carries: "rule.ottawa_knee:left", "alert.scfe:left", "alert.ces".
[[nodiscard]] std::string statement_name(const Alert& alert);
[[nodiscard]] std::string statement_name(const Flag& flag);
[[nodiscard]] std::string statement_name(const JudgedFlag& judged);
[[nodiscard]] std::string statement_name(const RuleResult& rule);
[[nodiscard]] std::string statement_name(const Hypothesis& hypothesis);
// Whether the assessment holds one of that name.
[[nodiscard]] bool holds_statement(const Assessment& assessment, const model::StatementId& name);

}  // namespace limbledger::interpret
