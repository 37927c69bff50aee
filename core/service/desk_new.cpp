// Makes a ledger: its first entries, its keyring and the printed code.
#include "core/service/desk.hpp"
#include "core/service/desk_identity.hpp"

namespace limbledger::service {

namespace {

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
  intro.program = ledger_program;
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
