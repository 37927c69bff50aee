// token.make, token.list, token.end: what else may call this launch of the program, and how far. A token is told once, to whom
// it was made for; a list names its number. A kiosk's is bound to one exam: one that is open, or the first that it opens
// itself. Minutes count by the clock that runs since the machine started. Source: contract, sections 9 and 11.
#pragma once

#include "core/service/context.hpp"
#include "core/service/methods/ledger/session.hpp"
#include "core/wire/fault.hpp"
#include "core/wire/type.hpp"

#include <array>
#include <optional>
#include <vector>

namespace limbledger::service {

enum class GivenScope { examiner, kiosk, viewer, sync };
BOOST_DESCRIBE_ENUM(GivenScope, examiner, kiosk, viewer, sync)

inline constexpr std::int64_t token_minutes_max = 24 * 60;
inline constexpr std::int64_t kiosk_minutes = 60;  // ours: a person with a form, and the wait before

struct TokenMakeParams {
  GivenScope scope{};
  std::optional<model::ExamId> exam;
  std::optional<wire::Count<1, token_minutes_max>> minutes;
  std::optional<wire::Name> label;
  std::optional<bool> once;
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(TokenMakeParams, (), (scope, exam, minutes, label, once, language))
constexpr auto notes(const TokenMakeParams*) {
  return std::array{wire::Note{"language", fault_words_note}, wire::Note{"exam", "of a kiosk alone: the open exam that it fills; left out, the first that it opens itself, without a person"},
                    wire::Note{"minutes", "how long the token is good; left out: 60 of a kiosk, else a day"},
                    wire::Note{"label", "to tell it apart in token.list, such as the place where it is used; no name of a person"},
                    wire::Note{"once", "true: a code for a link, to be traded for the token by session.open, once and within two minutes"}};
}
struct TokenMakeResult {
  AnyCount number;
  GivenScope scope{};
  std::optional<wire::Name> token;
  std::optional<wire::Name> once;
  model::Instant expires_at;
};
BOOST_DESCRIBE_STRUCT(TokenMakeResult, (), (number, scope, token, once, expires_at))
// Scope E, also while locked; a kiosk's of a ledger that an examiner has unlocked. Faults: token.not_served, token.exam,
// ledger.locked, examiner.needed, limit.tokens, and of an exam exam.unknown, exam.signed, exam.withdrawn.
[[nodiscard]] Result<TokenMakeResult> token_make(Context& context, const TokenMakeParams& params);

enum class TokenState { good, waiting, expired, ended };
BOOST_DESCRIBE_ENUM(TokenState, good, waiting, expired, ended)
struct ListedToken {
  AnyCount number;
  GivenScope scope{};
  std::optional<model::ExamId> exam;
  TokenState state{};
  std::optional<wire::Name> label;
  model::Instant made_at;
  model::Instant expires_at;
};
BOOST_DESCRIBE_STRUCT(ListedToken, (), (number, scope, exam, state, label, made_at, expires_at))
constexpr auto notes(const ListedToken*) { return std::array{wire::Note{"state", "waiting: a code for a link that nobody has traded yet"}}; }
struct TokenListResult {
  std::vector<ListedToken> tokens;
};
BOOST_DESCRIBE_STRUCT(TokenListResult, (), (tokens))
// Scope E, also while locked. Oldest first; an expired or ended one for another day.
[[nodiscard]] Result<TokenListResult> token_list(Context& context, const NoParams& params);

struct TokenEndParams {
  AnyCount number;
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(TokenEndParams, (), (number, language))
constexpr auto notes(const TokenEndParams*) { return std::array{wire::Note{"language", fault_words_note}}; }
struct TokenEndResult {
  bool ended = false;
};
BOOST_DESCRIBE_STRUCT(TokenEndResult, (), (ended))
// Scope E, also while locked: a tablet that was left somewhere is shut out at once. Faults: token.not_served, token.unknown.
[[nodiscard]] Result<TokenEndResult> token_end(Context& context, const TokenEndParams& params);

}  // namespace limbledger::service
