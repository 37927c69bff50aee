// A disk that refuses a flush: what Linux then holds in memory counts as written and is not, and the next flush says yes.
// What a ledger gives to read after it was opened again must outlive the power all the same (settle_log), and a disk that
// refuses while the ledger opens must open nothing.
#include "core/store/sqlite.hpp"
#include "tests/simulation/power_cut_vfs.hpp"
#include "tests/unit/ledger/support.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using namespace limbledger::ledger::test;
using limbledger::simulation::PowerCutDisk;
using limbledger::store::SqliteOptions;
using limbledger::store::SqliteStore;

namespace {

class RefusedRun {
 public:
  explicit RefusedRun(std::uint64_t seed) : disk(1000000 + seed) {
    options.clinic = writer.origin.clinic;
    options.vfs = disk.vfs_name();
  }
  [[nodiscard]] Result<std::unique_ptr<SqliteStore>> open() const { return SqliteStore::open("ledger", options); }
  [[nodiscard]] Result<void> write(SqliteStore& store) {
    const std::size_t before = writer.rows.size();
    if (writer.rows.empty()) {
      writer.introduce();
    }
    writer.write("invented");
    const ledger::Head head = writer.head();
    return store.append(std::span(writer.rows).subspan(before), {&head, 1}, {});
  }
  // The process is killed: nothing of its closing reaches the files.
  void kill(std::unique_ptr<SqliteStore> store) {
    disk.cut_at(0);
    store.reset();
  }
  [[nodiscard]] std::size_t row_count(SqliteStore& store) const {
    const auto rows = store.read(writer.origin.replica, 0, UINT64_MAX, 1000);
    return rows ? rows->size() : 0;
  }

  PowerCutDisk disk;
  Writer writer;
  SqliteOptions options;
};

}  // namespace

TEST_CASE("what is read after a refused flush and a new start is still there when the power goes") {
  for (std::uint64_t seed = 1; seed <= 40; ++seed) {
    CAPTURE(seed);
    RefusedRun run(seed);
    auto first = run.open();
    REQUIRE(first.has_value());
    REQUIRE(run.write(**first).has_value());
    run.disk.refuse_syncs(1);
    const auto refused = run.write(**first);
    REQUIRE_FALSE(refused.has_value());
    run.kill(std::move(*first));
    run.disk.resume();

    auto second = run.open();
    REQUIRE(second.has_value());
    const std::size_t shown = run.row_count(**second);
    CHECK(shown >= run.writer.rows.size() - 1);  // what was acknowledged, at least
    run.kill(std::move(*second));
    run.disk.restart();

    auto third = run.open();
    REQUIRE(third.has_value());
    CHECK(run.row_count(**third) == shown);
  }
}

TEST_CASE("a disk that refuses a flush while the ledger opens opens nothing, and loses nothing") {
  for (std::uint64_t refusals = 1; refusals <= 3; ++refusals) {
    CAPTURE(refusals);
    RefusedRun run(100 + refusals);
    auto first = run.open();
    REQUIRE(first.has_value());
    REQUIRE(run.write(**first).has_value());
    run.kill(std::move(*first));
    run.disk.resume();

    for (std::uint64_t i = 0; i < refusals; ++i) {
      run.disk.refuse_syncs(1);
      const auto refused = run.open();
      REQUIRE_FALSE(refused.has_value());
      CHECK(refused.error().faults.front().code == "ledger.read_only");
    }
    auto again = run.open();
    REQUIRE(again.has_value());
    CHECK(run.row_count(**again) == run.writer.rows.size());
  }
}

// The log is written into the file now and then, which waits for the disk as well.
TEST_CASE("a disk that refuses whenever it is waited for, also while the log is written into the file, has kept all that was acknowledged") {
  std::uint64_t refusals = 0;
  for (std::uint64_t before = 0; before < 60; ++before) {
    CAPTURE(before);
    RefusedRun run(200 + before);
    run.options.checkpoint_pages = 12;
    auto first = run.open();
    REQUIRE(first.has_value());
    for (std::uint64_t i = 0; i < before; ++i) {
      REQUIRE(run.write(**first).has_value());
    }
    run.disk.refuse_syncs(1);
    std::size_t acknowledged = run.writer.rows.size();
    for (int more = 0; more < 3; ++more) {
      if (run.write(**first)) {
        acknowledged = run.writer.rows.size();
      } else {
        ++refusals;
        break;
      }
    }
    run.kill(std::move(*first));
    run.disk.restart();
    auto second = run.open();
    REQUIRE(second.has_value());
    CHECK(run.row_count(**second) >= acknowledged);
  }
  CHECK(refusals == 60);  // and it was never passed over
}
