// Whoever decides that something a person wrote is not taken says why; what an addendum says is to be done is asked after until it was done;
// and a person whose birth is in doubt is found by either. Logic tests of our own rules (ledger, items 27 to 30; clinical safety,
// requirements 14 and 16); everything is invented.
#include "tests/unit/service/clinic/queue_visit.hpp"

namespace limbledger::service::test::decided_why {

using queue_lines::flexion_elsewhere;
using queue_lines::holds;
using queue_lines::Visit;

namespace {

// The loops of that kind, each with its members.
std::vector<std::string> loops_of(const Visit& visit, const std::string& kind, const std::string& day) {
  const std::string list = visit.ok("loop.list", R"({"language":"en","as_of":")" + day + "\"}");
  std::vector<std::string> out;
  for (int i = 0; i < 9; ++i) {
    const std::string loop = at(list, "/people/0/loops/" + std::to_string(i));
    if (!loop.empty() && at(loop, "/loop") == kind) {
      out.push_back(loop);
    }
  }
  return out;
}

}  // namespace

TEST_CASE("of two impressions the one that holds is written with why, and one alone without") {
  Visit visit;
  const std::string own = at(visit.write("impression.record", R"("impression":{"text":"Sprained knee","side":"left"},"replaces":[])"), "/revision/0");
  const std::string there = visit.elsewhere("impression", R"({"impression":{"text":"Torn meniscus","side":"left"}})");
  REQUIRE(at(visit.queue(), "/queue/0/about") == "impression");
  const auto settle = [&](const std::string& more) {
    return visit.call("impression.record", R"({"exam":")" + visit.exam + R"(","impression":{"text":"Torn meniscus","side":"left"},"replaces":[")" + own + "\",\"" + there + "\"]," + more + R"("seen":)" + visit.seen() + "," + visit.request() + "}");
  };
  CHECK(codes_of(settle("")) == "value.empty");
  CHECK(codes_of(settle(R"("reason":"",)")) == "value.empty");
  CHECK(at(visit.queue(), "/total") == "1");
  REQUIRE(settle(R"("reason":"locked when both of us looked",)").has_value());
  CHECK(at(visit.queue(), "/total") == "0");
  CHECK(holds(visit.note(), "Not taken: LEFT: Sprained knee"));
  CHECK(holds(visit.note(), "Reason: locked when both of us looked."));
}

TEST_CASE("of two births the one that holds is written with how it is known, and until then the person is found by either") {
  Visit visit;
  visit.person_elsewhere(R"({"birth":{"date":"1999-01-01"}})");
  REQUIRE(at(visit.queue(), "/queue/0/about") == "birth");
  const auto found_by = [&](const std::string& day) { return at(visit.ok("person.find", R"({"birth":")" + day + "\"}"), "/people/0/person/person"); };
  for (const char* day : {"2001-04-02", "1999-01-01", "2001", "1999-01"}) {
    CAPTURE(day);
    CHECK(found_by(day) == visit.person);
    CHECK(at(visit.ok("person.find", R"({"text":"kofi","birth":")" + std::string(day) + "\"}"), "/people/0/because") == R"(["name","birth"])");
  }
  CHECK(found_by("2000").empty());
  const std::string shown = at(visit.ok("person.read", R"({"person":")" + visit.person + "\"}"), "/revision");
  const auto amend = [&](const std::string& changes, const std::string& more) {
    return visit.call("person.amend", R"({"person":")" + visit.person + R"(","changes":)" + changes + R"(,"replaces":)" + shown + "," + more + R"("seen":)" + shown + "," + visit.request() + "}");
  };
  CHECK(codes_of(amend(R"({"birth":{"date":"2001-04-02"}})", "")) == "value.empty");
  REQUIRE(amend(R"({"birth":{"date":"2001-04-02"}})", R"("reason":"his mother knows",)").has_value());
  CHECK(found_by("2001-04-02") == visit.person);
  CHECK(found_by("1999-01-01").empty());
}

