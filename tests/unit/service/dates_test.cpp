// Dates against each other and against today, and the identifiers that are read aloud. Logic tests of our own rules; hard case
// HC-084 (a clock at 1970), clinical safety C10 (two identifiers). All people are invented; the world's clock stands at
// 2026-11-24T10:15Z.
#include "tests/unit/service/desk_fixture.hpp"

using namespace limbledger::service;
using namespace limbledger::service::test;
using limbledger::Result;

namespace {

struct Clinic : DeskFixture {
  unsigned requests = 500;
  std::string request() { return R"("request":")" + request_id(++requests) + "\""; }

  Result<std::string> registering(const std::string& birth, const std::string& more = "") {
    return call("person.register", R"({"names":[{"text":"Wulan Invented"}],"birth":)" + birth +
                                       R"(,"sex":"female","home":"Upper Ford","identifiers":[{"issuer":"Clinic K","text":"00123"}],)" + request() + more + "}");
  }
  std::string person(const std::string& birth) {
    const auto reply = registering(birth);
    REQUIRE(codes_of(reply) == "answered");
    return at(*reply, "/person/person");
  }
  Result<std::string> opening(const std::string& members) {
    return call("exam.open", R"({"complaint":"free","setting":"outreach","offset_min":0,)" + request() + members + "}");
  }
};

const std::string confirmed = R"(,"confirmed":["value.unusual"])";

std::string document(const std::string& person, const std::string& exam, const std::string& more = "") {
  return R"({"document":{"format":"limbledger-exam/1","as_of":"2026-11-24","person":)" + person + R"(,"exam":{"complaint":"acute_knee","side":"left",)"
         R"("setting":"outreach")" + exam + R"(},"findings":[]})" + more + "}";
}

}  // namespace

TEST_CASE("a code that nothing asks back with is refused where it stands, and nothing is written") {
  DeskFixture clinic;
  const std::string registering = R"({"names":[{"text":"Asha Invented"}],"sex":"female","request":")" + request_id(1) + R"(","confirmed":)";
  for (const char* wrong : {R"(["value.unusual","value.unusal"])", R"(["value.unusual","value.out_of_range"])"}) {
    const auto refused = clinic.call("person.register", registering + wrong + "}");
    CHECK(codes_of(refused) == "params.unknown_word");
    CHECK(path_of(refused) == "/confirmed/1");
  }
  CHECK(at(clinic.ok("person.find", R"({"text":"asha"})"), "/people") == "[]");
  CHECK(codes_of(clinic.call("person.register", registering + R"(["value.unusual"]})")) == "answered");
  const std::string opened = clinic.ok("exam.open", R"({"complaint":"acute_knee","side":"left","setting":"outreach","request":")" + request_id(2) + "\"}");
  const auto finding = clinic.call("finding.record", R"({"exam":")" + at(opened, "/exam/exam") + R"(","seen":[")" + at(opened, "/revision/0") + R"("],"request":")" + request_id(3) +
                                                         R"(","findings":[{"item":"knee.flexion_active","side":"left","value":{"kind":"angle","deg":168},"confirmed":["yes"]}]})");
  CHECK(codes_of(finding) == "params.unknown_word");
  CHECK(path_of(finding) == "/findings/0/confirmed/0");
}

TEST_CASE("a birth, or the day an age was true, in the future is asked back once, and only by a clock that can be right") {
  Clinic clinic;
  const auto asked = clinic.registering(R"({"date":"2027-01"})");
  CHECK(codes_of(asked) == "value.unusual");
  CHECK(path_of(asked) == "/birth/date");
  CHECK(asked.error().number() == limbledger::wire::FaultClass::asked_back);
  CHECK(codes_of(clinic.registering(R"({"date":"2027-01"})", confirmed)) == "answered");
  const auto age = clinic.registering(R"({"age_years":50,"on":"2026-12-24"})");
  CHECK(codes_of(age) == "value.unusual");
  CHECK(path_of(age) == "/birth/on");
  CHECK(codes_of(clinic.registering(R"({"date":"2026"})")) == "answered");
  CHECK(codes_of(clinic.registering(R"({"date":"2026-11-24"})")) == "answered");
  clinic.world.reading.wall_ms = 180'000;  // 1970-01-01T00:03Z
  CHECK(codes_of(clinic.registering(R"({"date":"2027-01"})")) == "answered");
}

