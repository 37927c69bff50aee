// What exchanges for one open ledger: takes the device's key while the ledger is unlocked, and goes on with that alone while it is
// locked. Bytes in, bytes out: whoever has a network or a file carries them. After anything was stored the desk reads on.
// Source: ledger, items 21 to 25, 38 and 44; contract, section 9.
#pragma once

#include "core/ledger/port.hpp"
#include "core/model/ids.hpp"
#include "core/wire/fault.hpp"

#include <array>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace limbledger::service {

class Desk;

using DeviceKey = std::array<std::uint8_t, 32>;  // public
using Exporter = std::array<std::uint8_t, 32>;   // what both ends of one connection share

// How an exchange stands, or how it ended.
struct ExchangeState {
  model::ReplicaId peer;          // zero until it has answered
  std::uint64_t taken = 0;        // entries that are new here
  std::uint64_t given = 0;        // entries that were new there
  std::uint64_t waiting = 0;      // put aside here until what comes before them is here
  std::uint64_t waiting_there = 0;
  std::uint64_t turned_away = 0;  // no room to wait here: to be sent again
  std::size_t calls = 0;
  std::size_t bytes_sent = 0, bytes_got = 0;
  bool is_same = false;           // at the end both hold the same
  bool was_restored = false;      // own entries came back that this device no longer had
};

// How much of what was written here another replica holds, as its receipt says.
struct HeldBy {
  model::ReplicaId holder;
  std::uint64_t held = 0;
  std::uint64_t not_held = 0;
  std::string level;  // held, opened, witnessed
  std::int64_t wall_ms = 0;  // by the holder's clock
};

struct WaitingRun {
  model::ReplicaId replica;
  std::uint64_t first = 0;
  std::uint64_t entries = 0;
  std::uint64_t held_to = 0;
};

class Answering {
 public:
  Answering() = default;
  Answering(const Answering&) = delete;
  Answering& operator=(const Answering&) = delete;
  virtual ~Answering() = default;
  [[nodiscard]] virtual Result<ledger::Bytes> answer(std::span<const std::uint8_t> message) = 0;
  // Whether the caller has proved who it is; until then nothing long need be read from it.
  [[nodiscard]] virtual bool knows_caller() const = 0;
  [[nodiscard]] virtual ExchangeState state() const = 0;
};

class Calling {
 public:
  Calling() = default;
  Calling(const Calling&) = delete;
  Calling& operator=(const Calling&) = delete;
  virtual ~Calling() = default;
  // What to send; nothing when it is over.
  [[nodiscard]] virtual Result<std::optional<ledger::Bytes>> next() = 0;
  // What came is taken by `take_in`, to be called while the next call is under way; what is not taken by then, `next` takes.
  [[nodiscard]] virtual Result<void> receive(ledger::Bytes answer) = 0;
  [[nodiscard]] virtual Result<void> take_in() = 0;
  // It was refused with this code instead. False: the exchange is over.
  [[nodiscard]] virtual bool shows_more(std::string_view code) = 0;
  [[nodiscard]] virtual ExchangeState state() const = 0;
};

struct WrittenParcel {
  std::uint64_t entries = 0;
  std::uint32_t runs = 0;
  std::uint64_t size = 0;
};

struct TakenParcel {
  std::uint64_t entries = 0;  // in it
  std::uint64_t taken = 0;    // of these, new here
  std::uint64_t known = 0;
  std::uint64_t waiting = 0;
  std::uint64_t turned_away = 0;
  bool is_whole = true;
  bool was_restored = false;
  std::uint64_t after_end = 0;  // bytes of the file that are no part of it
};

// A parcel on its way out: the pieces that its file is made of.
class ParcelOut {
 public:
  ParcelOut() = default;
  ParcelOut(const ParcelOut&) = delete;
  ParcelOut& operator=(const ParcelOut&) = delete;
  virtual ~ParcelOut() = default;
  // Empty at the end. Fault ledger.locked.
  [[nodiscard]] virtual Result<ledger::Bytes> next() = 0;
  [[nodiscard]] virtual WrittenParcel written() const = 0;
};

// A parcel on its way in; `from_start`: whoever reads the file goes back to its first byte.
enum class ParcelWants : std::uint8_t { more, from_start, nothing };
class ParcelIn {
 public:
  ParcelIn() = default;
  ParcelIn(const ParcelIn&) = delete;
  ParcelIn& operator=(const ParcelIn&) = delete;
  virtual ~ParcelIn() = default;
  // The next bytes of the file, none at its end. Fault ledger.locked; what was taken before stays.
  [[nodiscard]] virtual Result<ParcelWants> feed(std::span<const std::uint8_t> piece) = 0;
  [[nodiscard]] virtual std::uint64_t looked_at() const = 0;  // entries
  [[nodiscard]] virtual TakenParcel taken() const = 0;
  [[nodiscard]] virtual WrittenParcel seen() const = 0;       // what is in it, once it was looked through
};

class ExchangeDoor {
 public:
  // Fault ledger.locked. The desk must outlive it.
  [[nodiscard]] static Result<std::unique_ptr<ExchangeDoor>> open(Desk& desk);
  ~ExchangeDoor();
  ExchangeDoor(const ExchangeDoor&) = delete;
  ExchangeDoor& operator=(const ExchangeDoor&) = delete;

  [[nodiscard]] const DeviceKey& key() const;
  [[nodiscard]] model::ReplicaId replica() const;
  // For the carrier, which proves this key; `use` gets it for the length of the call.
  void with_seed(const std::function<void(std::span<const std::uint8_t, 32>)>& use) const;
  // The key of the device that enrolled this one.
  [[nodiscard]] Result<std::optional<DeviceKey>> hub_key() const;
  // Whether orders make this replica the hub.
  [[nodiscard]] Result<bool> is_hub() const;

  [[nodiscard]] std::unique_ptr<Answering> answering(const Exporter& exporter);
  [[nodiscard]] std::unique_ptr<Calling> calling(const Exporter& exporter);

  // What an exchange or a parcel took that is over, or was broken off, is on the disk. To be told at its end, before anybody hears of it.
  [[nodiscard]] Result<void> finish();

  // Parcels need the epochs, so the ledger unlocked: fault ledger.locked.
  [[nodiscard]] Result<std::unique_ptr<ParcelOut>> parcel_out(const std::optional<model::ReplicaId>& holder);
  // Of a cut parcel nothing is taken unless `cut_too`. `takes`: false, it is looked through alone: what was written, read back.
  [[nodiscard]] Result<std::unique_ptr<ParcelIn>> parcel_in(bool cut_too, bool takes = true);

  [[nodiscard]] Result<std::vector<HeldBy>> held_elsewhere();
  [[nodiscard]] Result<std::vector<WaitingRun>> waiting();

 private:
  friend class Admitting;
  struct Inside;
  explicit ExchangeDoor(std::unique_ptr<Inside> inside);
  std::unique_ptr<Inside> inside_;
};

}  // namespace limbledger::service
