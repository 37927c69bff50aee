// A second device joins: the worked bytes of tests/outside/python/exchange_bytes.py, and who may and who may not. Logic tests of our
// own rules (schemas/ledger-format.md, section 10).
#include "tests/unit/exchange/clinic.hpp"

namespace limbledger::ledger::exchange_test {

using test::filled;
using test::from_hex;
using test::outside_data;
using test::text_member;

namespace {

// Gives what the worked case drew, so that both cards are those of the page.
class DrawnWorld final : public World {
 public:
  explicit DrawnWorld(std::vector<std::uint8_t> drawn) : drawn_(std::move(drawn)) {}
  Reading now() override { return {}; }
  void random(std::span<std::uint8_t> bytes) override {
    REQUIRE(at_ < drawn_.size());
    std::fill(bytes.begin(), bytes.end(), drawn_[at_++]);
  }

 private:
  std::vector<std::uint8_t> drawn_;
  std::size_t at_ = 0;
};

Bytes enrol_case(std::string_view name) { return from_hex(text_member(outside_data("exchange_bytes.json"), name)); }

Vault vault_of_newcomer(World& world) {
  Vault vault = Vault::draw(world);
  vault.epoch_secrets.clear();
  return vault;
}

// Up to the digits.
struct Meeting {
  explicit Meeting(Device& hub, std::uint8_t seed = 77) : world(seed), vault(vault_of_newcomer(world)), newcomer(vault, world), enroller(hub.member(), root_key().pub(), Purpose::record) {
    const auto card = enroller.answer(newcomer.commit());
    REQUIRE(card.has_value());
    const auto shown = newcomer.show(*card);
    REQUIRE(shown.has_value());
    REQUIRE(enroller.look(*shown).has_value());
  }
  limbledger::service::test::FixedWorld world;
  Vault vault;
  Newcomer newcomer;
  Enroller enroller;
};

}  // namespace

TEST_CASE("the worked enrolment: cards, digits and the welcome's signature") {
  Device hub(1);  // its device seed is the page's 32 x 0b
  // The newcomer's public box key in the page is no pair's, so its card is read, not made.
  DrawnWorld hub_world({0x33});
  Member member{hub.store(), hub_world, the_clinic(), hub.key()};
  Enroller enroller(member, root_key().pub(), Purpose::record);
  const auto card = enroller.answer(enrol_case("enrol_promise"));
  REQUIRE(card.has_value());
  CHECK(*card == enrol_case("enrol_clinic"));
  REQUIRE(enroller.look(enrol_case("enrol_newcomer")).has_value());
  CHECK(enroller.digits() == text_member(outside_data("exchange_bytes.json"), "enrol_digits"));
  CHECK(enroller.newcomer().sign_pub == SignKey(secret_of(0x0c)).pub());
}

TEST_CASE("both screens show the same six digits, and the newcomer joins, exchanges and reads what the hub wrote") {
  Device hub(1);
  hub.write_some(50, 3);
  Meeting met(hub);
  CHECK(met.newcomer.digits().size() == 6);
  CHECK(met.newcomer.digits() == met.enroller.digits());
  const auto welcome = met.enroller.welcome(root_key(), roles::write, 1, secret_of(2));
  REQUIRE(welcome.has_value());
  hub.catch_up();
  const auto secret = met.newcomer.accept(*welcome);
  REQUIRE(secret.has_value());
  CHECK(*secret == secret_of(2));
  CHECK(met.newcomer.clinic() == the_clinic());

  limbledger::store::MemoryStore store;
  const SignKey key(met.vault.sign_seed);
  REQUIRE(join(store, met.world, met.newcomer, key, BoxPair(met.vault.box_secret).pub(), "limbledger test").has_value());
  CHECK(code_of(join(store, met.world, met.newcomer, key, BoxPair(met.vault.box_secret).pub(), "limbledger test").error()) == "ledger.in_use");
  Member own{store, met.world, the_clinic(), key};
  Caller caller(own, exporter_of(1));
  Answerer answerer(hub.member(), exporter_of(1));
  for (auto message = caller.next(); message && *message; message = caller.next()) {
    const auto answer = answerer.answer(**message);
    REQUIRE_MESSAGE(answer.has_value(), (answer ? "" : code_of(answer.error())));
    REQUIRE(caller.receive(*answer).has_value());
  }
  CHECK(*leaves_of(store) == *leaves_of(hub.store()));
  Identity identity{the_clinic(), key, {}, BlobKey(secret_of(3))};
  identity.epochs.emplace(1, BoxPair(*secret));
  const auto log = Log::open(store, met.world, std::move(identity));
  REQUIRE(log.has_value());
  const auto operations = (*log)->operations(object_of(the_clinic(), ObjectType::exam, request_number(50), 0));
  CHECK(operations->size() == 3);
}

TEST_CASE("a card that was not promised, a second card and a changed welcome are refused") {
  Device hub(1);
  Meeting met(hub);
  Meeting other(hub, 78);
  limbledger::service::test::FixedWorld world(79);
  const Vault vault = vault_of_newcomer(world);
  Newcomer newcomer(vault, world);
  Enroller enroller(hub.member(), root_key().pub(), Purpose::record);
  const auto card = enroller.answer(newcomer.commit());
  auto shown = newcomer.show(*card);
  CHECK_FALSE(newcomer.show(*card).has_value());
  for (std::size_t at = 0; at < shown->size(); ++at) {
    Bytes changed = *shown;
    changed[at] ^= 1U;
    CHECK_FALSE(enroller.look(changed).has_value());
  }
  REQUIRE(enroller.look(*shown).has_value());
  CHECK(code_of(enroller.look(*shown).error()) == "exchange.message");
  CHECK(code_of(enroller.answer(newcomer.commit()).error()) == "exchange.message");
  const auto welcome = enroller.welcome(root_key(), roles::write, 1, secret_of(2));
  REQUIRE(welcome.has_value());
  for (std::size_t at = 0; at < welcome->size(); ++at) {
    Bytes changed = *welcome;
    changed[at] ^= 1U;
    CHECK_FALSE(newcomer.accept(changed).has_value());
  }
  CHECK(code_of(other.newcomer.accept(*welcome).error()) == "enrol.code");  // made for another
  CHECK(newcomer.accept(*welcome).has_value());
}

TEST_CASE("who stands between the two and swaps a card makes the screens differ") {
  Device hub(1);
  unsigned same = 0;
  for (std::uint8_t seed = 0; seed < 50; ++seed) {
    limbledger::service::test::FixedWorld world(static_cast<std::uint8_t>(100 + seed));
    const Vault vault = vault_of_newcomer(world);
    Newcomer newcomer(vault, world);
    const Vault false_vault = vault_of_newcomer(world);
    Newcomer between(false_vault, world);
    Enroller enroller(hub.member(), root_key().pub(), Purpose::record);
    const auto card = enroller.answer(between.commit());
    REQUIRE(newcomer.show(*card).has_value());
    const auto swapped = between.show(*card);
    REQUIRE(enroller.look(*swapped).has_value());
    same += newcomer.digits() == enroller.digits() ? 1U : 0U;
  }
  CHECK(same == 0);
}

TEST_CASE("only a key that may enrol does, whichever order comes first") {
  Device hub(1);
  const SignKey admin(secret_of(5));
  {
    Meeting met(hub);
    CHECK(code_of(met.enroller.welcome(admin, roles::write, 1, secret_of(2)).error()) == "replica.unknown");
  }
  // The enrolment is written before the grant of its signer; it counts once both are there.
  Device tablet(2);
  Member own = hub.member();
  REQUIRE(append_orders(own, admin, {{OrderKind::enrol, Enrol{tablet.replica(), tablet.device(), roles::write}.to_fields()}}).has_value());
  CHECK(stored_trust(hub.store(), the_clinic())->enrolment(tablet.replica()) == nullptr);
  CHECK(stored_trust(hub.store(), the_clinic())->void_count() == 1);
  REQUIRE(append_orders(own, admin, {{OrderKind::grant, Grant{admin.pub(), roles::enrol}.to_fields()}}).has_value());
  CHECK(stored_trust(hub.store(), the_clinic())->enrolment(tablet.replica()) == nullptr);  // nobody grants to themselves
  REQUIRE(append_orders(own, root_key(), {{OrderKind::grant, Grant{admin.pub(), roles::enrol}.to_fields()}}).has_value());
  const auto trust = stored_trust(hub.store(), the_clinic());
  REQUIRE(trust->enrolment(tablet.replica()) != nullptr);
  CHECK(trust->enrolment(tablet.replica())->roles == roles::write);
  CHECK(trust->roles_of(admin.pub()) == roles::enrol);
  CHECK(trust->void_count() == 1);
  auto orders = stored_orders(hub.store());
  std::reverse(orders->begin(), orders->end());
  CHECK(Trust(the_clinic(), *orders).enrolment(tablet.replica()) != nullptr);
  hub.catch_up();
  Meeting met(hub);
  CHECK(met.enroller.welcome(admin, roles::write, 1, secret_of(2)).has_value());
}

TEST_CASE("an order that was found good once makes no other good: not at another place, nor changed, nor under another key") {
  const model::ReplicaId replica = Device(2).replica();
  const Position at{the_clinic(), replica, 7};
  const OrderBody good = sign_order(root_key(), at, OrderKind::gap, {1, 2, 3});
  CheckedOrders checked;
  REQUIRE(verify_order(at, good, checked));
  CHECK(verify_order(at, good, checked));
  CHECK(checked.size() == 1);
  CHECK_FALSE(verify_order({at.clinic, at.replica, 8}, good, checked));
  OrderBody changed = good;
  changed.fields.back() ^= 1U;
  CHECK_FALSE(verify_order(at, changed, checked));
  changed = good;
  changed.admin_pub = SignKey(secret_of(5)).pub();
  CHECK_FALSE(verify_order(at, changed, checked));
  changed = good;
  changed.signature.back() ^= 1U;
  CHECK_FALSE(verify_order(at, changed, checked));
  CHECK(checked.size() == 1);
}

TEST_CASE("an order copied to another place, and one of a newer kind, count for nothing and are counted") {
  Device hub(1);
  Device tablet(2);
  Member own = hub.member();
  Bytes copied;
  const Enrol enrol{tablet.replica(), tablet.device(), roles::write};
  REQUIRE(append_plain(own, {{Kind::order, [&](const Position& at) {
            return copied = sign_order(root_key(), {at.clinic, at.replica, at.seq + 7}, OrderKind::enrol, enrol.to_fields()).to_bytes();
          }}}).has_value());
  REQUIRE(append_plain(own, {{Kind::order, [&](const Position& at) { return sign_order(root_key(), at, static_cast<OrderKind>(77), {1, 2, 3}).to_bytes(); }}}).has_value());
  const auto trust = stored_trust(hub.store(), the_clinic());
  CHECK(trust->enrolment(tablet.replica()) == nullptr);
  CHECK(trust->void_count() == 1);
  CHECK(trust->unread() == 1);
}

}  // namespace limbledger::ledger::exchange_test
