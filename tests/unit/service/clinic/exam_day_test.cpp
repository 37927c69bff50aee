// The day of an exam where the clock of its device cannot be relied on (HC-084): nothing is judged or printed by it, it is asked for, and a
// person can say it, while the exam is open and after its signature. Our own rules. All is invented; the clock stands at
// 2026-11-24T10:15Z where nothing else is said.
#include "core/ledger/fold/records.hpp"
#include "core/ledger/log/log.hpp"
#include "tests/unit/service/desk_fixture.hpp"

namespace limbledger::service::test::exam_day {

namespace {

constexpr std::int64_t year_2001_ms = 978307440000;  // 2001-01-01T00:04Z, by date -u
constexpr std::int64_t day_ms = 86'400'000;

struct Tablet : DeskFixture {
  Tablet() : DeskFixture(LedgerKind::demonstration) {}  // which prints sheets whose words nobody has read yet
  unsigned requests = 500;
  std::string exam;
  std::string seen;

  std::string request() { return R"("request":")" + request_id(++requests) + "\""; }
  std::string person(const std::string& birth, const std::string& name = "Otieno Madeup") {
    return at(ok("person.register", R"({"names":[{"text":")" + name + R"("}],"birth":)" + birth + R"(,"sex":"male","home":"Upper Ford",)" + request() + "}"), "/person/person");
  }
  Result<std::string> opening(const std::string& of, const std::string& more = "") {
    return call("exam.open", R"({"complaint":"ankle_injury","side":"left","setting":"outreach","offset_min":180,"person":")" + of + "\"," + request() + more + "}");
  }
  std::string open(const std::string& of, const std::string& more = "") {
    const auto reply = opening(of, more);
    REQUIRE(codes_of(reply) == "answered");
    keep(*reply);
    return *reply;
  }
  void keep(const std::string& reply) {
    exam = at(reply, "/exam/exam").empty() ? exam : at(reply, "/exam/exam");
    seen = at(reply, "/revision");
  }
  std::string of_exam(const std::string& more) { return R"({"exam":")" + exam + R"(","seen":)" + seen + "," + request() + "," + more + "}"; }
  Result<std::string> saying(const std::string& day, const std::string& more = "") {
    return call("exam.amend", of_exam(R"("changes":{"examined_on":")" + day + "\"}" + more));
  }
  std::string read() { return ok("exam.read", R"({"exam":")" + exam + "\"}"); }
  std::string assess() { return ok("exam.assess", R"({"exam":")" + exam + R"(","language":"en"})"); }
  // Without its line ends.
  std::string note(const std::string& method = "note.write") {
    std::string page;
    for (const char c : at(ok(method, R"({"exam":")" + exam + "\"}"), "/text")) {
      const bool space = c == ' ' || c == '\n';
      if (!space || !page.ends_with(' ')) {
        page += space ? ' ' : c;
      }
    }
    return page;
  }
  void sign() { keep(ok("exam.sign", of_exam(R"("read_aloud":"Otieno Madeup, LEFT ankle")"))); }
  Result<std::string> adding(const std::string& day, const std::string& more = "") {
    return call("addendum.record", of_exam(R"("kind":"correction","reason":"the day of the exam","examined_on":")" + day + "\"" + more));
  }
  std::string listed(const std::string& day) {
    const std::string list = ok("day.list", R"({"day":")" + day + R"(","language":"en"})");
    const bool here = list.find(exam) != std::string::npos;
    return !here ? "not there" : (at(list, "/undated").find(exam) != std::string::npos ? "undated" : "of the day");
  }
};

bool asks_for_day(const std::string& assessment) { return at(assessment, "/contradictions").find("contradiction.examined_day") != std::string::npos; }
bool says(const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; }

}  // namespace

