// Where each step of a form stands: its position, or that of what replaces it, where somebody cannot lie, stand, sit, walk, bend the
// knee to a right angle, has one leg, or nothing to measure with; and late in pregnancy. The order is the sequence's; what had to
// move goes to a later time of the same position, so that nobody is turned more than needed. What is both of the minimum set and asked for safety stays.
#pragma once

#include "core/service/methods/say/form.hpp"

#include <vector>

namespace limbledger::service {

struct Placed {
  const model::Item* item = nullptr;
  model::SequenceStep step;
  const model::Item* instead_of = nullptr;
  std::vector<model::Side> sides;
  bool moved = false;  // not where the sequence has it
};

struct Placing {
  std::vector<Placed> placed;
  std::vector<LeftStep> left_out;
  std::vector<BodyStep> not_applicable;  // for younger children alone
};

// Of the minimum set: of every person, or below an age; an age that is not known closely may be below it.
[[nodiscard]] bool is_minimum(const FormAsk& ask, const model::SequenceStep& step);
[[nodiscard]] std::optional<bool> minimum_mark(const FormAsk& ask, const model::SequenceStep& step);
[[nodiscard]] LeftStep left_step(const FormAsk& ask, const model::Item& item, const model::SequenceStep& step, WhyLeft why);
[[nodiscard]] Placing place_steps(const reference::Edition& edition, const FormAsk& ask);

}  // namespace limbledger::service
