// A slip in the century is asked back and never refused: a birth of 1850, an examination of 1900. Logic tests of our own limits
// (110 and 50 years, a convention). All people are invented; the world's clock stands at 2026-11-24T10:15Z.
#include "tests/unit/service/desk_fixture.hpp"

using namespace limbledger::service;
using namespace limbledger::service::test;

namespace {

struct OldDates : DeskFixture {
  unsigned requests = 900;
  std::string request() { return R"("request":")" + request_id(++requests) + "\""; }
  std::string registering(const std::string& birth, const std::string& more = "") {
    return codes_of(call("person.register", R"({"names":[{"text":"Wulan Invented"}],"birth":)" + birth + R"(,"sex":"female",)" + request() + more + "}"));
  }
  std::string opening(const std::string& members) {
    return codes_of(call("exam.open", R"({"complaint":"free","setting":"outreach","offset_min":0,)" + request() + members + "}"));
  }
};

const std::string answered_for = R"(,"confirmed":["value.unusual"])";

}  // namespace

TEST_CASE("a birth of 1850 and an age of 120 are asked back once and then taken; 1917 is not asked about") {
  OldDates clinic;
  CHECK(clinic.registering(R"({"date":"1850"})") == "value.unusual");
  CHECK(clinic.registering(R"({"date":"1850"})", answered_for) == "answered");
  CHECK(clinic.registering(R"({"age_years":120,"on":"2026-11-24"})") == "value.unusual");
  CHECK(clinic.registering(R"({"age_years":109,"on":"2026-11-24"})") == "answered");
  CHECK(clinic.registering(R"({"date":"1917-01-01"})") == "answered");
}

TEST_CASE("an examination of 1900 is asked back once and then taken; one copied from a card of 1990 is not asked about") {
  OldDates clinic;
  CHECK(clinic.opening(R"(,"examined_at":"1900-05-01T10:00:00.000Z")") == "value.unusual");
  CHECK(clinic.opening(R"(,"examined_at":"1900-05-01T10:00:00.000Z")" + answered_for) == "answered");
  CHECK(clinic.opening(R"(,"examined_at":"1990-05-01T10:00:00.000Z")") == "answered");
}
