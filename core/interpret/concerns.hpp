// Which concerns stand open by what was recorded: the examiner's own answer (general.concern_*) or a film (history.film_result).
// A conflict stays open. What an alert or a rule holds open joins where it is known. Source: contract, section 7.
#pragma once

#include "core/interpret/view.hpp"

#include <vector>

namespace limbledger::interpret {

struct OpenConcern {
  const model::Concern* concern = nullptr;
  model::Side side{};  // midline: both sides
};

// In the order of the edition, the left before the right.
[[nodiscard]] std::vector<OpenConcern> recorded_concerns(const View& view);

}  // namespace limbledger::interpret
