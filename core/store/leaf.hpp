// Which newest head a new head takes the place of, and whether it is kept for good: the same rule for every store.
// Without a fork this is one look-up; after one, the branch is followed back by recomputing hashes.
#pragma once

#include "core/ledger/entry.hpp"

#include <functional>
#include <optional>
#include <vector>

namespace limbledger::store {

// Rows of the replica at one sequence number: one, or several after a fork.
using RowsAt = std::function<Result<std::vector<ledger::Row>>(std::uint64_t seq)>;

struct LeafChange {
  bool is_newest = true;                // false: the head lies below a leaf that is known
  std::optional<std::size_t> replaces;  // index of the newest head that it follows
  bool is_kept = false;                 // the first head at or after a thousandth entry
};

// `newest`: the newest heads of the same replica.
[[nodiscard]] Result<LeafChange> leaf_change(const std::vector<ledger::Head>& newest, const ledger::Head& head,
                                             const RowsAt& rows_at);

// What an arriving row does to the one of the same place and hash.
enum class Meeting : std::uint8_t { same, fills, contradicts };
[[nodiscard]] Meeting meet(const ledger::Row& held, const ledger::Row& arriving);

}  // namespace limbledger::store
