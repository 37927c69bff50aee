// Two rules about a film of the same place, such as those for one knee, or on one question, that do not say the same: both are shown, and
// the more cautious is the default action.
// Source: clinical safety, requirement 7.
#pragma once

#include "core/interpret/statement.hpp"

#include <string_view>
#include <vector>

namespace limbledger::interpret {

inline constexpr std::string_view flag_rules_disagree = "rules_disagree";

// Of ankle and midfoot rule, a negative beside one of the same foot that is contradicted: to whoever limps it is one foot.
inline constexpr std::string_view flag_beside_contradicted = "beside_contradicted";

// Marks a negative that stands beside another rule's positive on the same question and side, and that positive.
void mark_disagreement(std::vector<JudgedRule>& rules);
void mark_beside_contradicted(std::vector<JudgedRule>& rules);

}  // namespace limbledger::interpret
