// Fluid in a knee: the stroke test by its grade, the tap and the fluctuation by what they can tell beside it. A tense knee gives
// no tap, and neither does a small effusion, so a negative tap says nothing beside either. How far examiners agree stands with each.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/interpret/view.hpp"

namespace limbledger::interpret {

[[nodiscard]] std::vector<Judged> judge_effusion(const View& view);
// A tap without any wave: one of the two is something else (a bursa, a fat pad, a knee not straight).
[[nodiscard]] std::vector<Contradiction> effusion_contradictions(const View& view);

}  // namespace limbledger::interpret
