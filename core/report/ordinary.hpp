// Whether a value is one to name, by what the catalogue says is ordinary of its item or scale: every item is held against it, none
// is left to a list. What the catalogue says nothing of is told (region history) or described, and never called ordinary.
#pragma once

#include "core/model/exam/finding.hpp"
#include "core/reference/edition.hpp"

namespace limbledger::report {

enum class Ordinary : std::uint8_t { ordinary, unusual, described, told };

// A number is described here, but for steps and fever: a comparison says more of it.
[[nodiscard]] Ordinary ordinary(const reference::Edition& edition, const model::Finding& finding);

// What was told, a lasting state of the body, a worry of the examiner and what was carried over are no look at a side.
[[nodiscard]] bool is_look(const model::Finding& finding);
// Named with what is out of the ordinary, on every page: also what was looked for today and could not be told.
[[nodiscard]] bool stands_out(const reference::Edition& edition, const model::Finding& finding);

// Not done, with its reason; or a choice that says so in its own words. None of it was measured, seen or felt.
[[nodiscard]] bool left_undone(const model::Finding& finding);
// The choice says that it was not done, and neither it nor a remark says why.
[[nodiscard]] bool undone_without_reason(const model::Finding& finding);

}  // namespace limbledger::report
