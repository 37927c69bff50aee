// An exam of which a part came by stick, and what lies before that part did not: a correction names as seen only what is whole here.
#include "core/ledger/fold/records.hpp"
#include "tests/unit/ledger/kept_store.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <doctest/doctest.h>

using namespace limbledger::service;
using namespace limbledger::service::test;
namespace ledger = limbledger::ledger;
namespace model = limbledger::model;

namespace {

// Another device of the clinic, with a copy of all that the others hold.
struct OtherDevice {
  ledger::test::KeptStore store;
  FixedWorld world;
  ledger::Identity identity;
  std::unique_ptr<ledger::Log> log;

  OtherDevice(const DeskFixture& fixture, ledger::LogStore& from, std::uint8_t seed) : store(from), world(seed), identity(ledger::test::other_device(fixture, seed)) {
    ledger::test::introduce(store, world, identity);
    auto opened = ledger::Log::open(store, world, identity);
    REQUIRE(opened.has_value());
    log = std::move(*opened);
  }
  model::EntryId write(const model::ObjectId& exam, unsigned request, std::string op, std::string body_json, std::vector<model::EntryId> after) {
    ledger::NewOperation operation;
    operation.object = exam;
    operation.op = std::move(op);
    REQUIRE(model::RequestId::from_text(request_id(request), operation.request).empty());
    operation.after = std::move(after);
    operation.body_json = std::move(body_json);
    const auto written = log->append({&operation, 1}, model::EditionId{"facts.test"}, nullptr);
    REQUIRE(written.has_value());
    return written->front().entry();
  }
  // Its own chain alone reaches the desk.
  void give_to(const DeskFixture& fixture) {
    const auto rows = store.read(identity.replica(), 1, 1000, 1000);
    const ledger::Head head = *std::find_if(store.all.newest.begin(), store.all.newest.end(), [&](const ledger::Head& one) { return one.replica == identity.replica(); });
    REQUIRE(fixture.desk->log().take({identity.clinic, identity.replica(), identity.device_key.pub()}, *rows, head).has_value());
    std::vector<model::ObjectId> objects;
    for (const auto& [object, known] : fixture.desk->log().index().objects) {
      objects.push_back(object);
    }
    fixture.desk->records().forget(objects);
  }
};

std::string finding(const std::string& exam, const std::string& seen, unsigned request) {
  return R"({"exam":")" + exam + R"(","seen":)" + seen + R"(,"findings":[{"item":"knee.flexion_passive","side":"left","value":{"kind":"angle","deg":120,"toward":"flexion","toward_deg":120},"replaces":[]}],"request":")" +
         request_id(request) + "\"}";
}

}  // namespace

TEST_CASE("a finding recorded while the entry before a shown one has not come does not name that entry's past as seen, and may be sent again") {
  DeskFixture fixture;
  const std::string opened = fixture.ok("exam.open", R"({"setting":"outreach","complaint":"free","request":")" + request_id(1) + "\"}");
  const std::string exam_text = at(opened, "/exam/exam");
  model::ExamId exam;
  REQUIRE(model::ExamId::from_text(exam_text, exam).empty());
  const model::ObjectId object = model::as_object(exam);
  const model::EntryId opening = fixture.desk->log().operations(object)->front().entry();

  OtherDevice second(fixture, fixture.store, 77);
  const model::EntryId before = second.write(object, 701, "impression", R"({"impression":{"text":"stiff"}})", {opening});
  OtherDevice third(fixture, second.store, 78);
  const model::EntryId shown = third.write(object, 702, "consent", "{}", {before});
  third.give_to(fixture);

  const std::string seen = at(fixture.ok("exam.read", R"({"exam":")" + exam_text + "\"}"), "/revision");
  CHECK(seen.find(shown.to_text()) != std::string::npos);
  const std::string recorded = fixture.ok("finding.record", finding(exam_text, seen, 2));
  const auto held = fixture.desk->log().operations(object);
  const auto mine = std::find_if(held->begin(), held->end(), [](const ledger::Opened& one) { return one.operation().op.text == "finding"; });
  REQUIRE(mine != held->end());
  CHECK(mine->operation().after == std::vector{opening});

  CHECK(at(fixture.ok("finding.record", finding(exam_text, seen, 2)), "/repeat") == "true");
  second.give_to(fixture);
  CHECK(at(fixture.ok("finding.record", finding(exam_text, seen, 2)), "/repeat") == "true");
  const auto all = fixture.desk->log().operations(object);
  const ledger::Graph graph(*all);
  CHECK_FALSE(graph.saw(*graph.find(mine->entry()), *graph.find(before)));
  // Once all is here, what is shown is named.
  const std::string whole = at(fixture.ok("exam.read", R"({"exam":")" + exam_text + "\"}"), "/revision");
  const std::string later = fixture.ok("finding.record", R"({"exam":")" + exam_text + R"(","seen":)" + whole +
                                                             R"(,"findings":[{"item":"knee.flexion_passive","side":"right","value":{"kind":"angle","deg":110,"toward":"flexion","toward_deg":110},"replaces":[]}],"request":")" +
                                                             request_id(3) + "\"}");
  const auto in_the_end = fixture.desk->log().operations(object);
  const ledger::Graph now(*in_the_end);
  CHECK(now.heads().size() == 1);
  CHECK(now.saw(*now.find(now.heads().front()), *now.find(before)));
}
