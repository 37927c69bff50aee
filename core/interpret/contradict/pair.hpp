// Two clues that do not fit together, by name. Both must be yes; what they rest on is named, and nothing is settled.
#pragma once

#include "core/interpret/alerts/answers.hpp"

#include <span>
#include <string_view>

namespace limbledger::interpret {

struct Pair {
  std::string_view name;  // contradiction.<name>, msg.contradiction.<name>
  bool sided = true;
  Clue (*first)(const Answers& answers, model::Side side);
  Clue (*second)(const Answers& answers, model::Side side);
};

// Those of hip, ankle, foot, nerve, vessel, skin and what is measured.
[[nodiscard]] std::span<const Pair> limb_pairs();

}  // namespace limbledger::interpret
