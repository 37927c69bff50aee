#include "core/service/desk.hpp"

#include "core/ledger/fold/records.hpp"
#include "core/ledger/keys/keyring.hpp"
#include "core/ledger/log/log.hpp"
#include "core/reference/edition.hpp"
#include "core/service/desk_identity.hpp"
#include "core/service/kept_register.hpp"
#include "core/service/once_raised.hpp"
#include "core/service/passphrase_wait.hpp"
#include "core/service/watched_store.hpp"
#include "core/wire/write.hpp"

#include <algorithm>
#include <set>
#include <utility>

namespace limbledger::service {

struct Desk::Inside {
  explicit Inside(ledger::LogStore& of) : store(of), wait(store) {}

  WatchedStore store;
  PassphraseWait wait;
  ledger::World* world = nullptr;
  reference::EditionRef edition;
  ledger::Keyring keyring;
  model::ClinicId clinic;
  ledger::Purpose purpose = ledger::Purpose::record;
  std::int64_t used_up_ms = 0;
  bool asleep = false;  // locked by idleness
  bool shut = false;    // a flush failed
  std::function<void()> wake;
  std::function<void()> tell_lock;
  std::function<Result<void>(const ledger::Bytes&)> keep_keyring;
  std::optional<FoundDamage> damage;
  std::map<std::string, std::string, std::less<>> answers;

  std::unique_ptr<ledger::Log> log;
  std::unique_ptr<ledger::Records> records;
  std::function<std::vector<std::optional<model::ExamId>>()> kiosks;
  std::unique_ptr<ledger::Log> kiosk_log;  // while locked
  std::unique_ptr<ledger::Records> kiosk_records;
  std::map<model::ExamId, OnceRaised> once_raised;
  KeptRegister kept_register;
  model::ExaminerId examiner;
  std::optional<ledger::SignKey> examiner_key;

  [[nodiscard]] std::unique_ptr<ledger::Records> records_of(ledger::Log& of) const {
    return std::make_unique<ledger::Records>(of, [edition = edition](const model::ItemId& id) {
      const model::Item* item = edition->item(id);
      return item != nullptr && item->protected_.value_or(false);
    });
  }
  void told_of_lock() const {
    if (tell_lock) {
      tell_lock();
    }
  }
  void forget_ended_kiosks();
  void say_name(const std::string& label);
};

namespace {

[[nodiscard]] std::set<model::ObjectId> objects_of(const std::vector<std::optional<model::ExamId>>& exams) {
  std::set<model::ObjectId> objects;
  for (const auto& exam : exams) {
    if (exam) {
      objects.insert(model::as_object(*exam));
    }
  }
  return objects;
}

}  // namespace

void Desk::Inside::forget_ended_kiosks() {
  const auto live = kiosks ? kiosks() : std::vector<std::optional<model::ExamId>>{};
  if (live.empty()) {
    kiosk_records.reset();
    kiosk_log.reset();
    return;
  }
  const std::set<model::ObjectId> kept = objects_of(live);
  const auto& objects = kiosk_log->index().objects;
  if (std::any_of(objects.begin(), objects.end(), [&](const auto& one) { return !kept.contains(one.first); })) {
    kiosk_log->keep_only(kept);
    kiosk_records = records_of(*kiosk_log);
  }
}

// The keyring stays on this device; without a word in the ledger the others would know a signature by its id alone. Said once: a later
// word is the examiner's own (examiner.amend).
void Desk::Inside::say_name(const std::string& label) {
  const auto known = records->examiners();
  if (!known || (*known)->contains(examiner) || label.empty()) {
    return;
  }
  ledger::NewOperation operation;
  operation.object = log->clinic_object();
  operation.type = ledger::ObjectType::clinic;
  operation.op = "examiner";
  world->random(operation.request.bytes);
  operation.by = examiner;
  operation.body_json = wire::write(model::ExaminerNameBody{{label}, std::nullopt});
  operation.sign = true;
  if (const auto said = log->append({&operation, 1}, edition.id(), &*examiner_key)) {
    records->changed(*said);
  }
}

Desk::Desk(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}

Desk::~Desk() { lock(); }

Result<std::unique_ptr<Desk>> Desk::open(ledger::LogStore& store, ledger::World& world, reference::EditionRef edition, ledger::Bytes keyring) {
  if (!ledger::prepare_sealing()) {
    return wire::Fault{"internal.failure", "", "the sealing library"};
  }
  auto inside = std::make_unique<Inside>(store);
  inside->world = &world;
  inside->edition = edition;
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
  const auto backoff = in.wait.may_try(in.world->now(), "/passphrase");
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
      in.wait.note_wrong(in.world->now(), *backoff);
    }
    return opened.error();
  }
  in.wait.note_right(*backoff);
  auto log = ledger::Log::open(in.store, *in.world, identity_of(in.clinic, opened->vault), &ledger::list_row);
  if (!log) {
    return log.error();
  }
  in.log = std::move(*log);
  in.records = in.records_of(*in.log);
  in.kiosk_records.reset();
  in.kiosk_log.reset();
  in.examiner = opened->examiner;
  in.examiner_key.reset();
  if (opened->type == ledger::SlotType::passphrase) {
    in.examiner_key.emplace(opened->seed);
    // On a full disk the key stays unpublished until the next start; reading goes on.
    if (in.log->introduce_examiner(in.examiner, *in.examiner_key)) {
      in.say_name(label_of(in.examiner));
    }
  }
  in.damage.reset();
  if (const auto& damage = in.log->damage(); !damage.empty()) {
    in.damage = FoundDamage{damage.size(), damage.front().code};
  }
  in.used_up_ms = in.world->now().up_ms;
  in.asleep = false;
  in.told_of_lock();
  return in.examiner;
}