// The world's clock stands at 2026-11-24T10:15Z, when it is the 25th in the places furthest east.
TEST_CASE("a day is told as it is by the clock, and what an instant says of the future needs no time zone") {
  Clinic clinic;
  const auto tomorrow = clinic.registering(R"({"date":"2026-11-25"})", R"(,"language":"en")");
  REQUIRE(codes_of(tomorrow) == "value.unusual");
  CHECK(tomorrow.error().faults.front().text == "By the clock of this device it is 2026-11-24 in UTC, and this day has not come yet. Check it; confirm it, or change it.");
  CHECK(tomorrow.error().faults.front().expected == "not after today, 2026-11-24 in UTC; somewhere it is 2026-11-25");
  CHECK(codes_of(clinic.registering(R"({"date":"2026-11-25"})", confirmed)) == "answered");
  CHECK(codes_of(clinic.opening(R"(,"examined_at":"2026-11-24T12:15:00.000Z")")) == "answered");
  const auto later = clinic.opening(R"(,"examined_at":"2026-11-24T12:16:00.000Z","language":"en")");
  REQUIRE(codes_of(later) == "value.unusual");
  CHECK(later.error().faults.front().text == "By the clock of this device it is 2026-11-24 10:15 in UTC, and this time has not come yet. Check it; confirm it, or change it.");
  // At a place whose offset is known its own day is told.
  const auto injured = clinic.call("exam.open", R"({"complaint":"free","setting":"outreach","offset_min":840,"examined_on":"2026-11-26","language":"en",)" + clinic.request() + "}");
  REQUIRE(codes_of(injured) == "value.unusual");
  CHECK(injured.error().faults.front().text == "By this device it is 2026-11-25, and this day has not come yet. Check it; confirm it, or change it.");
}

TEST_CASE("nobody is examined or injured before birth: refused, and no word confirms it") {
  Clinic clinic;
  const std::string child = R"(,"person":")" + clinic.person(R"({"date":"2026-11-24"})") + "\"";
  const auto before = clinic.opening(child + R"(,"examined_at":"2026-11-23T10:00:00.000Z")" + confirmed);
  CHECK(codes_of(before) == "value.date_order");
  CHECK(path_of(before) == "/person");
  const auto injured = clinic.opening(child + R"(,"injured_on":"2026-11-23")" + confirmed);
  CHECK(codes_of(injured) == "value.date_order");
  CHECK(path_of(injured) == "/injured_on");
  CHECK(codes_of(clinic.opening(child + R"(,"injured_on":"2026-11-24","examined_at":"2026-11-24T10:00:00.000Z")")) == "answered");
  // About 50, give or take 5: born in 1970 at the earliest.
  const std::string about = R"(,"person":")" + clinic.person(R"({"age_years":50,"plus_minus":5,"on":"2026-11-24"})") + "\"";
  CHECK(codes_of(clinic.opening(about + R"(,"injured_on":"1969")")) == "value.date_order");
  CHECK(codes_of(clinic.opening(about + R"(,"injured_on":"1972")")) == "answered");
}

TEST_CASE("an examination or an injury in the future is asked back; after the stated day of the examination it is refused") {
  Clinic clinic;
  const auto later = clinic.opening(R"(,"examined_at":"2026-11-25T10:00:00.000Z")");
  CHECK(codes_of(later) == "value.unusual");
  CHECK(path_of(later) == "/examined_at");
  CHECK(codes_of(clinic.opening(R"(,"examined_at":"2026-11-24T23:00:00.000Z")")) == "value.unusual");
  const auto injured = clinic.opening(R"(,"injured_on":"2026-11-25")");
  CHECK(codes_of(injured) == "value.unusual");
  CHECK(path_of(injured) == "/injured_on");
  CHECK(codes_of(clinic.opening(R"(,"injured_on":"2026-11-25")" + confirmed)) == "answered");
  CHECK(codes_of(clinic.opening(R"(,"examined_at":"2026-11-20T10:00:00.000Z","injured_on":"2026-11-21")")) == "value.date_order");
  const auto opened = clinic.opening("");
  const auto finding = clinic.call("finding.record", R"({"exam":")" + at(*opened, "/exam/exam") + R"(","seen":)" + at(*opened, "/revision") + "," +
                                                         clinic.request() +
                                                         R"(,"findings":[{"item":"gait.steps_now","side":"midline","value":{"kind":"count","count":4},)"
                                                         R"("examined_at":"2026-12-01T10:00:00.000Z"}]})");
  CHECK(codes_of(finding) == "value.unusual");
  CHECK(path_of(finding) == "/findings/0/examined_at");
}

TEST_CASE("HC-084: a clock at 1970 refuses nobody: the exam is opened, and the birth after its stamp is no contradiction") {
  Clinic clinic;
  const std::string person = R"(,"person":")" + clinic.person(R"({"date":"1990"})") + "\"";
  clinic.world.reading.wall_ms = 180'000;
  CHECK(codes_of(clinic.opening(person)) == "answered");
  CHECK(codes_of(clinic.opening(person + R"(,"injured_on":"2026-11-23")")) == "answered");
}

