// The chain of one replica: what it starts from, how rows are linked, and the one way to entries that may be believed.
// A `Row` is an entry as received; a `VerifiedEntry` can only be made here, so its type says that it was checked.
// A fault names replica, sequence and entry: entry.gap, entry.format, entry.size, entry.hash or entry.head.
#pragma once

#include "core/ledger/body.hpp"
#include "core/ledger/entry.hpp"

#include <cstdint>
#include <utility>
#include <vector>

namespace limbledger::ledger {

// Whose chain it is, and the public key its heads are signed with.
struct Origin {
  model::ClinicId clinic;
  model::ReplicaId replica;
  PublicKey sign_pub{};
};

// A point between two entries: the next one is `seq + 1` over `hash`.
struct Joint {
  std::uint64_t seq = 0;
  Hash hash{};
  friend bool operator==(const Joint&, const Joint&) = default;
};

[[nodiscard]] Joint start_of(const Origin& origin);

class VerifiedEntry {
 public:
  [[nodiscard]] const model::ReplicaId& replica() const { return row_.replica; }
  [[nodiscard]] std::uint64_t seq() const { return row_.seq; }
  [[nodiscard]] const Hash& hash() const { return row_.hash; }
  [[nodiscard]] model::EntryId id() const { return entry_id(row_.hash); }
  [[nodiscard]] const Header& header() const { return header_; }
  [[nodiscard]] bool is_whole() const { return row_.state == RowState::whole; }
  // Empty when only the body's hash is left.
  [[nodiscard]] View body() const { return is_whole() ? View(row_.body) : View(); }
  [[nodiscard]] const Row& row() const { return row_; }

 private:
  VerifiedEntry(Row row, const Header& header) : row_(std::move(row)), header_(header) {}
  friend Result<VerifiedEntry> verify_next(Joint& joint, Row row);

  Row row_;
  Header header_;
};

// Checks one row of the store against the entry before it and against the hash it was stored under, and moves the joint.
// Rows read page by page are to be believed once the joint has met a head that `verify_head` accepts.
[[nodiscard]] Result<VerifiedEntry> verify_next(Joint& joint, Row row);

// Checks a run from a known point to its signed head, bodies included. All or nothing.
[[nodiscard]] Result<std::vector<VerifiedEntry>> verify_run(const Origin& origin, const Joint& from, std::vector<Row> rows,
                                                            const Head& head);

// The origin that the first entry of a chain states: kind INTRO, of this clinic, its replica made of its own key.
[[nodiscard]] Result<Origin> origin_of(const model::ClinicId& clinic, const Row& first);
// The introduction itself.
[[nodiscard]] Result<Intro> intro_of(const Row& first);

// Links rows as they are written or as a run carries them: sets replica, seq and hash, and moves the joint.
void link(const model::ReplicaId& replica, Joint& joint, Row& row);

}  // namespace limbledger::ledger
