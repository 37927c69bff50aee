// Orders (kind ORDER): what an admin key says about the clinic itself: who may sign orders, which replicas belong to it, which
// pair keys are sealed to. An order is bound to its place in a chain, so it cannot be said again elsewhere. The root key's
// public half is what the clinic's id was made of; its seed is on paper only. An order of a kind or version that this edition
// does not know is kept and counted. Source: ledger, items 16 and 44; the format's section 10.
#pragma once

#include "core/ledger/body.hpp"
#include "core/ledger/keys/sign.hpp"
#include "core/ledger/keys/wrap.hpp"

#include <optional>
#include <set>
#include <utility>
#include <vector>

namespace limbledger::ledger {

enum class OrderKind : std::uint8_t {
  grant = 1,
  enrol = 2,
  revoke = 3,
  admit = 4,
  epoch = 5,
  erase = 6,
  erase_done = 7,
  erase_cancel = 8,
  gap = 9,
  hubcert = 10,
  auditor = 11
};

// What a key may order and a replica may do, as bits.
namespace roles {
constexpr std::uint16_t write = 1;
constexpr std::uint16_t hub = 2;
constexpr std::uint16_t enrol = 4;  // and revoke
constexpr std::uint16_t erase = 8;
constexpr std::uint16_t epoch = 16;
constexpr std::uint16_t audit = 32;
}  // namespace roles

constexpr std::uint8_t order_version = 1;

struct OrderBody {
  OrderKind sub = OrderKind::grant;  // others are kept
  std::uint8_t version = order_version;
  Bytes fields;
  PublicKey admin_pub{};
  Signature signature{};

  [[nodiscard]] Bytes to_bytes() const;
  [[nodiscard]] static Result<OrderBody> from_bytes(View body);
};

// `at` is where the order will stand.
[[nodiscard]] OrderBody sign_order(const SignKey& admin, const Position& at, OrderKind sub, Bytes fields);
[[nodiscard]] bool verify_order(const Position& at, const OrderBody& order);

// Orders whose signature was found good, each by all that it rests on: an exchange asks for the same ones with every message.
using CheckedOrders = std::set<Hash>;
[[nodiscard]] bool verify_order(const Position& at, const OrderBody& order, CheckedOrders& checked);

struct Grant {
  PublicKey pub{};
  std::uint16_t roles = 0;

  [[nodiscard]] Bytes to_fields() const;
  [[nodiscard]] static std::optional<Grant> from_fields(View fields);
};

struct Enrol {
  model::ReplicaId replica;
  model::DeviceId device;
  std::uint16_t roles = 0;

  [[nodiscard]] Bytes to_fields() const;
  [[nodiscard]] static std::optional<Enrol> from_fields(View fields);
};

// The device, and for each of its replicas the newest entry that still counts.
struct Revoke {
  model::DeviceId device;
  std::vector<Place> cuts;

  [[nodiscard]] Bytes to_fields() const;
  [[nodiscard]] static std::optional<Revoke> from_fields(View fields);
};

// A new pair that keys are sealed to: its secret boxed to each replica that goes on reading, and the secret before it sealed
// under the new one, so that whoever has the newest reaches all before it.
struct Epoch {
  static constexpr std::size_t older_size = 72;
  static constexpr std::size_t box_size = 80;
  struct Box {
    model::ReplicaId replica;
    std::array<std::uint8_t, box_size> sealed{};
  };

  std::uint32_t epoch = 0;
  PublicKey pub{};
  std::array<std::uint8_t, older_size> older{};  // all zero where there is no older one
  std::vector<Box> boxes;

  [[nodiscard]] Bytes to_fields() const;
  [[nodiscard]] static std::optional<Epoch> from_fields(View fields);
  void hand_to(const model::ReplicaId& replica, const PublicKey& box_pub, const Secret32& secret, const Secret32& ephemeral_seed);
  // The new secret, by the box public key that the replica's introduction states. Fault entry.key.
  [[nodiscard]] Result<Secret32> open_box_of(const model::ReplicaId& replica, const BoxPair& box) const;
  // The secret before it. Fault entry.seal.
  [[nodiscard]] Result<Secret32> open_older(const model::ClinicId& clinic, const Secret32& secret) const;
};
[[nodiscard]] std::array<std::uint8_t, Epoch::older_size> seal_older(const model::ClinicId& clinic, std::uint32_t epoch, const Secret32& secret,
                                                                     const Secret32& older);

}  // namespace limbledger::ledger
