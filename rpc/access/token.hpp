// Tokens of this launch: 32 random bytes as base64url, of which only the hash is kept, compared in constant time; each with
// what it allows and until when. Also the one-time codes that are traded for one, which keep their number. How many calls one
// token makes in a second is counted over all its connections. Times go by the clock that counts since the machine started, so
// that setting the other changes nothing. Faults: token.unknown, token.used, token.expired, limit.tokens. Source: contract, section 11.
#pragma once

#include "core/ledger/world.hpp"
#include "core/service/admission.hpp"

#include <array>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::rpc {

inline constexpr std::int64_t token_ms = std::int64_t{24} * 60 * 60 * 1000;  // ours: longer than a day in the field
inline constexpr std::int64_t once_ms = std::int64_t{2} * 60 * 1000;

// Figures of ours: a form comes nowhere near them.
struct TokenLimits {
  std::size_t tokens = 64;  // good or waiting at one time
  std::int64_t calls_a_second = 1000;
  std::int64_t calls_at_once = 2000;
};

struct MadeToken {
  std::string text;  // shown to its owner and not kept
  model::Instant expires_at;
  std::uint64_t number = 0;
};

// What a token allows; the number names it from then on, so that nobody has to keep its text.
struct Grant {
  service::Caller caller;
  model::Instant expires_at;
  std::uint64_t number = 0;
};

struct TradedToken {
  Grant grant;
  std::string text;
};

class Tokens final : public service::TokenKeeper {
 public:
  explicit Tokens(ledger::World& world, const TokenLimits& limits = {}) : world_(world), limits_(limits) {}

  [[nodiscard]] MadeToken make(const service::Caller& caller);
  [[nodiscard]] MadeToken make_once(const service::Caller& caller);

  [[nodiscard]] Result<Grant> find(std::string_view token);
  // The same of a token that was shown before.
  [[nodiscard]] Result<Grant> find(std::uint64_t number);
  // The code is used up, and there is a token for what it allowed.
  [[nodiscard]] Result<TradedToken> trade(std::string_view code);
  // Ends a token: from then on it is an expired one.
  void end(std::uint64_t number);
  // Ends it only if a code was traded for it; one of sidecar.json may be what others talk with.
  void end_traded(std::uint64_t number);
  // A kiosk's token that named no exam names this one from now on.
  void bind(std::uint64_t number, const model::ExamId& exam);
  // Whether one more call with this token is within its rate.
  [[nodiscard]] bool take_call(std::uint64_t number);
  // The exams of the kiosks whose tokens are good; nothing for one that has opened none yet.
  [[nodiscard]] std::vector<std::optional<model::ExamId>> kiosks() const;
  [[nodiscard]] const TokenLimits& limits() const { return limits_; }
  // By the clock that tokens go by.
  [[nodiscard]] std::int64_t up_ms() const { return world_.now().up_ms; }
  // To be told which token was ended before its time.
  void tells_end(std::function<void(std::uint64_t)> tell) { tell_end_ = std::move(tell); }

  [[nodiscard]] Result<service::GivenToken> give(const service::WantedToken& wanted) override;
  [[nodiscard]] std::vector<service::KnownToken> known() override;
  [[nodiscard]] bool end_given(std::uint64_t number) override;

 private:
  using Digest = std::array<std::uint8_t, 32>;
  struct Held {
    Digest digest{};
    Grant grant;
    std::int64_t until_up_ms = 0;
    bool once = false;
    bool traded = false;
    Digest code{};  // of one that was traded: the code it was traded for
    bool ended = false;
    std::int64_t token_ms = 0;  // how long the token is good that a code is traded for
    std::string label;
    model::Instant made_at;
    std::int64_t calls_left = 0;  // in thousandths
    std::int64_t counted_up_ms = 0;
  };

  [[nodiscard]] MadeToken add(const service::WantedToken& wanted);
  // A new text for this one, whose hash alone is kept.
  [[nodiscard]] std::string draw(Held& held);
  [[nodiscard]] std::vector<Held>::iterator look(std::string_view text, bool code);
  [[nodiscard]] bool was_traded(std::string_view code) const;
  [[nodiscard]] std::vector<Held>::iterator numbered(std::uint64_t number);
  [[nodiscard]] Result<Grant> good(std::vector<Held>::iterator held);
  void forget_old();

  ledger::World& world_;
  TokenLimits limits_;
  std::vector<Held> held_;
  std::uint64_t made_ = 0;
  std::function<void(std::uint64_t)> tell_end_;
};

}  // namespace limbledger::rpc
