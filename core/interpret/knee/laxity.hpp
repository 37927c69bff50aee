// Looseness of a knee: what each graded test counts as (grade, millimetres, end feel, as the catalogue's row says), set against
// the other knee, and what makes it tell less: a tibia that sagged, guarding, tense fluid, a loose medial side, a heavy thigh or small
// hands, the first weeks. Where a better test is known it is named. Which items: those of the knee graded in millimetres against
// the other side, and the pivot shift. Limits of girth and span come from the item's own row (`instead`).
#pragma once

#include "core/interpret/statement.hpp"
#include "core/interpret/view.hpp"

namespace limbledger::interpret {

[[nodiscard]] std::vector<Judged> judge_laxity(const View& view);

}  // namespace limbledger::interpret
