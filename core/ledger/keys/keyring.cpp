#include "core/ledger/keys/keyring.hpp"

#include <sodium/crypto_aead_xchacha20poly1305.h>
#include <sodium/crypto_generichash.h>
#include <sodium/crypto_kdf.h>
#include <sodium/crypto_pwhash_argon2id.h>

#include <utility>

namespace limbledger::ledger {

namespace {

constexpr std::string_view magic = "LIMBKEY1";
constexpr std::size_t front_size = 16;
constexpr std::size_t vault_nonce_size = 24;
constexpr std::size_t vault_mac_size = 16;
constexpr std::size_t label_size = 24;

// Offsets inside a slot.
constexpr std::size_t at_t = 4;
constexpr std::size_t at_m_kib = 8;
constexpr std::size_t at_salt = 12;
constexpr std::size_t at_examiner = 28;
constexpr std::size_t at_label = 44;
constexpr std::size_t at_nonce = 68;
constexpr std::size_t at_sealed = 92;
constexpr std::size_t at_end = at_sealed + 80;
static_assert(at_end + 4 == slot_size);

wire::Fault damaged(std::string expected) { return wire::Fault("keyring.damaged", "", std::move(expected)); }

wire::Fault wrong_passphrase() { return wire::Fault("ledger.passphrase", "", "a passphrase or code that opens a slot"); }

Result<Secret32> passphrase_key(std::string_view passphrase, const SlotCost& cost, View salt) {
  Secret32 out;
  require(salt.size() == crypto_pwhash_argon2id_SALTBYTES);
  if (crypto_pwhash_argon2id(out.data(), out.size(), passphrase.data(), passphrase.size(), salt.data(), cost.t,
                             std::size_t{cost.m_kib} * 1024, crypto_pwhash_argon2id_ALG_ARGON2ID13) != 0) {
    return wire::Fault("internal.memory", "", std::to_string(cost.m_kib) + " KiB for the passphrase");
  }
  return out;
}

// The nonce is a keyed hash of what is sealed, so that no two contents share one under the same key.
std::array<std::uint8_t, vault_nonce_size> nonce_of(const Secret32& key, View aad, View plaintext) {
  Secret32 nonce_key;
  require(crypto_kdf_derive_from_key(nonce_key.data(), nonce_key.size(), 1, "limbring", key.data()) == 0);
  std::array<std::uint8_t, vault_nonce_size> out{};
  crypto_generichash_state state;
  require(crypto_generichash_init(&state, nonce_key.data(), nonce_key.size(), out.size()) == 0);
  crypto_generichash_update(&state, aad.data(), aad.size());
  crypto_generichash_update(&state, plaintext.data(), plaintext.size());
  crypto_generichash_final(&state, out.data(), out.size());
  return out;
}

void encrypt(const Secret32& key, View aad, View nonce, View plaintext, std::uint8_t* out) {
  crypto_aead_xchacha20poly1305_ietf_encrypt(out, nullptr, plaintext.data(), plaintext.size(), aad.data(), aad.size(),
                                             nullptr, nonce.data(), key.data());
}

bool decrypt(const Secret32& key, View aad, View nonce, View sealed, std::uint8_t* out) {
  return crypto_aead_xchacha20poly1305_ietf_decrypt(out, nullptr, nullptr, sealed.data(), sealed.size(), aad.data(),
                                                    aad.size(), nonce.data(), key.data()) == 0;
}

void write_vault(const Vault& vault, Bytes& out) {
  const auto put = [&out](View bytes) { out.insert(out.end(), bytes.begin(), bytes.end()); };
  put(vault.sign_seed.view());
  put(vault.box_secret.view());
  for (const auto& [epoch, secret] : vault.epoch_secrets) {
    std::array<std::uint8_t, 4> number{};
    put_integer(number.data(), epoch, number.size());
    put(number);
    put(secret.view());
  }
  put(vault.shelf_key.view());
}

std::optional<Vault> read_vault(View bytes) {
  ByteReader in(bytes);
  Vault out;
  out.sign_seed = Secret32(in.raw(32));
  out.box_secret = Secret32(in.raw(32));
  while (in.left() > 32) {
    const std::uint32_t epoch = in.u32();
    const View secret = in.raw(32);
    if (secret.size() != 32 || (!out.epoch_secrets.empty() && epoch <= out.epoch_secrets.rbegin()->first)) {
      return std::nullopt;
    }
    out.epoch_secrets.emplace(epoch, Secret32(secret));
  }
  const View shelf = in.raw(32);
  if (!in.done()) {
    return std::nullopt;
  }
  out.shelf_key = Secret32(shelf);
  return out;
}

std::size_t vault_size(std::size_t epochs) { return 96 + 36 * epochs; }

SlotCost cost_of(const std::array<std::uint8_t, slot_size>& slot) {
  return {static_cast<std::uint32_t>(get_integer(slot.data() + at_t, 4)),
          static_cast<std::uint32_t>(get_integer(slot.data() + at_m_kib, 4))};
}

model::ExaminerId examiner_of(const std::array<std::uint8_t, slot_size>& slot) {
  model::ExaminerId out;
  std::copy(slot.begin() + at_examiner, slot.begin() + at_label, out.bytes.begin());
  return out;
}

View part(const std::array<std::uint8_t, slot_size>& slot, std::size_t from, std::size_t to) {
  return View(slot).subspan(from, to - from);
}

// Nothing, or what is wrong with the plain fields of a slot.
std::string_view slot_problem(const std::array<std::uint8_t, slot_size>& slot) {
  if (!is_zero(part(slot, 1, at_t)) || !is_zero(part(slot, at_end, slot_size))) {
    return "zeros between the fields of a slot";
  }
  const SlotCost cost = cost_of(slot);
  const auto type = static_cast<SlotType>(slot[0]);
  if (type == SlotType::code) {
    return cost == SlotCost{0, 0} ? "" : "no derivation before a printed code";
  }
  // Slots of other types are kept as they are; nothing is derived for them.
  const bool derives = type == SlotType::passphrase || type == SlotType::admin;
  if (!derives) {
    return "";
  }
  if (cost.t < 1 || cost.t > slot_t_max || cost.m_kib < 8 || cost.m_kib > slot_m_kib_max) {
    return "slots that ask for at most 1 GiB and 32 passes";
  }
  return "";
}

}  // namespace

bool spend(const SlotCost& cost) {
  const std::array<std::uint8_t, crypto_pwhash_argon2id_SALTBYTES> salt{};
  return passphrase_key("calibration", cost, salt).has_value();
}

Vault Vault::draw(World& world) {
  Vault out;
  world.random(out.sign_seed.room());
  world.random(out.box_secret.room());
  world.random(out.shelf_key.room());
  world.random(out.epoch_secrets[1].room());
  return out;
}

Result<Keyring> Keyring::from_bytes(View file) {
  ByteReader in(file);
  const View start = in.raw(magic.size());
  if (!std::equal(start.begin(), start.end(), as_bytes(magic).begin(), as_bytes(magic).end())) {
    return damaged("a keyring file");
  }
  Keyring out;
  out.generation_ = in.u32();
  const std::size_t count = in.u8();
  if (!is_zero(in.raw(3)) || count > slot_count_max) {
    return damaged("a keyring of at most 64 slots");
  }
  for (std::size_t i = 0; i < count; ++i) {
    out.slots_.push_back(in.array<slot_size>());
    const std::string_view problem = in.ran_short() ? "a whole file" : slot_problem(out.slots_.back());
    if (!problem.empty()) {
      return damaged(std::string(problem)).with("slot", std::to_string(i));
    }
  }
  out.vault_nonce_ = in.array<vault_nonce_size>();
  const std::uint32_t size = in.u32();
  const View sealed = in.raw(size);
  if (!in.done() || size < vault_size(0) + vault_mac_size || (size - vault_size(0) - vault_mac_size) % 36 != 0) {
    return damaged("a whole file");
  }
  out.vault_.assign(sealed.begin(), sealed.end());
  return out;
}

Bytes Keyring::front(std::size_t size, View nonce) const {
  ByteWriter out(front_size + slots_.size() * slot_size + vault_nonce_size + 4 + size);
  out.raw(as_bytes(magic)).u32(generation_).u8(static_cast<std::uint8_t>(slots_.size())).zeros(3);
  for (const Slot& slot : slots_) {
    out.raw(slot);
  }
  return out.raw(nonce).u32(static_cast<std::uint32_t>(size)).take();
}

Bytes Keyring::to_bytes(const Unlocked& unlocked) {
  generation_ += 1;
  const std::size_t plain_size = vault_size(unlocked.vault.epoch_secrets.size());
  WipedBytes plain(0);
  plain.bytes.reserve(plain_size);
  write_vault(unlocked.vault, plain.bytes);

  const std::size_t sealed_size = plain_size + vault_mac_size;
  const std::array<std::uint8_t, vault_nonce_size> no_nonce{};
  vault_nonce_ = nonce_of(unlocked.master, front(sealed_size, no_nonce), plain.bytes);
  Bytes out = front(sealed_size, vault_nonce_);
  vault_.assign(sealed_size, 0);
  encrypt(unlocked.master, out, vault_nonce_, plain.bytes, vault_.data());
  out.insert(out.end(), vault_.begin(), vault_.end());
  return out;
}

std::vector<SlotInfo> Keyring::slots() const {
  std::vector<SlotInfo> out;
  for (const Slot& slot : slots_) {
    SlotInfo info;
    info.type = static_cast<SlotType>(slot[0]);
    info.cost = cost_of(slot);
    info.examiner = examiner_of(slot);
    for (const std::uint8_t byte : part(slot, at_label, at_nonce)) {
      if (byte == 0) {
        break;
      }
      info.label += static_cast<char>(byte);
    }
    out.push_back(std::move(info));
  }
  return out;
}

Result<Unlocked> Keyring::open_with(const Secret32& slot_key, const Slot& slot) const {
  Secret<64> opened;
  if (!decrypt(slot_key, part(slot, 0, at_sealed), part(slot, at_nonce, at_sealed), part(slot, at_sealed, at_end),
               opened.data())) {
    return wrong_passphrase();
  }
  Unlocked out;
  out.master = Secret32(opened.view().first(32));
  out.seed = Secret32(opened.view().subspan(32));
  out.type = static_cast<SlotType>(slot[0]);
  out.examiner = examiner_of(slot);

  WipedBytes plain(vault_.size() - vault_mac_size);
  const Bytes before = front(vault_.size(), vault_nonce_);
  if (!decrypt(out.master, before, vault_nonce_, vault_, plain.bytes.data())) {
    return damaged("a vault that belongs to these slots");
  }
  auto vault = read_vault(plain.bytes);
  if (!vault) {
    return damaged("a vault of this format");
  }
  out.vault = std::move(*vault);
  return out;
}

Result<Unlocked> Keyring::open_slots(std::string_view passphrase, SlotType type,
                                     const std::optional<model::ExaminerId>& examiner) const {
  for (const Slot& slot : slots_) {
    if (static_cast<SlotType>(slot[0]) != type || (examiner && examiner_of(slot) != *examiner)) {
      continue;
    }
    const auto slot_key = passphrase_key(passphrase, cost_of(slot), part(slot, at_salt, at_examiner));
    if (!slot_key) {
      return slot_key.error();
    }
    auto out = open_with(*slot_key, slot);
    if (out || out.error().faults.front().code != "ledger.passphrase") {
      return out;
    }
  }
  return wrong_passphrase();
}

Result<Unlocked> Keyring::open_passphrase(std::string_view passphrase,
                                          const std::optional<model::ExaminerId>& examiner) const {
  return open_slots(passphrase, SlotType::passphrase, examiner);
}

Result<Unlocked> Keyring::open_admin(std::string_view passphrase) const {
  return open_slots(passphrase, SlotType::admin, std::nullopt);
}

Result<Unlocked> Keyring::open_code(const RecoveryCode& code) const {
  for (const Slot& slot : slots_) {
    if (static_cast<SlotType>(slot[0]) != SlotType::code) {
      continue;
    }
    auto out = open_with(code.slot_key(part(slot, at_salt, at_examiner)), slot);
    if (out || out.error().faults.front().code != "ledger.passphrase") {
      return out;
    }
  }
  return wrong_passphrase();
}

Result<void> Keyring::add(Slot slot, const Secret32& slot_key, const Secret32& master, const Secret32& seed) {
  if (slots_.size() >= slot_count_max) {
    return wire::Fault("limit.items", "", "at most 64 slots", std::to_string(slots_.size()));
  }
  Secret<64> plain;
  std::copy(master.view().begin(), master.view().end(), plain.data());
  std::copy(seed.view().begin(), seed.view().end(), plain.data() + 32);
  const auto nonce = nonce_of(slot_key, part(slot, 0, at_nonce), plain.view());
  std::copy(nonce.begin(), nonce.end(), slot.begin() + at_nonce);
  const Slot before = slot;
  encrypt(slot_key, part(before, 0, at_sealed), nonce, plain.view(), slot.data() + at_sealed);
  slots_.push_back(slot);
  return {};
}

Result<void> Keyring::add_passphrase(const Secret32& master, SlotType type, std::string_view passphrase,
                                     const SlotCost& cost, const model::ExaminerId& examiner, std::string_view label,
                                     const Secret32& seed, World& world) {
  require(type == SlotType::passphrase || type == SlotType::admin);
  if (label.size() > label_size) {
    return wire::Fault("limit.text", "", "a label of at most 24 bytes", std::to_string(label.size()));
  }
  Slot slot{};
  slot[0] = static_cast<std::uint8_t>(type);
  put_integer(slot.data() + at_t, cost.t, 4);
  put_integer(slot.data() + at_m_kib, cost.m_kib, 4);
  world.random(std::span(slot).subspan(at_salt, 16));
  std::copy(examiner.bytes.begin(), examiner.bytes.end(), slot.begin() + at_examiner);
  std::copy(label.begin(), label.end(), slot.begin() + at_label);
  require(slot_problem(slot).empty());
  const auto slot_key = passphrase_key(passphrase, cost, part(slot, at_salt, at_examiner));
  return slot_key ? add(slot, *slot_key, master, seed) : Result<void>(slot_key.error());
}

Result<void> Keyring::add_code(const Secret32& master, const RecoveryCode& code, World& world) {
  Slot slot{};
  slot[0] = static_cast<std::uint8_t>(SlotType::code);
  world.random(std::span(slot).subspan(at_salt, 16));
  return add(slot, code.slot_key(part(slot, at_salt, at_examiner)), master, Secret32());
}

Result<void> Keyring::remove(std::size_t slot) {
  if (slot >= slots_.size()) {
    return wire::Fault("params.wrong_type", "", "the number of a slot", std::to_string(slot));
  }
  slots_.erase(slots_.begin() + static_cast<std::ptrdiff_t>(slot));
  return {};
}

}  // namespace limbledger::ledger
