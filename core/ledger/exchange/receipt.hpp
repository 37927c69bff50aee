// A receipt: a replica's signed word for which entries it holds, given after they are on its disk. It carries the holder's own
// head, so that a holder restored from an old copy contradicts itself visibly. Kept beside the log, the newest of each holder;
// from it a device says which of its own entries are held elsewhere. Source: ledger, item 25; the format's section 12.
#pragma once

#include "core/ledger/exchange/have.hpp"
#include "core/ledger/log/plain.hpp"

#include <string>
#include <vector>

namespace limbledger::ledger {

enum class ReceiptLevel : std::uint8_t { held = 1, opened = 2, witnessed = 3 };

struct Receipt {
  struct Line {
    Place place;
    ReceiptLevel level = ReceiptLevel::held;
  };

  model::ReplicaId holder;
  model::DeviceId to;
  std::uint64_t holder_seq = 0;  // the holder's own head
  Hash holder_hash{};
  std::int64_t wall_ms = 0;
  std::vector<Line> lines;  // a leaf of each chain held
  Signature signature{};

  [[nodiscard]] Bytes to_bytes() const;
  [[nodiscard]] static Result<Receipt> from_bytes(View bytes);
};

// Under which name beside the log the newest of a holder is kept.
[[nodiscard]] std::string receipt_name(const model::ReplicaId& holder);

void sign_receipt(const SignKey& holder_key, const model::ClinicId& clinic, Receipt& receipt);
// Fault exchange.receipt.
[[nodiscard]] Result<void> verify_receipt(const model::ClinicId& clinic, const PublicKey& holder_pub, const Receipt& receipt);

// A receipt for everything in the member's store as it is now. To be called when it is on disk.
[[nodiscard]] Result<Receipt> make_receipt(Member& member, const model::DeviceId& to, ReceiptLevel level);

// Which of the own entries another holds, as its newest receipt says.
struct HeldElsewhere {
  model::ReplicaId holder;
  std::uint64_t held = 0;      // entries of the own chain, from the first on
  std::uint64_t not_held = 0;  // written after those
  ReceiptLevel level = ReceiptLevel::held;
  std::int64_t wall_ms = 0;  // by the holder's clock
};
// Checked again: signature, holder, and that the entry named is on the own chain. What a hub's newest witness says counts as well: it
// comes by stick too.
[[nodiscard]] Result<std::vector<HeldElsewhere>> held_elsewhere(Member& member);
// Checks and keeps it; one that says less than the one kept before is kept all the same, and shows.
[[nodiscard]] Result<void> keep_receipt(Member& member, const Receipt& receipt);

}  // namespace limbledger::ledger
