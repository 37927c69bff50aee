#include "core/service/methods/ledger/token.hpp"

#include "core/service/admission.hpp"
#include "core/service/desk.hpp"
#include "core/service/methods/exam/common.hpp"

namespace limbledger::service {

namespace {

constexpr std::int64_t minute_ms = 60'000;

[[nodiscard]] Scope scope_given(GivenScope scope) {
  switch (scope) {
    case GivenScope::examiner:
      return Scope::examiner;
    case GivenScope::kiosk:
      return Scope::kiosk;
    case GivenScope::viewer:
      return Scope::viewer;
    case GivenScope::sync:
      break;
  }
  return Scope::sync;
}

[[nodiscard]] GivenScope given_scope(Scope scope) {
  switch (scope) {
    case Scope::examiner:
      return GivenScope::examiner;
    case Scope::kiosk:
      return GivenScope::kiosk;
    case Scope::viewer:
      return GivenScope::viewer;
    default:
      return GivenScope::sync;
  }
}

[[nodiscard]] wire::Fault nothing_served() { return {"token.not_served", "", "a program that serves over HTTP"}; }

}  // namespace

Result<TokenMakeResult> token_make(Context& context, const TokenMakeParams& params) {
  if (context.tokens == nullptr) {
    return nothing_served();
  }
  const bool kiosk = params.scope == GivenScope::kiosk;
  // A kiosk writes by leave of an examiner, also while the ledger is locked later; the others allow no more than the caller may.
  if (kiosk && context.desk->locked()) {
    return wire::Fault{"ledger.locked", "", "an unlocked ledger"};
  }
  if (kiosk && context.desk->examiner_key() == nullptr) {
    return wire::Fault{"examiner.needed", "", "a ledger unlocked with an examiner's passphrase"};
  }
  if (params.exam) {
    if (!kiosk) {
      return wire::Fault{"token.exam", "/exam", "no exam"};
    }
    const auto record = exam_to_read(context, *params.exam);
    if (!record) {
      return record.error();
    }
    if (auto open = exam_takes_changes(**record); !open) {
      wire::Refusal refusal = open.error();
      refusal.faults.front().path = "/exam";
      return refusal;
    }
  }
  WantedToken wanted;
  wanted.caller = {scope_given(params.scope), params.exam};
  wanted.ms = (params.minutes ? params.minutes->steps : kiosk ? kiosk_minutes : token_minutes_max) * minute_ms;
  wanted.label = params.label ? params.label->text : std::string{};
  wanted.once = params.once.value_or(false);
  auto given = context.tokens->give(wanted);
  if (!given) {
    return given.error();
  }
  TokenMakeResult result;
  result.number.steps = static_cast<std::int64_t>(given->number);
  result.scope = params.scope;
  (wanted.once ? result.once : result.token) = wire::Name{std::move(given->text)};
  result.expires_at = given->expires_at;
  return result;
}

Result<TokenListResult> token_list(Context& context, const NoParams& /*params*/) {
  if (context.tokens == nullptr) {
    return nothing_served();
  }
  TokenListResult result;
  for (const KnownToken& one : context.tokens->known()) {
    ListedToken listed;
    listed.number.steps = static_cast<std::int64_t>(one.number);
    listed.scope = given_scope(one.caller.scope);
    listed.exam = one.caller.exam;
    listed.state = static_cast<TokenState>(one.state);
    if (!one.label.empty()) {
      listed.label = wire::Name{one.label};
    }
    listed.made_at = one.made_at;
    listed.expires_at = one.expires_at;
    result.tokens.push_back(std::move(listed));
  }
  return result;
}

Result<TokenEndResult> token_end(Context& context, const TokenEndParams& params) {
  if (context.tokens == nullptr) {
    return nothing_served();
  }
  if (!context.tokens->end_given(static_cast<std::uint64_t>(params.number.steps))) {
    return wire::Fault{"token.unknown", "/number", "the number of a token that token.list names as good or waiting", std::to_string(params.number.steps)};
  }
  return TokenEndResult{true};
}

}  // namespace limbledger::service
