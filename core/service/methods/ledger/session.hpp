// health.check, session.open, session.end, ledger.unlock, ledger.lock. Health is answered by anybody at any time and says
// what was really done: the newest entry is read back and checked against its chain. A passphrase goes in and comes out
// nowhere, in no fault either. Limits are in bytes, levels, calls and code points.
#pragma once

#include "core/service/context.hpp"
#include "core/service/desk.hpp"
#include "core/wire/fault.hpp"
#include "core/wire/type.hpp"

#include <array>
#include <optional>
#include <vector>

namespace limbledger::service {

inline constexpr std::string_view program_version = "1.0";

struct NoParams {};
BOOST_DESCRIBE_STRUCT(NoParams, (), ())

enum class LedgerState { ready, locked, read_only };
BOOST_DESCRIBE_ENUM(LedgerState, ready, locked, read_only)
enum class DurabilityWord { memory, browser, disk };
BOOST_DESCRIBE_ENUM(DurabilityWord, memory, browser, disk)
enum class LedgerKindWord { clinic, demonstration, practice };
BOOST_DESCRIBE_ENUM(LedgerKindWord, clinic, demonstration, practice)

using AnyCount = wire::Count<0, 9007199254740991>;

struct StoreDamage {
  AnyCount count;
  model::Word code;  // of the first; ledger.verify lists them
};
BOOST_DESCRIBE_STRUCT(StoreDamage, (), (count, code))
struct StoreHealth {
  DurabilityWord durability{};
  std::optional<AnyCount> entries;  // only while unlocked
  bool read = false;                // the newest entry of each chain was read back and has the hash that its head names
  std::optional<model::Word> fault; // the code, when it was not
  bool writes = false;              // a trial write was taken, 10 seconds ago at most; never after a refused one
  std::optional<StoreDamage> damage;  // found when unlocking, or by the last ledger.verify since
};
BOOST_DESCRIBE_STRUCT(StoreHealth, (), (durability, entries, read, fault, writes, damage))
struct ProtocolRange {
  AnyCount oldest;
  AnyCount newest;
};
BOOST_DESCRIBE_STRUCT(ProtocolRange, (), (oldest, newest))
struct Limits {
  AnyCount message_bytes;
  AnyCount depth;
  AnyCount batch;
  AnyCount findings_a_call;
  AnyCount name;
  AnyCount remark;
  AnyCount text;
};
BOOST_DESCRIBE_STRUCT(Limits, (), (message_bytes, depth, batch, findings_a_call, name, remark, text))
// What every connection over HTTP and WebSocket is held to; times in ms. A refusal for one of them names it in its params.
struct NetworkLimits {
  AnyCount head_bytes;
  AnyCount connections;
  AnyCount connections_a_second;
  AnyCount messages_a_second;  // of one connection, and of all with one token
  AnyCount messages_at_once;   // before that
  AnyCount waiting_calls;      // of one WebSocket
  AnyCount tokens;
  AnyCount head_ms;
  AnyCount request_ms;
  AnyCount idle_ms;
  AnyCount session_ms;
  AnyCount socket_idle_ms;
};
BOOST_DESCRIBE_STRUCT(NetworkLimits, (), (head_bytes, connections, connections_a_second, messages_a_second, messages_at_once, waiting_calls, tokens, head_ms, request_ms,
                                          idle_ms, session_ms, socket_idle_ms))
constexpr auto notes(const NetworkLimits*) {
  return std::array{wire::Note{"messages_a_second", "of one connection, and of all connections with one token together"},
                    wire::Note{"messages_at_once", "so many before messages_a_second counts"},
                    wire::Note{"waiting_calls", "calls of changes.read that one WebSocket may leave waiting; one more is answered at once"},
                    wire::Note{"tokens", "made and not yet ended or expired"},
                    wire::Note{"head_ms", "for the head of a request; request_ms for all of it; idle_ms between two; session_ms from the handshake to session.open; socket_idle_ms without a sign of life"}};
}
enum class ClockHealth { plausible, suspect };
BOOST_DESCRIBE_ENUM(ClockHealth, plausible, suspect)
struct ClockSeen {
  ClockHealth state{};
  std::optional<wire::Remark> hint;  // what to do about a suspect one
};
BOOST_DESCRIBE_STRUCT(ClockSeen, (), (state, hint))
constexpr auto notes(const ClockSeen*) {
  return std::array{wire::Note{"state", "suspect: not set, before the release of the program, or more than 50 years after it; nothing is refused for it"}};
}
struct HealthResult {
  LedgerState state{};
  StoreHealth store;
  ProtocolRange protocol;
  model::EditionId edition;
  Limits limits;
  LedgerKindWord ledger_kind{};
  std::vector<wire::Name> examiners;  // labels of those who can unlock
  wire::Name version;                 // of the program
  ClockSeen clock;
  std::optional<NetworkLimits> network;
};
BOOST_DESCRIBE_STRUCT(HealthResult, (), (state, store, protocol, edition, limits, ledger_kind, examiners, version, clock, network))
// No scope, also while locked.
[[nodiscard]] Result<HealthResult> health_check(Context& context, const NoParams& params);

enum class ScopeWord { none, examiner, kiosk, viewer, sync };
BOOST_DESCRIBE_ENUM(ScopeWord, none, examiner, kiosk, viewer, sync)

struct SessionOpenParams {
  std::optional<wire::Name> token;  // one of the two, where the carrier needs a proof; refused where it takes none (stdio has --scope)
  std::optional<wire::Name> once;
  std::optional<wire::Name> client;
  std::optional<wire::Count<0, 9999>> protocol;
  std::optional<wire::Name> examiner;  // who means to unlock
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(SessionOpenParams, (), (token, once, client, protocol, examiner, language))
constexpr auto notes(const SessionOpenParams*) { return std::array{wire::Note{"language", fault_words_note}}; }
struct SessionOpenResult {
  ScopeWord scope{};
  std::optional<model::Instant> expires_at;
  bool locked = false;
  std::optional<wire::Remark> cursor;  // for changes.read; only while unlocked
  wire::Count<0, 9999> protocol;
  std::optional<wire::Name> token;  // traded for the one-time code; shown this once
  std::optional<model::ExamId> exam;  // of a kiosk: the one it fills, once it has one
};
BOOST_DESCRIBE_STRUCT(SessionOpenResult, (), (scope, expires_at, locked, cursor, protocol, token, exam))
// No scope, also while locked. Faults: protocol.version (with oldest and newest), examiner.unknown, value.all_or_one,
// token.unwanted and those of Admission. From then on the caller of this context is the one that was let in.
[[nodiscard]] Result<SessionOpenResult> session_open(Context& context, const SessionOpenParams& params);

struct SessionEndResult {
  bool ended = false;
};
BOOST_DESCRIBE_STRUCT(SessionEndResult, (), (ended))
// Scope A, also while locked. Ends the talk; the ledger stays as it is.
[[nodiscard]] Result<SessionEndResult> session_end(Context& context, const NoParams& params);

struct UnlockParams {
  std::optional<wire::Name> examiner;  // label or id; absent: whoever the passphrase opens for
  wire::Name passphrase;               // or the printed code
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(UnlockParams, (), (examiner, passphrase, language))
constexpr auto notes(const UnlockParams*) { return std::array{wire::Note{"language", fault_words_note}}; }
enum class OpenedBy { passphrase, printed_code };
BOOST_DESCRIBE_ENUM(OpenedBy, passphrase, printed_code)
struct UnlockResult {
  std::optional<model::ExaminerId> examiner;  // absent for the printed code: it reads, and records nothing
  model::Instant locks_at;                    // unless a record is read or written before
  OpenedBy opened_by{};
};
BOOST_DESCRIBE_STRUCT(UnlockResult, (), (examiner, locks_at, opened_by))
// All scopes but kiosk, also while locked: nobody tries passphrases in a waiting room. Faults: value.empty, ledger.passphrase, ledger.wait (wait_s), examiner.unknown.
[[nodiscard]] Result<UnlockResult> ledger_unlock(Context& context, const UnlockParams& params);

struct LockResult {
  bool locked = false;
};
BOOST_DESCRIBE_STRUCT(LockResult, (), (locked))
// The examiner alone, also while locked: who looks on, a kiosk or a copying program does not shut out those who work.
[[nodiscard]] Result<LockResult> ledger_lock(Context& context, const NoParams& params);

}  // namespace limbledger::service
