// What withholds steps: concerns that the examiner or a film opened, and those that a raised alert or an unsettled rule of an acute
// injury holds open until the examiner or a film lifts them; and what a raised alert stops by itself. Withheld means not advised
// now; recording goes on (C9). Source: examination sequence page, section 4; contract, section 7.
#pragma once

#include "core/interpret/alerts/alerts.hpp"
#include "core/interpret/concerns.hpp"

#include <optional>
#include <vector>

namespace limbledger::interpret {

[[nodiscard]] std::vector<OpenConcern> open_concerns(const View& view, const std::vector<JudgedFlag>& flags, const std::vector<JudgedRule>& rules);

// Whether a rule may hold a concern open: only where there was an injury.
[[nodiscard]] bool rules_may_hold(const View& view);

// Why a step is not advised now on this side, and until when.
struct Withholding {
  model::Word by;  // concern.* or alert.*
  model::MessageId until;
};
[[nodiscard]] std::optional<Withholding> withheld(const model::Item& item, model::Side side, const std::vector<OpenConcern>& concerns,
                                                  const std::vector<JudgedFlag>& flags);

}  // namespace limbledger::interpret
