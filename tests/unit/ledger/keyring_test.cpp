#include "core/ledger/keys/keyring.hpp"
#include "tests/unit/ledger/support.hpp"

#include <doctest/doctest.h>

#include <sodium/crypto_pwhash_argon2id.h>

using namespace limbledger::ledger;
using namespace limbledger::ledger::test;
namespace model = limbledger::model;

namespace {

constexpr SlotCost quick{1, 8};  // far below what a real slot may cost, so that thousands of openings take a second

struct Made {
  CountedWorld world;
  Keyring keyring;
  Unlocked unlocked;
  RecoveryCode code = RecoveryCode::draw(world);
  model::ExaminerId first{filled<16>(40)};
  model::ExaminerId second{filled<16>(41)};
  Bytes file;

  Made() {
    world.random(unlocked.master.room());
    unlocked.vault = Vault::draw(world);
    unlocked.vault.epoch_secrets.emplace(2, secret_of(9));
    CHECK(keyring.add_passphrase(unlocked.master, SlotType::passphrase, "first words", quick, first, "Dr Sample", secret_of(50), world).has_value());
    CHECK(keyring.add_passphrase(unlocked.master, SlotType::passphrase, "second words", quick, second, "Nurse Sample", secret_of(51), world).has_value());
    CHECK(keyring.add_passphrase(unlocked.master, SlotType::admin, "admin words", quick, {}, "admin", secret_of(52), world).has_value());
    CHECK(keyring.add_code(unlocked.master, code, world).has_value());
    file = keyring.to_bytes(unlocked);
  }
};

std::string opening(const Bytes& file, std::string_view passphrase) {
  const auto keyring = Keyring::from_bytes(file);
  if (!keyring) {
    return code_of(keyring.error());
  }
  const auto opened = keyring->open_passphrase(passphrase);
  return opened ? "opened" : code_of(opened.error());
}

}  // namespace

// Source: tests/outside/data/aead_and_kdf_crosscheck.json (two independent libraries; one row is the reference program's).
TEST_CASE("the slow derivation is Argon2id version 1.3 with one lane") {
  const std::string json = outside_data("aead_and_kdf_crosscheck.json");
  int row_count = 0;
  for (std::size_t from = json.find("\"password_utf8\""); from != std::string::npos;
       from = json.find("\"password_utf8\"", from + 1)) {
    const auto number = [&](const std::string& name) {
      return std::stoul(json.substr(json.find('"' + name + "\":", from) + name.size() + 3));
    };
    const std::string password = text_member(json, "password_utf8", from);
    const Bytes salt = from_hex(text_member(json, "salt_hex", from));
    Bytes out(32);
    REQUIRE(crypto_pwhash_argon2id(out.data(), out.size(), password.data(), password.size(), salt.data(), number("t"),
                                   number("m_kib") * 1024, crypto_pwhash_argon2id_ALG_ARGON2ID13) == 0);
    CHECK(to_hex(out) == text_member(json, "hash", from));
    ++row_count;
  }
  CHECK(row_count == 5);
}

TEST_CASE("each slot opens with its own secret and gives its own key beside the same vault") {
  const Made made;
  auto keyring = Keyring::from_bytes(made.file);
  REQUIRE(keyring.has_value());
  CHECK(keyring->generation() == 1);
  REQUIRE(keyring->slots().size() == 4);
  CHECK(keyring->slots()[1].label == "Nurse Sample");
  CHECK(keyring->slots()[1].examiner == made.second);
  CHECK(keyring->slots()[0].cost == quick);
  CHECK(keyring->slots()[3].type == SlotType::code);
  CHECK(made.file.size() == 16 + 4 * 176 + 24 + 4 + 96 + 2 * 36 + 16);

  const auto first = keyring->open_passphrase("first words");
  REQUIRE(first.has_value());
  CHECK(first->examiner == made.first);
  CHECK(first->seed == secret_of(50));
  CHECK(first->vault.sign_seed == made.unlocked.vault.sign_seed);
  CHECK(first->vault.shelf_key == made.unlocked.vault.shelf_key);
  CHECK(first->vault.epoch_secrets == made.unlocked.vault.epoch_secrets);
  CHECK(first->vault.newest_epoch() == 2);
  CHECK(keyring->open_passphrase("second words", made.second)->seed == secret_of(51));
  CHECK(keyring->open_admin("admin words")->seed == secret_of(52));
  CHECK(keyring->open_code(made.code)->vault.box_secret == made.unlocked.vault.box_secret);
}

TEST_CASE("a passphrase opens neither another examiner's slot nor the admin's") {
  const Made made;
  const auto keyring = Keyring::from_bytes(made.file);
  CHECK(code_of(keyring->open_passphrase("first words", made.second).error()) == "ledger.passphrase");
  CHECK(code_of(keyring->open_admin("first words").error()) == "ledger.passphrase");
  CHECK(code_of(keyring->open_passphrase("admin words").error()) == "ledger.passphrase");
  CHECK(code_of(keyring->open_passphrase("First words").error()) == "ledger.passphrase");
  CountedWorld other(9);
  CHECK(code_of(keyring->open_code(RecoveryCode::draw(other)).error()) == "ledger.passphrase");
}

