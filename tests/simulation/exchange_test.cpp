// Days of a clinic from seeds: a hub and two or three tablets write, meet each other or the hub in any order, break off, bring
// parts late, and now and then a tablet is put back to an older copy of itself. The oracle knows what was acknowledged to
// the simulated screens, not what the stores say. At the end of each day, after every tablet met the hub twice in any order: all hold the
// same and fold to the same, nothing acknowledged is lost, no receipt runs ahead, and one more meeting is one call.
// One day alone: LIMBLEDGER_FIRST_DAY=17 LIMBLEDGER_DAYS=1.
#include "core/store/sqlite.hpp"
#include "tests/unit/exchange/clinic.hpp"
#include "tests/unit/store/support.hpp"

#include <cstdlib>
#include <set>

namespace limbledger::ledger::exchange_test {

namespace {

std::uint64_t number_from(const char* name, std::uint64_t otherwise) {
  const char* text = std::getenv(name);
  return text == nullptr ? otherwise : std::strtoull(text, nullptr, 10);
}

// SplitMix64: the same on every machine.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : at_(seed) {}
  std::uint64_t roll(std::uint64_t sides) {
    at_ += 0x9e3779b97f4a7c15U;
    std::uint64_t z = at_;
    z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
    z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
    return (z ^ (z >> 31U)) % sides;
  }

 private:
  std::uint64_t at_;
};

class Day {
 public:
  explicit Day(std::uint64_t seed) : dice_(seed) {
    const std::size_t tablets = 2 + dice_.roll(2);
    for (std::size_t i = 0; i <= tablets; ++i) {
      devices_.push_back(std::make_unique<Device>(static_cast<std::uint8_t>(i + 1)));
      has_ended_.push_back(false);
    }
    std::vector<Device*> enrolled;
    for (std::size_t i = 1; i < devices_.size(); ++i) {
      enrolled.push_back(devices_[i].get());
    }
    devices_.front()->enrol(enrolled);
  }

  void pass() {
    const std::size_t acts = 20 + dice_.roll(30);
    for (std::size_t i = 0; i < acts; ++i) {
      const std::uint64_t act = dice_.roll(20);
      const std::size_t who = dice_.roll(devices_.size());
      if (act < 10) {
        write(who);
      } else if (act < 16) {
        meet(who, dice_.roll(devices_.size()));
      } else if (act == 16) {
        bring_part(who, dice_.roll(devices_.size()));
      } else if (who != 0 && !has_ended_[who]) {
        restore(who);
      }
    }
  }

  void come_home() {
    for (int twice = 0; twice < 2; ++twice) {
      std::vector<std::size_t> order;
      for (std::size_t i = 1; i < devices_.size(); ++i) {
        order.insert(order.begin() + static_cast<std::ptrdiff_t>(dice_.roll(order.size() + 1)), i);
      }
      for (const std::size_t who : order) {
        const auto done = exchange(*devices_[who], hub());
        REQUIRE_MESSAGE(done.has_value(), (done ? "" : code_of(done.error())));
      }
    }
    for (std::size_t i = 1; i < devices_.size(); ++i) {
      REQUIRE(exchange(*devices_[i], hub()).has_value());
    }
    for (const auto& device : devices_) {
      CHECK(device->have() == hub().have());
      CHECK(device->said() == hub().said());
      // What a restored tablet wrote in between and gave to nobody is missing before a later part for ever.
      CHECK((waiting(device->store())->empty() || restored_ != 0));
      if (device.get() != &hub()) {
        CHECK(exchange(*device, hub())->messages == 1);
      }
      for (const auto& [entry, replica] : acknowledged_) {
        CHECK(holds_entry(*device, replica, entry));
      }
      const auto verified = verify_store(device->store(), the_clinic(), &device->log());
      CHECK(verified->damage.empty());
    }
  }

  [[nodiscard]] std::size_t acknowledged() const { return acknowledged_.size(); }
  [[nodiscard]] std::size_t restored() const { return restored_; }
  // Chains that ended in more than one branch.
  [[nodiscard]] std::size_t forked() {
    std::map<model::ReplicaId, std::size_t> branches;
    for (const Place& leaf : *leaves_of(hub().store())) {
      ++branches[leaf.replica];
    }
    return static_cast<std::size_t>(std::count_if(branches.begin(), branches.end(), [](const auto& one) { return one.second > 1; }));
  }

