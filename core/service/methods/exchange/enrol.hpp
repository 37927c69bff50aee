// replica.enrol, replica.enrolling, replica.let_in, replica.turn_away: a new device becomes one of the clinic's, at the program that
// answers the others. It is let in by the six digits that somebody reads from its screen and types here, never by a yes: so that they
// speak of this device and of no other. Source: ledger, item 44; contract, section 9.
#pragma once

#include "core/service/context.hpp"
#include "core/service/methods/ledger/session.hpp"
#include "core/wire/fault.hpp"
#include "core/wire/type.hpp"

#include <array>
#include <optional>

namespace limbledger::service {

enum class EnrollingState { none, waits, compares, let_in, turned_away, interrupted };
BOOST_DESCRIBE_ENUM(EnrollingState, none, waits, compares, let_in, turned_away, interrupted)
struct EnrollingResult {
  EnrollingState state{};
  std::optional<wire::Name> digits;
  std::optional<model::ReplicaId> replica;
};
BOOST_DESCRIBE_STRUCT(EnrollingResult, (), (state, digits, replica))
constexpr auto notes(const EnrollingResult*) {
  return std::array{wire::Note{"state", "waits: for a device that begins to join; compares: it shows its six digits, and somebody who sees both screens is wanted; interrupted: locked before anybody had decided, to be begun again"},
                    wire::Note{"digits", "while it compares: what this side has, to be shown; where the new device shows others, somebody stands between"},
                    wire::Note{"replica", "of the device that was let in"}};
}

struct ReplicaEnrolParams {
  wire::Name code;
};
BOOST_DESCRIBE_STRUCT(ReplicaEnrolParams, (), (code))
constexpr auto notes(const ReplicaEnrolParams*) {
  return std::array{wire::Note{"code", "the clinic's printed recovery code; kept until the device was let in or turned away, or the ledger is locked"}};
}
// Scope E. Lets one new device begin. Faults: exchange.not_served, enrol.no_hub, enrol.closed, ledger.passphrase at /code,
// exchange.purpose.
[[nodiscard]] Result<EnrollingResult> replica_enrol(Context& context, const ReplicaEnrolParams& params);

// Scope E, also while locked, and no use of the ledger. Fault exchange.not_served.
[[nodiscard]] Result<EnrollingResult> replica_enrolling(Context& context, const NoParams& params);

struct ReplicaLetInParams {
  wire::Name digits;
};
BOOST_DESCRIBE_STRUCT(ReplicaLetInParams, (), (digits))
constexpr auto notes(const ReplicaLetInParams*) {
  return std::array{wire::Note{"digits", "as somebody read them from the new device's screen and typed them here; never filled in from replica.enrolling"}};
}
// Scope E. Faults: exchange.not_served, enrol.nobody, enrol.digits.
[[nodiscard]] Result<EnrollingResult> replica_let_in(Context& context, const ReplicaLetInParams& params);

// Scope E, also while locked. Faults: exchange.not_served, enrol.nobody.
[[nodiscard]] Result<EnrollingResult> replica_turn_away(Context& context, const NoParams& params);

}  // namespace limbledger::service
