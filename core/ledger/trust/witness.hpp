// A witness (kind WITNESS): the heads that a hub holds, written into its own chain at most once an exchange that brought
// something new. It dates entries without any device's clock, and what is witnessed can no longer be rewritten unseen. Only a
// hub writes it: a tablet that wrote because it received would never come to rest. Source: ledger, item 19.
#pragma once

#include "core/ledger/body.hpp"

#include <vector>

namespace limbledger::ledger {

struct WitnessBody {
  static constexpr std::size_t heads_max = 0xffff;
  std::vector<Place> heads;  // sorted when written

  [[nodiscard]] Bytes to_bytes() const;
  [[nodiscard]] static Result<WitnessBody> from_bytes(View body);
};

}  // namespace limbledger::ledger
