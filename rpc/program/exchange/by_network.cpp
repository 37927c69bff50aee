#include "rpc/program/exchange/by_network.hpp"

#include <chrono>
#include <thread>

namespace limbledger::rpc {

namespace {

constexpr int tries_max = 4;
constexpr std::chrono::milliseconds given_up_look{100};

[[nodiscard]] bool is_given_up(const ByNetwork& how) { return how.given_up != nullptr && *how.given_up; }

[[nodiscard]] service::ExchangeState together(const service::ExchangeState& before, service::ExchangeState now) {
  now.taken += before.taken;
  now.given += before.given;
  now.calls += before.calls;
  now.bytes_sent += before.bytes_sent;
  now.bytes_got += before.bytes_got;
  now.was_restored = now.was_restored || before.was_restored;
  return now;
}

// One connection. True: trying again does not mend it, or there is nothing left to do.
class OneConnection {
 public:
  OneConnection(const ByNetwork& how, service::ExchangeDoor& door, TlsCaller& caller, NetworkOutcome& out)
      : how_(how), caller_(caller), out_(out), door_(door), before_(out.state), calling_(door.calling(caller.shared())) {}

  [[nodiscard]] bool run() {
    const bool is_done = talk();
    // What was taken stays, also where it broke off.
    static_cast<void>(how_.turn([this] {
      if (const auto finished = door_.finish(); !finished) {
        out_.refused = finished.error();
        out_.refused_there = false;
      }
    }));
    return is_done || out_.refused.has_value();
  }

 private:
  [[nodiscard]] bool talk() {
    while (!is_given_up(how_)) {
      std::optional<ledger::Bytes> message;
      if (!turn([&] { return next(message); })) {
        return true;
      }
      if (!message) {
        out_.is_over = true;
        return true;
      }
      auto reply = caller_.post(exchange_target, *message, out_.why, [this] { return take_in(); });
      // Also where the call never got out: a line that brings and does not carry must not bring the same for ever.
      if (!reply) {
        return !take_in();
      }
      if (reply->status != 200) {
        const wire::Fault fault = refusal_in(reply->body, reply->status);
        if (reply->status == 503) {
          out_.why = fault.code;
          return false;
        }
        bool goes_on = false;
        static_cast<void>(how_.turn([&] { goes_on = calling_->shows_more(fault.code); }));
        if (goes_on) {
          continue;
        }
        out_.refused = fault;
        out_.refused_there = true;
        return true;
      }
      if (!turn([&] { return calling_->receive(std::move(reply->body)); })) {
        return true;
      }
    }
    static_cast<void>(take_in());
    return true;
  }

  // False: it was refused here, or nothing is answered any more; the exchange is over.
  [[nodiscard]] bool take_in() { return is_taking_ = is_taking_ && turn([this] { return calling_->take_in(); }); }

  [[nodiscard]] Result<void> next(std::optional<ledger::Bytes>& message) {
    auto made = calling_->next();
    if (!made) {
      return made.error();
    }
    message = std::move(*made);
    return {};
  }

  // False: it was refused here, or nothing is answered any more.
  [[nodiscard]] bool turn(const std::function<Result<void>()>& deed) {
    bool is_good = false;
    const bool was_done = how_.turn([&] {
      const auto done = deed();
      if (!done) {
        out_.refused = done.error();
      }
      is_good = done.has_value();
      out_.state = together(before_, calling_->state());
      if (how_.told) {
        how_.told(out_.state);
      }
    });
    return was_done && is_good;
  }

  const ByNetwork& how_;
  TlsCaller& caller_;
  NetworkOutcome& out_;
  service::ExchangeDoor& door_;
  service::ExchangeState before_;
  std::unique_ptr<service::Calling> calling_;
  bool is_taking_ = true;
};

}  // namespace

NetworkOutcome exchange_by_network(const ByNetwork& how, service::ExchangeDoor& door, const HubAddress& at, const TlsKey& hub) {
  NetworkOutcome out;
  for (int i = 0; i < tries_max && !is_given_up(how); ++i) {
    if (i != 0) {
      if (how.again) {
        how.again(out.why);
      }
      const auto until = std::chrono::steady_clock::now() + std::chrono::seconds(1 << (i - 1));
      while (!is_given_up(how) && std::chrono::steady_clock::now() < until) {
        std::this_thread::sleep_for(given_up_look);
      }
    }
    bool is_other_key = false;
    const auto caller = TlsCaller::connect(at.host, at.port, hub, {}, out.why, is_other_key, how.given_up);
    if (is_other_key) {
      out.refused = wire::Fault("exchange.key", "");
      out.refused_there = true;
      break;
    }
    if (caller && OneConnection(how, door, *caller, out).run()) {
      break;
    }
  }
  return out;
}

}  // namespace limbledger::rpc
