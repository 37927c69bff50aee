// district.report: a count that was given away, kept as it was, and what came after it. The expected exams are those that the test itself
// made. Logic tests of our own rules (clinical safety, C14 and C16); everything is invented.
#include "tests/unit/service/clinic/other_device.hpp"
#include "tests/unit/service/clinic/queue_visit.hpp"

#include "core/ledger/log/log.hpp"

#include <set>
#include <string>

namespace limbledger::service::test::district_reports {

using queue_lines::flexion_elsewhere;
using queue_lines::holds;
using queue_lines::Visit;

namespace {

const std::string november = R"("from":"2026-11","as_of":"2026-12-01","language":"en")";

struct District : Visit {
  [[nodiscard]] std::string count(const std::string& more = {}) const { return ok("district.count", "{" + november + more + "}"); }
  [[nodiscard]] std::string as_reported(int number) const { return ok("district.count", R"({"from":"2026-11","language":"en","report":)" + std::to_string(number) + "}"); }
  std::string report(const std::string& seen_reports) { return ok("district.report", "{" + november + R"(,"seen":)" + seen_reports + "," + request() + "}"); }
  // Whatever is there was shown.
  std::string report() {
    std::string shown;
    const std::string counted = count();
    for (int i = 0;; ++i) {
      const std::string entry = at(counted, "/reported/" + std::to_string(i) + "/report/entry");
      if (entry.empty()) {
        return report("[" + shown + "]");
      }
      shown += (shown.empty() ? "\"" : ",\"") + entry + "\"";
    }
  }
  [[nodiscard]] std::string another_exam(const std::string& who, const std::string& more = {}) {
    return at(ok("exam.open", R"({"person":")" + who + R"(","complaint":"free","setting":"outreach","offset_min":180,)" + more + request() + "}"), "/exam/exam");
  }
  [[nodiscard]] std::uint64_t entries() const { return desk->log().index().entry_count; }
};

// What one number of a reply says of its change since the first report that it names: "then now +came -went"; empty where it has not changed.
std::string change_of(const std::string& counted, const std::string& count, const std::string& of = {}, int reported = 0) {
  for (int i = 0;; ++i) {
    const std::string one = "/reported/" + std::to_string(reported) + "/changes/" + std::to_string(i);
    const std::string name = at(counted, one + "/count");
    if (name.empty()) {
      return {};
    }
    if (name != count || at(counted, one + "/of") != of) {
      continue;
    }
    std::string out = at(counted, one + "/then") + " " + at(counted, one + "/now");
    for (const auto& [member, sign] : {std::pair("came", " +"), std::pair("went", " -"), std::pair("regrouped", " ~")}) {
      for (int e = 0;; ++e) {
        const std::string exam = at(counted, one + "/" + member + "/" + std::to_string(e) + "/exam");
        if (exam.empty()) {
          break;
        }
        out += sign + exam + " " + at(counted, one + "/" + member + "/" + std::to_string(e) + "/why");
      }
    }
    return out;
  }
}

model::ObjectId object_called(const District& clinic, unsigned request, ledger::ObjectType type = ledger::ObjectType::exam) {
  model::RequestId id;
  REQUIRE(model::RequestId::from_text(request_id(request), id).empty());
  return clinic.desk->log().object_for(type, id, 0);
}

constexpr auto hip_body = R"({"complaint":"hip_groin","side":"left","setting":"outreach","offset_min":180,"examined_on":"2026-11-24"})";

}  // namespace

TEST_CASE("a tablet that comes home after the report: the count names the exam, report 2 says what came, and report 1 stands as it was") {
  District clinic;
  OtherDevice tablet(clinic, clinic.store, 21);
  const std::string before = clinic.count();
  CHECK(at(before, "/reported").empty());
  const std::string first = clinic.report("[]");
  CHECK(at(first, "/report/report") == "1");
  CHECK(at(first, "/report/as_of") == "2026-12-01");
  CHECK(at(first, "/report/by_name") == examiner_label);
  CHECK(at(first, "/counted/counts") == at(before, "/counts"));
  CHECK(at(first, "/counted/reported").empty());
  CHECK(holds(at(first, "/text"), "REPORT 1 of this period, as it was reported: counted as of 2026-12-01, by Invented Examiner"));
  const std::string same = clinic.count();
  CHECK(at(same, "/reported/0/report/entry") == at(first, "/revision/0"));
  CHECK(at(same, "/reported/0/changes") == "[]");
  CHECK(holds(at(same, "/text"), "As in REPORT 1 (as of 2026-12-01, by Invented Examiner): no number has changed since."));

  const model::ObjectId hip = object_called(clinic, 7001);
  tablet.write(hip, 7001, "exam", hip_body, {});
  tablet.give_to(clinic);
  const std::string late = hip.to_text();
  const std::string counted = clinic.count();
  CHECK(change_of(counted, "exams") == "1 2 +" + late + " arrived");
  CHECK(change_of(counted, "people") == "1 2 +" + late + " arrived");
  CHECK(change_of(counted, "complaint", "hip_groin") == "0 1 +" + late + " arrived");
  CHECK(change_of(counted, "complaint", "acute_knee").empty());
  CHECK(holds(at(counted, "/text"), "exams: then 1, now 2 (came: 1, went: 0)"));
  CHECK(holds(at(counted, "/text"), "exam " + late + ", of 2026-11-24: was not in the ledger that reported"));

  const std::string second = clinic.report();
  CHECK(at(second, "/report/report") == "2");
  CHECK(at(second, "/report/after/0") == at(first, "/revision/0"));
  CHECK(change_of(at(second, "/counted"), "exams") == "1 2 +" + late + " arrived");
  CHECK(at(clinic.count(), "/reported/0/report/report") == "2");
  CHECK(at(clinic.count(), "/reported/1").empty());
  CHECK(at(clinic.count(), "/reported/0/changes") == "[]");
  // Read back, each opens to its own exams.
  const std::string one = clinic.as_reported(1);
  CHECK(at(one, "/counts") == at(before, "/counts"));
  CHECK(at(one, "/report/report") == "1");
  CHECK(at(one, "/later/0/report") == "2");
  CHECK(holds(at(one, "/text"), "These are its numbers, not those of now."));
  const std::string two = clinic.as_reported(2);
  CHECK(at(two, "/counts") == at(counted, "/counts"));
  CHECK(at(two, "/later").empty());
  CHECK(change_of(two, "exams") == "1 2 +" + late + " arrived");
  CHECK(holds(at(two, "/text"), "Since REPORT 1"));
  // And after the ledger was closed and opened.
  clinic.reopen();
  clinic.unlock();
  CHECK(clinic.as_reported(2) == two);
  CHECK(clinic.as_reported(1) == one);
}

TEST_CASE("a withdrawal, another day, another complaint and an answered referral each say why their exams went") {
  District clinic;
  const std::string knee = clinic.exam;
  const std::string taken_back = clinic.another_exam(clinic.person);
  const std::string other_day = clinic.another_exam(clinic.person);
  const std::string brought_in = clinic.another_exam(clinic.person, R"("examined_on":"2026-10-30",)");
  const std::string plan = clinic.write("plan.record", R"("plan_items":[{"kind":"referral","text":"Knee clinic","side":"left","by":"2026-12-08"}],"replaces":[])");
  clinic.report("[]");
  clinic.exam = taken_back;
  clinic.write("exam.withdraw", R"("reason":"begun twice")");
  clinic.exam = other_day;
  clinic.write("exam.amend", R"("changes":{"examined_on":"2026-10-31"})");
  clinic.exam = brought_in;
  clinic.write("exam.amend", R"("changes":{"examined_on":"2026-11-02"})");
  clinic.exam = knee;
  clinic.write("plan.follow", R"("plan_item":")" + at(plan, "/exam/plan/0/plan_item") + R"(","became":"answered","on":"2026-11-24")");
  clinic.write("exam.amend", R"("changes":{"complaint":"chronic_knee"})");
  const std::string counted = clinic.count();
  const std::string exams = change_of(counted, "exams");
  CHECK(exams.starts_with("3 2 +" + brought_in + " dated -"));
  CHECK(holds(exams, "-" + taken_back + " withdrawn"));
  CHECK(holds(exams, "-" + other_day + " dated"));
  CHECK(change_of(counted, "withdrawn") == "0 1 +" + taken_back + " withdrawn");
  CHECK(change_of(counted, "complaint", "acute_knee") == "1 0 -" + knee + " recorded");
  CHECK(change_of(counted, "complaint", "chronic_knee") == "0 1 +" + knee + " recorded");
  CHECK(change_of(counted, "referral_unanswered") == "1 0 -" + knee + " recorded");
  CHECK(change_of(counted, "referral").empty());
  // By the day alone: nothing came into its record.
  District later;
  later.write("plan.record", R"("plan_items":[{"kind":"review","text":"again","by":"2026-12-10"}],"replaces":[])");
  later.report("[]");
  CHECK(change_of(later.ok("district.count", R"({"from":"2026-11","as_of":"2026-12-20"})"), "review_overdue") == "0 1 +" + later.exam + " judged");
}

TEST_CASE("two records that are decided to be of one person change how many people, and the exams of both are named; an exam that was given to another person too") {
  District clinic;
  const std::string twin = clinic.registered("Kofi Invented", "2001-04-02");
  const std::string other = clinic.another_exam(twin);
  const std::string third = clinic.another_exam(clinic.registered("Zawadi Invented", "1960-01-01"));
  clinic.report("[]");
  const std::string decided = clinic.ok("pair.decide", R"({"persons":[")" + clinic.person + R"(",")" + twin + R"("],"same":"yes","reason":"same_paper","seen":[],)" + clinic.request() + "}");
  const std::string linked = change_of(clinic.count(), "people");
  CHECK(linked.starts_with("3 2 ~"));
  CHECK(holds(linked, "~" + clinic.exam + " linked"));
  CHECK(holds(linked, "~" + other + " linked"));
  CHECK_FALSE(holds(linked, third));
  CHECK(change_of(clinic.count(), "exams").empty());
  clinic.report();
  clinic.ok("pair.decide", R"({"persons":[")" + clinic.person + R"(",")" + twin + R"("],"same":"undo","reason":"decided_wrongly","seen":)" + at(decided, "/revision") + "," + clinic.request() + "}");
  CHECK(holds(change_of(clinic.count(), "people"), "~" + other + " separated"));
  clinic.report();
  clinic.exam = other;
  clinic.write("exam.move", R"("person":")" + clinic.person + R"(","reason":"opened on the wrong record")");
  CHECK(change_of(clinic.count(), "people") == "3 2 ~" + other + " moved");
}

TEST_CASE("what has not changed is not reported again, also where another day has come") {
  District clinic;
  const std::string first = clinic.report("[]");
  const std::uint64_t entries = clinic.entries();
  const std::string again = clinic.report();
  CHECK(at(again, "/unchanged") == "true");
  CHECK(at(again, "/repeat").empty());
  CHECK(at(again, "/report") == at(first, "/report"));
  CHECK(at(again, "/revision") == at(first, "/revision"));
  CHECK(holds(at(again, "/text"), "Nothing was written: every number is as in report 1, which stands."));
  CHECK(at(clinic.ok("district.report", R"({"from":"2026-11","as_of":"2026-12-02","seen":)" + at(first, "/revision") + "," + clinic.request() + "}"), "/unchanged") == "true");
  CHECK(clinic.entries() == entries);
}

TEST_CASE("two devices report without knowing of each other: both stand under one number, and the next comes after both") {
  District clinic;
  OtherDevice tablet(clinic, clinic.store, 21);
  const std::string mine = at(clinic.report("[]"), "/revision/0");
  const std::string theirs = tablet.write(object_called(clinic, 7002, ledger::ObjectType::report), 7002, "report",
                                          R"({"from":"2026-11-01","to":"2026-11-30","report":1,"as_of":"2026-11-30","after":[],"had":[],"counts":[{"count":"exams","number":0}],"exams":[]})", {}).to_text();
  tablet.give_to(clinic);
  const std::string counted = clinic.count();
  std::set<std::string> told;
  for (const char* one : {"/reported/0", "/reported/1"}) {
    CHECK(at(counted, std::string(one) + "/report/report") == "1");
    told.insert(at(counted, std::string(one) + "/report/entry"));
  }
  CHECK(told == std::set<std::string>{mine, theirs});
  CHECK(holds(at(counted, "/text"), "2 REPORTS STAND: they were made without knowledge of each other"));
  const auto several = clinic.call("district.count", R"({"from":"2026-11","report":1})");
  CHECK(codes_of(several) == "report.several");
  CHECK(path_of(several) == "/entry");
  const std::string picked = clinic.ok("district.count", R"({"from":"2026-11","report":1,"entry":")" + theirs + "\"}");
  CHECK(at(picked, "/counts/0/number") == "0");
  CHECK(at(picked, "/as_of") == "2026-11-30");
  CHECK(at(picked, "/later/0/entry") == mine);
  // Whoever was shown one of them alone is told of the other.
  const auto unseen = clinic.call("district.report", "{" + november + R"(,"seen":[")" + mine + "\"]," + clinic.request() + "}");
  CHECK(codes_of(unseen) == "revision.old");
  const std::string next = clinic.report();
  CHECK(at(next, "/report/report") == "2");
  CHECK(at(next, "/counted/reported/1/report/report") == "1");
  CHECK(at(clinic.count(), "/reported/0/report/report") == "2");
  CHECK(at(clinic.count(), "/reported/1").empty());
}

