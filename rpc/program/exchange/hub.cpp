// limbledger hub: one clinic's replica behind HTTPS. One thread: each message is answered by itself, and what it stored is on the
// disk before the answer goes out.
#include "core/service/exchange/enrolment.hpp"
#include "rpc/program/commands.hpp"
#include "rpc/program/exchange/carried.hpp"
#include "rpc/program/exchange/stop_signals.hpp"
#include "rpc/program/passphrase.hpp"
#include "rpc/transport/tls.hpp"

#include <array>
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
    if (admitting_ == nullptr || (who_ != nullptr && who_ != who)) {
      return refused(wire::Fault("enrol.closed", ""));
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
                << "\n\nAre they the same on both screens? Answer yes or no:" << std::endl;
    }
    TlsReply reply;
    reply.body = std::move(*answer);
    return reply;
  }

  // A newcomer that has gone makes room for another, unless its welcome was written already.
  void leave(const void* who) {
    if (who_ != who) {
      return;
    }
    who_ = nullptr;
    if (!is_decided()) {
      static_cast<void>(begin());
    }
  }

  // What a person typed. False: nothing more is asked.
  [[nodiscard]] bool said(std::string_view word) {
    if (admitting_ == nullptr || admitting_->digits().empty() || is_decided()) {
      return true;  // typed before anything was asked
    }
    if (word != "yes") {
      std::cout << "Nobody was let in." << std::endl;
      is_refused_ = true;
      end();
      return false;
    }
    auto written = admitting_->welcome();
    if (!written) {
      std::cout << problem_of(written.error(), "").what() << std::endl;
      is_refused_ = true;
      end();
      return false;
    }
    welcome_ = std::move(*written);
    std::cout << "Replica " << admitting_->newcomer().to_text() << " belongs to the clinic now." << std::endl;
    end();
    return false;
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

  // From here on nothing of the clinic's need be open.
  void end() {
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
      return got > 0 && typed.size() < piece.size();
    };
  }
  listener->run([&](const TlsShared& shared) { return std::make_unique<HubTalk>(*door, letting_in ? &*letting_in : nullptr, shared); }, stop.descriptor(), beside);
  listener.reset();  // before what its visits talk to
  return ExitCode::done;
}

}  // namespace limbledger::rpc
