#include "core/service/desk.hpp"

#include "core/ledger/fold/records.hpp"
#include "core/ledger/keys/keyring.hpp"
#include "core/ledger/log/log.hpp"
#include "core/service/watched_store.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

constexpr std::string_view backoff_name = "unlock";
constexpr std::int64_t wait_ms_max = 60'000;
constexpr std::string_view program_name = "limbledger 1";

// Wrong passphrases since the last right one, and when the next may be tried; kept across restarts.
struct Backoff {
  std::uint32_t failures = 0;
  std::int64_t next_ms = 0;

  [[nodiscard]] ledger::Bytes to_bytes() const {
    ledger::ByteWriter out(12);
    out.u32(failures);
    out.u64(static_cast<std::uint64_t>(next_ms));
    return out.take();
  }
  [[nodiscard]] static Backoff from(const ledger::Meta& meta) {
    Backoff backoff;
    if (const auto found = meta.find(std::string(backoff_name)); found != meta.end() && found->second.size() == 12) {
      ledger::ByteReader in(found->second);
      backoff.failures = in.u32();
      backoff.next_ms = static_cast<std::int64_t>(in.u64());
    }
    return backoff;
  }
};

[[nodiscard]] ledger::Identity identity_of(const model::ClinicId& clinic, const ledger::Vault& vault) {
  ledger::Identity identity{clinic, ledger::SignKey(vault.sign_seed), {}, ledger::BlobKey(vault.shelf_key)};
  for (const auto& [epoch, secret] : vault.epoch_secrets) {
    identity.epochs.emplace(epoch, ledger::BoxPair(secret));
  }
  return identity;
}

[[nodiscard]] ledger::Purpose purpose_of(LedgerKind kind) {
  switch (kind) {
    case LedgerKind::demonstration:
      return ledger::Purpose::demonstration;
    case LedgerKind::practice:
      return ledger::Purpose::practice;
    case LedgerKind::clinic:
      break;
  }
  return ledger::Purpose::record;
}

}  // namespace

struct Desk::Inside {
  explicit Inside(ledger::LogStore& of) : store(of) {}

  WatchedStore store;
  ledger::World* world = nullptr;
  const reference::Edition* edition = nullptr;
  ledger::Keyring keyring;
  model::ClinicId clinic;
  ledger::Purpose purpose = ledger::Purpose::record;
  std::int64_t used_up_ms = 0;
  std::optional<ledger::Bytes> unkept_backoff;  // where the store could not take it
  bool asleep = false;  // locked by idleness
  bool shut = false;    // a flush failed
  std::function<void()> wake;
  std::function<Result<void>(const ledger::Bytes&)> keep_keyring;
  std::optional<FoundDamage> damage;
  std::map<std::string, std::string, std::less<>> answers;

  std::unique_ptr<ledger::Log> log;
  std::unique_ptr<ledger::Records> records;
  model::ExaminerId examiner;
  std::optional<ledger::SignKey> examiner_key;

  // Whether a secret may be tried now; fault ledger.wait at `path`.
  [[nodiscard]] Result<Backoff> may_try(std::string_view path) {
    const auto heads = store.heads();
    if (!heads) {
      return heads.error();
    }
    ledger::Meta kept = heads->meta;
    if (unkept_backoff) {
      kept[std::string(backoff_name)] = *unkept_backoff;
    }
    Backoff backoff = Backoff::from(kept);
    const std::int64_t now = world->now().wall_ms;
    if (backoff.failures > 0 && backoff.next_ms - now > wait_ms_max) {
      // The clock was set back: the wait begins anew, or it would last as long as the clock is wrong.
      backoff.next_ms = now + wait_ms_max;
      static_cast<void>(store.append({}, {}, {{std::string(backoff_name), backoff.to_bytes()}}));
    }
    const std::int64_t wait_ms = std::min(backoff.next_ms - now, wait_ms_max);
    if (backoff.failures > 0 && wait_ms > 0) {
      return wire::Fault("ledger.wait", std::string(path), "a try after the wait").with("wait_s", std::to_string((wait_ms + 999) / 1000));
    }
    return backoff;
  }
  // 1, 2, 4 ... 60 seconds; a store that cannot be written still answers.
  void note_wrong(Backoff backoff) {
    backoff.next_ms = world->now().wall_ms + std::min<std::int64_t>(1000LL << std::min<std::uint32_t>(backoff.failures, 6), wait_ms_max);
    ++backoff.failures;
    const bool stored = store.append({}, {}, {{std::string(backoff_name), backoff.to_bytes()}}).has_value();
    unkept_backoff = stored ? std::nullopt : std::optional(backoff.to_bytes());
  }
  void note_right(const Backoff& backoff) {
    if (backoff.failures > 0) {
      const bool stored = store.append({}, {}, {{std::string(backoff_name), {}}}).has_value();
      unkept_backoff = stored ? std::nullopt : std::optional<ledger::Bytes>(std::in_place);
    }
  }
};

