#include "core/service/passphrase_wait.hpp"

#include <algorithm>
#include <string>

namespace limbledger::service {

namespace {

constexpr std::string_view backoff_name = "unlock";
constexpr std::int64_t wait_ms_max = 60'000;

[[nodiscard]] ledger::Bytes backoff_bytes(const Backoff& backoff) {
  ledger::ByteWriter out(12);
  out.u32(backoff.failures);
  out.u64(static_cast<std::uint64_t>(backoff.next_ms));
  return out.take();
}

[[nodiscard]] Backoff backoff_of(const ledger::Meta& meta) {
  Backoff backoff;
  if (const auto found = meta.find(std::string(backoff_name)); found != meta.end() && found->second.size() == 12) {
    ledger::ByteReader in(found->second);
    backoff.failures = in.u32();
    backoff.next_ms = static_cast<std::int64_t>(in.u64());
  }
  return backoff;
}

}  // namespace

Result<Backoff> PassphraseWait::may_try(const ledger::Reading& now, std::string_view path) {
  const auto heads = store_.heads();
  if (!heads) {
    return heads.error();
  }
  ledger::Meta kept = heads->meta;
  if (unkept_) {
    kept[std::string(backoff_name)] = *unkept_;
  }
  Backoff backoff = backoff_of(kept);
  if (backoff.failures > 0 && backoff.next_ms - now.wall_ms > wait_ms_max) {
    // The clock was set back: the wait begins anew, or it would last as long as the clock is wrong.
    backoff.next_ms = now.wall_ms + wait_ms_max;
    static_cast<void>(store_.append({}, {}, {{std::string(backoff_name), backoff_bytes(backoff)}}));
  }
  const std::int64_t wait_ms = std::min(backoff.next_ms - now.wall_ms, wait_ms_max);
  if (backoff.failures > 0 && wait_ms > 0) {
    return wire::Fault("ledger.wait", std::string(path), "a try after the wait").with("wait_s", std::to_string((wait_ms + 999) / 1000));
  }
  return backoff;
}

void PassphraseWait::note_wrong(const ledger::Reading& now, Backoff backoff) {
  backoff.next_ms = now.wall_ms + std::min<std::int64_t>(1000LL << std::min<std::uint32_t>(backoff.failures, 6), wait_ms_max);
  ++backoff.failures;
  const bool stored = store_.append({}, {}, {{std::string(backoff_name), backoff_bytes(backoff)}}).has_value();
  unkept_ = stored ? std::nullopt : std::optional(backoff_bytes(backoff));
}

void PassphraseWait::note_right(const Backoff& backoff) {
  if (backoff.failures > 0) {
    const bool stored = store_.append({}, {}, {{std::string(backoff_name), {}}}).has_value();
    unkept_ = stored ? std::nullopt : std::optional<ledger::Bytes>(std::in_place);
  }
}

}  // namespace limbledger::service
