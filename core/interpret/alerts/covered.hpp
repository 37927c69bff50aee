// Whether anything of this edition speaks of a complaint: a decision rule of its region (a rule is named for it), or a danger that is
// asked after in it (`asked_in`). Where nothing does, silence is no answer, and has to be said as that.
#pragma once

#include "core/reference/edition.hpp"

namespace limbledger::interpret {

struct Covered {
  bool rule = false;
  bool dangers = false;
};

[[nodiscard]] Covered covered(const reference::Edition& edition, const model::Word& complaint);
// In this complaint a danger is said to be not asked after where it is asked here; or, where the edition names no complaint for it,
// where what it stops or is named for lies in the region complained of, or none is named.
[[nodiscard]] bool belongs_to(const reference::Edition& edition, const reference::AlertRow& row, const model::Word& complaint);

}  // namespace limbledger::interpret
