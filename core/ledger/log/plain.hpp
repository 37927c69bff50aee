// Entries with plain bodies (introductions, orders, witnesses), appended to the own chain as one commit. Nothing is opened and
// no key but the device's is needed, so it works while the ledger is locked. A log that is open on the same store must catch
// up afterwards. Faults: replica.forked (the own chain has two ends: go on under a new replica), and the store's own.
#pragma once

#include "core/ledger/chain.hpp"
#include "core/ledger/keys/seal.hpp"
#include "core/ledger/keys/sign.hpp"
#include "core/ledger/trust/order.hpp"
#include "core/ledger/world.hpp"

#include <functional>
#include <vector>

namespace limbledger::ledger {

// One replica as its own device sees it: where it keeps, how it signs.
struct Member {
  LogStore& store;
  World& world;
  model::ClinicId clinic;
  const SignKey& device_key;
  CheckedOrders checked_orders = {};

  [[nodiscard]] model::ReplicaId replica() const { return replica_of(clinic, device_key.pub()); }
};

struct PlainEntry {
  Kind kind = Kind::intro;
  std::function<Bytes(const Position&)> make_body;  // told where the entry will stand, which a signature binds
};

// Gives the rows as stored; `meta` goes into the same transaction.
[[nodiscard]] Result<std::vector<Row>> append_plain(Member& member, const std::vector<PlainEntry>& entries, Meta meta = {});

// The first entry of a chain. Clinic and signing key are the member's own, whatever `intro` says.
[[nodiscard]] Result<void> begin_chain(Member& member, Intro intro, Meta meta = {});

// Kept beside the log: the public key of the device that enrolled this one, whose chain is not here before the first exchange.
constexpr std::string_view hub_key_name = "hub";

struct NewOrder {
  OrderKind sub = OrderKind::grant;
  Bytes fields;
};
// Orders of one admin key as one commit.
[[nodiscard]] Result<void> append_orders(Member& member, const SignKey& admin, const std::vector<NewOrder>& orders);

// Where the orders of this ledger stand, kept beside the log so that nobody reads every entry to find them. Each is checked
// by its own signature when it is used. What is given here goes into the transaction that stores the orders.
constexpr std::string_view orders_name = "orders";
void note_orders(const Heads& heads, std::span<const Row> rows, Meta& meta);
[[nodiscard]] Result<std::vector<Row>> stored_orders(LogStore& store);

// Kept beside the log where entries of the own chain came back to a device that no longer had them: it was restored from an
// older copy, and writes nothing more under this replica.
constexpr std::string_view restored_name = "restored";
[[nodiscard]] bool has_ended(const Meta& meta, const model::ReplicaId& replica);

}  // namespace limbledger::ledger
