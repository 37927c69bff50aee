#include "rpc/access/token.hpp"

#include <sodium.h>

#include <algorithm>

namespace limbledger::rpc {

namespace {

constexpr std::size_t token_bytes = 32;
// How long an expired token is still told apart from one that never was.
constexpr std::int64_t remembered_ms = token_ms;

[[nodiscard]] std::array<std::uint8_t, 32> digest_of(std::string_view text) {
  std::array<std::uint8_t, 32> digest{};
  crypto_generichash(digest.data(), digest.size(), reinterpret_cast<const unsigned char*>(text.data()), text.size(), nullptr, 0);
  return digest;
}

}  // namespace

MadeToken Tokens::add(const service::Caller& caller, std::int64_t ms, bool once, bool traded) {
  forget_old();
  std::array<std::uint8_t, token_bytes> drawn{};
  world_.random(drawn);
  std::array<char, sodium_base64_ENCODED_LEN(token_bytes, sodium_base64_VARIANT_URLSAFE_NO_PADDING)> text{};
  sodium_bin2base64(text.data(), text.size(), drawn.data(), drawn.size(), sodium_base64_VARIANT_URLSAFE_NO_PADDING);
  MadeToken made{text.data(), {}, ++made_};
  const ledger::Reading now = world_.now();
  made.expires_at = {now.wall_ms + ms};
  held_.push_back({digest_of(made.text), {caller, made.expires_at, made.number}, now.up_ms + ms, once, traded});
  sodium_memzero(drawn.data(), drawn.size());
  return made;
}

MadeToken Tokens::make(const service::Caller& caller) { return add(caller, token_ms, false, false); }
MadeToken Tokens::make_once(const service::Caller& caller) { return add(caller, once_ms, true, false); }

// Every one is compared, so that the time taken says nothing of which one fitted.
std::vector<Tokens::Held>::iterator Tokens::look(std::string_view text, bool once) {
  const Digest digest = digest_of(text);
  auto found = held_.end();
  for (auto held = held_.begin(); held != held_.end(); ++held) {
    if (sodium_memcmp(held->digest.data(), digest.data(), digest.size()) == 0 && held->once == once) {
      found = held;
    }
  }
  return found;
}

Result<Grant> Tokens::find(std::string_view token) { return good(look(token, false)); }

Result<Grant> Tokens::find(std::uint64_t number) {
  return good(std::find_if(held_.begin(), held_.end(), [&](const Held& held) { return held.grant.number == number; }));
}

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
    return wire::Fault{"token.unknown", "/once", "a code of this launch that was not used"};
  }
  const service::Caller caller = held->grant.caller;
  if (world_.now().up_ms >= held->until_up_ms) {
    return wire::Fault{"token.expired", "/once", "a code made in the last two minutes"};
  }
  held_.erase(held);
  MadeToken made = add(caller, token_ms, false, true);
  return TradedToken{held_.back().grant, std::move(made.text)};
}

void Tokens::end(std::uint64_t number) {
  const auto held = std::find_if(held_.begin(), held_.end(), [&](const Held& one) { return one.grant.number == number && !one.once; });
  if (held == held_.end()) {
    return;
  }
  held->until_up_ms = std::min(held->until_up_ms, world_.now().up_ms);
  if (tell_end_) {
    tell_end_(number);
  }
}

void Tokens::end_traded(std::uint64_t number) {
  if (std::any_of(held_.begin(), held_.end(), [&](const Held& one) { return one.grant.number == number && one.traded; })) {
    end(number);
  }
}

void Tokens::forget_old() {
  const std::int64_t now = world_.now().up_ms;
  std::erase_if(held_, [&](const Held& held) { return now - held.until_up_ms > remembered_ms; });
}

}  // namespace limbledger::rpc
