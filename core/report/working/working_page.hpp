// The working of one statement, rule, hypothesis or danger as it is printed to be checked by hand: the sentence, the findings it rests on, the
// figures with their sources, the formula with its numbers, and what would change it. What is protected stands on it as little as on any page.
#pragma once

#include "core/report/page_parts.hpp"

namespace limbledger::report {

// `working` with its texts, as statement.explain gives them with a language.
[[nodiscard]] Sheet working_sheet(const PageView& view, const interpret::Working& working);
// The names that can be explained, each with its sentence, dangers first. `view` is of an assessment with its texts.
[[nodiscard]] Sheet names_sheet(const PageView& view);

}  // namespace limbledger::report