Desk::Desk(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}

Desk::~Desk() { lock(); }

Result<std::unique_ptr<Desk>> Desk::open(ledger::LogStore& store, ledger::World& world, const reference::Edition& edition, ledger::Bytes keyring) {
  if (!ledger::prepare_sealing()) {
    return wire::Fault{"internal.failure", "", "the sealing library"};
  }
  auto inside = std::make_unique<Inside>(store);
  inside->world = &world;
  inside->edition = &edition;
  auto parsed = ledger::Keyring::from_bytes(keyring);
  if (!parsed) {
    return parsed.error();
  }
  inside->keyring = std::move(*parsed);
  const auto heads = store.heads();
  if (!heads) {
    return heads.error();
  }
  if (heads->newest.empty()) {
    return wire::Fault{"ledger.missing", "", "a ledger with its first entries"};
  }
  const auto first = store.read(heads->newest.front().replica, 1, 1, 1);
  if (!first) {
    return first.error();
  }
  if (first->empty()) {
    return wire::Fault{"entry.gap", "", "the first entry of the ledger"};
  }
  const auto intro = ledger::intro_of(first->front());
  if (!intro) {
    return intro.error();
  }
  inside->clinic = intro->clinic;
  inside->purpose = intro->purpose;
  return std::unique_ptr<Desk>(new Desk(std::move(inside)));
}

bool Desk::locked() const { return inside_->log == nullptr; }

Result<model::ExaminerId> Desk::unlock(std::string_view who, std::string_view passphrase) {
  Inside& in = *inside_;
  if (in.shut) {
    return wire::Fault{"ledger.read_only", "", "the program started again: its disk failed"};
  }
  const auto backoff = in.may_try("/passphrase");
  if (!backoff) {
    return backoff.error();
  }
  std::optional<model::ExaminerId> wanted;
  for (const ledger::SlotInfo& slot : in.keyring.slots()) {
    if (!who.empty() && slot.type == ledger::SlotType::passphrase && (slot.label == who || slot.examiner.to_text() == who)) {
      wanted = slot.examiner;
    }
  }
  if (!who.empty() && !wanted) {
    return wire::Fault{"examiner.unknown", "/examiner", "an examiner of this device"};
  }
  auto opened = in.keyring.open_passphrase(passphrase, wanted);
  if (!opened && opened.error().faults.front().code == "ledger.passphrase") {
    if (const auto code = ledger::RecoveryCode::from_text(passphrase)) {
      opened = in.keyring.open_code(*code);
    }
  }
  if (!opened) {
    if (opened.error().faults.front().code == "ledger.passphrase") {
      in.note_wrong(*backoff);
    }
    return opened.error();
  }
  in.note_right(*backoff);
  auto log = ledger::Log::open(in.store, *in.world, identity_of(in.clinic, opened->vault), &ledger::list_row);
  if (!log) {
    return log.error();
  }
  in.log = std::move(*log);
  in.records = std::make_unique<ledger::Records>(*in.log);
  in.examiner = opened->examiner;
  in.examiner_key.reset();
  if (opened->type == ledger::SlotType::passphrase) {
    in.examiner_key.emplace(opened->seed);
    // On a full disk the key stays unpublished until the next start; reading goes on.
    static_cast<void>(in.log->introduce_examiner(in.examiner, *in.examiner_key));
  }
  in.damage.reset();
  if (const auto& damage = in.log->damage(); !damage.empty()) {
    in.damage = FoundDamage{damage.size(), damage.front().code};
  }
  in.used_up_ms = in.world->now().up_ms;
  in.asleep = false;
  return in.examiner;
}

