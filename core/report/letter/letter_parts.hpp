// The sections of a letter that rest on findings; letter.cpp puts them in order. `shortened` from 0 (all) to 5: what grows is cut
// to a count, first what was found ordinary, then what was told, what was measured and not done, the grounds of an alert, and in the
// end, where a sheet could never hold it, what was out of the ordinary.
#pragma once

#include "core/report/letter/letter.hpp"

namespace limbledger::report {

[[nodiscard]] SheetSection letter_urgency(const PageView& view, const LetterAsk& ask, int shortened);
[[nodiscard]] SheetSection letter_function(const PageView& view, int shortened);
[[nodiscard]] SheetSection letter_found(const PageView& view, int shortened);
[[nodiscard]] SheetSection letter_treatment(const PageView& view);
[[nodiscard]] SheetSection letter_medicines(const PageView& view);
[[nodiscard]] SheetSection letter_not_examined(const PageView& view, int shortened);
// What is kept from a page by default, for a protected letter alone.
[[nodiscard]] SheetSection letter_private(const PageView& view);

}  // namespace limbledger::report