TEST_CASE("the same request again gives the report as it was, whatever came since; another content is refused; a full disk keeps nothing") {
  District clinic;
  const std::string params = "{" + november + R"(,"seen":[],)" + clinic.request() + "}";
  clinic.store.refuse_writes(true);
  CHECK(codes_of(clinic.call("district.report", params)) == "ledger.read_only");
  clinic.store.refuse_writes(false);
  CHECK(at(clinic.count(), "/reported").empty());
  const std::string first = clinic.ok("district.report", params);
  CHECK(at(first, "/report/report") == "1");
  const std::string late = clinic.another_exam(clinic.person);
  const std::uint64_t entries = clinic.entries();
  const std::string again = clinic.ok("district.report", params);
  CHECK(at(again, "/repeat") == "true");
  CHECK(at(again, "/report") == at(first, "/report"));
  CHECK(at(again, "/counted/counts") == at(first, "/counted/counts"));
  CHECK(clinic.entries() == entries);
  std::string other = params;
  other.replace(other.find("2026-11"), 7, "2026-10");
  CHECK(codes_of(clinic.call("district.report", other)) == "request.reused");
  CHECK(codes_of(clinic.call("exam.open", R"({"complaint":"free","setting":"outreach",)" + params.substr(params.find("\"request\"")))) == "request.reused");
  CHECK(change_of(clinic.count(), "exams") == "1 2 +" + late + " arrived");
}

