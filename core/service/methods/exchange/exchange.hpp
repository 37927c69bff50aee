// exchange.begin, parcel.write, parcel.take, exchange.read, exchange.end: what was recorded here goes to the clinic's other devices
// and theirs comes here, by the network or by a file on a stick, while everything else goes on. Each begins and answers at once; one
// is under way at a time, exchange.read says how it goes, and whatever ends it, what was taken stays and nothing is taken twice.
// Source: ledger, items 21 to 25; contract, section 9.
#pragma once

#include "core/service/methods/ledger/replica.hpp"

namespace limbledger::service {

enum class ErrandKind { with_hub, parcel_write, parcel_take };
BOOST_DESCRIBE_ENUM(ErrandKind, with_hub, parcel_write, parcel_take)
enum class ErrandState { running, done, failed, ended };
BOOST_DESCRIBE_ENUM(ErrandState, running, done, failed, ended)

struct ErrandFault {
  model::Word code;
  wire::Remark meaning;
  std::optional<wire::Remark> expected;
  std::optional<wire::Remark> got;
  wire::Remark hint;
};
BOOST_DESCRIBE_STRUCT(ErrandFault, (), (code, meaning, expected, got, hint))
constexpr auto notes(const ErrandFault*) {
  return std::array{wire::Note{"code", "one of faults.json, with its meaning and hint"},
                    wire::Note{"expected", "of a damaged parcel also where: chunk and entry"}};
}
struct ExchangeErrand {
  ErrandKind kind{};
  ErrandState state{};
  wire::Remark with;
  model::Instant began_at;
  std::optional<model::Instant> ended_at;
  AnyCount taken;
  AnyCount given;
  AnyCount waiting;
  AnyCount turned_away;
  AnyCount waiting_there;
  AnyCount entries;
  AnyCount bytes;
  std::optional<bool> same;
  std::optional<bool> whole;
  std::optional<wire::Count<1, 9007199254740991>> after_end;
  bool restored = false;
  std::optional<HolderReplica> held;
  wire::Remark cursor;
  std::optional<ErrandFault> fault;
};
BOOST_DESCRIBE_STRUCT(ExchangeErrand, (), (kind, state, with, began_at, ended_at, taken, given, waiting, turned_away, waiting_there, entries, bytes, same, whole, after_end, restored,
                                           held, cursor, fault))
constexpr auto notes(const ExchangeErrand*) {
  return std::array{wire::Note{"state", "ended: by exchange.end, before it was over; what was taken until then stays"},
                    wire::Note{"with", "the hub's address, or the parcel's path"},
                    wire::Note{"taken", "entries that were new here"},
                    wire::Note{"given", "with the hub: entries that were new there"},
                    wire::Note{"waiting", "of what came: put aside until what comes before it is here; replica.list says what is missing"},
                    wire::Note{"turned_away", "no room to wait here: to be brought again"},
                    wire::Note{"waiting_there", "put aside at the hub"},
                    wire::Note{"entries", "of a parcel: in it, so far"},
                    wire::Note{"bytes", "sent and got, or of the parcel that was written"},
                    wire::Note{"same", "of an exchange that is done: whether both hold the same now; no: something was written meanwhile, or waits, so do it again"},
                    wire::Note{"whole", "of a parcel that was taken: no, it was cut short, and what is whole was wanted"},
                    wire::Note{"after_end", "bytes that stand in the parcel's file after its end: no part of it, and nothing is read from them; whoever copied it may look why"},
                    wire::Note{"restored", "entries of this device came back that it no longer had: it was put back to an older copy and writes nothing more; let it join again in a new folder (limbledger join)"},
                    wire::Note{"held", "with the hub: what it has said that it holds of this device, at the end"},
                    wire::Note{"cursor", "changes.read from here names the records that it changed"}};
}
struct AnsweringState {
  bool open = false;
  std::vector<wire::Remark> addresses;
  std::optional<ErrandFault> fault;
};
BOOST_DESCRIBE_STRUCT(AnsweringState, (), (open, addresses, fault))
constexpr auto notes(const AnsweringState*) {
  return std::array{wire::Note{"open", "false: until the ledger is unlocked for the first time; from then on also while it is locked"},
                    wire::Note{"addresses", "what to give to another device of the clinic: to join, or as with of exchange.begin"}};
}
struct ExchangeReadResult {
  std::optional<ExchangeErrand> errand;
  std::optional<AnsweringState> answering;
};
BOOST_DESCRIBE_STRUCT(ExchangeReadResult, (), (errand, answering))
constexpr auto notes(const ExchangeReadResult*) {
  return std::array{wire::Note{"errand", "the newest exchange or parcel since the program started; none: there was none"},
                    wire::Note{"answering", "how this program answers the clinic's other devices; left out: it was started without --hub"}};
}

struct ExchangeBeginParams {
  wire::Remark with;
};
BOOST_DESCRIBE_STRUCT(ExchangeBeginParams, (), (with))
constexpr auto notes(const ExchangeBeginParams*) { return std::array{wire::Note{"with", "where the hub answers, as it says: https://HOST:PORT"}}; }
// Scopes E S. Faults: exchange.not_served, exchange.busy, exchange.address, exchange.no_hub; what happens later stands in the errand.
[[nodiscard]] Result<ExchangeReadResult> exchange_begin(Context& context, const ExchangeBeginParams& params);

struct ParcelWriteParams {
  wire::Remark path;
  std::optional<model::ReplicaId> holder;
};
BOOST_DESCRIBE_STRUCT(ParcelWriteParams, (), (path, holder))
constexpr auto notes(const ParcelWriteParams*) {
  return std::array{wire::Note{"path", "a file of this machine, from / on, whose name ends in .parcel and that is not there yet: nothing is written over a file"},
                    wire::Note{"holder", "a replica: leaves out what its last receipt says that it holds"}};
}
// Scopes E S. All that this device holds, sealed for the clinic, written, read back, and only then given its name.
// Faults: exchange.not_served, exchange.busy, parcel.path, parcel.there.
[[nodiscard]] Result<ExchangeReadResult> parcel_write(Context& context, const ParcelWriteParams& params);

struct ParcelTakeParams {
  wire::Remark path;
  std::optional<bool> cut;
};
BOOST_DESCRIBE_STRUCT(ParcelTakeParams, (), (path, cut))
constexpr auto notes(const ParcelTakeParams*) {
  return std::array{wire::Note{"path", "a file of this machine, from / on"}, wire::Note{"cut", "true: of a parcel that was cut short take what is whole, up to its last signed commit"}};
}
// Scopes E S. Nothing is taken of a parcel with a changed byte. Faults: exchange.not_served, exchange.busy, parcel.path.
[[nodiscard]] Result<ExchangeReadResult> parcel_take(Context& context, const ParcelTakeParams& params);

// Scopes E S, also while locked, and no use of the ledger. Fault exchange.not_served.
[[nodiscard]] Result<ExchangeReadResult> exchange_read(Context& context, const NoParams& params);

struct ExchangeEndResult {
  bool ended = false;
};
BOOST_DESCRIBE_STRUCT(ExchangeEndResult, (), (ended))
constexpr auto notes(const ExchangeEndResult*) { return std::array{wire::Note{"ended", "false: none was under way"}}; }
// Scopes E S, also while locked. Fault exchange.not_served.
[[nodiscard]] Result<ExchangeEndResult> exchange_end(Context& context, const NoParams& params);

}  // namespace limbledger::service
