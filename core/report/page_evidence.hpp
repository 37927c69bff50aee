// A hypothesis as one sentence: the band, then the range in the same sentence, in study clinics; a direction where there is no
// range. The words of the range are read from the numbers that are written on the wire, so that the two cannot differ.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/reference/edition.hpp"
#include "core/report/words/words.hpp"

#include <string>

namespace limbledger::report {

[[nodiscard]] std::string hypothesis_text(const interpret::Hypothesis& hypothesis, const Words& words, const reference::Edition& edition);

}  // namespace limbledger::report