TEST_CASE("other days, and the same days at one place, have reports of their own; what names none is refused; a viewer reads them and makes none") {
  District clinic;
  const std::string first = clinic.report("[]");
  const std::string place = at(clinic.ok("place.amend", R"({"changes":{"name":"Upper Ford"},"replaces":[],"seen":[],)" + clinic.request() + "}"), "/places/0/place/place");
  CHECK(at(clinic.ok("district.count", R"({"from":"2026-11","place":")" + place + "\"}"), "/reported").empty());
  CHECK(at(clinic.ok("district.count", R"({"from":"2026"})"), "/reported").empty());
  CHECK(at(clinic.ok("district.count", R"({"from":"2026-11-01","to":"2026-11-30"})"), "/reported/0/report/report") == "1");
  CHECK(at(clinic.ok("district.report", R"({"from":"2026-11","place":")" + place + R"(","seen":[],)" + clinic.request() + "}"), "/report/report") == "1");
  CHECK(codes_of(clinic.call("district.report", R"({"from":"2026","seen":)" + at(first, "/revision") + "," + clinic.request() + "}")) == "revision.unknown");
  CHECK(codes_of(clinic.call("district.count", R"({"from":"2026-11","report":2})")) == "report.unknown");
  CHECK(codes_of(clinic.call("district.count", R"({"from":"2026-11","report":1,"as_of":"2026-12-01"})")) == "value.all_or_one");
  CHECK(codes_of(clinic.call("district.count", R"({"from":"2026-11","entry":")" + at(first, "/report/entry") + "\"}")) == "value.all_or_one");
  CHECK(codes_of(clinic.call("district.report", R"({"from":"2026-11","to":"2026-10","seen":[],)" + clinic.request() + "}")) == "value.date_order");
  const std::string one = clinic.as_reported(1);
  clinic.caller.scope = Scope::viewer;
  CHECK(clinic.as_reported(1) == one);
  CHECK(codes_of(clinic.call("district.report", "{" + november + R"(,"seen":)" + at(first, "/revision") + "," + clinic.request() + "}")) == "token.scope");
}

