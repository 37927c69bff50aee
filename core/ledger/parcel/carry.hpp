// A replica's parcels: what it holds into one, and one into what it holds. Writing hands pieces to whoever has a file; taking reads
// twice, once to see that it is whole, then to take it, a message's worth at a time, so that a parcel of any size fits. Cut anywhere,
// it is taken again from the start: what is there already changes nothing. Source: the format's section 13.
#pragma once

#include "core/ledger/exchange/session.hpp"
#include "core/ledger/parcel/parcel.hpp"

#include <functional>

namespace limbledger::ledger {

struct ParcelWritten {
  std::uint64_t entries = 0;
  std::uint32_t runs = 0;
  std::uint64_t size = 0;
};

// Takes the next bytes; its fault ends the writing.
using ParcelSink = std::function<Result<void>(View)>;

// All chains held; with `holder`, what that replica's newest receipt does not name.
[[nodiscard]] Result<ParcelWritten> write_parcel(Member& member, std::uint32_t epoch, const PublicKey& epoch_pub, const std::optional<model::ReplicaId>& holder,
                                                 const ParcelSink& sink);

class ParcelSource {
 public:
  ParcelSource() = default;
  ParcelSource(const ParcelSource&) = delete;
  ParcelSource& operator=(const ParcelSource&) = delete;
  virtual ~ParcelSource() = default;

  [[nodiscard]] virtual Result<void> rewind() = 0;
  // Empty at the end.
  [[nodiscard]] virtual Result<Bytes> next() = 0;
};

struct ParcelTaken {
  Taken taken;
  std::uint64_t entries = 0;  // of the whole runs in it
  std::uint32_t runs = 0;
  bool is_whole = false;      // false: it was cut short, and all up to its last whole run was wanted and taken
};

// Reads it and takes nothing: what was just written, read back.
[[nodiscard]] Result<ParcelTaken> check_parcel(const model::ClinicId& clinic, const std::map<std::uint32_t, BoxPair>& epochs, ParcelSource& source);

// Faults: those of ParcelReader and of `take`. Nothing is taken of a changed parcel, nor of a cut one unless `cut_too`.
// `told`: entries looked at so far, for whoever shows how it goes.
[[nodiscard]] Result<ParcelTaken> take_parcel(Member& member, const std::map<std::uint32_t, BoxPair>& epochs, ParcelSource& source, bool cut_too,
                                              const std::function<void(std::uint64_t)>& told = {});

}  // namespace limbledger::ledger