TEST_CASE("a birth amended, or an exam moved to somebody born after it, is asked back") {
  Clinic clinic;
  const auto made = clinic.registering(R"({"date":"1990"})");
  const std::string person = at(*made, "/person/person");
  const auto opened = clinic.opening(R"(,"person":")" + person + R"(","examined_at":"2026-11-23T10:00:00.000Z")");
  const auto amend = [&](const std::string& more) {
    return clinic.call("person.amend", R"({"person":")" + person + R"(","changes":{"birth":{"date":"2026-11-24"}},"replaces":)" + at(*made, "/revision") +
                                           R"(,"seen":)" + at(*made, "/revision") + "," + clinic.request() + more + "}");
  };
  CHECK(codes_of(amend("")) == "value.unusual");
  CHECK(path_of(amend("")) == "/changes/birth");
  CHECK(codes_of(amend(confirmed)) == "answered");
  const std::string newborn = clinic.person(R"({"date":"2026-11-24"})");
  const auto move = [&](const std::string& more) {
    return clinic.call("exam.move", R"({"exam":")" + at(*opened, "/exam/exam") + R"(","person":")" + newborn + R"(","reason":"namesakes","seen":)" +
                                        at(*opened, "/revision") + "," + clinic.request() + more + "}");
  };
  CHECK(codes_of(move("")) == "value.unusual");
  CHECK(codes_of(move(confirmed)) == "answered");
}

TEST_CASE("a document states its own days: what cannot be is refused, what lies after as_of is asked back") {
  Clinic clinic;
  const auto judged = [&](const std::string& person, const std::string& exam, const std::string& more = "") {
    return clinic.call("document.assess", document(person, exam, more));
  };
  const std::string adult = R"({"birth":{"date":"1990"},"sex":"male","norm_sex":"male"})";
  const auto unborn = judged(R"({"birth":{"date":"2026-11-25"},"sex":"male","norm_sex":"male"})", "", confirmed);
  CHECK(codes_of(unborn) == "value.date_order");
  CHECK(path_of(unborn) == "/document/person/birth");
  CHECK(codes_of(judged(R"({"birth":{"date":"2026-11-24"},"sex":"male","norm_sex":"male"})", R"(,"injured_on":"2026-11-23")")) == "value.date_order");
  CHECK(codes_of(judged(adult, R"(,"injured_on":"2026-11-25")")) == "value.date_order");
  CHECK(codes_of(judged(adult, R"(,"examined_at":"2026-11-26T10:00:00.000Z")")) == "value.unusual");
  CHECK(codes_of(judged(adult, R"(,"examined_at":"2026-11-26T10:00:00.000Z")", confirmed)) == "answered");
  CHECK(codes_of(judged(adult, R"(,"injured_on":"2026-11-24")")) == "answered");
  CHECK(codes_of(judged(R"({"birth":{"age_years":3,"on":"2026-12-24"},"sex":"male","norm_sex":"male"})", "")) == "value.unusual");
}

TEST_CASE("C10: identifiers that are not the person's are asked back when an exam is opened and when it is signed") {
  Clinic clinic;
  const std::string person = R"(,"person":")" + clinic.person(R"({"date":"1971-05"})") + "\"";
  const auto identified = [&](const std::string& names, const std::string& more = "") {
    return clinic.opening(person + R"(,"identified":)" + names + more);
  };
  const auto wrong = identified(R"(["Wulan Invented","00124"])");
  CHECK(codes_of(wrong) == "person.mismatch");
  CHECK(path_of(wrong) == "/identified/1");
  CHECK(wrong.error().number() == limbledger::wire::FaultClass::asked_back);
  for (const char* good : {R"(["wulan","00123"])", R"(["Invented, Wulan","clinic K 00123"])", R"(["1971","Upper Ford"])", R"(["1971-05-12"," 00123 "])"}) {
    INFO(good);
    CHECK(codes_of(identified(good)) == "answered");
  }
  for (const char* bad : {R"(["123"])", R"(["Wulan Madeup"])", R"(["1972"])", R"(["Clinic M 00123"])", R"(["Lower Ford"])"}) {
    INFO(bad);
    CHECK(codes_of(identified(bad)) == "person.mismatch");
  }
  const auto opened = identified(R"(["Asha"])", R"(,"confirmed":["person.mismatch"])");
  REQUIRE(codes_of(opened) == "answered");
  const auto sign = [&](const std::string& names) {
    return clinic.call("exam.sign", R"({"exam":")" + at(*opened, "/exam/exam") + R"(","read_aloud":"Wulan Invented, LEFT knee","identified":)" + names +
                                        R"(,"seen":)" + at(*opened, "/revision") + "," + clinic.request() + "}");
  };
  CHECK(codes_of(sign(R"(["Asha Invented","00123"])")) == "person.mismatch");
  CHECK(codes_of(sign(R"(["Wulan Invented","00123"])")) == "answered");
}
