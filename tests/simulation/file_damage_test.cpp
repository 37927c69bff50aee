// Each byte of the store's file, changed one at a time: either something says so, or the entries, heads and meta read
// back as they were (a third of such a file is slack). Every seventh byte by default, every one with LIMBLEDGER_TIER=full.
#include "core/store/sqlite.hpp"
#include "tests/simulation/power_cut_vfs.hpp"
#include "tests/unit/ledger/support.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <string>

using namespace limbledger;
using namespace limbledger::ledger::test;
using limbledger::simulation::PowerCutDisk;
using limbledger::store::SqliteOptions;
using limbledger::store::SqliteStore;

namespace {

enum class Seen { detected, identical, missed };

Seen look(const Writer& writer, const ledger::Heads& good, const SqliteOptions& options) {
  const auto opened = SqliteStore::open("ledger", options);
  if (!opened) {
    return Seen::detected;
  }
  if (const auto lists = (*opened)->check_lists(false); !lists || !lists->empty()) {
    return Seen::detected;
  }
  auto rows = (*opened)->read(writer.origin.replica, 0, UINT64_MAX, 1000000);
  const auto heads = (*opened)->heads();
  const auto by_key = (*opened)->read_kid(writer.key.kid());
  if (!rows || !heads || !by_key) {
    return Seen::detected;
  }
  bool same = rows->size() == writer.rows.size() && by_key->size() == writer.rows.size() - 1 && heads->newest == good.newest &&
              heads->kept == good.kept && heads->meta == good.meta;
  for (std::size_t i = 0; same && i < rows->size(); ++i) {
    same = (*rows)[i].hash == writer.rows[i].hash && (*rows)[i].header == writer.rows[i].header &&
           (*rows)[i].body == writer.rows[i].body && (*rows)[i].state == writer.rows[i].state;
  }
  if (same) {
    return Seen::identical;
  }
  if (heads->newest.size() != 1 || heads->kept.size() != good.kept.size()) {
    return Seen::detected;
  }
  for (const ledger::Head& head : heads->kept) {
    if (!verify_head(writer.origin.clinic, writer.origin.sign_pub, head)) {
      return Seen::detected;
    }
  }
  // What is local and not part of the log (meta) is authenticated by whoever keeps it.
  const bool only_meta = heads->newest == good.newest && heads->kept == good.kept && heads->meta != good.meta;
  const bool verifies =
      verify_run(writer.origin, start_of(writer.origin), std::move(*rows), heads->newest.front()).has_value();
  return !verifies || only_meta ? Seen::detected : Seen::missed;
}

}  // namespace

TEST_CASE("a changed byte anywhere in the file is detected or changes nothing that is read") {
  PowerCutDisk disk(424242);
  Writer writer;
  SqliteOptions options;
  options.clinic = writer.origin.clinic;
  options.vfs = disk.vfs_name();
  writer.introduce();
  writer.give_key(1, ledger::BoxPair::from_seed(secret_of(7)).pub(), 8);
  for (int i = 0; i < 30; ++i) {
    writer.write(std::string(static_cast<std::size_t>(i) * 40, 'x'));
  }
  ledger::Heads good;
  {
    const auto opened = SqliteStore::open("ledger", options);
    REQUIRE(opened.has_value());
    const ledger::Head head = writer.head();
    REQUIRE((*opened)->append(writer.rows, {&head, 1}, {{"count", {1, 2, 3, 4}}}).has_value());
    good = *(*opened)->heads();
  }
  REQUIRE(disk.content("ledger-wal").empty());
  const PowerCutDisk::Bytes file = disk.content("ledger");
  REQUIRE(file.size() > 20000);
  REQUIRE(look(writer, good, options) == Seen::identical);

  const char* tier = std::getenv("LIMBLEDGER_TIER");
  const std::size_t step = tier != nullptr && std::string(tier) == "full" ? 1 : 7;
  std::size_t detected_count = 0;
  std::size_t identical_count = 0;
  std::string missed;
  for (std::size_t i = 0; i < file.size(); i += step) {
    PowerCutDisk::Bytes changed = file;
    changed[i] ^= static_cast<std::uint8_t>(1U << (i / step % 8));
    disk.set_content("ledger", std::move(changed));
    disk.set_content("ledger-wal", {});
    const Seen seen = look(writer, good, options);
    detected_count += seen == Seen::detected ? 1U : 0U;
    identical_count += seen == Seen::identical ? 1U : 0U;
    if (seen == Seen::missed) {
      missed += ' ' + std::to_string(i);
    }
  }
  INFO("detected " << detected_count << ", read back identical " << identical_count);
  CHECK(missed == "");
  std::size_t entry_bytes = 0;
  for (const ledger::Row& row : writer.rows) {
    entry_bytes += row.hash.size() + row.header.size() + row.body.size();
  }
  CHECK(detected_count >= entry_bytes / step);
}
