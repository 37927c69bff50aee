// The working of a hypothesis: every ratio with the sum it comes from, the discounted sum, the prior, the range, and why each
// finding was left out; in numbers of three decimals that can be followed on paper.
#pragma once

#include "core/interpret/evidence/prior.hpp"

#include <optional>
#include <vector>

namespace limbledger::interpret {

// A test, or a composite (`test` null: what would stand without it), that gave way to `keeper`; or a composite left open before it.
struct Replaced {
  const TestHeard* test = nullptr;
  const TestHeard* keeper = nullptr;
  Combined combined;
  bool agrees = false;
  double point = 0;
  bool kept_as_end = false;

  [[nodiscard]] bool open_composite() const { return test != nullptr && !test->positive && test->if_negative; }
  [[nodiscard]] bool set_aside() const { return test != nullptr && test->set_aside(); }
};

struct Account {
  const std::vector<TestHeard>* heard = nullptr;
  const Choice* choice = nullptr;
  Combined combined;
  std::optional<Prior> prior;
  Chances chances;
  std::vector<Replaced> replaced;
  bool second_class = false;
};

void write_working(const Account& account, const Hypothesis& result, Working& working);

}  // namespace limbledger::interpret
