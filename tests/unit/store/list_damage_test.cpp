// A byte of the list by which the disk store finds the entries under one key: ledger.verify names the list and says what to do, and making
// it anew from the entries gives back what it left out. The entries themselves hold all the while.
#include "core/ledger/fold/records.hpp"
#include "core/ledger/log/log.hpp"
#include "core/store/sqlite.hpp"
#include "tests/unit/service/desk_fixture.hpp"
#include "tests/unit/store/support.hpp"

#include <doctest/doctest.h>
#include <sqlite3.h>

#include <algorithm>
#include <fstream>
#include <iterator>

namespace limbledger::store::list_damage {

namespace {

using service::test::at;
using service::test::DeskFixture;
using service::test::request_id;
using test::Folder;

constexpr std::size_t page_bytes = 4096;

struct OnDisk {
  OnDisk() {
    const std::string reply = fixture.ok("person.register", R"({"names":[{"text":"Awa Invented"}],"sex":"female","request":")" + request_id(1) + "\"}");
    person = at(reply, "/person/person");
    fixture.ok("person.amend", R"({"person":")" + person + R"(","changes":{"home":"Upper Ford"},"replaces":[],"seen":)" + at(reply, "/revision") + R"(,"request":")" + request_id(3) + "\"}");
    const auto store = SqliteStore::open(path, {.clinic = fixture.made.clinic});
    REQUIRE(store.has_value());
    const auto heads = fixture.store.heads();
    const auto rows = fixture.store.read(heads->newest.front().replica, 1, 1000, 1000);
    REQUIRE((*store)->append(*rows, heads->newest, {}).has_value());
  }
  // The kid of the person's run in the page that holds the runs, with one bit of its last byte another.
  void change_a_byte() {
    model::PersonId id;
    REQUIRE(model::PersonId::from_text(person, id).empty());
    const auto kid = fixture.desk->log().index().objects.at(model::as_object(id)).keys.front().kid().bytes;
    sqlite3* file = nullptr;
    REQUIRE(sqlite3_open(path.c_str(), &file) == SQLITE_OK);
    sqlite3_stmt* asked = nullptr;
    REQUIRE(sqlite3_prepare_v2(file, "SELECT rootpage FROM sqlite_schema WHERE name='runs'", -1, &asked, nullptr) == SQLITE_OK);
    REQUIRE(sqlite3_step(asked) == SQLITE_ROW);
    const auto page = static_cast<std::size_t>(sqlite3_column_int64(asked, 0));
    sqlite3_finalize(asked);
    REQUIRE(sqlite3_exec(file, "PRAGMA wal_checkpoint(TRUNCATE)", nullptr, nullptr, nullptr) == SQLITE_OK);
    sqlite3_close(file);
    std::ifstream in(path, std::ios::binary);
    std::string bytes{std::istreambuf_iterator<char>(in), {}};
    const auto begin = bytes.begin() + static_cast<std::ptrdiff_t>((page - 1) * page_bytes);
    const auto found = std::search(begin, begin + page_bytes, kid.begin(), kid.end(), [](char a, std::uint8_t b) { return static_cast<std::uint8_t>(a) == b; });
    REQUIRE(found != begin + page_bytes);
    found[15] = static_cast<char>(found[15] ^ 1);
    std::ofstream(path, std::ios::binary) << bytes;
  }

  DeskFixture fixture;
  Folder folder;
  std::string path = folder.file("ledger");
  std::string person;
};

}  // namespace

TEST_CASE("a changed byte of the list by key is told by ledger.verify, with the list and what to do, and the list is made anew") {
  OnDisk on_disk;
  on_disk.change_a_byte();
  const auto store = SqliteStore::open(on_disk.path, {});
  REQUIRE(store.has_value());
  auto desk = service::Desk::open(**store, on_disk.fixture.world, *reference::built_in_edition(), on_disk.fixture.made.keyring);
  REQUIRE(desk.has_value());
  const auto call = [&](std::string_view method, const std::string& params, const service::Caller& caller = {}) {
    return service::test::call(**desk, method, params, caller);
  };
  const auto locked = call("ledger.verify", "{}");
  REQUIRE(service::test::codes_of(locked) == "answered");
  CHECK(at(*locked, "/damage") == "[]");
  CHECK(at(*locked, "/lists/0/list") == "entries_by_key");
  CHECK(at(*locked, "/lists/0/code") == "entry.list");
  CHECK(at(*locked, "/lists/0/left_out") == "3");  // the key, the person and the change
  CHECK(at(*locked, "/lists/0/mended").empty());
  CHECK(at(*locked, "/lists/1").empty());
  CHECK(std::string(wire::find_fault_code("entry.list")->hint).find("verify DIR --mend") != std::string::npos);
  CHECK(at(*call("health.check", "{}"), "/store/damage") == R"({"count":1,"code":"entry.list"})");

  REQUIRE((*desk)->unlock("", service::test::passphrase).has_value());
  const std::string read = R"({"person":")" + on_disk.person + "\"}";
  CHECK(service::test::codes_of(call("person.read", read)) == "person.unknown");  // so that nobody sees what is there
  CHECK(service::test::codes_of(call("ledger.verify", R"({"mend":true})", {service::Scope::viewer, std::nullopt})) == "token.scope");
  const auto mended = call("ledger.verify", R"({"mend":true})");
  CHECK(at(*mended, "/lists/0/mended") == "true");
  CHECK(at(*call("ledger.verify", "{}"), "/lists").empty());
  CHECK(at(*call("health.check", "{}"), "/store/damage").empty());
  CHECK(at(*call("person.read", read), "/person/home") == "Upper Ford");
}

TEST_CASE("the lists of a whole file agree with its entries") {
  OnDisk on_disk;
  const auto store = SqliteStore::open(on_disk.path, {});
  REQUIRE(store.has_value());
  CHECK((*store)->check_lists(false)->empty());
  CHECK((*store)->check_lists(true)->empty());
}

}  // namespace limbledger::store::list_damage
