// The score for a clot, worked out by its sums, is what walking every completion of a written-out score gives. The classes are drawn by a
// fixed sequence. Source: WELLS2003, WELLS1997.
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

struct Point {
  std::int64_t calf_from = 0;  // the class of the calf that gives its point
  bool before_counts = false;
};

// The score of one known leg, written out.
SheetAnswer walked_score(std::span<const std::uint8_t> in, const Point& how, SheetAnswer (*band)(std::int64_t)) {
  std::int64_t points = in[7] >= how.calf_from ? 1 : 0;
  for (const std::size_t one : {2U, 3U, 4U, 5U, 6U, 8U, 9U}) {
    points += in[one];
  }
  points += how.before_counts ? in[10] : 0;
  points -= in[11] == 1 ? 2 : 0;
  SheetAnswer answer = in[0] == 0 ? SheetAnswer{Outcome::not_applicable, {}, "age"} : (in[1] == 1 ? SheetAnswer{Outcome::not_applicable, {}, "pregnancy"} : band(points));
  answer.points = points;
  return answer;
}

void compare_with_walk(SheetCompleted (*score)(std::span<const Classes>), const Point& how, SheetAnswer (*band)(std::int64_t)) {
  std::uint32_t state = 12345;
  for (int round = 0; round < 400; ++round) {
    std::vector<Classes> may_be;
    for (std::size_t i = 0; i < wells_inputs; ++i) {
      state = state * 1664525U + 1013904223U;
      may_be.push_back(static_cast<Classes>(1U + (state >> 16U) % (i == 7 ? 7U : 3U)));
    }
    const SheetCompleted walked = complete_sheet(may_be, [&](std::span<const std::uint8_t> in) { return walked_score(in, how, band); });
    CHECK(same_completion(score(may_be), walked));
  }
}

}  // namespace

TEST_CASE("the score of a clot by its sums is what walking every completion gives, in both versions") {
  compare_with_walk(&wells_2003, {1, true}, [](std::int64_t points) {
    return points >= 2 ? SheetAnswer{Outcome::positive, "two_or_more"} : SheetAnswer{Outcome::negative, "under_two"};
  });
  compare_with_walk(&wells_1997, {2, false}, [](std::int64_t points) {
    return points >= 3 ? SheetAnswer{Outcome::positive, "high"} : (points >= 1 ? SheetAnswer{Outcome::positive, "moderate"} : SheetAnswer{Outcome::negative, "low"});
  });
}
