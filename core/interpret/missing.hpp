// Of the complaint's minimum set, what was not recorded, and why it is asked for: both sides, and below 16 years the hip. A reason why
// something was not done is a record, but for a whole set left for lack of time: that was not examined; so is a state of the body for which an item does not apply; an item named instead of another stands for it. Source: examination sequence page, section 3.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/interpret/view.hpp"

namespace limbledger::interpret {

// A value carried over, and what the person reported alone, is the examiner's still to look at: neither fills the minimum set (C16).
[[nodiscard]] bool awaits_examiner(const model::Finding& finding);
[[nodiscard]] std::vector<MissingItem> missing_items(const View& view);
// Whether the minimum set holds no value at all, but that there was no time: told at signing, and open on the form.
[[nodiscard]] bool left_for_time(const View& view, const model::Sequence& sequence);
// The part complained of on either side, and the joints above and below it, where nothing was looked at; what is not there is no gap.
[[nodiscard]] std::vector<NotExamined> not_examined(const View& view);
// The same of another sequence than that of the exam's complaint.
[[nodiscard]] std::vector<MissingItem> missing_items(const View& view, const model::Sequence& sequence);

}  // namespace limbledger::interpret