Result<AddedExaminer> Desk::add_examiner(std::string_view code, std::string_view label, std::string_view passphrase) {
  Inside& in = *inside_;
  const auto backoff = in.may_try("/code");
  if (!backoff) {
    return backoff.error();
  }
  const auto read = ledger::RecoveryCode::from_text(code);
  auto opened = read ? in.keyring.open_code(*read) : Result<ledger::Unlocked>(read.error());
  if (!opened) {
    wire::Refusal refusal = opened.error();
    if (refusal.faults.front().code == "ledger.passphrase") {
      in.note_wrong(*backoff);
      refusal.faults.front().path = "/code";
    }
    return refusal;
  }
  in.note_right(*backoff);
  ledger::SlotCost cost;  // as dear as the dearest here, which was measured on this device
  bool first = true;
  for (const ledger::SlotInfo& slot : in.keyring.slots()) {
    if (slot.type != ledger::SlotType::passphrase) {
      continue;
    }
    if (slot.label == label) {
      if (in.keyring.open_passphrase(passphrase, slot.examiner)) {
        return AddedExaminer{slot.examiner, true};
      }
      return wire::Fault{"examiner.taken", "/examiner", "a name that no examiner of this device has"};
    }
    cost = first || slot.cost.m_kib > cost.m_kib ? slot.cost : cost;
    first = false;
  }
  AddedExaminer added;
  model::RequestId drawn;
  in.world->random(drawn.bytes);
  added.examiner.bytes = ledger::object_of(in.clinic, ledger::ObjectType::examiner, drawn, 0).bytes;
  ledger::Secret32 seed;
  in.world->random(seed.room());
  ledger::Keyring keyring = in.keyring;
  if (auto slot = keyring.add_passphrase(opened->master, ledger::SlotType::passphrase, passphrase, cost, added.examiner, label, seed, *in.world); !slot) {
    return slot.error();
  }
  const ledger::Bytes file = keyring.to_bytes(*opened);
  if (!in.keep_keyring) {
    return wire::Fault{"ledger.read_only", "", "a keyring that can be written"};
  }
  if (auto kept = in.keep_keyring(file); !kept) {
    return kept.error();
  }
  in.keyring = std::move(keyring);
  return added;
}

void Desk::keeps_keyring(std::function<Result<void>(const ledger::Bytes&)> keep) { inside_->keep_keyring = std::move(keep); }

void Desk::shut() {
  inside_->shut = true;
  inside_->records.reset();
  inside_->log.reset();
  inside_->examiner_key.reset();
  inside_->examiner = {};
}

void Desk::lock() {
  if (!inside_) {
    return;
  }
  inside_->asleep = false;
  if (locked()) {
    return;
  }
  static_cast<void>(inside_->records->save());  // local and made anew when missing
  inside_->records.reset();
  inside_->log.reset();
  inside_->examiner_key.reset();
  inside_->examiner = {};
}

void Desk::lock_if_idle() {
  if (!locked() && inside_->world->now().up_ms - inside_->used_up_ms >= idle_ms) {
    lock();
    inside_->asleep = true;
  }
}

void Desk::touch() { inside_->used_up_ms = inside_->world->now().up_ms; }

void Desk::wakes_by(std::function<void()> wake) { inside_->wake = std::move(wake); }

void Desk::wake_if_asleep() {
  if (inside_->asleep && inside_->wake) {
    inside_->wake();
  }
}

model::Instant Desk::locks_at() {
  const ledger::Reading now = inside_->world->now();
  return {now.wall_ms + inside_->used_up_ms + idle_ms - now.up_ms};
}

LedgerKind Desk::kind() const {
  switch (inside_->purpose) {
    case ledger::Purpose::demonstration:
      return LedgerKind::demonstration;
    case ledger::Purpose::practice:
      return LedgerKind::practice;
    case ledger::Purpose::record:
      break;
  }
  return LedgerKind::clinic;
}

const model::ClinicId& Desk::clinic() const { return inside_->clinic; }

std::vector<std::string> Desk::labels() const {
  std::vector<std::string> labels;
  for (const ledger::SlotInfo& slot : inside_->keyring.slots()) {
    if (slot.type == ledger::SlotType::passphrase) {
      labels.push_back(slot.label);
    }
  }
  return labels;
}

std::string Desk::label_of(const model::ExaminerId& examiner) const {
  for (const ledger::SlotInfo& slot : inside_->keyring.slots()) {
    if (slot.type == ledger::SlotType::passphrase && slot.examiner == examiner) {
      return slot.label;
    }
  }
  return {};
}

ledger::LogStore& Desk::store() { return inside_->store; }

bool Desk::takes_writes() { return inside_->store.takes_writes(inside_->world->now().up_ms); }