TEST_CASE("HC-084: by a tablet of the year 2001 no age is printed or judged by, and the day is asked for") {
  Tablet tablet;
  const std::string man = tablet.person(R"({"date":"1984-03-02"})");
  tablet.world.reading.wall_ms = year_2001_ms;
  const std::string opened = tablet.open(man);
  CHECK(at(opened, "/remarks/0") == "clock_suspect");
  CHECK(at(opened, "/exam/day_doubtful") == "true");
  tablet.keep(tablet.ok("finding.record", tablet.of_exam(R"("findings":[{"item":"ankle.lateral_malleolus_tender","side":"left","value":{"kind":"answer","answer":"no"}}])")));
  // Also once it came to a device whose clock is right.
  for (const std::int64_t now : {year_2001_ms, std::int64_t{1795515300000}}) {
    tablet.world.reading.wall_ms = now;
    const std::string assessment = tablet.assess();
    CHECK(asks_for_day(assessment));
    CHECK(says(at(assessment, "/contradictions"), "When was this done? The clock of the device said 2001-01-01"));
    const std::string note = tablet.note();
    CHECK(says(note, "DAY NOT KNOWN"));
    CHECK(says(note, "age not known"));
    CHECK_FALSE(says(note, "16 years"));
    CHECK_FALSE(says(note, "16-17"));
    CHECK_FALSE(says(note, "examined 2001"));
  }
  CHECK(tablet.listed("2026-11-24") == "undated");
  tablet.world.reading.wall_ms = year_2001_ms;
  tablet.sign();
  CHECK(says(at(tablet.read(), "/exam/incomplete"), "\"day\""));
  CHECK(says(tablet.note(), "2001-01-01 03:04 UTC+03:00 by a clock that cannot have been right"));
  const std::string home = tablet.note("take_home.write");
  CHECK(says(home, "Seen on a day not known"));
  CHECK_FALSE(says(home, "2001"));
}

TEST_CASE("a document whose exam is of a doubtful day is judged without an age, whether it says so or its own day shows it; one that states an old day by that day") {
  Tablet tablet;
  const auto judged = [&](const std::string& more, const std::string& as_of = "2026-11-24", const std::string& at = "2001-01-01T00:04:00.000Z") {
    return tablet.ok("document.assess", R"({"document":{"format":"limbledger-exam/1","as_of":")" + as_of + R"(","person":{"birth":{"date":"1984-03-02"},"sex":"male","norm_sex":"male"},"exam":)"
                                        R"({"complaint":"ankle_injury","side":"left","setting":"outreach","examined_at":")" + at + "\"" +
                                            more + R"(},"findings":[]},"language":"en"})");
  };
  CHECK(asks_for_day(judged(R"(,"day_doubtful":true)")));
  CHECK_FALSE(asks_for_day(judged(R"(,"day_doubtful":true,"examined_on":"2026-11-24")")));
  // A document may have been written before the program was there: one of last month keeps its day and its age.
  CHECK_FALSE(asks_for_day(judged("", "2026-11-24", "2026-10-26T09:00:00.000Z")));
  CHECK_FALSE(asks_for_day(judged("", "2026-11-24", "2025-11-24T09:00:00.000Z")));
  CHECK(asks_for_day(judged("", "2026-11-24", "2025-11-20T09:00:00.000Z")));
  CHECK(asks_for_day(judged("")));
  CHECK_FALSE(asks_for_day(judged(R"(,"examined_on":"2001-01-01")")));
  CHECK_FALSE(asks_for_day(judged("", "2001-01-02")));
}

TEST_CASE("what a person says stands before the clock: at opening, by an amendment, and as far as it is known") {
  Tablet tablet;
  const std::string man = tablet.person(R"({"date":"1984-11-10"})");
  tablet.world.reading.wall_ms = year_2001_ms;
  const std::string opened = tablet.open(man, R"(,"examined_on":"2026-11-24")");
  CHECK(at(opened, "/remarks").empty());
  CHECK(at(opened, "/exam/examined_on") == "2026-11-24");
  CHECK_FALSE(asks_for_day(tablet.assess()));
  CHECK(says(tablet.note(), "42 years"));
  CHECK(tablet.listed("2026-11-24") == "of the day");
  CHECK(tablet.listed("2026-11-25") == "not there");
  tablet.open(man);
  CHECK(asks_for_day(tablet.assess()));
  const auto said = tablet.saying("2026-11");
  REQUIRE(codes_of(said) == "answered");
  tablet.keep(*said);
  CHECK_FALSE(asks_for_day(tablet.assess()));
  CHECK(says(tablet.note(), "41-42 years"));
  CHECK(tablet.listed("2026-11-03") == "undated");
  CHECK(tablet.listed("2026-12-01") == "not there");
  const auto closer = tablet.saying("2026-11-09");
  REQUIRE(codes_of(closer) == "answered");
  CHECK(says(tablet.note(), "41 years"));
  CHECK(at(tablet.ok("exam.find", R"({"from":"2026-11-09","to":"2026-11-09"})"), "/exams/0/exam") == tablet.exam);
}

