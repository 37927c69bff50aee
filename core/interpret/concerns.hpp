// Which concerns stand open by what was recorded: the examiner's own answer (general.concern_*) or a film (history.film_result).
// A conflict stays open. What an alert or a rule holds open joins in held.hpp. Source: contract, section 7.
#pragma once

#include "core/interpret/view.hpp"

#include <vector>

namespace limbledger::interpret {

struct OpenConcern {
  const model::Concern* concern = nullptr;
  model::Side side{};  // midline: both sides
  std::vector<model::Word> held_by{};  // recorded (examiner or film), alert.*, rule.*
};

// The examiner's own no, or a film that shows nothing where that settles it.
[[nodiscard]] bool lifted(const View& view, const model::Concern& concern, model::Side side);
// In the order of the edition, the left before the right.
[[nodiscard]] std::vector<OpenConcern> recorded_concerns(const View& view);

}  // namespace limbledger::interpret
