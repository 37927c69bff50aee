// What an exam was judged by before the person it speaks of was corrected: another date of birth or sex, or another person that it
// was moved from. An alert that goes by such a correction stays on the list with what was corrected (clinical safety, C2). One state of
// the exam a correction: as it stood for who corrected.
#pragma once

#include "core/interpret/alerts/alerts.hpp"
#include "core/service/methods/exam/common.hpp"

#include <vector>

namespace limbledger::service {

// Nearly always empty: then it costs a look at the kinds of the entries. Sides are those of now.
[[nodiscard]] std::vector<interpret::KnownOtherwise> known_before(Context& context, const ledger::ExamRecord& record, const std::optional<model::Person>& now);

}  // namespace limbledger::service
