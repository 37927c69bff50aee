// How common a condition is among people like this one: typed by the examiner, else a default row for the exam's setting
// (outreach falls back to community, then primary care, then none); rapid swelling of the knee chooses the row of knees full of
// blood, and then swelling gives no ratio of its own. No row: no probability. Source: the dependence page, section 5.
#pragma once

#include "core/interpret/assess_ask.hpp"
#include "core/interpret/evidence/choose.hpp"

#include <optional>
#include <vector>

namespace limbledger::interpret {

struct Prior {
  PriorShare share;
  const reference::PretestRow* row = nullptr;  // null: typed
};

[[nodiscard]] std::optional<Prior> prior_of(const View& view, const model::Word& condition, const Circumstances& circumstances,
                                            const std::vector<TypedPrior>& typed);

}  // namespace limbledger::interpret
