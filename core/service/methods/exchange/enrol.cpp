#include "core/service/methods/exchange/enrol.hpp"

#include "core/service/exchange/carrier.hpp"

namespace limbledger::service {

namespace {

[[nodiscard]] wire::Fault no_carrier_here() { return {"exchange.not_served", "", "a program that serves"}; }

[[nodiscard]] EnrollingResult told_enrolling(const LettingIn* letting_in) {
  EnrollingResult result;
  if (letting_in == nullptr) {
    return result;
  }
  switch (letting_in->state()) {
    case LettingIn::State::waits:
      result.state = EnrollingState::waits;
      break;
    case LettingIn::State::compares:
      result.state = EnrollingState::compares;
      result.digits = wire::Name{letting_in->digits()};
      break;
    case LettingIn::State::let_in:
      result.state = EnrollingState::let_in;
      result.replica = letting_in->newcomer();
      break;
    case LettingIn::State::turned_away:
      result.state = EnrollingState::turned_away;
      break;
    case LettingIn::State::interrupted:
      result.state = EnrollingState::interrupted;
      break;
  }
  return result;
}

}  // namespace

Result<EnrollingResult> replica_enrol(Context& context, const ReplicaEnrolParams& params) {
  if (context.exchanges == nullptr) {
    return no_carrier_here();
  }
  if (auto begun = context.exchanges->let_one_in(params.code.text); !begun) {
    return begun.error();
  }
  return told_enrolling(context.exchanges->letting_in());
}

Result<EnrollingResult> replica_enrolling(Context& context, const NoParams& /*params*/) {
  if (context.exchanges == nullptr) {
    return no_carrier_here();
  }
  return told_enrolling(context.exchanges->letting_in());
}

Result<EnrollingResult> replica_let_in(Context& context, const ReplicaLetInParams& params) {
  if (context.exchanges == nullptr) {
    return no_carrier_here();
  }
  LettingIn* letting_in = context.exchanges->letting_in();
  if (letting_in == nullptr) {
    return wire::Fault{"enrol.nobody", "/digits"};
  }
  if (auto let_in = letting_in->let_in(params.digits.text); !let_in) {
    return let_in.error();
  }
  return told_enrolling(letting_in);
}

Result<EnrollingResult> replica_turn_away(Context& context, const NoParams& /*params*/) {
  if (context.exchanges == nullptr) {
    return no_carrier_here();
  }
  LettingIn* letting_in = context.exchanges->letting_in();
  if (letting_in == nullptr || letting_in->state() == LettingIn::State::let_in) {
    return wire::Fault{"enrol.nobody", ""};
  }
  letting_in->turn_away();
  return told_enrolling(letting_in);
}

}  // namespace limbledger::service
