// Who lets a caller in: the carrier that holds the tokens. session.open and session.end ask it; a carrier that is itself
// the proof (the standard input, an embedding program) has none. TokenKeeper is all the tokens of one launch, for the methods
// that make, list and end them; times are ms. Source: contract, sections 9 and 11.
#pragma once

#include "core/model/time.hpp"
#include "core/service/context.hpp"
#include "core/wire/fault.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::service {

struct Admitted {
  Caller caller;
  model::Instant expires_at;
  std::optional<std::string> token;  // only where a one-time code was traded for it; shown this once
};

class Admission {
 public:
  Admission() = default;
  Admission(const Admission&) = delete;
  Admission& operator=(const Admission&) = delete;
  virtual ~Admission() = default;

  // One of the two, or neither for a caller that has shown a token already. Faults: token.missing, token.unknown,
  // token.expired, at the member that was sent.
  [[nodiscard]] virtual Result<Admitted> enter(const std::optional<std::string_view>& token, const std::optional<std::string_view>& once) = 0;
  virtual void leave() = 0;
  // A kiosk whose token named no exam yet has opened this one: from now on the token names it.
  virtual void bind(const model::ExamId& exam) = 0;
};

struct WantedToken {
  Caller caller;
  std::int64_t ms = 0;
  std::string label;  // for the list; kept in memory alone
  bool once = false;  // a code to be traded for the token, once
};

struct GivenToken {
  std::string text;  // shown this once
  std::uint64_t number = 0;
  model::Instant expires_at;
};

struct KnownToken {
  enum class State : std::uint8_t { good, waiting, expired, ended };  // waiting: a code that nobody has traded yet
  std::uint64_t number = 0;
  Caller caller;
  State state{};
  std::string label;
  model::Instant made_at;
  model::Instant expires_at;
};

class TokenKeeper {
 public:
  TokenKeeper() = default;
  TokenKeeper(const TokenKeeper&) = delete;
  TokenKeeper& operator=(const TokenKeeper&) = delete;
  virtual ~TokenKeeper() = default;

  // Fault limit.tokens.
  [[nodiscard]] virtual Result<GivenToken> give(const WantedToken& wanted) = 0;
  [[nodiscard]] virtual std::vector<KnownToken> known() = 0;
  // False where there is none of that number that is still good or waiting.
  [[nodiscard]] virtual bool end_given(std::uint64_t number) = 0;
};

}  // namespace limbledger::service
