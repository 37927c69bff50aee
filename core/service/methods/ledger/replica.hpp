// replica.list: where the entries of this device are besides here, by the signed words of who holds them, and what came but waits
// for what is before it. So a person sees whether the tablet may be lost today. Source: ledger, items 23 and 25; contract, section 9.
#pragma once

#include "core/service/context.hpp"
#include "core/service/methods/ledger/session.hpp"
#include "core/wire/fault.hpp"
#include "core/wire/type.hpp"

#include <array>
#include <optional>
#include <vector>

namespace limbledger::service {

enum class HolderLevel { held, opened, witnessed };
BOOST_DESCRIBE_ENUM(HolderLevel, held, opened, witnessed)
struct HolderReplica {
  model::ReplicaId replica;
  wire::Count<0, 9007199254740991> held;
  wire::Count<0, 9007199254740991> not_held;
  HolderLevel level{};
  model::Instant at;
};
BOOST_DESCRIBE_STRUCT(HolderReplica, (), (replica, held, not_held, level, at))
constexpr auto notes(const HolderReplica*) {
  return std::array{wire::Note{"held", "entries of this device that it has said to have on its disk, from the first on"},
                    wire::Note{"not_held", "entries written here after those"},
                    wire::Note{"level", "witnessed: the hub has written down what it holds"},
                    wire::Note{"at", "by the clock of who holds them"}};
}
struct WaitingEntries {
  model::ReplicaId replica;
  wire::Count<0, 9007199254740991> first;
  wire::Count<0, 9007199254740991> entries;
  wire::Count<0, 9007199254740991> held_to;
};
BOOST_DESCRIBE_STRUCT(WaitingEntries, (), (replica, first, entries, held_to))
constexpr auto notes(const WaitingEntries*) {
  return std::array{wire::Note{"held_to", "the newest of its entries that are held; what is between it and first is missing, perhaps on an earlier stick"}};
}
struct ReplicaListResult {
  model::ReplicaId replica;  // this one
  bool hub = false;
  std::vector<HolderReplica> holders;
  std::vector<WaitingEntries> waiting;
};
BOOST_DESCRIBE_STRUCT(ReplicaListResult, (), (replica, hub, holders, waiting))
constexpr auto notes(const ReplicaListResult*) {
  return std::array{wire::Note{"holders", "who has given a receipt for entries of this device; none: they are here alone"},
                    wire::Note{"waiting", "entries that came before what stands before them: kept, not yet read"}};
}
// Scope E V.
[[nodiscard]] Result<ReplicaListResult> replica_list(Context& context, const NoParams& params);

}  // namespace limbledger::service
