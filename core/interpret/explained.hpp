// Why a danger is raised, was answered no or is still open, to be checked by hand: which answers say what, which are missing, the page it comes from
// and what would change it. Made of the same clue that raised it. What is protected is explained where it may be shown, and nowhere else.
#pragma once

#include "core/interpret/alerts/alerts.hpp"

namespace limbledger::interpret {

// Source: the row of the danger (sources, status, time to harm); clinical safety, C2.
[[nodiscard]] Working explained(const View& view, const JudgedFlag& judged);

// What nothing else says would change it: of a hypothesis the groups of tests of which nothing is recorded, and always that an answer it
// rests on was wrong.
void add_what_changes(const reference::Edition& edition, Working& working);

}  // namespace limbledger::interpret
