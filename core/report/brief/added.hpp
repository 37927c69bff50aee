// What was added after the signature. The program judges what was signed, so that whoever reads a value that an addendum has otherwise
// is told beside it; and that there are addenda stands at the head. Of what is kept apart for a person's protection nothing is told here.
#pragma once

#include "core/report/page_parts.hpp"

#include <string>
#include <vector>

namespace limbledger::report {

// One that holds nothing but what is kept apart is not among them: its reason alone would tell.
[[nodiscard]] std::vector<const model::Addendum*> addenda_told(const PageView& view);
[[nodiscard]] std::string added_head(const PageView& view);      // empty: none
// That left and right were exchanged after the signature, by whom and why; empty where they were not.
[[nodiscard]] std::string exchanged_head(const PageView& view);
[[nodiscard]] SheetSection added_section(const PageView& view);  // no lines: none
// "Judged as signed ...": of what is judged, the values that an addendum has otherwise; of all, or of these findings. Empty: none.
[[nodiscard]] std::string judged_as_signed(const PageView& view);
[[nodiscard]] std::string judged_as_signed(const PageView& view, const std::vector<model::FindingId>& of);
// Observations of addenda that are kept apart, each with its label and value, for a protected letter alone.
[[nodiscard]] std::vector<std::string> added_apart(const PageView& view);

}  // namespace limbledger::report
