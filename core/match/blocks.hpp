// The keys of the blocks that a person stands in; two people are compared where they share one. Hashes: a clash compares a pair
// too many and nothing else.
#pragma once

#include "core/match/compare.hpp"

#include <cstdint>
#include <vector>

namespace limbledger::match {

[[nodiscard]] std::vector<std::uint64_t> block_keys(const Looked& person);
// How a word sounds, coarsely: l and r, b and v, c, k and q, s, z and sh, i and y are one, doubled letters and h are not heard,
// vowels only at the beginning; three sounds. Letters of other scripts stand for themselves. Ours, for finding alone.
[[nodiscard]] Letters sound_of(const Letters& word);

}  // namespace limbledger::match