TEST_CASE("a day that is said is not in the future, nor before the birth or the injury") {
  Tablet tablet;
  const std::string man = tablet.person(R"({"date":"1984-11-10"})");
  const auto future = tablet.opening(man, R"(,"examined_on":"2026-12-24")");
  CHECK(codes_of(future) == "value.unusual");
  CHECK(path_of(future) == "/examined_on");
  CHECK(codes_of(tablet.opening(man, R"(,"examined_on":"2026-12-24","confirmed":["value.unusual"])")) == "answered");
  const auto unborn = tablet.opening(man, R"(,"examined_on":"1984-11-09","confirmed":["value.unusual"])");
  CHECK(codes_of(unborn) == "value.date_order");
  CHECK(path_of(unborn) == "/examined_on");
  CHECK(codes_of(tablet.opening(man, R"(,"examined_on":"2026-11-20","injured_on":"2026-11-21")")) == "value.date_order");
  const auto other = tablet.opening(man, R"(,"examined_on":"2026-11-20","examined_at":"2026-11-21T10:00:00.000Z")");
  CHECK(codes_of(other) == "value.date_order");
  CHECK(path_of(other) == "/examined_at");
  CHECK(codes_of(tablet.opening(man, R"(,"examined_on":"2026-11-31")")) != "answered");
  tablet.open(man, R"(,"injured_on":"2026-11-21")");
  CHECK(codes_of(tablet.saying("2026-12-24")) == "value.unusual");
  CHECK(path_of(tablet.saying("1984-11-09")) == "/changes/examined_on");
  CHECK(codes_of(tablet.saying("1984-11-09")) == "value.date_order value.date_order");
  CHECK(codes_of(tablet.saying("2026-11-20")) == "value.date_order");
  CHECK(codes_of(tablet.saying("2026-11-22")) == "answered");
}

TEST_CASE("who says the day of an exam of a doubtful clock is asked for the injury that the same clock dated") {
  Tablet tablet;
  const std::string man = tablet.person(R"({"date":"1984-11-10"})");
  tablet.world.reading.wall_ms = year_2001_ms;
  tablet.open(man, R"(,"injured_on":"2001-01-01")");
  const auto asked = tablet.saying("2026-11-24");
  CHECK(codes_of(asked) == "value.unusual");
  CHECK(says(asked.error().faults.front().expected, "injured_on"));
  CHECK(codes_of(tablet.call("exam.amend", tablet.of_exam(R"("changes":{"examined_on":"2026-11-24","injured_on":"2026-11-24"})"))) == "answered");
}

TEST_CASE("after the signature the day is said in an addendum, and of two that did not know each other neither is the day") {
  Tablet tablet;
  const std::string man = tablet.person(R"({"date":"1984-11-10"})");
  tablet.world.reading.wall_ms = year_2001_ms;
  tablet.open(man);
  tablet.sign();
  tablet.world.reading.wall_ms = 1795515300000;
  CHECK(codes_of(tablet.saying("2026-11-24")) == "exam.signed");
  CHECK(codes_of(tablet.adding("1984-11-09")) == "value.date_order");
  CHECK(codes_of(tablet.adding("2026-12-24")) == "value.unusual");
  const std::string signed_as = tablet.seen;
  const auto said = tablet.adding("2026-11-24");
  REQUIRE(codes_of(said) == "answered");
  CHECK(at(*said, "/addendum/examined_on") == "2026-11-24");
  CHECK(tablet.listed("2026-11-24") == "of the day");
  CHECK_FALSE(says(at(tablet.ok("day.list", R"({"day":"2026-11-24"})"), "/visits/0/left"), "\"day\""));
  CHECK(says(tablet.note(), "42 years"));
  CHECK(says(tablet.note(), "The exam was done on 2026-11-24"));
  CHECK_FALSE(asks_for_day(tablet.assess()));
  // As another tablet wrote it that had not seen this one.
  ledger::NewOperation operation;
  model::ExamId id;
  REQUIRE(model::ExamId::from_text(tablet.exam, id).empty());
  operation.object = model::as_object(id);
  operation.op = "addendum";
  REQUIRE(model::RequestId::from_text(request_id(900), operation.request).empty());
  const auto first = tablet.desk->log().operations(operation.object);
  REQUIRE(first.has_value());
  operation.after = {(*first)[first->size() - 2].entry()};
  operation.by = tablet.desk->examiner();
  operation.body_json = R"({"kind":"correction","reason":"the day","examined_on":"2026-11-23"})";
  operation.sign = true;
  const auto appended = tablet.desk->log().append({&operation, 1}, tablet.desk->edition().id(), tablet.desk->examiner_key());
  REQUIRE(appended.has_value());
  tablet.desk->records().changed(*appended);
  CHECK(at(tablet.read(), "/exam/examined_on").empty());
  CHECK(tablet.listed("2026-11-24") == "undated");
  CHECK(asks_for_day(tablet.assess()));
  tablet.keep(tablet.read());
  REQUIRE(codes_of(tablet.adding("2026-11-23")) == "answered");
  CHECK(at(tablet.read(), "/exam/examined_on") == "2026-11-23");
  CHECK(tablet.listed("2026-11-23") == "of the day");
}