Result<AddedExaminer> Desk::add_examiner(std::string_view code, std::string_view label, std::string_view passphrase) {
  Inside& in = *inside_;
  const auto backoff = in.wait.may_try(in.world->now(), "/code");
  if (!backoff) {
    return backoff.error();
  }
  const auto read = ledger::RecoveryCode::from_text(code);
  auto opened = read ? in.keyring.open_code(*read) : Result<ledger::Unlocked>(read.error());
  if (!opened) {
    wire::Refusal refusal = opened.error();
    if (refusal.faults.front().code == "ledger.passphrase") {
      in.wait.note_wrong(in.world->now(), *backoff);
      refusal.faults.front().path = "/code";
    }
    return refusal;
  }
  in.wait.note_right(*backoff);
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
  inside_->kiosk_records.reset();
  inside_->kiosk_log.reset();
  inside_->once_raised.clear();
  inside_->kept_register = {};
  inside_->records.reset();
  inside_->log.reset();
  inside_->examiner_key.reset();
  inside_->examiner = {};
  inside_->told_of_lock();
}

bool Desk::is_shut() const { return inside_->shut; }

Result<void> Desk::flush() {
  auto done = inside_->store.flush();
  if (!done) {
    shut();
  }
  return done;
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
  // Who unlocked it with the printed code is nobody, and gives no kiosk leave to write.
  if (inside_->kiosks && inside_->examiner_key) {
    if (const auto live = inside_->kiosks(); !live.empty()) {
      inside_->kiosk_log = inside_->log->narrowed(objects_of(live));
      inside_->kiosk_records = inside_->records_of(*inside_->kiosk_log);
    }
  }
  inside_->once_raised.clear();
  inside_->kept_register = {};
  inside_->records.reset();
  inside_->log.reset();
  inside_->examiner_key.reset();
  inside_->examiner = {};
  inside_->told_of_lock();
}

void Desk::lock_tells(std::function<void()> tell) { inside_->tell_lock = std::move(tell); }

void Desk::kiosks_by(std::function<std::vector<std::optional<model::ExamId>>()> tell) { inside_->kiosks = std::move(tell); }

bool Desk::keeps_kiosks() const { return locked() && inside_->kiosk_log != nullptr; }

Desk::KioskTurn::KioskTurn(Desk& desk) : desk_(desk) {
  std::swap(desk.inside_->log, desk.inside_->kiosk_log);
  std::swap(desk.inside_->records, desk.inside_->kiosk_records);
}

// After a flush that failed both are gone.
Desk::KioskTurn::~KioskTurn() {
  std::swap(desk_.inside_->log, desk_.inside_->kiosk_log);
  std::swap(desk_.inside_->records, desk_.inside_->kiosk_records);
}

void Desk::lock_if_idle() {
  if (keeps_kiosks()) {
    inside_->forget_ended_kiosks();
  }
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

Result<void> Desk::catch_up() {
  Inside& in = *inside_;
  const auto read_on = [](ledger::Log* log, ledger::Records* records) -> Result<void> {
    if (log == nullptr) {
      return {};
    }
    const auto changed = log->catch_up();
    if (!changed) {
      return changed.error();
    }
    records->forget(*changed);
    return {};
  };
  auto done = read_on(in.log.get(), in.records.get());
  return done ? read_on(in.kiosk_log.get(), in.kiosk_records.get()) : done;
}

ledger::World& Desk::world() { return *inside_->world; }
const reference::EditionRef& Desk::edition_ref() const { return inside_->edition; }
std::map<std::string, std::string, std::less<>>& Desk::answers() { return inside_->answers; }
ledger::Log& Desk::log() { return *inside_->log; }
ledger::Records& Desk::records() { return *inside_->records; }
KeptRegister& Desk::kept_register() { return inside_->kept_register; }

std::map<model::ExamId, OnceRaised>& Desk::once_raised() { return inside_->once_raised; }
const model::ExaminerId& Desk::examiner() const { return inside_->examiner; }
const ledger::SignKey* Desk::examiner_key() const { return inside_->examiner_key ? &*inside_->examiner_key : nullptr; }

}  // namespace limbledger::service
