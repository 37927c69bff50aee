// The history of an exam as far as its alerts want it: an alert that was once raised goes by a correction of its inputs, or by an answer
// that came later, or by what was corrected of its person, and never without a trace, whatever else is corrected afterwards (contract, section 7; clinical safety, C2). A document has no history; there what is raised
// follows from what stands, in whatever order it was told.
#pragma once

#include "core/interpret/alerts/alerts.hpp"
#include "core/service/methods/exam/watch.hpp"
#include "core/service/methods/people/known_before.hpp"

#include <vector>

namespace limbledger::service {

// The exam as its writers were shown it while an alert was raised that is no more, newest first, with its person as known then; of each
// such alert one state, and what was corrected when it went. Sides are those that were shown, with what an exchange turned since. `flags`:
// those of the exam as it stands, where they are judged already.
[[nodiscard]] std::vector<interpret::KnownOtherwise> shown_while_raised(Context& context, const ledger::ExamRecord& record, const PersonsKnown& persons,
                                                                        const interpret::View& now,
                                                                        const std::vector<interpret::JudgedFlag>* flags = nullptr);

}  // namespace limbledger::service
