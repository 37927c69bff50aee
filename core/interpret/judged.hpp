// One exam judged in the order that safety asks for: alerts, motion, rules, evidence, then what follows from them. Shared by the
// assessment, the alerts on a reply, what is withheld, the next step and the signature, so that they cannot differ.
#pragma once

#include "core/interpret/assess_ask.hpp"
#include "core/interpret/held.hpp"
#include "core/interpret/statement.hpp"

#include <span>
#include <vector>

namespace limbledger::interpret {

// The part that every recorded finding asks for: no norms, no evidence.
struct Watched {
  std::vector<JudgedFlag> flags;
  AlertsJudged alerts;
  std::vector<JudgedRule> rules;
  std::vector<OpenConcern> concerns;
};
[[nodiscard]] Watched watch(const View& view, const AlertsAsk& ask = {});

// What may withhold one of these items: of `watch`, the flags that stop one or hold one of their concerns open, and the concerns as far
// as they are theirs. `withheld` says of these items what it says after the whole, and at a finding of one of them nothing else is judged.
struct Withholders {
  std::vector<JudgedFlag> flags;
  std::vector<OpenConcern> concerns;
};
[[nodiscard]] Withholders withholders_of(const View& view, std::span<const model::Item* const> items);

[[nodiscard]] std::vector<JudgedRule> run_rules(const View& view);
// An open wound with a break, or a joint that was out of place, is not a matter of these rules: what speaks for a film stands, and
// nothing else is said (HC-043; decision rules page, section 1).
void set_aside(const std::vector<JudgedFlag>& flags, std::vector<JudgedRule>& rules);

}  // namespace limbledger::interpret
