// The laws of an exam of the whole limb that are seen on what is said before and after one finding came, went or was corrected. What
// does not hold fails the test that calls it; each gives how often it was met.
#pragma once

#include "core/interpret/statement.hpp"
#include "tests/simulation/limb/exams.hpp"

#include <cstdint>
#include <span>
#include <vector>

namespace limbledger::limb_laws {

using limb_exams::Bench;
using limb_exams::Draw;

struct Said {
  std::vector<interpret::Hypothesis> hypotheses;
  std::vector<interpret::RuleResult> rules;
  std::vector<interpret::Alert> alerts;
  std::vector<interpret::Flag> flags;
};
// Dangers, rules and hypotheses over one view; what protects a person is shown. `before`: the exams as corrections had been shown them.
[[nodiscard]] Said said_of(const Bench& made, std::span<const model::Exam> before = {});

// No range holds 0 or 100 in 100, and none is one figure.
[[nodiscard]] std::uint64_t never_certain(const Said& said);

struct Met {
  std::uint64_t unrelated = 0;   // hypotheses of another region or side looked at
  std::uint64_t raised = 0;      // alerts that were raised without the finding
  std::uint64_t answered = 0;    // dangers answered no without it
  std::uint64_t open_rules = 0;  // undetermined without it, where it is not among what would settle
  std::uint64_t withdrawn = 0;   // alerts that a correction took away
  std::uint64_t lowered = 0;     // alerts that an answer which came later took away
};
// What is said without one finding (`before`), and with it.
void one_came(const Bench& made, const model::Finding& finding, const Bench& before, const Said& without, const Said& with, Met& met);
// How it began, or a state of the body, told after all else: what it does to dangers.
void one_completed(const Bench& before, const Said& without, Draw& draw, Met& met);
// One finding corrected to another value: an alert stays or is shown as withdrawn.
void one_corrected(const Bench& made, const Said& before, std::size_t at, Draw& draw, Met& met);

}  // namespace limbledger::limb_laws
