// Knee exams made from a seed, with every item of the built-in edition: a third hold anything, a third lie near what the knee rules
// decide by, a third near what hypotheses compute with. Invented. LIMBLEDGER_EXAMS of them, beginning with LIMBLEDGER_FIRST_EXAM, so
// that several processes can share a long run.
#pragma once

#include "tests/unit/interpret/draw.hpp"
#include "tests/unit/interpret/support.hpp"

#include <cstdint>

namespace limbledger::knee_exams {

struct Seeds {
  std::uint64_t first = 1;
  std::uint64_t count = 0;
};
// 2,000 by default, 100,000 in the full tier.
[[nodiscard]] Seeds seeds();

[[nodiscard]] interpret_test::Bench random_knee(std::uint64_t seed);

}  // namespace limbledger::knee_exams
