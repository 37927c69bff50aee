#include "tests/unit/ledger/kept_store.hpp"

#include "core/ledger/fold/records.hpp"

using namespace limbledger::ledger;
using namespace limbledger::ledger::test;
namespace model = limbledger::model;
using limbledger::service::test::DeskFixture;
using limbledger::service::test::FixedWorld;

namespace {

model::RequestId request_of(std::uint8_t number) {
  model::RequestId request;
  request.bytes.fill(number);
  return request;
}

NewOperation person_operation(const Log& log, std::uint8_t request, const std::string& name) {
  NewOperation operation;
  operation.request = request_of(request);
  operation.object = log.object_for(ObjectType::person, operation.request, 0);
  operation.type = ObjectType::person;
  operation.op = "person";
  operation.body_json = R"({"names":[{"text":")" + name + R"("}],"sex":"unknown"})";
  return operation;
}

NewOperation change_operation(const model::ObjectId& person, std::uint8_t request, const std::string& body, std::vector<model::EntryId> after) {
  NewOperation operation;
  operation.request = request_of(request);
  operation.object = person;
  operation.type = ObjectType::person;
  operation.op = "person_change";
  operation.after = std::move(after);
  operation.body_json = body;
  return operation;
}

std::vector<Opened> append(Log& log, const NewOperation& operation) {
  auto appended = log.append({&operation, 1}, model::EditionId{"facts.1"}, nullptr);
  REQUIRE(appended.has_value());
  return std::move(*appended);
}

std::unique_ptr<Log> open_log(LogStore& store, World& world, const Identity& identity) {
  auto log = Log::open(store, world, identity);
  REQUIRE(log.has_value());
  return std::move(*log);
}

std::string param_of(const limbledger::wire::Fault& fault, std::string_view name) {
  for (const auto& param : fault.params) {
    if (param.name == name) {
      return param.json;
    }
  }
  return {};
}

}  // namespace

TEST_CASE("a commit holds a fresh key before the first operation under it, and its last entry is marked") {
  const DeskFixture fixture;
  KeptStore store(const_cast<DeskFixture&>(fixture).store);
  FixedWorld world(9);
  const auto log = open_log(store, world, identity_of(fixture));
  const std::size_t before = store.rows.size();
  const auto opened = append(*log, person_operation(*log, 1, "Awa Invented"));
  REQUIRE(store.rows.size() == before + 2);
  const auto key = Header::from_bytes(store.rows[before].header);
  const auto operation = Header::from_bytes(store.rows[before + 1].header);
  CHECK(key->kind == Kind::key);
  CHECK_FALSE(key->last_of_commit());
  CHECK(operation->kind == Kind::op);
  CHECK(operation->last_of_commit());
  CHECK(operation->kid == key->kid);
  CHECK(key->stamp < operation->stamp);
  CHECK(store.all.newest.front().hash == store.rows.back().hash);
  append(*log, change_operation(opened.front().operation().object, 2, R"({"home":"Upper Ford"})", {opened.front().entry()}));
  CHECK(store.rows.size() == before + 3);  // the key is there already
}

TEST_CASE("operations of one commit see the earlier ones of it, and all are there or none") {
  DeskFixture fixture;
  FixedWorld world(9);
  const auto log = open_log(fixture.store, world, identity_of(fixture));
  const NewOperation first = person_operation(*log, 1, "Awa Invented");
  std::vector<NewOperation> both{first, change_operation(first.object, 1, R"({"home":"Upper Ford"})", {})};
  fixture.store.refuse_writes(true);
  CHECK_FALSE(log->append(both, {}, nullptr).has_value());
  CHECK(log->operations(first.object)->empty());
  CHECK_FALSE(log->index().requests.contains(first.request));
  fixture.store.refuse_writes(false);
  const auto opened = log->append(both, {}, nullptr);
  REQUIRE(opened.has_value());
  CHECK((*opened)[1].operation().after == std::vector<model::EntryId>{(*opened)[0].entry()});
  CHECK((*opened)[1].operation().part.steps == 2);
  CHECK((*opened)[1].operation().of.steps == 2);
  CHECK(log->operations(first.object)->size() == 2);
}

