// Who lets a caller in: the carrier that holds the tokens. session.open and session.end ask it; a carrier that is itself
// the proof (the standard input, an embedding program) has none. Source: contract, sections 9 and 11.
#pragma once

#include "core/model/time.hpp"
#include "core/service/context.hpp"
#include "core/wire/fault.hpp"

#include <optional>
#include <string>
#include <string_view>

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
};

}  // namespace limbledger::service
