#include "core/service/methods/ledger/session.hpp"

#include "core/service/methods/exam/finding.hpp"

#include "core/ledger/log/log.hpp"
#include "core/reference/edition.hpp"
#include "core/service/admission.hpp"
#include "core/service/call.hpp"
#include "core/service/methods/ledger/changes.hpp"
#include "core/service/methods/people/dates.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

constexpr std::int64_t batch_calls_max = 100;
constexpr std::string_view clock_hint = "set date and time of this device; until then say on which day an exam was done, as examined_on";

// The newest row and the one before it, so that its hash is computed and not taken at its word.
[[nodiscard]] Result<void> read_back(ledger::LogStore& store, const model::ClinicId& clinic, const ledger::Head& head) {
  const std::uint64_t from = head.seq > 1 ? head.seq - 1 : head.seq;
  const auto rows = store.read(head.replica, from, head.seq, 512);
  if (!rows) {
    return rows.error();
  }
  wire::Refusal refusal = ledger::entry_fault("entry.gap", head.replica, head.seq, head.hash, "the newest entry");
  for (const ledger::Row& row : *rows) {
    if (row.seq != head.seq || row.hash != head.hash) {
      continue;
    }
    if (head.seq == 1) {
      const auto origin = ledger::origin_of(clinic, row);
      if (!origin) {
        return origin.error();
      }
      ledger::Joint start = ledger::start_of(*origin);
      const auto entry = ledger::verify_next(start, row);
      return entry ? Result<void>() : Result<void>(entry.error());
    }
    for (const ledger::Row& before : *rows) {
      if (before.seq + 1 != head.seq) {
        continue;
      }
      ledger::Joint joint{before.seq, before.hash};
      const auto entry = ledger::verify_next(joint, row);
      if (entry) {
        return {};
      }
      refusal = entry.error();
    }
  }
  return refusal;
}

[[nodiscard]] Result<void> read_back(Desk& desk) {
  const auto heads = desk.store().heads();
  if (!heads) {
    return heads.error();
  }
  for (const ledger::Head& head : heads->newest) {
    if (auto good = read_back(desk.store(), desk.clinic(), head); !good) {
      return good;
    }
  }
  return {};
}

[[nodiscard]] LedgerState state_of(Desk& desk, bool takes_writes) {
  if (desk.locked()) {
    return LedgerState::locked;
  }
  // Nothing is appended to a damaged chain, nor by whoever holds the printed code.
  return desk.log().damage().empty() && takes_writes && desk.examiner_key() != nullptr ? LedgerState::ready : LedgerState::read_only;
}

[[nodiscard]] ScopeWord word_of(Scope scope) {
  switch (scope) {
    case Scope::examiner:
      return ScopeWord::examiner;
    case Scope::kiosk:
      return ScopeWord::kiosk;
    case Scope::viewer:
      return ScopeWord::viewer;
    case Scope::sync:
      return ScopeWord::sync;
    case Scope::none:
      break;
  }
  return ScopeWord::none;
}

[[nodiscard]] std::optional<std::string_view> if_sent(const std::optional<wire::Name>& name) {
  return name ? std::optional<std::string_view>(name->text) : std::nullopt;
}

[[nodiscard]] Result<void> admit(Context& context, const SessionOpenParams& params, SessionOpenResult& result) {
  if (params.token && params.once) {
    return wire::Fault{"value.all_or_one", "", "token or once, not both"};
  }
  if (context.admission == nullptr) {
    // Never taken as if it had been checked: a caller would believe that it guards something.
    if (params.token || params.once) {
      return wire::Fault{"token.unwanted", params.token ? "/token" : "/once", "no token"};
    }
    return {};
  }
  const auto admitted = context.admission->enter(if_sent(params.token), if_sent(params.once));
  if (!admitted) {
    return admitted.error();
  }
  context.caller = admitted->caller;
  result.expires_at = admitted->expires_at;
  if (admitted->token) {
    result.token = wire::Name{*admitted->token};
  }
  return {};
}

[[nodiscard]] AnyCount count_of(std::size_t value) { return {static_cast<std::int64_t>(value)}; }

}  // namespace

