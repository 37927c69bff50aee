// An exam of which a part came by stick, and what lies before that part did not: a correction names as seen only what is whole here.
#include "tests/unit/service/clinic/other_device.hpp"

#include <doctest/doctest.h>

using namespace limbledger::service;
using namespace limbledger::service::test;
namespace ledger = limbledger::ledger;
namespace model = limbledger::model;

namespace {

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
  // What waits is on the page and not among what may be named as seen.
  CHECK(seen == "[\"" + opening.to_text() + "\"]");
  CHECK(fixture.ok("exam.read", R"({"exam":")" + exam_text + "\"}").find(R"({"entry":")" + shown.to_text() + R"(","mark":"waits"})") != std::string::npos);
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
  // The form was open while what had been missing came: it was on no screen.
  fixture.ok("finding.record", R"({"exam":")" + exam_text + R"(","seen":)" + seen +
                                   R"(,"findings":[{"item":"knee.extension_passive","side":"left","value":{"kind":"angle","deg":0,"toward":"extension","toward_deg":0},"replaces":[]}],"request":")" +
                                   request_id(4) + "\"}");
  const auto behind = fixture.desk->log().operations(object);
  const ledger::Graph with(*behind);
  for (const ledger::Opened& one : *behind) {
    CHECK_FALSE((one.operation().op.text == "finding" && with.saw(*with.find(one.entry()), *with.find(before))));
  }
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
