// A minimum set that was left for lack of time: told as not examined when the exam is signed, and open again on the form. Our rule.
#include "core/reference/edition.hpp"

#include "tests/unit/invented/edition.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

using namespace limbledger;
using service::test::at;

namespace {

struct Hurried {
  service::test::DeskFixture fixture;
  std::string exam;
  std::string seen;
  unsigned requests = 9100;

  Hurried() {
    const std::string opened = fixture.ok("exam.open", R"({"complaint":"acute_knee","side":"left","setting":"outreach",)" + request() + "}");
    exam = R"("exam":")" + at(opened, "/exam/exam") + "\"";
    seen = at(opened, "/revision/0");
  }
  [[nodiscard]] std::string request() { return R"("request":")" + service::test::request_id(++requests) + "\""; }
  [[nodiscard]] std::string rest() { return exam + R"(,"seen":[")" + seen + R"("],)" + request(); }
  void record(const std::string& findings) { seen = at(fixture.ok("finding.record", R"({"findings":[)" + findings + "]," + rest() + "}"), "/revision/0"); }
  [[nodiscard]] std::string assess() { return fixture.ok("exam.assess", "{" + exam + R"(,"only":["missing"],"language":"en"})"); }
  [[nodiscard]] static std::string no_time(const std::string& item, const std::string& side) {
    return R"({"item":")" + item + R"(","side":")" + side + R"(","value":{"kind":"not_done","reason":"no_time"}})";
  }
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> missing() {
    const std::string assessed = assess();
    std::vector<std::pair<std::string, std::string>> all;
    for (int i = 0; !at(assessed, "/missing/" + std::to_string(i) + "/item").empty(); ++i) {
      const std::string place = "/missing/" + std::to_string(i);
      all.emplace_back(at(assessed, place + "/item"), at(assessed, place + "/side"));
    }
    return all;
  }
  [[nodiscard]] static bool lists(const std::string& reply, const std::string& word) {
    for (int i = 0; !at(reply, "/incomplete/" + std::to_string(i)).empty(); ++i) {
      if (at(reply, "/incomplete/" + std::to_string(i)) == word) {
        return true;
      }
    }
    return false;
  }
};

}  // namespace

TEST_CASE("a whole minimum set left for lack of time is not examined: missing says so, the form stays open, signing lists it") {
  Hurried hurried;
  const auto before = hurried.missing();
  REQUIRE(before.size() > 10);
  CHECK(at(hurried.assess(), "/missing/0/why") != "");
  std::string findings;
  for (const auto& [item, side] : before) {
    findings += (findings.empty() ? "" : ",") + Hurried::no_time(item, side);
  }
  hurried.record(findings);
  CHECK(hurried.missing() == before);
  const std::string assessed = hurried.assess();
  CHECK(at(assessed, "/missing/0/why") == "no_time");
  CHECK(at(assessed, "/missing/0/text").find("not examined, no time") != std::string::npos);
  const std::string form = hurried.fixture.ok("form.describe", R"({"complaint":"acute_knee",)" + hurried.exam + "}");
  CHECK(at(form, "/resume_at") == at(form, "/positions/0/steps/0/item"));
  const std::string reply = hurried.fixture.ok("exam.sign", R"({"read_aloud":"Nobody, left knee",)" + hurried.rest() + "}");
  CHECK(Hurried::lists(reply, "minimum_set"));
  CHECK(Hurried::lists(reply, "not_examined"));
}

TEST_CASE("one thing that was looked at makes the rest reasons again: they are recorded, and the form still offers them first") {
  Hurried hurried;
  const auto before = hurried.missing();
  std::string findings = R"({"item":"knee.effusion_stroke","side":"left","value":{"kind":"grade","scale":"effusion/stroke","grade":"0"}})";
  for (const auto& [item, side] : before) {
    if (item != "knee.effusion_stroke" || side != "left") {
      findings += "," + Hurried::no_time(item, side);
    }
  }
  hurried.record(findings);
  CHECK(hurried.missing().empty());
  const std::string form = hurried.fixture.ok("form.describe", R"({"complaint":"acute_knee",)" + hurried.exam + "}");
  CHECK(at(form, "/resume_at") != "knee.effusion_stroke");
  CHECK(at(form, "/resume_at") != "");
  const std::string reply = hurried.fixture.ok("exam.sign", R"({"read_aloud":"Nobody, left knee",)" + hurried.rest() + "}");
  CHECK_FALSE(Hurried::lists(reply, "not_examined"));
  CHECK_FALSE(Hurried::lists(reply, "minimum_set"));
}

TEST_CASE("why something is missing: minimum set, other side, asked for at this age, or only told; joints above and below by side") {
  Hurried hurried;
  const std::string assessed = hurried.assess();
  bool other = false;
  bool own = false;
  for (int i = 0; !at(assessed, "/missing/" + std::to_string(i) + "/item").empty(); ++i) {
    const std::string place = "/missing/" + std::to_string(i);
    other = other || (at(assessed, place + "/side") == "right" && at(assessed, place + "/why") == "other_side");
    own = own || (at(assessed, place + "/side") == "left" && at(assessed, place + "/why") == "minimum");
    CHECK_FALSE((at(assessed, place + "/side") == "left" && at(assessed, place + "/why") == "other_side"));
  }
  CHECK(own);
  CHECK(other);
  // Hip, knee and ankle of both sides, the joint complained of first.
  CHECK(at(assessed, "/not_examined/0/joint") == "knee");
  CHECK(at(assessed, "/not_examined/0/side") == "right");
  CHECK(at(assessed, "/not_examined/0/why") == "other_side");
  CHECK(at(assessed, "/not_examined/1/why") == "complaint");
  CHECK(at(assessed, "/not_examined/2/why") == "joint_around");
  CHECK(at(assessed, "/not_examined/5/joint") == "ankle");
  CHECK(at(assessed, "/not_examined/6/joint") == "");
  hurried.record(R"({"item":"hip.log_roll","side":"left","value":{"kind":"test","result":"negative"}},)"
                 R"({"item":"knee.effusion_stroke","side":"left","value":{"kind":"grade","scale":"effusion/stroke","grade":"0"},"origin":"carried_over"})");
  const std::string later = hurried.assess();
  CHECK(at(later, "/not_examined/1/why") == "complaint");  // a value carried over is no look at the knee
  CHECK(at(later, "/not_examined/2/joint") == "hip");
  CHECK(at(later, "/not_examined/2/side") == "right");
  CHECK(at(later, "/not_examined/3/joint") == "ankle");
  for (int i = 0; !at(later, "/missing/" + std::to_string(i) + "/item").empty(); ++i) {
    const std::string place = "/missing/" + std::to_string(i);
    if (at(later, place + "/item") == "knee.effusion_stroke" && at(later, place + "/side") == "left") {
      CHECK(at(later, place + "/why") == "to_confirm");
    }
  }
}
