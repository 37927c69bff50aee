// How long a secret may not be tried again after wrong ones: 1, 2, 4 ... 60 seconds, kept in the store across restarts.
#pragma once

#include "core/ledger/bytes.hpp"
#include "core/ledger/port.hpp"
#include "core/ledger/world.hpp"
#include "core/wire/fault.hpp"

#include <optional>
#include <string_view>

namespace limbledger::service {

// Wrong passphrases since the last right one, and when the next may be tried.
struct Backoff {
  std::uint32_t failures = 0;
  std::int64_t next_ms = 0;
};

class PassphraseWait {
 public:
  explicit PassphraseWait(ledger::LogStore& store) : store_(store) {}

  // Whether a secret may be tried now; fault ledger.wait at `path`.
  [[nodiscard]] Result<Backoff> may_try(const ledger::Reading& now, std::string_view path);
  // A store that cannot be written still answers.
  void note_wrong(const ledger::Reading& now, Backoff backoff);
  void note_right(const Backoff& backoff);

 private:
  ledger::LogStore& store_;
  std::optional<ledger::Bytes> unkept_;  // where the store could not take it
};

}  // namespace limbledger::service
