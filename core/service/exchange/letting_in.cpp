#include "core/service/exchange/letting_in.hpp"

#include "core/ledger/keys/secret.hpp"

#include <algorithm>
#include <utility>

namespace limbledger::service {

LettingIn::LettingIn(ExchangeDoor& door, std::string_view code) : door_(door), code_(std::make_unique<ledger::WipedBytes>(code.size())) {
  std::copy(code.begin(), code.end(), code_->bytes.begin());
}

Result<std::unique_ptr<LettingIn>> LettingIn::begin(ExchangeDoor& door, std::string_view code) {
  std::unique_ptr<LettingIn> made(new LettingIn(door, code));
  if (auto begun = made->begin_again(); !begun) {
    return begun.error();
  }
  return made;
}

LettingIn::~LettingIn() { end(); }

Result<void> LettingIn::begin_again() {
  admitting_.reset();
  auto begun = Admitting::begin(door_, {reinterpret_cast<const char*>(code_->bytes.data()), code_->bytes.size()});
  if (!begun) {
    return begun.error();
  }
  admitting_ = std::move(*begun);
  return {};
}

// From here on nothing of the clinic's need be open, its root key least of all.
void LettingIn::end() {
  admitting_.reset();
  code_.reset();
}

void LettingIn::become(State state) {
  state_ = state;
  if (is_over()) {
    end();
  }
  if (tell_) {
    tell_();
  }
}

Result<std::optional<ledger::Bytes>> LettingIn::decided() const {
  if (state_ == State::turned_away) {
    return wire::Fault("enrol.refused", "");
  }
  if (state_ == State::interrupted) {
    return wire::Fault("enrol.interrupted", "");
  }
  return state_ == State::let_in ? std::optional(welcome_) : std::optional<ledger::Bytes>();
}

Result<std::optional<ledger::Bytes>> LettingIn::post(const void* who, std::span<const std::uint8_t> body) {
  if (who_ == nullptr ? is_over() : who_ != who) {
    return wire::Fault("enrol.closed", "");
  }
  who_ = who;
  if (is_over() || body.empty()) {
    return decided();
  }
  auto answer = admitting_->answer(body);
  if (!answer) {
    leave(who);
    return answer.error();
  }
  if (state_ == State::waits && !admitting_->digits().empty()) {
    become(State::compares);
  }
  return std::optional(std::move(*answer));
}

void LettingIn::leave(const void* who) {
  if (who_ != who) {
    return;
  }
  who_ = nullptr;
  if (is_over()) {
    return;
  }
  if (!begin_again()) {
    become(State::interrupted);
  } else if (state_ == State::compares) {
    become(State::waits);
  }
}

Result<model::ReplicaId> LettingIn::let_in(std::string_view digits) {
  if (state_ != State::compares) {
    return wire::Fault("enrol.nobody", "/digits");
  }
  if (digits != admitting_->digits()) {
    return wire::Fault("enrol.digits", "/digits", "the six digits that the new device shows");
  }
  auto written = admitting_->welcome();
  if (!written) {
    become(State::interrupted);
    return written.error();
  }
  welcome_ = std::move(*written);
  newcomer_ = admitting_->newcomer();
  become(State::let_in);
  return *newcomer_;
}

void LettingIn::turn_away() {
  if (!is_over()) {
    become(State::turned_away);
  }
}

void LettingIn::interrupt() {
  if (!is_over()) {
    become(State::interrupted);
  }
}

std::string LettingIn::digits() const { return state_ == State::compares ? admitting_->digits() : std::string(); }

}  // namespace limbledger::service
