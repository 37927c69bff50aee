// One suite for every store behind the port: memory, and SQLite in a folder of its own below the temporary folder.
#include "core/store/leaf.hpp"
#include "core/store/memory.hpp"
#include "core/store/sqlite.hpp"
#include "tests/unit/ledger/support.hpp"
#include "tests/unit/store/support.hpp"

#include <doctest/doctest.h>

#include <functional>

using namespace limbledger;
using namespace limbledger::ledger::test;
using limbledger::store::test::Folder;
using ledger::Head;
using ledger::Row;
using ledger::RowState;

namespace {

using Opened = std::unique_ptr<ledger::LogStore>;
constexpr std::uint64_t end = UINT64_MAX;

// Runs a case on each store; `again` closes and opens what can be opened again.
void on_each(const std::function<void(Opened& store, const std::function<void()>& again)>& test) {
  SUBCASE("memory") {
    Opened store = std::make_unique<store::MemoryStore>();
    test(store, [] {});
  }
  SUBCASE("sqlite") {
    const Folder home;
    const auto open = [&]() -> Opened {
      auto opened = store::SqliteStore::open(home.file("ledger"), {.clinic = Writer().origin.clinic});
      REQUIRE(opened.has_value());
      return std::move(*opened);
    };
    Opened store = open();
    test(store, [&] {
      store.reset();
      store = open();
    });
    CHECK(store->check_lists(false)->empty());
  }
}

bool same(const Row& a, const Row& b) {
  return a.replica == b.replica && a.seq == b.seq && a.hash == b.hash && a.state == b.state && a.header == b.header &&
         a.body == b.body;
}

bool same(const std::vector<Row>& a, const std::vector<Row>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Row& x, const Row& y) { return same(x, y); });
}

std::vector<Row> all(ledger::LogStore& store, const model::ReplicaId& replica) {
  auto rows = store.read(replica, 0, end, 1000000);
  REQUIRE(rows.has_value());
  return *rows;
}

void put(ledger::LogStore& store, const std::vector<Row>& rows, const std::vector<Head>& heads = {},
         const ledger::Meta& meta = {}) {
  const auto done = store.append(rows, heads, meta);
  REQUIRE_MESSAGE(done.has_value(), (done ? "" : code_of(done.error())));
}

Writer some_entries(int count, std::uint8_t device = 2) {
  Writer writer(device);
  writer.introduce();
  for (int i = 1; i < count; ++i) {
    writer.write("text " + std::to_string(i));
  }
  return writer;
}

}  // namespace

TEST_CASE("what was appended is read back, also after opening again, with its head and meta") {
  on_each([](Opened& store, const auto& again) {
    const Writer writer = some_entries(5);
    put(*store, writer.rows, {writer.head()}, {{"token", {1, 2, 3}}, {"other", {4}}});
    for (int round = 0; round < 2; ++round) {
      CHECK(same(all(*store, writer.origin.replica), writer.rows));
      const auto heads = store->heads();
      REQUIRE(heads.has_value());
      CHECK(heads->newest == std::vector<Head>{writer.head()});
      CHECK(heads->meta == ledger::Meta{{"token", {1, 2, 3}}, {"other", {4}}});
      again();
    }
    put(*store, {}, {}, {{"token", {}}, {"other", {5}}});
    CHECK(store->heads()->meta == ledger::Meta{{"other", {5}}});
  });
}

TEST_CASE("what was appended with its flush put off is read at once, and flushed when asked") {
  on_each([](Opened& store, const std::function<void()>& again) {
    Writer writer;
    writer.introduce();
    store->put_off_flush(true);
    REQUIRE(store->append(writer.rows, std::vector<Head>{writer.head()}, {}).has_value());
    CHECK(same(all(*store, writer.origin.replica), writer.rows));
    CHECK(store->flush().has_value());
    CHECK(store->flush().has_value());
    again();
    CHECK(same(all(*store, writer.origin.replica), writer.rows));
  });
}

TEST_CASE("a chain of which nothing was put off need not be waited for, and one of which something was, is") {
  on_each([](Opened& store, const std::function<void()>& again) {
    const Writer own = some_entries(3);
    const Writer other = some_entries(3, 3);
    put(*store, own.rows, {own.head()});
    store->put_off_flush(true);
    REQUIRE(store->append(other.rows, std::vector<Head>{other.head()}, {}).has_value());
    CHECK(store->flush_chain(own.origin.replica).has_value());
    CHECK(store->flush_chain(other.origin.replica).has_value());
    again();
    CHECK(same(all(*store, own.origin.replica), own.rows));
    CHECK(same(all(*store, other.origin.replica), other.rows));
  });
}

