#include "core/service/exchange/enrolment.hpp"

#include "core/ledger/log/log.hpp"
#include "core/ledger/trust/enrol.hpp"
#include "core/service/desk_identity.hpp"
#include "core/service/exchange/door_inside.hpp"

#include <utility>

namespace limbledger::service {

struct Admitting::Inside {
  Inside(ledger::Member member, Desk& of, const ledger::SignKey& root_key, ledger::Purpose purpose, std::uint32_t newest, const ledger::Secret32& secret)
      : desk(of), root(root_key), enroller(member, root.pub(), purpose), epoch(newest), epoch_secret(secret), clinic(member.clinic) {}

  Desk& desk;
  ledger::SignKey root;
  ledger::Enroller enroller;
  std::uint32_t epoch;
  ledger::LockedSecret32 epoch_secret;
  model::ClinicId clinic;
  bool has_card = false;
};

Admitting::Admitting(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}

Admitting::~Admitting() = default;

Result<std::unique_ptr<Admitting>> Admitting::begin(ExchangeDoor& door, std::string_view code) {
  Desk& desk = door.inside_->desk;
  if (desk.locked() || desk.log().identity().epochs.empty()) {
    return wire::Fault{"ledger.locked", ""};
  }
  const auto read = ledger::RecoveryCode::from_text(code);
  if (!read) {
    wire::Refusal refusal = read.error();
    refusal.faults.front().path = "/code";
    return refusal;
  }
  const ledger::SignKey root(read->root_seed());
  const ledger::Member member = door.inside_->member();
  if (ledger::clinic_of(root.pub()) != member.clinic) {
    return wire::Fault{"ledger.passphrase", "/code", "the recovery code of this clinic"};
  }
  const auto own = ledger::stored_intro(member.store, member.clinic, member.replica());
  if (!own || own->purpose == ledger::Purpose::practice) {
    return wire::Fault{own ? "exchange.purpose" : "ledger.none", "", "a ledger that is not for practice"};
  }
  const auto newest = desk.log().identity().epochs.rbegin();
  return std::unique_ptr<Admitting>(new Admitting(std::make_unique<Inside>(member, desk, root, own->purpose, newest->first, newest->second.secret())));
}

Result<ledger::Bytes> Admitting::answer(std::span<const std::uint8_t> message) {
  if (!inside_->has_card) {
    auto card = inside_->enroller.answer(message);
    inside_->has_card = card.has_value();
    return card;
  }
  if (auto looked = inside_->enroller.look(message); !looked) {
    return looked.error();
  }
  return ledger::Bytes();
}

std::string Admitting::digits() const { return inside_->enroller.digits(); }

Result<ledger::Bytes> Admitting::welcome() {
  auto out = inside_->enroller.welcome(inside_->root, ledger::roles::write, inside_->epoch, inside_->epoch_secret);
  auto read = inside_->desk.catch_up();
  return !out || read ? std::move(out) : Result<ledger::Bytes>(read.error());
}

model::ReplicaId Admitting::newcomer() const { return ledger::replica_of(inside_->clinic, inside_->enroller.newcomer().sign_pub); }

struct Joining::Inside {
  Inside(ledger::World& of, ledger::Vault drawn) : world(of), vault(std::move(drawn)), newcomer(vault, world) {}

  ledger::World& world;
  ledger::Vault vault;
  ledger::Newcomer newcomer;
};

Joining::Joining(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}

Joining::~Joining() = default;

Result<std::unique_ptr<Joining>> Joining::begin(ledger::World& world) {
  if (!ledger::prepare_sealing()) {
    return wire::Fault{"internal.failure", "", "the sealing library"};
  }
  return std::unique_ptr<Joining>(new Joining(std::make_unique<Inside>(world, ledger::Vault::draw(world))));
}

ledger::Bytes Joining::commit() const { return inside_->newcomer.commit(); }
Result<ledger::Bytes> Joining::show(std::span<const std::uint8_t> clinic_card) { return inside_->newcomer.show(clinic_card); }
std::string Joining::digits() const { return inside_->newcomer.digits(); }
const DeviceKey& Joining::clinic_device_key() const { return inside_->newcomer.clinic_card().sign_pub; }
bool Joining::is_demonstration() const { return inside_->newcomer.clinic_card().purpose == ledger::Purpose::demonstration; }

Result<MadeLedger> Joining::finish(ledger::LogStore& store, std::span<const std::uint8_t> welcome, const NewLedger& wanted) {
  const auto secret = inside_->newcomer.accept(welcome);
  if (!secret) {
    return secret.error();
  }
  ledger::Vault& vault = inside_->vault;
  vault.epoch_secrets.clear();
  vault.epoch_secrets.emplace(inside_->newcomer.welcome().epoch, ledger::LockedSecret32(*secret));
  const model::ClinicId clinic = inside_->newcomer.clinic();
  const ledger::Identity identity = identity_of(clinic, vault);
  if (auto begun = ledger::join(store, inside_->world, inside_->newcomer, identity.device_key, ledger::BoxPair(vault.box_secret).pub(), ledger_program); !begun) {
    return begun.error();
  }
  MadeLedger made;
  made.clinic = clinic;
  model::RequestId request;
  inside_->world.random(request.bytes);
  made.examiner.bytes = ledger::object_of(clinic, ledger::ObjectType::examiner, request, 0).bytes;
  ledger::Secret32 examiner_seed;
  inside_->world.random(examiner_seed.room());
  ledger::Unlocked unlocked;
  unlocked.vault = vault;
  inside_->world.random(unlocked.master.room());
  ledger::Keyring keyring;
  if (auto added = keyring.add_passphrase(unlocked.master, ledger::SlotType::passphrase, wanted.passphrase, {wanted.argon_passes, wanted.argon_kib}, made.examiner,
                                          wanted.examiner_label, examiner_seed, inside_->world);
      !added) {
    return added.error();
  }
  made.keyring = keyring.to_bytes(unlocked);
  const auto log = ledger::Log::open(store, inside_->world, identity);
  if (!log) {
    return log.error();
  }
  if (auto introduced = (*log)->introduce_examiner(made.examiner, ledger::SignKey(examiner_seed)); !introduced) {
    return introduced.error();
  }
  return made;
}

}  // namespace limbledger::service
