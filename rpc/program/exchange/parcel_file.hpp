// A parcel as a file, for the commands and for a program that answers others meanwhile: the medium is waited for on the thread that
// calls, records are touched in turns, a piece at a time. Written beside its name, flushed, read back from the medium and compared, and
// only then renamed: a file with its own name is whole. A stick that is pulled leaves FILE.part, which is refused as cut short.
#pragma once

#include "core/service/exchange/door.hpp"
#include "rpc/transport/handover.hpp"

#include <atomic>
#include <functional>
#include <optional>
#include <string>

namespace limbledger::rpc {

struct ByFile {
  Turn turn;
  std::function<void(const service::ParcelIn&)> told;  // in a turn, after each piece read
  const std::atomic<bool>* given_up = nullptr;
};

[[nodiscard]] bool is_there(const std::string& path);

// Fault exchange.ended where it was given up. The others are those of the door, parcel.unreadable (with what the system says of the
// medium), and parcel.there: nothing is written over a file.
[[nodiscard]] Result<service::WrittenParcel> write_parcel_to(const ByFile& how, service::ExchangeDoor& door, const std::string& path, const std::optional<model::ReplicaId>& holder);
// Also what was taken before a fault stays.
[[nodiscard]] Result<service::TakenParcel> take_parcel_from(const ByFile& how, service::ExchangeDoor& door, const std::string& path, bool cut_too);

}  // namespace limbledger::rpc
