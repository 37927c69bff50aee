// One open ledger at work: the store, the keyring, the log and what folds from it. It is locked until an examiner's
// passphrase (or the printed code) opens the keyring; while locked it holds no secret, but for what lives of kiosks: this
// device's signing key and the keys of their own exams. Not for use from two threads at once.
#pragma once

#include "core/ledger/port.hpp"
#include "core/ledger/world.hpp"
#include "core/model/ids.hpp"
#include "core/model/time.hpp"
#include "core/reference/edition_ref.hpp"
#include "core/wire/fault.hpp"

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::reference {
class Edition;
}

namespace limbledger::ledger {
class Log;
class Records;
class SignKey;
}  // namespace limbledger::ledger

namespace limbledger::service {

struct KeptRegister;  // kept_register.hpp
struct OnceRaised;  // once_raised.hpp

enum class LedgerKind : std::uint8_t { clinic, demonstration, practice };

struct NewLedger {
  std::string examiner_label;  // 24 bytes of UTF-8 at most
  std::string passphrase;
  LedgerKind kind = LedgerKind::clinic;
  std::uint32_t argon_passes = 3;
  std::uint32_t argon_kib = 64 * 1024;
  std::optional<ledger::Durability> durability;  // where the ledger will live, when it is first made in memory
};

struct MadeLedger {
  ledger::Bytes keyring;
  std::string recovery_code;  // to be printed once; opens the keyring and is the clinic's root
  model::ExaminerId examiner;
  model::ClinicId clinic;
};

// Writes the first entries (INTRO, the first examiner) into an empty store and gives back the keyring's file.
[[nodiscard]] Result<MadeLedger> make_ledger(ledger::LogStore& store, ledger::World& world, const NewLedger& wanted);

struct AddedExaminer {
  model::ExaminerId examiner;
  bool repeat = false;  // was there already, under this name and passphrase
};

// A keyring can be guessed at by whoever holds a copy of its file.
inline constexpr std::size_t passphrase_characters_min = 12;
inline constexpr std::size_t examiner_label_bytes_max = 24;

struct FoundDamage {
  std::size_t count = 0;
  std::string code;  // of the first
};

// Does the work of one unlocking at this cost, to be timed by who has a clock. False where memory does not suffice.
[[nodiscard]] bool spend_passphrase(std::uint32_t argon_passes, std::uint32_t argon_kib);

class Desk {
 public:
  // `keyring` is the content of the keyring's file. Faults: entry.format.
  [[nodiscard]] static Result<std::unique_ptr<Desk>> open(ledger::LogStore& store, ledger::World& world, reference::EditionRef edition,
                                                          ledger::Bytes keyring);
  ~Desk();
  Desk(const Desk&) = delete;
  Desk& operator=(const Desk&) = delete;

  [[nodiscard]] bool locked() const;
  // `who` is an examiner's label or id; empty where there is only one. The printed code opens whoever is named, and gives
  // the zero id: it stands for no examiner. Faults: ledger.passphrase, ledger.wait, examiner.unknown.
  [[nodiscard]] Result<model::ExaminerId> unlock(std::string_view who, std::string_view passphrase);
  // Makes a slot for one more examiner of this device, with a new id and key; the printed code alone allows it. The ledger
  // stays locked or open as it was. Faults: ledger.passphrase and ledger.wait at /code, examiner.taken, ledger.read_only.
  [[nodiscard]] Result<AddedExaminer> add_examiner(std::string_view code, std::string_view label, std::string_view passphrase);
  // What writes the keyring's file, whole or not at all; without it none can be added.
  void keeps_keyring(std::function<Result<void>(const ledger::Bytes&)> keep);
  // On purpose: a demonstration does not open again by itself.
  void lock();
  // Locks until the program is started again: nobody knows what of the last writes is on the disk.
  void shut();
  [[nodiscard]] bool is_shut() const;
  // To be told before anything is told of what an exchange or a parcel took: all of it is then on the disk, or the desk is shut.
  [[nodiscard]] Result<void> flush();
  // Locks when no record was read or written for `idle_ms`. To be told before every call, and now and then while none comes.
  void lock_if_idle();
  // To be told of every call of a person that reads or writes records; nothing else counts as use.
  void touch();
  // To be told after each opening and each locking, for whoever goes on beside the calls.
  void lock_tells(std::function<void()> tell);
  // Who tells which kiosks live, each with its exam, or with none while it has not opened it. Where there are any when the ledger
  // is locked, they go on with these exams alone; whose kiosk has ended is forgotten before the next call.
  void kiosks_by(std::function<std::vector<std::optional<model::ExamId>>()> tell);
  // Whether it is locked and a kiosk may go on.
  [[nodiscard]] bool keeps_kiosks() const;
  // For the length of one call of a kiosk on a locked ledger: log and records are those of the kiosks.
  class KioskTurn {
   public:
    explicit KioskTurn(Desk& desk);
    ~KioskTurn();
    KioskTurn(const KioskTurn&) = delete;
    KioskTurn& operator=(const KioskTurn&) = delete;

   private:
    Desk& desk_;
  };
  // What opens a ledger that fell asleep, where nobody need be asked (a demonstration).
  void wakes_by(std::function<void()> wake);
  // Called before a record is wanted: opens the ledger so when it was idleness that locked it.
  void wake_if_asleep();
  static constexpr std::int64_t idle_ms = 15 * 60 * 1000;
  [[nodiscard]] model::Instant locks_at();

  [[nodiscard]] LedgerKind kind() const;
  [[nodiscard]] const model::ClinicId& clinic() const;
  // Labels of those who can unlock, for choosing who does.
  [[nodiscard]] std::vector<std::string> labels() const;
  // The label an examiner unlocks with on this device, or empty.
  [[nodiscard]] std::string label_of(const model::ExaminerId& examiner) const;
  [[nodiscard]] ledger::LogStore& store();
  // Whether the store takes writes now: really tried, see WatchedStore.
  [[nodiscard]] bool takes_writes();
  // Damage found when the ledger was unlocked, or by the last verifying since; kept while it is locked.
  [[nodiscard]] const std::optional<FoundDamage>& damage() const;
  void note_verified(std::size_t count, std::string_view first_code);
  [[nodiscard]] ledger::World& world();
  [[nodiscard]] const reference::EditionRef& edition_ref() const;
  [[nodiscard]] const reference::Edition& edition() const { return *edition_ref(); }
  // Answers that rest on the edition alone, by what was asked; kept because they are long and asked for again and again.
  [[nodiscard]] std::map<std::string, std::string, std::less<>>& answers();

  // To be told whenever an exchange or a parcel stored entries: what is open is read on from there.
  [[nodiscard]] Result<void> catch_up();

  // Below only while unlocked.
  [[nodiscard]] ledger::Log& log();
  [[nodiscard]] ledger::Records& records();
  // What alerts each exam has raised so far; forgotten on locking.
  [[nodiscard]] std::map<model::ExamId, OnceRaised>& once_raised();
  // Who may be registered twice, as it was last worked out; forgotten on locking.
  [[nodiscard]] KeptRegister& kept_register();
  [[nodiscard]] const model::ExaminerId& examiner() const;
  // Null where the ledger was opened by the printed code: it is read, and nothing is recorded or signed.
  [[nodiscard]] const ledger::SignKey* examiner_key() const;

 private:
  struct Inside;
  explicit Desk(std::unique_ptr<Inside> inside);
  std::unique_ptr<Inside> inside_;
};

}  // namespace limbledger::service
