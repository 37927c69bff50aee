// The one new device that may come in while somebody looks: whoever began first, until a person has typed the six digits that it
// shows, or has turned it away. For whoever carries the messages; a caller is told apart by its connection. The clinic's root key is
// held until that is decided, and no longer. Source: ledger, item 44; the format's section 10.
#pragma once

#include "core/service/exchange/enrolment.hpp"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace limbledger::ledger {
class WipedBytes;
}

namespace limbledger::service {

class LettingIn {
 public:
  // interrupted: locked, or nobody was there to compare, before anybody had decided.
  enum class State : std::uint8_t { waits, compares, let_in, turned_away, interrupted };

  // Faults: those of Admitting. `code`: the printed recovery code; it is wiped once it is decided. The door must outlive it.
  [[nodiscard]] static Result<std::unique_ptr<LettingIn>> begin(ExchangeDoor& door, std::string_view code);
  ~LettingIn();
  LettingIn(const LettingIn&) = delete;
  LettingIn& operator=(const LettingIn&) = delete;

  // To be told whenever the state is another, and when a device that was being looked at has gone.
  void tells(std::function<void()> tell) { tell_ = std::move(tell); }

  // What a caller posts, and what it is answered; none: nobody has decided yet, to be asked again with nothing.
  // Faults: enrol.closed, enrol.refused, enrol.interrupted, exchange.message, enrol.code.
  [[nodiscard]] Result<std::optional<ledger::Bytes>> post(const void* who, std::span<const std::uint8_t> body);
  // That connection has ended: another may come, unless its welcome was written already.
  void leave(const void* who);
  [[nodiscard]] bool compares_with(const void* who) const { return state_ == State::compares && who_ == who; }

  // The digits as a person read them from the new device's screen and typed them, so that they speak of no other device than the
  // one that was looked at. Faults: enrol.nobody, enrol.digits, and those of writing; only what could not be written ends it.
  [[nodiscard]] Result<model::ReplicaId> let_in(std::string_view digits);
  void turn_away();
  void interrupt();

  [[nodiscard]] State state() const { return state_; }
  // This device's own, while it compares; empty otherwise.
  [[nodiscard]] std::string digits() const;
  [[nodiscard]] const std::optional<model::ReplicaId>& newcomer() const { return newcomer_; }

 private:
  LettingIn(ExchangeDoor& door, std::string_view code);

  [[nodiscard]] Result<void> begin_again();
  [[nodiscard]] Result<std::optional<ledger::Bytes>> decided() const;
  [[nodiscard]] bool is_over() const { return state_ != State::waits && state_ != State::compares; }
  void become(State state);
  void end();

  ExchangeDoor& door_;
  std::unique_ptr<ledger::WipedBytes> code_;  // until it is decided
  std::function<void()> tell_;
  std::unique_ptr<Admitting> admitting_;
  State state_ = State::waits;
  const void* who_ = nullptr;
  ledger::Bytes welcome_;
  std::optional<model::ReplicaId> newcomer_;
};

}  // namespace limbledger::service