TEST_CASE("of two homes neither is shown and the person is found by either") {
  Visit visit;
  visit.person_elsewhere(R"({"home":"Lower Ford"})");
  REQUIRE(at(visit.queue(), "/queue/0/about") == "home");
  for (const char* home : {"Upper Ford", "lower", "Ford"}) {
    CAPTURE(home);
    CHECK(at(visit.ok("person.find", R"({"home":")" + std::string(home) + "\"}"), "/people/0/person/person") == visit.person);
  }
  CHECK(at(visit.ok("person.find", R"({"home":"Upper Lower"})"), "/people/0").empty());
}

TEST_CASE("of two versions of an exam what holds is written with why") {
  Visit visit;
  visit.write("exam.amend", R"("changes":{"side":"right"})");
  visit.elsewhere("exam", R"({"person":")" + visit.person + R"(","complaint":"acute_knee","side":"left","setting":"outreach","offset_min":180,"injured_on":"2026-11-20"})", {visit.opened});
  const auto amend = [&](const std::string& more) {
    return visit.call("exam.amend", R"({"exam":")" + visit.exam + R"(","changes":{"side":"right","injured_on":"2026-11-20"},)" + more + R"("seen":)" + visit.seen() + "," + visit.request() + "}");
  };
  CHECK(codes_of(amend("")) == "value.empty");
  CHECK(amend(R"("reason":"asked him",)").has_value());
}

TEST_CASE("a side that was decided after an exchange that its writer did not know keeps that on the page") {
  Visit visit;
  visit.write("exam.swap_sides", R"("reason":"the other knee was meant")");
  const std::string there = visit.elsewhere("finding", flexion_elsewhere("left", 96));
  const std::string reply = visit.write("conflict.settle", R"("take":")" + there + R"(","reason":"she pointed at it")");
  CHECK(at(visit.queue(), "/total") == "0");
  CHECK(at(reply, "/exam/findings/0/settled/0/sides_exchanged/0/reason") == "the other knee was meant");
  for (const std::string& page : {visit.note(), at(visit.ok("exam.read", R"({"exam":")" + visit.exam + R"(","language":"en"})"), "/exam/findings/0/settled/0/text")}) {
    CHECK(holds(page, "Left and right of this exam had been exchanged by "));
    CHECK(holds(page, "(reason: the other knee was meant)"));
    CHECK(holds(page, "Reason: she pointed at it."));
    CHECK_FALSE(holds(page, "No other value stood there."));
  }
}

TEST_CASE("what is to be done about a finding that came after the signature is asked after from the addendum on, until somebody says that it was done") {
  Visit visit;
  visit.write("exam.sign", R"("read_aloud":"Kofi Invented, born 2001, LEFT knee")");
  visit.elsewhere("finding", flexion_elsewhere("left", 96));
  REQUIRE(at(visit.queue(), "/queue/0/about") == "late");
  CHECK(holds(visit.line(), "in plan_items what is to be done"));
  const auto add = [&](const std::string& item) {
    return visit.call("addendum.record", R"({"exam":")" + visit.exam + R"(","kind":"text","reason":"a reading of another tablet","text":"It bends less than was signed.","plan_items":[)" + item + R"(],"seen":)" + visit.seen() + "," + visit.request() + "}");
  };
  CHECK(codes_of(add(R"({"plan_item":")" + std::string(26, 'a') + R"(","kind":"advice","text":"x"})")) == "plan.unknown");
  CHECK(codes_of(add(R"({"kind":"advice","text":"measured again","by":"2019-01-01"})")).find("value.") == 0);
  CHECK(loops_of(visit, "planned_after_signature", "2026-11-25").empty());
  const auto added = add(R"({"kind":"review","text":"measured again by Musa","side":"left","by":"2026-12-01"},{"kind":"advice","text":"rings if it locks"})");
  REQUIRE_MESSAGE(added.has_value(), codes_of(added));
  const std::string item = at(*added, "/addendum/plan_items/0/plan_item");
  CHECK(item.size() == 26);
  CHECK(at(visit.queue(), "/total") == "0");
  // From its first day on; past its day it is the review that is overdue, once.
  auto open = loops_of(visit, "planned_after_signature", "2026-11-25");
  REQUIRE(open.size() == 2);
  CHECK(at(open[0], "/plan_item") == item);
  CHECK(holds(at(open[0], "/text"), "Decided after the signature and still to be done, due 2026-12-01 (exam of 2026-11-24), LEFT: measured again by Musa"));
  CHECK(loops_of(visit, "planned_after_signature", "2026-12-02").size() == 1);
  REQUIRE(loops_of(visit, "review_overdue", "2026-12-02").size() == 1);
  CHECK(holds(visit.note(), "measured again by Musa"));
  CHECK(holds(visit.note(), "decided after the signature, by Invented Examiner"));
  // That somebody has looked at the exam again may have been before: only what became of it ends it.
  visit.ok("exam.open", R"({"person":")" + visit.person + R"(","complaint":"review","reviews":")" + visit.exam + R"(","side":"left","setting":"outreach","offset_min":180,)" + visit.request() + "}");
  CHECK(loops_of(visit, "planned_after_signature", "2026-12-02").size() == 2);
  visit.write("plan.follow", R"("plan_item":")" + item + R"(","became":"arranged")");
  CHECK(loops_of(visit, "planned_after_signature", "2026-11-25").size() == 2);
  visit.write("plan.follow", R"("plan_item":")" + item + R"(","became":"done")");
  open = loops_of(visit, "planned_after_signature", "2026-11-25");
  REQUIRE(open.size() == 1);
  CHECK(at(open[0], "/plan") == "rings if it locks");
  CHECK(loops_of(visit, "review_overdue", "2026-12-02").empty());
}

