// How alike two words are, 0 to 1, over code points of words that are folded already. Jaro as it is defined (window, common
// letters, half the letters out of order); Winkler's prefix of at most 4 letters at 0.1 always counts. Two empty words are
// alike, one empty word is like nothing. Source: Winkler, US Census Bureau RR94-5, table 2.1.
#pragma once

#include "core/match/folded.hpp"

namespace limbledger::match {

[[nodiscard]] double jaro(const Letters& a, const Letters& b);
[[nodiscard]] double jaro_winkler(const Letters& a, const Letters& b);

}  // namespace limbledger::match
