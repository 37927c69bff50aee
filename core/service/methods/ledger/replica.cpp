#include "core/service/methods/ledger/replica.hpp"

#include "core/service/desk.hpp"
#include "core/service/exchange/door.hpp"

namespace limbledger::service {

namespace {

[[nodiscard]] wire::Count<0, 9007199254740991> counted_entries(std::uint64_t value) { return {static_cast<std::int64_t>(value)}; }

[[nodiscard]] HolderLevel holder_level(std::string_view word) {
  return word == "witnessed" ? HolderLevel::witnessed : word == "opened" ? HolderLevel::opened : HolderLevel::held;
}

}  // namespace

Result<ReplicaListResult> replica_list(Context& context, const NoParams& /*params*/) {
  const auto door = ExchangeDoor::open(*context.desk);
  if (!door) {
    return door.error();
  }
  const auto hub = (*door)->is_hub();
  const auto held = (*door)->held_elsewhere();
  const auto waiting = (*door)->waiting();
  if (!hub || !held || !waiting) {
    return !hub ? hub.error() : !held ? held.error() : waiting.error();
  }
  ReplicaListResult result;
  result.replica = (*door)->replica();
  result.hub = *hub;
  for (const HeldBy& one : *held) {
    result.holders.push_back({one.holder, counted_entries(one.held), counted_entries(one.not_held), holder_level(one.level), model::Instant{one.wall_ms}});
  }
  for (const WaitingRun& one : *waiting) {
    result.waiting.push_back({one.replica, counted_entries(one.first), counted_entries(one.entries), counted_entries(one.held_to)});
  }
  return result;
}

}  // namespace limbledger::service
