// A device joins a clinic, for whoever carries the messages: `Admitting` at the clinic's device, `Joining` at the new one. Between
// them stand the six digits that a person compares on both screens. Source: ledger, item 44; the format's section 10.
#pragma once

#include "core/service/desk.hpp"
#include "core/service/exchange/door.hpp"

#include <span>

namespace limbledger::service {

class Admitting {
 public:
  // With the printed recovery code, while the ledger is unlocked. Faults: ledger.locked, ledger.passphrase at /code (not a code, or another
  // clinic's), exchange.purpose.
  [[nodiscard]] static Result<std::unique_ptr<Admitting>> begin(ExchangeDoor& door, std::string_view code);
  ~Admitting();
  Admitting(const Admitting&) = delete;
  Admitting& operator=(const Admitting&) = delete;

  // The newcomer's first message, then its third; the first is answered by the clinic's card, the third by nothing.
  // Faults: exchange.message, enrol.code.
  [[nodiscard]] Result<ledger::Bytes> answer(std::span<const std::uint8_t> message);
  // Six digits once both have shown their cards; empty before.
  [[nodiscard]] std::string digits() const;
  // A person has seen the same digits on both screens: writes the orders and gives the last message.
  [[nodiscard]] Result<ledger::Bytes> welcome();
  [[nodiscard]] model::ReplicaId newcomer() const;

 private:
  struct Inside;
  explicit Admitting(std::unique_ptr<Inside> inside);
  std::unique_ptr<Inside> inside_;
};

class Joining {
 public:
  [[nodiscard]] static Result<std::unique_ptr<Joining>> begin(ledger::World& world);
  ~Joining();
  Joining(const Joining&) = delete;
  Joining& operator=(const Joining&) = delete;

  [[nodiscard]] ledger::Bytes commit() const;
  [[nodiscard]] Result<ledger::Bytes> show(std::span<const std::uint8_t> clinic_card);
  [[nodiscard]] std::string digits() const;
  // The key that the clinic's card shows, which the digits are made of too.
  [[nodiscard]] const DeviceKey& clinic_device_key() const;
  // Takes the last message into an empty store: the chain of this device begins. `wanted` says examiner and passphrase.
  // The clinic says what kind of ledger it is. There is no recovery code: the clinic has one.
  [[nodiscard]] Result<MadeLedger> finish(ledger::LogStore& store, std::span<const std::uint8_t> welcome, const NewLedger& wanted);
  [[nodiscard]] bool is_demonstration() const;

 private:
  struct Inside;
  explicit Joining(std::unique_ptr<Inside> inside);
  std::unique_ptr<Inside> inside_;
};

}  // namespace limbledger::service