TEST_CASE("what is left open names of a line that was put off again the newest, once; the queue names both") {
  Visit visit;
  const std::string own = at(visit.findings(R"({"item":"knee.flexion_active","side":"left","value":{"kind":"angle","deg":108},"instrument":"goniometer_long","position":"supine"})"), "/recorded/0/entry");
  const std::string there = visit.elsewhere("finding", flexion_elsewhere("left", 85));
  for (const char* asked : {"Musa Invented", "his mother"}) {
    visit.write("conflict.put_off", R"("about":"finding","entries":[")" + own + "\",\"" + there + R"("],"asked":")" + std::string(asked) + R"(","look_again":"2026-12-01")");
  }
  CHECK(at(visit.queue(), "/queue/0/put_off/1/asked") != "");
  const auto open = loops_of(visit, "in_conflict", "2026-11-25");
  REQUIRE(open.size() == 1);
  CHECK(at(open[0], "/put_off/0/asked") == "his mother");
  CHECK(at(open[0], "/put_off/1").empty());
}

TEST_CASE("two lines of one exam that were put off in the same words: both are listed, and the page says it once") {
  Visit visit;
  visit.findings(R"({"item":"history.pop","side":"left","value":{"kind":"answer","answer":"no"}})");
  visit.write("exam.swap_sides", R"("reason":"the other knee was meant")");
  model::FindingId finding;
  finding.bytes.fill(8);
  const std::vector<std::string> there{visit.elsewhere("finding", flexion_elsewhere("left", 96)),
                                       visit.elsewhere("finding", R"({"finding":")" + finding.to_text() + R"(","observation":{"item":"history.pop","side":"left","value":{"kind":"answer","answer":"yes"}}})")};
  for (const std::string& one : there) {
    visit.write("conflict.put_off", R"("about":"side_exchange_unseen","entries":[")" + one + R"("],"asked":"his mother, which leg it was","look_again":"2026-12-01")");
  }
  const auto open = loops_of(visit, "in_conflict", "2026-11-25");
  REQUIRE(open.size() == 1);
  CHECK_FALSE(at(open[0], "/put_off/1").empty());
  const std::string page = at(visit.ok("loop.list", R"({"language":"en","as_of":"2026-11-25"})"), "/text");
  CHECK(holds(page, "his mother, which leg it was"));
  CHECK(page.find("his mother", page.find("his mother") + 1) == std::string::npos);
}

}  // namespace limbledger::service::test::decided_why
