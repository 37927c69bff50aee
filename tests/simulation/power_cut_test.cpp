// The power goes while entries are written: nothing acknowledged is lost and the ledger verifies. Killing a process
// does not test this, for the system writes on; a disk that forgets does. The same test without flushes must fail.
#include "core/store/sqlite.hpp"
#include "tests/simulation/power_cut_vfs.hpp"
#include "tests/unit/ledger/support.hpp"
#include "tests/unit/store/support.hpp"

#include <doctest/doctest.h>

#include <cstdlib>

#include <sqlite3.h>

using namespace limbledger;
using namespace limbledger::ledger::test;
using limbledger::simulation::PowerCutDisk;
using limbledger::store::Flush;
using limbledger::store::SqliteOptions;
using limbledger::store::SqliteStore;
using limbledger::store::test::as_version_1;
using limbledger::store::test::as_version_2;

namespace {

std::uint64_t cut_count() {
  const char* asked = std::getenv("LIMBLEDGER_POWER_CUTS");
  return asked == nullptr ? 60 : std::strtoull(asked, nullptr, 10);
}

ledger::ObjectKey key_of_exam(const Writer& writer, std::uint8_t number) {
  return {secret_of(number), ledger::object_of(writer.origin.clinic, ledger::ObjectType::exam, model::RequestId{filled<16>(number)}, 0)};
}

// One ledger on one disk, through several cuts.
class Run {
 public:
  Run(std::uint64_t seed, Flush flush, bool early) : disk_(seed), early_(early) {
    options_.clinic = writer_.origin.clinic;
    options_.flush = flush;
    options_.vfs = disk_.vfs_name();
    options_.checkpoint_pages = seed % 2 == 0 ? 12 : 1000;
  }

  // Writes until the power goes or enough is written.
  void write_until_cut() {
    disk_.cut_at(disk_.random() % 400);
    auto opened = SqliteStore::open("ledger", options_);
    for (int i = 0; opened && !disk_.is_cut() && i < 200; ++i) {
      const std::size_t before = writer_.rows.size();
      for (std::uint64_t more = disk_.random() % 3 + 1; more > 0; --more) {
        if (writer_.rows.empty()) {
          writer_.introduce();
        }
        if (disk_.random() % 4 == 0) {
          writer_.key = keys_[disk_.random() % keys_.size()];  // another exam
        }
        writer_.write(std::string(disk_.random() % 900, 'x'));
      }
      const ledger::Head head = writer_.head();
      const ledger::Bytes count = ledger::ByteWriter(8).u64(head.seq).take();
      const bool late = early_ || disk_.random() % 2 == 0;
      if (late) {
        (*opened)->put_off_flush(true);
      }
      if ((*opened)->append(std::span(writer_.rows).subspan(before), {&head, 1}, {{"count", count}}) && (!late || early_ || flushed(**opened))) {
        acknowledged_ = writer_.rows.size();
      }
    }
    if (opened && !disk_.is_cut()) {
      // Let it go while the store closes: the last checkpoint and the removal of the log.
      disk_.cut_at(disk_.random() % 20);
    }
  }

  // Empty, or what is wrong after the power came back.
  std::string check() {
    disk_.restart();
    if (yes_after_no_) {
      return "a flush failed and a later one answered yes";
    }
    auto opened = SqliteStore::open("ledger", options_);
    if (!opened) {
      return "does not open: " + code_of(opened.error());
    }
    if (const auto lists = (*opened)->check_lists(false); !lists || !lists->empty()) {
      return "the file's pages or lists do not agree";
    }
    auto rows = (*opened)->read(writer_.origin.replica, 0, UINT64_MAX, 1000000);
    const auto heads = (*opened)->heads();
    if (!rows || !heads) {
      return "does not read";
    }
    if (rows->size() < acknowledged_) {
      return std::to_string(acknowledged_ - rows->size()) + " acknowledged entries lost";
    }
    for (std::size_t i = 0; i < rows->size(); ++i) {
      if ((*rows)[i].hash != writer_.rows[i].hash || (*rows)[i].body != writer_.rows[i].body) {
        return "entry " + std::to_string(i + 1) + " differs";
      }
    }
    if (rows->empty()) {
      writer_ = Writer();
      return heads->newest.empty() && heads->meta.empty() ? "" : "a head without entries";
    }
    const ledger::Bytes count = ledger::ByteWriter(8).u64(rows->size()).take();
    if (heads->newest.size() != 1 || heads->meta.at("count") != count) {
      return "head and meta are not of the same commit";
    }
    const std::size_t size = rows->size();
    if (!verify_run(writer_.origin, start_of(writer_.origin), std::move(*rows), heads->newest.front())) {
      return "the chain does not verify";
    }
    // Goes on from what there is.
    writer_.rows.resize(size);
    writer_.joint = {size, writer_.rows.back().hash};
    acknowledged_ = size;
    return "";
  }

  [[nodiscard]] const PowerCutDisk& disk() const { return disk_; }
  [[nodiscard]] std::size_t acknowledged() const { return acknowledged_; }

 private:
  bool flushed(ledger::LogStore& store) {
    const bool done = (disk_.random() % 2 == 0 ? store.flush() : store.flush_chain(writer_.origin.replica)).has_value();
    yes_after_no_ = yes_after_no_ || (!done && store.flush().has_value());
    return done;
  }

