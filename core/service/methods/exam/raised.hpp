// The history of an exam as far as its alerts want it: an alert that was once raised goes by a correction of its inputs, or by an answer
// that came later, and never without a trace (contract, section 7; clinical safety, C2). A document has no history; there what is raised
// follows from what stands, in whatever order it was told.
#pragma once

#include "core/interpret/alerts/alerts.hpp"
#include "core/service/methods/exam/watch.hpp"

#include <vector>

namespace limbledger::service {

// The exam as its writers were shown it while an alert was raised that is no more, newest first; of each such alert one state. Sides are
// those of now: an exchange turns what came before it. `flags`: those of the exam as it stands, where they are judged already.
[[nodiscard]] std::vector<model::Exam> shown_while_raised(Context& context, const ledger::ExamRecord& record, const interpret::View& now,
                                                          const std::vector<interpret::JudgedFlag>* flags = nullptr);

}  // namespace limbledger::service
