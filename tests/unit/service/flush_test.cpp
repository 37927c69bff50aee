// A disk that fails when it is waited for: what was refused is neither shown nor told of as recorded, and nothing is written until
// the program is started again. After a failed flush nobody knows what is on the disk (Rebello and others, USENIX ATC 2020).
#include "tests/unit/service/desk_fixture.hpp"

namespace limbledger::service::test {

namespace {

class FailingDisk final : public ledger::LogStore {
 public:
  Result<void> append(std::span<const ledger::Row> rows, std::span<const ledger::Head> heads, const ledger::Meta& meta) override {
    return kept.append(rows, heads, meta);
  }
  Result<void> flush() override {
    ++flushes;
    return fails ? Result<void>(wire::Fault{"ledger.read_only", ""}) : Result<void>();
  }
  Result<std::vector<ledger::Row>> read(const model::ReplicaId& replica, std::uint64_t from, std::uint64_t to, std::size_t limit) override {
    return kept.read(replica, from, to, limit);
  }
  Result<std::vector<ledger::Row>> read_kid(const model::KeyId& kid) override { return kept.read_kid(kid); }
  Result<ledger::Heads> heads() override { return kept.heads(); }
  Result<void> drop_bodies(std::span<const model::EntryId> entries, ledger::RowState state) override { return kept.drop_bodies(entries, state); }
  Result<std::vector<ledger::Row>> park(std::span<const ledger::Row> rows) override { return kept.park(rows); }
  [[nodiscard]] ledger::Durability durability() const override { return ledger::Durability::disk; }

  store::MemoryStore kept;
  bool fails = false;
  int flushes = 0;
};

std::string opens(unsigned number) { return R"({"complaint":"acute_knee","side":"left","setting":"outreach","request":")" + request_id(number) + "\"}"; }

}  // namespace

TEST_CASE("after a flush that failed, what was refused is told nowhere as recorded, and the program must be started again") {
  FixedWorld world;
  FailingDisk disk;
  NewLedger wanted;
  wanted.examiner_label = examiner_label;
  wanted.passphrase = passphrase;
  wanted.argon_passes = 1;
  wanted.argon_kib = 8;
  const auto made = make_ledger(disk, world, wanted);
  REQUIRE(made.has_value());
  const auto desk = Desk::open(disk, world, *reference::built_in_edition(), made->keyring);
  REQUIRE(desk.has_value());
  REQUIRE((*desk)->unlock("", passphrase).has_value());
  CHECK(codes_of(call(**desk, "exam.open", opens(1))) == "answered");
  CHECK(disk.flushes == 1);
  disk.fails = true;
  CHECK(codes_of(call(**desk, "exam.open", opens(2))) == "ledger.read_only");
  disk.fails = false;
  CHECK(codes_of(call(**desk, "request.read", R"({"request":")" + request_id(2) + "\"}")) == "ledger.locked");
  CHECK(codes_of(call(**desk, "exam.open", opens(3))) == "ledger.locked");
  const auto again = (*desk)->unlock("", passphrase);
  REQUIRE_FALSE(again.has_value());
  CHECK(again.error().faults.front().code == "ledger.read_only");
  // Started again, the first is there; the second is there whole or not at all.
  const auto restarted = Desk::open(disk, world, *reference::built_in_edition(), made->keyring);
  REQUIRE((*restarted)->unlock("", passphrase).has_value());
  CHECK(at(*call(**restarted, "request.read", R"({"request":")" + request_id(1) + "\"}"), "/state") == "recorded");
  CHECK(codes_of(call(**restarted, "exam.open", opens(2))) == "answered");
}

}  // namespace limbledger::service::test
