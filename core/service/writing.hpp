// What every writing method shares: the same request again gives the same entries and revision, another content under a
// known request is refused, `seen` must be a revision of the record, and one call is one commit. A reply's revision is what
// the caller has now been shown: its own last entry, which names what it had seen before. Source: contract, section 9.
#pragma once

#include "core/ledger/fold/records.hpp"
#include "core/service/context.hpp"
#include "core/service/desk.hpp"

#include <algorithm>
#include <functional>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace limbledger::service {

struct Written {
  std::vector<model::EntryId> entries;   // in the order of the operations
  std::vector<model::EntryId> revision;
  bool repeat = false;
};

// The remark on `seen` where a record that exists is written to: it makes the member a required one (wire/schema.hpp).
inline constexpr std::string_view examined_on_note =
    "the day of the exam as a person says it, 2026-11-24, 2026-11 or 2026: it stands before the clock of the device";
inline constexpr std::string_view seen_note = "needed: the revision that was shown";
inline constexpr std::string_view confirmed_note =
    "codes that were asked back (the number 2) and that a person has answered for, such as value.unusual: here, beside the other params, as they are of no finding";
inline constexpr std::string_view sentences_note =
    "en, es or fr: alerts of the reply also carry `text` and `meanwhile_text`, and a fault `text`, a sentence for whoever is at the form; what nobody has translated is English and ends in (en)";

// The codes that a person has answered for, in a call.
using Confirmed = std::optional<std::vector<wire::Name>>;
[[nodiscard]] inline bool confirms(const Confirmed& confirmed, std::string_view code) {
  return confirmed && std::any_of(confirmed->begin(), confirmed->end(), [&](const wire::Name& one) { return one.text == code; });
}

// Fault params.missing or revision.unknown when `seen` is not a revision of these operations.
[[nodiscard]] Result<void> check_seen(const std::vector<model::EntryId>& seen, std::span<const ledger::Opened> operations);

// `before_writing` runs only when the request is new; what it refuses is not written.
[[nodiscard]] Result<Written> write(Context& context, std::vector<ledger::NewOperation> operations,
                                    const std::function<Result<void>()>& before_writing);

// An operation with what all of a call share.
[[nodiscard]] ledger::NewOperation operation_for(Context& context, const model::ObjectId& object, ledger::ObjectType type, std::string op,
                                                 const model::RequestId& request, const std::vector<model::EntryId>& seen);

}  // namespace limbledger::service
