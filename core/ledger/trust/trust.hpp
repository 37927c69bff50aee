// Whom a clinic trusts, as a function of the set of orders: which keys may order what, which replicas belong to it, which pair
// is the newest. Order of arrival cannot matter: an enrolment counts as soon as the grant of its signer is in the set, before or
// after it. Grants are signed by the root key alone. Source: ledger, items 16 and 20; the format's section 10.
#pragma once

#include "core/ledger/chain.hpp"
#include "core/ledger/trust/order.hpp"

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <span>
#include <vector>

namespace limbledger::ledger {

class Trust {
 public:
  // Rows of kind ORDER, in any order, repeats allowed; what does not verify, or is not signed by a key that may, does not count.
  Trust(const model::ClinicId& clinic, std::span<const Row> orders, CheckedOrders& checked);
  Trust(const model::ClinicId& clinic, std::span<const Row> orders) {
    CheckedOrders none;
    *this = Trust(clinic, orders, none);
  }

  // What a key may order. The root key may order everything.
  [[nodiscard]] std::uint16_t roles_of(const PublicKey& key) const;
  // What the clinic lets a replica do, by its own enrolment. Nothing: it is not enrolled.
  [[nodiscard]] const Enrol* enrolment(const model::ReplicaId& replica) const;
  [[nodiscard]] bool is_revoked(const model::DeviceId& device) const { return revoked_.contains(device); }
  // By number; of two under one number, the one whose public key is the lower: every replica takes the same.
  [[nodiscard]] const std::map<std::uint32_t, Epoch>& epochs() const { return epochs_; }
  // Orders that this edition does not know, or that nobody who may has signed.
  [[nodiscard]] std::size_t unread() const { return unread_; }
  [[nodiscard]] std::size_t void_count() const { return void_count_; }

 private:
  void settle(const OrderBody& order);

  model::ClinicId clinic_;
  std::map<PublicKey, std::uint16_t> granted_;
  std::map<model::ReplicaId, Enrol> enrolled_;
  std::set<model::DeviceId> revoked_;
  std::map<std::uint32_t, Epoch> epochs_;
  std::size_t unread_ = 0;
  std::size_t void_count_ = 0;
};

constexpr std::size_t heirs_max = 64;  // a chain of heirs longer than this is made up

// The introduction of a replica as far as it is known: from the store, or from what has just arrived.
using FindIntro = std::function<std::optional<Intro>(const model::ReplicaId&)>;

// By what enrolment a replica belongs to the clinic: its own, or as an heir the one of the replica at the head of its line, where each
// introduction was signed by the key before it. Nothing: it does not belong to the clinic.
[[nodiscard]] const Enrol* enrolment_of(const Trust& trust, const model::ClinicId& clinic, const model::ReplicaId& replica, const FindIntro& find_intro);

// What it lets the replica do; zero where there is none.
[[nodiscard]] std::uint16_t roles_of_replica(const Trust& trust, const model::ClinicId& clinic, const model::ReplicaId& replica, const FindIntro& find_intro);

}  // namespace limbledger::ledger
