// Hypotheses: for each condition that concerns the part complained of (its row says which parts) or was asked for by its name, and
// for each side complained of, what the findings speak for, as a band and a range in
// 100, or as a direction where no eligible prior or row exists; ordered by what is worst to miss, then by name. Given once the
// minimum set of the complaint is recorded, or when asked for by name; explained always.
#pragma once

#include "core/interpret/assess_ask.hpp"
#include "core/interpret/concerns.hpp"
#include "core/interpret/statement.hpp"
#include "core/interpret/view.hpp"

#include <vector>

namespace limbledger::interpret {

struct JudgedHypothesis {
  Hypothesis result;
  Working working;  // of condition.acl_tear:left
};

// What was asked for, as names or their beginnings, and which concerns stand open: some priors are of people without them.
struct HypothesisAsk {
  std::vector<std::string> names{};
  std::vector<OpenConcern> open{};
};
[[nodiscard]] std::vector<JudgedHypothesis> judge_hypotheses(const View& view, const std::vector<TypedPrior>& priors, const HypothesisAsk& ask = {});

// Each step of the minimum set has a finding on this side (a reason why it was not done is none).
[[nodiscard]] bool minimum_recorded(const View& view, model::Side side);

}  // namespace limbledger::interpret
