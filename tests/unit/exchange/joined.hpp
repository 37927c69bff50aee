// A device that a clinic has let in, door to door, on a store that says what still waits for the disk.
#pragma once

#include "core/service/exchange/enrolment.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <atomic>
#include <memory>
#include <string>
#include <string_view>

namespace limbledger::service::test {

inline constexpr std::string_view joined_passphrase = "seven other invented words here";

// A store that says whether anything of it still waits for the disk, and that may refuse to finish it.
class WaitedStore final : public ledger::LogStore {
 public:
  Result<void> append(std::span<const ledger::Row> rows, std::span<const ledger::Head> heads, const ledger::Meta& meta) override {
    is_behind = is_put_off_;
    return kept_.append(rows, heads, meta);
  }
  void put_off_flush(bool is_put_off) override { is_put_off_ = is_put_off; }
  Result<void> flush() override {
    is_put_off_ = false;
    if (is_behind && fails) {
      return wire::Fault("ledger.read_only", "");
    }
    is_behind = false;
    return {};
  }
  Result<std::vector<ledger::Row>> read(const model::ReplicaId& replica, std::uint64_t from, std::uint64_t to, std::size_t limit) override {
    return kept_.read(replica, from, to, limit);
  }
  Result<std::vector<ledger::Row>> read_kid(const model::KeyId& kid) override { return kept_.read_kid(kid); }
  Result<ledger::Heads> heads() override { return kept_.heads(); }
  Result<void> drop_bodies(std::span<const model::EntryId> entries, ledger::RowState state) override { return kept_.drop_bodies(entries, state); }
  Result<std::vector<ledger::Row>> park(std::span<const ledger::Row> rows) override {
    is_behind = is_put_off_;
    return kept_.park(rows);
  }
  [[nodiscard]] ledger::Durability durability() const override { return ledger::Durability::disk; }

  std::atomic<bool> is_behind = false;
  std::atomic<bool> fails = false;

 private:
  store::MemoryStore kept_;
  bool is_put_off_ = false;
};

struct Joined {
  explicit Joined(std::uint8_t seed = 9) : world(seed) {}
  WaitedStore store;
  FixedWorld world;
  std::unique_ptr<Desk> desk;
  std::unique_ptr<ExchangeDoor> door;
};

inline void join_to(ExchangeDoor& hub, std::string_view code, Joined& device) {
  auto admitting = Admitting::begin(hub, code);
  REQUIRE(admitting.has_value());
  auto joining = Joining::begin(device.world);
  REQUIRE(joining.has_value());
  const auto card = (*admitting)->answer((*joining)->commit());
  REQUIRE(card.has_value());
  const auto own = (*joining)->show(*card);
  REQUIRE(own.has_value());
  CHECK((*joining)->clinic_device_key() == hub.key());
  REQUIRE((*admitting)->answer(*own).has_value());
  CHECK((*admitting)->digits() == (*joining)->digits());
  CHECK((*admitting)->digits().size() == 6);
  const auto welcome = (*admitting)->welcome();
  REQUIRE(welcome.has_value());
  NewLedger wanted;
  wanted.examiner_label = "Second Examiner";
  wanted.passphrase = joined_passphrase;
  wanted.argon_passes = 1;
  wanted.argon_kib = 8;
  const auto made = (*joining)->finish(device.store, *welcome, wanted);
  REQUIRE(made.has_value());
  auto desk = Desk::open(device.store, device.world, *reference::built_in_edition(), made->keyring);
  REQUIRE(desk.has_value());
  device.desk = std::move(*desk);
  REQUIRE(device.desk->unlock({}, joined_passphrase).has_value());
  auto door = ExchangeDoor::open(*device.desk);
  REQUIRE(door.has_value());
  device.door = std::move(*door);
  CHECK(device.door->replica() == (*admitting)->newcomer());
  CHECK(*device.door->hub_key() == hub.key());
}

inline std::string register_somebody(Desk& desk, unsigned number, const std::string& name) {
  const auto made = call(desk, "person.register", R"({"names":[{"text":")" + name + R"("}],"sex":"female","request":")" + request_id(number) + R"("})");
  REQUIRE_MESSAGE(made.has_value(), codes_of(made));
  return at(*made, "/person/person");
}

}  // namespace limbledger::service::test