TEST_CASE("every changed, missing or added byte of the file is detected") {
  const Made made;
  for (std::size_t i = 0; i < made.file.size(); ++i) {
    for (const std::uint8_t flip : {std::uint8_t{1}, std::uint8_t{0x80}}) {
      Bytes changed = made.file;
      changed[i] ^= flip;
      if ((i == 16 + 8 || i == 16 + 176 + 8 || i == 16 + 2 * 176 + 8 || i == 16 + 3 * 176 + 8) && flip == 1) {
        continue;  // asks for 16 MiB: tried once below
      }
      CHECK(opening(changed, "first words") != "opened");
    }
  }
  Bytes costly = made.file;
  costly[16 + 8 + 1] ^= 1;  // 64 MiB instead of 8 KiB in the slot that is opened
  CHECK(opening(costly, "first words") == "ledger.passphrase");
  for (std::size_t size = 0; size < made.file.size(); ++size) {
    const Bytes shorter(made.file.begin(), made.file.begin() + static_cast<std::ptrdiff_t>(size));
    CHECK(opening(shorter, "first words") == "keyring.damaged");
  }
  Bytes longer = made.file;
  longer.push_back(0);
  CHECK(opening(longer, "first words") == "keyring.damaged");
}

TEST_CASE("a slot that asks for more than 1 GiB or 32 passes is refused before it costs anything") {
  const Made made;
  for (const auto& [t, m_kib] : {std::pair{33U, 8U}, {0U, 8U}, {1U, 1024U * 1024U + 1}, {1U, 7U}, {0xffffffffU, 0xffffffffU}}) {
    Bytes changed = made.file;
    put_integer(changed.data() + 16 + 4, t, 4);
    put_integer(changed.data() + 16 + 8, m_kib, 4);
    CHECK(opening(changed, "first words") == "keyring.damaged");
  }
}

TEST_CASE("a changed file is one generation on, keeps shut slots as they were and shares no nonce") {
  Made made;
  auto keyring = Keyring::from_bytes(made.file);
  auto opened = keyring->open_passphrase("first words");
  REQUIRE(opened.has_value());
  opened->vault.epoch_secrets.emplace(3, secret_of(10));
  REQUIRE(keyring->remove(0).has_value());
  REQUIRE(keyring->add_passphrase(opened->master, SlotType::passphrase, "new words", quick, made.first, "Dr Sample", opened->seed, made.world).has_value());
  const Bytes file = keyring->to_bytes(*opened);
  const auto again = Keyring::from_bytes(file);
  REQUIRE(again.has_value());
  CHECK(again->generation() == 2);
  CHECK(opening(file, "first words") == "ledger.passphrase");
  CHECK(again->open_passphrase("new words")->vault.newest_epoch() == 3);
  CHECK(again->open_passphrase("second words")->seed == secret_of(51));
  CHECK(Bytes(file.begin() + 16, file.begin() + 16 + 176) == Bytes(made.file.begin() + 16 + 176, made.file.begin() + 16 + 352));
  const auto nonce_at = [](const Bytes& bytes) { return Bytes(bytes.begin() + 16 + 4 * 176, bytes.begin() + 16 + 4 * 176 + 24); };
  CHECK(nonce_at(file) != nonce_at(made.file));
}

TEST_CASE("a slot of another file is not accepted into this one") {
  const Made made;
  Bytes mixed = made.file;
  CountedWorld world(7);
  Keyring other;
  Unlocked unlocked;
  unlocked.master = secret_of(77);
  unlocked.vault = Vault::draw(world);
  REQUIRE(other.add_passphrase(unlocked.master, SlotType::passphrase, "thief", quick, {}, "", secret_of(1), world).has_value());
  const Bytes foreign = other.to_bytes(unlocked);
  std::copy(foreign.begin() + 16, foreign.begin() + 16 + 176, mixed.begin() + 16);
  CHECK(opening(mixed, "thief") == "keyring.damaged");
}

TEST_CASE("the recovery code reads back as printed, in any case, and a slip is told apart") {
  CountedWorld world(3);
  const RecoveryCode code = RecoveryCode::draw(world);
  const std::string text = code.to_text();
  CHECK(text.size() == 9 * 4 + 8);
  const auto read = [](std::string_view from) {
    const auto got = RecoveryCode::from_text(from);
    return got ? got->to_text() : code_of(got.error());
  };
  CHECK(read(text) == text);
  std::string lower;
  for (const char c : text) {
    lower += c == '-' ? ' ' : c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  }
  CHECK(read(lower) == text);
  std::string zeros = text;
  std::replace(zeros.begin(), zeros.end(), 'O', '0');
  CHECK(read(zeros) == text);
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] != '-') {
      std::string slip = text;
      slip[i] = slip[i] == 'A' ? 'C' : 'A';
      CHECK(read(slip) == "ledger.passphrase");
    }
  }
  CHECK(read(text.substr(0, text.size() - 1)) == "ledger.passphrase");
  CHECK(read(text + "A") == "ledger.passphrase");
  CHECK(read("") == "ledger.passphrase");
  CHECK(RecoveryCode::from_text(text)->root_seed() == code.root_seed());
  CHECK_FALSE(code.root_seed() == code.slot_key(Bytes(16)));
}
