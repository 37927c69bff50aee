#include "core/interpret/measure/measure.hpp"

#include "core/interpret/measure/amount.hpp"
#include "core/interpret/measure/apart.hpp"
#include "core/interpret/measure/blood.hpp"
#include "core/interpret/measure/leg_length.hpp"
#include "core/interpret/measure/not_read.hpp"
#include "core/interpret/measure/power.hpp"

namespace limbledger::interpret {

std::vector<Judged> judge_measures(const View& view, const std::vector<Reading>& motions, std::span<const model::Exam> earlier) {
  const std::vector<Reading> amounts = read_amounts(view);
  std::vector<Judged> all;
  for (auto& part : {judge_leg_length(view, amounts, motions), judge_amount_sides(view, amounts), judge_amount_past(view, amounts, earlier),
                     judge_refill(view, amounts), judge_pitting(view), judge_apart(view, amounts), judge_held_back(view), judge_not_read(view)}) {
    all.insert(all.end(), part.begin(), part.end());
  }
  return all;
}

std::vector<Contradiction> measure_contradictions(const View& view) {
  const std::vector<Reading> amounts = read_amounts(view);
  std::vector<Contradiction> all = leg_length_contradictions(amounts);
  for (Contradiction& one : apart_contradictions(amounts)) {
    all.push_back(std::move(one));
  }
  return all;
}

}  // namespace limbledger::interpret