 private:
  Device& hub() { return *devices_.front(); }

  static bool holds_entry(Device& device, const model::ReplicaId& replica, const Hash& entry) {
    const auto rows = device.store().read(replica, 1, UINT64_MAX >> 1U, 1000000);
    return std::any_of(rows->begin(), rows->end(), [&entry](const Row& row) { return row.hash == entry; });
  }

  void write(std::size_t who) {
    Device& device = *devices_[who];
    const auto written = device.write(static_cast<unsigned>(60 + dice_.roll(6)));
    if (!written) {
      CHECK(code_of(written.error()) == "replica.forked");
      CHECK(has_ended_[who]);
      return;
    }
    CHECK_FALSE(has_ended_[who]);
    acknowledged_.emplace(written->front().hash(), device.replica());
  }

  void meet(std::size_t a, std::size_t b) {
    if (a == b) {
      return;
    }
    const std::size_t cut = dice_.roll(3) == 0 ? dice_.roll(6) : SIZE_MAX;
    const auto done = exchange(*devices_[a], *devices_[b], cut, dice_.roll(2) == 0 ? 1 : message_budget);
    // Two tablets that the hub has not told of each other yet do not know each other.
    CHECK((done.has_value() || code_of(done.error()) == "replica.unknown"));
    for (const std::size_t who : {a, b}) {
      has_ended_[who] = has_ended_[who] || !devices_[who]->log().damage().empty();
      for (const auto& other : devices_) {
        // Who was put back to an older copy may have said more before.
        CHECK((was_restored_.contains(other->replica()) || devices_[who]->held_at(*other) <= other->seq_of(devices_[who]->replica())));
      }
    }
  }

  // A stick with the newer half of a chain: it waits for the older one.
  void bring_part(std::size_t from, std::size_t to) {
    Device& source = *devices_[from];
    Device& target = *devices_[to];
    Sending sending;
    const std::uint64_t held = target.seq_of(source.replica());
    REQUIRE(add_lacking(source.store(), source.replica(), {}, held + 1 + dice_.roll(5), UINT64_MAX >> 1U, SIZE_MAX, sending).has_value());
    Member own = target.member();
    CHECK(take(own, std::move(sending.runs)).has_value());
    target.catch_up();
    has_ended_[to] = has_ended_[to] || !target.log().damage().empty();
  }

  void restore(std::size_t who) {
    if (!copies_.contains(who) || dice_.roll(2) == 0) {
      copies_[who] = std::make_unique<Device>(*devices_[who]);
      return;
    }
    devices_[who] = std::move(copies_[who]);
    copies_.erase(who);
    ++restored_;
    was_restored_.insert(devices_[who]->replica());
    // What nobody else had is gone with the card; no program brings it back.
    std::erase_if(acknowledged_, [this](const auto& one) {
      return std::none_of(devices_.begin(), devices_.end(), [&one](const auto& device) { return holds_entry(*device, one.second, one.first); });
    });
  }

  Dice dice_;
  std::vector<std::unique_ptr<Device>> devices_;
  std::map<std::size_t, std::unique_ptr<Device>> copies_;
  std::vector<bool> has_ended_;
  std::map<Hash, model::ReplicaId> acknowledged_;
  std::set<model::ReplicaId> was_restored_;
  std::size_t restored_ = 0;
};

}  // namespace

TEST_CASE("days come home: whoever met whom in whatever order, all hold the same and nothing acknowledged is lost") {
  const std::uint64_t first = number_from("LIMBLEDGER_FIRST_DAY", 1);
  const std::uint64_t days = number_from("LIMBLEDGER_DAYS", 120);
  std::size_t acknowledged = 0;
  std::size_t restored = 0;
  std::size_t forked = 0;
  for (std::uint64_t seed = first; seed < first + days; ++seed) {
    INFO("LIMBLEDGER_FIRST_DAY=" << seed << " LIMBLEDGER_DAYS=1");
    Day day(seed);
    day.pass();
    day.come_home();
    acknowledged += day.acknowledged();
    restored += day.restored();
    forked += day.forked();
  }
  CHECK(acknowledged > 5 * days);
  MESSAGE(acknowledged << " acknowledged, " << restored << " put back, " << forked << " forked");
  if (days >= 50) {
    CHECK(restored > days / 4);
    CHECK(forked >= days / 12);
  }
}

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