TEST_CASE("C16: what protects a person is in no report and changes none, also where two answers disagree") {
  District clinic;
  clinic.report("[]");
  const std::string before = clinic.count();
  clinic.findings(R"({"item":"history.hurt_or_afraid","side":"midline","value":{"kind":"answer","answer":"yes"}})");
  CHECK(clinic.count() == before);
  model::FindingId other;
  other.bytes.fill(7);
  clinic.elsewhere("finding", R"({"finding":")" + other.to_text() + R"(","observation":{"item":"history.hurt_or_afraid","side":"midline","value":{"kind":"answer","answer":"no"}}})");
  CHECK(clinic.count() == before);
  CHECK(at(clinic.report(), "/unchanged") == "true");
  clinic.caller.scope = Scope::viewer;
  CHECK(clinic.count() == before);
  // A value of the knee that disagrees is in the next one.
  clinic.caller.scope = Scope::examiner;
  clinic.findings(R"({"item":"knee.flexion_active","side":"left","value":{"kind":"angle","deg":108},"instrument":"goniometer_long","position":"supine"})");
  clinic.elsewhere("finding", flexion_elsewhere("left", 85));
  CHECK(change_of(clinic.count(), "in_conflict") == "0 1 +" + clinic.exam + " recorded");
  CHECK(at(clinic.report(), "/report/report") == "2");
}

}  // namespace limbledger::service::test::district_reports
