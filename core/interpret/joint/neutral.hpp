// A joint that is moved and does not come to its middle position: held bent, pointed, across, turned. Of the knee it is told in
// knee/extension. Thousandths of a degree toward the item's own direction: less than 0 is short of the middle.
#pragma once

#include "core/interpret/motion/compare.hpp"
#include "core/interpret/statement.hpp"
#include "core/interpret/tri.hpp"

namespace limbledger::interpret {

// Yes beyond 1.96 x error of one reading; undetermined without an instrument, and where the error covers it.
[[nodiscard]] Tri short_of_neutral(const View& view, const Reading& reading);
[[nodiscard]] std::vector<Judged> judge_neutral(const View& view, const std::vector<Reading>& readings);

}  // namespace limbledger::interpret
