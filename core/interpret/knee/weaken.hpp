// What makes one test of looseness tell less than its grade, on one side, in a fixed order: the first that holds gives the
// statement its message, all of them are named. A negative is spoilt by what hides looseness, a positive by what imitates it.
#pragma once

#include "core/interpret/knee/lines.hpp"

namespace limbledger::interpret {

struct Weakened {
  std::string because;    // posterior_sag, sagged_start, guarded, tense_effusion, medial_side_loose, heavy_thigh, small_hands, first_weeks
  bool silences = false;  // the result tells nothing; else it tells less
  std::string instead;    // the item to do in its place, or empty
  std::vector<const model::Finding*> findings;
};

[[nodiscard]] std::vector<Weakened> weakened_by(const View& view, const model::Item& item, model::Side side, const Found& found);

}  // namespace limbledger::interpret
