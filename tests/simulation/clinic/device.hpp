// One device of the simulated clinic: its disk, its clock, its keys, its open ledger, and what it has promised. What it shows of a
// record is what the program's own fold says of it, unless a fault is planted in the page.
#pragma once

#include "core/ledger/exchange/session.hpp"
#include "core/ledger/fold/records.hpp"
#include "core/ledger/parcel/carry.hpp"
#include "tests/simulation/clinic/acts.hpp"
#include "tests/simulation/clinic/disk.hpp"

#include <memory>

namespace limbledger::ledger::clinic_sim {

[[nodiscard]] const SignKey& root_key();
[[nodiscard]] model::ClinicId the_clinic();
[[nodiscard]] const BoxPair& epoch_pair();

class SimWorld final : public World {
 public:
  explicit SimWorld(std::uint64_t seed) : dice_(seed) { restart(); }
  Reading now() override { return reading; }
  void random(std::span<std::uint8_t> bytes) override {
    for (std::uint8_t& byte : bytes) {
      byte = static_cast<std::uint8_t>(dice_.next() >> 32U);
    }
  }
  void pass(std::int64_t ms) {
    reading.wall_ms += ms;
    reading.up_ms += ms;
  }
  void restart() {
    reading.up_ms = 0;
    random(reading.boot);
  }
  Reading reading{1795515300000, 0, {}, ClockQuality::person};  // 2026-11-24T10:15:00Z

 private:
  Dice dice_;
};

// What can be lost with a disk, and comes back with an older copy of it.
struct Promised {
  Acts acts;                      // acknowledged here, or receipted to another
  std::map<ActId, Place> own;     // acknowledged here: where it stands
};

// What somebody sent and may send again.
struct Sent {
  ActId act = 0;
  std::vector<NewOperation> operations;
};

// One record as a person has it before them.
struct Page {
  std::vector<Opened> operations;
  std::optional<ExamFold> exam;
};

class Device {
 public:
  Device(std::size_t number, Planted planted, std::uint64_t seed, bool on_file);
  // A copy of the whole of it, as it is now.
  Device(Device& other, std::uint64_t seed);
  Device& operator=(const Device&) = delete;

  [[nodiscard]] Member member() { return {*disk, world, the_clinic(), *key}; }
  [[nodiscard]] model::ReplicaId replica() const { return replica_of(the_clinic(), key->pub()); }
  // Reads the ledger anew. Complains of damage.
  void open();
  void catch_up();
  void power_back();
  // The chain has two ends, or came back: the same device goes on under a new one.
  void go_on_as_heir();
  [[nodiscard]] bool has_ended() const { return !log->damage().empty(); }
  [[nodiscard]] bool is_dark() const { return disk->is_dark(); }

  [[nodiscard]] Page page(const model::ExamId& exam);
  [[nodiscard]] Hash have() { return have_digest(*leaves_of(*disk)); }
  // What all folds say, in one text: for another device with the same entries.
  [[nodiscard]] std::string said();

  const std::size_t number;
  const Planted planted;
  model::DeviceId device;
  model::ExaminerId examiner;
  SimWorld world;
  std::unique_ptr<Disk> disk;
  std::unique_ptr<SignKey> key;
  std::unique_ptr<SignKey> predecessor;  // whose heir it became: a disk that lied may have lost the heir's chain
  SignKey examiner_key;
  std::unique_ptr<Log> log;
  std::unique_ptr<Records> records;
  Promised promised;
  Promised before_lie;
  bool fell_back = false;  // to an older state, which whoever watches it knows
};

// A parcel of all that the device holds, or of what `holder` lacks.
[[nodiscard]] Result<Bytes> write_on_stick(Device& device, const std::optional<model::ReplicaId>& holder);
// Takes it, read in pieces of that size.
[[nodiscard]] Result<ParcelTaken> take_off_stick(Device& device, const Bytes& parcel, bool cut_too, std::size_t piece);

}  // namespace limbledger::ledger::clinic_sim