  PowerCutDisk disk_;
  bool early_;  // acknowledges before the flush that was put off
  bool yes_after_no_ = false;
  Writer writer_;
  std::vector<ledger::ObjectKey> keys_{writer_.key, key_of_exam(writer_, 41), key_of_exam(writer_, 42)};
  SqliteOptions options_;
  std::size_t acknowledged_ = 0;
};

struct CutOutcome {
  std::uint64_t cuts = 0;
  std::uint64_t failures = 0;
  std::uint64_t lost_pieces = 0;
  std::uint64_t entries = 0;
  std::string first;
};

CutOutcome cut_often(std::uint64_t cuts, Flush flush, std::uint64_t first_seed, bool early = false) {
  constexpr int cuts_a_disk = 4;
  CutOutcome out;
  for (std::uint64_t seed = first_seed; out.cuts < cuts; ++seed) {
    Run run(seed, flush, early);
    for (int i = 0; i < cuts_a_disk && out.cuts < cuts; ++i) {
      run.write_until_cut();
      ++out.cuts;
      const std::string wrong = run.check();
      if (!wrong.empty()) {
        ++out.failures;
        out.first = out.first.empty() ? "seed " + std::to_string(seed) + " cut " + std::to_string(i) + ": " + wrong : out.first;
        break;
      }
    }
    out.lost_pieces += run.disk().lost_piece_count();
    out.entries += run.acknowledged();
  }
  return out;
}

}  // namespace

TEST_CASE("HC-061: no acknowledged entry is lost when the power goes, and the ledger verifies each time") {
  const CutOutcome outcome = cut_often(cut_count(), Flush::full, 1);
  INFO(outcome.first);
  CHECK(outcome.failures == 0);
  CHECK(outcome.cuts == cut_count());
  // The cuts did take something away, and something had been written.
  CHECK(outcome.lost_pieces > outcome.cuts);
  CHECK(outcome.entries > outcome.cuts);
}

TEST_CASE("the same cuts without flushes lose acknowledged entries, so the test can see a loss") {
  const CutOutcome outcome = cut_often(cut_count(), Flush::off, 1);
  INFO(outcome.first);
  CHECK(outcome.failures > 0);
}

TEST_CASE("the same cuts with flushes only at checkpoints lose acknowledged entries") {
  const CutOutcome outcome = cut_often(cut_count(), Flush::normal, 1);
  INFO(outcome.first);
  CHECK(outcome.failures > 0);
}

TEST_CASE("the same cuts lose entries that were acknowledged before the flush that was put off") {
  const CutOutcome outcome = cut_often(cut_count(), Flush::full, 1, true);
  INFO(outcome.first);
  CHECK(outcome.failures > 0);
}

namespace {

// Cuts at every write and flush of bringing the file up to date; how many there were.
std::size_t cut_while_brought_up_to_date(const std::string& taken_back) {
  std::size_t cuts = 0;
  for (bool cut = true; cut; ++cuts) {
    CAPTURE(cuts);
    PowerCutDisk disk(900 + cuts);
    Writer writer;
    const std::vector<ledger::ObjectKey> keys{key_of_exam(writer, 41), key_of_exam(writer, 42)};
    SqliteOptions options;
    options.clinic = writer.origin.clinic;
    options.vfs = disk.vfs_name();
    writer.introduce();
    for (std::size_t i = 0; i < 60; ++i) {
      writer.key = keys[i / 7 % keys.size()];
      writer.write(std::string(i * 9, 'x'));
    }
    const ledger::Head head = writer.head();
    REQUIRE((*SqliteStore::open("ledger", options))->append(writer.rows, {&head, 1}, {}).has_value());
    sqlite3* raw = nullptr;
    REQUIRE(sqlite3_open_v2("ledger", &raw, SQLITE_OPEN_READWRITE, disk.vfs_name().c_str()) == SQLITE_OK);
    REQUIRE(sqlite3_exec(raw, ("PRAGMA locking_mode=EXCLUSIVE;" + taken_back).c_str(), nullptr, nullptr, nullptr) == SQLITE_OK);
    REQUIRE(sqlite3_close(raw) == SQLITE_OK);
    disk.cut_at(cuts);
    static_cast<void>(SqliteStore::open("ledger", options));
    cut = disk.is_cut();
    disk.restart();
    const auto opened = SqliteStore::open("ledger", options);
    REQUIRE(opened.has_value());
    CHECK((*opened)->check_lists(false)->empty());
    CHECK((*opened)->heads()->newest == std::vector{head});
    CHECK((*opened)->read(writer.origin.replica, 0, UINT64_MAX, 1000)->size() == writer.rows.size());
    CHECK((*opened)->read_kid(keys[0].kid())->size() + (*opened)->read_kid(keys[1].kid())->size() == writer.rows.size() - 1);
  }
  return cuts;
}

}  // namespace

TEST_CASE("the power goes while a file of an earlier layout is brought up to date: it is of one layout or the other, with every entry") {
  CHECK(cut_while_brought_up_to_date(std::string(as_version_2) + ";" + as_version_1) > 10);
  CHECK(cut_while_brought_up_to_date(as_version_2) > 5);
}
