// district.count: what a clinic reports of a period, each number with its exams. The expected exams are those that the test itself made.
// Logic tests of our own rules (clinical safety, C14, C16, C25); everything is invented.
#include "tests/unit/service/clinic/queue_visit.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace limbledger::service::test::district_counts {

using queue_lines::flexion_elsewhere;
using queue_lines::holds;
using queue_lines::Visit;

namespace {

using Exams = std::set<std::string>;

struct Clinic : Visit {
  [[nodiscard]] std::string opened_exam(const std::string& who, const std::string& complaint, const std::string& setting, const std::string& more = {}) {
    return at(ok("exam.open", R"({"person":")" + who + R"(","complaint":")" + complaint + R"(","setting":")" + setting + R"(","offset_min":180,)" + more + request() + "}"), "/exam/exam");
  }
  [[nodiscard]] std::string count(const std::string& params) const { return ok("district.count", "{" + params + "}"); }
};

// Number by number: what is counted, and its exams.
std::map<std::string, Exams> opened_numbers(const std::string& counted) {
  std::map<std::string, Exams> out;
  for (int i = 0;; ++i) {
    const std::string one = "/counts/" + std::to_string(i);
    const std::string count = at(counted, one + "/count");
    if (count.empty()) {
      return out;
    }
    const std::string of = at(counted, one + "/of");
    Exams exams;
    for (int e = 0;; ++e) {
      const std::string id = at(counted, one + "/exams/" + std::to_string(e));
      if (id.empty()) {
        break;
      }
      exams.insert(id);
    }
    if (count != "people") {
      CHECK(at(counted, one + "/number") == std::to_string(exams.size()));
    }
    out[count + (of.empty() ? "" : " " + of)] = exams;
  }
}

}  // namespace

TEST_CASE("every number of a period opens to its exams: by setting and complaint, what was raised, referred, left open; people are counted once") {
  Clinic clinic;
  const std::string calm = clinic.opened_exam(clinic.person, "free", "primary_care");
  const std::string other = clinic.registered("Zawadi Invented", "1960-01-01");
  const std::string hip = clinic.opened_exam(other, "free", "outreach");
  const std::string urgent = clinic.exam;
  clinic.findings(R"({"item":"history.mechanism","side":"midline","value":{"kind":"choice","choice":"twist"}},{"item":"vessel.pulse_dorsalis_pedis","side":"right","value":{"kind":"grade","scale":"pulse/0-3","grade":"2"}},{"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"0"}})");
  clinic.write("plan.record", R"("plan_items":[{"kind":"referral","text":"Knee clinic","side":"left","by":"2026-12-08"},{"kind":"referral","text":"Vessel clinic","side":"left","by":"2026-12-08"},{"kind":"review","text":"again","by":"2026-12-20"}],"replaces":[])");
  clinic.write("exam.sign", R"("read_aloud":"Kofi Invented, born 2001, LEFT knee")");
  // Of another day, of no certain day, and withdrawn.
  const std::string before = clinic.opened_exam(other, "free", "outreach", R"("examined_on":"2026-10-31",)");
  const std::string some_day = clinic.opened_exam(other, "free", "outreach", R"("examined_on":"2026",)");
  clinic.exam = clinic.opened_exam(other, "free", "sports");
  const std::string taken_back = clinic.exam;
  clinic.write("exam.withdraw", R"("reason":"begun twice")");
  const std::string counted = clinic.count(R"("from":"2026-11","as_of":"2026-12-10","language":"en")");
  auto numbers = opened_numbers(counted);
  const Exams all{urgent, calm, hip};
  CHECK(numbers["exams"] == all);
  CHECK(numbers["people"] == all);
  CHECK(at(counted, "/counts/1/count") == "people");
  CHECK(at(counted, "/counts/1/number") == "2");
  CHECK(numbers["setting outreach"] == Exams{urgent, hip});
  CHECK(numbers["setting primary_care"] == Exams{calm});
  CHECK(numbers["complaint acute_knee"] == Exams{urgent});
  CHECK(numbers["complaint free"] == Exams{calm, hip});
  CHECK(numbers["unsigned"] == Exams{calm, hip});
  CHECK(numbers["alert now"] == Exams{urgent});
  CHECK(numbers["alert_without_action"] == Exams{urgent});
  CHECK(numbers["referral"] == Exams{urgent});
  CHECK(numbers["referral_unanswered"] == Exams{urgent});
  CHECK(numbers["referral_past_day"] == Exams{urgent});
  CHECK(numbers["review"] == Exams{urgent});
  CHECK_FALSE(numbers.contains("review_overdue"));
  CHECK_FALSE(numbers.contains("setting sports"));
  CHECK(at(counted, "/undated/0") == some_day);
  CHECK(at(counted, "/undated/1").empty());
  CHECK(at(counted, "/withdrawn/0") == taken_back);
  CHECK_FALSE(at(counted, "/edition").empty());
  const std::string page = at(counted, "/text");
  CHECK(holds(page, "COUNT 2026-11 to 2026-11, as of 2026-12-10"));
  CHECK(holds(page, "people, each once, so far as they are known to be one: 2"));
  CHECK(holds(page, "exams by setting, outreach: 2"));
  CHECK(holds(page, "exams that raised an alert, now: 1"));
  for (const char* name : {"Kofi", "Zawadi"}) {
    CHECK_FALSE(holds(page, name));
  }
  // Later more is past, and a longer period holds more.
  CHECK(opened_numbers(clinic.count(R"("from":"2026-11","as_of":"2026-12-24")"))["review_overdue"] == Exams{urgent});
  CHECK(opened_numbers(clinic.count(R"("from":"2026-10","to":"2026-11","as_of":"2026-12-10")"))["exams"] == Exams{urgent, calm, hip, before});
  CHECK(opened_numbers(clinic.count(R"("from":"2026","as_of":"2026-12-10")"))["exams"].size() == 5);
}