Result<HealthResult> health_check(Context& context, const NoParams& /*params*/) {
  Desk& desk = *context.desk;
  HealthResult result;
  result.store.writes = desk.takes_writes();
  result.state = state_of(desk, result.store.writes);
  result.store.durability = static_cast<DurabilityWord>(desk.store().durability());
  if (!desk.locked()) {
    result.store.entries = count_of(desk.log().index().entry_count);
  }
  const auto read = read_back(desk);
  result.store.read = read.has_value();
  if (!read) {
    result.store.fault = model::Word{read.error().faults.front().code};
  }
  if (const auto& damage = desk.damage()) {
    result.store.damage = StoreDamage{count_of(damage->count), model::Word{damage->code}};
  }
  result.protocol = {{protocol_oldest}, {protocol_newest}};
  result.edition = desk.edition_ref().id();
  result.limits = {count_of(wire::message_bytes_max), count_of(wire::depth_max_default),  {batch_calls_max},
                   count_of(findings_a_call_max),          count_of(wire::Name::wire_rule.length_max), count_of(wire::Remark::wire_rule.length_max),
                   count_of(wire::LongText::wire_rule.length_max)};
  result.ledger_kind = static_cast<LedgerKindWord>(desk.kind());
  for (const std::string& label : desk.labels()) {
    result.examiners.push_back({label});
  }
  result.version.text = program_version;
  if (clock_is_suspect(desk.world().now())) {
    result.clock = {ClockHealth::suspect, wire::Remark{std::string(clock_hint)}};
  }
  if (context.network != nullptr) {
    result.network = *context.network;
  }
  return result;
}

Result<SessionOpenResult> session_open(Context& context, const SessionOpenParams& params) {
  Desk& desk = *context.desk;
  if (params.protocol && (params.protocol->steps < protocol_oldest || params.protocol->steps > protocol_newest)) {
    return wire::Fault("protocol.version", "/protocol", std::to_string(protocol_oldest) + " to " + std::to_string(protocol_newest),
                       std::to_string(params.protocol->steps))
        .with("oldest", std::to_string(protocol_oldest))
        .with("newest", std::to_string(protocol_newest));
  }
  if (params.examiner) {
    const auto labels = desk.labels();
    const bool by_id = model::from_base32(params.examiner->text).has_value();
    if (!by_id && std::find(labels.begin(), labels.end(), params.examiner->text) == labels.end()) {
      return wire::Fault{"examiner.unknown", "/examiner", "an examiner of this device"};
    }
  }
  SessionOpenResult result;
  if (auto good = admit(context, params, result); !good) {
    return good.error();
  }
  result.scope = word_of(context.caller.scope);
  result.locked = desk.locked();
  // Where nothing is told of changes there is nothing to go on from.
  if (context.admission != nullptr && !desk.locked() && context.caller.scope != Scope::sync) {
    result.cursor = change_cursor(desk);
  }
  result.protocol.steps = params.protocol ? params.protocol->steps : protocol_newest;
  result.exam = context.caller.exam;
  return result;
}

Result<SessionEndResult> session_end(Context& context, const NoParams& /*params*/) {
  if (context.admission != nullptr) {
    context.admission->leave();
  }
  return SessionEndResult{true};
}

Result<UnlockResult> ledger_unlock(Context& context, const UnlockParams& params) {
  Desk& desk = *context.desk;
  if (params.passphrase.text.empty()) {
    return wire::Fault{"value.empty", "/passphrase", "the passphrase or the printed code"};
  }
  const auto examiner = desk.unlock(params.examiner ? std::string_view(params.examiner->text) : std::string_view(), params.passphrase.text);
  if (!examiner) {
    return examiner.error();
  }
  UnlockResult result;
  result.opened_by = desk.examiner_key() != nullptr ? OpenedBy::passphrase : OpenedBy::printed_code;
  if (result.opened_by == OpenedBy::passphrase) {
    result.examiner = *examiner;
  }
  result.locks_at = desk.locks_at();
  return result;
}

Result<LockResult> ledger_lock(Context& context, const NoParams& /*params*/) {
  context.desk->lock();
  return LockResult{context.desk->locked()};
}

}  // namespace limbledger::service
