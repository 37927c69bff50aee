// A replica's parcels: what it holds into one, and one into what it holds, piece by piece, so that others are answered meanwhile and a
// parcel of any size fits. Writing gives pieces to whoever has a file; taking goes through it twice, once to see that it is whole, then
// to take it, a message's worth at a time. Cut anywhere, it is taken again from the start: what is there already changes nothing.
// Source: the format's section 13.
#pragma once

#include "core/ledger/exchange/session.hpp"
#include "core/ledger/parcel/parcel.hpp"

#include <cstdint>
#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace limbledger::ledger {

struct ParcelWritten {
  std::uint64_t entries = 0;
  std::uint32_t runs = 0;
  std::uint64_t size = 0;
};

// All chains held; with `holder`, what that replica's newest receipt does not name. What is written between two pieces may be in it.
class ParcelWriting {
 public:
  [[nodiscard]] static Result<ParcelWriting> begin(Member& member, std::uint32_t epoch, const PublicKey& epoch_pub, const std::optional<model::ReplicaId>& holder);
  // What to write next; empty at the end.
  [[nodiscard]] Result<Bytes> next();
  [[nodiscard]] const ParcelWritten& written() const { return out_; }

 private:
  ParcelWriting(Member& member, std::vector<model::ReplicaId> chains, std::vector<HaveRow> held, ParcelSealer sealer)
      : member_(member), chains_(std::move(chains)), held_(std::move(held)), points_(held_), sealer_(std::move(sealer)) {}

  Member member_;
  std::vector<model::ReplicaId> chains_;
  std::vector<HaveRow> held_;
  std::vector<HaveRow> points_;  // of the chain at hand: what the holder has, and what is in already
  ParcelSealer sealer_;
  std::size_t at_ = 0;
  bool is_over_ = false;
  ParcelWritten out_;
};

struct ParcelTaken {
  Taken taken;
  std::uint64_t entries = 0;  // of the whole runs in it
  std::uint32_t runs = 0;
  std::uint64_t after_end = 0;  // bytes of the file that are no part of it
  bool is_whole = false;      // false: it was cut short, and all up to its last whole run was wanted and taken
};

// Nothing is taken of a changed parcel, nor of a cut one unless `cut_too`.
class ParcelTaking {
 public:
  // `takes`: false, it is looked through alone. The epochs must outlive it.
  ParcelTaking(Member& member, const std::map<std::uint32_t, BoxPair>& epochs, bool cut_too, bool takes = true)
      : member_(member), epochs_(&epochs), cut_too_(cut_too), takes_(takes) {
    reader_.emplace(member_.clinic, epochs);
  }

  enum class Wants : std::uint8_t { more, from_start, nothing };
  // The next bytes of the file, none at its end; says what it wants then. Faults: those of ParcelReader and of `take`.
  [[nodiscard]] Result<Wants> feed(View piece);
  // Entries taken or looked at, of those that it goes through now.
  [[nodiscard]] std::uint64_t looked_at() const { return looked_at_; }
  [[nodiscard]] const ParcelTaken& taken() const { return out_; }

 private:
  [[nodiscard]] Result<void> take_some(bool last);
  [[nodiscard]] Result<Wants> end();

  Member member_;
  const std::map<std::uint32_t, BoxPair>* epochs_;
  bool cut_too_;
  bool takes_;
  std::optional<ParcelReader> reader_;
  bool is_taking_ = false;  // the second time through
  std::vector<Run> waiting_;
  std::uint64_t looked_at_ = 0;
  ParcelTaken out_;
};

}  // namespace limbledger::ledger
