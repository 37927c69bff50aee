// What nobody is asked for or put through now, by what is raised or planned: no step on a leg that must not carry, nothing on a stop list,
// nothing that provokes a limb on which an alert stands. Recording goes on (C9). Source: clinical safety, C9 and C21; exam sequence page, section 4.
#pragma once

#include "core/interpret/held.hpp"

#include <vector>

namespace limbledger::interpret {

// Done standing or walking, while a raised alert stops it or the plan holds a splint or a limit: its words may say that the leg
// carries nothing, and words are not read here.
[[nodiscard]] bool kept_off_the_feet(const View& view, const std::vector<JudgedFlag>& flags, const model::ItemId& item);
// It hurts, or is a way of walking.
[[nodiscard]] bool provokes(const model::Item& item);
// It moves the limb or squeezes it, though that seldom hurts: not done to one that may be broken, clotted or under pressure.
[[nodiscard]] bool moves_or_squeezes(const model::Item& item);
// The same of a limb on which an alert stands.
[[nodiscard]] bool moves_limb_in_alarm(const std::vector<JudgedFlag>& flags, const model::Item& item, model::Side side);

class Spared {
 public:
  Spared(const View& view, const std::vector<JudgedFlag>& flags);
  // Whether this is not asked for now on behalf of this danger.
  [[nodiscard]] bool holds(const ToAsk& ask, const JudgedFlag& by) const;

 private:
  [[nodiscard]] bool provoked(const ToAsk& ask, model::Side moved, const JudgedFlag& by) const;

  const View& view_;
  const std::vector<JudgedFlag>& flags_;
  bool raised_ = false;
  std::vector<OpenConcern> concerns_;  // by what is raised and recorded; no rule is heard here, as none is asked after
};

}  // namespace limbledger::interpret
