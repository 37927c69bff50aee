// limbledger hub: one clinic's replica behind HTTPS. One thread: each message is answered by itself, and what it stored is on the
// disk before the answer goes out.
#include "core/service/exchange/enrolment.hpp"
#include "rpc/program/commands.hpp"
#include "rpc/program/exchange/carried.hpp"
#include "rpc/program/exchange/stop_signals.hpp"
#include "rpc/program/passphrase.hpp"
#include "rpc/transport/tls.hpp"

#include <array>
#include <cerrno>
#include <iostream>

namespace limbledger::rpc {

namespace {

[[nodiscard]] TlsReply refused(const wire::Refusal& refusal) {
  TlsReply reply;
  reply.status = refusal.number() == wire::FaultClass::read_only || refusal.number() == wire::FaultClass::limit || refusal.number() == wire::FaultClass::internal ? 503 : 403;
  reply.body = refusal_bytes(refusal);
  reply.type = "application/json";
  return reply;
}

// The one new device that may come in: whoever began first, until a person has decided.
class LettingIn {
 public:
  LettingIn(service::ExchangeDoor& door, service::Desk& desk, std::string code) : door_(door), desk_(desk), code_(std::move(code)) {
    if (const auto begun = begin(); !begun) {
      throw problem_of(begun.error(), "");
    }
  }
  ~LettingIn() { wipe(code_); }
  LettingIn(const LettingIn&) = delete;
  LettingIn& operator=(const LettingIn&) = delete;

  [[nodiscard]] TlsReply post(const void* who, std::span<const std::uint8_t> body) {
    if ((admitting_ == nullptr && !is_decided()) || (who_ != nullptr && who_ != who)) {
      return refused(wire::Fault("enrol.closed", ""));
    }
    if (is_decided()) {
      return who_ == nullptr ? refused(wire::Fault("enrol.closed", "")) : decided();
    }
    who_ = who;
    if (body.empty()) {
      return decided();
    }
    auto answer = admitting_->answer(body);
    if (!answer) {
      leave(who);
      return refused(answer.error());
    }
    if (!admitting_->digits().empty()) {
      std::cout << "A new device asks to be let in. It shows six digits; this hub has:\n\n    " << admitting_->digits()
                << "\n\nWhere the new device shows the same, type its six digits; no turns it away:" << std::endl;
    }
    TlsReply reply;
    reply.body = std::move(*answer);
    return reply;
  }

  // This one's digits stand on the screen and wait for an answer.
  [[nodiscard]] bool compares_with(const void* who) const { return who_ == who && !is_decided() && admitting_ != nullptr && !admitting_->digits().empty(); }

  // A newcomer that has gone makes room for another, unless its welcome was written already.
  void leave(const void* who) {
    if (who_ != who) {
      return;
    }
    who_ = nullptr;
    if (is_decided()) {
      return;
    }
    if (admitting_ != nullptr && !admitting_->digits().empty()) {
      std::cout << "That device has gone. What is typed now is for the next one." << std::endl;
    }
    if (const auto begun = begin(); !begun) {
      std::cout << problem_of(begun.error(), "").what() << std::endl;
      turn_away();
    }
  }

  // What a person typed: the digits themselves, so that it speaks of no other device than the one that was looked at. False: nothing
  // more is asked.
  [[nodiscard]] bool said(std::string_view word) {
    if (is_decided()) {
      return false;
    }
    if (admitting_ == nullptr || admitting_->digits().empty()) {
      return true;  // typed before anything was asked
    }
    if (word == "no") {
      turn_away();
      return false;
    }
    if (word != admitting_->digits()) {
      std::cout << "Those are not the digits of this screen. Type the six digits that the new device shows, or no:" << std::endl;
      return true;
    }
    auto written = admitting_->welcome();
    if (!written) {
      std::cout << problem_of(written.error(), "").what() << std::endl;
      turn_away();
      return false;
    }
    welcome_ = std::move(*written);
    std::cout << "Replica " << admitting_->newcomer().to_text() << " belongs to the clinic now." << std::endl;
    end();
    return false;
  }

  // Nobody answers any more, or the answer was no.
  void turn_away() {
    if (!is_decided()) {
      std::cout << "Nobody was let in." << std::endl;
      is_refused_ = true;
      end();
    }
  }

 private:
  [[nodiscard]] bool is_decided() const { return is_refused_ || !welcome_.empty(); }

  [[nodiscard]] Result<void> begin() {
    admitting_.reset();
    auto begun = service::Admitting::begin(door_, code_);
    if (!begun) {
      return begun.error();
    }
    admitting_ = std::move(*begun);
    return {};
  }

