// limbledger hub: one clinic's replica behind HTTPS. One thread: each message is answered by itself, and what it promises is on the
// disk before the answer goes out.
#include "rpc/program/commands.hpp"
#include "rpc/program/exchange/carried.hpp"
#include "rpc/program/exchange/hub_talk.hpp"
#include "rpc/program/exchange/stop_signals.hpp"
#include "rpc/program/passphrase.hpp"

#include <array>
#include <cerrno>
#include <iostream>

namespace limbledger::rpc {

namespace {

using service::LettingIn;

// The enrolment on this terminal: what it has come to is said as it comes, and what is typed is heard.
class AtTerminal {
 public:
  AtTerminal(service::ExchangeDoor& door, service::Desk& desk, std::string code) : desk_(desk) {
    auto begun = LettingIn::begin(door, code);
    wipe(code);
    if (!begun) {
      throw problem_of(begun.error(), "");
    }
    letting_in_ = std::move(*begun);
    letting_in_->tells([this] { tell(); });
  }

  [[nodiscard]] LettingIn* letting_in() const { return letting_in_.get(); }

  // A line that was typed. False: nothing more is asked.
  [[nodiscard]] bool said(std::string_view word) {
    if (letting_in_->state() == LettingIn::State::waits) {
      return true;  // typed before anything was asked
    }
    if (letting_in_->state() == LettingIn::State::compares) {
      if (word == "no") {
        letting_in_->turn_away();
      } else if (const auto let_in = letting_in_->let_in(word); !let_in) {
        if (letting_in_->state() == LettingIn::State::compares) {
          std::cout << "That is not what this screen shows. A slip changes nothing: type the six digits that the new device shows once more. Where its screen\n"
                       "really shows others, type no:" << std::endl;
          return true;
        }
        std::cout << problem_of(let_in.error(), "").what() << std::endl;
      }
    }
    return false;
  }

 private:
  void tell() {
    switch (letting_in_->state()) {
      case LettingIn::State::waits:
        std::cout << "That device has gone. What is typed now is for the next one." << std::endl;
        return;
      case LettingIn::State::compares:
        std::cout << "A new device asks to be let in. It shows six digits; this hub has:\n\n    " << letting_in_->digits()
                  << "\n\nWhere the new device shows the same, type its six digits; no turns it away:" << std::endl;
        return;
      case LettingIn::State::let_in:
        std::cout << "Replica " << letting_in_->newcomer()->to_text() << " belongs to the clinic now." << std::endl;
        break;
      case LettingIn::State::turned_away:
        std::cout << "Nobody was let in." << std::endl;
        break;
      case LettingIn::State::interrupted:
        std::cout << "Nobody was let in: nobody had decided. What to do: begin again with --enrol, and let the device join again." << std::endl;
        break;
    }
    desk_.lock();
  }

  service::Desk& desk_;
  std::unique_ptr<LettingIn> letting_in_;
};

[[nodiscard]] std::string read_code(const Options& options) {
  return options.code_fd ? read_passphrase(*options.code_fd) : ask_passphrase("Recovery code of the clinic: ");
}

}  // namespace

ExitCode run_hub(const Options& options) {
  OpenedLedger opened(folder_or_default(options), "stop it first, or start it with --hub, so that it answers the other devices itself");
  unlock_for_exchange(opened, options);
  const auto door = open_door(opened);
  std::optional<AtTerminal> enrolment;
  if (options.enrols) {
    enrolment.emplace(*door, opened.desk(), read_code(options));
  } else {
    opened.desk().lock();
  }
  std::string why;
  std::unique_ptr<TlsListener> listener;
  const std::uint16_t port = options.hub_port.value_or(0);
  door->with_seed([&](TlsSeed seed) { listener = TlsListener::open(options.address, port, seed, {}, why); });
  if (!listener) {
    throw Problem(ExitCode::unavailable, "port " + std::to_string(port) + " of " + options.address + " cannot be had (" + why +
                                             ")\n  what to do: choose another port, or an address of this machine");
  }
  const StopSignals stop;
  for (const std::string& address : addresses_to_call(options.address, listener->port())) {
    std::cout << "Answering at " << address << std::endl;
  }
  Beside beside;
  std::string typed;
  if (enrolment) {
    beside.descriptor = STDIN_FILENO;
    beside.ready = [&] {
      std::array<char, 256> piece{};
      const ssize_t got = ::read(STDIN_FILENO, piece.data(), piece.size());
      typed.append(piece.data(), got > 0 ? static_cast<std::size_t>(got) : 0);
      for (auto end = typed.find('\n'); end != std::string::npos; end = typed.find('\n')) {
        const std::string word = typed.substr(0, end);
        typed.erase(0, end + 1);
        if (!enrolment->said(word)) {
          return false;
        }
      }
      if (got < 0 && (errno == EINTR || errno == EAGAIN)) {
        return true;
      }
      if (got <= 0 || typed.size() >= piece.size()) {
        enrolment->letting_in()->interrupt();  // nobody is there to compare
        return false;
      }
      return true;
    };
  }
  const HubTalks talks{[](const std::function<void()>& deed) {
                         deed();
                         return true;
                       },
                       *door, [&] { return enrolment ? enrolment->letting_in() : nullptr; },
                       [](const service::ExchangeState& state) { std::cout << line_of_brought(state) << std::endl; }};
  listener->run([&](const TlsShared& shared) { return hub_talk(talks, shared); }, stop.descriptor(), beside);
  listener.reset();  // before what its visits talk to
  return ExitCode::done;
}

}  // namespace limbledger::rpc
