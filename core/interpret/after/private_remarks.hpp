// Remarks in the examiner's own words on what an alert for a person's protection looks at: while one is raised they may tell what it says
// ("like teeth"), and are kept apart with it. What was found stays: that a limb is bruised is why it is examined. Which items those are is
// heard from the judgement itself. Source: clinical safety, requirement 16.
#pragma once

#include "core/interpret/view.hpp"

#include <vector>

namespace limbledger::interpret {

// In order; none where no such alert is raised.
[[nodiscard]] std::vector<model::ItemId> items_of_private_remarks(const View& view);

// Out of what was found, added or decided; whether there was one.
bool take_out_remarks(const std::vector<model::ItemId>& items, model::Exam& exam);
void take_out_remark(const std::vector<model::ItemId>& items, model::Finding& finding);

}  // namespace limbledger::interpret
