// The keyring: what one device keeps secret, as one file. Slots hold the master key under a passphrase (Argon2id, p = 1)
// or under the printed recovery code; the vault holds the device's keys under the master key and binds every byte before
// it. Bytes in, bytes out: no file and no clock here. Refuses slots that ask for over 1 GiB or 32 passes, so that a
// tampered file cannot exhaust memory. Passphrases are bytes as typed; a front end sends them in Unicode form NFC.
#pragma once

#include "core/ledger/entry.hpp"
#include "core/ledger/keys/secret.hpp"
#include "core/ledger/world.hpp"
#include "core/model/ids.hpp"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::ledger {

enum class SlotType : std::uint8_t { passphrase = 1, code = 2, passphrase_and_device = 3, device = 4, admin = 5 };

struct SlotCost {
  std::uint32_t t = 3;          // passes
  std::uint32_t m_kib = 65536;  // memory
  friend bool operator==(const SlotCost&, const SlotCost&) = default;
};
// Calibrated when the slot is made, by whoever has a clock, to half a second to a second between these two.
constexpr SlotCost slot_cost_low{2, 19 * 1024};
constexpr SlotCost slot_cost_high{4, 256 * 1024};
constexpr std::uint32_t slot_t_max = 32;
constexpr std::uint32_t slot_m_kib_max = 1024 * 1024;
constexpr std::size_t slot_size = 176;
constexpr std::size_t slot_count_max = 64;

// What a caller times to calibrate: one derivation at this cost. False where there is not enough memory for it.
[[nodiscard]] bool spend(const SlotCost& cost);

// 160 random bits on paper. Their number is what protects them, so no slow derivation stands before them. Shown as nine
// groups of four letters and digits (RFC 4648 alphabet): eight are the bits, the ninth is the first 20 bits of their
// hash, so that a slip of the pen is told apart from another clinic's code before anything is tried.
class RecoveryCode {
 public:
  explicit RecoveryCode(const Secret<20>& bits) : bits_(bits) {}
  [[nodiscard]] static RecoveryCode draw(World& world);
  // Reads any case, with or without spaces and hyphens; 0, 1 and 8, which never occur, as O, L and B.
  [[nodiscard]] static Result<RecoveryCode> from_text(std::string_view text);
  [[nodiscard]] std::string to_text() const;
  // The seed of the clinic's root key: the paper alone makes it again.
  [[nodiscard]] Secret32 root_seed() const;
  [[nodiscard]] Secret32 slot_key(View salt) const;

 private:
  Secret<20> bits_;
};

// The device's own secrets.
struct Vault {
  Secret32 sign_seed;
  Secret32 box_secret;
  std::map<std::uint32_t, LockedSecret32> epoch_secrets;  // by epoch number
  Secret32 shelf_key;

  [[nodiscard]] std::uint32_t newest_epoch() const { return epoch_secrets.empty() ? 0 : epoch_secrets.rbegin()->first; }
  [[nodiscard]] static Vault draw(World& world);  // with epoch 1
};

// What an opened slot gives.
struct Unlocked {
  Vault vault;
  LockedSecret32 master;
  SlotType type = SlotType::passphrase;
  model::ExaminerId examiner;  // zero for the code and the admin
  Secret32 seed;               // of the examiner's or the admin's key; zero for the code
};

struct SlotInfo {
  SlotType type = SlotType::passphrase;
  SlotCost cost;
  model::ExaminerId examiner;
  std::string label;  // at most 24 bytes, for choosing who unlocks
};

// The parsed file. Slots that stay shut are kept byte for byte.
class Keyring {
 public:
  Keyring() = default;
  [[nodiscard]] static Result<Keyring> from_bytes(View file);
  // The file as it is to be written: one generation on, the vault sealed anew over all slots.
  [[nodiscard]] Bytes to_bytes(const Unlocked& unlocked);

  [[nodiscard]] std::vector<SlotInfo> slots() const;
  [[nodiscard]] std::uint32_t generation() const { return generation_; }

  // Tries the passphrase slots of this examiner, or all of them; each costs a derivation. Fault ledger.passphrase when
  // none opens, keyring.damaged when one opens and the vault does not.
  [[nodiscard]] Result<Unlocked> open_passphrase(std::string_view passphrase,
                                                 const std::optional<model::ExaminerId>& examiner = std::nullopt) const;
  [[nodiscard]] Result<Unlocked> open_admin(std::string_view passphrase) const;
  [[nodiscard]] Result<Unlocked> open_code(const RecoveryCode& code) const;

  // Added slots hold the same master key. `seed` is the examiner's or the admin's.
  [[nodiscard]] Result<void> add_passphrase(const Secret32& master, SlotType type, std::string_view passphrase,
                                            const SlotCost& cost, const model::ExaminerId& examiner,
                                            std::string_view label, const Secret32& seed, World& world);
  [[nodiscard]] Result<void> add_code(const Secret32& master, const RecoveryCode& code, World& world);
  // Takes the slot away; its passphrase still opens every older copy of the file.
  [[nodiscard]] Result<void> remove(std::size_t slot);

 private:
  using Slot = std::array<std::uint8_t, slot_size>;

  [[nodiscard]] Bytes front(std::size_t vault_size, View nonce) const;
  [[nodiscard]] Result<Unlocked> open_with(const Secret32& slot_key, const Slot& slot) const;
  [[nodiscard]] Result<Unlocked> open_slots(std::string_view passphrase, SlotType type,
                                            const std::optional<model::ExaminerId>& examiner) const;
  [[nodiscard]] Result<void> add(Slot slot, const Secret32& slot_key, const Secret32& master, const Secret32& seed);

  std::uint32_t generation_ = 0;
  std::vector<Slot> slots_;
  std::array<std::uint8_t, 24> vault_nonce_{};
  Bytes vault_;  // sealed
};

}  // namespace limbledger::ledger
