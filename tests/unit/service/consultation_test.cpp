// What the consultations S07 and S08 of clinical safety, part F, ask of the record: assent, company, a test again in 7 to 14 days, no
// return to sport before it, work with a limit and its date. All is the examiner's own word and is kept as it was said.
#include "tests/unit/service/desk_fixture.hpp"

#include <doctest/doctest.h>

namespace limbledger::service::test {

namespace {

struct Visit : DeskFixture {
  std::string exam;
  std::string seen;
  unsigned requests = 400;

  Visit() {
    const std::string reply =
        ok("exam.open", R"({"complaint":"acute_knee","side":"left","setting":"outreach","request":")" + request_id(++requests) + "\"}");
    exam = at(reply, "/exam/exam");
    seen = at(reply, "/revision/0");
  }
  std::string write(const std::string& method, const std::string& members) {
    const std::string reply =
        ok(method, "{" + members + R"(,"exam":")" + exam + R"(","seen":[")" + seen + R"("],"request":")" + request_id(++requests) + "\"}");
    seen = at(reply, "/revision/0");
    return reply;
  }
  [[nodiscard]] std::string read() const { return ok("exam.read", R"({"exam":")" + exam + "\"}"); }
};

}  // namespace

TEST_CASE("S07: a girl of fifteen assents and her mother consents by telephone, the coach is named, and the plan keeps its days") {
  Visit visit;
  visit.write("consent.record", R"("consent":{"examine":"yes","record":"yes","send":"yes","by":"mother, by telephone","capacity":"assent"},)"
                                R"("company":{"chaperone":"present","chaperone_name":"Invented Nurse","others":["coach"]})");
  visit.write("plan.record", R"("plan_items":[{"kind":"film","text":"film of the knee for loose bone","side":"left","by":"2026-11-24"},)"
                             R"({"kind":"review","text":"Lachman again, day 7 to 14","side":"left","by":"2026-12-08"},)"
                             R"({"kind":"limit","text":"no sport before the review","by":"2026-12-08"}])");
  const std::string shown = visit.read();
  CHECK(at(shown, "/exam/consent/by") == "mother, by telephone");
  CHECK(at(shown, "/exam/consent/capacity") == "assent");
  CHECK(at(shown, "/exam/company/others/0") == "coach");
  CHECK(at(shown, "/exam/plan/1/by") == "2026-12-08");
  CHECK(at(shown, "/exam/plan/2/kind") == "limit");
  CHECK(at(shown, "/exam/plan/2/became").empty());  // open until somebody says what became of it
}

TEST_CASE("S08: a limit for work with its date is kept, and what the program says plans nothing") {
  Visit visit;
  visit.write("finding.record", R"("findings":[{"item":"history.blood_thinners","side":"midline","value":{"kind":"answer","answer":"yes"}},)"
                                R"({"item":"history.swelling_onset","side":"left","value":{"kind":"choice","choice":"within_24h"}}])");
  CHECK(at(visit.read(), "/exam/plan").empty());
  visit.write("plan.record", R"("plan_items":[{"kind":"limit","text":"no field work","by":"2026-12-01"}])");
  CHECK(at(visit.read(), "/exam/plan/0/text") == "no field work");
  CHECK(at(visit.read(), "/exam/plan/0/by") == "2026-12-01");
}

}  // namespace limbledger::service::test
