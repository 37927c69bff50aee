#include "rpc/access/token.hpp"

#include <sodium.h>

#include <algorithm>

namespace limbledger::rpc {

namespace {

constexpr std::size_t token_bytes = 32;
constexpr std::size_t text_characters = sodium_base64_ENCODED_LEN(token_bytes, sodium_base64_VARIANT_URLSAFE_NO_PADDING) - 1;
// How long an expired token is still told apart from one that never was.
constexpr std::int64_t remembered_ms = token_ms;

[[nodiscard]] std::array<std::uint8_t, 32> digest_of(std::string_view text) {
  std::array<std::uint8_t, 32> digest{};
  crypto_generichash(digest.data(), digest.size(), reinterpret_cast<const unsigned char*>(text.data()), text.size(), nullptr, 0);
  return digest;
}

[[nodiscard]] std::string not_whole(std::string_view what) { return "a whole " + std::string(what) + ", which has " + std::to_string(text_characters) + " characters"; }

}  // namespace

std::string Tokens::draw(Held& held) {
  std::array<std::uint8_t, token_bytes> drawn{};
  world_.random(drawn);
  std::array<char, text_characters + 1> text{};
  sodium_bin2base64(text.data(), text.size(), drawn.data(), drawn.size(), sodium_base64_VARIANT_URLSAFE_NO_PADDING);
  sodium_memzero(drawn.data(), drawn.size());
  held.digest = digest_of(text.data());
  return text.data();
}

MadeToken Tokens::add(const service::WantedToken& wanted) {
  forget_old();
  Held held;
  MadeToken made{draw(held), {}, ++made_};
  const ledger::Reading now = world_.now();
  const std::int64_t ms = wanted.once ? once_ms : wanted.ms;
  made.expires_at = {now.wall_ms + ms};
  held.grant = {wanted.caller, made.expires_at, made.number};
  held.until_up_ms = now.up_ms + ms;
  held.once = wanted.once;
  held.token_ms = wanted.ms;
  held.label = wanted.label;
  held.made_at = {now.wall_ms};
  held.calls_left = limits_.calls_at_once * 1000;
  held.counted_up_ms = now.up_ms;
  held_.push_back(std::move(held));
  return made;
}

MadeToken Tokens::make(const service::Caller& caller) { return add({caller, token_ms, {}, false}); }
MadeToken Tokens::make_once(const service::Caller& caller) { return add({caller, token_ms, {}, true}); }

Result<service::GivenToken> Tokens::give(const service::WantedToken& wanted) {
  const std::int64_t now = world_.now().up_ms;
  const auto live = std::count_if(held_.begin(), held_.end(), [&](const Held& held) { return now < held.until_up_ms; });
  if (static_cast<std::size_t>(live) >= limits_.tokens) {
    const std::string most = std::to_string(limits_.tokens);
    return wire::Fault("limit.tokens", "", "at most " + most + " at one time", std::to_string(live)).with("tokens", most);
  }
  MadeToken made = add(wanted);
  return service::GivenToken{std::move(made.text), made.number, made.expires_at};
}

std::vector<service::KnownToken> Tokens::known() {
  forget_old();
  using State = service::KnownToken::State;
  const std::int64_t now = world_.now().up_ms;
  std::vector<service::KnownToken> out;
  for (const Held& held : held_) {
    const State state = held.ended ? State::ended : now >= held.until_up_ms ? State::expired : held.once ? State::waiting : State::good;
    out.push_back({held.grant.number, held.grant.caller, state, held.label, held.made_at, held.grant.expires_at});
  }
  return out;
}

bool Tokens::end_given(std::uint64_t number) {
  const auto held = numbered(number);
  if (held == held_.end() || world_.now().up_ms >= held->until_up_ms) {
    return false;
  }
  end(number);
  return true;
}

void Tokens::bind(std::uint64_t number, const model::ExamId& exam) {
  if (const auto held = numbered(number); held != held_.end() && !held->grant.caller.exam) {
    held->grant.caller.exam = exam;
  }
}

bool Tokens::take_call(std::uint64_t number) {
  const auto held = numbered(number);
  if (held == held_.end()) {
    return true;  // unknown, and told so
  }
  const std::int64_t now = world_.now().up_ms;
  const std::int64_t most = limits_.calls_at_once * 1000;
  // So many thousandths a millisecond are so many a second.
  const std::int64_t passed = std::min(now - held->counted_up_ms, most / std::max<std::int64_t>(limits_.calls_a_second, 1) + 1);
  held->calls_left = std::min(most, held->calls_left + passed * limits_.calls_a_second);
  held->counted_up_ms = now;
  if (held->calls_left < 1000) {
    return false;
  }
  held->calls_left -= 1000;
  return true;
}

std::vector<std::optional<model::ExamId>> Tokens::kiosks() const {
  const std::int64_t now = world_.now().up_ms;
  std::vector<std::optional<model::ExamId>> exams;
  for (const Held& held : held_) {
    if (held.grant.caller.scope == service::Scope::kiosk && now < held.until_up_ms) {
      exams.push_back(held.grant.caller.exam);
    }
  }
  return exams;
}

// Every one is compared, so that the time taken says nothing of which one fitted.
std::vector<Tokens::Held>::iterator Tokens::look(std::string_view text, bool code) {
  const Digest digest = digest_of(text);
  auto found = held_.end();
  for (auto held = held_.begin(); held != held_.end(); ++held) {
    if (sodium_memcmp(held->digest.data(), digest.data(), digest.size()) == 0 && held->once == code) {
      found = held;
    }
  }
  return found;
}

bool Tokens::was_traded(std::string_view code) const {
  const Digest digest = digest_of(code);
  bool found = false;
  for (const Held& held : held_) {
    found = (sodium_memcmp(held.code.data(), digest.data(), digest.size()) == 0 && held.traded) || found;
  }
  return found;
}

std::vector<Tokens::Held>::iterator Tokens::numbered(std::uint64_t number) {
  return std::find_if(held_.begin(), held_.end(), [&](const Held& held) { return held.grant.number == number; });
}

Result<Grant> Tokens::find(std::string_view token) {
  auto found = good(look(token, false));
  return found || token.size() == text_characters ? found : Result<Grant>(wire::Fault{"token.unknown", "", not_whole("token")});
}

Result<Grant> Tokens::find(std::uint64_t number) { return good(numbered(number)); }

Result<Grant> Tokens::good(std::vector<Held>::iterator held) {
  if (held == held_.end()) {
    return wire::Fault{"token.unknown", "", "a token of this launch"};
  }
  if (world_.now().up_ms >= held->until_up_ms) {
    return wire::Fault{"token.expired", "", "a token that has not expired"};
  }
  return held->grant;
}

Result<TradedToken> Tokens::trade(std::string_view code) {
  const auto held = look(code, true);
  if (held == held_.end()) {
    return was_traded(code) ? wire::Fault{"token.used", "/once", "a code that was not used"} : wire::Fault{"token.unknown", "/once", code.size() == text_characters ? "a code of this launch" : not_whole("code")};
  }
  const ledger::Reading now = world_.now();
  if (now.up_ms >= held->until_up_ms) {
    return wire::Fault{"token.expired", "/once", "a code made in the last two minutes"};
  }
  held->code = held->digest;
  std::string text = draw(*held);
  held->once = false;
  held->traded = true;
  held->until_up_ms = now.up_ms + held->token_ms;
  held->grant.expires_at = {now.wall_ms + held->token_ms};
  return TradedToken{held->grant, std::move(text)};
}

void Tokens::end(std::uint64_t number) {
  const auto held = numbered(number);
  if (held == held_.end()) {
    return;
  }
  const std::int64_t now = world_.now().up_ms;
  held->ended = held->ended || now < held->until_up_ms;
  held->until_up_ms = std::min(held->until_up_ms, now);
  if (tell_end_) {
    tell_end_(number);
  }
}

void Tokens::end_traded(std::uint64_t number) {
  if (const auto held = numbered(number); held != held_.end() && held->traded) {
    end(number);
  }
}

void Tokens::forget_old() {
  const std::int64_t now = world_.now().up_ms;
  std::erase_if(held_, [&](const Held& held) { return now - held.until_up_ms > remembered_ms; });
}

}  // namespace limbledger::rpc
