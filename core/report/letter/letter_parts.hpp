// The sections of a letter that rest on findings; letter.cpp puts them in order. `shortened` from 0 (all) to 7: what grows is cut
// to a count, first what was found ordinary, then what was told, what was measured and not done, the grounds of an alert, and in the
// end, where a sheet could never hold it, what was out of the ordinary. Pulses, feeling and movement of the side that is complained
// of are never cut.
#pragma once

#include "core/report/letter/letter.hpp"

namespace limbledger::report {

// Joined; "n more, in the record" in the place of what does not fit.
[[nodiscard]] std::string some_of(const PageView& view, const std::vector<std::string>& parts, std::size_t kept);
// Whether a letter, or a protected one, tells of this alert.
[[nodiscard]] bool alert_in_letter(const PageView& view, const interpret::Alert& alert, bool private_letter);
[[nodiscard]] SheetSection letter_urgency(const PageView& view, const LetterAsk& ask, int shortened);
[[nodiscard]] SheetSection letter_until(const PageView& view);
[[nodiscard]] SheetSection letter_function(const PageView& view, int shortened);
[[nodiscard]] SheetSection letter_found(const PageView& view, int shortened);
void add_noes(const PageView& view, int shortened, SheetSection& section);
[[nodiscard]] SheetSection letter_treatment(const PageView& view);
[[nodiscard]] SheetSection letter_medicines(const PageView& view);
[[nodiscard]] SheetSection letter_not_examined(const PageView& view, int shortened);
// What is kept from a page by default, for a protected letter alone.
[[nodiscard]] SheetSection letter_private(const PageView& view);

}  // namespace limbledger::report
