// ledger.verify: goes through every entry, signed head and, while unlocked, every seal, and says where something does not
// hold; and, of the lists by which the store finds entries, which one does not agree with them. A tail that was cut off whole is seen only by who holds a later head, so the heads that were reached are named.
#pragma once

#include "core/service/context.hpp"
#include "core/wire/fault.hpp"
#include "core/wire/type.hpp"

#include <array>
#include <optional>
#include <vector>

namespace limbledger::service {

struct VerifyParams {
  std::optional<wire::Count<1, 9007199254740991>> from;  // damage from this sequence number on is listed; all is checked
  std::optional<bool> mend;                              // a list that leaves entries out is made anew from them; no entry is changed
};
BOOST_DESCRIBE_STRUCT(VerifyParams, (), (from, mend))
struct DamagedEntry {
  model::ReplicaId replica;
  wire::Count<0, 9007199254740991> seq;
  std::optional<model::EntryId> entry;  // the name that the store gives it
  model::Word code;
};
BOOST_DESCRIBE_STRUCT(DamagedEntry, (), (replica, seq, entry, code))
struct DamagedList {
  model::Word list;
  model::Word code;                                          // entry.list: only what it leaves out is missed; entry.store: the file
  std::optional<wire::Count<0, 9007199254740991>> left_out;  // entries
  std::optional<bool> mended;
};
BOOST_DESCRIBE_STRUCT(DamagedList, (), (list, code, left_out, mended))
constexpr auto notes(const DamagedList*) {
  return std::array{wire::Note{"list", "entries_by_key; or a table whose pages do not agree: entries, chains, heads, parked, pages (another place of the file)"}};
}
struct VouchedHead {
  model::ReplicaId replica;
  wire::Count<0, 9007199254740991> seq;
  model::EntryId entry;
};
BOOST_DESCRIBE_STRUCT(VouchedHead, (), (replica, seq, entry))
struct VerifyResult {
  wire::Count<0, 9007199254740991> entries;
  wire::Count<0, 9007199254740991> opened;  // seals undone
  wire::Count<0, 9007199254740991> replicas;
  std::vector<DamagedEntry> damage;                          // 1000 at most
  std::optional<wire::Count<0, 9007199254740991>> unlisted;  // damage before `from` or beyond the thousand
  std::vector<VouchedHead> vouched_to;
  std::optional<std::vector<DamagedList>> lists;           // that do not agree with the entries
  std::optional<wire::Count<0, 9007199254740991>> unread;  // of kinds that only a newer edition knows: checked, kept and passed on
};
BOOST_DESCRIBE_STRUCT(VerifyResult, (), (entries, opened, replicas, damage, unlisted, vouched_to, lists, unread))
// Scope E V; `mend` E alone. Faults: token.scope.
[[nodiscard]] Result<VerifyResult> ledger_verify(Context& context, const VerifyParams& params);

}  // namespace limbledger::service
