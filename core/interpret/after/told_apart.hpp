// An exam in which one item of one side was told in two ways that both stand: a danger that one of the answers raises is raised, whichever
// the other. Each danger is judged by the answers it asks for alone, so that what was told apart elsewhere neither hides it nor costs
// anything. Source: clinical safety, C2; that of two answers the more alarming one counts is our own convention.
#pragma once

#include "core/interpret/alerts/alerts.hpp"

#include <vector>

namespace limbledger::interpret {

// Two findings of one item and side stand, settle and differ.
[[nodiscard]] bool tells_apart(const View& view);
// The dangers that are wanted, of an exam as it stands.
using JudgeAsTold = std::vector<JudgedFlag> (*)(const View& view, const WantedRows& wanted);
// To what was judged of the exam as it stands, what a choice among the answers told apart raises, or raises higher.
void add_more_alarming(const View& view, JudgeAsTold judge, const WantedRows& wanted, std::vector<JudgedFlag>& judged);

}  // namespace limbledger::interpret
