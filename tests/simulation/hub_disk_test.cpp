// A hub whose store is a file, in an exchange: what it took, parked, receipted and witnessed is there when it is opened again. What many
// devices make of each other is judged in the simulated clinics (clinic/).
#include "core/store/sqlite.hpp"
#include "tests/unit/exchange/clinic.hpp"
#include "tests/unit/store/support.hpp"

namespace limbledger::ledger::exchange_test {

TEST_CASE("a hub on a disk takes, parks, gives and receipts as one in memory does, and holds it all when it is opened again") {
  const limbledger::store::test::Folder folder;
  limbledger::store::SqliteOptions options;
  options.clinic = the_clinic();
  Device tablet(2);
  const SignKey key(secret_of(11));
  limbledger::service::test::FixedWorld world(1);
  Hash before{};
  for (int start = 0; start < 2; ++start) {
    auto opened = limbledger::store::SqliteStore::open(folder.file("ledger.sqlite"), options);
    REQUIRE(opened.has_value());
    limbledger::store::SqliteStore& store = **opened;
    Member hub{store, world, the_clinic(), key};
    if (start == 0) {
      Intro intro;
      intro.box_pub = BoxPair::from_seed(secret_of(1)).pub();
      intro.device.bytes.fill(1);
      REQUIRE(begin_chain(hub, intro).has_value());
      REQUIRE(append_orders(hub, root_key(),
                            {{OrderKind::enrol, Enrol{hub.replica(), intro.device, roles::write | roles::hub}.to_fields()},
                             {OrderKind::enrol, Enrol{tablet.replica(), tablet.device(), roles::write}.to_fields()}})
                  .has_value());
      Meta meta;
      meta[std::string(hub_key_name)] = Bytes(key.pub().begin(), key.pub().end());
      REQUIRE(tablet.store().append({}, {}, meta).has_value());
      tablet.write_some(51, 5);
      Sending late;
      REQUIRE(add_lacking(tablet.store(), tablet.replica(), {}, 4, UINT64_MAX >> 1U, SIZE_MAX, late).has_value());
      const auto parked = take(hub, std::move(late.runs));
      REQUIRE(parked.has_value());
      CHECK(parked->parked == tablet.own_seq() - 3);
      tablet.write_some(51, 1200);
    } else {
      CHECK(have_digest(*leaves_of(store)) == before);
      CHECK(waiting(store)->empty());
    }
    Caller caller(tablet.member(), exporter_of(3), 1);
    Answerer answerer(hub, exporter_of(3), 1);
    for (auto message = caller.next(); message && *message; message = caller.next()) {
      const auto answer = answerer.answer(**message);
      REQUIRE_MESSAGE(answer.has_value(), (answer ? "" : code_of(answer.error())));
      REQUIRE(caller.receive(*answer).has_value());
    }
    tablet.catch_up();
    CHECK(caller.exchanged().is_same);
    CHECK((start == 0 || caller.exchanged().messages == 1));
    before = have_digest(*leaves_of(store));
    CHECK(before == tablet.have());
    const auto verified = verify_store(store, the_clinic(), nullptr);
    CHECK(verified->damage.empty());
    Member own = tablet.member();
    REQUIRE(held_elsewhere(own)->size() == 1);
    CHECK(held_elsewhere(own)->front().not_held == 0);
  }
}

}  // namespace limbledger::ledger::exchange_test
