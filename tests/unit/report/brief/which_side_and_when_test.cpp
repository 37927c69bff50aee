// Two looks at one thing, and what is to be looked at on the other side: a page that gives neither time nor side of them is read the
// wrong way round. Sources: red flags, section 0 (the time of the last look at vessel and nerve); clinical safety, C10 (RIGHT or LEFT in words).
#include "tests/unit/report/printed.hpp"

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

std::string asked_page(const std::string& complaint, const std::string& birth, const std::string& findings) {
  return on_one_line(page_of(document_of(R"({"format":"limbledger-exam/1","as_of":"2026-11-24","person":{"names":[{"text":"Invented Nobody"}],"sex":"male","norm_sex":"male","birth":{"date":")" +
                                         birth + R"("}},"exam":{"complaint":")" + complaint +
                                         R"(","setting":"outreach","side":"right","examined_at":"2026-11-24T10:20:00.000Z","offset_min":180},"findings":[)" + findings + "]}")));
}

std::string pulse(const std::string& grade, const std::string& at) {
  return R"({"item":"vessel.pulse_dorsalis_pedis","side":"right","value":{"kind":"grade","scale":"pulse/0-3","grade":")" + grade + R"("},"examined_at":")" + at + R"("})";
}

}  // namespace

TEST_CASE("of two looks at one pulse each stands with its time of the day, where the exam was done") {
  const std::string out_of_joint = R"({"item":"history.knee_dislocated","side":"right","value":{"kind":"answer","answer":"yes"}},)";
  const std::string page = asked_page("acute_knee", "1999-04", out_of_joint + pulse("2", "2026-11-24T06:00:00.000Z") + "," + pulse("0", "2026-11-24T07:10:00.000Z"));
  CHECK(has(page, "grade 2 (As expected), at 09:00"));
  CHECK(has(page, "grade 0 (Not felt), at 10:10"));
  CHECK(has(asked_page("acute_knee", "1999-04", out_of_joint + pulse("2", "2026-11-23T06:00:00.000Z") + "," + pulse("0", "2026-11-24T07:10:00.000Z")), "grade 2 (As expected), at 2026-11-23 09:00"));
  CHECK(!has(asked_page("acute_knee", "1999-04", out_of_joint + pulse("2", "2026-11-24T06:00:00.000Z")), "at 09:00"));
}

TEST_CASE("C10: what is to be looked at on the other side, or on both, says its side") {
  const std::string turned = R"({"item":"hip.internal_rotation_passive_seated","side":"right","value":{"kind":"angle","toward_deg":30}},)";
  const std::string hurts = R"({"item":"history.weeks_since_onset","side":"midline","value":{"kind":"count","count":3}})";
  const std::string one = asked_page("chronic_knee", "2013-02", turned + hurts);
  CHECK(has(one, "Behind a painful knee at this age both hips are looked at and compared. Look: Hip inward rotation, seated, LEFT"));
  CHECK(has(asked_page("chronic_knee", "2013-02", hurts), "Hip inward rotation, seated, RIGHT and LEFT"));
}
