// Which operations had reached a ledger when its chains had come so far (a report says how far). Of a chain with several branches the
// place alone does not tell: the branches are walked back to where they part.
#pragma once

#include "core/ledger/log/log.hpp"
#include "core/ledger/port.hpp"
#include "core/model/report.hpp"

#include <map>
#include <set>
#include <span>
#include <vector>

namespace limbledger::ledger {

class Had {
 public:
  // All that is here.
  Had() = default;
  Had(std::span<const model::Reached> reached, const Index& index, LogStore& store);

  [[nodiscard]] bool operator()(const Opened& one) const;
  // False where the branch that had been there cannot be found any more.
  [[nodiscard]] bool can_tell(const Opened& one) const { return !untold_.contains(one.replica()); }

 private:
  struct End {
    std::uint64_t seq = 0;
    std::set<model::EntryId> elsewhere;  // up to there, and on another branch
  };

  bool all_ = true;
  std::map<model::ReplicaId, std::vector<End>> ends_;
  std::set<model::ReplicaId> untold_;
};

}  // namespace limbledger::ledger
