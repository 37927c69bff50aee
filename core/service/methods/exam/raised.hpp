// The history of an exam as far as its alerts want it: an alert that was once raised goes by a correction of its inputs, or by an answer
// that came later, or by what was corrected of its person, and never without a trace, whatever else is corrected afterwards (contract, section 7; clinical safety, C2). A document has no history; there what is raised
// follows from what stands, in whatever order it was told.
#pragma once

#include "core/interpret/alerts/alerts.hpp"
#include "core/service/methods/exam/watch.hpp"
#include "core/service/methods/people/known_before.hpp"
#include "core/service/once_raised.hpp"

#include <vector>

namespace limbledger::service {

struct ShownBefore {
  // The exam as its writers were shown it while an alert was raised that is no more, newest first, with its person as known then; of each
  // such alert one state, and what was corrected when it went. Sides are those that were shown, with what an exchange turned since.
  std::vector<interpret::KnownOtherwise> while_raised;
  TimesRaised times;
};
// `flags`: those of the exam as it stands, where they are judged already.
[[nodiscard]] ShownBefore shown_before(Context& context, const ledger::ExamRecord& record, const PersonsKnown& persons, const interpret::View& now,
                                       const std::vector<interpret::JudgedFlag>* flags = nullptr);

// What of these is an alert. `turned`: the findings whose side was exchanged since.
[[nodiscard]] std::vector<OnceRaised::Alert> alerts_of_flags(const std::vector<interpret::JudgedFlag>& flags, const std::vector<model::EntryId>& turned);

}  // namespace limbledger::service
