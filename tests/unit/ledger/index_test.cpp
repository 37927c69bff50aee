#include "tests/unit/ledger/kept_store.hpp"

using namespace limbledger::ledger;
using namespace limbledger::ledger::test;
namespace service = limbledger::service;
using service::test::at;
using service::test::DeskFixture;
using service::test::request_id;

namespace {

constexpr const char* index_name = "index";

void fill(const DeskFixture& fixture, unsigned from, unsigned to) {
  for (unsigned i = from; i <= to; ++i) {
    fixture.ok("person.register", R"({"names":[{"text":"Invented )" + std::to_string(i) + R"("}],"sex":"unknown","request":")" + request_id(i) + "\"}");
  }
}

// A desk over this store and what it answers to a row of questions.
struct Answers {
  std::string people;
  std::string one;
  std::string request;
  std::string verified;
  std::size_t read_on_opening = 0;
  friend bool operator==(const Answers& a, const Answers& b) {
    return a.people == b.people && a.one == b.one && a.request == b.request && a.verified == b.verified;
  }
};

Answers ask(DeskFixture& fixture, KeptStore& store) {
  auto desk = service::Desk::open(store, fixture.world, *limbledger::reference::built_in_edition(), fixture.made.keyring);
  REQUIRE(desk.has_value());
  const std::size_t before = store.read_count;
  REQUIRE((*desk)->unlock("", service::test::passphrase).has_value());
  Answers answers;
  answers.read_on_opening = store.read_count - before;
  const auto ok = [&](const char* method, const std::string& params) {
    auto result = service::test::call(**desk, method, params);
    REQUIRE(service::test::codes_of(result) == "answered");
    return std::move(*result);
  };
  answers.people = ok("person.find", R"({"limit":500})");
  answers.one = ok("person.read", R"({"person":")" + at(answers.people, "/people/3/person/person") + "\"}");
  answers.request = ok("request.read", R"({"request":")" + request_id(5) + "\"}");
  answers.verified = ok("ledger.verify", "{}");
  return answers;
}

}  // namespace

TEST_CASE("a ledger opened with its index, without it and with an old one gives equal answers") {
  DeskFixture fixture;
  fill(fixture, 1, 12);
  fixture.desk->lock();
  const KeptStore old(fixture.store);
  REQUIRE(old.all.meta.contains(index_name));
  fixture.unlock();
  fill(fixture, 13, 20);
  fixture.desk->lock();
  KeptStore with(fixture.store);
  KeptStore without(fixture.store);
  without.all.meta.erase(index_name);
  KeptStore older(fixture.store);
  older.all.meta[index_name] = old.all.meta.at(index_name);
  const std::size_t rows = with.rows.size();
  const Answers expected = ask(fixture, without);
  CHECK(expected.read_on_opening >= rows);
  CHECK(at(expected.people, "/people/19/person/person") != "");
  CHECK(at(expected.request, "/state") == "recorded");
  CHECK(at(expected.verified, "/damage") == "[]");
  const Answers by_index = ask(fixture, with);
  CHECK(by_index == expected);
  CHECK(by_index.read_on_opening < 4);
  const Answers by_old = ask(fixture, older);
  CHECK(by_old == expected);
  CHECK(by_old.read_on_opening < rows);
}

TEST_CASE("an index with a changed byte, cut short, of another key or ahead of the chain is not used") {
  DeskFixture fixture;
  fill(fixture, 1, 6);
  fixture.desk->lock();
  const KeptStore good(fixture.store);
  KeptStore without(good);
  without.all.meta.erase(index_name);
  const Answers expected = ask(fixture, without);
  const Bytes index = good.all.meta.at(index_name);
  const auto ask_with = [&](const Bytes& bytes) {
    KeptStore store(good);
    store.all.meta[index_name] = bytes;
    return ask(fixture, store);
  };
  const auto unused = [&](const Bytes& bytes) {
    const Answers answers = ask_with(bytes);
    CHECK(answers == expected);
    CHECK(answers.read_on_opening == expected.read_on_opening);
  };
  for (std::size_t i = 0; i < index.size(); i += std::size_t{i < 64 || i + 64 > index.size() ? 7U : 61U}) {
    INFO(i);
    Bytes changed = index;
    changed[i] ^= 0x10;
    unused(changed);
  }
  unused(Bytes(index.begin(), index.end() - 1));
  unused({});
  DeskFixture other(service::LedgerKind::clinic, 5);
  fill(other, 1, 2);
  other.desk->lock();
  unused(KeptStore(other.store).all.meta.at(index_name));

  // The chain as it was before the index: what the index covers beyond it is not there.
  fixture.unlock();
  fill(fixture, 7, 8);
  fixture.desk->lock();
  unused(KeptStore(fixture.store).all.meta.at(index_name));
}

TEST_CASE("the index is written as it was read, and nothing else is taken for one") {
  DeskFixture fixture;
  fill(fixture, 1, 4);
  fixture.desk->lock();
  KeptStore store(fixture.store);
  const auto log = Log::open(store, fixture.world, identity_of(fixture));
  REQUIRE(log.has_value());
  const Bytes bytes = (*log)->index().to_bytes();
  const auto again = Index::from_bytes(bytes);
  REQUIRE(again.has_value());
  CHECK(again->to_bytes() == bytes);
  CHECK(again->object_of.size() == 5);
  for (std::size_t length = 0; length < bytes.size(); ++length) {
    REQUIRE_FALSE(Index::from_bytes(View(bytes).first(length)).has_value());
  }
  Bytes longer = bytes;
  longer.push_back(0);
  CHECK_FALSE(Index::from_bytes(longer).has_value());
}
