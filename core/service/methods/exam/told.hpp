// What somebody can say of themselves without being examined: the history, what they do in a day, and what they would call the
// staff for. A kiosk asks and takes nothing else, and nothing that is asked in private alone. What changes how everything else
// is read (region body) is the examiner's to record. Source: clinical safety, C16.
#pragma once

#include "core/model/exam/finding.hpp"
#include "core/reference/edition.hpp"

#include <span>
#include <vector>

namespace limbledger::service {

[[nodiscard]] bool is_told(const reference::Edition& edition, const model::Item& item);
// What was answered at a kiosk and still stands as it was: no examiner entered it or took it over.
[[nodiscard]] bool is_answered_there(const model::Finding& finding);
// An answer at a kiosk for which its person was asked to call the staff.
[[nodiscard]] bool called_staff(const reference::Edition& edition, const model::Finding& finding);
// The items of all such answers among these, each once.
[[nodiscard]] std::vector<model::ItemId> staff_calls(const reference::Edition& edition, std::span<const model::Finding> history);

}  // namespace limbledger::service
