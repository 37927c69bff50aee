// A sum of points behind gates, worked out without walking its completions, is what walking them gives: on invented decisions and on the
// score for a clot. The classes are drawn by a fixed sequence.
#include "core/interpret/rules/points.hpp"
#include "core/interpret/rules/vessel/wells.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using namespace limbledger::interpret;

namespace {

bool same_completion(const SheetCompleted& a, const SheetCompleted& b) {
  if (!a.answer.same_as(b.answer) || a.answer.points != b.answer.points || a.points_most != b.points_most || a.settles != b.settles) {
    return false;
  }
  for (std::size_t i = 0; i < a.gives.size(); ++i) {
    for (std::size_t c = 0; c < a.gives[i].size(); ++c) {
      const bool there = a.gives[i][c].has_value() && b.gives[i][c].has_value();
      if (a.gives[i][c].has_value() != b.gives[i][c].has_value() || (there && !a.gives[i][c]->same_as(*b.gives[i][c]))) {
        return false;
      }
    }
  }
  return true;
}

void compare_with_walk(const PointsDecision& decision, std::size_t inputs, std::size_t three_classes, int rounds) {
  std::uint32_t state = 12345;
  for (int round = 0; round < rounds; ++round) {
    std::vector<Classes> may_be;
    for (std::size_t i = 0; i < inputs; ++i) {
      state = state * 1664525U + 1013904223U;
      const std::uint32_t all = i == three_classes ? 7 : 3;
      may_be.push_back(static_cast<Classes>(1U + (state >> 16U) % all));
    }
    const SheetCompleted walked = complete_sheet(may_be, [&](std::span<const std::uint8_t> in) { return decide_points(in, decision); });
    REQUIRE(same_completion(complete_points(may_be, decision), walked));
  }
}

}  // namespace

TEST_CASE("points behind gates are what walking every completion gives, for the score of a clot in both versions") {
  compare_with_walk(wells_2003(), wells_inputs, 7, 400);
  compare_with_walk(wells_1997(), wells_inputs, 7, 400);
}

TEST_CASE("points behind gates are what walking every completion gives, with a gate that leaves the points open and with none") {
  const PointsDecision gated{1,
                             [](std::span<const std::uint8_t> gates) { return gates[0] == 1 ? std::optional(SheetAnswer{Outcome::negative, "few"}) : std::nullopt; },
                             [](std::size_t input, std::uint8_t one) { return one * (input == 3 ? -3 : 2); },
                             [](std::int64_t points) { return points >= 3 ? SheetAnswer{Outcome::positive, "many"} : SheetAnswer{Outcome::negative, "few"}; }};
  compare_with_walk(gated, 5, 2, 300);
  const PointsDecision bare{0, [](std::span<const std::uint8_t>) { return std::optional<SheetAnswer>(); },
                            [](std::size_t, std::uint8_t one) { return std::int64_t{one}; },
                            [](std::int64_t points) { return points >= 2 ? SheetAnswer{Outcome::positive} : SheetAnswer{Outcome::negative}; }};
  compare_with_walk(bare, 4, 99, 200);
}
