// A second device joins a clinic by comparing a code, not by a password: it commits to its keys, the clinic's device answers, it
// shows its keys, and both screens show six digits made of all that was said. Whoever stands between the two must choose before
// seeing what the other side says next, and is caught with all but one chance in a million. A person who sees both screens says yes;
// then the clinic's device writes the ENROL order and hands over the newest epoch. Bytes in, bytes out; no transport here.
// Source: ledger, item 44; the format's section 10.
#pragma once

#include "core/ledger/keys/keyring.hpp"
#include "core/ledger/log/plain.hpp"
#include "core/ledger/trust/trust.hpp"

#include <optional>
#include <string>

namespace limbledger::ledger {

// What a clinic's device shows of itself.
struct ClinicCard {
  PublicKey root_pub{};
  PublicKey sign_pub{};  // of the device that enrols; the newcomer knows it by this key
  Purpose purpose = Purpose::record;
  std::array<std::uint8_t, 16> fresh{};
};

// What a newcomer shows of itself.
struct NewcomerCard {
  PublicKey sign_pub{};
  PublicKey box_pub{};
  model::DeviceId device;
  std::array<std::uint8_t, 16> fresh{};
};

// Handed over at the end: the epoch keys are sealed to, its secret in a box of the newcomer's.
struct Welcome {
  std::uint32_t epoch = 0;
  PublicKey epoch_pub{};
  std::uint16_t roles = 0;
  std::array<std::uint8_t, Epoch::box_size> sealed{};
};

// The device that joins. Its keys are its own vault, drawn before it says a word.
class Newcomer {
 public:
  Newcomer(const Vault& vault, World& world);

  [[nodiscard]] Bytes commit() const;                        // first message
  [[nodiscard]] Result<Bytes> show(View clinic_card);        // third, after the clinic's card. Faults: enrol.code, exchange.message
  [[nodiscard]] std::string digits() const { return digits_; }
  // After a person has said that both screens show the same: takes the welcome, gives the secret of the clinic's epoch.
  [[nodiscard]] Result<Secret32> accept(View welcome);

  [[nodiscard]] const ClinicCard& clinic_card() const { return clinic_; }
  [[nodiscard]] model::ClinicId clinic() const { return clinic_of(clinic_.root_pub); }
  [[nodiscard]] const model::DeviceId& device() const { return card_.device; }
  [[nodiscard]] const Welcome& welcome() const { return welcome_; }

 private:
  LockedSecret32 box_secret_;
  NewcomerCard card_;
  ClinicCard clinic_;
  Bytes said_;  // all messages so far, in order
  Welcome welcome_;
  std::string digits_;
};

// The device of the clinic that enrols. `root_pub` is what the clinic's id was made of.
class Enroller {
 public:
  Enroller(Member member, const PublicKey& root_pub, Purpose purpose);

  [[nodiscard]] Result<Bytes> answer(View commitment);  // second message: the clinic's card
  [[nodiscard]] Result<void> look(View newcomer_card);  // the third. Fault enrol.code: not what was promised
  [[nodiscard]] std::string digits() const { return digits_; }
  [[nodiscard]] const NewcomerCard& newcomer() const { return card_; }
  // After a person has said that both screens show the same. Writes the ENROL order (and, where this replica has none yet, its own
  // as the hub), signed by a key that may enrol; gives the fourth message. Faults: replica.unknown (the key may not), and the store's.
  [[nodiscard]] Result<Bytes> welcome(const SignKey& admin, std::uint16_t roles, std::uint32_t epoch, const Secret32& epoch_secret);

 private:
  Member member_;
  ClinicCard clinic_;
  NewcomerCard card_;
  std::array<std::uint8_t, 32> commitment_{};
  Bytes said_;
  std::string digits_;
};

// Begins the newcomer's own chain in an empty store, and remembers the hub's key for the first exchange. Fault ledger.in_use.
[[nodiscard]] Result<void> join(LogStore& store, World& world, const Newcomer& newcomer, const SignKey& device_key, const PublicKey& box_pub, std::string_view program);

}  // namespace limbledger::ledger