const std::optional<FoundDamage>& Desk::damage() const { return inside_->damage; }

void Desk::note_verified(std::size_t count, std::string_view first_code) {
  if (count != 0) {
    inside_->damage = FoundDamage{count, std::string(first_code)};
  } else if (locked() || inside_->log->damage().empty()) {
    inside_->damage.reset();
  }
}

ledger::World& Desk::world() { return *inside_->world; }
const reference::Edition& Desk::edition() const { return *inside_->edition; }
std::map<std::string, std::string, std::less<>>& Desk::answers() { return inside_->answers; }
ledger::Log& Desk::log() { return *inside_->log; }
ledger::Records& Desk::records() { return *inside_->records; }
const model::ExaminerId& Desk::examiner() const { return inside_->examiner; }
const ledger::SignKey* Desk::examiner_key() const { return inside_->examiner_key ? &*inside_->examiner_key : nullptr; }

bool spend_passphrase(std::uint32_t argon_passes, std::uint32_t argon_kib) {
  return ledger::prepare_sealing() && ledger::spend({argon_passes, argon_kib});
}

Result<MadeLedger> make_ledger(ledger::LogStore& store, ledger::World& world, const NewLedger& wanted) {
  const auto heads = store.heads();
  if (!heads) {
    return heads.error();
  }
  if (!heads->newest.empty()) {
    return wire::Fault{"ledger.in_use", "", "an empty store"};
  }
  if (!ledger::prepare_sealing()) {
    return wire::Fault{"internal.failure", "", "the sealing library"};
  }
  const ledger::RecoveryCode code = ledger::RecoveryCode::draw(world);
  const ledger::SignKey root(code.root_seed());
  const model::ClinicId clinic = ledger::clinic_of(root.pub());
  const ledger::Vault vault = ledger::Vault::draw(world);
  const ledger::Identity identity = identity_of(clinic, vault);

  ledger::Intro intro;
  intro.storage = ledger::storage_of(wanted.durability.value_or(store.durability()));
  intro.purpose = purpose_of(wanted.kind);
  intro.clinic = clinic;
  intro.sign_pub = identity.device_key.pub();
  intro.box_pub = ledger::BoxPair(vault.box_secret).pub();
  world.random(intro.device.bytes);
  intro.program = program_name;
  ledger::Row row;
  row.body = intro.to_bytes();
  ledger::Header header;
  header.kind = ledger::Kind::intro;
  header.flags = ledger::flag_last_of_commit;
  header.body_length = static_cast<std::uint32_t>(row.body.size());
  header.stamp = ledger::HybridClock(ledger::release_ms).next(world.now());
  row.header = header.to_bytes();
  ledger::Joint joint = ledger::start_of({clinic, identity.replica(), identity.device_key.pub()});
  ledger::link(identity.replica(), joint, row);
  const ledger::Head head = ledger::sign_head(identity.device_key, clinic, identity.replica(), joint.seq, joint.hash);
  if (auto stored = store.append({&row, 1}, {&head, 1}, {}); !stored) {
    return stored.error();
  }

  MadeLedger made;
  made.recovery_code = code.to_text();
  made.clinic = clinic;
  model::RequestId request;
  world.random(request.bytes);
  made.examiner.bytes = ledger::object_of(clinic, ledger::ObjectType::examiner, request, 0).bytes;
  ledger::Secret32 examiner_seed;
  world.random(examiner_seed.room());
  ledger::LockedSecret32 master;
  world.random(master.room());
  ledger::Keyring keyring;
  const ledger::SlotCost cost{wanted.argon_passes, wanted.argon_kib};
  if (auto added = keyring.add_passphrase(master, ledger::SlotType::passphrase, wanted.passphrase, cost, made.examiner, wanted.examiner_label,
                                          examiner_seed, world);
      !added) {
    return added.error();
  }
  if (auto added = keyring.add_code(master, code, world); !added) {
    return added.error();
  }
  ledger::Unlocked unlocked;
  unlocked.vault = vault;
  unlocked.master = master;
  made.keyring = keyring.to_bytes(unlocked);

  const auto log = ledger::Log::open(store, world, identity);
  if (!log) {
    return log.error();
  }
  if (auto introduced = (*log)->introduce_examiner(made.examiner, ledger::SignKey(examiner_seed)); !introduced) {
    return introduced.error();
  }
  return made;
}

}  // namespace limbledger::service