  // From here on nothing of the clinic's need be open, its root key least of all.
  void end() {
    admitting_.reset();
    wipe(code_);
    desk_.lock();
  }

  [[nodiscard]] TlsReply decided() const {
    TlsReply reply;
    if (is_refused_) {
      return refused(wire::Fault("enrol.refused", ""));
    }
    reply.status = welcome_.empty() ? 202 : 200;
    reply.body = welcome_;
    return reply;
  }

  service::ExchangeDoor& door_;
  service::Desk& desk_;
  std::string code_;
  std::unique_ptr<service::Admitting> admitting_;
  const void* who_ = nullptr;
  ledger::Bytes welcome_;
  bool is_refused_ = false;
};

class HubTalk final : public TlsConversation {
 public:
  HubTalk(service::ExchangeDoor& door, LettingIn* letting_in, const TlsShared& shared) : letting_in_(letting_in), answering_(door.answering(shared)) {}
  ~HubTalk() override {
    if (letting_in_ != nullptr) {
      letting_in_->leave(this);
    }
    const service::ExchangeState state = answering_->state();
    if (state.taken != 0 || state.waiting != 0 || state.turned_away != 0) {
      std::cout << "Replica " << state.peer.to_text() << ": " << state.taken << " entries were new";
      if (state.waiting + state.turned_away != 0) {
        std::cout << ", " << state.waiting + state.turned_away << " wait for earlier ones";
      }
      std::cout << std::endl;
    }
  }

  TlsReply post(std::string_view target, std::span<const std::uint8_t> body) override {
    if (target == enrol_target) {
      return letting_in_ == nullptr ? refused(wire::Fault("enrol.closed", "")) : letting_in_->post(this, body);
    }
    if (target != exchange_target) {
      return refused(wire::Fault("http.path", ""));
    }
    auto answer = answering_->answer(body);
    if (!answer) {
      return refused(answer.error());
    }
    TlsReply reply;
    reply.body = std::move(*answer);
    return reply;
  }
  bool knows_caller() const override { return answering_->knows_caller(); }
  bool waits_for_person() const override { return letting_in_ != nullptr && letting_in_->compares_with(this); }

 private:
  LettingIn* letting_in_;
  std::unique_ptr<service::Answering> answering_;
};

[[nodiscard]] std::string read_code(const Options& options) {
  return options.code_fd ? read_passphrase(*options.code_fd) : ask_passphrase("Recovery code of the clinic: ");
}

}  // namespace

ExitCode run_hub(const Options& options) {
  OpenedLedger opened(folder_or_default(options), "stop it first: one program at a time has a ledger");
  unlock_for_exchange(opened, options);
  const auto door = open_door(opened);
  std::optional<LettingIn> letting_in;
  if (options.enrols) {
    letting_in.emplace(*door, opened.desk(), read_code(options));
  } else {
    opened.desk().lock();
  }
  std::string why;
  std::unique_ptr<TlsListener> listener;
  door->with_seed([&](TlsSeed seed) { listener = TlsListener::open(options.address, options.hub_port, seed, {}, why); });
  if (!listener) {
    throw Problem(ExitCode::unavailable, "port " + std::to_string(options.hub_port) + " of " + options.address + " cannot be had (" + why +
                                             ")\n  what to do: choose another port, or an address of this machine");
  }
  const StopSignals stop;
  std::cout << "Answering at https://" << (options.address.find(':') == std::string::npos ? options.address : "[" + options.address + "]") << ":" << listener->port()
            << std::endl;
  Beside beside;
  std::string typed;
  if (letting_in) {
    beside.descriptor = STDIN_FILENO;
    beside.ready = [&] {
      std::array<char, 256> piece{};
      const ssize_t got = ::read(STDIN_FILENO, piece.data(), piece.size());
      typed.append(piece.data(), got > 0 ? static_cast<std::size_t>(got) : 0);
      for (auto end = typed.find('\n'); end != std::string::npos; end = typed.find('\n')) {
        const std::string word = typed.substr(0, end);
        typed.erase(0, end + 1);
        if (!letting_in->said(word)) {
          return false;
        }
      }
      if (got < 0 && (errno == EINTR || errno == EAGAIN)) {
        return true;
      }
      if (got <= 0 || typed.size() >= piece.size()) {
        letting_in->turn_away();  // nobody is there to compare
        return false;
      }
      return true;
    };
  }
  listener->run([&](const TlsShared& shared) { return std::make_unique<HubTalk>(*door, letting_in ? &*letting_in : nullptr, shared); }, stop.descriptor(), beside);
  listener.reset();  // before what its visits talk to
  return ExitCode::done;
}

}  // namespace limbledger::rpc
