// The answers that an item could be given, few enough to try them all: each word, each end of a scale, and a number on either side
// of every limit that alerts and rules use. Ids are empty; nothing of it is ever recorded.
#pragma once

#include "core/model/exam/finding.hpp"
#include "core/model/item.hpp"

#include <vector>

namespace limbledger::interpret {

[[nodiscard]] std::vector<model::Finding> answers_to_try(const model::Item& item, model::Side side);

}  // namespace limbledger::interpret
