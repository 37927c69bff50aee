// Which findings speak, and which are left out, for one condition on one side: each test is read as positive, negative or open;
// one test a group is kept, the first in the fixed order that may compute, never the most extreme; a composite done as defined
// replaces its members. Guarded negatives, unsure landmarks and what a confounder spoils tell nothing (ratio 1).
#pragma once

#include "core/interpret/evidence/combine.hpp"
#include "core/interpret/view.hpp"

#include <string>
#include <vector>

namespace limbledger::interpret {

// A test of one group that has findings here.
struct TestHeard {
  const reference::EvidenceGroup* group = nullptr;
  const reference::GroupMember* member = nullptr;
  std::optional<bool> positive;  // absent: open, for `state`
  std::string state;             // known, equivocal, guarded, not_asked ... or a confounder
  std::vector<const model::Finding*> findings;
  const reference::AccuracyRow* row = nullptr;
  reference::Admission admission;
  std::optional<Ratio> ratio;  // where it may compute
  bool part_positive = false;  // a part of it is positive, whatever the whole is
  std::optional<Ratio> if_negative;  // of a composite left open although a part is positive: what it would have said, had that part not been
  std::optional<bool> aside;   // of one test that was done and does not count: what was seen, had nothing spoken against believing it
  std::optional<Ratio> if_counted;   // the ratio it would have had
  bool weak = false;           // a negative that cannot be told from this test now: it gives no direction by itself

  [[nodiscard]] bool computes() const { return positive && ratio; }
  // Done, with figures that could have computed, and not believed: nothing else becomes more certain by that.
  [[nodiscard]] bool set_aside() const { return !positive && if_counted; }
};

// Acutely injured (within 14 days: our convention, after the advice to examine again at two weeks), and what chooses the prior.
struct Circumstances {
  bool acute = false;
  bool injured = false;
  std::optional<std::int64_t> days;  // since the injury, at most
  std::optional<std::int64_t> days_least;
  bool haemarthrosis = false;        // rapid swelling was recorded
  std::optional<model::AgeInterval> age;
  std::optional<model::Sex> sex;
  std::vector<model::ConcernId> open{};  // concerns that stand open on this side
};
[[nodiscard]] Circumstances circumstances_of(const View& view, model::Side side);

struct Choice {
  std::vector<std::size_t> kept;                              // into `heard`: one a group, may compute
  std::vector<std::size_t> direction;                         // into `heard`: of groups where nothing may compute
  std::vector<std::pair<std::size_t, std::string>> left_out;  // into `heard`, and why
};

[[nodiscard]] std::vector<TestHeard> hear_tests(const View& view, const reference::EvidenceCondition& condition, model::Side side,
                                                const Circumstances& circumstances);
// `without`: a composite that is not to be used, or null.
[[nodiscard]] Choice choose(const std::vector<TestHeard>& heard, const reference::GroupMember* without = nullptr);

}  // namespace limbledger::interpret
