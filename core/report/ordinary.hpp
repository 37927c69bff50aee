// Whether a value is one to name, by what the catalogue says is ordinary of its item or scale: every item is held against it, none
// is left to a list. What the catalogue says nothing of is told (region history) or described, and never called ordinary.
#pragma once

#include "core/model/exam/finding.hpp"
#include "core/reference/edition.hpp"

namespace limbledger::report {

enum class Ordinary : std::uint8_t { ordinary, unusual, described, told };

// A number is described here, but for steps and fever: a comparison says more of it.
[[nodiscard]] Ordinary ordinary(const reference::Edition& edition, const model::Finding& finding);

}  // namespace limbledger::report