TEST_CASE("a clock far behind what this device has stamped before is doubted, unless the network set it") {
  Tablet tablet;
  const std::string man = tablet.person(R"({"date":"1984-11-10"})");  // stamped on 24 November
  tablet.world.reading.wall_ms -= 10 * day_ms;
  CHECK(at(tablet.open(man), "/exam/day_doubtful") == "true");
  tablet.world.reading.clock = ledger::ClockQuality::network;
  CHECK(at(tablet.open(man), "/exam/day_doubtful").empty());
  tablet.world.reading.clock = ledger::ClockQuality::person;
  tablet.world.reading.wall_ms += 10 * day_ms - 3'600'000;  // an hour is no doubt
  CHECK(at(tablet.open(man), "/exam/day_doubtful").empty());
  // What the examiner stated is no stamp; a clock that is said to be doubtful is.
  tablet.world.reading.clock = ledger::ClockQuality::suspect;
  CHECK(at(tablet.open(man, R"(,"examined_at":"2026-11-23T08:00:00.000Z")"), "/exam/day_doubtful").empty());
  CHECK(at(tablet.open(man), "/exam/day_doubtful") == "true");
}

TEST_CASE("where the birth does not fit the day neither is taken, and both are asked for") {
  Tablet tablet;
  const auto made = tablet.ok("person.register", R"({"names":[{"text":"Otieno Madeup"}],"birth":{"date":"1984"},"sex":"male",)" + tablet.request() + "}");
  const std::string man = at(made, "/person/person");
  tablet.open(man, R"(,"examined_at":"2026-11-20T08:00:00.000Z")");
  CHECK_FALSE(says(at(tablet.assess(), "/contradictions"), "examined_and_birth"));
  tablet.ok("person.amend", R"({"person":")" + man + R"(","changes":{"birth":{"date":"2026-11-22"}},"replaces":)" + at(made, "/revision") + R"(,"seen":)" + at(made, "/revision") +
                                "," + tablet.request() + R"(,"confirmed":["value.unusual"]})");
  const std::string assessment = tablet.assess();
  CHECK(says(at(assessment, "/contradictions"), "The birth does not fit 2026-11-20"));
  CHECK(says(tablet.note(), "the birth does not fit it"));
  CHECK_FALSE(asks_for_day(assessment));
}

TEST_CASE("an exam of a doubtful day is no earlier exam, and none is earlier than it, until its day is said") {
  Tablet tablet;
  const std::string man = tablet.person(R"({"date":"1984-11-10"})");
  const std::string flexion = R"("findings":[{"item":"knee.flexion_passive","side":"left","value":{"kind":"angle","toward_deg":)";
  const std::string rest = R"(},"instrument":"goniometer_long","position":"supine"}])";
  tablet.world.reading.wall_ms = year_2001_ms;
  tablet.open(man);
  tablet.keep(tablet.ok("finding.record", tablet.of_exam(flexion + "130" + rest)));
  const std::string before = tablet.exam;
  const std::string before_seen = tablet.seen;
  tablet.world.reading.wall_ms = 1795515300000;
  tablet.open(man);
  tablet.keep(tablet.ok("finding.record", tablet.of_exam(flexion + "90" + rest)));
  CHECK_FALSE(says(at(tablet.assess(), "/statements"), "motion.past"));
  const std::string later = tablet.exam;
  tablet.exam = before;
  tablet.seen = before_seen;
  REQUIRE(codes_of(tablet.saying("2026-11-03")) == "answered");
  CHECK_FALSE(says(at(tablet.assess(), "/statements"), "motion.past"));
  tablet.exam = later;
  CHECK(says(at(tablet.assess(), "/statements"), "motion.past"));
}

TEST_CASE("an age that was said by a clock that cannot be right is asked back: each later exam would add the years in between") {
  Tablet tablet;
  tablet.world.reading.wall_ms = year_2001_ms;
  const auto registering = [&](const std::string& on, const std::string& more = "") {
    return tablet.call("person.register", R"({"names":[{"text":"Otieno Madeup"}],"birth":{"age_years":42,"on":")" + on + R"("},"sex":"male",)" + tablet.request() + more + "}");
  };
  const auto asked = registering("2001-01-01");
  CHECK(codes_of(asked) == "value.unusual");
  CHECK(path_of(asked) == "/birth/on");
  CHECK(codes_of(registering("2026-11-24")) == "answered");
  CHECK(codes_of(registering("2001-01-01", R"(,"confirmed":["value.unusual"])")) == "answered");
}

}  // namespace limbledger::service::test::exam_day
