// A disk that fails when it is waited for: what was refused is neither shown nor told of as recorded, and nothing is written until
// the program is started again. After a failed flush nobody knows what is on the disk (Rebello and others, USENIX ATC 2020).
#include "tests/unit/service/desk_fixture.hpp"

namespace limbledger::service::test {

namespace {

class FailingDisk final : public ledger::LogStore {
 public:
  Result<void> append(std::span<const ledger::Row> rows, std::span<const ledger::Head> heads, const ledger::Meta& meta) override {
    told += "append ";
    return kept.append(rows, heads, meta);
  }
  void put_off_flush(bool is_put_off) override { told += is_put_off ? "put off " : "wait "; }
  Result<void> flush() override {
    ++flushes;
    told += "flush ";
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
  std::string told;  // what was asked of it, in order
};

// A clinic on that disk.
struct FailingClinic {
  FixedWorld world;
  FailingDisk disk;
  ledger::Bytes keyring;

  FailingClinic() {
    NewLedger wanted;
    wanted.examiner_label = examiner_label;
    wanted.passphrase = passphrase;
    wanted.argon_passes = 1;
    wanted.argon_kib = 8;
    const auto made = make_ledger(disk, world, wanted);
    REQUIRE(made.has_value());
    keyring = made->keyring;
  }

  [[nodiscard]] std::unique_ptr<Desk> start() {
    auto desk = Desk::open(disk, world, *reference::built_in_edition(), keyring);
    REQUIRE(desk.has_value());
    REQUIRE((*desk)->unlock("", passphrase).has_value());
    return std::move(*desk);
  }
};

std::string opens(unsigned number) { return R"({"complaint":"acute_knee","side":"left","setting":"outreach","request":")" + request_id(number) + "\"}"; }

}  // namespace

TEST_CASE("after a flush that failed, what was refused is told nowhere as recorded, and the program must be started again") {
  FailingClinic clinic;
  FailingDisk& disk = clinic.disk;
  const std::unique_ptr<Desk> desk = clinic.start();
  CHECK(codes_of(call(*desk, "exam.open", opens(1))) == "answered");
  CHECK(disk.flushes == 1);
  disk.fails = true;
  CHECK(codes_of(call(*desk, "exam.open", opens(2))) == "ledger.read_only");
  disk.fails = false;
  CHECK(codes_of(call(*desk, "request.read", R"({"request":")" + request_id(2) + "\"}")) == "ledger.locked");
  CHECK(codes_of(call(*desk, "exam.open", opens(3))) == "ledger.locked");
  const auto again = desk->unlock("", passphrase);
  REQUIRE_FALSE(again.has_value());
  CHECK(again.error().faults.front().code == "ledger.read_only");
  // Started again, the first is there; the second is there whole or not at all.
  const std::unique_ptr<Desk> restarted = clinic.start();
  CHECK(at(*call(*restarted, "request.read", R"({"request":")" + request_id(1) + "\"}"), "/state") == "recorded");
  CHECK(codes_of(call(*restarted, "exam.open", opens(2))) == "answered");
}

TEST_CASE("a flush that fails after a finding was judged: neither the finding nor its alert is told, and a new start has it whole or not at all") {
  FailingClinic clinic;
  FailingDisk& disk = clinic.disk;
  const std::unique_ptr<Desk> desk = clinic.start();
  const auto opened = call(*desk, "exam.open", opens(1));
  REQUIRE(opened.has_value());
  const std::string exam = at(*opened, "/exam/exam");
  const auto finding = [&](unsigned number, const std::string& seen) {
    return R"({"exam":")" + exam + R"(","findings":[{"item":"vessel.foot_cold","side":"left","value":{"kind":"answer","answer":"yes"}}],"seen":[")" + seen +
           R"("],"request":")" + request_id(number) + "\"}";
  };
  const std::string seen = at(*opened, "/revision/0");
  disk.told.clear();
  disk.fails = true;
  const auto refused = call(*desk, "finding.record", finding(2, seen));
  CHECK(disk.told == "put off append flush ");  // judged between the two: the reply waits for both
  REQUIRE_FALSE(refused.has_value());
  REQUIRE(refused.error().faults.size() == 1);
  CHECK(refused.error().faults.front().code == "ledger.read_only");
  CHECK(codes_of(call(*desk, "exam.read", R"({"exam":")" + exam + "\"}")) == "ledger.locked");
  disk.fails = false;
  CHECK(codes_of(call(*desk, "finding.record", finding(2, seen))) == "ledger.locked");
  const std::unique_ptr<Desk> restarted = clinic.start();
  // This disk had kept it: the same request again says so, writes nothing twice, and tells the alerts that were never told.
  disk.told.clear();
  const auto again = call(*restarted, "finding.record", finding(2, seen));
  REQUIRE(again.has_value());
  CHECK(at(*again, "/repeat") == "true");
  CHECK(disk.told == "put off flush ");
}

}  // namespace limbledger::service::test