TEST_CASE("a read keeps to its range and limit") {
  on_each([](Opened& store, const auto&) {
    const Writer writer = some_entries(20);
    put(*store, writer.rows);
    const auto numbers = [&](std::uint64_t from, std::uint64_t to, std::size_t limit) {
      std::vector<std::uint64_t> out;
      for (const Row& row : *store->read(writer.origin.replica, from, to, limit)) {
        out.push_back(row.seq);
      }
      return out;
    };
    using Numbers = std::vector<std::uint64_t>;
    CHECK(numbers(3, 6, 100) == Numbers{3, 4, 5, 6});
    CHECK(numbers(3, 6, 2) == Numbers{3, 4});
    CHECK(numbers(19, end, 100) == Numbers{19, 20});
    CHECK(numbers(0, 1, 100) == Numbers{1});
    CHECK(numbers(6, 3, 100).empty());
    CHECK(numbers(21, end, 100).empty());
    CHECK(store->read(model::ReplicaId{}, 0, end, 100)->empty());
  });
}

TEST_CASE("a row that is there already changes nothing, one that contradicts it changes nothing at all") {
  on_each([](Opened& store, const auto&) {
    Writer writer = some_entries(3);
    put(*store, writer.rows);
    put(*store, writer.rows);
    CHECK(same(all(*store, writer.origin.replica), writer.rows));

    const Row& fresh = writer.write("fresh");
    Row contrary = writer.rows[1];
    contrary.body[0] ^= 1;
    const auto refused = store->append(std::vector<Row>{fresh, contrary}, {}, {{"name", {1}}});
    REQUIRE_FALSE(refused.has_value());
    CHECK(code_of(refused.error()) == "entry.hash");
    CHECK(param_of(refused.error(), "seq") == "2");
    CHECK(all(*store, writer.origin.replica).size() == 3);
    CHECK(store->heads()->meta.empty());
    put(*store, {fresh});
    CHECK(all(*store, writer.origin.replica).size() == 4);
  });
}

TEST_CASE("a new replica of a refused append is forgotten with it") {
  on_each([](Opened& store, const auto&) {
    const Writer writer = some_entries(2);
    put(*store, writer.rows);
    Row contrary = writer.rows[1];
    contrary.header[8] ^= 1;
    const Writer other = some_entries(2, 9);
    CHECK_FALSE(store->append(std::vector<Row>{other.rows[0], contrary}, {}, {}).has_value());
    CHECK(all(*store, other.origin.replica).empty());
    put(*store, other.rows, {other.head()});
    CHECK(same(all(*store, other.origin.replica), other.rows));
  });
}

TEST_CASE("rows are found by key id, of every replica, and plain entries under none") {
  on_each([](Opened& store, const auto& again) {
    const Writer one = some_entries(4);
    const Writer two = some_entries(3, 9);
    put(*store, one.rows);
    put(*store, two.rows);
    again();
    const auto found = store->read_kid(one.key.kid());
    REQUIRE(found.has_value());
    REQUIRE(found->size() == 5);
    CHECK(std::is_sorted(found->begin(), found->end(), [](const Row& a, const Row& b) {
      return std::tie(a.replica, a.seq, a.hash) < std::tie(b.replica, b.seq, b.hash);
    }));
    CHECK(store->read_kid(model::KeyId{})->empty());
    CHECK(store->read_kid(model::KeyId{filled<16>(1)})->empty());
  });
}

TEST_CASE("every entry is found once under its key, whichever keys take turns and on whichever branch of a fork it lies") {
  on_each([](Opened& store, const auto& again) {
    std::vector<ledger::ObjectKey> keys;
    for (std::uint8_t number = 40; number < 44; ++number) {
      keys.emplace_back(secret_of(number), ledger::object_of(Writer().origin.clinic, ledger::ObjectType::exam, model::RequestId{filled<16>(number)}, 0));
    }
    const Writer stem = some_entries(3);
    put(*store, stem.rows);
    std::vector<Writer> branches(3, stem);
    std::vector<Row> written = stem.rows;
    for (unsigned step = 0; step < 120; ++step) {
      Writer& branch = branches[step * 7 % 11 % 3];
      branch.key = keys[step * 3 / 7 % keys.size()];
      written.push_back(branch.write("step " + std::to_string(step)));
      put(*store, {written.back()});
      if (step % 17 == 0) {
        put(*store, {written[written.size() / 2]});  // what is there already is listed no second time
        again();
      }
    }
    again();
    keys.push_back(stem.key);
    for (const ledger::ObjectKey& key : keys) {
      std::vector<model::EntryId> wanted;
      for (const Row& row : written) {
        if (std::equal(key.kid().bytes.begin(), key.kid().bytes.end(), row.header.begin() + 16)) {
          wanted.push_back(ledger::entry_id(row.hash));
        }
      }
      std::vector<model::EntryId> found;
      const auto rows = store->read_kid(key.kid());
      REQUIRE(rows.has_value());
      for (const Row& row : *rows) {
        found.push_back(ledger::entry_id(row.hash));
      }
      std::sort(wanted.begin(), wanted.end());
      std::sort(found.begin(), found.end());
      CHECK(wanted.size() > 1);
      CHECK(found == wanted);
    }
  });
}