TEST_CASE("a planted fault in any entry is found on opening, named, and nothing is appended to the chain") {
  DeskFixture fixture;
  FixedWorld world(9);
  {
    const auto log = open_log(fixture.store, world, identity_of(fixture));
    append(*log, person_operation(*log, 1, "Awa Invented"));
    append(*log, person_operation(*log, 2, "Binta Invented"));
  }
  const KeptStore good(fixture.store);
  for (std::size_t i = 0; i < good.rows.size(); ++i) {
    INFO(i);
    KeptStore store(good);
    store.rows[i].body[5] ^= 1;
    const auto log = open_log(store, world, identity_of(fixture));
    REQUIRE_FALSE(log->damage().empty());
    const auto& fault = log->damage().front();
    CHECK(fault.code.rfind("entry.", 0) == 0);
    CHECK(param_of(fault, "seq") == std::to_string(i + 1));
    const NewOperation refused = person_operation(*log, 3, "Celine Invented");
    CHECK_FALSE(log->append({&refused, 1}, {}, nullptr).has_value());
    CHECK(store.rows.size() == good.rows.size());
  }
  KeptStore store(good);
  store.rows.erase(store.rows.begin() + 3);
  const auto log = open_log(store, world, identity_of(fixture));
  REQUIRE_FALSE(log->damage().empty());
  CHECK(param_of(log->damage().front(), "replica") == '"' + good.rows.front().replica.to_text() + '"');
}

TEST_CASE("a head whose signature does not hold is found on opening") {
  DeskFixture fixture;
  KeptStore store(fixture.store);
  store.all.newest.front().signature[7] ^= 1;
  FixedWorld world(9);
  const auto log = open_log(store, world, identity_of(fixture));
  REQUIRE(log->damage().size() == 1);
  CHECK(log->damage().front().code == "entry.head");
}

TEST_CASE("HC-081, HC-082, HC-089, rules 27 and 28: two writers that had not seen each other leave a conflict, and what only one changed does not meet it") {
  DeskFixture fixture;
  FixedWorld world_a(9);
  FixedWorld world_b(8);
  const auto log_a = open_log(fixture.store, world_a, identity_of(fixture));
  const auto first = append(*log_a, person_operation(*log_a, 1, "Awa Invented"));
  const model::ObjectId person = first.front().operation().object;
  // The second device holds a copy of the first one's chain.
  KeptStore store_b(fixture.store);
  const Identity identity_b = other_device(fixture, 77);
  introduce(store_b, world_b, identity_b);
  const auto log_b = open_log(store_b, world_b, identity_b);
  REQUIRE(log_b->damage().empty());
  append(*log_a, change_operation(person, 2, R"({"home":"Upper Ford","norm_sex":"female"})", {first.front().entry()}));
  append(*log_b, change_operation(person, 3, R"({"home":"Lower Ford"})", {first.front().entry()}));

  const auto rows = store_b.read(identity_b.replica(), 1, 1000, 1000);
  const Head head = *std::find_if(store_b.all.newest.begin(), store_b.all.newest.end(),
                                  [&](const Head& one) { return one.replica == identity_b.replica(); });
  const Origin origin{identity_b.clinic, identity_b.replica(), identity_b.device_key.pub()};
  CHECK(log_a->take(origin, *rows, head).has_value());
  const auto again = log_a->take(origin, *rows, head);
  REQUIRE(again.has_value());
  CHECK(*again == 0);

  Records records(*log_a);
  const auto record = records.person(model::PersonId{person.bytes});
  REQUIRE(record.has_value());
  const PersonFold& fold = (*record)->fold;
  CHECK_FALSE(fold.person.home.has_value());
  REQUIRE(fold.conflicts.size() == 1);
  CHECK(fold.conflicts.front().about.text == "home");
  CHECK(fold.conflicts.front().values->size() == 2);
  CHECK(fold.person.norm_sex == model::NormSex::female);
  CHECK(fold.person.revision->size() == 2);

  // A third writer that was shown both settles it.
  NewOperation settle = change_operation(person, 4, R"({"home":"Lower Ford"})", *fold.person.revision);
  settle.replaces = *fold.person.revision;
  const auto settled = append(*log_a, settle);
  records.changed(settled);
  const PersonFold& after = (*records.person(model::PersonId{person.bytes}))->fold;
  CHECK(after.person.home->text == "Lower Ford");
  CHECK(after.conflicts.empty());
}

TEST_CASE("stamps go on from the newest entry read, though the clock was set back") {
  DeskFixture fixture;
  FixedWorld world(9);
  Stamp before;
  {
    const auto log = open_log(fixture.store, world, identity_of(fixture));
    before = append(*log, person_operation(*log, 1, "Awa Invented")).front().stamp();
  }
  world.reading.wall_ms = 0;
  world.reading.clock = ClockQuality::unset;
  const auto log = open_log(fixture.store, world, identity_of(fixture));
  CHECK(before < append(*log, person_operation(*log, 2, "Binta Invented")).front().stamp());
}
