// A parcel: runs of a clinic's chains in one sealed file, for a stick. Sealed whole to the public half of an epoch, so that a lost
// stick says nothing, not even how many exams there are. Bytes in, bytes out; who has files writes and reads them piece by piece.
// What is read is believed up to its last whole chunk; a file without its end was cut short, and is refused unless the whole
// commits before the cut are asked for. Source: ledger, decisions 24 and 41 and PARCEL; the format's section 13.
#pragma once

#include "core/ledger/exchange/run.hpp"
#include "core/ledger/keys/wrap.hpp"
#include "core/ledger/world.hpp"

#include <sodium/crypto_generichash.h>
#include <sodium/crypto_secretstream_xchacha20poly1305.h>

#include <map>
#include <optional>
#include <vector>

namespace limbledger::ledger {

constexpr std::size_t parcel_front_size = 144;
constexpr std::size_t parcel_chunk_max = 65536;  // sealed

// What a parcel draws; a test gives what another program was given.
struct ParcelDraw {
  std::array<std::uint8_t, 16> salt{};
  Secret32 key;
  Secret32 box_seed;
  std::array<std::uint8_t, crypto_secretstream_xchacha20poly1305_HEADERBYTES> stream{};

  [[nodiscard]] static ParcelDraw from(World& world);
};

class ParcelSealer {
 public:
  ParcelSealer(const model::ClinicId& clinic, std::uint32_t epoch, const PublicKey& epoch_pub, const ParcelDraw& draw);

  void add(const Run& run);
  // The trailer. Nothing may be added any more.
  void finish();
  // What is sealed and was not taken yet, the front first. Whoever writes takes it after each `add`.
  [[nodiscard]] Bytes take();

  [[nodiscard]] std::uint64_t entries() const { return entries_; }
  [[nodiscard]] std::uint32_t runs() const { return runs_; }

 private:
  void push(View plain, std::uint8_t stream_tag);

  crypto_secretstream_xchacha20poly1305_state stream_{};
  Bytes aad_;      // of the next chunk: the front before the first, nothing after
  Bytes plain_;    // waits for a whole chunk
  Bytes sealed_;
  crypto_generichash_state hash_{};
  std::uint64_t entries_ = 0;
  std::uint32_t runs_ = 0;
};

class ParcelReader {
 public:
  // `epochs`: the pairs that this device can open. Nothing is asked of the store.
  ParcelReader(const model::ClinicId& clinic, const std::map<std::uint32_t, BoxPair>& epochs) : clinic_(clinic), epochs_(epochs) {}

  // The next bytes of the file, as many as there are at hand. Faults: parcel.format (no parcel, or of a later edition),
  // parcel.foreign, parcel.key (sealed to an epoch that is not here), parcel.changed with chunk and entry, entry.* of a run that
  // does not hold, with the place. After a fault nothing more is read.
  [[nodiscard]] Result<void> feed(View bytes);
  // The runs that became whole since it was last asked. Their hashes are linked; who signed is asked where they are taken.
  [[nodiscard]] std::vector<Run> take_runs();
  // That the end was reached and is what its writer counted. Fault parcel.cut_short, with chunk and entry.
  [[nodiscard]] Result<void> finish() const;

  [[nodiscard]] bool is_whole() const { return is_whole_; }
  // Bytes that came after the end: they are no part of the parcel, and nothing is read from them.
  [[nodiscard]] std::uint64_t after_end() const { return after_end_; }
  [[nodiscard]] std::uint64_t entries() const { return entries_; }  // of whole runs
  [[nodiscard]] std::uint32_t runs() const { return run_count_; }

 private:
  [[nodiscard]] Result<void> read_front();
  [[nodiscard]] Result<void> open_chunk(View sealed);
  [[nodiscard]] Result<void> read_runs();
  [[nodiscard]] Result<void> read_trailer(View plain);
  [[nodiscard]] wire::Fault fault(std::string_view code, std::string_view expected) const;

  model::ClinicId clinic_;
  const std::map<std::uint32_t, BoxPair>& epochs_;
  crypto_secretstream_xchacha20poly1305_state stream_{};
  crypto_generichash_state hash_{};
  Bytes sealed_;             // not opened yet
  Bytes aad_;
  Bytes plain_;              // of a run that is not whole yet
  std::size_t walked_ = 0;   // of `plain_`: up to here whole entries of that run
  std::uint32_t left_ = 0;   // entries of that run that are still to come
  std::uint32_t had_ = 0;    // entries of that run that came
  bool in_run_ = false;
  bool has_front_ = false;
  bool is_whole_ = false;
  std::uint64_t after_end_ = 0;
  std::uint64_t chunk_ = 0;  // chunks opened
  std::uint64_t entries_ = 0;
  std::uint32_t run_count_ = 0;
  std::vector<Run> runs_;
};

}  // namespace limbledger::ledger