TEST_CASE("a newer head replaces its leaf, an older one does not come back, and thousandths are kept") {
  on_each([](Opened& store, const auto& again) {
    Writer writer = some_entries(1);
    const Head first = writer.head();
    put(*store, writer.rows, {first});
    std::vector<Row> batch;
    std::vector<Head> heads;
    for (int i = 2; i <= 2050; ++i) {
      batch.push_back(writer.write("x"));
      if (i % 3 == 0) {
        heads.push_back(writer.head());
      }
    }
    put(*store, batch, heads);
    const Head last = heads.back();
    put(*store, {}, {first});
    again();
    const auto read = store->heads();
    CHECK(read->newest == std::vector<Head>{last});
    std::vector<std::uint64_t> kept;
    for (const Head& head : read->kept) {
      kept.push_back(head.seq);
    }
    CHECK(kept == std::vector<std::uint64_t>{1002, 2001, last.seq});
  });
}

TEST_CASE("HC-085: two branches of a fork both stay, each with its newest head") {
  on_each([](Opened& store, const auto& again) {
    const Writer stem = some_entries(3);
    put(*store, stem.rows, {stem.head()});
    Writer left = stem;
    Writer right = stem;
    left.write("left 4");
    left.write("left 5");
    right.write("right 4");
    put(*store, {left.rows[3], left.rows[4]}, {left.head()});
    put(*store, {right.rows[3]}, {right.head()});
    CHECK(store->heads()->newest.size() == 2);
    again();
    right.write("right 5");
    right.write("right 6");
    put(*store, {right.rows[4], right.rows[5]}, {right.head()});
    left.write("left 6");
    put(*store, {left.rows[5]}, {left.head()});
    // What lies below a leaf is no leaf.
    put(*store, {}, {stem.head()});
    again();
    const auto newest = store->heads()->newest;
    REQUIRE(newest.size() == 2);
    CHECK(((newest[0] == left.head() && newest[1] == right.head()) || (newest[0] == right.head() && newest[1] == left.head())));
    const auto rows = all(*store, stem.origin.replica);
    CHECK(rows.size() == 9);
    CHECK(std::is_sorted(rows.begin(), rows.end(),
                         [](const Row& a, const Row& b) { return std::tie(a.seq, a.hash) < std::tie(b.seq, b.hash); }));
  });
}

TEST_CASE("a dropped body leaves its hash, the chain verifies, and an erased one never comes back") {
  on_each([](Opened& store, const auto& again) {
    const Writer writer = some_entries(4);
    put(*store, writer.rows, {writer.head()});
    const std::vector<model::EntryId> erased{ledger::entry_id(writer.rows[2].hash), model::EntryId{filled<16>(1)}};
    const std::vector<model::EntryId> pruned{ledger::entry_id(writer.rows[3].hash)};
    REQUIRE(store->drop_bodies(erased, RowState::erased).has_value());
    REQUIRE(store->drop_bodies(pruned, RowState::pruned).has_value());
    REQUIRE(store->drop_bodies(erased, RowState::pruned).has_value());
    again();
    auto rows = all(*store, writer.origin.replica);
    CHECK(rows[1].state == RowState::whole);
    CHECK(rows[2].state == RowState::erased);
    CHECK(rows[2].body.size() == 32);
    CHECK(rows[3].state == RowState::pruned);
    CHECK(verify_run(writer.origin, start_of(writer.origin), rows, writer.head()).has_value());

    put(*store, writer.rows);
    rows = all(*store, writer.origin.replica);
    CHECK(rows[2].state == RowState::erased);
    CHECK(same(rows[3], writer.rows[3]));
  });
}

TEST_CASE("parked rows are kept apart and given back once") {
  on_each([](Opened& store, const auto& again) {
    const Writer writer = some_entries(6);
    const std::vector<Row> late(writer.rows.begin() + 3, writer.rows.end());
    REQUIRE(store->park(late).has_value());
    REQUIRE(store->park(std::vector<Row>{late[0]}).has_value());
    again();
    CHECK(all(*store, writer.origin.replica).empty());
    CHECK(store->read_kid(writer.key.kid())->empty());
    CHECK(same(*store->park({}), late));
    CHECK(store->park({})->empty());
  });
}

TEST_CASE("a body of 1 MiB and an empty one are kept as they are") {
  on_each([](Opened& store, const auto& again) {
    Writer writer;
    ledger::Header header;
    header.kind = static_cast<ledger::Kind>(99);
    writer.add(header, {});
    header.body_length = static_cast<std::uint32_t>(ledger::body_size_max);
    writer.add(header, ledger::Bytes(ledger::body_size_max, 7));
    put(*store, writer.rows, {writer.head()});
    again();
    CHECK(same(all(*store, writer.origin.replica), writer.rows));
  });
}