TEST_CASE("of a referral that was answered, an alert that was taken back and values that disagree the numbers say what is so now") {
  Clinic clinic;
  const std::string plan = clinic.write("plan.record", R"("plan_items":[{"kind":"referral","text":"Knee clinic","side":"left","by":"2026-12-08"}],"replaces":[])");
  clinic.findings(R"({"item":"knee.flexion_active","side":"left","value":{"kind":"angle","deg":108},"instrument":"goniometer_long","position":"supine"})");
  const auto of = [&](const std::string& name) { return opened_numbers(clinic.count(R"("from":"2026-11-24","as_of":"2026-12-24")"))[name]; };
  CHECK(of("in_conflict").empty());
  CHECK(of("referral_past_day") == Exams{clinic.exam});
  clinic.elsewhere("finding", flexion_elsewhere("left", 85));
  CHECK(of("in_conflict") == Exams{clinic.exam});
  clinic.write("plan.follow", R"("plan_item":")" + at(plan, "/exam/plan/0/plan_item") + R"(","became":"answered","on":"2026-11-24")");
  CHECK(of("referral") == Exams{clinic.exam});
  CHECK(of("referral_unanswered").empty());
  CHECK(of("referral_past_day").empty());
}

TEST_CASE("C16: what protects a person changes no number, for an examiner as little as for a viewer") {
  Clinic clinic;
  const std::string asked = R"("from":"2026-11-24","as_of":"2026-12-24","language":"en")";
  const std::string before = clinic.count(asked);
  clinic.findings(R"({"item":"history.hurt_or_afraid","side":"midline","value":{"kind":"answer","answer":"yes"}})");
  CHECK(clinic.count(asked) == before);
  const auto lists = [&] { return clinic.ok("loop.list", R"({"as_of":"2026-11-24"})") + clinic.ok("day.list", R"({"day":"2026-11-24"})"); };
  const std::string listed = lists();
  // Two answers that disagree: an examiner's queue has them, and no list and no number does.
  model::FindingId other;
  other.bytes.fill(7);
  clinic.elsewhere("finding", R"({"finding":")" + other.to_text() + R"(","observation":{"item":"history.hurt_or_afraid","side":"midline","value":{"kind":"answer","answer":"no"}}})");
  CHECK(at(clinic.queue(), "/total") == "1");
  CHECK(clinic.count(asked) == before);
  CHECK(lists() == listed);
  clinic.caller.scope = Scope::viewer;
  CHECK(clinic.count(asked) == before);
  CHECK(lists() == listed);
  CHECK(at(clinic.queue(), "/total") == "0");
}

TEST_CASE("a period without exams counts none and says so; one that ends before it begins is refused; a viewer may count") {
  Clinic clinic;
  const std::string none = clinic.count(R"("from":"2025","language":"en")");
  CHECK(at(none, "/counts") == "[]");
  CHECK(holds(at(none, "/text"), "exams: 0"));
  const auto turned = clinic.call("district.count", R"({"from":"2026-11-24","to":"2026-11-23"})");
  CHECK(codes_of(turned) == "value.date_order");
  CHECK(path_of(turned) == "/to");
  clinic.caller.scope = Scope::viewer;
  CHECK(opened_numbers(clinic.count(R"("from":"2026-11-24")"))["exams"] == Exams{clinic.exam});
  clinic.caller.scope = Scope::kiosk;
  CHECK(codes_of(clinic.call("district.count", R"({"from":"2026"})")) == "token.scope");
}

}  // namespace limbledger::service::test::district_counts
